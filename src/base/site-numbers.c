/* SPDX-License-Identifier: MIT */
#include <glib.h>
#include <slopewright/base/site-numbers.h>

#define MM_PER_H (1e-3 / SW_S_PER_H)

/* Limits catch a number in the wrong unit; within them whoever types it answers for it. */
const SwSiteNumberKey sw_site_number_keys[SW_NUMBER_COUNT] = {
  [SW_NUMBER_EROSIVITY] = { "erosivity", SW_UNIT_EROSIVITY, 0.1, 50000.0 },
  [SW_NUMBER_EROSIVITY_SHARE] = { "erosivity_share", SW_UNIT_PERCENT, 0.0001, 20.0 },
  [SW_NUMBER_ERODIBILITY] = { "erodibility", SW_UNIT_ERODIBILITY, 0.001, 1.0 },
  [SW_NUMBER_COVER] = { "cover_c", SW_UNIT_RATIO, 0.0001, 1.0 },
  [SW_NUMBER_RAIN] = { "rain_mm_per_h", SW_UNIT_RAIN, 1.0 * MM_PER_H, 500.0 * MM_PER_H },
  [SW_NUMBER_RUN_ON_M] = { "run_on_m", SW_UNIT_M, 0.1, 1000.0 },
  [SW_NUMBER_ROUGHNESS] = { "roughness_n", SW_UNIT_RATIO, 0.005, 1.0 },
  [SW_NUMBER_GROW_MONTHS] = { "grow_months", SW_UNIT_MONTH, 0.25, 120.0 },
  [SW_NUMBER_WET_RATIO] = { "wet_ratio", SW_UNIT_RATIO, 1.0, 20.0 },
  [SW_NUMBER_LIFT_FROM_M] = { "lift_from_m", SW_UNIT_SMALL_M, 0.01, 2.0 },
  [SW_NUMBER_LIFT_TO_M] = { "lift_to_m", SW_UNIT_SMALL_M, 0.01, 2.0 },
  [SW_NUMBER_LIFT_REACH_M] = { "lift_reach_m", SW_UNIT_SMALL_M, 0.1, 1.0 },
  [SW_NUMBER_FALL_PLAN_RAD] = { "fall_plan_deg", SW_UNIT_ANGLE, 1.0 * G_PI / 180.0,
                                85.0 * G_PI / 180.0 },
  [SW_NUMBER_SLIDE_DEPTH_M] = { "slide_depth_m", SW_UNIT_SMALL_M, 0.05, 10.0 },
  [SW_NUMBER_FRICTION_RAD] = { "friction_deg", SW_UNIT_ANGLE, 5.0 * G_PI / 180.0,
                               55.0 * G_PI / 180.0 },
  [SW_NUMBER_COHESION_PA] = { "cohesion_pa", SW_UNIT_PA, 1.0, 200000.0 },
  [SW_NUMBER_SOIL_WEIGHT] = { "soil_weight_n_per_m3", SW_UNIT_N_PER_M3, 9810.0, 26000.0 },
  [SW_NUMBER_WIND_LIMIT] = { "wind_limit_m_per_s", SW_UNIT_WIND, 1.0, 40.0 },
  [SW_NUMBER_RAIN_STOP_M] = { "rain_stop_m", SW_UNIT_SMALL_M, 0.0005, 0.5 },
  [SW_NUMBER_TEMPERATURE_LEAST] = { "temperature_least_k", SW_UNIT_KELVIN, 233.15,
                                    313.15 },
};
