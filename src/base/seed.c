/* SPDX-License-Identifier: MIT */
#include <slopewright/base/seed.h>

#include <string.h>

void
sw_seed_mix_add (SwSeedMix *mix, const SwSeedSpecies *species)
{
  mix->species = g_renew (SwSeedSpecies, mix->species, mix->n_species + 1);
  mix->species[mix->n_species] = *species;
  mix->species[mix->n_species++].name =
      g_strdup (species->name != NULL ? species->name : "");
}

void
sw_seed_mix_remove (SwSeedMix *mix, guint index)
{
  g_return_if_fail (index < mix->n_species);
  g_free (mix->species[index].name);
  mix->n_species--;
  memmove (&mix->species[index], &mix->species[index + 1],
           (mix->n_species - index) * sizeof *mix->species);
}

void
sw_seed_mix_own_species (SwSeedMix *mix)
{
  mix->species = g_memdup2 (mix->species, mix->n_species * sizeof *mix->species);
  for (guint i = 0; i < mix->n_species; i++)
    mix->species[i].name = g_strdup (mix->species[i].name);
}

void
sw_seed_mix_clear (SwSeedMix *mix)
{
  for (guint i = 0; i < mix->n_species; i++)
    g_free (mix->species[i].name);
  g_clear_pointer (&mix->species, g_free);
  mix->n_species = 0;
}

static gboolean
same_species (const SwSeedSpecies *a, const SwSeedSpecies *b)
{
  return memcmp (a, b, G_STRUCT_OFFSET (SwSeedSpecies, name)) == 0
         && g_strcmp0 (a->name, b->name) == 0;
}

gboolean
sw_seed_mix_equal (const SwSeedMix *a, const SwSeedMix *b)
{
  if (g_strcmp0 (a->name, b->name) != 0 || a->n_species != b->n_species)
    return FALSE;
  for (guint i = 0; i < a->n_species; i++)
    if (!same_species (&a->species[i], &b->species[i]))
      return FALSE;
  return TRUE;
}

gboolean
sw_seed_mix_is_sown (const SwSeedMix *mix)
{
  for (guint i = 0; i < mix->n_species; i++)
    if (mix->species[i].pls_kg_per_m2 > 0.0 || mix->species[i].seeds_per_m2 > 0.0)
      return TRUE;
  return FALSE;
}
