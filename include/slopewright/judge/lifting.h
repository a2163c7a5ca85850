/* SPDX-License-Identifier: MIT */
#pragma once

#include <glib.h>
#include <slopewright/base/status.h>
#include <slopewright/base/units.h>

/*
 * The revised NIOSH lifting equation: weight limit = load constant x six
 * multipliers. Source: DHHS (NIOSH) publication 94-110, rev. 9/2021, tables 1 to
 * 5 and 7. A guide for two-handed lifts by healthy workers; local rules come first.
 *
 * The metric and the US form are not exact conversions of each other (23 kg is
 * 50.7 lb, 10 in is 25.4 cm): choose one by @units and stay with it. Arguments
 * are SI in both. Printed tables and examples carry multipliers rounded to two
 * decimals, so hand results differ by up to 3 % from these.
 */

/** HM = 25 cm / H, at most 1; 0 beyond 63 cm. US: 10 in, 25 in. @reach_m >= 0. */
SwStatus sw_lift_reach_factor (SwUnitSystem units, double reach_m, double *factor);

/** VM = 1 - 0.003 |V - 75 cm|; 0 above 175 cm. US: 0.0075, 30 in, 70 in. @height_m >= 0. */
SwStatus sw_lift_height_factor (SwUnitSystem units, double height_m, double *factor);

/**
 * DM = 0.82 + 4.5 cm / D, 1 up to 25 cm, 0 over 175 cm. US: 1.8 in, 10 in, 70 in.
 * @travel_m upright, >= 0.
 */
SwStatus sw_lift_travel_factor (SwUnitSystem units, double travel_m, double *factor);

/** AM = 1 - 0.0032 A in degrees; 0 over 135 degrees. @twist_rad >= 0. */
SwStatus sw_lift_twist_factor (double twist_rad, double *factor);

typedef enum
{
  SW_LIFT_SHORT,    /* up to 1 h of lifting, then as long light work */
  SW_LIFT_MODERATE, /* up to 2 h, then light work for 0.3 of it */
  SW_LIFT_LONG,     /* up to 8 h */
  SW_LIFT_DURATION_COUNT
} SwLiftDuration;

/**
 * Class of @work_h of lifting followed by @recovery_h of light work. SW_E_RANGE over
 * 8 h, where the equation ends.
 */
SwStatus sw_lift_duration (double work_h, double recovery_h, SwLiftDuration *duration);

/**
 * sw_lift_frequency:
 * @rate_per_min: lifts per minute while lifting, >= 0
 * @work_min: minutes of lifting in each quarter of an hour, (0, 15]
 * @per_min: (out): frequency to enter: rate x minutes / 15
 */
SwStatus sw_lift_frequency (double rate_per_min, double work_min, double *per_min);

/**
 * sw_lift_frequency_factor:
 * @per_min: lifts per minute, >= 0; below 0.2 as 0.2
 * @height_m: of the hands where the lift begins
 * @factor: (out): FM of table 5, straight between its rows; 0 past the last row
 *   that is not 0
 */
SwStatus sw_lift_frequency_factor (SwUnitSystem units, double per_min, double height_m,
                                   SwLiftDuration duration, double *factor);

/**
 * How hands hold. A smooth roll without handles is poor, unless fingers flex square
 * under it: fair.
 */
typedef enum
{
  SW_GRIP_GOOD,
  SW_GRIP_FAIR,
  SW_GRIP_POOR,
  SW_GRIP_COUNT
} SwGrip;

/** CM of table 7. */
SwStatus sw_lift_grip_factor (SwUnitSystem units, SwGrip grip, double height_m,
                              double *factor);

/**
 * H of a load @width_m deep (W) held close: 20 cm + W / 2, and 25 cm + W / 2 for hands
 * lower than 25 cm. US: 8 in, 10 in, 10 in.
 */
SwStatus sw_lift_reach (SwUnitSystem units, double width_m, double height_m,
                        double *reach_m);

/**
 * Why the equation does not hold for a lift. The first four come from its numbers,
 * the rest from who asks.
 */
typedef enum
{
  SW_LIFT_WITHIN = 0,
  SW_LIFT_OUT_OF_REACH = 1 << 0,
  SW_LIFT_TOO_HIGH = 1 << 1, /* height or travel */
  SW_LIFT_TOO_TWISTED = 1 << 2,
  SW_LIFT_TOO_OFTEN = 1 << 3,
  SW_LIFT_ONE_HAND = 1 << 4,
  SW_LIFT_SEVERAL_PEOPLE = 1 << 5,
  SW_LIFT_KNEELING = 1 << 6,
  SW_LIFT_CARRIED = 1 << 7,       /* more than one or two steps */
  SW_LIFT_UNSTEADY_LOAD = 1 << 8, /* wet, sagging, rolling */
  SW_LIFT_POOR_FOOTING = 1 << 9,  /* friction under 0.4: wet or loose slope */
  SW_LIFT_HOT_OR_COLD = 1 << 10   /* outside 19 to 26 degrees C, 35 to 50 % humidity */
} SwLiftLimit;

typedef struct
{
  double mass_kg;        /* > 0 */
  double reach_m;        /* hands from the ankles, level */
  double height_m;       /* of the hands where this is looked at: begin or end */
  double begin_height_m; /* of the hands where the lift begins */
  double travel_m;       /* between begin and end, upright */
  double twist_rad;
  double per_min;
  SwLiftDuration duration;
  SwGrip grip;
  guint circumstances; /* SwLiftLimit flags from SW_LIFT_ONE_HAND on */
} SwLift;

typedef struct
{
  double reach, height, travel, twist, frequency, grip; /* multipliers */
  double limit_kg;                                      /* recommended weight limit */
  double index; /* mass over limit; INFINITY where the limit is 0 */
  guint limits; /* SwLiftLimit flags */
} SwLiftResult;

/**
 * One end of a lift. Where the load must be set down with care, look at both
 * ends and take the lower limit. With flags the numbers are a hint at best.
 */
SwStatus sw_lift (SwUnitSystem units, const SwLift *lift, SwLiftResult *result);

/**
 * Limit from multipliers as a table prints them: 23 kg, or 51 lb, times all six; each
 * in [0, 1].
 */
SwStatus sw_lift_limit (SwUnitSystem units, const double factors[6], double *limit_kg);
