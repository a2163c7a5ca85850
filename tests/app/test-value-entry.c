/* SPDX-License-Identifier: MIT */
#undef G_DISABLE_ASSERT
#include "sw-text-entry.h"
#include "sw-value-entry.h"

static const SwNumberStyle metric = { SW_UNITS_METRIC, '.', NULL };

typedef struct
{
  GtkWidget *entry;
  int commits;
  double last;
} Fixture;

static void
on_committed (GtkWidget *entry, double value, Fixture *f)
{
  f->commits++;
  f->last = value;
}

static void
set_up (Fixture *f, gconstpointer data)
{
  f->entry = g_object_ref_sink (sw_value_entry_new (SW_UNIT_M));
  sw_value_entry_set_range (SW_VALUE_ENTRY (f->entry), 0.0, 100.0);
  sw_value_entry_set_value (SW_VALUE_ENTRY (f->entry), 7.0, metric);
  g_signal_connect (f->entry, "committed", G_CALLBACK (on_committed), f);
}

static void
tear_down (Fixture *f, gconstpointer data)
{
  g_assert_finalize_object (f->entry);
}

static const char *
text_of (Fixture *f)
{
  return gtk_editable_get_text (
      GTK_EDITABLE (sw_value_entry_field (SW_VALUE_ENTRY (f->entry))));
}

/* One character after the other, as a keyboard does it. */
static void
type (Fixture *f, const char *text)
{
  GtkEditable *field = GTK_EDITABLE (sw_value_entry_field (SW_VALUE_ENTRY (f->entry)));
  int at = 0;

  gtk_editable_delete_text (field, 0, -1);
  for (const char *p = text; *p != '\0'; p = g_utf8_next_char (p))
    gtk_editable_insert_text (field, p, (int) (g_utf8_next_char (p) - p), &at);
}

static void
press_enter (Fixture *f)
{
  g_signal_emit_by_name (sw_value_entry_field (SW_VALUE_ENTRY (f->entry)), "activate");
}

/* Tab goes in and on, Shift+Tab back out: the entry has the focus in its field alone. */
static void
test_tab_both_ways (Fixture *f, gconstpointer data)
{
  GtkWidget *window = gtk_window_new (), *box = gtk_box_new (GTK_ORIENTATION_VERTICAL, 0);
  GtkWidget *before = gtk_button_new ();

  gtk_box_append (GTK_BOX (box), before);
  gtk_box_append (GTK_BOX (box), f->entry);
  gtk_window_set_child (GTK_WINDOW (window), box);
  gtk_window_present (GTK_WINDOW (window));
  gtk_widget_grab_focus (before);
  g_assert_true (gtk_widget_child_focus (box, GTK_DIR_TAB_FORWARD));
  g_assert_true (gtk_widget_is_ancestor (gtk_root_get_focus (GTK_ROOT (window)), f->entry));
  g_assert_true (gtk_widget_child_focus (box, GTK_DIR_TAB_BACKWARD));
  g_assert_true (gtk_root_get_focus (GTK_ROOT (window)) == before);
  gtk_box_remove (GTK_BOX (box), f->entry);
  gtk_window_destroy (GTK_WINDOW (window));
}

static void
test_shows (Fixture *f, gconstpointer data)
{
  g_assert_cmpstr (text_of (f), ==, "7 m");
  g_assert_false (sw_value_entry_is_edited (SW_VALUE_ENTRY (f->entry)));
  g_assert_cmpint (f->commits, ==, 0);
}

/* The trap of B13: neither mark may ever turn 1.5 into 15. */
static void
test_point_and_comma (Fixture *f, gconstpointer data)
{
  type (f, "1.5");
  press_enter (f);
  g_assert_cmpfloat (f->last, ==, 1.5);
  type (f, "2,5");
  press_enter (f);
  g_assert_cmpfloat (f->last, ==, 2.5);
  g_assert_cmpint (f->commits, ==, 2);
  g_assert_cmpstr (text_of (f), ==, "2.5 m");
}

static void
test_nothing_while_typing (Fixture *f, gconstpointer data)
{
  type (f, "12");
  g_assert_cmpint (f->commits, ==, 0);
  g_assert_cmpfloat (sw_value_entry_value (SW_VALUE_ENTRY (f->entry)), ==, 7.0);
  g_assert_true (sw_value_entry_is_edited (SW_VALUE_ENTRY (f->entry)));
}

static void
test_nonsense_stays (Fixture *f, gconstpointer data)
{
  GtkEntry *field = sw_value_entry_field (SW_VALUE_ENTRY (f->entry));

  type (f, "abc");
  press_enter (f);
  g_assert_cmpint (f->commits, ==, 0);
  g_assert_cmpstr (text_of (f), ==, "abc");
  g_assert_cmpfloat (sw_value_entry_value (SW_VALUE_ENTRY (f->entry)), ==, 7.0);
  g_assert_true (gtk_widget_has_css_class (GTK_WIDGET (field), "error"));
  gtk_test_accessible_assert_state (GTK_ACCESSIBLE (field), GTK_ACCESSIBLE_STATE_INVALID,
                                    GTK_ACCESSIBLE_INVALID_TRUE);
  /* A change from elsewhere leaves what is being typed alone. */
  sw_value_entry_set_value (SW_VALUE_ENTRY (f->entry), 8.0, metric);
  g_assert_cmpstr (text_of (f), ==, "abc");
  sw_value_entry_restore (SW_VALUE_ENTRY (f->entry));
  g_assert_cmpstr (text_of (f), ==, "8 m");
  g_assert_false (gtk_widget_has_css_class (GTK_WIDGET (field), "error"));
}

static void
test_range (Fixture *f, gconstpointer data)
{
  type (f, "100.1");
  g_assert_false (sw_value_entry_commit (SW_VALUE_ENTRY (f->entry)));
  g_assert_cmpint (f->commits, ==, 0);
  type (f, "100");
  g_assert_true (sw_value_entry_commit (SW_VALUE_ENTRY (f->entry)));
  g_assert_cmpfloat (f->last, ==, 100.0);
}

static void
test_or_zero (Fixture *f, gconstpointer data)
{
  SwValueEntry *entry = SW_VALUE_ENTRY (f->entry);

  sw_value_entry_set_range (entry, 0.5, 100.0);
  sw_value_entry_set_or_zero (entry, TRUE);
  type (f, "0.2");
  g_assert_false (sw_value_entry_commit (entry));
  type (f, "0");
  g_assert_true (sw_value_entry_commit (entry));
  g_assert_cmpfloat (f->last, ==, 0.0);
}

/* Looking at a field must not round what is stored: 1/3 m shows as 0.333 m. */
static void
test_untouched_is_untouched (Fixture *f, gconstpointer data)
{
  sw_value_entry_set_value (SW_VALUE_ENTRY (f->entry), 1.0 / 3.0, metric);
  g_assert_true (sw_value_entry_commit (SW_VALUE_ENTRY (f->entry)));
  g_assert_cmpfloat (sw_value_entry_value (SW_VALUE_ENTRY (f->entry)), ==, 1.0 / 3.0);
  g_assert_cmpint (f->commits, ==, 0);
}

static void
test_same_value_is_no_change (Fixture *f, gconstpointer data)
{
  type (f, "700 cm");
  press_enter (f);
  g_assert_cmpint (f->commits, ==, 0);
  g_assert_cmpstr (text_of (f), ==, "7 m");
}

static void
test_units_of_the_reader (Fixture *f, gconstpointer data)
{
  sw_value_entry_set_value (SW_VALUE_ENTRY (f->entry), 3.048,
                            (SwNumberStyle){ SW_UNITS_US, '.', NULL });
  type (f, "11' 6\"");
  press_enter (f);
  g_assert_cmpfloat_with_epsilon (f->last, 3.5052, 1e-12); /* 138 in x 25.4 mm */
}

/* 3 m are 9 ft 10.11 in (118.11 in): at least 3 m read off a tape of quarter inches is
 * 9 ft 10¼ in. Reading it is not typing it: nothing is committed. */
static void
test_reads_as_the_pack (Fixture *f, gconstpointer data)
{
  sw_value_entry_set_limit (SW_VALUE_ENTRY (f->entry), SW_LIMIT_LEAST);
  sw_value_entry_set_value (SW_VALUE_ENTRY (f->entry), 3.0,
                            (SwNumberStyle){ SW_UNITS_US, '.', NULL });
  g_assert_cmpstr (text_of (f), ==, "9\u00a0ft\u00a010¼\u00a0in");
  press_enter (f);
  g_assert_cmpint (f->commits, ==, 0);
  g_assert_cmpfloat_with_epsilon (sw_value_entry_value (SW_VALUE_ENTRY (f->entry)), 3.0,
                                  1e-12);
}

static void
on_text (GtkWidget *entry, const char *text, char **last)
{
  g_free (*last);
  *last = g_strdup (text);
}

static void
test_text_entry (void)
{
  GtkWidget *entry = g_object_ref_sink (sw_text_entry_new ());
  GtkEditable *field = GTK_EDITABLE (sw_text_entry_field (SW_TEXT_ENTRY (entry)));
  g_autofree char *last = NULL;

  g_signal_connect (entry, "committed", G_CALLBACK (on_text), &last);
  sw_text_entry_set_text (SW_TEXT_ENTRY (entry), "Bluff");
  g_assert_null (last);
  gtk_editable_set_text (field, "Bank");
  g_assert_null (last);
  g_signal_emit_by_name (field, "activate");
  g_assert_cmpstr (last, ==, "Bank");
  gtk_editable_set_text (field, "Half");
  sw_text_entry_restore (SW_TEXT_ENTRY (entry));
  g_assert_cmpstr (gtk_editable_get_text (field), ==, "Bank");
  g_assert_finalize_object (entry);
}

static const char *
text_in (GtkWidget *entry)
{
  return gtk_editable_get_text (
      GTK_EDITABLE (sw_value_entry_field (SW_VALUE_ENTRY (entry))));
}

/* A slope of 3 % is atan 0.03 = 1.718 degrees: it stays 3 % until it is another. */
static void
test_gradients_stay_as_typed (Fixture *f, gconstpointer data)
{
  g_autoptr (GtkWidget) entry = g_object_ref_sink (sw_value_entry_new (SW_UNIT_RAD));
  SwValueEntry *value = SW_VALUE_ENTRY (entry);
  GtkEditable *field = GTK_EDITABLE (sw_value_entry_field (value));

  sw_value_entry_set_value (value, 0.5, metric);
  gtk_editable_set_text (field, " 3 %");
  g_assert_true (sw_value_entry_commit (value));
  g_assert_cmpfloat_with_epsilon (sw_value_entry_value (value), 0.029991, 1e-6);
  g_assert_cmpstr (text_in (entry), ==, "3 %");
  sw_value_entry_set_value (value, sw_value_entry_value (value), metric);
  g_assert_cmpstr (text_in (entry), ==, "3 %");
  sw_value_entry_set_value (value, G_PI / 6.0, metric);
  g_assert_cmpstr (text_in (entry), ==, "30°");
  gtk_editable_set_text (field, "45");
  g_assert_true (sw_value_entry_commit (value));
  g_assert_cmpstr (text_in (entry), ==, "45°");
}

int
main (int argc, char *argv[])
{
  gtk_test_init (&argc, &argv, NULL);
#define ADD(path, function)                                                              \
  g_test_add ("/app/value-entry/" path, Fixture, NULL, set_up, function, tear_down)
  ADD ("shows", test_shows);
  ADD ("tab-both-ways", test_tab_both_ways);
  ADD ("point-and-comma", test_point_and_comma);
  ADD ("nothing-while-typing", test_nothing_while_typing);
  ADD ("nonsense-stays", test_nonsense_stays);
  ADD ("range", test_range);
  ADD ("or-zero", test_or_zero);
  ADD ("untouched-is-untouched", test_untouched_is_untouched);
  ADD ("same-value-is-no-change", test_same_value_is_no_change);
  ADD ("units-of-the-reader", test_units_of_the_reader);
  ADD ("reads-as-the-pack", test_reads_as_the_pack);
  ADD ("gradients-stay-as-typed", test_gradients_stay_as_typed);
#undef ADD
  g_test_add_func ("/app/text-entry/manners", test_text_entry);
  return g_test_run ();
}
