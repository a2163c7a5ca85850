/* SPDX-License-Identifier: MIT */
#undef G_DISABLE_ASSERT
#include <slopewright/layout/cutting.h>
#include <slopewright/layout/stock-cutting.h>

#define MOST_KINDS 5

typedef struct
{
  SwStockKind kinds[MOST_KINDS];
  guint n_kinds;
} Stock;

/* One or two lengths to order, the first without end, and up to three off-cuts. */
static Stock
random_stock (GRand *rand, gint32 longest)
{
  Stock stock = { .n_kinds = (guint) g_rand_int_range (rand, 1, MOST_KINDS + 1) };

  stock.kinds[0] = (SwStockKind){ longest, 0, FALSE };
  for (guint k = 1; k < stock.n_kinds; k++)
    {
      gboolean on_hand = g_rand_int_range (rand, 0, 3) > 0;

      stock.kinds[k].length = g_rand_int_range (rand, longest / 5, longest * 3 / 2);
      stock.kinds[k].on_hand = on_hand;
      stock.kinds[k].count = g_rand_int_range (rand, on_hand ? 1 : 0, 4);
    }
  return stock;
}

static gint64 *
random_pieces (GRand *rand, guint count, gint32 least, gint32 most)
{
  gint64 *pieces = g_new (gint64, count);

  for (guint i = 0; i < count; i++)
    pieces[i] = g_rand_int_range (rand, least, most + 1);
  return pieces;
}

/* Every piece cut once, no roll overfull, none empty, none more often than there are, and
 * what is said to be ordered is what was opened. */
static void
check_plan (const SwStockCutting *plan, const gint64 *pieces, guint count,
            const Stock *stock)
{
  g_autofree gint64 *used = g_new0 (gint64, plan->rolls + 1);
  int opened[MOST_KINDS] = { 0 }, rolls = 0;
  gint64 ordered = 0;

  for (guint i = 0; i < count; i++)
    {
      g_assert_cmpint (plan->roll_of[i], >=, 1);
      g_assert_cmpint (plan->roll_of[i], <=, plan->rolls);
      used[plan->roll_of[i]] += pieces[i];
    }
  for (int r = 0; r < plan->rolls; r++)
    {
      const SwStockKind *kind = &stock->kinds[plan->kind_of[r]];

      g_assert_cmpint (used[r + 1], >, 0);
      g_assert_cmpint (used[r + 1], <=, kind->length);
      opened[plan->kind_of[r]]++;
      ordered += kind->on_hand ? 0 : kind->length;
      rolls += !kind->on_hand;
    }
  for (guint k = 0; k < stock->n_kinds; k++)
    if (stock->kinds[k].count > 0)
      g_assert_cmpint (opened[k], <=, stock->kinds[k].count);
  g_assert_cmpint (plan->ordered, ==, ordered);
  g_assert_cmpint (plan->ordered_rolls, ==, rolls);
  g_assert_cmpint (plan->bound, <=, plan->ordered);
}

static void
check_first_fit (const SwStockCutting *plan, const gint64 *pieces, guint count,
                 const Stock *stock)
{
  for (guint k = 0; k < stock->n_kinds; k++)
    if (!stock->kinds[k].on_hand)
      {
        gint64 first_fit =
            sw_stock_first_fit (pieces, count, stock->kinds, stock->n_kinds, k);

        if (first_fit >= 0)
          g_assert_cmpint (plan->ordered, <=, first_fit);
      }
}

static void
test_properties (void)
{
  g_autoptr (GRand) rand = g_rand_new_with_seed (31);
  int proved = 0;

  for (int n = 0; n < 200; n++)
    {
      Stock stock = random_stock (rand, 343000);
      guint count = (guint) g_rand_int_range (rand, 1, 60);
      g_autofree gint64 *pieces = random_pieces (rand, count, 20000, 343000);
      g_autoptr (SwStockCutting) plan =
          sw_stock_cutting_new (pieces, count, stock.kinds, stock.n_kinds);

      g_assert_nonnull (plan);
      check_plan (plan, pieces, count, &stock);
      check_first_fit (plan, pieces, count, &stock);
      proved += plan->bound == plan->ordered;
    }
  g_test_message ("%d of 200 proved least", proved);
}

/* Every way of cutting: length to order, then rolls to order. */
typedef struct
{
  const gint64 *pieces;
  guint count;
  const Stock *stock;
  gint64 room[16];
  int opened[MOST_KINDS];
  gint64 best;
  int best_rolls;
} Trial;

static void
try_all (Trial *trial, guint piece, int rolls, gint64 ordered, int ordered_rolls)
{
  if (ordered > trial->best
      || (ordered == trial->best && ordered_rolls >= trial->best_rolls))
    return;
  if (piece == trial->count)
    {
      trial->best = ordered;
      trial->best_rolls = ordered_rolls;
      return;
    }
  for (int r = 0; r < rolls; r++)
    if (trial->room[r] >= trial->pieces[piece])
      {
        trial->room[r] -= trial->pieces[piece];
        try_all (trial, piece + 1, rolls, ordered, ordered_rolls);
        trial->room[r] += trial->pieces[piece];
      }
  for (guint k = 0; k < trial->stock->n_kinds; k++)
    {
      const SwStockKind *kind = &trial->stock->kinds[k];

      if (kind->length < trial->pieces[piece]
          || (kind->count > 0 && trial->opened[k] == kind->count))
        continue;
      trial->opened[k]++;
      trial->room[rolls] = kind->length - trial->pieces[piece];
      try_all (trial, piece + 1, rolls + 1, ordered + (kind->on_hand ? 0 : kind->length),
               ordered_rolls + !kind->on_hand);
      trial->opened[k]--;
    }
}

static void
test_exact (void)
{
  g_autoptr (GRand) rand = g_rand_new_with_seed (32);

  for (int n = 0; n < 1000; n++)
    {
      Stock stock = random_stock (rand, 100);
      guint count = (guint) g_rand_int_range (rand, 1, 8);
      g_autofree gint64 *pieces = random_pieces (rand, count, 10, 90);
      Trial trial = { pieces, count, &stock, { 0 }, { 0 }, G_MAXINT64, G_MAXINT };
      g_autoptr (SwStockCutting) plan =
          sw_stock_cutting_new (pieces, count, stock.kinds, stock.n_kinds);

      try_all (&trial, 0, 0, 0, 0);
      check_plan (plan, pieces, count, &stock);
      g_assert_cmpint (plan->ordered, ==, trial.best);
      g_assert_cmpint (plan->bound, ==, trial.best);
      g_assert_cmpint (plan->ordered_rolls, ==, trial.best_rolls);
    }
}

/* Nothing but one length without end: as many rolls as the plan for one length. */
static void
test_one_length (void)
{
  g_autoptr (GRand) rand = g_rand_new_with_seed (33);

  for (int n = 0; n < 60; n++)
    {
      Stock stock = { { { 343000, 0, FALSE } }, 1 };
      guint count = (guint) g_rand_int_range (rand, 5, 80);
      g_autofree gint64 *pieces = random_pieces (rand, count, 30000, 250000);
      g_autoptr (SwStockCutting) plan =
          sw_stock_cutting_new (pieces, count, stock.kinds, 1);
      g_autoptr (SwCutting) single = sw_cutting_new (pieces, count, 343000);

      g_assert_cmpint (plan->rolls, <=, single->rolls);
      g_assert_cmpint (plan->bound, <=, single->rolls * (gint64) 343000);
    }
}

/*
 * By hand. Seven pieces of 10 m: three to a roll of 34.3 m, so three rolls, 102.9 m. With a
 * rest of 10.5 m on hand two rolls and the rest hold them. A rest of 9.9 m is of no use and
 * stays shut. Rolls of 50 m hold five: one of each is 84.3 m, less than 100 or 102.9.
 * Where only one of 25 m can be had, it takes two: 34.3 + 34.3 + (one piece) would be
 * 102.9, 34.3 + 34.3 + 25 is 93.6.
 */
static void
test_by_hand (void)
{
  static const gint64 pieces[] = {
    100000, 100000, 100000, 100000, 100000, 100000, 100000
  };
  static const Stock stocks[] = {
    { { { 343000, 0, FALSE }, { 105000, 1, TRUE } }, 2 },
    { { { 343000, 0, FALSE }, { 99000, 4, TRUE } }, 2 },
    { { { 343000, 0, FALSE }, { 500000, 0, FALSE } }, 2 },
    { { { 343000, 0, FALSE }, { 250000, 1, FALSE } }, 2 },
  };
  static const gint64 want[] = { 686000, 1029000, 843000, 936000 };
  static const int rolls[] = { 3, 3, 2, 3 };

  for (guint i = 0; i < G_N_ELEMENTS (stocks); i++)
    {
      g_autoptr (SwStockCutting) plan =
          sw_stock_cutting_new (pieces, 7, stocks[i].kinds, stocks[i].n_kinds);

      check_plan (plan, pieces, 7, &stocks[i]);
      g_assert_cmpint (plan->ordered, ==, want[i]);
      g_assert_cmpint (plan->bound, ==, want[i]);
      g_assert_cmpint (plan->rolls, ==, rolls[i]);
    }
}

/* What is on hand is not opened where it saves nothing. */
static void
test_left_shut (void)
{
  static const gint64 pieces[] = { 200000, 100000 };
  const Stock stock = { { { 343000, 0, FALSE }, { 110000, 3, TRUE } }, 2 };
  g_autoptr (SwStockCutting) plan =
      sw_stock_cutting_new (pieces, 2, stock.kinds, stock.n_kinds);

  g_assert_cmpint (plan->rolls, ==, 1);
  g_assert_cmpuint (plan->kind_of[0], ==, 0);
}

static void
test_edges (void)
{
  static const gint64 too_long[] = { 343001 }, nothing[] = { 0 }, one[] = { 343000 };
  const Stock stock = { { { 343000, 0, FALSE }, { 500000, 1, TRUE } }, 2 };
  g_autoptr (SwStockCutting) plan = sw_stock_cutting_new (one, 1, stock.kinds, 2);
  g_autoptr (SwStockCutting) none = sw_stock_cutting_new (one, 0, stock.kinds, 2);

  g_assert_null (sw_stock_cutting_new (too_long, 1, stock.kinds, 2));
  g_assert_null (sw_stock_cutting_new (nothing, 1, stock.kinds, 2));
  g_assert_cmpint (plan->ordered, ==, 0);
  g_assert_cmpint (plan->rolls, ==, 1);
  g_assert_cmpint (none->rolls, ==, 0);
  g_assert_cmpint (none->ordered, ==, 0);
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/layout/stock-cutting/properties", test_properties);
  g_test_add_func ("/layout/stock-cutting/exact", test_exact);
  g_test_add_func ("/layout/stock-cutting/one-length", test_one_length);
  g_test_add_func ("/layout/stock-cutting/by-hand", test_by_hand);
  g_test_add_func ("/layout/stock-cutting/left-shut", test_left_shut);
  g_test_add_func ("/layout/stock-cutting/edges", test_edges);
  return g_test_run ();
}
