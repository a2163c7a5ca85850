/* SPDX-License-Identifier: MIT */
#undef G_DISABLE_ASSERT
#include "../layout/random-face.h"
#include <math.h>
#include <slopewright/base/count.h>
#include <slopewright/tally/tally.h>
#include <string.h>

/* The same sum in another order. */
#define ROUNDING 1e-9

/* Input @symbol of a working; the test fails if there is not exactly one. */
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

/* Pins of a role placed on the face that the name begins with. */
static double
pins_placed (const SwWorking *working, const SwLayout *layout)
{
  const char *role = strrchr (working->name, '.') + 1;
  double count = 0.0;

  for (guint f = 0; f < layout->n_faces; f++)
    {
      const SwFaceLayout *face = &layout->faces[f];
      g_autofree char *start = g_strconcat (face->face->id, ".pins.", NULL);

      if (!g_str_has_prefix (working->name, start))
        continue;
      for (gsize i = 0; i < face->n_pins; i++)
        if (g_str_equal (sw_pin_role_code ((SwPinRole) face->pins[i].role), role))
          count++;
    }
  return count;
}

/* Where the first infill run of the one face ends; test-infill.c works it out by hand. */
static double
infill_end (const SwLayout *layout)
{
  for (guint r = 0; r < layout->faces[0].n_runs; r++)
    if (layout->faces[0].runs[r].infill)
      return layout->faces[0].face->crest_form == SW_CREST_NOSE
                 ? layout->faces[0].runs[r].down_from_m
                 : layout->faces[0].runs[r].down_to_m;
  return 0.0;
}

static double
recompute (const SwWorking *working, const SwLayout *layout)
{
  double value = 0.0;

  for (guint i = 0; i < G_N_ELEMENTS (formulas); i++)
    if (g_str_equal (working->formula, formulas[i].formula))
      return formulas[i].compute (working);
  if (g_str_has_prefix (working->formula, "pins_"))
    return pins_placed (working, layout);
  if (g_str_equal (working->formula, "piece_length"))
    {
      for (guint i = 0; i < layout->n_pieces; i++)
        value += layout->pieces[i].length_m;
      return value;
    }
  if (g_str_has_prefix (working->formula, "infill_end_"))
    return infill_end (layout);
  g_assert_cmpstr (working->formula, ==, "rolls");
  for (guint i = 0; i < layout->n_pieces; i++)
    value = fmax (value, layout->pieces[i].roll);
  return value;
}

/* Every number comes out again; every computed input is the working it names. */
static void
check_workings (const SwTally *tally, const SwLayout *layout)
{
  g_autoptr (GHashTable) names = g_hash_table_new (g_str_hash, g_str_equal);

  for (guint i = 0; i < tally->workings->len; i++)
    {
      const SwWorking *working = g_ptr_array_index (tally->workings, i);
      double again = recompute (working, layout);

      if (fabs (again - working->value) > ROUNDING * (1.0 + fabs (working->value)))
        g_error ("%s (%s) is %.12g, its inputs give %.12g", working->name,
                 working->formula, working->value, again);
      g_assert_true (g_hash_table_add (names, working->name));
      for (guint k = 0; k < working->inputs->len; k++)
        {
          const SwInput *part = &g_array_index (working->inputs, SwInput, k);

          g_assert_true (isfinite (part->value));
          if (part->origin == SW_ORIGIN_COMPUTED && part->name != NULL)
            {
              const SwWorking *from = sw_tally_working (tally, part->name);

              g_assert_nonnull (from);
              g_assert_cmpfloat_with_epsilon (from->value, part->value,
                                              ROUNDING * (1.0 + fabs (part->value)));
            }
          if (part->origin == SW_ORIGIN_PRACTICE)
            {
              SwPracticeValue value = sw_practice_value_from_key (part->name);

              g_assert_cmpint (value, <, SW_PRACTICE_VALUE_COUNT);
              g_assert_cmpfloat_with_epsilon (layout->practice->values[value].value,
                                              part->value, 1e-12);
              g_assert_nonnull (part->source);
            }
        }
    }
}

static double
value_of (const SwTally *tally, const char *name)
{
  const SwWorking *working = sw_tally_working (tally, name);

  if (working == NULL)
    g_error ("no working \"%s\"", name);
  return working->value;
}

/* The plain numbers of the tally are those of its workings. */
static void
check_totals (const SwTally *tally, const SwLayout *layout)
{
  double length_m = 0.0, bank_m3 = 0.0;
  gsize pins = 0;

  g_assert_cmpfloat_with_epsilon (tally->areas.net_m2, value_of (tally, "net-area"),
                                  1e-9);
  g_assert_cmpfloat_with_epsilon (tally->areas.placed_m2, value_of (tally, "placed-area"),
                                  1e-9);
  g_assert_cmpfloat_with_epsilon (tally->areas.pay_m2, value_of (tally, "pay-area"),
                                  1e-9);
  g_assert_cmpfloat_with_epsilon (tally->areas.order_m2, value_of (tally, "order-area"),
                                  1e-9);
  g_assert_cmpfloat (tally->areas.net_m2, <, tally->areas.placed_m2);
  g_assert_cmpfloat (tally->areas.placed_m2, <=, tally->areas.order_m2 + 1e-6);
  g_assert_cmpint (sw_ticks (tally->piece_length_m) + sw_ticks (tally->offcut_length_m),
                   ==, layout->rolls * sw_ticks (layout->job->roll_length_m));
  g_assert_cmpint (tally->pieces - tally->joints, ==, tally->runs);
  g_assert_cmpint (tally->rolls + tally->rolls_spare, ==, tally->rolls_order);
  for (guint f = 0; f < layout->n_faces; f++)
    {
      for (guint i = 0; i < layout->faces[f].n_trenches; i++)
        {
          const SwTrench *trench = &layout->faces[f].trenches[i];

          length_m += trench->depth_m > 0.0 ? trench->length_m : 0.0;
          bank_m3 += trench->volume_m3;
        }
      pins += layout->faces[f].n_pins;
    }
  g_assert_cmpfloat_with_epsilon (
      tally->key_trench_m + tally->slot_m + tally->toe_trench_m, length_m, 1e-9);
  g_assert_cmpfloat_with_epsilon (tally->trench_bank_m3, bank_m3, 1e-9);
  g_assert_cmpfloat_with_epsilon (tally->trench_loose_m3, 1.25 * bank_m3, 1e-9);
  g_assert_cmpuint (tally->pins, ==, pins);
}

static void
check_orders (const SwTally *tally)
{
  gsize pins = 0;

  for (guint i = 0; i < tally->pin_orders->len; i++)
    {
      const SwPinOrder *order = &g_array_index (tally->pin_orders, SwPinOrder, i);
      gsize by_role = 0;

      for (int role = 0; role < SW_PIN_ROLE_COUNT; role++)
        by_role += order->by_role[role];
      g_assert_cmpuint (by_role, ==, order->count);
      g_assert_cmpuint (order->count + order->spare, <=, order->order);
      if (order->pin != NULL)
        g_assert_cmpuint (order->order, ==,
                          (gsize) order->boxes * (gsize) order->pin->per_box);
      pins += order->count;
    }
  g_assert_cmpuint (pins, ==, tally->pins);
}

static void
check_job (const SwJob *job, const SwCatalogue *catalogue)
{
  g_autoptr (SwLayout) layout = fixture_lay (job, catalogue);
  g_autoptr (SwTally) tally = sw_tally_new (layout);

  check_workings (tally, layout);
  check_totals (tally, layout);
  check_orders (tally);
}

static void
test_random_faces (void)
{
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();

  for (int kind = 0; kind < OUTLINE_KIND_COUNT; kind++)
    for (guint32 seed = 0; seed < 15; seed++)
      {
        g_autoptr (GRand) rand =
            g_rand_new_with_seed (3000 + 100 * (guint32) kind + seed);
        g_autoptr (SwJob) job = random_job (rand, (OutlineKind) kind);

        check_job (job, catalogue);
      }
}

/* Two faces of different soils' state, one with seed and overrides: two pin lengths. */
static void
test_two_faces (void)
{
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();
  g_autoptr (SwJob) job = fixture_job ();
  g_autoptr (SwLayout) layout = NULL;
  g_autoptr (SwTally) tally = NULL;

  fixture_add_plane (job, "A", 2.0, 20.0, 30.0);
  fixture_add_plane (job, "B-1", 3.0, 4.0, 12.0)->loose = TRUE;
  sw_seed_mix_add (&job->seed, &(SwSeedSpecies){ .pls_kg_per_m2 = 0.0045,
                                                 .purity = 0.9,
                                                 .germination = 0.7,
                                                 .hard = 0.1 });
  sw_job_set_override (job, SW_PRACTICE_ROLL_SPARE, 0.05, "far from the yard");
  sw_job_set_override (job, SW_PRACTICE_SLOT_EVERY_M, 7.5, "");
  check_job (job, catalogue);
  layout = fixture_lay (job, catalogue);
  tally = sw_tally_new (layout);
  g_assert_cmpuint (tally->pin_orders->len, ==, 2);
  g_assert_cmpfloat_with_epsilon (tally->seed_bulk_kg,
                                  0.0045 * tally->areas.net_m2 / 0.72, 1e-9);
  /* Joints of a face are its own: face A has one in each of its runs, B-1 has none. */
  g_assert_nonnull (sw_tally_working (tally, "A.pins.end-lap"));
  g_assert_cmpfloat_with_epsilon (
      input (sw_tally_working (tally, "A.pins.end-lap"), "joints"),
      layout->faces[0].n_runs * 1.0, 1e-9);
  g_assert_null (sw_tally_working (tally, "B-1.pins.end-lap"));
}

/* Everything that a job can say about ordering and doing the work. */
static void
test_whole_plan (void)
{
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();

  for (int allowance = 0; allowance < SW_ALLOWANCE_COUNT; allowance++)
    {
      g_autoptr (SwJob) job = fixture_job ();
      double *values = job->plan.values;

      fixture_add_plane (job, "A", 2.0, 20.0, 30.0);
      fixture_add_plane (job, "B-1", 3.0, 4.0, 12.0)->loose = TRUE;
      sw_seed_mix_add (&job->seed, &(SwSeedSpecies){ .pls_kg_per_m2 = 0.0045,
                                                     .purity = 0.9,
                                                     .germination = 0.8,
                                                     .seeds_per_kg = 5.5e5 });
      sw_seed_mix_add (&job->seed, &(SwSeedSpecies){ .seeds_per_m2 = 420.0,
                                                     .purity = 0.95,
                                                     .germination = 0.7,
                                                     .hard = 0.2,
                                                     .seeds_per_kg = 3.3e6 });
      for (int i = 0; i < SW_PLAN_COUNT; i++)
        values[i] = 0.2 * (1.0 + 0.07 * i);
      values[SW_PLAN_PEOPLE] = 3.0;
      values[SW_PLAN_DAY_H] = 7.5;
      job->plan.allowance = (SwAllowance) allowance;
      job->plan.spare_roll = allowance % 2 == 0;
      check_job (job, catalogue);
    }
}

/* A heap covered all round, a nose and a bowl. */
static void
test_round_crests (void)
{
  static const struct
  {
    SwCrestForm form;
    double along_m;
  } rows[] = { { SW_CREST_NOSE, 2.0 * G_PI * 4.0 },
               { SW_CREST_NOSE, 0.4 * 2.0 * G_PI * 4.0 },
               { SW_CREST_BOWL, 0.4 * 2.0 * G_PI * 20.0 } };
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      const SwPoint section[] = { { 0.0, 6.5 }, { 10.0, 0.0 } };
      const SwPoint outline[] = {
        { 0, 0 }, { rows[i].along_m, 0 }, { rows[i].along_m, 10 }, { 0, 10 }
      };
      g_autoptr (SwJob) job = fixture_job ();
      SwFace *face = fixture_add_face (job, "A", section, 2, outline, 4);

      face->crest_form = rows[i].form;
      face->crest_radius_m = rows[i].form == SW_CREST_BOWL ? 20.0 : 4.0;
      check_job (job, catalogue);
      face->fan = SW_FAN_INFILL;
      check_job (job, catalogue);
    }
}

/* Sections at several stations. */
static void
test_stations (void)
{
  const SwPoint section[] = { { 0.0, 4.0 }, { 3.0, 2.5 }, { 8.0, 0.0 } };
  const SwPoint outline[] = { { 0, 0 }, { 30, 1 }, { 30, 14 }, { 0, 8 } };
  SwPoint high[] = { { 1.0, 9.0 }, { 7.0, 4.0 }, { 14.0, 0.0 } };
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();
  g_autoptr (SwJob) job = fixture_job ();
  SwFace *face = fixture_add_face (job, "A", section, 3, outline, 4);

  sw_face_add_section (face, 30.0, high);
  check_job (job, catalogue);
}

/* Each formula has its words, and each place in them is an input or the result. */
static void
test_words (void)
{
  g_autofree char *text = NULL;

  g_assert_true (g_file_get_contents (WORKING_TEXTS_FILE, &text, NULL, NULL));
  for (guint i = 0; i < G_N_ELEMENTS (formulas); i++)
    {
      static const char *const parts[] = { "title", "formula", "check" };

      for (guint p = 0; p < G_N_ELEMENTS (parts); p++)
        {
          g_autofree char *id =
              g_strdup_printf ("\"working.%s.%s\":", formulas[i].formula, parts[p]);

          if (strstr (text, id) == NULL)
            g_error ("no text %s", id);
        }
    }
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/tally/workings/random-faces", test_random_faces);
  g_test_add_func ("/tally/workings/two-faces", test_two_faces);
  g_test_add_func ("/tally/workings/whole-plan", test_whole_plan);
  g_test_add_func ("/tally/workings/round-crests", test_round_crests);
  g_test_add_func ("/tally/workings/stations", test_stations);
  g_test_add_func ("/tally/workings/words", test_words);
  return g_test_run ();
}
