/* SPDX-License-Identifier: MIT */
#undef G_DISABLE_ASSERT
#include "working-formulas.h"
#include <math.h>
#include <slopewright/base/count.h>

static double
input (const SwWorking *working, const char *symbol)
{
  double value = NAN;
  guint found = 0;

  for (guint i = 0; i < working->inputs->len; i++)
    if (g_str_equal (g_array_index (working->inputs, SwInput, i).symbol, symbol))
      {
        value = g_array_index (working->inputs, SwInput, i).value;
        found++;
      }
  if (found != 1)
    g_error ("%s has %u inputs \"%s\"", working->name, found, symbol);
  return value;
}

static double
sum_of (const SwWorking *working, const char *symbol)
{
  double sum = 0.0;

  for (guint i = 0; i < working->inputs->len; i++)
    if (g_str_equal (g_array_index (working->inputs, SwInput, i).symbol, symbol))
      sum += g_array_index (working->inputs, SwInput, i).value;
  return sum;
}

/* Pairs of run and drop stand one after the other. */
static double
tier_length (const SwWorking *w)
{
  double length_m = 0.0;

  for (guint i = 0; i + 1 < w->inputs->len; i += 2)
    length_m += hypot (g_array_index (w->inputs, SwInput, i).value,
                       g_array_index (w->inputs, SwInput, i + 1).value);
  return length_m;
}

static double
tier_gradient (const SwWorking *w)
{
  return atan2 (input (w, "drop"), input (w, "run"));
}

static double
tier_width (const SwWorking *w)
{
  return (input (w, "to") - input (w, "from")) * input (w, "stretch");
}

static double
tier_area (const SwWorking *w)
{
  return input (w, "length") * input (w, "width");
}

static double
tier_area_outline (const SwWorking *w)
{
  return input (w, "length") * input (w, "width") * input (w, "share");
}

static double
whole_above (double ratio)
{
  return ceil (ratio - 1e-6);
}

static double
run_count (const SwWorking *w)
{
  return fmax (1.0, whole_above ((input (w, "width") - input (w, "lap"))
                                 / (input (w, "roll") - input (w, "lap"))));
}

static double
run_count_round (const SwWorking *w)
{
  return whole_above (input (w, "width") / (input (w, "roll") - input (w, "lap")));
}

static double
lap_spread (const SwWorking *w)
{
  return (input (w, "runs") * input (w, "roll") - input (w, "width"))
         / (input (w, "runs") - 1.0);
}

static double
lap_round (const SwWorking *w)
{
  return (input (w, "runs") * input (w, "roll") - input (w, "width")) / input (w, "runs");
}

static double
lap_kept (const SwWorking *w)
{
  return input (w, "least");
}

static double
cut_length (const SwWorking *w)
{
  return input (w, "set_back") + input (w, "key_lining") + input (w, "fold")
         + input (w, "face") + input (w, "slots") + input (w, "end_laps")
         + input (w, "toe");
}

static double
trench_length (const SwWorking *w)
{
  return input (w, "length");
}

static double
trench_volume (const SwWorking *w)
{
  return input (w, "length") * input (w, "depth") * input (w, "width");
}

static double
spoil_bank (const SwWorking *w)
{
  return sum_of (w, "trench");
}

static double
spoil_loose (const SwWorking *w)
{
  return input (w, "bank") * (1.0 + input (w, "swell"));
}

static double
offcuts (const SwWorking *w)
{
  return input (w, "rolls") * input (w, "roll") - input (w, "pieces");
}

static double
lap_narrow (const SwWorking *w)
{
  return ((input (w, "runs") - 1.0) * input (w, "roll") + input (w, "narrow")
          - input (w, "width"))
         / (input (w, "runs") - 1.0);
}

static double
rolls_mixed (const SwWorking *w)
{
  return input (w, "opened") - input (w, "on_hand");
}

static double
offcuts_mixed (const SwWorking *w)
{
  return input (w, "opened_length") - input (w, "pieces");
}

static double
rolls_of_size (const SwWorking *w)
{
  return input (w, "cut") + input (w, "spare_of_size");
}

static double
rolls_order_mixed (const SwWorking *w)
{
  return sum_of (w, "size");
}

static double
order_area_mixed (const SwWorking *w)
{
  return sum_of (w, "size_area");
}

static double
rolls_order (const SwWorking *w)
{
  return whole_above (input (w, "rolls") * (1.0 + input (w, "spare")))
         + input (w, "spare_rolls");
}

static double
rolls_order_length (const SwWorking *w)
{
  double lacking_m = input (w, "allowance") * input (w, "pieces") - input (w, "rounding");

  return input (w, "rolls") + input (w, "spare_rolls")
         + whole_above (fmax (lacking_m, 0.0) / input (w, "roll"));
}

static double
rounding_spare (const SwWorking *w)
{
  return input (w, "offcuts") - input (w, "too_short");
}

static double
rounding_gives (const SwWorking *w)
{
  return input (w, "rounding") / input (w, "pieces");
}

static double
net_area (const SwWorking *w)
{
  return sum_of (w, "tier");
}

static double
placed_area (const SwWorking *w)
{
  return input (w, "pieces") * input (w, "roll_width");
}

static double
placed_area_trimmed (const SwWorking *w)
{
  return input (w, "pieces") * input (w, "roll_width") - input (w, "trimmed");
}

static double
pay_area (const SwWorking *w)
{
  return input (w, "net");
}

static double
order_area (const SwWorking *w)
{
  return input (w, "rolls") * input (w, "roll_width") * input (w, "roll");
}

static double
roll_mass (const SwWorking *w)
{
  return input (w, "mass") * input (w, "roll_width") * input (w, "roll");
}

static double
roll_diameter (const SwWorking *w)
{
  double core_m = input (w, "core");

  return sqrt (core_m * core_m + 4.0 * input (w, "roll") * input (w, "thickness") / G_PI);
}

static double
seed_pls (const SwWorking *w)
{
  return input (w, "rate") * input (w, "net");
}

static double
seed_bulk (const SwWorking *w)
{
  return input (w, "pls")
         / (input (w, "purity") * (input (w, "germination") + input (w, "hard")));
}

/* clang-format off */
#define FORMULA(name, expression) \
  static double name (const SwWorking *w) { return expression; }

FORMULA (seed_rate, input (w, "seeds") / input (w, "seeds_per_kg"))
FORMULA (seed_count, input (w, "rate") * input (w, "seeds_per_kg"))
FORMULA (seed_share, input (w, "seeds") / input (w, "all_seeds"))
FORMULA (seed_share_bulk, input (w, "bulk") / input (w, "all_bulk"))
FORMULA (seed_sum, sum_of (w, "species"))
FORMULA (fertiliser_rate, input (w, "need") / input (w, "label"))
FORMULA (fertiliser_given, input (w, "product") * input (w, "label"))
FORMULA (fertiliser_mass, input (w, "product") * input (w, "net"))
FORMULA (fertiliser_bags, whole_above (input (w, "product_mass") / input (w, "bag")))
FORMULA (haul, sum_of (w, "loose") * (1.0 - input (w, "backfill")))
FORMULA (truck_loads, whole_above (input (w, "haul") / input (w, "truck")))
FORMULA (crew_task, input (w, "amount") * input (w, "time"))
FORMULA (crew_pins, input (w, "amount") / 100.0 * input (w, "time"))
FORMULA (crew_hours, sum_of (w, "task") * input (w, "difficulty"))
FORMULA (crew_man_days, input (w, "hours") / 8.0)
FORMULA (crew_paid, input (w, "hours") / input (w, "at_work"))
FORMULA (crew_whole_days, whole_above (input (w, "days")))
/* clang-format on */

static double
crew_days (const SwWorking *w)
{
  return input (w, "man_days") * 8.0
         / (input (w, "people") * input (w, "at_work") * input (w, "day"));
}

/* Halves of a hundredth up, as on an invoice. */
static double
hundredths (double amount)
{
  return floor (amount * 100.0 + 0.5 + 1e-6) / 100.0;
}

static double
cost_line (const SwWorking *w)
{
  return hundredths (input (w, "quantity") * input (w, "price"));
}

static double
cost_direct (const SwWorking *w)
{
  return sum_of (w, "cost") + input (w, "lump_sum");
}

static double
cost_mark_up (const SwWorking *w)
{
  return hundredths (input (w, "base") * input (w, "mark_up"));
}

static double
cost_sum (const SwWorking *w)
{
  return input (w, "base") + input (w, "cost");
}

/* Loose topsoil counts with 75 mm below it, or not at all. */
static double
pin_length (const SwWorking *w)
{
  double topsoil_m = input (w, "topsoil");

  return fmax (fmax (input (w, "least"), input (w, "by_soil")),
               topsoil_m > 0.0 ? topsoil_m + 0.075 : 0.0);
}

static double
pins_line (const SwWorking *w)
{
  double pins = -input (w, "shared"), spacing_m = input (w, "spacing");

  for (guint i = 0; i < w->inputs->len; i++)
    {
      const SwInput *line = &g_array_index (w->inputs, SwInput, i);

      if (g_str_equal (line->symbol, "line"))
        pins += sw_count_up (line->value, spacing_m) + 1;
    }
  return pins;
}

static double
infill_runs (const SwWorking *w)
{
  return input (w, "all") - input (w, "full");
}

static double
infill_saving (const SwWorking *w)
{
  return input (w, "full") - input (w, "laid");
}

static double
pins_face (const SwWorking *w)
{
  return sum_of (w, "role");
}

static double
pins_order (const SwWorking *w)
{
  double wanted = whole_above (input (w, "pins") * (1.0 + input (w, "spare")));

  for (guint i = 0; i < w->inputs->len; i++)
    if (g_str_equal (g_array_index (w->inputs, SwInput, i).symbol, "per_box"))
      {
        double per_box = input (w, "per_box");

        g_assert_cmpfloat_with_epsilon (input (w, "boxes"), ceil (wanted / per_box),
                                        1e-9);
        return input (w, "boxes") * per_box;
      }
  return wanted;
}

/* Formulas that the inputs give; the others are counted out of the layout below. */
static const struct
{
  const char *formula;
  double (*compute) (const SwWorking *working);
} formulas[] = {
  { "tier_length", tier_length },
  { "tier_gradient", tier_gradient },
  { "tier_width", tier_width },
  { "tier_area", tier_area },
  { "tier_area_outline", tier_area_outline },
  { "run_count", run_count },
  { "run_count_round", run_count_round },
  { "lap_spread", lap_spread },
  { "lap_round", lap_round },
  { "lap_kept", lap_kept },
  { "cut_length", cut_length },
  { "cut_length_infill", cut_length },
  { "infill_runs", infill_runs },
  { "infill_saving", infill_saving },
  { "trench_length", trench_length },
  { "trench_volume", trench_volume },
  { "spoil_bank", spoil_bank },
  { "spoil_loose", spoil_loose },
  { "offcuts", offcuts },
  { "lap_narrow", lap_narrow },
  { "rolls_mixed", rolls_mixed },
  { "offcuts_mixed", offcuts_mixed },
  { "rolls_of_size", rolls_of_size },
  { "rolls_order_mixed", rolls_order_mixed },
  { "order_area_mixed", order_area_mixed },
  { "roll_mass_heaviest", roll_mass },
  { "placed_area_narrow", placed_area_trimmed },
  { "rolls_order", rolls_order },
  { "net_area", net_area },
  { "placed_area", placed_area },
  { "placed_area_trimmed", placed_area_trimmed },
  { "pay_area", pay_area },
  { "order_area", order_area },
  { "roll_mass", roll_mass },
  { "roll_diameter", roll_diameter },
  { "seed_pls", seed_pls },
  { "seed_bulk", seed_bulk },
  { "rolls_order_length", rolls_order_length },
  { "rounding_spare", rounding_spare },
  { "rounding_gives", rounding_gives },
  { "seed_rate", seed_rate },
  { "seed_count", seed_count },
  { "seed_share", seed_share },
  { "seed_share_bulk", seed_share_bulk },
  { "fertiliser_rate", fertiliser_rate },
  { "fertiliser_given", fertiliser_given },
  { "fertiliser_mass", fertiliser_mass },
  { "fertiliser_bags", fertiliser_bags },
  { "haul", haul },
  { "truck_loads", truck_loads },
  { "crew_pins", crew_pins },
  { "crew_hours", crew_hours },
  { "crew_man_days", crew_man_days },
  { "crew_paid", crew_paid },
  { "crew_days", crew_days },
  { "crew_whole_days", crew_whole_days },
  { "cost_line", cost_line },
  { "cost_direct", cost_direct },
  { "cost_mark_up", cost_mark_up },
  { "cost_sum", cost_sum },
  { "crew_setup", crew_task },
  { "crew_runs", crew_task },
  { "crew_trench", crew_task },
  { "crew_seeding", crew_task },
  { "seed_pls_sum", seed_sum },
  { "seed_bulk_sum", seed_sum },
  { "pin_length", pin_length },
  { "pins_line", pins_line },
  { "pins_face", pins_face },
  { "pins_order", pins_order },
};

double
working_input (const SwWorking *working, const char *symbol)
{
  return input (working, symbol);
}

gboolean
working_by_formula (const SwWorking *working, double *value)
{
  for (guint i = 0; i < G_N_ELEMENTS (formulas); i++)
    if (g_str_equal (working->formula, formulas[i].formula))
      {
        *value = formulas[i].compute (working);
        return TRUE;
      }
  return FALSE;
}

const char *
working_formula (guint index)
{
  return index < G_N_ELEMENTS (formulas) ? formulas[index].formula : NULL;
}
