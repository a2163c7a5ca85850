/* SPDX-License-Identifier: MIT */
#include "class-slope.h"
#include <math.h>
#include <slopewright/base/count.h>

#define TRIES 400         /* the second half of them may have any gradient */
#define OTHER_ROLL_M 50.0 /* where the job's roll is too short for whole runs */
#define MOST_RUNS 40
#define CLEAR 0.05
#define WHOLE 1e-6
#define GRADIENT_STREAM 88
#define WIDTH_STREAM 89
#define SOIL_STREAM 90
#define LOOSE_STREAM 91
#define WIND_STREAM 92

static const double gradients[SW_SLOPES + 1] = { 1.5, 2.0, 2.5, 3.0, 4.0 };

/* What a plane face is made of. */
typedef struct
{
  double rise_m, hv, width_m;
} Shape;

SwDice
sw_class_dice (const SwSheet *sheet, guint stream)
{
  return (SwDice){ (guint64) sw_pack_plan_seed (sheet->plan) * 1000 + stream };
}

static gboolean
is_us (const SwSheet *sheet)
{
  return sheet->draw->style.units == SW_UNITS_US;
}

/* Which of @count things slope @number gets: no two slopes the same, as far as they last;
 * which one, the seed says. */
static guint
own_of (const SwSheet *sheet, guint stream, guint number, guint count)
{
  SwDice dice = sw_class_dice (sheet, stream);
  guint order[SW_SLOPES + 1];

  sw_dice_order (&dice, order, count);
  return order[number % count];
}

/* @value by @share, in whole steps and within limits. */
static double
about (double value, double share, double step, double least, double most)
{
  return CLAMP (step * round (value * share / step), least, most);
}

/* Numbers that a tape and a level might give, in the units of the sheet, not far from
 * those of the job's own first face, but far enough from the limits to differ. */
static Shape
throw_shape (const SwSheet *sheet, SwDice *dice, guint number, double hv)
{
  const SwFaceLayout *like = &sheet->layout->faces[0];
  const SwFace *face = like->face;
  double height_m = face->section[face->crest].y_m - face->section[face->toe].y_m;
  double width_m = like->tiers[0].width_m, foot = SW_M_PER_FT;
  double high = 0.5 + 0.1 * sw_dice_throw (dice, 11);
  double wide = 0.5 + 0.25 * own_of (sheet, WIDTH_STREAM, number, SW_SLOPES)
                + 0.05 * sw_dice_throw (dice, 4);

  if (is_us (sheet))
    return (Shape){
      about (CLAMP (height_m, 10.0 * foot, 40.0 * foot), high, foot, 5.0 * foot,
             60.0 * foot),
      hv,
      about (CLAMP (width_m, 60.0 * foot, 100.0 * foot), wide, foot, 30.0 * foot,
             150.0 * foot),
    };
  return (Shape){ about (CLAMP (height_m, 3.0, 12.0), high, 0.5, 1.5, 18.0), hv,
                  about (CLAMP (width_m, 18.0, 30.0), wide, 0.5, 9.0, 45.0) };
}

static double
in_steps (double length_m, double step_m)
{
  return step_m * fmax (1.0, round (length_m / step_m));
}

/* A largest spacing at the mark of the tape that the rest of the handout names too, any
 * other length in whole steps: those are added up. */
static double
read_off_tape (const SwSheet *sheet, SwPracticeValue value, double step_m)
{
  double as_set = sw_practice_get (sheet->practice, value);
  SwLimit limit = sw_practice_limit (value);

  if (is_us (sheet) && limit == SW_LIMIT_MOST)
    return sw_limit_length_m (as_set, SW_UNIT_SMALL_M, limit, SW_UNITS_US);
  return in_steps (as_set, step_m);
}

/* Lengths as they are read, so that the numbers of the sheet are the whole truth. */
static void
take_as_read (const SwSheet *sheet, SwJob *job)
{
  double step_m = is_us (sheet) ? SW_M_PER_IN : 0.010;

  for (int i = 0; i < SW_PRACTICE_VALUE_COUNT; i++)
    {
      SwPracticeValue value = (SwPracticeValue) i;
      double as_set = sw_practice_get (sheet->practice, value);
      double as_read = read_off_tape (sheet, value, step_m);

      if ((sw_practice_keys[i].unit == SW_UNIT_M
           || sw_practice_keys[i].unit == SW_UNIT_SMALL_M)
          && as_set > 0.0 && sw_practice_accepts (value, as_read))
        sw_job_set_override (job, value, as_read, "");
    }
  job->roll_width_m = in_steps (job->roll_width_m, step_m);
  job->roll_length_m = in_steps (job->roll_length_m, is_us (sheet) ? SW_M_PER_FT : 0.1);
}

/* One species on its tag, and earth to haul. */
static void
set_seed_and_haul (const SwSheet *sheet, SwJob *job, SwDice *dice)
{
  double per_m2 = is_us (sheet) ? 0.5 * SW_KG_PER_LB / (1000.0 * SW_M2_PER_FT2) : 0.001;
  double load_m3 = is_us (sheet) ? SW_M3_PER_YD3 : 1.0;
  SwSeedSpecies species = {
    .purity = 0.86 + 0.02 * sw_dice_throw (dice, 6),
    .germination = 0.70 + 0.05 * sw_dice_throw (dice, 5),
    .pls_kg_per_m2 = per_m2 * (4 + sw_dice_throw (dice, 12)),
    .name = "",
  };

  sw_seed_mix_clear (&job->seed);
  sw_seed_mix_add (&job->seed, &species);
  job->plan.values[SW_PLAN_TRUCK_M3] = 0.25 * load_m3;
  job->plan.values[SW_PLAN_BACKFILL] = 0.5 + 0.1 * sw_dice_throw (dice, 4);
}

static void
set_plane (SwFace *face, const Shape *shape)
{
  double out_m = shape->rise_m * shape->hv, width_m = shape->width_m;

  sw_face_set_section (face, (SwPoint[]){ { 0.0, shape->rise_m }, { out_m, 0.0 } }, 2);
  sw_face_set_outline (
      face,
      (SwPoint[]){ { 0.0, 0.0 }, { width_m, 0.0 }, { width_m, out_m }, { 0.0, out_m } },
      4);
}

/* The job's practice, blanket and roll on another slope; nothing else of it. */
static SwJob *
job_on (const SwSheet *sheet, SwDice *dice, guint number, const Shape *shape,
        double roll_m)
{
  static const char *const soils[SW_SLOPES] = { "sand", "loam", "clay", "silt-loam" };
  SwJob *job = sw_job_copy (sheet->job);
  SwFace *face = sw_face_new ("A");

  set_plane (face, shape);
  sw_text_set (&face->soil_id, soils[own_of (sheet, SOIL_STREAM, number, SW_SLOPES)]);
  face->loose = own_of (sheet, LOOSE_STREAM, number, SW_SLOPES) % 2 == 0;
  face->leeward = own_of (sheet, WIND_STREAM, number, SW_SLOPES) % 2 == 0 ? SW_SIDE_LEFT
                                                                          : SW_SIDE_RIGHT;
  g_ptr_array_set_size (job->faces, 0);
  g_ptr_array_add (job->faces, face);
  g_array_set_size (job->stock, 0);
  sw_text_set (&job->pin_id, "");
  job->roll_length_m = roll_m;
  job->surplus = SW_SURPLUS_SPREAD;
  job->joints = SW_JOINTS_LONG_RUNS;
  for (int i = 0; i < SW_SITE_QUESTION_COUNT; i++)
    job->site[i] = SW_ANSWER_UNKNOWN;
  take_as_read (sheet, job);
  set_seed_and_haul (sheet, job, dice);
  return job;
}

/* So far from a whole number that rounding on the way does not change the count, or the
 * whole number itself. */
static gboolean
is_clear (double ratio)
{
  double off = fabs (ratio - round (ratio));

  return off > CLEAR || off < WHOLE;
}

/* Every count that is asked comes out alike for who rounds a little otherwise. */
static gboolean
counts_are_clear (const SwResult *result)
{
  const SwFaceLayout *face = &result->layout->faces[0];
  const SwTier *tier = &face->tiers[0];
  const SwPractice *practice = result->layout->practice;
  double lap_m = sw_practice_get (practice, SW_PRACTICE_SIDE_LAP_M);
  double cut_m = face->runs[0].cut_m;
  guint per_roll = (guint) sw_count_whole (result->job->roll_length_m, cut_m);

  return is_clear ((tier->width_m - lap_m) / (result->job->roll_width_m - lap_m))
         && is_clear (result->job->roll_length_m / cut_m)
         && is_clear (tier->width_m
                      / sw_practice_get (practice, SW_PRACTICE_TRENCH_PIN_M))
         && is_clear (tier->length_m
                      / sw_practice_get (practice, SW_PRACTICE_SIDE_LAP_PIN_M))
         && is_clear (result->tally->haul_m3 / result->job->plan.values[SW_PLAN_TRUCK_M3])
         && per_roll > 0
         && (guint) result->tally->rolls == (tier->n_runs + per_roll - 1) / per_roll;
}

static gboolean
suits (const SwResult *result)
{
  const SwTier *tier;

  if (result->status != SW_OK || result->layout->faces[0].n_tiers != 1)
    return FALSE;
  tier = &result->layout->faces[0].tiers[0];
  return tier->slots == 0 && tier->n_runs > 2 && tier->n_runs <= MOST_RUNS
         && result->tally->joints == 0 && counts_are_clear (result);
}

static SwResult *
try_rolls (const SwSheet *sheet, SwDice *dice, guint number, double roll_m)
{
  for (int i = 0; i < TRIES; i++)
    {
      double hv = i < TRIES / 2
                      ? gradients[own_of (sheet, GRADIENT_STREAM, number,
                                          G_N_ELEMENTS (gradients))]
                      : gradients[sw_dice_throw (dice, G_N_ELEMENTS (gradients))];
      Shape shape = throw_shape (sheet, dice, number, hv);
      g_autoptr (SwJob) job = job_on (sheet, dice, number, &shape, roll_m);
      g_autoptr (SwResult) result = sw_result_new (job, sheet->layout->catalogue);

      if (suits (result))
        return g_steal_pointer (&result);
    }
  return NULL;
}

SwResult *
sw_class_slope (const SwSheet *sheet, guint number)
{
  SwDice dice = sw_class_dice (sheet, number);
  SwResult *result = try_rolls (sheet, &dice, number, sheet->job->roll_length_m);

  return result != NULL ? result : try_rolls (sheet, &dice, number, OTHER_ROLL_M);
}

/* A slope whose answers are those of one plain rectangle. */
static gboolean
is_plain (const SwSheet *sheet)
{
  const SwFace *face = sheet->layout->faces[0].face;

  return sheet->layout->n_faces == 1 && sheet->layout->faces[0].n_tiers == 1
         && face->crest_form == SW_CREST_STRAIGHT && face->n_further == 0
         && face->obstacles->len == 0 && face->zones->len == 0 && face->topsoil_m <= 0.0
         && face->toe == face->crest + 1 && sheet->job->stock->len == 0;
}

SwResult *
sw_class_own_slope (const SwSheet *sheet)
{
  const SwFace *face = sheet->layout->faces[0].face;
  SwDice dice = sw_class_dice (sheet, SW_SLOPE_EXAMPLE);
  double step_m = is_us (sheet) ? SW_M_PER_IN : 0.010;
  double rise_m =
      in_steps (face->section[face->crest].y_m - face->section[face->toe].y_m, step_m);
  double run_m =
      in_steps (face->section[face->toe].x_m - face->section[face->crest].x_m, step_m);
  Shape shape = { rise_m, run_m / rise_m,
                  in_steps (sheet->layout->faces[0].tiers[0].width_m, step_m) };
  g_autoptr (SwJob) job =
      job_on (sheet, &dice, SW_SLOPE_EXAMPLE, &shape, sheet->job->roll_length_m);
  SwFace *own = g_ptr_array_index (job->faces, 0);
  g_autoptr (SwResult) result = NULL;

  if (!is_plain (sheet))
    return NULL;
  sw_text_set (&own->soil_id, face->soil_id);
  own->loose = face->loose;
  own->leeward = face->leeward;
  result = sw_result_new (job, sheet->layout->catalogue);
  if (!suits (result) || result->tally->runs != sheet->tally->runs
      || result->tally->rolls != sheet->tally->rolls)
    return NULL;
  return g_steal_pointer (&result);
}
