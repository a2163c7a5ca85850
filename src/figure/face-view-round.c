/* SPDX-License-Identifier: MIT */
#include "face-view-arcs.h"
#include <math.h>

/* Laying order along the longer arc; wind above the face. */
#define ORDER_ROW_MM 3.6
#define ARROW_MM 16.0
#define WIND_MM 12.0
#define WIND_NAME_MM 3.2
#define HEAD_MM 2.8

/* Its words follow the arrow, further on where a leader comes through. */
static const double after_mm[] = { 1.8, 3.8, 6.8, 10.8, 15.8, 21.8, 28.8 };

/* How far down the cut its name stands, clear of crest and fall line. */
#define CUT_NOTE_SHARE 0.66

/* Which way is off the face at a place on an arc, anticlockwise from the right. */
static double
way_off_rad (const SwDrawing *drawing, SwArc arc, double along_m)
{
  return sw_face_view_turn_rad (drawing, along_m) - arc.outwards * G_PI_2;
}

/* Run 1 is in the upper tier, at its leeward end. */
static void
note_start (SwDrawing *drawing, SwBox reach, SwArc arc)
{
  const SwTier *first = &drawing->laid->tiers[0];
  double lee_m = drawing->face->leeward == SW_SIDE_LEFT ? reach.x0_m : reach.x1_m;
  double down_m = arc.is_crest ? reach.y0_m : first->reach.down_to_m;

  sw_arc_call_out (
      drawing, reach, SW_LABEL_NEEDED, sw_face_view_at (drawing, lee_m, down_m),
      way_off_rad (drawing, arc, lee_m), sw_drawing_object_id (drawing, "/start"),
      sw_drawing_text (drawing,
                       first->closed ? "drawing.start-at-cut" : "drawing.start-here"));
}

/* Along the longer arc from the leeward end. */
static void
note_order (SwDrawing *drawing, SwBox reach, SwArc arc)
{
  gboolean left = drawing->face->leeward == SW_SIDE_LEFT;
  const char *id = sw_drawing_object_id (drawing, "/order");
  const char *words = sw_drawing_text (drawing, "drawing.laying-order");
  double way = left ? 1.0 : -1.0, lee_m = left ? reach.x0_m : reach.x1_m;
  double down_m = sw_arc_row_m (drawing, arc, ORDER_ROW_MM);
  double half_mm = sw_drawing_width_mm (drawing, words, drawing->text_mm) / 2.0;
  double neck_m =
      lee_m + way * sw_arc_along_m (drawing, down_m, ARROW_MM - HEAD_MM * 0.8);
  double head_m = lee_m + way * sw_arc_along_m (drawing, down_m, ARROW_MM);
  double end_m = lee_m + way * sw_arc_along_m (drawing, down_m, ARROW_MM + 2.0 * half_mm);
  SwPoint row[2] = { { lee_m, down_m }, { end_m, down_m } };
  g_autoptr (GArray) path = sw_face_view_path (drawing, row, 2, FALSE);
  SwLabelSpot spots[G_N_ELEMENTS (after_mm)];

  for (guint i = 0; i < G_N_ELEMENTS (after_mm); i++)
    {
      double word_m =
          lee_m
          + way * sw_arc_along_m (drawing, down_m, ARROW_MM + after_mm[i] + half_mm);
      SwPaperPoint at = sw_face_view_at (drawing, word_m, down_m);

      spots[i] = (SwLabelSpot){ at.x_mm, at.y_mm,
                                sw_label_reading_turn_rad (
                                    sw_face_view_turn_rad (drawing, word_m)) };
    }
  sw_figure_object (drawing->figure, id);
  sw_arc_draw (drawing, SW_ROLE_FALL_LINE, down_m, lee_m, neck_m);
  sw_arc_head (drawing, SW_ROLE_FALL_LINE, head_m, down_m, way, HEAD_MM);
  sw_drawing_label (drawing, SW_LABEL_NEEDED, spots, G_N_ELEMENTS (spots), id, words);
  sw_labels_keep_others_off (drawing->labels, (SwPaperPoint *) path->data, path->len);
}

/* From the windward end, above the face; round a closed heap there is no such end. */
static void
note_wind (SwDrawing *drawing)
{
  SwBox world = sw_face_view_box (drawing->result, drawing->face_index);
  SwPaperPoint left = sw_drawing_at (drawing, world.x0_m, world.y0_m);
  SwPaperPoint right = sw_drawing_at (drawing, world.x1_m, world.y0_m);
  double way = drawing->face->leeward == SW_SIDE_LEFT ? -1.0 : 1.0;
  double from = way < 0.0 ? right.x_mm : left.x_mm, to = from + way * WIND_MM;
  double y = left.y_mm - SW_ARC_ROW_MM;
  const char *id = sw_drawing_object_id (drawing, "/wind");
  const char *words = sw_drawing_text (drawing, "drawing.wind");
  double half = sw_drawing_width_mm (drawing, words, drawing->text_mm) / 2.0;

  sw_figure_object (drawing->figure, id);
  sw_draft_arrow (drawing->figure, SW_ROLE_WIND, from, y, to, y, HEAD_MM);
  sw_labels_reserve_rect (drawing->labels, fmin (from, to), y - 1.2, WIND_MM, 2.4);
  sw_drawing_label (drawing, SW_LABEL_NEEDED,
                    (SwLabelSpot[]){ { to + way * (1.8 + half), y, 0.0 },
                                     { (from + to) / 2.0, y - WIND_NAME_MM, 0.0 },
                                     { (from + to) / 2.0, y + WIND_NAME_MM, 0.0 },
                                     { from - way * (1.8 + half), y, 0.0 } },
                    4, id, words);
}

/* Both edges of the sheet are one line on the ground. */
static void
note_cut (SwDrawing *drawing, SwBox reach)
{
  double low_m = reach.y0_m + (reach.y1_m - reach.y0_m) * CUT_NOTE_SHARE;
  double far_m = drawing->face->leeward == SW_SIDE_LEFT ? reach.x1_m : reach.x0_m;
  double way = drawing->face->leeward == SW_SIDE_LEFT ? 0.0 : G_PI;

  sw_arc_call_out (drawing, reach, SW_LABEL_NEEDED,
                   sw_face_view_at (drawing, far_m, low_m),
                   sw_face_view_turn_rad (drawing, far_m) + way,
                   sw_drawing_object_id (drawing, "/outline"),
                   sw_drawing_text (drawing, "drawing.cut-edge"));
}

/* At the longer arc, where the lap is the least. */
static void
note_first_lap (SwDrawing *drawing, SwBox reach, SwArc arc)
{
  g_autofree char *words = NULL;
  const SwRun *a, *b;
  double along_m, down_m;

  if (!sw_face_view_first_lap (drawing, &a, &b))
    return;
  along_m =
      (fmax (a->along_from_m, b->along_from_m) + fmin (a->along_to_m, b->along_to_m))
      / 2.0;
  down_m = arc.is_crest ? fmax (a->down_from_m, b->down_from_m)
                        : fmin (a->down_to_m, b->down_to_m);
  words = sw_first_lap_text (drawing, a, b);
  sw_arc_call_out (
      drawing, reach, SW_LABEL_NEEDED, sw_face_view_at (drawing, along_m, down_m),
      way_off_rad (drawing, arc, along_m),
      sw_drawing_object_id (drawing, "/lap/%d-%d", a->number, b->number), words);
}

void
sw_face_view_round_notes (SwDrawing *drawing, SwBox reach)
{
  SwArc longer = sw_arc_longer (drawing, reach);
  gboolean closed = drawing->laid->tiers[0].closed;

  /* In the gap of a heap laid flat what says where to begin goes first. */
  if (closed)
    note_start (drawing, reach, longer);
  note_first_lap (drawing, reach, longer);
  note_order (drawing, reach, longer);
  sw_arc_dimension (drawing, reach, longer, SW_ARC_ROW_MM);
  sw_arc_dimension (drawing, reach, sw_arc_shorter (drawing, reach), SW_ARC_INNER_ROW_MM);
  if (closed)
    note_cut (drawing, reach);
  else
    note_wind (drawing);
  if (!closed)
    note_start (drawing, reach, longer);
  sw_face_view_dimension_tiers (drawing, reach);
}
