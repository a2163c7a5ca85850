/* SPDX-License-Identifier: MIT */
#include "mark-words.h"
#include "sw-canvas-private.h"
#include "sw-mark.h"

/* Runs and trenches of the face view: one child each, of which the keyboard reaches one,
 * and from it the others. */

/* Smaller ones would have no outline to see. */
#define LEAST_PX 4.0

static SwMark *
mark_at (SwCanvas *self, guint index)
{
  return g_ptr_array_index (self->marks, index);
}

/* The one that Tab comes to. */
static void
offer (SwCanvas *self, guint index)
{
  for (guint i = 0; i < self->marks->len; i++)
    gtk_widget_set_focusable (GTK_WIDGET (mark_at (self, i)), i == index);
}

static void
on_step (SwMark *mark, int step, SwCanvas *self)
{
  gint64 last = (gint64) self->marks->len - 1;
  guint index = 0;

  g_ptr_array_find (self->marks, mark, &index);
  index = (guint) CLAMP ((gint64) index + step, 0, last);
  gtk_widget_set_focusable (GTK_WIDGET (mark_at (self, index)), TRUE);
  gtk_widget_grab_focus (GTK_WIDGET (mark_at (self, index)));
  offer (self, index);
}

static void
on_focused (GtkEventController *controller, SwCanvas *self)
{
  sw_stage_mark (self->stage,
                 sw_mark_object (SW_MARK (gtk_event_controller_get_widget (controller))));
}

static SwMark *
make_mark (SwCanvas *self)
{
  GtkWidget *mark = sw_mark_new ();
  GtkEventController *focus = gtk_event_controller_focus_new ();

  g_signal_connect (mark, "step", G_CALLBACK (on_step), self);
  g_signal_connect (focus, "enter", G_CALLBACK (on_focused), self);
  gtk_widget_add_controller (mark, focus);
  gtk_widget_set_parent (mark, GTK_WIDGET (self));
  return SW_MARK (mark);
}

static void
keep (SwCanvas *self, guint count)
{
  while (self->marks->len > count)
    {
      gtk_widget_unparent (GTK_WIDGET (mark_at (self, self->marks->len - 1)));
      g_ptr_array_set_size (self->marks, (int) self->marks->len - 1);
    }
}

/* @index counts the marks in use, @which the things of that kind. */
static void
describe (SwCanvas *self, guint index, const char *kind, guint which)
{
  const SwFace *face = sw_stage_face (self->stage);
  g_autofree char *object = g_strdup_printf ("%s/%s/%u", face->id, kind, which);
  g_autofree char *words =
      sw_mark_text (sw_stage_result (self->stage), sw_stage_face_index (self->stage),
                    object, sw_stage_style (self->stage));

  if (index == self->marks->len)
    g_ptr_array_add (self->marks, make_mark (self));
  sw_mark_describe (mark_at (self, index), object, words);
}

void
sw_canvas_match_marks (SwCanvas *self)
{
  const SwLayout *layout = sw_stage_result (self->stage)->layout;
  const SwFaceLayout *laid;
  gboolean offered = self->marks->len > 0;
  guint count = 0;

  if (layout == NULL || self->kind != sw_canvas_kind (SW_CANVAS_FACE_VIEW))
    {
      keep (self, 0);
      return;
    }
  laid = &layout->faces[sw_stage_face_index (self->stage)];
  for (guint i = 0; i < laid->n_runs; i++)
    describe (self, count++, "run", i);
  for (guint i = 0; i < laid->n_trenches; i++)
    describe (self, count++, "trench", i);
  keep (self, count);
  if (!offered && count > 0)
    offer (self, 0);
}

/* Boxes of all areas of the figure, by object; pixels. */
static GHashTable *
boxes_of (SwCanvas *self)
{
  GHashTable *boxes = g_hash_table_new_full (g_str_hash, g_str_equal, NULL, g_free);
  const SwFigure *figure = self->figure;
  double px_per_mm = sw_canvas_px_per_mm (self);

  for (guint i = 0; i < figure->items->len; i++)
    {
      const SwItem *item = &g_array_index (figure->items, SwItem, i);
      const SwPaperPoint *points = sw_figure_item_points (figure, item);
      graphene_rect_t *box;

      if (item->kind != SW_ITEM_AREA || item->object == NULL)
        continue;
      box = g_hash_table_lookup (boxes, item->object);
      if (box == NULL)
        {
          box = g_new (graphene_rect_t, 1);
          *box = GRAPHENE_RECT_INIT ((float) (points[0].x_mm * px_per_mm),
                                     (float) (points[0].y_mm * px_per_mm), 0.0f, 0.0f);
          g_hash_table_insert (boxes, (gpointer) item->object, box);
        }
      for (guint k = 0; k < item->n_points; k++)
        graphene_rect_expand (box,
                              &GRAPHENE_POINT_INIT ((float) (points[k].x_mm * px_per_mm),
                                                    (float) (points[k].y_mm * px_per_mm)),
                              box);
    }
  return boxes;
}

/* Within what is seen. */
static void
place (SwCanvas *self, GtkWidget *mark, const graphene_rect_t *box)
{
  graphene_rect_t seen = GRAPHENE_RECT_INIT (0.0f, 0.0f, (float) self->viewport.width_px,
                                             (float) self->viewport.height_px);
  gboolean visible = box != NULL && graphene_rect_intersection (box, &seen, &seen);

  gtk_widget_set_child_visible (mark, visible);
  if (!visible)
    return;
  gtk_widget_size_allocate (mark,
                            &(GtkAllocation){ (int) seen.origin.x, (int) seen.origin.y,
                                              (int) fmaxf (seen.size.width, LEAST_PX),
                                              (int) fmaxf (seen.size.height, LEAST_PX) },
                            -1);
}

void
sw_canvas_place_marks (SwCanvas *self)
{
  g_autoptr (GHashTable) boxes = NULL;

  if (self->marks->len == 0)
    return;
  sw_canvas_ensure_figure (self);
  boxes = boxes_of (self);
  for (guint i = 0; i < self->marks->len; i++)
    place (self, GTK_WIDGET (mark_at (self, i)),
           g_hash_table_lookup (boxes, sw_mark_object (mark_at (self, i))));
}

void
sw_canvas_drop_marks (SwCanvas *self)
{
  keep (self, 0);
}
