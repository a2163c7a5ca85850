/* SPDX-License-Identifier: MIT */
#include <slopewright/store/help.h>

#include <string.h>

/* A word in a title weighs more than any number of words in the text. */
#define WEIGHT_TITLE 100
#define WEIGHT_HEADING 10
#define WEIGHT_TEXT 1

static void
free_hit (gpointer data)
{
  SwHelpHit *hit = data;

  g_free (hit->line);
  g_free (hit);
}

#define APOSTROPHE 0x2019 /* as it is printed; a keyboard has the straight one */

/* Without case and accents, so that "key" finds "Key" and "tranchee" finds "tranchée". */
static char *
folded (const char *text)
{
  g_autofree char *apart = g_utf8_normalize (text, -1, G_NORMALIZE_ALL);
  GString *bare = g_string_new (NULL);
  char *lower;

  for (const char *at = apart; *at != '\0'; at = g_utf8_next_char (at))
    {
      gunichar sign = g_utf8_get_char (at);
      if (!g_unichar_ismark (sign))
        g_string_append_unichar (bare, sign == APOSTROPHE ? '\'' : sign);
    }
  lower = g_utf8_casefold (bare->str, -1);
  g_string_free (bare, TRUE);
  return lower;
}

/* What stands under one heading. */
typedef struct
{
  const SwHelpPage *page;
  int heading; /* -1: before the first */
  guint from, to;
} Stretch;

static char *
heading_text (const Stretch *stretch)
{
  const SwHelpBlock *block;

  if (stretch->heading < 0)
    return g_strdup ("");
  block = g_ptr_array_index (stretch->page->blocks, (guint) stretch->heading);
  return sw_help_line_text (g_ptr_array_index (block->lines, 0));
}

/* The first line that has @word; NULL when none has. (transfer full) */
static char *
line_with (const Stretch *stretch, const char *word)
{
  for (guint i = stretch->from; i < stretch->to; i++)
    {
      const SwHelpBlock *block = g_ptr_array_index (stretch->page->blocks, i);
      for (guint k = 0; k < block->lines->len; k++)
        {
          char *line = sw_help_line_text (g_ptr_array_index (block->lines, k));
          g_autofree char *plain = folded (line);
          if (strstr (plain, word) != NULL)
            return line;
          g_free (line);
        }
    }
  return NULL;
}

/* The beginning of what stands there, where only titles have the words. */
static char *
first_line (const Stretch *stretch)
{
  const SwHelpBlock *block;

  if (stretch->from >= stretch->to)
    return g_strdup ("");
  block = g_ptr_array_index (stretch->page->blocks, stretch->from);
  return sw_help_line_text (g_ptr_array_index (block->lines, 0));
}

static guint
weight_of (const char *title, const char *heading, const char *line, const char *word)
{
  if (strstr (title, word) != NULL)
    return WEIGHT_TITLE;
  if (strstr (heading, word) != NULL)
    return WEIGHT_HEADING;
  return line != NULL ? WEIGHT_TEXT : 0;
}

static void
search_stretch (GPtrArray *hits, const Stretch *stretch, char **words)
{
  g_autofree char *title = folded (stretch->page->title);
  g_autofree char *heading = heading_text (stretch);
  g_autofree char *plain_heading = folded (heading);
  g_autofree char *shown = NULL;
  guint weight = 0;
  SwHelpHit *hit;

  for (char **word = words; *word != NULL; word++)
    {
      g_autofree char *line = line_with (stretch, *word);
      guint of_word = weight_of (title, plain_heading, line, *word);
      if (of_word == 0)
        return;
      weight += of_word;
      if (shown == NULL)
        shown = g_steal_pointer (&line);
    }
  hit = g_new0 (SwHelpHit, 1);
  *hit = (SwHelpHit){ stretch->page, stretch->heading,
                      shown != NULL ? g_steal_pointer (&shown) : first_line (stretch),
                      weight };
  g_ptr_array_add (hits, hit);
}

static gboolean
is_heading (const SwHelpPage *page, guint block)
{
  return ((const SwHelpBlock *) g_ptr_array_index (page->blocks, block))->kind
         <= SW_HELP_SUBHEADING;
}

static void
search_page (GPtrArray *hits, const SwHelpPage *page, char **words)
{
  Stretch stretch = { page, -1, 0, 0 };

  for (guint i = 0; i <= page->blocks->len; i++)
    if (i == page->blocks->len || is_heading (page, i))
      {
        stretch.to = i;
        if (stretch.heading >= 0 || stretch.to > stretch.from)
          search_stretch (hits, &stretch, words);
        stretch = (Stretch){ page, (int) i, i + 1, i + 1 };
      }
}

static int
best_first (gconstpointer a, gconstpointer b)
{
  const SwHelpHit *x = *(SwHelpHit *const *) a, *y = *(SwHelpHit *const *) b;

  return (x->weight < y->weight) - (x->weight > y->weight);
}

GPtrArray *
sw_help_search (const SwHelp *help, const char *words)
{
  g_autofree char *plain = folded (words);
  g_auto (GStrv) split = g_strsplit_set (plain, " \t\n", -1);
  g_autoptr (GStrvBuilder) asked = g_strv_builder_new ();
  g_auto (GStrv) list = NULL;
  GPtrArray *hits = g_ptr_array_new_with_free_func (free_hit);

  for (char **word = split; *word != NULL; word++)
    if (**word != '\0')
      g_strv_builder_add (asked, *word);
  list = g_strv_builder_end (asked);
  for (guint i = 1; *list != NULL && i < help->pages->len; i++)
    search_page (hits, g_ptr_array_index (help->pages, i), list);
  g_ptr_array_sort (hits, best_first); /* stable: equals stay in the order of the pages */
  return hits;
}
