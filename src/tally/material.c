/* SPDX-License-Identifier: MIT */
#include "tally-private.h"
#include <slopewright/base/count.h>
#include <slopewright/tally/roll.h>

/* @trimmed_m2: what runs narrower than the roll leave off it. */
static double
placed_m2 (const SwLayout *layout, double *trimmed_m2)
{
  double area_m2 = 0.0;

  *trimmed_m2 = 0.0;
  for (guint i = 0; i < layout->n_pieces; i++)
    {
      const SwPiece *piece = &layout->pieces[i];
      const SwRun *run = &layout->faces[piece->face].runs[piece->run];

      area_m2 += piece->length_m * run->width_m;
      if (sw_ticks (run->width_m) != sw_ticks (layout->job->roll_width_m))
        *trimmed_m2 += piece->length_m * (layout->job->roll_width_m - run->width_m);
    }
  return area_m2;
}

/* Add the workings whose formula begins so, from all faces, as inputs of their sum. */
static void
add_parts (SwTally *tally, SwWorking *sum, const char *formula, const char *symbol)
{
  for (guint i = 0; i < tally->workings->len; i++)
    {
      const SwWorking *part = g_ptr_array_index (tally->workings, i);

      if (g_str_has_prefix (part->formula, formula))
        sw_working_computed (sum, symbol, part);
    }
}

static void
add_lengths (SwTally *tally, const SwLayout *layout)
{
  gint64 pieces = 0, offcuts = 0;

  for (guint i = 0; i < layout->n_pieces; i++)
    pieces += sw_ticks (layout->pieces[i].length_m);
  for (int i = 0; i < layout->rolls; i++)
    offcuts += sw_ticks (layout->offcuts_m[i]);
  tally->pieces = (int) layout->n_pieces;
  tally->joints = tally->pieces - tally->runs;
  tally->piece_length_m = (double) pieces / SW_TICKS_PER_M;
  tally->offcut_length_m = (double) offcuts / SW_TICKS_PER_M;
}

static void
add_rolls (SwTally *tally, const SwLayout *layout)
{
  const SwJob *job = layout->job;
  SwWorking *pieces, *rolls, *offcuts;

  pieces =
      sw_tally_add (tally, sw_working_new ("piece_length", tally->piece_length_m,
                                           SW_UNIT_M, SW_ROUNDING_NONE, "piece-length"));
  sw_working_part (pieces, "pieces", tally->pieces, SW_UNIT_COUNT);
  rolls = sw_tally_add (tally, sw_working_new ("rolls", layout->rolls, SW_UNIT_COUNT,
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
  tally->rolls = layout->rolls;
  sw_tally_order_rolls (tally, layout);
}

static void
add_areas (SwTally *tally, const SwLayout *layout)
{
  const SwJob *job = layout->job;
  SwAreas *areas = &tally->areas;
  SwWorking *net, *placed, *pay, *order;
  double trimmed_m2;

  areas->placed_m2 = placed_m2 (layout, &trimmed_m2);
  areas->pay_m2 = areas->net_m2;
  areas->order_m2 = tally->rolls_order * job->roll_width_m * job->roll_length_m;
  net = sw_tally_add (tally, sw_working_new ("net_area", areas->net_m2, SW_UNIT_M2,
                                             SW_ROUNDING_NONE, "net-area"));
  add_parts (tally, net, "tier_area", "tier");
  placed = sw_tally_add (
      tally,
      sw_working_new (trimmed_m2 > 0.0 ? "placed_area_trimmed" : "placed_area",
                      areas->placed_m2, SW_UNIT_M2, SW_ROUNDING_NONE, "placed-area"));
  sw_working_computed (placed, "pieces", sw_tally_working (tally, "piece-length"));
  sw_working_typed (placed, "roll_width", job->roll_width_m, SW_UNIT_M);
  if (trimmed_m2 > 0.0)
    sw_working_part (placed, "trimmed", trimmed_m2, SW_UNIT_M2);
  pay = sw_tally_add (tally, sw_working_new ("pay_area", areas->pay_m2, SW_UNIT_M2,
                                             SW_ROUNDING_NONE, "pay-area"));
  sw_working_computed (pay, "net", net);
  order = sw_tally_add (tally, sw_working_new ("order_area", areas->order_m2, SW_UNIT_M2,
                                               SW_ROUNDING_NONE, "order-area"));
  sw_working_computed (order, "rolls", sw_tally_working (tally, "rolls-order"));
  sw_working_typed (order, "roll_width", job->roll_width_m, SW_UNIT_M);
  sw_working_typed (order, "roll", job->roll_length_m, SW_UNIT_M);
}

static void
add_roll_size (SwTally *tally, const SwLayout *layout)
{
  const SwJob *job = layout->job;
  SwSourced mass = layout->blanket->mass_kg_per_m2,
            thickness = layout->blanket->thickness_m;
  SwWorking *working;

  if (job->blanket_mass_kg_per_m2 > 0.0)
    mass = (SwSourced){ job->blanket_mass_kg_per_m2, SW_EVIDENCE_USER, NULL };
  if (job->blanket_thickness_m > 0.0)
    thickness = (SwSourced){ job->blanket_thickness_m, SW_EVIDENCE_USER, NULL };
  tally->roll_mass_kg = mass.value * job->roll_width_m * job->roll_length_m;
  working =
      sw_tally_add (tally, sw_working_new ("roll_mass", tally->roll_mass_kg, SW_UNIT_KG,
                                           SW_ROUNDING_NONE, "roll-mass"));
  sw_working_sourced (working, "mass", &mass, SW_UNIT_KG_PER_M2);
  sw_working_typed (working, "roll_width", job->roll_width_m, SW_UNIT_M);
  sw_working_typed (working, "roll", job->roll_length_m, SW_UNIT_M);
  if (sw_roll_diameter (job->roll_length_m, thickness.value, job->roll_core_m,
                        &tally->roll_diameter_m)
      != SW_OK)
    return;
  working =
      sw_tally_add (tally, sw_working_new ("roll_diameter", tally->roll_diameter_m,
                                           SW_UNIT_M, SW_ROUNDING_NONE, "roll-diameter"));
  sw_working_typed (working, "roll", job->roll_length_m, SW_UNIT_M);
  sw_working_sourced (working, "thickness", &thickness, SW_UNIT_SMALL_M);
  sw_working_typed (working, "core", job->roll_core_m, SW_UNIT_SMALL_M);
}

void
sw_tally_material (SwTally *tally, const SwLayout *layout)
{
  add_lengths (tally, layout);
  add_rolls (tally, layout);
  add_areas (tally, layout);
  add_roll_size (tally, layout);
}
