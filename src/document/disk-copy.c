/* SPDX-License-Identifier: MIT */
#include "disk-copy.h"

#include <slopewright/store/store.h>

/* Programs write in several strokes; look when they are through. */
#define SETTLE_MS 200

struct SwDiskCopy
{
  GFile *file;
  char *digest; /* NULL: no file known */
  SwOnDisk state;
  GFileMonitor *monitor;
  guint timer;
  void (*changed) (gpointer data);
  gpointer data;
};

SwDiskCopy *
sw_disk_copy_new (void (*changed) (gpointer data), gpointer data)
{
  SwDiskCopy *copy = g_new0 (SwDiskCopy, 1);

  copy->changed = changed;
  copy->data = data;
  return copy;
}

static void
let_go (SwDiskCopy *copy)
{
  g_clear_handle_id (&copy->timer, g_source_remove);
  if (copy->monitor != NULL)
    {
      g_signal_handlers_disconnect_by_data (copy->monitor, copy);
      g_file_monitor_cancel (copy->monitor);
    }
  g_clear_object (&copy->monitor);
  g_clear_object (&copy->file);
  g_clear_pointer (&copy->digest, g_free);
}

void
sw_disk_copy_free (SwDiskCopy *copy)
{
  let_go (copy);
  g_free (copy);
}

static void
set_state (SwDiskCopy *copy, SwOnDisk state)
{
  if (state == copy->state)
    return;
  copy->state = state;
  copy->changed (copy->data);
}

/* NULL when there is no file; "" when there is one that does not read. */
static char *
digest_now (const SwDiskCopy *copy)
{
  char *digest = sw_job_file_digest (copy->file, NULL);

  if (digest == NULL && g_file_query_exists (copy->file, NULL))
    return g_strdup ("");
  return digest;
}

void
sw_disk_copy_look (SwDiskCopy *copy)
{
  g_autofree char *now = NULL;

  g_clear_handle_id (&copy->timer, g_source_remove);
  if (copy->file == NULL)
    return;
  now = digest_now (copy);
  if (g_strcmp0 (now, copy->digest) == 0)
    set_state (copy, SW_ON_DISK_SAME);
  else
    set_state (copy, now != NULL ? SW_ON_DISK_CHANGED : SW_ON_DISK_GONE);
}

void
sw_disk_copy_accept (SwDiskCopy *copy)
{
  if (copy->file == NULL)
    return;
  g_free (copy->digest);
  copy->digest = digest_now (copy);
  set_state (copy, SW_ON_DISK_SAME);
}

static gboolean
on_timer (gpointer data)
{
  SwDiskCopy *copy = data;

  copy->timer = 0;
  sw_disk_copy_look (copy);
  return G_SOURCE_REMOVE;
}

static void
on_event (SwDiskCopy *copy)
{
  g_clear_handle_id (&copy->timer, g_source_remove);
  copy->timer = g_timeout_add (SETTLE_MS, on_timer, copy);
}

/* Where a file system cannot be watched, looking before saving is left. */
static void
watch (SwDiskCopy *copy)
{
  copy->monitor = g_file_monitor_file (copy->file, G_FILE_MONITOR_NONE, NULL, NULL);
  if (copy->monitor != NULL)
    g_signal_connect_swapped (copy->monitor, "changed", G_CALLBACK (on_event), copy);
}

void
sw_disk_copy_follow (SwDiskCopy *copy, GFile *file, const char *digest)
{
  g_autoptr (GFile) next = file != NULL ? g_object_ref (file) : NULL;
  g_autofree char *known = g_strdup (digest);

  let_go (copy);
  copy->file = g_steal_pointer (&next);
  copy->digest = g_steal_pointer (&known);
  if (copy->file != NULL)
    watch (copy);
  set_state (copy, SW_ON_DISK_SAME);
}

SwOnDisk
sw_disk_copy_state (const SwDiskCopy *copy)
{
  return copy->state;
}

GFile *
sw_disk_copy_file (const SwDiskCopy *copy)
{
  return copy->file;
}

const char *
sw_disk_copy_digest (const SwDiskCopy *copy)
{
  return copy->digest;
}
