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

/* Joints held against the rules that they were laid by. */
typedef struct
{
  guint joints, pairs;     /* pairs: joints in neighbouring runs of a tier */
  double least_stagger_m;  /* between such two; INFINITY without */
  double shortest_piece_m; /* of joined runs; INFINITY without */
  double least_crest_m;    /* joint to the upper end of its run; INFINITY without */
  double least_toe_m;      /* and to the lower end */
} SwJointFacts;

SwJointFacts sw_joint_facts (const SwLayout *layout, guint face);
