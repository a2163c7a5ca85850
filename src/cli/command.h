/* SPDX-License-Identifier: MIT */
#pragma once

#include <glib.h>

/** What slopepack tells its caller; listed in the manual page. */
typedef enum
{
  SLOPEPACK_DONE = 0,
  SLOPEPACK_USAGE = 2,        /* the command line is wrong */
  SLOPEPACK_STOP_FINDING = 3, /* done, and the job has a stop finding */
  SLOPEPACK_UNREADABLE = 4,   /* the job file cannot be read or is wrong */
  SLOPEPACK_CANNOT_LAY = 5,   /* the job cannot be laid out */
  SLOPEPACK_CANNOT_WRITE = 6, /* the output cannot be written */
  SLOPEPACK_NOT_INSTALLED =
      7, /* something the program needs is missing: the sheet font */
} SlopepackExit;

typedef struct
{
  const char *name;
  const char *summary;   /* one line for the list of commands */
  const char *arguments; /* as in a usage line */
  const char *more;      /* paragraphs under the options */

  /** @argv: the command's own words, argv[0] its name; NULL-terminated. */
  SlopepackExit (*run) (char **argv);
} SlopepackCommand;

extern const SlopepackCommand slopepack_pack, slopepack_tally, slopepack_check,
    slopepack_draw, slopepack_why, slopepack_compare, slopepack_calendar, slopepack_form;

/**
 * slopepack_read_options:
 * @command: whose usage is shown on --help
 * @argv: the command's own words; options are taken out of a copy
 * @entries: options of the command, or NULL
 * @least: words that must be left, argv[0] not counted
 * @most: words that may be left
 * @words: (out) (transfer full): the words left, NULL-terminated
 * @code: (out): what to exit with when this returns FALSE
 *
 * Says on standard error what is wrong with a command line.
 *
 * Returns: whether to go on; FALSE after --help too, with SLOPEPACK_DONE.
 */
gboolean slopepack_read_options (const SlopepackCommand *command, char **argv,
                                 const GOptionEntry *entries, guint least, guint most,
                                 char ***words, SlopepackExit *code);

/** Say "slopepack: ..." on standard error. Returns: @code. */
SlopepackExit slopepack_complain (SlopepackExit code, const char *format, ...)
    G_GNUC_PRINTF (2, 3);

/** Write to standard output as it stands, in UTF-8 whatever the locale. */
SlopepackExit slopepack_print (const char *text);
