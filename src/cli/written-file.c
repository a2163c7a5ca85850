/* SPDX-License-Identifier: MIT */
#include "written-file.h"

#include <gio/gio.h>
#include <slopewright/paint/paint.h>

static gboolean
is_same_file (const char *a, const char *b)
{
  g_autoptr (GFile) file_a = g_file_new_for_commandline_arg (a);
  g_autoptr (GFile) file_b = g_file_new_for_commandline_arg (b);

  return g_file_equal (file_a, file_b);
}

SlopepackExit
slopepack_check_output (const SlopepackCommand *command, const char *output,
                        const char *job_path)
{
  if (output == NULL || *output == '\0')
    return slopepack_complain (SLOPEPACK_USAGE, "%s: expected -o FILE: where to write",
                               command->name);
  /* Elsewhere it means standard output; here it would become a file of that name. */
  if (g_str_equal (output, "-"))
    return slopepack_complain (
        SLOPEPACK_USAGE, "%s: -o: found '-'; expected the name of a file", command->name);
  if (job_path != NULL && is_same_file (output, job_path))
    return slopepack_complain (SLOPEPACK_USAGE,
                               "%s: '%s' is the job itself; expected another file for -o",
                               command->name, output);
  return SLOPEPACK_DONE;
}

SlopepackExit
slopepack_write_text (const char *text, const char *output)
{
  g_autoptr (GError) error = NULL;

  if (!g_file_set_contents (output, text, -1, &error))
    return slopepack_complain (SLOPEPACK_CANNOT_WRITE, "%s", error->message);
  return SLOPEPACK_DONE;
}

SlopepackExit
slopepack_paint_complaint (const GError *error)
{
  gboolean no_font = g_error_matches (error, SW_PAINT_ERROR, SW_PAINT_ERROR_FONT);

  return slopepack_complain (no_font ? SLOPEPACK_NOT_INSTALLED : SLOPEPACK_CANNOT_WRITE,
                             "%s", error->message);
}
