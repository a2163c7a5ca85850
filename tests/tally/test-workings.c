/* SPDX-License-Identifier: MIT */
#undef G_DISABLE_ASSERT
#include "../layout/random-face.h"
#include "working-formulas.h"
#include <math.h>
#include <slopewright/base/count.h>
#include <slopewright/tally/tally.h>
#include <string.h>

/* The same sum in another order. */
#define ROUNDING 1e-9

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

  if (working_by_formula (working, &value))
    return value;
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
  gint64 opened = 0;
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
  if (tally->rolls_on_hand == 0)
    g_assert_cmpfloat (tally->areas.placed_m2, <=, tally->areas.order_m2 + 1e-6);
  for (int r = 0; r < layout->rolls; r++)
    opened += sw_ticks (layout->cut_rolls[r].length_m);
  g_assert_cmpint (sw_ticks (tally->piece_length_m) + sw_ticks (tally->offcut_length_m),
                   ==, opened);
  g_assert_cmpint (tally->rolls + tally->rolls_on_hand, ==, layout->rolls);
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
      working_input (sw_tally_working (tally, "A.pins.end-lap"), "joints"),
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

/*
 * By hand: two faces of 5.8 m at 2:1, 4 m high, runs of 10.2943 m: four wide, two narrow.
 * The wide ones: two of 21 m on hand hold two each, so none is ordered, and the tenth of
 * nothing is no spare. The narrow ones: both from one of 21 m, and a spare: 2 x 1.22 x 21 =
 * 51.24 m2. What is carried and heaviest is on hand: 2.44 x 21 m.
 */
static void
test_stock_and_narrow_roll (void)
{
  static const SwStockLine stock[] = { { SW_STOCK_ON_HAND, 21.0, 3 },
                                       { SW_STOCK_ON_HAND, 9.0, 1 } };
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();
  g_autoptr (SwJob) job = fixture_job ();
  g_autoptr (SwLayout) layout = NULL;
  g_autoptr (SwTally) tally = NULL;
  double mass_kg_per_m2;

  fixture_add_plane (job, "A", 2.0, 4.0, 5.8);
  fixture_add_plane (job, "B", 2.0, 4.0, 5.8);
  g_array_append_vals (job->stock, stock, G_N_ELEMENTS (stock));
  job->surplus = SW_SURPLUS_NARROW;
  job->narrow_width_m = 1.22;
  job->narrow_length_m = 21.0;
  sw_job_set_override (job, SW_PRACTICE_ROLL_SPARE, 0.1, "");
  check_job (job, catalogue);
  layout = fixture_lay (job, catalogue);
  tally = sw_tally_new (layout);
  mass_kg_per_m2 = layout->blanket->mass_kg_per_m2.value;
  g_assert_cmpint (tally->rolls_on_hand, ==, 2);
  g_assert_cmpint (tally->rolls, ==, 1);
  g_assert_cmpint (tally->rolls_order, ==, 2);
  g_assert_cmpfloat_with_epsilon (tally->areas.order_m2, 51.24, 1e-9);
  g_assert_cmpfloat_with_epsilon (tally->roll_mass_kg, mass_kg_per_m2 * 2.44 * 21.0,
                                  1e-9);
  g_assert_cmpuint (tally->roll_orders->len, ==, 4);
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
  for (guint i = 0; working_formula (i) != NULL; i++)
    {
      static const char *const parts[] = { "title", "formula", "check" };

      for (guint p = 0; p < G_N_ELEMENTS (parts); p++)
        {
          g_autofree char *id =
              g_strdup_printf ("\"working.%s.%s\":", working_formula (i), parts[p]);

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
  g_test_add_func ("/tally/workings/stock-and-narrow-roll", test_stock_and_narrow_roll);
  g_test_add_func ("/tally/workings/round-crests", test_round_crests);
  g_test_add_func ("/tally/workings/stations", test_stations);
  g_test_add_func ("/tally/workings/words", test_words);
  return g_test_run ();
}
