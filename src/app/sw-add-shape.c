/* SPDX-License-Identifier: MIT */
#include "sw-add-shape.h"

#include <glib/gi18n.h>

#include "choice.h"
#include "point-words.h"
#include "shape-edit.h"
#include "sw-value-entry.h"

#define FARTHEST_M 10000.0
#define LEAST_SIZE_M 0.02
#define FIRST_SIZE_M 1.0
#define FIRST_SIZE_US_M (3.0 * SW_M_PER_FT)

struct _SwAddShape
{
  GtkPopover parent_instance;
  SwStage *stage;
  GtkGrid *grid;
  GtkDropDown *what, *form, *taped;
  GtkWidget *labels[SW_SHAPE_FIELD_COUNT];
  SwValueEntry *entries[SW_SHAPE_FIELD_COUNT];
};

G_DEFINE_FINAL_TYPE (SwAddShape, sw_add_shape, GTK_TYPE_POPOVER)

static gboolean
is_round (SwAddShape *self)
{
  return gtk_drop_down_get_selected (self->form) == 1;
}

static gboolean
is_down_the_face (SwAddShape *self)
{
  return gtk_drop_down_get_selected (self->taped) == 1;
}

static gboolean
is_asked (SwAddShape *self, guint field)
{
  if (field == SW_SHAPE_RADIUS)
    return is_round (self);
  return field < SW_SHAPE_WIDTH || !is_round (self);
}

static void
show_fields (SwAddShape *self)
{
  for (guint i = 0; i < SW_SHAPE_FIELD_COUNT; i++)
    {
      gtk_widget_set_visible (self->labels[i], is_asked (self, i));
      gtk_widget_set_visible (GTK_WIDGET (self->entries[i]), is_asked (self, i));
    }
}

static void
name_field (SwAddShape *self, SwShapeField field, const char *name)
{
  gtk_label_set_text (GTK_LABEL (self->labels[field]), name);
  sw_value_entry_set_label (self->entries[field], name);
}

static void
name_fields (SwAddShape *self)
{
  gboolean down = is_down_the_face (self);

  name_field (self, SW_SHAPE_OUT, down ? _ ("Middle, down the face") : _ ("Middle, out"));
  name_field (self, SW_SHAPE_DEPTH,
              down ? _ ("Depth down the face") : _ ("Depth out, on plan"));
}

static gboolean
take_fields (SwAddShape *self)
{
  for (guint i = 0; i < SW_SHAPE_FIELD_COUNT; i++)
    if (is_asked (self, i) && !sw_value_entry_commit (self->entries[i]))
      {
        gtk_widget_grab_focus (GTK_WIDGET (self->entries[i]));
        return FALSE;
      }
  return TRUE;
}

static double
value (SwAddShape *self, SwShapeField field)
{
  return sw_value_entry_value (self->entries[field]);
}

/* What is asked for stays where it is; only its numbers are those of the other way. */
static void
on_taped (SwAddShape *self)
{
  const SwFace *face = sw_stage_face (self->stage);
  SwNumberStyle style = sw_stage_style (self->stage);
  SwPoint middle = { value (self, SW_SHAPE_ALONG), value (self, SW_SHAPE_OUT) };
  double depth_m = value (self, SW_SHAPE_DEPTH);

  name_fields (self);
  if (is_down_the_face (self) ? !sw_shape_to_face (face, &middle, &depth_m)
                              : !sw_shape_to_plan (face, &middle, &depth_m))
    return;
  sw_value_entry_set_value (self->entries[SW_SHAPE_OUT], middle.y_m, style);
  sw_value_entry_set_value (self->entries[SW_SHAPE_DEPTH], depth_m, style);
}

static guint
corners_asked (SwAddShape *self, SwPoint corners[SW_ROUND_CORNERS])
{
  const SwFace *face = sw_stage_face (self->stage);
  SwPoint middle = { value (self, SW_SHAPE_ALONG), value (self, SW_SHAPE_OUT) };
  double depth_m = is_round (self) ? 0.0 : value (self, SW_SHAPE_DEPTH);

  if (is_down_the_face (self) && !sw_shape_to_plan (face, &middle, &depth_m))
    return 0;
  if (is_round (self))
    {
      sw_shape_round (face, middle, value (self, SW_SHAPE_RADIUS), corners);
      return SW_ROUND_CORNERS;
    }
  sw_shape_rectangle (face, middle, value (self, SW_SHAPE_WIDTH), depth_m, corners);
  return 4;
}

void
sw_add_shape_add (SwAddShape *self)
{
  SwPoint corners[SW_ROUND_CORNERS];
  SwListKind kind =
      gtk_drop_down_get_selected (self->what) == 1 ? SW_LIST_ZONE : SW_LIST_OBSTACLE;
  guint face = sw_stage_face_index (self->stage);
  SwPointList added;

  if (!take_fields (self))
    return;
  guint count = corners_asked (self, corners);
  if (count == 0)
    return;
  g_autoptr (SwJob) job =
      sw_shapes_add (sw_document_committed (sw_stage_document (self->stage)), face, kind,
                     (SwRing){ corners, count }, &added);
  g_autofree char *label =
      sw_point_step (SW_STEP_ADD, g_ptr_array_index (job->faces, face), added, SW_WHOLE);
  gtk_popover_popdown (GTK_POPOVER (self));
  sw_document_commit (sw_stage_document (self->stage), job, label, NULL);
  sw_stage_select (self->stage, added, SW_WHOLE);
}

/* Enter in a field that makes sense is the button. */
static void
on_entered (SwAddShape *self)
{
  sw_add_shape_add (self);
}

void
sw_add_shape_begin (SwAddShape *self, SwListKind kind, const SwPoint *middle)
{
  SwBox box =
      sw_ring_box (sw_points_ring (sw_stage_face (self->stage), SW_POINTS_OUTLINE));
  SwNumberStyle style = sw_stage_style (self->stage);
  double size_m = style.units == SW_UNITS_US ? FIRST_SIZE_US_M : FIRST_SIZE_M;
  double values[SW_SHAPE_FIELD_COUNT] = {
    middle != NULL ? middle->x_m : (box.x0_m + box.x1_m) / 2.0,
    middle != NULL ? middle->y_m : (box.y0_m + box.y1_m) / 2.0, size_m, size_m,
    size_m / 2.0
  };

  gtk_drop_down_set_selected (self->what, kind == SW_LIST_ZONE ? 1 : 0);
  gtk_drop_down_set_selected (self->taped, 0);
  for (guint i = 0; i < SW_SHAPE_FIELD_COUNT; i++)
    {
      sw_value_entry_restore (self->entries[i]);
      sw_value_entry_set_value (self->entries[i], values[i], style);
    }
  show_fields (self);
}

static void
sw_add_shape_dispose (GObject *object)
{
  g_clear_object (&SW_ADD_SHAPE (object)->stage);
  G_OBJECT_CLASS (sw_add_shape_parent_class)->dispose (object);
}

static void
sw_add_shape_class_init (SwAddShapeClass *klass)
{
  G_OBJECT_CLASS (klass)->dispose = sw_add_shape_dispose;
}

static GtkDropDown *
add_choice (SwAddShape *self, int row, const char *label, const char *const *names)
{
  GtkWidget *choice = sw_choice_new (label);

  sw_choice_show (GTK_DROP_DOWN (choice), names, 0);
  gtk_widget_set_hexpand (choice, TRUE);
  gtk_grid_attach (self->grid, gtk_label_new (label), 0, row, 1, 1);
  gtk_label_set_xalign (GTK_LABEL (gtk_grid_get_child_at (self->grid, 0, row)), 0.0f);
  gtk_grid_attach (self->grid, choice, 1, row, 1, 1);
  return GTK_DROP_DOWN (choice);
}

static void
add_field (SwAddShape *self, SwShapeField field, int row, const char *name)
{
  GtkWidget *label = gtk_label_new (name);
  SwValueEntry *entry = SW_VALUE_ENTRY (sw_value_entry_new (SW_UNIT_M));
  gboolean place = field < SW_SHAPE_WIDTH;

  gtk_label_set_xalign (GTK_LABEL (label), 0.0f);
  sw_value_entry_set_label (entry, name);
  sw_value_entry_set_range (entry, place ? -FARTHEST_M : LEAST_SIZE_M, FARTHEST_M);
  g_signal_connect_swapped (sw_value_entry_field (entry), "activate",
                            G_CALLBACK (on_entered), self);
  gtk_grid_attach (self->grid, label, 0, row, 1, 1);
  gtk_grid_attach (self->grid, GTK_WIDGET (entry), 1, row, 1, 1);
  self->labels[field] = label;
  self->entries[field] = entry;
}

static void
sw_add_shape_init (SwAddShape *self)
{
  const char *const whats[] = { _ ("Obstacle, not covered"), _ ("Zone of another soil"),
                                NULL };
  const char *const forms[] = { C_ ("shape on plan", "Rectangle"),
                                C_ ("shape on plan", "Round"), NULL };
  GtkWidget *add = gtk_button_new_with_label (_ ("Add"));
  const char *const ways[] = { C_ ("shape on plan", "On plan"),
                               C_ ("shape on plan", "Down the face"), NULL };
  int row = 3;

  self->grid = GTK_GRID (gtk_grid_new ());
  gtk_grid_set_row_spacing (self->grid, 6);
  gtk_grid_set_column_spacing (self->grid, 12);
  self->what = add_choice (self, 0, C_ ("shape on plan", "What"), whats);
  self->form = add_choice (self, 1, C_ ("shape on plan", "Form"), forms);
  self->taped = add_choice (self, 2, C_ ("shape on plan", "Measured"), ways);
  add_field (self, SW_SHAPE_ALONG, row++, _ ("Middle, along"));
  add_field (self, SW_SHAPE_OUT, row++, _ ("Middle, out"));
  add_field (self, SW_SHAPE_WIDTH, row++, _ ("Width along"));
  add_field (self, SW_SHAPE_DEPTH, row++, _ ("Depth out, on plan"));
  add_field (self, SW_SHAPE_RADIUS, row++, _ ("Radius"));
  gtk_widget_add_css_class (add, "suggested-action");
  g_signal_connect_swapped (add, "clicked", G_CALLBACK (sw_add_shape_add), self);
  g_signal_connect_swapped (self->form, "notify::selected", G_CALLBACK (show_fields),
                            self);
  g_signal_connect_swapped (self->taped, "notify::selected", G_CALLBACK (on_taped), self);
  gtk_grid_attach (self->grid, add, 0, row, 2, 1);
  gtk_popover_set_child (GTK_POPOVER (self), GTK_WIDGET (self->grid));
}

GtkWidget *
sw_add_shape_new (SwStage *stage)
{
  SwAddShape *self = g_object_new (SW_TYPE_ADD_SHAPE, NULL);

  self->stage = g_object_ref (stage);
  sw_add_shape_begin (self, SW_LIST_OBSTACLE, NULL);
  return GTK_WIDGET (self);
}

GtkWidget *
sw_add_shape_entry (SwAddShape *self, SwShapeField field)
{
  return GTK_WIDGET (self->entries[field]);
}

GtkDropDown *
sw_add_shape_form (SwAddShape *self)
{
  return self->form;
}

GtkDropDown *
sw_add_shape_taped (SwAddShape *self)
{
  return self->taped;
}
