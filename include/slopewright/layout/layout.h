/* SPDX-License-Identifier: MIT */
#pragma once

#include <slopewright/base/catalogue.h>
#include <slopewright/base/job.h>
#include <slopewright/ground/ground.h>

/*
 * The layout of a job: runs, pieces, trenches and pins in their places.
 * A layout is a value: made once, then only read.
 */

/** A point of the layout on plan with its true distance down from the crest line. */
typedef struct
{
  double along_m, out_m, down_m;
} SwPlace;

typedef enum
{
  SW_PIN_KEY_TRENCH,
  SW_PIN_SLOT,
  SW_PIN_SIDE_LAP,
  SW_PIN_END_LAP,
  SW_PIN_EDGE,
  SW_PIN_TOE,
  SW_PIN_FIELD,
  SW_PIN_RING, /* round an obstacle */
  SW_PIN_ROLE_COUNT
} SwPinRole; /* text id "pin-role.<code>" */

/** "key-trench", "slot", "side-lap", "end-lap", "edge", "toe", "field", "ring". */
const char *sw_pin_role_code (SwPinRole role);

typedef struct
{
  float along_m, out_m, down_m; /* to 0.01 mm within 100 m */
  guint16 tier;                 /* index into the face's tiers */
  guint8 role;                  /* SwPinRole */
  guint8 length;                /* index into the face's pin lengths */
} SwPinPlace;

/** A pin length that the face's own soil or one of its zones calls for. */
typedef struct
{
  const SwZone *zone; /* NULL: the face's own soil */
  double need_m;      /* called for by soil, state and topsoil */
  const SwPin *pin;   /* from the catalogue; NULL if none is long enough */
  gsize count;        /* pins of this entry on the face */
} SwPinLength;

typedef enum
{
  SW_TRENCH_KEY,
  SW_TRENCH_SLOT,
  SW_TRENCH_TOE
} SwTrenchKind;

typedef struct
{
  SwTrenchKind kind;
  guint tier;
  SwPlace *line; /* centre line on the ground */
  guint n_line;
  double length_m; /* true length */
  double depth_m, width_m;
  double volume_m3; /* bank */
  gboolean
      obstacle; /* above or below an obstacle that ends a run, not along the outline */
} SwTrench;

/** Pins keep this far from an obstacle on plan, and trenches on the ground. */
#define SW_OBSTACLE_CLEAR_M 0.10

/** Hole to be cut in a run where an obstacle stands in it; extents on the face view. */
typedef struct
{
  guint obstacle; /* index into the face's obstacles */
  double along_from_m, along_to_m;
  double down_from_m, down_to_m;
} SwCutOut;

/** An obstacle as it stands on the ground to be covered. */
typedef struct
{
  const SwObstacle *obstacle;
  gboolean standing; /* FALSE: no part of it is in a tier, and all that follows is 0 */
  double along_from_m, along_to_m; /* extents of the part in the tiers */
  double down_from_m, down_to_m;
  double area_m2;    /* true area of that part */
  gboolean deducted; /* from the net area, being larger than the practice's limit */
  double around_m;   /* true length of the edge against covered ground */
  double collar_m2;  /* true area of the patch round it */
} SwObstaclePlace;

/** One length cut from one roll. */
typedef struct
{
  guint run; /* index into the face's runs */
  guint face;
  guint order; /* 0 is the upslope piece */
  double length_m;
  int roll;      /* 1.. in order of use: index + 1 into the layout's rolls */
  double from_m; /* where in the roll it begins */
  double down_from_m, down_to_m; /* what it covers on the face view, end lap included */
} SwPiece;

/** Everything a run's cut length is made of; metres. */
typedef struct
{
  double set_back, key_lining, key_fold;
  double face; /* true length of ground covered */
  double slots, end_laps;
  double toe; /* toe lining or fold */
} SwRunTerms;

typedef struct
{
  guint tier;
  int number; /* 1.. over the face, from the leeward end, upper tier first: the laying order
                 but for infill runs, which go first on a nose and last in a bowl */
  int strip; /* 0.. in its tier, from the leeward end */
  int part;  /* 0, or 1.. when the outline cuts the strip into stretches */
  double along_from_m, along_to_m; /* as far as it covers at the wider end of a fan */
  double width_m;                  /* true width as laid */
  double out_from_m, out_to_m;
  double down_from_m, down_to_m;
  SwRunTerms terms;
  double cut_m;                            /* sum of the terms */
  guint n_pieces, first_piece;             /* in SwLayout.pieces, upslope first */
  gboolean obstacle_above, obstacle_below; /* begins or ends at an obstacle */
  gboolean infill; /* lies only where the runs beside it lap too little */
  gboolean infill_above, infill_below; /* its upper end is tucked under the runs beside
                                          it, or its lower end laps over them */
  guint n_cut_outs, first_cut_out;     /* in the face's cut-outs */
  gboolean narrow;                     /* laid in the narrow roll */
  guint8 pin_length; /* longest under it: index into the face's pin lengths */
} SwRun;

typedef struct
{
  SwReach reach;                   /* its extents are those of the outline within it */
  double along_from_m, along_to_m; /* extent of the outline within the reach */
  double length_m;                 /* longest true fall-line length within the outline */
  double longest_at_m;             /* where along the crest it was taken */
  double share_from,
      share_to; /* what the outline leaves between the two breaks, 0 to 1 */
  double mean_rad, steepest_rad;
  double net_m2;      /* true area within the outline, less what is deducted */
  double deducted_m2; /* obstacles larger than the practice's limit */
  double width_m;     /* true, along the longer of crest and toe arc */
  double stretch;     /* width_m per metre of along_m there: 1 on a straight crest */
  double stretch_from, stretch_to; /* the same at its upper and its lower end */
  gboolean closed;                 /* all round a heap: the last run laps the first */
  int strips;                      /* runs side by side */
  int infill;                      /* how many of them are infill */
  gboolean narrow_last;            /* the last strip is laid in the narrow roll */
  double side_lap_m;               /* as laid: practice value or wider */
  double surplus_m; /* what the strips cover with the least lap, less the width */
  double end_lap_m; /* as laid, by steepness */
  int slots;        /* check slots down the tier */
  double pin_down_m, pin_across_m; /* field grid as laid */
  double density_floor_per_m2;     /* 0 when the practice has none for this gradient */
  guint first_run, n_runs;
} SwTier;

typedef struct
{
  const SwFace *face; /* of the layout's job */
  SwGround *ground;
  SwTier *tiers;
  guint n_tiers;
  SwRun *runs;
  guint n_runs;
  SwTrench *trenches;
  guint n_trenches;
  SwPinPlace *pins;
  gsize n_pins;
  gsize pins_by_role[SW_PIN_ROLE_COUNT];
  const SwPin *
      pin; /* which pin its own soil takes, from the catalogue; NULL if none is long enough */
  double pin_need_m;        /* length called for by soil, state and topsoil */
  SwPinLength *pin_lengths; /* the face's own, then those of its zones in their order */
  guint n_pin_lengths;
  SwObstaclePlace *obstacles; /* in the order of the face */
  guint n_obstacles;
  SwCutOut *cut_outs; /* grouped by run */
  guint n_cut_outs;
} SwFaceLayout;

/** A roll as the cutting plan opens it. */
typedef struct
{
  double width_m, length_m;
  gboolean on_hand; /* from the job's stock: not to be ordered */
  double offcut_m;  /* what is left of it */
} SwCutRoll;

typedef struct
{
  SwJob *job;
  const SwCatalogue *catalogue; /* borrowed: must outlive the layout */
  SwPractice *practice;         /* with overrides */
  SwBlanket *blanket;           /* with what the product's data sheet states */
  SwFaceLayout *faces;
  guint n_faces;
  SwPiece *pieces; /* grouped by face and run */
  guint n_pieces;
  int rolls;            /* opened by the cutting plan */
  SwCutRoll *cut_rolls; /* those, in the order in which the crew opens them */
  int rolls_ordered;    /* of them, not on hand */
  int rolls_naive;   /* a tier's runs counted whole out of fresh rolls, or each piece of
                           runs longer than a roll from its own: no off-cut reused, nothing
                           on hand */
  int rolls_bound;   /* proved: no plan orders fewer, wherever joints are made */
  double ordered_m2; /* of the rolls that are ordered, before spare ones */
  double bound_m2;   /* proved: no plan orders less, wherever joints are made */
  gboolean least;    /* the plan orders no more than that */
} SwLayout;

/** Whether anything but the job's own roll is opened or could be. */
gboolean sw_layout_mixes_rolls (const SwLayout *layout);

/**
 * sw_layout_new:
 * @job: kept by reference
 * @catalogue: borrowed, must outlive the layout
 * @layout: (out) (transfer full): the layout
 * @bad_face: (out) (optional): index of the face that failed, or -1
 *
 * Returns: SW_OK or the first reason why it cannot be laid.
 */
SwStatus sw_layout_new (const SwJob *job, const SwCatalogue *catalogue, SwLayout **layout,
                        int *bad_face);
void sw_layout_free (SwLayout *layout);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (SwLayout, sw_layout_free)

/** Pieces of a run, upslope first. */
const SwPiece *sw_layout_run_pieces (const SwLayout *layout, const SwRun *run);

/**
 * sw_layout_pin_need_m:
 * @soil: any of the catalogue
 * @loose: state of the ground
 * @topsoil_m: loose topsoil over it, >= 0
 *
 * Returns: shortest pin that practice, soil and topsoil call for.
 */
double sw_layout_pin_need_m (const SwLayout *layout, const SwSoil *soil, gboolean loose,
                             double topsoil_m);

/** End laps of a run: between its pieces, and at the free end of infill. */
guint sw_run_end_laps (const SwRun *run);

/** "7" or "7b". Returns: (transfer full) */
char *sw_run_label (const SwRun *run);
