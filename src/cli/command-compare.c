/* SPDX-License-Identifier: MIT */
#include "opened-job.h"

#include <slopewright/sheet/report.h>

static SlopepackExit run (char **argv);

const SlopepackCommand slopepack_compare = {
  "compare",
  "Compare laying down and along the slope, and tell what measuring errors do.",
  "JOB",
  "Errors are those that the faces give. Laying along the slope is counted only;\n"
  "drawings and packs lay down the slope.",
  run,
};

static SlopepackExit
run (char **argv)
{
  g_auto (SlopepackReader) reader = { 0 };
  const GOptionEntry entries[] = { SLOPEPACK_READER_OPTIONS (reader),
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
  report = sw_report_compare (opened.result, opened.texts, opened.style);
  return slopepack_print (report);
}
