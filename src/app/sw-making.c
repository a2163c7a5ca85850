/* SPDX-License-Identifier: MIT */
#include "sw-making.h"

#include <glib/gi18n.h>

/* What takes less than this needs no words. */
#define PATIENCE_MS 500
#define TICK_MS 100

/* Making the pages takes about so much of the time; painting them into a PDF the rest. */
#define SHARE_OF_PAGES 0.8

typedef struct
{
  gboolean writing;
  guint done, parts;
} Progress;

struct _SwMaking
{
  GObject parent_instance;
  SwPackOrder *order;
  char *path;
  SwMakingState state;
  GPtrArray *pages;
  GError *error;
  guint ticker;
  gint stopped; /* atomic */
  GMutex lock;  /* of the next */
  Progress progress;
};

enum
{
  PROGRESSED,
  FINISHED,
  N_SIGNALS
};

static guint signals[N_SIGNALS];

G_DEFINE_FINAL_TYPE (SwMaking, sw_making, G_TYPE_OBJECT)

static void
sw_making_finalize (GObject *object)
{
  SwMaking *self = SW_MAKING (object);

  g_clear_pointer (&self->order, sw_pack_order_free);
  g_clear_pointer (&self->pages, g_ptr_array_unref);
  g_clear_error (&self->error);
  g_free (self->path);
  g_mutex_clear (&self->lock);
  G_OBJECT_CLASS (sw_making_parent_class)->finalize (object);
}

static void
sw_making_class_init (SwMakingClass *klass)
{
  static const char *const names[N_SIGNALS] = { "progressed", "finished" };

  G_OBJECT_CLASS (klass)->finalize = sw_making_finalize;
  for (guint i = 0; i < N_SIGNALS; i++)
    signals[i] = g_signal_new (names[i], SW_TYPE_MAKING, G_SIGNAL_RUN_LAST, 0, NULL, NULL,
                               NULL, G_TYPE_NONE, 0);
}

static void
sw_making_init (SwMaking *self)
{
  g_mutex_init (&self->lock);
}

static gboolean
note_progress (SwMaking *self, gboolean writing, guint done, guint parts)
{
  g_mutex_lock (&self->lock);
  self->progress = (Progress){ writing, done, parts };
  g_mutex_unlock (&self->lock);
  return !g_atomic_int_get (&self->stopped);
}

static gboolean
on_part (gpointer self, guint done, guint parts)
{
  return note_progress (self, FALSE, done, parts);
}

static gboolean
on_page (gpointer self, guint done, guint parts)
{
  return note_progress (self, TRUE, done, parts);
}

/* In the thread. What it sets is read once the task has returned. */
static void
make (GTask *task, gpointer source, gpointer data, GCancellable *cancellable)
{
  SwMaking *self = data;
  const SwLongWork paging = { on_part, self };
  const SwLongWork writing = { on_page, self };

  self->pages = sw_pack_order_pages (self->order, &paging, &self->error);
  if (self->pages != NULL && self->path != NULL)
    sw_pack_order_write (self->order, self->pages, self->path, &writing, &self->error);
  g_task_return_boolean (task, self->error == NULL);
}

static SwMakingState
state_at_end (SwMaking *self)
{
  if (self->error == NULL)
    return SW_MAKING_DONE;
  return g_error_matches (self->error, SW_PAINT_ERROR, SW_PAINT_ERROR_STOPPED)
             ? SW_MAKING_STOPPED
             : SW_MAKING_FAILED;
}

static void
on_made (GObject *source, GAsyncResult *task, gpointer data)
{
  g_autoptr (SwMaking) self = SW_MAKING (data);
  GApplication *app = g_application_get_default ();

  self->state = state_at_end (self);
  if (self->state != SW_MAKING_DONE)
    g_clear_pointer (&self->pages, g_ptr_array_unref);
  g_clear_handle_id (&self->ticker, g_source_remove);
  g_signal_emit (self, signals[FINISHED], 0);
  if (app != NULL)
    g_application_release (app);
}

static gboolean
on_tick (gpointer data)
{
  g_signal_emit (data, signals[PROGRESSED], 0);
  return G_SOURCE_CONTINUE;
}

static gboolean
on_patience_ends (gpointer data)
{
  SwMaking *self = data;

  self->ticker = g_timeout_add (TICK_MS, on_tick, self);
  on_tick (self);
  return G_SOURCE_REMOVE;
}

SwMaking *
sw_making_start (SwPackOrder *order, const char *path)
{
  SwMaking *self = g_object_new (SW_TYPE_MAKING, NULL);
  GApplication *app = g_application_get_default ();
  g_autoptr (GTask) task = g_task_new (NULL, NULL, on_made, g_object_ref (self));

  self->order = order;
  self->path = g_strdup (path);
  self->ticker = g_timeout_add (PATIENCE_MS, on_patience_ends, self);
  if (app != NULL)
    g_application_hold (app);
  g_task_set_task_data (task, self, NULL);
  g_task_run_in_thread (task, make);
  return self;
}

void
sw_making_stop (SwMaking *self)
{
  g_atomic_int_set (&self->stopped, TRUE);
}

SwMakingState
sw_making_state (SwMaking *self)
{
  return self->state;
}

const SwJob *
sw_making_job (SwMaking *self)
{
  return sw_pack_order_job (self->order);
}

const char *
sw_making_path (SwMaking *self)
{
  return self->path;
}

static Progress
progress_of (SwMaking *self)
{
  Progress progress;

  g_mutex_lock (&self->lock);
  progress = self->progress;
  g_mutex_unlock (&self->lock);
  return progress;
}

char *
sw_making_words (SwMaking *self)
{
  Progress now = progress_of (self);

  if (g_atomic_int_get (&self->stopped))
    return g_strdup (_ ("Stopping…"));
  if (now.writing && now.done == now.parts)
    return g_strdup (_ ("Putting the file together"));
  if (now.writing)
    return g_strdup_printf (_ ("Writing the pack: page %u of %u"), now.done + 1,
                            now.parts);
  return g_strdup_printf (_ ("Making the pack: part %u of %u"), now.done + 1,
                          MAX (now.parts, 1));
}

double
sw_making_share (SwMaking *self)
{
  Progress now = progress_of (self);
  double behind = now.parts > 0 ? (double) now.done / now.parts : 0.0;

  if (self->path == NULL)
    return behind;
  return now.writing ? SHARE_OF_PAGES + (1.0 - SHARE_OF_PAGES) * behind
                     : SHARE_OF_PAGES * behind;
}

GPtrArray *
sw_making_pages (SwMaking *self)
{
  return self->pages;
}

const GError *
sw_making_error (SwMaking *self)
{
  return self->state == SW_MAKING_FAILED ? self->error : NULL;
}
