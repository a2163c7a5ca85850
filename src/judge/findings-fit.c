/* SPDX-License-Identifier: MIT */
#include "findings-private.h"
#include "laying-facts.h"
#include <math.h>
#include <slopewright/base/count.h>

static void
judge_life (GPtrArray *findings, const SwLayout *layout)
{
  double months = layout->job->numbers.values[SW_NUMBER_GROW_MONTHS];
  double life = layout->blanket->life_months.value;
  SwFinding *finding;

  if (!(months > life))
    return;
  finding = sw_finding_add (findings, SW_SEVERITY_CAUTION, "life-short", "F11", -1, -1);
  sw_finding_number (finding, "needed", months, SW_UNIT_MONTH);
  sw_finding_number (finding, "life", life, SW_UNIT_MONTH);
}

static double
shortest_piece_m (const SwLayout *layout)
{
  double shortest_m = INFINITY;

  for (guint i = 0; i < layout->n_pieces; i++)
    shortest_m = fmin (shortest_m, layout->pieces[i].length_m);
  return shortest_m;
}

/* Good for patches at most: better known before it is carried to the site. */
static void
judge_stock (GPtrArray *findings, const SwLayout *layout)
{
  double shortest_m = shortest_piece_m (layout);
  guint useless = 0;
  SwFinding *finding;

  for (guint i = 0; i < layout->job->stock->len; i++)
    {
      const SwStockLine *line = &g_array_index (layout->job->stock, SwStockLine, i);

      if (line->source == SW_STOCK_ON_HAND
          && sw_ticks (line->length_m) < sw_ticks (shortest_m))
        useless += line->count;
    }
  if (useless == 0)
    return;
  finding = sw_finding_add (findings, SW_SEVERITY_NOTE, "stock-short", "", -1, -1);
  sw_finding_number (finding, "count", useless, SW_UNIT_COUNT);
  sw_finding_number (finding, "shortest", shortest_m, SW_UNIT_M);
}

static void
judge_season (GPtrArray *findings, const SwLayout *layout)
{
  if (sw_sown_in_season (layout->job) == SW_ANSWER_NO)
    sw_finding_add (findings, SW_SEVERITY_CAUTION, "late-sowing", "F11", -1, -1);
}

static void
judge_mowing (GPtrArray *findings, const SwLayout *layout)
{
  SwFinding *finding;

  if (layout->job->numbers.mown != SW_ANSWER_YES || !layout->blanket->net_plastic_usual)
    return;
  finding = sw_finding_add (findings, SW_SEVERITY_CAUTION, "mowing-net", "F13", -1, -1);
  sw_finding_number (finding, "life", layout->blanket->life_months.value, SW_UNIT_MONTH);
}

/* A mower throws what it catches; stakes of wood rot. */
static void
judge_metal_pins (GPtrArray *findings, const SwLayout *layout, const SwTally *tally)
{
  gsize metal = 0;
  SwFinding *finding;

  for (guint i = 0; i < tally->pin_orders->len; i++)
    {
      const SwPinOrder *order = &g_array_index (tally->pin_orders, SwPinOrder, i);

      if (order->pin != NULL && order->pin->kind != SW_PIN_KIND_STAKE)
        metal += order->count;
    }
  if (layout->job->numbers.mown != SW_ANSWER_YES || metal == 0)
    return;
  finding = sw_finding_add (findings, SW_SEVERITY_NOTE, "mowing-pins", "F13", -1, -1);
  sw_finding_number (finding, "pins", (double) metal, SW_UNIT_COUNT);
}

static void
judge_net_side (GPtrArray *findings, const SwLayout *layout)
{
  SwFinding *finding;

  if (layout->blanket->nets != 1)
    return;
  finding = sw_finding_add (findings, SW_SEVERITY_NOTE, "net-side-up", "F17", -1, -1);
  sw_finding_number (finding, "nets", layout->blanket->nets, SW_UNIT_COUNT);
}

static void
judge_fire (GPtrArray *findings, const SwLayout *layout, const SwTally *tally)
{
  SwFinding *finding;

  if (layout->job->site[SW_SITE_IGNITION] != SW_ANSWER_YES)
    return;
  finding = sw_finding_add (findings, SW_SEVERITY_CAUTION, "fire", "F19", -1, -1);
  sw_finding_number (finding, "rolls", tally->rolls_order, SW_UNIT_COUNT);
  sw_finding_number (finding, "mass", tally->order_mass_kg, SW_UNIT_KG);
}

/* What the soil test asks for and this product does not bring at all. */
static void
judge_nutrients (GPtrArray *findings, const SwLayout *layout, const SwTally *tally)
{
  static const char *const codes[SW_NUTRIENT_COUNT] = { "nutrient-n", "nutrient-p2o5",
                                                        "nutrient-k2o" };

  for (int i = 0; i < SW_NUTRIENT_COUNT; i++)
    if (tally->fertiliser.missing & (1u << i))
      sw_finding_number (
          sw_finding_add (findings, SW_SEVERITY_NOTE, codes[i], "F11", -1, -1), "need",
          layout->job->plan.values[SW_PLAN_NEED_N + i], SW_UNIT_KG_PER_M2);
}

/* Practice values keep trenches shallow; where they stand is left to the job. */
static void
judge_set_back (GPtrArray *findings, const SwLayout *layout)
{
  if (sw_ticks (sw_practice_get (layout->practice, SW_PRACTICE_SET_BACK_M)) == 0)
    sw_finding_add (findings, SW_SEVERITY_CAUTION, "trench-at-edge", "F3", -1, -1);
}

/* One word for the whole job: every face takes pins of the same kind. */
static void
judge_crown (GPtrArray *findings, const SwTally *tally)
{
  for (guint i = 0; i < tally->pin_orders->len; i++)
    {
      const SwPin *pin = g_array_index (tally->pin_orders, SwPinOrder, i).pin;
      SwFinding *finding;

      if (pin == NULL || pin->kind != SW_PIN_KIND_STAPLE
          || sw_ticks (pin->crown_m) >= sw_ticks (SW_CROWN_LEAST_M))
        continue;
      finding =
          sw_finding_add (findings, SW_SEVERITY_CAUTION, "narrow-crown", "F10", -1, -1);
      sw_finding_number (finding, "crown", pin->crown_m, SW_UNIT_SMALL_M);
      sw_finding_number (finding, "least", SW_CROWN_LEAST_M, SW_UNIT_SMALL_M);
      return;
    }
}

static void
judge_tiers (GPtrArray *findings, const SwLayout *layout, int face)
{
  SwFinding *finding;

  if (layout->faces[face].n_tiers < 2)
    return;
  finding = sw_finding_add (findings, SW_SEVERITY_NOTE, "finished-work", "F18", face, -1);
  sw_finding_number (finding, "tiers", layout->faces[face].n_tiers, SW_UNIT_COUNT);
}

void
sw_judge_fit (GPtrArray *findings, const SwLayout *layout, const SwTally *tally)
{
  judge_life (findings, layout);
  judge_season (findings, layout);
  judge_stock (findings, layout);
  judge_nutrients (findings, layout, tally);
  judge_mowing (findings, layout);
  judge_set_back (findings, layout);
  judge_crown (findings, tally);
  judge_metal_pins (findings, layout, tally);
  judge_net_side (findings, layout);
  judge_fire (findings, layout, tally);
  for (guint i = 0; i < layout->n_faces; i++)
    judge_tiers (findings, layout, (int) i);
}
