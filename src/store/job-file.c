/* SPDX-License-Identifier: MIT */
#include "job-json.h"

#include <glib/gi18n.h>
#include <glib/gstdio.h>
#include <string.h>

/* A job with thousands of points has a few hundred kilobytes; a film is no job. */
#define LARGEST_FILE_BYTES (32 * 1024 * 1024)

/*
 * Keys this version does not know, as text to be kept in the job; in the order in
 * which they are written, so that a job stays equal to itself through a file.
 */
static char *
unknown_text (const SwJsonPlace *root, const SwJob *job)
{
  json_t *known = sw_job_tree (job);
  json_t *written = sw_job_tree (job);
  json_t *as_found = sw_json_unknown (root->value, known);

  sw_json_restore (written, as_found);
  json_t *unknown = sw_json_unknown (written, known);
  char *text = unknown != NULL ? sw_json_text (unknown) : NULL;
  json_decref (known);
  json_decref (written);
  json_decref (as_found);
  json_decref (unknown);
  return text;
}

static SwJob *
parse (const char *text, gsize length, const char *where, gboolean newer_too,
       GError **error)
{
  g_autoptr (SwJob) job = NULL;
  SwJsonReader reader;

  if (sw_json_open (&reader, text, length, where))
    {
      SwJsonPlace root = sw_json_root (&reader);
      job = sw_job_read (&root, newer_too);
      if (reader.error == NULL)
        job->unknown_json = unknown_text (&root, job);
    }
  return sw_json_close (&reader, error) ? g_steal_pointer (&job) : NULL;
}

SwJob *
sw_job_parse (const char *text, gsize length, const char *where, GError **error)
{
  return parse (text, length, where, FALSE, error);
}

/* A later format whose known keys do not read is no more than a later format. */
static SwJob *
parse_newer_too (const char *text, gsize length, const char *where, gboolean *newer,
                 GError **error)
{
  g_autoptr (GError) trouble = NULL;
  g_autoptr (SwJob) job = parse (text, length, where, FALSE, &trouble);

  *newer = FALSE;
  if (g_error_matches (trouble, SW_STORE_ERROR, SW_STORE_ERROR_VERSION))
    {
      job = parse (text, length, where, TRUE, NULL);
      *newer = job != NULL;
    }
  if (job == NULL)
    g_propagate_error (error, g_steal_pointer (&trouble));
  return g_steal_pointer (&job);
}

char *
sw_job_write (const SwJob *job)
{
  json_t *tree = sw_job_tree (job);

  if (job->unknown_json != NULL)
    {
      json_t *unknown = json_loads (job->unknown_json, 0, NULL);
      sw_json_restore (tree, unknown);
      json_decref (unknown);
    }
  char *text = sw_json_text (tree);
  json_decref (tree);
  return text;
}

/* A fault of the system in our domain, so that callers look in one place. */
static void
set_file_error (GError **error, SwStoreError code, const char *what, GFile *file,
                const GError *cause)
{
  g_autofree char *name = g_file_get_parse_name (file);

  g_set_error (error, SW_STORE_ERROR, code, "%s: %s: %s", name, what, cause->message);
}

static gboolean
is_too_large (GFile *file, GError **error)
{
  g_autoptr (GFileInfo) info = g_file_query_info (file, G_FILE_ATTRIBUTE_STANDARD_SIZE,
                                                  G_FILE_QUERY_INFO_NONE, NULL, NULL);
  goffset size = info != NULL ? g_file_info_get_size (info) : 0;

  if (size <= LARGEST_FILE_BYTES)
    return FALSE;
  g_autofree char *name = g_file_get_parse_name (file);
  g_autofree char *found = g_strdup_printf ("%" G_GOFFSET_FORMAT, size);
  g_set_error (error, SW_STORE_ERROR, SW_STORE_ERROR_READ,
               _ ("%s: found %s bytes, expected a job file of at most %d"), name, found,
               LARGEST_FILE_BYTES);
  return TRUE;
}

static gboolean
load_text (GFile *file, char **text, gsize *length, GError **error)
{
  g_autoptr (GError) cause = NULL;

  if (is_too_large (file, error))
    return FALSE;
  if (g_file_load_contents (file, NULL, text, length, NULL, &cause))
    return TRUE;
  set_file_error (error, SW_STORE_ERROR_READ, _ ("cannot be read"), file, cause);
  return FALSE;
}

SwJob *
sw_job_load (GFile *file, GError **error)
{
  g_autofree char *name = g_file_get_parse_name (file);
  g_autofree char *text = NULL;
  gsize length = 0;

  if (!load_text (file, &text, &length, error))
    return NULL;
  return sw_job_parse (text, length, name, error);
}

static char *
digest_of (const char *text, gsize length)
{
  return g_compute_checksum_for_data (G_CHECKSUM_SHA256, (const guchar *) text, length);
}

SwJob *
sw_job_load_newer_too (GFile *file, SwJobFile *found, GError **error)
{
  g_autofree char *name = g_file_get_parse_name (file);
  g_autofree char *text = NULL;
  gsize length = 0;
  gboolean newer;
  SwJob *job;

  if (!load_text (file, &text, &length, error))
    return NULL;
  job = parse_newer_too (text, length, name, &newer, error);
  if (job != NULL)
    *found = (SwJobFile){ digest_of (text, length), newer };
  return job;
}

char *
sw_job_digest (const SwJob *job)
{
  g_autofree char *text = sw_job_write (job);

  return digest_of (text, strlen (text));
}

char *
sw_job_file_digest (GFile *file, GError **error)
{
  g_autofree char *text = NULL;
  gsize length = 0;

  return load_text (file, &text, &length, error) ? digest_of (text, length) : NULL;
}

/* Write beside, sync, rename over. A link is followed, so that it stays a link. */
static gboolean
replace_local (const char *path, const char *text, GError **error)
{
  g_autofree char *real = realpath (path, NULL);
  const char *target = real != NULL ? real : path;
  GStatBuf old;
  int mode = g_stat (target, &old) == 0 ? (int) (old.st_mode & 0777) : 0666;

  /* Renaming over a file asks only the folder, but write protection was meant. */
  if (real != NULL && g_access (real, W_OK) != 0)
    {
      g_set_error_literal (error, G_FILE_ERROR, G_FILE_ERROR_ACCES,
                           _ ("the file is write-protected"));
      return FALSE;
    }
  return g_file_set_contents_full (
      target, text, -1, G_FILE_SET_CONTENTS_CONSISTENT | G_FILE_SET_CONTENTS_DURABLE,
      mode, error);
}

gboolean
sw_job_save (const SwJob *job, GFile *file, GError **error)
{
  g_autofree char *text = sw_job_write (job);
  g_autofree char *path = g_file_get_path (file);
  g_autoptr (GError) cause = NULL;
  /* What cannot be read again must not replace what could. */
  g_autoptr (SwJob) again = sw_job_parse (text, strlen (text), "new text", &cause);
  gboolean saved = FALSE;

  if (again != NULL && path != NULL)
    saved = replace_local (path, text, &cause);
  else if (again != NULL)
    saved = g_file_replace_contents (file, text, strlen (text), NULL, FALSE,
                                     G_FILE_CREATE_NONE, NULL, NULL, &cause);
  if (!saved)
    set_file_error (error, SW_STORE_ERROR_WRITE, _ ("was not saved"), file, cause);
  return saved;
}
