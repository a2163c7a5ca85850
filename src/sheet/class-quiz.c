/* SPDX-License-Identifier: MIT */
#include "class-quiz.h"
#include <math.h>

#define QUIZ_STREAM 77 /* keeps the dice of the quiz apart from those of the slopes */
#define TRUE_FALSE 2
#define NUMBERS 2
#define CHOICES (SW_QUIZ_ITEMS - TRUE_FALSE - NUMBERS - 1)
#define WORKED_POINTS 2
#define INCH_EXACT 1e-6 /* of an inch */

/* Questions whose choices are texts: ".right", ".wrong1", ".wrong2". */
static const char *const said[] = { "end-lap", "first-run", "contact", "seedbed", "crack",
                                    "net",     "marks",     "rills",   "sources" };

/* Questions whose right answer is a value of the practice. */
static const struct
{
  const char *code;
  SwPracticeValue value;
} measured[] = {
  { "side-lap", SW_PRACTICE_SIDE_LAP_M },
  { "trench-depth", SW_PRACTICE_TRENCH_DEPTH_M },
  { "trench-pin", SW_PRACTICE_TRENCH_PIN_M },
  { "set-back", SW_PRACTICE_SET_BACK_M },
};

static const struct
{
  const char *code;
  gboolean is_true;
} claims[] = {
  { "plan-area", FALSE },  { "holds-slope", FALSE }, { "walk", FALSE },
  { "loose-pins", TRUE },  { "same-bags", TRUE },    { "two-ways", TRUE },
  { "pull-tight", FALSE }, { "after-rain", TRUE },
};

#define SAID G_N_ELEMENTS (said)
#define ALL (SAID + G_N_ELEMENTS (measured))

static const char *
part (const SwSheet *sheet, const char *code, const char *ending)
{
  return sw_sheet_get (sheet, sw_sheet_format (sheet, "class.quiz.%s.%s", code, ending));
}

/* --- one of three --- */

/* What is misread, by turns smaller and larger: the right value is not always the one in
 * the middle. */
static const double misread[][2] = { { 0.5, 2.0 }, { 0.5, 0.75 }, { 1.5, 2.0 } };

/* A choice as round as the value itself is, so that none stands out: in whole inches
 * beside whole inches, else in steps of 25 mm. */
static const char *
scaled (const SwSheet *sheet, SwPracticeValue value, double by)
{
  double length_m = sw_practice_get (sheet->practice, value);
  double inches = length_m / SW_M_PER_IN;
  double step_m = fabs (inches - round (inches)) < INCH_EXACT ? SW_M_PER_IN : 0.025;

  return sw_sheet_limit (sheet, step_m * fmax (1.0, round (by * length_m / step_m)),
                         sw_practice_limit (value));
}

/* A value that the practice does not have, or that reads the same when misread, makes no
 * question: FALSE. The right choice comes first. */
static gboolean
measured_choices (const SwSheet *sheet, SwPracticeValue value, guint by,
                  const char *choices[3])
{
  if (sw_practice_get (sheet->practice, value) <= 0.0)
    return FALSE;
  choices[0] = sw_sheet_practice (sheet, value);
  choices[1] = scaled (sheet, value, misread[by][0]);
  choices[2] = scaled (sheet, value, misread[by][1]);
  return !g_str_equal (choices[0], choices[1]) && !g_str_equal (choices[0], choices[2])
         && !g_str_equal (choices[1], choices[2]);
}

static gboolean
fill (const SwSheet *sheet, guint index, guint by, const char *choices[3],
      SwQuizItem *item)
{
  const char *code = index < SAID ? said[index] : measured[index - SAID].code;

  if (index >= SAID
      && !measured_choices (sheet, measured[index - SAID].value, by, choices))
    return FALSE;
  if (index < SAID)
    {
      choices[0] = part (sheet, code, "right");
      choices[1] = part (sheet, code, "wrong1");
      choices[2] = part (sheet, code, "wrong2");
    }
  item->ask = part (sheet, code, "ask");
  item->why = part (sheet, code, "why");
  return TRUE;
}

static guint
add_choices (const SwSheet *sheet, SwDice *dice, SwQuizItem *items)
{
  guint order[ALL], taken = 0;

  sw_dice_order (dice, order, ALL);
  for (guint i = 0; i < ALL && taken < CHOICES; i++)
    {
      SwQuizItem item = { .kind = SW_QUIZ_CHOICE, .n_choices = 3, .points = 1 };
      guint by = sw_dice_throw (dice, G_N_ELEMENTS (misread)), places[3];
      const char *choices[3];

      sw_dice_order (dice, places, 3);
      if (!fill (sheet, order[i], by, choices, &item))
        continue;
      for (guint k = 0; k < 3; k++)
        {
          item.choices[k] = choices[places[k]];
          if (places[k] == 0)
            item.right = k;
        }
      items[taken++] = item;
    }
  return taken;
}

/* --- right or wrong, and why --- */

static void
add_claims (const SwSheet *sheet, SwDice *dice, SwQuizItem *items)
{
  guint order[G_N_ELEMENTS (claims)];

  sw_dice_order (dice, order, G_N_ELEMENTS (claims));
  for (guint i = 0; i < TRUE_FALSE; i++)
    {
      const char *code = claims[order[i]].code;

      items[i] = (SwQuizItem){ .kind = SW_QUIZ_TRUE_FALSE,
                               .ask = part (sheet, code, "say"),
                               .answer = sw_sheet_get (sheet, claims[order[i]].is_true
                                                                  ? "class.right-done"
                                                                  : "class.wrong"),
                               .why = part (sheet, code, "why"),
                               .points = 1 };
    }
}

/* --- in which order --- */

static SwQuizItem
steps_to_order (const SwSheet *sheet, SwDice *dice)
{
  g_auto (GStrv) lines =
      g_strsplit (sw_sheet_get (sheet, "class.quiz.order.steps"), "\n", -1);
  guint count = MIN (g_strv_length (lines), SW_QUIZ_MOST_CHOICES);
  guint places[SW_QUIZ_MOST_CHOICES];
  char letters[3 * SW_QUIZ_MOST_CHOICES + 1] = "";
  SwQuizItem item = { .kind = SW_QUIZ_ORDER,
                      .ask = sw_sheet_get (sheet, "class.quiz.order.ask"),
                      .n_choices = count,
                      .why = sw_sheet_get (sheet, "class.quiz.order.why"),
                      .points = WORKED_POINTS };

  sw_dice_order (dice, places, count);
  for (guint step = 0; step < count; step++)
    for (guint k = 0; k < count; k++)
      if (places[k] == step)
        {
          item.choices[k] = sw_sheet_keep (sheet, g_strdup (lines[step]));
          letters[3 * step] = (char) ('a' + k);
          letters[3 * step + 1] = step + 1 < count ? ',' : '\0';
          letters[3 * step + 2] = step + 1 < count ? ' ' : '\0';
        }
  item.answer = sw_sheet_keep (sheet, g_strdup (letters));
  return item;
}

/* --- to be worked out --- */

static const char *
answer_words (const SwSheet *sheet, double value, SwUnit unit, double within)
{
  return sw_sheet_fill (sheet, "class.quiz.answer", "answer",
                        sw_sheet_quantity (sheet, value, unit), "accept",
                        sw_class_within (sheet, within, unit), NULL);
}

static SwQuizItem
number_item (const char *ask, const char *answer, const char *why)
{
  return (SwQuizItem){ .kind = SW_QUIZ_NUMBER,
                       .ask = ask,
                       .answer = answer,
                       .why = why,
                       .points = WORKED_POINTS };
}

/* An area on plan is too small by what the gradient makes. */
static SwQuizItem
plan_to_slope (const SwSheet *sheet, SwDice *dice)
{
  static const double gradients[] = { 1.5, 2.0, 2.5, 3.0 };
  double hv = gradients[sw_dice_throw (dice, G_N_ELEMENTS (gradients))];
  double plan_m2 = (200.0 + 50.0 * sw_dice_throw (dice, 13))
                   * (sheet->draw->style.units == SW_UNITS_US ? SW_M2_PER_YD2 : 1.0);
  double factor = sqrt (1.0 + hv * hv) / hv;
  const char *ratio = sw_class_ratio (sheet, hv);
  const char *plan = sw_sheet_quantity (sheet, plan_m2, SW_UNIT_M2);

  return number_item (
      sw_sheet_fill (sheet, "class.quiz.slope-area.ask", "plan", plan, "ratio", ratio,
                     NULL),
      answer_words (sheet, plan_m2 * factor, SW_UNIT_M2, 0.01 * plan_m2),
      sw_sheet_fill (sheet, "class.quiz.slope-area.why", "plan", plan, "ratio", ratio,
                     "factor", sw_sheet_number (sheet, factor, SW_UNIT_FACTOR), NULL));
}

/* A run longer than a roll takes an end lap more than its length. */
static SwQuizItem
joined_run (const SwSheet *sheet, SwDice *dice)
{
  gboolean us = sheet->draw->style.units == SW_UNITS_US;
  double step_m = us ? SW_M_PER_FT : 1.0;
  double lap_step_m = us ? SW_M_PER_IN : 0.010;
  double roll_m = step_m * round (sheet->job->roll_length_m / step_m);
  double cut_m = roll_m + step_m * (3.0 + sw_dice_throw (dice, 8));
  double lap_m =
      lap_step_m
      * round (sw_practice_get (sheet->practice, SW_PRACTICE_END_LAP_M) / lap_step_m);

  return number_item (
      sw_sheet_fill (sheet, "class.quiz.joined-run.ask", "cut",
                     sw_sheet_quantity (sheet, cut_m, SW_UNIT_M), "roll",
                     sw_sheet_quantity (sheet, roll_m, SW_UNIT_M), "lap",
                     sw_sheet_quantity (sheet, lap_m, SW_UNIT_SMALL_M), NULL),
      answer_words (sheet, cut_m + lap_m, SW_UNIT_M, us ? SW_M_PER_IN : 0.02),
      sw_sheet_fill (sheet, "class.quiz.joined-run.why", "cut",
                     sw_class_calculator (sheet, cut_m, SW_UNIT_M), "lap",
                     sw_class_calculator (sheet, lap_m, SW_UNIT_M), "result",
                     sw_class_result (sheet, cut_m + lap_m, SW_UNIT_M), NULL));
}

/* What of a bag is nitrogen. */
static SwQuizItem
bag_of_fertiliser (const SwSheet *sheet, SwDice *dice)
{
  static const double shares[] = { 0.08, 0.10, 0.12, 0.15, 0.16 };
  double share = shares[sw_dice_throw (dice, G_N_ELEMENTS (shares))];
  gboolean us = sheet->draw->style.units == SW_UNITS_US;
  double bag_kg = us ? 50.0 * SW_KG_PER_LB : 25.0, nitrogen_kg = share * bag_kg;
  const char *bag = sw_sheet_quantity (sheet, bag_kg, SW_UNIT_KG);
  const char *label = sw_sheet_format (sheet, "%d-10-10", (int) lround (100.0 * share));

  return number_item (
      sw_sheet_fill (sheet, "class.quiz.bag.ask", "bag", bag, "label", label, NULL),
      answer_words (sheet, nitrogen_kg, SW_UNIT_KG, 0.1 * (us ? SW_KG_PER_LB : 1.0)),
      sw_sheet_fill (sheet, "class.quiz.bag.why", "bag", bag, "share",
                     sw_sheet_quantity (sheet, share, SW_UNIT_PERCENT), "result",
                     sw_sheet_quantity (sheet, nitrogen_kg, SW_UNIT_KG), NULL));
}

static void
add_numbers (const SwSheet *sheet, SwDice *dice, SwQuizItem *items)
{
  static SwQuizItem (*const makes[]) (
      const SwSheet *, SwDice *) = { plan_to_slope, joined_run, bag_of_fertiliser };
  guint order[G_N_ELEMENTS (makes)];

  sw_dice_order (dice, order, G_N_ELEMENTS (makes));
  for (guint i = 0; i < NUMBERS; i++)
    items[i] = makes[order[i]](sheet, dice);
}

void
sw_quiz (const SwSheet *sheet, SwQuizItem *items)
{
  SwDice dice = sw_class_dice (sheet, QUIZ_STREAM);
  guint taken = add_choices (sheet, &dice, items);

  add_claims (sheet, &dice, items + taken);
  taken += TRUE_FALSE;
  items[taken++] = steps_to_order (sheet, &dice);
  add_numbers (sheet, &dice, items + taken);
  taken += NUMBERS;
  for (; taken < SW_QUIZ_ITEMS; taken++)
    items[taken] = (SwQuizItem){ 0 };
}
