/* SPDX-License-Identifier: MIT */
#include "judgement.h"
#include <math.h>
#include <slopewright/judge/choice.h>
#include <slopewright/judge/face-flow.h>
#include <slopewright/judge/face-slide.h>
#include <slopewright/judge/roll-lift.h>

#define TYPE_MM 46.0
#define LABEL_MM 52.0
#define VALUE_MM 26.0

static SwTable *
number_table (const SwSheet *sheet, const char *part, const char *const *codes,
              guint count)
{
  g_autofree SwColumn *columns = g_new0 (SwColumn, count);

  for (guint i = 0; i < count; i++)
    columns[i] = (SwColumn){
      sw_sheet_get (sheet, sw_sheet_format (sheet, "pack.judge.%s.%s", part, codes[i])),
      i == 0 ? SW_CELL_TEXT : SW_CELL_NUMBER, 0.0
    };
  return sw_table_new (&sheet->pen, SW_STYLE_BODY, columns, count);
}

/* Heading and table, or the heading and what is missing for it. */
static void
add_part (const SwSheet *sheet, SwFlow *flow, const char *part, SwTable *table)
{
  const char *ending = sw_table_n_rows (table) > 0 ? "how" : "missing";
  SwNumberStyle style = sheet->draw->style;

  sw_flow_heading (
      flow, sw_sheet_get (sheet, sw_sheet_format (sheet, "pack.judge.%s.title", part)));
  sw_flow_text (
      flow, SW_STYLE_BODY, SW_ROLE_TEXT,
      sw_sheet_fill (sheet, sw_sheet_format (sheet, "pack.judge.%s.%s", part, ending),
                     "r_unit", sw_quantity_unit (SW_UNIT_EROSIVITY, style), "k_unit",
                     sw_quantity_unit (SW_UNIT_ERODIBILITY, style), NULL));
  if (sw_table_n_rows (table) > 0)
    {
      sw_flow_tie (flow);
      sw_flow_space (flow, 1.5);
    }
  sw_flow_table (flow, table);
}

static const char *
choice_cell (const SwSheet *sheet, SwChoiceAspect aspect, const SwChoiceTest *test)
{
  const char *words = sw_sheet_plain (
      sheet, sw_sheet_keep (sheet, sw_report_choice_cell (aspect, test, sheet->texts,
                                                          sheet->draw->style)));

  return test->answer == SW_CHOICE_FAILS ? sw_sheet_format (sheet, "*%s*", words) : words;
}

static void
add_choice_row (const SwSheet *sheet, SwTable *table, const SwChoice *choice)
{
  const char *cells[SW_CHOICE_COUNT];
  gboolean of_sheet = sw_product_given (&sheet->job->product);
  const char *name = sw_sheet_plain (
      sheet,
      sw_sheet_keep (sheet, sw_report_choice_type (choice, of_sheet, sheet->texts)));

  for (int i = 0; i < SW_CHOICE_COUNT; i++)
    cells[i] = choice_cell (sheet, (SwChoiceAspect) i, &choice->tests[i]);
  sw_table_row (table,
                choice->chosen || choice->product != NULL
                    ? sw_sheet_format (sheet, "*%s*", name)
                    : name,
                cells[SW_CHOICE_GRADIENT], cells[SW_CHOICE_LIFE], cells[SW_CHOICE_SHEAR],
                cells[SW_CHOICE_ANIMALS], cells[SW_CHOICE_MOWING],
                sw_sheet_get (sheet, choice->meets ? "pack.judge.choice.meets"
                                                   : "pack.judge.choice.fails"),
                NULL);
}

static void
add_needs_row (const SwSheet *sheet, SwTable *table, const SwChoice *choice)
{
  const char *cells[SW_CHOICE_COUNT];

  for (int i = 0; i < SW_CHOICE_COUNT; i++)
    cells[i] = sw_sheet_plain (
        sheet, sw_sheet_keep (
                   sheet, sw_report_choice_need ((SwChoiceAspect) i, &choice->tests[i],
                                                 sheet->texts, sheet->draw->style)));
  sw_table_total (table, sw_sheet_get (sheet, "choice.needed"), cells[SW_CHOICE_GRADIENT],
                  cells[SW_CHOICE_LIFE], cells[SW_CHOICE_SHEAR], cells[SW_CHOICE_ANIMALS],
                  cells[SW_CHOICE_MOWING], "", NULL);
}

static SwTable *
choice_table (const SwSheet *sheet)
{
  SwColumn columns[SW_CHOICE_COUNT + 2] = { { sw_sheet_get (sheet, "choice.type"),
                                              SW_CELL_TEXT, TYPE_MM } };

  for (int i = 0; i < SW_CHOICE_COUNT; i++)
    columns[1 + i] =
        (SwColumn){ sw_sheet_get (sheet,
                                  sw_sheet_format (sheet, "choice.%s",
                                                   sw_choice_code ((SwChoiceAspect) i))),
                    SW_CELL_TEXT, 0.0 };
  columns[SW_CHOICE_COUNT + 1] =
      (SwColumn){ sw_sheet_get (sheet, "pack.judge.choice.all"), SW_CELL_TEXT, 0.0 };
  return sw_table_new (&sheet->pen, SW_STYLE_SMALL, columns, G_N_ELEMENTS (columns));
}

/* Longest tier down the fall line: class tables name no length, product sheets may. */
static double
longest_m (const SwLayout *layout)
{
  double longest = 0.0;

  for (guint f = 0; f < layout->n_faces; f++)
    for (guint t = 0; t < layout->faces[f].n_tiers; t++)
      longest = MAX (longest, layout->faces[f].tiers[t].length_m);
  return longest;
}

static void
add_product (const SwSheet *sheet, SwFlow *flow)
{
  char *words = sw_report_product (&sheet->job->product, sheet->texts);

  if (words != NULL)
    sw_flow_text (flow, SW_STYLE_BODY, SW_ROLE_TEXT,
                  sw_sheet_plain (sheet, sw_sheet_keep (sheet, words)));
}

void
sw_judge_add_choice (const SwSheet *sheet, SwFlow *flow, gboolean meeting)
{
  g_autoptr (GArray) choices = sw_choices_new (sheet->layout);
  SwTable *table = choice_table (sheet);

  for (guint i = 0; i < choices->len; i++)
    {
      const SwChoice *choice = &g_array_index (choices, SwChoice, i);

      if (i == 0)
        add_needs_row (sheet, table, choice);
      if (!meeting || choice->meets || choice->chosen)
        add_choice_row (sheet, table, choice);
    }
  sw_flow_heading (flow, sw_sheet_get (sheet, "choice.title"));
  add_product (sheet, flow);
  sw_flow_text (flow, SW_STYLE_BODY, SW_ROLE_TEXT,
                sw_sheet_get (sheet, meeting ? "permit.choice.note" : "choice.note"));
  sw_flow_text (
      flow, SW_STYLE_BODY, SW_ROLE_TEXT,
      sw_sheet_fill (sheet, "pack.judge.choice.length", "length",
                     sw_sheet_quantity (sheet, longest_m (sheet->layout), SW_UNIT_M),
                     NULL));
  sw_flow_tie (flow);
  sw_flow_space (flow, 1.5);
  sw_flow_table (flow, table);
}

static void
add_reading (const SwSheet *sheet, SwFlow *flow, const SwSoilReading *reading,
             gboolean itself)
{
  char *words =
      sw_report_soil_reading (reading, itself, sheet->texts, sheet->draw->style);

  sw_flow_item (flow, SW_STYLE_BODY, "–",
                sw_sheet_plain (sheet, sw_sheet_keep (sheet, words)));
}

void
sw_judge_add_soil (const SwSheet *sheet, SwFlow *flow)
{
  SwFaceSoil soil;
  gboolean headed = FALSE;

  for (guint f = 0; f < sheet->layout->n_faces; f++)
    if (sw_face_soil (sheet->layout, f, &soil))
      {
        if (!headed)
          sw_flow_heading (flow, sw_sheet_get (sheet, "soil-report.title"));
        headed = TRUE;
        sw_flow_text (flow, SW_STYLE_BODY, SW_ROLE_TEXT,
                      sw_sheet_fill (sheet, "pack.judge.soil.face", "face",
                                     sw_sheet_face (sheet, f), "known",
                                     sw_sheet_soil_known (sheet, f), NULL));
        add_reading (sheet, flow, &soil.itself, TRUE);
        for (guint i = 0; i < soil.n_others; i++)
          add_reading (sheet, flow, &soil.others[i], FALSE);
      }
}

void
sw_judge_add_borderline (const SwSheet *sheet, SwFlow *flow)
{
  sw_flow_heading (flow, sw_sheet_get (sheet, "pack.judge.borderline.title"));
  if (!sw_sheet_findings_about (sheet, flow, "borderline"))
    sw_flow_text (flow, SW_STYLE_BODY, SW_ROLE_TEXT,
                  sw_sheet_get (sheet, "pack.judge.borderline.none"));
}

void
sw_judge_add_loss (const SwSheet *sheet, SwFlow *flow)
{
  static const char *const codes[] = { "face",  "erosivity", "erodibility", "slope",
                                       "cover", "bare",      "covered",     "kept" };
  SwTable *table = number_table (sheet, "loss", codes, G_N_ELEMENTS (codes));

  for (guint f = 0; f < sheet->layout->n_faces; f++)
    {
      SwFaceLoss loss;

      if (!sw_face_loss_init (&loss, sheet->layout, f))
        continue;
      sw_table_row (
          table, sw_sheet_face (sheet, f),
          sw_sheet_number (sheet, loss.erosivity, SW_UNIT_EROSIVITY),
          sw_sheet_number (sheet, loss.erodibility.value, SW_UNIT_ERODIBILITY),
          sw_sheet_number (sheet, loss.ls_mean, SW_UNIT_RATIO),
          sw_sheet_number (sheet, loss.cover.value, SW_UNIT_FACTOR),
          sw_sheet_quantity (sheet, loss.bare_t_per_ha, SW_UNIT_LOSS),
          sw_sheet_quantity (sheet, loss.covered_t_per_ha, SW_UNIT_LOSS),
          sw_sheet_format (sheet, "*%s*",
                           sw_sheet_quantity (sheet, loss.reduction, SW_UNIT_PERCENT)),
          NULL);
      sw_face_loss_clear (&loss);
    }
  add_part (sheet, flow, "loss", table);
  sw_sheet_findings_about (sheet, flow, "loss-");
  sw_sheet_findings_about (sheet, flow, "erodibility");
  sw_sheet_findings_about (sheet, flow, "bench-");
}

void
sw_judge_add_water (const SwSheet *sheet, SwFlow *flow)
{
  static const char *const codes[] = { "face",  "rain",     "length", "roughness",
                                       "depth", "velocity", "shear",  "takes" };
  SwTable *table = number_table (sheet, "flow", codes, G_N_ELEMENTS (codes));

  for (guint f = 0; f < sheet->layout->n_faces; f++)
    {
      SwFaceFlow found;

      if (!sw_face_flow (sheet->layout, f, &found))
        continue;
      sw_table_row (
          table, sw_sheet_face (sheet, f),
          sw_sheet_quantity (sheet, found.rain_m_per_s, SW_UNIT_RAIN),
          sw_sheet_quantity (sheet, found.length_m, SW_UNIT_M),
          sw_sheet_number (sheet, found.roughness.value, SW_UNIT_FACTOR),
          sw_sheet_quantity (sheet, found.flow.depth_m, SW_UNIT_SMALL_M),
          sw_sheet_quantity (sheet, found.flow.velocity_m_per_s, SW_UNIT_M_PER_S),
          sw_sheet_format (sheet, "*%s*",
                           sw_sheet_quantity (sheet, found.flow.shear_pa, SW_UNIT_PA)),
          sw_sheet_quantity (sheet, sheet->layout->blanket->shear_pa.value, SW_UNIT_PA),
          NULL);
    }
  add_part (sheet, flow, "flow", table);
  sw_sheet_findings_about (sheet, flow, "flow-");
}

void
sw_judge_add_slide (const SwSheet *sheet, SwFlow *flow)
{
  static const char *const codes[] = { "face", "depth", "friction", "cohesion",
                                       "dry",  "half",  "seepage" };
  SwTable *table = number_table (sheet, "slide", codes, G_N_ELEMENTS (codes));

  for (guint f = 0; f < sheet->layout->n_faces; f++)
    {
      SwFaceSlide slide;

      if (!sw_face_slide (sheet->layout, f, &slide))
        continue;
      sw_table_row (table, sw_sheet_place (sheet, f, slide.tier),
                    sw_sheet_quantity (sheet, slide.depth_m, SW_UNIT_SMALL_M),
                    sw_sheet_quantity (sheet, slide.friction_rad.value, SW_UNIT_ANGLE),
                    sw_sheet_quantity (sheet, slide.cohesion_pa, SW_UNIT_PA),
                    sw_sheet_number (sheet, slide.screen.dry, SW_UNIT_RATIO),
                    sw_sheet_number (sheet, slide.screen.half_wet, SW_UNIT_RATIO),
                    sw_sheet_format (sheet, "*%s*",
                                     sw_sheet_number (sheet, slide.screen.full_seepage,
                                                      SW_UNIT_RATIO)),
                    NULL);
    }
  add_part (sheet, flow, "slide", table);
  sw_sheet_findings_about (sheet, flow, "slide-");
  sw_sheet_findings_about (sheet, flow, "friction");
}

static void
handling_row (const SwSheet *sheet, SwTable *table, const char *code, const char *value)
{
  sw_table_row (
      table,
      sw_sheet_get (sheet, sw_sheet_format (sheet, "pack.judge.handling.%s", code)),
      sw_sheet_format (sheet, "*%s*", value),
      sw_sheet_get (sheet, sw_sheet_format (sheet, "pack.judge.handling.%s.how", code)),
      NULL);
}

static const char *
or_not_given (const SwSheet *sheet, double value, SwUnit unit)
{
  return isfinite (value) ? sw_sheet_quantity (sheet, value, unit)
                          : sw_sheet_get (sheet, "pack.not-given");
}

void
sw_judge_add_handling (const SwSheet *sheet, SwFlow *flow)
{
  const SwColumn columns[] = {
    { sw_sheet_get (sheet, "pack.judge.handling.what"), SW_CELL_TEXT, LABEL_MM },
    { sw_sheet_get (sheet, "pack.column.this-job"), SW_CELL_NUMBER, VALUE_MM },
    { sw_sheet_get (sheet, "pack.column.means"), SW_CELL_TEXT, 0.0 },
  };
  SwTable *table =
      sw_table_new (&sheet->pen, SW_STYLE_BODY, columns, G_N_ELEMENTS (columns));
  SwRollLift lift;

  handling_row (sheet, table, "mass",
                sw_sheet_quantity (sheet, sheet->tally->roll_mass_kg, SW_UNIT_KG));
  handling_row (sheet, table, "diameter",
                sw_sheet_quantity (sheet, sheet->tally->roll_diameter_m, SW_UNIT_M));
  if (sw_roll_lift (sheet->layout, sheet->tally, &lift))
    {
      handling_row (sheet, table, "mass-wet",
                    or_not_given (sheet, lift.wet_mass_kg, SW_UNIT_KG));
      handling_row (sheet, table, "limit",
                    sw_sheet_quantity (sheet, lift.result.limit_kg, SW_UNIT_KG));
      handling_row (sheet, table, "index",
                    or_not_given (sheet, lift.result.index, SW_UNIT_RATIO));
      handling_row (sheet, table, "index-wet",
                    or_not_given (sheet, lift.wet_index, SW_UNIT_RATIO));
    }
  add_part (sheet, flow, "handling", table);
}
