/* SPDX-License-Identifier: MIT */
#include "sheet.h"

static const char *
money (const SwSheet *sheet, double amount)
{
  return sw_sheet_number (sheet, amount, SW_UNIT_MONEY);
}

static const char *
cost_name (const SwSheet *sheet, const char *code)
{
  return sw_sheet_get (sheet, sw_sheet_format (sheet, "cost.%s", code));
}

/* In the unit that its price is for: of seed a kilogram, whatever the pack's units. */
static const char *
priced_quantity (const SwSheet *sheet, const SwCostLine *line)
{
  SwNumberStyle style = sheet->draw->style;

  if (line->unit == SW_UNIT_KG)
    style.units = SW_UNITS_METRIC;
  return sw_sheet_keep (sheet, sw_report_calculator (line->quantity, line->unit, style));
}

static void
add_lines (const SwSheet *sheet, SwTable *table)
{
  for (int i = 0; i < SW_COST_COUNT; i++)
    {
      const SwCostLine *line = &sheet->tally->cost[i];
      gboolean priced = line->price > 0.0;

      if (line->quantity > 0.0)
        sw_table_row (table, cost_name (sheet, sw_cost_code ((SwCostKind) i)),
                      priced_quantity (sheet, line),
                      priced ? money (sheet, line->price)
                             : sw_sheet_get (sheet, "pack.cost.not-priced"),
                      priced ? money (sheet, line->amount) : "", NULL);
    }
}

static void
sum_row (const SwSheet *sheet, SwTable *table, const char *code, double amount)
{
  sw_table_total (table, cost_name (sheet, code), "", "", money (sheet, amount), NULL);
}

static void
mark_up_row (const SwSheet *sheet, SwTable *table, const char *code, SwPlanNumber share,
             double amount)
{
  sw_table_row (table,
                sw_sheet_fill (sheet, "pack.cost.mark-up", "name",
                               cost_name (sheet, code), "share",
                               sw_sheet_quantity (sheet, sheet->job->plan.values[share],
                                                  SW_UNIT_PERCENT),
                               NULL),
                "", "", money (sheet, amount), NULL);
}

static void
add_mark_ups (const SwSheet *sheet, SwTable *table)
{
  const SwPrice *price = &sheet->tally->price;

  if (price->mobilisation > 0.0)
    sw_table_row (table, cost_name (sheet, "lump-sum"), "", "",
                  money (sheet, price->mobilisation), NULL);
  sum_row (sheet, table, "direct", price->direct);
  mark_up_row (sheet, table, "overhead", SW_PLAN_OVERHEAD, price->overhead);
  mark_up_row (sheet, table, "profit", SW_PLAN_PROFIT, price->profit);
  sum_row (sheet, table, "net", price->net);
  mark_up_row (sheet, table, "tax", SW_PLAN_TAX, price->tax);
  sum_row (sheet, table, "total", price->total);
}

static gboolean
has_single_pins (const SwTally *tally)
{
  for (guint i = 0; i < tally->pin_orders->len; i++)
    if (g_array_index (tally->pin_orders, SwPinOrder, i).boxes == 0)
      return TRUE;
  return FALSE;
}

void
sw_page_cost (SwSheet *sheet)
{
  const SwColumn columns[] = {
    { sw_sheet_get (sheet, "pack.column.line"), SW_CELL_TEXT, 0.0 },
    { sw_sheet_get (sheet, "pack.column.quantity"), SW_CELL_NUMBER, 0.0 },
    { sw_sheet_get (sheet, "pack.column.price"), SW_CELL_NUMBER, 0.0 },
    { sw_sheet_get (sheet, "pack.column.cost"), SW_CELL_NUMBER, 0.0 },
  };
  const char *currency = sheet->job->plan.currency;
  SwFlow *flow;
  SwTable *table;

  if (!sheet->tally->priced || !sheet->job->plan.cost_in_pack)
    return;
  flow = sw_sheet_flow (sheet);
  table = sw_table_new (&sheet->pen, SW_STYLE_BODY, columns, G_N_ELEMENTS (columns));
  add_lines (sheet, table);
  add_mark_ups (sheet, table);
  sw_flow_text (flow, SW_STYLE_BODY, SW_ROLE_TEXT,
                *currency != '\0' ? sw_sheet_fill (sheet, "pack.cost.how-in", "currency",
                                                   currency, NULL)
                                  : sw_sheet_get (sheet, "pack.cost.how"));
  sw_flow_space (flow, 1.5);
  sw_flow_table (flow, table);
  if (has_single_pins (sheet->tally))
    sw_flow_text (flow, SW_STYLE_SMALL, SW_ROLE_MUTED,
                  sw_sheet_get (sheet, "pack.cost.singly"));
  sw_sheet_add (sheet, sw_sheet_get (sheet, "pack.cost.title"), flow);
}
