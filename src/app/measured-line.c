/* SPDX-License-Identifier: MIT */
#include "measured-line.h"

#include <glib/gi18n.h>
#include <math.h>

/* Parts of a line on a round face, each taken as straight. */
#define PARTS 200

/* Rises smaller than this are level. */
#define LEVEL_M 0.0005

SwMeasuredLine
sw_line_in_section (SwPoint from, SwPoint to)
{
  double run_m = to.x_m - from.x_m, rise_m = to.y_m - from.y_m;

  return (SwMeasuredLine){ hypot (run_m, rise_m), fabs (run_m), rise_m };
}

/* A metre along a round crest is wider or narrower further down. */
static double
plan_length_m (const SwGround *ground, SwPoint from, SwPoint to)
{
  double dx = (to.x_m - from.x_m) / PARTS, dy = (to.y_m - from.y_m) / PARTS;
  double length_m = 0.0;

  for (guint i = 0; i < PARTS; i++)
    length_m += hypot (dx * sw_ground_stretch (ground, from.y_m + (i + 0.5) * dy), dy);
  return length_m;
}

SwMeasuredLine
sw_line_on_face (const SwResult *result, guint face, SwPoint from, SwPoint to)
{
  const SwGround *ground;

  if (result->layout == NULL)
    return (SwMeasuredLine){ NAN, hypot (to.x_m - from.x_m, to.y_m - from.y_m), NAN };
  ground = result->layout->faces[face].ground;
  return (SwMeasuredLine){ sw_ground_length_m (ground, from, to),
                           plan_length_m (ground, from, to),
                           sw_ground_up_m (ground, to) - sw_ground_up_m (ground, from) };
}

char *
sw_line_text (SwMeasuredLine line, SwNumberStyle style)
{
  g_autofree char *plan = sw_quantity_text (line.plan_m, SW_UNIT_M, style);
  g_autofree char *length = NULL;
  g_autofree char *rise = NULL;
  g_autofree char *gradient = NULL;

  if (isnan (line.true_m))
    return g_strdup_printf (_ ("%s on plan; the ground is not known"), plan);
  length = sw_quantity_text (line.true_m, SW_UNIT_M, style);
  rise = sw_quantity_text (fabs (line.rise_m), SW_UNIT_M, style);
  if (fabs (line.rise_m) < LEVEL_M)
    return g_strdup_printf (_ ("%s long · %s on plan · level"), length, plan);
  gradient = sw_gradient_text (atan2 (fabs (line.rise_m), line.plan_m), style);
  return g_strdup_printf (line.rise_m < 0.0 ? _ ("%s long · %s on plan · falls %s · %s")
                                            : _ ("%s long · %s on plan · rises %s · %s"),
                          length, plan, rise, gradient);
}
