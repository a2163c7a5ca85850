/* SPDX-License-Identifier: MIT */
#undef G_DISABLE_ASSERT
#include "briefing-text.h"
#include "sw-briefing.h"
#include "sw-laying-view.h"
#include "window-fixture.h"

#include <slopewright/layout/laying-sequence.h>

typedef struct
{
  WindowFixture base;
  SwBriefingWindow *briefing;
} Fixture;

static void
set_up (Fixture *f, gconstpointer name)
{
  g_autofree char *path = g_build_filename (EXAMPLES_DIR, name, NULL);
  g_autoptr (GFile) file = g_file_new_for_path (path);

  window_fixture_set_up (&f->base);
  g_assert_true (sw_window_load (f->base.window, file));
  f->briefing = SW_BRIEFING_WINDOW (
      sw_briefing_window_new (GTK_WINDOW (f->base.window), f->base.stage));
  gtk_window_present (GTK_WINDOW (f->briefing));
  g_object_add_weak_pointer (G_OBJECT (f->briefing), (gpointer *) &f->briefing);
}

/* What closed is gone, once all that is under way has come to its end. */
static void
check_gone (Fixture *f)
{
  while (g_main_context_iteration (NULL, FALSE))
    ;
  g_assert_null (f->briefing);
}

static void
tear_down (Fixture *f, gconstpointer name)
{
  if (f->briefing != NULL)
    gtk_window_destroy (GTK_WINDOW (f->briefing));
  check_gone (f);
  window_fixture_tear_down (&f->base);
}

static void
act (Fixture *f, const char *name)
{
  g_autofree char *action = g_strconcat ("briefing.", name, NULL);

  gtk_widget_activate_action (GTK_WIDGET (f->briefing), action, NULL);
}

/* As when the key reaches the window's contents. */
static gboolean
press (Fixture *f, guint key, GdkModifierType held)
{
  GtkWidget *content = gtk_window_get_child (GTK_WINDOW (f->briefing));
  g_autoptr (GListModel) controllers = gtk_widget_observe_controllers (content);
  gboolean taken = FALSE;

  for (guint i = 0; i < g_list_model_get_n_items (controllers); i++)
    {
      g_autoptr (GtkEventController) controller = g_list_model_get_item (controllers, i);

      if (GTK_IS_EVENT_CONTROLLER_KEY (controller) && !taken)
        g_signal_emit_by_name (controller, "key-pressed", key, 0, held, &taken);
    }
  return taken;
}

static void
test_steps (Fixture *f, gconstpointer name)
{
  g_autoptr (SwLayingSequence) sequence =
      sw_laying_sequence_new (sw_stage_result (f->base.stage)->layout);
  guint last = sequence->n_steps - 1;

  g_assert_cmpuint (sw_briefing_window_n_steps (f->briefing), ==, sequence->n_steps);
  g_assert_cmpuint (sw_briefing_window_step (f->briefing), ==, 0);
  act (f, "back");
  g_assert_cmpuint (sw_briefing_window_step (f->briefing), ==, 0);
  act (f, "next");
  g_assert_cmpuint (sw_briefing_window_step (f->briefing), ==, 1);
  act (f, "run-after");
  g_assert_cmpint (sequence->steps[sw_briefing_window_step (f->briefing)].act, ==,
                   SW_LAYING_ANCHOR);
  act (f, "run-before");
  g_assert_cmpuint (sw_briefing_window_step (f->briefing), ==, 0);
  act (f, "last");
  g_assert_cmpuint (sw_briefing_window_step (f->briefing), ==, last);
  act (f, "next");
  g_assert_cmpuint (sw_briefing_window_step (f->briefing), ==, last);
  act (f, "first");
  g_assert_cmpuint (sw_briefing_window_step (f->briefing), ==, 0);
}

static void
test_keys (Fixture *f, gconstpointer name)
{
  static const struct
  {
    guint key, step;
  } presses[] = { { GDK_KEY_Right, 1 }, { GDK_KEY_space, 2 },   { GDK_KEY_Page_Down, 3 },
                  { GDK_KEY_Left, 2 },  { GDK_KEY_Page_Up, 1 }, { GDK_KEY_Home, 0 } };
  guint last = sw_briefing_window_n_steps (f->briefing) - 1;

  for (gsize i = 0; i < G_N_ELEMENTS (presses); i++)
    {
      g_assert_true (press (f, presses[i].key, 0));
      g_assert_cmpuint (sw_briefing_window_step (f->briefing), ==, presses[i].step);
    }
  g_assert_true (press (f, GDK_KEY_End, 0));
  g_assert_cmpuint (sw_briefing_window_step (f->briefing), ==, last);
  g_assert_false (press (f, GDK_KEY_Right, GDK_CONTROL_MASK));
  g_assert_false (press (f, GDK_KEY_x, 0));
  g_assert_true (press (f, GDK_KEY_Escape, 0));
  check_gone (f);
}

/* What is said changes with each step, and is there for who cannot see it. */
static void
test_spoken (Fixture *f, gconstpointer name)
{
  g_autofree char *before = g_strdup (sw_briefing_window_spoken (f->briefing));

  g_assert_nonnull (strstr (before, "Step 1 of "));
  g_assert_nonnull (strstr (before, "Prepare the face"));
  act (f, "next");
  g_assert_cmpstr (sw_briefing_window_spoken (f->briefing), !=, before);
  g_assert_null (strchr (sw_briefing_window_spoken (f->briefing), '*'));
}

static void
test_plays (Fixture *f, gconstpointer name)
{
  GtkSettings *settings = gtk_settings_get_default ();

  g_object_set (settings, "gtk-enable-animations", TRUE, NULL);
  g_assert_true (press (f, GDK_KEY_F5, 0));
  g_assert_true (sw_briefing_window_is_playing (f->briefing));
  act (f, "next");
  g_assert_false (sw_briefing_window_is_playing (f->briefing));
  act (f, "play");
  g_assert_true (sw_briefing_window_is_playing (f->briefing));
  act (f, "play");
  g_assert_false (sw_briefing_window_is_playing (f->briefing));
  /* Who has asked the desktop for no movement gets none. */
  g_object_set (settings, "gtk-enable-animations", FALSE, NULL);
  act (f, "play");
  g_assert_false (sw_briefing_window_is_playing (f->briefing));
  act (f, "next");
  g_assert_cmpuint (sw_briefing_window_step (f->briefing), ==, 2);
  gtk_settings_reset_property (settings, "gtk-enable-animations");
}

/* The job it speaks of is the job as it is now. */
static void
test_follows (Fixture *f, gconstpointer name)
{
  guint before = sw_briefing_window_n_steps (f->briefing);
  g_autoptr (SwJob) wider = sw_job_copy (sw_document_committed (f->base.document));
  g_autoptr (SwJob) none = NULL;

  act (f, "last");
  wider->roll_width_m = 3.6;
  sw_document_commit (f->base.document, wider, "Wider Rolls", NULL);
  g_assert_cmpuint (sw_briefing_window_n_steps (f->briefing), <, before);
  g_assert_cmpuint (sw_briefing_window_step (f->briefing), <,
                    sw_briefing_window_n_steps (f->briefing));
  none = sw_job_copy (wider);
  none->roll_length_m = 0.5;
  sw_document_commit (f->base.document, none, "No Roll", NULL);
  g_assert_cmpint (sw_stage_result (f->base.stage)->status, !=, SW_OK);
  check_gone (f);
}

static void
test_speaks_the_packs_language (Fixture *f, gconstpointer name)
{
  g_autoptr (SwJob) spanish = sw_job_copy (sw_document_committed (f->base.document));

  sw_text_set (&spanish->language, "es");
  sw_document_commit (f->base.document, spanish, "Spanish", NULL);
  act (f, "first");
  g_assert_nonnull (strstr (sw_briefing_window_spoken (f->briefing), "Preparar"));
}

/* Bold of the texts becomes bold of a label, and what the user wrote stays what it is. */
static void
test_markup (void)
{
  g_autofree char *shown = sw_briefing_markup ("*8* pins <a> ** & b", 1.5);

  g_assert_cmpstr (shown, ==,
                   "<span size=\"150%\"><b>8</b> pins &lt;a&gt; * &amp; b</span>");
}

/* However narrow the label, "2H:" is not left at the end of a line. */
static void
test_gradient_holds_together (void)
{
  g_autofree char *shown = sw_briefing_markup ("at 2H:1V", 1.0);
  g_autoptr (GtkWidget) label = g_object_ref_sink (gtk_label_new (NULL));
  PangoLayout *layout;

  gtk_label_set_markup (GTK_LABEL (label), shown);
  layout = gtk_label_get_layout (GTK_LABEL (label));
  pango_layout_set_width (layout, 1);
  g_assert_cmpint (pango_layout_get_line_count (layout), ==, 2);
}

int
main (int argc, char *argv[])
{
  gtk_test_init (&argc, &argv, NULL);
#define ADD(path, function)                                                              \
  g_test_add ("/app/briefing/" path, Fixture, "pinfold-cutting.slope.json", set_up,      \
              function, tear_down)
  ADD ("steps", test_steps);
  ADD ("keys", test_keys);
  ADD ("spoken", test_spoken);
  ADD ("plays", test_plays);
  ADD ("follows", test_follows);
  ADD ("speaks-the-packs-language", test_speaks_the_packs_language);
#undef ADD
  g_test_add_func ("/app/briefing/markup", test_markup);
  g_test_add_func ("/app/briefing/gradient-holds-together", test_gradient_holds_together);
  return g_test_run ();
}
