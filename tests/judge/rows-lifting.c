/* SPDX-License-Identifier: MIT */
#undef G_DISABLE_ASSERT
#include "rows.h"
#include <slopewright/judge/lifting.h>

/* A row in inches and pounds is run through the US form. */
static SwUnitSystem
input_units (const CheckRow *row)
{
  return isnan (check_input_or (row, "load_lb", NAN)) ? SW_UNITS_METRIC : SW_UNITS_US;
}

static double
input_length (const CheckRow *row, const char *stem)
{
  gboolean us = input_units (row) == SW_UNITS_US;
  g_autofree char *key = g_strconcat (stem, us ? "_in" : "_cm", NULL);

  return check_input (row, key) * (us ? SW_M_PER_IN : 0.01);
}

static double
reach_factor (const CheckRow *row)
{
  double got = NAN;

  MUST (sw_lift_reach_factor (input_units (row), input_length (row, "reach"), &got));
  return got;
}

static double
height_factor (const CheckRow *row)
{
  double got = NAN;

  MUST (sw_lift_height_factor (input_units (row), input_length (row, "height"), &got));
  return got;
}

static double
travel_factor (const CheckRow *row)
{
  double got = NAN;

  MUST (sw_lift_travel_factor (input_units (row), input_length (row, "travel"), &got));
  return got;
}

static double
twist_factor (const CheckRow *row)
{
  double got = NAN;

  MUST (sw_lift_twist_factor (rows_radians (check_input (row, "twist_deg")), &got));
  return got;
}

/* Which of @names the text of @key is. */
static int
input_choice (const CheckRow *row, const char *key, const char *const *names)
{
  g_autofree char *text = check_input_text (row, key);

  for (int i = 0; names[i] != NULL; i++)
    if (g_strcmp0 (text, names[i]) == 0)
      return i;
  g_error ("row %s: %s is not known as %s", row->id, text, key);
}

static double
frequency_factor (const CheckRow *row)
{
  static const char *const durations[] = { "short", "moderate", "long", NULL };
  int duration = input_choice (row, "duration", durations);
  double got = NAN;

  MUST (sw_lift_frequency_factor (SW_UNITS_METRIC, check_input (row, "per_min"),
                                  check_input (row, "begin_cm") * 0.01,
                                  (SwLiftDuration) duration, &got));
  return got;
}

static double
grip_factor (const CheckRow *row)
{
  static const char *const grips[] = { "good", "fair", "poor", NULL };
  double got = NAN;

  MUST (sw_lift_grip_factor (SW_UNITS_METRIC, (SwGrip) input_choice (row, "grip", grips),
                             check_input (row, "height_cm") * 0.01, &got));
  return got;
}

static double
weight_limit_kg (const CheckRow *row)
{
  double factors[] = { reach_factor (row),      height_factor (row),
                       travel_factor (row),     twist_factor (row),
                       check_input (row, "fm"), check_input (row, "cm") };
  double got = NAN;

  MUST (sw_lift_limit (input_units (row), factors, &got));
  return got;
}

static double
weight_limit (const CheckRow *row)
{
  double limit_kg = weight_limit_kg (row);

  return input_units (row) == SW_UNITS_US ? limit_kg / SW_KG_PER_LB : limit_kg;
}

static double
lifting_index (const CheckRow *row)
{
  double load_kg = input_units (row) == SW_UNITS_US
                       ? check_input (row, "load_lb") * SW_KG_PER_LB
                       : check_input (row, "load_kg");

  return load_kg / weight_limit_kg (row);
}

static double
special_frequency (const CheckRow *row)
{
  double got = NAN;

  MUST (sw_lift_frequency (check_input (row, "rate_per_min"),
                           check_input (row, "work_min"), &got));
  return got;
}

const CheckQuantity rows_lifting[] = {
  { "HM", reach_factor },
  { "VM", height_factor },
  { "DM", travel_factor },
  { "AM", twist_factor },
  { "FM", frequency_factor },
  { "CM", grip_factor },
  { "RWL", weight_limit },
  { "LI", lifting_index },
  { "special frequency", special_frequency },
};
const guint n_rows_lifting = G_N_ELEMENTS (rows_lifting);
