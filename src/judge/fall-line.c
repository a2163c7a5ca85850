/* SPDX-License-Identifier: MIT */
#include <math.h>
#include <slopewright/judge/face-loss.h>

/* The fall line along which the face is longest. */
static double
longest_along_m (const SwFaceLayout *face)
{
  const SwTier *longest = &face->tiers[0];

  for (guint i = 1; i < face->n_tiers; i++)
    if (face->tiers[i].length_m > longest->length_m)
      longest = &face->tiers[i];
  return longest->longest_at_m;
}

/* What no tier covers although it lies between crest and toe is bench, by the practice's
 * rule, however the benches of this face are laid. */
static void
mark_benches (SwFallLine *line, const SwLayout *layout, const SwFaceLayout *face)
{
  g_autoptr (GArray) reaches = g_array_new (FALSE, FALSE, sizeof (SwReach));
  const SwSourced *values = layout->practice->values;

  if (sw_ground_tiers (face->ground, values[SW_PRACTICE_BENCH_HV].value,
                       values[SW_PRACTICE_BENCH_MIN_M].value, reaches)
      != SW_OK)
    return;
  for (guint i = 0; i < line->count; i++)
    {
      guint from = face->face->crest + i;

      line->segments[i].bench = TRUE;
      for (guint r = 0; r < reaches->len; r++)
        {
          const SwReach *reach = &g_array_index (reaches, SwReach, r);

          if (from >= reach->from_break && from < reach->to_break)
            line->segments[i].bench = FALSE;
        }
    }
}

/* The drain runs along the foot of the slope above where a bench falls back, else along
 * the bench's outer edge. */
static void
mark_drains (SwFallLine *line, SwAnswer drained)
{
  for (guint i = 0; i < line->count; i++)
    {
      SwFallSegment *here = &line->segments[i];
      gboolean ends = i + 1 == line->count || !line->segments[i + 1].bench;
      gboolean falls_back = here->segment.angle_rad < 0.0;

      here->segment.drained =
          drained == SW_ANSWER_YES && here->bench && (ends || falls_back);
      if (falls_back && !here->segment.drained)
        line->ponds = TRUE;
    }
}

static void
measure_from_where_runoff_begins (SwFallLine *line)
{
  double from_m = line->run_on_m;

  for (guint i = 0; i < line->count; i++)
    {
      SwFallSegment *here = &line->segments[i];

      if (here->segment.angle_rad < 0.0)
        from_m = 0.0;
      here->from_m = from_m;
      here->to_m = from_m + here->segment.length_m;
      from_m = here->segment.drained ? 0.0 : here->to_m;
      line->length_m += here->segment.length_m;
    }
}

void
sw_fall_line_init (SwFallLine *line, const SwLayout *layout, guint index)
{
  const SwFaceLayout *face = &layout->faces[index];
  guint crest = face->face->crest, count = face->face->toe - crest;

  *line = (SwFallLine){ .along_m = longest_along_m (face),
                        .run_on_m = layout->job->numbers.values[SW_NUMBER_RUN_ON_M] };
  line->segments = g_new0 (SwFallSegment, count);
  line->count = count;
  for (guint i = 0; i < count; i++)
    {
      double x0 = sw_ground_break_out_m (face->ground, crest + i, line->along_m);
      double x1 = sw_ground_break_out_m (face->ground, crest + i + 1, line->along_m);
      double y0 = sw_ground_up_m (face->ground, (SwPoint){ line->along_m, x0 });
      double y1 = sw_ground_up_m (face->ground, (SwPoint){ line->along_m, x1 });

      line->segments[i].segment =
          (SwLsSegment){ .length_m = x1 - x0, .angle_rad = atan2 (y0 - y1, x1 - x0) };
    }
  mark_benches (line, layout, face);
  mark_drains (line, layout->job->numbers.bench_drained);
  measure_from_where_runoff_begins (line);
}

void
sw_fall_line_clear (SwFallLine *line)
{
  g_clear_pointer (&line->segments, g_free);
  line->count = 0;
}
