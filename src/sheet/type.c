/* SPDX-License-Identifier: MIT */
#include "type.h"
#include <string.h>

/* Distance of base lines in ems, and where a page is saved by less. */
#define LEADING 1.32
#define TIGHT_LEADING 1.2
/* Of the gaps, what is left where they are tightest. */
#define TIGHT_GAP 0.6
/* A line may be this much too long: sums of glyph widths are not exact. */
#define SLACK_MM 0.01

static const struct
{
  double size_mm;
  SwTypeface typeface;
} styles[SW_STYLE_COUNT] = {
  [SW_STYLE_BODY] = { 3.2, SW_FACE_REGULAR },
  [SW_STYLE_SMALL] = { 2.7, SW_FACE_REGULAR },
  [SW_STYLE_TINY] = { 2.35, SW_FACE_REGULAR },
  [SW_STYLE_CREW] = { 3.8, SW_FACE_REGULAR },
  [SW_STYLE_ACTION] = { 4.6, SW_FACE_BOLD },
  [SW_STYLE_HEADING] = { 4.3, SW_FACE_BOLD },
  [SW_STYLE_TITLE] = { 6.6, SW_FACE_BOLD },
  [SW_STYLE_NUMBER] = { 6.6, SW_FACE_BOLD },
};

double
sw_pen_size_mm (const SwPen *pen, SwStyle style)
{
  return styles[style].size_mm * pen->scale;
}

static double
leading (const SwPen *pen)
{
  return LEADING - pen->tight * (LEADING - TIGHT_LEADING);
}

double
sw_pen_line_mm (const SwPen *pen, SwStyle style)
{
  return sw_pen_size_mm (pen, style) * leading (pen);
}

double
sw_pen_gap_mm (const SwPen *pen, double gap_mm)
{
  return gap_mm * (1.0 - pen->tight * (1.0 - TIGHT_GAP));
}

static SwTypeface
typeface_of (SwStyle style, gboolean bold)
{
  return bold ? SW_FACE_BOLD : styles[style].typeface;
}

/* Split @markup into plain text and one bold flag a byte. */
static void
read_markup (SwTextBlock *block, const char *markup)
{
  GString *text = g_string_sized_new (strlen (markup));
  GByteArray *flags = g_byte_array_new ();
  guint8 bold = 0;

  for (const char *c = markup; *c != '\0'; c++)
    {
      if (*c == '*' && c[1] != '*')
        {
          bold = !bold;
          continue;
        }
      if (*c == '*')
        c++;
      /* A tab or a return of the user's has no glyph. */
      g_string_append_c (text, g_ascii_iscntrl (*c) && *c != '\n' ? ' ' : *c);
      g_byte_array_append (flags, &bold, 1);
    }
  block->text = g_string_free (text, FALSE);
  block->bold = g_byte_array_free (flags, FALSE);
}

/* End of the stretch of one typeface that begins at @from. */
static gsize
span_end (const SwTextBlock *block, gsize from, gsize to)
{
  gsize end = from + 1;

  while (end < to && block->bold[end] == block->bold[from])
    end++;
  return end;
}

/* Glyphs are set side by side without kerning, so the widths of a text's characters add
 * up: one pass measures every stretch of it. */
static void
measure_characters (const SwPen *pen, SwTextBlock *block)
{
  gsize length = strlen (block->text), next;

  block->upto_mm = g_new0 (double, length + 1);
  for (gsize at = 0; at < length; at = next)
    {
      char character[7] = { 0 };

      next = (gsize) (g_utf8_next_char (block->text + at) - block->text);
      memcpy (character, block->text + at, next - at);
      for (gsize byte = at + 1; byte <= next; byte++)
        block->upto_mm[byte] = block->upto_mm[at];
      block->upto_mm[next] += pen->measure->width_mm (
          typeface_of (block->style, block->bold[at]), sw_pen_size_mm (pen, block->style),
          character, pen->measure->data);
    }
}

static double
range_width_mm (const SwTextBlock *block, gsize from, gsize to)
{
  return block->upto_mm[to] - block->upto_mm[from];
}

static void
add_line (SwTextBlock *block, gsize from, gsize to)
{
  while (to > from && block->text[to - 1] == ' ')
    to--;
  SwTextLine line = { from, to, range_width_mm (block, from, to) };

  block->widest_mm = MAX (block->widest_mm, line.width_mm);
  g_array_append_val (block->lines, line);
}

/* As many characters of a word as fit, at least one. */
static gsize
broken_word_end (const SwTextBlock *block, gsize from, gsize to, double width_mm)
{
  gsize end = from;

  while (end < to)
    {
      gsize next = (gsize) (g_utf8_next_char (block->text + end) - block->text);

      if (end > from && range_width_mm (block, from, next) > width_mm + SLACK_MM)
        break;
      end = next;
    }
  return end;
}

/* Break the stretch [from, to), which holds no newline. */
static void
break_stretch (SwTextBlock *block, gsize from, gsize to, double width_mm)
{
  gsize start = from, good = from, at = from;

  while (at < to)
    {
      gsize word = at;
      while (word < to && block->text[word] == ' ')
        word++;
      gsize end = word;
      while (end < to && block->text[end] != ' ')
        end++;
      if (range_width_mm (block, start, end) <= width_mm + SLACK_MM)
        {
          good = at = end;
          continue;
        }
      if (good > start)
        {
          add_line (block, start, good);
          start = good = at = word;
          continue;
        }
      good = at = broken_word_end (block, start, end, width_mm);
      if (good < end)
        {
          add_line (block, start, good);
          start = good;
        }
    }
  add_line (block, start, to);
}

SwTextBlock *
sw_text_block_new (const SwPen *pen, SwStyle style, const char *markup, double width_mm)
{
  SwTextBlock *block = g_new0 (SwTextBlock, 1);
  gsize length, from = 0;

  block->style = style;
  block->lines = g_array_new (FALSE, FALSE, sizeof (SwTextLine));
  read_markup (block, markup);
  measure_characters (pen, block);
  length = strlen (block->text);
  while (from <= length)
    {
      const char *newline = strchr (block->text + from, '\n');
      gsize to = newline != NULL ? (gsize) (newline - block->text) : length;

      break_stretch (block, from, to, width_mm);
      from = to + 1;
    }
  return block;
}

void
sw_text_block_free (SwTextBlock *block)
{
  if (block == NULL)
    return;
  g_free (block->text);
  g_free (block->bold);
  g_free (block->upto_mm);
  g_array_unref (block->lines);
  g_free (block);
}

double
sw_text_block_height_mm (const SwPen *pen, const SwTextBlock *block, guint count)
{
  return count * sw_pen_line_mm (pen, block->style);
}

double
sw_text_word_mm (const SwPen *pen, SwStyle style, const char *markup)
{
  g_autoptr (SwTextBlock) block = sw_text_block_new (pen, style, markup, G_MAXDOUBLE);
  gsize length = strlen (block->text);
  double widest_mm = 0.0;

  for (gsize from = 0; from < length;)
    {
      gsize to = from + strcspn (block->text + from, " \n");

      widest_mm = MAX (widest_mm, range_width_mm (block, from, to));
      from = to + 1;
    }
  return widest_mm;
}

/* From the top of a line to its base line. */
static double
base_line_mm (const SwPen *pen, SwStyle style)
{
  double size_mm = sw_pen_size_mm (pen, style);
  double body = pen->measure->ascent + pen->measure->descent;

  return size_mm * ((leading (pen) - body) / 2.0 + pen->measure->ascent);
}

static void
draw_line (const SwPen *pen, const SwTextBlock *block, const SwTextLine *line,
           SwFigure *figure, SwRole role, double x_mm, double y_mm)
{
  for (gsize at = line->from; at < line->to;)
    {
      gsize end = span_end (block, at, line->to);
      g_autofree char *span = g_strndup (block->text + at, end - at);

      sw_figure_text (figure, role, x_mm, y_mm + base_line_mm (pen, block->style),
                      sw_pen_size_mm (pen, block->style), SW_ALIGN_LEFT,
                      typeface_of (block->style, block->bold[at]), 0.0, span);
      x_mm += range_width_mm (block, at, end);
      at = end;
    }
}

void
sw_text_block_draw (const SwPen *pen, const SwTextBlock *block, guint first, guint count,
                    SwFigure *figure, SwRole role, double x_mm, double y_mm,
                    double width_mm, SwAlign align)
{
  for (guint i = first; i < MIN (first + count, block->lines->len); i++)
    {
      const SwTextLine *line = &g_array_index (block->lines, SwTextLine, i);
      double free_mm = width_mm - line->width_mm;
      double shift_mm = align == SW_ALIGN_LEFT     ? 0.0
                        : align == SW_ALIGN_CENTRE ? free_mm / 2.0
                                                   : free_mm;

      draw_line (pen, block, line, figure, role, x_mm + shift_mm,
                 y_mm + (i - first) * sw_pen_line_mm (pen, block->style));
    }
}

void
sw_pen_write (const SwPen *pen, SwStyle style, SwFigure *figure, SwRole role, double x_mm,
              double y_mm, SwAlign align, const char *text)
{
  sw_figure_text (figure, role, x_mm, y_mm + base_line_mm (pen, style),
                  sw_pen_size_mm (pen, style), align, styles[style].typeface, 0.0, text);
}

double
sw_pen_width_mm (const SwPen *pen, SwStyle style, const char *text)
{
  return pen->measure->width_mm (styles[style].typeface, sw_pen_size_mm (pen, style),
                                 text, pen->measure->data);
}

char *
sw_markup_escape (const char *text)
{
  GString *escaped = g_string_sized_new (strlen (text));

  for (const char *c = text; *c != '\0'; c++)
    g_string_append (escaped, *c == '*' ? "**" : (char[]){ *c, '\0' });
  return g_string_free (escaped, FALSE);
}
