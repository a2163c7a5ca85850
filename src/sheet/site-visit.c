/* SPDX-License-Identifier: MIT */
#include "measuring.h"

#define VISIT_ROW_MM 8.2

/* What has to be seen on the site before a plan is made; the rest is a matter of the
 * day and of people. */
static const SwSiteQuestion questions[] = {
  SW_SITE_RUN_ON,         SW_SITE_CHANNEL_FLOW, SW_SITE_SEEPAGE,
  SW_SITE_WATER_AT_TOE,   SW_SITE_LINER,        SW_SITE_UTILITIES_MARKED,
  SW_SITE_OVERHEAD_LINES, SW_SITE_TRAFFIC,      SW_SITE_WILDLIFE,
  SW_SITE_WIND_EXPOSED,   SW_SITE_REMOTE,       SW_SITE_PUBLIC,
};

static void
add_questions (const SwSheet *sheet, SwFlow *flow)
{
  static const char *const answer_ids[] = { [SW_ANSWER_UNKNOWN] = "answer.unknown",
                                            [SW_ANSWER_NO] = "answer.no",
                                            [SW_ANSWER_YES] = "answer.yes" };
  const SwColumn columns[] = {
    { sw_sheet_get (sheet, "pack.column.question"), SW_CELL_TEXT, 72.0 },
    { sw_sheet_get (sheet, "measuring.column.yes"), SW_CELL_CHECK, 9.0 },
    { sw_sheet_get (sheet, "measuring.column.no"), SW_CELL_CHECK, 9.0 },
    { sw_sheet_get (sheet, "measuring.column.where"), SW_CELL_BLANK, 0.0 },
  };
  SwTable *table =
      sw_table_new (&sheet->pen, SW_STYLE_SMALL, columns, G_N_ELEMENTS (columns));

  sw_table_set_ruled (table);
  sw_table_set_row_mm (table, VISIT_ROW_MM);
  for (guint i = 0; i < G_N_ELEMENTS (questions); i++)
    sw_table_row (
        table,
        sw_sheet_get (sheet, sw_sheet_format (sheet, "site.%s",
                                              sw_site_question_keys[questions[i]])),
        "", "",
        sw_measuring_holds_words (
            sheet, sw_sheet_get (sheet, answer_ids[sheet->job->site[questions[i]]])),
        NULL);
  sw_measuring_title (sheet, flow, "visit");
  sw_flow_table (flow, table);
}

static void
add_services (const SwSheet *sheet, SwFlow *flow)
{
  const SwColumn columns[] = {
    { sw_sheet_get (sheet, "measuring.services.ticket"), SW_CELL_BLANK, 52.0 },
    { sw_sheet_get (sheet, "measuring.services.marks"), SW_CELL_BLANK, 0.0 },
    { sw_sheet_get (sheet, "measuring.services.overhead"), SW_CELL_BLANK, 58.0 },
  };
  SwTable *table =
      sw_table_new (&sheet->pen, SW_STYLE_SMALL, columns, G_N_ELEMENTS (columns));

  sw_table_set_ruled (table);
  sw_table_set_row_mm (table, SW_MEASURING_ROW_MM);
  sw_table_row (table, sw_measuring_holds_words (sheet, sheet->job->card.utility_ticket),
                "", "", NULL);
  sw_measuring_title (sheet, flow, "services");
  sw_flow_table (flow, table);
}

static void
add_access (const SwSheet *sheet, SwFlow *flow)
{
  const SwColumn columns[] = {
    { sw_sheet_get (sheet, "measuring.access.truck"), SW_CELL_TEXT, 35.0 },
    { sw_sheet_get (sheet, "measuring.access.carry"), SW_CELL_TEXT, 35.0 },
    { sw_sheet_get (sheet, "measuring.access.store"), SW_CELL_TEXT, 0.0 },
    { sw_sheet_get (sheet, "measuring.access.stand"), SW_CELL_TEXT, 35.0 },
    { sw_sheet_get (sheet, "measuring.access.wind"), SW_CELL_TEXT, 30.0 },
  };
  SwTable *table =
      sw_table_new (&sheet->pen, SW_STYLE_SMALL, columns, G_N_ELEMENTS (columns));

  sw_table_set_ruled (table);
  sw_table_set_row_mm (table, VISIT_ROW_MM);
  sw_table_row (table, "", "", "", "", "", NULL);
  sw_measuring_title (sheet, flow, "access");
  sw_flow_table (flow, table);
}

void
sw_page_site_visit (SwSheet *sheet)
{
  SwFlow *flow = sw_sheet_flow (sheet);

  sw_measuring_head (sheet, flow, -1);
  add_questions (sheet, flow);
  add_services (sheet, flow);
  add_access (sheet, flow);
  sw_flow_write_in (flow, sw_sheet_get (sheet, "measuring.signed"));
  sw_sheet_add (sheet, sw_sheet_get (sheet, "measuring.site.title"), flow);
}
