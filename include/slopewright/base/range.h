/* SPDX-License-Identifier: MIT */
#pragma once

#include <glib.h>

/** Whether @value is a number that can be an amount: finite, 0 or more. */
gboolean sw_is_size (double value);

/** Whether @value is finite and more than 0. */
gboolean sw_is_positive (double value);
