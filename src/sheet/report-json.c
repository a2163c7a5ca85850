/* SPDX-License-Identifier: MIT */
#include "json-text.h"
#include "report-tally.h"

static void
write_areas (SwReportJson *json, const SwAreas *areas)
{
  sw_report_json_open (json, "areas", '{');
  sw_report_json_number (json, "net_m2", areas->net_m2);
  sw_report_json_number (json, "placed_m2", areas->placed_m2);
  sw_report_json_number (json, "pay_m2", areas->pay_m2);
  sw_report_json_number (json, "order_m2", areas->order_m2);
  sw_report_json_close (json, '}');
}

static void
write_run (SwReportJson *json, const SwFaceLayout *face, const SwRun *run)
{
  g_autofree char *label = sw_run_label (run);

  sw_report_json_open (json, NULL, '{');
  sw_report_json_string (json, "face", face->face->id);
  sw_report_json_string (json, "run", label);
  sw_report_json_number (json, "tier", run->tier + 1);
  sw_report_json_string (json, "kind", run->infill ? "infill" : "full");
  sw_report_json_number (json, "width_m", run->width_m);
  sw_report_json_number (json, "face_m", run->terms.face);
  sw_report_json_number (json, "cut_m", run->cut_m);
  sw_report_json_number (json, "pieces", run->n_pieces);
  sw_report_json_close (json, '}');
}

static void
write_runs (SwReportJson *json, const SwLayout *layout)
{
  sw_report_json_open (json, "runs", '[');
  for (guint f = 0; f < layout->n_faces; f++)
    for (guint r = 0; r < layout->faces[f].n_runs; r++)
      write_run (json, &layout->faces[f], &layout->faces[f].runs[r]);
  sw_report_json_close (json, ']');
}

static void
write_sizes (SwReportJson *json, const SwTally *tally)
{
  sw_report_json_open (json, "sizes", '[');
  for (guint i = 0; i < tally->roll_orders->len; i++)
    {
      const SwRollOrder *size = &g_array_index (tally->roll_orders, SwRollOrder, i);

      sw_report_json_open (json, NULL, '{');
      sw_report_json_number (json, "width_m", size->width_m);
      sw_report_json_number (json, "length_m", size->length_m);
      sw_report_json_string (json, "source", size->on_hand ? "on-hand" : "order");
      sw_report_json_number (json, "cut", size->cut);
      sw_report_json_number (json, size->on_hand ? "ready" : "order",
                             size->on_hand ? size->ready : size->order);
      sw_report_json_number (json, "mass_kg", size->mass_kg);
      sw_report_json_close (json, '}');
    }
  sw_report_json_close (json, ']');
}

static void
write_rolls (SwReportJson *json, const SwResult *result)
{
  const SwTally *tally = result->tally;

  sw_report_json_open (json, "rolls", '{');
  sw_report_json_number (json, "width_m", result->job->roll_width_m);
  sw_report_json_number (json, "length_m", result->job->roll_length_m);
  sw_report_json_number (json, "needed", tally->rolls);
  sw_report_json_number (json, "spare", tally->rolls_spare);
  sw_report_json_number (json, "order", tally->rolls_order);
  sw_report_json_number (json, "from_on_hand", tally->rolls_on_hand);
  sw_report_json_number (json, "ordered_m2", result->layout->ordered_m2);
  sw_report_json_number (json, "lower_bound_m2", result->layout->bound_m2);
  sw_report_json_number (json, "lower_bound", result->layout->rolls_bound);
  sw_report_json_number (json, "without_reuse", result->layout->rolls_naive);
  write_sizes (json, tally);
  sw_report_json_number (json, "pieces", tally->pieces);
  sw_report_json_number (json, "joints", tally->joints);
  sw_report_json_number (json, "piece_length_m", tally->piece_length_m);
  sw_report_json_number (json, "offcut_length_m", tally->offcut_length_m);
  sw_report_json_number (json, "mass_kg", tally->roll_mass_kg);
  sw_report_json_number (json, "diameter_m", tally->roll_diameter_m);
  sw_report_json_close (json, '}');
}

static void
write_cut_list (SwReportJson *json, const SwLayout *layout)
{
  sw_report_json_open (json, "cut_list", '[');
  for (int roll = 1; roll <= layout->rolls; roll++)
    {
      sw_report_json_open (json, NULL, '{');
      sw_report_json_number (json, "roll", roll);
      sw_report_json_number (json, "width_m", layout->cut_rolls[roll - 1].width_m);
      sw_report_json_number (json, "length_m", layout->cut_rolls[roll - 1].length_m);
      sw_report_json_string (json, "source",
                             layout->cut_rolls[roll - 1].on_hand ? "on-hand" : "order");
      sw_report_json_open (json, "pieces", '[');
      for (guint i = 0; i < layout->n_pieces; i++)
        if (layout->pieces[i].roll == roll)
          {
            g_autofree char *run = sw_report_run_words (layout, &layout->pieces[i]);

            sw_report_json_open (json, NULL, '{');
            sw_report_json_string (json, "run", run);
            sw_report_json_number (json, "order", layout->pieces[i].order + 1);
            sw_report_json_number (json, "from_m", layout->pieces[i].from_m);
            sw_report_json_number (json, "length_m", layout->pieces[i].length_m);
            sw_report_json_close (json, '}');
          }
      sw_report_json_close (json, ']');
      sw_report_json_number (json, "offcut_m", layout->cut_rolls[roll - 1].offcut_m);
      sw_report_json_close (json, '}');
    }
  sw_report_json_close (json, ']');
}

static void
write_pins (SwReportJson *json, const SwTally *tally)
{
  sw_report_json_open (json, "pins", '[');
  for (guint i = 0; i < tally->pin_orders->len; i++)
    {
      const SwPinOrder *order = &g_array_index (tally->pin_orders, SwPinOrder, i);

      sw_report_json_open (json, NULL, '{');
      sw_report_json_number (json, "need_length_m", order->need_m);
      sw_report_json_number (json, "length_m",
                             order->pin != NULL ? order->pin->length_m : order->need_m);
      sw_report_json_number (json, "count", (double) order->count);
      sw_report_json_number (json, "spare", (double) order->spare);
      sw_report_json_number (json, "order", (double) order->order);
      sw_report_json_number (json, "boxes", order->boxes);
      sw_report_json_open (json, "by_role", '{');
      for (int role = 0; role < SW_PIN_ROLE_COUNT; role++)
        sw_report_json_number (json, sw_pin_role_code ((SwPinRole) role),
                               (double) order->by_role[role]);
      sw_report_json_close (json, '}');
      sw_report_json_close (json, '}');
    }
  sw_report_json_close (json, ']');
}

/* Patches round obstacles, cut from off-cuts. */
static void
write_collars (SwReportJson *json, const SwTally *tally)
{
  sw_report_json_open (json, "collars", '{');
  sw_report_json_number (json, "count", tally->collars);
  sw_report_json_number (json, "area_m2", tally->collar_m2);
  sw_report_json_close (json, '}');
}

static void
write_trenches (SwReportJson *json, const SwTally *tally)
{
  sw_report_json_open (json, "trenches", '{');
  sw_report_json_number (json, "key_m", tally->key_trench_m);
  sw_report_json_number (json, "slots_m", tally->slot_m);
  sw_report_json_number (json, "toe_m", tally->toe_trench_m);
  sw_report_json_number (json, "bank_m3", tally->trench_bank_m3);
  sw_report_json_number (json, "loose_m3", tally->trench_loose_m3);
  sw_report_json_close (json, '}');
}

static void
write_input (SwReportJson *json, const SwInput *input, const SwTexts *texts)
{
  static const char *const origins[SW_ORIGIN_COUNT] = {
    [SW_ORIGIN_MEASURED] = "measured", [SW_ORIGIN_TYPED] = "typed",
    [SW_ORIGIN_PRACTICE] = "practice", [SW_ORIGIN_CATALOGUE] = "catalogue",
    [SW_ORIGIN_COMPUTED] = "computed",
  };
  gboolean sourced =
      input->origin == SW_ORIGIN_PRACTICE || input->origin == SW_ORIGIN_CATALOGUE;

  sw_report_json_open (json, NULL, '{');
  sw_report_json_string (json, "symbol", input->symbol);
  sw_report_json_number (json, "value", input->value);
  sw_report_json_string (json, "unit", sw_report_si_unit (input->unit));
  sw_report_json_string (json, "origin", origins[input->origin]);
  if (input->name != NULL)
    sw_report_json_string (json, "name", input->name);
  if (sourced)
    sw_report_json_string (json, "evidence", sw_evidence_code (input->evidence));
  if (sourced && input->source != NULL)
    sw_report_json_string (json, "source",
                           sw_report_source (input->source, input->evidence, texts));
  sw_report_json_close (json, '}');
}

static void
write_workings (SwReportJson *json, const SwTally *tally, const SwTexts *texts)
{
  static const char *const roundings[SW_ROUNDING_COUNT] = { "none", "up", "down" };

  sw_report_json_open (json, "workings", '[');
  for (guint i = 0; i < tally->workings->len; i++)
    {
      const SwWorking *working = g_ptr_array_index (tally->workings, i);
      g_autofree char *title = sw_report_working_title (working, texts);

      sw_report_json_open (json, NULL, '{');
      sw_report_json_string (json, "name", working->name);
      sw_report_json_string (json, "title", title);
      sw_report_json_number (json, "value", working->value);
      sw_report_json_string (json, "unit", sw_report_si_unit (working->unit));
      sw_report_json_string (json, "formula", working->formula);
      sw_report_json_string (json, "rounding", roundings[working->rounding]);
      sw_report_json_open (json, "inputs", '[');
      for (guint j = 0; j < working->inputs->len; j++)
        write_input (json, &g_array_index (working->inputs, SwInput, j), texts);
      sw_report_json_close (json, ']');
      sw_report_json_close (json, '}');
    }
  sw_report_json_close (json, ']');
}

char *
sw_report_tally_json (const SwResult *result, const SwTexts *texts)
{
  SwReportJson json = { .text = g_string_new (NULL) };

  sw_report_json_open (&json, NULL, '{');
  write_areas (&json, &result->tally->areas);
  write_runs (&json, result->layout);
  write_rolls (&json, result);
  write_cut_list (&json, result->layout);
  write_pins (&json, result->tally);
  write_collars (&json, result->tally);
  write_trenches (&json, result->tally);
  sw_report_json_order (&json, result);
  write_workings (&json, result->tally, texts);
  sw_report_json_close (&json, '}');
  return g_string_free (json.text, FALSE);
}
