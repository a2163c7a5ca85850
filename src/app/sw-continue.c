/* SPDX-License-Identifier: MIT */
#include "sw-continue.h"

#include <glib/gi18n.h>
#include <math.h>

#include "choice.h"
#include "sw-value-entry.h"

#define FARTHEST_M 10000.0
#define FIRST_LENGTH_M 5.0
#define FIRST_HV 2.0

/* A fall of less than this has no length on plan worth the name. */
#define LEAST_FALL_RAD 1e-4

enum
{
  MEASURED_TRUE,
  MEASURED_PLAN,
  MEASURED_FALL
};

enum
{
  WAY_DOWN,
  WAY_UP
};

struct _SwContinue
{
  GtkPopover parent_instance;
  SwStage *stage;
  GtkGrid *grid;
  SwValueEntry *gradient, *length;
  GtkDropDown *measured, *way;
};

G_DEFINE_FINAL_TYPE (SwContinue, sw_continue, GTK_TYPE_POPOVER)

/* FALSE: a level line has no fall to measure by. */
static gboolean
run_and_rise (SwContinue *self, double *run_m, double *rise_m)
{
  double angle_rad = sw_value_entry_value (self->gradient);
  double length_m = sw_value_entry_value (self->length);
  guint measured = gtk_drop_down_get_selected (self->measured);

  if (measured == MEASURED_FALL && angle_rad < LEAST_FALL_RAD)
    return FALSE;
  *run_m = measured == MEASURED_TRUE   ? length_m * cos (angle_rad)
           : measured == MEASURED_PLAN ? length_m
                                       : length_m / tan (angle_rad);
  *rise_m = *run_m * tan (angle_rad);
  if (gtk_drop_down_get_selected (self->way) == WAY_DOWN)
    *rise_m = -*rise_m;
  return TRUE;
}

void
sw_continue_add (SwContinue *self)
{
  SwDocument *document = sw_stage_document (self->stage);
  SwPointList list = sw_stage_list (self->stage, TRUE);
  double run_m, rise_m;

  if (!sw_value_entry_commit (self->gradient) || !sw_value_entry_commit (self->length))
    return;
  if (!run_and_rise (self, &run_m, &rise_m) || run_m < SW_POINT_GAP_M)
    {
      sw_stage_tell (self->stage, _ ("That leads to no further point: it must lie "
                                     "farther out than the last one."));
      return;
    }
  g_autoptr (SwJob) job =
      sw_points_continue (sw_document_committed (document),
                          sw_stage_face_index (self->stage), list, run_m, rise_m);
  sw_document_commit (document, job, _ ("Continue Section"), NULL);
  sw_stage_select (self->stage, list,
                   (int) sw_points_count (sw_stage_face (self->stage), list) - 1);
}

static void
sw_continue_dispose (GObject *object)
{
  g_clear_object (&SW_CONTINUE (object)->stage);
  G_OBJECT_CLASS (sw_continue_parent_class)->dispose (object);
}

static void
sw_continue_class_init (SwContinueClass *klass)
{
  G_OBJECT_CLASS (klass)->dispose = sw_continue_dispose;
}

static void
attach (SwContinue *self, int row, const char *name, GtkWidget *field)
{
  GtkWidget *label = gtk_label_new (name);

  gtk_label_set_xalign (GTK_LABEL (label), 0.0f);
  gtk_widget_set_hexpand (field, TRUE);
  gtk_grid_attach (self->grid, label, 0, row, 1, 1);
  gtk_grid_attach (self->grid, field, 1, row, 1, 1);
}

static SwValueEntry *
add_entry (SwContinue *self, int row, const char *name, SwUnit unit, double least,
           double most)
{
  SwValueEntry *entry = SW_VALUE_ENTRY (sw_value_entry_new (unit));

  sw_value_entry_set_label (entry, name);
  sw_value_entry_set_range (entry, least, most);
  g_signal_connect_swapped (sw_value_entry_field (entry), "activate",
                            G_CALLBACK (sw_continue_add), self);
  attach (self, row, name, GTK_WIDGET (entry));
  return entry;
}

static GtkDropDown *
add_choice (SwContinue *self, int row, const char *name, const char *const *names)
{
  GtkWidget *choice = sw_choice_new (name);

  sw_choice_show (GTK_DROP_DOWN (choice), names, 0);
  attach (self, row, name, choice);
  return GTK_DROP_DOWN (choice);
}

static void
sw_continue_init (SwContinue *self)
{
  const char *const ways[] = { C_ ("way along a section", "Down"),
                               C_ ("way along a section", "Up"), NULL };
  const char *const measured[] = { _ ("Along the ground"), _ ("On plan"), _ ("As height"),
                                   NULL };
  GtkWidget *add = gtk_button_new_with_label (_ ("Add Point"));
  GtkWidget *hint = gtk_label_new (_ ("From the last point on; a toe there goes along."));

  self->grid = GTK_GRID (gtk_grid_new ());
  gtk_grid_set_row_spacing (self->grid, 6);
  gtk_grid_set_column_spacing (self->grid, 12);
  self->gradient =
      add_entry (self, 0, _ ("Gradient"), SW_UNIT_RAD, 0.0, G_PI / 2.0 - 0.01);
  self->way = add_choice (self, 1, C_ ("way along a section", "Goes"), ways);
  self->length = add_entry (self, 2, _ ("Length"), SW_UNIT_M, SW_POINT_GAP_M, FARTHEST_M);
  self->measured = add_choice (self, 3, C_ ("length", "Measured"), measured);
  gtk_widget_add_css_class (hint, "dim-label");
  gtk_label_set_xalign (GTK_LABEL (hint), 0.0f);
  gtk_grid_attach (self->grid, hint, 0, 4, 2, 1);
  gtk_widget_add_css_class (add, "suggested-action");
  g_signal_connect_swapped (add, "clicked", G_CALLBACK (sw_continue_add), self);
  gtk_grid_attach (self->grid, add, 0, 5, 2, 1);
  gtk_popover_set_child (GTK_POPOVER (self), GTK_WIDGET (self->grid));
}

static void
show_values (SwContinue *self)
{
  SwNumberStyle style = sw_stage_style (self->stage);

  sw_value_entry_set_value (self->gradient, sw_value_entry_value (self->gradient), style);
  sw_value_entry_set_value (self->length, sw_value_entry_value (self->length), style);
}

GtkWidget *
sw_continue_new (SwStage *stage)
{
  SwContinue *self = g_object_new (SW_TYPE_CONTINUE, NULL);
  SwNumberStyle style = sw_stage_style (stage);

  self->stage = g_object_ref (stage);
  sw_value_entry_set_value (self->gradient, atan (1.0 / FIRST_HV), style);
  sw_value_entry_set_value (self->length, FIRST_LENGTH_M, style);
  g_signal_connect_swapped (self, "show", G_CALLBACK (show_values), self);
  return GTK_WIDGET (self);
}

GtkWidget *
sw_continue_gradient (SwContinue *self)
{
  return GTK_WIDGET (self->gradient);
}

GtkWidget *
sw_continue_length (SwContinue *self)
{
  return GTK_WIDGET (self->length);
}

GtkDropDown *
sw_continue_measured (SwContinue *self)
{
  return self->measured;
}
