/* SPDX-License-Identifier: MIT */
#include "unknown-entry.h"

/* Entries of every kind begin with their id. */
typedef struct
{
  const char *id;
} Entry;

static char *
complaint (const char *key, const char *found, const GPtrArray *entries)
{
  g_autoptr (GString) known = g_string_new (NULL);

  for (guint i = 0; i < entries->len; i++)
    g_string_append_printf (known, "%s\"%s\"", i > 0 ? ", " : "",
                            ((const Entry *) g_ptr_array_index (entries, i))->id);
  return g_strdup_printf ("%s: found \"%s\", expected one of %s", key, found, known->str);
}

static char *
soil_of_face (const SwFace *face, guint index, const SwCatalogue *catalogue)
{
  if (sw_catalogue_soil (catalogue, face->soil_id) == NULL)
    {
      g_autofree char *key = g_strdup_printf ("faces[%u].soil", index);
      return complaint (key, face->soil_id, catalogue->soils);
    }
  for (guint i = 0; i < face->zones->len; i++)
    {
      const SwZone *zone = g_ptr_array_index (face->zones, i);
      g_autofree char *key = g_strdup_printf ("faces[%u].zones[%u].soil", index, i);

      if (sw_catalogue_soil (catalogue, zone->soil_id) == NULL)
        return complaint (key, zone->soil_id, catalogue->soils);
    }
  return NULL;
}

char *
slopepack_unknown_entry (const SwJob *job, const SwCatalogue *catalogue)
{
  if (sw_catalogue_practice (catalogue, job->practice_id) == NULL)
    return complaint ("practice.id", job->practice_id, catalogue->practices);
  if (sw_catalogue_blanket (catalogue, job->blanket_id) == NULL)
    return complaint ("blanket.id", job->blanket_id, catalogue->blankets);
  if (job->pin_id != NULL && *job->pin_id != '\0'
      && sw_catalogue_pin (catalogue, job->pin_id) == NULL)
    return complaint ("pin_id", job->pin_id, catalogue->pins);
  for (guint i = 0; i < job->faces->len; i++)
    {
      char *found = soil_of_face (g_ptr_array_index (job->faces, i), i, catalogue);

      if (found != NULL)
        return found;
    }
  return NULL;
}
