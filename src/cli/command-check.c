/* SPDX-License-Identifier: MIT */
#include "opened-job.h"

#include <slopewright/sheet/report.h>

static SlopepackExit run (char **argv);

const SlopepackCommand slopepack_check = {
  "check",
  "Print the findings, the nineteen checks, and how each blanket type fits the job.",
  "JOB",
  "Exit status 3 when there is a stop finding; with --strict a caution counts too.\n"
  "No finding is no proof that the slope is stable or the work without danger.",
  run,
};

static SlopepackExit
print_findings (const SlopepackJob *opened)
{
  g_autofree char *report =
      sw_report_findings (opened->result, opened->texts, opened->style);
  g_autofree char *checks =
      sw_report_checks (opened->result, opened->texts, opened->style);
  g_autofree char *soil = sw_report_soil (opened->result, opened->texts, opened->style);
  g_autofree char *choice =
      sw_report_choice (opened->result, opened->texts, opened->style);
  g_autofree char *all = g_strconcat (*report != '\0' ? report : "No findings.\n", "\n",
                                      checks, "\n", soil, "\n", choice, NULL);

  return slopepack_print (all);
}

static SlopepackExit
check (const char *path, const SlopepackReader *reader, gboolean strict)
{
  g_auto (SlopepackJob) opened = { 0 };
  SlopepackExit code = slopepack_job_open (path, reader, &opened);

  if (code == SLOPEPACK_DONE)
    code = print_findings (&opened);
  if (code == SLOPEPACK_DONE)
    code = slopepack_job_verdict (&opened);
  if (code == SLOPEPACK_DONE && strict
      && sw_findings_count (opened.result->findings, SW_SEVERITY_CAUTION) > 0)
    code = slopepack_complain (SLOPEPACK_STOP_FINDING,
                               "the job has cautions, and --strict was given");
  return code;
}

static SlopepackExit
run (char **argv)
{
  g_auto (SlopepackReader) reader = { 0 };
  gboolean strict = FALSE;
  const GOptionEntry entries[] = { { "strict", 0, 0, G_OPTION_ARG_NONE, &strict,
                                     "Exit with 3 for cautions too", NULL },
                                   SLOPEPACK_READER_OPTIONS (reader),
                                   G_OPTION_ENTRY_NULL };
  g_auto (GStrv) words = NULL;
  SlopepackExit code;

  if (!slopepack_read_options (&slopepack_check, argv, entries, 1, 1, &words, &code))
    return code;
  return check (words[1], &reader, strict);
}
