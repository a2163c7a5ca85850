/* SPDX-License-Identifier: MIT */
#include <slopewright/base/units.h>
#include <slopewright/sheet/pack.h>

/* Source: ISO 216 for A4 and A3; ANSI Y14.1 for Letter, 8.5 x 11 in, and Tabloid. */
static const struct
{
  const char *code;
  double width_mm, height_mm;
} papers[SW_PAPER_COUNT] = {
  [SW_PAPER_A4] = { "A4", 210.0, 297.0 },
  [SW_PAPER_LETTER] = { "Letter", 8.5 * SW_MM_PER_IN, 11.0 * SW_MM_PER_IN },
  [SW_PAPER_A3] = { "A3", 297.0, 420.0 },
  [SW_PAPER_TABLOID] = { "Tabloid", 11.0 * SW_MM_PER_IN, 17.0 * SW_MM_PER_IN },
};

void
sw_paper_size_mm (SwPaper paper, double *width_mm, double *height_mm)
{
  g_return_if_fail ((unsigned) paper < SW_PAPER_COUNT);
  *width_mm = papers[paper].width_mm;
  *height_mm = papers[paper].height_mm;
}

const char *
sw_paper_code (SwPaper paper)
{
  g_return_val_if_fail ((unsigned) paper < SW_PAPER_COUNT, NULL);
  return papers[paper].code;
}

gboolean
sw_paper_from_code (const char *code, SwPaper *paper)
{
  for (int i = 0; i < SW_PAPER_COUNT; i++)
    if (g_strcmp0 (code, papers[i].code) == 0)
      {
        *paper = (SwPaper) i;
        return TRUE;
      }
  return FALSE;
}
