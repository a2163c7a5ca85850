/* SPDX-License-Identifier: MIT */
#include "face-view.h"
#include <math.h>
#include <slopewright/base/count.h>

/* A width that is off by less is true on any sheet. */
#define LEAST_WIDTH_ERROR 1e-3

/* "104 mm", or "100 mm to 104 mm" when tiers differ. */
static char *
range_text (double low_m, double high_m, SwLimit limit, const SwDraw *draw)
{
  g_autofree char *low =
      sw_quantity_limit_text (low_m, SW_UNIT_SMALL_M, limit, draw->style);
  g_autofree char *high =
      sw_quantity_limit_text (high_m, SW_UNIT_SMALL_M, limit, draw->style);

  if (strcmp (low, high) == 0)
    return g_steal_pointer (&low);
  return sw_texts_fill (draw->texts, "drawing.range", "low", low, "high", high, NULL);
}

char *
sw_side_lap_text (const SwFaceLayout *laid, const SwDraw *draw)
{
  double low = INFINITY, high = 0.0;

  for (guint t = 0; t < laid->n_tiers; t++)
    {
      low = fmin (low, laid->tiers[t].side_lap_m);
      high = fmax (high, laid->tiers[t].side_lap_m);
    }
  return range_text (low, high, SW_LIMIT_LAID, draw);
}

char *
sw_end_lap_text (const SwFaceLayout *laid, const SwDraw *draw)
{
  double low = INFINITY, high = 0.0;

  for (guint t = 0; t < laid->n_tiers; t++)
    {
      low = fmin (low, laid->tiers[t].end_lap_m);
      high = fmax (high, laid->tiers[t].end_lap_m);
    }
  return range_text (low, high, SW_LIMIT_LEAST, draw);
}

static char *
trench_text (const SwPractice *practice, const SwDraw *draw, const char *id,
             SwPracticeValue width, SwPracticeValue depth)
{
  g_autofree char *w = sw_quantity_limit_text (
      sw_practice_get (practice, width), SW_UNIT_SMALL_M, SW_LIMIT_LEAST, draw->style);
  g_autofree char *d = sw_quantity_limit_text (
      sw_practice_get (practice, depth), SW_UNIT_SMALL_M, SW_LIMIT_LEAST, draw->style);

  return sw_texts_fill (draw->texts, id, "width", w, "depth", d, NULL);
}

static gboolean
has_slots (const SwFaceLayout *laid)
{
  for (guint t = 0; t < laid->n_tiers; t++)
    if (laid->tiers[t].slots > 0)
      return TRUE;
  return FALSE;
}

static void
add_laps (GArray *key, const SwFaceLayout *laid, const SwDraw *draw)
{
  gboolean overlaps = FALSE, joints = FALSE;
  gboolean is_fan = laid->face->crest_form != SW_CREST_STRAIGHT;

  for (guint t = 0; t < laid->n_tiers; t++)
    overlaps = overlaps || laid->tiers[t].strips > 1;
  for (guint i = 0; i < laid->n_runs; i++)
    joints = joints || sw_run_end_laps (&laid->runs[i]) > 0;
  if (overlaps)
    {
      g_autofree char *lap = sw_side_lap_text (laid, draw);

      sw_key_add (key, SW_ROLE_LAP, SW_KEY_BOX,
                  sw_texts_fill (draw->texts,
                                 is_fan ? "drawing.key.lap-fan" : "drawing.key.lap",
                                 "lap", lap, NULL));
    }
  if (joints)
    {
      g_autofree char *lap = sw_end_lap_text (laid, draw);

      sw_key_add (key, SW_ROLE_JOINT, SW_KEY_BOX,
                  sw_texts_fill (draw->texts, "drawing.key.joint", "lap", lap, NULL));
    }
}

/* One entry when key and toe trench are alike, else one each. */
static void
add_trenches (GArray *key, const SwPractice *practice, const SwDraw *draw)
{
  const SwSourced *values = practice->values;
  gboolean alike = sw_ticks (values[SW_PRACTICE_TRENCH_WIDTH_M].value)
                       == sw_ticks (values[SW_PRACTICE_TOE_WIDTH_M].value)
                   && sw_ticks (values[SW_PRACTICE_TRENCH_DEPTH_M].value)
                          == sw_ticks (values[SW_PRACTICE_TOE_DEPTH_M].value);
  gboolean both = practice->toe_kind == SW_TOE_TRENCH;

  sw_key_add (
      key, SW_ROLE_TRENCH, SW_KEY_BOX,
      trench_text (practice, draw,
                   both && alike ? "drawing.key.trench-size" : "drawing.key.key-trench",
                   SW_PRACTICE_TRENCH_WIDTH_M, SW_PRACTICE_TRENCH_DEPTH_M));
  if (both && !alike)
    sw_key_add (key, SW_ROLE_TRENCH, SW_KEY_BOX,
                trench_text (practice, draw, "drawing.key.toe-trench",
                             SW_PRACTICE_TOE_WIDTH_M, SW_PRACTICE_TOE_DEPTH_M));
}

static void
add_words (GArray *key, const SwDraw *draw, const char *id)
{
  sw_key_add (key, SW_ROLE_TEXT, SW_KEY_NONE, g_strdup (sw_texts_get (draw->texts, id)));
}

/* How the face was laid flat, and what is not true of it. */
static void
add_manner (GArray *key, const SwFaceLayout *laid, const SwDraw *draw)
{
  double error = sw_development_width_error (laid);

  if (laid->face->crest_form == SW_CREST_STRAIGHT)
    add_words (key, draw,
               laid->face->n_further > 0 ? "drawing.laid-flat-ruled"
                                         : "drawing.laid-flat");
  else if (error < LEAST_WIDTH_ERROR)
    add_words (key, draw, "drawing.developed");
  else
    {
      g_autofree char *percent =
          sw_decimal_text (ceil (error * 1000.0) / 10.0, 1, draw->style);

      sw_key_add (key, SW_ROLE_TEXT, SW_KEY_NONE,
                  sw_texts_fill (draw->texts, "drawing.developed-breaks", "error",
                                 percent, NULL));
    }
  if (laid->n_tiers > 0 && laid->tiers[0].closed)
    add_words (key, draw, "drawing.developed-cut");
}

GArray *
sw_face_view_key (const SwResult *result, guint face, const SwDraw *draw,
                  gboolean with_pins, gboolean with_lengths)
{
  GArray *key = sw_key_new ();
  const SwFaceLayout *laid;
  const SwPractice *practice;

  if (result->layout == NULL)
    return key;
  laid = &result->layout->faces[face];
  practice = result->layout->practice;
  sw_key_add (
      key, SW_ROLE_RUN, SW_KEY_BOX,
      g_strdup (sw_texts_get (draw->texts, with_lengths ? "drawing.key.run-lengths"
                                                        : "drawing.key.run-numbers")));
  add_laps (key, laid, draw);
  add_trenches (key, practice, draw);
  if (has_slots (laid))
    sw_key_add (key, SW_ROLE_SLOT, SW_KEY_BOX,
                trench_text (practice, draw, "drawing.key.slot-size",
                             SW_PRACTICE_SLOT_WIDTH_M, SW_PRACTICE_SLOT_DEPTH_M));
  sw_key_add_site (key, result, face, draw);
  if (with_pins)
    sw_key_add (key, SW_ROLE_PIN, SW_KEY_DOT,
                g_strdup (sw_texts_get (draw->texts, "drawing.key.pin")));
  else
    sw_key_add (key, SW_ROLE_PIN, SW_KEY_NONE,
                g_strdup (sw_texts_get (draw->texts, "drawing.key.pins-elsewhere")));
  add_manner (key, laid, draw);
  return key;
}
