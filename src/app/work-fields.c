/* SPDX-License-Identifier: MIT */
#include "form-fields.h"

#include <glib/gi18n.h>

#include "form-choices.h"

/* The forms of the order page: what the user decides about the work, group by group. */

#define HEADING(words, target)                                                           \
  {                                                                                      \
    .kind = SW_FIELD_HEADING, .label = words, .help = target                             \
  }
#define TEXT_OF(field, name, words)                                                      \
  {                                                                                      \
    .kind = SW_FIELD_TEXT, .label = name, .step = words,                                 \
    .offset = G_STRUCT_OFFSET (SwJob, field)                                             \
  }
#define NUMBER(number, name, words)                                                      \
  {                                                                                      \
    .kind = SW_FIELD_PLAN, .label = name, .step = words,                                 \
    .offset = G_STRUCT_OFFSET (SwJob, plan.values[number]), .which = number              \
  }
#define SWITCH(field, name, words)                                                       \
  {                                                                                      \
    .kind = SW_FIELD_SWITCH, .label = name, .step = words,                               \
    .offset = G_STRUCT_OFFSET (SwJob, field)                                             \
  }

#define FERTILISER(number, name) NUMBER (number, name, N_ ("Change Fertiliser"))
#define CREW(number, name) NUMBER (number, name, N_ ("Change Crew and Time"))
#define PRICE(number, name) NUMBER (number, name, N_ ("Change Prices"))

static gboolean
share_is_own (const SwJob *job, const SwFace *face)
{
  return job->plan.allowance == SW_ALLOWANCE_OWN;
}

const SwField sw_allowance_fields[] = {
  HEADING (N_ ("Spare Rolls"), "rolls#allowance"),
  { .kind = SW_FIELD_ENUM,
    .label = N_ ("Allowance"),
    .step = N_ ("Change Allowance"),
    .names = sw_choice_allowance_names,
    .offset = G_STRUCT_OFFSET (SwJob, plan.allowance) },
  { .kind = SW_FIELD_PLAN,
    .label = N_ ("Own share"),
    .step = N_ ("Change Allowance"),
    .offset = G_STRUCT_OFFSET (SwJob, plan.values[SW_PLAN_SHARE]),
    .which = SW_PLAN_SHARE,
    .applies = share_is_own },
  SWITCH (plan.spare_roll, N_ ("One more roll: the yard is far"),
          N_ ("Change Spare Roll")),
  { .kind = SW_FIELD_END },
};

const SwField sw_fertiliser_fields[] = {
  HEADING (N_ ("Fertiliser"), "seed#fertiliser"),
  TEXT_OF (plan.fertiliser, N_ ("Product"), N_ ("Change Fertiliser")),
  FERTILISER (SW_PLAN_N, N_ ("N on the label")),
  FERTILISER (SW_PLAN_P2O5, N_ ("P2O5 on the label")),
  FERTILISER (SW_PLAN_K2O, N_ ("K2O on the label")),
  FERTILISER (SW_PLAN_NEED_N, N_ ("N needed")),
  FERTILISER (SW_PLAN_NEED_P2O5, N_ ("P2O5 needed")),
  FERTILISER (SW_PLAN_NEED_K2O, N_ ("K2O needed")),
  FERTILISER (SW_PLAN_BAG_KG, N_ ("Mass of a bag")),
  { .kind = SW_FIELD_END },
};

const SwField sw_haul_fields[] = {
  HEADING (N_ ("Soil from the Trenches"), "seed#haul"),
  NUMBER (SW_PLAN_BACKFILL, N_ ("Goes back"), N_ ("Change Backfill")),
  NUMBER (SW_PLAN_TRUCK_M3, N_ ("A load, loose"), N_ ("Change Load")),
  { .kind = SW_FIELD_END },
};

const SwField sw_crew_fields[] = {
  HEADING (N_ ("Crew and Time"), "seed#crew"),
  CREW (SW_PLAN_PEOPLE, N_ ("People")),
  CREW (SW_PLAN_DAY_H, N_ ("Paid hours a day")),
  CREW (SW_PLAN_AT_WORK, N_ ("Of it at this work")),
  CREW (SW_PLAN_DIFFICULTY, N_ ("Difficulty, 1 is usual")),
  HEADING (N_ ("Hours of One Person"), "seed#crew"),
  CREW (SW_PLAN_SETUP_H, N_ ("To set up, once")),
  CREW (SW_PLAN_RUN_H, N_ ("For a run")),
  CREW (SW_PLAN_TRENCH_H_PER_M, N_ ("For trench, by length")),
  CREW (SW_PLAN_PINS_H_PER_100, N_ ("For 100 pins")),
  CREW (SW_PLAN_SEEDING_H_PER_M2, N_ ("For seeding, by area")),
  { .kind = SW_FIELD_END },
};

const SwField sw_price_fields[] = {
  HEADING (N_ ("Prices"), "seed#prices"),
  TEXT_OF (plan.currency, N_ ("Currency"), N_ ("Change Currency")),
  PRICE (SW_PLAN_PRICE_ROLL, N_ ("A roll")),
  PRICE (SW_PLAN_PRICE_BOX, N_ ("A box of pins")),
  PRICE (SW_PLAN_PRICE_SEED_KG, N_ ("Seed, a kilogram")),
  PRICE (SW_PLAN_PRICE_BAG, N_ ("A bag of fertiliser")),
  PRICE (SW_PLAN_PRICE_LOAD, N_ ("A load of soil")),
  PRICE (SW_PLAN_PRICE_HOUR, N_ ("An hour of one person")),
  PRICE (SW_PLAN_LUMP_SUM, N_ ("Lump sum")),
  HEADING (N_ ("Mark-ups, Each on All Above"), "seed#prices"),
  PRICE (SW_PLAN_OVERHEAD, N_ ("1. Overhead")),
  PRICE (SW_PLAN_PROFIT, N_ ("2. Profit")),
  PRICE (SW_PLAN_TAX, N_ ("3. Tax")),
  SWITCH (plan.cost_in_pack, N_ ("Cost page in the pack"), N_ ("Change Cost Page")),
  { .kind = SW_FIELD_END },
};
