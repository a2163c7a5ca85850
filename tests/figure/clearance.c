/* SPDX-License-Identifier: MIT */
#undef G_DISABLE_ASSERT
#include "clearance.h"
#include <math.h>

/* A text this near to the middle of a line, and as turned, interrupts it. */
#define ON_LINE_MM 0.3
#define SAME_TURN_RAD 0.05

/* A shorter line has no direction to speak of. */
#define LEAST_LINE_MM 0.05

typedef struct
{
  const SwFigure *figure;
  const SwTextMeasure *measure;
  GPtrArray *found;
} Clashes;

static const SwItem *
item_at (const SwFigure *figure, guint i)
{
  return &g_array_index (figure->items, SwItem, i);
}

static void
add (Clashes *clashes, const SwItem *text, const char *what, const char *of)
{
  g_ptr_array_add (clashes->found,
                   g_strdup_printf ("\"%s\" on %s %s", text->text, what, of));
}

/* Lines that a reader follows, by what they are called here; NULL: others, such as edges
 * of runs, on which a text may stand. */
static const char *
line_name (SwRole role)
{
  switch ((int) role)
    {
    case SW_ROLE_DIMENSION:
      return "a dimension or leader of";
    case SW_ROLE_BREAK:
      return "the break";
    case SW_ROLE_GROUND:
      return "the ground or outline";
    case SW_ROLE_FALL_LINE:
    case SW_ROLE_WIND:
      return "the arrow";
    default:
      return NULL;
    }
}

static SwPaperPoint
middle_of (const SwPaperPoint corners[4])
{
  return (SwPaperPoint){ (corners[0].x_mm + corners[2].x_mm) / 2.0,
                         (corners[0].y_mm + corners[2].y_mm) / 2.0 };
}

/* Whether the text stands in the line, as a dimension's does. */
static gboolean
interrupts (const SwItem *text, const SwPaperPoint ink[4], SwPaperPoint a, SwPaperPoint b)
{
  SwPaperPoint at = middle_of (ink);
  double dx = b.x_mm - a.x_mm, dy = b.y_mm - a.y_mm, size = hypot (dx, dy);
  double off = fabs ((at.x_mm - a.x_mm) * dy - (at.y_mm - a.y_mm) * dx) / size;
  double on = ((at.x_mm - a.x_mm) * dx + (at.y_mm - a.y_mm) * dy) / size;
  double turn = remainder (atan2 (-dy, dx) - text->turn_rad, G_PI);

  return size >= LEAST_LINE_MM && off < ON_LINE_MM && on > -ON_LINE_MM
         && on < size + ON_LINE_MM && fabs (turn) < SAME_TURN_RAD;
}

/* Whether the text stands in this line, which may be an arc of many chords. */
static gboolean
is_own (const SwFigure *figure, const SwItem *text, const SwPaperPoint ink[4],
        const SwItem *line)
{
  const SwPaperPoint *p = sw_figure_item_points (figure, line);

  if (line->kind != SW_ITEM_LINE || line->role != SW_ROLE_DIMENSION
      || !g_str_equal (line->object, text->object))
    return FALSE;
  for (guint i = 0; i + 1 < line->n_points; i++)
    if (interrupts (text, ink, p[i], p[i + 1]))
      return TRUE;
  return FALSE;
}

static void
check_line (Clashes *clashes, const SwItem *text, const SwPaperPoint ink[4],
            const SwItem *line)
{
  const SwPaperPoint *p = sw_figure_item_points (clashes->figure, line);
  guint n = line->kind == SW_ITEM_AREA ? line->n_points : line->n_points - 1;

  if (is_own (clashes->figure, text, ink, line))
    return;
  for (guint i = 0; i < n; i++)
    {
      SwPaperPoint a = p[i], b = p[(i + 1) % line->n_points], strip[4];

      if (hypot (b.x_mm - a.x_mm, b.y_mm - a.y_mm) < LEAST_LINE_MM)
        continue;
      strip_corners (a, b, strip);
      if (corners_apart (ink, strip))
        continue;
      add (clashes, text, line_name (line->role), line->object);
      return;
    }
}

static void
check_handle (Clashes *clashes, const SwItem *text, const SwPaperPoint ink[4],
              const SwItem *handle)
{
  const SwPaperPoint *p = sw_figure_item_points (clashes->figure, handle);
  double r = p[1].x_mm;
  const SwPaperPoint box[4] = { { p->x_mm - r, p->y_mm - r },
                                { p->x_mm + r, p->y_mm - r },
                                { p->x_mm + r, p->y_mm + r },
                                { p->x_mm - r, p->y_mm + r } };

  if (!corners_apart (ink, box))
    add (clashes, text, "the handle", handle->object);
}

static void
check_text (Clashes *clashes, guint index)
{
  const SwItem *text = item_at (clashes->figure, index);
  SwPaperPoint ink[4], other_ink[4];

  text_corners (clashes->figure, text, clashes->measure, ink);
  for (guint i = 0; i < clashes->figure->items->len; i++)
    {
      const SwItem *item = item_at (clashes->figure, i);

      if (item->kind == SW_ITEM_CIRCLE && item->role == SW_ROLE_HANDLE)
        check_handle (clashes, text, ink, item);
      else if (item->kind == SW_ITEM_LINE
               || (item->kind == SW_ITEM_AREA && item->role != SW_ROLE_GROUND))
        {
          if (line_name (item->role) != NULL)
            check_line (clashes, text, ink, item);
        }
      else if (item->kind == SW_ITEM_TEXT && i > index)
        {
          text_corners (clashes->figure, item, clashes->measure, other_ink);
          if (!corners_apart (ink, other_ink))
            add (clashes, text, "the text", item->text);
        }
    }
}

GPtrArray *
figure_clashes (const SwFigure *figure, const SwTextMeasure *measure)
{
  Clashes clashes = { figure, measure, g_ptr_array_new_with_free_func (g_free) };

  for (guint i = 0; i < figure->items->len; i++)
    if (item_at (figure, i)->kind == SW_ITEM_TEXT)
      check_text (&clashes, i);
  return clashes.found;
}

void
assert_readable (const SwFigure *figure, const SwTextMeasure *measure, const char *what)
{
  g_autoptr (GPtrArray) clashes = figure_clashes (figure, measure);

  for (guint i = 0; i < clashes->len; i++)
    g_printerr ("%s: %s\n", what, (const char *) clashes->pdata[i]);
  if (clashes->len > 0)
    g_error ("%s: %u texts cannot be read", what, clashes->len);
}
