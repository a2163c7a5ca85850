/* SPDX-License-Identifier: MIT */
#include "judgement.h"

/* The nineteen checks; a row leads to the page where the crew reads of it. */

#define NUMBER_MM 10.0
#define FAILURE_MM 38.0
#define STATE_MM 20.0
#define PAGE_MM 30.0

static const char *
check_words (const SwSheet *sheet, const SwCheck *check)
{
  g_autoptr (GString) words = g_string_new (NULL);
  g_auto (GStrv) asks = sw_report_check_asks (check, sheet->texts);
  const char *before = "";

  for (guint i = 0; i < check->findings->len; i++)
    {
      const SwFinding *finding = g_ptr_array_index (check->findings, i);
      g_autofree char *title = sw_report_finding_title (finding, sheet->texts);

      if (!g_str_equal (finding->code, before))
        g_string_append_printf (words, "*%s.* ", sw_sheet_plain (sheet, title));
      before = finding->code;
    }
  g_string_append (
      words, sw_sheet_plain (sheet, sw_sheet_keep (sheet, sw_report_check_looked (
                                                              check, sheet->texts,
                                                              sheet->draw->style))));
  for (char **ask = asks; *ask != NULL; ask++)
    g_string_append_printf (words, "\n*%s*", sw_sheet_plain (sheet, *ask));
  return sw_sheet_format (sheet, "%s", words->str);
}

static void
add_check (const SwSheet *sheet, SwTable *table, const SwCheck *check)
{
  const char *title = sw_sheet_get (sheet, check->page);
  gboolean speaks = check->state != SW_CHECK_PASS;

  sw_table_row (
      table, check->failure,
      sw_sheet_get (sheet, sw_sheet_format (sheet, "check.%s.title", check->failure)),
      sw_sheet_format (sheet, speaks ? "*%s*" : "%s",
                       sw_report_check_state (check, sheet->texts)),
      check_words (sheet, check), title, NULL);
  if (sw_sheet_has_page (sheet, title))
    sw_table_link (table, title);
}

static void
add_checks (const SwSheet *sheet, SwFlow *flow)
{
  const SwColumn columns[] = {
    { sw_sheet_get (sheet, "pack.column.failure-number"), SW_CELL_LINE, NUMBER_MM },
    { sw_sheet_get (sheet, "pack.column.failure"), SW_CELL_TEXT, FAILURE_MM },
    { sw_sheet_get (sheet, "pack.column.state"), SW_CELL_TEXT, STATE_MM },
    { sw_sheet_get (sheet, "pack.column.looked"), SW_CELL_TEXT, 0.0 },
    { sw_sheet_get (sheet, "pack.column.read-on"), SW_CELL_TEXT, PAGE_MM },
  };
  SwTable *table =
      sw_table_new (&sheet->pen, SW_STYLE_SMALL, columns, G_N_ELEMENTS (columns));
  g_autoptr (GPtrArray) checks =
      sw_checks_new (sheet->layout, sheet->tally, sheet->result->findings);

  for (guint i = 0; i < checks->len; i++)
    add_check (sheet, table, g_ptr_array_index (checks, i));
  sw_flow_heading (flow, sw_sheet_get (sheet, "check.title"));
  sw_flow_text (flow, SW_STYLE_BODY, SW_ROLE_TEXT, sw_sheet_get (sheet, "check.how"));
  sw_flow_tie (flow);
  sw_flow_space (flow, 1.5);
  sw_flow_table (flow, table);
}

void
sw_page_judgement (SwSheet *sheet)
{
  SwFlow *flow = sw_sheet_flow (sheet);

  sw_flow_caution (flow, sw_sheet_get (sheet, "pack.judge.limits"));
  sw_judge_add_choice (sheet, flow, FALSE);
  sw_judge_add_soil (sheet, flow);
  sw_judge_add_borderline (sheet, flow);
  sw_judge_add_loss (sheet, flow);
  sw_judge_add_water (sheet, flow);
  sw_judge_add_slide (sheet, flow);
  sw_judge_add_handling (sheet, flow);
  add_checks (sheet, flow);
  sw_sheet_add (sheet, sw_sheet_get (sheet, "pack.judge.title"), flow);
}
