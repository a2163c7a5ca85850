/* SPDX-License-Identifier: MIT */
#include "conditions.h"
#include "tier-numbers.h"

/* Rows that a hand writes in. */
#define HEAD_ROW_MM 8.0
#define ITEM_ROW_LEAST_MM 7.2
#define ITEM_ROW_MOST_MM 10.5
#define ITEM_HEAD_MM 21.0 /* the heading above them, and the table's */
#define FINDING_ROW_MM 10.0
#define SIGN_ROW_MM 11.0
#define FINDINGS_LEAST 4
#define FINDINGS_MOST 24
#define FACES_ABREAST 4 /* columns of faces in one table */
#define BLOCK_GAP_MM 2.0
#define FOOT_GAP_MM 4.0

/* Words with the numbers of the practice, and the units that are written. */
static const char *
filled (const SwSheet *sheet, const char *id)
{
  SwNumberStyle style = sheet->draw->style;
  g_autoptr (GHashTable) places = sw_tier_places (sheet, 0, 0);

  g_hash_table_replace (places, "area", g_strdup (sw_quantity_unit (SW_UNIT_M2, style)));
  g_hash_table_replace (places, "length", g_strdup (sw_quantity_unit (SW_UNIT_M, style)));
  g_hash_table_replace (places, "small",
                        g_strdup (sw_quantity_unit (SW_UNIT_SMALL_M, style)));
  return sw_sheet_keep (sheet, sw_texts_fill_table (sheet->texts, id, places));
}

static const char *
word (const SwSheet *sheet, const char *name)
{
  return sw_sheet_get (sheet, sw_sheet_format (sheet, "inspecting.%s", name));
}

static SwTable *
form_table (const SwSheet *sheet, const SwColumn *columns, guint n_columns, double row_mm)
{
  SwTable *table = sw_table_new (&sheet->pen, SW_STYLE_SMALL, columns, n_columns);

  sw_table_set_ruled (table);
  sw_table_set_row_mm (table, row_mm);
  return table;
}

static void
add_who (const SwSheet *sheet, SwFlow *flow)
{
  const SwColumn columns[] = {
    { word (sheet, "head.project"), SW_CELL_TEXT, 0.0 },
    { word (sheet, "head.permit"), SW_CELL_TEXT, 30.0 },
    { word (sheet, "head.inspector"), SW_CELL_TEXT, 52.0 },
    { word (sheet, "head.date"), SW_CELL_TEXT, 22.0 },
    { word (sheet, "head.hours"), SW_CELL_TEXT, 26.0 },
  };
  SwTable *table = form_table (sheet, columns, G_N_ELEMENTS (columns), HEAD_ROW_MM);

  sw_table_row (table, sw_sheet_plain (sheet, sheet->job->card.name),
                sw_sheet_plain (sheet, sheet->job->card.permit), "", "", "", NULL);
  sw_flow_table (flow, table);
}

static void
add_weather (const SwSheet *sheet, SwFlow *flow)
{
  const char *unit = sw_quantity_unit (SW_UNIT_SMALL_M, sheet->draw->style);
  const SwColumn columns[] = {
    { word (sheet, "head.weather"), SW_CELL_TEXT, 34.0 },
    { sw_sheet_fill (sheet, "inspecting.head.rain", "unit", unit, NULL), SW_CELL_TEXT,
      27.0 },
    { word (sheet, "head.since"), SW_CELL_TEXT, 27.0 },
    { word (sheet, "head.unsafe"), SW_CELL_TEXT, 0.0 },
  };
  SwTable *table = form_table (sheet, columns, G_N_ELEMENTS (columns), HEAD_ROW_MM);

  sw_table_row (table, "", "", "", "", NULL);
  sw_flow_space (flow, BLOCK_GAP_MM);
  sw_flow_table (flow, table);
}

/* One row to tick: why the inspector came, and how far the work is. */
static void
add_ticks (const SwSheet *sheet, SwFlow *flow)
{
  const SwColumn columns[] = {
    { "", SW_CELL_TEXT, 0.0 },
    { word (sheet, "why.routine"), SW_CELL_CHECK, 15.0 },
    { word (sheet, "why.rain"), SW_CELL_CHECK, 12.0 },
    { word (sheet, "why.call"), SW_CELL_CHECK, 18.0 },
    { word (sheet, "why.repair"), SW_CELL_CHECK, 19.0 },
    { "", SW_CELL_TEXT, 14.0 },
    { word (sheet, "phase.before"), SW_CELL_CHECK, 15.0 },
    { word (sheet, "phase.laying"), SW_CELL_CHECK, 15.0 },
    { word (sheet, "phase.laid"), SW_CELL_CHECK, 17.0 },
    { word (sheet, "phase.growing"), SW_CELL_CHECK, 17.0 },
    { word (sheet, "phase.closing"), SW_CELL_CHECK, 15.0 },
  };
  SwTable *table = form_table (sheet, columns, G_N_ELEMENTS (columns), HEAD_ROW_MM);

  sw_table_row (table, word (sheet, "why"), "", "", "", "", word (sheet, "phase"), "", "",
                "", "", "", NULL);
  sw_flow_space (flow, BLOCK_GAP_MM);
  sw_flow_table (flow, table);
  sw_flow_space (flow, BLOCK_GAP_MM);
  sw_flow_text (flow, SW_STYLE_SMALL, SW_ROLE_TEXT,
                filled (sheet, sw_sheet_inspect_id (sheet, "inspecting.basis")));
}

static const struct
{
  const char *code;
  SwCondition condition;
} items[] = {
  { "contact", SW_IF_ALWAYS },      { "key-trench", SW_IF_ALWAYS },
  { "end-laps", SW_IF_JOINTS },     { "slots", SW_IF_SLOTS },
  { "side-laps", SW_IF_ALWAYS },    { "toe", SW_IF_ALWAYS },
  { "obstacles", SW_IF_OBSTACLES }, { "pins", SW_IF_ALWAYS },
  { "tears", SW_IF_ALWAYS },        { "wind", SW_IF_ALWAYS },
  { "rills", SW_IF_ALWAYS },        { "sediment", SW_IF_ALWAYS },
  { "cover", SW_IF_ALWAYS },        { "bare", SW_IF_ALWAYS },
  { "net", SW_IF_ALWAYS },          { "animals", SW_IF_ALWAYS },
  { "run-on", SW_IF_ALWAYS },       { "seepage", SW_IF_ALWAYS },
};

/* One column a face, for up to so many faces from @first on; columns left over have no
 * face. */
static void
add_items (const SwSheet *sheet, SwFlow *flow, guint first, double row_mm)
{
  guint n_faces = MIN (sheet->layout->n_faces - first, FACES_ABREAST);
  double face_mm = n_faces == 1 ? 74.0 : n_faces == 2 ? 37.0 : n_faces == 3 ? 26.0 : 20.0;
  SwColumn columns[2 + FACES_ABREAST] = {
    { word (sheet, "column.item"), SW_CELL_TEXT, 0.0 },
    { word (sheet, "column.write"), SW_CELL_TEXT, 0.0 },
  };
  SwTable *table;

  for (guint i = 0; i < n_faces; i++)
    columns[2 + i] = (SwColumn){
      sw_sheet_plain (sheet,
                      sw_sheet_fill (sheet, "report.face", "id",
                                     sheet->layout->faces[first + i].face->id, NULL)),
      SW_CELL_TEXT, face_mm
    };
  table = form_table (sheet, columns, 2 + n_faces, row_mm);
  for (guint i = 0; i < G_N_ELEMENTS (items); i++)
    if (sw_sheet_holds (sheet, items[i].condition))
      {
        const char *id = sw_sheet_format (sheet, "inspecting.item.%s", items[i].code);
        const char *blanks[FACES_ABREAST] = { NULL };

        for (guint f = 0; f < n_faces; f++)
          blanks[f] = "";
        sw_table_row (table, sw_sheet_get (sheet, id),
                      filled (sheet, sw_sheet_format (sheet, "%s.write", id)), blanks[0],
                      blanks[1], blanks[2], blanks[3], NULL);
      }
  sw_flow_table (flow, table);
}

/* Rows as high as one page has room for. */
static double
item_row_mm (const SwSheet *sheet, const SwFlow *flow)
{
  double room_mm = sw_flow_room_mm (flow, sw_sheet_body_height_mm (sheet))
                   - ITEM_HEAD_MM * sheet->pen.scale;
  guint count = 0;

  for (guint i = 0; i < G_N_ELEMENTS (items); i++)
    count += sw_sheet_holds (sheet, items[i].condition);
  return CLAMP (room_mm / count / sheet->pen.scale, ITEM_ROW_LEAST_MM, ITEM_ROW_MOST_MM);
}

static void
add_faces (const SwSheet *sheet, SwFlow *flow)
{
  double row_mm = item_row_mm (sheet, flow);

  sw_flow_heading (flow, word (sheet, "face.title"));
  for (guint first = 0; first < sheet->layout->n_faces; first += FACES_ABREAST)
    {
      sw_flow_space (flow, BLOCK_GAP_MM);
      add_items (sheet, flow, first, row_mm);
    }
}

/* As the permit words it, or lines to write its words on. */
static void
add_certificate (const SwSheet *sheet, SwFlow *flow)
{
  const char *permits = sheet->plan->texts[SW_PACK_TEXT_CERTIFICATION];

  sw_flow_heading (flow, word (sheet, "certify.title"));
  sw_flow_text (flow, SW_STYLE_SMALL, SW_ROLE_TEXT, word (sheet, "certify.own"));
  if (*permits == '\0')
    {
      sw_flow_write_in (flow, word (sheet, "certify"));
      sw_flow_write_in (flow, "");
      return;
    }
  sw_flow_space (flow, BLOCK_GAP_MM);
  sw_flow_text (flow, SW_STYLE_SMALL, SW_ROLE_TEXT, word (sheet, "certify"));
  sw_flow_text (flow, SW_STYLE_BODY, SW_ROLE_TEXT, sw_sheet_plain (sheet, permits));
}

static void
add_signature (const SwSheet *sheet, SwFlow *flow)
{
  const SwColumn columns[] = {
    { word (sheet, "sign.name"), SW_CELL_TEXT, 0.0 },
    { word (sheet, "sign.signature"), SW_CELL_TEXT, 48.0 },
    { word (sheet, "sign.date"), SW_CELL_TEXT, 30.0 },
    { word (sheet, "sign.next"), SW_CELL_TEXT, 40.0 },
  };
  SwTable *table = form_table (sheet, columns, G_N_ELEMENTS (columns), SIGN_ROW_MM);

  sw_table_row (table, "", "", "", "", NULL);
  sw_flow_space (flow, BLOCK_GAP_MM);
  sw_flow_table (flow, table);
}

/* "Permit holder: Corvendale Roads" where the job names who that is. */
static const char *
receiver (const SwSheet *sheet, const char *role, const char *name)
{
  const char *words = word (sheet, role);

  if (*name == '\0')
    return words;
  return sw_sheet_format (sheet, "%s\n%s", words, sw_sheet_plain (sheet, name));
}

static void
add_copies (const SwSheet *sheet, SwFlow *flow)
{
  const SwJobCard *card = &sheet->job->card;
  const SwColumn columns[] = {
    { "", SW_CELL_CHECK, 9.0 }, { "", SW_CELL_TEXT, 26.0 }, { "", SW_CELL_CHECK, 9.0 },
    { "", SW_CELL_TEXT, 0.0 },  { "", SW_CELL_CHECK, 9.0 }, { "", SW_CELL_TEXT, 0.0 },
    { "", SW_CELL_CHECK, 9.0 }, { "", SW_CELL_TEXT, 0.0 },
  };
  SwTable *table = form_table (sheet, columns, G_N_ELEMENTS (columns), HEAD_ROW_MM);

  sw_table_row (table, "", word (sheet, "copies.file"), "",
                receiver (sheet, "copies.holder", card->client), "",
                receiver (sheet, "copies.contractor", card->supervisor), "",
                receiver (sheet, "copies.authority", card->authority), NULL);
  sw_flow_heading (flow, word (sheet, "copies.title"));
  sw_flow_table (flow, table);
}

static void
add_findings (const SwSheet *sheet, SwFlow *flow, double below_mm)
{
  const SwColumn columns[] = {
    { word (sheet, "column.number"), SW_CELL_TEXT, 9.0 },
    { word (sheet, "column.place"), SW_CELL_TEXT, 26.0 },
    { word (sheet, "column.finding"), SW_CELL_TEXT, 0.0 },
    { sw_sheet_get (sheet, "pack.column.photo"), SW_CELL_TEXT, 11.0 },
    { word (sheet, "column.weight"), SW_CELL_TEXT, 14.0 },
    { word (sheet, "column.action"), SW_CELL_TEXT, 0.0 },
    { word (sheet, "column.who"), SW_CELL_TEXT, 17.0 },
    { word (sheet, "column.due"), SW_CELL_TEXT, 15.0 },
    { word (sheet, "column.done"), SW_CELL_TEXT, 15.0 },
    { word (sheet, "column.verified"), SW_CELL_TEXT, 14.0 },
  };
  SwTable *table = form_table (sheet, columns, G_N_ELEMENTS (columns), FINDING_ROW_MM);
  double row_mm = FINDING_ROW_MM * sheet->pen.scale;
  guint taken, rows;

  sw_flow_heading (flow, word (sheet, "findings.title"));
  sw_flow_text (flow, SW_STYLE_SMALL, SW_ROLE_TEXT,
                filled (sheet, "inspecting.findings.how"));
  sw_flow_tie (flow);
  sw_flow_space (flow, BLOCK_GAP_MM);
  rows = sw_sheet_rows_that_fit (sheet, flow, FINDING_ROW_MM);
  taken = (guint) (below_mm / row_mm) + 1;
  rows = rows > taken ? rows - taken : 0;
  for (guint i = 0; i < CLAMP (rows, FINDINGS_LEAST, FINDINGS_MOST); i++)
    sw_table_row (table, "", "", "", "", "", "", "", "", "", "", NULL);
  sw_flow_table (flow, table);
}

/* Two sides of one sheet: what is seen on the front; findings and signature on the back. */
void
sw_page_inspection_report (SwSheet *sheet)
{
  SwFlow *flow = sw_sheet_flow (sheet);
  SwFlow *foot = sw_sheet_flow (sheet);
  double foot_mm;

  add_certificate (sheet, foot);
  add_signature (sheet, foot);
  add_copies (sheet, foot);
  foot_mm = sw_flow_height_mm (foot) + FOOT_GAP_MM;
  sw_flow_text (flow, SW_STYLE_SMALL, SW_ROLE_TEXT, word (sheet, "how"));
  sw_flow_space (flow, BLOCK_GAP_MM);
  add_who (sheet, flow);
  add_weather (sheet, flow);
  add_ticks (sheet, flow);
  add_faces (sheet, flow);
  sw_flow_break (flow);
  add_findings (sheet, flow, foot_mm);
  sw_flow_space (flow, FOOT_GAP_MM);
  sw_flow_row (flow, 0.0, &foot, 1);
  sw_sheet_add (sheet, word (sheet, "title"), flow);
}
