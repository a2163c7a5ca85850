/* SPDX-License-Identifier: MIT */
#include "json-reader.h"

#include "json-line.h"

#include <glib/gi18n.h>
#include <math.h>
#include <slopewright/base/number-text.h>
#include <string.h>

/* Longest piece of a found value that a message quotes, in characters. */
#define QUOTED_CHARACTERS 40

#define BYTE_ORDER_MARK "\xef\xbb\xbf"

GQuark
sw_store_error_quark (void)
{
  return g_quark_from_static_string ("sw-store-error-quark");
}

gboolean
sw_json_open (SwJsonReader *reader, const char *text, gsize length, const char *where)
{
  json_error_t trouble;

  /* Some editors put a byte order mark before the first brace. */
  if (length >= strlen (BYTE_ORDER_MARK)
      && memcmp (text, BYTE_ORDER_MARK, strlen (BYTE_ORDER_MARK)) == 0)
    {
      text += strlen (BYTE_ORDER_MARK);
      length -= strlen (BYTE_ORDER_MARK);
    }
  *reader = (SwJsonReader){ .where = where, .text = text, .length = length };
  reader->root = json_loadb (text, length, JSON_REJECT_DUPLICATES, &trouble);
  if (reader->root == NULL)
    g_set_error (&reader->error, SW_STORE_ERROR, SW_STORE_ERROR_SYNTAX,
                 _ ("%s:%d: not a JSON file: %s (column %d)"), where,
                 MAX (trouble.line, 1), trouble.text, MAX (trouble.column, 1));
  return reader->root != NULL;
}

gboolean
sw_json_close (SwJsonReader *reader, GError **error)
{
  gboolean fine = reader->error == NULL;

  if (!fine)
    g_propagate_error (error, g_steal_pointer (&reader->error));
  g_clear_pointer (&reader->root, json_decref);
  return fine;
}

SwJsonPlace
sw_json_root (SwJsonReader *reader)
{
  return (SwJsonPlace){ .reader = reader, .value = reader->root };
}

/* The way from the root: "faces[1].section_m[3]". */
static void
append_path (GString *path, const SwJsonPlace *place)
{
  if (place->parent == NULL)
    return;
  append_path (path, place->parent);
  if (place->key == NULL)
    g_string_append_printf (path, "[%" G_GSIZE_FORMAT "]", place->index);
  else
    g_string_append_printf (path, "%s%s", path->len > 0 ? "." : "", place->key);
}

static guint
line_of (const SwJsonPlace *place)
{
  g_autoptr (GArray) steps = g_array_new (FALSE, FALSE, sizeof (SwJsonStep));

  for (const SwJsonPlace *p = place; p->parent != NULL; p = p->parent)
    {
      SwJsonStep step = { p->key, p->index };
      g_array_prepend_val (steps, step);
    }
  return sw_json_line (place->reader->text, place->reader->length,
                       (const SwJsonStep *) steps->data, steps->len);
}

/* What stands there, short enough for a message. */
static char *
found_text (const json_t *value)
{
  if (json_is_object (value))
    return g_strdup (_ ("an object"));
  if (json_is_array (value) && json_array_size (value) == 0)
    return g_strdup (_ ("an empty list"));
  if (json_is_real (value))
    {
      char buffer[G_ASCII_DTOSTR_BUF_SIZE];
      return g_strdup (sw_number_exact (json_real_value (value), buffer));
    }
  char *all =
      json_dumps (value, JSON_ENCODE_ANY | JSON_COMPACT | JSON_REAL_PRECISION (15));
  g_autofree char *text = g_strdup (all);
  free (all);
  if (g_utf8_strlen (text, -1) <= QUOTED_CHARACTERS)
    return g_steal_pointer (&text);
  g_autofree char *start = g_utf8_substring (text, 0, QUOTED_CHARACTERS);
  return g_strconcat (start, "…", NULL);
}

static void
note (const SwJsonPlace *place, SwStoreError code, const char *words)
{
  g_autoptr (GString) path = g_string_new (NULL);

  append_path (path, place);
  if (path->len > 0)
    g_string_append (path, ": ");
  g_set_error (&place->reader->error, SW_STORE_ERROR, code, "%s:%u: %s%s",
               place->reader->where, line_of (place), path->str, words);
}

void
sw_json_trouble (const SwJsonPlace *place, SwStoreError code, const char *format, ...)
{
  va_list arguments;

  if (place->reader->error != NULL)
    return;
  va_start (arguments, format);
  g_autofree char *words = g_strdup_vprintf (format, arguments);
  va_end (arguments);
  note (place, code, words);
}

void
sw_json_expected (const SwJsonPlace *place, const char *format, ...)
{
  va_list arguments;

  if (place->reader->error != NULL)
    return;
  va_start (arguments, format);
  g_autofree char *expected = g_strdup_vprintf (format, arguments);
  va_end (arguments);
  g_autofree char *found = place->value != NULL ? found_text (place->value) : NULL;
  g_autofree char *words =
      found != NULL ? g_strdup_printf (_ ("found %s, expected %s"), found, expected)
                    : g_strdup_printf (_ ("missing, expected %s"), expected);
  note (place, SW_STORE_ERROR_VALUE, words);
}

SwJsonPlace
sw_json_member (const SwJsonPlace *object, const char *key)
{
  if (!json_is_object (object->value))
    sw_json_expected (object, _ ("an object with the key \"%s\""), key);
  return (SwJsonPlace){ .reader = object->reader,
                        .parent = object,
                        .key = key,
                        .value = json_object_get (object->value, key) };
}

SwJsonPlace
sw_json_element (const SwJsonPlace *list, gsize index)
{
  return (SwJsonPlace){ .reader = list->reader,
                        .parent = list,
                        .index = index,
                        .value = json_array_get (list->value, index) };
}

gsize
sw_json_list (const SwJsonPlace *place, gsize least, const char *expected)
{
  gsize size = json_array_size (place->value);

  if (json_is_array (place->value) && size >= least)
    return size;
  sw_json_expected (place, "%s", expected);
  return 0;
}

static void
expect_in_range (const SwJsonPlace *place, SwJsonRange range)
{
  char least[G_ASCII_DTOSTR_BUF_SIZE], most[G_ASCII_DTOSTR_BUF_SIZE];

  sw_number_exact (range.least, least);
  sw_number_exact (range.most, most);
  if (range.or_zero)
    sw_json_expected (place, _ ("0 for none, or a number from %s to %s"), least, most);
  else if (range.above)
    sw_json_expected (place, _ ("a number above %s, at most %s"), least, most);
  else
    sw_json_expected (place, _ ("a number from %s to %s"), least, most);
}

static gboolean
is_in_range (double number, SwJsonRange range)
{
  if (range.or_zero && number >= 0.0 && number <= 0.0)
    return TRUE;
  return isfinite (number) && number >= range.least && number <= range.most
         && !(range.above && number <= range.least);
}

double
sw_json_number (const SwJsonPlace *place, SwJsonRange range)
{
  double number = json_number_value (place->value);

  if (json_is_number (place->value) && is_in_range (number, range))
    return number;
  expect_in_range (place, range);
  return 0.0;
}

SwJsonRange
sw_json_practice_range (SwPracticeValue value)
{
  const SwPracticeKey *key = &sw_practice_keys[value];

  return (SwJsonRange){ key->least, key->most, FALSE, key->or_zero };
}

guint
sw_json_index (const SwJsonPlace *place, guint most)
{
  double number = json_number_value (place->value);

  /* 1.0 is a whole number too, as other programs write it. */
  if (json_is_number (place->value) && number >= 0.0 && number <= most
      && floor (number) == number)
    return (guint) number;
  sw_json_expected (place, _ ("a whole number from 0 to %u"), most);
  return 0;
}

gboolean
sw_json_boolean (const SwJsonPlace *place)
{
  if (!json_is_boolean (place->value))
    sw_json_expected (place, _ ("true or false"));
  return json_is_true (place->value);
}

char *
sw_json_string (const SwJsonPlace *place)
{
  if (!json_is_string (place->value))
    sw_json_expected (place, _ ("text in quotes"));
  const char *text = json_string_value (place->value);
  return g_strdup (text != NULL ? text : "");
}

char *
sw_json_words (const SwJsonPlace *place)
{
  char *text = sw_json_string (place);

  if (*text == '\0')
    sw_json_expected (place, _ ("text in quotes, not empty"));
  return text;
}

int
sw_json_choice (const SwJsonPlace *place, const char *const *choices)
{
  const char *text = json_string_value (place->value);

  for (int i = 0; text != NULL && choices[i] != NULL; i++)
    if (strcmp (text, choices[i]) == 0)
      return i;
  g_autofree char *all = g_strjoinv ("\", \"", (char **) choices);
  sw_json_expected (place, _ ("one of \"%s\""), all);
  return 0;
}

void
sw_json_only (const SwJsonPlace *object, const char *const *keys)
{
  const char *key;
  json_t *value;

  json_object_foreach (object->value, key, value)
  {
    if (g_strv_contains (keys, key))
      continue;
    SwJsonPlace stray = sw_json_member (object, key);
    g_autofree char *all = g_strjoinv ("\", \"", (char **) keys);
    sw_json_trouble (&stray, SW_STORE_ERROR_VALUE,
                     _ ("unknown key, expected one of \"%s\""), all);
  }
}
