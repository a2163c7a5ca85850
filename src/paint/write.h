/* SPDX-License-Identifier: MIT */
#pragma once

#include <slopewright/paint/paint.h>

/* Write all or nothing: beside @path, then renamed over it. */
gboolean sw_write_whole (const char *path, const guint8 *bytes, gsize length,
                         GError **error);
