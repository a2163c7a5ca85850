/* SPDX-License-Identifier: MIT */
#include "json-line.h"

#include <string.h>

/*
 * The JSON library tells lines only while parsing, so a value that turns out
 * wrong later is looked up again in the text, which is known to be valid.
 */
typedef struct
{
  const char *at, *end;
} Scan;

static char
peek (const Scan *scan)
{
  return scan->at < scan->end ? *scan->at : '\0';
}

static void
skip_space (Scan *scan)
{
  while (scan->at < scan->end && strchr (" \t\r\n", *scan->at) != NULL)
    scan->at++;
}

static void
skip_string (Scan *scan)
{
  scan->at++;
  while (scan->at < scan->end && *scan->at != '"')
    scan->at += *scan->at == '\\' ? 2 : 1;
  scan->at = MIN (scan->at + 1, scan->end);
}

/* Past one value: brackets are counted, strings jumped, so nesting needs no stack. */
static void
skip_value (Scan *scan)
{
  int depth = 0;

  skip_space (scan);
  while (scan->at < scan->end)
    {
      char c = peek (scan);
      if (depth == 0 && strchr (",]}", c) != NULL)
        return;
      if (c == '"')
        skip_string (scan);
      else
        {
          depth += (c == '{' || c == '[') - (c == '}' || c == ']');
          scan->at++;
        }
    }
}

static gboolean
next_member (Scan *scan)
{
  skip_space (scan);
  if (peek (scan) != ',')
    return FALSE;
  scan->at++;
  skip_space (scan);
  return TRUE;
}

/* From '{' to the value of @key; the scan stays put when there is none. */
static gboolean
enter_key (Scan *scan, const char *key)
{
  Scan look = { scan->at + 1, scan->end };
  gsize n = strlen (key);

  skip_space (&look);
  while (peek (&look) == '"')
    {
      const char *name = look.at + 1;
      skip_string (&look);
      gboolean same = (gsize) (look.at - name) == n + 1 && strncmp (name, key, n) == 0;
      skip_space (&look);
      look.at++; /* the colon */
      skip_space (&look);
      if (same)
        {
          *scan = look;
          return TRUE;
        }
      skip_value (&look);
      if (!next_member (&look))
        break;
    }
  return FALSE;
}

/* From '[' to the element; the scan stays put when there is none. */
static gboolean
enter_index (Scan *scan, gsize index)
{
  Scan look = { scan->at + 1, scan->end };

  skip_space (&look);
  for (gsize i = 0; peek (&look) != ']' && look.at < look.end; i++)
    {
      if (i == index)
        {
          *scan = look;
          return TRUE;
        }
      skip_value (&look);
      if (!next_member (&look))
        break;
    }
  return FALSE;
}

guint
sw_json_line (const char *text, gsize length, const SwJsonStep *steps, guint n_steps)
{
  Scan scan = { text, text + length };
  guint line = 1;

  skip_space (&scan);
  for (guint i = 0; i < n_steps; i++)
    {
      const SwJsonStep *step = &steps[i];
      gboolean found = FALSE;
      if (step->key != NULL && peek (&scan) == '{')
        found = enter_key (&scan, step->key);
      else if (step->key == NULL && peek (&scan) == '[')
        found = enter_index (&scan, step->index);
      if (!found)
        break;
    }
  for (const char *p = text; p < scan.at; p++)
    line += *p == '\n';
  return line;
}
