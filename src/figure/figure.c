/* SPDX-License-Identifier: MIT */
#include <slopewright/figure/figure.h>

static void
clear_item (gpointer data)
{
  g_free (((SwItem *) data)->text);
}

SwFigure *
sw_figure_new (double width_mm, double height_mm)
{
  SwFigure *figure = g_new0 (SwFigure, 1);

  figure->width_mm = width_mm;
  figure->height_mm = height_mm;
  figure->items = g_array_new (FALSE, FALSE, sizeof (SwItem));
  g_array_set_clear_func (figure->items, clear_item);
  figure->points = g_array_new (FALSE, FALSE, sizeof (SwPaperPoint));
  figure->object_now = g_intern_static_string ("");
  return figure;
}

void
sw_figure_free (SwFigure *figure)
{
  if (!figure)
    return;
  g_array_unref (figure->items);
  g_array_unref (figure->points);
  g_free (figure->title);
  g_free (figure);
}

void
sw_figure_object (SwFigure *figure, const char *object)
{
  figure->object_now = g_intern_string (object ? object : "");
}

static SwItem *
add_item (SwFigure *figure, SwItemKind kind, SwRole role, const SwPaperPoint *points,
          guint count)
{
  SwItem item = { .kind = kind,
                  .role = role,
                  .object = figure->object_now,
                  .first_point = figure->points->len,
                  .n_points = count };

  if (count > 0)
    g_array_append_vals (figure->points, points, count);
  g_array_append_val (figure->items, item);
  return &g_array_index (figure->items, SwItem, figure->items->len - 1);
}

void
sw_figure_line (SwFigure *figure, SwRole role, const SwPaperPoint *points, guint count)
{
  g_return_if_fail (count >= 2);
  add_item (figure, SW_ITEM_LINE, role, points, count);
}

void
sw_figure_segment (SwFigure *figure, SwRole role, double x0_mm, double y0_mm,
                   double x1_mm, double y1_mm)
{
  const SwPaperPoint ends[] = { { x0_mm, y0_mm }, { x1_mm, y1_mm } };

  add_item (figure, SW_ITEM_LINE, role, ends, G_N_ELEMENTS (ends));
}

void
sw_figure_area (SwFigure *figure, SwRole role, const SwPaperPoint *points, guint count)
{
  g_return_if_fail (count >= 3);
  add_item (figure, SW_ITEM_AREA, role, points, count);
}

void
sw_figure_box (SwFigure *figure, SwRole role, double x_mm, double y_mm, double width_mm,
               double height_mm)
{
  const double right_mm = x_mm + width_mm;
  const double bottom_mm = y_mm + height_mm;
  const SwPaperPoint corners[] = {
    { x_mm, y_mm }, { right_mm, y_mm }, { right_mm, bottom_mm }, { x_mm, bottom_mm }
  };

  add_item (figure, SW_ITEM_AREA, role, corners, G_N_ELEMENTS (corners));
}

void
sw_figure_circle (SwFigure *figure, SwRole role, double x_mm, double y_mm,
                  double radius_mm)
{
  const SwPaperPoint centre_and_radius[] = { { x_mm, y_mm }, { radius_mm, 0.0 } };

  g_return_if_fail (radius_mm >= 0.0);
  add_item (figure, SW_ITEM_CIRCLE, role, centre_and_radius, 2);
}

void
sw_figure_text (SwFigure *figure, SwRole role, double x_mm, double y_mm, double size_mm,
                SwAlign align, SwTypeface typeface, double turn_rad, const char *text)
{
  const SwPaperPoint at = { x_mm, y_mm };
  SwItem *item = add_item (figure, SW_ITEM_TEXT, role, &at, 1);

  /* Painters and their libraries stumble over broken UTF-8. */
  item->text = g_utf8_make_valid (text ? text : "", -1);
  item->size_mm = size_mm;
  item->align = align;
  item->typeface = typeface;
  item->turn_rad = turn_rad;
}

void
sw_figure_clip (SwFigure *figure, const SwPaperPoint *points, guint count)
{
  g_return_if_fail (count >= 3);
  add_item (figure, SW_ITEM_CLIP, SW_ROLE_FRAME, points, count);
}

void
sw_figure_unclip (SwFigure *figure)
{
  add_item (figure, SW_ITEM_UNCLIP, SW_ROLE_FRAME, NULL, 0);
}

void
sw_figure_link (SwFigure *figure, double x_mm, double y_mm, double width_mm,
                double height_mm, const char *target)
{
  const SwPaperPoint corners[] = { { x_mm, y_mm },
                                   { x_mm + width_mm, y_mm + height_mm } };
  SwItem *item = add_item (figure, SW_ITEM_LINK, SW_ROLE_TEXT, corners, 2);

  item->text = g_utf8_make_valid (target, -1);
}

void
sw_figure_tag (SwFigure *figure, SwTag tag, const char *words)
{
  SwItem *item = add_item (figure, SW_ITEM_TAG, SW_ROLE_TEXT, NULL, 0);

  item->tag = tag;
  item->text = g_utf8_make_valid (words, -1);
}

void
sw_figure_untag (SwFigure *figure)
{
  add_item (figure, SW_ITEM_UNTAG, SW_ROLE_TEXT, NULL, 0);
}

char *
sw_figure_words (const SwFigure *figure)
{
  GString *words = g_string_new (figure->title);

  for (guint i = 0; i < figure->items->len; i++)
    {
      const SwItem *item = &g_array_index (figure->items, SwItem, i);

      if (item->kind == SW_ITEM_TEXT && *item->text != '\0'
          && g_strcmp0 (item->text, figure->title) != 0)
        g_string_append_printf (words, "%s%s", words->len > 0 ? "; " : "", item->text);
    }
  return g_string_free (words, FALSE);
}

void
sw_figure_place (SwFigure *figure, const SwFigure *part, double x_mm, double y_mm)
{
  const guint base = figure->points->len;

  g_return_if_fail (figure != part);
  g_array_append_vals (figure->points, part->points->data, part->points->len);
  for (guint i = 0; i < part->items->len; i++)
    {
      SwItem item = g_array_index (part->items, SwItem, i);
      /* The second point of a circle is its radius, which does not move. */
      const guint moving = item.kind == SW_ITEM_CIRCLE ? 1 : item.n_points;

      item.first_point += base;
      item.text = g_strdup (item.text);
      for (guint j = 0; j < moving; j++)
        {
          SwPaperPoint *point =
              &g_array_index (figure->points, SwPaperPoint, item.first_point + j);
          point->x_mm += x_mm;
          point->y_mm += y_mm;
        }
      g_array_append_val (figure->items, item);
    }
}

const SwPaperPoint *
sw_figure_item_points (const SwFigure *figure, const SwItem *item)
{
  return &g_array_index (figure->points, SwPaperPoint, item->first_point);
}
