/* SPDX-License-Identifier: MIT */
#include "opened-job.h"

#include <slopewright/sheet/practices.h>
#include <slopewright/sheet/report.h>

static SlopepackExit run (char **argv);

const SlopepackCommand slopepack_compare = {
  "compare",
  "Compare laying down and along the slope, and tell what measuring errors do.",
  "JOB",
  "Errors are those that the faces give. Laying along the slope is counted only;\n"
  "drawings and packs lay down the slope. With --practice, hold the job's practice\n"
  "against another one instead.",
  run,
};

/* Print the job under its own practice beside the one called @id. */
static SlopepackExit
compare_practices (const SlopepackJob *opened, const char *id)
{
  g_autoptr (SwResult) other = NULL;
  g_autofree char *report = NULL;

  if (sw_catalogue_practice (opened->catalogue, id) == NULL)
    {
      g_autoptr (GString) known = g_string_new (NULL);

      for (guint i = 0; i < opened->catalogue->practices->len; i++)
        g_string_append_printf (
            known, "%s%s", i == 0 ? "" : ", ",
            ((SwPractice *) opened->catalogue->practices->pdata[i])->id);
      return slopepack_complain (SLOPEPACK_USAGE,
                                 "--practice: found '%s'; the catalogue has: %s", id,
                                 known->str);
    }
  other = sw_result_of_practice (opened->result, id);
  report = sw_report_practices_text (opened->result, other, opened->texts, opened->style);
  return slopepack_print (report);
}

static SlopepackExit
run (char **argv)
{
  g_auto (SlopepackReader) reader = { 0 };
  g_autofree char *practice = NULL;
  const GOptionEntry entries[] = { SLOPEPACK_READER_OPTIONS (reader),
                                   { "practice", 0, 0, G_OPTION_ARG_FILENAME, &practice,
                                     "Practice to hold against the job's own", "ID" },
                                   G_OPTION_ENTRY_NULL };
  g_auto (GStrv) words = NULL;
  g_auto (SlopepackJob) opened = { 0 };
  g_autofree char *report = NULL;
  SlopepackExit code;

  if (!slopepack_read_options (&slopepack_compare, argv, entries, 1, 1, &words, &code))
    return code;
  code = slopepack_job_open (words[1], &reader, &opened);
  if (code != SLOPEPACK_DONE)
    return code;
  if (practice != NULL)
    return compare_practices (&opened, practice);
  report = sw_report_compare (opened.result, opened.texts, opened.style);
  return slopepack_print (report);
}
