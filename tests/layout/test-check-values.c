/* SPDX-License-Identifier: MIT */
#undef G_DISABLE_ASSERT
#include "../../src/layout/region.h"
#include "../check-rows.h"
#include "fixture.h"
#include <slopewright/layout/cutting.h>

/* Whole numbers of the row's own unit serve as ticks. */
static gint64 *
weights (const CheckRow *row, guint *count)
{
  g_autoptr (GArray) list = check_input_list (row, "w");
  gint64 *pieces = g_new (gint64, list->len);

  for (guint i = 0; i < list->len; i++)
    pieces[i] = (gint64) g_array_index (list, double, i);
  *count = list->len;
  return pieces;
}

static gint64
capacity (const CheckRow *row)
{
  return (gint64) check_input (row, "c");
}

static double
bound_l1 (const CheckRow *row)
{
  guint count;
  g_autofree gint64 *pieces = weights (row, &count);

  return sw_cutting_bound_l1 (pieces, count, capacity (row));
}

static double
bound_l2 (const CheckRow *row)
{
  guint count;
  g_autofree gint64 *pieces = weights (row, &count);

  return sw_cutting_bound_l2 (pieces, count, capacity (row));
}

static double
first_fit (const CheckRow *row)
{
  guint count;
  g_autofree gint64 *pieces = weights (row, &count);

  return sw_cutting_first_fit (pieces, count, capacity (row));
}

/* Every published optimum is reached, and the bound never passes it. */
static double
optimum (const CheckRow *row)
{
  guint count;
  g_autofree gint64 *pieces = weights (row, &count);
  g_autoptr (SwCutting) cutting = sw_cutting_new (pieces, count, capacity (row));

  g_assert_nonnull (cutting);
  g_assert_cmpint (sw_cutting_bound_l2 (pieces, count, capacity (row)), <=,
                   cutting->bound);
  g_assert_cmpfloat (cutting->bound, <=, row->expected);
  g_assert_cmpint (cutting->rolls, <=,
                   sw_cutting_first_fit (pieces, count, capacity (row)));
  g_test_message ("%s: bound %d, plan %d%s", row->id, cutting->bound, cutting->rolls,
                  cutting->bound == cutting->rolls ? ", proved" : "");
  return cutting->rolls;
}

static double
waste_share (const CheckRow *row)
{
  guint count;
  g_autofree gint64 *pieces = weights (row, &count);
  g_autoptr (SwCutting) cutting = sw_cutting_new (pieces, count, capacity (row));
  gint64 sum = 0;

  for (guint i = 0; i < count; i++)
    sum += pieces[i];
  return 1.0 - (double) sum / (double) (cutting->rolls * capacity (row));
}

static SwRegion *
clipped (const CheckRow *row)
{
  g_autoptr (GArray) p = check_input_list (row, "p");
  g_autoptr (GArray) box = check_input_list (row, "box");
  const double *b = (const double *) box->data;
  g_autoptr (SwRegion) region = NULL;

  g_assert_cmpuint (box->len, ==, 4);
  g_assert_cmpint (sw_region_new ((const SwPoint *) p->data, p->len / 2, &region), ==,
                   SW_OK);
  return sw_region_clip_box (region, (SwBox){ b[0], b[1], b[2], b[3] });
}

static double
clip_area (const CheckRow *row)
{
  g_autoptr (SwRegion) region = clipped (row);

  return sw_region_area_m2 (region);
}

static double
clip_parts (const CheckRow *row)
{
  g_autoptr (SwRegion) region = clipped (row);

  return sw_region_rings (region);
}

static double
strips_across (const CheckRow *row)
{
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();
  g_autoptr (SwJob) job = fixture_job ();
  g_autoptr (SwLayout) layout = NULL;

  fixture_add_plane (job, "A", 2.0, 5.0, check_input (row, "width"));
  job->roll_width_m = check_input (row, "roll");
  sw_job_set_override (job, SW_PRACTICE_SIDE_LAP_M, check_input (row, "lap"), "");
  layout = fixture_lay (job, catalogue);
  return layout->faces[0].tiers[0].strips;
}

static void
test_check_values (void)
{
  static const CheckQuantity quantities[] = {
    { "continuous bound L1", bound_l1 },   { "Martello-Toth L2", bound_l2 },
    { "first-fit decreasing", first_fit }, { "optimum", optimum },
    { "waste share", waste_share },        { "clip area", clip_area },
    { "clip parts", clip_parts },          { "strips across", strips_across },
  };

  check_rows_run ("layout", quantities, G_N_ELEMENTS (quantities));
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/layout/check-values", test_check_values);
  return g_test_run ();
}
