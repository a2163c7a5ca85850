/* SPDX-License-Identifier: MIT */
#pragma once

#include "command.h"

#include <slopewright/base/number-text.h>
#include <slopewright/base/texts.h>
#include <slopewright/figure/view.h>
#include <slopewright/judge/result.h>

/** How a person wants to read; from options shared by most commands. */
typedef struct
{
  char *units;    /* "metric", "us", or NULL: as the job says */
  char *language; /* or NULL: as the job says */
} SlopepackReader;

void slopepack_reader_clear (SlopepackReader *reader);
G_DEFINE_AUTO_CLEANUP_CLEAR_FUNC (SlopepackReader, slopepack_reader_clear)

/** A job file read and worked out, with the words to speak about it. */
typedef struct
{
  SwCatalogue *catalogue;
  SwTexts *texts;
  SwJob *job;
  SwResult *result; /* its status is SW_OK */
  SwNumberStyle style;
  char *fingerprint; /* first 12 hexadecimal digits of SHA-256 of the file's bytes */
} SlopepackJob;

/** Two option entries for @reader, to be put into a command's table. */
#define SLOPEPACK_READER_OPTIONS(reader)                                                 \
  { "units",                                                                             \
    0,                                                                                   \
    0,                                                                                   \
    G_OPTION_ARG_FILENAME,                                                               \
    &(reader).units,                                                                     \
    "Units to show: metric or us (default: as the job says)",                            \
    "UNITS" },                                                                           \
  {                                                                                      \
    "language", 0, 0, G_OPTION_ARG_FILENAME, &(reader).language,                         \
        "Language of the words: en, es or fr (default: as the job says)", "CODE"         \
  }

/**
 * slopepack_job_open:
 * @path: a file or an address
 * @reader: choices
 * @opened: (out): filled on success only; clear with slopepack_job_close()
 *
 * Returns: SLOPEPACK_DONE, or the code to exit with after having complained.
 */
SlopepackExit slopepack_job_open (const char *path, const SlopepackReader *reader,
                                  SlopepackJob *opened);

/** The same of a new job, as the program begins one, with no name. */
SlopepackExit slopepack_job_open_new (const SlopepackReader *reader,
                                      SlopepackJob *opened);
void slopepack_job_close (SlopepackJob *opened);
G_DEFINE_AUTO_CLEANUP_CLEAR_FUNC (SlopepackJob, slopepack_job_close)

/** SLOPEPACK_STOP_FINDING with a line on standard error when there is a stop finding. */
SlopepackExit slopepack_job_verdict (const SlopepackJob *opened);
