/* SPDX-License-Identifier: MIT */
#include "help-markup.h"

#include <glib/gi18n.h>
#include <gtk/gtk.h>

static const struct
{
  const char *open, *close;
} marks[] = {
  [SW_HELP_PLAIN] = { "", "" },
  [SW_HELP_STRONG] = { "<b>", "</b>" },
  [SW_HELP_LABEL] = { "<b>", "</b>" },
  [SW_HELP_TYPED] = { "<tt>", "</tt>" },
  [SW_HELP_KEY] = { "<tt><b>", "</b></tt>" },
  [SW_HELP_LINK] = { NULL, "</a>" },
};

/* Of the toolkit's own translations: how the keyboard of a language names its keys. */
#define GTK_TEXTS "gtk40"
#define KEY_TEXTS "keyboard label"

char *
sw_help_key_name (const char *key)
{
  g_auto (GStrv) parts = g_strsplit (key, "+", -1);
  g_autoptr (GString) accelerator = g_string_new (NULL);
  GdkModifierType modifiers;
  guint value;

  for (char **part = parts; *part != NULL; part++)
    g_string_append_printf (accelerator, part[1] != NULL ? "<%s>" : "%s", *part);
  if (gtk_accelerator_parse (accelerator->str, &value, &modifiers))
    return gtk_accelerator_get_label (value, modifiers);
  return g_strdup (g_dpgettext2 (GTK_TEXTS, KEY_TEXTS, key));
}

char *
sw_help_markup (const GPtrArray *line)
{
  GString *markup = g_string_new (NULL);

  for (guint i = 0; i < line->len; i++)
    {
      const SwHelpSpan *span = g_ptr_array_index (line, i);
      g_autofree char *words = span->kind == SW_HELP_KEY ? sw_help_key_name (span->text)
                                                         : g_strdup (span->text);
      g_autofree char *text = g_markup_escape_text (words, -1);
      g_autofree char *open =
          span->target != NULL ? g_markup_printf_escaped ("<a href=\"%s\">", span->target)
                               : g_strdup (marks[span->kind].open);
      g_string_append_printf (markup, "%s%s%s", open, text, marks[span->kind].close);
    }
  return g_string_free (markup, FALSE);
}
