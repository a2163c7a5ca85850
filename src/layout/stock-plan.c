/* SPDX-License-Identifier: MIT */
#include "stock-plan.h"
#include "cutting-knapsack.h"
#include <slopewright/layout/cutting.h>
#include <string.h>

SwStockPlan *
sw_stock_plan_new (const SwStockTask *task)
{
  SwStockPlan *plan = g_new0 (SwStockPlan, 1);

  plan->task = task;
  plan->rolls = g_array_new (FALSE, TRUE, sizeof (SwStockRoll));
  plan->roll_of = g_new (int, MAX (task->count, 1));
  plan->opened = g_new0 (int, MAX (task->n_kinds, 1));
  for (guint i = 0; i < task->count; i++)
    plan->roll_of[i] = -1;
  return plan;
}

SwStockPlan *
sw_stock_plan_copy (const SwStockPlan *plan)
{
  SwStockPlan *copy = sw_stock_plan_new (plan->task);

  if (plan->rolls->len > 0)
    g_array_append_vals (copy->rolls, plan->rolls->data, plan->rolls->len);
  memcpy (copy->roll_of, plan->roll_of, plan->task->count * sizeof (int));
  memcpy (copy->opened, plan->opened, plan->task->n_kinds * sizeof (int));
  return copy;
}

void
sw_stock_plan_free (SwStockPlan *plan)
{
  if (plan == NULL)
    return;
  g_array_unref (plan->rolls);
  g_free (plan->roll_of);
  g_free (plan->opened);
  g_free (plan);
}

static SwStockRoll *
roll_at (const SwStockPlan *plan, int roll)
{
  return &g_array_index (plan->rolls, SwStockRoll, roll);
}

gint64
sw_stock_plan_ordered (const SwStockPlan *plan)
{
  gint64 ordered = 0;

  for (guint k = 0; k < plan->task->n_kinds; k++)
    ordered += plan->opened[k] * sw_stock_price (&plan->task->kinds[k]);
  return ordered;
}

int
sw_stock_plan_ordered_rolls (const SwStockPlan *plan)
{
  int rolls = 0;

  for (guint k = 0; k < plan->task->n_kinds; k++)
    if (!plan->task->kinds[k].on_hand)
      rolls += plan->opened[k];
  return rolls;
}

gboolean
sw_stock_plan_better (const SwStockPlan *a, const SwStockPlan *b)
{
  gint64 ordered_a = sw_stock_plan_ordered (a), ordered_b = sw_stock_plan_ordered (b);
  int rolls_a = sw_stock_plan_ordered_rolls (a);
  int rolls_b = sw_stock_plan_ordered_rolls (b);

  if (ordered_a != ordered_b)
    return ordered_a < ordered_b;
  return rolls_a != rolls_b ? rolls_a < rolls_b : a->rolls->len < b->rolls->len;
}

gboolean
sw_stock_plan_has (const SwStockPlan *plan, guint kind)
{
  const SwStockKind *stock = &plan->task->kinds[kind];

  return stock->count == 0 || plan->opened[kind] < stock->count;
}

int
sw_stock_plan_open (SwStockPlan *plan, guint kind)
{
  SwStockRoll roll = { kind, plan->task->kinds[kind].length };

  plan->opened[kind]++;
  g_array_append_val (plan->rolls, roll);
  return (int) plan->rolls->len - 1;
}

static void
put (SwStockPlan *plan, guint piece, int roll)
{
  plan->roll_of[piece] = roll;
  roll_at (plan, roll)->left -= plan->task->lengths[piece];
}

void
sw_stock_plan_fill (SwStockPlan *plan, guint kind, const int *row)
{
  const SwStockTask *task = plan->task;
  int roll = sw_stock_plan_open (plan, kind);

  for (guint k = 0; k < task->n_piece_kinds; k++)
    for (guint i = task->first[k], taken = 0; taken < (guint) row[k]; i++)
      if (plan->roll_of[i] < 0)
        {
          put (plan, i, roll);
          taken++;
        }
}

SwStockPlan *
sw_stock_plan_of (const SwStockTask *task, const SwFillings *fillings)
{
  SwStockPlan *plan = sw_stock_plan_new (task);

  for (guint r = 0; r < fillings->rolls->len; r++)
    sw_stock_plan_fill (plan, g_array_index (fillings->rolls, guint, r),
                        &g_array_index (fillings->counts, int, r * task->n_piece_kinds));
  return plan;
}

/* A roll on hand that takes the piece; -1 if none is left. */
static int
kind_on_hand (const SwStockPlan *plan, gint64 length, gboolean longest)
{
  const SwStockKind *kinds = plan->task->kinds;
  int best = -1;

  for (guint k = 0; k < plan->task->n_kinds; k++)
    if (kinds[k].on_hand && kinds[k].length >= length && sw_stock_plan_has (plan, k)
        && (best < 0
            || (longest ? kinds[k].length > kinds[best].length
                        : kinds[k].length < kinds[best].length)))
      best = (int) k;
  return best;
}

/* @open if the piece fits into it, else the shortest that may be ordered; -1 if none. */
static int
kind_to_order (const SwStockPlan *plan, gint64 length, guint open)
{
  const SwStockKind *kinds = plan->task->kinds;
  int best = -1;

  if (kinds[open].length >= length && sw_stock_plan_has (plan, open))
    return (int) open;
  for (guint k = 0; k < plan->task->n_kinds; k++)
    if (!kinds[k].on_hand && kinds[k].length >= length && sw_stock_plan_has (plan, k)
        && (best < 0 || kinds[k].length < kinds[best].length))
      best = (int) k;
  return best;
}

static int
roll_with_room (const SwStockPlan *plan, gint64 length, gboolean fullest, int except)
{
  int chosen = -1;

  for (int r = 0; r < (int) plan->rolls->len && (chosen < 0 || fullest); r++)
    if (r != except && roll_at (plan, r)->left >= length
        && (chosen < 0 || roll_at (plan, r)->left < roll_at (plan, chosen)->left))
      chosen = r;
  return chosen;
}

gboolean
sw_stock_plan_fit (SwStockPlan *plan, guint open, gboolean fullest, gboolean longest)
{
  for (guint i = 0; i < plan->task->count; i++)
    {
      gint64 length = plan->task->lengths[i];
      int roll, kind;

      if (plan->roll_of[i] >= 0)
        continue;
      roll = roll_with_room (plan, length, fullest, -1);
      if (roll < 0)
        {
          kind = kind_on_hand (plan, length, longest);
          if (kind < 0)
            kind = kind_to_order (plan, length, open);
          if (kind < 0)
            return FALSE;
          roll = sw_stock_plan_open (plan, (guint) kind);
        }
      put (plan, i, roll);
    }
  return TRUE;
}

SwPieceKind *
sw_stock_plan_uncut (const SwStockPlan *plan)
{
  const SwStockTask *task = plan->task;
  SwPieceKind *left = g_memdup2 (task->piece_kinds, task->n_piece_kinds * sizeof *left);

  for (guint k = 0; k < task->n_piece_kinds; k++)
    for (guint i = 0; i < (guint) task->piece_kinds[k].count; i++)
      if (plan->roll_of[task->first[k] + i] >= 0)
        left[k].count--;
  return left;
}

/* Every roll on hand as full as what is left allows, one after the other. */
static void
fill_on_hand (SwStockPlan *plan, gboolean longest)
{
  int kind;
  gint64 shortest = plan->task->lengths[plan->task->count - 1];
  g_autofree SwPieceKind *left = sw_stock_plan_uncut (plan);
  g_autoptr (SwKnapsack) sack = sw_knapsack_new (left, plan->task->n_piece_kinds);

  for (guint k = 0; k < plan->task->n_piece_kinds; k++)
    sack->price[k] = left[k].length;
  while ((kind = kind_on_hand (plan, shortest, longest)) >= 0)
    {
      sw_knapsack_fill (sack, plan->task->kinds[kind].length);
      if (sack->best_price == 0)
        return;
      sw_stock_plan_fill (plan, (guint) kind, sack->best);
      for (guint k = 0; k < plan->task->n_piece_kinds; k++)
        left[k].count -= sack->best[k];
    }
}

/* What is left, planned as for rolls of one length. */
static gboolean
fit_rest (SwStockPlan *plan, guint open)
{
  const SwStockTask *task = plan->task;
  g_autofree gint64 *lengths = g_new (gint64, MAX (task->count, 1));
  g_autofree guint *which = g_new (guint, MAX (task->count, 1));
  g_autoptr (SwCutting) cutting = NULL;
  int before = (int) plan->rolls->len;
  guint n = 0;

  for (guint i = 0; i < task->count; i++)
    if (plan->roll_of[i] < 0)
      {
        lengths[n] = task->lengths[i];
        which[n++] = i;
      }
  cutting = sw_cutting_new (lengths, n, task->kinds[open].length);
  if (cutting == NULL)
    return FALSE;
  for (int r = 0; r < cutting->rolls; r++)
    sw_stock_plan_open (plan, open);
  for (guint i = 0; i < n; i++)
    put (plan, which[i], before + cutting->roll_of[i] - 1);
  return TRUE;
}

gboolean
sw_stock_plan_fit_filled (SwStockPlan *plan, guint open, gboolean longest)
{
  fill_on_hand (plan, longest);
  return plan->task->kinds[open].count == 0 && fit_rest (plan, open);
}

/* The cheapest kind still to be had that holds what the roll holds. */
static guint
cheapest_for (const SwStockPlan *plan, const SwStockRoll *roll)
{
  const SwStockKind *kinds = plan->task->kinds;
  gint64 load = kinds[roll->kind].length - roll->left;
  guint best = roll->kind;

  for (guint k = 0; k < plan->task->n_kinds; k++)
    if (kinds[k].length >= load && sw_stock_plan_has (plan, k)
        && sw_stock_price (&kinds[k]) < sw_stock_price (&kinds[best]))
      best = k;
  return best;
}

static void
shorten (SwStockPlan *plan)
{
  for (int r = 0; r < (int) plan->rolls->len; r++)
    {
      SwStockRoll *roll = roll_at (plan, r);
      const SwStockKind *kinds = plan->task->kinds;
      guint kind;

      if (kinds[roll->kind].on_hand)
        continue;
      kind = cheapest_for (plan, roll);
      plan->opened[roll->kind]--;
      plan->opened[kind]++;
      roll->left -= kinds[roll->kind].length - kinds[kind].length;
      roll->kind = kind;
    }
}

static void
take_away (SwStockPlan *plan, int roll)
{
  plan->opened[roll_at (plan, roll)->kind]--;
  g_array_remove_index (plan->rolls, (guint) roll);
  for (guint i = 0; i < plan->task->count; i++)
    if (plan->roll_of[i] > roll)
      plan->roll_of[i]--;
}

/* Put all pieces of a roll into others; on failure all stay. */
static gboolean
empty (SwStockPlan *plan, int roll)
{
  g_autofree int *moved = g_memdup2 (plan->roll_of, plan->task->count * sizeof (int));
  g_autoptr (GArray) rolls = g_array_copy (plan->rolls);

  for (guint i = 0; i < plan->task->count; i++)
    if (plan->roll_of[i] == roll)
      {
        int other = roll_with_room (plan, plan->task->lengths[i], TRUE, roll);

        if (other < 0)
          {
            memcpy (plan->roll_of, moved, plan->task->count * sizeof (int));
            memcpy (plan->rolls->data, rolls->data, rolls->len * sizeof (SwStockRoll));
            return FALSE;
          }
        put (plan, i, other);
      }
  take_away (plan, roll);
  return TRUE;
}

void
sw_stock_plan_tidy (SwStockPlan *plan)
{
  shorten (plan);
  for (int r = (int) plan->rolls->len - 1; r >= 0; r--)
    {
      const SwStockRoll *roll = roll_at (plan, r);
      gint64 room = 0;

      for (guint other = 0; other < plan->rolls->len; other++)
        room += roll_at (plan, (int) other)->left;
      if (plan->task->kinds[roll->kind].length - roll->left <= room - roll->left)
        empty (plan, r);
    }
}
