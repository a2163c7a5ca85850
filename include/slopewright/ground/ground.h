/* SPDX-License-Identifier: MIT */
#pragma once

#include <slopewright/base/job.h>

/**
 * SwGround: the surface of a face as a height over its plan. The layout asks
 * it for profiles and areas and knows nothing else of the ground. First kind:
 * one section extruded along a straight crest. Second: sections at stations
 * along the crest, matched break by break and ruled between.
 */
typedef struct SwGround SwGround;

/** A section at a place along the crest; borrowed. */
typedef struct
{
  double along_m;
  const SwPoint *section; /* x out, y up */
} SwStation;

/**
 * sw_ground_new_ruled:
 * @stations: @n_stations of them, along_m growing; each section has @n_points
 * @crest, @toe: indices of the points that are crest and toe at every station
 * @ground: (out) (transfer full): the surface
 *
 * Between two stations break i runs straight from its place in the one to its
 * place in the other, and the ground straight from break to break: a ruled
 * surface. Beyond the outer stations the section goes on unchanged.
 *
 * Returns: SW_OK; SW_E_FEW_POINTS; SW_E_RANGE for a number that is not finite;
 *   SW_E_SECTION if out_m does not grow from point to point, stations do not
 *   follow each other, or the crest is not before and above the toe.
 */
SwStatus sw_ground_new_ruled (const SwStation *stations, guint n_stations, guint n_points,
                              guint crest, guint toe, SwGround **ground);

/**
 * sw_ground_new:
 * @face: its sections are copied
 * @ground: (out) (transfer full): the surface
 *
 * Third kind: a face with a round crest is its one section turned about an
 * axis; along_m is then arc length at the crest.
 *
 * Returns: as sw_ground_new_ruled(); SW_E_SECTION also for a round crest with
 *   further sections, a radius that is not positive, or a bowl that closes
 *   before its toe.
 */
SwStatus sw_ground_new (const SwFace *face, SwGround **ground);
void sw_ground_free (SwGround *ground);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (SwGround, sw_ground_free)

double sw_ground_crest_out_m (const SwGround *ground);
double sw_ground_toe_out_m (const SwGround *ground);

/**
 * sw_ground_stretch:
 *
 * True metres along a contour per metre of along_m, at @out_m: 1 on a straight
 * crest; grows down a nose, and shrinks down a bowl, as radius over crest radius.
 */
double sw_ground_stretch (const SwGround *ground, double out_m);

/** Where break @point of the section lies at @along_m. */
double sw_ground_break_out_m (const SwGround *ground, guint point, double along_m);

/** Its true distance down from the crest. */
double sw_ground_break_down_m (const SwGround *ground, guint point, double along_m);

/** Height over the section's datum at a plan point. */
double sw_ground_up_m (const SwGround *ground, SwPoint plan);

/** True distance down the fall line from the crest line to @plan; negative behind the crest. */
double sw_ground_down_m (const SwGround *ground, SwPoint plan);

/** Inverse of sw_ground_down_m() at @along_m: where @down_m lies on plan. */
double sw_ground_out_m (const SwGround *ground, double along_m, double down_m);

/** True length of the surface line over the straight plan line from @a to @b: sum of sqrt(dx2 + dy2 + dz2) over its breaks. */
double sw_ground_length_m (const SwGround *ground, SwPoint a, SwPoint b);

/**
 * sw_ground_kinks:
 * @shares: (element-type double): cleared, then filled with the shares of the
 *   way from @a to @b on plan, 0 to 1 ascending, at which the ground bends
 */
void sw_ground_kinks (const SwGround *ground, SwPoint a, SwPoint b, GArray *shares);

/** Whether the ground is curved between its breaks: round crest, or several sections. */
gboolean sw_ground_is_curved (const SwGround *ground);

/** True area of the surface over a simple plan polygon. */
double sw_ground_area_m2 (const SwGround *ground, SwRing plan);

/** Part of the face to be covered as one: from one break of the section to another. */
typedef struct
{
  guint from_break, to_break;    /* indices of section points, from < to */
  double out_from_m, out_to_m;   /* smallest and largest out_m of the two breaks */
  double down_from_m, down_to_m; /* the same in true distance from the crest */
} SwReach;

/**
 * sw_ground_tiers:
 * @bench_hv: ground flatter than this H:V, at every station, is bench, > 0
 * @bench_min_m: a bench is at least so long on plan, > 0
 * @reaches: (element-type SwReach): cleared and filled, crest to toe
 *
 * Never empty on SW_OK. A bench at the very crest or toe is left bare like any other.
 */
SwStatus sw_ground_tiers (const SwGround *ground, double bench_hv, double bench_min_m,
                          GArray *reaches);

/** The one reach from crest to toe, benches included. */
SwStatus sw_ground_whole (const SwGround *ground, GArray *reaches);

/** Steepest angle of any stretch of the reach at any station, radians, >= 0. */
double sw_ground_steepest_rad (const SwGround *ground, SwReach reach);

/** Mean angle of the reach at @along_m: atan (drop / run), radians. */
double sw_ground_mean_rad (const SwGround *ground, SwReach reach, double along_m);

/**
 * sw_ground_band:
 * @ring: (element-type SwPoint): cleared, then filled with the plan outline of
 *   the reach between two places along the crest
 */
void sw_ground_band (const SwGround *ground, SwReach reach, double along_from_m,
                     double along_to_m, GArray *ring);

/** Both ends and every station between them, ascending. (transfer full) (element-type double) */
GArray *sw_ground_stations_between (const SwGround *ground, double along_from_m,
                                    double along_to_m);
