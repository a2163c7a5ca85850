/* SPDX-License-Identifier: MIT */
#pragma once

#include <slopewright/base/units.h>

/*
 * Numbers of a site that soil loss, water, slides and handling are worked from.
 * Each may be left out: it is 0 then, and what rests on it is left out too, or
 * a default holds that the working names with its source.
 */

/** Keys of the job file, and text ids "number.<key>". */
typedef enum
{
  SW_NUMBER_EROSIVITY,   /* R of a mean year, in SwLossUnits */
  SW_NUMBER_EROSIVITY_SHARE, /* of a year's R that falls while the face is bare; over 1 beyond a year */
  SW_NUMBER_ERODIBILITY, /* K, in SwLossUnits; 0: by soil class */
  SW_NUMBER_COVER,       /* C of this product by its own test; 0: ceiling of its class */
  SW_NUMBER_RAIN,        /* intensity for which the face must hold */
  SW_NUMBER_RUN_ON_M,    /* on plan: ground above the crest whose sheet of water runs onto the face */
  SW_NUMBER_ROUGHNESS,   /* Manning's n for sheet flow; 0: default */
  SW_NUMBER_GROW_MONTHS, /* until plants hold the soil */
  SW_NUMBER_WET_RATIO,   /* mass of a wet roll over a dry one, >= 1 */
  SW_NUMBER_LIFT_FROM_M, /* height of the hands where the lift begins; 0: on the ground */
  SW_NUMBER_LIFT_TO_M,   /* where it ends; 0: default */
  SW_NUMBER_LIFT_REACH_M,  /* hands from the ankles; 0: held close */
  SW_NUMBER_FALL_PLAN_RAD, /* this and steeper asks for a written fall plan; 0: not set */
  SW_NUMBER_SLIDE_DEPTH_M, /* of the layer looked at; 0: no screen */
  SW_NUMBER_FRICTION_RAD,  /* effective; 0: by soil class */
  SW_NUMBER_COHESION_PA,   /* effective; counts with a typed friction only */
  SW_NUMBER_SOIL_WEIGHT,   /* unit weight, wet; 0: default */
  SW_NUMBER_WIND_LIMIT,    /* stop laying above it; the user's own limit, no source has one */
  SW_NUMBER_RAIN_STOP_M,   /* stop work once so much rain has fallen in the day */
  SW_NUMBER_TEMPERATURE_LEAST, /* of air and ground for laying; kelvin, so that 0 stays "not given" */
  SW_NUMBER_COUNT
} SwSiteNumber;

typedef struct
{
  const char *key;
  SwUnit unit;
  double least, most; /* 0 is accepted too and means not given */
} SwSiteNumberKey;

/** Table of SW_NUMBER_COUNT rows, indexed by SwSiteNumber. */
extern const SwSiteNumberKey sw_site_number_keys[SW_NUMBER_COUNT];

/** How much of the loss is by rills; file words "high", "moderate", "low". */
typedef enum
{
  SW_RILLS_HIGH,     /* freshly graded ground */
  SW_RILLS_MODERATE, /* tilled ground */
  SW_RILLS_LOW       /* long settled ground */
} SwRills;

/**
 * Which units R and K are typed in. They are kept as typed: the two systems have
 * the same letters, and only who typed the number knows which it is.
 */
typedef enum
{
  SW_LOSS_SI, /* R in MJ mm/(ha h yr), K in t ha h/(ha MJ mm) */
  SW_LOSS_US /* R in 100 ft tonf inch/(acre h yr), K in ton acre h/(100 acre ft tonf inch) */
} SwLossUnits;
