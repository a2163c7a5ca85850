/* SPDX-License-Identifier: MIT */
#include "sheet.h"
#include <slopewright/judge/due-dates.h>

#define GROUPS 2
#define GROUP_GAP_MM 6.0

static const char *
day (const SwSheet *sheet, const GDate *date)
{
  return sw_sheet_format (sheet, "%04d-%02d-%02d", g_date_get_year (date),
                          (int) g_date_get_month (date), g_date_get_day (date));
}

static SwTable *
group_table (const SwSheet *sheet, const GArray *dues, guint from, guint to)
{
  const SwColumn columns[] = {
    { sw_sheet_get (sheet, "pack.due.number"), SW_CELL_NUMBER, 12.0 },
    { sw_sheet_get (sheet, "pack.due.on"), SW_CELL_LINE, 0.0 },
    { sw_sheet_get (sheet, "pack.due.repair-by"), SW_CELL_LINE, 0.0 },
    { sw_sheet_get (sheet, "pack.due.done"), SW_CELL_CHECK, 0.0 },
  };
  SwTable *table =
      sw_table_new (&sheet->pen, SW_STYLE_SMALL, columns, G_N_ELEMENTS (columns));

  for (guint i = from; i < to; i++)
    {
      const SwDue *due = &g_array_index (dues, SwDue, i);
      gboolean ends = due->kind == SW_DUE_BLANKET_END;

      sw_table_row (table, ends ? "" : sw_sheet_format (sheet, "%d", due->number),
                    day (sheet, &due->date),
                    ends ? sw_sheet_get (sheet, "pack.due.blanket-end")
                         : day (sheet, &due->repair_by),
                    "", NULL);
    }
  return table;
}

void
sw_sheet_due_dates (const SwSheet *sheet, SwFlow *flow)
{
  SwFlow *groups[GROUPS];
  g_autoptr (GArray) dues = NULL;
  GDate installed;
  guint each;

  sw_flow_heading (flow, sw_sheet_get (sheet, "pack.due.title"));
  if (!sw_install_date (sheet->job, &installed))
    {
      sw_flow_text (flow, SW_STYLE_BODY, SW_ROLE_TEXT,
                    sw_sheet_get (sheet, "pack.due.missing"));
      return;
    }
  dues = sw_due_dates_new (sheet->layout, &installed);
  each = (dues->len + GROUPS - 1) / GROUPS;
  for (guint i = 0; i < GROUPS; i++)
    {
      groups[i] =
          sw_flow_new (&sheet->pen, sw_flow_share_mm (flow, GROUP_GAP_MM, GROUPS));
      sw_flow_table (groups[i], group_table (sheet, dues, MIN (i * each, dues->len),
                                             MIN ((i + 1) * each, dues->len)));
    }
  sw_flow_text (
      flow, SW_STYLE_BODY, SW_ROLE_TEXT,
      sw_sheet_fill (sheet, "pack.due.how", "date", day (sheet, &installed), NULL));
  sw_flow_tie (flow);
  sw_flow_space (flow, 1.5);
  sw_flow_row (flow, GROUP_GAP_MM, groups, GROUPS);
}
