/* SPDX-License-Identifier: MIT */
#include "marked-stick.h"
#include "tier-numbers.h"
#include <slopewright/base/count.h>
#include <string.h>

#define STICK_GAP_MM 8.0
#define ANSWER_ROW_MM 10.2
#define LENGTH_SHARE 0.01
#define CUT_WITHIN_M 0.05

/* The five checks are made for one tier: the first of the first face that has runs. */
typedef struct
{
  guint face, tier;
} Place;

static Place
place_to_check (const SwLayout *layout)
{
  for (guint f = 0; f < layout->n_faces; f++)
    for (guint t = 0; t < layout->faces[f].n_tiers; t++)
      if (layout->faces[f].tiers[t].n_runs > 0)
        return (Place){ f, t };
  return (Place){ 0, 0 };
}

/* The first working of a tier whose formula begins so; NULL where it has none. */
static const SwWorking *
working_of (const SwSheet *sheet, Place place, const char *formula)
{
  g_autofree char *prefix = g_strdup_printf (
      "%s.%u.", sheet->layout->faces[place.face].face->id, place.tier + 1);
  const GPtrArray *workings = sheet->tally->workings;

  for (guint i = 0; i < workings->len; i++)
    {
      const SwWorking *working = g_ptr_array_index (workings, i);

      if (g_str_has_prefix (working->name, prefix)
          && g_str_has_prefix (working->formula, formula))
        return working;
    }
  return NULL;
}

/* What the pack says, room for what is found, and how far they may be apart. */
static void
add_answer (const SwSheet *sheet, SwFlow *flow, const char *says, const char *within)
{
  const SwColumn columns[] = {
    { "", SW_CELL_TEXT, 32.0 },
    { "", SW_CELL_TEXT, 0.0 },
    { "", SW_CELL_TEXT, 34.0 },
    { "", SW_CELL_CHECK, 9.0 },
  };
  SwTable *table =
      sw_table_new (&sheet->pen, SW_STYLE_BODY, columns, G_N_ELEMENTS (columns));

  sw_table_set_ruled (table);
  sw_table_set_row_mm (table, ANSWER_ROW_MM);
  sw_table_row (table, sw_sheet_fill (sheet, "pack.hand.pack-says", "value", says, NULL),
                sw_sheet_get (sheet, "pack.hand.you-find"),
                sw_sheet_fill (sheet, "pack.hand.within", "value", within, NULL), "",
                NULL);
  sw_flow_space (flow, 1.0);
  sw_flow_table (flow, table);
}

/* @how: ending of the text that says what to do, where a check has several. */
static void
add_check (const SwSheet *sheet, SwFlow *flow, const char *code, const char *how,
           guint *number, const char *sum, const char *says, const char *within)
{
  const char *title =
      sw_sheet_get (sheet, sw_sheet_format (sheet, "pack.hand.%s.title", code));

  sw_flow_heading (flow, sw_sheet_format (sheet, "%u  %s", ++*number, title));
  sw_flow_text (
      flow, SW_STYLE_BODY, SW_ROLE_TEXT,
      sw_sheet_get (sheet, sw_sheet_format (sheet, "pack.hand.%s.do%s", code, how)));
  sw_flow_tie (flow);
  sw_flow_text (flow, SW_STYLE_BODY, SW_ROLE_TEXT, sw_sheet_plain (sheet, sum));
  sw_flow_tie (flow);
  add_answer (sheet, flow, says, within);
}

static void
add_worked (const SwSheet *sheet, SwFlow *flow, const char *code, guint *number,
            const SwWorking *working, const char *within)
{
  if (working != NULL)
    add_check (sheet, flow, code, "", number,
               sw_sheet_keep (sheet, sw_report_working_check (working, sheet->texts,
                                                              sheet->draw->style)),
               sw_sheet_quantity (sheet, working->value, working->unit), within);
}

static void
add_pins (const SwSheet *sheet, SwFlow *flow, guint *number, Place place)
{
  const SwFaceLayout *face = &sheet->layout->faces[place.face];
  double spacing_m = sw_practice_get (sheet->practice, SW_PRACTICE_TRENCH_PIN_M);
  gboolean closed = face->tiers[place.tier].closed;
  const char *pins;

  for (guint i = 0; i < face->n_trenches; i++)
    {
      const SwTrench *trench = &face->trenches[i];

      if (trench->kind != SW_TRENCH_KEY || trench->tier != place.tier)
        continue;
      pins = sw_sheet_count (sheet, sw_count_up (trench->length_m, spacing_m)
                                        + (closed ? 0 : 1));
      add_check (
          sheet, flow, "pins", closed ? "-round" : "", number,
          sw_sheet_fill (
              sheet, closed ? "pack.hand.pins.sum-round" : "pack.hand.pins.sum", "length",
              sw_sheet_keep (sheet, sw_report_calculator (trench->length_m, SW_UNIT_M,
                                                          sheet->draw->style)),
              "spacing",
              sw_sheet_keep (
                  sheet, sw_report_calculator (spacing_m, SW_UNIT_M, sheet->draw->style)),
              "result", pins, NULL),
          pins, sw_sheet_get (sheet, "pack.hand.one"));
      return;
    }
}

static void
add_checks (const SwSheet *sheet, SwFlow *flow)
{
  Place place = place_to_check (sheet->layout);
  double length_m = sheet->layout->faces[place.face].tiers[place.tier].length_m;
  const char *same = sw_sheet_get (sheet, "pack.hand.same");
  guint number = 0;

  sw_flow_text (flow, SW_STYLE_BODY, SW_ROLE_TEXT,
                sw_sheet_fill (sheet, "pack.hand.how", "place",
                               sw_sheet_place (sheet, place.face, place.tier), NULL));
  add_worked (
      sheet, flow, "length", &number, working_of (sheet, place, "tier_length"),
      sw_sheet_fill (sheet, "pack.hand.share", "length",
                     sw_sheet_quantity (sheet, LENGTH_SHARE * length_m, SW_UNIT_SMALL_M),
                     NULL));
  add_worked (sheet, flow, "runs", &number, working_of (sheet, place, "run_count"), same);
  add_worked (sheet, flow, "cut", &number, working_of (sheet, place, "cut_length"),
              sw_sheet_quantity (sheet, CUT_WITHIN_M, SW_UNIT_SMALL_M));
  add_worked (sheet, flow, "rolls", &number, sw_tally_working (sheet->tally, "rolls"),
              same);
  add_pins (sheet, flow, &number, place);
  sw_flow_space (flow, 3.0);
  sw_flow_write_in (flow, sw_sheet_get (sheet, "pack.hand.by"));
}

/* The stick stands along the right edge of the page; the checks stand beside it. */
void
sw_page_hand_check (SwSheet *sheet)
{
  double body_mm = sw_sheet_body_height_mm (sheet);
  g_autoptr (SwFigure) stick = sw_sheet_stick (sheet, body_mm);
  SwFlow *flow = sw_sheet_flow (sheet);
  g_autoptr (SwFlow) checks =
      sw_flow_new (&sheet->pen, sw_flow_width_mm (flow) - stick->width_mm - STICK_GAP_MM);
  g_autoptr (GPtrArray) bodies = NULL;

  add_checks (sheet, checks);
  bodies = sw_flow_to_pages (checks, body_mm);
  for (guint i = 0; i < bodies->len; i++)
    {
      SwFigure *page = sw_figure_new (sw_flow_width_mm (flow), body_mm);

      sw_figure_place (page, g_ptr_array_index (bodies, i), 0.0, 0.0);
      if (i == 0)
        sw_figure_place (page, stick, sw_flow_width_mm (flow) - stick->width_mm, 0.0);
      sw_flow_add (flow, page);
    }
  sw_sheet_add (sheet, sw_sheet_get (sheet, "pack.hand.title"), flow);
}
