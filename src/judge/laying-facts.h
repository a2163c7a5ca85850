/* SPDX-License-Identifier: MIT */
#pragma once

#include <slopewright/layout/layout.h>

/* What a laid-out face is like in the places where blankets fail. */

/* A bend inwards of less than this is the unevenness of a survey; advice of this
 * program. */
#define SW_HOLLOW_RAD 0.0872664625997165 /* 5 degrees */

/* A staple narrower than 1 in cuts: the least crown that agencies print. */
#define SW_CROWN_LEAST_M 0.025

/* The sharpest hollow of a reach, over all sections of the face. */
typedef struct
{
  double bend_rad; /* 0: none bends inwards */
  double down_m;   /* true distance from the crest, where the section has it */
} SwHollow;

/* The inner edge of a bench that splits the face has no hollow: a tier ends there. */
SwHollow sw_sharpest_hollow (const SwFaceLayout *face, const SwReach *reach);

/* Longest true length between key trench, check slots and toe. */
double sw_tier_stretch_m (const SwTier *tier);

/* True length of both outer sides of all tiers; 0 round a heap. */
double sw_side_edge_m (const SwFaceLayout *face);

/* Of all tiers of a face, and of all faces. */
double sw_face_steepest_rad (const SwFaceLayout *face);
double sw_steepest_rad (const SwLayout *layout);

/* From crest to toe, at the section where it is largest. */
double sw_fall_height_m (const SwFaceLayout *face);

/* 0 where nothing is dug. */
double sw_deepest_trench_m (const SwLayout *layout);

/* Joints are kept clear of crest, toe and short pieces by the layout, or it fails; their
 * stagger is not always to be had. */
typedef struct
{
  double least_stagger_m;  /* between joints of neighbouring runs; INFINITY without */
  double shortest_piece_m; /* of joined runs; INFINITY without */
} SwJointFacts;

SwJointFacts sw_joint_facts (const SwLayout *layout, guint face);

/* Whether seed goes in within the sowing window: by window and install date where the job
 * gives both, else by the answer of the site visit. */
SwAnswer sw_sown_in_season (const SwJob *job);
