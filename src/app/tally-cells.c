/* SPDX-License-Identifier: MIT */
#include "tally-cells.h"

#include <glib/gi18n.h>
#include <slopewright/sheet/report.h>
#include <string.h>

static const SwTallyCell cells[SW_TALLY_CELLS] = {
  { "net-area", N_ ("Net area"), { "net-area", "*.net-area", "*.length", NULL } },
  { "runs", N_ ("Runs"), { "*.runs", "*.side-lap", "*.width", NULL } },
  { "rolls", N_ ("Rolls"), { "rolls-order", "rolls", "piece-length", "offcuts" } },
  { "pins", N_ ("Pins"), { "*.pins", "pins.", "*.pin-length", NULL } },
  { "trench", N_ ("Trench"), { "*key-trench", "*slot", "*toe-trench", NULL } },
  { "seed", N_ ("Seed"), { "seed-bulk", "seed-pls", NULL, NULL } },
  { "findings", N_ ("Findings"), { NULL, NULL, NULL, NULL } },
};

const SwTallyCell *
sw_tally_cell (guint index)
{
  g_return_val_if_fail (index < SW_TALLY_CELLS, NULL);
  return &cells[index];
}

static char *
count_text (double count, SwNumberStyle style)
{
  return sw_quantity_number (count, SW_UNIT_COUNT, style);
}

static char *
rolls_text (const SwTally *tally, SwNumberStyle style)
{
  g_autofree char *order = count_text (tally->rolls_order, style);
  g_autofree char *spare = count_text (tally->rolls_spare, style);

  if (tally->rolls_spare == 0)
    return g_steal_pointer (&order);
  return g_strdup_printf (_ ("%s, %s spare"), order, spare);
}

static char *
pins_text (const SwTally *tally, SwNumberStyle style)
{
  double order = 0.0;

  for (guint i = 0; i < tally->pin_orders->len; i++)
    order += (double) g_array_index (tally->pin_orders, SwPinOrder, i).order;
  g_autofree char *driven = count_text ((double) tally->pins, style);
  g_autofree char *ordered = count_text (order, style);

  return g_strdup_printf (_ ("%s, order %s"), driven, ordered);
}

static char *
seed_text (const SwTally *tally, SwNumberStyle style)
{
  if (!(tally->seed_bulk_kg > 0.0))
    return g_strdup (_ ("not given"));
  return sw_quantity_text (tally->seed_bulk_kg, SW_UNIT_KG, style);
}

static char *
findings_text (const GPtrArray *findings)
{
  guint stops = sw_findings_count (findings, SW_SEVERITY_STOP);

  if (stops == 0)
    return g_strdup_printf ("%u", findings->len);
  /* Translators: number of all findings, then of those that are stops */
  return g_strdup_printf (ngettext ("%u, %u stop", "%u, %u stops", stops), findings->len,
                          stops);
}

char *
sw_tally_cell_text (const SwTallyCell *cell, const SwResult *result, SwNumberStyle style)
{
  const SwTally *tally = result->tally;

  if (tally == NULL)
    return g_strdup ("–");
  switch (cell - cells)
    {
    case 0:
      return sw_quantity_text (tally->areas.net_m2, SW_UNIT_M2, style);
    case 1:
      return count_text (tally->runs, style);
    case 2:
      return rolls_text (tally, style);
    case 3:
      return pins_text (tally, style);
    case 4:
      return sw_quantity_text (tally->key_trench_m + tally->slot_m + tally->toe_trench_m,
                               SW_UNIT_M, style);
    case 5:
      return seed_text (tally, style);
    default:
      return findings_text (result->findings);
    }
}

static gboolean
is_meant (const char *name, const char *pattern)
{
  if (*pattern == '*')
    return g_str_has_suffix (name, pattern + 1);
  if (g_str_has_suffix (pattern, "."))
    return g_str_has_prefix (name, pattern);
  return g_str_equal (name, pattern);
}

static void
append_workings (GString *words, const char *pattern, const SwResult *result,
                 const SwTexts *texts, SwNumberStyle style)
{
  const GPtrArray *workings = result->tally->workings;

  for (guint i = 0; i < workings->len; i++)
    {
      const SwWorking *working = g_ptr_array_index (workings, i);
      g_autofree char *text = NULL;

      if (!is_meant (working->name, pattern))
        continue;
      text = sw_report_working (result, working->name, texts, style);
      if (text != NULL)
        g_string_append_printf (words, "%s%s", words->len > 0 ? "\n" : "", text);
    }
}

char *
sw_tally_cell_working (const SwTallyCell *cell, const SwResult *result,
                       const SwTexts *texts, SwNumberStyle style)
{
  GString *words = g_string_new (NULL);

  if (result->tally == NULL)
    g_string_append (words, _ (sw_status_text (result->status)));
  else if (g_str_equal (cell->code, "findings"))
    {
      g_autofree char *findings = sw_report_findings (result, texts, style);
      g_string_append (words, findings);
    }
  else
    for (gsize i = 0; i < G_N_ELEMENTS (cell->workings); i++)
      if (cell->workings[i] != NULL)
        append_workings (words, cell->workings[i], result, texts, style);
  if (words->len == 0)
    g_string_append (words, _ ("There is nothing of this in the job."));
  return g_strchomp (g_string_free (words, FALSE));
}
