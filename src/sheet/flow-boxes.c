/* SPDX-License-Identifier: MIT */
#include "flow-private.h"

#define BOX_PAD_MM 3.0
#define BOX_TALLEST_MM 125.0
#define ROW_TALLEST_MM 180.0

double
sw_flow_box_width_mm (double outer_mm)
{
  return outer_mm - 2.0 * BOX_PAD_MM;
}

/* All slugs of @inner, moved in from the left, each able to begin a page. */
static void
add_slugs_of (SwFlow *flow, const SwFlow *inner, double indent_mm)
{
  for (guint i = 0; i < inner->slugs->len; i++)
    {
      const SwSlug *slug = sw_flow_slug (inner, i);
      double head_mm =
          sw_flow_wants_head (inner, i, i == 0) ? slug->head->height_mm : 0.0;
      SwFigure *figure =
          sw_figure_new (flow->width_mm, head_mm + slug->figure->height_mm);

      if (head_mm > 0.0)
        sw_figure_place (figure, slug->head, indent_mm, 0.0);
      sw_figure_place (figure, slug->figure, indent_mm, head_mm);
      sw_flow_space (flow, slug->space_mm);
      sw_flow_add (flow, figure);
    }
}

void
sw_flow_box_tall (SwFlow *flow, SwRole role, SwFlow *inner, double least_mm)
{
  double height_mm = MAX (sw_flow_height_mm (inner) + 2.0 * BOX_PAD_MM, least_mm);

  if (height_mm > BOX_TALLEST_MM * flow->pen.scale)
    add_slugs_of (flow, inner, BOX_PAD_MM);
  else
    {
      SwFigure *figure = sw_figure_new (flow->width_mm, height_mm);
      g_autoptr (SwFigure) content = sw_flow_to_figure (inner);

      sw_figure_box (figure, role, 0.0, 0.0, flow->width_mm, height_mm);
      sw_figure_place (figure, content, BOX_PAD_MM, BOX_PAD_MM);
      sw_flow_add (flow, figure);
    }
  sw_flow_free (inner);
}

void
sw_flow_box (SwFlow *flow, SwRole role, SwFlow *inner)
{
  sw_flow_box_tall (flow, role, inner, 0.0);
}

void
sw_flow_caution (SwFlow *flow, const char *markup)
{
  SwFlow *inner = sw_flow_new (&flow->pen, sw_flow_box_width_mm (flow->width_mm));

  sw_flow_text (inner, SW_STYLE_BODY, SW_ROLE_TEXT, markup);
  sw_flow_box (flow, SW_ROLE_CAUTION, inner);
}

double
sw_flow_share_mm (const SwFlow *flow, double gap_mm, guint count)
{
  return (flow->width_mm - (count - 1) * gap_mm) / count;
}

void
sw_flow_boxes (SwFlow *flow, SwRole role, double gap_mm, SwFlow *const *inners,
               guint count)
{
  g_autofree SwFlow **columns = g_new (SwFlow *, count);
  double tallest_mm = 0.0;

  for (guint i = 0; i < count; i++)
    tallest_mm = MAX (tallest_mm, sw_flow_height_mm (inners[i]) + 2.0 * BOX_PAD_MM);
  for (guint i = 0; i < count; i++)
    {
      columns[i] = sw_flow_new (&flow->pen, sw_flow_share_mm (flow, gap_mm, count));
      sw_flow_box_tall (columns[i], role, inners[i], tallest_mm);
    }
  sw_flow_row (flow, gap_mm, columns, count);
}

static void
add_below_each_other (SwFlow *flow, double gap_mm, SwFlow *const *columns, guint count)
{
  for (guint i = 0; i < count; i++)
    {
      add_slugs_of (flow, columns[i], 0.0);
      sw_flow_space (flow, gap_mm);
      sw_flow_free (columns[i]);
    }
}

void
sw_flow_row (SwFlow *flow, double gap_mm, SwFlow *const *columns, guint count)
{
  double x_mm = 0.0, height_mm = 0.0;
  SwFigure *figure;

  for (guint i = 0; i < count; i++)
    height_mm = MAX (height_mm, sw_flow_height_mm (columns[i]));
  if (height_mm > ROW_TALLEST_MM * flow->pen.scale)
    {
      add_below_each_other (flow, gap_mm, columns, count);
      return;
    }
  figure = sw_figure_new (flow->width_mm, height_mm);
  for (guint i = 0; i < count; i++)
    {
      g_autoptr (SwFigure) part = sw_flow_to_figure (columns[i]);

      sw_figure_place (figure, part, x_mm, 0.0);
      x_mm += columns[i]->width_mm + gap_mm;
      sw_flow_free (columns[i]);
    }
  sw_flow_add (flow, figure);
}
