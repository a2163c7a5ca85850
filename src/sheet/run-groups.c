/* SPDX-License-Identifier: MIT */
#include "sheet.h"
#include <slopewright/base/count.h>

static gboolean
are_alike (const SwRun *one, const SwRun *other)
{
  return sw_ticks (one->cut_m) == sw_ticks (other->cut_m)
         && sw_ticks (one->terms.face) == sw_ticks (other->terms.face)
         && one->n_pieces == other->n_pieces;
}

static GArray *
group_of (const SwFaceLayout *face, GPtrArray *groups, guint run)
{
  GArray *group;

  for (guint i = 0; i < groups->len; i++)
    {
      group = g_ptr_array_index (groups, i);
      if (are_alike (&face->runs[g_array_index (group, guint, 0)], &face->runs[run]))
        return group;
    }
  group = g_array_new (FALSE, FALSE, sizeof (guint));
  g_ptr_array_add (groups, group);
  return group;
}

GPtrArray *
sw_sheet_alike_runs (const SwFaceLayout *face, guint tier)
{
  GPtrArray *groups = g_ptr_array_new_with_free_func ((GDestroyNotify) g_array_unref);
  guint end = face->tiers[tier].first_run + face->tiers[tier].n_runs;

  for (guint run = face->tiers[tier].first_run; run < end; run++)
    g_array_append_val (group_of (face, groups, run), run);
  return groups;
}

/* One past the last run of the stretch, at this step from run to run, that begins at
 * @from. */
static guint
stretch_end (const GArray *runs, guint from, guint step)
{
  guint end = from + 1;

  while (end < runs->len
         && g_array_index (runs, guint, end)
                == g_array_index (runs, guint, end - 1) + step)
    end++;
  return end;
}

/* Every second run of so many is said at once. */
#define LEAST_SECONDS 4

static const char *
label (const SwSheet *sheet, const SwFaceLayout *face, const GArray *runs, guint index)
{
  return sw_sheet_keep (sheet,
                        sw_run_label (&face->runs[g_array_index (runs, guint, index)]));
}

const char *
sw_sheet_runs (const SwSheet *sheet, const SwFaceLayout *face, const GArray *runs)
{
  g_autoptr (GString) words = g_string_new (NULL);

  for (guint from = 0, end; from < runs->len; from = end)
    {
      const char *first = label (sheet, face, runs, from);

      end = stretch_end (runs, from, 2);
      if (end >= from + LEAST_SECONDS)
        {
          g_string_append_printf (words, "%s%s", from > 0 ? ", " : "",
                                  sw_sheet_fill (sheet, "pack.seconds", "from", first,
                                                 "to", label (sheet, face, runs, end - 1),
                                                 NULL));
          continue;
        }
      end = stretch_end (runs, from, 1);
      /* Two neighbours are read faster one by one. */
      if (end == from + 2)
        end = from + 1;
      g_string_append_printf (
          words, "%s%s", from > 0 ? ", " : "",
          end == from + 1 ? first
                          : sw_sheet_fill (sheet, "pack.from-to", "from", first, "to",
                                           label (sheet, face, runs, end - 1), NULL));
    }
  return sw_sheet_format (sheet, "%s", words->str);
}

const char *
sw_sheet_infill_runs (const SwSheet *sheet, const SwFaceLayout *face, guint tier)
{
  g_autoptr (GArray) infill = g_array_new (FALSE, FALSE, sizeof (guint));
  const SwTier *of = &face->tiers[tier];

  for (guint i = of->first_run; i < of->first_run + of->n_runs; i++)
    if (face->runs[i].infill)
      g_array_append_val (infill, i);
  return sw_sheet_runs (sheet, face, infill);
}
