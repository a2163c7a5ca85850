/* SPDX-License-Identifier: MIT */
#include <math.h>

#include <slopewright/base/units.h>

#include "pdf.h"

/* Source: libharu 2.3, hpdf_consts.h; 32767 and 14400 are also limits of PDF 1.3 readers. */
#define FARTHEST_PT 32767.0
#define SMALLEST_PAGE_PT 3.0
#define LARGEST_PAGE_PT 14400.0
#define LARGEST_TEXT_PT 600.0

static gboolean
in_range (double value_mm, double least_pt, double most_pt)
{
  const double value_pt = value_mm * SW_PT_PER_MM;

  return value_pt >= least_pt && value_pt <= most_pt; /* false for not a number */
}

static void
refuse (GError **error, guint number, const SwFigure *figure, const char *what,
        double found_mm, double least_pt, double most_pt)
{
  char found[G_ASCII_DTOSTR_BUF_SIZE];
  char least[G_ASCII_DTOSTR_BUF_SIZE];
  char most[G_ASCII_DTOSTR_BUF_SIZE];

  g_ascii_formatd (found, sizeof found, "%.1f", found_mm);
  g_ascii_formatd (least, sizeof least, "%.1f", least_pt / SW_PT_PER_MM);
  g_ascii_formatd (most, sizeof most, "%.1f", most_pt / SW_PT_PER_MM);
  g_set_error (error, SW_PAINT_ERROR, SW_PAINT_ERROR_SIZE,
               "page %u (%s): %s is %s mm; a PDF holds %s to %s mm", number,
               figure->title ? figure->title : "no title", what, found, least, most);
}

static gboolean
check_page (const SwFigure *figure, guint number, GError **error)
{
  if (!in_range (figure->width_mm, SMALLEST_PAGE_PT, LARGEST_PAGE_PT))
    refuse (error, number, figure, "the width", figure->width_mm, SMALLEST_PAGE_PT,
            LARGEST_PAGE_PT);
  else if (!in_range (figure->height_mm, SMALLEST_PAGE_PT, LARGEST_PAGE_PT))
    refuse (error, number, figure, "the height", figure->height_mm, SMALLEST_PAGE_PT,
            LARGEST_PAGE_PT);
  else
    return TRUE;
  return FALSE;
}

/* A radius is among the points, and may as well not be endless. */
static gboolean
check_points (const SwFigure *figure, guint number, GError **error)
{
  for (guint i = 0; i < figure->points->len; i++)
    {
      const SwPaperPoint point = g_array_index (figure->points, SwPaperPoint, i);
      const double from_below_mm = figure->height_mm - point.y_mm;

      if (!in_range (point.x_mm, -FARTHEST_PT, FARTHEST_PT))
        refuse (error, number, figure, "a point's x", point.x_mm, -FARTHEST_PT,
                FARTHEST_PT);
      else if (!in_range (from_below_mm, -FARTHEST_PT, FARTHEST_PT))
        refuse (error, number, figure, "a point's height", from_below_mm, -FARTHEST_PT,
                FARTHEST_PT);
      else
        continue;
      return FALSE;
    }
  return TRUE;
}

static gboolean
check_texts (const SwFigure *figure, guint number, GError **error)
{
  for (guint i = 0; i < figure->items->len; i++)
    {
      const SwItem *item = &g_array_index (figure->items, SwItem, i);

      if (item->kind != SW_ITEM_TEXT || in_range (item->size_mm, 0.0, LARGEST_TEXT_PT))
        continue;
      refuse (error, number, figure, "a text size", item->size_mm, 0.0, LARGEST_TEXT_PT);
      return FALSE;
    }
  return TRUE;
}

gboolean
sw_pdf_check_size (const SwFigure *figure, guint number, GError **error)
{
  return check_page (figure, number, error) && check_points (figure, number, error)
         && check_texts (figure, number, error);
}
