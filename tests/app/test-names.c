/* SPDX-License-Identifier: MIT */
/* What can be worked or reached by key says what it is, on every page and in every dialog. */
#undef G_DISABLE_ASSERT
#include <slopewright/store/help.h>
#include <slopewright/store/store.h>

#include "key-letters.h"
#include "sw-briefing.h"
#include "sw-help-window.h"
#include "sw-measure-dialog.h"
#include "sw-practices-dialog.h"
#include "sw-preferences-window.h"
#include "sw-preview.h"
#include "sw-soil-dialog.h"
#include "sw-types-dialog.h"
#include "window-fixture.h"

typedef WindowFixture Fixture;

static void
set_up (Fixture *f, gconstpointer data)
{
  window_fixture_set_up (f);
}

static void
tear_down (Fixture *f, gconstpointer data)
{
  window_fixture_tear_down (f);
}

static gboolean
is_of (GtkAccessible *thing, const GtkAccessibleRole *roles, gsize count)
{
  for (gsize i = 0; i < count; i++)
    if (gtk_accessible_get_accessible_role (thing) == roles[i])
      return TRUE;
  return FALSE;
}

/* GTK gives the keyboard to what is in these, or to its own parts of what has a name. */
static gboolean
is_frame (GtkWidget *widget)
{
  return GTK_IS_SCROLLED_WINDOW (widget) || GTK_IS_LABEL (widget)
         || g_str_equal (G_OBJECT_TYPE_NAME (widget), "GtkListItemWidget")
         || g_str_equal (G_OBJECT_TYPE_NAME (widget), "GtkText");
}

static gboolean
is_worked (GtkWidget *widget)
{
  static const GtkAccessibleRole roles[] = {
    GTK_ACCESSIBLE_ROLE_BUTTON,
    GTK_ACCESSIBLE_ROLE_CHECKBOX,
    GTK_ACCESSIBLE_ROLE_COMBO_BOX,
    GTK_ACCESSIBLE_ROLE_GRID_CELL,
    GTK_ACCESSIBLE_ROLE_LINK,
    GTK_ACCESSIBLE_ROLE_LIST_ITEM,
    GTK_ACCESSIBLE_ROLE_MENU_ITEM,
    GTK_ACCESSIBLE_ROLE_OPTION,
    GTK_ACCESSIBLE_ROLE_RADIO,
    GTK_ACCESSIBLE_ROLE_SEARCH_BOX,
    GTK_ACCESSIBLE_ROLE_SLIDER,
    GTK_ACCESSIBLE_ROLE_SPIN_BUTTON,
    GTK_ACCESSIBLE_ROLE_SWITCH,
    GTK_ACCESSIBLE_ROLE_TAB,
    GTK_ACCESSIBLE_ROLE_TAB_LIST,
    GTK_ACCESSIBLE_ROLE_TEXT_BOX,
    GTK_ACCESSIBLE_ROLE_MENU_ITEM_RADIO,
    GTK_ACCESSIBLE_ROLE_MENU_ITEM_CHECKBOX,
  };

  return is_of (GTK_ACCESSIBLE (widget), roles, G_N_ELEMENTS (roles))
         || (gtk_widget_get_focusable (widget) && !is_frame (widget));
}

static gboolean
has_name (GtkAccessible *thing)
{
  if (gtk_test_accessible_has_relation (thing, GTK_ACCESSIBLE_RELATION_LABELLED_BY))
    return TRUE;
  if (!gtk_test_accessible_has_property (thing, GTK_ACCESSIBLE_PROPERTY_LABEL))
    return FALSE;
  g_autofree char *other =
      gtk_test_accessible_check_property (thing, GTK_ACCESSIBLE_PROPERTY_LABEL, "");
  return other != NULL;
}

static void
expect_name (GtkWidget *widget, const char *name)
{
  gtk_test_accessible_assert_property (widget, GTK_ACCESSIBLE_PROPERTY_LABEL, name);
  g_assert_false (gtk_test_accessible_has_relation (GTK_ACCESSIBLE (widget),
                                                    GTK_ACCESSIBLE_RELATION_LABELLED_BY));
}

/* Where it is, from the inside out. */
static char *
path_of (GtkWidget *widget)
{
  GString *path = g_string_new (NULL);

  for (; widget != NULL; widget = gtk_widget_get_parent (widget))
    g_string_append_printf (path, " < %s", G_OBJECT_TYPE_NAME (widget));
  return g_string_free (path, FALSE);
}

/* How many are without a name; each is told. */
static guint
count_nameless (GtkWidget *widget)
{
  guint count = 0;

  if (!gtk_widget_get_visible (widget) && !GTK_IS_WINDOW (widget))
    return 0;
  if (is_worked (widget) && !has_name (GTK_ACCESSIBLE (widget)))
    {
      g_autofree char *path = path_of (widget);
      g_test_message ("no name:%s", path);
      count++;
    }
  for (GtkWidget *child = gtk_widget_get_first_child (widget); child != NULL;
       child = gtk_widget_get_next_sibling (child))
    count += count_nameless (child);
  return count;
}

static void
expect_names (GtkWidget *widget)
{
  g_assert_cmpuint (count_nameless (widget), ==, 0);
  g_assert_true (!GTK_IS_WINDOW (widget) || has_name (GTK_ACCESSIBLE (widget)));
}

/* Looks at a window and closes it. */
static void
expect_names_once (GtkWidget *window)
{
  expect_names (window);
  gtk_window_destroy (GTK_WINDOW (window));
}

static void
test_start (Fixture *f, gconstpointer data)
{
  sw_window_show_start (f->window);
  expect_names (GTK_WIDGET (f->window));
}

/* All that stands on the canvases, and all pages of the inspector. */
static void
test_drawing (Fixture *f, gconstpointer data)
{
  window_fixture_load_example (f, data);
  for (SwCanvasView view = SW_CANVAS_SECTION; view <= SW_CANVAS_FACE_VIEW; view++)
    {
      SwCanvas *canvas = sw_window_canvas (f->window, view);
      g_assert_nonnull (gtk_widget_get_first_child (GTK_WIDGET (canvas)));
    }
  expect_names (GTK_WIDGET (f->window));
}

/* Menus, what a button opens, and what stands on a canvas: looked at while it is open. */
static guint
count_in_pop_ups (GtkWidget *widget)
{
  guint count = 0;

  if (GTK_IS_MENU_BUTTON (widget))
    {
      gtk_menu_button_popup (GTK_MENU_BUTTON (widget));
      count += count_nameless (widget);
      gtk_menu_button_popdown (GTK_MENU_BUTTON (widget));
    }
  for (GtkWidget *child = gtk_widget_get_first_child (widget); child != NULL;
       child = gtk_widget_get_next_sibling (child))
    count += count_in_pop_ups (child);
  return count;
}

static void
close_pop_ups (GtkWidget *parent)
{
  for (GtkWidget *child = gtk_widget_get_first_child (parent); child != NULL;
       child = gtk_widget_get_next_sibling (child))
    if (GTK_IS_POPOVER (child))
      gtk_popover_popdown (GTK_POPOVER (child));
}

static void
test_pop_ups (Fixture *f, gconstpointer data)
{
  GtkWidget *plan = GTK_WIDGET (sw_window_canvas (f->window, SW_CANVAS_PLAN));

  window_fixture_load_example (f, "halter-brook.slope.json");
  gtk_window_present (GTK_WINDOW (f->window));
  window_settle (GTK_WIDGET (f->window));
  g_assert_cmpuint (count_in_pop_ups (GTK_WIDGET (f->window)), ==, 0);
  sw_canvas_add_shape (SW_CANVAS (plan), SW_LIST_OBSTACLE);
  expect_names (plan);
  close_pop_ups (plan);
  gtk_widget_activate_action (gtk_widget_get_first_child (plan), "handle.edit", NULL);
  expect_names (plan);
  close_pop_ups (plan);
}

static void
test_dialogs (Fixture *f, gconstpointer data)
{
  GtkWindow *window = GTK_WINDOW (f->window);

  window_fixture_load_example (f, "pinfold-cutting.slope.json");
  for (SwObtained how = SW_OBTAINED_TAPED_ANGLE; how < SW_OBTAINED_COUNT; how++)
    expect_names_once (sw_measure_dialog_new (window, f->stage, how));
  expect_names_once (sw_soil_dialog_new (window, f->stage));
  expect_names_once (sw_practices_dialog_new (window, f->stage));
  expect_names_once (sw_types_dialog_new (window, f->stage));
  expect_names_once (sw_briefing_window_new (window, f->stage));
  expect_names_once (sw_preferences_window_new (window, f->preferences, f->stock));
}

static void
test_help (Fixture *f, gconstpointer data)
{
  GtkWidget *help = sw_help_window_new (f->stock, SW_UNITS_METRIC);
  g_autoptr (SwHelp) pages = sw_help_load (sw_texts_language (f->stock->texts));

  for (guint i = 0; i < pages->pages->len; i++)
    {
      const SwHelpPage *page = g_ptr_array_index (pages->pages, i);
      g_assert_true (sw_help_window_go (SW_HELP_WINDOW (help), page->name));
      expect_names (help);
    }
  sw_help_window_search (SW_HELP_WINDOW (help), "pin");
  g_assert_cmpuint (sw_help_window_found (SW_HELP_WINDOW (help)), >, 0);
  expect_names (help);
  gtk_window_destroy (GTK_WINDOW (help));
}

static void
test_preview (Fixture *f, gconstpointer data)
{
  GtkWidget *window = gtk_window_new ();
  GtkWidget *preview = sw_preview_new (f->stage);

  gtk_window_set_child (GTK_WINDOW (window), preview);
  gtk_window_present (GTK_WINDOW (window));
  while (sw_preview_pages (SW_PREVIEW (preview)) == NULL)
    g_main_context_iteration (NULL, TRUE);
  expect_names (preview);
  gtk_window_destroy (GTK_WINDOW (window));
}

static void
test_shortcuts (Fixture *f, gconstpointer data)
{
  g_autoptr (GtkBuilder) builder =
      gtk_builder_new_from_resource ("/io/slopewright/Slopewright/gtk/help-overlay.ui");

  GtkWidget *window = GTK_WIDGET (gtk_builder_get_object (builder, "help_overlay"));

  g_assert_true (has_name (GTK_ACCESSIBLE (window))); /* the rest of it is GTK's own */
  gtk_window_destroy (GTK_WINDOW (window));
}

/* Once, without the underline, also when the words change. */
static void
test_key_letters (Fixture *f, gconstpointer data)
{
  GtkWidget *window = gtk_window_new ();
  GtkWidget *box = gtk_box_new (GTK_ORIENTATION_VERTICAL, 0);
  GtkWidget *button = gtk_button_new_with_mnemonic ("_Save");
  GtkWidget *check = gtk_check_button_new_with_mnemonic ("N_o __ none");

  sw_key_letters_say_once ();
  gtk_box_append (GTK_BOX (box), button);
  gtk_box_append (GTK_BOX (box), check);
  gtk_window_set_child (GTK_WINDOW (window), box);
  gtk_window_present (GTK_WINDOW (window));
  expect_name (button, "Save");
  expect_name (check, "No _ none");
  gtk_button_set_label (GTK_BUTTON (button), "Sa_ve As");
  expect_name (button, "Save As");
  gtk_window_destroy (GTK_WINDOW (window));
}

int
main (int argc, char **argv)
{
  gtk_test_init (&argc, &argv, NULL);
#define ADD(path, data, function)                                                        \
  g_test_add ("/app/names/" path, Fixture, data, set_up, function, tear_down)
  ADD ("start", NULL, test_start);
  ADD ("drawing/obstacles-and-stock", "halter-brook.slope.json", test_drawing);
  ADD ("drawing/mix-and-cost", "sallow-bank.slope.json", test_drawing);
  ADD ("drawing/replaced-values", "kelpie-lane.slope.json", test_drawing);
  ADD ("drawing/round-face", "cornice-ramp-nose.slope.json", test_drawing);
  ADD ("pop-ups", NULL, test_pop_ups);
  ADD ("dialogs", NULL, test_dialogs);
  ADD ("help", NULL, test_help);
  ADD ("preview", NULL, test_preview);
  ADD ("shortcuts", NULL, test_shortcuts);
  ADD ("key-letters", NULL, test_key_letters);
  return g_test_run ();
}
