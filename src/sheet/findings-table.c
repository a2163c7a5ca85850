/* SPDX-License-Identifier: MIT */
#include "sheet.h"

/* Where the crew reads of a finding; by the beginning of its code. */
static const struct
{
  const char *code;
  SwPart part;
} readings[] = {
  { "run-on", SW_PART_STEPS },
  { "plastic-net", SW_PART_JUDGEMENT },
  { "class-gradient", SW_PART_JUDGEMENT },
  { "borderline", SW_PART_JUDGEMENT },
  { "flow-", SW_PART_JUDGEMENT },
  { "loss-", SW_PART_JUDGEMENT },
  { "bench-", SW_PART_JUDGEMENT },
  { "erodibility", SW_PART_JUDGEMENT },
  { "slide-", SW_PART_JUDGEMENT },
  { "friction", SW_PART_JUDGEMENT },
  { "lift-", SW_PART_JUDGEMENT },
  { "roll-heavy", SW_PART_JUDGEMENT },
  { "life-short", SW_PART_JUDGEMENT },
  { "mowing-net", SW_PART_JUDGEMENT },
  { "joints", SW_PART_MATERIALS },
  { "flat-allowance", SW_PART_MATERIALS },
  { "nutrient-", SW_PART_WORK },
  { "stock-short", SW_PART_MATERIALS },
  { "pin-short", SW_PART_MATERIALS },
  { "pin-trial", SW_PART_STEPS },
  { "soil-zones", SW_PART_LAYOUT },
  { "obstacle", SW_PART_LAYOUT },
  { "slots", SW_PART_DETAILS },
  { "bridging", SW_PART_STEPS },
  { "trench-at-edge", SW_PART_DETAILS },
  { "narrow-crown", SW_PART_DETAILS },
  { "finished-work", SW_PART_STEPS },
};

/* What is not named above is a matter of the site visit and of people. */
static const SwSheetEntry *
entry_of (const SwSheet *sheet, const SwFinding *finding)
{
  SwPart part = SW_PART_SAFETY;

  for (guint i = 0; i < G_N_ELEMENTS (readings); i++)
    if (g_str_has_prefix (finding->code, readings[i].code))
      part = readings[i].part;
  return sw_sheet_entry (sheet, part);
}

/* The numbers of a finding as read: equal for places that need not be told apart. */
static char *
numbers_of (const SwSheet *sheet, const SwFinding *finding)
{
  GString *words = g_string_new (NULL);

  for (guint i = 0; i < finding->inputs->len; i++)
    {
      const SwInput *input = &g_array_index (finding->inputs, SwInput, i);

      g_string_append_printf (words, "%s%s", i > 0 ? "; " : "",
                              sw_sheet_quantity (sheet, input->value, input->unit));
    }
  return g_string_free (words, FALSE);
}

/* Findings of one code: those whose numbers are alike share their places. */
typedef struct
{
  const SwFinding *finding; /* the first */
  char *numbers;
  GString *places;
} Alike;

static void
alike_free (gpointer data)
{
  Alike *alike = data;

  g_free (alike->numbers);
  g_string_free (alike->places, TRUE);
  g_free (alike);
}

static void
add_place (const SwSheet *sheet, GPtrArray *alikes, const SwFinding *finding)
{
  g_autofree char *numbers = numbers_of (sheet, finding);
  g_autofree char *place = finding->face >= 0 ? sw_report_place_words (
                               sheet->result, finding->face, finding->tier, sheet->texts)
                                              : g_strdup ("");
  Alike *alike = NULL;

  for (guint i = 0; i < alikes->len && alike == NULL; i++)
    if (g_str_equal (((Alike *) alikes->pdata[i])->numbers, numbers))
      alike = alikes->pdata[i];
  if (alike != NULL)
    {
      g_string_append_printf (alike->places, "; %s", place);
      return;
    }
  alike = g_new0 (Alike, 1);
  alike->finding = finding;
  alike->numbers = g_steal_pointer (&numbers);
  alike->places = g_string_new (place);
  g_ptr_array_add (alikes, alike);
}

static GPtrArray *
alikes_of (const SwSheet *sheet, const char *code)
{
  GPtrArray *alikes = g_ptr_array_new_with_free_func (alike_free);
  const GPtrArray *findings = sheet->result->findings;

  for (guint i = 0; i < findings->len; i++)
    {
      const SwFinding *finding = g_ptr_array_index (findings, i);

      if (g_str_equal (finding->code, code))
        add_place (sheet, alikes, finding);
    }
  return alikes;
}

/* "gradient 1.5H:1V · 33.7° · 66.7 %; limit 2:1"; a number without a name stands alone. */
static const char *
named_numbers (const SwSheet *sheet, const SwFinding *finding)
{
  g_autoptr (GString) words = g_string_new (NULL);

  for (guint i = 0; i < finding->inputs->len; i++)
    {
      const SwInput *input = &g_array_index (finding->inputs, SwInput, i);
      const char *id = sw_sheet_format (sheet, "report.input.%s", input->symbol);
      const char *value = sw_sheet_quantity (sheet, input->value, input->unit);

      g_string_append (words, i > 0 ? "; " : "");
      if (sw_texts_has (sheet->texts, id))
        g_string_append_printf (words, "%s ", sw_sheet_get (sheet, id));
      g_string_append (words, value);
    }
  return sw_sheet_format (sheet, "%s", words->str);
}

/* The sentence for the first places, the numbers alone for the others. */
static const char *
text_of (const SwSheet *sheet, const GPtrArray *alikes)
{
  const Alike *first = alikes->pdata[0];
  g_autoptr (GString) words = g_string_new (NULL);

  g_string_append (words, sw_sheet_plain (sheet, sw_sheet_finding (sheet, first->finding,
                                                                   first->places->str)));
  for (guint i = 1; i < alikes->len; i++)
    {
      const Alike *other = alikes->pdata[i];

      g_string_append_printf (
          words, "\n%s",
          sw_sheet_fill (sheet, "pack.findings.also", "place", other->places->str,
                         "numbers", named_numbers (sheet, other->finding), NULL));
    }
  return sw_sheet_format (sheet, "%s", words->str);
}

/* "Basis: … (failure F9)." */
static const char *
basis_of (const SwSheet *sheet, const SwFinding *finding)
{
  const char *basis =
      sw_sheet_get (sheet, sw_sheet_format (sheet, "finding.%s.basis", finding->code));

  return *finding->failure == '\0'
             ? sw_sheet_fill (sheet, "pack.findings.basis", "basis", basis, NULL)
             : sw_sheet_fill (sheet, "pack.findings.basis-failure", "basis", basis,
                              "failure", finding->failure, NULL);
}

/* Title, what it says of its places, and what it rests on. */
static const char *
words_of (const SwSheet *sheet, const SwFinding *finding)
{
  g_autoptr (GPtrArray) alikes = alikes_of (sheet, finding->code);
  g_autofree char *title = sw_report_finding_title (finding, sheet->texts);

  return sw_sheet_format (sheet, "*%s.* %s %s", sw_sheet_plain (sheet, title),
                          text_of (sheet, alikes), basis_of (sheet, finding));
}

static void
add_row (const SwSheet *sheet, SwTable *table, const SwFinding *finding)
{
  const SwSheetEntry *entry = entry_of (sheet, finding);
  const char *severity =
      sw_sheet_get (sheet, sw_sheet_format (sheet, "severity.%s",
                                            sw_severity_code (finding->severity)));

  sw_table_row (
      table, sw_sheet_format (sheet, "*%s*", severity), words_of (sheet, finding),
      entry != NULL ? sw_sheet_format (sheet, "%u", sw_sheet_entry_page (sheet, entry))
                    : "",
      NULL);
  if (entry != NULL)
    sw_table_link (table, entry->title);
}

/* Whether an earlier finding has the same code. */
static gboolean
is_repeated (const GPtrArray *findings, guint index)
{
  const SwFinding *finding = g_ptr_array_index (findings, index);

  for (guint i = 0; i < index; i++)
    if (g_str_equal (((const SwFinding *) findings->pdata[i])->code, finding->code))
      return TRUE;
  return FALSE;
}

gboolean
sw_sheet_findings_about (const SwSheet *sheet, SwFlow *flow, const char *code)
{
  const GPtrArray *findings = sheet->result->findings;
  gboolean any = FALSE;

  for (guint i = 0; i < findings->len; i++)
    {
      const SwFinding *finding = g_ptr_array_index (findings, i);

      if (!g_str_has_prefix (finding->code, code) || is_repeated (findings, i))
        continue;
      any = TRUE;
      sw_flow_space (flow, 1.2);
      sw_flow_item (flow, SW_STYLE_BODY, "–", words_of (sheet, finding));
    }
  return any;
}

void
sw_sheet_findings (const SwSheet *sheet, SwFlow *flow)
{
  const SwColumn columns[] = {
    { sw_sheet_get (sheet, "pack.column.severity"), SW_CELL_LINE, 0.0 },
    { sw_sheet_get (sheet, "pack.column.finding"), SW_CELL_TEXT, 0.0 },
    { sw_sheet_get (sheet, "pack.column.page"), SW_CELL_NUMBER, 0.0 },
  };
  SwTable *table =
      sw_table_new (&sheet->pen, SW_STYLE_BODY, columns, G_N_ELEMENTS (columns));
  const GPtrArray *findings = sheet->result->findings;

  sw_flow_heading (flow, sw_sheet_get (sheet, "pack.findings.title"));
  if (findings->len == 0)
    {
      sw_flow_text (flow, SW_STYLE_BODY, SW_ROLE_TEXT,
                    sw_sheet_get (sheet, "pack.findings.none"));
      sw_table_free (table);
      return;
    }
  for (guint i = 0; i < findings->len; i++)
    if (!is_repeated (findings, i))
      add_row (sheet, table, g_ptr_array_index (findings, i));
  sw_flow_table (flow, table);
}
