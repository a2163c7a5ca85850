/* SPDX-License-Identifier: MIT */
#include "document-private.h"
#include "steps.h"
#include <slopewright/store/store.h>

struct _SwDocument
{
  GObject parent_instance;

  const SwCatalogue *catalogue;
  SwSteps *steps;
  SwJob *preview; /* NULL but while a drag lasts */
  SwResult *result;
  SwDiskCopy *disk;
  gboolean newer;
};

enum
{
  PROP_0,
  PROP_MODIFIED,
  PROP_TITLE,
  PROP_CAN_UNDO,
  PROP_CAN_REDO,
  PROP_FILE,
  PROP_ON_DISK,
  PROP_NEWER,
  N_PROPS
};

static GParamSpec *properties[N_PROPS];
static guint changed_signal;

G_DEFINE_FINAL_TYPE (SwDocument, sw_document, G_TYPE_OBJECT)

static void
sw_document_dispose (GObject *object)
{
  SwDocument *self = SW_DOCUMENT (object);

  g_clear_pointer (&self->steps, sw_steps_free);
  g_clear_pointer (&self->preview, sw_job_unref);
  g_clear_pointer (&self->result, sw_result_unref);
  g_clear_pointer (&self->disk, sw_disk_copy_free);
  G_OBJECT_CLASS (sw_document_parent_class)->dispose (object);
}

static void
sw_document_get_property (GObject *object, guint id, GValue *value, GParamSpec *pspec)
{
  SwDocument *self = SW_DOCUMENT (object);

  switch (id)
    {
    case PROP_MODIFIED:
      g_value_set_boolean (value, sw_document_modified (self));
      break;
    case PROP_TITLE:
      g_value_take_string (value, sw_document_title (self));
      break;
    case PROP_CAN_UNDO:
      g_value_set_boolean (value, sw_document_can_undo (self));
      break;
    case PROP_CAN_REDO:
      g_value_set_boolean (value, sw_document_can_redo (self));
      break;
    case PROP_FILE:
      g_value_set_object (value, sw_document_file (self));
      break;
    case PROP_ON_DISK:
      g_value_set_int (value, sw_document_on_disk (self));
      break;
    case PROP_NEWER:
      g_value_set_boolean (value, self->newer);
      break;
    default:
      G_OBJECT_WARN_INVALID_PROPERTY_ID (object, id, pspec);
    }
}

static void
sw_document_class_init (SwDocumentClass *klass)
{
  GObjectClass *object_class = G_OBJECT_CLASS (klass);
  const GParamFlags flags = G_PARAM_READABLE | G_PARAM_STATIC_STRINGS;

  object_class->dispose = sw_document_dispose;
  object_class->get_property = sw_document_get_property;
  properties[PROP_MODIFIED] = g_param_spec_boolean ("modified", NULL, NULL, FALSE, flags);
  properties[PROP_TITLE] = g_param_spec_string ("title", NULL, NULL, "", flags);
  properties[PROP_CAN_UNDO] = g_param_spec_boolean ("can-undo", NULL, NULL, FALSE, flags);
  properties[PROP_CAN_REDO] = g_param_spec_boolean ("can-redo", NULL, NULL, FALSE, flags);
  properties[PROP_FILE] = g_param_spec_object ("file", NULL, NULL, G_TYPE_FILE, flags);
  properties[PROP_ON_DISK] = g_param_spec_int ("on-disk", NULL, NULL, SW_ON_DISK_SAME,
                                               SW_ON_DISK_GONE, SW_ON_DISK_SAME, flags);
  properties[PROP_NEWER] = g_param_spec_boolean ("newer", NULL, NULL, FALSE, flags);
  g_object_class_install_properties (object_class, N_PROPS, properties);
  changed_signal = g_signal_new ("changed", SW_TYPE_DOCUMENT, G_SIGNAL_RUN_LAST, 0, NULL,
                                 NULL, NULL, G_TYPE_NONE, 0);
}

/* What a listener may have on show, to tell it only of what did change. */
typedef struct
{
  gboolean modified, can_undo, can_redo, newer;
  char *title;
} Shown;

static Shown
remember (SwDocument *self)
{
  return (Shown){ sw_document_modified (self), sw_document_can_undo (self),
                  sw_document_can_redo (self), self->newer, sw_document_title (self) };
}

static void
tell (SwDocument *self, Shown before)
{
  Shown now = remember (self);

  if (now.modified != before.modified)
    g_object_notify_by_pspec (G_OBJECT (self), properties[PROP_MODIFIED]);
  if (now.can_undo != before.can_undo)
    g_object_notify_by_pspec (G_OBJECT (self), properties[PROP_CAN_UNDO]);
  if (now.can_redo != before.can_redo)
    g_object_notify_by_pspec (G_OBJECT (self), properties[PROP_CAN_REDO]);
  if (now.newer != before.newer)
    g_object_notify_by_pspec (G_OBJECT (self), properties[PROP_NEWER]);
  if (!g_str_equal (now.title, before.title))
    g_object_notify_by_pspec (G_OBJECT (self), properties[PROP_TITLE]);
  g_free (now.title);
  g_free (before.title);
}

/* A file that changed makes the job here an unsaved one. */
static void
on_disk_changed (gpointer data)
{
  SwDocument *self = data;

  g_object_notify_by_pspec (G_OBJECT (self), properties[PROP_ON_DISK]);
  if (sw_steps_is_saved (self->steps))
    g_object_notify_by_pspec (G_OBJECT (self), properties[PROP_MODIFIED]);
}

static void
sw_document_init (SwDocument *self)
{
  self->disk = sw_disk_copy_new (on_disk_changed, self);
}

static void
recompute (SwDocument *self)
{
  SwResult *fresh = sw_result_new (sw_document_job (self), self->catalogue);

  g_clear_pointer (&self->result, sw_result_unref);
  self->result = fresh;
  g_signal_emit (self, changed_signal, 0);
}

SwDocument *
sw_document_new (const SwCatalogue *catalogue, const SwJob *job)
{
  SwDocument *self = g_object_new (SW_TYPE_DOCUMENT, NULL);
  g_autoptr (SwJob) first = job != NULL ? sw_job_ref (job) : sw_job_new_default ();

  self->catalogue = catalogue;
  self->steps = sw_steps_new (first);
  recompute (self);
  return self;
}

const SwJob *
sw_document_job (SwDocument *self)
{
  return self->preview != NULL ? self->preview : sw_steps_job (self->steps);
}

const SwJob *
sw_document_committed (SwDocument *self)
{
  return sw_steps_job (self->steps);
}

const SwResult *
sw_document_result (SwDocument *self)
{
  return self->result;
}

const SwCatalogue *
sw_document_catalogue (SwDocument *self)
{
  return self->catalogue;
}

void
sw_document_commit (SwDocument *self, const SwJob *job, const char *label,
                    const char *key)
{
  Shown before = remember (self);
  gboolean previewed = self->preview != NULL;
  gboolean stepped = sw_steps_commit (self->steps, job, label, key);

  g_clear_pointer (&self->preview, sw_job_unref);
  if (stepped || previewed)
    recompute (self);
  tell (self, before);
}

void
sw_document_close_step (SwDocument *self)
{
  sw_steps_close (self->steps);
}

void
sw_document_preview (SwDocument *self, const SwJob *job)
{
  SwJob *next = job != NULL ? sw_job_ref (job) : NULL;

  if (next == NULL && self->preview == NULL)
    return;
  g_clear_pointer (&self->preview, sw_job_unref);
  self->preview = next;
  recompute (self);
}

gboolean
sw_document_can_undo (SwDocument *self)
{
  return sw_steps_undo_label (self->steps) != NULL;
}

gboolean
sw_document_can_redo (SwDocument *self)
{
  return sw_steps_redo_label (self->steps) != NULL;
}

const char *
sw_document_undo_label (SwDocument *self)
{
  return sw_steps_undo_label (self->steps);
}

const char *
sw_document_redo_label (SwDocument *self)
{
  return sw_steps_redo_label (self->steps);
}

static void
go (SwDocument *self, gboolean (*way) (SwSteps *steps))
{
  Shown before = remember (self);
  gboolean previewed = self->preview != NULL;

  g_clear_pointer (&self->preview, sw_job_unref);
  if (way (self->steps) || previewed)
    recompute (self);
  tell (self, before);
}

void
sw_document_undo (SwDocument *self)
{
  go (self, sw_steps_undo);
}

void
sw_document_redo (SwDocument *self)
{
  go (self, sw_steps_redo);
}

gboolean
sw_document_modified (SwDocument *self)
{
  return !sw_steps_is_saved (self->steps)
         || sw_disk_copy_state (self->disk) != SW_ON_DISK_SAME;
}

gboolean
sw_document_newer (SwDocument *self)
{
  return self->newer;
}

GFile *
sw_document_file (SwDocument *self)
{
  return sw_disk_copy_file (self->disk);
}

SwDiskCopy *
sw_document_disk (SwDocument *self)
{
  return self->disk;
}

SwOnDisk
sw_document_on_disk (SwDocument *self)
{
  return sw_disk_copy_state (self->disk);
}

void
sw_document_look_at_disk (SwDocument *self)
{
  sw_disk_copy_look (self->disk);
}

char *
sw_document_title (SwDocument *self)
{
  const SwJob *job = sw_steps_job (self->steps);
  GFile *file = sw_document_file (self);

  if (job->card.name[0] != '\0')
    return g_strdup (job->card.name);
  return file != NULL ? g_file_get_basename (file) : g_strdup ("");
}

static void
follow (SwDocument *self, GFile *file, const char *digest)
{
  GFile *old = sw_document_file (self);
  gboolean other = file == NULL || old == NULL ? file != old : !g_file_equal (file, old);

  sw_disk_copy_follow (self->disk, file, digest);
  if (other)
    g_object_notify_by_pspec (G_OBJECT (self), properties[PROP_FILE]);
}

static void
take (SwDocument *self, SwJob *job, GFile *file, const SwJobFile *found)
{
  Shown before = remember (self);

  g_clear_pointer (&self->preview, sw_job_unref);
  sw_steps_free (self->steps);
  self->steps = sw_steps_new (job);
  self->newer = found->newer;
  follow (self, file, found->digest);
  recompute (self);
  tell (self, before);
}

static gboolean
load (SwDocument *self, GFile *file, gboolean keep_file, GError **error)
{
  SwJobFile found;
  g_autoptr (SwJob) job = sw_job_load_newer_too (file, &found, error);

  if (job == NULL)
    return FALSE;
  take (self, job, keep_file ? file : NULL, &found);
  g_free (found.digest);
  return TRUE;
}

gboolean
sw_document_load (SwDocument *self, GFile *file, GError **error)
{
  return load (self, file, TRUE, error);
}

gboolean
sw_document_load_copy (SwDocument *self, GFile *file, GError **error)
{
  return load (self, file, FALSE, error);
}

static void
mark_saved (SwDocument *self, GFile *file, const char *digest, gboolean newer)
{
  Shown before = remember (self);

  sw_steps_mark_saved (self->steps);
  self->newer = newer;
  follow (self, file, digest);
  tell (self, before);
}

gboolean
sw_document_save (SwDocument *self, GFile *file, GError **error)
{
  g_autofree char *digest = sw_job_digest (sw_steps_job (self->steps));

  if (!sw_job_save (sw_steps_job (self->steps), file, error))
    return FALSE;
  mark_saved (self, file, digest, FALSE);
  return TRUE;
}

gboolean
sw_document_reload (SwDocument *self, const char *label, GError **error)
{
  GFile *file = sw_document_file (self);
  SwJobFile found;
  g_autoptr (SwJob) job = sw_job_load_newer_too (file, &found, error);

  if (job == NULL)
    return FALSE;
  sw_document_commit (self, job, label, NULL);
  mark_saved (self, file, found.digest, found.newer);
  g_free (found.digest);
  return TRUE;
}

void
sw_document_keep_own (SwDocument *self)
{
  Shown before = remember (self);

  sw_steps_forget_saved (self->steps);
  sw_disk_copy_accept (self->disk);
  tell (self, before);
}
