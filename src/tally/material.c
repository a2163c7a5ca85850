/* SPDX-License-Identifier: MIT */
#include "tally-private.h"
#include <slopewright/base/count.h>

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
    offcuts += sw_ticks (layout->cut_rolls[i].offcut_m);
  tally->pieces = (int) layout->n_pieces;
  tally->joints = tally->pieces - tally->runs;
  tally->piece_length_m = (double) pieces / SW_TICKS_PER_M;
  tally->offcut_length_m = (double) offcuts / SW_TICKS_PER_M;
}

static void
add_areas (SwTally *tally, const SwLayout *layout)
{
  const SwJob *job = layout->job;
  SwAreas *areas = &tally->areas;
  SwWorking *net, *placed, *pay;
  double trimmed_m2;

  areas->placed_m2 = placed_m2 (layout, &trimmed_m2);
  areas->pay_m2 = areas->net_m2;
  net = sw_tally_add (tally, sw_working_new ("net_area", areas->net_m2, SW_UNIT_M2,
                                             SW_ROUNDING_NONE, "net-area"));
  add_parts (tally, net, "tier_area", "tier");
  placed = sw_tally_add (tally, sw_working_new (trimmed_m2 <= 0.0 ? "placed_area"
                                                : job->surplus == SW_SURPLUS_NARROW
                                                    ? "placed_area_narrow"
                                                    : "placed_area_trimmed",
                                                areas->placed_m2, SW_UNIT_M2,
                                                SW_ROUNDING_NONE, "placed-area"));
  sw_working_computed (placed, "pieces", sw_tally_working (tally, "piece-length"));
  sw_working_typed (placed, "roll_width", job->roll_width_m, SW_UNIT_M);
  if (trimmed_m2 > 0.0)
    sw_working_part (placed, "trimmed", trimmed_m2, SW_UNIT_M2);
  pay = sw_tally_add (tally, sw_working_new ("pay_area", areas->pay_m2, SW_UNIT_M2,
                                             SW_ROUNDING_NONE, "pay-area"));
  sw_working_computed (pay, "net", net);
  sw_tally_order_area (tally, layout);
}

void
sw_tally_material (SwTally *tally, const SwLayout *layout)
{
  add_lengths (tally, layout);
  sw_tally_rolls (tally, layout);
  add_areas (tally, layout);
  sw_tally_roll_size (tally, layout);
}
