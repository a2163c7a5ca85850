/* SPDX-License-Identifier: MIT */
#include "json-reader.h"

#include <string.h>

gboolean
sw_texts_parse (SwTexts *texts, const char *text, gsize length, const char *where,
                GError **error)
{
  SwJsonReader reader;
  const char *id;
  json_t *value;

  if (!sw_json_open (&reader, text, length, where))
    return sw_json_close (&reader, error);
  SwJsonPlace root = sw_json_root (&reader);
  if (!json_is_object (root.value))
    sw_json_expected (&root, "an object of text ids and texts");
  json_object_foreach (root.value, id, value)
  {
    SwJsonPlace place = sw_json_member (&root, id);
    g_autofree char *words = sw_json_words (&place);
    if (sw_texts_has (texts, id))
      sw_json_trouble (&place, SW_STORE_ERROR_VALUE,
                       "this text id stands in another file already");
    if (reader.error != NULL)
      break;
    sw_texts_add (texts, id, words);
  }
  return sw_json_close (&reader, error);
}

SwTexts *
sw_texts_load (const char *language)
{
  g_autofree char *folder = g_strdup_printf ("texts/%s/", language);
  g_autofree char *full = g_strconcat ("/slopewright/", folder, NULL);
  g_auto (GStrv) files =
      g_resources_enumerate_children (full, G_RESOURCE_LOOKUP_FLAGS_NONE, NULL);

  if (files == NULL || *files == NULL)
    return NULL;
  SwTexts *texts = sw_texts_new (language);
  for (char **file = files; *file != NULL; file++)
    {
      g_autoptr (GError) error = NULL;
      g_autofree char *path = g_strconcat (folder, *file, NULL);
      g_autoptr (GBytes) bytes = sw_resource_bytes (path);
      gsize length = 0;
      const char *text = g_bytes_get_data (bytes, &length);
      if (!sw_texts_parse (texts, text, length, path, &error))
        g_error ("%s", error->message);
    }
  return texts;
}

static int
compare_codes (gconstpointer a, gconstpointer b)
{
  return strcmp (*(char *const *) a, *(char *const *) b);
}

char **
sw_texts_languages (void)
{
  char **folders = g_resources_enumerate_children ("/slopewright/texts/",
                                                   G_RESOURCE_LOOKUP_FLAGS_NONE, NULL);

  for (char **folder = folders; folder != NULL && *folder != NULL; folder++)
    g_strdelimit (*folder, "/", '\0');
  if (folders != NULL)
    qsort (folders, g_strv_length (folders), sizeof *folders, compare_codes);
  return folders;
}
