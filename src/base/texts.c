/* SPDX-License-Identifier: MIT */
#include <slopewright/base/texts.h>

#include <stdarg.h>
#include <string.h>

struct SwTexts
{
  gint refs;
  char *language;
  GHashTable *by_id;
};

SwTexts *
sw_texts_new (const char *language)
{
  SwTexts *texts = g_new0 (SwTexts, 1);

  texts->refs = 1;
  texts->language = g_strdup (language);
  texts->by_id = g_hash_table_new_full (g_str_hash, g_str_equal, g_free, g_free);
  return texts;
}

SwTexts *
sw_texts_ref (SwTexts *texts)
{
  g_atomic_int_inc (&texts->refs);
  return texts;
}

void
sw_texts_unref (SwTexts *texts)
{
  if (texts == NULL || !g_atomic_int_dec_and_test (&texts->refs))
    return;
  g_hash_table_unref (texts->by_id);
  g_free (texts->language);
  g_free (texts);
}

void
sw_texts_add (SwTexts *texts, const char *id, const char *text)
{
  g_hash_table_replace (texts->by_id, g_strdup (id), g_strdup (text));
}

char
sw_texts_decimal_mark (const SwTexts *texts)
{
  return *sw_texts_get (texts, "language.decimal-mark") == ',' ? ',' : '.';
}

const char *
sw_texts_language (const SwTexts *texts)
{
  return texts->language;
}

gboolean
sw_texts_has (const SwTexts *texts, const char *id)
{
  return g_hash_table_contains (texts->by_id, id);
}

const char *
sw_texts_get (const SwTexts *texts, const char *id)
{
  const char *text = g_hash_table_lookup (texts->by_id, id);

  return text != NULL ? text : id;
}

char *
sw_texts_fill (const SwTexts *texts, const char *id, ...)
{
  g_autoptr (GHashTable) places = g_hash_table_new (g_str_hash, g_str_equal);
  va_list pairs;

  va_start (pairs, id);
  for (const char *name = va_arg (pairs, const char *); name != NULL;
       name = va_arg (pairs, const char *))
    {
      const char *value = va_arg (pairs, const char *);
      g_hash_table_insert (places, (gpointer) name, (gpointer) value);
    }
  va_end (pairs);
  return sw_texts_fill_table (texts, id, places);
}

/* One pass over the text, so that a brace inside a value is never taken for a place. */
char *
sw_texts_fill_table (const SwTexts *texts, const char *id, GHashTable *places)
{
  GString *filled = g_string_new (NULL);
  const char *rest = sw_texts_get (texts, id);

  for (;;)
    {
      const char *open = strchr (rest, '{');
      const char *close = open != NULL ? strchr (open, '}') : NULL;
      if (close == NULL)
        break;
      g_autofree char *name = g_strndup (open + 1, (gsize) (close - open - 1));
      const char *value = g_hash_table_lookup (places, name);
      g_string_append_len (filled, rest, open - rest);
      if (value != NULL)
        g_string_append (filled, value);
      else
        g_string_append_len (filled, open, close + 1 - open);
      rest = close + 1;
    }
  g_string_append (filled, rest);
  return g_string_free (filled, FALSE);
}

static int
compare_ids (gconstpointer a, gconstpointer b)
{
  return strcmp (*(const char *const *) a, *(const char *const *) b);
}

GPtrArray *
sw_texts_ids (const SwTexts *texts)
{
  GPtrArray *ids = g_ptr_array_new ();
  GHashTableIter iter;
  gpointer id;

  g_hash_table_iter_init (&iter, texts->by_id);
  while (g_hash_table_iter_next (&iter, &id, NULL))
    g_ptr_array_add (ids, id);
  g_ptr_array_sort (ids, compare_ids);
  return ids;
}
