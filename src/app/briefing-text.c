/* SPDX-License-Identifier: MIT */
#include "briefing-text.h"

/* A gradient that breaks between two lines is read as two numbers. */
#define WORD_JOINER "\u2060"

/* What the text's asterisks mean: bold on and off, and two are one. */
static void
append_marked (GString *made, const char *text, const char *on, const char *off)
{
  gboolean bold = FALSE;

  for (const char *c = text; *c != '\0'; c++)
    if (c[0] == '*' && c[1] == '*')
      {
        g_string_append_c (made, '*');
        c++;
      }
    else if (*c == '*')
      {
        g_string_append (made, bold ? off : on);
        bold = !bold;
      }
    else
      g_string_append_c (made, *c);
  if (bold)
    g_string_append (made, off);
}

char *
sw_briefing_markup (const char *text, double scale)
{
  g_autofree char *plain = g_markup_escape_text (text, -1);
  g_autoptr (GString) made = g_string_new (NULL);

  g_string_append_printf (made, "<span size=\"%d%%\">", (int) (scale * 100.0 + 0.5));
  append_marked (made, plain, "<b>", "</b>");
  g_string_replace (made, "H:1V", "H:" WORD_JOINER "1V", 0);
  g_string_append (made, "</span>");
  return g_strdup (made->str);
}

static void
append_said (GString *made, const char *text)
{
  if (text == NULL)
    return;
  if (made->len > 0)
    g_string_append (made, made->str[made->len - 1] == '.' ? " " : ". ");
  append_marked (made, text, "", "");
}

char *
sw_briefing_spoken (const char *counter, const SwBriefingWords *words)
{
  g_autoptr (GString) made = g_string_new (counter);

  append_said (made, words->where);
  append_said (made, words->title);
  append_said (made, words->number);
  append_said (made, words->hold);
  append_said (made, words->caution);
  for (guint i = 0; words->doing[i] != NULL; i++)
    append_said (made, words->doing[i]);
  append_said (made, words->who);
  append_said (made, words->so_far);
  return g_strdup (made->str);
}
