/* SPDX-License-Identifier: MIT */
#include "sheet.h"
#include <string.h>

#define NAME_SHARE 0.72
/* Share of a page that is worth beginning the presets on. */
#define SHARED_PAGE_ROOM 0.4
#define CHAPTER_GAP_MM 9.0

/* Run by run the same sum: these stand in one table. */
static gboolean
is_cut_of_a_run (const SwWorking *working)
{
  return g_str_has_prefix (working->formula, "cut_length")
         && strstr (working->name, ".run.") != NULL;
}

/* Money is not for the crew: it stands on a page of its own, if at all. */
static gboolean
is_hidden (const SwWorking *working)
{
  return is_cut_of_a_run (working) || g_str_has_prefix (working->formula, "cost_");
}

/* "width 48.00 m (measured); side lap 100 mm (practice: …)" */
static const char *
inputs_words (const SwSheet *sheet, const SwWorking *working)
{
  g_autoptr (GString) words = g_string_new (NULL);

  for (guint i = 0; i < working->inputs->len; i++)
    {
      const SwInput *input = &g_array_index (working->inputs, SwInput, i);
      const char *name =
          sw_sheet_keep (sheet, sw_report_input_words (input, sheet->texts));
      const char *origin =
          sw_sheet_keep (sheet, sw_report_input_origin (input, sheet->texts));
      const char *value =
          sw_sheet_keep (sheet, sw_report_limit (input, sheet->draw->style));

      g_string_append_printf (words, "%s%s", i > 0 ? "; " : "",
                              sw_sheet_fill (sheet, "pack.workings.input", "name", name,
                                             "value", value, "origin", origin, NULL));
    }
  return sw_sheet_format (sheet, "%s", words->str);
}

static const char *
rounding_words (const SwSheet *sheet, const SwWorking *working)
{
  if (working->rounding == SW_ROUNDING_NONE)
    return "";
  return sw_sheet_format (
      sheet, ". %s",
      sw_sheet_get (sheet,
                    sw_sheet_format (sheet, "report.rounding.%d", working->rounding)));
}

static SwFigure *
title_line (const SwSheet *sheet, SwFlow *flow, const SwWorking *working)
{
  double width_mm = sw_flow_width_mm (flow);
  const char *title =
      sw_sheet_keep (sheet, sw_report_working_title (working, sheet->texts));
  g_autoptr (SwTextBlock) words = sw_text_block_new (
      &sheet->pen, SW_STYLE_BODY,
      sw_sheet_format (sheet, "*%s*  %s", sw_sheet_plain (sheet, title),
                       sw_sheet_plain (sheet, working->name)),
      NAME_SHARE * width_mm);
  g_autoptr (SwTextBlock) value = sw_text_block_new (
      &sheet->pen, SW_STYLE_BODY,
      sw_sheet_format (sheet, "*%s*", sw_sheet_working_value (sheet, working)),
      (1.0 - NAME_SHARE) * width_mm);
  guint lines = MAX (words->lines->len, value->lines->len);
  SwFigure *figure =
      sw_figure_new (width_mm, sw_text_block_height_mm (&sheet->pen, words, lines) + 1.0);

  sw_figure_segment (figure, SW_ROLE_TABLE_RULE, 0.0, 0.0, width_mm, 0.0);
  sw_text_block_draw (&sheet->pen, words, 0, lines, figure, SW_ROLE_TEXT, 0.0, 0.8,
                      NAME_SHARE * width_mm, SW_ALIGN_LEFT);
  sw_text_block_draw (&sheet->pen, value, 0, lines, figure, SW_ROLE_TEXT,
                      NAME_SHARE * width_mm, 0.8, (1.0 - NAME_SHARE) * width_mm,
                      SW_ALIGN_RIGHT);
  return figure;
}

static void
add_working (const SwSheet *sheet, SwFlow *flow, const SwWorking *working)
{
  const char *formula = sw_sheet_get (
      sheet, sw_sheet_format (sheet, "working.%s.formula", working->formula));
  const char *check = sw_sheet_keep (
      sheet, sw_report_working_check (working, sheet->texts, sheet->draw->style));

  sw_flow_space (flow, 2.2);
  sw_flow_add (flow, title_line (sheet, flow, working));
  sw_flow_tie (flow);
  sw_flow_text (flow, SW_STYLE_SMALL, SW_ROLE_TEXT,
                sw_sheet_format (sheet, "= %s%s", sw_sheet_plain (sheet, formula),
                                 rounding_words (sheet, working)));
  sw_flow_tie (flow);
  if (working->inputs->len > 0)
    {
      sw_flow_text (flow, SW_STYLE_SMALL, SW_ROLE_MUTED, inputs_words (sheet, working));
      sw_flow_tie (flow);
    }
  sw_flow_text (flow, SW_STYLE_SMALL, SW_ROLE_TEXT,
                sw_sheet_fill (sheet, "pack.workings.check", "check", check, NULL));
}

/* The face a working belongs to; -1 for the whole job. */
static int
face_of (const SwSheet *sheet, const SwWorking *working)
{
  if (g_str_equal (working->formula, "pins_order"))
    return -1;
  for (guint f = 0; f < sheet->layout->n_faces; f++)
    {
      const char *id = sheet->layout->faces[f].face->id;

      if (g_str_has_prefix (working->name, id) && working->name[strlen (id)] == '.')
        return (int) f;
    }
  return -1;
}

/* Workings stand in reading order, but those of a face may be in several stretches. */
static void
add_workings_of (const SwSheet *sheet, SwFlow *flow, int face)
{
  const GPtrArray *workings = sheet->tally->workings;

  sw_flow_heading (flow, face < 0 ? sw_sheet_get (sheet, "pack.workings.job")
                                  : sw_sheet_face (sheet, (guint) face));
  for (guint i = 0; i < workings->len; i++)
    {
      const SwWorking *working = g_ptr_array_index (workings, i);

      if (face_of (sheet, working) == face && !is_hidden (working))
        add_working (sheet, flow, working);
    }
}

static void
cut_row (const SwSheet *sheet, SwTable *table, const char *label, const SwRun *run)
{
  const SwRunTerms *terms = &run->terms;

  sw_table_row (
      table, label, sw_sheet_number (sheet, terms->set_back, SW_UNIT_M),
      sw_sheet_number (sheet, terms->key_lining, SW_UNIT_M),
      sw_sheet_number (sheet, terms->key_fold, SW_UNIT_M),
      sw_sheet_number (sheet, terms->face, SW_UNIT_M),
      sw_sheet_number (sheet, terms->slots, SW_UNIT_M),
      sw_sheet_number (sheet, terms->end_laps, SW_UNIT_M),
      sw_sheet_number (sheet, terms->toe, SW_UNIT_M),
      sw_sheet_format (sheet, "*%s*", sw_sheet_number (sheet, run->cut_m, SW_UNIT_M)),
      NULL);
}

/* One row for runs of a tier that are cut alike. */
static void
add_cut_rows (const SwSheet *sheet, SwTable *table, const SwFaceLayout *face, guint tier)
{
  g_autoptr (GPtrArray) groups = sw_sheet_alike_runs (face, tier);

  for (guint i = 0; i < groups->len; i++)
    {
      const GArray *runs = g_ptr_array_index (groups, i);

      cut_row (sheet, table,
               sw_sheet_format (sheet, "%s-%s", face->face->id,
                                sw_sheet_runs (sheet, face, runs)),
               &face->runs[g_array_index (runs, guint, 0)]);
    }
}

/* Whether runs within a tier differ: else the tiers' own workings have said it all. */
static gboolean
runs_differ (const SwSheet *sheet)
{
  for (guint f = 0; f < sheet->layout->n_faces; f++)
    for (guint t = 0; t < sheet->layout->faces[f].n_tiers; t++)
      {
        g_autoptr (GPtrArray) groups = sw_sheet_alike_runs (&sheet->layout->faces[f], t);

        if (groups->len > 1)
          return TRUE;
      }
  return FALSE;
}

/* How the cut length of every run is made up. */
static void
add_cut_lengths (const SwSheet *sheet, SwFlow *flow)
{
  static const char *const codes[] = { "run",   "set-back", "lining", "fold", "face",
                                       "slots", "end-laps", "toe",    "cut" };
  SwColumn columns[G_N_ELEMENTS (codes)];
  SwTable *table;

  for (guint i = 0; i < G_N_ELEMENTS (codes); i++)
    columns[i] = (SwColumn){ sw_sheet_get (sheet, sw_sheet_format (sheet, "pack.term.%s",
                                                                   codes[i])),
                             i == 0 ? SW_CELL_TEXT : SW_CELL_NUMBER, 0.0 };
  table = sw_table_new (&sheet->pen, SW_STYLE_SMALL, columns, G_N_ELEMENTS (columns));
  for (guint f = 0; f < sheet->layout->n_faces; f++)
    for (guint t = 0; t < sheet->layout->faces[f].n_tiers; t++)
      add_cut_rows (sheet, table, &sheet->layout->faces[f], t);
  sw_flow_heading (flow, sw_sheet_fill (sheet, "pack.term.title", "unit",
                                        sw_quantity_unit (SW_UNIT_M, sheet->draw->style),
                                        NULL));
  sw_flow_table (flow, table);
}

static void
add_workings (const SwSheet *sheet, SwFlow *flow)
{
  sw_flow_text (flow, SW_STYLE_BODY, SW_ROLE_TEXT,
                sw_sheet_get (sheet, "pack.workings.how"));
  add_workings_of (sheet, flow, -1);
  for (guint f = 0; f < sheet->layout->n_faces; f++)
    add_workings_of (sheet, flow, (int) f);
  if (runs_differ (sheet))
    add_cut_lengths (sheet, flow);
}

/* Workings that end high on a page leave the rest of it to the presets. */
void
sw_page_workings (SwSheet *sheet)
{
  SwFlow *flow = sw_sheet_flow (sheet);
  double body_mm = sw_sheet_body_height_mm (sheet);

  add_workings (sheet, flow);
  if (sw_flow_room_mm (flow, body_mm) < SHARED_PAGE_ROOM * body_mm)
    {
      sw_sheet_add (sheet, sw_sheet_get (sheet, "pack.workings.title"), flow);
      flow = sw_sheet_flow (sheet);
      sw_sheet_presets (sheet, flow);
      sw_sheet_add (sheet, sw_sheet_get (sheet, "pack.presets.title"), flow);
      return;
    }
  sw_flow_space (flow, CHAPTER_GAP_MM);
  sw_flow_heading (flow, sw_sheet_get (sheet, "pack.presets.title"));
  sw_sheet_presets (sheet, flow);
  sw_sheet_add (sheet, sw_sheet_get (sheet, "pack.workings.title-both"), flow);
}
