/* SPDX-License-Identifier: MIT */
#include "section.h"
#include <math.h>

#define BLANKET_ABOVE_MM 0.5

/* Trenches smaller than this on paper are drawn this large, and the key says so. */
#define LEAST_TRENCH_MM 1.5

/* The ground line between two distances out, with the breaks between them. (element-
 * type SwPaperPoint) */
static GArray *
ground_line (const SwDrawing *drawing, double from_m, double to_m)
{
  const SwFace *face = drawing->face;
  GArray *line = g_array_new (FALSE, FALSE, sizeof (SwPaperPoint));
  SwPaperPoint at = sw_drawing_at (drawing, from_m, sw_face_up_m (face, from_m));

  g_array_append_val (line, at);
  for (guint i = 0; i < face->n_section; i++)
    if (face->section[i].x_m > from_m && face->section[i].x_m < to_m)
      {
        at = sw_drawing_at (drawing, face->section[i].x_m, face->section[i].y_m);
        g_array_append_val (line, at);
      }
  at = sw_drawing_at (drawing, to_m, sw_face_up_m (face, to_m));
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
  sw_draft_soil_band (drawing->figure, (SwPaperPoint *) line->data, line->len,
                      SW_SECTION_SOIL_MM);
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

  hole[0] = sw_drawing_at (drawing, out_m, sw_face_up_m (drawing->face, out_m));
  hole[3] = sw_drawing_at (drawing, near_m, sw_face_up_m (drawing->face, near_m));
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

/* A trench runs along the crest; on ruled ground not square to the section. */
static double
trench_out_m (const SwTrench *trench, double along_m)
{
  for (guint i = 1; i < trench->n_line; i++)
    {
      double from_m = trench->line[i - 1].along_m, to_m = trench->line[i].along_m;

      if (along_m >= from_m && along_m <= to_m && to_m > from_m)
        return trench->line[i - 1].out_m
               + (trench->line[i].out_m - trench->line[i - 1].out_m) * (along_m - from_m)
                     / (to_m - from_m);
    }
  return trench->line[0].out_m;
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
      trench_hole (
          drawing,
          trench_out_m (&drawing->laid->trenches[index], drawing->face->section_along_m),
          sw_drawing_practice (drawing, SW_PRACTICE_SLOT_WIDTH_M),
          sw_drawing_practice (drawing, SW_PRACTICE_SLOT_DEPTH_M), hole);
      draw_hole (drawing, SW_ROLE_SLOT, hole, index);
    }
}

/* The walls of a key trench that the blanket takes, from its end to the downslope edge. */
static void
add_lining (SwLining lining, const SwPaperPoint hole[4], GArray *sheet)
{
  guint skip = lining == SW_LINING_DOWN_ACROSS_UP ? 0 : lining == SW_LINING_DOWN ? 2 : 1;

  g_array_append_vals (sheet, &hole[skip], 3 - skip);
}

/* Where a tier begins, down, and ends, out, in the section drawn. */
static void
tier_ends (const SwDrawing *drawing, const SwTier *tier, double *down_from_m,
           double *out_to_m)
{
  const SwGround *ground = drawing->laid->ground;
  double along_m = drawing->face->section_along_m;
  gboolean ruled = drawing->face->n_further > 0;

  *down_from_m = ruled ? sw_ground_break_down_m (ground, tier->reach.from_break, along_m)
                       : tier->reach.down_from_m;
  *out_to_m = ruled ? sw_ground_break_out_m (ground, tier->reach.to_break, along_m)
                    : tier->reach.out_to_m;
}

/* Key trench, blanket and toe end of one tier, upslope to downslope. */
static void
draw_tier (SwDrawing *drawing, guint t)
{
  const SwTier *tier = &drawing->laid->tiers[t];
  const SwGround *ground = drawing->laid->ground;
  double key_width_m = sw_drawing_practice (drawing, SW_PRACTICE_TRENCH_WIDTH_M);
  double down_from_m, end_m, edge_m;
  double mm_per_m = drawing->view->x_mm_per_m;
  double drawn_width_m = fmax (key_width_m, LEAST_TRENCH_MM * 0.8 / mm_per_m);
  g_autoptr (GArray) line = NULL;
  g_autoptr (GArray) sheet = g_array_new (FALSE, FALSE, sizeof (SwPaperPoint));
  SwPaperPoint hole[4], toe[4];
  guint first;

  tier_ends (drawing, tier, &down_from_m, &end_m);
  edge_m = sw_ground_out_m (ground, drawing->face->section_along_m,
                            down_from_m
                                - sw_drawing_practice (drawing, SW_PRACTICE_SET_BACK_M));
  line = ground_line (drawing, edge_m, end_m);
  trench_hole (drawing, edge_m - drawn_width_m, key_width_m,
               sw_drawing_practice (drawing, SW_PRACTICE_TRENCH_DEPTH_M), hole);
  draw_hole (drawing, SW_ROLE_TRENCH, hole,
             trench_index (drawing->laid, SW_TRENCH_KEY, t, 0));
  draw_slots (drawing, t);
  add_lining (drawing->practice->trench_lining, hole, sheet);
  first = sheet->len;
  g_array_set_size (sheet, first + line->len);
  sw_draft_offset ((SwPaperPoint *) line->data, line->len, BLANKET_ABOVE_MM,
                   &g_array_index (sheet, SwPaperPoint, first));
  if (drawing->practice->toe_kind == SW_TOE_TRENCH)
    {
      trench_hole (drawing, end_m, sw_drawing_practice (drawing, SW_PRACTICE_TOE_WIDTH_M),
                   sw_drawing_practice (drawing, SW_PRACTICE_TOE_DEPTH_M), toe);
      draw_hole (drawing, SW_ROLE_TRENCH, toe,
                 trench_index (drawing->laid, SW_TRENCH_TOE, t, 0));
      g_array_append_vals (sheet, &toe[1],
                           drawing->practice->toe_lining == SW_LINING_DOWN          ? 1
                           : drawing->practice->toe_lining == SW_LINING_DOWN_ACROSS ? 2
                                                                                    : 3);
    }
  sw_drawing_object (drawing, "/tier/%u", t);
  sw_figure_line (drawing->figure, SW_ROLE_BLANKET, (SwPaperPoint *) sheet->data,
                  sheet->len);
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

      larger = sw_practice_get (practice, SW_PRACTICE_TRENCH_DEPTH_M) * mm_per_m
               < LEAST_TRENCH_MM;
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

/* A section taken elsewhere and the face's own change places. @further: to hold the others. */
static void
bring_forward (SwFace *face, SwCrossSection *further, guint which)
{
  SwCrossSection own = { face->section_along_m, face->section };

  for (guint i = 0; i < face->n_further; i++)
    further[i] = face->further[i];
  face->section_along_m = further[which - 1].along_m;
  face->section = further[which - 1].section;
  further[which - 1] = own;
  face->further = further;
}

SwFigure *
sw_draw_section (const SwResult *result, guint face_index, const SwView *view,
                 const SwDraw *draw)
{
  SwDrawing drawing;
  SwBox box = sw_section_box (result, face_index);
  SwFace shown = *sw_result_face (result, face_index);
  g_autofree SwCrossSection *further = g_new (SwCrossSection, shown.n_further);
  const SwFace *face = &shown;
  g_autoptr (GArray) key = sw_section_key (result, draw, fabs (view->x_mm_per_m));

  sw_drawing_begin (&drawing, result, face_index, view, draw, "drawing.section-title");
  if (draw->section > 0 && draw->section <= shown.n_further)
    bring_forward (&shown, further, draw->section);
  drawing.face = face;
  sw_drawing_caption (&drawing, drawing.figure->title);
  sw_drawing_foot (&drawing, key);
  if (face->n_section >= 2)
    {
      draw_ground (&drawing, box);
      for (guint t = 0; drawing.laid != NULL && t < drawing.laid->n_tiers; t++)
        draw_tier (&drawing, t);
      if (face->crest < face->toe && face->toe < face->n_section)
        sw_section_notes (&drawing, box);
      for (guint i = 0; i < face->n_section; i++)
        sw_drawing_handle (
            &drawing,
            sw_drawing_at (&drawing, face->section[i].x_m, face->section[i].y_m),
            "section", i);
    }
  return sw_drawing_end (&drawing);
}
