/* SPDX-License-Identifier: MIT */
#include "tally-private.h"
#include <slopewright/base/count.h>
#include <slopewright/tally/roll.h>

static SwSourced
blanket_mass (const SwLayout *layout)
{
  double typed = layout->job->blanket_mass_kg_per_m2;

  return typed > 0.0 ? (SwSourced){ typed, SW_EVIDENCE_USER, NULL }
                     : layout->blanket->mass_kg_per_m2;
}

static SwSourced
blanket_thickness (const SwLayout *layout)
{
  double typed = layout->job->blanket_thickness_m;

  return typed > 0.0 ? (SwSourced){ typed, SW_EVIDENCE_USER, NULL }
                     : layout->blanket->thickness_m;
}

static gboolean
is_of_order (const SwCutRoll *roll, const SwRollOrder *order)
{
  return roll->on_hand == order->on_hand
         && sw_ticks (roll->width_m) == sw_ticks (order->width_m)
         && sw_ticks (roll->length_m) == sw_ticks (order->length_m);
}

static SwRollOrder *
order_of (SwTally *tally, const SwCutRoll *roll)
{
  SwRollOrder made = { roll->width_m, roll->length_m, roll->on_hand, 0, 0, 0, 0, 0.0 };

  for (guint i = 0; i < tally->roll_orders->len; i++)
    {
      SwRollOrder *order = &g_array_index (tally->roll_orders, SwRollOrder, i);

      if (is_of_order (roll, order))
        return order;
    }
  g_array_append_val (tally->roll_orders, made);
  return &g_array_index (tally->roll_orders, SwRollOrder, tally->roll_orders->len - 1);
}

/* The job's own roll, then its stock as listed; the narrow one only when it is cut. */
static void
list_sizes (SwTally *tally, const SwLayout *layout)
{
  const SwJob *job = layout->job;
  SwCutRoll own = { job->roll_width_m, job->roll_length_m, FALSE, 0.0 };

  order_of (tally, &own);
  for (guint i = 0; i < job->stock->len; i++)
    {
      const SwStockLine *line = &g_array_index (job->stock, SwStockLine, i);
      SwCutRoll roll = { job->roll_width_m, line->length_m,
                         line->source == SW_STOCK_ON_HAND, 0.0 };

      if (roll.on_hand)
        order_of (tally, &roll)->ready += (int) line->count;
    }
  for (int r = 0; r < layout->rolls; r++)
    order_of (tally, &layout->cut_rolls[r])->cut++;
}

/* Spare rolls of a width are of the size listed first, which can be had without end. */
static void
add_spares (SwTally *tally, const SwLayout *layout)
{
  for (int narrow = 0; narrow < 2; narrow++)
    {
      double width_m = sw_job_roll_width_m (layout->job, narrow);
      SwRollOrder *first = NULL;
      int cut = 0;

      for (guint i = 0; i < tally->roll_orders->len; i++)
        {
          SwRollOrder *order = &g_array_index (tally->roll_orders, SwRollOrder, i);

          if (order->on_hand || sw_ticks (order->width_m) != sw_ticks (width_m))
            continue;
          first = first != NULL ? first : order;
          cut += order->cut;
        }
      if (first != NULL)
        first->spare = sw_tally_spare_rolls (tally, layout, first, cut);
    }
}

static void
count_orders (SwTally *tally, const SwLayout *layout)
{
  double mass_kg_per_m2 = blanket_mass (layout).value;

  list_sizes (tally, layout);
  add_spares (tally, layout);
  for (guint i = 0; i < tally->roll_orders->len; i++)
    {
      SwRollOrder *order = &g_array_index (tally->roll_orders, SwRollOrder, i);

      order->mass_kg = mass_kg_per_m2 * order->width_m * order->length_m;
      if (order->on_hand)
        tally->rolls_on_hand += order->cut;
      else
        {
          order->order = order->cut + order->spare;
          tally->rolls += order->cut;
          tally->rolls_spare += order->spare;
          tally->rolls_order += order->order;
          tally->order_mass_kg += order->order * order->mass_kg;
          tally->areas.order_m2 += order->order * order->width_m * order->length_m;
        }
    }
}

static void
add_one_size (SwTally *tally, const SwLayout *layout, const SwWorking *pieces)
{
  const SwJob *job = layout->job;
  SwWorking *rolls, *offcuts;

  rolls = sw_tally_add (tally, sw_working_new ("rolls", tally->rolls, SW_UNIT_COUNT,
                                               SW_ROUNDING_UP, "rolls"));
  sw_working_computed (rolls, "pieces", pieces);
  sw_working_typed (rolls, "roll", job->roll_length_m, SW_UNIT_M);
  sw_working_part (rolls, "bound", layout->rolls_bound, SW_UNIT_COUNT);
  sw_working_part (rolls, "naive", layout->rolls_naive, SW_UNIT_COUNT);
  offcuts = sw_tally_add (tally, sw_working_new ("offcuts", tally->offcut_length_m,
                                                 SW_UNIT_M, SW_ROUNDING_NONE, "offcuts"));
  sw_working_computed (offcuts, "rolls", rolls);
  sw_working_typed (offcuts, "roll", job->roll_length_m, SW_UNIT_M);
  sw_working_computed (offcuts, "pieces", pieces);
}

static void
add_opened (SwTally *tally, const SwLayout *layout, const SwWorking *pieces)
{
  SwWorking *rolls, *offcuts;
  gint64 opened = 0;

  for (int r = 0; r < layout->rolls; r++)
    opened += sw_ticks (layout->cut_rolls[r].length_m);
  rolls = sw_tally_add (tally, sw_working_new ("rolls_mixed", tally->rolls, SW_UNIT_COUNT,
                                               SW_ROUNDING_UP, "rolls"));
  sw_working_computed (rolls, "pieces", pieces);
  sw_working_part (rolls, "opened", layout->rolls, SW_UNIT_COUNT);
  sw_working_part (rolls, "on_hand", tally->rolls_on_hand, SW_UNIT_COUNT);
  sw_working_part (rolls, "ordered", layout->ordered_m2, SW_UNIT_M2);
  sw_working_part (rolls, "bound_area", layout->bound_m2, SW_UNIT_M2);
  offcuts = sw_tally_add (tally, sw_working_new ("offcuts_mixed", tally->offcut_length_m,
                                                 SW_UNIT_M, SW_ROUNDING_NONE, "offcuts"));
  sw_working_part (offcuts, "opened_length", (double) opened / SW_TICKS_PER_M, SW_UNIT_M);
  sw_working_computed (offcuts, "pieces", pieces);
}

/* A working a size, and their sum. */
static void
add_sizes (SwTally *tally, const SwLayout *layout)
{
  g_autoptr (GPtrArray) sizes = g_ptr_array_new ();
  SwWorking *sum;

  for (guint i = 0; i < tally->roll_orders->len; i++)
    {
      const SwRollOrder *order = &g_array_index (tally->roll_orders, SwRollOrder, i);
      SwWorking *size;

      if (order->on_hand)
        continue;
      size = sw_tally_add (tally, sw_working_new ("rolls_of_size", order->order,
                                                  SW_UNIT_COUNT, SW_ROUNDING_UP,
                                                  "rolls-order.%u", sizes->len + 1));
      sw_working_part (size, "cut", order->cut, SW_UNIT_COUNT);
      sw_working_part (size, "spare_of_size", order->spare, SW_UNIT_COUNT);
      sw_working_typed (size, "roll_width", order->width_m, SW_UNIT_M);
      sw_working_typed (size, "roll", order->length_m, SW_UNIT_M);
      sw_tally_add_share (tally, layout, size);
      g_ptr_array_add (sizes, size);
    }
  sum = sw_tally_add (tally,
                      sw_working_new ("rolls_order_mixed", tally->rolls_order,
                                      SW_UNIT_COUNT, SW_ROUNDING_NONE, "rolls-order"));
  for (guint i = 0; i < sizes->len; i++)
    sw_working_computed (sum, "size", sizes->pdata[i]);
}

void
sw_tally_rolls (SwTally *tally, const SwLayout *layout)
{
  SwWorking *pieces =
      sw_tally_add (tally, sw_working_new ("piece_length", tally->piece_length_m,
                                           SW_UNIT_M, SW_ROUNDING_NONE, "piece-length"));

  sw_working_part (pieces, "pieces", tally->pieces, SW_UNIT_COUNT);
  count_orders (tally, layout);
  if (!sw_layout_mixes_rolls (layout))
    {
      add_one_size (tally, layout, pieces);
      sw_tally_rounding (tally, layout);
      sw_tally_order_rolls (tally, layout);
      return;
    }
  add_opened (tally, layout, pieces);
  sw_tally_rounding (tally, layout);
  add_sizes (tally, layout);
}

void
sw_tally_order_area (SwTally *tally, const SwLayout *layout)
{
  const SwJob *job = layout->job;
  gboolean mixed = sw_layout_mixes_rolls (layout);
  SwWorking *order =
      sw_tally_add (tally, sw_working_new (mixed ? "order_area_mixed" : "order_area",
                                           tally->areas.order_m2, SW_UNIT_M2,
                                           SW_ROUNDING_NONE, "order-area"));

  if (!mixed)
    {
      sw_working_computed (order, "rolls", sw_tally_working (tally, "rolls-order"));
      sw_working_typed (order, "roll_width", job->roll_width_m, SW_UNIT_M);
      sw_working_typed (order, "roll", job->roll_length_m, SW_UNIT_M);
      return;
    }
  for (guint i = 0; i < tally->roll_orders->len; i++)
    {
      const SwRollOrder *size = &g_array_index (tally->roll_orders, SwRollOrder, i);

      if (!size->on_hand)
        sw_working_part (order, "size_area", size->order * size->width_m * size->length_m,
                         SW_UNIT_M2);
    }
}

/* Of all that is carried. */
static const SwRollOrder *
heaviest (const SwTally *tally)
{
  const SwRollOrder *found = &g_array_index (tally->roll_orders, SwRollOrder, 0);

  for (guint i = 1; i < tally->roll_orders->len; i++)
    {
      const SwRollOrder *order = &g_array_index (tally->roll_orders, SwRollOrder, i);
      gboolean carried = order->cut + order->spare > 0;

      if (carried && (found->cut + found->spare == 0 || order->mass_kg > found->mass_kg))
        found = order;
    }
  return found;
}

void
sw_tally_roll_size (SwTally *tally, const SwLayout *layout)
{
  const SwRollOrder *roll = heaviest (tally);
  gboolean mixed = sw_layout_mixes_rolls (layout);
  double core_m = layout->job->roll_core_m;
  SwSourced mass = blanket_mass (layout), thickness = blanket_thickness (layout);
  SwWorking *working;

  tally->roll_mass_kg = roll->mass_kg;
  working = sw_tally_add (
      tally, sw_working_new (mixed ? "roll_mass_heaviest" : "roll_mass", roll->mass_kg,
                             SW_UNIT_KG, SW_ROUNDING_NONE, "roll-mass"));
  sw_working_sourced (working, "mass", &mass, SW_UNIT_KG_PER_M2);
  sw_working_typed (working, "roll_width", roll->width_m, SW_UNIT_M);
  sw_working_typed (working, "roll", roll->length_m, SW_UNIT_M);
  if (sw_roll_diameter (roll->length_m, thickness.value, core_m, &tally->roll_diameter_m)
      != SW_OK)
    return;
  working =
      sw_tally_add (tally, sw_working_new ("roll_diameter", tally->roll_diameter_m,
                                           SW_UNIT_M, SW_ROUNDING_NONE, "roll-diameter"));
  sw_working_typed (working, "roll", roll->length_m, SW_UNIT_M);
  sw_working_sourced (working, "thickness", &thickness, SW_UNIT_SMALL_M);
  sw_working_typed (working, "core", core_m, SW_UNIT_SMALL_M);
}
