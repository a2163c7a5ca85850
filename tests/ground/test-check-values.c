/* SPDX-License-Identifier: MIT */
#undef G_DISABLE_ASSERT
#include "../check-rows.h"
#include <slopewright/ground/ground.h>

/* A section from crest to toe: measured over plan, and as distance of the toe break. */
static double
developed_length (const CheckRow *row)
{
  g_autoptr (GArray) p = check_input_list (row, "p");
  const SwPoint *points = (const SwPoint *) p->data;
  guint count = p->len / 2;
  SwStation station = { 0.0, points };
  g_autoptr (SwGround) ground = NULL;
  double length_m;

  g_assert_cmpint (sw_ground_new_ruled (&station, 1, count, 0, count - 1, &ground), ==,
                   SW_OK);
  length_m = sw_ground_length_m (ground, (SwPoint){ 5.0, points[0].x_m },
                                 (SwPoint){ 5.0, points[count - 1].x_m });
  g_assert_cmpfloat_with_epsilon (sw_ground_break_down_m (ground, count - 1, 5.0),
                                  length_m, 1e-9);
  return length_m;
}

static void
test_check_values (void)
{
  static const CheckQuantity quantities[] = { { "developed length", developed_length } };

  check_rows_run ("ground", quantities, G_N_ELEMENTS (quantities));
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/ground/check-values", test_check_values);
  return g_test_run ();
}
