/* SPDX-License-Identifier: MIT */
#pragma once

#include <slopewright/base/status.h>

/*
 * One gradient, three faces: horizontal per 1 vertical, angle, rise per run.
 * Always shown together, because "1:2" is read both ways round and that error
 * turns 26.6 degrees into 63.4.
 */

/** sw_gradient_from_hv: angle in radians of @hv horizontal to 1 vertical; SW_E_RANGE unless @hv > 0 and finite. */
SwStatus sw_gradient_from_hv (double hv, double *angle_rad);

/** sw_gradient_from_ratio: angle of a @rise_per_run of 0.5 (50 %); SW_E_RANGE if not finite. */
SwStatus sw_gradient_from_ratio (double rise_per_run, double *angle_rad);

/** Horizontal per 1 vertical; infinite for a level line. */
double sw_gradient_hv (double angle_rad);

/** Rise per run: 0.5 is 50 %. */
double sw_gradient_ratio (double angle_rad);

/**
 * sw_ramp_length:
 * @run_m: distance on plan, metres, > 0
 * @rise_m: height gained, metres, either sign
 * @length_m: (out): distance along the face, metres
 *
 * Ordering by plan distance falls 5 % short at 3:1 and 11 % at 2:1, so every
 * quantity downstream starts from this length.
 */
SwStatus sw_ramp_length (double run_m, double rise_m, double *length_m);
