/* SPDX-License-Identifier: MIT */
#pragma once

#include <glib.h>

/**
 * SwLongWork: what a function that may take seconds is given, to say how far it is and to
 * be stopped. @go_on is called in the thread that works, before each part: @done of @parts
 * are behind it. Returns FALSE to stop; the function then gives up what it has made.
 */
typedef struct
{
  gboolean (*go_on) (gpointer data, guint done, guint parts);
  gpointer data;
} SwLongWork;

/** Whether to go on; always, where @work is NULL. */
static inline gboolean
sw_long_work_goes_on (const SwLongWork *work, guint done, guint parts)
{
  return work == NULL || work->go_on (work->data, done, parts);
}
