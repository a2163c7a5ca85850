/* SPDX-License-Identifier: MIT */
#pragma once

#include <glib.h>
#include <slopewright/base/status.h>

/*
 * A first look at shallow slides: a layer of even depth on a long plane face
 * (infinite slope). It sees neither deep slides, layers, cracks, shaking nor the
 * blanket, its pins or roots. Its numbers can only ask for a geotechnical review;
 * no number clears a slope.
 *
 * Sources: US Army Corps of Engineers EM 1110-2-1902 (2003) app. C; Duncan,
 * Buchignani and De Wet 1987.
 */

typedef struct
{
  double friction_rad;    /* effective angle of friction, [0, pi/2) */
  double cohesion_pa;     /* effective, >= 0 */
  double weight_n_per_m3; /* unit weight as it lies there, wet where wet, > 0 */
} SwSlideSoil;

/**
 * sw_pore_ratio:
 * @wet_share: height of water over depth of the layer, [0, 1]; 1 for seepage
 *   down the face through all of it
 * @water_n_per_m3: unit weight of water, > 0
 * @soil_n_per_m3: unit weight of soil, > 0
 * @angle_rad: of the face, (0, pi/2)
 * @ratio: (out): water pressure over the weight above, r_u
 *
 * Seepage parallel to the face: share x water / soil x cos2.
 */
SwStatus sw_pore_ratio (double wet_share, double water_n_per_m3, double soil_n_per_m3,
                        double angle_rad, double *ratio);

/**
 * sw_slide_factor:
 * @soil: of the layer
 * @depth_m: of the layer, upright, > 0
 * @angle_rad: of the face, (0, pi/2)
 * @pore_ratio: r_u, [0, cos2 of the angle]
 * @factor: (out): strength over what acts
 *
 * (1 - r_u / cos2) tan friction / tan angle + cohesion / (weight depth sin cos).
 *
 * Returns: SW_OK or SW_E_RANGE.
 */
SwStatus sw_slide_factor (const SwSlideSoil *soil, double depth_m, double angle_rad,
                          double pore_ratio, double *factor);

/**
 * sw_slide_depth:
 * @wanted: factor asked for, > 0; 1 for the critical depth
 * @depth_m: (out): depth at which the factor has come down to @wanted; 0 if it is
 *   below at any depth, INFINITY if friction alone is enough
 */
SwStatus sw_slide_depth (const SwSlideSoil *soil, double angle_rad, double pore_ratio,
                         double wanted, double *depth_m);

typedef enum
{
  SW_SLIDE_WITHIN = 0,
  SW_SLIDE_NOT_THIN = 1 << 0 /* the face is shorter than ten depths: ends hold or push */
} SwSlideLimit;

typedef struct
{
  double dry, half_wet, full_seepage; /* factors */
  double critical_depth_m;            /* with full seepage, factor 1 */
  guint limits;                       /* SwSlideLimit flags */
} SwSlideScreen;

/**
 * The factors dry, half and fully wet with fresh water, and the critical depth;
 * @length_m of the face down the fall line, > 0. The rest as sw_slide_factor().
 */
SwStatus sw_slide_screen (const SwSlideSoil *soil, double depth_m, double length_m,
                          double angle_rad, SwSlideScreen *screen);
