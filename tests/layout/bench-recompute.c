/* SPDX-License-Identifier: MIT */
#undef G_DISABLE_ASSERT
#include "fixture.h"
#include <math.h>
#include <slopewright/base/count.h>
#include <slopewright/judge/result.h>
#include <slopewright/layout/cutting.h>
#include <slopewright/layout/stock-cutting.h>
#include <time.h>

/*
 * Processor time of a whole recompute, layout to findings, by area of a square 3:1 face
 * with field pins every 1.0 x 0.3 m. Aims: 1 ha under 5 ms, 100 ha under 0.6 s, growth no
 * worse than linear. Nothing is asserted: other work on the machine would decide.
 */

static const double sizes_ha[] = { 0.1, 1.0, 10.0, 100.0 };

/* A plain square, or one whose slanting edges make every run another length. */
static SwJob *
job_of (double ha, gboolean slanting)
{
  double side_m = sqrt (ha * SW_M2_PER_HA), in_m = slanting ? side_m / 4.0 : 0.0;
  const SwPoint section[] = { { 0.0, side_m / 3.0 }, { side_m, 0.0 } };
  const SwPoint outline[] = {
    { in_m, 0.0 }, { side_m - in_m, 0.0 }, { side_m, side_m }, { 0.0, side_m }
  };
  SwJob *job = fixture_job ();

  fixture_add_face (job, "A", section, 2, outline, 4);
  sw_job_set_override (job, SW_PRACTICE_PIN_DOWN_M, 0.3, "");
  sw_job_set_override (job, SW_PRACTICE_PIN_ACROSS_M, 1.0, "");
  sw_job_set_override (job, SW_PRACTICE_SIDE_LAP_PIN_M, 1.0, "");
  sw_job_set_override (job, SW_PRACTICE_EDGE_PIN_M, 1.0, "");
  return job;
}

/* Of this program alone: others may be at work on the machine. */
static double
processor_s (void)
{
  return (double) clock () / CLOCKS_PER_SEC;
}

/* The fastest of several. */
static double
seconds_of (const SwJob *job, const SwCatalogue *catalogue, gsize *pins, int *rolls)
{
  double best_s = INFINITY, spent_s = 0.0;

  for (int i = 0; i < 50 && (i < 3 || spent_s < 1.0); i++)
    {
      double start_s = processor_s ();
      g_autoptr (SwResult) result = sw_result_new (job, catalogue);
      double took_s = processor_s () - start_s;

      g_assert_cmpint (result->status, ==, SW_OK);
      *pins = result->tally->pins;
      *rolls = result->tally->rolls;
      best_s = fmin (best_s, took_s);
      spent_s += took_s;
    }
  return best_s;
}

static void
time_sizes (const SwCatalogue *catalogue, gboolean slanting)
{
  g_autoptr (SwJob) one_ha = job_of (1.0, slanting);
  gsize pins = 0;
  int rolls = 0;
  double of_one_ha_s = seconds_of (one_ha, catalogue, &pins, &rolls);

  g_print ("%s\n%8s %10s %7s %10s %18s\n",
           slanting ? "Trapezoid, every run of its own length" : "Square", "ha", "pins",
           "rolls", "ms", "per ha, 1 ha is 1");
  for (guint i = 0; i < G_N_ELEMENTS (sizes_ha); i++)
    {
      g_autoptr (SwJob) job = job_of (sizes_ha[i], slanting);
      double took_s = seconds_of (job, catalogue, &pins, &rolls);

      g_print ("%8.1f %10" G_GSIZE_FORMAT " %7d %10.2f %18.2f\n", sizes_ha[i], pins,
               rolls, 1e3 * took_s, took_s / sizes_ha[i] / of_one_ha_s);
    }
}

/* Pieces between a fifth of a roll and the half, none like another: the hard ones. */
static void
time_cutting (guint count)
{
  g_autoptr (GRand) rand = g_rand_new_with_seed (count);
  g_autofree gint64 *pieces = g_new (gint64, count);
  g_autoptr (SwCutting) cutting = NULL;
  double start_s;

  for (guint i = 0; i < count; i++)
    pieces[i] = g_rand_int_range (rand, 68600, 171500);
  start_s = processor_s ();
  cutting = sw_cutting_new (pieces, count, 343000);
  g_print ("%u pieces: %d rolls, proved least %d, %.1f ms\n", count, cutting->rolls,
           cutting->bound, 1e3 * (processor_s () - start_s));
}

/* The same hard pieces, two lengths to order and off-cuts on hand. */
static void
time_stock_cutting (guint count)
{
  static const SwStockKind kinds[] = { { 343000, 0, FALSE },
                                       { 500000, 0, FALSE },
                                       { 120000, 3, TRUE },
                                       { 205000, 2, TRUE },
                                       { 343000, 4, TRUE } };
  g_autoptr (GRand) rand = g_rand_new_with_seed (count);
  g_autofree gint64 *pieces = g_new (gint64, count);
  g_autoptr (SwStockCutting) cutting = NULL;
  double start_s;

  for (guint i = 0; i < count; i++)
    pieces[i] = g_rand_int_range (rand, 68600, 171500);
  start_s = processor_s ();
  cutting = sw_stock_cutting_new (pieces, count, kinds, G_N_ELEMENTS (kinds));
  g_print ("%u pieces: %.1f m ordered, proved least %.1f m, %.1f ms\n", count,
           (double) cutting->ordered / SW_TICKS_PER_M,
           (double) cutting->bound / SW_TICKS_PER_M, 1e3 * (processor_s () - start_s));
}

int
main (void)
{
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();

  time_sizes (catalogue, FALSE);
  time_sizes (catalogue, TRUE);
  g_print ("Cutting plans; aim: 500 pieces under 50 ms\n");
  for (guint count = 50; count <= 5000; count *= 10)
    time_cutting (count);
  g_print ("Cutting plans over two lengths and nine rolls on hand\n");
  for (guint count = 10; count <= 1000; count *= 10)
    time_stock_cutting (count);
  return 0;
}
