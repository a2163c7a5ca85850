/* SPDX-License-Identifier: MIT */
#pragma once

#include <glib.h>

/** GCompareFunc for doubles behind the pointers, smallest first; none may be NaN. */
int sw_compare_doubles (gconstpointer a, gconstpointer b);
