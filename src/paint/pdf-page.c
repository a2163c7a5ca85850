/* SPDX-License-Identifier: MIT */
#include <math.h>

#include <slopewright/base/units.h>
#include <slopewright/figure/mark.h>

#include "ink.h"
#include "pdf-tags.h"

#define FINEST_PT 0.001 /* 0.35 micrometres; more digits only make files longer */
#define DEEPEST_CLIP 24 /* libharu stacks 28 graphics states */
#define ALPHA_STEP 1e-3

typedef enum
{
  PEN_NONE,
  PEN_EDGE,
  PEN_HATCH
} PenUse;

typedef enum
{
  BRUSH_NONE,
  BRUSH_FILL,
  BRUSH_TEXT
} BrushUse;

/* One page being drawn, and what its graphics state is known to be. */
typedef struct
{
  SwPdf *pdf;
  HPDF_Page page;
  const SwFigure *figure;
  guint clips;
  SwRole pen_role, brush_role;
  PenUse pen;
  BrushUse brush;
  double line_alpha, fill_alpha;
} Sheet;

static HPDF_REAL
to_pt (double mm)
{
  return (HPDF_REAL) (round (mm * SW_PT_PER_MM / FINEST_PT) * FINEST_PT);
}

static HPDF_REAL
x_pt (SwPaperPoint point)
{
  return to_pt (point.x_mm);
}

static HPDF_REAL
y_pt (const Sheet *sheet, SwPaperPoint point)
{
  return to_pt (sheet->figure->height_mm - point.y_mm);
}

static HPDF_ExtGState
find_veil (SwPdf *pdf, double line_alpha, double fill_alpha)
{
  SwPdfVeil veil = { line_alpha, fill_alpha, NULL };

  for (guint i = 0; i < pdf->veils->len; i++)
    {
      const SwPdfVeil *known = &g_array_index (pdf->veils, SwPdfVeil, i);
      if (fabs (known->line_alpha - line_alpha) < ALPHA_STEP
          && fabs (known->fill_alpha - fill_alpha) < ALPHA_STEP)
        return known->state;
    }
  veil.state = HPDF_CreateExtGState (pdf->doc);
  HPDF_ExtGState_SetAlphaStroke (veil.state, (HPDF_REAL) line_alpha);
  HPDF_ExtGState_SetAlphaFill (veil.state, (HPDF_REAL) fill_alpha);
  g_array_append_val (pdf->veils, veil);
  return veil.state;
}

static void
set_alpha (Sheet *sheet, double line_alpha, double fill_alpha)
{
  if (fabs (sheet->line_alpha - line_alpha) < ALPHA_STEP
      && fabs (sheet->fill_alpha - fill_alpha) < ALPHA_STEP)
    return;
  HPDF_Page_SetExtGState (sheet->page, find_veil (sheet->pdf, line_alpha, fill_alpha));
  sheet->line_alpha = line_alpha;
  sheet->fill_alpha = fill_alpha;
}

static void
set_pen (Sheet *sheet, SwRole role, PenUse use)
{
  const SwLook *look = &sheet->pdf->palette->looks[role];
  const double width_mm = use == PEN_HATCH ? look->hatch_width_mm : look->width_mm;
  guint16 dash_pt[4];
  const guint count = use == PEN_HATCH ? 0 : sw_ink_dash_pt (look, dash_pt);
  const gboolean is_butt = count > 0 || use == PEN_HATCH;

  set_alpha (sheet, look->line.alpha, sheet->fill_alpha);
  if (sheet->pen == use && sheet->pen_role == role)
    return;
  HPDF_Page_SetRGBStroke (sheet->page, (HPDF_REAL) look->line.red,
                          (HPDF_REAL) look->line.green, (HPDF_REAL) look->line.blue);
  HPDF_Page_SetLineWidth (sheet->page, to_pt (width_mm));
  HPDF_Page_SetDash (sheet->page, count ? dash_pt : NULL, count, 0);
  HPDF_Page_SetLineCap (sheet->page, is_butt ? HPDF_BUTT_END : HPDF_ROUND_END);
  sheet->pen = use;
  sheet->pen_role = role;
}

static void
set_brush (Sheet *sheet, SwRole role, BrushUse use)
{
  const SwLook *look = &sheet->pdf->palette->looks[role];
  const SwColour colour = use == BRUSH_TEXT ? look->line : look->fill;

  set_alpha (sheet, sheet->line_alpha, colour.alpha);
  if (sheet->brush == use && sheet->brush_role == role)
    return;
  HPDF_Page_SetRGBFill (sheet->page, (HPDF_REAL) colour.red, (HPDF_REAL) colour.green,
                        (HPDF_REAL) colour.blue);
  sheet->brush = use;
  sheet->brush_role = role;
}

static void
trace (const Sheet *sheet, const SwPaperPoint *points, guint count)
{
  HPDF_Page_MoveTo (sheet->page, x_pt (points[0]), y_pt (sheet, points[0]));
  for (guint i = 1; i < count; i++)
    HPDF_Page_LineTo (sheet->page, x_pt (points[i]), y_pt (sheet, points[i]));
}

static void
paint_line (Sheet *sheet, SwRole role, const SwPaperPoint *points, guint count)
{
  const SwLook *look = &sheet->pdf->palette->looks[role];

  if (!sw_ink_strokes (look, look->line))
    return;
  set_pen (sheet, role, PEN_EDGE);
  trace (sheet, points, count);
  HPDF_Page_Stroke (sheet->page);
}

static void
paint_hatch (Sheet *sheet, SwRole role, const SwPaperPoint *points, guint count)
{
  GArray *ends = sheet->pdf->hatch;

  sw_mark_hatch (points, count, sheet->pdf->palette->looks[role].hatch_mm,
                 sheet->figure->width_mm, sheet->figure->height_mm, ends);
  if (ends->len < 2)
    return;
  set_pen (sheet, role, PEN_HATCH);
  for (guint i = 0; i + 1 < ends->len; i += 2)
    trace (sheet, &g_array_index (ends, SwPaperPoint, i), 2);
  HPDF_Page_Stroke (sheet->page);
}

static void
paint_area (Sheet *sheet, SwRole role, const SwPaperPoint *points, guint count)
{
  const SwLook *look = &sheet->pdf->palette->looks[role];

  if (sw_ink_fills (look->fill))
    {
      set_brush (sheet, role, BRUSH_FILL);
      trace (sheet, points, count);
      HPDF_Page_ClosePath (sheet->page);
      HPDF_Page_Eofill (sheet->page);
    }
  if (sw_ink_hatches (look, look->line))
    paint_hatch (sheet, role, points, count);
  if (sw_ink_strokes (look, look->line))
    {
      set_pen (sheet, role, PEN_EDGE);
      trace (sheet, points, count);
      HPDF_Page_ClosePathStroke (sheet->page);
    }
}

static void
paint_circle (Sheet *sheet, SwRole role, SwPaperPoint centre, double radius_mm)
{
  const SwLook *look = &sheet->pdf->palette->looks[role];
  const gboolean fills = sw_ink_fills (look->fill);
  const gboolean strokes = sw_ink_strokes (look, look->line);
  const HPDF_REAL radius_pt = to_pt (radius_mm);

  if (!(fills || strokes) || !(radius_pt > 0.0f))
    return;
  if (fills)
    set_brush (sheet, role, BRUSH_FILL);
  if (strokes)
    set_pen (sheet, role, PEN_EDGE);
  HPDF_Page_Circle (sheet->page, x_pt (centre), y_pt (sheet, centre), radius_pt);
  if (fills && strokes)
    HPDF_Page_FillStroke (sheet->page);
  else if (fills)
    HPDF_Page_Fill (sheet->page);
  else
    HPDF_Page_Stroke (sheet->page);
}

static void
paint_dots (Sheet *sheet, guint first, guint count)
{
  const SwItem *items = &g_array_index (sheet->figure->items, SwItem, first);
  const SwLook *look = &sheet->pdf->palette->looks[items->role];

  set_pen (sheet, items->role, PEN_EDGE);
  HPDF_Page_SetLineWidth (sheet->page,
                          to_pt (sw_ink_dot_width_mm (sheet->figure, first, look)));
  sheet->pen = PEN_NONE; /* its width is no longer the look's */
  for (guint i = 0; i < count; i++)
    {
      const SwPaperPoint centre = *sw_figure_item_points (sheet->figure, &items[i]);
      trace (sheet, (const SwPaperPoint[]){ centre, centre }, 2);
    }
  HPDF_Page_Stroke (sheet->page);
}

static void
paint_text (Sheet *sheet, const SwItem *item, SwPaperPoint at)
{
  SwPdf *pdf = sheet->pdf;
  const double width_mm =
      item->size_mm * sw_faces_width (pdf->faces, item->typeface, item->text);
  const SwPaperPoint start = sw_ink_text_start (item, at, width_mm);
  const HPDF_REAL size_pt = to_pt (item->size_mm);
  const HPDF_REAL cosine = (HPDF_REAL) cos (item->turn_rad);
  const HPDF_REAL sine = (HPDF_REAL) sin (item->turn_rad);

  if (!*item->text || !(size_pt > 0.0f))
    return;
  set_brush (sheet, item->role, BRUSH_TEXT);
  HPDF_Page_BeginText (sheet->page);
  HPDF_Page_SetFontAndSize (sheet->page, pdf->fonts[item->typeface], size_pt);
  HPDF_Page_SetTextMatrix (sheet->page, cosine, sine, -sine, cosine, x_pt (start),
                           y_pt (sheet, start));
  HPDF_Page_ShowText (sheet->page, item->text);
  HPDF_Page_EndText (sheet->page);
}

static void
begin_clip (Sheet *sheet, const SwPaperPoint *points, guint count)
{
  sheet->clips++;
  if (sheet->clips > DEEPEST_CLIP)
    {
      g_critical ("clips are nested more than %d deep", DEEPEST_CLIP);
      return;
    }
  set_alpha (sheet, 1.0, 1.0); /* known again when the clip ends */
  HPDF_Page_GSave (sheet->page);
  trace (sheet, points, count);
  HPDF_Page_ClosePath (sheet->page);
  HPDF_Page_Eoclip (sheet->page);
  HPDF_Page_EndPath (sheet->page);
}

static void
end_clip (Sheet *sheet)
{
  if (sheet->clips == 0)
    return;
  if (sheet->clips <= DEEPEST_CLIP)
    HPDF_Page_GRestore (sheet->page);
  sheet->clips--;
  sheet->pen = PEN_NONE;
  sheet->brush = BRUSH_NONE;
  sheet->line_alpha = 1.0;
  sheet->fill_alpha = 1.0;
}

static void
add_link (Sheet *sheet, const SwItem *item, const SwPaperPoint *corners)
{
  HPDF_Destination target = g_hash_table_lookup (sheet->pdf->targets, item->text);
  const HPDF_Rect box = { .left = x_pt (corners[0]),
                          .bottom = y_pt (sheet, corners[1]),
                          .right = x_pt (corners[1]),
                          .top = y_pt (sheet, corners[0]) };
  HPDF_Annotation link = HPDF_Page_CreateLinkAnnot (sheet->page, box, target);

  HPDF_LinkAnnot_SetBorderStyle (link, 0.0f, 0, 0);
  sw_pdf_tags_link (sheet->pdf->tags, link, item->text);
}

static void
paint_item (Sheet *sheet, const SwItem *item)
{
  const SwPaperPoint *points = sw_figure_item_points (sheet->figure, item);

  switch (item->kind)
    {
    case SW_ITEM_LINE:
      paint_line (sheet, item->role, points, item->n_points);
      break;
    case SW_ITEM_AREA:
      paint_area (sheet, item->role, points, item->n_points);
      break;
    case SW_ITEM_CIRCLE:
      paint_circle (sheet, item->role, points[0], points[1].x_mm);
      break;
    case SW_ITEM_TEXT:
      paint_text (sheet, item, points[0]);
      break;
    case SW_ITEM_CLIP:
      begin_clip (sheet, points, item->n_points);
      break;
    case SW_ITEM_UNCLIP:
      end_clip (sheet);
      break;
    case SW_ITEM_LINK:
      add_link (sheet, item, points);
      break;
    case SW_ITEM_TAG:
      sw_pdf_tags_begin (sheet->pdf->tags, item->tag, item->text);
      break;
    case SW_ITEM_UNTAG:
      sw_pdf_tags_end (sheet->pdf->tags);
      break;
    }
}

void
sw_pdf_paint_page (SwPdf *pdf, HPDF_Page page, const SwFigure *figure)
{
  Sheet sheet = {
    .pdf = pdf, .page = page, .figure = figure, .line_alpha = 1.0, .fill_alpha = 1.0
  };

  sw_pdf_tags_begin_page (pdf->tags, page);
  HPDF_Page_SetLineJoin (page, HPDF_ROUND_JOIN);
  for (guint i = 0; i < figure->items->len;)
    {
      const SwItem *item = &g_array_index (figure->items, SwItem, i);
      const SwLook *look = &pdf->palette->looks[item->role];
      const guint dots = sw_ink_dots (figure, i, look, look->line, look->fill);

      if (dots > 0 || item->kind <= SW_ITEM_TEXT)
        sw_pdf_tags_before (pdf->tags, item);
      if (dots > 0)
        paint_dots (&sheet, i, dots);
      else
        paint_item (&sheet, item);
      i += MAX (dots, 1);
    }
  while (sheet.clips > 0)
    end_clip (&sheet);
  sw_pdf_tags_end_page (pdf->tags);
}
