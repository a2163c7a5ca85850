/* SPDX-License-Identifier: MIT */
#pragma once

#include <slopewright/judge/result.h>

/*
 * How a face lies flat: from (along, down) of a layout to metres on the sheet, x to
 * the right and y down the middle fall line. A straight crest keeps (along, down). A round
 * one unrolls to the sector of a ring: fall lines stay straight and at true length, and
 * widths are true where the face is one cone (slant radius = plan radius / cos a, sweep =
 * plan sweep x cos a). A section with breaks is several cones, which no one sheet
 * can take: the cone through crest and toe stands for them, its widths true there.
 */
typedef struct
{
  double middle_m; /* along_m of the fall line that stays upright */
  double
      turn_per_m; /* radians a metre along the crest turns: > 0 nose, < 0 bowl, 0 straight */
} SwDevelopment;

SwDevelopment sw_development_of (const SwFaceLayout *laid);

gboolean sw_development_is_bent (SwDevelopment development);

/** Where (x along, y down) lies on the sheet. */
SwPoint sw_development_lay (SwDevelopment development, SwPoint along_down);

/** The inverse of sw_development_lay(). */
SwPoint sw_development_lift (SwDevelopment development, SwPoint sheet);

/** Angle of the contour at @along_m to the sheet's x axis, anticlockwise as seen. */
double sw_development_turn_rad (SwDevelopment development, double along_m);

/** Metres on the sheet per metre of along_m, @down_m down from the crest: 1 at the crest. */
double sw_development_stretch (SwDevelopment development, double down_m);

/** Largest error of a drawn width between crest and toe, as a share of the true width, >= 0. */
double sw_development_width_error (const SwFaceLayout *laid);
