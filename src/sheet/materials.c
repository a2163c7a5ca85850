/* SPDX-License-Identifier: MIT */
#include "sheet.h"

#define TILE_GAP_MM 3.0
/* A heading above the cut list. */

static void
material_row (const SwSheet *sheet, SwTable *table, const char *item, const char *spec,
              const char *need, const char *allowance, const char *order,
              const char *packs)
{
  sw_table_row (table, item, spec, need, allowance,
                sw_sheet_format (sheet, "*%s*", order), packs, "", NULL);
}

static const char *
blanket_spec (const SwSheet *sheet, const SwRollOrder *order)
{
  return sw_sheet_fill (sheet, "pack.item.blanket-spec", "blanket",
                        sw_sheet_blanket (sheet), "width",
                        sw_sheet_quantity (sheet, order->width_m, SW_UNIT_M), "length",
                        sw_sheet_quantity (sheet, order->length_m, SW_UNIT_M), "mass",
                        sw_sheet_quantity (sheet, order->mass_kg, SW_UNIT_KG), NULL);
}

static const char *
rolls_words (const SwSheet *sheet, int count)
{
  return sw_sheet_fill (sheet, count == 1 ? "pack.rolls.one" : "pack.rolls", "count",
                        sw_sheet_count (sheet, count), NULL);
}

static void
add_ordered_row (const SwSheet *sheet, SwTable *table, const SwRollOrder *order)
{
  material_row (sheet, table, sw_sheet_get (sheet, "pack.item.blanket"),
                blanket_spec (sheet, order), rolls_words (sheet, order->cut),
                sw_sheet_fill (sheet, "pack.spare", "count",
                               sw_sheet_count (sheet, order->spare), "rate",
                               sw_sheet_quantity (sheet, sheet->tally->allowance.share,
                                                  SW_UNIT_PERCENT),
                               NULL),
                rolls_words (sheet, order->order),
                sw_sheet_quantity (sheet, order->order * order->width_m * order->length_m,
                                   SW_UNIT_M2));
}

/* Checked against what lies there, so listed even where none is cut. */
static void
add_on_hand_row (const SwSheet *sheet, SwTable *table, const SwRollOrder *order)
{
  material_row (sheet, table, sw_sheet_get (sheet, "pack.item.blanket-on-hand"),
                blanket_spec (sheet, order),
                sw_sheet_fill (sheet, "pack.on-hand.used", "count",
                               sw_sheet_count (sheet, order->cut), "ready",
                               sw_sheet_count (sheet, order->ready), NULL),
                sw_sheet_get (sheet, "pack.none-added"),
                sw_sheet_get (sheet, "pack.on-hand.order"), "");
}

static void
add_blanket_rows (const SwSheet *sheet, SwTable *table)
{
  const GArray *orders = sheet->tally->roll_orders;

  for (guint i = 0; i < orders->len; i++)
    {
      const SwRollOrder *order = &g_array_index (orders, SwRollOrder, i);

      if (order->on_hand)
        add_on_hand_row (sheet, table, order);
      else if (order->order > 0 || i == 0)
        add_ordered_row (sheet, table, order);
    }
}

static void
add_pin_row (const SwSheet *sheet, SwTable *table, const SwPinOrder *order)
{
  const SwPin *pin = order->pin;
  const char *length =
      sw_sheet_limit (sheet, pin != NULL ? pin->length_m : order->need_m, SW_LIMIT_LEAST);
  const char *spec =
      pin == NULL
          ? sw_sheet_fill (sheet, "pack.item.pin-none", "need",
                           sw_sheet_limit (sheet, order->need_m, SW_LIMIT_LEAST), NULL)
      : pin->wire_m > 0.0
          ? sw_sheet_fill (sheet, "pack.item.pin-spec", "length", length, "crown",
                           sw_sheet_quantity (sheet, pin->crown_m, SW_UNIT_SMALL_M),
                           "wire",
                           sw_sheet_quantity (sheet, pin->wire_m, SW_UNIT_SMALL_M), NULL)
          : sw_sheet_fill (sheet, "pack.item.stake-spec", "length", length, NULL);

  material_row (sheet, table,
                pin != NULL ? sw_sheet_get (sheet, sw_pin_name_id (pin))
                            : sw_sheet_get (sheet, "pack.item.pin"),
                spec, sw_sheet_count (sheet, (double) order->count),
                sw_sheet_fill (sheet, "pack.spare", "count",
                               sw_sheet_count (sheet, (double) order->spare), "rate",
                               sw_sheet_practice (sheet, SW_PRACTICE_PIN_SPARE), NULL),
                sw_sheet_count (sheet, (double) order->order),
                order->boxes > 0 ? sw_sheet_fill (
                    sheet, order->boxes == 1 ? "pack.boxes.one" : "pack.boxes", "count",
                    sw_sheet_count (sheet, order->boxes), "each",
                    sw_sheet_count (sheet, pin->per_box), NULL)
                                 : sw_sheet_get (sheet, "pack.singly"));
}

/* What the tag of the one species says, or where the species of a mix are listed. */
static const char *
seed_spec (const SwSheet *sheet)
{
  const SwSeedMix *mix = &sheet->job->seed;
  const SwSeedSpecies *species = mix->species;

  if (sw_sheet_has_mix (sheet))
    return sw_sheet_fill (sheet, "pack.item.seed-mix-spec", "name", mix->name, "count",
                          sw_sheet_count (sheet, mix->n_species), "page",
                          sw_sheet_get (sheet, "pack.work.title"), NULL);
  return sw_sheet_fill (
      sheet, "pack.item.seed-spec", "name",
      *mix->name != '\0' ? mix->name : species->name, "purity",
      sw_sheet_quantity (sheet, species->purity, SW_UNIT_PERCENT), "germination",
      sw_sheet_quantity (sheet, species->germination + species->hard, SW_UNIT_PERCENT),
      NULL);
}

static void
add_seed_row (const SwSheet *sheet, SwTable *table)
{
  if (sheet->tally->seed_bulk_kg <= 0.0)
    return;
  material_row (
      sheet, table, sw_sheet_get (sheet, "pack.item.seed"), seed_spec (sheet),
      sw_sheet_fill (sheet, "pack.item.seed-need", "pls",
                     sw_sheet_quantity (sheet, sheet->tally->seed_pls_kg, SW_UNIT_KG),
                     NULL),
      sw_sheet_get (sheet, "pack.none-added"),
      sw_sheet_quantity (sheet, sheet->tally->seed_bulk_kg, SW_UNIT_KG),
      sw_sheet_get (sheet, "pack.item.seed-bags"));
}

/* "10-20-10": percent by mass, as on the bag. */
static const char *
label_number (const SwSheet *sheet, SwPlanNumber number)
{
  return sw_sheet_number (sheet, sheet->job->plan.values[number], SW_UNIT_PERCENT);
}

static void
add_fertiliser_row (const SwSheet *sheet, SwTable *table)
{
  const SwTally *tally = sheet->tally;
  const SwWorkPlan *plan = &sheet->job->plan;
  const char *mass = sw_sheet_quantity (sheet, tally->fertiliser_kg, SW_UNIT_KG);
  double bag_kg = plan->values[SW_PLAN_BAG_KG];
  gboolean bagged = tally->fertiliser_bags > 0;

  if (!(tally->fertiliser_kg > 0.0))
    return;
  material_row (
      sheet, table, sw_sheet_get (sheet, "pack.item.fertiliser"),
      sw_sheet_fill (sheet, "pack.item.fertiliser-spec", "name", plan->fertiliser, "n",
                     label_number (sheet, SW_PLAN_N), "p2o5",
                     label_number (sheet, SW_PLAN_P2O5), "k2o",
                     label_number (sheet, SW_PLAN_K2O), "rate",
                     sw_sheet_quantity (sheet, tally->fertiliser.product_kg_per_m2,
                                        SW_UNIT_KG_PER_M2),
                     NULL),
      mass, sw_sheet_get (sheet, "pack.none-added"),
      bagged ? sw_sheet_quantity (sheet, tally->fertiliser_bags * bag_kg, SW_UNIT_KG)
             : mass,
      bagged
          ? sw_sheet_fill (sheet,
                           tally->fertiliser_bags == 1 ? "pack.item.fertiliser-bags.one"
                                                       : "pack.item.fertiliser-bags",
                           "count", sw_sheet_count (sheet, tally->fertiliser_bags),
                           "each", sw_sheet_quantity (sheet, bag_kg, SW_UNIT_KG), NULL)
          : sw_sheet_get (sheet, "pack.item.fertiliser-loose"));
}

static const char *
allowance_id (const SwSheet *sheet)
{
  if (sheet->job->plan.allowance == SW_ALLOWANCE_PRACTICE)
    return "pack.allowance.practice";
  return sheet->tally->allowance.extra > 0 ? "pack.allowance.added"
                                           : "pack.allowance.met";
}

/* What the order has beyond the cutting plan, and what rounding alone gives. */
static void
add_allowance (const SwSheet *sheet, SwFlow *flow)
{
  const SwAllowanceTally *allowance = &sheet->tally->allowance;
  const char *basis = sw_sheet_get (
      sheet, sw_sheet_format (sheet, "allowance.%s",
                              sw_allowance_codes[sheet->job->plan.allowance]));

  sw_flow_space (flow, 1.5);
  sw_flow_text (flow, SW_STYLE_BODY, SW_ROLE_TEXT,
                sw_sheet_fill (
                    sheet, allowance_id (sheet), "rolls",
                    sw_sheet_count (sheet, sheet->tally->rolls_order), "spare",
                    sw_sheet_quantity (sheet, allowance->spare_m, SW_UNIT_M), "given",
                    sw_sheet_quantity (sheet, allowance->given, SW_UNIT_PERCENT), "share",
                    sw_sheet_quantity (sheet, allowance->share, SW_UNIT_PERCENT), "basis",
                    basis, "extra", sw_sheet_count (sheet, allowance->extra), NULL));
  if (sheet->job->plan.spare_roll)
    sw_flow_text (flow, SW_STYLE_BODY, SW_ROLE_TEXT,
                  sw_sheet_get (sheet, "pack.allowance.spare-roll"));
}

/* Things without a number of their own; what they are for stands in the text. */
static void
add_tool_rows (const SwSheet *sheet, SwTable *table)
{
  static const char *const tools[] = { "trench", "lay", "measure", "seed", "protect" };

  for (guint i = 0; i < G_N_ELEMENTS (tools); i++)
    sw_table_row (
        table,
        sw_sheet_get (sheet, sw_sheet_format (sheet, "pack.tools.%s.title", tools[i])),
        sw_sheet_get (sheet, sw_sheet_format (sheet, "pack.tools.%s", tools[i])), "",
        NULL);
}

static void
add_materials (const SwSheet *sheet, SwFlow *flow)
{
  const SwColumn columns[] = {
    { sw_sheet_get (sheet, "pack.column.item"), SW_CELL_TEXT, 0.0 },
    { sw_sheet_get (sheet, "pack.column.spec"), SW_CELL_TEXT, 0.0 },
    { sw_sheet_get (sheet, "pack.column.need"), SW_CELL_NUMBER, 0.0 },
    { sw_sheet_get (sheet, "pack.column.allowance"), SW_CELL_TEXT, 0.0 },
    { sw_sheet_get (sheet, "pack.column.order"), SW_CELL_NUMBER, 0.0 },
    { sw_sheet_get (sheet, "pack.column.packs"), SW_CELL_TEXT, 0.0 },
    { sw_sheet_get (sheet, "pack.column.checked"), SW_CELL_CHECK, 0.0 },
  };
  const SwColumn tool_columns[] = {
    { sw_sheet_get (sheet, "pack.column.tools"), SW_CELL_TEXT, 32.0 },
    { "", SW_CELL_TEXT, 0.0 },
    { sw_sheet_get (sheet, "pack.column.on-site"), SW_CELL_CHECK, 0.0 },
  };
  SwTable *table =
      sw_table_new (&sheet->pen, SW_STYLE_BODY, columns, G_N_ELEMENTS (columns));
  SwTable *tools = sw_table_new (&sheet->pen, SW_STYLE_BODY, tool_columns,
                                 G_N_ELEMENTS (tool_columns));

  add_blanket_rows (sheet, table);
  for (guint i = 0; i < sheet->tally->pin_orders->len; i++)
    add_pin_row (sheet, table, &g_array_index (sheet->tally->pin_orders, SwPinOrder, i));
  add_seed_row (sheet, table);
  add_fertiliser_row (sheet, table);
  sw_flow_table (flow, table);
  add_allowance (sheet, flow);
  add_tool_rows (sheet, tools);
  sw_flow_space (flow, 4.0);
  sw_flow_table (flow, tools);
}

/* The four areas side by side, each with the words that say what it is. */
static void
add_areas (const SwSheet *sheet, SwFlow *flow)
{
  const SwAreas *areas = &sheet->tally->areas;
  const struct
  {
    const char *code;
    double value;
  } cells[] = { { "net", areas->net_m2 },
                { "placed", areas->placed_m2 },
                { "pay", areas->pay_m2 },
                { "order", areas->order_m2 } };
  double width_mm = sw_flow_share_mm (flow, TILE_GAP_MM, G_N_ELEMENTS (cells));
  SwFlow *inners[G_N_ELEMENTS (cells)];

  for (guint i = 0; i < G_N_ELEMENTS (cells); i++)
    {
      const char *title = sw_sheet_get (
          sheet, sw_sheet_format (sheet, "pack.area.%s.title", cells[i].code));

      inners[i] = sw_flow_new (&sheet->pen, sw_flow_box_width_mm (width_mm));
      sw_flow_text (inners[i], SW_STYLE_BODY, SW_ROLE_TEXT,
                    sw_sheet_format (sheet, "*%s*", title));
      sw_flow_text (inners[i], SW_STYLE_HEADING, SW_ROLE_HEADING,
                    sw_sheet_quantity (sheet, cells[i].value, SW_UNIT_M2));
      sw_flow_text (
          inners[i], SW_STYLE_SMALL, SW_ROLE_TEXT,
          sw_sheet_get (sheet, sw_sheet_format (sheet, "pack.area.%s", cells[i].code)));
    }
  sw_flow_heading (flow, sw_sheet_get (sheet, "pack.areas.title"));
  sw_flow_boxes (flow, SW_ROLE_FRAME, TILE_GAP_MM, inners, G_N_ELEMENTS (cells));
}

static int
compare_place_in_roll (gconstpointer a, gconstpointer b)
{
  const SwPiece *x = *(const SwPiece *const *) a, *y = *(const SwPiece *const *) b;

  return (x->from_m > y->from_m) - (x->from_m < y->from_m);
}

/* The pieces of a roll in the order they come off it. */
static GPtrArray *
pieces_of_roll (const SwLayout *layout, int roll)
{
  GPtrArray *pieces = g_ptr_array_new ();

  for (guint i = 0; i < layout->n_pieces; i++)
    if (layout->pieces[i].roll == roll)
      g_ptr_array_add (pieces, &layout->pieces[i]);
  g_ptr_array_sort (pieces, compare_place_in_roll);
  return pieces;
}

/* "A-7: 14.77 m", and which piece of the run where it has several. */
static const char *
piece_words (const SwSheet *sheet, const SwPiece *piece)
{
  const SwFaceLayout *face = &sheet->layout->faces[piece->face];
  const SwRun *run = &face->runs[piece->run];
  const char *label = sw_sheet_keep (sheet, sw_run_label (run));
  const char *length = sw_sheet_quantity (sheet, piece->length_m, SW_UNIT_M);

  return sw_sheet_fill (sheet, run->n_pieces > 1 ? "pack.cut.piece-of" : "pack.cut.piece",
                        "face", face->face->id, "run", label, "length", length, "order",
                        sw_sheet_format (sheet, "%u", piece->order + 1), "of",
                        sw_sheet_format (sheet, "%u", run->n_pieces), NULL);
}

/* "7", or "7: 2.44 m × 12.4 m, on hand" where rolls are not all alike. */
static const char *
roll_words (const SwSheet *sheet, int roll)
{
  const SwCutRoll *cut = &sheet->layout->cut_rolls[roll - 1];
  const char *number = sw_sheet_format (sheet, "%d", roll);

  if (!sw_layout_mixes_rolls (sheet->layout))
    return number;
  return sw_sheet_fill (sheet, cut->on_hand ? "pack.cut.roll-on-hand" : "pack.cut.roll",
                        "number", number, "width",
                        sw_sheet_quantity (sheet, cut->width_m, SW_UNIT_M), "length",
                        sw_sheet_quantity (sheet, cut->length_m, SW_UNIT_M), NULL);
}

static void
add_roll_row (const SwSheet *sheet, SwTable *table, int roll)
{
  g_autoptr (GPtrArray) pieces = pieces_of_roll (sheet->layout, roll);
  g_autoptr (GString) words = g_string_new (NULL);
  double used_m = 0.0;

  for (guint i = 0; i < pieces->len; i++)
    {
      const SwPiece *piece = g_ptr_array_index (pieces, i);

      g_string_append_printf (words, "%s%s", i > 0 ? "   " : "",
                              piece_words (sheet, piece));
      used_m += piece->length_m;
    }
  sw_table_row (
      table, roll_words (sheet, roll), words->str,
      sw_sheet_quantity (sheet, used_m, SW_UNIT_M),
      sw_sheet_quantity (sheet, sheet->layout->cut_rolls[roll - 1].offcut_m, SW_UNIT_M),
      "", NULL);
}

/* A length with all the digits that its whole tenths of a millimetre have. */
static const char *
exact_length (const SwSheet *sheet, double length_m)
{
  return sw_sheet_keep (sheet,
                        sw_report_calculator (length_m, SW_UNIT_M, sheet->draw->style));
}

/* Patches come from off-cuts: they are no line of the cut list, yet have to be cut. */
static void
add_patches (const SwSheet *sheet, SwFlow *flow)
{
  if (sheet->tally->collars == 0)
    return;
  sw_flow_space (flow, 1.5);
  sw_flow_text (
      flow, SW_STYLE_BODY, SW_ROLE_TEXT,
      sw_sheet_fill (sheet, "pack.cut-list.patches", "count",
                     sw_sheet_count (sheet, sheet->tally->collars), "area",
                     sw_sheet_quantity (sheet, sheet->tally->collar_m2, SW_UNIT_M2),
                     NULL));
}

static const char *
how_words (const SwSheet *sheet)
{
  const SwTally *tally = sheet->tally;
  const SwLayout *layout = sheet->layout;

  if (!sw_layout_mixes_rolls (layout))
    return sw_sheet_fill (sheet, "pack.cut-list.how", "rolls",
                          sw_sheet_count (sheet, tally->rolls), "bound",
                          sw_sheet_count (sheet, layout->rolls_bound), "naive",
                          sw_sheet_count (sheet, layout->rolls_naive), NULL);
  return sw_sheet_fill (
      sheet, layout->least ? "pack.cut-list.how-mixed-least" : "pack.cut-list.how-mixed",
      "rolls", sw_sheet_count (sheet, layout->rolls), "on_hand",
      sw_sheet_count (sheet, tally->rolls_on_hand), "order",
      sw_sheet_count (sheet, tally->rolls), "area",
      sw_sheet_quantity (sheet, layout->ordered_m2, SW_UNIT_M2), "bound",
      sw_sheet_quantity (sheet, layout->bound_m2, SW_UNIT_M2), NULL);
}

static const char *
balance_words (const SwSheet *sheet)
{
  const SwTally *tally = sheet->tally;

  return sw_sheet_fill (
      sheet,
      sw_layout_mixes_rolls (sheet->layout) ? "pack.cut-list.balance-mixed"
                                            : "pack.cut-list.balance",
      "pieces", exact_length (sheet, tally->piece_length_m), "offcuts",
      exact_length (sheet, tally->offcut_length_m), "rolls",
      sw_sheet_count (sheet, sheet->layout->rolls), "roll",
      exact_length (sheet, sheet->job->roll_length_m), "total",
      exact_length (sheet, tally->piece_length_m + tally->offcut_length_m), NULL);
}

static void
add_cut_list (const SwSheet *sheet, SwFlow *flow, SwStyle style)
{
  const SwColumn columns[] = {
    { sw_sheet_get (sheet, "pack.column.roll"),
      sw_layout_mixes_rolls (sheet->layout) ? SW_CELL_TEXT : SW_CELL_NUMBER, 0.0 },
    { sw_sheet_get (sheet, "pack.column.pieces"), SW_CELL_TEXT, 0.0 },
    { sw_sheet_get (sheet, "pack.column.used"), SW_CELL_NUMBER, 0.0 },
    { sw_sheet_get (sheet, "pack.column.offcut"), SW_CELL_NUMBER, 0.0 },
    { sw_sheet_get (sheet, "pack.column.cut"), SW_CELL_CHECK, 0.0 },
  };
  SwTable *table = sw_table_new (&sheet->pen, style, columns, G_N_ELEMENTS (columns));

  for (int roll = 1; roll <= sheet->layout->rolls; roll++)
    add_roll_row (sheet, table, roll);
  sw_flow_text (flow, SW_STYLE_BODY, SW_ROLE_TEXT, how_words (sheet));
  sw_flow_tie (flow);
  sw_flow_space (flow, 1.5);
  sw_flow_table (flow, table);
  sw_flow_tie (flow);
  sw_flow_space (flow, 1.5);
  sw_flow_text (flow, SW_STYLE_BODY, SW_ROLE_TEXT, balance_words (sheet));
  add_patches (sheet, flow);
}

/* Materials and cut list as one flow; NULL where they take more than a page. */
static SwFlow *
both_on_one_page (SwSheet *sheet, double tight)
{
  double usual = sheet->pen.tight;
  SwFlow *flow;

  sheet->pen.tight = tight;
  flow = sw_sheet_flow (sheet);
  add_materials (sheet, flow);
  add_areas (sheet, flow);
  sw_flow_heading (flow, sw_sheet_get (sheet, "pack.cut-list.title"));
  add_cut_list (sheet, flow, SW_STYLE_BODY);
  sheet->pen.tight = usual;
  if (sw_flow_height_mm (flow) > sw_sheet_body_height_mm (sheet))
    g_clear_pointer (&flow, sw_flow_free);
  return flow;
}

/* A short cut list stays below the materials; a longer one is a page for the cutter. */
void
sw_page_materials (SwSheet *sheet)
{
  static const double tighter[] = { 0.5, 1.0 };
  SwFlow *flow = both_on_one_page (sheet, sheet->pen.tight), *list;

  for (guint i = 0; i < G_N_ELEMENTS (tighter) && flow == NULL; i++)
    flow = both_on_one_page (sheet, tighter[i]);
  if (flow != NULL)
    {
      sw_sheet_add (sheet, sw_sheet_get (sheet, "pack.materials.title-both"), flow);
      return;
    }
  flow = sw_sheet_flow (sheet);
  add_materials (sheet, flow);
  add_areas (sheet, flow);
  sw_sheet_add (sheet, sw_sheet_get (sheet, "pack.materials.title"), flow);
  list = sw_sheet_flow (sheet);
  add_cut_list (sheet, list, SW_STYLE_CREW);
  sw_sheet_add (sheet, sw_sheet_get (sheet, "pack.cut-list.title"), list);
}
