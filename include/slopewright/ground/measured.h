/* SPDX-License-Identifier: MIT */
#pragma once

#include <slopewright/base/job.h>

/*
 * What people measure on a bare slope, turned into the section and outline of a
 * face. Each face remembers how it was obtained.
 */

/**
 * Four corners taped in the face: A and B left and right on the crest, C and D right
 * and left at the toe, as seen from the toe looking up. All true lengths, metres.
 */
typedef struct
{
  double ab_m, bc_m, cd_m, da_m;
  double ac_m; /* the diagonal that fixes the shape */
  double bd_m; /* the other one, to check it; 0: not taped */
} SwTapedSides;

typedef struct
{
  SwPoint corners[4];  /* A, B, C, D: x along the crest from A, y down the face */
  double area_m2;      /* true */
  double bd_m;         /* what the other diagonal must be */
  double residual_m;   /* taped less that; 0 when it was not taped */
  double allowed_m;    /* a larger residual asks to tape again */
  gboolean checked;    /* the other diagonal was taped */
  double sharpest_rad; /* least and largest angle between two tapes at C and at D: */
  double flattest_rad; /*   beyond 30 to 120 degrees a small slip moves the corner far */
} SwTapedShape;

/** What the other diagonal is allowed at least: common practice, no source. */
#define SW_TAPED_ALLOWED_M 0.10

/**
 * sw_taped_shape:
 * @sides: each > 0 but bd_m, which is >= 0
 * @shape: (out): the corners
 *
 * C lies where the tapes from A and B meet below the crest line, D where those from
 * A and C meet on the far side of AC from B: x = (b2 + c2 - a2) / (2 c).
 * The other diagonal is allowed SW_TAPED_ALLOWED_M or 1 %, whichever is more (common
 * practice, no source).
 *
 * Returns: SW_OK; SW_E_RANGE for a length that is not above 0 or tapes that do not
 *   meet; SW_E_OUTLINE when D is not below the crest line.
 */
SwStatus sw_taped_shape (const SwTapedSides *sides, SwTapedShape *shape);

/** What was measured: which members count follows from @how. */
typedef struct
{
  SwObtained how;             /* one of the first four: see SwObtained */
  double length_m, angle_rad; /* taped-angle: down the face; taped-shape: its angle */
  double rise_m;              /* rise-ratio, run-rise */
  double hv;                  /* rise-ratio */
  double run_m;               /* run-rise, on plan */
  double width_m;             /* along the crest; all but taped-shape */
  SwTapedSides sides;         /* taped-shape */
} SwMeasured;

/**
 * sw_measured_shape:
 * @measured: what was measured
 * @face: gets a straight section, a straight crest, its outline and how it was obtained;
 *   all else stays
 *
 * The toe is at height 0 and the crest at out 0.
 *
 * Returns: SW_OK; SW_E_RANGE for a number that is not above 0, or an angle not below a
 *   right one; as sw_taped_shape(). On failure @face is untouched.
 */
SwStatus sw_measured_shape (const SwMeasured *measured, SwFace *face);
