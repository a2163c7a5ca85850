/* SPDX-License-Identifier: MIT */
#include "help-markup.h"

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

char *
sw_help_markup (const GPtrArray *line)
{
  GString *markup = g_string_new (NULL);

  for (guint i = 0; i < line->len; i++)
    {
      const SwHelpSpan *span = g_ptr_array_index (line, i);
      g_autofree char *text = g_markup_escape_text (span->text, -1);
      g_autofree char *open =
          span->target != NULL ? g_markup_printf_escaped ("<a href=\"%s\">", span->target)
                               : g_strdup (marks[span->kind].open);
      g_string_append_printf (markup, "%s%s%s", open, text, marks[span->kind].close);
    }
  return g_string_free (markup, FALSE);
}
