/* SPDX-License-Identifier: MIT */
#include "tier-numbers.h"

static const char *const seen[] = { "rills", "hollow", "tear", "trench",
                                    "bare",  "animal", "slide" };

void
sw_sheet_repairs (const SwSheet *sheet, SwFlow *flow)
{
  const SwColumn columns[] = {
    { sw_sheet_get (sheet, "inspecting.column.seen"), SW_CELL_TEXT, 46.0 },
    { sw_sheet_get (sheet, "inspecting.column.do"), SW_CELL_TEXT, 0.0 },
  };
  SwTable *table =
      sw_table_new (&sheet->pen, SW_STYLE_SMALL, columns, G_N_ELEMENTS (columns));
  g_autoptr (GHashTable) places = sw_tier_places (sheet, 0, 0);

  sw_table_set_whole (table);
  for (guint i = 0; i < G_N_ELEMENTS (seen); i++)
    {
      const char *id = sw_sheet_format (sheet, "inspecting.mend.%s", seen[i]);
      const char *what = sw_sheet_format (sheet, "%s.do", id);

      sw_table_row (
          table, sw_sheet_get (sheet, id),
          sw_sheet_keep (sheet, sw_texts_fill_table (sheet->texts, what, places)), NULL);
    }
  sw_flow_heading (flow, sw_sheet_get (sheet, "inspecting.mend.title"));
  sw_flow_table (flow, table);
  sw_flow_text (flow, SW_STYLE_SMALL, SW_ROLE_MUTED,
                sw_sheet_get (sheet, "inspecting.mend.source"));
}
