/* SPDX-License-Identifier: MIT */
#include "job-json.h"

#include <slopewright/base/number-text.h>

/*
 * Own writer, because the JSON library prints 2.44 as 2.4399999999999999 and a
 * point to a line: numbers here are the shortest that read back, and a list
 * without objects stands on one line when it fits.
 */
#define LINE_LENGTH 88
#define INDENT 2

static void append_value (GString *text, const json_t *value, guint indent);

static void
append_scalar (GString *text, const json_t *value)
{
  char buffer[G_ASCII_DTOSTR_BUF_SIZE];

  if (json_is_real (value))
    g_string_append (text, sw_number_exact (json_real_value (value), buffer));
  else
    {
      char *words = json_dumps (value, JSON_ENCODE_ANY);
      g_string_append (text, words);
      free (words);
    }
}

static void
append_break (GString *text, guint indent)
{
  g_string_append_printf (text, "\n%*s", (int) indent, "");
}

/* FALSE, and @text as it was, when an object is in the way. */
static gboolean
append_flat (GString *text, const json_t *value)
{
  gsize start = text->len;
  gsize i;
  json_t *element;

  if (json_is_object (value))
    return FALSE;
  if (!json_is_array (value))
    {
      append_scalar (text, value);
      return TRUE;
    }
  g_string_append_c (text, '[');
  json_array_foreach (value, i, element)
  {
    if (i > 0)
      g_string_append (text, ", ");
    if (!append_flat (text, element))
      {
        g_string_truncate (text, start);
        return FALSE;
      }
  }
  g_string_append_c (text, ']');
  return TRUE;
}

static void
append_list (GString *text, const json_t *list, guint indent)
{
  g_autoptr (GString) flat = g_string_new (NULL);
  gsize i;
  json_t *element;

  if (append_flat (flat, list) && indent + flat->len <= LINE_LENGTH)
    {
      g_string_append (text, flat->str);
      return;
    }
  g_string_append_c (text, '[');
  json_array_foreach (list, i, element)
  {
    if (i > 0)
      g_string_append_c (text, ',');
    append_break (text, indent + INDENT);
    append_value (text, element, indent + INDENT);
  }
  append_break (text, indent);
  g_string_append_c (text, ']');
}

static void
append_object (GString *text, const json_t *object, guint indent)
{
  const char *key;
  json_t *value;
  gboolean first = TRUE;

  if (json_object_size (object) == 0)
    {
      g_string_append (text, "{}");
      return;
    }
  g_string_append_c (text, '{');
  /* jansson's iterator takes the object as its own, though it only reads. */
  json_object_foreach ((json_t *) object, key, value)
  {
    if (!first)
      g_string_append_c (text, ',');
    first = FALSE;
    append_break (text, indent + INDENT);
    json_t *name = json_string (key);
    append_scalar (text, name);
    json_decref (name);
    g_string_append (text, ": ");
    append_value (text, value, indent + INDENT);
  }
  append_break (text, indent);
  g_string_append_c (text, '}');
}

static void
append_value (GString *text, const json_t *value, guint indent)
{
  if (json_is_object (value))
    append_object (text, value, indent);
  else if (json_is_array (value))
    append_list (text, value, indent);
  else
    append_scalar (text, value);
}

char *
sw_json_text (const json_t *value)
{
  GString *text = g_string_new (NULL);

  append_value (text, value, 0);
  g_string_append_c (text, '\n');
  return g_string_free (text, FALSE);
}
