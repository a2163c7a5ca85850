/* SPDX-License-Identifier: MIT */
#include "sw-point-popover.h"

#include <glib/gi18n.h>
#include <math.h>

#include "point-words.h"
#include "shape-edit.h"
#include "sw-value-entry.h"

/* Sites are shorter than this; a slip of a unit is caught. */
#define FARTHEST_M 10000.0

struct _SwPointPopover
{
  GtkPopover parent_instance;
  SwStage *stage;
  const SwCanvasKind *kind;
  SwPointList list;
  int index;
  GtkLabel *title;
  SwValueEntry *x, *y;
  GtkWidget *add, *remove;
};

G_DEFINE_FINAL_TYPE (SwPointPopover, sw_point_popover, GTK_TYPE_POPOVER)

void
sw_point_limits (const SwFace *face, SwPointList list, int index, double *least_m,
                 double *most_m)
{
  *least_m = -FARTHEST_M;
  *most_m = FARTHEST_M;
  if (list.kind != SW_LIST_SECTION)
    return;
  *least_m = sw_points_allowed (face, list, index, (SwPoint){ *least_m, 0.0 }).x_m;
  *most_m = sw_points_allowed (face, list, index, (SwPoint){ *most_m, 0.0 }).x_m;
}

void
sw_point_type (SwStage *stage, SwPointList list, int index, gboolean is_x, double value_m)
{
  SwDocument *document = sw_stage_document (stage);
  const SwJob *job = sw_document_committed (document);
  guint face = sw_stage_face_index (stage);
  const SwFace *now = g_ptr_array_index (job->faces, face);

  if (!sw_points_exist (now, list)
      || index >= (int) sw_points_count (now, list)) /* taken away while it was typed */
    return;
  SwPoint to = sw_points_get (now, list, index);
  g_autofree char *label = sw_point_step (SW_STEP_MOVE, now, list, index);

  if (is_x)
    to.x_m = value_m;
  else
    to.y_m = value_m;
  g_autoptr (SwJob) moved = sw_points_move (job, face, list, index, to);
  sw_document_commit (document, moved, label, NULL);
}

static void
on_x (SwPointPopover *self, double value_m)
{
  sw_point_type (self->stage, self->list, self->index, TRUE, value_m);
}

static void
on_y (SwPointPopover *self, double value_m)
{
  sw_point_type (self->stage, self->list, self->index, FALSE, value_m);
}

static void
refresh (SwPointPopover *self)
{
  const SwFace *face = sw_stage_face (self->stage);
  SwNumberStyle style = sw_stage_style (self->stage);
  double least_m, most_m;

  if (!sw_points_exist (face, self->list)
      || self->index >= (int) sw_points_count (face, self->list))
    {
      gtk_popover_popdown (GTK_POPOVER (self));
      return;
    }
  SwPoint p = sw_points_get (face, self->list, self->index);
  g_autofree char *title = sw_point_label (face, self->list, self->index);

  gtk_label_set_text (self->title, title);
  sw_point_limits (face, self->list, self->index, &least_m, &most_m);
  sw_value_entry_set_range (self->x, least_m, most_m);
  sw_value_entry_set_range (self->y, -FARTHEST_M, FARTHEST_M);
  sw_value_entry_set_value (self->x, p.x_m, style);
  sw_value_entry_set_value (self->y, p.y_m, style);
  gtk_widget_set_sensitive (self->remove, self->index == SW_WHOLE
                                              || sw_points_can_remove (face, self->list));
  gtk_widget_set_visible (self->add, self->index != SW_WHOLE);
}

/* Enter in a field that makes sense finishes: back to the drawing. */
static void
on_entered (SwPointPopover *self)
{
  if (!sw_value_entry_is_edited (self->x) && !sw_value_entry_is_edited (self->y))
    gtk_popover_popdown (GTK_POPOVER (self));
}

static void
on_add (SwPointPopover *self)
{
  const SwFace *face = sw_stage_face (self->stage);
  SwPoint at = sw_points_between (face, self->list, self->index);
  g_autofree char *label = sw_point_step (SW_STEP_ADD, face, self->list, self->index + 1);
  g_autoptr (SwJob) job =
      sw_points_add (sw_document_committed (sw_stage_document (self->stage)),
                     sw_stage_face_index (self->stage), self->list, self->index, at);

  gtk_popover_popdown (GTK_POPOVER (self));
  sw_document_commit (sw_stage_document (self->stage), job, label, NULL);
}

static void
on_remove (SwPointPopover *self)
{
  const SwJob *job = sw_document_committed (sw_stage_document (self->stage));
  guint face = sw_stage_face_index (self->stage);
  g_autofree char *label = sw_point_step (SW_STEP_REMOVE, sw_stage_face (self->stage),
                                          self->list, self->index);
  g_autoptr (SwJob) less = self->index == SW_WHOLE
                               ? sw_shapes_remove (job, face, self->list)
                               : sw_points_remove (job, face, self->list, self->index);

  gtk_popover_popdown (GTK_POPOVER (self));
  if (less != NULL)
    sw_document_commit (sw_stage_document (self->stage), less, label, NULL);
}

static void
sw_point_popover_dispose (GObject *object)
{
  g_clear_object (&SW_POINT_POPOVER (object)->stage);
  G_OBJECT_CLASS (sw_point_popover_parent_class)->dispose (object);
}

static void
sw_point_popover_class_init (SwPointPopoverClass *klass)
{
  G_OBJECT_CLASS (klass)->dispose = sw_point_popover_dispose;
}

static void
sw_point_popover_init (SwPointPopover *self)
{
}

static SwValueEntry *
add_field (SwPointPopover *self, GtkGrid *grid, int row, const char *name)
{
  GtkWidget *label = gtk_label_new (name);
  GtkWidget *entry = sw_value_entry_new (SW_UNIT_M);

  gtk_label_set_xalign (GTK_LABEL (label), 0.0f);
  sw_value_entry_set_label (SW_VALUE_ENTRY (entry), name);
  g_signal_connect_swapped (sw_value_entry_field (SW_VALUE_ENTRY (entry)), "activate",
                            G_CALLBACK (on_entered), self);
  gtk_grid_attach (grid, label, 0, row, 1, 1);
  gtk_grid_attach (grid, entry, 1, row, 1, 1);
  return SW_VALUE_ENTRY (entry);
}

static GtkWidget *
add_button (SwPointPopover *self, GtkGrid *grid, int column, const char *label,
            GCallback callback)
{
  GtkWidget *button = gtk_button_new_with_label (label);

  g_signal_connect_swapped (button, "clicked", callback, self);
  gtk_grid_attach (grid, button, column, 3, 1, 1);
  return button;
}

GtkWidget *
sw_point_popover_new (SwStage *stage, const SwCanvasKind *kind)
{
  SwPointPopover *self = g_object_new (SW_TYPE_POINT_POPOVER, NULL);
  GtkGrid *grid = GTK_GRID (gtk_grid_new ());

  self->stage = g_object_ref (stage);
  self->kind = kind;
  gtk_grid_set_row_spacing (grid, 6);
  gtk_grid_set_column_spacing (grid, 6);
  self->title = GTK_LABEL (gtk_label_new (NULL));
  gtk_widget_add_css_class (GTK_WIDGET (self->title), "heading");
  gtk_grid_attach (grid, GTK_WIDGET (self->title), 0, 0, 2, 1);
  self->x = add_field (self, grid, 1, sw_canvas_kind_coordinate (kind->x_label));
  self->y = add_field (self, grid, 2, sw_canvas_kind_coordinate (kind->y_label));
  self->add = add_button (self, grid, 0, _ ("Add After"), G_CALLBACK (on_add));
  self->remove = add_button (self, grid, 1, _ ("Remove"), G_CALLBACK (on_remove));
  gtk_popover_set_child (GTK_POPOVER (self), GTK_WIDGET (grid));
  g_signal_connect_swapped (self->x, "committed", G_CALLBACK (on_x), self);
  g_signal_connect_swapped (self->y, "committed", G_CALLBACK (on_y), self);
  g_signal_connect_object (stage, "changed", G_CALLBACK (refresh), self,
                           G_CONNECT_SWAPPED);
  return GTK_WIDGET (self);
}

void
sw_point_popover_open (SwPointPopover *self, SwPointList list, int index, GdkRectangle at)
{
  self->list = list;
  self->index = index;
  sw_value_entry_restore (self->x);
  sw_value_entry_restore (self->y);
  refresh (self);
  gtk_popover_set_pointing_to (GTK_POPOVER (self), &at);
  gtk_popover_popup (GTK_POPOVER (self));
  gtk_widget_grab_focus (GTK_WIDGET (self->x));
}

void
sw_point_popover_type (SwPointPopover *self, const char *typed)
{
  GtkEditable *field = GTK_EDITABLE (sw_value_entry_field (self->x));

  gtk_editable_set_text (field, typed);
  gtk_editable_set_position (field, -1);
}
