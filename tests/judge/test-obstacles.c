/* SPDX-License-Identifier: MIT */
#undef G_DISABLE_ASSERT
#include "../layout/fixture.h"
#include <math.h>
#include <slopewright/judge/result.h>
#include <slopewright/judge/spread.h>

/* The job through tally and findings: obstacles, and soils in zones. */

#define HAND 1e-9

static const SwPoint box[] = { { 2.8, 3.2 }, { 3.3, 3.2 }, { 3.3, 4.0 }, { 2.8, 4.0 } };
static const SwPoint wall[] = { { 1.9, 3.2 }, { 6.2, 3.2 }, { 6.2, 4.0 }, { 1.9, 4.0 } };

/* 4 out on 3 down: 8 m out, 10 m down, 10.1 m wide; roll 2.10, five runs. */
static SwResult *
judge_with (const SwCatalogue *catalogue, const SwPoint *outline)
{
  g_autoptr (SwJob) job = fixture_job ();
  SwFace *face = fixture_add_plane (job, "A", 4.0 / 3.0, 6.0, 10.1);
  SwObstacle *obstacle = sw_obstacle_new ("1");

  job->roll_width_m = 2.10;
  sw_obstacle_set_outline (obstacle, outline, 4);
  g_ptr_array_add (face->obstacles, obstacle);
  return sw_result_new (job, catalogue);
}

static double
input_of (const GArray *inputs, const char *symbol)
{
  for (guint i = 0; i < inputs->len; i++)
    if (g_str_equal (g_array_index (inputs, SwInput, i).symbol, symbol))
      return g_array_index (inputs, SwInput, i).value;
  g_error ("no input \"%s\"", symbol);
}

static guint
count (const SwResult *result, const char *code)
{
  guint found = 0;

  for (guint i = 0; i < result->findings->len; i++)
    if (g_str_equal (((const SwFinding *) result->findings->pdata[i])->code, code))
      found++;
  return found;
}

static const SwFinding *
only (const SwResult *result, const char *code)
{
  const SwFinding *found = NULL;

  g_assert_cmpuint (count (result, code), ==, 1);
  for (guint i = 0; i < result->findings->len; i++)
    if (g_str_equal (((const SwFinding *) result->findings->pdata[i])->code, code))
      found = result->findings->pdata[i];
  return found;
}

/*
 * A box of 0.5 by 1 m, 4 m down and 2.8 m from the left: below the limit of 1 m2, so the net
 * stays 10.1 x 10 = 101. Collar 0.15 wide: 0.8 x 1.3 - 0.5 x 1.0 = 0.54
 * on the ground; 3.0 m around.
 */
static void
test_box (void)
{
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();
  g_autoptr (SwResult) result = judge_with (catalogue, box);
  const SwFinding *finding = only (result, "obstacle");
  const SwWorking *collars = sw_tally_working (result->tally, "A.collars");

  g_assert_cmpint (finding->severity, ==, SW_SEVERITY_NOTE);
  g_assert_cmpstr (finding->failure, ==, "F16");
  g_assert_cmpint (finding->face, ==, 0);
  g_assert_cmpint (finding->obstacle, ==, 0);
  g_assert_cmpfloat_with_epsilon (input_of (finding->inputs, "number"), 1.0, HAND);
  g_assert_cmpfloat_with_epsilon (input_of (finding->inputs, "wide"), 0.5, HAND);
  g_assert_cmpfloat_with_epsilon (input_of (finding->inputs, "long"), 1.0, HAND);
  g_assert_cmpfloat_with_epsilon (input_of (finding->inputs, "from_crest"), 4.0, HAND);
  g_assert_cmpfloat_with_epsilon (input_of (finding->inputs, "from_left"), 2.8, HAND);
  g_assert_cmpfloat_with_epsilon (result->tally->areas.net_m2, 101.0, 1e-7);
  g_assert_cmpint (result->tally->collars, ==, 1);
  g_assert_cmpfloat_with_epsilon (result->tally->collar_m2, 0.54, HAND);
  g_assert_nonnull (collars);
  g_assert_cmpfloat_with_epsilon (collars->value, 0.54, HAND);
  g_assert_cmpfloat_with_epsilon (input_of (collars->inputs, "around"), 3.0, HAND);
  g_assert_cmpfloat_with_epsilon (input_of (collars->inputs, "overlap"), 0.15, HAND);
  g_assert_nonnull (sw_tally_working (result->tally, "A.pins.ring"));
  g_assert_nonnull (sw_tally_working (result->tally, "A.1.net-area"));
}

/* A wall of 4.3 by 1 m is taken off: 101 - 4.3 = 96.7, and pay follows net. */
static void
test_wall (void)
{
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();
  g_autoptr (SwResult) result = judge_with (catalogue, wall);
  const SwWorking *net = sw_tally_working (result->tally, "A.1.net-area");
  const SwWorking *below = sw_tally_working (result->tally, "A.run.2b.cut-length");

  g_assert_cmpstr (net->formula, ==, "tier_area_less");
  g_assert_cmpfloat_with_epsilon (net->value, 96.7, 1e-7);
  g_assert_cmpfloat_with_epsilon (input_of (net->inputs, "outline")
                                      - input_of (net->inputs, "deducted"),
                                  net->value, HAND);
  g_assert_cmpfloat_with_epsilon (input_of (net->inputs, "limit"), 1.0, HAND);
  g_assert_cmpfloat_with_epsilon (result->tally->areas.net_m2, 96.7, 1e-7);
  g_assert_cmpfloat_with_epsilon (result->tally->areas.pay_m2, 96.7, 1e-7);
  g_assert_cmpint (result->tally->runs, ==, 7);
  /* 10.1 along the crest and 4.1 below the wall; 10.1 and 4.1 at the toe. */
  g_assert_cmpfloat_with_epsilon (result->tally->key_trench_m, 14.2, HAND);
  g_assert_cmpfloat_with_epsilon (result->tally->toe_trench_m, 14.2, HAND);
  /* No set-back below the wall: 0 + 0.45 + 5 + 0.30. */
  g_assert_nonnull (below);
  g_assert_cmpfloat_with_epsilon (below->value, 5.75, HAND);
  g_assert_cmpfloat_with_epsilon (input_of (below->inputs, "set_back"), 0.0, HAND);
  g_assert_cmpuint (count (result, "obstacle"), ==, 1);
}

/*
 * 24 m of firm and 16 m of loose ground at 2.5:1, by the worse soil of a run. Short pins
 * (see the layout's own test): trenches 2 x 81, laps 9 x 23, edge 23, field 10 x 66: 1052;
 * long: 2 x 54 + 8 x 23 + 23 + 8 x 66 = 843. With 5 % spare 1105 and 886: three boxes of
 * 500 and four of 250.
 */
static SwResult *
judge_spur (const SwCatalogue *catalogue)
{
  const SwPoint sand[] = {
    { 24.0, -1.0 }, { 41.0, -1.0 }, { 41.0, 14.0 }, { 24.0, 14.0 }
  };
  g_autoptr (SwJob) job = fixture_job ();
  SwFace *face = fixture_add_plane (job, "S9", 2.5, 5.0, 40.0);
  SwZone *zone = sw_zone_new ("sand");

  sw_text_set (&zone->soil_id, "firm");
  zone->loose = TRUE;
  sw_zone_set_outline (zone, sand, 4);
  g_ptr_array_add (face->zones, zone);
  face->length_error_m = 0.1;
  return sw_result_new (job, catalogue);
}

static void
test_two_soils (void)
{
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();
  g_autoptr (SwResult) result = judge_spur (catalogue);
  const GArray *orders = result->tally->pin_orders;
  const SwPinOrder *brief = &g_array_index (orders, SwPinOrder, 0);
  const SwPinOrder *lengthy = &g_array_index (orders, SwPinOrder, 1);

  g_assert_cmpuint (orders->len, ==, 2);
  g_assert_cmpstr (brief->pin->id, ==, "p150");
  g_assert_cmpuint (brief->count, ==, 1052);
  g_assert_cmpint (brief->boxes, ==, 3);
  g_assert_cmpuint (brief->by_role[SW_PIN_SIDE_LAP], ==, 207);
  g_assert_cmpstr (lengthy->pin->id, ==, "p300");
  g_assert_cmpuint (lengthy->count, ==, 843);
  g_assert_cmpint (lengthy->boxes, ==, 4);
  g_assert_cmpuint (lengthy->by_role[SW_PIN_FIELD], ==, 528);
  g_assert_cmpuint (result->tally->pins, ==, 1895);
  g_assert_nonnull (sw_tally_working (result->tally, "S9.pin-length"));
  g_assert_cmpfloat_with_epsilon (
      sw_tally_working (result->tally, "S9.zone.sand.pin-length")->value, 0.30, HAND);
  /* Loose ground asks for a trial pull, in the zone only. */
  g_assert_cmpuint (count (result, "pin-trial"), ==, 0);
  g_assert_cmpint (only (result, "pin-trial-zone")->zone, ==, 0);
  g_assert_cmpfloat_with_epsilon (input_of (only (result, "soil-zones")->inputs, "zones"),
                                  1.0, HAND);
}

/* What stands on a face moves with it when the face is measured again. */
static void
test_misread (void)
{
  SwFace *face = sw_face_new ("A");
  const SwPoint section[] = { { 0.0, 6.0 }, { 8.0, 0.0 } };
  const SwPoint outline[] = { { 0, 0 }, { 10, 0 }, { 10, 8 }, { 0, 8 } };
  SwObstacle *obstacle = sw_obstacle_new ("1");
  SwZone *zone = sw_zone_new ("1");

  sw_face_set_section (face, section, 2);
  sw_face_set_outline (face, outline, 4);
  sw_obstacle_set_outline (obstacle, box, 4);
  sw_zone_set_outline (zone, wall, 4);
  g_ptr_array_add (face->obstacles, obstacle);
  g_ptr_array_add (face->zones, zone);
  face->length_error_m = 1.0; /* of 10 down and 10 along: a tenth */
  sw_face_misread (face, SW_ERROR_LENGTH, 1.0);
  g_assert_cmpfloat_with_epsilon (face->outline[2].y_m, 8.8, HAND);
  g_assert_cmpfloat_with_epsilon (obstacle->outline[2].y_m, 4.4, HAND);
  g_assert_cmpfloat_with_epsilon (zone->outline[2].y_m, 4.4, HAND);
  g_assert_cmpfloat_with_epsilon (obstacle->outline[2].x_m, 3.3, HAND);
  sw_face_misread (face, SW_ERROR_WIDTH, 1.0);
  /* About the middle, 5: 5 + 1.1 (3.3 - 5) and 5 + 1.1 (6.2 - 5). */
  g_assert_cmpfloat_with_epsilon (obstacle->outline[2].x_m, 3.13, HAND);
  g_assert_cmpfloat_with_epsilon (zone->outline[2].x_m, 6.32, HAND);
  g_assert_cmpfloat_with_epsilon (face->outline[2].x_m, 10.5, HAND);
  sw_face_free (face);
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/judge/obstacles/box", test_box);
  g_test_add_func ("/judge/obstacles/wall", test_wall);
  g_test_add_func ("/judge/obstacles/two-soils", test_two_soils);
  g_test_add_func ("/judge/obstacles/misread", test_misread);
  return g_test_run ();
}
