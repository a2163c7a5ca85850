/* SPDX-License-Identifier: MIT */
/* Small screens and large text, in the language of LC_ALL: nothing is cut, and all that
 * gives way can still be reached. */
#undef G_DISABLE_ASSERT
#include <graphene.h>
#include <locale.h>

#include "language.h"
#include "sw-briefing.h"
#include "sw-fold.h"
#include "sw-form.h"
#include "sw-help-window.h"
#include "sw-measure-dialog.h"
#include "sw-practices-dialog.h"
#include "sw-preferences-window.h"
#include "sw-row-layout.h"
#include "sw-soil-dialog.h"
#include "sw-types-dialog.h"
#include "window-fixture.h"

typedef WindowFixture Fixture;

/* A screen in logical pixels, and the text on it. */
typedef struct
{
  const char *path;
  int width_px, height_px;
  const char *font;
} Screen;

static const Screen screens[] = {
  { "/app/narrow/960x540", 960, 540, "Sans 10" },
  { "/app/narrow/1024x600", 1024, 600, "Sans 10" },
  { "/app/narrow/1280x720", 1280, 720, "Sans 10" },
  { "/app/narrow/1366x768-double", 1366, 768, "Sans 20" },
};

static void
set_up (Fixture *f, gconstpointer data)
{
  const Screen *screen = data;

  g_object_set (gtk_settings_get_default (), "gtk-font-name", screen->font, NULL);
  window_fixture_set_up (f);
}

static void
tear_down (Fixture *f, gconstpointer data)
{
  window_fixture_tear_down (f);
  gtk_settings_reset_property (gtk_settings_get_default (), "gtk-font-name");
}

static GtkWidget *
child_of_type (GtkWidget *widget, GType type)
{
  GtkWidget *found = g_type_is_a (G_OBJECT_TYPE (widget), type) ? widget : NULL;

  for (GtkWidget *child = gtk_widget_get_first_child (widget);
       child != NULL && found == NULL; child = gtk_widget_get_next_sibling (child))
    found = child_of_type (child, type);
  return found;
}

static gboolean
is_scrolled (GtkWidget *widget)
{
  return gtk_widget_get_ancestor (widget, GTK_TYPE_VIEWPORT) != NULL;
}

/* Of the widget, or of what holds it. */
static const char *
tooltip_of (GtkWidget *widget)
{
  const char *tip = NULL;

  for (; widget != NULL && tip == NULL; widget = gtk_widget_get_parent (widget))
    tip = gtk_widget_get_tooltip_text (widget);
  return tip;
}

/* What is shortened has its words in a tooltip; a choice has them in its list. */
static void
expect_whole (GtkWidget *widget)
{
  const char *words;

  if (!GTK_IS_LABEL (widget)
      || gtk_widget_get_ancestor (widget, GTK_TYPE_DROP_DOWN) != NULL
      || !pango_layout_is_ellipsized (gtk_label_get_layout (GTK_LABEL (widget))))
    return;
  words = gtk_label_get_text (GTK_LABEL (widget));
  g_test_message ("%s", words);
  g_assert_nonnull (tooltip_of (widget));
  g_assert_nonnull (strstr (tooltip_of (widget), words));
}

#define ROUNDING_PX 1.0 /* what is centred may stand half a pixel out */


static void
expect_inside (GtkWidget *widget, GtkWidget *window)
{
  graphene_rect_t bounds;

  if (is_scrolled (widget))
    return;
  g_assert_true (gtk_widget_compute_bounds (widget, window, &bounds));
  if (GTK_IS_LABEL (widget))
    g_test_message ("%s", gtk_label_get_text (GTK_LABEL (widget)));
  g_assert_cmpfloat (bounds.origin.x, >=, -ROUNDING_PX);
  g_assert_cmpfloat (bounds.origin.y, >=, -ROUNDING_PX);
  g_assert_cmpfloat (bounds.origin.x + bounds.size.width, <=,
                     gtk_widget_get_width (window) + ROUNDING_PX);
  g_assert_cmpfloat (bounds.origin.y + bounds.size.height, <=,
                     gtk_widget_get_height (window) + ROUNDING_PX);
}

static void
expect_nothing_cut (GtkWidget *widget, GtkWidget *window)
{
  if (!gtk_widget_get_mapped (widget))
    return;
  if (GTK_IS_LABEL (widget) || GTK_IS_BUTTON (widget))
    expect_inside (widget, window);
  expect_whole (widget);
  for (GtkWidget *child = gtk_widget_get_first_child (widget); child != NULL;
       child = gtk_widget_get_next_sibling (child))
    if (!GTK_IS_POPOVER (child))
      expect_nothing_cut (child, window);
}

static void
expect_fits (GtkWidget *window, const Screen *screen)
{
  int least;

  gtk_widget_measure (window, GTK_ORIENTATION_HORIZONTAL, -1, &least, NULL, NULL, NULL);
  g_test_message ("needs a width of %d", least);
  g_assert_cmpint (least, <=, screen->width_px);
  gtk_widget_measure (window, GTK_ORIENTATION_VERTICAL, screen->width_px, &least, NULL,
                      NULL, NULL);
  g_test_message ("needs a height of %d", least);
  g_assert_cmpint (least, <=, screen->height_px);
  g_assert_cmpint (gtk_widget_get_width (window), <=, screen->width_px);
  g_assert_cmpint (gtk_widget_get_height (window), <=, screen->height_px);
  expect_nothing_cut (window, window);
}

static void
test_window (Fixture *f, gconstpointer data)
{
  static const char *const views[] = { "drawing", "pack" };
  const Screen *screen = data;
  GtkWidget *window = GTK_WIDGET (f->window);

  gtk_window_set_default_size (GTK_WINDOW (window), screen->width_px, screen->height_px);
  gtk_window_present (GTK_WINDOW (window));
  for (gsize i = 0; i < G_N_ELEMENTS (views); i++)
    {
      gtk_widget_activate_action (window, "win.show-view", "s", views[i]);
      for (int turn = 0; turn < 2; turn++) /* with the side and without it */
        {
          window_settle (window);
          expect_fits (window, screen);
          gtk_widget_activate_action (window, "win.side", NULL);
        }
    }
  sw_window_show_start (f->window);
  window_settle (window);
  expect_fits (window, screen);
}

/* Where there is no room for both, what is asked for is what is seen. */
static void
test_one_at_a_time (Fixture *f, gconstpointer data)
{
  const Screen *screen = data;
  GtkWidget *window = GTK_WIDGET (f->window);
  SwFold *fold = SW_FOLD (child_of_type (window, SW_TYPE_FOLD));
  GtkWidget *canvas = GTK_WIDGET (sw_window_canvas (f->window, SW_CANVAS_PLAN));
  GtkWidget *form = child_of_type (GTK_WIDGET (fold), SW_TYPE_FORM);

  gtk_window_set_default_size (GTK_WINDOW (window), screen->width_px, screen->height_px);
  gtk_window_present (GTK_WINDOW (window));
  window_settle (window);
  g_assert_true (sw_fold_is_folded (fold));
  g_assert_true (gtk_widget_get_mapped (canvas));
  gtk_widget_activate_action (window, "win.side", NULL);
  window_settle (window);
  g_assert_false (gtk_widget_get_mapped (canvas));
  g_assert_nonnull (form);
  g_assert_nonnull (gtk_root_get_focus (GTK_ROOT (window)));
  gtk_widget_activate_action (window, "win.show-alone", "s", "plan");
  window_settle (window);
  g_assert_true (gtk_widget_get_mapped (canvas));
  g_assert_false (sw_fold_side_shown (fold));
}

#define TITLE_BAR_PX 30 /* of a window manager, above a window that has none of its own */

/* All other windows need no more room than the screen has. */
static void
test_dialogs (Fixture *f, gconstpointer data)
{
  const Screen *screen = data;
  GtkWindow *window = GTK_WINDOW (f->window);
  GtkWidget *dialogs[] = {
    sw_measure_dialog_new (window, f->stage, SW_OBTAINED_TAPED_SHAPE),
    sw_soil_dialog_new (window, f->stage),
    sw_practices_dialog_new (window, f->stage),
    sw_types_dialog_new (window, f->stage),
    sw_preferences_window_new (window, f->preferences, f->stock),
    sw_help_window_new (f->stock, SW_UNITS_METRIC),
    sw_briefing_window_new (window, f->stage),
  };

  for (gsize i = 0; i < G_N_ELEMENTS (dialogs); i++)
    {
      int width, height;

      gtk_widget_measure (dialogs[i], GTK_ORIENTATION_HORIZONTAL, -1, &width, NULL, NULL,
                          NULL);
      gtk_widget_measure (dialogs[i], GTK_ORIENTATION_VERTICAL, width, &height, NULL,
                          NULL, NULL);
      g_test_message ("%s needs %d × %d", G_OBJECT_TYPE_NAME (dialogs[i]), width, height);
      g_assert_cmpint (width, <=, screen->width_px);
      g_assert_cmpint (height, <=, screen->height_px - TITLE_BAR_PX);
      gtk_window_destroy (GTK_WINDOW (dialogs[i]));
    }
}

static GtkWidget *
add_room (GtkWidget *row, int width_px, const char *property, guint number)
{
  GtkWidget *child = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 0);
  GtkLayoutManager *layout = gtk_widget_get_layout_manager (row);

  gtk_widget_set_size_request (child, width_px, 10);
  gtk_box_append (GTK_BOX (row), child);
  if (property != NULL)
    g_object_set (gtk_layout_manager_get_layout_child (layout, child), property, number,
                  NULL);
  return child;
}

/* By hand: 100 stays, 30 goes first, 50 second, and then 20 stands in. All three with two
 * gaps of 5 are 190; without the 30 they are 155; at 154 there are 100 + 5 + 20. */
static void
test_row (void)
{
  GtkWidget *row = g_object_ref_sink (gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 0));
  int least, natural;

  gtk_widget_set_layout_manager (row,
                                 g_object_new (SW_TYPE_ROW_LAYOUT, "spacing", 5, NULL));
  add_room (row, 100, NULL, 0);
  GtkWidget *first = add_room (row, 30, "gives-way", 1);
  GtkWidget *second = add_room (row, 50, "gives-way", 2);
  GtkWidget *menu = add_room (row, 20, "stands-in", 2);

  gtk_widget_measure (row, GTK_ORIENTATION_HORIZONTAL, -1, &least, &natural, NULL, NULL);
  g_assert_cmpint (least, ==, 125);
  g_assert_cmpint (natural, ==, 190);
  gtk_widget_size_allocate (row, &(GtkAllocation){ 0, 0, 190, 10 }, -1);
  g_assert_true (gtk_widget_get_child_visible (first));
  g_assert_false (gtk_widget_get_child_visible (menu));
  gtk_widget_size_allocate (row, &(GtkAllocation){ 0, 0, 155, 10 }, -1);
  g_assert_false (gtk_widget_get_child_visible (first));
  g_assert_true (gtk_widget_get_child_visible (second));
  g_assert_false (gtk_widget_get_child_visible (menu));
  gtk_widget_size_allocate (row, &(GtkAllocation){ 0, 0, 154, 10 }, -1);
  g_assert_false (gtk_widget_get_child_visible (second));
  g_assert_true (gtk_widget_get_child_visible (menu));
  g_assert_finalize_object (row);
}

static void
test_without_locale (void)
{
  g_test_skip ("the locale is not installed");
}

int
main (int argc, char *argv[])
{
  gtk_test_init (&argc, &argv, NULL);
  if (g_getenv ("LC_ALL") != NULL && setlocale (LC_ALL, "") == NULL)
    {
      g_test_add_func ("/app/narrow/without-locale", test_without_locale);
      return g_test_run ();
    }
  sw_language_begin ();
  static const Screen small = { NULL, 800, 540, "Sans 10" };
  g_test_add ("/app/narrow/one-at-a-time", Fixture, &small, set_up, test_one_at_a_time,
              tear_down);
  for (gsize i = 0; i < G_N_ELEMENTS (screens); i++)
    {
      g_autofree char *window = g_strconcat (screens[i].path, "/window", NULL);
      g_autofree char *dialogs = g_strconcat (screens[i].path, "/dialogs", NULL);

      g_test_add (window, Fixture, &screens[i], set_up, test_window, tear_down);
      g_test_add (dialogs, Fixture, &screens[i], set_up, test_dialogs, tear_down);
    }
  g_test_add_func ("/app/narrow/row", test_row);
  return g_test_run ();
}
