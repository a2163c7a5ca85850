/* SPDX-License-Identifier: MIT */
#pragma once

#include <glib.h>
#include <slopewright/base/units.h>

/*
 * What a user decides about ordering and doing the work: fertiliser, haulage,
 * allowance, crew and prices. Nothing of it is invented: a number not given is 0, and
 * what rests on it is left out.
 */

/** Objects of the job file that the numbers stand in. */
typedef enum
{
  SW_PLAN_FERTILISER, /* "fertiliser" */
  SW_PLAN_HAUL,       /* "haul" */
  SW_PLAN_ALLOWANCE,  /* "allowance" */
  SW_PLAN_CREW,       /* "crew" */
  SW_PLAN_PRICES,     /* "prices" */
  SW_PLAN_GROUP_COUNT
} SwPlanGroup;

extern const char *const sw_plan_group_keys[SW_PLAN_GROUP_COUNT];

typedef enum
{
  SW_PLAN_N,      /* the three of the label, ratios by mass; in all at most 1 */
  SW_PLAN_P2O5,   /* phosphorus as oxide, as labels have it */
  SW_PLAN_K2O,    /* potassium likewise */
  SW_PLAN_NEED_N, /* what a soil test or permit asks for, kg/m2 */
  SW_PLAN_NEED_P2O5,
  SW_PLAN_NEED_K2O,
  SW_PLAN_BAG_KG,
  SW_PLAN_TRUCK_M3, /* loose soil that one load takes */
  SW_PLAN_BACKFILL, /* share of the trench spoil that goes back; all of it if not said */
  SW_PLAN_SHARE,  /* allowance on the pieces' length, where its basis is the user's own */
  SW_PLAN_PEOPLE, /* of the crew */
  SW_PLAN_DAY_H,  /* paid hours of a day */
  SW_PLAN_AT_WORK,    /* share of the paid time spent at this work; 1 if not said */
  SW_PLAN_DIFFICULTY, /* factor on the time; 1 for usual conditions */
  SW_PLAN_SETUP_H,    /* hours of one person, once */
  SW_PLAN_RUN_H,      /* hours of one person for each run */
  SW_PLAN_TRENCH_H_PER_M,
  SW_PLAN_PINS_H_PER_100,
  SW_PLAN_SEEDING_H_PER_M2, /* of net area: seed and fertiliser */
  SW_PLAN_PRICE_ROLL,
  SW_PLAN_PRICE_BOX,     /* of pins, of any length */
  SW_PLAN_PRICE_SEED_KG, /* as sold */
  SW_PLAN_PRICE_BAG,     /* of fertiliser */
  SW_PLAN_PRICE_LOAD,
  SW_PLAN_PRICE_HOUR, /* of one person */
  SW_PLAN_LUMP_SUM,   /* getting there and back, set-up of the site */
  SW_PLAN_OVERHEAD,   /* mark-ups, each on all that stands above it */
  SW_PLAN_PROFIT,
  SW_PLAN_TAX,
  SW_PLAN_COUNT
} SwPlanNumber;

typedef struct
{
  SwPlanGroup group;
  const char *key; /* in its object of the file */
  SwUnit unit;
  double least, most;
  double
      not_given; /* what a job that does not say it has; 0 is taken too where it is 0 */
} SwPlanKey;

/** Table of SW_PLAN_COUNT rows, indexed by SwPlanNumber. */
extern const SwPlanKey sw_plan_keys[SW_PLAN_COUNT];

/** What is added to the material of the drawing, and by which rule. */
typedef enum
{
  SW_ALLOWANCE_PRACTICE, /* spare rolls by the practice */
  SW_ALLOWANCE_TAPED,    /* shape taped on the face */
  SW_ALLOWANCE_USUAL,
  SW_ALLOWANCE_SCALED, /* scaled off a plan, or a curved or warped face */
  SW_ALLOWANCE_SURVEY, /* from satellite positions or a terrain model only */
  SW_ALLOWANCE_OWN,    /* SW_PLAN_SHARE */
  SW_ALLOWANCE_COUNT
} SwAllowance;

/** Codes as in the file: "practice", "taped", "usual", "scaled", "survey", "own". */
extern const char *const sw_allowance_codes[SW_ALLOWANCE_COUNT + 1]; /* NULL-terminated */

/**
 * Share of the pieces' length; 0 for the practice's rule and the user's own. Evidence:
 * this program's own simulation of laps laid generously, lengths and widths off by one
 * in a hundred and damage; 95 of 100 jobs were covered. Proposed, not an agency's.
 */
extern const double sw_allowance_shares[SW_ALLOWANCE_COUNT];

typedef struct
{
  char *fertiliser; /* product, as on the bag */
  char *currency;   /* as written behind an amount: "EUR" */
  double values[SW_PLAN_COUNT];
  SwAllowance allowance;
  gboolean spare_roll;   /* one more roll: the yard is far */
  gboolean cost_in_pack; /* a page of money at the end of the pack */
} SwWorkPlan;

/** Nothing given; texts stay as they are. */
void sw_work_plan_reset (SwWorkPlan *plan);

/** Whether both have the same numbers and choices; texts are not looked at. */
gboolean sw_work_plan_same_numbers (const SwWorkPlan *a, const SwWorkPlan *b);

/** What is left of a label beside @number, one of N, P2O5 and K2O: most that it can be. */
double sw_work_plan_label_room (const SwWorkPlan *plan, SwPlanNumber number);
