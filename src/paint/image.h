/* SPDX-License-Identifier: MIT */
#pragma once

#include <cairo.h>

#include <slopewright/paint/paint.h>

/* cairo's way of writing into a GByteArray. */
cairo_status_t sw_image_collect (void *bytes, const unsigned char *data, unsigned length);

/* TRUE, or @error telling that @what could not be made, and why. */
gboolean sw_image_check (cairo_status_t status, const char *what, const char *path,
                         GError **error);
