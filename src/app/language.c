/* SPDX-License-Identifier: MIT */
#include "language.h"

#include <glib/gi18n.h>
#include <locale.h>

/* From a program of the build folder to the catalogues that were made with it. */
#define BUILT_BESIDE "../../resources/po"

/* Returns: (transfer full): the folder of catalogues beside this program, or NULL. */
static char *
folder_beside (void)
{
  g_autofree char *program = g_file_read_link ("/proc/self/exe", NULL);
  g_autofree char *of_program = program != NULL ? g_path_get_dirname (program) : NULL;
  char *folder =
      program != NULL ? g_build_filename (of_program, BUILT_BESIDE, NULL) : NULL;

  if (folder != NULL && !g_file_test (folder, G_FILE_TEST_IS_DIR))
    g_clear_pointer (&folder, g_free);
  return folder;
}

void
sw_language_begin (void)
{
  g_autofree char *beside = folder_beside ();

  setlocale (LC_ALL, "");
  bindtextdomain (GETTEXT_PACKAGE, beside != NULL ? beside : SW_LOCALE_DIR);
  bind_textdomain_codeset (GETTEXT_PACKAGE, "UTF-8");
  textdomain (GETTEXT_PACKAGE);
}

const char *
sw_language_of_texts (void)
{
  /* Translators: the folder of resources/texts in your language, such as fr. */
  return C_ ("language of findings and workings", "en");
}
