/* SPDX-License-Identifier: MIT */
#include "help-words.h"

#include <slopewright/store/store.h>
#include <string.h>

/* Of what was found, in characters. */
#define FOUND_MOST 20

gboolean
sw_help_expected (SwHelpPlace place, const char *found, const char *expected,
                  GError **error)
{
  g_set_error (error, SW_STORE_ERROR, SW_STORE_ERROR_SYNTAX,
               "%s:%u: found \"%s\", expected %s", place.where, place.number, found,
               expected);
  return FALSE;
}

static void
free_span (gpointer data)
{
  SwHelpSpan *span = data;

  g_free (span->text);
  g_free (span->target);
  g_free (span);
}

/* @text: (transfer full) */
static SwHelpSpan *
add_span (GPtrArray *spans, SwHelpSpanKind kind, char *text)
{
  SwHelpSpan *span = g_new0 (SwHelpSpan, 1);

  span->kind = kind;
  span->text = text;
  g_ptr_array_add (spans, span);
  return span;
}

/* Marks that only enclose words. Longer ones first: "**" begins with "*". */
static const struct
{
  const char *open, *close;
  SwHelpSpanKind kind;
} marks[] = {
  { "**", "**", SW_HELP_STRONG },
  { "*", "*", SW_HELP_LABEL },
  { "`", "`", SW_HELP_TYPED },
  { "[[", "]]", SW_HELP_KEY },
};

/* What is being read, and the plain words not yet taken. */
typedef struct
{
  SwHelpPlace place;
  const char *at;
  GString *plain;
  GPtrArray *spans;
} Reading;

static void
take_plain (Reading *reading)
{
  if (reading->plain->len > 0)
    add_span (reading->spans, SW_HELP_PLAIN, g_strdup (reading->plain->str));
  g_string_truncate (reading->plain, 0);
}

static gboolean
expected_here (SwHelpPlace place, const char *at, const char *expected, GError **error)
{
  glong length = MIN (g_utf8_strlen (at, -1), FOUND_MOST);
  g_autofree char *found = g_utf8_substring (at, 0, length);

  return sw_help_expected (place, found, expected, error);
}

/* The end of what stands between @open, which @at begins with, and @close. */
static const char *
end_of (SwHelpPlace place, const char *at, const char *open, const char *close,
        GError **error)
{
  const char *begin = at + strlen (open);
  const char *end = strstr (begin, close);
  g_autofree char *expected = NULL;

  if (end != NULL && end > begin)
    return end;
  expected = g_strdup_printf ("words and \"%s\" behind \"%s\"", close, open);
  expected_here (place, at, expected, error);
  return NULL;
}

/* Append the text whose {id} begins at @at. Returns: what comes behind it; NULL with @error set. */
static const char *
append_text (SwHelpPlace place, GString *words, const char *at, GError **error)
{
  const char *end = end_of (place, at, "{", "}", error);
  g_autofree char *id = NULL;

  if (end == NULL)
    return NULL;
  id = g_strndup (at + 1, (gsize) (end - at - 1));
  if (!sw_texts_has (place.texts, id))
    {
      sw_help_expected (place, id, "the id of a text in resources/texts", error);
      return NULL;
    }
  g_string_append (words, sw_texts_get (place.texts, id));
  return end + 1;
}

/* Words that are enclosed hold no marks, but texts. (transfer full) */
static char *
enclosed (SwHelpPlace place, const char *from, const char *to, GError **error)
{
  g_autofree char *raw = g_strndup (from, (gsize) (to - from));
  g_autoptr (GString) words = g_string_new (NULL);

  for (const char *at = raw; at != NULL && *at != '\0';)
    if (*at == '{')
      {
        at = append_text (place, words, at, error);
        if (at == NULL)
          return NULL;
      }
    else
      g_string_append_c (words, *at++);
  return g_strdup (words->str);
}

static gboolean
read_mark (Reading *reading, gsize which, GError **error)
{
  const char *open = marks[which].open, *close = marks[which].close;
  const char *end = end_of (reading->place, reading->at, open, close, error);
  char *words;

  if (end == NULL)
    return FALSE;
  words = enclosed (reading->place, reading->at + strlen (open), end, error);
  if (words == NULL)
    return FALSE;
  take_plain (reading);
  add_span (reading->spans, marks[which].kind, words);
  reading->at = end + strlen (close);
  return TRUE;
}

static gboolean
read_link (Reading *reading, GError **error)
{
  const char *middle = strstr (reading->at, "](");
  const char *end = middle != NULL ? strchr (middle, ')') : NULL;
  char *words;

  if (end == NULL || end == middle + 2)
    return expected_here (reading->place, reading->at,
                          "a link as [words](page) or [words](page#place)", error);
  words = enclosed (reading->place, reading->at + 1, middle, error);
  if (words == NULL)
    return FALSE;
  take_plain (reading);
  add_span (reading->spans, SW_HELP_LINK, words)->target =
      g_strndup (middle + 2, (gsize) (end - middle - 2));
  reading->at = end + 1;
  return TRUE;
}

static gboolean
read_next (Reading *reading, GError **error)
{
  for (gsize i = 0; i < G_N_ELEMENTS (marks); i++)
    if (g_str_has_prefix (reading->at, marks[i].open))
      return read_mark (reading, i, error);
  if (*reading->at == '[')
    return read_link (reading, error);
  if (*reading->at == '{')
    {
      reading->at = append_text (reading->place, reading->plain, reading->at, error);
      return reading->at != NULL;
    }
  if (*reading->at == '\\' && reading->at[1] != '\0')
    reading->at++;
  g_string_append_c (reading->plain, *reading->at++);
  return TRUE;
}

GPtrArray *
sw_help_spans (SwHelpPlace place, const char *words, GError **error)
{
  g_autoptr (GString) plain = g_string_new (NULL);
  g_autoptr (GPtrArray) spans = g_ptr_array_new_with_free_func (free_span);
  Reading reading = { place, words, plain, spans };

  while (*reading.at != '\0')
    if (!read_next (&reading, error))
      return NULL;
  take_plain (&reading);
  return g_steal_pointer (&spans);
}

char *
sw_help_line_text (const GPtrArray *line)
{
  GString *text = g_string_new (NULL);

  for (guint i = 0; i < line->len; i++)
    g_string_append (text, ((const SwHelpSpan *) g_ptr_array_index (line, i))->text);
  return g_string_free (text, FALSE);
}
