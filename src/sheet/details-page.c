/* SPDX-License-Identifier: MIT */
#include "sheet.h"
#include <math.h>
#include <slopewright/base/count.h>

#define COLUMN_GAP_MM 7.0
#define DETAIL_MM 54.0
#define LEAST_DETAIL_MM 44.0
#define MOST_DETAIL_MM 78.0
#define LONE_DETAIL_MM 110.0
#define STEP_MM 2.0
#define ROW_GAP_MM 5.0
#define VALUES_GAP_MM 2.0

/* The practice's dimensions that a detail shows; ends with SW_PRACTICE_VALUE_COUNT. */
#define MOST_VALUES 6
static const SwPracticeValue values_shown[SW_DETAIL_COUNT][MOST_VALUES + 1] = {
  [SW_DETAIL_KEY_TRENCH] = { SW_PRACTICE_SET_BACK_M, SW_PRACTICE_TRENCH_DEPTH_M,
                             SW_PRACTICE_TRENCH_WIDTH_M, SW_PRACTICE_TRENCH_FOLD_M,
                             SW_PRACTICE_TRENCH_PIN_M, SW_PRACTICE_VALUE_COUNT },
  [SW_DETAIL_SIDE_LAP] = { SW_PRACTICE_SIDE_LAP_M, SW_PRACTICE_SIDE_LAP_PIN_M,
                           SW_PRACTICE_VALUE_COUNT },
  [SW_DETAIL_END_LAP] = { SW_PRACTICE_END_LAP_M, SW_PRACTICE_END_LAP_STEEP_M,
                          SW_PRACTICE_END_LAP_PIN_M, SW_PRACTICE_END_LAP_ROW_GAP_M,
                          SW_PRACTICE_JOINT_STAGGER_M, SW_PRACTICE_VALUE_COUNT },
  [SW_DETAIL_SLOT] = { SW_PRACTICE_SLOT_EVERY_M, SW_PRACTICE_SLOT_DEPTH_M,
                       SW_PRACTICE_SLOT_WIDTH_M, SW_PRACTICE_SLOT_PIN_M,
                       SW_PRACTICE_VALUE_COUNT },
  [SW_DETAIL_TOE] = { SW_PRACTICE_TOE_DEPTH_M, SW_PRACTICE_TOE_WIDTH_M,
                      SW_PRACTICE_TOE_FOLD_M, SW_PRACTICE_TOE_PIN_M,
                      SW_PRACTICE_VALUE_COUNT },
  [SW_DETAIL_PIN] = { SW_PRACTICE_PIN_LENGTH_M, SW_PRACTICE_VALUE_COUNT },
  [SW_DETAIL_PIN_PATTERN] = { SW_PRACTICE_PIN_DOWN_M, SW_PRACTICE_PIN_ACROSS_M,
                              SW_PRACTICE_EDGE_PIN_M, SW_PRACTICE_VALUE_COUNT },
  [SW_DETAIL_COLLAR] = { SW_PRACTICE_COLLAR_M, SW_PRACTICE_RING_PIN_M,
                         SW_PRACTICE_DEDUCT_M2, SW_PRACTICE_VALUE_COUNT },
};

/* A value of the toe that this practice's kind of toe does not use. */
static gboolean
is_idle (const SwSheet *sheet, SwPracticeValue value)
{
  SwToeKind kind = sheet->practice->toe_kind;

  if (value == SW_PRACTICE_TOE_DEPTH_M || value == SW_PRACTICE_TOE_WIDTH_M)
    return kind != SW_TOE_TRENCH;
  if (value == SW_PRACTICE_TOE_FOLD_M)
    return kind != SW_TOE_FOLD;
  return value == SW_PRACTICE_TRENCH_FOLD_M
         && sw_practice_get (sheet->practice, value) <= 0.0;
}

/* Where a value is worked out; only a crew pack has those pages. */
static const char *
see_working (const SwSheet *sheet, const char *name)
{
  if (sheet->plan->kind != SW_PACK_CREW)
    return sw_sheet_get (sheet, "permit.worked-out");
  return sw_sheet_fill (sheet, "report.origin.computed", "name", name, NULL);
}

static void
as_laid_row (const SwSheet *sheet, SwTable *table, const char *label, double value,
             SwLimit limit, const char *source)
{
  sw_table_row (table, label,
                sw_sheet_format (sheet, "*%s*", sw_sheet_limit (sheet, value, limit)),
                source, NULL);
}

/* How far apart the field columns stand between two laps; 0 where there are not two,
 * and in a fan, where they draw together. */
static double
columns_apart_m (const SwFaceLayout *layout)
{
  const SwTier *tier = &layout->tiers[0];
  const SwRun *runs = layout->runs + tier->first_run;
  double laps_m[2];

  if (tier->n_runs < 3 || layout->face->crest_form != SW_CREST_STRAIGHT)
    return 0.0;
  for (guint i = 0; i < 2; i++)
    {
      double from_m = fmax (runs[i].along_from_m, runs[i + 1].along_from_m);
      double to_m = fmin (runs[i].along_to_m, runs[i + 1].along_to_m);

      if (from_m >= to_m || runs[i].part + runs[i + 1].part > 0)
        return 0.0;
      laps_m[i] = (from_m + to_m) / 2.0;
    }
  return fabs (laps_m[1] - laps_m[0])
         / (double) sw_count_up (fabs (laps_m[1] - laps_m[0]), tier->pin_across_m);
}

static const char *
side_lap_words (const SwSheet *sheet, guint face, guint tier)
{
  return sw_sheet_limit (sheet, sheet->layout->faces[face].tiers[tier].side_lap_m,
                         SW_LIMIT_LAID);
}

static gboolean
side_laps_are_alike (const SwSheet *sheet)
{
  for (guint f = 0; f < sheet->layout->n_faces; f++)
    for (guint t = 0; t < sheet->layout->faces[f].n_tiers; t++)
      if (!g_str_equal (side_lap_words (sheet, f, t), side_lap_words (sheet, 0, 0)))
        return FALSE;
  return TRUE;
}

/* The first part's lap is drawn; where others are laid with another, all are listed. */
static void
add_side_laps (const SwSheet *sheet, SwTable *table)
{
  gboolean alike = side_laps_are_alike (sheet);

  for (guint f = 0; f < (alike ? 1 : sheet->layout->n_faces); f++)
    for (guint t = 0; t < (alike ? 1 : sheet->layout->faces[f].n_tiers); t++)
      {
        const SwFaceLayout *face = &sheet->layout->faces[f];
        const char *label =
            alike ? sw_sheet_get (sheet, "pack.as-laid.side-lap")
                  : sw_sheet_fill (sheet, "pack.as-laid.side-lap-at", "place",
                                   sw_sheet_place (sheet, f, t), NULL);
        const char *working =
            sw_sheet_format (sheet, "%s.%u.side-lap", face->face->id, t + 1);

        as_laid_row (sheet, table, label, face->tiers[t].side_lap_m, SW_LIMIT_LAID,
                     see_working (sheet, working));
      }
}

/* What is drawn where it is not the practice's own value. */
static void
add_as_laid (const SwSheet *sheet, SwTable *table, guint face, SwDetail detail)
{
  const SwFaceLayout *layout = &sheet->layout->faces[face];
  const char *id = layout->face->id;

  if (detail == SW_DETAIL_SIDE_LAP)
    add_side_laps (sheet, table);
  if (detail == SW_DETAIL_PIN_PATTERN && columns_apart_m (layout) > 0.0)
    as_laid_row (sheet, table, sw_sheet_get (sheet, "pack.as-laid.across"),
                 columns_apart_m (layout), SW_LIMIT_MOST,
                 see_working (sheet, sw_sheet_format (sheet, "%s.pins.field", id)));
  if (detail == SW_DETAIL_PIN)
    as_laid_row (sheet, table, sw_sheet_get (sheet, "pack.as-laid.pin-need"),
                 layout->pin_need_m, SW_LIMIT_LEAST,
                 see_working (sheet, sw_sheet_format (sheet, "%s.pin-length", id)));
  if (detail == SW_DETAIL_PIN && layout->pin != NULL)
    as_laid_row (sheet, table, sw_sheet_get (sheet, "pack.as-laid.pin"),
                 layout->pin->length_m, SW_LIMIT_LEAST,
                 sw_sheet_plain (sheet, sw_sheet_keep (sheet, sw_report_source_words (
                                                                  layout->pin->source_id,
                                                                  layout->pin->evidence,
                                                                  sheet->texts))));
}

static void
add_values (const SwSheet *sheet, SwFlow *flow, guint face, SwDetail detail)
{
  const SwColumn columns[] = {
    { sw_sheet_get (sheet, "pack.column.dimension"), SW_CELL_TEXT, 0.0 },
    { "", SW_CELL_NUMBER, 0.0 },
    { sw_sheet_get (sheet, "pack.column.source"), SW_CELL_TEXT, 0.0 },
  };
  SwTable *table =
      sw_table_new (&sheet->pen, SW_STYLE_SMALL, columns, G_N_ELEMENTS (columns));

  add_as_laid (sheet, table, face, detail);
  for (const SwPracticeValue *value = values_shown[detail];
       *value < SW_PRACTICE_VALUE_COUNT; value++)
    if (!is_idle (sheet, *value))
      sw_table_row (table,
                    sw_sheet_get (sheet, sw_sheet_format (sheet, "practice.%s",
                                                          sw_practice_keys[*value].key)),
                    sw_sheet_format (sheet, "*%s*", sw_sheet_practice (sheet, *value)),
                    sw_sheet_plain (sheet, sw_sheet_practice_source (sheet, *value)),
                    NULL);
  sw_flow_table (flow, table);
}

/* Details are the same for faces with the same pin and end lap: draw the first, and
 * of the others what differs. */
static gboolean
differs (const SwSheet *sheet, guint face, SwDetail detail)
{
  const SwFaceLayout *first = &sheet->layout->faces[0];
  const SwFaceLayout *this = &sheet->layout->faces[face];

  if (face == 0)
    return TRUE;
  if (detail == SW_DETAIL_COLLAR)
    return first->n_obstacles == 0;
  return detail == SW_DETAIL_PIN && this->pin != first->pin;
}

/* A detail that this job has, of the face that shows it. */
typedef struct
{
  guint face;
  SwDetail detail;
} Shown;

static SwFigure *
draw_detail (const SwSheet *sheet, Shown shown, double width_mm, double height_mm)
{
  return sw_draw_detail (sheet->result, shown.face, shown.detail, width_mm, height_mm,
                         sheet->draw);
}

/* (transfer full) (element-type GArray of Shown) */
static GArray *
details_of (const SwSheet *sheet, double width_mm)
{
  GArray *details = g_array_new (FALSE, FALSE, sizeof (Shown));

  for (guint face = 0; face < sheet->layout->n_faces; face++)
    for (int detail = 0; detail < SW_DETAIL_COUNT; detail++)
      {
        Shown shown = { face, (SwDetail) detail };
        g_autoptr (SwFigure) drawing = NULL;

        if (differs (sheet, face, shown.detail))
          drawing = draw_detail (sheet, shown, width_mm, DETAIL_MM);
        if (drawing != NULL)
          g_array_append_val (details, shown);
      }
  return details;
}

/* How high the drawings are: those in pairs, and the one that may be left over. */
typedef struct
{
  double pair_mm, lone_mm;
} Heights;

/* A detail above its dimensions, or a sheet as high in its place. */
static SwFlow *
card (const SwSheet *sheet, Shown shown, double width_mm, double height_mm,
      gboolean drawn)
{
  SwFlow *flow = sw_flow_new (&sheet->pen, width_mm);

  height_mm *= sheet->pen.scale;
  if (drawn)
    sw_flow_drawing (flow, draw_detail (sheet, shown, width_mm, height_mm));
  else
    sw_flow_add (flow, sw_figure_new (width_mm, height_mm));
  return flow;
}

static SwFlow *
values_of (const SwSheet *sheet, Shown shown, double width_mm)
{
  SwFlow *flow = sw_flow_new (&sheet->pen, width_mm);

  add_values (sheet, flow, shown.face, shown.detail);
  return flow;
}

/* Two details side by side, dimensions below; one alone has them beside it. */
static void
add_row (const SwSheet *sheet, SwFlow *flow, const Shown *shown, guint count,
         Heights heights, gboolean drawn)
{
  double width_mm = (sw_flow_width_mm (flow) - COLUMN_GAP_MM) / 2.0;
  SwFlow *columns[2];

  sw_flow_space (flow, ROW_GAP_MM);
  if (count == 1)
    {
      columns[0] = card (sheet, shown[0], width_mm, heights.lone_mm, drawn);
      columns[1] = values_of (sheet, shown[0], width_mm);
      sw_flow_row (flow, COLUMN_GAP_MM, columns, 2);
      return;
    }
  for (guint i = 0; i < 2; i++)
    {
      g_autoptr (SwFlow) values = values_of (sheet, shown[i], width_mm);

      columns[i] = card (sheet, shown[i], width_mm, heights.pair_mm, drawn);
      sw_flow_space (columns[i], VALUES_GAP_MM);
      sw_flow_add (columns[i], sw_flow_to_figure (values));
    }
  sw_flow_row (flow, COLUMN_GAP_MM, columns, 2);
}

static SwFlow *
details_flow (const SwSheet *sheet, const GArray *details, Heights heights,
              gboolean drawn)
{
  SwFlow *flow = sw_sheet_flow (sheet);

  sw_flow_text (flow, SW_STYLE_BODY, SW_ROLE_TEXT,
                sw_sheet_fill (sheet, "pack.details.practice", "name",
                               sw_sheet_practice_name (sheet), "edition",
                               sw_sheet_get (sheet, sheet->practice->edition_id),
                               "agency", sw_sheet_get (sheet, sheet->practice->agency_id),
                               NULL));
  for (guint i = 0; i < details->len; i += 2)
    add_row (sheet, flow, &g_array_index (details, Shown, i), MIN (2, details->len - i),
             heights, drawn);
  return flow;
}

/* On how many pages they end, and what is left of the last. */
typedef struct
{
  guint pages;
  double room_mm;
} Ending;

static Ending
ending_with (const SwSheet *sheet, const GArray *details, Heights heights)
{
  g_autoptr (SwFlow) flow = details_flow (sheet, details, heights, FALSE);
  double body_mm = sw_sheet_body_height_mm (sheet);

  return (Ending){ sw_flow_count_pages (flow, body_mm), sw_flow_room_mm (flow, body_mm) };
}

/* Whether drawings that grew a step stand where they stood: a row that went over to the next
 * page would fill more of it than the growth of all rows. */
static gboolean
stands_as_before (const SwSheet *sheet, const GArray *details, Ending before,
                  Ending after)
{
  double growth_mm = (details->len + 1) / 2 * STEP_MM * sheet->pen.scale;

  return after.pages == before.pages && before.room_mm - after.room_mm <= growth_mm + 1.0;
}

/* As high as they can be without moving to another page. */
static Heights
grown (const SwSheet *sheet, const GArray *details, Heights heights, double pair_step_mm,
       double most_mm)
{
  Ending ending = ending_with (sheet, details, heights);

  while (heights.lone_mm + STEP_MM <= most_mm)
    {
      Heights higher = { heights.pair_mm + pair_step_mm, heights.lone_mm + STEP_MM };
      Ending next = ending_with (sheet, details, higher);

      if (!stands_as_before (sheet, details, ending, next))
        break;
      heights = higher;
      ending = next;
    }
  return heights;
}

/* As low as saves a page, then as high as the pages have room for. */
static Heights
heights_that_fill (const SwSheet *sheet, const GArray *details)
{
  Heights heights = { DETAIL_MM, DETAIL_MM };
  Heights low = { LEAST_DETAIL_MM, LEAST_DETAIL_MM };

  if (ending_with (sheet, details, low).pages
      < ending_with (sheet, details, heights).pages)
    heights = low;
  heights = grown (sheet, details, heights, STEP_MM, MOST_DETAIL_MM);
  return details->len % 2 == 0 ? heights
                               : grown (sheet, details, heights, 0.0, LONE_DETAIL_MM);
}

void
sw_page_details (SwSheet *sheet)
{
  double width_mm = (sw_sheet_body_width_mm (sheet) - COLUMN_GAP_MM) / 2.0;
  g_autoptr (GArray) details = details_of (sheet, width_mm);

  sw_sheet_add (sheet, sw_sheet_get (sheet, "pack.details.title"),
                details_flow (sheet, details, heights_that_fill (sheet, details), TRUE));
}
