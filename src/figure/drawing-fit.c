/* SPDX-License-Identifier: MIT */
#include "face-view.h"
#include "plan-shape.h"
#include <math.h>

/* Ground shown beyond crest and toe, at least; and as a part of the face's run. */
#define BEYOND_M 0.6
#define BEYOND_RATIO 0.07

/* Room on paper for what the drawings write round themselves. */
#define SECTION_LEFT_MM 9.0
#define SECTION_RIGHT_MM 9.0
#define SECTION_TOP_MM 12.0
#define SECTION_BELOW_MM 21.0
#define PLAN_SIDE_MM 19.0
#define PLAN_TOP_MM 18.0
#define PLAN_BELOW_MM 13.0
#define FACE_SIDE_MM 18.0
#define FACE_TOP_MM 16.0
#define FACE_BELOW_MM 11.0
#define ROUND_SIDE_MM 20.0
#define ROUND_TOP_MM 15.0
#define ROUND_BELOW_MM 16.0

/* Parts into which an arc is cut to find its box. */
#define ARC_PARTS 96

/* A figure keeps at least this much for the thing itself. */
#define LEAST_MM 10.0

static double
practice_or (const SwResult *result, SwPracticeValue value, double otherwise)
{
  if (result->layout == NULL)
    return otherwise;
  return sw_practice_get (result->layout->practice, value);
}

static double
behind_crest_m (const SwResult *result)
{
  return practice_or (result, SW_PRACTICE_SET_BACK_M, 0.6)
         + practice_or (result, SW_PRACTICE_TRENCH_WIDTH_M, 0.15);
}

SwBox
sw_section_box (const SwResult *result, guint face_index)
{
  const SwFace *face = sw_result_face (result, face_index);
  const SwPoint *p = face->section;
  SwBox box = { 0.0, 0.0, 1.0, 1.0 };
  double run, before, after;

  if (face->n_section < 2)
    return box;
  box = (SwBox){ p[0].x_m, p[0].y_m, p[face->n_section - 1].x_m, p[0].y_m };
  for (guint i = 0; i < face->n_section; i++)
    {
      box.x0_m = fmin (box.x0_m, p[i].x_m);
      box.x1_m = fmax (box.x1_m, p[i].x_m);
      box.y0_m = fmin (box.y0_m, p[i].y_m);
      box.y1_m = fmax (box.y1_m, p[i].y_m);
    }
  for (guint f = 0; f < face->n_further; f++)
    for (guint i = 0; i < face->n_section; i++)
      {
        SwPoint at = face->further[f].section[i];

        box = (SwBox){ fmin (box.x0_m, at.x_m), fmin (box.y0_m, at.y_m),
                       fmax (box.x1_m, at.x_m), fmax (box.y1_m, at.y_m) };
      }
  run = box.x1_m - box.x0_m;
  before = behind_crest_m (result) + fmax (BEYOND_M, run * BEYOND_RATIO);
  after = fmax (BEYOND_M, run * BEYOND_RATIO);
  if (face->crest < face->n_section && face->toe < face->n_section)
    {
      box.x0_m = fmin (box.x0_m, p[face->crest].x_m - before);
      box.x1_m = fmax (box.x1_m, p[face->toe].x_m + after);
    }
  return box;
}

SwBox
sw_plan_box (const SwResult *result, guint face_index)
{
  const SwFace *face = sw_result_face (result, face_index);
  SwBox box = { 0.0, 0.0, 1.0, 1.0 };

  if (sw_plan_is_bent (face))
    return sw_plan_bent_box (face, behind_crest_m (result));
  if (face->n_outline > 0)
    box = sw_ring_box ((SwRing){ face->outline, face->n_outline });
  if (face->crest < face->n_section)
    box.y0_m = fmin (box.y0_m, face->section[face->crest].x_m);
  if (result->layout != NULL)
    box.y0_m -= behind_crest_m (result);
  return box;
}

SwBox
sw_face_view_reach (const SwResult *result, guint face_index)
{
  const SwFaceLayout *laid = &result->layout->faces[face_index];
  SwBox box = { INFINITY, INFINITY, -INFINITY, -INFINITY };

  for (guint i = 0; i < laid->n_tiers; i++)
    {
      const SwTier *tier = &laid->tiers[i];

      box.x0_m = fmin (box.x0_m, tier->along_from_m);
      box.x1_m = fmax (box.x1_m, tier->along_to_m);
      box.y0_m = fmin (box.y0_m, tier->reach.down_from_m);
      box.y1_m = fmax (box.y1_m, tier->reach.down_to_m);
    }
  box.y0_m -= behind_crest_m (result);
  box.y1_m += practice_or (result, SW_PRACTICE_TOE_WIDTH_M, 0.0);
  return box;
}

/* Box of a reach of the face as it lies flat. */
static SwBox
developed_box (SwDevelopment development, SwBox reach)
{
  SwBox box = { INFINITY, INFINITY, -INFINITY, -INFINITY };

  for (guint k = 0; k <= 2 * ARC_PARTS + 1; k++)
    {
      double t = (double) (k / 2) / ARC_PARTS;
      SwPoint on = { reach.x0_m + (reach.x1_m - reach.x0_m) * t,
                     k % 2 == 0 ? reach.y0_m : reach.y1_m };
      SwPoint at = sw_development_lay (development, on);

      box = (SwBox){ fmin (box.x0_m, at.x_m), fmin (box.y0_m, at.y_m),
                     fmax (box.x1_m, at.x_m), fmax (box.y1_m, at.y_m) };
    }
  return box;
}

SwBox
sw_face_view_box (const SwResult *result, guint face_index)
{
  SwDevelopment development;
  SwBox reach;

  if (result->layout == NULL)
    return sw_plan_box (result, face_index);
  reach = sw_face_view_reach (result, face_index);
  development = sw_development_of (&result->layout->faces[face_index]);
  return sw_development_is_bent (development) ? developed_box (development, reach)
                                              : reach;
}

SwView
sw_fit_inside (SwBox world, const SwDraw *draw, double width_mm, double height_mm,
               double left_mm, double right_mm, double top_mm, double bottom_mm,
               gboolean y_up, double *scale)
{
  double width = fmax (LEAST_MM, width_mm - left_mm - right_mm);
  double height = fmax (LEAST_MM, height_mm - top_mm - bottom_mm);
  double picked = sw_drawing_scale (draw, world.x1_m - world.x0_m,
                                    world.y1_m - world.y0_m, width, height);
  double mm_per_m = 1000.0 / picked, y_mm_per_m = y_up ? -mm_per_m : mm_per_m;

  if (scale != NULL)
    *scale = picked;
  return (SwView){ width_mm,
                   height_mm,
                   left_mm + width / 2.0 - (world.x0_m + world.x1_m) / 2.0 * mm_per_m,
                   top_mm + height / 2.0 - (world.y0_m + world.y1_m) / 2.0 * y_mm_per_m,
                   mm_per_m,
                   y_mm_per_m };
}

/* On screen there is no foot and no caption. */
static double
top_mm (double paper_mm, const SwDraw *draw)
{
  return draw->on_screen ? paper_mm : paper_mm + sw_draw_text_mm (draw);
}

SwView
sw_section_fit (const SwResult *result, guint face, double width_mm, double height_mm,
                const SwDraw *draw, double *scale)
{
  g_autoptr (GArray) key = sw_section_key (result, draw, 1.0);

  return sw_fit_inside (sw_section_box (result, face), draw, width_mm, height_mm,
                        SECTION_LEFT_MM, SECTION_RIGHT_MM, top_mm (SECTION_TOP_MM, draw),
                        SECTION_BELOW_MM + sw_drawing_foot_mm (key, draw, width_mm), TRUE,
                        scale);
}

SwView
sw_plan_fit (const SwResult *result, guint face, double width_mm, double height_mm,
             const SwDraw *draw, double *scale)
{
  g_autoptr (GArray) key = sw_plan_key (result, face, draw);

  return sw_fit_inside (sw_plan_box (result, face), draw, width_mm, height_mm,
                        PLAN_SIDE_MM, PLAN_SIDE_MM, top_mm (PLAN_TOP_MM, draw),
                        PLAN_BELOW_MM + sw_drawing_foot_mm (key, draw, width_mm), FALSE,
                        scale);
}

SwView
sw_face_view_fit (const SwResult *result, guint face, double width_mm, double height_mm,
                  const SwDraw *draw, double *scale)
{
  g_autoptr (GArray) key = sw_face_view_key (result, face, draw, FALSE, FALSE);
  const SwFace *shape = sw_result_face (result, face);
  gboolean is_round = shape->crest_form != SW_CREST_STRAIGHT;
  double right_mm = shape->n_further > 0 ? SW_RULED_ROW_MM : 0.0;
  double side_mm = is_round ? ROUND_SIDE_MM : FACE_SIDE_MM;
  double above_mm = is_round ? ROUND_TOP_MM : FACE_TOP_MM;
  double below_mm = is_round ? ROUND_BELOW_MM : FACE_BELOW_MM;

  return sw_fit_inside (sw_face_view_box (result, face), draw, width_mm, height_mm,
                        side_mm, side_mm + right_mm, top_mm (above_mm, draw),
                        below_mm + sw_drawing_foot_mm (key, draw, width_mm), FALSE,
                        scale);
}
