/* SPDX-License-Identifier: MIT */
#include "command.h"

#include <errno.h>
#include <stdarg.h>
#include <stdio.h>
#include <string.h>

SlopepackExit
slopepack_complain (SlopepackExit code, const char *format, ...)
{
  va_list arguments;
  g_autofree char *text = NULL;

  va_start (arguments, format);
  text = g_strdup_vprintf (format, arguments);
  va_end (arguments);
  fputs ("slopepack: ", stderr);
  fputs (text, stderr);
  fputc ('\n', stderr);
  return code;
}

SlopepackExit
slopepack_print (const char *text)
{
  /* Not g_print(): it would recode for the locale, and "°" would become "?". */
  if (fputs (text, stdout) < 0 || fflush (stdout) != 0)
    return slopepack_complain (SLOPEPACK_CANNOT_WRITE,
                               "cannot write to standard output: %s", strerror (errno));
  return SLOPEPACK_DONE;
}

static SlopepackExit
check_words (const SlopepackCommand *command, char **words, guint least, guint most)
{
  guint count = g_strv_length (words) - 1;

  if (count < least)
    return slopepack_complain (SLOPEPACK_USAGE,
                               "%s: expected %s; try 'slopepack %s --help'",
                               command->name, command->arguments, command->name);
  if (count > most)
    return slopepack_complain (SLOPEPACK_USAGE, "%s: did not expect '%s'; expected %s",
                               command->name, words[most + 1], command->arguments);
  return SLOPEPACK_DONE;
}

/* Options end at "--"; until then a request for help wins over every mistake. */
static gboolean
asks_for_help (char **argv)
{
  for (char **word = argv; *word != NULL && !g_str_equal (*word, "--"); word++)
    if (g_str_equal (*word, "--help") || g_str_equal (*word, "-h"))
      return TRUE;
  return FALSE;
}

static void
drop_separator (char **words)
{
  for (char **word = words; *word != NULL; word++)
    if (g_str_equal (*word, "--"))
      {
        g_free (*word);
        memmove (word, word + 1, sizeof *word * (g_strv_length (word + 1) + 1));
        return;
      }
}

gboolean
slopepack_read_options (const SlopepackCommand *command, char **argv,
                        const GOptionEntry *entries, guint least, guint most,
                        char ***words, SlopepackExit *code)
{
  g_autoptr (GOptionContext) context = g_option_context_new (command->arguments);
  g_autofree char *program = g_strconcat ("slopepack ", command->name, NULL);
  g_auto (GStrv) rest = g_strdupv (argv);
  g_autoptr (GError) error = NULL;

  /* The library shows the program's name in help; this is the name to type. */
  g_set_prgname (program);
  g_option_context_set_help_enabled (context, FALSE);
  g_option_context_set_summary (context, command->summary);
  g_option_context_set_description (context, command->more);
  if (entries != NULL)
    g_option_context_add_main_entries (context, entries, NULL);

  if (asks_for_help (argv))
    {
      g_autofree char *help = g_option_context_get_help (context, TRUE, NULL);
      *code = slopepack_print (help);
      return FALSE;
    }
  if (!g_option_context_parse_strv (context, &rest, &error))
    {
      *code = slopepack_complain (SLOPEPACK_USAGE, "%s: %s; try 'slopepack %s --help'",
                                  command->name, error->message, command->name);
      return FALSE;
    }
  drop_separator (rest);
  *code = check_words (command, rest, least, most);
  if (*code != SLOPEPACK_DONE)
    return FALSE;
  *words = g_steal_pointer (&rest);
  return TRUE;
}
