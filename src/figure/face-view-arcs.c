/* SPDX-License-Identifier: MIT */
#include "face-view-arcs.h"
#include <math.h>

/* Words keep so far off a dimension line and its ends. */
#define ROW_AIR_MM 0.8
#define PAST_ENDS_MM 12.0

/* Half the samples along a text that must lie off the face. */
#define SAMPLES 5

/* Near its tip a cone is as good as a point. */
#define LEAST_STRETCH 1e-3

/* A word outside the face tries so many directions, and so many distances. */
#define WAYS 16
#define RINGS (SW_ARC_ROUND_SPOTS / WAYS)
#define FIRST_RING_MM 3.0
#define RING_MM 4.5

SwArc
sw_arc_longer (const SwDrawing *drawing, SwBox reach)
{
  return drawing->development.turn_per_m > 0.0 ? (SwArc){ reach.y1_m, 1.0, FALSE }
                                               : (SwArc){ reach.y0_m, -1.0, TRUE };
}

SwArc
sw_arc_shorter (const SwDrawing *drawing, SwBox reach)
{
  return drawing->development.turn_per_m > 0.0 ? (SwArc){ reach.y0_m, -1.0, TRUE }
                                               : (SwArc){ reach.y1_m, 1.0, FALSE };
}

static double
mm_per_m (const SwDrawing *drawing)
{
  return fabs (drawing->view->x_mm_per_m);
}

double
sw_arc_row_m (const SwDrawing *drawing, SwArc arc, double row_mm)
{
  return arc.down_m + arc.outwards * row_mm / mm_per_m (drawing);
}

double
sw_arc_along_m (const SwDrawing *drawing, double down_m, double length_mm)
{
  return length_mm / mm_per_m (drawing)
         / fabs (sw_development_stretch (drawing->development, down_m));
}

void
sw_arc_draw (SwDrawing *drawing, SwRole role, double down_m, double from_m, double to_m)
{
  SwPoint ends[2] = { { from_m, down_m }, { to_m, down_m } };
  g_autoptr (GArray) path = sw_face_view_path (drawing, ends, 2, FALSE);

  sw_figure_line (drawing->figure, role, (SwPaperPoint *) path->data, path->len);
  for (guint i = 1; i < path->len; i++)
    {
      SwPaperPoint a = g_array_index (path, SwPaperPoint, i - 1);
      SwPaperPoint b = g_array_index (path, SwPaperPoint, i);

      sw_labels_reserve (drawing->labels,
                         (SwLabelBox){ (a.x_mm + b.x_mm) / 2.0, (a.y_mm + b.y_mm) / 2.0,
                                       hypot (b.x_mm - a.x_mm, b.y_mm - a.y_mm) / 2.0,
                                       0.4, atan2 (a.y_mm - b.y_mm, b.x_mm - a.x_mm) });
    }
}

void
sw_arc_head (SwDrawing *drawing, SwRole role, double along_m, double down_m, double way,
             double head_mm)
{
  SwPaperPoint at = sw_face_view_at (drawing, along_m, down_m);
  double turn = sw_face_view_turn_rad (drawing, along_m);

  sw_draft_arrow_head (drawing->figure, role, at.x_mm, at.y_mm, way * cos (turn),
                       -way * sin (turn), head_mm);
}

static void
draw_extension (SwDrawing *drawing, double along_m, SwArc arc, double row_mm)
{
  SwPaperPoint a =
      sw_face_view_beside (drawing, along_m, arc.down_m, 0.0, arc.outwards * 0.8);
  SwPaperPoint b = sw_face_view_beside (drawing, along_m, arc.down_m, 0.0,
                                        arc.outwards * (row_mm + 1.0));

  sw_figure_segment (drawing->figure, SW_ROLE_DIMENSION, a.x_mm, a.y_mm, b.x_mm, b.y_mm);
  sw_labels_keep_off (drawing->labels, (SwPaperPoint[]){ a, b }, 2);
}

/* The true length of crest or toe, not of the trench beside it. */
static char *
arc_text (const SwDrawing *drawing, SwBox reach, SwArc arc)
{
  const SwGround *ground = drawing->laid->ground;
  double out_m =
      arc.is_crest ? sw_ground_crest_out_m (ground) : sw_ground_toe_out_m (ground);
  g_autofree char *length = sw_drawing_length (
      drawing, (reach.x1_m - reach.x0_m) * sw_ground_stretch (ground, out_m));

  return sw_texts_fill (drawing->draw->texts,
                        arc.is_crest ? "drawing.crest-arc" : "drawing.toe-arc", "length",
                        length, NULL);
}

/* Millimetres on paper outside the arc; NAN well past its ends. */
static double
off_arc_mm (const SwDrawing *drawing, SwBox reach, SwArc arc, SwPoint on)
{
  double past_m = fabs (sw_arc_along_m (drawing, arc.down_m, PAST_ENDS_MM));

  if (on.x_m < reach.x0_m - past_m || on.x_m > reach.x1_m + past_m)
    return NAN;
  return (on.y_m - arc.down_m) * arc.outwards * mm_per_m (drawing);
}

static gboolean
is_off (const SwDrawing *drawing, SwBox reach, SwPoint on)
{
  double air_m = 1.0 / mm_per_m (drawing);
  double stretch = fabs (sw_development_stretch (drawing->development, on.y_m));
  double past_m = sw_face_view_past_cut_mm (drawing, on.y_m) / mm_per_m (drawing)
                  / fmax (stretch, LEAST_STRETCH);

  return on.x_m < reach.x0_m - past_m || on.x_m > reach.x1_m + past_m
         || on.y_m < reach.y0_m - air_m || on.y_m > reach.y1_m + air_m;
}

/* Whether a level box lies off the face and clear of the arcs' dimension lines. */
static gboolean
is_clear (const SwDrawing *drawing, SwBox reach, SwLabelBox box)
{
  const SwArc arcs[2] = { sw_arc_longer (drawing, reach),
                          sw_arc_shorter (drawing, reach) };
  const double rows_mm[2] = { SW_ARC_ROW_MM, SW_ARC_INNER_ROW_MM };
  double low[2] = { INFINITY, INFINITY }, high[2] = { -INFINITY, -INFINITY };

  for (int i = -SAMPLES; i <= SAMPLES; i++)
    for (int k = -1; k <= 1; k++)
      {
        SwPaperPoint at = { box.x_mm + box.half_width_mm * i / SAMPLES,
                            box.y_mm + box.half_height_mm * k };
        SwPoint on = sw_development_lift (drawing->development,
                                          sw_view_to_world (drawing->view, at));

        if (!is_off (drawing, reach, on))
          return FALSE;
        for (guint a = 0; a < 2; a++)
          {
            double off_mm = off_arc_mm (drawing, reach, arcs[a], on);

            low[a] = fmin (low[a], off_mm);
            high[a] = fmax (high[a], off_mm);
          }
      }
  for (guint a = 0; a < 2; a++)
    if (low[a] < rows_mm[a] + ROW_AIR_MM && high[a] > rows_mm[a] - ROW_AIR_MM)
      return FALSE;
  return TRUE;
}

/* The ways all round, by turns to either side of straight on. */
static double
sway (guint way)
{
  double step = 2.0 * G_PI / WAYS * ((way + 1) / 2);

  return way % 2 == 0 ? step : -step;
}

static gint
compare_distance (gconstpointer a, gconstpointer b, gpointer target)
{
  const SwLabelSpot *p = a, *q = b;
  const SwPaperPoint *at = target;
  double to_p = hypot (p->x_mm - at->x_mm, p->y_mm - at->y_mm);
  double to_q = hypot (q->x_mm - at->x_mm, q->y_mm - at->y_mm);

  return to_p < to_q ? -1 : to_p > to_q;
}

/* Places off the face in rows and columns over the sheet, the nearest first. */
static guint
sheet_spots (const SwDrawing *drawing, SwBox reach, SwPaperPoint target, SwLabelBox box,
             SwLabelSpot *spots)
{
  double wide_mm = drawing->view->width_mm - 2.0 * box.half_width_mm;
  double tall_mm = drawing->view->height_mm - 2.0 * box.half_height_mm;
  guint n = 0;

  for (guint i = 0; i < SW_ARC_SHEET_COLUMNS * SW_ARC_SHEET_ROWS; i++)
    {
      double column = i % SW_ARC_SHEET_COLUMNS, row = i / SW_ARC_SHEET_COLUMNS;

      box.x_mm = box.half_width_mm + wide_mm * column / (SW_ARC_SHEET_COLUMNS - 1);
      box.y_mm = box.half_height_mm + tall_mm * row / (SW_ARC_SHEET_ROWS - 1);
      if (wide_mm > 0.0 && tall_mm > 0.0 && is_clear (drawing, reach, box))
        spots[n++] = (SwLabelSpot){ box.x_mm, box.y_mm, 0.0 };
    }
  g_qsort_with_data (spots, (gint) n, sizeof *spots, compare_distance, &target);
  return n;
}

guint
sw_arc_spots (const SwDrawing *drawing, SwBox reach, SwPaperPoint target, double way_rad,
              const char *words, SwLabelSpot spots[SW_ARC_SPOTS])
{
  SwLabelBox box = { 0.0, 0.0,
                     sw_drawing_width_mm (drawing, words, drawing->text_mm) / 2.0 + 0.5,
                     drawing->text_mm / 2.0 + 0.5, 0.0 };
  guint n = 0;

  for (guint ring = 0; ring < RINGS; ring++)
    for (guint way = 0; way < WAYS; way++)
      {
        double turn = way_rad + sway (way);
        double off_mm = FIRST_RING_MM + ring * RING_MM + sw_label_shadow_mm (box, turn);

        box.x_mm = target.x_mm + off_mm * cos (turn);
        box.y_mm = target.y_mm - off_mm * sin (turn);
        if (sw_label_box_is_inside (box, drawing->view->width_mm,
                                    drawing->view->height_mm)
            && is_clear (drawing, reach, box))
          spots[n++] = (SwLabelSpot){ box.x_mm, box.y_mm, 0.0 };
      }
  return n + sheet_spots (drawing, reach, target, box, spots + n);
}

void
sw_arc_call_out (SwDrawing *drawing, SwBox reach, SwLabelRank rank, SwPaperPoint target,
                 double way_rad, const char *object, const char *words)
{
  SwLabelSpot spots[SW_ARC_SPOTS];
  guint n = sw_arc_spots (drawing, reach, target, way_rad, words, spots);

  sw_drawing_callout (drawing, rank, target, spots, n, object, words);
}

/* The line and its arrows; the words are placed apart. */
static void
draw_arc_dimension (SwDrawing *drawing, SwBox reach, SwArc arc, double row_mm)
{
  double down_m = sw_arc_row_m (drawing, arc, row_mm);
  SwPoint ends[2] = { { reach.x0_m, down_m }, { reach.x1_m, down_m } };
  g_autoptr (GArray) path = sw_face_view_path (drawing, ends, 2, FALSE);

  sw_figure_object (drawing->figure, sw_drawing_object_id (drawing, "/outline"));
  sw_drawing_line (drawing, SW_ROLE_DIMENSION, path);
  for (int way = -1; way <= 1; way += 2)
    {
      double along_m = way < 0 ? reach.x0_m : reach.x1_m;

      draw_extension (drawing, along_m, arc, row_mm);
      sw_arc_head (drawing, SW_ROLE_DIMENSION, along_m, down_m, way, SW_ARROW_MM);
    }
}

/* The words stand in the dimension line, in its middle or to one side of it. */
static void
write_in_arc (SwDrawing *drawing, SwBox reach, double down_m, const char *words)
{
  static const double shares[] = { 0.5, 0.38, 0.62, 0.26, 0.74 };
  SwLabelSpot spots[G_N_ELEMENTS (shares)];

  for (guint i = 0; i < G_N_ELEMENTS (shares); i++)
    {
      double along_m = reach.x0_m + (reach.x1_m - reach.x0_m) * shares[i];
      SwPaperPoint at = sw_face_view_at (drawing, along_m, down_m);
      double turn = sw_face_view_turn_rad (drawing, along_m);

      spots[i] = (SwLabelSpot){ at.x_mm, at.y_mm, sw_label_reading_turn_rad (turn) };
    }
  sw_drawing_label (drawing, SW_LABEL_NEEDED, spots, G_N_ELEMENTS (spots),
                    sw_drawing_object_id (drawing, "/outline"), words);
}

/* Where the arc is too short or too round for its words, they stand off the face. */
void
sw_arc_dimension (SwDrawing *drawing, SwBox reach, SwArc arc, double row_mm)
{
  double down_m = sw_arc_row_m (drawing, arc, row_mm);
  double radius_mm = sw_development_stretch (drawing->development, down_m)
                     / fabs (drawing->development.turn_per_m) * mm_per_m (drawing);
  double half_turn = fabs (sw_face_view_turn_rad (drawing, reach.x1_m));
  g_autofree char *words = arc_text (drawing, reach, arc);
  double width = sw_drawing_width_mm (drawing, words, drawing->text_mm);
  double chord_mm = 2.0 * radius_mm * sin (fmin (half_turn, G_PI_2 / 2.0));
  double sag_mm =
      radius_mm - sqrt (fmax (radius_mm * radius_mm - width * width / 4.0, 0.0));
  /* Inside the shorter arc a text's ends come nearer to the face. */
  gboolean is_flat = row_mm > SW_ARC_INNER_ROW_MM
                     || sag_mm + drawing->text_mm / 2.0 + ROW_AIR_MM < row_mm;

  if (radius_mm > 0.0)
    draw_arc_dimension (drawing, reach, arc, row_mm);
  if (is_flat && width + 4.0 * SW_ARROW_MM <= chord_mm)
    write_in_arc (drawing, reach, down_m, words);
  else
    {
      double along_m = drawing->face->leeward == SW_SIDE_LEFT ? reach.x1_m : reach.x0_m;
      double way = drawing->face->leeward == SW_SIDE_LEFT ? 0.0 : G_PI;

      sw_arc_call_out (
          drawing, reach, SW_LABEL_NEEDED,
          sw_face_view_at (drawing, along_m, arc.is_crest ? 0.0 : arc.down_m),
          sw_face_view_turn_rad (drawing, along_m) + way,
          sw_drawing_object_id (drawing, "/outline"), words);
    }
}
