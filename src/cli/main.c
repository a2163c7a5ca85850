/* SPDX-License-Identifier: MIT */
#include "command.h"

#include <glib.h>
#include <string.h>

/*
 * slopepack: packs, quantities and findings of a job without a window.
 *
 * The locale is never set, so that numbers and sorting are the same on every
 * machine; text is UTF-8.
 */

static const SlopepackCommand *const commands[] = {
  &slopepack_pack, &slopepack_tally,   &slopepack_check,    &slopepack_draw,
  &slopepack_why,  &slopepack_compare, &slopepack_calendar, &slopepack_form
};

static SlopepackExit
print_help (void)
{
  g_autoptr (GString) text =
      g_string_new ("Usage: slopepack COMMAND JOB [OPTION…]\n\n"
                    "Lays erosion control blankets on the slope described in a job file\n"
                    "and prints the pack for that slope.\n\nCommands:\n");

  for (guint i = 0; i < G_N_ELEMENTS (commands); i++)
    g_string_append_printf (text, "  %-8s %s\n", commands[i]->name, commands[i]->summary);
  g_string_append (text, "\n"
                         "  --help, -h  this text; after a command, its options\n"
                         "  --version   the version\n\n"
                         "Exit status:\n"
                         "  0  done\n"
                         "  2  the command line is wrong\n"
                         "  3  done, and the job has a stop finding\n"
                         "  4  the job file cannot be read, or something in it is wrong\n"
                         "  5  the job cannot be laid out\n"
                         "  6  the output cannot be written\n"
                         "  7  something the program needs is not installed\n");
  return slopepack_print (text->str);
}

static const SlopepackCommand *
find_command (const char *name)
{
  for (guint i = 0; i < G_N_ELEMENTS (commands); i++)
    if (g_str_equal (commands[i]->name, name))
      return commands[i];
  return NULL;
}

static SlopepackExit
complain_unknown (const char *name)
{
  g_autoptr (GString) names = g_string_new (NULL);

  for (guint i = 0; i < G_N_ELEMENTS (commands); i++)
    g_string_append_printf (names, "%s%s", i == 0 ? "" : ", ", commands[i]->name);
  return slopepack_complain (
      SLOPEPACK_USAGE, "there is no command '%s'; expected one of: %s", name, names->str);
}

int
main (int argc, char **argv)
{
  const SlopepackCommand *command;

  if (argc < 2)
    return slopepack_complain (SLOPEPACK_USAGE,
                               "expected a command; try 'slopepack --help'");
  if (g_str_equal (argv[1], "--help") || g_str_equal (argv[1], "-h"))
    return print_help ();
  if (g_str_equal (argv[1], "--version"))
    return slopepack_print ("slopepack " SW_VERSION "\n");
  command = find_command (argv[1]);
  if (command == NULL)
    return complain_unknown (argv[1]);
  return command->run (argv + 1);
}
