/* SPDX-License-Identifier: MIT */
#include "drawing.h"
#include <math.h>

#define SOIL_MM 5.0
#define BLANKET_ABOVE_MM 0.5

/* Distances of the notes from the ground line, along its normal. */
#define LENGTH_ROW_MM 5.0
#define GRADIENT_ROW_MM 9.2
#define ARROW_ROW_MM 13.6

/* Dimensions below the toe. */
#define FIRST_ROW_MM 4.5
#define NEXT_ROW_MM 5.2

/* Rises shorter than this on paper carry no dimension. */
#define SHORT_RISE_MM 3.0

/* Dashes of a section taken elsewhere. */
#define FURTHER_DASH_MM 1.2

/* With more stretches than this the whole face is figured, not each of them. */
#define MANY_STRETCHES 7

/* Stretches this close in direction are one: 0.05 degrees. */
#define SAME_RAD 0.0009

/* A stretch flatter than this is called level: 0.1 degrees. */
#define LEVEL_RAD 0.0018

/* Trenches smaller than this on paper are drawn this large, and the key says so. */
#define LEAST_TRENCH_MM 1.5

/** Part of the section of one gradient, from point to point. */
typedef struct
{
  guint from, to;
} Stretch;

static double
signed_angle (const SwFace *face, guint from, guint to)
{
  const SwPoint *a = &face->section[from], *b = &face->section[to];

  return atan2 (a->y_m - b->y_m, b->x_m - a->x_m);
}

/* (element-type Stretch) crest to toe. */
static GArray *
find_stretches (const SwFace *face)
{
  GArray *stretches = g_array_new (FALSE, FALSE, sizeof (Stretch));

  for (guint i = face->crest; i < face->toe && face->toe < face->n_section; i++)
    {
      Stretch next = { i, i + 1 };
      Stretch *last = stretches->len > 0
                          ? &g_array_index (stretches, Stretch, stretches->len - 1)
                          : NULL;

      if (last != NULL
          && fabs (signed_angle (face, last->from, last->to)
                   - signed_angle (face, i, i + 1))
                 < SAME_RAD)
        last->to = i + 1;
      else
        g_array_append_val (stretches, next);
    }
  return stretches;
}

static double
ground_up_m (const SwFace *face, double out_m)
{
  const SwPoint *p = face->section;

  if (out_m <= p[0].x_m)
    return p[0].y_m;
  for (guint i = 1; i < face->n_section; i++)
    if (out_m <= p[i].x_m)
      return p[i - 1].y_m
             + (p[i].y_m - p[i - 1].y_m) * (out_m - p[i - 1].x_m)
                   / (p[i].x_m - p[i - 1].x_m);
  return p[face->n_section - 1].y_m;
}

/* The ground line between two distances out, with the breaks between them.
 * (element-type SwPaperPoint) */
static GArray *
ground_line (const SwDrawing *drawing, double from_m, double to_m)
{
  const SwFace *face = drawing->face;
  GArray *line = g_array_new (FALSE, FALSE, sizeof (SwPaperPoint));
  SwPaperPoint at = sw_drawing_at (drawing, from_m, ground_up_m (face, from_m));

  g_array_append_val (line, at);
  for (guint i = 0; i < face->n_section; i++)
    if (face->section[i].x_m > from_m && face->section[i].x_m < to_m)
      {
        at = sw_drawing_at (drawing, face->section[i].x_m, face->section[i].y_m);
        g_array_append_val (line, at);
      }
  at = sw_drawing_at (drawing, to_m, ground_up_m (face, to_m));
  g_array_append_val (line, at);
  return line;
}

static void
draw_ground (SwDrawing *drawing, SwBox box)
{
  double from_m =
      fmin (box.x0_m, drawing->seen.x0_m < box.x0_m && drawing->draw->on_screen
                          ? drawing->seen.x0_m
                          : box.x0_m);
  double to_m = drawing->draw->on_screen ? fmax (box.x1_m, drawing->seen.x1_m) : box.x1_m;
  g_autoptr (GArray) line = ground_line (drawing, from_m, to_m);

  sw_drawing_object (drawing, "/ground");
  sw_draft_soil_band (drawing->figure, (SwPaperPoint *) line->data, line->len, SOIL_MM);
  sw_figure_line (drawing->figure, SW_ROLE_GROUND, (SwPaperPoint *) line->data,
                  line->len);
}

static int
trench_index (const SwFaceLayout *laid, SwTrenchKind kind, guint tier, guint nth)
{
  double last_down_m = -INFINITY;

  for (guint i = 0; i < laid->n_trenches; i++)
    {
      const SwTrench *trench = &laid->trenches[i];

      if (trench->kind != kind || trench->tier != tier || trench->n_line == 0)
        continue;
      if (kind == SW_TRENCH_SLOT && trench->line[0].down_m <= last_down_m + 1e-6)
        continue;
      last_down_m = trench->line[0].down_m;
      if (nth-- == 0)
        return (int) i;
    }
  return -1;
}

/* A hole with its upslope edge at @out_m; (element-type SwPaperPoint): upslope edge,
 * floor, floor, downslope edge. */
static void
trench_hole (const SwDrawing *drawing, double out_m, double width_m, double depth_m,
             SwPaperPoint hole[4])
{
  double mm_per_m = drawing->view->x_mm_per_m;
  double width = fmax (width_m * mm_per_m, LEAST_TRENCH_MM * 0.8);
  double depth = fmax (depth_m * mm_per_m, LEAST_TRENCH_MM);
  double near_m = out_m + width / mm_per_m, floor;

  hole[0] = sw_drawing_at (drawing, out_m, ground_up_m (drawing->face, out_m));
  hole[3] = sw_drawing_at (drawing, near_m, ground_up_m (drawing->face, near_m));
  floor = fmax (hole[0].y_mm, hole[3].y_mm) + depth;
  hole[1] = (SwPaperPoint){ hole[0].x_mm, floor };
  hole[2] = (SwPaperPoint){ hole[3].x_mm, floor };
}

static void
draw_hole (SwDrawing *drawing, SwRole role, const SwPaperPoint hole[4], int index)
{
  sw_drawing_object (drawing, index >= 0 ? "/trench/%d" : "/trench", index);
  sw_figure_area (drawing->figure, SW_ROLE_BACKFILL, hole, 4);
  sw_figure_line (drawing->figure, role, hole, 4);
}

static void
draw_slots (SwDrawing *drawing, guint t)
{
  const SwTier *tier = &drawing->laid->tiers[t];

  for (int s = 0; s < tier->slots; s++)
    {
      int index = trench_index (drawing->laid, SW_TRENCH_SLOT, t, (guint) s);
      SwPaperPoint hole[4];

      if (index < 0)
        continue;
      trench_hole (drawing, drawing->laid->trenches[index].line[0].out_m,
                   sw_drawing_practice (drawing, SW_PRACTICE_SLOT_WIDTH_M),
                   sw_drawing_practice (drawing, SW_PRACTICE_SLOT_DEPTH_M), hole);
      draw_hole (drawing, SW_ROLE_SLOT, hole, index);
    }
}

/* Key trench, blanket and toe end of one tier, upslope to downslope. */
static void
draw_tier (SwDrawing *drawing, guint t)
{
  const SwTier *tier = &drawing->laid->tiers[t];
  const SwGround *ground = drawing->laid->ground;
  double key_width_m = sw_drawing_practice (drawing, SW_PRACTICE_TRENCH_WIDTH_M);
  double edge_m = sw_ground_out_m (
      ground, 0.0,
      tier->reach.down_from_m - sw_drawing_practice (drawing, SW_PRACTICE_SET_BACK_M));
  double end_m = tier->reach.out_to_m;
  double mm_per_m = drawing->view->x_mm_per_m;
  double drawn_width_m = fmax (key_width_m, LEAST_TRENCH_MM * 0.8 / mm_per_m);
  g_autoptr (GArray) line = ground_line (drawing, edge_m, end_m);
  g_autoptr (GArray) sheet = g_array_new (FALSE, FALSE, sizeof (SwPaperPoint));
  SwPaperPoint hole[4], toe[4];

  trench_hole (drawing, edge_m - drawn_width_m, key_width_m,
               sw_drawing_practice (drawing, SW_PRACTICE_TRENCH_DEPTH_M), hole);
  draw_hole (drawing, SW_ROLE_TRENCH, hole,
             trench_index (drawing->laid, SW_TRENCH_KEY, t, 0));
  draw_slots (drawing, t);
  g_array_append_vals (sheet, &hole[1], 2);
  g_array_set_size (sheet, 2 + line->len);
  sw_draft_offset ((SwPaperPoint *) line->data, line->len, BLANKET_ABOVE_MM,
                   &g_array_index (sheet, SwPaperPoint, 2));
  if (drawing->practice->toe_kind == SW_TOE_TRENCH)
    {
      trench_hole (drawing, end_m, sw_drawing_practice (drawing, SW_PRACTICE_TOE_WIDTH_M),
                   sw_drawing_practice (drawing, SW_PRACTICE_TOE_DEPTH_M), toe);
      draw_hole (drawing, SW_ROLE_TRENCH, toe,
                 trench_index (drawing->laid, SW_TRENCH_TOE, t, 0));
      g_array_append_vals (sheet, &toe[1], 2);
    }
  sw_drawing_object (drawing, "/tier/%u", t);
  sw_figure_line (drawing->figure, SW_ROLE_BLANKET, (SwPaperPoint *) sheet->data,
                  sheet->len);
}

/* Length along the face, then the gradient three ways, above the stretch and along it. */
static void
note_stretch (SwDrawing *drawing, Stretch stretch)
{
  const SwFace *face = drawing->face;
  const SwPoint *p = face->section;
  SwPaperPoint a = sw_drawing_at (drawing, p[stretch.from].x_m, p[stretch.from].y_m);
  SwPaperPoint b = sw_drawing_at (drawing, p[stretch.to].x_m, p[stretch.to].y_m);
  double dx = b.x_mm - a.x_mm, dy = b.y_mm - a.y_mm, size = hypot (dx, dy);
  double turn = atan2 (-dy, dx), x = (a.x_mm + b.x_mm) / 2.0, y = (a.y_mm + b.y_mm) / 2.0;
  double angle = signed_angle (face, stretch.from, stretch.to);
  g_autofree char *three = sw_gradient_text (fabs (angle), drawing->draw->style);
  g_autofree char *inward =
      sw_texts_fill (drawing->draw->texts, "drawing.falls-back", "gradient", three, NULL);
  g_autofree char *length =
      sw_drawing_length (drawing, hypot (p[stretch.to].x_m - p[stretch.from].x_m,
                                         p[stretch.to].y_m - p[stretch.from].y_m));
  const char *id = sw_drawing_object_id (drawing, "/stretch/%u", stretch.from);
  const char *words = fabs (angle) < LEVEL_RAD
                          ? sw_drawing_text (drawing, "drawing.level")
                      : angle < 0.0 ? inward
                                    : three;
  SwLabelSpot spots[5];
  static const double rows_mm[] = { GRADIENT_ROW_MM, ARROW_ROW_MM, 18.0 };

  if (size < 1.0)
    return;
  for (guint i = 0; i < 3; i++)
    spots[i] =
        (SwLabelSpot){ x + dy / size * rows_mm[i], y - dx / size * rows_mm[i], turn };
  spots[3] = (SwLabelSpot){ x, y - GRADIENT_ROW_MM - 4.0, 0.0 };
  spots[4] = (SwLabelSpot){ x, y + SOIL_MM + 4.0, 0.0 };
  sw_drawing_dimension (drawing, size > 25.0 ? SW_LABEL_NEEDED : SW_LABEL_MAIN,
                        (SwLabelSpan){ a.x_mm, a.y_mm, b.x_mm, b.y_mm, LENGTH_ROW_MM },
                        id, length);
  sw_labels_wish (drawing->labels,
                  &(SwLabelWish){ .rank = size > 25.0 ? SW_LABEL_NEEDED : SW_LABEL_MAIN,
                                  .role = SW_ROLE_TEXT,
                                  .style = SW_LABEL_KNOCK_OUT | SW_LABEL_BOLD,
                                  .size_mm = drawing->text_mm,
                                  .object = id,
                                  .text = words,
                                  .spots = spots,
                                  .n_spots = size > 20.0 ? 3 : 5 });
}

static void
note_mean (SwDrawing *drawing, SwPaperPoint a, SwPaperPoint b, double length_m)
{
  const SwFace *face = drawing->face;
  double dx = b.x_mm - a.x_mm, dy = b.y_mm - a.y_mm, size = hypot (dx, dy);
  g_autofree char *three = sw_gradient_text (
      fabs (signed_angle (face, face->crest, face->toe)), drawing->draw->style);
  g_autofree char *mean =
      sw_texts_fill (drawing->draw->texts, "drawing.mean", "gradient", three, NULL);
  g_autofree char *length = sw_drawing_length (drawing, length_m);
  g_autofree char *along =
      sw_texts_fill (drawing->draw->texts, "drawing.along-face", "length", length, NULL);
  const char *id = sw_drawing_object_id (drawing, "/stretch/%u", face->crest);

  sw_drawing_dimension (
      drawing, SW_LABEL_NEEDED,
      (SwLabelSpan){ a.x_mm, a.y_mm, b.x_mm, b.y_mm, LENGTH_ROW_MM + 2.0 }, id, along);
  sw_drawing_note (drawing, SW_LABEL_NEEDED, SW_ROLE_TEXT,
                   (a.x_mm + b.x_mm) / 2.0 + dy / size * (GRADIENT_ROW_MM + 2.0),
                   (a.y_mm + b.y_mm) / 2.0 - dx / size * (GRADIENT_ROW_MM + 2.0),
                   atan2 (-dy, dx), id, mean);
}

static void
note_steepest (SwDrawing *drawing, Stretch steepest)
{
  const SwPoint *p = drawing->face->section;
  SwPaperPoint at =
      sw_drawing_at (drawing, (p[steepest.from].x_m + p[steepest.to].x_m) / 2.0,
                     (p[steepest.from].y_m + p[steepest.to].y_m) / 2.0);
  g_autofree char *three =
      sw_gradient_text (fabs (signed_angle (drawing->face, steepest.from, steepest.to)),
                        drawing->draw->style);
  g_autofree char *words =
      sw_texts_fill (drawing->draw->texts, "drawing.steepest", "gradient", three, NULL);
  SwLabelSpot spots[] = { { at.x_mm - 14.0, at.y_mm + SOIL_MM + 8.0, 0.0 },
                          { at.x_mm - 6.0, at.y_mm + SOIL_MM + 14.0, 0.0 },
                          { at.x_mm + 22.0, at.y_mm - 24.0, 0.0 } };

  sw_drawing_callout (drawing, SW_LABEL_NEEDED, at, spots, G_N_ELEMENTS (spots),
                      sw_drawing_object_id (drawing, "/stretch/%u", steepest.from),
                      words);
}

/* Mean gradient and true length of all, and where it is steepest. */
static void
note_many (SwDrawing *drawing, const GArray *stretches)
{
  const SwFace *face = drawing->face;
  const SwPoint *p = face->section;
  SwPaperPoint a = sw_drawing_at (drawing, p[face->crest].x_m, p[face->crest].y_m);
  SwPaperPoint b = sw_drawing_at (drawing, p[face->toe].x_m, p[face->toe].y_m);
  Stretch steepest = g_array_index (stretches, Stretch, 0);
  double length_m = 0.0;

  for (guint i = face->crest; i < face->toe; i++)
    length_m += hypot (p[i + 1].x_m - p[i].x_m, p[i + 1].y_m - p[i].y_m);
  for (guint i = 1; i < stretches->len; i++)
    {
      Stretch one = g_array_index (stretches, Stretch, i);

      if (signed_angle (face, one.from, one.to)
          > signed_angle (face, steepest.from, steepest.to))
        steepest = one;
    }
  note_mean (drawing, a, b, length_m);
  note_steepest (drawing, steepest);
}

/* Which way water and rolls go. */
static void
draw_fall_arrow (SwDrawing *drawing, const GArray *stretches)
{
  const SwPoint *p = drawing->face->section;
  SwPaperPoint a = { 0 }, b = { 0 };
  double longest = 0.0, ux, uy, from = 0.08, length = 16.0, x, y;

  for (guint i = 0; i < stretches->len; i++)
    {
      Stretch stretch = g_array_index (stretches, Stretch, i);
      SwPaperPoint c = sw_drawing_at (drawing, p[stretch.from].x_m, p[stretch.from].y_m);
      SwPaperPoint d = sw_drawing_at (drawing, p[stretch.to].x_m, p[stretch.to].y_m);

      if (hypot (d.x_mm - c.x_mm, d.y_mm - c.y_mm) <= longest)
        continue;
      longest = hypot (d.x_mm - c.x_mm, d.y_mm - c.y_mm);
      a = c;
      b = d;
    }
  if (longest < 45.0)
    return;
  ux = (b.x_mm - a.x_mm) / longest;
  uy = (b.y_mm - a.y_mm) / longest;
  x = a.x_mm + ux * longest * from + uy * ARROW_ROW_MM;
  y = a.y_mm + uy * longest * from - ux * ARROW_ROW_MM;
  sw_drawing_object (drawing, "/fall-line");
  sw_draft_arrow (drawing->figure, SW_ROLE_FALL_LINE, x, y, x + ux * length,
                  y + uy * length, 2.6);
  sw_labels_reserve (drawing->labels,
                     (SwLabelBox){ x + ux * length / 2.0, y + uy * length / 2.0,
                                   length / 2.0, 1.2, atan2 (-uy, ux) });
  sw_drawing_note (drawing, SW_LABEL_USEFUL, SW_ROLE_TEXT, x + ux * (length + 9.5),
                   y + uy * (length + 9.5), atan2 (-uy, ux),
                   sw_drawing_object_id (drawing, "/fall-line"),
                   sw_drawing_text (drawing, "drawing.fall-line"));
}

/* Crest, toe and benches by name, with their level over the section's datum. */
static void
note_break (SwDrawing *drawing, guint i, const char *text_id)
{
  const SwPoint *p = &drawing->face->section[i];
  SwPaperPoint at = sw_drawing_at (drawing, p->x_m, p->y_m);
  g_autofree char *level = sw_drawing_length (drawing, p->y_m);
  g_autofree char *words =
      sw_texts_fill (drawing->draw->texts, text_id, "level", level, NULL);
  double side = i == drawing->face->crest ? -1.0 : 1.0;
  SwLabelSpot spots[] = {
    { at.x_mm + side * 11.0, at.y_mm - 8.0, 0.0 },
    { at.x_mm + side * 6.0, at.y_mm - 12.0, 0.0 },
    { at.x_mm + side * 3.0, at.y_mm - 8.0, 0.0 },
    { at.x_mm, at.y_mm - 6.0, 0.0 },
    { at.x_mm + side * 14.0, at.y_mm - 5.0, 0.0 },
    { at.x_mm - side * 12.0, at.y_mm - 9.0, 0.0 },
    { at.x_mm, at.y_mm + SOIL_MM + 3.0, 0.0 },
  };

  sw_drawing_object (drawing, "/section/%u", i);
  sw_figure_segment (drawing->figure, SW_ROLE_BREAK, at.x_mm, at.y_mm - 3.0, at.x_mm,
                     at.y_mm + SOIL_MM);
  sw_drawing_callout (drawing, SW_LABEL_NEEDED, (SwPaperPoint){ at.x_mm, at.y_mm - 2.6 },
                      spots, G_N_ELEMENTS (spots),
                      sw_drawing_object_id (drawing, "/section/%u", i), words);
}

static void
note_benches (SwDrawing *drawing)
{
  const SwFaceLayout *laid = drawing->laid;

  for (guint t = 1; laid != NULL && t < laid->n_tiers; t++)
    {
      double from_m = laid->tiers[t - 1].reach.out_to_m;
      double to_m = laid->tiers[t].reach.out_from_m, middle_m = (from_m + to_m) / 2.0;
      SwPaperPoint at =
          sw_drawing_at (drawing, middle_m, ground_up_m (drawing->face, middle_m));
      SwLabelSpot spots[] = { { at.x_mm, at.y_mm + SOIL_MM + 3.0, 0.0 },
                              { at.x_mm - 8.0, at.y_mm + SOIL_MM + 6.5, 0.0 },
                              { at.x_mm, at.y_mm - 15.0, 0.0 } };

      sw_drawing_callout (drawing, SW_LABEL_MAIN, at, spots, G_N_ELEMENTS (spots),
                          sw_drawing_object_id (drawing, "/tier/%u", t),
                          sw_drawing_text (drawing, "drawing.bench-name"));
    }
}

static void
dimension_run (SwDrawing *drawing, SwLabelRank rank, guint from, guint to, double base_mm,
               double row_mm)
{
  const SwPoint *p = drawing->face->section;
  g_autofree char *text = sw_drawing_length (drawing, p[to].x_m - p[from].x_m);

  sw_drawing_dimension (
      drawing, rank,
      (SwLabelSpan){ sw_drawing_at (drawing, p[from].x_m, 0.0).x_mm, base_mm,
                     sw_drawing_at (drawing, p[to].x_m, 0.0).x_mm, base_mm, -row_mm },
      sw_drawing_object_id (drawing, "/stretch/%u", from), text);
}

static void
dimension_rise (SwDrawing *drawing, SwLabelRank rank, guint from, guint to,
                double base_mm, double row_mm)
{
  const SwPoint *p = drawing->face->section;
  g_autofree char *text = sw_drawing_length (drawing, fabs (p[from].y_m - p[to].y_m));

  if (fabs ((p[from].y_m - p[to].y_m) * drawing->view->y_mm_per_m) < SHORT_RISE_MM)
    return;
  sw_drawing_dimension (
      drawing, rank,
      (SwLabelSpan){ base_mm, sw_drawing_at (drawing, 0.0, p[from].y_m).y_mm, base_mm,
                     sw_drawing_at (drawing, 0.0, p[to].y_m).y_mm, -row_mm },
      sw_drawing_object_id (drawing, "/stretch/%u", from), text);
}

/* Run and rise of every stretch in a chain, and of the whole face outside it. */
static void
dimension_face (SwDrawing *drawing, const GArray *stretches)
{
  const SwFace *face = drawing->face;
  const SwPoint *p = face->section;
  SwPaperPoint crest = sw_drawing_at (drawing, p[face->crest].x_m, p[face->crest].y_m);
  SwPaperPoint toe = sw_drawing_at (drawing, p[face->toe].x_m, p[face->toe].y_m);
  double below = toe.y_mm + SOIL_MM + 0.6, left = crest.x_mm - 1.0;
  gboolean chain = stretches->len > 1 && stretches->len <= MANY_STRETCHES;

  for (guint i = 0; chain && i < stretches->len; i++)
    {
      Stretch stretch = g_array_index (stretches, Stretch, i);
      SwPaperPoint at = sw_drawing_at (drawing, p[stretch.to].x_m, p[stretch.to].y_m);

      sw_figure_object (drawing->figure, "");
      if (i + 1 < stretches->len)
        {
          sw_figure_segment (drawing->figure, SW_ROLE_GRID, at.x_mm, at.y_mm + SOIL_MM,
                             at.x_mm, below);
          sw_figure_segment (drawing->figure, SW_ROLE_GRID, at.x_mm, at.y_mm, left,
                             at.y_mm);
        }
      dimension_run (drawing, SW_LABEL_USEFUL, stretch.from, stretch.to, below,
                     FIRST_ROW_MM);
      dimension_rise (drawing, SW_LABEL_USEFUL, stretch.from, stretch.to, left,
                      FIRST_ROW_MM);
    }
  sw_figure_segment (drawing->figure, SW_ROLE_GRID, crest.x_mm, crest.y_mm + SOIL_MM,
                     crest.x_mm, below);
  dimension_run (drawing, SW_LABEL_NEEDED, face->crest, face->toe, below,
                 FIRST_ROW_MM + (chain ? NEXT_ROW_MM : 0.0));
  dimension_rise (drawing, SW_LABEL_NEEDED, face->crest, face->toe, left,
                  FIRST_ROW_MM + (chain ? NEXT_ROW_MM : 0.0));
}

/* A level line at the toe, so that rises can be read. */
static void
draw_datum (SwDrawing *drawing, SwBox box)
{
  const SwPoint *toe = &drawing->face->section[drawing->face->toe];
  SwPaperPoint left = sw_drawing_at (drawing, box.x0_m, toe->y_m);
  SwPaperPoint right = sw_drawing_at (drawing, toe->x_m, toe->y_m);

  sw_drawing_object (drawing, "/datum");
  sw_draft_dashes (drawing->figure, SW_ROLE_GRID, left.x_mm, left.y_mm, right.x_mm,
                   right.y_mm, 1.6);
  sw_drawing_note (drawing, SW_LABEL_USEFUL, SW_ROLE_MUTED,
                   left.x_mm + (right.x_mm - left.x_mm) * 0.42, left.y_mm - 2.2, 0.0,
                   sw_drawing_object_id (drawing, "/datum"),
                   sw_drawing_text (drawing, "drawing.toe-level"));
}

GArray *
sw_section_key (const SwResult *result, const SwDraw *draw, double mm_per_m)
{
  GArray *key = sw_key_new ();
  gboolean larger;

  sw_key_add (key, SW_ROLE_GROUND, SW_KEY_LINE,
              g_strdup (sw_texts_get (draw->texts, "drawing.key.ground")));
  if (result->layout != NULL)
    {
      const SwPractice *practice = result->layout->practice;

      larger =
          practice->values[SW_PRACTICE_TRENCH_DEPTH_M].value * mm_per_m < LEAST_TRENCH_MM;
      sw_key_add (key, SW_ROLE_BLANKET, SW_KEY_LINE,
                  g_strdup (sw_texts_get (draw->texts, "drawing.key.blanket")));
      sw_key_add (
          key, SW_ROLE_TRENCH, SW_KEY_LINE,
          g_strdup (sw_texts_get (draw->texts, larger ? "drawing.key.trench-larger"
                                                      : "drawing.key.trench")));
    }
  sw_key_add (key, SW_ROLE_TEXT, SW_KEY_NONE,
              g_strdup (sw_texts_get (draw->texts, "drawing.key.same-scale")));
  return key;
}

/* Sections taken elsewhere along the crest, thinly, with the place where they were taken. */
static void
draw_further (SwDrawing *drawing)
{
  const SwFace *face = drawing->face;

  for (guint i = 0; i < face->n_further; i++)
    {
      const SwPoint *p = face->further[i].section;
      g_autofree char *place = sw_drawing_length (drawing, face->further[i].along_m);
      g_autofree char *words = sw_texts_fill (
          drawing->draw->texts, "drawing.further-section", "along", place, NULL);
      const char *id = sw_drawing_object_id (drawing, "/further/%u", i);
      SwPaperPoint last = { 0.0, 0.0 };

      sw_figure_object (drawing->figure, id);
      for (guint k = 0; k < face->n_section; k++)
        {
          SwPaperPoint at = sw_drawing_at (drawing, p[k].x_m, p[k].y_m);

          if (k > 0)
            sw_draft_dashes (drawing->figure, SW_ROLE_MUTED, last.x_mm, last.y_mm,
                             at.x_mm, at.y_mm, FURTHER_DASH_MM);
          last = at;
        }
      sw_drawing_callout (drawing, SW_LABEL_USEFUL, last,
                          (SwLabelSpot[]){ { last.x_mm - 6.0, last.y_mm + 9.0, 0.0 },
                                           { last.x_mm + 4.0, last.y_mm - 12.0, 0.0 },
                                           { last.x_mm - 16.0, last.y_mm + 13.0, 0.0 } },
                          3, id, words);
    }
}

static void
draw_notes (SwDrawing *drawing, SwBox box)
{
  const SwFace *face = drawing->face;
  g_autoptr (GArray) stretches = find_stretches (face);

  draw_datum (drawing, box);
  draw_further (drawing);
  if (stretches->len <= MANY_STRETCHES)
    for (guint i = 0; i < stretches->len; i++)
      note_stretch (drawing, g_array_index (stretches, Stretch, i));
  else
    note_many (drawing, stretches);
  dimension_face (drawing, stretches);
  note_break (drawing, face->crest, "drawing.crest");
  note_break (drawing, face->toe, "drawing.toe");
  note_benches (drawing);
  draw_fall_arrow (drawing, stretches);
}

SwFigure *
sw_draw_section (const SwResult *result, guint face_index, const SwView *view,
                 const SwDraw *draw)
{
  SwDrawing drawing;
  SwBox box = sw_section_box (result, face_index);
  const SwFace *face = sw_result_face (result, face_index);
  g_autoptr (GArray) key = sw_section_key (result, draw, fabs (view->x_mm_per_m));

  sw_drawing_begin (&drawing, result, face_index, view, draw, "drawing.section-title");
  sw_drawing_caption (&drawing, drawing.figure->title);
  sw_drawing_foot (&drawing, key);
  if (face->n_section >= 2)
    {
      draw_ground (&drawing, box);
      for (guint t = 0; drawing.laid != NULL && t < drawing.laid->n_tiers; t++)
        draw_tier (&drawing, t);
      if (face->crest < face->toe && face->toe < face->n_section)
        draw_notes (&drawing, box);
      for (guint i = 0; i < face->n_section; i++)
        sw_drawing_handle (
            &drawing,
            sw_drawing_at (&drawing, face->section[i].x_m, face->section[i].y_m),
            "section", i);
    }
  return sw_drawing_end (&drawing);
}
