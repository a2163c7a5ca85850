/* SPDX-License-Identifier: MIT */
#include "step-picture.h"
#include <math.h>

/* Slopes are drawn between these, so that a picture stays a picture. */
#define FLATTEST_RAD 0.26
#define STEEPEST_RAD 0.72

static const char *const codes[SW_STEP_COUNT] = {
  [SW_STEP_PREPARE] = "prepare",
  [SW_STEP_SEED] = "seed",
  [SW_STEP_DIG_KEY] = "dig-key",
  [SW_STEP_ANCHOR] = "anchor",
  [SW_STEP_BACKFILL] = "backfill",
  [SW_STEP_UNROLL] = "unroll",
  [SW_STEP_PIN_FIELD] = "pin-field",
  [SW_STEP_SIDE_LAP] = "side-lap",
  [SW_STEP_END_LAP] = "end-lap",
  [SW_STEP_SLOT] = "slot",
  [SW_STEP_TOE] = "toe",
  [SW_STEP_INSPECT] = "inspect",
};

const char *
sw_step_code (SwStep step)
{
  return codes[step];
}

static gboolean
any_tier (const SwLayout *layout, gboolean (*has) (const SwFaceLayout *, const SwTier *))
{
  for (guint f = 0; layout != NULL && f < layout->n_faces; f++)
    for (guint t = 0; t < layout->faces[f].n_tiers; t++)
      if (has (&layout->faces[f], &layout->faces[f].tiers[t]))
        return TRUE;
  return FALSE;
}

static gboolean
has_slots (const SwFaceLayout *laid, const SwTier *tier)
{
  return tier->slots > 0;
}

static gboolean
has_laps (const SwFaceLayout *laid, const SwTier *tier)
{
  return tier->strips > 1;
}

static gboolean
has_joints (const SwFaceLayout *laid, const SwTier *tier)
{
  for (guint r = tier->first_run; r < tier->first_run + tier->n_runs; r++)
    if (sw_run_end_laps (&laid->runs[r]) > 0)
      return TRUE;
  return FALSE;
}

gboolean
sw_step_applies (const SwResult *result, SwStep step)
{
  switch (step)
    {
    case SW_STEP_SEED:
      return sw_seed_mix_is_sown (&result->job->seed);
    case SW_STEP_SIDE_LAP:
      return any_tier (result->layout, has_laps);
    case SW_STEP_END_LAP:
      return any_tier (result->layout, has_joints);
    case SW_STEP_SLOT:
      return any_tier (result->layout, has_slots);
    case SW_STEP_PREPARE:
    case SW_STEP_DIG_KEY:
    case SW_STEP_ANCHOR:
    case SW_STEP_BACKFILL:
    case SW_STEP_UNROLL:
    case SW_STEP_PIN_FIELD:
    case SW_STEP_TOE:
    case SW_STEP_INSPECT:
    case SW_STEP_COUNT:
    default:
      return TRUE;
    }
}

static double
mean_slope_rad (const SwResult *result, guint face_index)
{
  const SwFace *face = sw_result_face (result, face_index);
  double slope = FLATTEST_RAD;

  if (face->crest < face->toe && face->toe < face->n_section)
    slope = sw_section_angle_rad (face, face->crest, face->toe);
  if (result->layout != NULL && result->layout->faces[face_index].n_tiers > 0)
    slope = result->layout->faces[face_index].tiers[0].mean_rad;
  return CLAMP (slope, FLATTEST_RAD, STEEPEST_RAD);
}

SwFigure *
sw_draw_step (const SwResult *result, guint face, SwStep step, double width_mm,
              double height_mm, const SwDraw *draw)
{
  static void (*const draw_one[SW_STEP_COUNT]) (SwStepPicture *) = {
    [SW_STEP_PREPARE] = sw_step_prepare,
    [SW_STEP_SEED] = sw_step_seed,
    [SW_STEP_DIG_KEY] = sw_step_dig_key,
    [SW_STEP_ANCHOR] = sw_step_anchor,
    [SW_STEP_BACKFILL] = sw_step_backfill,
    [SW_STEP_UNROLL] = sw_step_unroll,
    [SW_STEP_PIN_FIELD] = sw_step_pin_field,
    [SW_STEP_SIDE_LAP] = sw_step_side_lap,
    [SW_STEP_END_LAP] = sw_step_end_lap,
    [SW_STEP_SLOT] = sw_step_slot,
    [SW_STEP_TOE] = sw_step_toe,
    [SW_STEP_INSPECT] = sw_step_inspect,
  };
  SwStepPicture picture = { .result = result,
                            .figure = sw_figure_new (width_mm, height_mm),
                            .slope_rad = mean_slope_rad (result, face),
                            .face = sw_result_face (result, face),
                            .unit_mm = fmin (width_mm / 30.0, height_mm / 22.0) };
  g_autofree char *id = g_strconcat ("drawing.step.", codes[step], NULL);
  double w = width_mm, h = height_mm;
  SwPaperPoint frame[4] = { { 0, 0 }, { w, 0 }, { w, h }, { 0, h } };
  double run = w * 0.5, rise = run * tan (picture.slope_rad);

  if (rise > h * 0.46)
    {
      rise = h * 0.46;
      run = rise / tan (picture.slope_rad);
    }
  picture.crest = (SwPaperPoint){ w * 0.34, h * 0.52 - rise / 2.0 };
  picture.toe = (SwPaperPoint){ fmin (w * 0.34 + run, w * 0.9), h * 0.52 + rise / 2.0 };
  picture.figure->title = g_strdup (sw_texts_get (draw->texts, id));
  sw_figure_clip (picture.figure, frame, 4);
  draw_one[step](&picture);
  sw_figure_unclip (picture.figure);
  return picture.figure;
}
