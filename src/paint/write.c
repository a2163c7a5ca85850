/* SPDX-License-Identifier: MIT */
#include "write.h"

#include <glib/gi18n.h>

#define FILE_MODE 0666 /* less what the user's mask takes away */

/* What the system would say about a file of another name, beside @path; or NULL. */
static const char *
obstacle_at (const char *path)
{
  g_autofree char *folder = g_path_get_dirname (path);

  if (g_file_test (path, G_FILE_TEST_IS_DIR))
    return _ ("it is a folder, expected the name of a file");
  if (!g_file_test (folder, G_FILE_TEST_IS_DIR))
    return _ ("its folder does not exist");
  return NULL;
}

gboolean
sw_write_whole (const char *path, const guint8 *bytes, gsize length, GError **error)
{
  g_autoptr (GError) trouble = NULL;
  g_autofree char *name = g_filename_display_name (path);
  const char *obstacle = obstacle_at (path);

  if (g_file_set_contents_full (path, (const char *) bytes, (gssize) length,
                                G_FILE_SET_CONTENTS_CONSISTENT, FILE_MODE, &trouble))
    return TRUE;
  g_set_error (error, SW_PAINT_ERROR, SW_PAINT_ERROR_WRITE,
               _ ("%s: cannot be written: %s"), name,
               obstacle != NULL ? obstacle : trouble->message);
  return FALSE;
}
