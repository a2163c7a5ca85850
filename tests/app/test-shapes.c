/* SPDX-License-Identifier: MIT */
#undef G_DISABLE_ASSERT
#include "form-shape.h"
#include "sw-add-shape.h"
#include "sw-canvas.h"
#include "sw-handle.h"
#include "sw-list-bar.h"
#include "sw-point-table.h"
#include "sw-value-entry.h"

/* Obstacles, zones and sections as the window edits them. */

typedef struct
{
  SwStock *stock;
  SwDocument *document;
  SwStage *stage;
} Fixture;

static void
set_up (Fixture *f, gconstpointer data)
{
  f->stock = sw_stock_new (NULL);
  f->document = sw_document_new (f->stock->catalogue, NULL);
  f->stage = sw_stage_new (f->document, f->stock);
}

static void
tear_down (Fixture *f, gconstpointer data)
{
  g_assert_finalize_object (f->stage);
  g_assert_finalize_object (f->document);
  sw_stock_free (f->stock);
}

static void
type (GtkWidget *entry, const char *text)
{
  gtk_editable_set_text (GTK_EDITABLE (sw_value_entry_field (SW_VALUE_ENTRY (entry))),
                         text);
  g_assert_true (sw_value_entry_commit (SW_VALUE_ENTRY (entry)));
}

/* Through the popover, as a user types it; @kind as chosen first. */
static void
add_shape (Fixture *f, SwListKind kind, const char *along, const char *out,
           const char *width, const char *depth)
{
  GtkWidget *add = g_object_ref_sink (sw_add_shape_new (f->stage));

  sw_add_shape_begin (SW_ADD_SHAPE (add), kind, NULL);
  type (sw_add_shape_entry (SW_ADD_SHAPE (add), SW_SHAPE_ALONG), along);
  type (sw_add_shape_entry (SW_ADD_SHAPE (add), SW_SHAPE_OUT), out);
  type (sw_add_shape_entry (SW_ADD_SHAPE (add), SW_SHAPE_WIDTH), width);
  type (sw_add_shape_entry (SW_ADD_SHAPE (add), SW_SHAPE_DEPTH), depth);
  sw_add_shape_add (SW_ADD_SHAPE (add));
  g_object_unref (add);
}

/* What is asked for stays where it is when its numbers are read the other way. */
static void
test_taped_down_the_face (Fixture *f, gconstpointer data)
{
  SwAddShape *add = SW_ADD_SHAPE (g_object_ref_sink (sw_add_shape_new (f->stage)));
  const SwObstacle *box;

  sw_add_shape_begin (add, SW_LIST_OBSTACLE, NULL);
  gtk_drop_down_set_selected (sw_add_shape_taped (add), 1);
  type (sw_add_shape_entry (add, SW_SHAPE_OUT), "3 m");
  type (sw_add_shape_entry (add, SW_SHAPE_DEPTH), "2 m");
  sw_add_shape_add (add);
  box = g_ptr_array_index (sw_stage_face (f->stage)->obstacles, 0);
  g_assert_cmpfloat_with_epsilon (box->outline[2].y_m - box->outline[0].y_m, 1.788854,
                                  1e-6);
  g_object_unref (add);
}

static guint
handles_of (GtkWidget *canvas, const char *label)
{
  guint count = 0;

  for (GtkWidget *child = gtk_widget_get_first_child (canvas); child != NULL;
       child = gtk_widget_get_next_sibling (child))
    {
      g_autofree char *differs = NULL;

      if (!SW_IS_HANDLE (child))
        continue;
      differs = label == NULL
                    ? NULL
                    : gtk_test_accessible_check_property (
                        GTK_ACCESSIBLE (child), GTK_ACCESSIBLE_PROPERTY_LABEL, label);
      count += differs == NULL;
    }
  return count;
}

/* The default face is 20 m along and falls 5 m over 10 m: true area 20 x sqrt (125) =
 * 223.607 m2. 2 m by 1 m on plan are 2 x sqrt (5) / 2 = 2.236 m2 of slope. */
static void
test_obstacle_is_not_covered (Fixture *f, gconstpointer data)
{
  const SwResult *result;

  add_shape (f, SW_LIST_OBSTACLE, "10", "5", "2", "1");
  g_assert_cmpstr (sw_document_undo_label (f->document), ==, "Add Obstacle 1");
  result = sw_document_result (f->document);
  g_assert_cmpint (result->status, ==, SW_OK);
  g_assert_cmpfloat_with_epsilon (result->tally->areas.net_m2, 223.6068 - 2.2361, 1e-3);
  g_assert_cmpint (sw_stage_list (f->stage, FALSE).kind, ==, SW_LIST_OBSTACLE);
  g_assert_cmpstr (sw_stage_marked (f->stage), ==, "A/obstacle/1");
  sw_document_undo (f->document);
  g_assert_false (sw_document_can_undo (f->document));
  /* What was shown is gone: the outline is shown again. */
  g_assert_cmpint (sw_stage_list (f->stage, FALSE).kind, ==, SW_LIST_OUTLINE);
}

static void
test_nonsense_adds_nothing (Fixture *f, gconstpointer data)
{
  GtkWidget *add = g_object_ref_sink (sw_add_shape_new (f->stage));
  GtkWidget *width = sw_add_shape_entry (SW_ADD_SHAPE (add), SW_SHAPE_WIDTH);

  gtk_editable_set_text (GTK_EDITABLE (sw_value_entry_field (SW_VALUE_ENTRY (width))),
                         "two");
  sw_add_shape_add (SW_ADD_SHAPE (add));
  g_assert_false (sw_document_can_undo (f->document));
  g_object_unref (add);
}

static void
test_plan_shows_shapes (Fixture *f, gconstpointer data)
{
  GtkWidget *canvas = g_object_ref_sink (sw_canvas_new (SW_CANVAS_PLAN));

  sw_canvas_set_stage (SW_CANVAS (canvas), f->stage);
  g_assert_cmpuint (handles_of (canvas, NULL), ==, 4);
  add_shape (f, SW_LIST_OBSTACLE, "10", "5", "2", "1");
  /* Four corners of the outline, the whole, its own four corners while it is chosen. */
  g_assert_cmpuint (handles_of (canvas, NULL), ==, 9);
  g_assert_cmpuint (handles_of (canvas, "Obstacle 1"), ==, 1);
  g_assert_cmpuint (handles_of (canvas, "Obstacle 1, point 2 of 4"), ==, 1);
  sw_stage_select (f->stage, SW_POINTS_OUTLINE, 0);
  g_assert_cmpuint (handles_of (canvas, NULL), ==, 5);
  g_object_unref (canvas);
}

/* The whole is moved by keys in one step, and taken away by one. */
static void
test_whole_by_keys (Fixture *f, gconstpointer data)
{
  GtkWidget *window = gtk_window_new (), *canvas = sw_canvas_new (SW_CANVAS_PLAN), *whole;
  double before_m;

  sw_canvas_set_stage (SW_CANVAS (canvas), f->stage);
  gtk_window_set_default_size (GTK_WINDOW (window), 640, 400);
  gtk_window_set_child (GTK_WINDOW (window), canvas);
  gtk_window_present (GTK_WINDOW (window));
  while (sw_canvas_px_per_m (SW_CANVAS (canvas)) <= 0.0)
    g_main_context_iteration (NULL, TRUE);
  add_shape (f, SW_LIST_OBSTACLE, "10", "5", "2", "1");
  whole = gtk_widget_get_first_child (canvas);
  for (guint i = 0; i < 4; i++)
    whole = gtk_widget_get_next_sibling (whole);
  before_m = sw_points_get (sw_stage_face (f->stage),
                            (SwPointList){ SW_LIST_OBSTACLE, 0 }, SW_WHOLE)
                 .x_m;
  gtk_widget_activate_action (whole, "handle.nudge-right", NULL);
  gtk_widget_activate_action (whole, "handle.nudge-right", NULL);
  g_assert_cmpfloat (sw_points_get (sw_stage_face (f->stage),
                                    (SwPointList){ SW_LIST_OBSTACLE, 0 }, SW_WHOLE)
                         .x_m,
                     >, before_m);
  g_assert_cmpstr (sw_document_undo_label (f->document), ==, "Move Obstacle 1");
  sw_document_undo (f->document);
  g_assert_cmpstr (sw_document_undo_label (f->document), ==, "Add Obstacle 1");
  gtk_widget_activate_action (whole, "handle.remove", NULL);
  g_assert_cmpstr (sw_document_undo_label (f->document), ==, "Remove Obstacle 1");
  g_assert_cmpuint (sw_stage_face (f->stage)->obstacles->len, ==, 0);
  gtk_window_destroy (GTK_WINDOW (window));
}

/* A zone of another soil: its fields are in the form, and pins follow. */
static void
test_zone_fields (Fixture *f, gconstpointer data)
{
  GtkWidget *form;
  const SwZone *zone;

  add_shape (f, SW_LIST_ZONE, "15", "5", "10", "10");
  form = g_object_ref_sink (sw_form_new (f->stage, sw_zone_fields));
  zone = g_ptr_array_index (sw_stage_face (f->stage)->zones, 0);
  g_assert_cmpstr (zone->soil_id, ==, sw_stage_face (f->stage)->soil_id);
  gtk_drop_down_set_selected (GTK_DROP_DOWN (sw_form_control (SW_FORM (form), 1)), 0);
  zone = g_ptr_array_index (sw_stage_face (f->stage)->zones, 0);
  g_assert_cmpstr (zone->soil_id, ==,
                   ((SwSoil *) g_ptr_array_index (f->stock->catalogue->soils, 0))->id);
  gtk_switch_set_active (GTK_SWITCH (sw_form_control (SW_FORM (form), 2)), TRUE);
  zone = g_ptr_array_index (sw_stage_face (f->stage)->zones, 0);
  g_assert_true (zone->loose);
  type (sw_form_control (SW_FORM (form), 3), "120 mm");
  zone = g_ptr_array_index (sw_stage_face (f->stage)->zones, 0);
  g_assert_cmpfloat_with_epsilon (zone->topsoil_m, 0.12, 1e-9);
  /* Without the zone its form only stands there. */
  sw_stage_select (f->stage, SW_POINTS_OUTLINE, -1);
  g_assert_finalize_object (form);
}

/* The table has the points of what is chosen above it. */
static void
test_table_follows_the_choice (Fixture *f, gconstpointer data)
{
  GtkWidget *bar = g_object_ref_sink (sw_list_bar_new (f->stage, FALSE));
  GtkWidget *table =
      g_object_ref_sink (sw_point_table_new (f->stage, sw_canvas_kind (SW_CANVAS_PLAN)));
  GtkWidget *entry;

  add_shape (f, SW_LIST_OBSTACLE, "10", "5", "2", "1");
  entry = sw_point_table_entry (SW_POINT_TABLE (table), 0, TRUE);
  g_assert_cmpfloat_with_epsilon (sw_value_entry_value (SW_VALUE_ENTRY (entry)), 9.0,
                                  1e-9);
  type (entry, "8.5");
  g_assert_cmpstr (sw_document_undo_label (f->document), ==, "Move Obstacle Point 1");
  gtk_drop_down_set_selected (sw_list_bar_choice (SW_LIST_BAR (bar)), 0);
  g_assert_cmpint (sw_stage_list (f->stage, FALSE).kind, ==, SW_LIST_OUTLINE);
  g_assert_cmpfloat (sw_value_entry_value (SW_VALUE_ENTRY (entry)), ==, 0.0);
  g_assert_finalize_object (bar);
  g_assert_finalize_object (table);
}

/* A section elsewhere is shown, its points moved alone, itself moved along the crest. */
static void
test_section_elsewhere (Fixture *f, gconstpointer data)
{
  GtkWidget *bar = g_object_ref_sink (sw_list_bar_new (f->stage, TRUE));
  GtkWidget *table = g_object_ref_sink (
      sw_point_table_new (f->stage, sw_canvas_kind (SW_CANVAS_SECTION)));

  sw_list_bar_add_section (SW_LIST_BAR (bar), 20.0);
  g_assert_cmpstr (sw_document_undo_label (f->document), ==, "Add Section");
  g_assert_cmpuint (sw_stage_list (f->stage, TRUE).which, ==, 1);
  type (sw_point_table_entry (SW_POINT_TABLE (table), 1, TRUE), "12");
  g_assert_cmpfloat (sw_stage_face (f->stage)->further[0].section[1].x_m, ==, 12.0);
  g_assert_cmpfloat (sw_stage_face (f->stage)->section[1].x_m, ==, 10.0);
  type (sw_list_bar_along (SW_LIST_BAR (bar)), "18");
  g_assert_cmpfloat (sw_stage_face (f->stage)->further[0].along_m, ==, 18.0);
  /* A place that is taken is refused, and said so. */
  type (sw_list_bar_along (SW_LIST_BAR (bar)), "0");
  g_assert_cmpfloat (sw_stage_face (f->stage)->further[0].along_m, ==, 18.0);
  g_assert_cmpstr (sw_stage_message (f->stage), !=, "");
  g_assert_finalize_object (bar);
  g_assert_finalize_object (table);
}

int
main (int argc, char *argv[])
{
  gtk_test_init (&argc, &argv, NULL);
#define ADD(path, function)                                                              \
  g_test_add ("/app/shapes/" path, Fixture, NULL, set_up, function, tear_down)
  ADD ("taped-down-the-face", test_taped_down_the_face);
  ADD ("obstacle-is-not-covered", test_obstacle_is_not_covered);
  ADD ("nonsense-adds-nothing", test_nonsense_adds_nothing);
  ADD ("plan-shows-shapes", test_plan_shows_shapes);
  ADD ("whole-by-keys", test_whole_by_keys);
  ADD ("zone-fields", test_zone_fields);
  ADD ("table-follows-the-choice", test_table_follows_the_choice);
  ADD ("section-elsewhere", test_section_elsewhere);
#undef ADD
  return g_test_run ();
}
