/* SPDX-License-Identifier: MIT */
#undef G_DISABLE_ASSERT
#include <math.h>

#include "sw-canvas.h"
#include "sw-handle.h"
#include "sw-mark.h"

typedef struct
{
  SwStock *stock;
  SwDocument *document;
  SwStage *stage;
  GtkWidget *window;
  SwCanvas *canvas;
} Fixture;

static void
set_up (Fixture *f, gconstpointer view)
{
  GtkWidget *canvas = sw_canvas_new ((SwCanvasView) GPOINTER_TO_INT (view));

  f->stock = sw_stock_new (NULL);
  f->document = sw_document_new (f->stock->catalogue, NULL);
  f->stage = sw_stage_new (f->document, f->stock);
  f->canvas = SW_CANVAS (canvas);
  sw_canvas_set_stage (f->canvas, f->stage);
  f->window = gtk_window_new ();
  gtk_window_set_default_size (GTK_WINDOW (f->window), 640, 400);
  gtk_window_set_child (GTK_WINDOW (f->window), canvas);
  gtk_window_present (GTK_WINDOW (f->window));
  while (sw_canvas_px_per_m (f->canvas) <= 0.0)
    g_main_context_iteration (NULL, TRUE);
}

static void
tear_down (Fixture *f, gconstpointer view)
{
  SwCanvas *canvas = g_object_ref (f->canvas);

  gtk_window_destroy (GTK_WINDOW (f->window));
  while (g_main_context_iteration (NULL, FALSE))
    ;
  g_assert_finalize_object (canvas);
  g_assert_finalize_object (f->stage);
  g_assert_finalize_object (f->document);
  sw_stock_free (f->stock);
}

static GtkWidget *
handle_at (Fixture *f, guint index)
{
  GtkWidget *child = gtk_widget_get_first_child (GTK_WIDGET (f->canvas));

  for (guint i = 0; child != NULL && i < index; i++)
    child = gtk_widget_get_next_sibling (child);
  return child;
}

static const SwFace *
face_of (Fixture *f)
{
  return sw_stage_face (f->stage);
}

static void
test_handles_are_points (Fixture *f, gconstpointer view)
{
  g_assert_true (SW_IS_HANDLE (handle_at (f, 0)));
  g_assert_true (SW_IS_HANDLE (handle_at (f, 1)));
  g_assert_null (handle_at (f, 2)); /* the default section has two points */
  gtk_test_accessible_assert_role (GTK_ACCESSIBLE (f->canvas), GTK_ACCESSIBLE_ROLE_LIST);
  gtk_test_accessible_assert_role (GTK_ACCESSIBLE (handle_at (f, 0)),
                                   GTK_ACCESSIBLE_ROLE_LIST_ITEM);
  gtk_test_accessible_assert_property (GTK_ACCESSIBLE (handle_at (f, 1)),
                                       GTK_ACCESSIBLE_PROPERTY_LABEL,
                                       "Section point 2 of 2, toe");
  gtk_test_accessible_assert_property (GTK_ACCESSIBLE (handle_at (f, 1)),
                                       GTK_ACCESSIBLE_PROPERTY_DESCRIPTION,
                                       "10.00\u00a0m out, 0.00\u00a0m up");
}

/* A nudge moves by a round step, nudges of one point are one step, and Ctrl+Z takes it back. */
static void
test_nudges_merge (Fixture *f, gconstpointer view)
{
  double before_m = face_of (f)->section[1].x_m;

  for (int i = 0; i < 3; i++)
    gtk_widget_activate_action (handle_at (f, 1), "handle.nudge-right", NULL);
  g_assert_cmpfloat (face_of (f)->section[1].x_m, >, before_m);
  g_assert_cmpstr (sw_document_undo_label (f->document), ==, "Move Section Point 2");
  sw_document_undo (f->document);
  g_assert_cmpfloat (face_of (f)->section[1].x_m, ==, before_m);
  g_assert_false (sw_document_can_undo (f->document));
}

static void
test_up_is_up (Fixture *f, gconstpointer view)
{
  double before_m = face_of (f)->section[0].y_m;

  gtk_widget_activate_action (handle_at (f, 0), "handle.nudge-up", NULL);
  g_assert_cmpfloat (face_of (f)->section[0].y_m, >, before_m);
}

static void
test_out_is_down_in_plan (Fixture *f, gconstpointer view)
{
  double before_m = face_of (f)->outline[2].y_m;

  gtk_widget_activate_action (handle_at (f, 2), "handle.nudge-down", NULL);
  g_assert_cmpfloat (face_of (f)->outline[2].y_m, >, before_m);
}

static void
test_description_follows (Fixture *f, gconstpointer view)
{
  g_autoptr (SwJob) job = sw_points_move (sw_document_committed (f->document), 0,
                                          SW_POINTS_SECTION, 1, (SwPoint){ 12.5, -1.0 });

  sw_document_commit (f->document, job, "Move", NULL);
  gtk_test_accessible_assert_property (GTK_ACCESSIBLE (handle_at (f, 1)),
                                       GTK_ACCESSIBLE_PROPERTY_DESCRIPTION,
                                       "12.50\u00a0m out, \u22121.00\u00a0m up");
}

static void
test_add_and_remove (Fixture *f, gconstpointer view)
{
  gtk_widget_activate_action (handle_at (f, 0), "handle.add", NULL);
  g_assert_cmpuint (face_of (f)->n_section, ==, 3);
  g_assert_true (SW_IS_HANDLE (handle_at (f, 2)));
  gtk_widget_activate_action (handle_at (f, 1), "handle.remove", NULL);
  g_assert_cmpuint (face_of (f)->n_section, ==, 2);
  /* Two points stay, and the user is told. */
  gtk_widget_activate_action (handle_at (f, 1), "handle.remove", NULL);
  g_assert_cmpuint (face_of (f)->n_section, ==, 2);
  g_assert_cmpstr (sw_stage_message (f->stage), !=, "");
  /* What was said stands until the next step. */
  gtk_widget_activate_action (handle_at (f, 0), "handle.add", NULL);
  g_assert_cmpuint (face_of (f)->n_section, ==, 3);
  g_assert_cmpstr (sw_stage_message (f->stage), ==, "");
}

static void
test_point_popover (Fixture *f, gconstpointer view)
{
  gtk_widget_activate_action (handle_at (f, 1), "handle.edit", NULL);
  g_assert_cmpint (sw_stage_selected (f->stage, SW_POINTS_SECTION), ==, 1);
}

/* What a key types on a point begins its first number: 1 2 Enter moves the toe to 12 m. */
static void
test_typing_on_a_point (Fixture *f, gconstpointer view)
{
  GtkWidget *field;

  g_signal_emit_by_name (handle_at (f, 1), "type", "1");
  field = gtk_root_get_focus (GTK_ROOT (f->window));
  g_assert_true (GTK_IS_TEXT (field));
  g_assert_cmpstr (gtk_editable_get_text (GTK_EDITABLE (field)), ==, "1");
  g_assert_cmpint (gtk_editable_get_position (GTK_EDITABLE (field)), ==, 1);
  gtk_editable_set_text (GTK_EDITABLE (field), "12");
  g_signal_emit_by_name (field, "activate");
  g_assert_cmpfloat_with_epsilon (face_of (f)->section[1].x_m, 12.0, 1e-12);
  g_assert_true (gtk_root_get_focus (GTK_ROOT (f->window)) == handle_at (f, 1));
}

/* Zoomed out of fit, the view is left alone; fitted again, the face is in it. */
static void
test_fit (Fixture *f, gconstpointer view)
{
  double fitted = sw_canvas_px_per_m (f->canvas);

  sw_canvas_zoom (f->canvas, 4.0);
  g_assert_cmpfloat_with_epsilon (sw_canvas_px_per_m (f->canvas), 4.0 * fitted, 1e-9);
  sw_canvas_fit (f->canvas);
  g_assert_cmpfloat_with_epsilon (sw_canvas_px_per_m (f->canvas), fitted, 1e-9);
}

static void
test_too_far_out_comes_into_view (Fixture *f, gconstpointer view)
{
  g_autoptr (SwJob) job = sw_points_move (sw_document_committed (f->document), 0,
                                          SW_POINTS_SECTION, 1, (SwPoint){ 40.0, -10.0 });
  SwPoint px;

  sw_document_commit (f->document, job, "Move", NULL);
  px = sw_canvas_to_px (f->canvas, (SwPoint){ 40.0, -10.0 });
  g_assert_cmpfloat (px.x_m, <, gtk_widget_get_width (GTK_WIDGET (f->canvas)));
  g_assert_cmpfloat (px.y_m, <, gtk_widget_get_height (GTK_WIDGET (f->canvas)));
}

static gpointer
controller (Fixture *f, GType type)
{
  g_autoptr (GListModel) all = gtk_widget_observe_controllers (GTK_WIDGET (f->canvas));

  for (guint i = 0; i < g_list_model_get_n_items (all); i++)
    {
      g_autoptr (GtkEventController) one = g_list_model_get_item (all, i);
      guint button = GTK_IS_GESTURE_SINGLE (one)
                         ? gtk_gesture_single_get_button (GTK_GESTURE_SINGLE (one))
                         : 0;

      if (G_OBJECT_TYPE (one) == type && button == GDK_BUTTON_PRIMARY)
        return one;
    }
  return NULL;
}

/* The default slope, 20 m wide, round half a circle: seen from above it is a ring. */
static void
make_nose (Fixture *f)
{
  g_autoptr (SwJob) job = sw_job_copy (sw_document_committed (f->document));
  SwFace *face = g_ptr_array_index (job->faces, 0);

  face->crest_form = SW_CREST_NOSE;
  face->crest_radius_m = 20.0 / G_PI;
  sw_document_commit (f->document, job, "Round", NULL);
  for (int i = 0; i < 20; i++)
    g_main_context_iteration (NULL, FALSE);
}

static SwPoint
px_of (Fixture *f, double along_m, double out_m)
{
  return sw_canvas_to_px (f->canvas,
                          sw_plan_lay (face_of (f), (SwPoint){ along_m, out_m }));
}

/* The pointer follows the arc of the toe, and so does the point that it drags. */
static void
test_drag_round_a_nose (Fixture *f, gconstpointer view)
{
  GtkGesture *drag = controller (f, GTK_TYPE_GESTURE_DRAG);
  SwPoint from, to;

  make_nose (f);
  from = px_of (f, 20.0, 10.0);
  to = px_of (f, 16.0, 10.0);
  g_signal_emit_by_name (drag, "drag-begin", from.x_m, from.y_m);
  g_signal_emit_by_name (drag, "drag-update", to.x_m - from.x_m, to.y_m - from.y_m);
  g_signal_emit_by_name (drag, "drag-end", to.x_m - from.x_m, to.y_m - from.y_m);
  g_assert_cmpfloat_with_epsilon (face_of (f)->outline[2].x_m, 16.0, 1e-6);
  g_assert_cmpfloat_with_epsilon (face_of (f)->outline[2].y_m, 10.0, 1e-6);
  g_assert_cmpfloat_with_epsilon (face_of (f)->outline[1].x_m, 20.0, 1e-12);
}

/* A double click on the arc, far from its chord, puts a point there. */
static void
test_add_on_an_arc (Fixture *f, gconstpointer view)
{
  SwPoint at;

  make_nose (f);
  at = px_of (f, 10.0, 10.0);
  g_signal_emit_by_name (controller (f, GTK_TYPE_GESTURE_CLICK), "pressed", 2, at.x_m,
                         at.y_m);
  g_assert_cmpuint (face_of (f)->n_outline, ==, 5);
  g_assert_cmpfloat_with_epsilon (face_of (f)->outline[3].x_m, 10.0, 0.01);
  g_assert_cmpfloat_with_epsilon (face_of (f)->outline[3].y_m, 10.0, 0.05);
}

/* What cannot be laid out still shows, so that it can be mended. */
static void
test_bad_job_still_shows (Fixture *f, gconstpointer view)
{
  g_autoptr (SwJob) job = sw_points_move (sw_document_committed (f->document), 0,
                                          SW_POINTS_OUTLINE, 1, (SwPoint){ 10.0, 15.0 });

  sw_document_commit (f->document, job, "Cross", NULL);
  g_assert_cmpint (sw_document_result (f->document)->status, !=, SW_OK);
  for (int i = 0; i < 20; i++)
    g_main_context_iteration (NULL, FALSE);
  g_assert_true (SW_IS_HANDLE (handle_at (f, 0)));
}

/* By hand: 20 m in runs of 2.44 m that lap 0.10 m are 9 runs; a key trench, a toe trench. */
static void
test_runs_are_children (Fixture *f, gconstpointer view)
{
  GtkWidget *first = NULL;
  guint count = 0, offered = 0;

  for (GtkWidget *child = gtk_widget_get_first_child (GTK_WIDGET (f->canvas));
       child != NULL; child = gtk_widget_get_next_sibling (child))
    if (SW_IS_MARK (child))
      {
        first = first != NULL ? first : child;
        gtk_test_accessible_assert_role (child, GTK_ACCESSIBLE_ROLE_LIST_ITEM);
        offered += gtk_widget_get_focusable (child);
        count++;
      }
  g_assert_cmpuint (count, ==, 9 + 2);
  g_assert_cmpuint (offered, ==, 1); /* one stop for Tab, arrows from there */
  gtk_test_accessible_assert_property (first, GTK_ACCESSIBLE_PROPERTY_LABEL,
                                       "Run 1: cut 12.53\u00a0m, in 1 piece");
}

static void
test_arrows_step_through_runs (Fixture *f, gconstpointer view)
{
  GtkWidget *first = gtk_widget_get_first_child (GTK_WIDGET (f->canvas));

  gtk_widget_grab_focus (first);
  g_assert_cmpstr (sw_stage_marked (f->stage), ==, "A/run/0");
  g_signal_emit_by_name (first, "step", 1);
  g_assert_cmpstr (sw_stage_marked (f->stage), ==, "A/run/1");
  g_signal_emit_by_name (first, "step", G_MAXINT);
  g_assert_cmpstr (sw_stage_marked (f->stage), ==, "A/trench/1");
  g_assert_false (gtk_widget_get_focusable (first));
}

int
main (int argc, char *argv[])
{
  gtk_test_init (&argc, &argv, NULL);
#define ADD(path, view, function)                                                        \
  g_test_add ("/app/canvas/" path, Fixture, GINT_TO_POINTER (view), set_up, function,    \
              tear_down)
  ADD ("handles-are-points", SW_CANVAS_SECTION, test_handles_are_points);
  ADD ("nudges-merge", SW_CANVAS_SECTION, test_nudges_merge);
  ADD ("up-is-up", SW_CANVAS_SECTION, test_up_is_up);
  ADD ("out-is-down-in-plan", SW_CANVAS_PLAN, test_out_is_down_in_plan);
  ADD ("description-follows", SW_CANVAS_SECTION, test_description_follows);
  ADD ("add-and-remove", SW_CANVAS_SECTION, test_add_and_remove);
  ADD ("point-popover", SW_CANVAS_SECTION, test_point_popover);
  ADD ("typing-on-a-point", SW_CANVAS_SECTION, test_typing_on_a_point);
  ADD ("fit", SW_CANVAS_PLAN, test_fit);
  ADD ("too-far-out-comes-into-view", SW_CANVAS_SECTION,
       test_too_far_out_comes_into_view);
  ADD ("drag-round-a-nose", SW_CANVAS_PLAN, test_drag_round_a_nose);
  ADD ("add-on-an-arc", SW_CANVAS_PLAN, test_add_on_an_arc);
  ADD ("runs-are-children", SW_CANVAS_FACE_VIEW, test_runs_are_children);
  ADD ("arrows-step-through-runs", SW_CANVAS_FACE_VIEW, test_arrows_step_through_runs);
  ADD ("bad-job-still-shows/section", SW_CANVAS_SECTION, test_bad_job_still_shows);
  ADD ("bad-job-still-shows/plan", SW_CANVAS_PLAN, test_bad_job_still_shows);
#undef ADD
  return g_test_run ();
}
