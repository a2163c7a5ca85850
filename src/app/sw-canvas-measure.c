/* SPDX-License-Identifier: MIT */
#include "sw-canvas-private.h"

#include <glib/gi18n.h>

#include "canvas-paint.h"
#include "measured-line.h"

gboolean
sw_canvas_is_measuring (SwCanvas *self)
{
  return self->measuring;
}

void
sw_canvas_set_measuring (SwCanvas *self, gboolean measuring)
{
  if (measuring == self->measuring)
    return;
  if (!measuring && self->n_measured < 2) /* what was asked for is not wanted any more */
    sw_stage_tell (self->stage, "");
  self->measuring = measuring;
  self->n_measured = 0;
  gtk_widget_set_cursor_from_name (GTK_WIDGET (self), measuring ? "crosshair" : NULL);
  if (measuring)
    {
      gtk_widget_grab_focus (GTK_WIDGET (self));
      sw_stage_tell (self->stage, _ ("Measure: click two places; M on a point takes it; "
                                     "Escape ends."));
    }
  gtk_widget_queue_draw (GTK_WIDGET (self));
}

static SwPoint
to_plan (SwCanvas *self, SwPoint world)
{
  return sw_canvas_kind_to_plan (self->kind, sw_stage_result (self->stage),
                                 sw_stage_face_index (self->stage), world);
}

static SwMeasuredLine
line_to (SwCanvas *self, SwPoint end)
{
  SwPoint from = self->measured[0];

  if (self->kind->y_up)
    return sw_line_in_section (from, end);
  return sw_line_on_face (sw_stage_result (self->stage),
                          sw_stage_face_index (self->stage), to_plan (self, from),
                          to_plan (self, end));
}

static void
tell_line (SwCanvas *self, SwPoint end)
{
  g_autofree char *words =
      sw_line_text (line_to (self, end), sw_stage_style (self->stage));

  sw_stage_tell (self->stage, words);
}

void
sw_canvas_measure_at (SwCanvas *self, SwPoint world)
{
  self->measuring = TRUE;
  self->n_measured = self->n_measured % 2 + 1;
  self->measured[self->n_measured - 1] = self->measured[1] = world;
  if (self->n_measured == 2)
    tell_line (self, world);
  else
    sw_stage_tell (self->stage, _ ("Measure: now the second place."));
  gtk_widget_queue_draw (GTK_WIDGET (self));
}

void
sw_canvas_measure_towards (SwCanvas *self, SwPoint world)
{
  if (!self->measuring || self->n_measured != 1)
    return;
  self->measured[1] = world;
  tell_line (self, world);
  gtk_widget_queue_draw (GTK_WIDGET (self));
}

SwPoint
sw_canvas_place_under (SwCanvas *self, SwPoint px)
{
  int spot = sw_canvas_spot_under (self, px, SW_CANVAS_GRAB_PX);

  if (spot >= 0 && sw_canvas_spot (self, (guint) spot).index != SW_WHOLE)
    px = sw_canvas_spot_px (self, sw_canvas_spot (self, (guint) spot));
  return sw_viewport_to_world (&self->viewport, px);
}

void
sw_canvas_paint_measured (SwCanvas *self, SwCanvasPaint *paint)
{
  if (!self->measuring || self->n_measured == 0)
    return;
  sw_canvas_paint_tape (paint, sw_viewport_to_px (&self->viewport, self->measured[0]),
                        sw_viewport_to_px (&self->viewport, self->measured[1]));
}
