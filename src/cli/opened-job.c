/* SPDX-License-Identifier: MIT */
#include "opened-job.h"
#include "unknown-entry.h"

#include <slopewright/store/store.h>
#include <string.h>

#define FINGERPRINT_DIGITS 12

void
slopepack_reader_clear (SlopepackReader *reader)
{
  g_clear_pointer (&reader->units, g_free);
  g_clear_pointer (&reader->language, g_free);
}

/* A mistyped key would otherwise count for nothing in silence. */
static void
name_unknown_keys (const SwJob *job, const char *name)
{
  g_auto (GStrv) lines = NULL;
  g_autofree char *keys = NULL;

  if (job->unknown_json == NULL)
    return;
  lines = g_strsplit (job->unknown_json, "\n", -1);
  for (guint i = 0; lines[i] != NULL; i++)
    g_strstrip (lines[i]);
  keys = g_strjoinv (" ", lines);
  slopepack_complain (SLOPEPACK_DONE,
                      "%s: keys that this version does not know count for nothing: %s",
                      name, keys);
}

static char *
fingerprint_of (const char *text, gsize length)
{
  g_autofree char *digest =
      g_compute_checksum_for_data (G_CHECKSUM_SHA256, (const guchar *) text, length);

  return g_strndup (digest, FINGERPRINT_DIGITS);
}

static SlopepackExit
read_bytes (const char *path, SwJob **job, char **fingerprint)
{
  g_autoptr (GFile) file = g_file_new_for_commandline_arg (path);
  g_autoptr (GError) error = NULL;
  g_autofree char *text = NULL;
  g_autofree char *name = g_filename_display_name (path);
  gsize length = 0;

  if (!g_file_load_contents (file, NULL, &text, &length, NULL, &error))
    return slopepack_complain (SLOPEPACK_UNREADABLE, "cannot read the job: %s",
                               error->message);
  *job = sw_job_parse (text, length, name, &error);
  if (*job == NULL)
    return slopepack_complain (SLOPEPACK_UNREADABLE, "%s", error->message);
  *fingerprint = fingerprint_of (text, length);
  name_unknown_keys (*job, name);
  return SLOPEPACK_DONE;
}

static SlopepackExit
choose_style (const SlopepackReader *reader, SlopepackJob *opened)
{
  const char *language =
      reader->language != NULL ? reader->language : opened->job->language;

  opened->style = (SwNumberStyle){ opened->job->units, '.', NULL };
  if (g_strcmp0 (reader->units, "metric") == 0)
    opened->style.units = SW_UNITS_METRIC;
  else if (g_strcmp0 (reader->units, "us") == 0)
    opened->style.units = SW_UNITS_US;
  else if (reader->units != NULL)
    return slopepack_complain (
        SLOPEPACK_USAGE, "--units: found '%s'; expected metric or us", reader->units);

  opened->texts = sw_texts_load (language);
  if (opened->texts == NULL)
    {
      g_auto (GStrv) languages = sw_texts_languages ();
      g_autofree char *list = g_strjoinv (", ", languages);
      return slopepack_complain (
          SLOPEPACK_USAGE, "there are no texts in language '%s'; expected one of %s",
          language, list);
    }
  opened->style.decimal_mark = sw_texts_decimal_mark (opened->texts);
  opened->style.texts = opened->texts;
  return SLOPEPACK_DONE;
}

static SlopepackExit
work_out (const char *path, SlopepackJob *opened)
{
  g_autofree char *name = g_filename_display_name (path);
  g_autofree char *entry = NULL;
  const SwResult *result;

  opened->result = sw_result_new (opened->job, opened->catalogue);
  result = opened->result;
  if (result->status == SW_OK)
    return SLOPEPACK_DONE;
  if (result->status == SW_E_UNKNOWN_ID)
    entry = slopepack_unknown_entry (opened->job, opened->catalogue);
  if (entry != NULL)
    return slopepack_complain (SLOPEPACK_CANNOT_LAY, "%s: %s", name, entry);
  if (result->bad_face < 0)
    return slopepack_complain (SLOPEPACK_CANNOT_LAY, "%s: the job cannot be laid out: %s",
                               name, sw_status_text (result->status));

  const SwFace *face = g_ptr_array_index (opened->job->faces, result->bad_face);
  return slopepack_complain (SLOPEPACK_CANNOT_LAY, "%s: face '%s' cannot be laid out: %s",
                             name, face->id, sw_status_text (result->status));
}

/* Words and results for a job that has been read; takes @job. */
static SlopepackExit
open_read (const char *path, const SlopepackReader *reader, SlopepackJob *job,
           SlopepackJob *opened)
{
  SlopepackExit code = choose_style (reader, job);

  if (code == SLOPEPACK_DONE)
    {
      job->catalogue = sw_catalogue_load ();
      code = work_out (path, job);
    }
  if (code == SLOPEPACK_DONE)
    {
      *opened = *job;
      *job = (SlopepackJob){ 0 };
    }
  return code;
}

SlopepackExit
slopepack_job_open (const char *path, const SlopepackReader *reader, SlopepackJob *opened)
{
  g_auto (SlopepackJob) job = { 0 };
  SlopepackExit code = read_bytes (path, &job.job, &job.fingerprint);

  return code == SLOPEPACK_DONE ? open_read (path, reader, &job, opened) : code;
}

SlopepackExit
slopepack_job_open_new (const SlopepackReader *reader, SlopepackJob *opened)
{
  g_auto (SlopepackJob) job = { .job = sw_job_new_default () };
  g_autofree char *text = sw_job_write (job.job);

  job.fingerprint = fingerprint_of (text, strlen (text));
  return open_read ("", reader, &job, opened);
}

void
slopepack_job_close (SlopepackJob *opened)
{
  g_clear_pointer (&opened->result, sw_result_unref);
  g_clear_pointer (&opened->job, sw_job_unref);
  g_clear_pointer (&opened->texts, sw_texts_unref);
  g_clear_pointer (&opened->catalogue, sw_catalogue_free);
  g_clear_pointer (&opened->fingerprint, g_free);
}

SlopepackExit
slopepack_job_verdict (const SlopepackJob *opened)
{
  guint stops = sw_findings_count (opened->result->findings, SW_SEVERITY_STOP);

  if (stops == 0)
    return SLOPEPACK_DONE;
  return slopepack_complain (
      SLOPEPACK_STOP_FINDING,
      stops == 1 ? "the job has %u stop finding; read it before any work begins"
                 : "the job has %u stop findings; read them before any work begins",
      stops);
}
