/* SPDX-License-Identifier: MIT */
#include <slopewright/store/help.h>
#include <slopewright/store/store.h>

#include <string.h>

#define FOLDER "help"
#define ENGLISH "en"

SwHelp *
sw_help_new (void)
{
  SwHelp *help = g_new0 (SwHelp, 1);

  help->pages = g_ptr_array_new_with_free_func ((GDestroyNotify) sw_help_page_free);
  return help;
}

void
sw_help_free (SwHelp *help)
{
  if (help == NULL)
    return;
  g_ptr_array_unref (help->pages);
  g_free (help);
}

const SwHelpPage *
sw_help_page (const SwHelp *help, const char *name)
{
  for (guint i = 0; i < help->pages->len; i++)
    {
      const SwHelpPage *page = g_ptr_array_index (help->pages, i);
      if (strcmp (page->name, name) == 0)
        return page;
    }
  return NULL;
}

int
sw_help_page_place (const SwHelpPage *page, const char *place)
{
  for (guint i = 0; i < page->blocks->len; i++)
    {
      const SwHelpBlock *block = g_ptr_array_index (page->blocks, i);
      if (g_strcmp0 (block->place, place) == 0)
        return (int) i;
    }
  return -1;
}

const SwHelpPage *
sw_help_target (const SwHelp *help, const char *target, int *block)
{
  g_auto (GStrv) parts = g_strsplit (target, "#", 2);
  const SwHelpPage *page = parts[0] != NULL ? sw_help_page (help, parts[0]) : NULL;
  int at = -1;

  if (page == NULL)
    return NULL;
  if (parts[1] != NULL && (at = sw_help_page_place (page, parts[1])) < 0)
    return NULL;
  if (block != NULL)
    *block = at;
  return page;
}

static gboolean
join_span (const SwHelp *help, const SwHelpPage *from, SwHelpSpan *span, GError **error)
{
  int block;
  const SwHelpPage *page = sw_help_target (help, span->target, &block);

  if (page == NULL)
    {
      g_set_error (error, SW_STORE_ERROR, SW_STORE_ERROR_VALUE,
                   "%s: found a link to \"%s\", expected a page or page#place that "
                   "there is",
                   from->name, span->target);
      return FALSE;
    }
  if (*span->text == '\0')
    {
      const SwHelpBlock *heading =
          block >= 0 ? g_ptr_array_index (page->blocks, (guint) block) : NULL;
      g_free (span->text);
      span->text = heading != NULL
                       ? sw_help_line_text (g_ptr_array_index (heading->lines, 0))
                       : g_strdup (page->title);
    }
  return TRUE;
}

static gboolean
join_block (const SwHelp *help, const SwHelpPage *page, const SwHelpBlock *block,
            GError **error)
{
  for (guint i = 0; i < block->lines->len; i++)
    {
      const GPtrArray *line = g_ptr_array_index (block->lines, i);
      for (guint k = 0; k < line->len; k++)
        {
          SwHelpSpan *span = g_ptr_array_index (line, k);
          if (span->kind == SW_HELP_LINK && !join_span (help, page, span, error))
            return FALSE;
        }
    }
  return TRUE;
}

gboolean
sw_help_join (SwHelp *help, GError **error)
{
  for (guint i = 0; i < help->pages->len; i++)
    {
      const SwHelpPage *page = g_ptr_array_index (help->pages, i);
      for (guint k = 0; k < page->blocks->len; k++)
        if (!join_block (help, page, g_ptr_array_index (page->blocks, k), error))
          return FALSE;
    }
  return TRUE;
}

static SwHelpPage *
read_page (const char *name, const SwTexts *texts, GError **error)
{
  g_autofree char *path =
      g_strdup_printf (FOLDER "/%s/%s.md", sw_texts_language (texts), name);
  g_autoptr (GBytes) bytes = sw_resource_bytes (path);
  gsize length = 0;
  const char *text;

  if (bytes == NULL)
    {
      g_set_error (error, SW_STORE_ERROR, SW_STORE_ERROR_READ,
                   "%s: there is no such page", path);
      return NULL;
    }
  text = g_bytes_get_data (bytes, &length);
  return sw_help_page_parse (name, text, length, texts, path, error);
}

/* In the language asked for if the page is there in it, else in English. */
static void
add_page (SwHelp *help, const char *name, const SwTexts *texts, const SwTexts *english)
{
  g_autoptr (GError) error = NULL;
  SwHelpPage *page = texts != NULL ? read_page (name, texts, &error) : NULL;

  if (page == NULL
      && (error == NULL || g_error_matches (error, SW_STORE_ERROR, SW_STORE_ERROR_READ)))
    {
      g_clear_error (&error);
      page = read_page (name, english, &error);
    }
  if (page == NULL)
    g_error ("%s", error->message);
  g_ptr_array_add (help->pages, page);
}

static void
add_listed (SwHelp *help, const SwHelpBlock *block, const SwTexts *texts,
            const SwTexts *english)
{
  for (guint i = 0; i < block->lines->len; i++)
    {
      const GPtrArray *line = g_ptr_array_index (block->lines, i);
      for (guint k = 0; k < line->len; k++)
        {
          const SwHelpSpan *span = g_ptr_array_index (line, k);
          if (span->kind == SW_HELP_LINK)
            add_page (help, span->target, texts, english);
        }
    }
}

SwHelp *
sw_help_load (const char *language)
{
  g_autoptr (SwTexts) english = sw_texts_load (ENGLISH);
  g_autoptr (SwTexts) texts = sw_texts_load (language);
  g_autoptr (GError) error = NULL;
  SwHelp *help = sw_help_new ();
  const SwHelpPage *contents;

  add_page (help, SW_HELP_CONTENTS, texts, english);
  contents = g_ptr_array_index (help->pages, 0);
  for (guint i = 0; i < contents->blocks->len; i++)
    add_listed (help, g_ptr_array_index (contents->blocks, i), texts, english);
  if (!sw_help_join (help, &error))
    g_error ("%s", error->message);
  return help;
}
