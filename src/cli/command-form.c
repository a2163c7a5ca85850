/* SPDX-License-Identifier: MIT */
#include "written-file.h"
#include "written-pack.h"

static SlopepackExit run (char **argv);

const SlopepackCommand slopepack_form = {
  "form",
  "Write a blank measuring form for a slope that nobody has measured. Needs no job.",
  "-o FILE",
  "For a form that shows what a job already holds: slopepack pack JOB --kind measure.",
  run,
};

static SlopepackExit
form (const SlopepackReader *reader, const char *paper_name, gboolean as_text,
      const char *output)
{
  g_auto (SlopepackJob) opened = { 0 };
  SwPackPlan plan;
  SwPaper paper;
  SlopepackExit code = slopepack_job_open_new (reader, &opened);

  if (code == SLOPEPACK_DONE)
    code = slopepack_choose_paper (paper_name, opened.job, &paper);
  if (code != SLOPEPACK_DONE)
    return code;
  plan = opened.job->pack;
  plan.kind = SW_PACK_MEASURE_BLANK;
  return slopepack_write_pack (&opened, paper, &plan, as_text, output);
}

static SlopepackExit
run (char **argv)
{
  g_auto (SlopepackReader) reader = { 0 };
  g_autofree char *output = NULL;
  g_autofree char *paper = NULL;
  gboolean as_text = FALSE;
  const GOptionEntry entries[] = {
    { "output", 'o', 0, G_OPTION_ARG_FILENAME, &output, "Where to write", "FILE" },
    { "paper", 0, 0, G_OPTION_ARG_FILENAME, &paper,
      "A4, Letter, A3 or Tabloid (default: A4)", "PAPER" },
    { "units", 0, 0, G_OPTION_ARG_FILENAME, &reader.units,
      "Units to print: metric or us (default: metric)", "UNITS" },
    { "language", 0, 0, G_OPTION_ARG_FILENAME, &reader.language,
      "Language of the words: en, es or fr (default: en)", "CODE" },
    { "text", 0, 0, G_OPTION_ARG_NONE, &as_text,
      "Plain text, for screen readers and braille lines", NULL },
    G_OPTION_ENTRY_NULL
  };
  g_auto (GStrv) words = NULL;
  SlopepackExit code;

  if (!slopepack_read_options (&slopepack_form, argv, entries, 0, 0, &words, &code))
    return code;
  code = slopepack_check_output (&slopepack_form, output, NULL);
  return code == SLOPEPACK_DONE ? form (&reader, paper, as_text, output) : code;
}
