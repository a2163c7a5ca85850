/* SPDX-License-Identifier: MIT */
#include "opened-job.h"

#include <slopewright/sheet/report.h>

static SlopepackExit run (char **argv);

const SlopepackCommand slopepack_tally = {
  "tally",
  "Print every quantity: areas, runs, rolls, cut list, pins, trenches, seed.",
  "JOB",
  "csv has one number a line in SI units; json has the cut list and all workings too.",
  run,
};

static gboolean
read_format (const char *name, SwTallyFormat *format)
{
  static const char *const names[] = { "text", "csv", "json" };

  for (guint i = 0; i < G_N_ELEMENTS (names); i++)
    if (name == NULL || g_str_equal (name, names[i]))
      {
        *format = (SwTallyFormat) i;
        return TRUE;
      }
  return FALSE;
}

static SlopepackExit
print_tally (const char *path, const SlopepackReader *reader, SwTallyFormat format)
{
  g_auto (SlopepackJob) opened = { 0 };
  SlopepackExit code = slopepack_job_open (path, reader, &opened);

  if (code != SLOPEPACK_DONE)
    return code;
  g_autofree char *report =
      sw_report_tally (opened.result, opened.texts, opened.style, format);
  return slopepack_print (report);
}

static SlopepackExit
run (char **argv)
{
  g_auto (SlopepackReader) reader = { 0 };
  g_autofree char *format_name = NULL;
  const GOptionEntry entries[] = { { "format", 0, 0, G_OPTION_ARG_FILENAME, &format_name,
                                     "text, csv or json (default: text)", "FORMAT" },
                                   SLOPEPACK_READER_OPTIONS (reader),
                                   G_OPTION_ENTRY_NULL };
  g_auto (GStrv) words = NULL;
  SlopepackExit code;
  SwTallyFormat format;

  if (!slopepack_read_options (&slopepack_tally, argv, entries, 1, 1, &words, &code))
    return code;
  if (!read_format (format_name, &format))
    return slopepack_complain (
        SLOPEPACK_USAGE, "--format: found '%s'; expected text, csv or json", format_name);
  return print_tally (words[1], &reader, format);
}
