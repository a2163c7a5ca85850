/* SPDX-License-Identifier: MIT */
#include "opened-job.h"

#include <slopewright/sheet/report.h>
#include <string.h>

static SlopepackExit run (char **argv);

const SlopepackCommand slopepack_why = {
  "why",
  "Say how a number came about, and how to check it by hand.",
  "JOB [NAME]",
  "Without NAME it lists the names, such as A.1.runs: face A, first tier, runs.",
  run,
};

static SlopepackExit
list_names (const SlopepackJob *opened)
{
  const GPtrArray *workings = opened->result->tally->workings;
  g_autoptr (GString) text = g_string_new (NULL);
  gsize widest = 0;

  for (guint i = 0; i < workings->len; i++)
    {
      const SwWorking *working = g_ptr_array_index (workings, i);
      widest = MAX (widest, strlen (working->name));
    }
  for (guint i = 0; i < workings->len; i++)
    {
      const SwWorking *working = g_ptr_array_index (workings, i);
      g_autofree char *title = sw_report_working_title (working, opened->texts);
      g_autofree char *value = sw_report_working_value (working, opened->style);

      g_string_append_printf (text, "%-*s  %s: %s\n", (int) widest, working->name, title,
                              value);
    }
  return slopepack_print (text->str);
}

static SlopepackExit
explain (const char *path, const SlopepackReader *reader, const char *name)
{
  g_auto (SlopepackJob) opened = { 0 };
  SlopepackExit code = slopepack_job_open (path, reader, &opened);

  if (code != SLOPEPACK_DONE)
    return code;
  if (name == NULL)
    return list_names (&opened);

  g_autofree char *report =
      sw_report_working (opened.result, name, opened.texts, opened.style);
  if (report == NULL)
    return slopepack_complain (
        SLOPEPACK_USAGE,
        "this job has no number named '%s'; 'slopepack why %s' lists the names", name,
        path);
  return slopepack_print (report);
}

static SlopepackExit
run (char **argv)
{
  g_auto (SlopepackReader) reader = { 0 };
  const GOptionEntry entries[] = { SLOPEPACK_READER_OPTIONS (reader),
                                   G_OPTION_ENTRY_NULL };
  g_auto (GStrv) words = NULL;
  SlopepackExit code;

  if (!slopepack_read_options (&slopepack_why, argv, entries, 1, 2, &words, &code))
    return code;
  return explain (words[1], &reader, words[2]);
}
