/* SPDX-License-Identifier: MIT */
#include "catalogue-entry.h"

#include <math.h>

static char *
text_member (const SwJsonPlace *object, const char *key)
{
  SwJsonPlace place = sw_json_member (object, key);

  return sw_json_words (&place);
}

/* The words of a source are texts, since a reader of any language is to judge it. */
static char *
source_member (const SwJsonPlace *object)
{
  g_autofree char *name = text_member (object, "source");

  return g_strconcat ("source.", name, NULL);
}

static double
number_member (const SwJsonPlace *object, const char *key, SwJsonRange range)
{
  SwJsonPlace place = sw_json_member (object, key);

  return sw_json_number (&place, range);
}

static SwEvidence
evidence_member (const SwJsonPlace *object)
{
  SwJsonPlace place = sw_json_member (object, "evidence");
  SwEvidence evidence = SW_EVIDENCE_MEMORY;

  /* "user" is for jobs: nothing in the catalogue was typed for one. */
  if (!sw_evidence_from_code (json_string_value (place.value), &evidence)
      || evidence == SW_EVIDENCE_USER)
    sw_json_expected (&place, "one of \"seen\", \"second-hand\", \"memory\", "
                              "\"derived\", \"proposed\", \"common-practice\"");
  return evidence;
}

/* { "value": …, "evidence": …, "source": … }; a number where the class has no value. */
static SwSourced
sourced_member (const SwJsonPlace *object, const char *key, SwJsonRange range,
                const char *word, double word_value)
{
  static const char *const keys[] = { "value", "evidence", "source", NULL };
  SwJsonPlace place = sw_json_member (object, key);
  SwJsonPlace value = sw_json_member (&place, "value");
  SwSourced sourced = { 0 };

  sw_json_only (&place, keys);
  if (word != NULL && g_strcmp0 (json_string_value (value.value), word) == 0)
    sourced.value = word_value;
  else
    sourced.value = sw_json_number (&value, range);
  sourced.evidence = evidence_member (&place);
  sourced.source = source_member (&place);
  return sourced;
}

static void
read_density (const SwJsonPlace *list, SwPractice *practice)
{
  static const char *const keys[] = { "hv", "per_m2", NULL };
  const SwJsonRange density_hv = { 0.1, 100.0, FALSE, FALSE };
  const SwJsonRange density_per_m2 = { 0.1, 20.0, FALSE, FALSE };
  gsize count = sw_json_list (list, 0, "a list of density rows, steepest first");

  practice->density = g_new0 (SwDensityRow, count);
  practice->n_density = (guint) count;
  for (gsize i = 0; i < count; i++)
    {
      SwJsonPlace row = sw_json_element (list, i);
      SwJsonPlace hv = sw_json_member (&row, "hv");
      sw_json_only (&row, keys);
      practice->density[i].hv = sw_json_number (&hv, density_hv);
      practice->density[i].per_m2 =
          sourced_member (&row, "per_m2", density_per_m2, NULL, NAN);
      if (i > 0 && practice->density[i].hv <= practice->density[i - 1].hv)
        sw_json_expected (&hv, "rows in order, steepest first");
    }
}

static void
read_values (const SwJsonPlace *values, SwPractice *practice)
{
  const char *keys[SW_PRACTICE_VALUE_COUNT + 1] = { NULL };

  for (int i = 0; i < SW_PRACTICE_VALUE_COUNT; i++)
    {
      const SwJsonRange range = sw_json_practice_range ((SwPracticeValue) i);
      keys[i] = sw_practice_keys[i].key;
      practice->values[i] = sourced_member (values, keys[i], range, NULL, NAN);
    }
  sw_json_only (values, keys);
}

SwPractice *
sw_practice_read (const SwJsonPlace *place)
{
  static const char *const keys[] = { "id",         "source",  "evidence",
                                      "toe_kind",   "values",  "trench_lining",
                                      "toe_lining", "density", NULL };
  static const char *const linings[] = { "down", "down-across", "down-across-up", NULL };
  static const char *const toe_kinds[] = { "trench", "fold", "row", NULL };
  SwPractice *practice = sw_practice_new ();
  SwJsonPlace trench_lining = sw_json_member (place, "trench_lining");
  SwJsonPlace toe_lining = sw_json_member (place, "toe_lining");
  SwJsonPlace toe_kind = sw_json_member (place, "toe_kind");
  SwJsonPlace values = sw_json_member (place, "values");
  SwJsonPlace density = sw_json_member (place, "density");

  sw_json_only (place, keys);
  practice->id = text_member (place, "id");
  practice->name_id = g_strconcat ("practice-name.", practice->id, NULL);
  practice->agency_id = g_strconcat ("practice-agency.", practice->id, NULL);
  practice->edition_id = g_strconcat ("practice-edition.", practice->id, NULL);
  practice->source_id = source_member (place);
  practice->evidence = evidence_member (place);
  practice->trench_lining = (SwLining) sw_json_choice (&trench_lining, linings);
  practice->toe_lining = (SwLining) sw_json_choice (&toe_lining, linings);
  practice->toe_kind = (SwToeKind) sw_json_choice (&toe_kind, toe_kinds);
  read_values (&values, practice);
  if (density.value != NULL)
    read_density (&density, practice);
  return practice;
}

SwSoil *
sw_soil_read (const SwJsonPlace *place)
{
  static const char *const keys[] = {
    "id",         "source",         "pin_firm_m",   "pin_loose_m", "swell",
    "compaction", "erodibility_us", "friction_deg", NULL
  };
  const SwJsonRange pin_m = { 0.05, 1.0, FALSE, FALSE };
  SwSoil *soil = g_new0 (SwSoil, 1);

  sw_json_only (place, keys);
  soil->id = text_member (place, "id");
  soil->name_id = g_strconcat ("soil.", soil->id, NULL);
  soil->source_id = source_member (place);
  soil->pin_firm_m = sourced_member (place, "pin_firm_m", pin_m, NULL, NAN);
  soil->pin_loose_m = sourced_member (place, "pin_loose_m", pin_m, NULL, NAN);
  soil->swell =
      sourced_member (place, "swell", (SwJsonRange){ 0.0, 1.0, FALSE, FALSE }, NULL, NAN);
  soil->compaction = sourced_member (place, "compaction",
                                     (SwJsonRange){ 0.5, 1.5, FALSE, FALSE }, NULL, NAN);
  soil->erodibility = sourced_member (
      place, "erodibility_us", (SwJsonRange){ 0.01, 0.7, FALSE, FALSE }, "none", NAN);
  soil->erodibility.value *= SW_ERODIBILITY_SI_PER_US;
  soil->friction_rad = sourced_member (
      place, "friction_deg", (SwJsonRange){ 5.0, 55.0, FALSE, FALSE }, "none", NAN);
  soil->friction_rad.value *= G_PI / 180.0;
  return soil;
}

SwBlanket *
sw_blanket_read (const SwJsonPlace *place)
{
  static const char *const keys[] = {
    "id",          "source",         "life_months",       "max_hv", "max_c", "shear_pa",
    "thickness_m", "mass_kg_per_m2", "net_plastic_usual", "nets",   NULL
  };
  SwBlanket *blanket = g_new0 (SwBlanket, 1);
  SwJsonPlace plastic = sw_json_member (place, "net_plastic_usual");
  SwJsonPlace nets = sw_json_member (place, "nets");

  sw_json_only (place, keys);
  blanket->id = text_member (place, "id");
  blanket->name_id = g_strconcat ("blanket.", blanket->id, NULL);
  blanket->source_id = source_member (place);
  blanket->life_months =
      sourced_member (place, "life_months", (SwJsonRange){ 0.0, 1200.0, TRUE, FALSE },
                      "permanent", INFINITY);
  blanket->max_hv = sourced_member (place, "max_hv",
                                    (SwJsonRange){ 0.0, 100.0, TRUE, FALSE }, NULL, NAN);
  blanket->max_c = sourced_member (place, "max_c", (SwJsonRange){ 0.0, 1.0, TRUE, FALSE },
                                   "none", NAN);
  blanket->shear_pa = sourced_member (
      place, "shear_pa", (SwJsonRange){ 0.0, 2000.0, TRUE, FALSE }, NULL, NAN);
  blanket->mass_kg_per_m2 = sourced_member (
      place, "mass_kg_per_m2", (SwJsonRange){ 0.0, 5.0, TRUE, FALSE }, NULL, NAN);
  blanket->thickness_m = sourced_member (
      place, "thickness_m", (SwJsonRange){ 0.0, 0.1, TRUE, FALSE }, NULL, NAN);
  blanket->net_plastic_usual = sw_json_boolean (&plastic);
  blanket->nets = nets.value != NULL ? (int) sw_json_index (&nets, 2) : -1;
  return blanket;
}

SwRoll *
sw_roll_read (const SwJsonPlace *place)
{
  static const char *const keys[] = { "id",       "source", "evidence", "width_m",
                                      "length_m", "core_m", NULL };
  SwRoll *roll = g_new0 (SwRoll, 1);

  sw_json_only (place, keys);
  roll->id = text_member (place, "id");
  roll->source_id = source_member (place);
  roll->evidence = evidence_member (place);
  roll->width_m =
      number_member (place, "width_m", (SwJsonRange){ 0.1, 20.0, FALSE, FALSE });
  roll->length_m =
      number_member (place, "length_m", (SwJsonRange){ 1.0, 1000.0, FALSE, FALSE });
  roll->core_m = number_member (place, "core_m", (SwJsonRange){ 0.0, 1.0, FALSE, FALSE });
  return roll;
}

SwPin *
sw_pin_read (const SwJsonPlace *place)
{
  static const char *const keys[] = { "id",       "kind",     "source",
                                      "evidence", "length_m", "crown_m",
                                      "wire_m",   "per_box",  NULL };
  SwPin *pin = g_new0 (SwPin, 1);
  SwJsonPlace kind = sw_json_member (place, "kind");
  SwJsonPlace per_box = sw_json_member (place, "per_box");

  sw_json_only (place, keys);
  pin->id = text_member (place, "id");
  pin->kind = (SwPinKind) sw_json_choice (&kind, sw_pin_kind_codes);
  pin->source_id = source_member (place);
  pin->evidence = evidence_member (place);
  pin->length_m =
      number_member (place, "length_m", (SwJsonRange){ 0.05, 1.5, FALSE, FALSE });
  pin->crown_m =
      number_member (place, "crown_m", (SwJsonRange){ 0.0, 0.3, FALSE, FALSE });
  pin->wire_m =
      number_member (place, "wire_m", (SwJsonRange){ 0.001, 0.1, FALSE, FALSE });
  pin->per_box = (int) sw_json_index (&per_box, 100000);
  if (pin->per_box < 1)
    sw_json_expected (&per_box, "a whole number of at least 1");
  return pin;
}

/* A default of a job's site number, within what a job may say; in SI, as no angle or
 * rain has one. */
SwDefault *
sw_default_read (const SwJsonPlace *place)
{
  static const char *const keys[] = { "id", "number", NULL };
  SwDefault *value = g_new0 (SwDefault, 1);
  SwJsonPlace id = sw_json_member (place, "id");
  SwJsonRange range = { 0.0, 0.0, FALSE, FALSE };

  sw_json_only (place, keys);
  value->id = sw_json_words (&id);
  for (int i = 0; i < SW_NUMBER_COUNT; i++)
    if (g_str_equal (sw_site_number_keys[i].key, value->id))
      range = (SwJsonRange){ sw_site_number_keys[i].least, sw_site_number_keys[i].most,
                             FALSE, FALSE };
  if (!(range.most > 0.0))
    sw_json_expected (&id, "a key of the site numbers such as \"roughness_n\"");
  value->number = sourced_member (place, "number", range, NULL, NAN);
  return value;
}
