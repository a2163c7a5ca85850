/* SPDX-License-Identifier: MIT */
#include "help-words.h"

#include <string.h>

static void
free_block (gpointer data)
{
  SwHelpBlock *block = data;

  g_free (block->place);
  g_free (block->figure);
  g_ptr_array_unref (block->lines);
  g_free (block);
}

void
sw_help_page_free (SwHelpPage *page)
{
  if (page == NULL)
    return;
  g_free (page->name);
  g_free (page->language);
  g_free (page->title);
  g_ptr_array_unref (page->blocks);
  g_free (page);
}

/* A page being read: the words of one paragraph, point or cell gather until it ends. */
typedef struct
{
  SwHelpPlace place; /* of the line being read */
  SwHelpPage *page;
  SwHelpBlock *block; /* that the next line may go on; NULL after a blank line */
  GString *words;
  guint words_line; /* where they began */
  guint rows;       /* of the table being read, its rule among them */
} Reader;

static SwHelpBlock *
add_block (Reader *reader, SwHelpBlockKind kind)
{
  SwHelpBlock *block = g_new0 (SwHelpBlock, 1);

  block->kind = kind;
  block->columns = 1;
  block->lines = g_ptr_array_new_with_free_func ((GDestroyNotify) g_ptr_array_unref);
  g_ptr_array_add (reader->page->blocks, block);
  reader->block = block;
  return block;
}

/* Marks may run over the end of a line: words are read once all are there. */
static gboolean
take_words (Reader *reader, GError **error)
{
  SwHelpPlace place = reader->place;
  GPtrArray *spans;

  if (reader->words->len == 0)
    return TRUE;
  place.number = reader->words_line;
  spans = sw_help_spans (place, reader->words->str, error);
  if (spans == NULL)
    return FALSE;
  g_ptr_array_add (reader->block->lines, spans);
  g_string_truncate (reader->words, 0);
  return TRUE;
}

static void
begin_words (Reader *reader, const char *words)
{
  if (reader->words->len == 0)
    reader->words_line = reader->place.number;
  g_string_append (reader->words, words);
}

/* The block that a line of @kind belongs to: the one before it, or a new one. */
static gboolean
into_block (Reader *reader, SwHelpBlockKind kind, GError **error)
{
  if (!take_words (reader, error))
    return FALSE;
  if (reader->block == NULL || reader->block->kind != kind)
    add_block (reader, kind);
  return TRUE;
}

static gboolean
read_heading (Reader *reader, SwHelpBlockKind kind, const char *words, GError **error)
{
  const char *name = strstr (words, " {#");
  g_autofree char *alone = NULL;
  SwHelpBlock *block;

  if (!take_words (reader, error))
    return FALSE;
  block = add_block (reader, kind);
  if (name != NULL && (!g_str_has_suffix (name, "}") || strlen (name) < 5))
    return sw_help_expected (reader->place, name, "{#place} at the end of the heading",
                             error);
  alone = name != NULL ? g_strndup (words, (gsize) (name - words)) : g_strdup (words);
  if (name != NULL)
    block->place = g_strndup (name + 3, strlen (name) - 4);
  begin_words (reader, alone);
  if (!take_words (reader, error))
    return FALSE;
  reader->block = NULL;
  return TRUE;
}

/* A bar that a stroke stands before is a sign of the cell. */
static char **
cells_of (const char *line)
{
  g_autoptr (GStrvBuilder) cells = g_strv_builder_new ();
  g_autoptr (GString) cell = g_string_new (NULL);

  for (const char *at = line + 1; *at != '\0'; at++)
    {
      if (*at == '|')
        {
          g_strv_builder_add (cells, g_strstrip (cell->str));
          g_string_truncate (cell, 0);
          continue;
        }
      if (*at == '\\' && at[1] != '\0')
        g_string_append_c (cell, *at++);
      g_string_append_c (cell, *at);
    }
  return g_strv_builder_end (cells);
}

static gboolean
is_rule (const char *line)
{
  return strspn (line, "|-") == strlen (line);
}

static gboolean
add_cells (Reader *reader, char **cells, GError **error)
{
  for (char **cell = cells; *cell != NULL; cell++)
    {
      GPtrArray *spans = sw_help_spans (reader->place, *cell, error);
      if (spans == NULL)
        return FALSE;
      g_ptr_array_add (reader->block->lines, spans);
    }
  return TRUE;
}

static gboolean
read_row (Reader *reader, const char *line, GError **error)
{
  g_auto (GStrv) cells = cells_of (line);
  guint count = g_strv_length (cells);

  if (!g_str_has_suffix (line, "|") || count == 0)
    return sw_help_expected (reader->place, line, "a row as | cell | cell |", error);
  if (reader->block == NULL || reader->block->kind != SW_HELP_TABLE)
    {
      if (!into_block (reader, SW_HELP_TABLE, error))
        return FALSE;
      reader->block->columns = count;
      reader->rows = 0;
    }
  if (count != reader->block->columns)
    return sw_help_expected (reader->place, line, "as many cells as the table's head has",
                             error);
  if ((reader->rows++ == 1) != is_rule (line))
    return sw_help_expected (reader->place, line,
                             "a rule |---|---| as the table's second row", error);
  return is_rule (line) || add_cells (reader, cells, error);
}

static gboolean
read_figure (Reader *reader, const char *line, GError **error)
{
  const char *middle = strstr (line, "](");
  g_autofree char *words = NULL;
  SwHelpBlock *block;

  if (!take_words (reader, error))
    return FALSE;
  if (middle == NULL || middle == line + 2 || !g_str_has_suffix (middle, ")")
      || strchr (middle, '/') == NULL)
    return sw_help_expected (reader->place, line,
                             "a drawing as ![what it shows](job/drawing)", error);
  block = add_block (reader, SW_HELP_FIGURE);
  block->figure = g_strndup (middle + 2, strlen (middle) - 3);
  words = g_strndup (line + 2, (gsize) (middle - line - 2));
  begin_words (reader, words);
  if (!take_words (reader, error))
    return FALSE;
  reader->block = NULL;
  return TRUE;
}

/* Length of "12. " at the beginning of a step, 0 if it is none. */
static gsize
step_mark (const char *line)
{
  gsize digits = strspn (line, "0123456789");

  return digits > 0 && g_str_has_prefix (line + digits, ". ") ? digits + 2 : 0;
}

static gboolean
read_item (Reader *reader, SwHelpBlockKind kind, const char *words, GError **error)
{
  if (!into_block (reader, kind, error))
    return FALSE;
  begin_words (reader, words);
  return TRUE;
}

/* A line without a mark goes on with the words before it, or begins a paragraph. */
static gboolean
read_words (Reader *reader, const char *line, GError **error)
{
  gboolean indented = g_str_has_prefix (line, "  ");
  gboolean going_on = reader->words->len > 0;
  gboolean in_list =
      going_on
      && (reader->block->kind == SW_HELP_POINTS || reader->block->kind == SW_HELP_STEPS);

  if (going_on && reader->block->kind == SW_HELP_CAUTION)
    return sw_help_expected (reader->place, line, "\"> \", or a blank line", error);
  if (indented != in_list)
    return sw_help_expected (reader->place, line,
                             in_list ? "two blanks before what goes on with a point"
                                     : "no blank at the beginning of a line",
                             error);
  if (going_on)
    g_string_append_c (reader->words, ' ');
  else if (!into_block (reader, SW_HELP_PARAGRAPH, error))
    return FALSE;
  begin_words (reader, indented ? line + 2 : line);
  return TRUE;
}

static gboolean
read_caution (Reader *reader, const char *words, GError **error)
{
  if (reader->block != NULL && reader->block->kind == SW_HELP_CAUTION)
    g_string_append_c (reader->words, ' ');
  else if (!into_block (reader, SW_HELP_CAUTION, error))
    return FALSE;
  begin_words (reader, words);
  return TRUE;
}

static gboolean
read_line (Reader *reader, const char *line, GError **error)
{
  gsize step = step_mark (line);

  if (*line == '\0')
    {
      gboolean taken = take_words (reader, error);
      reader->block = NULL;
      return taken;
    }
  if (g_str_has_prefix (line, "## "))
    return read_heading (reader, SW_HELP_HEADING, line + 3, error);
  if (g_str_has_prefix (line, "### "))
    return read_heading (reader, SW_HELP_SUBHEADING, line + 4, error);
  if (*line == '#')
    return sw_help_expected (reader->place, line,
                             "\"## heading\" or \"### subheading\" below the title",
                             error);
  if (g_str_has_prefix (line, "- "))
    return read_item (reader, SW_HELP_POINTS, line + 2, error);
  if (step > 0)
    return read_item (reader, SW_HELP_STEPS, line + step, error);
  if (*line == '|')
    return read_row (reader, line, error);
  if (g_str_has_prefix (line, "> "))
    return read_caution (reader, line + 2, error);
  if (g_str_has_prefix (line, "!["))
    return read_figure (reader, line, error);
  return read_words (reader, line, error);
}

static gboolean
read_title (Reader *reader, const char *line, GError **error)
{
  if (g_str_has_prefix (line, "# ") && line[2] != '\0')
    {
      reader->page->title = g_strdup (line + 2);
      return TRUE;
    }
  return sw_help_expected (reader->place, line, "\"# title\" as the first line", error);
}

static gboolean
read_lines (Reader *reader, char **lines, GError **error)
{
  if (!read_title (reader, lines[0] != NULL ? g_strchomp (lines[0]) : "", error))
    return FALSE;
  for (guint i = 1; i < g_strv_length (lines); i++)
    {
      reader->place.number = i + 1;
      if (!read_line (reader, g_strchomp (lines[i]), error))
        return FALSE;
    }
  return take_words (reader, error);
}

SwHelpPage *
sw_help_page_parse (const char *name, const char *text, gsize length,
                    const SwTexts *texts, const char *where, GError **error)
{
  g_autofree char *whole = g_strndup (text, length);
  g_auto (GStrv) lines = g_strsplit (whole, "\n", -1);
  g_autoptr (SwHelpPage) page = g_new0 (SwHelpPage, 1);
  g_autoptr (GString) words = g_string_new (NULL);
  Reader reader = { .place = { where, 1, texts }, .page = page, .words = words };

  page->name = g_strdup (name);
  page->language = g_strdup (sw_texts_language (texts));
  page->blocks = g_ptr_array_new_with_free_func (free_block);
  if (!g_utf8_validate (text, (gssize) length, NULL))
    {
      sw_help_expected (reader.place, "bytes that are no UTF-8", "text in UTF-8", error);
      return NULL;
    }
  return read_lines (&reader, lines, error) ? g_steal_pointer (&page) : NULL;
}
