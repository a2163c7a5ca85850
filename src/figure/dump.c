/* SPDX-License-Identifier: MIT */
#include <math.h>

#include <slopewright/figure/figure.h>

static const char *const kind_names[] = {
  [SW_ITEM_LINE] = "line", [SW_ITEM_AREA] = "area", [SW_ITEM_CIRCLE] = "circle",
  [SW_ITEM_TEXT] = "text", [SW_ITEM_CLIP] = "clip", [SW_ITEM_UNCLIP] = "unclip",
  [SW_ITEM_LINK] = "link", [SW_ITEM_TAG] = "tag",   [SW_ITEM_UNTAG] = "untag",
};

static const char *const align_names[] = {
  [SW_ALIGN_LEFT] = "left",
  [SW_ALIGN_CENTRE] = "centre",
  [SW_ALIGN_RIGHT] = "right",
};

static const char *const tag_codes[SW_TAG_COUNT] = {
  [SW_TAG_TITLE] = "title",         [SW_TAG_HEADING] = "heading",
  [SW_TAG_PARAGRAPH] = "paragraph", [SW_TAG_MORE] = "more",
  [SW_TAG_PICTURE] = "picture",     [SW_TAG_ROW] = "row",
  [SW_TAG_HEAD_CELL] = "head-cell", [SW_TAG_CELL] = "cell",
  [SW_TAG_BAND] = "band",           [SW_TAG_FURNITURE] = "furniture",
};

const char *
sw_tag_code (SwTag tag)
{
  return tag_codes[tag];
}

static void
append_number (GString *out, double value)
{
  char buffer[G_ASCII_DTOSTR_BUF_SIZE];

  /* A tiny negative would print as "-0.000" on one machine and not on another. */
  g_ascii_formatd (buffer, sizeof buffer, "%.3f", fabs (value) < 0.0005 ? 0.0 : value);
  g_string_append (out, buffer);
}

static void
append_text (GString *out, const char *text)
{
  g_string_append (out, " \"");
  for (const char *c = text ? text : ""; *c; c++)
    if (*c == '\n')
      g_string_append (out, "\\n");
    else
      g_string_append_c (out, *c);
  g_string_append_c (out, '"');
}

static void
append_item (GString *out, const SwFigure *figure, const SwItem *item)
{
  const SwPaperPoint *points = sw_figure_item_points (figure, item);

  g_string_append (out, kind_names[item->kind]);
  if (item->kind <= SW_ITEM_TEXT)
    g_string_append_printf (out, " %s %s", sw_role_code (item->role),
                            *item->object ? item->object : "-");
  for (guint i = 0; i < item->n_points; i++)
    {
      g_string_append_c (out, ' ');
      append_number (out, points[i].x_mm);
      g_string_append_c (out, ',');
      append_number (out, points[i].y_mm);
    }
  if (item->kind == SW_ITEM_TEXT)
    {
      g_string_append_c (out, ' ');
      append_number (out, item->size_mm);
      g_string_append_printf (out, " %s %s turn ", align_names[item->align],
                              item->typeface == SW_FACE_BOLD ? "bold" : "regular");
      append_number (out, item->turn_rad);
    }
  if (item->kind == SW_ITEM_TAG)
    g_string_append_printf (out, " %s", sw_tag_code (item->tag));
  if (item->kind == SW_ITEM_TEXT || item->kind == SW_ITEM_LINK
      || item->kind == SW_ITEM_TAG)
    append_text (out, item->text);
  g_string_append_c (out, '\n');
}

char *
sw_figure_dump (const SwFigure *figure)
{
  GString *out = g_string_new ("figure ");

  append_number (out, figure->width_mm);
  g_string_append_c (out, ' ');
  append_number (out, figure->height_mm);
  if (figure->title)
    append_text (out, figure->title);
  g_string_append_c (out, '\n');
  for (guint i = 0; i < figure->items->len; i++)
    append_item (out, figure, &g_array_index (figure->items, SwItem, i));
  return g_string_free (out, FALSE);
}
