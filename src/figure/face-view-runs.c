/* SPDX-License-Identifier: MIT */
#include "face-view.h"
#include <math.h>

/* Height of a cut length over the usual text. */
#define LENGTH_RATIO 0.92

/* A number tries so many places down its run, the first ones close to each other. */
#define NUMBER_SPOTS 18
#define CLOSE_SPOTS 5
#define NUMBER_STEP_MM 2.0

/* Between a number and the edge of the face. */
#define EDGE_AIR_MM 0.5

/* The same in a strip that is hardly higher than the number. */
#define LOW_AIR_MM 0.2

/* Height of figures over a text's. */
#define FIGURE_RATIO 0.72

/* So little air is enough below a number. */
#define LEAST_GAP_MM 0.8

/* How many runs share one number, so that numbers stay readable: 1, 2, 5, 10 or 20. */
static int
number_every (double run_mm, double text_mm)
{
  static const int steps[] = { 1, 2, 5, 10 };

  for (guint i = 0; i < G_N_ELEMENTS (steps); i++)
    if (run_mm * steps[i] >= text_mm * 1.25)
      return steps[i];
  return 20;
}

/* 1, 3, 5 … or 1, 5, 10, 15 … */
static gboolean
is_numbered (int number, int every)
{
  return every == 2 ? number % 2 == 1 : number == 1 || number % every == 0;
}

/* A stretch of a run in view, and how it lies on paper. */
typedef struct
{
  double along_m; /* its middle */
  double from_m, to_m;
  double turn_rad; /* of the contour */
  double tall_mm;
} Strip;

static Strip
strip_of (const SwDrawing *drawing, const SwRun *run, double from_m, double to_m)
{
  double along_m = (run->along_from_m + run->along_to_m) / 2.0;

  from_m = fmax (from_m, run->down_from_m);
  to_m = fmin (to_m, run->down_to_m);
  if (!sw_development_is_bent (drawing->development))
    {
      from_m = fmax (from_m, drawing->seen.y0_m);
      to_m = fmin (to_m, drawing->seen.y1_m);
    }
  return (Strip){ along_m, from_m, to_m, sw_face_view_turn_rad (drawing, along_m),
                  (to_m - from_m) * fabs (drawing->view->y_mm_per_m) };
}

/* What the run's neighbours leave of its width, on paper; less towards the shorter arc. */
static double
free_width_mm (const SwDrawing *drawing, const SwRun *run, double down_m)
{
  const SwTier *tier = &drawing->laid->tiers[run->tier];
  double lap_m = tier->side_lap_m / tier->stretch;

  return (run->along_to_m - run->along_from_m - lap_m)
         * sw_development_stretch (drawing->development, down_m)
         * fabs (drawing->view->x_mm_per_m);
}

/* Numbers stand at the wider end: at the toe of a nose, else at the crest. */
static gboolean
is_wide_below (const SwDrawing *drawing)
{
  return sw_development_is_bent (drawing->development)
         && drawing->development.turn_per_m > 0.0;
}

/* Half of what a number takes across its run. Turned along a straight one only its figures
 * count, without the air over and under them: the next numbers are as near. */
static double
number_half_mm (const SwDrawing *drawing, SwLabelBox box, Strip strip, gboolean level)
{
  double half_mm = sw_label_shadow_mm (box, strip.turn_rad);

  return level || sw_development_is_bent (drawing->development) ? half_mm
                                                                : half_mm * FIGURE_RATIO;
}

/* The number of a narrow run at the edge of the face moves so far inwards, off the edge;
 * @half_mm: of the number, across the run. */
static double
off_edge_mm (const SwDrawing *drawing, const SwRun *run, double half_mm)
{
  const SwTier *tier = &drawing->laid->tiers[run->tier];
  double down_m = is_wide_below (drawing) ? run->down_to_m : run->down_from_m;
  double stretch = sw_development_stretch (drawing->development, down_m);
  double mm_per_m = stretch * fabs (drawing->view->x_mm_per_m);
  double middle_m = (run->along_from_m + run->along_to_m) / 2.0;
  double left_mm = (middle_m - tier->along_from_m) * mm_per_m;
  double right_mm = (tier->along_to_m - middle_m) * mm_per_m;
  double needed_mm = half_mm + EDGE_AIR_MM;

  return left_mm < needed_mm ? needed_mm - left_mm : fmin (right_mm - needed_mm, 0.0);
}

/* Places for a number of this box, @gap_mm off the end of its strip, a few close by, then
 * all down the strip, past obstacles and out of view. */
static guint
number_spots (const SwDrawing *drawing, Strip strip, SwLabelBox box, double across_mm,
              double gap_mm, SwLabelSpot spots[NUMBER_SPOTS])
{
  double first_mm = sw_label_shadow_mm (box, strip.turn_rad + G_PI_2) + gap_mm;
  double rest_mm = strip.tall_mm - 2.0 * first_mm + LEAST_GAP_MM;
  gboolean below = is_wide_below (drawing);
  guint n = 0;

  for (guint i = 0; i < NUMBER_SPOTS; i++)
    {
      double on_mm = i < CLOSE_SPOTS
                         ? i * NUMBER_STEP_MM
                         : rest_mm * (i - CLOSE_SPOTS + 1) / (NUMBER_SPOTS - CLOSE_SPOTS);
      double in_mm = first_mm + on_mm;
      SwPaperPoint at =
          sw_face_view_beside (drawing, strip.along_m, below ? strip.to_m : strip.from_m,
                               across_mm, below ? -in_mm : in_mm);

      if (on_mm >= 0.0 && on_mm <= rest_mm)
        spots[n++] = (SwLabelSpot){ at.x_mm, at.y_mm, box.turn_rad };
    }
  /* In a low strip level figures without the air over and under them. */
  if (n == 0 && strip.tall_mm >= 2.0 * (box.half_height_mm * FIGURE_RATIO + LOW_AIR_MM)
      && sw_label_shadow_mm (box, strip.turn_rad + G_PI_2)
             < box.half_height_mm + LOW_AIR_MM)
    {
      SwPaperPoint at = sw_face_view_beside (drawing, strip.along_m, strip.from_m,
                                             across_mm, strip.tall_mm / 2.0);

      spots[n++] = (SwLabelSpot){ at.x_mm, at.y_mm, box.turn_rad };
    }
  return n;
}

/* Whether the drawing's step is part of the work on this run. */
static gboolean
is_in_work (const SwDrawing *drawing, guint i)
{
  const SwLayingStep *step;

  if (drawing->sequence == NULL)
    return FALSE;
  step = &drawing->sequence->steps[drawing->step];
  return step->face == drawing->face_index && step->run == i;
}

/* In the making: from its first step on. */
static gboolean
is_begun (const SwDrawing *drawing, guint i)
{
  return drawing->sequence == NULL
         || sw_drawing_is_done (drawing, sw_drawing_run_steps (drawing, i)->first);
}

/* In the making the run in work alone: what is cut for it. */
static gboolean
has_piece_noted (const SwDrawing *drawing, guint i, guint piece)
{
  return drawing->sequence == NULL
         || (is_in_work (drawing, i)
             && sw_drawing_is_done (drawing, drawing->sequence->pieces[piece]));
}

/* Level when it fits into its run, or with its neighbours' room where the run is too short
 * for it; else along the run. */
static gboolean
is_level (SwLabelBox box, Strip strip, double run_mm, int every)
{
  double wide_mm = 2.0 * sw_label_shadow_mm (box, strip.turn_rad) + 0.6;

  return wide_mm <= run_mm
         || (2.0 * (box.half_width_mm + EDGE_AIR_MM) > strip.tall_mm
             && wide_mm <= run_mm * every);
}

static void
number_run (SwDrawing *drawing, guint i, guint style)
{
  const SwRun *run = &drawing->laid->runs[i];
  Strip strip = strip_of (drawing, run, -INFINITY, INFINITY);
  double across_mm;
  double run_mm =
      free_width_mm (drawing, run, is_wide_below (drawing) ? strip.to_m : strip.from_m);
  double size = drawing->text_mm * (run_mm > 12.0 ? 1.15 : 1.0);
  g_autofree char *label = sw_run_label (run);
  double width = sw_drawing_width_mm (drawing, label, size) * 1.1;
  SwLabelBox box = { 0.0, 0.0, width / 2.0, size / 2.0, 0.0 };
  int every = number_every (run_mm, drawing->text_mm);
  gboolean level = is_level (box, strip, run_mm, every);
  SwLabelSpot spots[NUMBER_SPOTS];
  guint n;

  /* The run in work is named wherever it can be. */
  if (is_in_work (drawing, i))
    style &= ~(guint) SW_LABEL_OFF_LINES;
  if (!is_numbered (run->number, every) && !is_in_work (drawing, i))
    return;
  if (!level)
    box.turn_rad = sw_label_reading_turn_rad (strip.turn_rad + G_PI_2);
  across_mm = off_edge_mm (drawing, run, number_half_mm (drawing, box, strip, level));
  n = number_spots (drawing, strip, box, across_mm, level ? size * 0.4 + 0.6 : 1.0,
                    spots);
  sw_labels_wish (drawing->labels,
                  &(SwLabelWish){ .rank = SW_LABEL_MAIN,
                                  .role = SW_ROLE_TEXT,
                                  .ground = SW_ROLE_RUN,
                                  .style = SW_LABEL_BOLD | style,
                                  .size_mm = size,
                                  .object = sw_drawing_object_id (drawing, "/run/%u", i),
                                  .text = label,
                                  .spots = spots,
                                  .n_spots = n });
}

/* Whether the run's length fits beside its number, whole or turned along it. */
static gboolean
has_room (const SwDrawing *drawing, const SwRun *run)
{
  double size = drawing->text_mm * LENGTH_RATIO;
  double run_mm = free_width_mm (drawing, run, (run->down_from_m + run->down_to_m) / 2.0);
  double tall_mm = (run->down_to_m - run->down_from_m) * fabs (drawing->view->y_mm_per_m);
  g_autofree char *text = sw_drawing_length (drawing, run->cut_m);
  double width = sw_drawing_width_mm (drawing, text, size);
  double needed = width + 1.6 <= run_mm ? size : width;

  return run_mm >= size * 1.2 && tall_mm >= needed + 2.0 * drawing->text_mm;
}

gboolean
sw_face_view_shows_lengths (const SwDrawing *drawing)
{
  for (guint i = 0; i < drawing->laid->n_runs; i++)
    if (!has_room (drawing, &drawing->laid->runs[i]))
      return FALSE;
  return TRUE;
}

/* Cut length of one piece at its middle. */
static void
note_piece (SwDrawing *drawing, guint i, const SwPiece *piece, guint style)
{
  const SwRun *run = &drawing->laid->runs[i];
  Strip strip = strip_of (drawing, run, piece->down_from_m, piece->down_to_m);
  double middle_m = (strip.from_m + strip.to_m) / 2.0;
  double size = drawing->text_mm * LENGTH_RATIO;
  double run_mm = free_width_mm (drawing, run, middle_m);
  g_autofree char *text = sw_drawing_length (drawing, piece->length_m);
  double width = sw_drawing_width_mm (drawing, text, size);
  gboolean across = width + 1.6 <= run_mm;
  double half = (across ? size : width) / 2.0 + 0.4;
  double turn = sw_label_reading_turn_rad (strip.turn_rad + (across ? 0.0 : G_PI_2));
  double most_mm = strip.tall_mm / 2.0 - half;
  /* Last, at either end of its piece. */
  const double shifts_mm[] = {
    0.0, 6.0, -6.0, 3.0, -3.0, 12.0, -12.0, most_mm, -most_mm
  };
  SwLabelSpot spots[G_N_ELEMENTS (shifts_mm)];
  guint n = 0;

  /* Only where the whole text stands on its own piece. */
  for (guint k = 0; k < G_N_ELEMENTS (shifts_mm); k++)
    if (fabs (shifts_mm[k]) <= most_mm)
      {
        SwPaperPoint at =
            sw_face_view_beside (drawing, strip.along_m, middle_m, 0.0, shifts_mm[k]);

        spots[n++] = (SwLabelSpot){ at.x_mm, at.y_mm, turn };
      }
  if (run_mm < size * 1.2 || n == 0)
    return;
  sw_labels_wish (drawing->labels,
                  &(SwLabelWish){ .rank = SW_LABEL_USEFUL,
                                  .role = SW_ROLE_TEXT,
                                  .ground = SW_ROLE_RUN,
                                  .style = style,
                                  .size_mm = size,
                                  .object = sw_drawing_object_id (drawing, "/run/%u", i),
                                  .text = text,
                                  .spots = spots,
                                  .n_spots = n });
}

static gboolean
is_in_view (const SwDrawing *drawing, const SwRun *run)
{
  return sw_development_is_bent (drawing->development)
         || (run->along_to_m >= drawing->seen.x0_m
             && run->along_from_m <= drawing->seen.x1_m);
}

void
sw_face_view_number_runs (SwDrawing *drawing, gboolean with_pins)
{
  const SwFaceLayout *laid = drawing->laid;
  gboolean is_fan = drawing->face->crest_form != SW_CREST_STRAIGHT;
  gboolean on_plain = !with_pins && !is_fan && drawing->face->zones->len == 0;
  guint style = on_plain ? SW_LABEL_PLAIN : SW_LABEL_KNOCK_OUT;
  guint number_style = is_fan ? style | SW_LABEL_OFF_LINES : style;

  for (guint i = 0; i < laid->n_runs; i++)
    {
      const SwRun *run = &laid->runs[i];
      const SwPiece *pieces = sw_layout_run_pieces (drawing->result->layout, run);

      if (!is_in_view (drawing, run) || !is_begun (drawing, i))
        continue;
      number_run (drawing, i, number_style);
      for (guint p = 0; p < run->n_pieces; p++)
        if (has_piece_noted (drawing, i, run->first_piece + p))
          note_piece (drawing, i, &pieces[p], style);
    }
}
