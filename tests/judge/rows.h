/* SPDX-License-Identifier: MIT */
#pragma once

#include "../check-rows.h"
#include <math.h>
#include <slopewright/base/gradient.h>
#include <slopewright/base/units.h>

/* How the rows of check-values-judge.csv are computed, by subject. */
extern const CheckQuantity rows_soil[], rows_water[], rows_lifting[], rows_order[];
extern const guint n_rows_soil, n_rows_water, n_rows_lifting, n_rows_order;

#define MUST(call) g_assert_cmpint ((call), ==, SW_OK)

static inline double
rows_radians (double degrees)
{
  return degrees * G_PI / 180.0;
}
