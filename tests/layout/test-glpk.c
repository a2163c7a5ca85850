/* SPDX-License-Identifier: MIT */
#undef G_DISABLE_ASSERT
#include <glpk.h>
#include <slopewright/layout/cutting.h>

/*
 * The cutting plan against an outside solver: GLPK's branch and cut on the set
 * covering model, one column for each way of filling a roll to which nothing
 * could be added. Source: GNU Linear Programming Kit.
 */

#define MOST_PIECES 12
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

static void
add_filling (glp_prob *model, int pieces, guint subset)
{
  int column = glp_add_cols (model, 1), rows[MOST_PIECES + 1], count = 0;
  double ones[MOST_PIECES + 1];

  for (int i = 0; i < pieces; i++)
    if (subset & (1u << i))
      {
        rows[++count] = i + 1;
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
      add_filling (model, pieces, subset);
  return model;
}

static int
solve_outside (const gint64 *lengths, int pieces, gint64 capacity)
{
  glp_prob *model = covering_model (lengths, pieces, capacity);
  glp_iocp options;
  int needed;

  glp_init_iocp (&options);
  options.presolve = GLP_ON;
  options.msg_lev = GLP_MSG_OFF;
  g_assert_cmpint (glp_intopt (model, &options), ==, 0);
  g_assert_cmpint (glp_mip_status (model), ==, GLP_OPT);
  needed = (int) (glp_mip_obj_val (model) + 0.5);
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
      g_assert_cmpint (cutting->rolls, ==, solve_outside (lengths, pieces, capacity));
      g_assert_cmpint (cutting->bound, <=, cutting->rolls);
      proved += cutting->bound == cutting->rolls;
      better_than_first_fit += cutting->rolls < first_fit;
    }
  g_test_message (
      "%d of %d proved minimal by the program itself; %d better than first fit", proved,
      INSTANCES, better_than_first_fit);
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, NULL);
  glp_term_out (GLP_OFF);
  g_test_add_func ("/layout/cutting/glpk-random", test_random_instances);
  return g_test_run ();
}
