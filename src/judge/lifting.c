/* SPDX-License-Identifier: MIT */
#include <math.h>
#include <slopewright/judge/lifting.h>

#define CM_PER_M 100.0
#define DEG_PER_RAD (180.0 / G_PI)

/* Limits in whole centimetres, inches and degrees are met with so much slack. */
#define LIMIT_SLACK 1e-9

#define HOURS_SHORT 1.0
#define HOURS_MODERATE 2.0
#define HOURS_LONG 8.0
#define QUARTER_MIN 15.0

/* One form of the equation; lengths in its own unit. */
typedef struct
{
  double unit_m, load_kg;
  double reach, reach_most;                  /* HM */
  double knuckle, height_slope, height_most; /* VM */
  double travel, travel_least, travel_most;  /* DM */
  double begin;                              /* boundary of tables 5 and 7 */
  double close_high, close_low, close_split; /* H of a load held close */
} Form;

static const Form forms[] = {
  [SW_UNITS_METRIC] = { 1.0 / CM_PER_M, 23.0, 25.0, 63.0, 75.0, 0.003, 175.0, 4.5, 25.0,
                        175.0, 75.0, 20.0, 25.0, 25.0 },
  [SW_UNITS_US] = { SW_M_PER_IN, 51.0 * SW_KG_PER_LB, 10.0, 25.0, 30.0, 0.0075, 70.0, 1.8,
                    10.0, 70.0, 30.0, 8.0, 10.0, 10.0 },
};

/* NULL unless @units is one and @value is a size. */
static const Form *
form_of (SwUnitSystem units, double value)
{
  gboolean known = (guint) units < G_N_ELEMENTS (forms);

  return known && isfinite (value) && value >= 0.0 ? &forms[units] : NULL;
}

static gboolean
over (double value, double limit)
{
  return value > limit + LIMIT_SLACK;
}

SwStatus
sw_lift_reach_factor (SwUnitSystem units, double reach_m, double *factor)
{
  const Form *form = form_of (units, reach_m);
  double reach;

  if (form == NULL)
    return SW_E_RANGE;
  reach = reach_m / form->unit_m;
  *factor =
      over (reach, form->reach_most) ? 0.0 : form->reach / fmax (reach, form->reach);
  return SW_OK;
}

SwStatus
sw_lift_height_factor (SwUnitSystem units, double height_m, double *factor)
{
  const Form *form = form_of (units, height_m);
  double height;

  if (form == NULL)
    return SW_E_RANGE;
  height = height_m / form->unit_m;
  *factor = over (height, form->height_most)
                ? 0.0
                : 1.0 - form->height_slope * fabs (height - form->knuckle);
  return SW_OK;
}

SwStatus
sw_lift_travel_factor (SwUnitSystem units, double travel_m, double *factor)
{
  const Form *form = form_of (units, travel_m);
  double travel;

  if (form == NULL)
    return SW_E_RANGE;
  travel = fmax (travel_m / form->unit_m, form->travel_least);
  *factor = over (travel, form->travel_most) ? 0.0 : 0.82 + form->travel / travel;
  return SW_OK;
}

SwStatus
sw_lift_twist_factor (double twist_rad, double *factor)
{
  double twist_deg = twist_rad * DEG_PER_RAD;

  if (!isfinite (twist_rad) || twist_rad < 0.0)
    return SW_E_RANGE;
  *factor = over (twist_deg, 135.0) ? 0.0 : 1.0 - 0.0032 * twist_deg;
  return SW_OK;
}

SwStatus
sw_lift_duration (double work_h, double recovery_h, SwLiftDuration *duration)
{
  if (!isfinite (work_h) || !isfinite (recovery_h) || work_h <= 0.0 || recovery_h < 0.0
      || over (work_h, HOURS_LONG))
    return SW_E_RANGE;
  if (!over (work_h, HOURS_SHORT) && !over (work_h, recovery_h))
    *duration = SW_LIFT_SHORT;
  else if (!over (work_h, HOURS_MODERATE) && !over (0.3 * work_h, recovery_h))
    *duration = SW_LIFT_MODERATE;
  else
    *duration = SW_LIFT_LONG;
  return SW_OK;
}

SwStatus
sw_lift_frequency (double rate_per_min, double work_min, double *per_min)
{
  if (!isfinite (rate_per_min) || rate_per_min < 0.0 || !isfinite (work_min)
      || work_min <= 0.0 || work_min > QUARTER_MIN)
    return SW_E_RANGE;
  *per_min = rate_per_min * work_min / QUARTER_MIN;
  return SW_OK;
}

/* Table 5: by duration, low hands first. */
typedef struct
{
  double per_min;
  double factor[SW_LIFT_DURATION_COUNT][2];
} FrequencyRow;

static const FrequencyRow frequency_rows[] = {
  { 0.2, { { 1.00, 1.00 }, { .95, .95 }, { .85, .85 } } },
  { 0.5, { { .97, .97 }, { .92, .92 }, { .81, .81 } } },
  { 1.0, { { .94, .94 }, { .88, .88 }, { .75, .75 } } },
  { 2.0, { { .91, .91 }, { .84, .84 }, { .65, .65 } } },
  { 3.0, { { .88, .88 }, { .79, .79 }, { .55, .55 } } },
  { 4.0, { { .84, .84 }, { .72, .72 }, { .45, .45 } } },
  { 5.0, { { .80, .80 }, { .60, .60 }, { .35, .35 } } },
  { 6.0, { { .75, .75 }, { .50, .50 }, { .27, .27 } } },
  { 7.0, { { .70, .70 }, { .42, .42 }, { .22, .22 } } },
  { 8.0, { { .60, .60 }, { .35, .35 }, { .18, .18 } } },
  { 9.0, { { .52, .52 }, { .30, .30 }, { .00, .15 } } },
  { 10.0, { { .45, .45 }, { .26, .26 }, { .00, .13 } } },
  { 11.0, { { .41, .41 }, { .00, .23 }, { .00, .00 } } },
  { 12.0, { { .37, .37 }, { .00, .21 }, { .00, .00 } } },
  { 13.0, { { .00, .34 }, { .00, .00 }, { .00, .00 } } },
  { 14.0, { { .00, .31 }, { .00, .00 }, { .00, .00 } } },
  { 15.0, { { .00, .28 }, { .00, .00 }, { .00, .00 } } },
};

static double
between_rows (const FrequencyRow *low, const FrequencyRow *high, double per_min,
              SwLiftDuration duration, int hands)
{
  double from = low->factor[duration][hands], to = high->factor[duration][hands];
  double share = (per_min - low->per_min) / (high->per_min - low->per_min);

  /* Past the last row that allows any lifting, none is allowed. */
  if (to <= 0.0)
    return share <= LIMIT_SLACK ? from : 0.0;
  return from + share * (to - from);
}

static double
frequency_factor (double per_min, SwLiftDuration duration, int hands)
{
  const gsize last = G_N_ELEMENTS (frequency_rows) - 1;

  if (per_min <= frequency_rows[0].per_min)
    return frequency_rows[0].factor[duration][hands];
  if (over (per_min, frequency_rows[last].per_min))
    return 0.0;
  for (gsize i = 1; i < last; i++)
    if (per_min <= frequency_rows[i].per_min)
      return between_rows (&frequency_rows[i - 1], &frequency_rows[i], per_min, duration,
                           hands);
  return between_rows (&frequency_rows[last - 1], &frequency_rows[last], per_min,
                       duration, hands);
}

/* 0 below the boundary of tables 5 and 7, 1 from it on. */
static int
hands_of (const Form *form, double height_m)
{
  return height_m / form->unit_m >= form->begin - LIMIT_SLACK;
}

SwStatus
sw_lift_frequency_factor (SwUnitSystem units, double per_min, double height_m,
                          SwLiftDuration duration, double *factor)
{
  const Form *form = form_of (units, height_m);

  if (form == NULL || !isfinite (per_min) || per_min < 0.0
      || (guint) duration >= SW_LIFT_DURATION_COUNT)
    return SW_E_RANGE;
  *factor = frequency_factor (per_min, duration, hands_of (form, height_m));
  return SW_OK;
}

SwStatus
sw_lift_grip_factor (SwUnitSystem units, SwGrip grip, double height_m, double *factor)
{
  static const double factors[SW_GRIP_COUNT][2] = {
    [SW_GRIP_GOOD] = { 1.00, 1.00 },
    [SW_GRIP_FAIR] = { 0.95, 1.00 },
    [SW_GRIP_POOR] = { 0.90, 0.90 },
  };
  const Form *form = form_of (units, height_m);

  if (form == NULL || (guint) grip >= SW_GRIP_COUNT)
    return SW_E_RANGE;
  *factor = factors[grip][hands_of (form, height_m)];
  return SW_OK;
}

SwStatus
sw_lift_reach (SwUnitSystem units, double width_m, double height_m, double *reach_m)
{
  const Form *form = form_of (units, height_m);
  double height, close;

  if (form == NULL || !isfinite (width_m) || width_m < 0.0)
    return SW_E_RANGE;
  height = height_m / form->unit_m;
  close = height >= form->close_split - LIMIT_SLACK ? form->close_high : form->close_low;
  *reach_m = close * form->unit_m + width_m / 2.0;
  return SW_OK;
}

SwStatus
sw_lift_limit (SwUnitSystem units, const double factors[6], double *limit_kg)
{
  const Form *form = form_of (units, 0.0);
  double limit;

  if (form == NULL)
    return SW_E_RANGE;
  limit = form->load_kg;
  for (int i = 0; i < 6; i++)
    {
      if (!isfinite (factors[i]) || factors[i] < 0.0 || factors[i] > 1.0)
        return SW_E_RANGE;
      limit *= factors[i];
    }
  *limit_kg = limit;
  return SW_OK;
}

static SwStatus
find_factors (SwUnitSystem units, const SwLift *lift, SwLiftResult *found)
{
  SwStatus status = sw_lift_reach_factor (units, lift->reach_m, &found->reach);

  if (status == SW_OK)
    status = sw_lift_height_factor (units, lift->height_m, &found->height);
  if (status == SW_OK)
    status = sw_lift_travel_factor (units, lift->travel_m, &found->travel);
  if (status == SW_OK)
    status = sw_lift_twist_factor (lift->twist_rad, &found->twist);
  if (status == SW_OK)
    status = sw_lift_frequency_factor (units, lift->per_min, lift->begin_height_m,
                                       lift->duration, &found->frequency);
  if (status == SW_OK)
    status = sw_lift_grip_factor (units, lift->grip, lift->height_m, &found->grip);
  return status;
}

static guint
lift_limits (const SwLiftResult *found, guint circumstances)
{
  const guint own =
      SW_LIFT_OUT_OF_REACH | SW_LIFT_TOO_HIGH | SW_LIFT_TOO_TWISTED | SW_LIFT_TOO_OFTEN;
  guint limits = circumstances & ~own;

  if (found->reach <= 0.0)
    limits |= SW_LIFT_OUT_OF_REACH;
  if (found->height <= 0.0 || found->travel <= 0.0)
    limits |= SW_LIFT_TOO_HIGH;
  if (found->twist <= 0.0)
    limits |= SW_LIFT_TOO_TWISTED;
  if (found->frequency <= 0.0)
    limits |= SW_LIFT_TOO_OFTEN;
  return limits;
}

SwStatus
sw_lift (SwUnitSystem units, const SwLift *lift, SwLiftResult *result)
{
  SwLiftResult found = { .limits = SW_LIFT_WITHIN };
  SwStatus status = find_factors (units, lift, &found);

  if (status != SW_OK)
    return status;
  if (!isfinite (lift->mass_kg) || lift->mass_kg <= 0.0)
    return SW_E_RANGE;
  found.limit_kg = forms[units].load_kg * found.reach * found.height * found.travel
                   * found.twist * found.frequency * found.grip;
  found.index = found.limit_kg > 0.0 ? lift->mass_kg / found.limit_kg : INFINITY;
  found.limits = lift_limits (&found, lift->circumstances);
  *result = found;
  return SW_OK;
}
