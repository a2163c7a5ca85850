/* SPDX-License-Identifier: MIT */
#pragma once

#include <glib.h>
#include <slopewright/base/status.h>

/*
 * Runoff as a thin sheet down a plane face, when rain has lasted long enough
 * for the whole face to run off (kinematic wave with Manning's equation).
 *
 * Sources: Woolhiser and Liggett 1967, Water Resources Research 3(3):753, for
 * the kinematic number; USDA TR-55 (1986) ch. 3 for travel time; depth checked
 * with V. M. Ponce, San Diego State University, CIVE 445, 2005.
 */

/** Unit weight of fresh water, N/m3, as FHWA HEC-15 (2005) uses it. */
#define SW_WATER_N_PER_M3 9810.0

typedef enum
{
  SW_SHEET_WITHIN = 0,
  SW_SHEET_NOT_KINEMATIC = 1 << 0, /* kinematic number 20 or less: no valid depth */
  SW_SHEET_TOO_LONG = 1 << 1, /* over 100 ft: sheets have gathered into threads by then */
  SW_SHEET_TOO_DEEP = 1 << 2  /* over 0.1 ft: sheet-flow roughness no longer holds */
} SwSheetLimit;

typedef struct
{
  double discharge_m2_per_s; /* per metre of crest, at the toe */
  double depth_m;            /* square to the face */
  double velocity_m_per_s;
  double shear_pa;
  double froude2;          /* v2 / (g h) */
  double kinematic_number; /* fall of the face / (froude2 x depth) */
  double equilibrium_s;    /* until the toe runs at @discharge */
  guint limits;            /* SwSheetLimit flags */
} SwSheetFlow;

/**
 * sw_sheet_flow_on_plane:
 * @rain_m_per_s: rain less what soaks in, > 0; rain alone is on the careful side
 * @length_m: of the face on plan, > 0: rain falls on the plan
 * @angle_rad: (0, pi/2)
 * @roughness: Manning's n for sheet flow, > 0; far larger than that of channels
 * @flow: (out): at the toe
 *
 * q = i L; h = (n q / sqrt (sin))^0.6; v = q / h; shear = 9810 h sin; time to
 * equilibrium = h / (i cos), as rain is spread over the developed length. The
 * sine, not the tangent: at 2:1 the tangent is 12 % more.
 *
 * Returns: SW_OK or SW_E_RANGE.
 */
SwStatus sw_sheet_flow_on_plane (double rain_m_per_s, double length_m, double angle_rad,
                                 double roughness, SwSheetFlow *flow);

/**
 * sw_sheet_travel_time:
 * @roughness: Manning's n for sheet flow, > 0
 * @length_m: > 0
 * @rain_m: rain of 24 hours that comes once in two years, > 0
 * @gradient: fall per run, > 0
 * @time_s: (out): travel time over that length
 * @limits: (out) (optional): SW_SHEET_TOO_LONG, by the NRCS guidance after TR-55
 *
 * TR-55 eq. 3-3: hours = 0.007 (n L)^0.8 / (P^0.5 s^0.4) in feet and inches,
 * converted exactly.
 */
SwStatus sw_sheet_travel_time (double roughness, double length_m, double rain_m,
                               double gradient, double *time_s, guint *limits);

/** Shear of water @depth_m deep on a bed of @gradient, both >= 0: 9810 d S (HEC-15 eq. 3.1). */
SwStatus sw_bed_shear (double depth_m, double gradient, double *shear_pa);

/**
 * sw_shear_reserve:
 * @permissible_pa: of the blanket, by its test, >= 0
 * @shear_pa: that acts, > 0
 * @reserve: (out): permissible over acting; under 1 the lining fails, and a
 *   design asks for more than 1 (HEC-15 eq. 3.2)
 */
SwStatus sw_shear_reserve (double permissible_pa, double shear_pa, double *reserve);
