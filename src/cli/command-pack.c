/* SPDX-License-Identifier: MIT */
#include "written-file.h"
#include "written-pack.h"

static SlopepackExit run (char **argv);

const SlopepackCommand slopepack_pack = {
  "pack",
  "Write the crew pack, permit guidance, class handout or measuring form as a tagged "
  "PDF, or as plain text.",
  "JOB -o FILE",
  "The same job gives the same bytes. A job with a stop finding still gets its pack,\n"
  "which says so on its first page, and exit status 3.",
  run,
};

/* What was asked for on the command line; where silent, as the job says. */
typedef struct
{
  char *paper, *kind;
  int seed; /* -1: not given */
  gboolean as_text;
} Wanted;

static void
wanted_clear (Wanted *wanted)
{
  g_free (wanted->paper);
  g_free (wanted->kind);
}
G_DEFINE_AUTO_CLEANUP_CLEAR_FUNC (Wanted, wanted_clear)

static SlopepackExit
choose_plan (const Wanted *wanted, const SwJob *job, SwPackPlan *plan)
{
  *plan = job->pack;
  if (wanted->seed > (int) SW_PACK_MOST_SEED)
    return slopepack_complain (SLOPEPACK_USAGE,
                               "--seed: found %d; expected a whole number from 0 to %u",
                               wanted->seed, SW_PACK_MOST_SEED);
  if (wanted->seed >= 0)
    plan->seed = (guint) wanted->seed;
  if (wanted->kind == NULL)
    return SLOPEPACK_DONE;
  for (int i = 0; i < SW_PACK_KIND_COUNT; i++)
    if (g_str_equal (sw_pack_kind_codes[i], wanted->kind))
      {
        plan->kind = (SwPackKind) i;
        return SLOPEPACK_DONE;
      }
  return slopepack_complain (
      SLOPEPACK_USAGE,
      "--kind: found '%s'; expected crew, permit, class, class-key, "
      "measure or measure-blank",
      wanted->kind);
}

static SlopepackExit
pack (const char *path, const SlopepackReader *reader, const Wanted *wanted,
      const char *output)
{
  g_auto (SlopepackJob) opened = { 0 };
  SwPackPlan plan;
  SwPaper paper;
  SlopepackExit code = slopepack_job_open (path, reader, &opened);

  if (code == SLOPEPACK_DONE)
    code = slopepack_choose_paper (wanted->paper, opened.job, &paper);
  if (code == SLOPEPACK_DONE)
    code = choose_plan (wanted, opened.job, &plan);
  if (code != SLOPEPACK_DONE)
    return code;
  code = slopepack_write_pack (&opened, paper, &plan, wanted->as_text, output);
  return code == SLOPEPACK_DONE ? slopepack_job_verdict (&opened) : code;
}

static SlopepackExit
run (char **argv)
{
  g_auto (SlopepackReader) reader = { 0 };
  g_autofree char *output = NULL;
  g_auto (Wanted) wanted = { .seed = -1 };
  const GOptionEntry entries[] = {
    { "output", 'o', 0, G_OPTION_ARG_FILENAME, &output, "Where to write", "FILE" },
    { "paper", 0, 0, G_OPTION_ARG_FILENAME, &wanted.paper,
      "A4, Letter, A3 or Tabloid (default: as the job says)", "PAPER" },
    { "kind", 0, 0, G_OPTION_ARG_FILENAME, &wanted.kind,
      "crew, permit, class, class-key, measure or measure-blank (default: as the job "
      "says)",
      "KIND" },
    { "seed", 0, 0, G_OPTION_ARG_INT, &wanted.seed,
      "Of the handout's exercises; the same seed gives the same sheets", "N" },
    { "text", 0, 0, G_OPTION_ARG_NONE, &wanted.as_text,
      "Plain text, for screen readers and braille lines", NULL },
    SLOPEPACK_READER_OPTIONS (reader),
    G_OPTION_ENTRY_NULL
  };
  g_auto (GStrv) words = NULL;
  SlopepackExit code;

  if (!slopepack_read_options (&slopepack_pack, argv, entries, 1, 1, &words, &code))
    return code;
  code = slopepack_check_output (&slopepack_pack, output, words[1]);
  return code == SLOPEPACK_DONE ? pack (words[1], &reader, &wanted, output) : code;
}
