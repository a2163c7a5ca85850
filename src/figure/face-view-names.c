/* SPDX-License-Identifier: MIT */
#include "face-view-arcs.h"
#include <math.h>

#define NAME_GAP_MM 1.5
#define NAME_IN_MM 0.6
#define NAME_SPOTS 8

/* Round a face the first so many are near the end that they name. */
#define ROUND_BESIDE 4

/* Along the line from a name beside the face to one past the fall line's words. */
#define PAST_FALL_MM 8.2

/* The fall line's arrow, and its words along it. */
#define ARROW_MM 16.0
#define SHORT_FALL_MM 14.0
#define LEAST_FALL_MM 2.5
#define FALL_GAP_MM 4.0
#define FALL_WORDS_MM 3.6

/* Further out round a face. */
#define NEXT_ROW_MM 5.4

/* Where a text stands beside an end of a line across the face: way 1 right, -1 left. */
static SwLabelSpot
beside_end (const SwDrawing *drawing, SwBox box, double way, double down_m, double off_mm,
            double shift_mm, double half_width_mm)
{
  double along_m = way > 0.0 ? box.x1_m : box.x0_m;
  SwLabelBox text_box = { 0.0, 0.0, half_width_mm, drawing->text_mm / 2.0, 0.0 };
  double reach_mm =
      sw_label_shadow_mm (text_box, sw_face_view_turn_rad (drawing, along_m));
  SwPaperPoint at =
      sw_face_view_beside (drawing, along_m, down_m, way * (off_mm + reach_mm), shift_mm);

  return (SwLabelSpot){ at.x_mm, at.y_mm, 0.0 };
}

/* What takes room at the right edge before names and fall line: runs past the cut of a
 * heap, or the dimensions that ruled ground has there. */
static double
beside_mm (const SwDrawing *drawing, double down_m)
{
  return drawing->face->n_further > 0 ? SW_RULED_ROW_MM
                                      : sw_face_view_past_cut_mm (drawing, down_m);
}

/* Inside the tier, else more and more outside it, else past the fall line's words. */
static guint
straight_spots (const SwDrawing *drawing, SwBox box, double down_m, double inwards,
                double half_width_mm, SwLabelSpot spots[NAME_SPOTS])
{
  static const double ins_mm[] = { NAME_IN_MM, -1.0, -2.6, -4.2, -5.8 };
  double off_mm = NAME_GAP_MM + beside_mm (drawing, down_m);
  guint n = 0;

  for (; n < G_N_ELEMENTS (ins_mm); n++)
    spots[n] = beside_end (drawing, box, 1.0, down_m, off_mm, inwards * ins_mm[n],
                           half_width_mm);
  spots[n++] = beside_end (drawing, box, 1.0, down_m, off_mm + PAST_FALL_MM,
                           inwards * NAME_IN_MM, half_width_mm);
  return n;
}

/* At the right and the left end by turns, further and further out. */
static guint
round_spots (const SwDrawing *drawing, SwBox box, double down_m, double inwards,
             double half_width_mm, SwLabelSpot spots[NAME_SPOTS])
{
  double off_mm = NAME_GAP_MM + beside_mm (drawing, down_m);

  for (guint i = 0; i < NAME_SPOTS; i++)
    spots[i] =
        beside_end (drawing, box, i % 2 == 0 ? 1.0 : -1.0, down_m,
                    off_mm + i / 2 * NEXT_ROW_MM, inwards * NAME_IN_MM, half_width_mm);
  return NAME_SPOTS;
}

void
sw_face_view_name_line (SwDrawing *drawing, SwBox box, double down_m, double inwards,
                        const char *text, const char *object)
{
  double half = sw_drawing_width_mm (drawing, text, drawing->text_mm) / 2.0;
  gboolean is_round = sw_development_is_bent (drawing->development);
  SwPaperPoint end = sw_face_view_at (drawing, box.x1_m, down_m);
  SwLabelSpot spots[NAME_SPOTS + SW_ARC_SPOTS];
  guint n_beside = (is_round ? round_spots : straight_spots) (drawing, box, down_m,
                                                              inwards, half, spots);
  guint n = n_beside;

  if (is_round)
    n_beside = ROUND_BESIDE;
  if (is_round)
    n += sw_arc_spots (drawing, box, end, sw_face_view_turn_rad (drawing, box.x1_m), text,
                       spots + n);
  sw_drawing_name (drawing, SW_LABEL_MAIN, end, spots, n, n_beside, object, text);
}

static const SwTier *
longest_tier (const SwFaceLayout *laid)
{
  const SwTier *longest = &laid->tiers[0];

  for (guint t = 1; t < laid->n_tiers; t++)
    if (laid->tiers[t].length_m > longest->length_m)
      longest = &laid->tiers[t];
  return longest;
}

static double
words_mm (const SwDrawing *drawing, const char *text_id)
{
  return sw_drawing_width_mm (drawing, sw_drawing_text (drawing, text_id),
                              drawing->text_mm);
}

/* How far out the fall line stands: between the names of the tier's ends, beyond them where
 * it or its words are too long for that and the sheet has the room. */
static double
fall_line_off_mm (const SwDrawing *drawing, SwBox box, double height_mm)
{
  double off_mm = beside_mm (drawing, 0.0) + FALL_GAP_MM;
  double name_mm = words_mm (drawing, "drawing.crest-line");
  double needed_mm = words_mm (drawing, "drawing.fall-line") + 2.0 * NAME_IN_MM
                     + drawing->text_mm + NAME_GAP_MM;
  double right_mm = sw_face_view_at (drawing, box.x1_m, box.y0_m).x_mm;
  double beyond_mm = off_mm + name_mm + FALL_WORDS_MM + drawing->text_mm;

  if (height_mm < SHORT_FALL_MM
      || (!sw_development_is_bent (drawing->development) && height_mm < needed_mm
          && right_mm + beyond_mm <= drawing->view->width_mm))
    return off_mm + name_mm;
  return off_mm;
}

/* Along the arrow outside it, further down where it is narrow beside its middle. */
static void
name_fall_line (SwDrawing *drawing, SwBox box, double off_mm, double from_m,
                double middle_mm)
{
  static const double shifts_mm[] = { 0.0, 3.0, 6.0, 9.0 };
  double turn = sw_face_view_turn_rad (drawing, box.x1_m);
  const char *words = sw_drawing_text (drawing, "drawing.fall-line");
  SwPaperPoint arrow = sw_face_view_beside (drawing, box.x1_m, from_m, off_mm, middle_mm);
  SwLabelSpot spots[G_N_ELEMENTS (shifts_mm) + SW_ARC_SPOTS];
  guint n = G_N_ELEMENTS (shifts_mm);

  for (guint i = 0; i < G_N_ELEMENTS (shifts_mm); i++)
    {
      SwPaperPoint at = sw_face_view_beside (
          drawing, box.x1_m, from_m, off_mm + FALL_WORDS_MM, middle_mm + shifts_mm[i]);

      spots[i] =
          (SwLabelSpot){ at.x_mm, at.y_mm, sw_label_reading_turn_rad (turn + G_PI_2) };
    }
  if (sw_development_is_bent (drawing->development))
    n += sw_arc_spots (drawing, box, arrow, turn, words, spots + n);
  sw_drawing_name (drawing, SW_LABEL_NEEDED, arrow, spots, n, G_N_ELEMENTS (shifts_mm),
                   sw_drawing_object_id (drawing, "/fall-line"), words);
}

/* Beside the longest tier. */
void
sw_face_view_fall_line (SwDrawing *drawing, SwBox box)
{
  const SwTier *tier = longest_tier (drawing->laid);
  double turn = sw_face_view_turn_rad (drawing, box.x1_m);
  double from_m = sw_face_view_tier_down_m (drawing, tier, FALSE, box.x1_m);
  double height = (sw_face_view_tier_down_m (drawing, tier, TRUE, box.x1_m) - from_m)
                  * fabs (drawing->view->y_mm_per_m);
  double length = height < SHORT_FALL_MM ? height * 0.8 : fmin (ARROW_MM, height - 8.0);
  double off_mm = fall_line_off_mm (drawing, box, height);
  /* In the gap of an unrolled heap the words for its crest need the upper half. */
  double first = tier->closed ? height - length - 4.0 : (height - length) / 2.0;
  SwPaperPoint a = sw_face_view_beside (drawing, box.x1_m, from_m, off_mm, first);
  SwPaperPoint b =
      sw_face_view_beside (drawing, box.x1_m, from_m, off_mm, first + length);

  if (length < LEAST_FALL_MM)
    return;
  sw_drawing_object (drawing, "/fall-line");
  sw_draft_arrow (drawing->figure, SW_ROLE_FALL_LINE, a.x_mm, a.y_mm, b.x_mm, b.y_mm,
                  fmin (2.8, length / 2.0));
  sw_labels_reserve (drawing->labels,
                     (SwLabelBox){ (a.x_mm + b.x_mm) / 2.0, (a.y_mm + b.y_mm) / 2.0, 1.2,
                                   length / 2.0, turn });
  name_fall_line (drawing, box, off_mm, from_m, first + length / 2.0);
}
