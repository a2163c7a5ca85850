/* SPDX-License-Identifier: MIT */
#include "tally-private.h"

#define DECIMALS 2 /* hundredths of any currency */

static const struct
{
  const char *code;
  SwPlanNumber price;
  SwUnit unit;
} kinds[SW_COST_COUNT] = {
  [SW_COST_ROLLS] = { "rolls", SW_PLAN_PRICE_ROLL, SW_UNIT_COUNT },
  [SW_COST_BOXES] = { "boxes", SW_PLAN_PRICE_BOX, SW_UNIT_COUNT },
  [SW_COST_SEED] = { "seed", SW_PLAN_PRICE_SEED_KG, SW_UNIT_KG },
  [SW_COST_BAGS] = { "bags", SW_PLAN_PRICE_BAG, SW_UNIT_COUNT },
  [SW_COST_LOADS] = { "loads", SW_PLAN_PRICE_LOAD, SW_UNIT_COUNT },
  [SW_COST_HOURS] = { "hours", SW_PLAN_PRICE_HOUR, SW_UNIT_HOUR },
};

const char *
sw_cost_code (SwCostKind kind)
{
  return kinds[kind].code;
}

static double
count_boxes (const SwTally *tally)
{
  double boxes = 0.0;

  for (guint i = 0; i < tally->pin_orders->len; i++)
    boxes += g_array_index (tally->pin_orders, SwPinOrder, i).boxes;
  return boxes;
}

/* The price is that of the job's own roll; other sizes count by their area. */
static double
count_rolls (const SwTally *tally)
{
  const SwRollOrder *own = &g_array_index (tally->roll_orders, SwRollOrder, 0);

  return tally->rolls_order == own->order
             ? own->order
             : tally->areas.order_m2 / (own->width_m * own->length_m);
}

static double
amount_of (const SwTally *tally, SwCostKind kind)
{
  switch (kind)
    {
    case SW_COST_ROLLS:
      return count_rolls (tally);
    case SW_COST_BOXES:
      return count_boxes (tally);
    case SW_COST_SEED:
      return tally->seed_bulk_kg;
    case SW_COST_BAGS:
      return tally->fertiliser_bags;
    case SW_COST_LOADS:
      return tally->loads;
    default:
      return tally->crew.paid_hours;
    }
}

static gboolean
has_prices (const double *values)
{
  for (int i = 0; i < SW_COST_COUNT; i++)
    if (values[kinds[i].price] > 0.0)
      return TRUE;
  return values[SW_PLAN_LUMP_SUM] > 0.0;
}

static SwWorking *
add_amount (SwTally *tally, const char *formula, double value, const char *name)
{
  return sw_tally_add (tally, sw_working_new (formula, value, SW_UNIT_MONEY,
                                              SW_ROUNDING_NONE, "cost-%s", name));
}

static void
add_lines (SwTally *tally, const double *values, SwWorking *direct)
{
  for (int i = 0; i < SW_COST_COUNT; i++)
    {
      const SwCostLine *line = &tally->cost[i];
      SwWorking *working;

      if (!(line->quantity > 0.0) || !(line->price > 0.0))
        continue;
      working = add_amount (tally, "cost_line", line->amount, kinds[i].code);
      sw_working_part (working, "quantity", line->quantity, line->unit);
      sw_working_typed (working, "price", line->price, SW_UNIT_MONEY);
      sw_working_computed (direct, "cost", working);
    }
  sw_working_typed (direct, "lump_sum", values[SW_PLAN_LUMP_SUM], SW_UNIT_MONEY);
}

static SwWorking *
add_mark_up (SwTally *tally, const char *name, double value, const SwWorking *on,
             double share)
{
  SwWorking *working = add_amount (tally, "cost_mark_up", value, name);

  sw_working_computed (working, "base", on);
  sw_working_typed (working, "mark_up", share, SW_UNIT_PERCENT);
  return working;
}

static SwWorking *
add_sum (SwTally *tally, const char *name, double value, const SwWorking *below,
         const SwWorking *mark_up)
{
  SwWorking *sum = add_amount (tally, "cost_sum", value, name);

  sw_working_computed (sum, "base", below);
  sw_working_computed (sum, "cost", mark_up);
  return sum;
}

/* In the order in which each mark-up lies on what stands above it. */
static void
add_workings (SwTally *tally, const double *values)
{
  const SwPrice *price = &tally->price;
  SwWorking *direct = sw_working_new ("cost_direct", price->direct, SW_UNIT_MONEY,
                                      SW_ROUNDING_NONE, "cost-direct");
  SwWorking *overhead, *loaded, *profit, *net, *tax;

  add_lines (tally, values, direct);
  sw_tally_add (tally, direct);
  overhead =
      add_mark_up (tally, "overhead", price->overhead, direct, values[SW_PLAN_OVERHEAD]);
  loaded =
      add_sum (tally, "with-overhead", price->direct + price->overhead, direct, overhead);
  profit = add_mark_up (tally, "profit", price->profit, loaded, values[SW_PLAN_PROFIT]);
  net = add_sum (tally, "net", price->net, loaded, profit);
  tax = add_mark_up (tally, "tax", price->tax, net, values[SW_PLAN_TAX]);
  add_sum (tally, "total", price->total, net, tax);
}

void
sw_tally_cost (SwTally *tally, const SwLayout *layout)
{
  const double *values = layout->job->plan.values;
  const SwMarkUps mark_ups = { values[SW_PLAN_OVERHEAD], values[SW_PLAN_PROFIT],
                               values[SW_PLAN_TAX] };
  SwPriceLine lines[SW_COST_COUNT];
  double amounts[SW_COST_COUNT];

  if (!has_prices (values))
    return;
  for (int i = 0; i < SW_COST_COUNT; i++)
    {
      tally->cost[i] = (SwCostLine){ .quantity = amount_of (tally, (SwCostKind) i),
                                     .unit = kinds[i].unit,
                                     .price = values[kinds[i].price] };
      lines[i] = (SwPriceLine){ tally->cost[i].quantity, tally->cost[i].price, 0.0 };
    }
  tally->priced = sw_price (lines, SW_COST_COUNT, values[SW_PLAN_LUMP_SUM], &mark_ups,
                            DECIMALS, amounts, &tally->price)
                  == SW_OK;
  if (!tally->priced)
    return;
  for (int i = 0; i < SW_COST_COUNT; i++)
    tally->cost[i].amount = amounts[i];
  add_workings (tally, values);
}
