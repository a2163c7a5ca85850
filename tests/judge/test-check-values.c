/* SPDX-License-Identifier: MIT */
#undef G_DISABLE_ASSERT
#include "rows.h"

static void
add_rows (GArray *all, const CheckQuantity *rows, guint count)
{
  g_array_append_vals (all, rows, count);
}

/* Sources stand in each row of tests/data/check-values-judge.csv. */
static void
test_rows (void)
{
  g_autoptr (GArray) all = g_array_new (FALSE, FALSE, sizeof (CheckQuantity));

  add_rows (all, rows_soil, n_rows_soil);
  add_rows (all, rows_water, n_rows_water);
  add_rows (all, rows_lifting, n_rows_lifting);
  add_rows (all, rows_order, n_rows_order);
  check_rows_run ("judge", (const CheckQuantity *) all->data, all->len);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/judge/check-values/rows", test_rows);
  return g_test_run ();
}
