/* SPDX-License-Identifier: MIT */
#include "report-words.h"
#include <slopewright/judge/spread.h>
#include <slopewright/layout/along.h>

static void
add_row (GString *report, const SwTexts *texts, const char *id, const char *down,
         const char *along)
{
  g_string_append_printf (report, "  %-34s %14s %14s\n", sw_texts_get (texts, id), down,
                          along);
}

static void
add_count (GString *report, const SwTexts *texts, const char *id, int down, int along,
           SwNumberStyle style)
{
  g_autofree char *a = sw_report_quantity (down, SW_UNIT_COUNT, style);
  g_autofree char *b = sw_report_quantity (along, SW_UNIT_COUNT, style);

  add_row (report, texts, id, a, b);
}

static void
add_ways (GString *report, const SwResult *result, const SwTexts *texts,
          SwNumberStyle style)
{
  const SwTally *tally = result->tally;
  SwAlongPlan plan;
  g_autofree char *down_m = NULL;
  g_autofree char *along_m = NULL;

  if (sw_along_new (result->layout, &plan) != SW_OK)
    return;
  down_m = sw_report_quantity (tally->piece_length_m, SW_UNIT_M, style);
  along_m = sw_report_quantity (plan.length_m, SW_UNIT_M, style);
  g_string_append_printf (report, "%s\n", sw_texts_get (texts, "compare.ways"));
  add_row (report, texts, "compare.way", sw_texts_get (texts, "compare.down"),
           sw_texts_get (texts, "compare.along"));
  add_count (report, texts, "compare.strips", tally->runs, plan.courses, style);
  add_count (report, texts, "compare.joints", tally->joints, plan.joints, style);
  add_row (report, texts, "compare.length", down_m, along_m);
  add_count (report, texts, "compare.rolls", tally->rolls, plan.rolls, style);
  g_string_append_printf (report, "  %s\n", sw_texts_get (texts, "compare.along-rule"));
}

/* The same job with every round face laid so; NULL where none is round. */
static SwLayout *
laid_as (const SwResult *result, SwFan fan)
{
  g_autoptr (SwJob) job = sw_job_copy (result->job);
  SwLayout *layout = NULL;
  gboolean round = FALSE;

  for (guint f = 0; f < job->faces->len; f++)
    {
      SwFace *face = job->faces->pdata[f];

      round = round || face->crest_form != SW_CREST_STRAIGHT;
      face->fan = fan;
    }
  if (round && sw_layout_new (job, result->layout->catalogue, &layout, NULL) != SW_OK)
    return NULL;
  return layout;
}

/* A round face in full runs, and with infill. */
static void
add_fans (GString *report, const SwResult *result, const SwTexts *texts,
          SwNumberStyle style)
{
  g_autoptr (SwLayout) full = laid_as (result, SW_FAN_FULL_RUNS);
  g_autoptr (SwLayout) infill = laid_as (result, SW_FAN_INFILL);
  g_autoptr (SwTally) a = NULL;
  g_autoptr (SwTally) b = NULL;
  g_autofree char *full_m = NULL;
  g_autofree char *infill_m = NULL;

  if (full == NULL || infill == NULL)
    return;
  a = sw_tally_new (full);
  b = sw_tally_new (infill);
  full_m = sw_report_quantity (a->piece_length_m, SW_UNIT_M, style);
  infill_m = sw_report_quantity (b->piece_length_m, SW_UNIT_M, style);
  g_string_append_printf (report, "\n%s\n", sw_texts_get (texts, "compare.fans"));
  add_row (report, texts, "compare.way", sw_texts_get (texts, "compare.full"),
           sw_texts_get (texts, "compare.infill"));
  add_count (report, texts, "compare.full-runs", a->runs, b->runs - b->infill_runs,
             style);
  add_count (report, texts, "compare.infill-runs", 0, b->infill_runs, style);
  add_row (report, texts, "compare.length", full_m, infill_m);
  add_count (report, texts, "compare.rolls", a->rolls, b->rolls, style);
  add_count (report, texts, "compare.pins", (int) a->pins, (int) b->pins, style);
}

static void
add_band (GString *report, const SwTexts *texts, const char *id, double middle,
          SwBand band, SwNumberStyle style)
{
  g_autofree char *a = sw_report_quantity (middle, SW_UNIT_COUNT, style);
  g_autofree char *low = sw_report_quantity (band.low, SW_UNIT_COUNT, style);
  g_autofree char *high = sw_report_quantity (band.high, SW_UNIT_COUNT, style);
  g_autofree char *line =
      sw_texts_fill (texts, "compare.band", "middle", a, "low", low, "high", high, NULL);

  g_string_append_printf (report, "  %-34s %s\n", sw_texts_get (texts, id), line);
}

static void
add_ratios (GString *report, const SwResult *result, const SwSpread *spread,
            const SwTexts *texts, SwNumberStyle style)
{
  for (guint i = 0; i < spread->n_faces; i++)
    {
      const SwFace *face = result->layout->faces[i].face;
      g_autofree char *name = sw_report_face_words (face, texts);
      g_autofree char *low =
          sw_report_quantity (spread->ratio_hv[i].low, SW_UNIT_HV, style);
      g_autofree char *high =
          sw_report_quantity (spread->ratio_hv[i].high, SW_UNIT_HV, style);
      g_autofree char *line = sw_texts_fill (texts, "compare.ratio", "face", name, "low",
                                             low, "high", high, NULL);

      if (face->angle_error_rad > 0.0)
        g_string_append_printf (report, "  %s\n", line);
    }
}

static void
add_errors (GString *report, const SwResult *result, const SwTexts *texts,
            SwNumberStyle style)
{
  const SwTally *tally = result->tally;
  g_autoptr (SwSpread) spread = sw_spread_new (result);
  g_autofree char *source =
      g_strdup_printf ("error-source.%s", sw_error_source_code (spread->largest));
  g_autofree char *largest = sw_texts_fill (texts, "compare.largest", "source",
                                            sw_texts_get (texts, source), NULL);

  g_string_append_printf (report, "\n%s\n", sw_texts_get (texts, "compare.errors"));
  if (!spread->any)
    {
      g_string_append_printf (report, "  %s\n",
                              sw_texts_get (texts, "compare.no-errors"));
      return;
    }
  add_band (report, texts, "compare.rolls", tally->rolls, spread->rolls, style);
  add_band (report, texts, "compare.strips", tally->runs, spread->runs, style);
  add_band (report, texts, "compare.pins", (double) tally->pins, spread->pins, style);
  g_string_append_printf (report, "  %s\n", largest);
  add_ratios (report, result, spread, texts, style);
}

char *
sw_report_compare (const SwResult *result, const SwTexts *texts, SwNumberStyle style)
{
  GString *report = g_string_new (NULL);

  add_ways (report, result, texts, style);
  add_fans (report, result, texts, style);
  add_errors (report, result, texts, style);
  return g_string_free (report, FALSE);
}
