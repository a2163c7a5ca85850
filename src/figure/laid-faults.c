/* SPDX-License-Identifier: MIT */
#include "drawing.h"

/*
 * The first runs of a face from above, as someone has laid them: not to scale, so that
 * edges, pins and trenches are seen. What is wrong in it is seeded.
 */

#define SIDE_MM 12.0    /* beside the runs: arrows */
#define ABOVE_MM 17.0   /* wind, spacings, trench */
#define BELOW_MM 13.0   /* toe, laps */
#define SET_BACK_MM 5.0 /* crest to trench */
#define BAND_MM 3.2     /* a trench seen from above */
#define LAP_SHARE 0.16  /* of a run's width: larger than true */
#define PIN_MM 0.55
#define TRENCH_PINS 7 /* of a run where they stand as they should */
#define LAP_PINS 9
#define MARK_MM 3.4

static const char *const codes[SW_LAID_FAULT_COUNT] = {
  [SW_LAID_LAP_REVERSED] = "lap-reversed", [SW_LAID_LAP_NARROW] = "lap-narrow",
  [SW_LAID_LAP_UNPINNED] = "lap-unpinned", [SW_LAID_JOINTS_IN_LINE] = "joints-in-line",
  [SW_LAID_NOT_BURIED] = "not-buried",     [SW_LAID_PINS_WIDE] = "pins-wide",
  [SW_LAID_TOE_LOOSE] = "toe-loose",       [SW_LAID_SLOT_MISSING] = "slot-missing",
};

typedef struct
{
  SwFigure *figure;
  const SwFaceLayout *face;
  const SwTier *tier;
  const SwPractice *practice;
  const SwDraw *draw;
  const SwSeededFault *faults;
  guint n_faults, n_runs;
  gboolean marked;
  double left_mm, pitch_mm, run_mm, lap_mm; /* a run, and from one to the next */
  double crest_mm, toe_mm, trench_mm;       /* heights */
  double text_mm;
} Laid;

const char *
sw_laid_fault_code (SwLaidFault fault)
{
  return codes[fault];
}

gboolean
sw_laid_fault_is_of_lap (SwLaidFault fault)
{
  return fault <= SW_LAID_JOINTS_IN_LINE;
}

guint
sw_laid_runs (const SwResult *result, guint face)
{
  const SwFaceLayout *laid = &result->layout->faces[face];
  const SwTier *tier = &laid->tiers[0];

  for (guint i = 0; i < tier->n_runs; i++)
    if (laid->runs[tier->first_run + i].infill
        || laid->runs[tier->first_run + i].part > 0)
      return 0;
  return MIN (tier->n_runs, SW_LAID_RUNS);
}

static gboolean
has_joint (const SwFaceLayout *face, guint run)
{
  return face->runs[face->tiers[0].first_run + run].n_pieces > 1;
}

gboolean
sw_laid_fault_fits (const SwResult *result, guint face, const SwSeededFault *seeded)
{
  const SwFaceLayout *laid = &result->layout->faces[face];
  guint runs = sw_laid_runs (result, face), place = seeded->place;

  if (sw_laid_fault_is_of_lap (seeded->fault) ? place + 1 >= runs : place >= runs)
    return FALSE;
  if (seeded->fault == SW_LAID_JOINTS_IN_LINE)
    return has_joint (laid, place) && has_joint (laid, place + 1);
  return seeded->fault != SW_LAID_SLOT_MISSING || laid->tiers[0].slots > 0;
}

gboolean
sw_laid_fault_applies (const SwResult *result, guint face, SwLaidFault fault)
{
  for (guint place = 0; place < sw_laid_runs (result, face); place++)
    if (sw_laid_fault_fits (result, face, &(SwSeededFault){ fault, place }))
      return TRUE;
  return FALSE;
}

static gboolean
is_wrong (const Laid *laid, SwLaidFault fault, guint place)
{
  for (guint i = 0; i < laid->n_faults; i++)
    if (laid->faults[i].fault == fault && laid->faults[i].place == place)
      return TRUE;
  return FALSE;
}

/* Run 1 lies at the leeward end. */
static double
run_left_mm (const Laid *laid, guint run)
{
  gboolean from_left = laid->face->face->leeward == SW_SIDE_LEFT;

  return laid->left_mm + laid->pitch_mm * (from_left ? run : laid->n_runs - 1 - run);
}

static double
run_middle_mm (const Laid *laid, guint run)
{
  return run_left_mm (laid, run) + laid->run_mm / 2.0;
}

/* The strip where runs @lap and @lap + 1 lie on each other. */
static double
lap_left_mm (const Laid *laid, guint lap)
{
  return MAX (run_left_mm (laid, lap), run_left_mm (laid, lap + 1));
}

static void
note (const Laid *laid, double x_mm, double y_mm, SwTypeface face, const char *text)
{
  sw_figure_text (laid->figure, SW_ROLE_TEXT, x_mm, y_mm, laid->text_mm, SW_ALIGN_CENTRE,
                  face, 0.0, text);
}

static char *
small (const Laid *laid, double length_m, SwLimit limit)
{
  return sw_quantity_limit_text (length_m, SW_UNIT_SMALL_M, limit, laid->draw->style);
}

static void
draw_band (const Laid *laid, guint run, SwRole role, double y_mm)
{
  sw_figure_box (laid->figure, role, run_left_mm (laid, run), y_mm, laid->run_mm,
                 BAND_MM);
}

static void
draw_run (const Laid *laid, guint run)
{
  gboolean loose = is_wrong (laid, SW_LAID_NOT_BURIED, run);
  double top_mm = loose ? laid->crest_mm : laid->trench_mm + BAND_MM / 2.0;
  double x_mm = run_left_mm (laid, run);

  sw_figure_box (laid->figure, SW_ROLE_RUN, x_mm, top_mm, laid->run_mm,
                 laid->toe_mm - top_mm);
  if (!loose)
    draw_band (laid, run, SW_ROLE_BACKFILL, laid->trench_mm);
  sw_figure_segment (laid->figure, SW_ROLE_RUN_EDGE, x_mm, top_mm, x_mm + laid->run_mm,
                     top_mm);
  sw_figure_segment (laid->figure, SW_ROLE_RUN_EDGE, x_mm, laid->toe_mm,
                     x_mm + laid->run_mm, laid->toe_mm);
}

/* The first and the last edge lie on no other run. */
static void
draw_outer_edge (const Laid *laid, guint run, double x_mm)
{
  sw_figure_segment (laid->figure, SW_ROLE_GROUND, x_mm,
                     is_wrong (laid, SW_LAID_NOT_BURIED, run) ? laid->crest_mm
                                                              : laid->trench_mm + BAND_MM,
                     x_mm, laid->toe_mm);
}

static void
draw_outer_edges (const Laid *laid)
{
  guint last = laid->n_runs - 1;
  gboolean from_left = laid->face->face->leeward == SW_SIDE_LEFT;
  double left_mm = laid->left_mm;

  draw_outer_edge (laid, from_left ? 0 : last, left_mm);
  draw_outer_edge (laid, from_left ? last : 0,
                   left_mm + laid->pitch_mm * last + laid->run_mm);
}

/* As far apart as measured, above the run; dots where pins stand. */
static void
draw_trench_pins (const Laid *laid, guint run)
{
  gboolean wide = is_wrong (laid, SW_LAID_PINS_WIDE, run);
  guint count = wide ? TRENCH_PINS / 2 : TRENCH_PINS;
  double spacing_m = sw_practice_get (laid->practice, SW_PRACTICE_TRENCH_PIN_M);
  g_autofree char *text = small (laid, wide ? 2.0 * spacing_m : spacing_m, SW_LIMIT_MOST);

  if (is_wrong (laid, SW_LAID_NOT_BURIED, run))
    return;
  for (guint i = 0; i < count; i++)
    sw_figure_circle (laid->figure, SW_ROLE_PIN,
                      run_left_mm (laid, run) + laid->run_mm * (i + 0.5) / count,
                      laid->trench_mm + BAND_MM / 2.0, PIN_MM);
  note (laid, run_middle_mm (laid, run), laid->trench_mm - 1.5, SW_FACE_REGULAR, text);
}

static void
draw_toe (const Laid *laid, guint run)
{
  if (is_wrong (laid, SW_LAID_TOE_LOOSE, run))
    return;
  if (laid->practice->toe_kind == SW_TOE_TRENCH)
    draw_band (laid, run, SW_ROLE_BACKFILL, laid->toe_mm);
  for (guint i = 0; i < TRENCH_PINS; i++)
    sw_figure_circle (
        laid->figure, SW_ROLE_PIN,
        run_left_mm (laid, run) + laid->run_mm * (i + 0.5) / TRENCH_PINS,
        laid->toe_mm + (laid->practice->toe_kind == SW_TOE_TRENCH ? BAND_MM / 2.0 : -2.0),
        PIN_MM);
}

static void
draw_slots (const Laid *laid, guint run)
{
  int slots = MIN (laid->tier->slots, 2);

  for (int i = 0; i < slots; i++)
    if (i > 0 || !is_wrong (laid, SW_LAID_SLOT_MISSING, run))
      draw_band (laid, run, SW_ROLE_BACKFILL,
                 laid->crest_mm
                     + (i + 1) * (laid->toe_mm - laid->crest_mm) / (slots + 1));
}

/* Neighbours are staggered by turns, clear of the slots, but for two that are in line. */
static double
joint_mm (const Laid *laid, guint run)
{
  guint turn = run;

  for (guint i = 0; i < laid->n_faults; i++)
    turn +=
        laid->faults[i].fault == SW_LAID_JOINTS_IN_LINE && laid->faults[i].place < run;
  return laid->crest_mm + (turn % 2 == 0 ? 0.40 : 0.58) * (laid->toe_mm - laid->crest_mm);
}

static void
draw_joint (const Laid *laid, guint run)
{
  double y_mm = joint_mm (laid, run), x_mm = run_left_mm (laid, run);

  sw_figure_segment (laid->figure, SW_ROLE_JOINT, x_mm, y_mm, x_mm + laid->run_mm, y_mm);
  sw_draft_dashes (laid->figure, SW_ROLE_JOINT, x_mm, y_mm - 1.6, x_mm + laid->run_mm,
                   y_mm - 1.6, 1.2);
}

/* The edge on top drawn through, the one below it in dashes: the later run covers. */
static void
draw_lap (const Laid *laid, guint lap)
{
  gboolean reversed = is_wrong (laid, SW_LAID_LAP_REVERSED, lap);
  gboolean leeward_left = laid->face->face->leeward == SW_SIDE_LEFT;
  gboolean through_left = leeward_left != reversed;
  double share = is_wrong (laid, SW_LAID_LAP_NARROW, lap) ? 0.4 : 1.0;
  double from_mm = lap_left_mm (laid, lap) + (1.0 - share) * laid->lap_mm / 2.0;
  double to_mm = from_mm + share * laid->lap_mm;
  double on_mm = through_left ? from_mm : to_mm,
         under_mm = through_left ? to_mm : from_mm;
  double top_mm = laid->trench_mm + BAND_MM;

  sw_figure_box (laid->figure, SW_ROLE_LAP, from_mm, top_mm, to_mm - from_mm,
                 laid->toe_mm - top_mm);
  sw_figure_segment (laid->figure, SW_ROLE_GROUND, on_mm, top_mm, on_mm, laid->toe_mm);
  sw_draft_dashes (laid->figure, SW_ROLE_GROUND, under_mm, top_mm, under_mm, laid->toe_mm,
                   1.6);
}

static void
draw_lap_pins (const Laid *laid, guint lap)
{
  guint count = is_wrong (laid, SW_LAID_LAP_UNPINNED, lap) ? LAP_PINS / 3 : LAP_PINS;
  double x_mm = lap_left_mm (laid, lap) + laid->lap_mm / 2.0;
  double step_mm = (laid->toe_mm - laid->crest_mm) / LAP_PINS;

  for (guint i = 0; i < count; i++)
    sw_figure_circle (laid->figure, SW_ROLE_PIN, x_mm,
                      laid->crest_mm + (i + 0.5) * step_mm, PIN_MM);
}

/* Lap as measured, below the toe. */
static void
draw_lap_width (const Laid *laid, guint lap)
{
  double lap_m = is_wrong (laid, SW_LAID_LAP_NARROW, lap)
                     ? 0.4 * sw_practice_get (laid->practice, SW_PRACTICE_SIDE_LAP_M)
                     : laid->tier->side_lap_m;
  g_autofree char *text = small (laid, lap_m, SW_LIMIT_NONE);

  note (laid, lap_left_mm (laid, lap) + laid->lap_mm / 2.0,
        laid->toe_mm + BAND_MM + 1.2 + laid->text_mm, SW_FACE_REGULAR, text);
}

static void
draw_run_number (const Laid *laid, guint run)
{
  g_autofree char *text = sw_run_label (&laid->face->runs[laid->tier->first_run + run]);

  note (laid, run_middle_mm (laid, run),
        laid->crest_mm + 0.22 * (laid->toe_mm - laid->crest_mm), SW_FACE_BOLD, text);
}

static void
draw_lines_and_arrows (const Laid *laid)
{
  double right_mm = laid->left_mm + laid->pitch_mm * laid->n_runs + laid->lap_mm;
  gboolean to_left = laid->face->face->leeward == SW_SIDE_LEFT;
  double middle_mm = (laid->left_mm + right_mm) / 2.0, half_mm = 12.0;

  sw_figure_segment (laid->figure, SW_ROLE_BREAK, laid->left_mm - 4.0, laid->crest_mm,
                     right_mm + 4.0, laid->crest_mm);
  sw_figure_segment (laid->figure, SW_ROLE_BREAK, laid->left_mm - 4.0, laid->toe_mm,
                     right_mm + 4.0, laid->toe_mm);
  sw_draft_arrow (laid->figure, SW_ROLE_WIND,
                  to_left ? middle_mm + half_mm : middle_mm - half_mm, 5.0,
                  to_left ? middle_mm - half_mm : middle_mm + half_mm, 5.0, 3.0);
  sw_draft_arrow (laid->figure, SW_ROLE_FALL_LINE, right_mm + 7.0, laid->crest_mm + 6.0,
                  right_mm + 7.0, laid->crest_mm + 24.0, 3.0);
}

static SwPaperPoint
place_of (const Laid *laid, const SwSeededFault *fault)
{
  double crest_mm = laid->crest_mm, down_mm = laid->toe_mm - crest_mm;
  SwPaperPoint at;

  at.x_mm = sw_laid_fault_is_of_lap (fault->fault)
                ? lap_left_mm (laid, fault->place) + laid->lap_mm / 2.0
                : run_middle_mm (laid, fault->place);
  switch (fault->fault)
    {
    case SW_LAID_NOT_BURIED:
      at.y_mm = laid->trench_mm + BAND_MM / 2.0;
      break;
    case SW_LAID_PINS_WIDE:
      at.y_mm = laid->trench_mm + BAND_MM + MARK_MM + 0.5;
      break;
    case SW_LAID_TOE_LOOSE:
      at.y_mm = laid->toe_mm;
      break;
    case SW_LAID_LAP_UNPINNED:
      at.y_mm = crest_mm + 0.75 * down_mm;
      break;
    case SW_LAID_JOINTS_IN_LINE:
      at.y_mm = joint_mm (laid, fault->place);
      break;
    case SW_LAID_SLOT_MISSING:
      at.y_mm = crest_mm + down_mm / (MIN (laid->tier->slots, 2) + 1);
      break;
    default:
      at.y_mm = crest_mm + 0.87 * down_mm;
    }
  return at;
}

/* Rings with the numbers of the list. */
static void
draw_marks (const Laid *laid)
{
  for (guint i = 0; i < laid->n_faults; i++)
    {
      SwPaperPoint at = place_of (laid, &laid->faults[i]);
      g_autofree char *text = g_strdup_printf ("%u", i + 1);

      sw_figure_circle (laid->figure, SW_ROLE_WHITE, at.x_mm, at.y_mm, MARK_MM);
      sw_figure_circle (laid->figure, SW_ROLE_HIGHLIGHT, at.x_mm, at.y_mm, MARK_MM);
      note (laid, at.x_mm, at.y_mm + 0.36 * laid->text_mm, SW_FACE_BOLD, text);
    }
}

static void
draw_all (const Laid *laid)
{
  for (guint run = 0; run < laid->n_runs; run++)
    draw_run (laid, run);
  for (guint lap = 0; lap + 1 < laid->n_runs; lap++)
    draw_lap (laid, lap);
  for (guint run = 0; run < laid->n_runs; run++)
    {
      draw_trench_pins (laid, run);
      draw_toe (laid, run);
      draw_slots (laid, run);
      if (has_joint (laid->face, run))
        draw_joint (laid, run);
      draw_run_number (laid, run);
    }
  for (guint lap = 0; lap + 1 < laid->n_runs; lap++)
    {
      draw_lap_pins (laid, lap);
      draw_lap_width (laid, lap);
    }
  draw_outer_edges (laid);
  draw_lines_and_arrows (laid);
  if (laid->marked)
    draw_marks (laid);
}

SwFigure *
sw_draw_laid (const SwResult *result, guint face, const SwSeededFault *faults,
              guint n_faults, gboolean marked, double width_mm, double height_mm,
              const SwDraw *draw)
{
  Laid laid = { .face = &result->layout->faces[face],
                .tier = &result->layout->faces[face].tiers[0],
                .practice = result->layout->practice,
                .draw = draw,
                .faults = faults,
                .n_faults = n_faults,
                .n_runs = sw_laid_runs (result, face),
                .marked = marked,
                .left_mm = SIDE_MM,
                .crest_mm = ABOVE_MM + BAND_MM + SET_BACK_MM,
                .toe_mm = height_mm - BELOW_MM,
                .trench_mm = ABOVE_MM,
                .text_mm = sw_draw_text_mm (draw) };

  if (laid.n_runs < 2)
    return NULL;
  laid.figure = sw_figure_new (width_mm, height_mm);
  laid.pitch_mm = (width_mm - 2.0 * SIDE_MM) / (laid.n_runs + LAP_SHARE);
  laid.lap_mm = LAP_SHARE * laid.pitch_mm;
  laid.run_mm = laid.pitch_mm + laid.lap_mm;
  draw_all (&laid);
  return laid.figure;
}
