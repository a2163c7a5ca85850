/* SPDX-License-Identifier: MIT */
#undef G_DISABLE_ASSERT
#include "window-fixture.h"

void
window_fixture_set_up (WindowFixture *f)
{
  f->stock = sw_stock_new (NULL);
  f->preferences = sw_preferences_new ();
  /* GTK's tests run in an American locale where there is one. */
  g_object_set (f->preferences, "units", "metric", "paper", "A4", NULL);
  f->window = sw_window_new (NULL, f->stock, f->preferences);
  f->stage = sw_window_stage (f->window);
  f->document = sw_stage_document (f->stage);
}

void
window_fixture_load_example (WindowFixture *f, const char *name)
{
  g_autofree char *path = g_build_filename (EXAMPLES_DIR, name, NULL);
  g_autoptr (GFile) file = g_file_new_for_path (path);

  g_assert_true (sw_window_load (f->window, file));
}

#define SETTLING_US (G_USEC_PER_SEC / 2)
#define SETTLING_FRAMES 10

static gboolean
count_frame (GtkWidget *widget, GdkFrameClock *clock, gpointer left)
{
  return --*(int *) left > 0 ? G_SOURCE_CONTINUE : G_SOURCE_REMOVE;
}

void
window_settle (GtkWidget *window)
{
  gint64 end_us = g_get_monotonic_time () + SETTLING_US;
  int left = SETTLING_FRAMES;

  while (g_get_monotonic_time () < end_us)
    g_main_context_iteration (NULL, FALSE);
  /* With a frame at the end: what has come up since the last is not laid out yet. */
  gtk_widget_add_tick_callback (window, count_frame, &left, NULL);
  while (left > 0)
    g_main_context_iteration (NULL, TRUE);
}

GPtrArray *
window_fixture_pages (WindowFixture *f)
{
  g_autoptr (SwPackOrder) order = sw_pack_order_new (f->stage);
  GPtrArray *pages = sw_pack_order_pages (order, NULL, NULL);

  g_assert_nonnull (pages);
  return pages;
}

/* A pack being made ends at its next part, and needs the stock until then. */
static void
wait_for_threads (SwStage *stage)
{
  for (int ms = 0; ms < 10000 && G_OBJECT (stage)->ref_count > 1; ms++)
    if (!g_main_context_iteration (NULL, FALSE))
      g_usleep (1000);
}

void
window_fixture_tear_down (WindowFixture *f)
{
  SwWindow *window = g_object_ref (f->window);
  SwDocument *document = g_object_ref (f->document);
  SwStage *stage = g_object_ref (f->stage);

  gtk_window_destroy (GTK_WINDOW (window));
  while (g_main_context_iteration (NULL, FALSE))
    ;
  g_assert_finalize_object (window);
  wait_for_threads (stage);
  g_assert_finalize_object (stage);
  g_assert_finalize_object (document);
  g_assert_finalize_object (f->preferences);
  sw_stock_free (f->stock);
}
