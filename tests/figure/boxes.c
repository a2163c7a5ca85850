/* SPDX-License-Identifier: MIT */
#undef G_DISABLE_ASSERT
#include "boxes.h"
#include <math.h>
#include <string.h>

/* Rounding of millimetres. */
#define SLACK_MM 0.02

const SwItem *
figure_text (const SwFigure *figure, const char *text)
{
  for (guint i = 0; i < figure->items->len; i++)
    {
      const SwItem *item = &g_array_index (figure->items, SwItem, i);

      if (item->kind == SW_ITEM_TEXT && strcmp (item->text, text) == 0)
        return item;
    }
  return NULL;
}

gboolean
figure_has_object (const SwFigure *figure, const char *object)
{
  for (guint i = 0; i < figure->items->len; i++)
    if (strcmp (g_array_index (figure->items, SwItem, i).object, object) == 0)
      return TRUE;
  return FALSE;
}

/* Figures stand on the base line; other texts reach 0.2 em below it. */
static double
below_em (const char *text)
{
  return text[strspn (text, "0123456789")] == '\0' ? 0.0 : 0.2;
}

/* From a capital's top, 0.72 em, to a descender. */
void
text_corners (const SwFigure *figure, const SwItem *item, const SwTextMeasure *measure,
              SwPaperPoint corners[4])
{
  SwPaperPoint base = *sw_figure_item_points (figure, item);
  double width =
      measure->width_mm (item->typeface, item->size_mm, item->text, measure->data);
  double left = item->align == SW_ALIGN_LEFT     ? 0.0
                : item->align == SW_ALIGN_CENTRE ? -width / 2.0
                                                 : -width;
  double u[4] = { left, left + width, left + width, left };
  double low = below_em (item->text) * item->size_mm;
  double v[4] = { -0.72 * item->size_mm, -0.72 * item->size_mm, low, low };
  double c = cos (item->turn_rad), s = sin (item->turn_rad);

  for (guint i = 0; i < 4; i++)
    corners[i] = (SwPaperPoint){ base.x_mm + u[i] * c + v[i] * s,
                                 base.y_mm - u[i] * s + v[i] * c };
}

static gboolean
apart_along (const SwPaperPoint a[4], const SwPaperPoint b[4], double x, double y)
{
  double a0 = INFINITY, a1 = -INFINITY, b0 = INFINITY, b1 = -INFINITY;

  for (guint i = 0; i < 4; i++)
    {
      double p = a[i].x_mm * x + a[i].y_mm * y, q = b[i].x_mm * x + b[i].y_mm * y;

      a0 = fmin (a0, p);
      a1 = fmax (a1, p);
      b0 = fmin (b0, q);
      b1 = fmax (b1, q);
    }
  return a1 <= b0 + SLACK_MM || b1 <= a0 + SLACK_MM;
}

/* Separating axis theorem over the four directions of the two boxes. */
gboolean
corners_apart (const SwPaperPoint a[4], const SwPaperPoint b[4])
{
  const SwPaperPoint *both[2] = { a, b };

  for (guint i = 0; i < 2; i++)
    for (guint k = 0; k < 2; k++)
      {
        double x = both[i][k + 1].x_mm - both[i][k].x_mm;
        double y = both[i][k + 1].y_mm - both[i][k].y_mm, size = hypot (x, y);

        if (size > 0.0 && apart_along (a, b, x / size, y / size))
          return TRUE;
      }
  return FALSE;
}

static void
assert_inside (const SwFigure *figure, SwPaperPoint at, double reach, const char *what,
               const char *text)
{
  if (at.x_mm - reach < -SLACK_MM || at.y_mm - reach < -SLACK_MM
      || at.x_mm + reach > figure->width_mm + SLACK_MM
      || at.y_mm + reach > figure->height_mm + SLACK_MM)
    g_error ("%s: \"%s\" leaves the figure at %.2f, %.2f", what, text, at.x_mm, at.y_mm);
}

static void
assert_item_inside (const SwFigure *figure, const SwItem *item,
                    const SwTextMeasure *measure, const char *what)
{
  const SwPaperPoint *points = sw_figure_item_points (figure, item);
  SwPaperPoint corners[4];

  if (item->kind == SW_ITEM_CIRCLE)
    assert_inside (figure, points[0], points[1].x_mm, what, item->object);
  else if (item->kind == SW_ITEM_LINE || item->kind == SW_ITEM_AREA)
    for (guint p = 0; p < item->n_points; p++)
      assert_inside (figure, points[p], 0.0, what, item->object);
  else if (item->kind == SW_ITEM_TEXT)
    {
      text_corners (figure, item, measure, corners);
      for (guint p = 0; p < 4; p++)
        assert_inside (figure, corners[p], 0.0, what, item->text);
    }
}

void
assert_tidy (const SwFigure *figure, const SwTextMeasure *measure, const char *what)
{
  for (guint i = 0; i < figure->items->len; i++)
    {
      const SwItem *item = &g_array_index (figure->items, SwItem, i);
      SwPaperPoint a[4], b[4];

      assert_item_inside (figure, item, measure, what);
      if (item->kind != SW_ITEM_TEXT)
        continue;
      text_corners (figure, item, measure, a);
      for (guint k = i + 1; k < figure->items->len; k++)
        {
          const SwItem *other = &g_array_index (figure->items, SwItem, k);

          if (other->kind != SW_ITEM_TEXT)
            continue;
          text_corners (figure, other, measure, b);
          if (!corners_apart (a, b))
            g_error ("%s: \"%s\" and \"%s\" overlap", what, item->text, other->text);
        }
    }
}

void
strip_corners (SwPaperPoint a, SwPaperPoint b, SwPaperPoint corners[4])
{
  double dx = b.x_mm - a.x_mm, dy = b.y_mm - a.y_mm, size = hypot (dx, dy);
  double x = dy / size * 2.0 * SLACK_MM, y = -dx / size * 2.0 * SLACK_MM;

  corners[0] = a;
  corners[1] = b;
  corners[2] = (SwPaperPoint){ b.x_mm + x, b.y_mm + y };
  corners[3] = (SwPaperPoint){ a.x_mm + x, a.y_mm + y };
}

static void
assert_text_off_lines (const SwFigure *figure, const SwItem *text, SwRole role,
                       const SwTextMeasure *measure, const char *what)
{
  SwPaperPoint ink[4], strip[4];

  text_corners (figure, text, measure, ink);
  for (guint i = 0; i < figure->items->len; i++)
    {
      const SwItem *line = &g_array_index (figure->items, SwItem, i);
      const SwPaperPoint *points = sw_figure_item_points (figure, line);

      if (line->kind != SW_ITEM_LINE || line->role != role)
        continue;
      for (guint p = 0; p + 1 < line->n_points; p++)
        {
          strip_corners (points[p], points[p + 1], strip);
          if (!corners_apart (ink, strip))
            g_error ("%s: \"%s\" lies on a line", what, text->text);
        }
    }
}

void
assert_no_text_on (const SwFigure *figure, SwRole role, const SwTextMeasure *measure,
                   const char *what)
{
  for (guint i = 0; i < figure->items->len; i++)
    {
      const SwItem *item = &g_array_index (figure->items, SwItem, i);

      if (item->kind == SW_ITEM_TEXT)
        assert_text_off_lines (figure, item, role, measure, what);
    }
}
