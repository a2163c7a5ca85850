/* SPDX-License-Identifier: MIT */
#undef G_DISABLE_ASSERT
#include <glib/gstdio.h>

#include "square-job.h"
#include "sw-making.h"

/*
 * How long the window's thread stands still while a pack is exported: made where the
 * window is, and in a thread of its own. The aim is a frame, 16 ms, whatever the area; on
 * a machine that has less than a core to spare, what the system takes is counted too.
 */

#define HEARTBEAT_MS 2

typedef struct
{
  gint64 last_us, longest_us;
} Pulse;

static gboolean
on_heartbeat (gpointer data)
{
  Pulse *pulse = data;
  gint64 now_us = g_get_monotonic_time ();

  pulse->longest_us = MAX (pulse->longest_us, now_us - pulse->last_us);
  pulse->last_us = now_us;
  return G_SOURCE_CONTINUE;
}

static double
time_here_ms (SwStage *stage, const char *path)
{
  g_autoptr (SwPackOrder) order = sw_pack_order_new (stage);
  gint64 start_us = g_get_monotonic_time ();
  g_autoptr (GPtrArray) pages = sw_pack_order_pages (order, NULL, NULL);

  g_assert_true (sw_pack_order_write (order, pages, path, NULL, NULL));
  return (double) (g_get_monotonic_time () - start_us) / 1e3;
}

/* Returns: the longest that the main loop was kept from its turn */
static double
time_aside_ms (SwStage *stage, const char *path, double *whole_ms)
{
  gint64 start_us = g_get_monotonic_time ();
  Pulse pulse = { start_us, 0 };
  guint heartbeat =
      g_timeout_add_full (G_PRIORITY_HIGH, HEARTBEAT_MS, on_heartbeat, &pulse, NULL);
  g_autoptr (SwMaking) making = sw_making_start (sw_pack_order_new (stage), path);

  while (sw_making_state (making) == SW_MAKING_ON)
    g_main_context_iteration (NULL, TRUE);
  on_heartbeat (&pulse);
  g_source_remove (heartbeat);
  g_assert_cmpint (sw_making_state (making), ==, SW_MAKING_DONE);
  *whole_ms = (double) (pulse.last_us - start_us) / 1e3;
  return (double) pulse.longest_us / 1e3;
}

static void
time_export (double ha, const SwStock *stock, const char *path)
{
  g_autoptr (SwJob) job = square_job (ha);
  g_autoptr (SwDocument) document = sw_document_new (stock->catalogue, job);
  g_autoptr (SwStage) stage = sw_stage_new (document, stock);
  double whole_ms;
  double here_ms = time_here_ms (stage, path);
  double aside_ms = time_aside_ms (stage, path, &whole_ms);

  g_print ("%4.0f ha: made here, the window stands still for %6.0f ms; made aside, for "
           "%4.1f ms of %6.0f ms\n",
           ha, here_ms, aside_ms, whole_ms);
}

int
main (void)
{
  SwStock *stock = sw_stock_new (NULL);
  g_autofree char *folder = g_dir_make_tmp ("slopewright-bench-XXXXXX", NULL);
  g_autofree char *path = g_build_filename (folder, "pack.pdf", NULL);

  time_export (1.0, stock, path);
  time_export (10.0, stock, path);
  time_export (100.0, stock, path);
  g_unlink (path);
  g_rmdir (folder);
  sw_stock_free (stock);
  return 0;
}
