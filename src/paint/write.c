/* SPDX-License-Identifier: MIT */
#include "write.h"

#define FILE_MODE 0666 /* less what the user's mask takes away */

gboolean
sw_write_whole (const char *path, const guint8 *bytes, gsize length, GError **error)
{
  g_autoptr (GError) trouble = NULL;

  if (g_file_set_contents_full (path, (const char *) bytes, (gssize) length,
                                G_FILE_SET_CONTENTS_CONSISTENT, FILE_MODE, &trouble))
    return TRUE;
  g_set_error (error, SW_PAINT_ERROR, SW_PAINT_ERROR_WRITE, "%s", trouble->message);
  return FALSE;
}
