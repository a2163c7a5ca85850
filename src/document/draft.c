/* SPDX-License-Identifier: MIT */
#include "document-private.h"
#include "draft-files.h"

#include <errno.h>
#include <fcntl.h>
#include <glib/gstdio.h>
#include <slopewright/document/draft.h>
#include <slopewright/store/store.h>
#include <sys/file.h>
#include <unistd.h>

#define USUAL_DELAY_S 1

struct _SwDraft
{
  GObject parent_instance;
  SwDocument *document;
  char *folder;
  char *job_path, *lock_path; /* NULL until there is something to keep */
  int lock;                   /* file descriptor, -1 for none */
  guint timer, delay_s;
};

G_DEFINE_FINAL_TYPE (SwDraft, sw_draft, G_TYPE_OBJECT)

char *
sw_draft_folder (void)
{
  return g_build_filename (g_get_user_state_dir (), "slopewright", "drafts", NULL);
}

static void
remove_files (SwDraft *self)
{
  if (self->job_path == NULL)
    return;
  g_unlink (self->job_path);
  g_unlink (self->lock_path);
  close (self->lock);
  self->lock = -1;
  g_clear_pointer (&self->job_path, g_free);
  g_clear_pointer (&self->lock_path, g_free);
}

/* A name that no other draft has. */
static gboolean
claim_name (SwDraft *self)
{
  g_autofree char *id = g_uuid_string_random ();
  g_autofree char *job_name = g_strconcat (id, SW_DRAFT_JOB, NULL);
  g_autofree char *lock_name = g_strconcat (id, SW_DRAFT_ORIGIN, NULL);
  g_autofree char *lock_path = g_build_filename (self->folder, lock_name, NULL);
  int lock = g_open (lock_path, O_CREAT | O_EXCL | O_RDWR | O_CLOEXEC, 0600);

  if (lock < 0)
    return FALSE;
  self->lock = lock;
  self->lock_path = g_steal_pointer (&lock_path);
  self->job_path = g_build_filename (self->folder, job_name, NULL);
  return TRUE;
}

/* Name and lock, the first time. */
static gboolean
claim (SwDraft *self)
{
  if (self->job_path != NULL)
    return TRUE;
  if (g_mkdir_with_parents (self->folder, 0700) != 0)
    return FALSE;
  while (!claim_name (self))
    if (errno != EEXIST)
      return FALSE;
  if (flock (self->lock, LOCK_EX | LOCK_NB) == 0)
    return TRUE;
  remove_files (self);
  return FALSE;
}

/* The lock is on the open file, so its contents change in place. */
static gboolean
write_origin (SwDraft *self)
{
  const SwDiskCopy *disk = sw_document_disk (self->document);
  GFile *file = sw_disk_copy_file (disk);
  const char *digest = sw_disk_copy_digest (disk);
  g_autofree char *uri = file != NULL ? g_file_get_uri (file) : g_strdup ("");
  g_autofree char *text = g_strconcat (uri, "\n", digest != NULL ? digest : "", NULL);
  gssize length = (gssize) strlen (text);

  return ftruncate (self->lock, 0) == 0 && pwrite (self->lock, text, length, 0) == length;
}

static void
keep (SwDraft *self)
{
  g_autoptr (GError) error = NULL;
  g_autoptr (GFile) file = NULL;

  if (!claim (self) || !write_origin (self))
    {
      g_warning ("%s: no draft can be kept here: %s", self->folder, g_strerror (errno));
      return;
    }
  file = g_file_new_for_path (self->job_path);
  if (!sw_job_save (sw_document_committed (self->document), file, &error))
    g_warning ("the draft was not kept: %s", error->message);
}

void
sw_draft_set_delay (SwDraft *self, guint delay_s)
{
  self->delay_s = delay_s;
}

void
sw_draft_flush (SwDraft *self)
{
  g_clear_handle_id (&self->timer, g_source_remove);
  if (sw_document_modified (self->document))
    keep (self);
  else
    remove_files (self);
}

static gboolean
on_timer (gpointer data)
{
  SwDraft *self = data;

  self->timer = 0;
  sw_draft_flush (self);
  return G_SOURCE_REMOVE;
}

static void
on_changed (SwDraft *self)
{
  if (!sw_document_modified (self->document))
    {
      sw_draft_flush (self);
      return;
    }
  g_clear_handle_id (&self->timer, g_source_remove);
  self->timer = g_timeout_add_seconds (self->delay_s, on_timer, self);
}

static void
sw_draft_dispose (GObject *object)
{
  SwDraft *self = SW_DRAFT (object);

  g_clear_handle_id (&self->timer, g_source_remove);
  remove_files (self);
  g_clear_object (&self->document);
  G_OBJECT_CLASS (sw_draft_parent_class)->dispose (object);
}

static void
sw_draft_finalize (GObject *object)
{
  g_free (SW_DRAFT (object)->folder);
  G_OBJECT_CLASS (sw_draft_parent_class)->finalize (object);
}

static void
sw_draft_class_init (SwDraftClass *klass)
{
  G_OBJECT_CLASS (klass)->dispose = sw_draft_dispose;
  G_OBJECT_CLASS (klass)->finalize = sw_draft_finalize;
}

static void
sw_draft_init (SwDraft *self)
{
  self->lock = -1;
  self->delay_s = USUAL_DELAY_S;
}

SwDraft *
sw_draft_new (SwDocument *document, const char *folder)
{
  SwDraft *self = g_object_new (SW_TYPE_DRAFT, NULL);

  self->document = g_object_ref (document);
  self->folder = g_strdup (folder);
  g_signal_connect_object (document, "changed", G_CALLBACK (on_changed), self,
                           G_CONNECT_SWAPPED);
  g_signal_connect_object (document, "notify::modified", G_CALLBACK (on_changed), self,
                           G_CONNECT_SWAPPED);
  g_signal_connect_object (document, "notify::on-disk", G_CALLBACK (on_changed), self,
                           G_CONNECT_SWAPPED);
  return self;
}
