/* SPDX-License-Identifier: MIT */
#include "run-on.h"
#include "section.h"
#include <math.h>

/* Dimensions below the toe. */
#define FIRST_ROW_MM 4.5
#define CANVAS_ROW_MM 3.8 /* on screen, where there is less room below */
#define NEXT_ROW_MM 6.2

/* Rises shorter than this on paper carry no dimension. */
#define SHORT_RISE_MM 3.0

/* Half the thickness of ground and blanket, which texts keep off. */
#define GROUND_LINE_MM 0.6

/* A level stands so far beside the line through its break. */
#define BESIDE_MM 1.5

/* Dashes of a section taken elsewhere. */
#define FURTHER_DASH_MM 1.2

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
  double half = sw_drawing_width_mm (drawing, words, drawing->text_mm) / 2.0;
  SwLabelSpot spots[] = {
    { at.x_mm + side * 11.0, at.y_mm - 8.0, 0.0 },
    { at.x_mm + side * 6.0, at.y_mm - 12.0, 0.0 },
    { at.x_mm + side * 3.0, at.y_mm - 8.0, 0.0 },
    { at.x_mm, at.y_mm - 6.0, 0.0 },
    { at.x_mm + side * 14.0, at.y_mm - 5.0, 0.0 },
    { at.x_mm - side * 12.0, at.y_mm - 9.0, 0.0 },
    { at.x_mm, at.y_mm + SW_SECTION_SOIL_MM + 3.0, 0.0 },
    { at.x_mm + side * (half + BESIDE_MM), at.y_mm - 8.0, 0.0 },
    { at.x_mm + side * (half + BESIDE_MM), at.y_mm + SW_SECTION_SOIL_MM + 3.0, 0.0 },
    { at.x_mm + side * (half + BESIDE_MM), at.y_mm - 5.0, 0.0 },
    { at.x_mm, at.y_mm - 16.0, 0.0 },
  };

  sw_drawing_object (drawing, "/section/%u", i);
  sw_figure_segment (drawing->figure, SW_ROLE_BREAK, at.x_mm, at.y_mm - 3.0, at.x_mm,
                     at.y_mm + SW_SECTION_SOIL_MM);
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
          sw_drawing_at (drawing, middle_m, sw_face_up_m (drawing->face, middle_m));
      SwLabelSpot spots[] = { { at.x_mm, at.y_mm + SW_SECTION_SOIL_MM + 3.0, 0.0 },
                              { at.x_mm - 8.0, at.y_mm + SW_SECTION_SOIL_MM + 6.5, 0.0 },
                              { at.x_mm, at.y_mm - 15.0, 0.0 } };

      sw_drawing_callout (drawing, SW_LABEL_USEFUL, at, spots, G_N_ELEMENTS (spots),
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
  double below = toe.y_mm + SW_SECTION_SOIL_MM + 0.6, left = crest.x_mm - 1.0;
  gboolean chain = stretches->len > 1 && stretches->len <= SW_SECTION_MANY;
  double first_mm = drawing->draw->on_screen ? CANVAS_ROW_MM : FIRST_ROW_MM;
  double whole_mm = first_mm + (chain ? NEXT_ROW_MM : 0.0);

  for (guint i = 0; chain && i < stretches->len; i++)
    {
      SwStretch stretch = g_array_index (stretches, SwStretch, i);
      SwPaperPoint at = sw_drawing_at (drawing, p[stretch.to].x_m, p[stretch.to].y_m);

      sw_figure_object (drawing->figure, "");
      if (i + 1 < stretches->len)
        {
          sw_figure_segment (drawing->figure, SW_ROLE_GRID, at.x_mm,
                             at.y_mm + SW_SECTION_SOIL_MM, at.x_mm, below);
          sw_figure_segment (drawing->figure, SW_ROLE_GRID, at.x_mm, at.y_mm, left,
                             at.y_mm);
        }
      dimension_run (drawing, SW_LABEL_USEFUL, stretch.from, stretch.to, below, first_mm);
      dimension_rise (drawing, SW_LABEL_USEFUL, stretch.from, stretch.to, left, first_mm);
    }
  sw_figure_segment (drawing->figure, SW_ROLE_GRID, crest.x_mm,
                     crest.y_mm + SW_SECTION_SOIL_MM, crest.x_mm, below);
  dimension_run (drawing, SW_LABEL_NEEDED, face->crest, face->toe, below, whole_mm);
  dimension_rise (drawing, SW_LABEL_NEEDED, face->crest, face->toe, left, whole_mm);
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

/* No text on the line of the ground. */
static void
reserve_ground (SwDrawing *drawing)
{
  const SwPoint *p = drawing->face->section;

  for (guint i = 0; i + 1 < drawing->face->n_section; i++)
    {
      SwPaperPoint a = sw_drawing_at (drawing, p[i].x_m, p[i].y_m);
      SwPaperPoint b = sw_drawing_at (drawing, p[i + 1].x_m, p[i + 1].y_m);
      double dx = b.x_mm - a.x_mm, dy = b.y_mm - a.y_mm;

      sw_labels_reserve (drawing->labels,
                         (SwLabelBox){ (a.x_mm + b.x_mm) / 2.0, (a.y_mm + b.y_mm) / 2.0,
                                       hypot (dx, dy) / 2.0, GROUND_LINE_MM,
                                       atan2 (-dy, dx) });
    }
}

void
sw_section_notes (SwDrawing *drawing, SwBox box)
{
  const SwFace *face = drawing->face;
  g_autoptr (GArray) stretches = sw_section_stretches (face);

  reserve_ground (drawing);
  draw_datum (drawing, box);
  draw_further (drawing);
  sw_section_gradients (drawing, stretches);
  dimension_face (drawing, stretches);
  note_break (drawing, face->crest, "drawing.crest");
  note_break (drawing, face->toe, "drawing.toe");
  note_benches (drawing);
  sw_section_run_on (drawing);
}
