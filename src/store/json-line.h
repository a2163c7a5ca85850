/* SPDX-License-Identifier: MIT */
#pragma once

#include <glib.h>

/* One step of a way into JSON text: a key, or an index when @key is NULL. */
typedef struct
{
  const char *key;
  gsize index;
} SwJsonStep;

/*
 * Line (from 1) of the value that @steps lead to. When the way ends early,
 * because a key is missing, the line of the last value that was found. @text
 * must be valid JSON.
 */
guint sw_json_line (const char *text, gsize length, const SwJsonStep *steps,
                    guint n_steps);
