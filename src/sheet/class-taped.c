/* SPDX-License-Identifier: MIT */
#include "class-taped.h"
#include <math.h>

#define STREAM 66
#define EXAMPLE_STREAM 67
#define TRIES 200
#define AREA_SHARE 0.01
#define OFF 0.06   /* of its length: a second diagonal that is clearly wrong */
#define SLIP 0.004 /* or as well taped as one can */
#define SKETCH_MM 88.0
#define SKETCH_HIGH_MM 58.0

static const SwAskTerms asks[SW_TAPED_ASK_COUNT] = {
  [SW_TAPED_FIRST_AREA] = { "taped-abc", 2, SW_UNIT_M2 },
  [SW_TAPED_SECOND_AREA] = { "taped-acd", 2, SW_UNIT_M2 },
  [SW_TAPED_AREA] = { "taped-area", 1, SW_UNIT_M2 },
  [SW_TAPED_DIAGONAL] = { "taped-bd", 3, SW_UNIT_M },
  [SW_TAPED_VERDICT] = { "taped-verdict", 1, SW_UNIT_COUNT },
};

const SwAskTerms *
sw_taped_terms (SwTapedAsk ask)
{
  return &asks[ask];
}

/* Tapes read to a decimetre, or to half a foot. */
static double
step_m (const SwSheet *sheet)
{
  return sheet->draw->style.units == SW_UNITS_US ? 0.5 * SW_M_PER_FT : 0.1;
}

static double
taped (const SwSheet *sheet, double length_m)
{
  return step_m (sheet) * round (length_m / step_m (sheet));
}

/* A width and a height of the class's slopes, with corners off the right angle. */
static SwTapedSides
throw_sides (const SwSheet *sheet, SwDice *dice)
{
  double wide_m = 15.0 + sw_dice_throw (dice, 10), left_m = 8.0 + sw_dice_throw (dice, 6);
  double right_m = left_m + 0.5 * (1.0 + sw_dice_throw (dice, 4));
  SwPoint c = { wide_m - 0.5 * (1.0 + sw_dice_throw (dice, 5)), right_m };
  SwPoint d = { 0.5 * (1.0 + sw_dice_throw (dice, 5)), left_m };

  return (SwTapedSides){
    .ab_m = taped (sheet, wide_m),
    .bc_m = taped (sheet, hypot (c.x_m - wide_m, c.y_m)),
    .cd_m = taped (sheet, hypot (c.x_m - d.x_m, c.y_m - d.y_m)),
    .da_m = taped (sheet, hypot (d.x_m, d.y_m)),
    .ac_m = taped (sheet, hypot (c.x_m, c.y_m)),
  };
}

SwTapedSides
sw_class_sides (const SwSheet *sheet, gboolean example)
{
  SwDice dice = sw_class_dice (sheet, example ? EXAMPLE_STREAM : STREAM);
  SwTapedSides sides = { 0 };
  SwTapedShape shape;

  for (int i = 0; i < TRIES; i++)
    {
      gboolean fits;

      sides = throw_sides (sheet, &dice);
      fits = sw_dice_throw (&dice, 2) == 0;
      if (sw_taped_shape (&sides, &shape) != SW_OK)
        continue;
      sides.bd_m = taped (sheet, shape.bd_m * (fits ? 1.0 + SLIP : 1.0 + OFF));
      if (sw_taped_shape (&sides, &shape) == SW_OK
          && (fits ? fabs (shape.residual_m) < 0.7 * shape.allowed_m
                   : fabs (shape.residual_m) > 2.0 * shape.allowed_m))
        break;
    }
  return sides;
}

/* Heron's formula. */
static double
triangle_m2 (double a_m, double b_m, double c_m)
{
  double s_m = (a_m + b_m + c_m) / 2.0;

  return sqrt (s_m * (s_m - a_m) * (s_m - b_m) * (s_m - c_m));
}

static SwAnswerWords
triangle (const SwSheet *sheet, double a_m, double b_m, double c_m)
{
  double s_m = (a_m + b_m + c_m) / 2.0, area_m2 = triangle_m2 (a_m, b_m, c_m);

  return (SwAnswerWords){ sw_sheet_quantity (sheet, area_m2, SW_UNIT_M2),
                          sw_class_within (sheet, AREA_SHARE * area_m2, SW_UNIT_M2),
                          sw_sheet_fill (
                              sheet, "class.how.triangle", "half",
                              sw_class_calculator (sheet, s_m, SW_UNIT_M), "a",
                              sw_class_calculator (sheet, s_m - a_m, SW_UNIT_M), "b",
                              sw_class_calculator (sheet, s_m - b_m, SW_UNIT_M), "c",
                              sw_class_calculator (sheet, s_m - c_m, SW_UNIT_M), "result",
                              sw_class_result (sheet, area_m2, SW_UNIT_M2), NULL) };
}

/* Law of cosines. */
static double
angle_rad (double beside_m, double other_m, double across_m)
{
  return acos ((beside_m * beside_m + other_m * other_m - across_m * across_m)
               / (2.0 * beside_m * other_m));
}

static SwAnswerWords
diagonal (const SwSheet *sheet, const SwTapedSides *sides, const SwTapedShape *shape)
{
  double right_rad = angle_rad (sides->ab_m, sides->ac_m, sides->bc_m);
  double left_rad = angle_rad (sides->ac_m, sides->da_m, sides->cd_m);

  return (SwAnswerWords){
    sw_sheet_quantity (sheet, shape->bd_m, SW_UNIT_M),
    sw_class_within (sheet, shape->allowed_m, SW_UNIT_M),
    sw_sheet_fill (sheet, "class.how.taped-bd", "right",
                   sw_sheet_quantity (sheet, right_rad, SW_UNIT_ANGLE), "left",
                   sw_sheet_quantity (sheet, left_rad, SW_UNIT_ANGLE), "both",
                   sw_sheet_quantity (sheet, left_rad + right_rad, SW_UNIT_ANGLE),
                   "result", sw_class_result (sheet, shape->bd_m, SW_UNIT_M), NULL)
  };
}

static SwAnswerWords
verdict (const SwSheet *sheet, const SwTapedShape *shape)
{
  gboolean fits = fabs (shape->residual_m) <= shape->allowed_m;

  return (SwAnswerWords){
    sw_sheet_get (sheet, fits ? "class.taped.fits" : "class.taped.again"),
    sw_sheet_get (sheet, "class.accept.exact"),
    sw_sheet_fill (sheet, fits ? "class.how.taped-fits" : "class.how.taped-again", "off",
                   sw_sheet_quantity (sheet, fabs (shape->residual_m), SW_UNIT_M),
                   "allowed", sw_sheet_quantity (sheet, shape->allowed_m, SW_UNIT_M),
                   NULL)
  };
}

SwAnswerWords
sw_taped_answer (const SwSheet *sheet, const SwTapedSides *sides, SwTapedAsk ask)
{
  SwTapedShape shape;

  if (sw_taped_shape (sides, &shape) != SW_OK)
    return (SwAnswerWords){ 0 };
  switch (ask)
    {
    case SW_TAPED_FIRST_AREA:
      return triangle (sheet, sides->ab_m, sides->bc_m, sides->ac_m);
    case SW_TAPED_SECOND_AREA:
      return triangle (sheet, sides->ac_m, sides->cd_m, sides->da_m);
    case SW_TAPED_AREA:
      return (
          SwAnswerWords){ sw_sheet_quantity (sheet, shape.area_m2, SW_UNIT_M2),
                          sw_class_within (sheet, AREA_SHARE * shape.area_m2, SW_UNIT_M2),
                          sw_sheet_get (sheet, "class.how.taped-area") };
    case SW_TAPED_DIAGONAL:
      return diagonal (sheet, sides, &shape);
    default:
      return verdict (sheet, &shape);
    }
}

static void
say (const SwSheet *sheet, SwFlow *flow, const char *words)
{
  sw_flow_text (flow, SW_STYLE_BODY, SW_ROLE_TEXT, words);
  sw_flow_tie (flow);
}

static void
say_tapes (const SwSheet *sheet, SwFlow *flow, const SwTapedSides *sides)
{
  say (sheet, flow,
       sw_sheet_fill (sheet, "class.given.tapes", "ab",
                      sw_sheet_quantity (sheet, sides->ab_m, SW_UNIT_M), "bc",
                      sw_sheet_quantity (sheet, sides->bc_m, SW_UNIT_M), "cd",
                      sw_sheet_quantity (sheet, sides->cd_m, SW_UNIT_M), "da",
                      sw_sheet_quantity (sheet, sides->da_m, SW_UNIT_M), "ac",
                      sw_sheet_quantity (sheet, sides->ac_m, SW_UNIT_M), NULL));
}

static void
add_sketch (const SwSheet *sheet, SwFlow *flow, const SwTapedSides *sides)
{
  double scale = sheet->pen.scale;
  SwFigure *sketch =
      sw_draw_taped_sides (sides, SKETCH_MM * scale, SKETCH_HIGH_MM * scale, sheet->draw);

  if (sketch == NULL)
    return;
  sketch->title = g_strdup (sw_sheet_get (sheet, "class.taped.sketch"));
  sw_flow_drawing (flow, sketch);
  sw_flow_tie (flow);
}

void
sw_taped_given (const SwSheet *sheet, SwFlow *flow, const SwTapedSides *sides,
                gboolean key)
{
  SwTapedShape shape;

  if (sw_taped_shape (sides, &shape) != SW_OK)
    return;
  say (sheet, flow,
       sw_sheet_fill (sheet, "class.given.taped", "bd",
                      sw_sheet_quantity (sheet, sides->bd_m, SW_UNIT_M), "allowed",
                      sw_sheet_quantity (sheet, shape.allowed_m, SW_UNIT_M), NULL));
  if (key)
    {
      say_tapes (sheet, flow, sides);
      return;
    }
  add_sketch (sheet, flow, sides);
  say (sheet, flow, sw_sheet_get (sheet, "class.taped.rules"));
}
