/* SPDX-License-Identifier: MIT */
#include "hazards.h"
#include "tier-numbers.h"
#include <slopewright/sheet/briefing.h>

/* The first run after the hold point of unrolling, as the pack's step says. */
#define RUN_AFTER_HOLD 3

struct SwBriefing
{
  SwSheet sheet;
  const SwLayingSequence *sequence;
  GHashTable **places; /* one a tier of the faces; NULL until it is asked for */
  guint n_places;
  guint *first_tier; /* of each face, among all tiers */
};

SwBriefing *
sw_briefing_new (const SwResult *result, const SwLayingSequence *sequence,
                 const SwDraw *draw)
{
  SwBriefing *briefing = g_new0 (SwBriefing, 1);
  guint tiers = 0;

  g_return_val_if_fail (result->status == SW_OK, NULL);
  briefing->sheet = (SwSheet){ .result = result,
                               .layout = result->layout,
                               .tally = result->tally,
                               .practice = result->layout->practice,
                               .job = result->job,
                               .plan = &result->job->pack,
                               .draw = draw,
                               .texts = draw->texts,
                               .strings = g_string_chunk_new (1024) };
  briefing->sequence = sequence;
  briefing->first_tier = g_new (guint, result->layout->n_faces);
  for (guint f = 0; f < result->layout->n_faces; f++)
    {
      briefing->first_tier[f] = tiers;
      tiers += MAX (result->layout->faces[f].n_tiers, 1);
    }
  briefing->n_places = tiers;
  briefing->places = g_new0 (GHashTable *, tiers);
  return briefing;
}

void
sw_briefing_free (SwBriefing *briefing)
{
  if (briefing == NULL)
    return;
  for (guint i = 0; i < briefing->n_places; i++)
    g_clear_pointer (&briefing->places[i], g_hash_table_unref);
  g_string_chunk_free (briefing->sheet.strings);
  g_free (briefing->places);
  g_free (briefing->first_tier);
  g_free (briefing);
}

/* Numbers of a tier go over all its pins: once, when they are first asked for. */
static GHashTable *
tier_places (SwBriefing *briefing, guint face, guint tier)
{
  GHashTable **places = &briefing->places[briefing->first_tier[face] + tier];

  if (*places == NULL)
    {
      *places = sw_tier_places (&briefing->sheet, face, tier);
      sw_sheet_put_slope_facts (&briefing->sheet, *places);
    }
  return *places;
}

static void
put (GHashTable *places, const char *name, const char *value)
{
  g_hash_table_replace (places, (gpointer) name, sw_markup_escape (value));
}

static void
put_count (const SwSheet *sheet, GHashTable *places, const char *name, gsize count)
{
  put (places, name, sw_sheet_count (sheet, (double) count));
}

static void
put_quantity (const SwSheet *sheet, GHashTable *places, const char *name, double value,
              SwUnit unit)
{
  put (places, name, sw_sheet_quantity (sheet, value, unit));
}

static gsize
pins_of_role (const SwBriefing *briefing, const SwLayingStep *step, SwPinRole role)
{
  const SwPinPlace *pins = briefing->sheet.layout->faces[step->face].pins;
  const guint32 *of_step = sw_laying_step_pins (briefing->sequence, step);
  gsize count = 0;

  for (gsize k = 0; k < step->n_pins; k++)
    count += pins[of_step[k]].role == role;
  return count;
}

/* The tier's share of the seed. */
static void
put_seed (const SwSheet *sheet, GHashTable *places, const SwTier *tier)
{
  const SwTally *tally = sheet->tally;

  put_quantity (sheet, places, "bulk",
                tally->seed_bulk_kg / tally->areas.net_m2 * tier->net_m2, SW_UNIT_KG);
  put_quantity (sheet, places, "net_all", tier->net_m2, SW_UNIT_M2);
}

static const char *
obstacle_name (const SwSheet *sheet, guint face, guint index)
{
  const SwObstacle *obstacle = sheet->layout->faces[face].obstacles[index].obstacle;

  return *obstacle->name != '\0' ? obstacle->name
                                 : sw_sheet_get (sheet, "drawing.obstacle-unnamed");
}

/* Each obstacle that a run is cut round, once. */
static const char *
cut_out_names (const SwSheet *sheet, guint face, const SwRun *run)
{
  const SwFaceLayout *laid = &sheet->layout->faces[face];
  g_autoptr (GString) names = g_string_new (NULL);

  for (guint i = 0; i < run->n_cut_outs; i++)
    g_string_append_printf (
        names, "%s%s", i > 0 ? ", " : "",
        obstacle_name (sheet, face, laid->cut_outs[run->first_cut_out + i].obstacle));
  return sw_sheet_keep (sheet, g_strdup (names->str));
}

static void
put_run (const SwBriefing *briefing, GHashTable *places, const SwLayingStep *step)
{
  const SwSheet *sheet = &briefing->sheet;
  const SwFaceLayout *laid = &sheet->layout->faces[step->face];
  const SwRun *run = &laid->runs[step->run];
  const SwRunSteps *steps = &briefing->sequence->faces[step->face].runs[step->run];
  const SwPiece *piece = step->piece != SW_LAYING_NONE
                             ? &sheet->layout->pieces[step->piece]
                             : sw_layout_run_pieces (sheet->layout, run);
  g_autoptr (GArray) under = g_array_new (FALSE, FALSE, sizeof (guint));

  sw_laying_runs_under (briefing->sequence, step->face, step->run, under);
  put (places, "run", sw_sheet_keep (sheet, sw_run_label (run)));
  put (places, "under", sw_sheet_runs (sheet, laid, under));
  put (places, "cut_out", cut_out_names (sheet, step->face, run));
  put_count (sheet, places, "nth", steps->place + 1);
  put_count (sheet, places, "runs", laid->tiers[run->tier].n_runs);
  put_count (sheet, places, "roll", (gsize) piece->roll);
  put_count (sheet, places, "piece", piece->order + 1);
  put_count (sheet, places, "pieces", run->n_pieces);
  put_quantity (sheet, places, "length", piece->length_m, SW_UNIT_M);
  put_quantity (sheet, places, "width", run->width_m, SW_UNIT_M);
}

/* Laid and driven when this step is done. */
static void
put_so_far (const SwBriefing *briefing, GHashTable *places, guint index)
{
  const SwSheet *sheet = &briefing->sheet;
  const SwLayingStep *step = &briefing->sequence->steps[index];
  const SwFaceLayout *laid = &sheet->layout->faces[step->face];
  gsize runs = 0;

  for (guint i = 0; i < laid->n_runs; i++)
    runs += briefing->sequence->faces[step->face].runs[i].last <= index;
  put_count (sheet, places, "runs_done", runs);
  put_count (sheet, places, "runs_all", laid->n_runs);
  put_count (sheet, places, "pins_done", step->first_pin + step->n_pins);
  put_count (sheet, places, "pins_all", laid->n_pins);
}

/* All that the texts of a step may name: its tier's numbers, and its own. */
static GHashTable *
step_places (SwBriefing *briefing, guint index)
{
  const SwSheet *sheet = &briefing->sheet;
  const SwLayingStep *step = &briefing->sequence->steps[index];
  GHashTable *places = g_hash_table_new_full (g_str_hash, g_str_equal, NULL, g_free);
  GHashTableIter iter;
  gpointer name, value;

  g_hash_table_iter_init (&iter, tier_places (briefing, step->face, step->tier));
  while (g_hash_table_iter_next (&iter, &name, &value))
    g_hash_table_replace (places, name, g_strdup (value));
  put_count (sheet, places, "pins", step->n_pins);
  put_count (sheet, places, "pins_field", pins_of_role (briefing, step, SW_PIN_FIELD));
  put_count (sheet, places, "pins_edge", pins_of_role (briefing, step, SW_PIN_EDGE));
  put_so_far (briefing, places, index);
  if (step->act == SW_LAYING_SEED)
    put_seed (sheet, places, &sheet->layout->faces[step->face].tiers[step->tier]);
  if (step->obstacle != SW_LAYING_NONE)
    put (places, "obstacle", obstacle_name (sheet, step->face, step->obstacle));
  if (step->run != SW_LAYING_NONE)
    put_run (briefing, places, step);
  return places;
}

/* "number" to "number-piece": what of a text holds for this step. */
static const char *
variant (const SwBriefing *briefing, const SwLayingStep *step, const char *part)
{
  const SwFaceLayout *laid = &briefing->sheet.layout->faces[step->face];
  const SwRun *run = step->run != SW_LAYING_NONE ? &laid->runs[step->run] : NULL;

  if (!g_str_equal (part, "number"))
    return part;
  if (step->act == SW_LAYING_UNROLL && run->n_pieces > 1)
    return "number-piece";
  if (step->act == SW_LAYING_BACKFILL
      && briefing->sequence->faces[step->face].runs[step->run].place + 1
             == laid->tiers[run->tier].n_runs)
    return "number-last";
  if (step->act == SW_LAYING_PIN_FIELD && pins_of_role (briefing, step, SW_PIN_EDGE) > 0)
    return "number-edge";
  return part;
}

/* Words of the briefing's own, else those of the pack's step. */
static const char *
text_id (const SwBriefing *briefing, const SwLayingStep *step, const char *part)
{
  const SwSheet *sheet = &briefing->sheet;
  const char *code = sw_laying_act_code (step->act);
  const char *own =
      sw_sheet_format (sheet, "briefing.%s.%s", code, variant (briefing, step, part));
  const char *of_pack = sw_sheet_format (sheet, "pack.step.%s.%s", code, part);

  if (sw_texts_has (sheet->texts, own))
    return own;
  if (step->act == SW_LAYING_TOE
      && (g_str_equal (part, "number") || g_str_equal (part, "do")))
    return sw_sheet_toe_id (sheet, of_pack);
  return of_pack;
}

static char *
fill (const SwBriefing *briefing, const char *id, GHashTable *places)
{
  return sw_texts_fill_table (briefing->sheet.texts, id, places);
}

/* Where the pack's steps have one, at the moment for which it is meant. */
static const char *
hold_id (const SwBriefing *briefing, guint index)
{
  const SwLayingStep *step = &briefing->sequence->steps[index];
  const SwFaceLayout *laid = &briefing->sheet.layout->faces[step->face];

  switch (step->act)
    {
    case SW_LAYING_PREPARE:
      return "pack.step.prepare.hold";
    case SW_LAYING_DIG_KEY:
    case SW_LAYING_DIG_SLOTS:
      return "pack.step.dig-key.hold";
    case SW_LAYING_COLLAR:
    case SW_LAYING_TOE:
      return "pack.step.toe.hold";
    case SW_LAYING_INSPECT:
      return "pack.step.inspect.hold";
    case SW_LAYING_ANCHOR:
    case SW_LAYING_UNROLL:
      return laid->runs[step->run].number == RUN_AFTER_HOLD
                     && briefing->sequence->faces[step->face].runs[step->run].first
                            == index
                 ? "pack.step.unroll.hold"
                 : NULL;
    case SW_LAYING_SEED:
    case SW_LAYING_BACKFILL:
    case SW_LAYING_SLOT:
    case SW_LAYING_SIDE_LAP:
    case SW_LAYING_PIN_FIELD:
    case SW_LAYING_END_LAP:
    case SW_LAYING_ACT_COUNT:
    default:
      return NULL;
    }
}

/* Row of the hazard table that a step is about. */
static const char *
hazard_of (const SwBriefing *briefing, SwLayingAct act)
{
  static const char *const codes[SW_LAYING_ACT_COUNT] = {
    [SW_LAYING_PREPARE] = "walk",   [SW_LAYING_SEED] = "walk",
    [SW_LAYING_DIG_KEY] = "trench", [SW_LAYING_DIG_SLOTS] = "trench",
    [SW_LAYING_ANCHOR] = "carry",   [SW_LAYING_BACKFILL] = "walk",
    [SW_LAYING_UNROLL] = "unroll",  [SW_LAYING_SLOT] = "pins",
    [SW_LAYING_SIDE_LAP] = "pins",  [SW_LAYING_PIN_FIELD] = "pins",
    [SW_LAYING_END_LAP] = "pins",   [SW_LAYING_COLLAR] = "cut",
    [SW_LAYING_TOE] = "pins",     [SW_LAYING_INSPECT] = "end"
  };

  if (act == SW_LAYING_TOE
      && briefing->sheet.job->site[SW_SITE_WATER_AT_TOE] == SW_ANSWER_YES)
    return "water";
  return codes[act];
}

static char *
caution (const SwBriefing *briefing, const SwLayingStep *step, GHashTable *places)
{
  const SwSheet *sheet = &briefing->sheet;
  const char *code = hazard_of (briefing, step->act);
  g_autofree char *hazard =
      fill (briefing, sw_sheet_format (sheet, "pack.hazard.%s.hazard", code), places);
  g_autofree char *control =
      fill (briefing, sw_sheet_format (sheet, "pack.hazard.%s.control", code), places);

  return sw_texts_fill (sheet->texts, "briefing.caution", "hazard", hazard, "control",
                        control, NULL);
}

static char *
who (const SwBriefing *briefing, const SwLayingStep *step, GHashTable *places)
{
  g_autofree char *tool = fill (briefing, text_id (briefing, step, "tool"), places);
  g_autofree char *people = fill (briefing, text_id (briefing, step, "who"), places);

  return sw_texts_fill (briefing->sheet.texts, "pack.step.tool-and-who", "tool", tool,
                        "who", people, NULL);
}

static char *
where (const SwBriefing *briefing, const SwLayingStep *step, GHashTable *places)
{
  return fill (briefing,
               step->run == SW_LAYING_NONE ? "briefing.where.part" : "briefing.where.run",
               places);
}

static char **
doing (const SwBriefing *briefing, const SwLayingStep *step, GHashTable *places)
{
  const SwFaceLayout *laid = &briefing->sheet.layout->faces[step->face];
  g_autofree char *words = fill (briefing, text_id (briefing, step, "do"), places);
  g_autoptr (GString) all = g_string_new (words);

  if (step->act == SW_LAYING_UNROLL && laid->runs[step->run].n_cut_outs > 0)
    {
      g_autofree char *cut = fill (briefing, "briefing.unroll.cut-out", places);

      g_string_append_printf (all, "\n%s", cut);
    }
  return g_strsplit (all->str, "\n", -1);
}

SwBriefingWords *
sw_briefing_words (SwBriefing *briefing, guint index)
{
  const SwSheet *sheet = &briefing->sheet;
  const SwLayingStep *step = &briefing->sequence->steps[index];
  SwBriefingWords *words = g_new0 (SwBriefingWords, 1);
  g_autoptr (GHashTable) places = NULL;
  const char *hold = hold_id (briefing, index);

  g_string_chunk_clear (sheet->strings);
  places = step_places (briefing, index);
  words->where = where (briefing, step, places);
  words->title = fill (briefing, text_id (briefing, step, "title"), places);
  words->number = fill (briefing, text_id (briefing, step, "number"), places);
  words->doing = doing (briefing, step, places);
  words->who = who (briefing, step, places);
  if (hold != NULL)
    words->hold = sw_texts_fill (sheet->texts, "pack.step.hold-point", "what",
                                 sw_sheet_get (sheet, hold), NULL);
  words->caution = caution (briefing, step, places);
  words->so_far = fill (briefing, "briefing.so-far", places);
  return words;
}

void
sw_briefing_words_free (SwBriefingWords *words)
{
  if (words == NULL)
    return;
  g_free (words->where);
  g_free (words->title);
  g_free (words->number);
  g_strfreev (words->doing);
  g_free (words->who);
  g_free (words->hold);
  g_free (words->caution);
  g_free (words->so_far);
  g_free (words);
}
