/* SPDX-License-Identifier: MIT */
#pragma once

#include <gio/gio.h>
#include <slopewright/base/catalogue.h>
#include <slopewright/base/job.h>
#include <slopewright/base/texts.h>
#include <slopewright/figure/palette.h>

/** Trouble with a file; the message says file, line, key, found and expected. */
#define SW_STORE_ERROR (sw_store_error_quark ())
GQuark sw_store_error_quark (void);

typedef enum
{
  SW_STORE_ERROR_READ,    /* cannot be opened or read */
  SW_STORE_ERROR_SYNTAX,  /* not JSON; duplicate key */
  SW_STORE_ERROR_VERSION, /* made by a newer version */
  SW_STORE_ERROR_VALUE,   /* a key is missing, of the wrong type or out of range */
  SW_STORE_ERROR_WRITE
} SwStoreError;

#define SW_JOB_FORMAT_VERSION 1

/** Read a job file. Returns: (transfer full): NULL with @error set on failure. */
SwJob *sw_job_load (GFile *file, GError **error);

/** What a job file is besides the job in it. */
typedef struct
{
  char *digest;   /* SHA-256 of its bytes, in hexadecimal */
  gboolean newer; /* of a later format than this version writes */
} SwJobFile;

/**
 * sw_job_load_newer_too:
 * @found: (out): set on success; the caller frees its digest
 *
 * To look at: a file of a later format is read as far as its keys are known here. What is
 * not known is kept, but not understood: such a job should not be written over its file.
 *
 * Returns: (transfer full): NULL with @error set on failure
 */
SwJob *sw_job_load_newer_too (GFile *file, SwJobFile *found, GError **error);

/** SHA-256 of the bytes that saving @job writes, in hexadecimal. (transfer full) */
char *sw_job_digest (const SwJob *job);
/** The same of the bytes that stand in @file. (transfer full): NULL with @error set when it cannot be read or is too large for a job. */
char *sw_job_file_digest (GFile *file, GError **error);

/** Parse the text of a job file; @where names it in messages. */
SwJob *sw_job_parse (const char *text, gsize length, const char *where, GError **error);

/** The text of a job file: two-space indent, stable key order, shortest round-trip numbers, newline at the end. (transfer full) */
char *sw_job_write (const SwJob *job);

/** Save atomically and durably: written beside, synced, renamed over. */
gboolean sw_job_save (const SwJob *job, GFile *file, GError **error);

/** The catalogue shipped with the program. Data that does not read is a bug: aborts with the message. */
SwCatalogue *sw_catalogue_load (void);

/** Parse one catalogue file (kind "practices", "soils", "blankets", "rolls", "pins") into @catalogue. */
gboolean sw_catalogue_parse (SwCatalogue *catalogue, const char *kind, const char *text,
                             gsize length, const char *where, GError **error);

/** Texts of a language; "en" always exists, an unknown language gives NULL. */
SwTexts *sw_texts_load (const char *language);

/** Codes of the languages that there are texts in, sorted: "en", "fr". (transfer full): strv */
char **sw_texts_languages (void);

/** Parse one text file into @texts; an id that is there already is an error. */
gboolean sw_texts_parse (SwTexts *texts, const char *text, gsize length,
                         const char *where, GError **error);

/** Line styles and colours by role. */
SwPalette *sw_palette_load (void);

/** Bytes of a resource "texts/en.json", NULL if there is none. (transfer full) */
GBytes *sw_resource_bytes (const char *path);
