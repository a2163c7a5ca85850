/* SPDX-License-Identifier: MIT */
#pragma once

#include <slopewright/base/working.h>
#include <slopewright/layout/layout.h>

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

typedef struct
{
  GPtrArray *workings; /* (element-type SwWorking): every number, in reading order */
  SwAreas areas;
  int runs, pieces, joints;
  int rolls, rolls_spare, rolls_order;
  double piece_length_m, offcut_length_m; /* sum of both is rolls x roll length */
  double key_trench_m, slot_m, toe_trench_m;
  double trench_bank_m3, trench_loose_m3;
  int collars;        /* obstacles that stand on covered ground: a patch each */
  double collar_m2;   /* of all patches; cut from off-cuts, in no roll count */
  GArray *pin_orders; /* (element-type SwPinOrder), shortest pin first */
  gsize pins;
  double seed_pls_kg, seed_bulk_kg;
  double roll_mass_kg; /* dry */
  double roll_diameter_m;
} SwTally;

/** Returns: (transfer full): all quantities of a layout with their workings. */
SwTally *sw_tally_new (const SwLayout *layout);
void sw_tally_free (SwTally *tally);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (SwTally, sw_tally_free)

/** The working of that name, NULL if none. */
const SwWorking *sw_tally_working (const SwTally *tally, const char *name);
