/* SPDX-License-Identifier: MIT */
#include "document-private.h"
#include "draft-files.h"

#include <fcntl.h>
#include <glib/gstdio.h>
#include <slopewright/document/draft.h>
#include <slopewright/store/store.h>
#include <sys/file.h>
#include <unistd.h>

static void
free_lost (gpointer data)
{
  SwLostDraft *lost = data;

  g_free (lost->path);
  g_free (lost->name);
  g_clear_object (&lost->origin);
  g_free (lost->origin_digest);
  g_free (lost);
}

static char *
lock_path_of (const char *job_path)
{
  g_autofree char *stem = g_strndup (job_path, strlen (job_path) - strlen (SW_DRAFT_JOB));

  return g_strconcat (stem, SW_DRAFT_ORIGIN, NULL);
}

/* A running program holds the lock on what it has open. */
static gboolean
is_lost (const char *job_path)
{
  g_autofree char *path = lock_path_of (job_path);
  int lock = g_open (path, O_RDWR | O_CLOEXEC, 0);
  gboolean lost;

  if (lock < 0)
    return TRUE;
  lost = flock (lock, LOCK_EX | LOCK_NB) == 0;
  close (lock);
  return lost;
}

static void
read_origin (SwLostDraft *lost)
{
  g_autofree char *path = lock_path_of (lost->path);
  g_autofree char *text = NULL;
  g_auto (GStrv) lines = NULL;

  if (!g_file_get_contents (path, &text, NULL, NULL) || *text == '\0' || *text == '\n')
    return;
  lines = g_strsplit (text, "\n", 3);
  lost->origin = g_file_new_for_uri (lines[0]);
  if (lines[1] != NULL && *lines[1] != '\0')
    lost->origin_digest = g_strdup (lines[1]);
}

static gboolean
has_changed (const SwLostDraft *lost)
{
  g_autofree char *now = NULL;

  if (lost->origin_digest == NULL)
    return FALSE;
  now = sw_job_file_digest (lost->origin, NULL);
  return now != NULL && !g_str_equal (now, lost->origin_digest);
}

static SwLostDraft *
look_at (const char *folder, const char *base)
{
  g_autofree char *path = g_build_filename (folder, base, NULL);
  g_autoptr (GFile) file = g_file_new_for_path (path);
  g_autoptr (SwJob) job = NULL;
  GStatBuf about;
  SwLostDraft *lost;

  if (!g_str_has_suffix (base, SW_DRAFT_JOB) || g_stat (path, &about) != 0
      || !is_lost (path))
    return NULL;
  job = sw_job_load (file, NULL);
  lost = g_new0 (SwLostDraft, 1);
  lost->name = g_strdup (job != NULL ? job->card.name : "");
  lost->saved_at = about.st_mtime;
  lost->path = g_steal_pointer (&path);
  read_origin (lost);
  lost->origin_changed = has_changed (lost);
  return lost;
}

static int
newest_first (gconstpointer a, gconstpointer b)
{
  const SwLostDraft *x = *(SwLostDraft *const *) a, *y = *(SwLostDraft *const *) b;

  return x->saved_at < y->saved_at ? 1 : x->saved_at > y->saved_at ? -1 : 0;
}

GPtrArray *
sw_draft_lost (const char *folder)
{
  GPtrArray *all = g_ptr_array_new_with_free_func (free_lost);
  g_autoptr (GDir) dir = g_dir_open (folder, 0, NULL);
  const char *base;

  while (dir != NULL && (base = g_dir_read_name (dir)) != NULL)
    {
      SwLostDraft *lost = look_at (folder, base);
      if (lost != NULL)
        g_ptr_array_add (all, lost);
    }
  g_ptr_array_sort (all, newest_first);
  return all;
}

gboolean
sw_draft_recover (const SwLostDraft *lost, SwDocument *document, const char *label,
                  GError **error)
{
  g_autoptr (GFile) file = g_file_new_for_path (lost->path);
  g_autoptr (SwJob) job = sw_job_load (file, error);

  if (job == NULL)
    return FALSE;
  /* An origin that went away or no longer reads does not stand in the way. */
  if (lost->origin != NULL && sw_document_load (document, lost->origin, NULL)
      && lost->origin_digest != NULL)
    {
      SwDiskCopy *disk = sw_document_disk (document);

      sw_disk_copy_follow (disk, lost->origin, lost->origin_digest);
      sw_disk_copy_look (disk);
    }
  sw_document_commit (document, job, label, NULL);
  return TRUE;
}

void
sw_draft_discard (const SwLostDraft *lost)
{
  g_autofree char *lock_path = lock_path_of (lost->path);

  g_unlink (lost->path);
  g_unlink (lock_path);
}
