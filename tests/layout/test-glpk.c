/* SPDX-License-Identifier: MIT */
#undef G_DISABLE_ASSERT
#include <glpk.h>
#include <slopewright/layout/cutting.h>
#include <slopewright/layout/stock-cutting.h>

/*
 * The cutting plan against an outside solver: GLPK's branch and cut on the set
 * covering model, one column for each way of filling a roll to which nothing
 * could be added. Source: GNU Linear Programming Kit.
 */

#define MOST_PIECES 12
#define MOST_KINDS 6
#define INSTANCES 100

static gint64
load (const gint64 *lengths, int pieces, guint subset)
{
  gint64 sum = 0;

  for (int i = 0; i < pieces; i++)
    if (subset & (1u << i))
      sum += lengths[i];
  return sum;
}

static gboolean
is_full (const gint64 *lengths, int pieces, gint64 capacity, guint subset)
{
  gint64 room = capacity - load (lengths, pieces, subset);

  if (room < 0)
    return FALSE;
  for (int i = 0; i < pieces; i++)
    if (!(subset & (1u << i)) && lengths[i] <= room)
      return FALSE;
  return TRUE;
}

/* @limit_row: counts the rolls of a kind; 0 for none. */
static void
add_filling (glp_prob *model, int pieces, guint subset, int limit_row)
{
  int column = glp_add_cols (model, 1), rows[MOST_PIECES + 2], count = 0;
  double ones[MOST_PIECES + 2];

  for (int i = 0; i < pieces; i++)
    if (subset & (1u << i))
      {
        rows[++count] = i + 1;
        ones[count] = 1.0;
      }
  if (limit_row > 0)
    {
      rows[++count] = limit_row;
      ones[count] = 1.0;
    }
  glp_set_col_kind (model, column, GLP_BV);
  glp_set_obj_coef (model, column, 1.0);
  glp_set_mat_col (model, column, count, rows, ones);
}

static glp_prob *
covering_model (const gint64 *lengths, int pieces, gint64 capacity)
{
  glp_prob *model = glp_create_prob ();

  glp_set_obj_dir (model, GLP_MIN);
  glp_add_rows (model, pieces);
  for (int i = 0; i < pieces; i++)
    glp_set_row_bnds (model, i + 1, GLP_LO, 1.0, 0.0);
  for (guint subset = 1; subset < 1u << pieces; subset++)
    if (is_full (lengths, pieces, capacity, subset))
      add_filling (model, pieces, subset, 0);
  return model;
}

/* Takes @model. */
static gint64
solve (glp_prob *model)
{
  glp_iocp options;
  gint64 needed;

  glp_init_iocp (&options);
  options.presolve = GLP_ON;
  options.msg_lev = GLP_MSG_OFF;
  g_assert_cmpint (glp_intopt (model, &options), ==, 0);
  g_assert_cmpint (glp_mip_status (model), ==, GLP_OPT);
  needed = (gint64) (glp_mip_obj_val (model) + 0.5);
  glp_delete_prob (model);
  return needed;
}

/* Run lengths between a tenth and two thirds of a roll, where rolls are shared. */
static void
test_random_instances (void)
{
  g_autoptr (GRand) rand = g_rand_new_with_seed (20261125);
  int proved = 0, better_than_first_fit = 0;

  for (int n = 0; n < INSTANCES; n++)
    {
      int pieces = g_rand_int_range (rand, 6, MOST_PIECES + 1);
      gint64 capacity = 343000, lengths[MOST_PIECES];
      g_autoptr (SwCutting) cutting = NULL;
      int first_fit;

      for (int i = 0; i < pieces; i++)
        lengths[i] = g_rand_int_range (rand, 34300, 228000);
      cutting = sw_cutting_new (lengths, (guint) pieces, capacity);
      first_fit = sw_cutting_first_fit (lengths, (guint) pieces, capacity);
      g_assert_cmpint (cutting->rolls, <=, first_fit);
      g_assert_cmpint (cutting->rolls, ==,
                       solve (covering_model (lengths, pieces, capacity)));
      g_assert_cmpint (cutting->bound, <=, cutting->rolls);
      proved += cutting->bound == cutting->rolls;
      better_than_first_fit += cutting->rolls < first_fit;
    }
  g_test_message (
      "%d of %d proved minimal by the program itself; %d better than first fit", proved,
      INSTANCES, better_than_first_fit);
}

/* A column for each full filling of each kind; rows beyond the pieces' limit the kinds. */
static glp_prob *
stock_model (const gint64 *lengths, int pieces, const SwStockKind *kinds, int n_kinds)
{
  glp_prob *model = glp_create_prob ();

  glp_set_obj_dir (model, GLP_MIN);
  glp_add_rows (model, pieces + n_kinds);
  for (int i = 0; i < pieces; i++)
    glp_set_row_bnds (model, i + 1, GLP_LO, 1.0, 0.0);
  for (int k = 0; k < n_kinds; k++)
    glp_set_row_bnds (model, pieces + k + 1, kinds[k].count > 0 ? GLP_UP : GLP_FR, 0.0,
                      kinds[k].count);
  for (int k = 0; k < n_kinds; k++)
    for (guint subset = 1; subset < 1u << pieces; subset++)
      if (is_full (lengths, pieces, kinds[k].length, subset))
        {
          add_filling (model, pieces, subset, pieces + k + 1);
          glp_set_obj_coef (model, glp_get_num_cols (model),
                            kinds[k].on_hand ? 0.0 : (double) kinds[k].length);
        }
  return model;
}

/* Two or three lengths that can be ordered, of which the second may be few, and off-cuts. */
static int
random_stock (GRand *rand, SwStockKind *kinds)
{
  int n_kinds = g_rand_int_range (rand, 3, MOST_KINDS + 1);

  kinds[0] = (SwStockKind){ 343000, 0, FALSE };
  kinds[1] = (SwStockKind){ 5000 * g_rand_int_range (rand, 25, 100),
                            g_rand_int_range (rand, 0, 3), FALSE };
  for (int k = 2; k < n_kinds; k++)
    kinds[k] = (SwStockKind){ 5000 * g_rand_int_range (rand, 8, 60),
                              g_rand_int_range (rand, 1, 3), TRUE };
  return n_kinds;
}

/* Several lengths and what lies ready: the length to order is the outside solver's. */
static void
test_random_stocks (void)
{
  g_autoptr (GRand) rand = g_rand_new_with_seed (20261126);
  int proved = 0, better_than_first_fit = 0;

  for (int n = 0; n < INSTANCES; n++)
    {
      int pieces = g_rand_int_range (rand, 6, MOST_PIECES + 1), n_kinds;
      gint64 lengths[MOST_PIECES], first_fit;
      SwStockKind kinds[MOST_KINDS];
      g_autoptr (SwStockCutting) plan = NULL;

      for (int i = 0; i < pieces; i++)
        lengths[i] = 1000 * g_rand_int_range (rand, 34, 228);
      n_kinds = random_stock (rand, kinds);
      plan = sw_stock_cutting_new (lengths, (guint) pieces, kinds, (guint) n_kinds);
      first_fit = sw_stock_first_fit (lengths, (guint) pieces, kinds, (guint) n_kinds, 0);
      g_assert_cmpint (plan->ordered, <=, first_fit);
      g_assert_cmpint (plan->ordered, ==,
                       solve (stock_model (lengths, pieces, kinds, n_kinds)));
      g_assert_cmpint (plan->bound, <=, plan->ordered);
      proved += plan->bound == plan->ordered;
      better_than_first_fit += plan->ordered < first_fit;
    }
  g_test_message ("%d of %d proved least by the program itself; %d better than first fit",
                  proved, INSTANCES, better_than_first_fit);
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, NULL);
  glp_term_out (GLP_OFF);
  g_test_add_func ("/layout/cutting/glpk-random", test_random_instances);
  g_test_add_func ("/layout/cutting/glpk-stocks", test_random_stocks);
  return g_test_run ();
}
