/* SPDX-License-Identifier: MIT */
#include <slopewright/sheet/practices.h>

#include "report-words.h"

#define NOT_KNOWN "–"
#define GAP 2 /* between the columns of a terminal */

/* What both sides of every line are read from. */
typedef struct
{
  const SwResult *results[2];
  const SwPractice *practices[2]; /* own values of the job put in */
  const SwTexts *texts;
  SwNumberStyle style;
  GPtrArray *lines;
} Pair;

typedef char *(*Words) (const Pair *pair, int side, gsize which);

static void
line_free (SwPracticeLine *line)
{
  g_free (line->label);
  g_free (line->now);
  g_free (line->other);
  g_free (line);
}

static void
add_heading (Pair *pair, const char *id)
{
  SwPracticeLine *line = g_new0 (SwPracticeLine, 1);

  line->label = g_strdup (sw_texts_get (pair->texts, id));
  g_ptr_array_add (pair->lines, line);
}

static void
add_line (Pair *pair, const char *id, Words words, gsize which)
{
  SwPracticeLine *line = g_new0 (SwPracticeLine, 1);

  line->label = g_strdup (sw_texts_get (pair->texts, id));
  line->now = words (pair, 0, which);
  line->other = words (pair, 1, which);
  line->differs = !g_str_equal (line->now, line->other);
  g_ptr_array_add (pair->lines, line);
}

static char *
agency_words (const Pair *pair, int side, gsize which)
{
  const SwPractice *practice = pair->practices[side];

  return g_strdup_printf ("%s, %s", sw_texts_get (pair->texts, practice->agency_id),
                          sw_texts_get (pair->texts, practice->edition_id));
}

static char *
evidence_words (const Pair *pair, int side, gsize which)
{
  g_autofree char *id =
      g_strconcat ("evidence.", sw_evidence_code (pair->practices[side]->evidence), NULL);

  return g_strdup (sw_texts_get (pair->texts, id));
}

/* Quantities of a tally, in the order of their lines. */
enum
{
  RUNS,
  JOINTS,
  BLANKET,
  ROLLS,
  PINS,
  KEY_TRENCH,
  SLOTS,
  TOE_TRENCH,
  SPOIL,
  N_QUANTITIES
};

static const struct
{
  const char *id;
  SwUnit unit;
} quantities[N_QUANTITIES] = {
  [RUNS] = { "compare.runs", SW_UNIT_COUNT },
  [JOINTS] = { "compare.joints", SW_UNIT_COUNT },
  [BLANKET] = { "compare.length", SW_UNIT_M },
  [ROLLS] = { "compare.order", SW_UNIT_COUNT },
  [PINS] = { "compare.pins", SW_UNIT_COUNT },
  [KEY_TRENCH] = { "compare.key-trench", SW_UNIT_M },
  [SLOTS] = { "compare.slots", SW_UNIT_M },
  [TOE_TRENCH] = { "compare.toe-trench", SW_UNIT_M },
  [SPOIL] = { "compare.spoil", SW_UNIT_M3 },
};

static double
quantity_of (const SwTally *tally, gsize which)
{
  const double values[N_QUANTITIES] = {
    [RUNS] = tally->runs,
    [JOINTS] = tally->joints,
    [BLANKET] = tally->piece_length_m,
    [ROLLS] = tally->rolls_order,
    [PINS] = (double) tally->pins,
    [KEY_TRENCH] = tally->key_trench_m,
    [SLOTS] = tally->slot_m,
    [TOE_TRENCH] = tally->toe_trench_m,
    [SPOIL] = tally->trench_loose_m3,
  };

  return values[which];
}

static char *
quantity_words (const Pair *pair, int side, gsize which)
{
  const SwTally *tally = pair->results[side]->tally;

  if (tally == NULL)
    return g_strdup (NOT_KNOWN);
  return sw_report_quantity (quantity_of (tally, which), quantities[which].unit,
                             pair->style);
}

/* "3000 × 200 mm", one after the other. */
static char *
boxes_words (const Pair *pair, int side, gsize which)
{
  const SwTally *tally = pair->results[side]->tally;
  GString *words = g_string_new (NULL);

  for (guint i = 0; tally != NULL && i < tally->pin_orders->len; i++)
    {
      const SwPinOrder *order = &g_array_index (tally->pin_orders, SwPinOrder, i);
      double length_m = order->pin != NULL ? order->pin->length_m : order->need_m;
      g_autofree char *count =
          sw_report_quantity ((double) order->order, SW_UNIT_COUNT, pair->style);
      g_autofree char *length =
          sw_quantity_limit_text (length_m, SW_UNIT_SMALL_M, SW_LIMIT_LEAST, pair->style);

      g_string_append_printf (words, "%s%s × %s", i > 0 ? "; " : "", count, length);
    }
  if (words->len == 0)
    g_string_append (words, NOT_KNOWN);
  return g_string_free (words, FALSE);
}

/* "1 Stop, 6 Caution, 5 Note" by the words of the findings themselves. */
static char *
findings_words (const Pair *pair, int side, gsize which)
{
  const GPtrArray *findings = pair->results[side]->findings;

  if (findings == NULL)
    return g_strdup (sw_status_text (pair->results[side]->status));
  g_autofree char *stops =
      g_strdup_printf ("%u", sw_findings_count (findings, SW_SEVERITY_STOP));
  g_autofree char *cautions =
      g_strdup_printf ("%u", sw_findings_count (findings, SW_SEVERITY_CAUTION));
  g_autofree char *notes =
      g_strdup_printf ("%u", sw_findings_count (findings, SW_SEVERITY_NOTE));
  return sw_texts_fill (pair->texts, "compare.finding-counts", "stops", stops, "cautions",
                        cautions, "notes", notes, NULL);
}

static char *
way_words (const Pair *pair, int side, gsize which)
{
  return g_strdup (sw_report_practice_way (pair->practices[side], (SwPracticeWay) which,
                                           pair->texts));
}

static char *
value_words (const Pair *pair, int side, gsize which)
{
  const SwPracticeKey *key = &sw_practice_keys[which];
  double value = pair->practices[side]->values[which].value;

  if (key->or_zero && !(value > 0.0))
    return g_strdup (sw_texts_get (pair->texts, "pack.none"));
  return sw_quantity_limit_text (
      value, key->unit, sw_practice_limit ((SwPracticeValue) which), pair->style);
}

/* "4 /m² from 2:1", the steepest first. */
static char *
density_words (const Pair *pair, int side, gsize which)
{
  const SwPractice *practice = pair->practices[side];
  GString *words = g_string_new (NULL);

  if (practice->n_density == 0)
    g_string_append (words, sw_texts_get (pair->texts, "pack.none"));
  for (guint i = 0; i < practice->n_density; i++)
    {
      const SwDensityRow *row = &practice->density[i];
      g_autofree char *pins =
          sw_report_quantity (row->per_m2.value, SW_UNIT_PER_M2, pair->style);
      g_autofree char *gradient = sw_quantity_text (row->hv, SW_UNIT_HV, pair->style);
      g_autofree char *text = sw_texts_fill (pair->texts, "compare.density-row", "pins",
                                             pins, "gradient", gradient, NULL);

      g_string_append_printf (words, "%s%s", i > 0 ? "; " : "", text);
    }
  return g_string_free (words, FALSE);
}

static void
add_slope (Pair *pair)
{
  add_heading (pair, "compare.on-slope");
  for (gsize i = 0; i < N_QUANTITIES; i++)
    {
      add_line (pair, quantities[i].id, quantity_words, i);
      if (i == PINS)
        add_line (pair, "compare.boxes", boxes_words, i);
    }
  add_line (pair, "compare.findings", findings_words, 0);
}

static void
add_values (Pair *pair)
{
  add_heading (pair, "compare.values");
  add_line (pair, "compare.agency", agency_words, 0);
  add_line (pair, "compare.evidence", evidence_words, 0);
  for (gsize i = 0; i < SW_WAY_COUNT; i++)
    add_line (pair, sw_practice_way_id ((SwPracticeWay) i), way_words, i);
  add_line (pair, "compare.density", density_words, 0);
  for (gsize i = 0; i < SW_PRACTICE_VALUE_COUNT; i++)
    {
      g_autofree char *id = g_strconcat ("practice.", sw_practice_keys[i].key, NULL);

      add_line (pair, id, value_words, i);
    }
}

SwResult *
sw_result_of_practice (const SwResult *result, const char *practice_id)
{
  g_autoptr (SwJob) job = sw_job_copy (result->job);

  if (g_str_equal (job->practice_id, practice_id))
    sw_job_clear_own_practice (job);
  sw_text_set (&job->practice_id, practice_id);
  return sw_result_new (job, result->catalogue);
}

GPtrArray *
sw_report_practices (const SwResult *now, const SwResult *other, const SwTexts *texts,
                     SwNumberStyle style)
{
  g_autoptr (SwPractice) first = sw_job_practice (now->job, now->catalogue);
  g_autoptr (SwPractice) second = sw_job_practice (other->job, other->catalogue);
  Pair pair = { .results = { now, other },
                .practices = { first, second },
                .texts = texts,
                .style = style,
                .lines = g_ptr_array_new_with_free_func ((GDestroyNotify) line_free) };

  if (first == NULL || second == NULL)
    return pair.lines;
  add_slope (&pair);
  add_values (&pair);
  return pair.lines;
}

static glong
widest (const GPtrArray *lines, gsize offset)
{
  glong width = 0;

  for (guint i = 0; i < lines->len; i++)
    {
      const char *cell = G_STRUCT_MEMBER (char *, lines->pdata[i], offset);

      width = MAX (width, cell != NULL ? g_utf8_strlen (cell, -1) : 0);
    }
  return width;
}

static void
append_line (GString *report, const SwPracticeLine *line, glong label, glong now)
{
  if (line->now == NULL)
    {
      g_string_append_printf (report, "\n%s\n", line->label);
      return;
    }
  g_string_append (report, line->differs ? "≠ " : "  ");
  sw_report_pad (report, line->label, label + GAP);
  sw_report_pad (report, line->now, now + GAP);
  g_string_append_printf (report, "%s\n", line->other);
}

char *
sw_report_practices_text (const SwResult *now, const SwResult *other,
                          const SwTexts *texts, SwNumberStyle style)
{
  g_autoptr (GPtrArray) lines = sw_report_practices (now, other, texts, style);
  g_autoptr (SwPractice) first = sw_job_practice (now->job, now->catalogue);
  g_autoptr (SwPractice) second = sw_job_practice (other->job, other->catalogue);
  glong label = widest (lines, G_STRUCT_OFFSET (SwPracticeLine, label));
  glong middle = widest (lines, G_STRUCT_OFFSET (SwPracticeLine, now));
  g_autofree char *own = NULL, *theirs = NULL, *title = NULL;
  GString *report;

  if (first == NULL || second == NULL)
    return g_strdup ("");
  own = sw_report_practice_name (first, texts);
  theirs = sw_report_practice_name (second, texts);
  title = sw_texts_fill (texts, "compare.practices", "now", own, "other", theirs, NULL);
  report = g_string_new (title);
  g_string_append_c (report, '\n');
  for (guint i = 0; i < lines->len; i++)
    append_line (report, lines->pdata[i], label, middle);
  g_string_append_printf (report, "\n%s\n",
                          sw_texts_get (texts, "compare.practices-note"));
  return g_string_free (report, FALSE);
}
