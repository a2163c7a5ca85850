/* SPDX-License-Identifier: MIT */
#include "tier-numbers.h"
#include <math.h>

guint
sw_tier_joints (const SwFaceLayout *face, guint tier)
{
  guint joints = 0;

  for (guint i = 0; i < face->tiers[tier].n_runs; i++)
    joints += sw_run_end_laps (&face->runs[face->tiers[tier].first_run + i]);
  return joints;
}

SwTierNumbers
sw_tier_numbers (const SwFaceLayout *face, guint tier)
{
  SwTierNumbers numbers = { 0 };

  for (guint i = 0; i < face->n_trenches; i++)
    if (face->trenches[i].tier == tier)
      {
        double *sum = face->trenches[i].kind == SW_TRENCH_KEY    ? &numbers.key_trench_m
                      : face->trenches[i].kind == SW_TRENCH_SLOT ? &numbers.slot_m
                                                                 : &numbers.toe_m;
        *sum += face->trenches[i].length_m;
      }
  numbers.joints = sw_tier_joints (face, tier);
  for (gsize i = 0; i < face->n_pins; i++)
    if (face->pins[i].tier == tier)
      numbers.pins[face->pins[i].role]++;
  return numbers;
}

static void
put (GHashTable *places, const char *name, const char *value)
{
  g_hash_table_replace (places, (gpointer) name, sw_markup_escape (value));
}

static void
put_quantity (const SwSheet *sheet, GHashTable *places, const char *name, double value,
              SwUnit unit)
{
  put (places, name, sw_sheet_quantity (sheet, value, unit));
}

/* Practice values that the texts name. */
static const struct
{
  const char *place;
  SwPracticeValue value;
} practice_places[] = {
  { "set_back", SW_PRACTICE_SET_BACK_M },
  { "trench_depth", SW_PRACTICE_TRENCH_DEPTH_M },
  { "trench_width", SW_PRACTICE_TRENCH_WIDTH_M },
  { "trench_pin", SW_PRACTICE_TRENCH_PIN_M },
  { "toe_depth", SW_PRACTICE_TOE_DEPTH_M },
  { "toe_width", SW_PRACTICE_TOE_WIDTH_M },
  { "toe_fold", SW_PRACTICE_TOE_FOLD_M },
  { "toe_pin", SW_PRACTICE_TOE_PIN_M },
  { "side_lap_least", SW_PRACTICE_SIDE_LAP_M },
  { "side_lap_pin", SW_PRACTICE_SIDE_LAP_PIN_M },
  { "edge_pin", SW_PRACTICE_EDGE_PIN_M },
  { "end_lap_pin", SW_PRACTICE_END_LAP_PIN_M },
  { "end_lap_gap", SW_PRACTICE_END_LAP_ROW_GAP_M },
  { "stagger", SW_PRACTICE_JOINT_STAGGER_M },
  { "slot_depth", SW_PRACTICE_SLOT_DEPTH_M },
  { "slot_width", SW_PRACTICE_SLOT_WIDTH_M },
  { "slot_pin", SW_PRACTICE_SLOT_PIN_M },
  { "slot_every", SW_PRACTICE_SLOT_EVERY_M },
  { "inspect_days", SW_PRACTICE_INSPECT_DAYS },
  { "inspect_rain", SW_PRACTICE_INSPECT_RAIN_M },
  { "inspect_hours", SW_PRACTICE_INSPECT_HOURS },
  { "cover", SW_PRACTICE_COVER },
  { "repair_days", SW_PRACTICE_REPAIR_DAYS },
  { "ring_pin", SW_PRACTICE_RING_PIN_M },
  { "collar", SW_PRACTICE_COLLAR_M },
};

static const char *const pin_places[SW_PIN_ROLE_COUNT] = {
  [SW_PIN_KEY_TRENCH] = "pins_key", [SW_PIN_SLOT] = "pins_slot",
  [SW_PIN_SIDE_LAP] = "pins_side",  [SW_PIN_END_LAP] = "pins_end",
  [SW_PIN_EDGE] = "pins_edge",      [SW_PIN_TOE] = "pins_toe",
  [SW_PIN_FIELD] = "pins_field",    [SW_PIN_RING] = "pins_ring",
};

SwPinFrame
sw_tier_frame (const SwSheet *sheet, const SwTier *tier)
{
  double side_m = sheet->draw->style.units == SW_UNITS_US ? SW_M_PER_YD : 1.0;

  return sw_pin_frame (sw_tier_between_laps_m (sheet->job, tier), tier->pin_across_m,
                       tier->pin_down_m, side_m);
}

static void
put_frame (const SwSheet *sheet, GHashTable *places, const SwTier *tier)
{
  SwPinFrame frame = sw_tier_frame (sheet, tier);
  const char *least = sw_sheet_count (sheet, frame.least);
  const char *most = sw_sheet_count (sheet, frame.most);

  put (places, "frame_each",
       frame.least == frame.most
           ? least
           : sw_sheet_fill (sheet, "pack.from-to", "from", least, "to", most, NULL));
  put (places, "frame_three", sw_sheet_count (sheet, round (3.0 * frame.mean)));
}

static void
put_tier (const SwSheet *sheet, GHashTable *places, const SwTier *tier,
          const SwTierNumbers *numbers)
{
  put_quantity (sheet, places, "length", tier->length_m, SW_UNIT_M);
  put_quantity (sheet, places, "gradient", tier->mean_rad, SW_UNIT_RAD);
  put_quantity (sheet, places, "net", tier->net_m2, SW_UNIT_M2);
  put_quantity (sheet, places, "runs", tier->n_runs, SW_UNIT_COUNT);
  put (places, "side_lap", sw_sheet_limit (sheet, tier->side_lap_m, SW_LIMIT_LAID));
  put (places, "end_lap", sw_sheet_limit (sheet, tier->end_lap_m, SW_LIMIT_LEAST));
  put_quantity (sheet, places, "slots", tier->slots, SW_UNIT_COUNT);
  put (places, "down", sw_sheet_limit (sheet, tier->pin_down_m, SW_LIMIT_MOST));
  put (places, "across", sw_sheet_limit (sheet, tier->pin_across_m, SW_LIMIT_MOST));
  put_frame (sheet, places, tier);
  put_quantity (sheet, places, "key_trench", numbers->key_trench_m, SW_UNIT_M);
  put_quantity (sheet, places, "slot_length", numbers->slot_m, SW_UNIT_M);
  put_quantity (sheet, places, "toe_length", numbers->toe_m, SW_UNIT_M);
  put_quantity (sheet, places, "joints", numbers->joints, SW_UNIT_COUNT);
  for (int role = 0; role < SW_PIN_ROLE_COUNT; role++)
    put_quantity (sheet, places, pin_places[role], (double) numbers->pins[role],
                  SW_UNIT_COUNT);
}

/* Between two people who drive pins: this program's default, out of a hammer's reach. */
#define APART_M 2.0

static void
put_job (const SwSheet *sheet, GHashTable *places)
{
  const SwTally *tally = sheet->tally;

  put_quantity (sheet, places, "roll_width", sheet->job->roll_width_m, SW_UNIT_M);
  put_quantity (sheet, places, "roll_length", sheet->job->roll_length_m, SW_UNIT_M);
  put_quantity (sheet, places, "roll_mass", tally->roll_mass_kg, SW_UNIT_KG);
  put_quantity (sheet, places, "net_all", tally->areas.net_m2, SW_UNIT_M2);
  put_quantity (sheet, places, "bulk", tally->seed_bulk_kg, SW_UNIT_KG);
  put_quantity (sheet, places, "pls", tally->seed_pls_kg, SW_UNIT_KG);
  put_quantity (sheet, places, "bulk_rate", tally->seed_bulk_kg / tally->areas.net_m2,
                SW_UNIT_KG_PER_M2);
  put_quantity (sheet, places, "bank", tally->trench_bank_m3, SW_UNIT_M3);
  put_quantity (sheet, places, "loose", tally->trench_loose_m3, SW_UNIT_M3);
  put (places, "seed", sheet->job->seed.name);
  put (places, "apart", sw_sheet_whole_length (sheet, APART_M));
}

GHashTable *
sw_tier_places (const SwSheet *sheet, guint face, guint tier)
{
  const SwFaceLayout *layout = &sheet->layout->faces[face];
  SwTierNumbers numbers = sw_tier_numbers (layout, tier);
  GHashTable *places = g_hash_table_new_full (g_str_hash, g_str_equal, NULL, g_free);

  put (places, "place", sw_sheet_place (sheet, face, tier));
  put (places, "cut", sw_sheet_cut_range (sheet, face, tier));
  put (places, "infill", sw_sheet_infill_runs (sheet, layout, tier));
  put (places, "pin", sw_sheet_pin_words (sheet, layout));
  put_tier (sheet, places, &layout->tiers[tier], &numbers);
  put_job (sheet, places);
  for (guint i = 0; i < G_N_ELEMENTS (practice_places); i++)
    put (places, practice_places[i].place,
         sw_sheet_practice (sheet, practice_places[i].value));
  return places;
}
