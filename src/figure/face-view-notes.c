/* SPDX-License-Identifier: MIT */
#include "face-view-arcs.h"
#include <math.h>

#define DIMENSION_ROW_MM 5.0
#define NEXT_ROW_MM 5.4

/* A bench too narrow for its name has it at its right end. */
#define BENCH_OFF_MM 4.0
#define ORDER_ROW_MM 4.2
#define START_ROW_MM 9.2
#define NARROW_MM 80.0

/* Its words stand in this row below the run, or below the face. */
#define LAP_ROW_MM 9.2

/* A lap is pointed at so much of a short run above its end. */
#define LAP_SHARE 0.1
#define ARROW_MM 16.0
#define ARROW_NAME_MM 3.2
#define ARROW_AIR_MM 0.6

/* Parts into which a line across ruled ground is cut between two sections. */
#define RULED_STEPS 24

static gboolean
is_ruled (const SwDrawing *drawing)
{
  return drawing->face->n_further > 0;
}

double
sw_face_view_tier_down_m (const SwDrawing *drawing, const SwTier *tier, gboolean at_end,
                          double along_m)
{
  const SwGround *ground = drawing->laid->ground;
  double from_m, to_m;

  if (!is_ruled (drawing))
    return at_end ? tier->reach.down_to_m : tier->reach.down_from_m;
  from_m = sw_ground_break_down_m (ground, tier->reach.from_break, along_m);
  to_m = sw_ground_break_down_m (ground, tier->reach.to_break, along_m);
  return from_m + (to_m - from_m) * (at_end ? tier->share_to : tier->share_from);
}

/* Crest, toe or edge of a bench. */
static void
draw_tier_line (SwDrawing *drawing, SwBox box, const SwTier *tier, gboolean at_end)
{
  g_autoptr (GArray) at_m =
      sw_ground_stations_between (drawing->laid->ground, box.x0_m, box.x1_m);
  g_autoptr (GArray) line = g_array_new (FALSE, FALSE, sizeof (SwPoint));
  g_autoptr (GArray) path = NULL;
  guint steps = is_ruled (drawing) ? RULED_STEPS : 1;

  for (guint i = 0; i + 1 < at_m->len; i++)
    for (guint k = i == 0 ? 0 : 1; k <= steps; k++)
      {
        double a = g_array_index (at_m, double, i),
               b = g_array_index (at_m, double, i + 1);
        SwPoint at = { a + (b - a) * k / steps, 0.0 };

        at.y_m = sw_face_view_tier_down_m (drawing, tier, at_end, at.x_m);
        g_array_append_val (line, at);
      }
  path = sw_face_view_path (drawing, (SwPoint *) line->data, line->len, FALSE);
  sw_drawing_line (drawing, SW_ROLE_BREAK, path);
}

static void
name_tier (SwDrawing *drawing, SwBox box, guint t)
{
  const SwTier *tier = &drawing->laid->tiers[t];
  const char *id = sw_drawing_object_id (drawing, "/tier/%u", t);
  gboolean is_last = t + 1 == drawing->laid->n_tiers;

  sw_drawing_object (drawing, "/tier/%u", t);
  draw_tier_line (drawing, box, tier, FALSE);
  draw_tier_line (drawing, box, tier, TRUE);
  sw_face_view_name_line (
      drawing, box, sw_face_view_tier_down_m (drawing, tier, FALSE, box.x1_m), 1.0,
      sw_drawing_text (drawing, t == 0 ? "drawing.crest-line" : "drawing.tier-top"), id);
  sw_face_view_name_line (
      drawing, box, sw_face_view_tier_down_m (drawing, tier, TRUE, box.x1_m), -1.0,
      sw_drawing_text (drawing, is_last ? "drawing.toe-line" : "drawing.tier-end"), id);
}

static void
name_bench (SwDrawing *drawing, SwBox box, guint t)
{
  const SwTier *tiers = drawing->laid->tiers;
  double middle_m = (box.x0_m + box.x1_m) / 2.0;
  double from_m = sw_face_view_tier_down_m (drawing, &tiers[t - 1], TRUE, middle_m);
  double to_m = sw_face_view_tier_down_m (drawing, &tiers[t], FALSE, middle_m);
  SwPaperPoint at = sw_face_view_at (drawing, middle_m, (from_m + to_m) / 2.0);
  SwPaperPoint end = sw_face_view_at (drawing, box.x1_m, (from_m + to_m) / 2.0);
  SwLabelSpot spots[1 + SW_ARC_SPOTS];
  double half;
  guint n = 1;
  g_autofree char *width = sw_drawing_length (drawing, to_m - from_m);
  g_autofree char *words =
      sw_texts_fill (drawing->draw->texts, "drawing.bench", "width", width, NULL);

  half = sw_drawing_width_mm (drawing, words, drawing->text_mm) / 2.0;
  spots[0] = (SwLabelSpot){ at.x_mm, at.y_mm, 0.0 };
  if (sw_development_is_bent (drawing->development))
    n += sw_arc_spots (drawing, box, end, sw_face_view_turn_rad (drawing, box.x1_m),
                       words, spots + n);
  else
    for (int row = -1; row <= 1; row++)
      spots[n++] = (SwLabelSpot){ end.x_mm + BENCH_OFF_MM + half,
                                  end.y_mm + row * NEXT_ROW_MM, 0.0 };
  sw_drawing_name_off_lines (drawing, SW_LABEL_MAIN, end, spots, n, 1,
                             sw_drawing_object_id (drawing, "/tier/%u", t), words);
}

/* Width at the toe. */
static void
dimension_width (SwDrawing *drawing, SwBox box)
{
  SwPaperPoint left = sw_face_view_at (drawing, box.x0_m, box.y1_m);
  SwPaperPoint right = sw_face_view_at (drawing, box.x1_m, box.y1_m);
  g_autofree char *width = sw_drawing_length (drawing, box.x1_m - box.x0_m);

  sw_drawing_dimension (
      drawing, SW_LABEL_NEEDED,
      (SwLabelSpan){ left.x_mm, left.y_mm, right.x_mm, right.y_mm, -DIMENSION_ROW_MM },
      sw_drawing_object_id (drawing, "/outline"), width);
}

/* True length down an edge, in a row outside it. */
static void
dimension_stretch (SwDrawing *drawing, SwBox box, gboolean at_right, SwSpan span,
                   SwLabelRank rank, double row_mm, const char *object)
{
  double along_m = at_right ? box.x1_m : box.x0_m;
  SwPaperPoint a = sw_face_view_at (drawing, along_m, span.from_m);
  SwPaperPoint b = sw_face_view_at (drawing, along_m, span.to_m);
  g_autofree char *text = sw_drawing_length (drawing, span.to_m - span.from_m);

  sw_drawing_dimension (
      drawing, rank,
      (SwLabelSpan){ a.x_mm, a.y_mm, b.x_mm, b.y_mm, at_right ? row_mm : -row_mm },
      object, text);
}

static SwSpan
tier_span (const SwDrawing *drawing, guint first, guint last, double along_m)
{
  const SwTier *tiers = drawing->laid->tiers;

  return (SwSpan){ sw_face_view_tier_down_m (drawing, &tiers[first], FALSE, along_m),
                   sw_face_view_tier_down_m (drawing, &tiers[last], TRUE, along_m) };
}

/* True lengths of the tiers at the left, and of all when there are several; on ruled ground
 * at the right too, where they are others. */
void
sw_face_view_dimension_tiers (SwDrawing *drawing, SwBox box)
{
  const SwFaceLayout *laid = drawing->laid;
  double row_mm = DIMENSION_ROW_MM + sw_face_view_past_cut_mm (drawing, 0.0);

  for (guint t = 0; t < laid->n_tiers; t++)
    {
      const char *id = sw_drawing_object_id (drawing, "/tier/%u", t);

      dimension_stretch (drawing, box, FALSE, tier_span (drawing, t, t, box.x0_m),
                         SW_LABEL_NEEDED, row_mm, id);
      if (is_ruled (drawing))
        dimension_stretch (drawing, box, TRUE, tier_span (drawing, t, t, box.x1_m),
                           SW_LABEL_NEEDED, row_mm, id);
    }
  if (laid->n_tiers > 1)
    dimension_stretch (drawing, box, FALSE,
                       tier_span (drawing, 0, laid->n_tiers - 1, box.x0_m),
                       SW_LABEL_USEFUL, row_mm + NEXT_ROW_MM, NULL);
}

/* An arrow along x with words after its head, else over, under or behind it. */
static void
draw_arrow (SwDrawing *drawing, SwRole role, double x_mm, double y_mm, double length_mm,
            const char *object, const char *text)
{
  double sign = length_mm < 0.0 ? -1.0 : 1.0, middle = x_mm + length_mm / 2.0;
  double half = sw_drawing_width_mm (drawing, text, drawing->text_mm) / 2.0;
  double least = half + ARROW_AIR_MM, most = drawing->view->width_mm - least;
  gboolean is_seen = middle > 0.0 && middle < drawing->view->width_mm;
  /* On the sheet as long as the arrow is. */
  double inside = is_seen ? fmax (fmin (middle, most), least) : middle;
  const char *id = sw_drawing_object_id (drawing, "%s", object);
  SwLabelSpot spots[] = {
    { x_mm + length_mm + sign * (1.8 + half), y_mm, 0.0 },
    { middle, y_mm - ARROW_NAME_MM, 0.0 },
    { inside, y_mm - ARROW_NAME_MM, 0.0 },
    { middle, y_mm + ARROW_NAME_MM, 0.0 },
    { inside, y_mm + ARROW_NAME_MM, 0.0 },
    { x_mm - sign * (1.8 + half), y_mm, 0.0 },
  };

  sw_figure_object (drawing->figure, id);
  sw_draft_arrow (drawing->figure, role, x_mm, y_mm, x_mm + length_mm, y_mm, 2.8);
  sw_labels_reserve_rect (drawing->labels, fmin (x_mm, x_mm + length_mm), y_mm - 1.2,
                          fabs (length_mm), 2.4);
  sw_drawing_label (drawing, SW_LABEL_NEEDED, spots, G_N_ELEMENTS (spots), id, text);
}

/* Start corner and laying order from the leeward end; the wind comes from the other. */
static void
note_order (SwDrawing *drawing, SwBox box)
{
  gboolean left = drawing->face->leeward == SW_SIDE_LEFT;
  SwPaperPoint a = sw_drawing_at (drawing, box.x0_m, box.y0_m);
  SwPaperPoint b = sw_drawing_at (drawing, box.x1_m, box.y0_m);
  double sign = left ? 1.0 : -1.0, width = b.x_mm - a.x_mm;
  double lee = left ? a.x_mm : b.x_mm, windward = left ? b.x_mm : a.x_mm;
  const char *start = sw_drawing_text (drawing, "drawing.start-here");
  double start_mm = sw_drawing_width_mm (drawing, start, drawing->text_mm);
  gboolean narrow = width < NARROW_MM;

  sw_figure_object (drawing->figure, sw_drawing_object_id (drawing, "/start"));
  sw_figure_segment (drawing->figure, SW_ROLE_FALL_LINE, lee, a.y_mm - START_ROW_MM - 1.4,
                     lee, a.y_mm - 0.6);
  sw_labels_keep_off (
      drawing->labels,
      (SwPaperPoint[]){ { lee, a.y_mm - START_ROW_MM - 1.4 }, { lee, a.y_mm - 0.6 } }, 2);
  sw_drawing_note (drawing, SW_LABEL_NEEDED, SW_ROLE_TEXT,
                   lee + sign * (1.4 + start_mm / 2.0), a.y_mm - START_ROW_MM, 0.0,
                   sw_drawing_object_id (drawing, "/start"), start);
  draw_arrow (drawing, SW_ROLE_FALL_LINE, lee, a.y_mm - ORDER_ROW_MM,
              sign * fmin (ARROW_MM, fmax (width * 0.4, 8.0)), "/order",
              sw_drawing_text (drawing, "drawing.laying-order"));
  draw_arrow (drawing, SW_ROLE_WIND, narrow ? lee - sign * 2.0 : windward,
              narrow ? a.y_mm - ORDER_ROW_MM : a.y_mm - START_ROW_MM, -sign * 12.0,
              "/wind", sw_drawing_text (drawing, "drawing.wind"));
}

char *
sw_first_lap_text (const SwDrawing *drawing, const SwRun *lower, const SwRun *upper)
{
  g_autofree char *lap = sw_side_lap_text (drawing->laid, drawing->draw);
  g_autofree char *over = sw_run_label (upper);
  g_autofree char *under = sw_run_label (lower);

  return sw_texts_fill (drawing->draw->texts, "drawing.lap-note", "lap", lap, "upper",
                        over, "lower", under, NULL);
}

gboolean
sw_face_view_first_lap (const SwDrawing *drawing, const SwRun **lower,
                        const SwRun **upper)
{
  const SwFaceLayout *laid = drawing->laid;
  const SwTier *last = &laid->tiers[laid->n_tiers - 1];

  if (last->n_runs < 2
      || (drawing->sequence != NULL
          && !sw_drawing_is_done (
              drawing, sw_drawing_run_steps (drawing, last->first_run + 1)->last)))
    return FALSE;
  *lower = &laid->runs[last->first_run];
  *upper = &laid->runs[last->first_run + 1];
  if ((*upper)->infill && laid->face->crest_form == SW_CREST_NOSE)
    {
      const SwRun *infill = *upper;

      *upper = *lower;
      *lower = infill;
    }
  return TRUE;
}

/* The first lap says which run is on top. */
static void
note_first_lap (SwDrawing *drawing, SwBox box)
{
  double half, tall_mm, bottom,
      sign = drawing->face->leeward == SW_SIDE_LEFT ? 1.0 : -1.0;
  g_autofree char *words = NULL;
  const SwRun *a, *b;
  SwPaperPoint at;

  if (!sw_face_view_first_lap (drawing, &a, &b))
    return;
  at = sw_face_view_at (
      drawing,
      (fmax (a->along_from_m, b->along_from_m) + fmin (a->along_to_m, b->along_to_m))
          / 2.0,
      fmin (a->down_to_m, b->down_to_m));
  tall_mm = (a->down_to_m - a->down_from_m) * fabs (drawing->view->y_mm_per_m);
  bottom = sw_face_view_at (drawing, box.x0_m, box.y1_m).y_mm;
  words = sw_first_lap_text (drawing, a, b);
  half = sw_drawing_width_mm (drawing, words, drawing->text_mm) / 2.0;
  sw_drawing_callout (
      drawing, SW_LABEL_NEEDED,
      (SwPaperPoint){ at.x_mm, at.y_mm - fmin (1.2, tall_mm * LAP_SHARE) },
      (SwLabelSpot[]){ { at.x_mm + sign * (half - 3.0), at.y_mm + LAP_ROW_MM, 0.0 },
                       { at.x_mm - sign * (half - 3.0), at.y_mm + LAP_ROW_MM, 0.0 },
                       { at.x_mm + sign * (half - 3.0), bottom + LAP_ROW_MM, 0.0 },
                       { at.x_mm - sign * (half - 3.0), bottom + LAP_ROW_MM, 0.0 } },
      4, sw_drawing_object_id (drawing, "/lap/%d-%d", a->number, b->number), words);
}

static void
note_straight (SwDrawing *drawing, SwBox box)
{
  note_order (drawing, box);
  dimension_width (drawing, box);
  note_first_lap (drawing, box);
  sw_face_view_dimension_tiers (drawing, box);
}

double
sw_face_view_past_cut_mm (const SwDrawing *drawing, double down_m)
{
  const SwTier *tier = &drawing->laid->tiers[0];
  double stretch = sw_development_stretch (drawing->development, down_m), half_m;

  if (!tier->closed || tier->n_runs == 0)
    return 0.0;
  half_m = drawing->laid->runs[tier->first_run].width_m / 2.0;
  return fmax (half_m * (1.0 - stretch / tier->stretch), 0.0)
         * fabs (drawing->view->x_mm_per_m);
}

void
sw_face_view_notes (SwDrawing *drawing, gboolean with_pins)
{
  const SwLie lie = { sw_unfold, sw_unfold_at };
  const SwFaceLayout *laid = drawing->laid;
  SwBox box = sw_face_view_reach (drawing->result, drawing->face_index);

  if (laid->n_tiers == 0)
    return;
  if (sw_development_is_bent (drawing->development))
    sw_face_view_round_notes (drawing, box);
  else
    note_straight (drawing, box);
  for (guint t = 0; t < laid->n_tiers; t++)
    {
      name_tier (drawing, box, t);
      if (t > 0)
        name_bench (drawing, box, t);
    }
  sw_face_view_fall_line (drawing, box);
  sw_note_obstacles (drawing, &lie);
  sw_note_zones (drawing, &lie);
  sw_face_view_number_runs (drawing, with_pins);
}
