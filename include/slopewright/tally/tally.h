/* SPDX-License-Identifier: MIT */
#pragma once

#include <slopewright/base/working.h>
#include <slopewright/layout/layout.h>
#include <slopewright/tally/fertiliser.h>
#include <slopewright/tally/labour.h>
#include <slopewright/tally/seed-mix.h>

/** The four areas that must never be mixed, m2. */
typedef struct
{
  double net_m2;    /* true face area within the outlines */
  double placed_m2; /* all pieces, laps and trench ends included */
  double
      pay_m2; /* ground covered, laps and trenches incidental: equals net until a contract says else */
  double order_m2; /* whole rolls */
} SwAreas;

typedef struct
{
  const SwPin *pin; /* NULL: no pin of the catalogue is long enough */
  double need_m;
  gsize count, spare, order; /* order = boxes x per_box when boxed */
  int boxes;
  gsize by_role[SW_PIN_ROLE_COUNT];
} SwPinOrder;

/** Rolls beyond those of the cutting plan. */
typedef struct
{
  double share;   /* allowance: of the rolls by the practice's rule, else of the length */
  double spare_m; /* off-cuts long enough to lay, which rounding to whole rolls gives */
  double given;   /* spare_m as a share of the pieces' length */
  int extra;      /* rolls added because that is less than the allowance */
} SwAllowanceTally;

/** Time of the work; hours are those of one person. 0 where rates are not given. */
typedef struct
{
  double hours;
  double paid_hours; /* with the time spent at other things */
  double man_days;   /* of eight hours */
  double days;       /* of the crew; 0 where people or hours of a day are not given */
  int whole_days;
} SwCrewTime;

typedef enum
{
  SW_COST_ROLLS,
  SW_COST_BOXES, /* of pins; pins that are ordered singly are not priced */
  SW_COST_SEED,
  SW_COST_BAGS, /* of fertiliser */
  SW_COST_LOADS,
  SW_COST_HOURS,
  SW_COST_COUNT
} SwCostKind; /* text id "cost.<code>" */

/** "rolls", "boxes", "seed", "bags", "loads", "hours". */
const char *sw_cost_code (SwCostKind kind);

/** "n", "p2o5", "k2o". */
const char *sw_nutrient_code (SwNutrient nutrient);

/** What one kind of thing costs. */
typedef struct
{
  double quantity;
  SwUnit unit;
  double price; /* of one; 0: not given, and the line is not in the sum */
  double amount;
} SwCostLine;

/** Rolls of one width and length. */
typedef struct
{
  double width_m, length_m;
  gboolean on_hand;
  int ready;        /* on hand: how many lie there */
  int cut;          /* opened by the cutting plan */
  int spare, order; /* to order: order = cut + spare; 0 of those on hand */
  double mass_kg;   /* of one, dry */
} SwRollOrder;

typedef struct
{
  GPtrArray *workings; /* (element-type SwWorking): every number, in reading order */
  SwAreas areas;
  int runs, pieces, joints;
  int infill_runs;     /* of the runs */
  GArray *roll_orders; /* (element-type SwRollOrder), the job's own roll first */
  int rolls, rolls_spare, rolls_order; /* to order: cut, spare, and both */
  int rolls_on_hand;                   /* cut beside them from what is on hand */
  double piece_length_m,
      offcut_length_m; /* sum of both is the length of all rolls opened */
  double key_trench_m, slot_m, toe_trench_m;
  double trench_bank_m3, trench_loose_m3;
  int collars;        /* obstacles that stand on covered ground: a patch each */
  double collar_m2;   /* of all patches; cut from off-cuts, in no roll count */
  GArray *pin_orders; /* (element-type SwPinOrder), shortest pin first */
  gsize pins;
  GArray *seed_lines; /* (element-type SwSeedLine): as the job's species; empty when none
                         is sown */
  SwSeedTotal seed;
  double seed_pls_kg, seed_bulk_kg;
  SwFertiliser
      fertiliser; /* product_kg_per_m2 0: none, or none of what is needed in it */
  double fertiliser_kg;
  int fertiliser_bags; /* 0 where the mass of a bag is not given */
  double haul_m3;      /* loose trench spoil that is hauled away */
  int loads;           /* 0 too where the size of a load is not given */
  SwAllowanceTally allowance;
  SwCrewTime crew;
  gboolean priced; /* FALSE: no price was given, cost and price are 0 */
  SwCostLine cost[SW_COST_COUNT];
  SwPrice price;
  double roll_mass_kg;    /* of the heaviest that is carried, dry */
  double roll_diameter_m; /* of the same */
  double order_mass_kg;   /* of all rolls to order, dry */
} SwTally;

/** Returns: (transfer full): all quantities of a layout with their workings. */
SwTally *sw_tally_new (const SwLayout *layout);
void sw_tally_free (SwTally *tally);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (SwTally, sw_tally_free)

/** The working of that name, NULL if none. */
const SwWorking *sw_tally_working (const SwTally *tally, const char *name);
