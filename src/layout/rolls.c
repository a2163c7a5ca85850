/* SPDX-License-Identifier: MIT */
#include "roll-plan.h"
#include <math.h>
#include <slopewright/base/count.h>

/* Whole runs of one width out of fresh rolls; a fresh roll for each piece of runs longer
 * than a roll. */
static int
count_naive_tier (const SwFaceLayout *face, const SwTier *tier, gboolean narrow,
                  double roll_m)
{
  double longest_m = 0.0;
  int runs = 0, pieces = 0, each;

  for (guint r = tier->first_run; r < tier->first_run + tier->n_runs; r++)
    if (face->runs[r].narrow == narrow)
      {
        longest_m = fmax (longest_m, face->runs[r].cut_m);
        pieces += (int) face->runs[r].n_pieces;
        runs++;
      }
  each = runs > 0 ? sw_count_whole (roll_m, longest_m) : 0;
  return each > 0 ? (runs + each - 1) / each : pieces;
}

/* What a tape and a flat rule would order, face by face and tier by tier. */
static int
count_naive (const SwLayout *layout)
{
  int rolls = 0;

  for (guint f = 0; f < layout->n_faces; f++)
    for (guint t = 0; t < layout->faces[f].n_tiers; t++)
      {
        const SwFaceLayout *face = &layout->faces[f];

        for (int narrow = 0; narrow < 2; narrow++)
          rolls += count_naive_tier (face, &face->tiers[t], narrow,
                                     sw_job_roll_length_m (layout->job, narrow));
      }
  return rolls;
}

/* A set of pieces and the rolls they come from. */
typedef struct
{
  GArray *pieces; /* each with its roll: 1.. over both widths, the narrow ones last */
  SwRollPlan *plans[2]; /* of the job's width, of the narrow one */
} Option;

/* Ticks of width times ticks of length of both widths: exact. */
static gint64
area_of (const SwLayout *layout, gint64 wide, gint64 narrow)
{
  return sw_ticks (sw_job_roll_width_m (layout->job, FALSE)) * wide
         + sw_ticks (sw_job_roll_width_m (layout->job, TRUE)) * narrow;
}

static gint64
ordered_area (const SwLayout *layout, const Option *option)
{
  return area_of (layout, option->plans[0]->ordered, option->plans[1]->ordered);
}

static void
option_free (gpointer data)
{
  Option *option = data;

  if (option == NULL)
    return;
  g_array_unref (option->pieces);
  sw_roll_plan_free (option->plans[0]);
  sw_roll_plan_free (option->plans[1]);
  g_free (option);
}

static void
number_on (SwLayout *layout, Option *option)
{
  for (guint i = 0; i < option->pieces->len; i++)
    {
      SwPiece *piece = &g_array_index (option->pieces, SwPiece, i);

      if (layout->faces[piece->face].runs[piece->run].narrow)
        piece->roll += option->plans[0]->rolls;
    }
}

/* Pieces out of rolls of @roll_m and the plan for them; NULL if it cannot be cut so. */
static Option *
work_out (SwLayout *layout, double roll_m, gboolean save, SwStatus *status)
{
  Option *option = g_new0 (Option, 1);

  option->pieces = g_array_new (FALSE, TRUE, sizeof (SwPiece));
  *status = sw_cut_pieces (layout, roll_m, save, option->pieces);
  for (int narrow = 0; narrow < 2 && *status == SW_OK; narrow++)
    {
      option->plans[narrow] = sw_roll_plan_new (layout, option->pieces, narrow);
      if (option->plans[narrow] == NULL)
        *status = SW_E_ROLL;
    }
  if (*status == SW_OK)
    number_on (layout, option);
  else
    g_clear_pointer (&option, option_free);
  return option;
}

/* Rolls get their numbers in the order in which the crew opens them. */
static void
number_rolls (SwLayout *layout, const Option *option)
{
  g_autofree int *number_of = g_new0 (int, layout->rolls + 1);
  g_autofree gint64 *used = g_new0 (gint64, layout->rolls + 1);
  int next = 1, wide = option->plans[0]->rolls;

  layout->cut_rolls = g_new0 (SwCutRoll, layout->rolls);
  for (guint i = 0; i < layout->n_pieces; i++)
    {
      SwPiece *piece = &layout->pieces[i];
      int planned = piece->roll;

      if (number_of[planned] == 0)
        {
          layout->cut_rolls[next - 1] =
              planned <= wide ? option->plans[0]->cut_rolls[planned - 1]
                              : option->plans[1]->cut_rolls[planned - wide - 1];
          number_of[planned] = next++;
        }
      piece->roll = number_of[planned];
      piece->from_m = (double) used[piece->roll] / SW_TICKS_PER_M;
      used[piece->roll] += sw_ticks (piece->length_m);
    }
  for (int r = 0; r < layout->rolls; r++)
    {
      SwCutRoll *roll = &layout->cut_rolls[r];

      roll->offcut_m =
          (double) (sw_ticks (roll->length_m) - used[r + 1]) / SW_TICKS_PER_M;
      layout->rolls_ordered += !roll->on_hand;
    }
}

/* Runs point at their pieces and carry their end laps. */
static void
settle_runs (SwLayout *layout)
{
  for (guint f = 0; f < layout->n_faces; f++)
    for (guint r = 0; r < layout->faces[f].n_runs; r++)
      layout->faces[f].runs[r].n_pieces = 0;
  for (guint i = 0; i < layout->n_pieces; i++)
    {
      SwRun *run = &layout->faces[layout->pieces[i].face].runs[layout->pieces[i].run];

      if (run->n_pieces++ == 0)
        run->first_piece = i;
    }
  for (guint f = 0; f < layout->n_faces; f++)
    for (guint r = 0; r < layout->faces[f].n_runs; r++)
      {
        SwRun *run = &layout->faces[f].runs[r];

        run->terms.end_laps =
            (run->n_pieces - 1) * layout->faces[f].tiers[run->tier].end_lap_m;
        run->cut_m += run->terms.end_laps;
      }
}

/* Where runs are joined, other joints might have saved a roll: only their length bounds all
 * plans. */
static void
bound_by_length (const SwLayout *layout, Option *option, gboolean joined)
{
  for (int narrow = 0; narrow < 2 && joined; narrow++)
    {
      SwRollPlan *plan = option->plans[narrow];
      double length_m = 0.0;
      gint64 least;

      for (guint f = 0; f < layout->n_faces; f++)
        for (guint r = 0; r < layout->faces[f].n_runs; r++)
          if (layout->faces[f].runs[r].narrow == narrow)
            length_m += layout->faces[f].runs[r].cut_m;
      least = sw_roll_least_order (layout, sw_ticks (length_m), narrow);
      if (least >= plan->bound)
        continue;
      plan->bound = least;
      plan->rolls_bound = sw_roll_least_count (layout, least, narrow);
    }
}

/* Lengths that runs can be cut out of without end: the job's own and others to order. */
static GArray *
lengths_to_cut (const SwJob *job)
{
  GArray *lengths = g_array_new (FALSE, FALSE, sizeof (double));

  g_array_append_val (lengths, job->roll_length_m);
  for (guint i = 0; i < job->stock->len; i++)
    {
      const SwStockLine *line = &g_array_index (job->stock, SwStockLine, i);

      if (line->source == SW_STOCK_ORDER && line->count == 0)
        g_array_append_val (lengths, line->length_m);
    }
  return lengths;
}

/* Least area ordered; then fewest joints. Takes both. */
static Option *
better (const SwLayout *layout, Option *a, Option *b)
{
  gint64 area_a, area_b;
  gboolean first;

  if (a == NULL || b == NULL)
    return a != NULL ? a : b;
  area_a = ordered_area (layout, a);
  area_b = ordered_area (layout, b);
  first = area_a != area_b ? area_a < area_b : a->pieces->len <= b->pieces->len;
  option_free (first ? b : a);
  return first ? a : b;
}

/* @joined: whether joints were free to be made elsewhere. */
static Option *
choose (SwLayout *layout, gboolean *joined, SwStatus *status)
{
  g_autoptr (GArray) lengths = lengths_to_cut (layout->job);
  gboolean save = layout->job->joints == SW_JOINTS_SAVE_ROLLS;
  Option *chosen = NULL;
  guint runs = 0;

  /* Joints anywhere may yet be better than those that were tried. */
  *joined = save;
  for (guint f = 0; f < layout->n_faces; f++)
    runs += layout->faces[f].n_runs;
  for (guint i = 0; i < lengths->len; i++)
    for (int saving = 0; saving <= save; saving++)
      {
        SwStatus own;
        Option *option =
            work_out (layout, g_array_index (lengths, double, i), saving, &own);

        /* The first is the one whose trouble the user can mend. */
        if (i == 0 && !saving)
          *status = own;
        if (i == 0 && !saving && own == SW_OK)
          layout->rolls_naive = count_naive (layout);
        chosen = better (layout, chosen, option);
        if (option != NULL && option == chosen && option->pieces->len > runs)
          *joined = TRUE;
        /* No run is longer than this roll: another length cuts them no other way. */
        if (!save && chosen != NULL && chosen->pieces->len == runs)
          return chosen;
      }
  return chosen;
}

static void
take_option (SwLayout *layout, Option *option)
{
  layout->rolls = option->plans[0]->rolls + option->plans[1]->rolls;
  layout->rolls_bound = option->plans[0]->rolls_bound + option->plans[1]->rolls_bound;
  for (int narrow = 0; narrow < 2; narrow++)
    {
      double m2_per_tick = sw_job_roll_width_m (layout->job, narrow) / SW_TICKS_PER_M;

      layout->ordered_m2 += (double) option->plans[narrow]->ordered * m2_per_tick;
      layout->bound_m2 += (double) option->plans[narrow]->bound * m2_per_tick;
    }
  layout->least = ordered_area (layout, option)
                  <= area_of (layout, option->plans[0]->bound, option->plans[1]->bound);
  layout->n_pieces = option->pieces->len;
  layout->pieces = (SwPiece *) g_array_free (g_steal_pointer (&option->pieces), FALSE);
  option->pieces = g_array_new (FALSE, FALSE, sizeof (SwPiece));
  settle_runs (layout);
  number_rolls (layout, option);
}

SwStatus
sw_lay_pieces (SwLayout *layout)
{
  SwStatus status = SW_OK;
  gboolean joined = FALSE;
  Option *chosen = choose (layout, &joined, &status);

  if (chosen == NULL)
    return status;
  bound_by_length (layout, chosen, joined);
  take_option (layout, chosen);
  option_free (chosen);
  return SW_OK;
}

const SwPiece *
sw_layout_run_pieces (const SwLayout *layout, const SwRun *run)
{
  return &layout->pieces[run->first_piece];
}

gboolean
sw_layout_mixes_rolls (const SwLayout *layout)
{
  return layout->job->stock->len > 0 || layout->job->surplus == SW_SURPLUS_NARROW;
}
