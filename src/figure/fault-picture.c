/* SPDX-License-Identifier: MIT */
#include "drafting.h"
#include <slopewright/figure/drawings.h>

/* All sizes at 52 x 34 mm. */
#define WIDE 52.0
#define HIGH 34.0
#define THICK 0.55 /* of a blanket above the ground, so that both are seen */

static const char *const codes[SW_FAULT_COUNT] = {
  [SW_FAULT_CREST] = "crest",     [SW_FAULT_SIDE_LAP] = "side-lap",
  [SW_FAULT_END_LAP] = "end-lap", [SW_FAULT_CONTACT] = "contact",
  [SW_FAULT_TOE] = "toe",         [SW_FAULT_PIN] = "pin",
  [SW_FAULT_JOINTS] = "joints",   [SW_FAULT_COLLAR] = "collar",
};

const char *
sw_fault_code (SwFault fault)
{
  return codes[fault];
}

/* A ground line over the whole width with soil below it. */
static void
draw_ground (SwFigure *figure, const SwPaperPoint *line, guint count)
{
  SwPaperPoint area[16];

  for (guint i = 0; i < count; i++)
    area[i] = line[i];
  area[count] = (SwPaperPoint){ WIDE, HIGH };
  area[count + 1] = (SwPaperPoint){ 0.0, HIGH };
  sw_figure_area (figure, SW_ROLE_SOIL, area, count + 2);
  sw_figure_line (figure, SW_ROLE_GROUND, line, count);
}

static void
draw_blanket (SwFigure *figure, const SwPaperPoint *line, guint count)
{
  sw_figure_line (figure, SW_ROLE_BLANKET, line, count);
}

static void
draw_pin (SwFigure *figure, double x_mm, double y_mm, double length_mm)
{
  sw_draft_pin (figure, x_mm, y_mm, 0.0, 1.0, length_mm, 1.6);
}

/* Right: lined and filled trench behind the crest. Wrong: the blanket ends at the edge. */
static void
draw_crest (SwFigure *figure, gboolean wrong)
{
  const SwPaperPoint flat[] = { { 0, 12 }, { 26, 12 }, { WIDE, 28 } };
  const SwPaperPoint dug[] = { { 0, 12 },  { 9, 12 },  { 9, 18 },   { 15, 18 },
                               { 15, 12 }, { 26, 12 }, { WIDE, 28 } };
  const SwPaperPoint fill[] = { { 9, 12 }, { 9, 18 }, { 15, 18 }, { 15, 12 } };
  const SwPaperPoint loose[] = { { 25.5, 11.4 }, { 26, 11.4 }, { WIDE, 27.4 } };
  const SwPaperPoint lined[] = { { 9.5, 12.5 },  { 9.5, 17.5 }, { 14.5, 17.5 },
                                 { 14.5, 11.4 }, { 26, 11.4 },  { WIDE, 27.4 } };

  draw_ground (figure, wrong ? flat : dug, wrong ? 3 : 7);
  if (!wrong)
    sw_figure_area (figure, SW_ROLE_BACKFILL, fill, 4);
  draw_blanket (figure, wrong ? loose : lined, wrong ? 3 : 6);
  if (!wrong)
    draw_pin (figure, 12, 17.4, 6);
  draw_pin (figure, 38, 18.8, 6);
}

/* Across the runs: the wind passes over the covered edge, or lifts the open one. */
static void
draw_side_lap (SwFigure *figure, gboolean wrong)
{
  const SwPaperPoint ground[] = { { 0, 22 }, { WIDE, 22 } };
  double over_m = 22 - 2.4 * THICK, under_m = 22 - THICK;
  const SwPaperPoint left[] = { { 0, under_m },
                                { wrong ? 31 : 20, under_m },
                                { wrong ? 31 : 22, wrong ? under_m : over_m },
                                { 31, wrong ? under_m : over_m } };
  const SwPaperPoint right[] = { { 21, wrong ? over_m : under_m },
                                 { wrong ? 31 : 21, wrong ? over_m : under_m },
                                 { wrong ? 33 : 21, under_m },
                                 { WIDE, under_m } };

  draw_ground (figure, ground, 2);
  draw_blanket (figure, left, 4);
  draw_blanket (figure, right, 4);
  draw_pin (figure, 26, over_m, 7);
  sw_draft_arrow (figure, SW_ROLE_WIND, 6, 8, 24, 8, 3.0);
}

/* Down the slope: the upslope piece on top, or under. */
static void
draw_end_lap (SwFigure *figure, gboolean wrong)
{
  const SwPaperPoint ground[] = { { 0, 8 }, { WIDE, 28 } };
  const double fall = 20.0 / WIDE;
  double lift_upper = wrong ? THICK : 2.6 * THICK,
         lift_lower = wrong ? 2.6 * THICK : THICK;
  const SwPaperPoint upper[] = { { 0, 8 - THICK },
                                 { 18, 8 + 18 * fall - THICK },
                                 { 20, 8 + 20 * fall - lift_upper },
                                 { 32, 8 + 32 * fall - lift_upper } };
  const SwPaperPoint lower[] = { { 20, 8 + 20 * fall - lift_lower },
                                 { 32, 8 + 32 * fall - lift_lower },
                                 { 34, 8 + 34 * fall - THICK },
                                 { WIDE, 28 - THICK } };

  draw_ground (figure, ground, 2);
  draw_blanket (figure, upper, 4);
  draw_blanket (figure, lower, 4);
  draw_pin (figure, 23, 8 + 23 * fall - 1.4, 6);
  draw_pin (figure, 29, 8 + 29 * fall - 1.4, 6);
  sw_draft_arrow (figure, SW_ROLE_FALL_LINE, 30, 4, 46, 4 + 16 * fall, 3.0);
}

/* A hollow that the blanket follows, or spans. */
static void
draw_contact (SwFigure *figure, gboolean wrong)
{
  const SwPaperPoint ground[] = { { 0, 10 },  { 14, 15 }, { 20, 23 },  { 28, 25 },
                                  { 34, 22 }, { 40, 24 }, { WIDE, 29 } };
  const SwPaperPoint close[] = { { 0, 9.4 },   { 14, 14.4 }, { 20, 22.3 },  { 28, 24.4 },
                                 { 34, 21.4 }, { 40, 23.4 }, { WIDE, 28.4 } };
  const SwPaperPoint taut[] = { { 0, 9.4 }, { 14, 14.4 }, { 34, 21.4 }, { WIDE, 28.4 } };

  draw_ground (figure, ground, 7);
  draw_blanket (figure, wrong ? taut : close, wrong ? 4 : 7);
  draw_pin (figure, 9, 12.5, 6);
  if (!wrong)
    draw_pin (figure, 26, 23.8, 6);
  draw_pin (figure, 44, 24.9, 6);
}

/* Buried in a trench beyond the toe, or loose and curling. */
static void
draw_toe (SwFigure *figure, gboolean wrong)
{
  const SwPaperPoint flat[] = { { 0, 6 }, { 26, 22 }, { WIDE, 22 } };
  const SwPaperPoint dug[] = { { 0, 6 },   { 26, 22 }, { 29, 22 },  { 29, 28 },
                               { 35, 28 }, { 35, 22 }, { WIDE, 22 } };
  const SwPaperPoint fill[] = { { 29, 22 }, { 29, 28 }, { 35, 28 }, { 35, 22 } };
  const SwPaperPoint buried[] = { { 0, 5.4 },     { 26, 21.4 },   { 29.5, 21.4 },
                                  { 29.5, 27.5 }, { 34.5, 27.5 }, { 34.5, 22.5 } };
  const SwPaperPoint curled[] = { { 0, 5.4 }, { 24, 20.2 }, { 29, 20 },
                                  { 32, 17 }, { 31, 14.5 }, { 29, 15.5 } };

  draw_ground (figure, wrong ? flat : dug, wrong ? 3 : 7);
  if (!wrong)
    sw_figure_area (figure, SW_ROLE_BACKFILL, fill, 4);
  draw_blanket (figure, wrong ? curled : buried, 6);
  if (!wrong)
    draw_pin (figure, 32, 27.4, 5);
  draw_pin (figure, 12, 12.8, 6);
}

/* Loose soil over firm: the pin reaches the firm soil, or ends above it. */
static void
draw_pin_length (SwFigure *figure, gboolean wrong)
{
  const SwPaperPoint ground[] = { { 0, 10 }, { WIDE, 10 } };
  const SwPaperPoint cover[] = { { 0, 10 - THICK }, { WIDE, 10 - THICK } };
  const SwPaperPoint firm[] = { { 0, 20 }, { WIDE, 20 }, { WIDE, HIGH }, { 0, HIGH } };

  draw_ground (figure, ground, 2);
  sw_figure_area (figure, SW_ROLE_BACKFILL, firm, 4);
  sw_draft_dashes (figure, SW_ROLE_BREAK, 0, 20, WIDE, 20, 1.5);
  draw_blanket (figure, cover, 2);
  for (int i = 0; i < 3; i++)
    draw_pin (figure, 12 + 14 * i, 10 - THICK, wrong ? 7 : 18);
}

/* Four runs from above: joints staggered, or all in one line. */
static void
draw_joints (SwFigure *figure, gboolean wrong)
{
  static const double staggered[] = { 19, 11, 21, 12 };

  for (int i = 0; i < 4; i++)
    {
      double x = 6 + 10 * i, y = wrong ? 16 : staggered[i];

      sw_figure_box (figure, SW_ROLE_RUN, x, 4, 10, 26);
      sw_figure_segment (figure, SW_ROLE_RUN_EDGE, x, 4, x, 30);
      sw_figure_segment (figure, SW_ROLE_JOINT, x, y, x + 10, y);
    }
  sw_figure_segment (figure, SW_ROLE_RUN_EDGE, 46, 4, 46, 30);
  sw_figure_segment (figure, SW_ROLE_GROUND, 4, 4, 48, 4);
  sw_figure_segment (figure, SW_ROLE_GROUND, 4, 30, 48, 30);
  sw_draft_arrow (figure, SW_ROLE_FALL_LINE, 49.5, 8, 49.5, 24, 3.0);
}

/* A post in the face: a collar with a ring of pins, or a slit left open. */
static void
draw_collar (SwFigure *figure, gboolean wrong)
{
  static const double ring[][2] = { { -9, -9 }, { 0, -9 }, { 9, -9 }, { 9, 0 },
                                    { 9, 9 },   { 0, 9 },  { -9, 9 }, { -9, 0 } };

  sw_figure_box (figure, SW_ROLE_RUN, 4, 3, 44, 28);
  if (wrong)
    sw_figure_segment (figure, SW_ROLE_GROUND, 26, 3, 26, 12);
  else
    sw_figure_box (figure, SW_ROLE_COLLAR, 15, 6, 22, 22);
  sw_figure_box (figure, SW_ROLE_OBSTACLE, 21, 12, 10, 10);
  for (guint i = 0; !wrong && i < G_N_ELEMENTS (ring); i++)
    sw_figure_circle (figure, SW_ROLE_PIN, 26 + ring[i][0], 17 + ring[i][1], 0.6);
}

/* Made at one size, which holds no text, and grown as a whole. */
static void
grow (SwFigure *figure, double by)
{
  figure->width_mm *= by;
  figure->height_mm *= by;
  for (guint i = 0; i < figure->points->len; i++)
    {
      SwPaperPoint *point = &g_array_index (figure->points, SwPaperPoint, i);

      point->x_mm *= by;
      point->y_mm *= by;
    }
}

SwFigure *
sw_draw_fault (SwFault fault, gboolean wrong, double width_mm)
{
  static void (*const draws[SW_FAULT_COUNT]) (SwFigure * figure, gboolean wrong) = {
    [SW_FAULT_CREST] = draw_crest,     [SW_FAULT_SIDE_LAP] = draw_side_lap,
    [SW_FAULT_END_LAP] = draw_end_lap, [SW_FAULT_CONTACT] = draw_contact,
    [SW_FAULT_TOE] = draw_toe,         [SW_FAULT_PIN] = draw_pin_length,
    [SW_FAULT_JOINTS] = draw_joints,   [SW_FAULT_COLLAR] = draw_collar,
  };
  SwFigure *figure = sw_figure_new (WIDE, HIGH);

  draws[fault](figure, wrong);
  sw_figure_box (figure, SW_ROLE_FRAME, 0, 0, WIDE, HIGH);
  grow (figure, width_mm / WIDE);
  return figure;
}
