/* SPDX-License-Identifier: MIT */
#include "sw-canvas-private.h"

#include <glib/gi18n.h>
#include <math.h>

static const SwJob *
committed (SwCanvas *self)
{
  return sw_document_committed (sw_stage_document (self->stage));
}

const SwFace *
sw_canvas_committed_face (SwCanvas *self)
{
  return g_ptr_array_index (committed (self)->faces, sw_stage_face_index (self->stage));
}

static char *
point_step (SwCanvas *self, const char *section, const char *outline, guint index)
{
  const char *format = self->kind->list == SW_POINTS_SECTION ? section : outline;

  return g_strdup_printf ("%s %u", format, index + 1);
}

char *
sw_canvas_move_label (SwCanvas *self, guint index)
{
  return point_step (self, _ ("Move Section Point"), _ ("Move Outline Point"), index);
}

SwJob *
sw_canvas_moved_to (SwCanvas *self, guint index, SwPoint wish)
{
  const SwFace *face = sw_canvas_committed_face (self);
  SwPoint to = sw_points_allowed (face, self->kind->list, index, wish);

  return sw_points_move (committed (self), sw_stage_face_index (self->stage),
                         self->kind->list, index, to);
}

void
sw_canvas_nudge (SwCanvas *self, guint index, double dx, double dy)
{
  double step_m = sw_canvas_step_m (self);
  SwPoint to = sw_points_get (sw_canvas_committed_face (self), self->kind->list, index);
  g_autofree char *label = sw_canvas_move_label (self, index);
  g_autofree char *key = g_strdup_printf ("%s-%u", self->kind->code, index);

  to.x_m += dx * step_m;
  to.y_m += dy * step_m * (self->kind->y_up ? -1.0 : 1.0);
  if (fabs (dx) + fabs (dy) >= 1.0) /* a tenth of a step leaves the grid */
    {
      SwPoint snapped = sw_viewport_snap (to, step_m);
      to.x_m = dx > 0.0 || dx < 0.0 ? snapped.x_m : to.x_m;
      to.y_m = dy > 0.0 || dy < 0.0 ? snapped.y_m : to.y_m;
    }
  g_autoptr (SwJob) job = sw_canvas_moved_to (self, index, to);
  sw_document_commit (sw_stage_document (self->stage), job, label, key);
}

void
sw_canvas_edit_point (SwCanvas *self, guint index)
{
  SwPoint px =
      sw_viewport_to_px (&self->viewport, sw_points_get (sw_stage_face (self->stage),
                                                         self->kind->list, index));
  GdkRectangle at = { (int) px.x_m - 4, (int) px.y_m - 4, 8, 8 };

  if (self->popover == NULL)
    {
      self->popover = sw_point_popover_new (self->stage, self->kind);
      gtk_widget_set_parent (self->popover, GTK_WIDGET (self));
    }
  sw_stage_select (self->stage, self->kind->list, (int) index);
  sw_point_popover_open (SW_POINT_POPOVER (self->popover), index, at);
}

void
sw_canvas_add_point (SwCanvas *self, guint after, const SwPoint *at)
{
  SwPoint place = at != NULL ? *at
                             : sw_points_between (sw_canvas_committed_face (self),
                                                  self->kind->list, after);
  g_autofree char *label =
      point_step (self, _ ("Add Section Point"), _ ("Add Outline Point"), after + 1);
  g_autoptr (SwJob) job =
      sw_points_add (committed (self), sw_stage_face_index (self->stage),
                     self->kind->list, after, place);

  sw_document_commit (sw_stage_document (self->stage), job, label, NULL);
  sw_canvas_focus_point (self, after + 1);
}

void
sw_canvas_remove_point (SwCanvas *self, guint index)
{
  g_autofree char *label =
      point_step (self, _ ("Remove Section Point"), _ ("Remove Outline Point"), index);
  g_autoptr (SwJob) job = sw_points_remove (
      committed (self), sw_stage_face_index (self->stage), self->kind->list, index);

  if (job == NULL)
    {
      sw_stage_tell (self->stage, self->kind->list == SW_POINTS_SECTION
                                      ? _ ("A section keeps at least two points.")
                                      : _ ("An outline keeps at least three points."));
      return;
    }
  sw_document_commit (sw_stage_document (self->stage), job, label, NULL);
  sw_canvas_focus_point (self, index > 0 ? index - 1 : 0);
}
