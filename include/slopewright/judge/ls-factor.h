/* SPDX-License-Identifier: MIT */
#pragma once

#include <glib.h>
#include <slopewright/base/polygon.h>
#include <slopewright/base/status.h>

/*
 * Slope length and steepness factor LS of the soil loss equations: the loss of
 * this slope over that of a plot 72.6 ft long at 9 %.
 *
 * Lengths are plan lengths, from where runoff begins. Not the developed length
 * that blankets are cut to.
 *
 * Sources: USDA Agriculture Handbook 703 (1997) ch. 4; McCool et al. 1987,
 * Trans. ASAE 30(5):1387; Foster and Wischmeier 1974, Trans. ASAE 17:305;
 * USDA Agriculture Handbook 537 (1978); Liu et al. 1994, Trans. ASAE 37(6):1835.
 */

/**
 * SwLsMethod: S and exponent m belong together; one choice picks both, so that
 * the two systems cannot be mixed. RUSLE asks how much of the loss is by rills:
 * high on freshly graded ground, low on ground long settled.
 */
typedef enum
{
  SW_LS_RUSLE_LOW,
  SW_LS_RUSLE_MODERATE,
  SW_LS_RUSLE_HIGH,
  SW_LS_USLE_1978,
  SW_LS_METHOD_COUNT
} SwLsMethod;

/** Where the equations leave their data; a result with a flag is still given. */
typedef enum
{
  SW_LS_WITHIN = 0,
  SW_LS_STEEPER_THAN_PLOTS = 1 << 0,  /* over 18 %, where the plots of RUSLE end */
  SW_LS_STEEPER_THAN_TABLES = 1 << 1, /* over 60 %, where its tables end */
  SW_LS_LONG = 1 << 2,     /* over 400 ft: runoff has usually gathered by then */
  SW_LS_TOO_LONG = 1 << 3, /* over 1000 ft: not to be used */
  SW_LS_SHORT = 1 << 4,    /* under 15 ft: no rills, short-slope rule */
  SW_LS_FLATTENS = 1 << 5  /* flatter below steeper: soil may settle there, which
                                         these equations cannot tell */
} SwLsLimit;

/**
 * sw_steepness_factor:
 * @method: which equation
 * @angle_rad: [0, pi/2)
 * @factor: (out): S
 *
 * RUSLE: 10.8 sin + 0.03 below 9 %, 16.8 sin - 0.50 from 9 % on. It steps from
 * 0.998 to 1.006 at 9 %; the step is the handbook's. USLE: 65.41 sin2 + 4.56 sin
 * + 0.065.
 *
 * Returns: SW_OK or SW_E_RANGE.
 */
SwStatus sw_steepness_factor (SwLsMethod method, double angle_rad, double *factor);

/** S of RUSLE where slopes are shorter than 15 ft and no rill forms: 3.0 sin^0.8 + 0.56. */
SwStatus sw_steepness_factor_short (double angle_rad, double *factor);

/**
 * S by 21.91 sin - 0.96, from plots of 9 to 55 % (Liu et al. 1994); SW_E_RANGE
 * outside of them. At 50 % it is a quarter above that of RUSLE: the two are the
 * span to show on steep faces.
 */
SwStatus sw_steepness_factor_steep (double angle_rad, double *factor);

/**
 * sw_length_exponent:
 * @m: (out): exponent of length
 *
 * RUSLE: m = b / (1 + b), b = (sin / 0.0896) / (3.0 sin^0.8 + 0.56), halved for
 * low and doubled for high rill loss. USLE: 0.2 below 1 %, 0.3 from 1 %, 0.4
 * from 3.5 %, 0.5 from 5 %; the handbook leaves 3 to 3.5 and 4.5 to 5 % open,
 * where the smaller exponent is taken here.
 */
SwStatus sw_length_exponent (SwLsMethod method, double angle_rad, double *m);

/** L = (length / 72.6 ft)^m. @length_m on plan, > 0. No short-slope rule. */
SwStatus sw_length_factor (SwLsMethod method, double length_m, double angle_rad,
                           double *factor);

/**
 * sw_ls_factor:
 * @length_m: on plan, > 0
 * @angle_rad: [0, pi/2)
 * @ls: (out): L times S
 *
 * RUSLE below 15 ft: on less than 9 % the LS of 15 ft; steeper, the short S with
 * the L of 15 ft up to 3 ft, and straight on logarithmic axes from there to 15
 * ft. This rule was deduced from the printed tables and meets every cell of them.
 */
SwStatus sw_ls_factor (SwLsMethod method, double length_m, double angle_rad, double *ls);

/** SwLsLimit flags of one uniform slope; 0 where it is within the data. */
guint sw_ls_limits (double length_m, double angle_rad);

/** One straight stretch of a section, from the top down. */
typedef struct
{
  double length_m;  /* on plan, > 0 */
  double angle_rad; /* (-pi/2, pi/2); negative where it falls back into the hill */
  gboolean drained; /* a drain at its low edge takes the runoff away */
} SwLsSegment;

/**
 * sw_ls_segments_new:
 * @section: points out and up, from crest to toe, x growing
 * @count: how many, >= 2
 * @drained: (nullable): @count - 1 flags, see SwLsSegment
 * @segments: (out) (transfer full): @count - 1 segments; g_free()
 *
 * Returns: SW_OK; SW_E_FEW_POINTS; SW_E_RANGE for a number that is not finite;
 *   SW_E_SECTION where x does not grow.
 */
SwStatus sw_ls_segments_new (const SwPoint *section, guint count, const gboolean *drained,
                             SwLsSegment **segments);

/**
 * sw_ls_segments:
 * @segments: from the top down
 * @count: how many, >= 1
 * @ls: (out caller-allocates): @count factors
 * @limits: (out) (optional): SwLsLimit flags
 *
 * LS of each segment: S (x1^(m+1) - x0^(m+1)) / ((x1 - x0) 72.6^m), x from where
 * runoff begins. It begins again at 0 below a drained segment, and at the inner
 * edge of one that falls back into the hill, which must be drained. A stretch
 * shorter than 15 ft in all has no rills, hence no lower end that loses more:
 * each of its segments takes the short-slope LS of the whole stretch.
 *
 * Returns: SW_OK; SW_E_RANGE; SW_E_SECTION where a segment falls back into the
 *   hill and is not drained: water would stand there.
 */
SwStatus sw_ls_segments (SwLsMethod method, const SwLsSegment *segments, guint count,
                         double *ls, guint *limits);

/**
 * sw_ls_segments_mean:
 * @ls: of each segment
 * @weights: (nullable): K, or K times C, of each; NULL for 1
 * @mean: (out): sum of weight x ls x length, over the whole length
 *
 * Returns: SW_OK or SW_E_RANGE.
 */
SwStatus sw_ls_segments_mean (const SwLsSegment *segments, guint count, const double *ls,
                              const double *weights, double *mean);

/**
 * sw_ls_share:
 * @segment: 1 at the top .. @count
 * @count: equal parts of one uniform slope
 * @m: exponent of length, >= 0
 * @share: (out): ratio of the whole loss that comes off that part
 *
 * (i^(m+1) - (i-1)^(m+1)) / n^(m+1).
 */
SwStatus sw_ls_share (guint segment, guint count, double m, double *share);
