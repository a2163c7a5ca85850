/* SPDX-License-Identifier: MIT */
#include "flow-private.h"

/* Heights add up from many parts: a page is full only beyond this. */
#define FIT_SLACK_MM 0.001

/* The page being filled. */
typedef struct
{
  GPtrArray *pages; /* NULL: nothing is drawn, only measured */
  SwFigure *page;   /* the last of @pages */
  guint n_pages;
  double width_mm, height_mm, y_mm;
  gboolean empty;
} SwFilling;

static void
begin_page (SwFilling *filling)
{
  filling->y_mm = 0.0;
  filling->empty = TRUE;
  filling->n_pages++;
  if (filling->pages == NULL)
    return;
  filling->page = sw_figure_new (filling->width_mm, filling->height_mm);
  g_ptr_array_add (filling->pages, filling->page);
}

static void
place_figure (SwFilling *filling, const SwFigure *figure)
{
  if (filling->page != NULL)
    sw_figure_place (filling->page, figure, 0.0, filling->y_mm);
  filling->y_mm += figure->height_mm;
}

static void
place_slug (const SwFlow *flow, SwFilling *filling, guint index)
{
  const SwSlug *slug = sw_flow_slug (flow, index);
  gboolean with_head = sw_flow_wants_head (flow, index, filling->empty);

  filling->y_mm += filling->empty ? 0.0 : slug->space_mm;
  if (with_head)
    place_figure (filling, slug->head);
  place_figure (filling, slug->figure);
  filling->empty = FALSE;
}

SwFigure *
sw_flow_to_figure (const SwFlow *flow)
{
  SwFigure *figure = sw_figure_new (flow->width_mm, sw_flow_height_mm (flow));
  SwFilling filling = { .page = figure, .empty = TRUE };

  for (guint i = 0; i < flow->slugs->len; i++)
    place_slug (flow, &filling, i);
  return figure;
}

/* One past the last slug tied, directly or over others, to the one at @first. */
static guint
chain_end (const SwFlow *flow, guint first)
{
  guint end = first + 1;

  while (end < flow->slugs->len && sw_flow_slug (flow, end - 1)->tied
         && !sw_flow_slug (flow, end)->breaks)
    end++;
  return end;
}

static gboolean
chain_fits (const SwFlow *flow, const SwFilling *filling, guint first, guint end)
{
  double y_mm = filling->y_mm;

  for (guint i = first; i < end; i++)
    y_mm += sw_flow_slug_mm (flow, i, filling->empty && i == first);
  return y_mm <= filling->height_mm + FIT_SLACK_MM;
}

static void
fill_pages (const SwFlow *flow, SwFilling *filling)
{
  guint next = 0;

  begin_page (filling);
  while (next < flow->slugs->len)
    {
      guint end = chain_end (flow, next);

      if (!filling->empty
          && (sw_flow_slug (flow, next)->breaks
              || !chain_fits (flow, filling, next, end)))
        begin_page (filling);
      /* A chain higher than a page has to be cut somewhere. */
      for (guint i = next; i < end; i++)
        {
          if (!filling->empty && !chain_fits (flow, filling, i, i + 1))
            begin_page (filling);
          place_slug (flow, filling, i);
        }
      next = end;
    }
}

GPtrArray *
sw_flow_to_pages (const SwFlow *flow, double height_mm)
{
  SwFilling filling = {
    .pages = g_ptr_array_new_with_free_func ((GDestroyNotify) sw_figure_free),
    .width_mm = flow->width_mm,
    .height_mm = height_mm,
  };

  fill_pages (flow, &filling);
  return filling.pages;
}

guint
sw_flow_count_pages (const SwFlow *flow, double height_mm)
{
  SwFilling filling = { .width_mm = flow->width_mm, .height_mm = height_mm };

  fill_pages (flow, &filling);
  return filling.n_pages;
}

double
sw_flow_room_mm (const SwFlow *flow, double height_mm)
{
  SwFilling filling = { .width_mm = flow->width_mm, .height_mm = height_mm };

  fill_pages (flow, &filling);
  return height_mm - filling.y_mm;
}
