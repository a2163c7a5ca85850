/* SPDX-License-Identifier: MIT */
#include "image.h"

cairo_status_t
sw_image_collect (void *bytes, const unsigned char *data, unsigned length)
{
  g_byte_array_append (bytes, data, length);
  return CAIRO_STATUS_SUCCESS;
}

gboolean
sw_image_check (cairo_status_t status, const char *what, const char *path, GError **error)
{
  if (status == CAIRO_STATUS_SUCCESS)
    return TRUE;
  g_set_error (error, SW_PAINT_ERROR, SW_PAINT_ERROR_WRITE,
               "%s: the %s cannot be made: %s", path, what,
               cairo_status_to_string (status));
  return FALSE;
}
