/* SPDX-License-Identifier: MIT */
#pragma once

#include <glib.h>
#include <math.h>

/* Never a size, an angle or a share. */
static const double never[] = { NAN, INFINITY, -INFINITY, -1.0 };

/* What a refused call must leave in its outputs. */
#define UNTOUCHED 4711.0

/* @call, with `bad` standing for one argument, refuses each of never[] and leaves @output. */
#define REFUSES(output, call)                                                            \
  for (gsize never_i = 0; never_i < G_N_ELEMENTS (never); never_i++)                     \
    {                                                                                    \
      const double bad = never[never_i];                                                 \
      (output) = UNTOUCHED;                                                              \
      g_assert_cmpint ((call), ==, SW_E_RANGE);                                          \
      g_assert_cmpfloat ((output), ==, UNTOUCHED);                                       \
    }
