/* SPDX-License-Identifier: MIT */
#include "section.h"
#include <math.h>

/* Distances of the notes from the ground line, along its normal. */
#define LENGTH_ROW_MM 5.0
#define GRADIENT_ROW_MM 9.2
#define ARROW_ROW_MM 13.6

/* Stretches this close in direction are one: 0.05 degrees. */
#define SAME_RAD 0.0009

/* A stretch flatter than this is called level: 0.1 degrees. */
#define LEVEL_RAD 0.0018

double
sw_section_fall_rad (const SwFace *face, guint from, guint to)
{
  const SwPoint *a = &face->section[from], *b = &face->section[to];

  return atan2 (a->y_m - b->y_m, b->x_m - a->x_m);
}

GArray *
sw_section_stretches (const SwFace *face)
{
  GArray *stretches = g_array_new (FALSE, FALSE, sizeof (SwStretch));

  for (guint i = face->crest; i < face->toe && face->toe < face->n_section; i++)
    {
      SwStretch next = { i, i + 1 };
      SwStretch *last = stretches->len > 0
                            ? &g_array_index (stretches, SwStretch, stretches->len - 1)
                            : NULL;

      if (last != NULL
          && fabs (sw_section_fall_rad (face, last->from, last->to)
                   - sw_section_fall_rad (face, i, i + 1))
                 < SAME_RAD)
        last->to = i + 1;
      else
        g_array_append_val (stretches, next);
    }
  return stretches;
}

/* Words of a stretch shorter than this may stand level; below it they try so many places to
 * the left. */
#define SHORT_STRETCH_MM 20.0
#define BELOW_STEPS 8
#define GRADIENT_SPOTS (4 + 3 * (BELOW_STEPS + 1))

/* Between an arrow and its name, beyond it or beside it. */
#define ARROW_NAME_GAP_MM 1.5
#define ARROW_NAME_ROW_MM 3.0

/* Along the stretch in rows above it; where that is too short, level above and below it. */
static guint
gradient_spots (SwPaperPoint a, SwPaperPoint b, double half_mm,
                SwLabelSpot spots[GRADIENT_SPOTS])
{
  static const double rows_mm[] = { GRADIENT_ROW_MM, ARROW_ROW_MM, 18.0 };
  static const double below_mm[] = { 4.0, 7.5, 11.0 };
  double dx = b.x_mm - a.x_mm, dy = b.y_mm - a.y_mm, size = hypot (dx, dy);
  double x = (a.x_mm + b.x_mm) / 2.0, y = (a.y_mm + b.y_mm) / 2.0;
  guint n = 0;

  for (; n < G_N_ELEMENTS (rows_mm); n++)
    spots[n] = (SwLabelSpot){ x + dy / size * rows_mm[n], y - dx / size * rows_mm[n],
                              atan2 (-dy, dx) };
  if (size > SHORT_STRETCH_MM && 2.0 * half_mm <= size)
    return n;
  spots[n++] = (SwLabelSpot){ x, y - GRADIENT_ROW_MM - 4.0, 0.0 };
  for (guint row = 0; row < G_N_ELEMENTS (below_mm); row++)
    for (guint i = 0; i <= BELOW_STEPS; i++)
      spots[n++] = (SwLabelSpot){ x - 2.0 * half_mm * i / BELOW_STEPS,
                                  y + SW_SECTION_SOIL_MM + below_mm[row], 0.0 };
  return n;
}

/* Length along the face, then the gradient three ways, above the stretch and along it. */
static void
note_stretch (SwDrawing *drawing, SwStretch stretch)
{
  const SwFace *face = drawing->face;
  const SwPoint *p = face->section;
  SwPaperPoint a = sw_drawing_at (drawing, p[stretch.from].x_m, p[stretch.from].y_m);
  SwPaperPoint b = sw_drawing_at (drawing, p[stretch.to].x_m, p[stretch.to].y_m);
  double size = hypot (b.x_mm - a.x_mm, b.y_mm - a.y_mm);
  double angle = sw_section_fall_rad (face, stretch.from, stretch.to);
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
  double half = sw_drawing_width_mm (drawing, words, drawing->text_mm) / 2.0;
  SwLabelSpot spots[GRADIENT_SPOTS];

  if (size < 1.0)
    return;
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
                                  .n_spots = gradient_spots (a, b, half, spots) });
}

static void
note_mean (SwDrawing *drawing, SwPaperPoint a, SwPaperPoint b, double length_m)
{
  const SwFace *face = drawing->face;
  double dx = b.x_mm - a.x_mm, dy = b.y_mm - a.y_mm, size = hypot (dx, dy);
  g_autofree char *three = sw_gradient_text (
      fabs (sw_section_fall_rad (face, face->crest, face->toe)), drawing->draw->style);
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
note_steepest (SwDrawing *drawing, SwStretch steepest)
{
  const SwPoint *p = drawing->face->section;
  SwPaperPoint at =
      sw_drawing_at (drawing, (p[steepest.from].x_m + p[steepest.to].x_m) / 2.0,
                     (p[steepest.from].y_m + p[steepest.to].y_m) / 2.0);
  g_autofree char *three = sw_gradient_text (
      fabs (sw_section_fall_rad (drawing->face, steepest.from, steepest.to)),
      drawing->draw->style);
  g_autofree char *words =
      sw_texts_fill (drawing->draw->texts, "drawing.steepest", "gradient", three, NULL);
  SwLabelSpot spots[] = { { at.x_mm - 14.0, at.y_mm + SW_SECTION_SOIL_MM + 8.0, 0.0 },
                          { at.x_mm - 6.0, at.y_mm + SW_SECTION_SOIL_MM + 14.0, 0.0 },
                          { at.x_mm + 6.0, at.y_mm + SW_SECTION_SOIL_MM + 17.0, 0.0 },
                          { at.x_mm + 14.0, at.y_mm + SW_SECTION_SOIL_MM + 21.0, 0.0 },
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
  SwStretch steepest = g_array_index (stretches, SwStretch, 0);
  double length_m = 0.0;

  for (guint i = face->crest; i < face->toe; i++)
    length_m += hypot (p[i + 1].x_m - p[i].x_m, p[i + 1].y_m - p[i].y_m);
  for (guint i = 1; i < stretches->len; i++)
    {
      SwStretch one = g_array_index (stretches, SwStretch, i);

      if (sw_section_fall_rad (face, one.from, one.to)
          > sw_section_fall_rad (face, steepest.from, steepest.to))
        steepest = one;
    }
  note_mean (drawing, a, b, length_m);
  note_steepest (drawing, steepest);
}

/* Beyond the arrow's point, else above it. */
static void
name_fall_arrow (SwDrawing *drawing, SwPaperPoint from, double ux, double uy,
                 double length_mm)
{
  const char *words = sw_drawing_text (drawing, "drawing.fall-line");
  double beyond_mm = length_mm + ARROW_NAME_GAP_MM
                     + sw_drawing_width_mm (drawing, words, drawing->text_mm) / 2.0;
  double turn = atan2 (-uy, ux), middle_mm = length_mm / 2.0;
  SwLabelSpot spots[] = {
    { from.x_mm + ux * beyond_mm, from.y_mm + uy * beyond_mm, turn },
    { from.x_mm + ux * middle_mm + uy * ARROW_NAME_ROW_MM,
      from.y_mm + uy * middle_mm - ux * ARROW_NAME_ROW_MM, turn },
    { from.x_mm + ux * middle_mm - uy * ARROW_NAME_ROW_MM,
      from.y_mm + uy * middle_mm + ux * ARROW_NAME_ROW_MM, turn },
  };

  sw_drawing_label (drawing, SW_LABEL_USEFUL, spots, G_N_ELEMENTS (spots),
                    sw_drawing_object_id (drawing, "/fall-line"), words);
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
      SwStretch stretch = g_array_index (stretches, SwStretch, i);
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
  name_fall_arrow (drawing, (SwPaperPoint){ x, y }, ux, uy, length);
}

void
sw_section_gradients (SwDrawing *drawing, const GArray *stretches)
{
  if (stretches->len > SW_SECTION_MANY)
    note_many (drawing, stretches);
  else
    for (guint i = 0; i < stretches->len; i++)
      note_stretch (drawing, g_array_index (stretches, SwStretch, i));
  draw_fall_arrow (drawing, stretches);
}
