/* SPDX-License-Identifier: MIT */
#include "opened-job.h"
#include "written-file.h"

#include <slopewright/paint/paint.h>
#include <slopewright/sheet/pack.h>
#include <slopewright/sheet/reading.h>
#include <slopewright/store/store.h>

static SlopepackExit run (char **argv);

const SlopepackCommand slopepack_pack = {
  "pack",
  "Write the crew pack as a tagged PDF, or as plain text.",
  "JOB -o FILE",
  "The same job gives the same bytes. A job with a stop finding still gets its pack,\n"
  "which says so on its first page, and exit status 3.",
  run,
};

static SlopepackExit
choose_paper (const char *name, const SwJob *job, SwPaper *paper)
{
  *paper = job->paper;
  if (name == NULL || sw_paper_from_code (name, paper))
    return SLOPEPACK_DONE;
  return slopepack_complain (
      SLOPEPACK_USAGE, "--paper: found '%s'; expected A4, Letter, A3 or Tabloid", name);
}

static SlopepackExit
write_pages (const SlopepackJob *opened, SwPaper paper, const SwTextMeasure *measure,
             gboolean as_text, const char *output)
{
  const SwDraw draw = { .texts = opened->texts,
                        .measure = measure,
                        .style = opened->style };
  const SwJobCard *card = &opened->job->card;
  const SwPdfInfo info = { .title = card->name,
                           .author = card->prepared_by,
                           .creator = "slopepack " SW_VERSION };
  g_autoptr (SwPalette) palette = sw_palette_load ();
  g_autoptr (GPtrArray) pages =
      sw_pack_new (opened->result, &draw, paper, SW_VERSION, opened->fingerprint);
  g_autoptr (GError) error = NULL;

  if (as_text)
    {
      g_autofree char *text = sw_pages_text (pages);
      return slopepack_write_text (text, output);
    }
  if (!sw_paint_pdf (pages, palette, &info, output, &error))
    return slopepack_paint_complaint (error);
  return SLOPEPACK_DONE;
}

static SlopepackExit
pack (const char *path, const SlopepackReader *reader, const char *paper_name,
      gboolean as_text, const char *output)
{
  g_auto (SlopepackJob) opened = { 0 };
  g_autoptr (GError) error = NULL;
  SwPaper paper;
  SlopepackExit code = slopepack_job_open (path, reader, &opened);

  if (code == SLOPEPACK_DONE)
    code = choose_paper (paper_name, opened.job, &paper);
  if (code != SLOPEPACK_DONE)
    return code;

  const SwTextMeasure *measure = sw_paint_measure (&error);
  if (measure == NULL)
    return slopepack_paint_complaint (error);
  code = write_pages (&opened, paper, measure, as_text, output);
  return code == SLOPEPACK_DONE ? slopepack_job_verdict (&opened) : code;
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
      "A4, Letter, A3 or Tabloid (default: as the job says)", "PAPER" },
    { "text", 0, 0, G_OPTION_ARG_NONE, &as_text,
      "Plain text, for screen readers and braille lines", NULL },
    SLOPEPACK_READER_OPTIONS (reader),
    G_OPTION_ENTRY_NULL
  };
  g_auto (GStrv) words = NULL;
  SlopepackExit code;

  if (!slopepack_read_options (&slopepack_pack, argv, entries, 1, 1, &words, &code))
    return code;
  code = slopepack_check_output (&slopepack_pack, output, words[1]);
  return code == SLOPEPACK_DONE ? pack (words[1], &reader, paper, as_text, output) : code;
}
