/* SPDX-License-Identifier: MIT */
#include "job-fields.h"

#include <glib/gi18n.h>
#include <math.h>
#include <slopewright/base/range.h>

#define EXPECTED_SPECIES "a list of species"

static void
read_rate (const SwJsonPlace *place, SwSeedSpecies *species)
{
  SwJsonPlace seeds = sw_json_member (place, "seeds_per_m2");
  SwJsonPlace count = sw_json_member (place, "seeds_per_kg");

  species->pls_kg_per_m2 = sw_read_extra (place, "pls_kg_per_m2", 1.0);
  species->seeds_per_m2 = sw_read_extra (place, "seeds_per_m2", SW_SEEDS_PER_M2_MOST);
  species->seeds_per_kg = sw_read_extra (place, "seeds_per_kg", SW_SEEDS_PER_KG_MOST);
  if (species->seeds_per_m2 > 0.0 && species->pls_kg_per_m2 > 0.0)
    sw_json_expected (&seeds, _ ("0, since pls_kg_per_m2 gives the rate"));
  else if (species->seeds_per_m2 > 0.0 && !(species->seeds_per_kg > 0.0))
    sw_json_expected (&count, _ ("a number above 0, since the rate is in seeds_per_m2"));
}

static void
read_species (const SwJsonPlace *place, SwSeedMix *mix)
{
  SwSeedSpecies species = { .name = g_strdup ("") };
  SwJsonPlace hard = sw_json_member (place, "hard");

  sw_read_text (place, "name", &species.name);
  species.purity = sw_read_above_zero (place, "purity", 1.0);
  species.germination = sw_read_above_zero (place, "germination", 1.0);
  species.hard = sw_read_extra (place, "hard", 1.0);
  if (species.germination + species.hard > 1.0 + SW_SHARES_SLACK)
    sw_json_expected (&hard, _ ("no more than germination leaves of 1"));
  read_rate (place, &species);
  sw_seed_mix_add (mix, &species);
  g_free (species.name);
}

/* Files of before had the one species here; its keys are not kept as unknown ones. */
static void
read_single_species (const SwJsonPlace *place, SwSeedMix *mix)
{
  static const char *const keys[] = { "pls_kg_per_m2", "purity", "germination" };
  SwSeedSpecies species = {
    .pls_kg_per_m2 = sw_read_number (place, "pls_kg_per_m2", 0.0, 1.0),
    .purity = sw_read_above_zero (place, "purity", 1.0),
    .germination = sw_read_above_zero (place, "germination", 1.0),
    .name = mix->name,
  };

  if (place->reader->error != NULL)
    return;
  if (species.pls_kg_per_m2 > 0.0 || species.purity < 1.0 || species.germination < 1.0)
    sw_seed_mix_add (mix, &species);
  for (gsize i = 0; i < G_N_ELEMENTS (keys); i++)
    json_object_del (place->value, keys[i]);
}

void
sw_read_seed (const SwJsonPlace *root, SwSeedMix *mix)
{
  SwJsonPlace place = sw_json_member (root, "seed");

  if (place.value == NULL)
    return;
  sw_read_text (&place, "name", &mix->name);
  SwJsonPlace list = sw_json_member (&place, "species");
  if (list.value == NULL)
    {
      read_single_species (&place, mix);
      return;
    }
  SwJsonPlace single = sw_json_member (&place, "pls_kg_per_m2");
  if (single.value != NULL)
    sw_json_expected (&single, _ ("no rate beside the list of species"));
  gsize count = sw_count_parts (&list, SW_SPECIES_MOST, EXPECTED_SPECIES);
  for (gsize i = 0; i < count; i++)
    {
      SwJsonPlace element = sw_json_element (&list, i);
      read_species (&element, mix);
    }
}

json_t *
sw_seed_tree (const SwSeedMix *mix)
{
  json_t *tree = json_object ();
  json_t *list = json_array ();

  sw_put_text (tree, "name", mix->name);
  for (guint i = 0; i < mix->n_species; i++)
    {
      const SwSeedSpecies *species = &mix->species[i];
      json_t *one = json_object ();

      sw_put_text (one, "name", species->name);
      sw_put_number (one, "pls_kg_per_m2", species->pls_kg_per_m2);
      sw_put_number (one, "seeds_per_m2", species->seeds_per_m2);
      sw_put_number (one, "purity", species->purity);
      sw_put_number (one, "germination", species->germination);
      sw_put_number (one, "hard", species->hard);
      sw_put_number (one, "seeds_per_kg", species->seeds_per_kg);
      json_array_append_new (list, one);
    }
  json_object_set_new (tree, "species", list);
  return tree;
}

static double
read_plan_number (const SwJsonPlace *object, const SwPlanKey *key)
{
  SwJsonPlace place = sw_json_member (object, key->key);
  gboolean or_zero = key->least > 0.0 && !(key->not_given > 0.0);
  double number;

  if (place.value == NULL)
    return key->not_given;
  number =
      sw_json_number (&place, (SwJsonRange){ key->least, key->most, FALSE, or_zero });
  if (key->unit == SW_UNIT_COUNT && floor (number) < number)
    sw_json_expected (&place, _ ("a whole number"));
  return number;
}

static void
check_label (const SwJsonPlace *root, const SwWorkPlan *plan)
{
  SwJsonPlace place = sw_json_member (root, sw_plan_group_keys[SW_PLAN_FERTILISER]);
  double sum =
      plan->values[SW_PLAN_N] + plan->values[SW_PLAN_P2O5] + plan->values[SW_PLAN_K2O];

  if (sum > 1.0 + SW_SHARES_SLACK)
    sw_json_trouble (&place, SW_STORE_ERROR_VALUE,
                     _ ("found n, p2o5 and k2o of %.15g in all, expected at most 1"),
                     sum);
}

/* The text or the choices that stand among the numbers of a group. */
static void
read_group_words (const SwJsonPlace *object, SwPlanGroup group, SwWorkPlan *plan)
{
  SwJsonPlace place;

  switch (group)
    {
    case SW_PLAN_FERTILISER:
      sw_read_text (object, "name", &plan->fertiliser);
      break;
    case SW_PLAN_ALLOWANCE:
      plan->allowance =
          (SwAllowance) sw_read_option (object, "basis", sw_allowance_codes);
      place = sw_json_member (object, "spare_roll");
      plan->spare_roll = place.value != NULL && sw_json_boolean (&place);
      break;
    case SW_PLAN_PRICES:
      sw_read_text (object, "currency", &plan->currency);
      place = sw_json_member (object, "in_pack");
      plan->cost_in_pack = place.value != NULL && sw_json_boolean (&place);
      break;
    default:
      break;
    }
}

void
sw_read_plan (const SwJsonPlace *root, SwWorkPlan *plan)
{
  for (int group = 0; group < SW_PLAN_GROUP_COUNT; group++)
    {
      SwJsonPlace object = sw_json_member (root, sw_plan_group_keys[group]);

      if (object.value == NULL)
        continue;
      read_group_words (&object, (SwPlanGroup) group, plan);
      for (int i = 0; i < SW_PLAN_COUNT; i++)
        if (sw_plan_keys[i].group == (SwPlanGroup) group)
          plan->values[i] = read_plan_number (&object, &sw_plan_keys[i]);
    }
  check_label (root, plan);
}

static void
put_group_words (json_t *tree, SwPlanGroup group, const SwWorkPlan *plan)
{
  switch (group)
    {
    case SW_PLAN_FERTILISER:
      sw_put_text (tree, "name", plan->fertiliser);
      break;
    case SW_PLAN_ALLOWANCE:
      sw_put_text (tree, "basis", sw_allowance_codes[plan->allowance]);
      json_object_set_new (tree, "spare_roll", json_boolean (plan->spare_roll));
      break;
    case SW_PLAN_PRICES:
      sw_put_text (tree, "currency", plan->currency);
      json_object_set_new (tree, "in_pack", json_boolean (plan->cost_in_pack));
      break;
    default:
      break;
    }
}

void
sw_put_plan (json_t *root, const SwWorkPlan *plan)
{
  for (int group = 0; group < SW_PLAN_GROUP_COUNT; group++)
    {
      json_t *tree = json_object ();

      put_group_words (tree, (SwPlanGroup) group, plan);
      for (int i = 0; i < SW_PLAN_COUNT; i++)
        if (sw_plan_keys[i].group == (SwPlanGroup) group)
          sw_put_number (tree, sw_plan_keys[i].key, plan->values[i]);
      json_object_set_new (root, sw_plan_group_keys[group], tree);
    }
}
