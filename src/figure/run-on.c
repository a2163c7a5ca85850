/* SPDX-License-Identifier: MIT */
#include "run-on.h"

#include <math.h>

#define HEAD_MM 2.6
#define GAP_MM 2.0

/* On plan: beside the leeward end. */
#define PLAN_HALF_MM 3.2
#define PLAN_SIDE_MM 3.0

/* In the section: over the ground behind the crest and its trench. */
#define SECTION_OVER_MM 3.4
#define SECTION_FROM_MM 26.0
#define SECTION_TO_MM 12.0
#define SECTION_LEAST_MM 8.0

/* Nothing lies above a heap. */
static gboolean
comes (const SwDrawing *drawing)
{
  const SwJob *job = drawing->result->job;

  return !sw_face_is_heap (drawing->face)
         && (job->site[SW_SITE_RUN_ON] == SW_ANSWER_YES
             || job->numbers.values[SW_NUMBER_RUN_ON_M] > 0.0);
}

static void
draw_arrow (SwDrawing *drawing, SwPaperPoint from, SwPaperPoint to)
{
  double left = fmin (from.x_mm, to.x_mm), top = fmin (from.y_mm, to.y_mm);

  sw_drawing_object (drawing, "/run-on");
  sw_draft_arrow (drawing->figure, SW_ROLE_FALL_LINE, from.x_mm, from.y_mm, to.x_mm,
                  to.y_mm, HEAD_MM);
  sw_labels_reserve_rect (drawing->labels, left - 1.2, top - 1.2,
                          fabs (to.x_mm - from.x_mm) + 2.4,
                          fabs (to.y_mm - from.y_mm) + 2.4);
}

static void
name_arrow (SwDrawing *drawing, const SwLabelSpot *spots, guint n_spots)
{
  sw_drawing_label (drawing, SW_LABEL_USEFUL, spots, n_spots,
                    sw_drawing_object_id (drawing, "/run-on"),
                    sw_drawing_text (drawing, "drawing.run-on"));
}

static double
half_name_mm (const SwDrawing *drawing)
{
  return sw_drawing_width_mm (drawing, sw_drawing_text (drawing, "drawing.run-on"),
                              drawing->text_mm)
         / 2.0;
}

void
sw_plan_run_on (SwDrawing *drawing, SwBox paper, double row_mm)
{
  gboolean left = drawing->face->leeward == SW_SIDE_LEFT;
  double y = paper.y0_m - row_mm, side = left ? 1.0 : -1.0;
  double x = left ? paper.x0_m + PLAN_SIDE_MM : paper.x1_m - PLAN_SIDE_MM;
  double beside_mm = GAP_MM + half_name_mm (drawing);
  SwLabelSpot spots[] = { { x + side * beside_mm, y, 0.0 },
                          { x - side * beside_mm, y, 0.0 } };

  if (!comes (drawing))
    return;
  draw_arrow (drawing, (SwPaperPoint){ x, y - PLAN_HALF_MM },
              (SwPaperPoint){ x, y + PLAN_HALF_MM });
  name_arrow (drawing, spots, G_N_ELEMENTS (spots));
}

void
sw_section_run_on (SwDrawing *drawing)
{
  SwPoint crest = drawing->face->section[drawing->face->crest];
  SwPaperPoint at = sw_drawing_at (drawing, crest.x_m, crest.y_m);
  double y = at.y_mm - SECTION_OVER_MM, to = at.x_mm - SECTION_TO_MM;
  double from = fmax (at.x_mm - SECTION_FROM_MM, SECTION_TO_MM / 4.0);
  double half_mm = half_name_mm (drawing);
  double middle = fmax ((from + to) / 2.0, half_mm + GAP_MM);
  SwLabelSpot spots[] = {
    { from - GAP_MM - half_mm, y, 0.0 }, { middle, y - 2.0 * GAP_MM, 0.0 },
    { middle, y - 3.0 * GAP_MM, 0.0 },   { middle, y - 4.0 * GAP_MM, 0.0 },
    { middle, y - 6.0 * GAP_MM, 0.0 },   { middle, y - 8.0 * GAP_MM, 0.0 }
  };

  if (!comes (drawing) || to - from < SECTION_LEAST_MM)
    return;
  draw_arrow (drawing, (SwPaperPoint){ from, y }, (SwPaperPoint){ to, y });
  name_arrow (drawing, spots, G_N_ELEMENTS (spots));
}
