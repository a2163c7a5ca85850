/* SPDX-License-Identifier: MIT */
#include "class-exercise.h"
#include <math.h>
#include <slopewright/base/count.h>

#define TRIES 200
#define OTHER_ROLL_M 50.0 /* where the job's roll is too short for whole runs */
#define MOST_RUNS 40
#define CLEAR 0.05
#define LENGTH_SHARE 0.01 /* of a length or an area, right all the same */
#define ANGLE_RAD (1.0 * G_PI / 180.0)
#define LAP_M 0.010
#define CUT_M 0.050

static const char *const codes[SW_ASK_COUNT] = {
  [SW_ASK_LENGTH] = "length",
  [SW_ASK_ANGLE] = "angle",
  [SW_ASK_AREA] = "area",
  [SW_ASK_RUNS] = "runs",
  [SW_ASK_LAP] = "lap",
  [SW_ASK_CUT] = "cut",
  [SW_ASK_PER_ROLL] = "per-roll",
  [SW_ASK_ROLLS] = "rolls",
  [SW_ASK_TRENCH_PINS] = "trench-pins",
  [SW_ASK_PIN] = "pin",
  [SW_ASK_START] = "start",
};

const char *
sw_ask_code (SwAsk ask)
{
  return codes[ask];
}

SwDice
sw_class_dice (const SwSheet *sheet, guint stream)
{
  return (SwDice){ (guint64) sw_pack_plan_seed (sheet->plan) * 1000 + stream };
}

/* --- slopes --- */

/* @like, times 0.5 to 1.5, in whole @steps, within limits. */
static double
about (SwDice *dice, double like, double step, double least, double most)
{
  double share = 0.5 + 0.1 * sw_dice_throw (dice, 11);

  return CLAMP (step * round (like * share / step), least, most);
}

/* Numbers that a tape and a level might give, in the units of the sheet, not far from
 * those of the job's own first face. */
static void
shape (const SwSheet *sheet, SwDice *dice, double *rise_m, double *hv, double *width_m)
{
  static const double gradients[] = { 1.5, 2.0, 2.5, 3.0, 4.0 };
  const SwFaceLayout *like = &sheet->layout->faces[0];
  const SwFace *face = like->face;
  double height_m = face->section[face->crest].y_m - face->section[face->toe].y_m;
  gboolean us = sheet->draw->style.units == SW_UNITS_US;
  double foot = SW_M_PER_FT;

  *hv = gradients[sw_dice_throw (dice, G_N_ELEMENTS (gradients))];
  *rise_m = us ? about (dice, height_m, foot, 5.0 * foot, 60.0 * foot)
               : about (dice, height_m, 0.5, 1.5, 20.0);
  *width_m =
      us ? about (dice, like->tiers[0].width_m, 5.0 * foot, 30.0 * foot, 150.0 * foot)
         : about (dice, like->tiers[0].width_m, 1.0, 9.0, 45.0);
}

static void
set_plane (SwFace *face, double rise_m, double hv, double width_m)
{
  double out_m = rise_m * hv;

  sw_face_set_section (face, (SwPoint[]){ { 0.0, rise_m }, { out_m, 0.0 } }, 2);
  sw_face_set_outline (
      face,
      (SwPoint[]){ { 0.0, 0.0 }, { width_m, 0.0 }, { width_m, out_m }, { 0.0, out_m } },
      4);
}

/* The job's practice, blanket and roll on another slope; nothing else of it. */
static SwJob *
job_on (const SwSheet *sheet, SwDice *dice, double roll_m)
{
  static const char *const soils[] = { "sand", "loam", "clay", "silt-loam" };
  SwJob *job = sw_job_copy (sheet->job);
  SwFace *face = sw_face_new ("A");
  double rise_m, hv, width_m;

  shape (sheet, dice, &rise_m, &hv, &width_m);
  set_plane (face, rise_m, hv, width_m);
  sw_text_set (&face->soil_id, soils[sw_dice_throw (dice, G_N_ELEMENTS (soils))]);
  face->loose = sw_dice_throw (dice, 2) == 0;
  face->leeward = sw_dice_throw (dice, 2) == 0 ? SW_SIDE_LEFT : SW_SIDE_RIGHT;
  g_ptr_array_set_size (job->faces, 0);
  g_ptr_array_add (job->faces, face);
  g_array_set_size (job->stock, 0);
  job->roll_length_m = roll_m;
  job->surplus = SW_SURPLUS_SPREAD;
  job->joints = SW_JOINTS_LONG_RUNS;
  for (int i = 0; i < SW_SITE_QUESTION_COUNT; i++)
    job->site[i] = SW_ANSWER_UNKNOWN;
  return job;
}

/* So far from a whole number that rounding what is printed does not change the count. */
static gboolean
is_clear (double ratio)
{
  return fabs (ratio - round (ratio)) > CLEAR;
}

static gboolean
suits (const SwResult *result)
{
  const SwFaceLayout *face;
  const SwTier *tier;
  double lap_m;

  if (result->status != SW_OK || result->layout->faces[0].n_tiers != 1)
    return FALSE;
  face = &result->layout->faces[0];
  tier = &face->tiers[0];
  lap_m = sw_practice_get (result->layout->practice, SW_PRACTICE_SIDE_LAP_M);
  return tier->slots == 0 && tier->n_runs > 2 && tier->n_runs <= MOST_RUNS
         && result->tally->joints == 0
         && is_clear ((tier->width_m - lap_m) / (result->job->roll_width_m - lap_m))
         && is_clear (result->job->roll_length_m / face->runs[0].cut_m);
}

static SwResult *
try_rolls (const SwSheet *sheet, SwDice *dice, double roll_m)
{
  for (int i = 0; i < TRIES; i++)
    {
      g_autoptr (SwJob) job = job_on (sheet, dice, roll_m);
      g_autoptr (SwResult) result = sw_result_new (job, sheet->layout->catalogue);

      if (suits (result))
        return g_steal_pointer (&result);
    }
  return NULL;
}

SwResult *
sw_exercise_new (const SwSheet *sheet, guint number)
{
  SwDice dice = sw_class_dice (sheet, number);
  SwResult *result = try_rolls (sheet, &dice, sheet->job->roll_length_m);

  return result != NULL ? result : try_rolls (sheet, &dice, OTHER_ROLL_M);
}

/* --- questions and answers --- */

static const SwWorking *
working_of (const SwResult *result, const char *name)
{
  const char *face = result->layout->faces[0].face->id;
  g_autofree char *full = g_strdup_printf ("%s.%s", face, name);

  return sw_tally_working (result->tally, full);
}

static const char *
within (const SwSheet *sheet, double value, SwUnit unit)
{
  return sw_sheet_fill (sheet, "class.accept.within", "value",
                        sw_sheet_quantity (sheet, value, unit), NULL);
}

static SwAnswerWords
worked (const SwSheet *sheet, const SwWorking *working, double tolerance)
{
  SwAnswerWords words = { 0 };

  if (working == NULL)
    return words;
  words.answer = sw_sheet_quantity (sheet, working->value, working->unit);
  words.accept = tolerance > 0.0 ? within (sheet, tolerance, working->unit)
                                 : sw_sheet_get (sheet, "class.accept.exact");
  words.how = sw_sheet_plain (
      sheet, sw_sheet_keep (sheet, sw_report_working_check (working, sheet->texts,
                                                            sheet->draw->style)));
  return words;
}

static SwAnswerWords
angle_of (const SwSheet *sheet, const SwTier *tier)
{
  const char *angle = sw_sheet_quantity (sheet, tier->mean_rad, SW_UNIT_ANGLE);

  return (SwAnswerWords){
    angle, within (sheet, ANGLE_RAD, SW_UNIT_ANGLE),
    sw_sheet_fill (sheet, "class.how.angle", "ratio",
                   sw_sheet_number (sheet, 1.0 / tan (tier->mean_rad), SW_UNIT_RATIO),
                   "angle", angle, NULL)
  };
}

/* Only where all runs are whole and of one length. */
static SwAnswerWords
per_roll (const SwSheet *sheet, const SwResult *result)
{
  const SwFaceLayout *face = &result->layout->faces[0];
  double cut_m = face->runs[0].cut_m, roll_m = result->job->roll_length_m;

  for (guint i = 0; i < face->n_runs; i++)
    if (face->runs[i].n_pieces > 1 || sw_ticks (face->runs[i].cut_m - cut_m) != 0)
      return (SwAnswerWords){ 0 };
  return (SwAnswerWords){
    sw_sheet_count (sheet, sw_count_whole (roll_m, cut_m)),
    sw_sheet_get (sheet, "class.accept.exact"),
    sw_sheet_fill (sheet, "class.how.per-roll", "roll",
                   sw_sheet_quantity (sheet, roll_m, SW_UNIT_M), "cut",
                   sw_sheet_quantity (sheet, cut_m, SW_UNIT_M), "ratio",
                   sw_sheet_number (sheet, roll_m / cut_m, SW_UNIT_RATIO), NULL)
  };
}

/* One row of pins along a key trench: gaps and one more. */
static SwAnswerWords
trench_pins (const SwSheet *sheet, const SwResult *result)
{
  const SwFaceLayout *face = &result->layout->faces[0];
  double spacing_m = sw_practice_get (result->layout->practice, SW_PRACTICE_TRENCH_PIN_M);

  for (guint i = 0; i < face->n_trenches; i++)
    if (face->trenches[i].kind == SW_TRENCH_KEY && !face->tiers[0].closed)
      return (SwAnswerWords){
        sw_sheet_count (sheet, sw_count_up (face->trenches[i].length_m, spacing_m) + 1),
        sw_sheet_get (sheet, "class.accept.one"),
        sw_sheet_fill (sheet, "class.how.trench-pins", "length",
                       sw_sheet_quantity (sheet, face->trenches[i].length_m, SW_UNIT_M),
                       "spacing", sw_sheet_practice (sheet, SW_PRACTICE_TRENCH_PIN_M),
                       NULL)
      };
  return (SwAnswerWords){ 0 };
}

static SwAnswerWords
pin_of (const SwSheet *sheet, const SwResult *result)
{
  const SwFaceLayout *face = &result->layout->faces[0];
  const SwPinLength *length = &face->pin_lengths[0];

  if (face->n_pin_lengths != 1)
    return (SwAnswerWords){ 0 };
  return (SwAnswerWords){
    sw_sheet_quantity (sheet,
                       length->pin != NULL ? length->pin->length_m : length->need_m,
                       SW_UNIT_SMALL_M),
    sw_sheet_get (sheet, "class.accept.longer"),
    sw_sheet_fill (
        sheet, face->face->loose ? "class.how.pin-loose" : "class.how.pin-firm", "need",
        sw_sheet_quantity (sheet, length->need_m, SW_UNIT_SMALL_M), NULL)
  };
}

SwAnswerWords
sw_exercise_answer (const SwSheet *sheet, const SwResult *result, SwAsk ask)
{
  const SwFaceLayout *face = &result->layout->faces[0];
  const SwTier *tier = &face->tiers[0];

  switch (ask)
    {
    case SW_ASK_LENGTH:
      return worked (sheet, working_of (result, "1.length"),
                     LENGTH_SHARE * tier->length_m);
    case SW_ASK_ANGLE:
      return angle_of (sheet, tier);
    case SW_ASK_AREA:
      return worked (sheet, working_of (result, "1.net-area"),
                     LENGTH_SHARE * tier->net_m2);
    case SW_ASK_RUNS:
      return worked (sheet, working_of (result, "1.runs"), 0.0);
    case SW_ASK_LAP:
      return worked (sheet, working_of (result, "1.side-lap"), LAP_M);
    case SW_ASK_CUT:
      return worked (sheet, working_of (result, "1.cut-length"), CUT_M);
    case SW_ASK_PER_ROLL:
      return per_roll (sheet, result);
    case SW_ASK_ROLLS:
      return worked (sheet, sw_tally_working (result->tally, "rolls"), 0.0);
    case SW_ASK_TRENCH_PINS:
      return trench_pins (sheet, result);
    case SW_ASK_PIN:
      return pin_of (sheet, result);
    default:
      return (SwAnswerWords){ sw_sheet_get (sheet, face->face->leeward == SW_SIDE_LEFT
                                                       ? "class.left"
                                                       : "class.right"),
                              sw_sheet_get (sheet, "class.accept.exact"),
                              sw_sheet_get (sheet, "class.how.start") };
    }
}

/* --- what is known --- */

static const char *
soil_words (const SwSheet *sheet, const SwResult *result)
{
  const SwFace *face = result->layout->faces[0].face;
  const SwSoil *soil = sw_catalogue_soil (sheet->layout->catalogue, face->soil_id);

  return sw_sheet_fill (sheet, face->loose ? "pack.soil.loose" : "pack.soil.firm", "soil",
                        sw_sheet_get (sheet, soil->name_id), NULL);
}

/* "2", or "2.5": gradients of exercises are whole or half. */
static const char *
ratio_words (const SwSheet *sheet, double hv)
{
  gint64 halves = llround (2.0 * hv);

  if (halves % 2 == 0)
    return sw_sheet_format (sheet, "%d", (int) (halves / 2));
  return sw_sheet_format (sheet, "%d%c5", (int) (halves / 2),
                          sheet->draw->style.decimal_mark);
}

void
sw_exercise_given (const SwSheet *sheet, SwFlow *flow, const SwResult *result)
{
  const SwFaceLayout *face = &result->layout->faces[0];
  const SwRunTerms *terms = &face->runs[0].terms;
  const SwPoint *section = face->face->section;
  double hv = section[1].x_m / section[0].y_m;

  sw_flow_text (
      flow, SW_STYLE_BODY, SW_ROLE_TEXT,
      sw_sheet_fill (
          sheet, "class.given", "rise",
          sw_sheet_quantity (sheet, section[0].y_m, SW_UNIT_M), "ratio",
          ratio_words (sheet, hv), "width",
          sw_sheet_quantity (sheet, face->tiers[0].width_m, SW_UNIT_M), "roll_width",
          sw_sheet_quantity (sheet, result->job->roll_width_m, SW_UNIT_M), "roll_length",
          sw_sheet_quantity (sheet, result->job->roll_length_m, SW_UNIT_M), "side_lap",
          sw_sheet_practice (sheet, SW_PRACTICE_SIDE_LAP_M), "crest",
          sw_sheet_quantity (sheet, terms->set_back + terms->key_lining + terms->key_fold,
                             SW_UNIT_M),
          "toe", sw_sheet_quantity (sheet, terms->toe, SW_UNIT_M), "spacing",
          sw_sheet_practice (sheet, SW_PRACTICE_TRENCH_PIN_M), "soil",
          soil_words (sheet, result), "wind",
          sw_sheet_get (sheet, face->face->leeward == SW_SIDE_LEFT ? "class.wind-right"
                                                                   : "class.wind-left"),
          NULL));
}
