/* SPDX-License-Identifier: MIT */
#include "roll-plan.h"
#include "cutting-pieces.h"
#include <slopewright/base/count.h>
#include <slopewright/layout/cutting.h>
#include <slopewright/layout/stock-cutting.h>

static gboolean
is_of_width (const SwLayout *layout, const SwPiece *piece, gboolean narrow)
{
  return layout->faces[piece->face].runs[piece->run].narrow == narrow;
}

/* Indices into @pieces of those of one width; their lengths go to @ticks. */
static GArray *
pick_pieces (const SwLayout *layout, const GArray *pieces, gboolean narrow, GArray *ticks)
{
  GArray *picked = g_array_new (FALSE, FALSE, sizeof (guint));

  for (guint i = 0; i < pieces->len; i++)
    {
      const SwPiece *piece = &g_array_index (pieces, SwPiece, i);
      gint64 length = sw_ticks (piece->length_m);

      if (!is_of_width (layout, piece, narrow))
        continue;
      g_array_append_val (picked, i);
      g_array_append_val (ticks, length);
    }
  return picked;
}

static void
set_rolls (GArray *pieces, const GArray *picked, const int *roll_of)
{
  for (guint i = 0; i < picked->len; i++)
    g_array_index (pieces, SwPiece, g_array_index (picked, guint, i)).roll = roll_of[i];
}

/* The better of the cutting plan and the rolls as the pieces were cut one after the other. */
static gboolean
plan_one_length (SwRollPlan *plan, GArray *pieces, const GArray *picked,
                 const GArray *ticks, SwCutRoll roll)
{
  gint64 capacity = sw_ticks (roll.length_m);
  g_autoptr (SwCutting) cutting =
      sw_cutting_new ((const gint64 *) ticks->data, ticks->len, capacity);

  if (cutting == NULL)
    return FALSE;
  for (guint i = 0; i < picked->len; i++)
    plan->rolls =
        MAX (plan->rolls,
             g_array_index (pieces, SwPiece, g_array_index (picked, guint, i)).roll);
  if (cutting->rolls < plan->rolls)
    {
      plan->rolls = cutting->rolls;
      set_rolls (pieces, picked, cutting->roll_of);
    }
  plan->cut_rolls = g_new (SwCutRoll, MAX (plan->rolls, 1));
  for (int r = 0; r < plan->rolls; r++)
    plan->cut_rolls[r] = roll;
  plan->rolls_bound = cutting->bound;
  plan->ordered = plan->rolls * capacity;
  plan->bound = plan->rolls_bound * capacity;
  return TRUE;
}

/* The job's own roll first. */
static GArray *
stock_kinds (const SwJob *job)
{
  GArray *kinds = g_array_new (FALSE, FALSE, sizeof (SwStockKind));
  SwStockKind own = { sw_ticks (job->roll_length_m), 0, FALSE };

  g_array_append_val (kinds, own);
  for (guint i = 0; i < job->stock->len; i++)
    {
      const SwStockLine *line = &g_array_index (job->stock, SwStockLine, i);
      SwStockKind kind = { sw_ticks (line->length_m), (int) line->count,
                           line->source == SW_STOCK_ON_HAND };

      g_array_append_val (kinds, kind);
    }
  return kinds;
}

static gboolean
plan_stock (SwRollPlan *plan, const SwLayout *layout, GArray *pieces,
            const GArray *picked, const GArray *ticks)
{
  g_autoptr (GArray) kinds = stock_kinds (layout->job);
  const SwStockKind *kind = (const SwStockKind *) kinds->data;
  g_autoptr (SwStockCutting) cutting =
      sw_stock_cutting_new ((const gint64 *) ticks->data, ticks->len, kind, kinds->len);

  if (cutting == NULL)
    return FALSE;
  set_rolls (pieces, picked, cutting->roll_of);
  plan->rolls = cutting->rolls;
  plan->ordered = cutting->ordered;
  plan->bound = cutting->bound;
  plan->rolls_bound = sw_roll_least_count (layout, cutting->bound, FALSE);
  plan->cut_rolls = g_new (SwCutRoll, MAX (plan->rolls, 1));
  for (int r = 0; r < plan->rolls; r++)
    {
      const SwStockKind *opened = &kind[cutting->kind_of[r]];

      plan->cut_rolls[r] =
          (SwCutRoll){ layout->job->roll_width_m,
                       (double) opened->length / SW_TICKS_PER_M, opened->on_hand, 0.0 };
    }
  return TRUE;
}

SwRollPlan *
sw_roll_plan_new (const SwLayout *layout, GArray *pieces, gboolean narrow)
{
  const SwJob *job = layout->job;
  g_autoptr (SwRollPlan) plan = g_new0 (SwRollPlan, 1);
  g_autoptr (GArray) ticks = g_array_new (FALSE, FALSE, sizeof (gint64));
  g_autoptr (GArray) picked = pick_pieces (layout, pieces, narrow, ticks);
  SwCutRoll roll = { sw_job_roll_width_m (job, narrow),
                     sw_job_roll_length_m (job, narrow), FALSE, 0.0 };
  gboolean planned;

  if (picked->len == 0)
    return g_steal_pointer (&plan);
  if (narrow || job->stock->len == 0)
    planned = plan_one_length (plan, pieces, picked, ticks, roll);
  else
    planned = plan_stock (plan, layout, pieces, picked, ticks);
  return planned ? g_steal_pointer (&plan) : NULL;
}

void
sw_roll_plan_free (SwRollPlan *plan)
{
  if (plan == NULL)
    return;
  g_free (plan->cut_rolls);
  g_free (plan);
}

gint64
sw_roll_least_order (const SwLayout *layout, gint64 blanket, gboolean narrow)
{
  const SwJob *job = layout->job;
  gint64 own = sw_ticks (sw_job_roll_length_m (job, narrow));
  gboolean one_length = TRUE;

  for (guint i = 0; i < job->stock->len && !narrow; i++)
    {
      const SwStockLine *line = &g_array_index (job->stock, SwStockLine, i);

      if (line->source == SW_STOCK_ON_HAND)
        blanket -= line->count * sw_ticks (line->length_m);
      else
        one_length = FALSE;
    }
  return one_length ? sw_whole_rolls (blanket, own) * own : MAX (blanket, 0);
}

int
sw_roll_least_count (const SwLayout *layout, gint64 ordered, gboolean narrow)
{
  const SwJob *job = layout->job;
  gint64 longest = sw_ticks (sw_job_roll_length_m (job, narrow));

  for (guint i = 0; i < job->stock->len && !narrow; i++)
    {
      const SwStockLine *line = &g_array_index (job->stock, SwStockLine, i);

      if (line->source == SW_STOCK_ORDER)
        longest = MAX (longest, sw_ticks (line->length_m));
    }
  return (int) sw_whole_rolls (ordered, longest);
}
