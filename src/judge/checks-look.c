/* SPDX-License-Identifier: MIT */
#include "checks-private.h"
#include "laying-facts.h"
#include <math.h>

/* What each check looks at, so that "nothing found" can be followed with a tape. */

static void
look_at (SwCheck *check, const char *symbol, const SwLayout *layout,
         SwPracticeValue value)
{
  sw_check_number (check, symbol, sw_practice_get (layout->practice, value),
                   SW_UNIT_SMALL_M);
}

static void
look_rilling (SwCheck *check, const SwLayout *layout, const SwTally *tally)
{
  double longest_m = 0.0;
  int slots = 0;

  for (guint f = 0; f < layout->n_faces; f++)
    for (guint t = 0; t < layout->faces[f].n_tiers; t++)
      {
        const SwTier *tier = &layout->faces[f].tiers[t];

        longest_m = fmax (longest_m, sw_tier_stretch_m (tier));
        slots += tier->slots;
      }
  check->looked = "check.F1.looked";
  sw_check_number (check, "length", longest_m, SW_UNIT_M);
  sw_check_number (check, "slots", slots, SW_UNIT_COUNT);
}

static void
look_bridging (SwCheck *check, const SwLayout *layout, const SwTally *tally)
{
  double sharpest_rad = 0.0;

  for (guint f = 0; f < layout->n_faces; f++)
    for (guint t = 0; t < layout->faces[f].n_tiers; t++)
      {
        SwHollow hollow =
            sw_sharpest_hollow (&layout->faces[f], &layout->faces[f].tiers[t].reach);

        sharpest_rad = fmax (sharpest_rad, hollow.bend_rad);
      }
  check->looked = "check.F2.looked";
  sw_check_number (check, "bend", sharpest_rad, SW_UNIT_ANGLE);
  sw_check_number (check, "limit", SW_HOLLOW_RAD, SW_UNIT_ANGLE);
}

static void
look_crest (SwCheck *check, const SwLayout *layout, const SwTally *tally)
{
  check->looked = "check.F3.looked";
  look_at (check, "set_back", layout, SW_PRACTICE_SET_BACK_M);
  look_at (check, "depth", layout, SW_PRACTICE_TRENCH_DEPTH_M);
  look_at (check, "spacing", layout, SW_PRACTICE_TRENCH_PIN_M);
}

static void
look_toe (SwCheck *check, const SwLayout *layout, const SwTally *tally)
{
  static const char *const looked[] = { [SW_TOE_TRENCH] = "check.F4.looked-trench",
                                        [SW_TOE_FOLD] = "check.F4.looked-fold",
                                        [SW_TOE_ROW] = "check.F4.looked-row" };

  check->looked = looked[layout->practice->toe_kind];
  look_at (check, "depth", layout, SW_PRACTICE_TOE_DEPTH_M);
  look_at (check, "fold", layout, SW_PRACTICE_TOE_FOLD_M);
  look_at (check, "spacing", layout, SW_PRACTICE_TOE_PIN_M);
}

static void
look_sides (SwCheck *check, const SwLayout *layout, const SwTally *tally)
{
  double edge_m = 0.0;

  for (guint f = 0; f < layout->n_faces; f++)
    edge_m += sw_side_edge_m (&layout->faces[f]);
  check->looked = "check.F5.looked";
  sw_check_number (check, "edge", edge_m, SW_UNIT_M);
  look_at (check, "spacing", layout, SW_PRACTICE_EDGE_PIN_M);
}

static void
look_wind (SwCheck *check, const SwLayout *layout, const SwTally *tally)
{
  check->looked = "check.F6.looked";
  if (layout->job->site[SW_SITE_WIND_EXPOSED] == SW_ANSWER_YES
      && !(layout->job->numbers.values[SW_NUMBER_WIND_LIMIT] > 0.0))
    sw_check_open (check, "number.wind_limit_m_per_s");
  look_at (check, "side_lap", layout, SW_PRACTICE_SIDE_LAP_M);
  look_at (check, "spacing", layout, SW_PRACTICE_EDGE_PIN_M);
  look_at (check, "depth", layout, SW_PRACTICE_TRENCH_DEPTH_M);
}

static void
look_laps (SwCheck *check, const SwLayout *layout, const SwTally *tally)
{
  int laps = 0;

  for (guint f = 0; f < layout->n_faces; f++)
    for (guint t = 0; t < layout->faces[f].n_tiers; t++)
      {
        const SwTier *tier = &layout->faces[f].tiers[t];

        laps += tier->closed ? tier->strips : tier->strips - 1;
      }
  check->looked = "check.F7.looked";
  sw_check_number (check, "side_laps", laps, SW_UNIT_COUNT);
  sw_check_number (check, "end_laps", tally->joints, SW_UNIT_COUNT);
}

static void
look_joints (SwCheck *check, const SwLayout *layout, const SwTally *tally)
{
  double stagger_m = INFINITY, shortest_m = INFINITY;

  for (guint f = 0; f < layout->n_faces; f++)
    {
      SwJointFacts facts = sw_joint_facts (layout, f);

      stagger_m = fmin (stagger_m, facts.least_stagger_m);
      shortest_m = fmin (shortest_m, facts.shortest_piece_m);
    }
  check->looked = isfinite (stagger_m)    ? "check.F8.looked"
                  : isfinite (shortest_m) ? "check.F8.looked-alone"
                                          : "check.F8.looked-none";
  sw_check_number (check, "joints", tally->joints, SW_UNIT_COUNT);
  if (isfinite (shortest_m))
    sw_check_number (check, "shortest", shortest_m, SW_UNIT_M);
  if (!isfinite (stagger_m))
    return;
  sw_check_number (check, "stagger", stagger_m, SW_UNIT_M);
  sw_check_number (check, "asked",
                   sw_practice_get (layout->practice, SW_PRACTICE_JOINT_STAGGER_M),
                   SW_UNIT_M);
}

static void
look_pin_length (SwCheck *check, const SwLayout *layout, const SwTally *tally)
{
  const SwPinLength *worst = NULL;

  for (guint f = 0; f < layout->n_faces; f++)
    for (guint i = 0; i < layout->faces[f].n_pin_lengths; i++)
      {
        const SwPinLength *length = &layout->faces[f].pin_lengths[i];

        if (worst == NULL || length->need_m > worst->need_m)
          worst = length;
      }
  check->looked =
      worst != NULL && worst->pin != NULL ? "check.F9.looked" : "check.F9.looked-none";
  sw_check_number (check, "need", worst != NULL ? worst->need_m : 0.0, SW_UNIT_SMALL_M);
  sw_check_number (check, "pins", (double) tally->pins, SW_UNIT_COUNT);
  if (worst != NULL && worst->pin != NULL)
    sw_check_number (check, "length", worst->pin->length_m, SW_UNIT_SMALL_M);
}

static void
look_crown (SwCheck *check, const SwLayout *layout, const SwTally *tally)
{
  double narrowest_m = INFINITY;

  for (guint i = 0; i < tally->pin_orders->len; i++)
    {
      const SwPin *pin = g_array_index (tally->pin_orders, SwPinOrder, i).pin;

      if (pin != NULL && pin->kind == SW_PIN_KIND_STAPLE)
        narrowest_m = fmin (narrowest_m, pin->crown_m);
    }
  check->looked =
      isfinite (narrowest_m) ? "check.F10.looked" : "check.F10.looked-no-staple";
  sw_check_number (check, "crown", isfinite (narrowest_m) ? narrowest_m : 0.0,
                   SW_UNIT_SMALL_M);
  sw_check_number (check, "least", SW_CROWN_LEAST_M, SW_UNIT_SMALL_M);
}

static void
look_growth (SwCheck *check, const SwLayout *layout, const SwTally *tally)
{
  double months = layout->job->numbers.values[SW_NUMBER_GROW_MONTHS];
  double life = layout->blanket->life_months.value;

  check->looked = isfinite (life) ? "check.F11.looked" : "check.F11.looked-permanent";
  sw_check_number (check, "life", life, SW_UNIT_MONTH);
  if (months > 0.0)
    sw_check_number (check, "needed", months, SW_UNIT_MONTH);
  else
    sw_check_open (check, "number.grow_months");
  if (sw_sown_in_season (layout->job) == SW_ANSWER_UNKNOWN)
    sw_check_open (check, "site.late_sowing");
}

/* What the product's data sheet says of its netting, or else what its class usually has. */
static const char *
net_looked (const SwLayout *layout)
{
  static const char *const sheet[SW_NET_COUNT] = { [SW_NET_NONE] = "check.net.sheet-none",
                                                   [SW_NET_PLASTIC] =
                                                       "check.net.sheet-plastic",
                                                   [SW_NET_PLANT] =
                                                       "check.net.sheet-plant" };
  SwNetKind net = layout->job->product.net;

  if (net != SW_NET_NOT_STATED)
    return sheet[net];
  return layout->blanket->net_plastic_usual ? "check.net.class-plastic"
                                            : "check.net.class";
}

static void
look_net (SwCheck *check, const SwLayout *layout, const SwTally *tally)
{
  check->looked = net_looked (layout);
}

static void
look_mowing (SwCheck *check, const SwLayout *layout, const SwTally *tally)
{
  check->looked = net_looked (layout);
  if (layout->job->numbers.mown == SW_ANSWER_UNKNOWN)
    sw_check_open (check, "number.mown");
}

static void
look_channel (SwCheck *check, const SwLayout *layout, const SwTally *tally)
{
  guint tiers = 0;

  for (guint f = 0; f < layout->n_faces; f++)
    tiers += layout->faces[f].n_tiers;
  check->looked = "check.F14.looked";
  sw_check_number (check, "faces", layout->n_faces, SW_UNIT_COUNT);
  sw_check_number (check, "tiers", tiers, SW_UNIT_COUNT);
}

static void
look_movement (SwCheck *check, const SwLayout *layout, const SwTally *tally)
{
  check->looked = "check.F15.looked";
  sw_check_number (check, "gradient", sw_steepest_rad (layout), SW_UNIT_RAD);
}

static void
look_obstacles (SwCheck *check, const SwLayout *layout, const SwTally *tally)
{
  check->looked = "check.F16.looked";
  sw_check_number (check, "obstacles", tally->collars, SW_UNIT_COUNT);
}

static void
look_face_up (SwCheck *check, const SwLayout *layout, const SwTally *tally)
{
  static const char *const looked[] = { "check.F17.looked-varies",
                                        "check.F17.looked-none", "check.F17.looked-one",
                                        "check.F17.looked-two" };

  check->looked = layout->job->product.net == SW_NET_NONE
                      ? "check.net.sheet-none"
                      : looked[layout->blanket->nets + 1];
  if (layout->blanket->nets < 0)
    sw_check_open (check, "check.F17.ask");
}

static void
look_access (SwCheck *check, const SwLayout *layout, const SwTally *tally)
{
  guint tiers = 0;

  for (guint f = 0; f < layout->n_faces; f++)
    tiers = MAX (tiers, layout->faces[f].n_tiers);
  check->looked = "check.F18.looked";
  sw_check_number (check, "runs", tally->runs, SW_UNIT_COUNT);
  sw_check_number (check, "tiers", tiers, SW_UNIT_COUNT);
}

static void
look_fire (SwCheck *check, const SwLayout *layout, const SwTally *tally)
{
  check->looked = "check.F19.looked";
  sw_check_number (check, "rolls", tally->rolls_order, SW_UNIT_COUNT);
  sw_check_number (check, "mass", tally->order_mass_kg, SW_UNIT_KG);
}

const SwCheckLook sw_check_looks[SW_CHECK_COUNT] = {
  look_rilling,   look_bridging, look_crest,  look_toe,        look_sides,
  look_wind,      look_laps,     look_joints, look_pin_length, look_crown,
  look_growth,    look_net,      look_mowing, look_channel,    look_movement,
  look_obstacles, look_face_up,  look_access, look_fire,
};
