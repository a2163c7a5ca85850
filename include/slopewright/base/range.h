/* SPDX-License-Identifier: MIT */
#pragma once

#include <glib.h>

/** Shares that make a whole, added up, may lie a trace over 1: 0.1 and 0.2 and 0.7 do. */
#define SW_SHARES_SLACK 1e-9

/** Whether @value is a number that can be an amount: finite, 0 or more. */
gboolean sw_is_size (double value);

/** Whether @value is finite and more than 0. */
gboolean sw_is_positive (double value);
