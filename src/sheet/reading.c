/* SPDX-License-Identifier: MIT */
#include <slopewright/sheet/reading.h>

typedef struct
{
  GString *out;
  SwTag open; /* what holds the items now; SW_TAG_COUNT: nothing */
  gboolean in_row;
  guint n_cells; /* of the row so far */
  char *title;   /* of the page before: a continued one is not said again */
} Reader;

static void
add_underlined (Reader *reader, const char *words, char line)
{
  g_string_append_printf (reader->out, "%s%s\n", reader->out->len > 0 ? "\n" : "", words);
  for (glong i = g_utf8_strlen (words, -1); i > 0; i--)
    g_string_append_c (reader->out, line);
  g_string_append (reader->out, "\n\n");
}

/* A newline inside a paragraph or a cell is the drawing's, not the reader's. */
static void
add_words (Reader *reader, const char *words)
{
  for (const char *c = words; *c != '\0'; c++)
    g_string_append_c (reader->out, *c == '\n' ? ' ' : *c);
}

static void
add_line (Reader *reader, const char *words)
{
  if (*words == '\0')
    return;
  add_words (reader, words);
  g_string_append_c (reader->out, '\n');
}

static void
add_cell (Reader *reader, const char *words)
{
  if (reader->n_cells++ > 0)
    g_string_append (reader->out, " | ");
  add_words (reader, words);
}

static void
begin (Reader *reader, const SwItem *item)
{
  switch (item->tag)
    {
    case SW_TAG_TITLE:
      if (g_strcmp0 (reader->title, item->text) != 0)
        add_underlined (reader, item->text, '=');
      g_free (reader->title);
      reader->title = g_strdup (item->text);
      break;
    case SW_TAG_HEADING:
      add_underlined (reader, item->text, '-');
      break;
    case SW_TAG_PARAGRAPH:
      add_line (reader, item->text);
      break;
    case SW_TAG_PICTURE:
      g_string_append_c (reader->out, '[');
      add_words (reader, item->text);
      g_string_append (reader->out, "]\n");
      break;
    case SW_TAG_ROW:
      reader->in_row = TRUE;
      reader->n_cells = 0;
      break;
    case SW_TAG_HEAD_CELL:
    case SW_TAG_CELL:
    case SW_TAG_BAND:
      add_cell (reader, item->text);
      break;
    default:
      break;
    }
}

/* Ends the cell if one is open, else the row. */
static void
end (Reader *reader)
{
  if (reader->in_row && reader->open == SW_TAG_ROW)
    {
      g_string_append_c (reader->out, '\n');
      reader->in_row = FALSE;
    }
  reader->open = reader->in_row && reader->open != SW_TAG_ROW ? SW_TAG_ROW : SW_TAG_COUNT;
}

static void
read_item (Reader *reader, const SwItem *item)
{
  if (item->kind == SW_ITEM_TAG)
    {
      begin (reader, item);
      reader->open = item->tag;
    }
  else if (item->kind == SW_ITEM_UNTAG)
    end (reader);
  else if (item->kind == SW_ITEM_TEXT && reader->open == SW_TAG_COUNT)
    add_line (reader, item->text);
}

char *
sw_pages_text (const GPtrArray *pages)
{
  Reader reader = { .out = g_string_new (NULL), .open = SW_TAG_COUNT };

  for (guint p = 0; p < pages->len; p++)
    {
      const SwFigure *page = g_ptr_array_index (pages, p);

      for (guint i = 0; i < page->items->len; i++)
        read_item (&reader, &g_array_index (page->items, SwItem, i));
    }
  g_free (reader.title);
  return g_string_free (reader.out, FALSE);
}
