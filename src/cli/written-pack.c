/* SPDX-License-Identifier: MIT */
#include "written-pack.h"
#include "written-file.h"

#include <slopewright/paint/paint.h>
#include <slopewright/sheet/pack.h>
#include <slopewright/sheet/reading.h>
#include <slopewright/store/store.h>

SlopepackExit
slopepack_choose_paper (const char *name, const SwJob *job, SwPaper *paper)
{
  *paper = job->paper;
  if (name == NULL || sw_paper_from_code (name, paper))
    return SLOPEPACK_DONE;
  return slopepack_complain (
      SLOPEPACK_USAGE, "--paper: found '%s'; expected A4, Letter, A3 or Tabloid", name);
}

static SlopepackExit
write_pdf (const SlopepackJob *opened, const GPtrArray *pages, const char *output)
{
  const SwJobCard *card = &opened->job->card;
  const SwPdfInfo info = { .title = card->name,
                           .author = card->prepared_by,
                           .creator = "slopepack " SW_VERSION,
                           .language = sw_texts_language (opened->texts) };
  g_autoptr (SwPalette) palette = sw_palette_load ();
  g_autoptr (GError) error = NULL;

  if (!sw_paint_pdf (pages, palette, &info, output, NULL, &error))
    return slopepack_paint_complaint (error);
  return SLOPEPACK_DONE;
}

SlopepackExit
slopepack_write_pack (const SlopepackJob *opened, SwPaper paper, const SwPackPlan *plan,
                      gboolean as_text, const char *output)
{
  g_autoptr (GError) error = NULL;
  const SwDraw draw = { .texts = opened->texts,
                        .measure = sw_paint_measure (&error),
                        .style = opened->style };
  g_autoptr (GPtrArray) pages = NULL;
  g_autofree char *text = NULL;

  if (draw.measure == NULL)
    return slopepack_paint_complaint (error);
  pages = sw_pack_new (opened->result, &draw, paper, plan, SW_VERSION,
                       opened->fingerprint, NULL);
  if (!as_text)
    return write_pdf (opened, pages, output);
  text = sw_pages_text (pages);
  return slopepack_write_text (text, output);
}
