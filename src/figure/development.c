/* SPDX-License-Identifier: MIT */
#include "development.h"
#include <math.h>

/* A crest that turns less than this over a kilometre is straight on any sheet. */
#define LEAST_TURN_PER_M 1e-9

static double
toe_down_m (const SwFaceLayout *laid)
{
  return sw_ground_break_down_m (laid->ground, laid->face->toe, 0.0);
}

SwDevelopment
sw_development_of (const SwFaceLayout *laid)
{
  const SwFace *face = laid->face;
  SwBox box = sw_ring_box ((SwRing){ face->outline, face->n_outline });
  SwDevelopment development = { (box.x0_m + box.x1_m) / 2.0, 0.0 };

  if (face->crest_form != SW_CREST_STRAIGHT)
    development.turn_per_m =
        (sw_ground_stretch (laid->ground, sw_ground_toe_out_m (laid->ground)) - 1.0)
        / toe_down_m (laid);
  return development;
}

gboolean
sw_development_is_bent (SwDevelopment development)
{
  return fabs (development.turn_per_m) > LEAST_TURN_PER_M;
}

SwPoint
sw_development_lay (SwDevelopment development, SwPoint along_down)
{
  double apex_m, radius_m, turn;

  if (!sw_development_is_bent (development))
    return along_down;
  apex_m = 1.0 / development.turn_per_m;
  radius_m = apex_m + along_down.y_m;
  turn = sw_development_turn_rad (development, along_down.x_m);
  return (SwPoint){ development.middle_m + radius_m * sin (turn),
                    radius_m * cos (turn) - apex_m };
}

SwPoint
sw_development_lift (SwDevelopment development, SwPoint sheet)
{
  double apex_m, sense, x_m, y_m;

  if (!sw_development_is_bent (development))
    return sheet;
  apex_m = 1.0 / development.turn_per_m;
  sense = copysign (1.0, apex_m);
  x_m = sense * (sheet.x_m - development.middle_m);
  y_m = sense * (sheet.y_m + apex_m);
  return (SwPoint){ development.middle_m + atan2 (x_m, y_m) * apex_m,
                    sense * hypot (x_m, y_m) - apex_m };
}

double
sw_development_turn_rad (SwDevelopment development, double along_m)
{
  return development.turn_per_m * (along_m - development.middle_m);
}

double
sw_development_stretch (SwDevelopment development, double down_m)
{
  return 1.0 + development.turn_per_m * down_m;
}

/* Both widths run straight from break to break, so the largest error is at a break. */
double
sw_development_width_error (const SwFaceLayout *laid)
{
  const SwFace *face = laid->face;
  SwDevelopment development = sw_development_of (laid);
  double error = 0.0;

  if (!sw_development_is_bent (development))
    return 0.0;
  for (guint i = face->crest; i <= face->toe; i++)
    {
      double true_width = sw_ground_stretch (laid->ground, face->section[i].x_m);
      double drawn = sw_development_stretch (
          development, sw_ground_break_down_m (laid->ground, i, 0.0));

      error = fmax (error, fabs (drawn / true_width - 1.0));
    }
  return error;
}
