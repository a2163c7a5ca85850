/* SPDX-License-Identifier: MIT */
#include "laying-marks.h"
#include <math.h>
#include <slopewright/figure/laying-view.h>

/* A roll that waits at the head of its run, and the least that is seen of it. */
#define ROLL_M 0.45
#define LEAST_ROLL_MM 2.4

/* Dots of new pins, as far as their distance lets them grow. */
#define LARGEST_PIN_MM 0.8
#define LEAST_PIN_MM 0.3
#define PIN_SHARE 0.42

/* The arrow of an unrolled piece keeps off its number and length: beside them, in a narrow
 * run below its middle, where the length stands. */
#define ARROW_SHARE 0.28
#define ARROW_INSET 0.08
#define BELOW_LENGTH 0.7
#define ARROW_AIR_MM 0.4
#define HEAD_MM 3.4

/* Seed is shown as grains so far apart. */
#define GRAIN_EVERY_MM 3.2
#define GRAIN_MM 0.3

/* A close view shows so much of the face round the place of a step, more below it than
 * above: some pins of every row. */
#define CLOSE_BESIDE_M 4.0
#define CLOSE_ABOVE_M 1.6
#define CLOSE_BELOW_M 4.4
#define ROUND_OBSTACLE_M 2.0

double
sw_laying_pin_gap_m (const SwDrawing *drawing, const SwLayingStep *step)
{
  const SwTier *tier = &drawing->laid->tiers[step->tier];

  switch (step->act)
    {
    case SW_LAYING_ANCHOR:
      return sw_drawing_practice (drawing, SW_PRACTICE_TRENCH_PIN_M);
    case SW_LAYING_SLOT:
      return sw_drawing_practice (drawing, SW_PRACTICE_SLOT_PIN_M);
    case SW_LAYING_SIDE_LAP:
      return sw_drawing_practice (drawing, SW_PRACTICE_SIDE_LAP_PIN_M);
    case SW_LAYING_END_LAP:
      return hypot (sw_drawing_practice (drawing, SW_PRACTICE_END_LAP_ROW_GAP_M),
                    sw_drawing_practice (drawing, SW_PRACTICE_END_LAP_PIN_M) / 2.0);
    case SW_LAYING_COLLAR:
      return sw_drawing_practice (drawing, SW_PRACTICE_RING_PIN_M);
    case SW_LAYING_TOE:
      return sw_drawing_practice (drawing, SW_PRACTICE_TOE_PIN_M);
    case SW_LAYING_PREPARE:
    case SW_LAYING_SEED:
    case SW_LAYING_DIG_KEY:
    case SW_LAYING_DIG_SLOTS:
    case SW_LAYING_BACKFILL:
    case SW_LAYING_UNROLL:
    case SW_LAYING_PIN_FIELD:
    case SW_LAYING_INSPECT:
    case SW_LAYING_ACT_COUNT:
    default:
      /* Columns are staggered. */
      return fmin (tier->pin_down_m, hypot (tier->pin_across_m, tier->pin_down_m / 2.0));
    }
}

void
sw_laying_draw_pins (SwDrawing *drawing, const SwLayingStep *step, SwRole role,
                     double radius_mm, gsize every)
{
  const guint32 *of_step = sw_laying_step_pins (drawing->sequence, step);
  const SwView *view = drawing->view;

  for (gsize k = 0; k < step->n_pins; k += every)
    {
      const SwPinPlace *pin = &drawing->laid->pins[of_step[k]];
      SwPaperPoint at =
          sw_face_view_at (drawing, (double) pin->along_m, (double) pin->down_m);

      if (at.x_mm < 0.0 || at.x_mm > view->width_mm || at.y_mm < 0.0
          || at.y_mm > view->height_mm)
        continue;
      sw_figure_circle (drawing->figure, role, at.x_mm, at.y_mm, radius_mm);
    }
}

static const SwLayingStep *
step_of (const SwDrawing *drawing)
{
  return &drawing->sequence->steps[drawing->step];
}

/* As large as their distance lets them be; closer ones stand for several. */
static void
mark_pins (SwDrawing *drawing)
{
  const SwLayingStep *step = step_of (drawing);
  double gap_mm = sw_laying_pin_gap_m (drawing, step) * fabs (drawing->view->x_mm_per_m);
  double radius_mm = CLAMP (gap_mm * PIN_SHARE, LEAST_PIN_MM, LARGEST_PIN_MM);
  gsize every = (gsize) fmax (1.0, ceil (LEAST_PIN_MM / PIN_SHARE / gap_mm));

  sw_drawing_object (drawing, "/pins");
  sw_laying_draw_pins (drawing, step, SW_ROLE_NEW_PIN, radius_mm, every);
}

/* Part of a run between two distances down, marked as new. */
static gboolean
mark_strip (SwDrawing *drawing, SwRole role, const SwRun *run, double from_m, double to_m,
            SwPaperPoint quad[4])
{
  double along_m[4] = { sw_face_view_edge_m (drawing, run, -1, from_m),
                        sw_face_view_edge_m (drawing, run, 1, from_m),
                        sw_face_view_edge_m (drawing, run, 1, to_m),
                        sw_face_view_edge_m (drawing, run, -1, to_m) };

  sw_drawing_object (drawing, "/run/%u", (guint) (run - drawing->laid->runs));
  return sw_face_view_quad (drawing, role, along_m, from_m, to_m, quad);
}

static void
draw_roll (SwDrawing *drawing, const SwRun *run, double at_m)
{
  double roll_m = fmax (ROLL_M, LEAST_ROLL_MM / fabs (drawing->view->y_mm_per_m));
  SwPaperPoint quad[4];

  mark_strip (drawing, SW_ROLE_BLANKET, run, at_m, at_m + roll_m, quad);
}

static void
mark_head (SwDrawing *drawing, const SwRun *run)
{
  double end_m = run->down_from_m + SW_HEAD_M;
  SwPaperPoint quad[4];

  mark_strip (drawing, SW_ROLE_NEW, run, sw_face_view_top_m (drawing, run), end_m, quad);
  draw_roll (drawing, run, end_m);
}

/* The stretch of the trenches that this step fills. */
static void
mark_filled (SwDrawing *drawing, const SwRun *run, SwTrenchKind kind)
{
  for (guint i = 0; i < drawing->laid->n_trenches; i++)
    {
      const SwTrench *trench = &drawing->laid->trenches[i];
      double down_m = trench->n_line > 0 ? trench->line[trench->n_line / 2].down_m : 0.0;

      if (trench->tier != run->tier || trench->kind != kind
          || (kind == SW_TRENCH_KEY && trench->obstacle != run->obstacle_above))
        continue;
      sw_face_view_trench (drawing, i, SW_ROLE_NEW,
                           sw_face_view_edge_m (drawing, run, -1, down_m),
                           sw_face_view_edge_m (drawing, run, 1, down_m));
    }
}

/* Whether arrow and words have no room side by side in the run. */
static gboolean
is_narrow (const SwDrawing *drawing, const SwRun *run, double down_m)
{
  double wide_mm = (run->along_to_m - run->along_from_m)
                   * sw_development_stretch (drawing->development, down_m)
                   * fabs (drawing->view->x_mm_per_m);

  return ARROW_SHARE * wide_mm < drawing->text_mm / 2.0 + ARROW_AIR_MM;
}

static void
mark_piece (SwDrawing *drawing, const SwRun *run)
{
  const SwPiece *piece = &drawing->result->layout->pieces[step_of (drawing)->piece];
  gboolean last = piece->order + 1 == run->n_pieces;
  double from_m =
      piece->order == 0 ? sw_face_view_top_m (drawing, run) : piece->down_from_m;
  double to_m = last ? run->down_to_m : piece->down_to_m;
  double along_m = (run->along_from_m + run->along_to_m) / 2.0
                   + ARROW_SHARE * (run->along_to_m - run->along_from_m);
  double long_m = to_m - from_m;
  double begin =
      is_narrow (drawing, run, (from_m + to_m) / 2.0) ? BELOW_LENGTH : ARROW_INSET;
  SwPaperPoint quad[4], a, b;

  mark_strip (drawing, SW_ROLE_NEW, run, from_m, to_m, quad);
  a = sw_face_view_at (drawing, along_m, from_m + long_m * begin);
  b = sw_face_view_at (drawing, along_m, to_m - long_m * ARROW_INSET);
  sw_draft_arrow (drawing->figure, SW_ROLE_FALL_LINE, a.x_mm, a.y_mm, b.x_mm, b.y_mm,
                  fmin (HEAD_MM, hypot (b.x_mm - a.x_mm, b.y_mm - a.y_mm) / 2.0));
  sw_labels_keep_off (drawing->labels, (SwPaperPoint[]){ a, b }, 2);
}

/* Edges alone, so that the pins within stay clear. */
static void
mark_edges (SwDrawing *drawing, const SwRun *run)
{
  SwPaperPoint quad[4];

  mark_strip (drawing, SW_ROLE_NEW_EDGE, run, sw_face_view_top_m (drawing, run),
              run->down_to_m, quad);
}

static void
mark_trenches (SwDrawing *drawing)
{
  const guint *steps = drawing->sequence->faces[drawing->face_index].trenches;

  for (guint i = 0; i < drawing->laid->n_trenches; i++)
    if (steps[i] == drawing->step)
      sw_face_view_trench (drawing, i, SW_ROLE_NEW, -INFINITY, INFINITY);
}

static void
clip_to_face (SwDrawing *drawing)
{
  const SwFace *face = drawing->face;
  g_autoptr (GArray) ring = sw_unfold (drawing, face->outline, face->n_outline, TRUE);

  sw_figure_clip (drawing->figure, (SwPaperPoint *) ring->data, ring->len);
}

static void
mark_collar (SwDrawing *drawing)
{
  const SwObstacle *obstacle =
      drawing->laid->obstacles[step_of (drawing)->obstacle].obstacle;
  g_autoptr (GArray) collar = sw_collar_outline (
      drawing->laid, obstacle, sw_drawing_practice (drawing, SW_PRACTICE_COLLAR_M));
  g_autoptr (GArray) patch =
      sw_unfold (drawing, (SwPoint *) collar->data, collar->len, TRUE);

  clip_to_face (drawing);
  sw_drawing_object (drawing, "/obstacle/%s", obstacle->id);
  sw_figure_area (drawing->figure, SW_ROLE_NEW_EDGE, (SwPaperPoint *) patch->data,
                  patch->len - 1);
  sw_figure_unclip (drawing->figure);
}

/* The part of the face that a tier is. */
static void
clip_to_tier (SwDrawing *drawing, SwRole role)
{
  const SwTier *tier = &drawing->laid->tiers[step_of (drawing)->tier];
  double along_m[4] = { tier->along_from_m, tier->along_to_m, tier->along_to_m,
                        tier->along_from_m };
  SwPaperPoint quad[4];

  clip_to_face (drawing);
  sw_drawing_object (drawing, "/tier/%u", step_of (drawing)->tier);
  sw_face_view_quad (drawing, role, along_m, tier->reach.down_from_m,
                     tier->reach.down_to_m, quad);
}

static void
mark_ground (SwDrawing *drawing)
{
  clip_to_tier (drawing, SW_ROLE_NEW);
  sw_figure_unclip (drawing->figure);
}

/* Grains on a staggered grid of the sheet, over the tier alone. */
static void
mark_seed (SwDrawing *drawing)
{
  const SwView *view = drawing->view;
  const SwTier *tier = &drawing->laid->tiers[step_of (drawing)->tier];
  guint row = 0;

  clip_to_tier (drawing, SW_ROLE_NEW_EDGE);
  for (double y = 0.0; y < view->height_mm; y += GRAIN_EVERY_MM / 2.0, row++)
    for (double x = row % 2 * GRAIN_EVERY_MM / 2.0; x < view->width_mm;
         x += GRAIN_EVERY_MM)
      {
        SwPoint on = sw_view_to_world (view, (SwPaperPoint){ x, y });
        double down_m = sw_development_lift (drawing->development, on).y_m;

        if (down_m > tier->reach.down_from_m && down_m < tier->reach.down_to_m)
          sw_figure_circle (drawing->figure, SW_ROLE_NEW_PIN, x, y, GRAIN_MM);
      }
  sw_figure_unclip (drawing->figure);
}

static void
mark_run (SwDrawing *drawing, SwLayingAct act, const SwRun *run)
{
  switch (act)
    {
    case SW_LAYING_ANCHOR:
      mark_head (drawing, run);
      break;
    case SW_LAYING_BACKFILL:
      draw_roll (drawing, run, run->down_from_m + SW_HEAD_M);
      mark_filled (drawing, run, SW_TRENCH_KEY);
      break;
    case SW_LAYING_UNROLL:
      mark_piece (drawing, run);
      break;
    case SW_LAYING_SLOT:
      mark_filled (drawing, run, SW_TRENCH_SLOT);
      break;
    case SW_LAYING_SIDE_LAP:
      drawing->marked = run;
      sw_face_view_laps (drawing);
      drawing->marked = NULL;
      break;
    case SW_LAYING_END_LAP:
      sw_face_view_end_laps (drawing, (guint) (run - drawing->laid->runs), SW_ROLE_NEW);
      break;
    case SW_LAYING_PIN_FIELD:
    case SW_LAYING_PREPARE:
    case SW_LAYING_SEED:
    case SW_LAYING_DIG_KEY:
    case SW_LAYING_DIG_SLOTS:
    case SW_LAYING_COLLAR:
    case SW_LAYING_TOE:
    case SW_LAYING_INSPECT:
    case SW_LAYING_ACT_COUNT:
    default:
      mark_edges (drawing, run);
      break;
    }
}

void
sw_laying_mark_new (SwDrawing *drawing)
{
  const SwLayingStep *step = step_of (drawing);

  if (step->run != SW_LAYING_NONE)
    mark_run (drawing, step->act, &drawing->laid->runs[step->run]);
  else if (step->act == SW_LAYING_PREPARE)
    mark_ground (drawing);
  else if (step->act == SW_LAYING_SEED)
    mark_seed (drawing);
  else if (step->act == SW_LAYING_COLLAR)
    mark_collar (drawing);
  else
    mark_trenches (drawing);
  mark_pins (drawing);
}

/* The corners of an upright box on the face, on the sheet, each edge in a few parts. */
static SwBox
sheet_box (const SwFaceLayout *laid, SwBox on_face)
{
  SwDevelopment development = sw_development_of (laid);
  SwBox box = { INFINITY, INFINITY, -INFINITY, -INFINITY };
  const guint parts = 8;

  for (guint i = 0; i <= parts; i++)
    for (guint k = 0; k <= 1; k++)
      {
        double along_m = on_face.x0_m + (on_face.x1_m - on_face.x0_m) * i / parts;
        SwPoint at = sw_development_lay (
            development, (SwPoint){ along_m, k == 0 ? on_face.y0_m : on_face.y1_m });

        box = (SwBox){ fmin (box.x0_m, at.x_m), fmin (box.y0_m, at.y_m),
                       fmax (box.x1_m, at.x_m), fmax (box.y1_m, at.y_m) };
      }
  return box;
}

static SwBox
grown (SwBox box, double by_m)
{
  return (SwBox){ box.x0_m - by_m, box.y0_m - by_m, box.x1_m + by_m, box.y1_m + by_m };
}

/* The end from which the work on a trench of this kind begins. FALSE: there is none. */
static gboolean
trench_start (const SwFaceLayout *laid, guint tier, SwTrenchKind kind, SwPoint *at)
{
  gboolean left = laid->face->leeward == SW_SIDE_LEFT, any = FALSE;

  for (guint i = 0; i < laid->n_trenches; i++)
    {
      const SwTrench *trench = &laid->trenches[i];

      if (trench->tier != tier || trench->kind != kind)
        continue;
      for (guint k = 0; k < trench->n_line; k++)
        if (!any || (trench->line[k].along_m < at->x_m) == left)
          {
            *at = (SwPoint){ trench->line[k].along_m, trench->line[k].down_m };
            any = TRUE;
          }
    }
  if (any)
    at->x_m += left ? CLOSE_BESIDE_M : -CLOSE_BESIDE_M;
  return any;
}

/* Where to look on a run: at its head, but for laps at the edge and for joints at theirs. */
static SwPoint
run_place (const SwLayingSequence *sequence, const SwLayingStep *step)
{
  const SwFaceLayout *laid = &sequence->layout->faces[step->face];
  const SwRun *run = &laid->runs[step->run];
  const SwPiece *pieces = sw_layout_run_pieces (sequence->layout, run);
  gboolean left = laid->face->leeward == SW_SIDE_LEFT;
  SwPoint at = { (run->along_from_m + run->along_to_m) / 2.0, run->down_from_m };

  if (step->act == SW_LAYING_SIDE_LAP)
    at.x_m = left ? run->along_from_m : run->along_to_m;
  if (step->act == SW_LAYING_UNROLL)
    at.y_m = sequence->layout->pieces[step->piece].down_from_m;
  if (step->act == SW_LAYING_END_LAP && run->n_pieces > 1)
    at.y_m = pieces[1].down_from_m;
  if (step->act == SW_LAYING_SLOT)
    for (guint i = 0; i < laid->n_trenches; i++)
      if (laid->trenches[i].tier == run->tier && laid->trenches[i].kind == SW_TRENCH_SLOT
          && laid->trenches[i].line[0].down_m > run->down_from_m)
        {
          at.y_m = laid->trenches[i].line[0].down_m;
          break;
        }
  return at;
}

/* What a step is about, on the face. FALSE: the whole of it. */
static gboolean
subject (const SwLayingSequence *sequence, const SwLayingStep *step, SwBox *box)
{
  const SwFaceLayout *laid = &sequence->layout->faces[step->face];
  SwPoint at;

  if (step->act == SW_LAYING_COLLAR)
    {
      const SwObstaclePlace *place = &laid->obstacles[step->obstacle];

      *box = grown ((SwBox){ place->along_from_m, place->down_from_m, place->along_to_m,
                             place->down_to_m },
                    ROUND_OBSTACLE_M);
      return TRUE;
    }
  if (step->run != SW_LAYING_NONE)
    at = run_place (sequence, step);
  else if (step->act == SW_LAYING_PREPARE || step->act == SW_LAYING_SEED
           || step->act == SW_LAYING_INSPECT
           || !trench_start (laid, step->tier,
                             step->act == SW_LAYING_DIG_KEY     ? SW_TRENCH_KEY
                             : step->act == SW_LAYING_DIG_SLOTS ? SW_TRENCH_SLOT
                                                                : SW_TRENCH_TOE,
                             &at))
    return FALSE;
  *box = (SwBox){ at.x_m - CLOSE_BESIDE_M, at.y_m - CLOSE_ABOVE_M,
                  at.x_m + CLOSE_BESIDE_M, at.y_m + CLOSE_BELOW_M };
  if (step->act == SW_LAYING_TOE)
    {
      box->y0_m = at.y_m - CLOSE_BELOW_M;
      box->y1_m = at.y_m + CLOSE_ABOVE_M;
    }
  return TRUE;
}

gboolean
sw_laying_has_close_view (const SwLayingSequence *sequence, guint step)
{
  SwBox box;

  return subject (sequence, &sequence->steps[step], &box);
}

SwBox
sw_laying_view_box (const SwResult *result, const SwLayingSequence *sequence, guint step,
                    gboolean close)
{
  const SwLayingStep *of = &sequence->steps[step];
  SwBox box;

  if (close && subject (sequence, of, &box))
    return sheet_box (&sequence->layout->faces[of->face], box);
  return sw_face_view_box (result, of->face);
}
