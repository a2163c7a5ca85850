/* SPDX-License-Identifier: MIT */
#include "catalogue-entry.h"

#include <string.h>

typedef gpointer (*ReadEntry) (const SwJsonPlace *place);

/* One kind of catalogue file: "<kind>.json" holds a list of entries under "<kind>". */
typedef struct
{
  const char *kind;
  gsize array; /* offset in SwCatalogue */
  ReadEntry read;
} Kind;

static const Kind kinds[] = {
  { "practices", G_STRUCT_OFFSET (SwCatalogue, practices), (ReadEntry) sw_practice_read },
  { "soils", G_STRUCT_OFFSET (SwCatalogue, soils), (ReadEntry) sw_soil_read },
  { "blankets", G_STRUCT_OFFSET (SwCatalogue, blankets), (ReadEntry) sw_blanket_read },
  { "rolls", G_STRUCT_OFFSET (SwCatalogue, rolls), (ReadEntry) sw_roll_read },
  { "pins", G_STRUCT_OFFSET (SwCatalogue, pins), (ReadEntry) sw_pin_read },
  { "defaults", G_STRUCT_OFFSET (SwCatalogue, defaults), (ReadEntry) sw_default_read },
};

static const Kind *
kind_by_name (const char *name)
{
  for (gsize i = 0; i < G_N_ELEMENTS (kinds); i++)
    if (strcmp (kinds[i].kind, name) == 0)
      return &kinds[i];
  return NULL;
}

/* Every entry begins with its id; see the assertions in base/catalogue.c. */
static gboolean
has_id (const GPtrArray *entries, const char *id)
{
  for (guint i = 0; i < entries->len; i++)
    if (strcmp (*(char *const *) entries->pdata[i], id) == 0)
      return TRUE;
  return FALSE;
}

static void
refuse_known_id (const SwJsonPlace *entry, const GPtrArray *entries)
{
  SwJsonPlace id = sw_json_member (entry, "id");

  if (json_is_string (id.value) && has_id (entries, json_string_value (id.value)))
    sw_json_expected (&id, "an id that no other entry has");
}

static void
refuse_shorter_pin (const SwJsonPlace *entry, const GPtrArray *pins)
{
  const SwPin *last = pins->len > 0 ? pins->pdata[pins->len - 1] : NULL;
  SwJsonPlace length = sw_json_member (entry, "length_m");

  if (last != NULL && json_number_value (length.value) < last->length_m)
    sw_json_expected (&length, "pins in order, shortest first");
}

static void
read_entries (const SwJsonPlace *list, const Kind *kind, GPtrArray *entries)
{
  gsize count = sw_json_list (list, 1, "a list with at least one entry");

  for (gsize i = 0; i < count && list->reader->error == NULL; i++)
    {
      SwJsonPlace entry = sw_json_element (list, i);
      refuse_known_id (&entry, entries);
      if (strcmp (kind->kind, "pins") == 0)
        refuse_shorter_pin (&entry, entries);
      g_ptr_array_add (entries, kind->read (&entry));
    }
}

gboolean
sw_catalogue_parse (SwCatalogue *catalogue, const char *kind_name, const char *text,
                    gsize length, const char *where, GError **error)
{
  const Kind *kind = kind_by_name (kind_name);
  SwJsonReader reader;

  g_return_val_if_fail (kind != NULL, FALSE);
  GPtrArray *entries = G_STRUCT_MEMBER (GPtrArray *, catalogue, kind->array);
  guint known = entries->len;
  if (sw_json_open (&reader, text, length, where))
    {
      const char *keys[] = { "version", kind->kind, NULL };
      SwJsonPlace root = sw_json_root (&reader);
      SwJsonPlace version = sw_json_member (&root, "version");
      SwJsonPlace list = sw_json_member (&root, kind->kind);
      sw_json_only (&root, keys);
      sw_json_number (&version, (SwJsonRange){ 1.0, 1.0, FALSE, FALSE });
      read_entries (&list, kind, entries);
    }
  if (sw_json_close (&reader, error))
    return TRUE;
  g_ptr_array_set_size (entries, (gint) known);
  return FALSE;
}

SwCatalogue *
sw_catalogue_load (void)
{
  SwCatalogue *catalogue = sw_catalogue_new ();

  for (gsize i = 0; i < G_N_ELEMENTS (kinds); i++)
    {
      g_autoptr (GError) error = NULL;
      g_autofree char *path = g_strdup_printf ("catalogue/%s.json", kinds[i].kind);
      g_autoptr (GBytes) bytes = sw_resource_bytes (path);
      gsize length = 0;
      const char *text = g_bytes_get_data (bytes, &length);
      if (!sw_catalogue_parse (catalogue, kinds[i].kind, text, length, path, &error))
        g_error ("%s", error->message);
    }
  return catalogue;
}
