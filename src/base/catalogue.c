/* SPDX-License-Identifier: MIT */
#include <slopewright/base/catalogue.h>

static const char *const evidence_codes[SW_EVIDENCE_COUNT] = {
  [SW_EVIDENCE_SEEN] = "seen",         [SW_EVIDENCE_SECOND_HAND] = "second-hand",
  [SW_EVIDENCE_MEMORY] = "memory",     [SW_EVIDENCE_DERIVED] = "derived",
  [SW_EVIDENCE_PROPOSED] = "proposed", [SW_EVIDENCE_COMMON_PRACTICE] = "common-practice",
  [SW_EVIDENCE_USER] = "user",
};

const SwPracticeKey sw_practice_keys[SW_PRACTICE_VALUE_COUNT] = {
  [SW_PRACTICE_SET_BACK_M] = { "set_back_m", SW_UNIT_SMALL_M, 0.0, 5.0, FALSE },
  [SW_PRACTICE_TRENCH_DEPTH_M] = { "trench_depth_m", SW_UNIT_SMALL_M, 0.02, 1.0, FALSE },
  [SW_PRACTICE_TRENCH_WIDTH_M] = { "trench_width_m", SW_UNIT_SMALL_M, 0.01, 1.0, FALSE },
  [SW_PRACTICE_TRENCH_FOLD_M] = { "trench_fold_m", SW_UNIT_SMALL_M, 0.0, 2.0, FALSE },
  [SW_PRACTICE_TRENCH_PIN_M] = { "trench_pin_m", SW_UNIT_SMALL_M, 0.05, 5.0, FALSE },
  [SW_PRACTICE_TOE_DEPTH_M] = { "toe_depth_m", SW_UNIT_SMALL_M, 0.02, 1.0, FALSE },
  [SW_PRACTICE_TOE_WIDTH_M] = { "toe_width_m", SW_UNIT_SMALL_M, 0.01, 1.0, FALSE },
  [SW_PRACTICE_TOE_FOLD_M] = { "toe_fold_m", SW_UNIT_SMALL_M, 0.0, 2.0, FALSE },
  [SW_PRACTICE_TOE_PIN_M] = { "toe_pin_m", SW_UNIT_SMALL_M, 0.05, 5.0, FALSE },
  [SW_PRACTICE_SIDE_LAP_M] = { "side_lap_m", SW_UNIT_SMALL_M, 0.0, 1.0, FALSE },
  [SW_PRACTICE_SIDE_LAP_PIN_M] = { "side_lap_pin_m", SW_UNIT_SMALL_M, 0.05, 5.0, FALSE },
  [SW_PRACTICE_EDGE_PIN_M] = { "edge_pin_m", SW_UNIT_SMALL_M, 0.05, 5.0, FALSE },
  [SW_PRACTICE_END_LAP_M] = { "end_lap_m", SW_UNIT_SMALL_M, 0.0, 3.0, FALSE },
  [SW_PRACTICE_END_LAP_STEEP_M] = { "end_lap_steep_m", SW_UNIT_SMALL_M, 0.0, 3.0, FALSE },
  [SW_PRACTICE_STEEP_HV] = { "steep_hv", SW_UNIT_HV, 0.1, 100.0, FALSE },
  [SW_PRACTICE_END_LAP_PIN_M] = { "end_lap_pin_m", SW_UNIT_SMALL_M, 0.05, 5.0, FALSE },
  [SW_PRACTICE_END_LAP_ROW_GAP_M] = { "end_lap_row_gap_m", SW_UNIT_SMALL_M, 0.0, 1.0,
                                      FALSE },
  [SW_PRACTICE_PIN_DOWN_M] = { "pin_down_m", SW_UNIT_SMALL_M, 0.05, 5.0, FALSE },
  [SW_PRACTICE_PIN_ACROSS_M] = { "pin_across_m", SW_UNIT_SMALL_M, 0.05, 5.0, FALSE },
  [SW_PRACTICE_PIN_LENGTH_M] = { "pin_length_m", SW_UNIT_SMALL_M, 0.05, 1.5, FALSE },
  [SW_PRACTICE_SLOT_EVERY_M] = { "slot_every_m", SW_UNIT_M, 1.0, 1000.0, TRUE },
  [SW_PRACTICE_SLOT_HV] = { "slot_hv", SW_UNIT_HV, 0.1, 100.0, FALSE },
  [SW_PRACTICE_SLOT_DEPTH_M] = { "slot_depth_m", SW_UNIT_SMALL_M, 0.02, 1.0, FALSE },
  [SW_PRACTICE_SLOT_WIDTH_M] = { "slot_width_m", SW_UNIT_SMALL_M, 0.01, 1.0, FALSE },
  [SW_PRACTICE_SLOT_PIN_M] = { "slot_pin_m", SW_UNIT_SMALL_M, 0.05, 5.0, FALSE },
  [SW_PRACTICE_BENCH_HV] = { "bench_hv", SW_UNIT_HV, 0.1, 100.0, FALSE },
  [SW_PRACTICE_BENCH_MIN_M] = { "bench_min_m", SW_UNIT_M, 0.1, 100.0, FALSE },
  [SW_PRACTICE_MIN_PIECE_M] = { "min_piece_m", SW_UNIT_M, 0.1, 100.0, FALSE },
  [SW_PRACTICE_JOINT_STAGGER_M] = { "joint_stagger_m", SW_UNIT_M, 0.0, 100.0, FALSE },
  [SW_PRACTICE_JOINT_FREE_CREST_M] = { "joint_free_crest_m", SW_UNIT_M, 0.0, 100.0,
                                       FALSE },
  [SW_PRACTICE_JOINT_FREE_TOE_M] = { "joint_free_toe_m", SW_UNIT_M, 0.0, 100.0, FALSE },
  [SW_PRACTICE_PIN_SPARE] = { "pin_spare", SW_UNIT_PERCENT, 0.0, 1.0, FALSE },
  [SW_PRACTICE_ROLL_SPARE] = { "roll_spare", SW_UNIT_PERCENT, 0.0, 1.0, FALSE },
  [SW_PRACTICE_INSPECT_DAYS] = { "inspect_days", SW_UNIT_DAY, 1.0, 365.0, FALSE },
  [SW_PRACTICE_INSPECT_RAIN_M] = { "inspect_rain_m", SW_UNIT_SMALL_M, 0.0, 1.0, FALSE },
  [SW_PRACTICE_INSPECT_HOURS] = { "inspect_hours", SW_UNIT_HOUR, 1.0, 1000.0, FALSE },
  [SW_PRACTICE_COVER] = { "cover", SW_UNIT_PERCENT, 0.05, 1.0, FALSE },
  [SW_PRACTICE_REPAIR_DAYS] = { "repair_days", SW_UNIT_DAY, 0.0, 365.0, FALSE },
  [SW_PRACTICE_DEDUCT_M2] = { "deduct_m2", SW_UNIT_M2, 0.0, 1000.0, FALSE },
  [SW_PRACTICE_RING_PIN_M] = { "ring_pin_m", SW_UNIT_SMALL_M, 0.05, 5.0, FALSE },
  [SW_PRACTICE_COLLAR_M] = { "collar_m", SW_UNIT_SMALL_M, 0.0, 2.0, FALSE },
};

gboolean
sw_evidence_is_source (SwEvidence evidence)
{
  return evidence == SW_EVIDENCE_PROPOSED || evidence == SW_EVIDENCE_COMMON_PRACTICE;
}

SwLimit
sw_practice_limit (SwPracticeValue value)
{
  static const guint8 limits[SW_PRACTICE_VALUE_COUNT] = {
    [SW_PRACTICE_SET_BACK_M] = SW_LIMIT_LEAST,
    [SW_PRACTICE_TRENCH_DEPTH_M] = SW_LIMIT_LEAST,
    [SW_PRACTICE_TRENCH_WIDTH_M] = SW_LIMIT_LEAST,
    [SW_PRACTICE_TRENCH_FOLD_M] = SW_LIMIT_LEAST,
    [SW_PRACTICE_TRENCH_PIN_M] = SW_LIMIT_MOST,
    [SW_PRACTICE_TOE_DEPTH_M] = SW_LIMIT_LEAST,
    [SW_PRACTICE_TOE_WIDTH_M] = SW_LIMIT_LEAST,
    [SW_PRACTICE_TOE_FOLD_M] = SW_LIMIT_LEAST,
    [SW_PRACTICE_TOE_PIN_M] = SW_LIMIT_MOST,
    [SW_PRACTICE_SIDE_LAP_M] = SW_LIMIT_LEAST,
    [SW_PRACTICE_SIDE_LAP_PIN_M] = SW_LIMIT_MOST,
    [SW_PRACTICE_EDGE_PIN_M] = SW_LIMIT_MOST,
    [SW_PRACTICE_END_LAP_M] = SW_LIMIT_LEAST,
    [SW_PRACTICE_END_LAP_STEEP_M] = SW_LIMIT_LEAST,
    [SW_PRACTICE_END_LAP_PIN_M] = SW_LIMIT_MOST,
    [SW_PRACTICE_END_LAP_ROW_GAP_M] = SW_LIMIT_LEAST,
    [SW_PRACTICE_PIN_DOWN_M] = SW_LIMIT_MOST,
    [SW_PRACTICE_PIN_ACROSS_M] = SW_LIMIT_MOST,
    [SW_PRACTICE_PIN_LENGTH_M] = SW_LIMIT_LEAST,
    [SW_PRACTICE_SLOT_EVERY_M] = SW_LIMIT_MOST,
    [SW_PRACTICE_SLOT_DEPTH_M] = SW_LIMIT_LEAST,
    [SW_PRACTICE_SLOT_WIDTH_M] = SW_LIMIT_LEAST,
    [SW_PRACTICE_SLOT_PIN_M] = SW_LIMIT_MOST,
    [SW_PRACTICE_MIN_PIECE_M] = SW_LIMIT_LEAST,
    [SW_PRACTICE_JOINT_STAGGER_M] = SW_LIMIT_LEAST,
    [SW_PRACTICE_JOINT_FREE_CREST_M] = SW_LIMIT_LEAST,
    [SW_PRACTICE_JOINT_FREE_TOE_M] = SW_LIMIT_LEAST,
    [SW_PRACTICE_RING_PIN_M] = SW_LIMIT_MOST,
    [SW_PRACTICE_COLLAR_M] = SW_LIMIT_LEAST,
  };

  g_return_val_if_fail ((unsigned) value < SW_PRACTICE_VALUE_COUNT, SW_LIMIT_NONE);
  return (SwLimit) limits[value];
}

const char *
sw_evidence_code (SwEvidence evidence)
{
  g_return_val_if_fail ((unsigned) evidence < SW_EVIDENCE_COUNT, NULL);
  return evidence_codes[evidence];
}

gboolean
sw_evidence_from_code (const char *code, SwEvidence *evidence)
{
  for (int i = 0; i < SW_EVIDENCE_COUNT; i++)
    if (g_strcmp0 (code, evidence_codes[i]) == 0)
      {
        *evidence = (SwEvidence) i;
        return TRUE;
      }
  return FALSE;
}

SwPracticeValue
sw_practice_value_from_key (const char *key)
{
  int i = 0;

  while (i < SW_PRACTICE_VALUE_COUNT && g_strcmp0 (key, sw_practice_keys[i].key) != 0)
    i++;
  return (SwPracticeValue) i;
}

gboolean
sw_practice_accepts (SwPracticeValue value, double number)
{
  g_return_val_if_fail ((unsigned) value < SW_PRACTICE_VALUE_COUNT, FALSE);
  const SwPracticeKey *key = &sw_practice_keys[value];

  return (key->or_zero && number <= 0.0 && number >= 0.0)
         || (number >= key->least && number <= key->most);
}

SwPractice *
sw_practice_new (void)
{
  return g_new0 (SwPractice, 1);
}

const char *
sw_practice_source (const SwPractice *practice, SwPracticeValue value)
{
  const SwSourced *sourced = &practice->values[value];

  return sourced->source != NULL || sourced->evidence == SW_EVIDENCE_USER
             ? sourced->source
             : practice->source_id;
}

SwPractice *
sw_practice_copy (const SwPractice *practice)
{
  SwPractice *copy = g_memdup2 (practice, sizeof *practice);

  copy->id = g_strdup (practice->id);
  copy->name_id = g_strdup (practice->name_id);
  copy->agency_id = g_strdup (practice->agency_id);
  copy->edition_id = g_strdup (practice->edition_id);
  copy->source_id = g_strdup (practice->source_id);
  copy->own_name = g_strdup (practice->own_name);
  copy->own_source = g_strdup (practice->own_source);
  for (int i = 0; i < SW_PRACTICE_VALUE_COUNT; i++)
    copy->values[i].source = g_strdup (practice->values[i].source);
  copy->density =
      g_memdup2 (practice->density, practice->n_density * sizeof *practice->density);
  for (guint i = 0; i < practice->n_density; i++)
    copy->density[i].per_m2.source = g_strdup (practice->density[i].per_m2.source);
  return copy;
}

void
sw_practice_free (SwPractice *practice)
{
  if (practice == NULL)
    return;
  g_free (practice->id);
  g_free (practice->name_id);
  g_free (practice->agency_id);
  g_free (practice->edition_id);
  g_free (practice->source_id);
  g_free (practice->own_name);
  g_free (practice->own_source);
  for (int i = 0; i < SW_PRACTICE_VALUE_COUNT; i++)
    g_free (practice->values[i].source);
  for (guint i = 0; i < practice->n_density; i++)
    g_free (practice->density[i].per_m2.source);
  g_free (practice->density);
  g_free (practice);
}

void
sw_soil_free (SwSoil *soil)
{
  if (soil == NULL)
    return;
  g_free (soil->id);
  g_free (soil->name_id);
  g_free (soil->source_id);
  g_free (soil->pin_firm_m.source);
  g_free (soil->pin_loose_m.source);
  g_free (soil->swell.source);
  g_free (soil->compaction.source);
  g_free (soil->erodibility.source);
  g_free (soil->friction_rad.source);
  g_free (soil);
}

SwBlanket *
sw_blanket_copy (const SwBlanket *blanket)
{
  SwBlanket *copy = g_memdup2 (blanket, sizeof *blanket);

  copy->id = g_strdup (blanket->id);
  copy->name_id = g_strdup (blanket->name_id);
  copy->source_id = g_strdup (blanket->source_id);
  copy->life_months.source = g_strdup (blanket->life_months.source);
  copy->max_hv.source = g_strdup (blanket->max_hv.source);
  copy->max_c.source = g_strdup (blanket->max_c.source);
  copy->shear_pa.source = g_strdup (blanket->shear_pa.source);
  copy->mass_kg_per_m2.source = g_strdup (blanket->mass_kg_per_m2.source);
  copy->thickness_m.source = g_strdup (blanket->thickness_m.source);
  return copy;
}

void
sw_blanket_free (SwBlanket *blanket)
{
  if (blanket == NULL)
    return;
  g_free (blanket->id);
  g_free (blanket->name_id);
  g_free (blanket->source_id);
  g_free (blanket->life_months.source);
  g_free (blanket->max_hv.source);
  g_free (blanket->max_c.source);
  g_free (blanket->shear_pa.source);
  g_free (blanket->mass_kg_per_m2.source);
  g_free (blanket->thickness_m.source);
  g_free (blanket);
}

void
sw_roll_free (SwRoll *roll)
{
  if (roll == NULL)
    return;
  g_free (roll->id);
  g_free (roll->source_id);
  g_free (roll);
}

const char *const sw_pin_kind_codes[SW_PIN_KIND_COUNT + 1] = { "staple", "washer-pin",
                                                               "stake", NULL };

const char *
sw_pin_name_id (const SwPin *pin)
{
  static const char *const ids[SW_PIN_KIND_COUNT] = { "pin.staple", "pin.washer-pin",
                                                      "pin.stake" };

  return ids[pin->kind];
}

void
sw_pin_free (SwPin *pin)
{
  if (pin == NULL)
    return;
  g_free (pin->id);
  g_free (pin->source_id);
  g_free (pin);
}

void
sw_default_free (SwDefault *value)
{
  if (value == NULL)
    return;
  g_free (value->id);
  g_free (value->number.source);
  g_free (value);
}

SwCatalogue *
sw_catalogue_new (void)
{
  SwCatalogue *catalogue = g_new0 (SwCatalogue, 1);

  catalogue->practices =
      g_ptr_array_new_with_free_func ((GDestroyNotify) sw_practice_free);
  catalogue->soils = g_ptr_array_new_with_free_func ((GDestroyNotify) sw_soil_free);
  catalogue->blankets = g_ptr_array_new_with_free_func ((GDestroyNotify) sw_blanket_free);
  catalogue->rolls = g_ptr_array_new_with_free_func ((GDestroyNotify) sw_roll_free);
  catalogue->pins = g_ptr_array_new_with_free_func ((GDestroyNotify) sw_pin_free);
  catalogue->defaults = g_ptr_array_new_with_free_func ((GDestroyNotify) sw_default_free);
  return catalogue;
}

void
sw_catalogue_free (SwCatalogue *catalogue)
{
  if (catalogue == NULL)
    return;
  g_ptr_array_unref (catalogue->practices);
  g_ptr_array_unref (catalogue->soils);
  g_ptr_array_unref (catalogue->blankets);
  g_ptr_array_unref (catalogue->rolls);
  g_ptr_array_unref (catalogue->pins);
  g_ptr_array_unref (catalogue->defaults);
  g_free (catalogue);
}

/* Every catalogue entry begins with its id, so one search serves all. */
static const void *
entry_by_id (const GPtrArray *entries, const char *id)
{
  for (guint i = 0; i < entries->len; i++)
    {
      char *const *entry = g_ptr_array_index (entries, i);
      if (g_strcmp0 (*entry, id) == 0)
        return entry;
    }
  return NULL;
}

G_STATIC_ASSERT (G_STRUCT_OFFSET (SwPractice, id) == 0);
G_STATIC_ASSERT (G_STRUCT_OFFSET (SwSoil, id) == 0);
G_STATIC_ASSERT (G_STRUCT_OFFSET (SwBlanket, id) == 0);
G_STATIC_ASSERT (G_STRUCT_OFFSET (SwRoll, id) == 0);
G_STATIC_ASSERT (G_STRUCT_OFFSET (SwPin, id) == 0);
G_STATIC_ASSERT (G_STRUCT_OFFSET (SwDefault, id) == 0);

const SwPractice *
sw_catalogue_practice (const SwCatalogue *catalogue, const char *id)
{
  return entry_by_id (catalogue->practices, id);
}

const SwSoil *
sw_catalogue_soil (const SwCatalogue *catalogue, const char *id)
{
  return entry_by_id (catalogue->soils, id);
}

const SwBlanket *
sw_catalogue_blanket (const SwCatalogue *catalogue, const char *id)
{
  return entry_by_id (catalogue->blankets, id);
}

const SwRoll *
sw_catalogue_roll (const SwCatalogue *catalogue, const char *id)
{
  return entry_by_id (catalogue->rolls, id);
}

const SwPin *
sw_catalogue_pin (const SwCatalogue *catalogue, const char *id)
{
  return entry_by_id (catalogue->pins, id);
}

const SwDefault *
sw_catalogue_default (const SwCatalogue *catalogue, const char *id)
{
  return entry_by_id (catalogue->defaults, id);
}

const SwPin *
sw_catalogue_pin_of_length (const SwCatalogue *catalogue, double length_m)
{
  const SwPin *shortest = NULL;

  for (guint i = 0; i < catalogue->pins->len; i++)
    {
      const SwPin *pin = g_ptr_array_index (catalogue->pins, i);
      /* 0.1 mm, so that a pin typed in inches serves a length typed in mm. */
      if (pin->length_m + 1e-4 >= length_m
          && (shortest == NULL || pin->length_m < shortest->length_m))
        shortest = pin;
    }
  return shortest;
}
