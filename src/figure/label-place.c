/* SPDX-License-Identifier: MIT */
#include "label-place.h"
#include "drafting.h"
#include <math.h>

#define HAIR_MM 0.01

/* A line counts as upright within about 17 degrees. */
#define UPRIGHT_COSINE 0.3

/* Air round a text, and the gap between a dimension's text and its arrows. */
#define PAD_MM 0.5

/* Half the strip along a line that texts keep off. */
#define LINE_MM 0.3

/* A label nearer than this to what it speaks of needs no line to it. */
#define SHORT_LEADER_MM 1.0

/* A label so near says what it speaks of by its place, too. */
#define NEAR_MM 16.0

/* Height of the ink over the em: from a descender to a capital's top. */
#define INK_RATIO 1.0

/* How far the base line lies below the middle of the ink. */
#define BASE_RATIO 0.35

typedef struct
{
  SwLabelWish wish; /* owns its text; spots are in the labels' array */
  guint first_spot;
  gboolean is_span, is_cramped; /* no room for the text between the arrows */
  SwLabelSpan span;
  SwLabelBox box;
  gboolean placed;
} Asked;

struct SwLabels
{
  double width_mm, height_mm;
  const SwTextMeasure *measure;
  GArray *taken; /* (element-type SwLabelBox) */
  GArray *texts; /* (element-type SwLabelBox): those of @taken that no leader crosses */
  GArray *spots; /* (element-type SwLabelSpot) */
  GArray *asked; /* (element-type Asked) */
};

static void
clear_asked (gpointer data)
{
  g_free ((char *) ((Asked *) data)->wish.text);
}

SwLabels *
sw_labels_new (double width_mm, double height_mm, const SwTextMeasure *measure)
{
  SwLabels *labels = g_new0 (SwLabels, 1);

  labels->width_mm = width_mm;
  labels->height_mm = height_mm;
  labels->measure = measure;
  labels->taken = g_array_new (FALSE, FALSE, sizeof (SwLabelBox));
  labels->texts = g_array_new (FALSE, FALSE, sizeof (SwLabelBox));
  labels->spots = g_array_new (FALSE, FALSE, sizeof (SwLabelSpot));
  labels->asked = g_array_new (FALSE, FALSE, sizeof (Asked));
  g_array_set_clear_func (labels->asked, clear_asked);
  return labels;
}

void
sw_labels_free (SwLabels *labels)
{
  if (labels == NULL)
    return;
  g_array_unref (labels->taken);
  g_array_unref (labels->texts);
  g_array_unref (labels->spots);
  g_array_unref (labels->asked);
  g_free (labels);
}

/* Half the shadow that @box throws on the axis (@x, @y). */
static double
half_shadow (SwLabelBox box, double x, double y)
{
  double along = fabs (x * cos (box.turn_rad) - y * sin (box.turn_rad));
  double across = fabs (x * sin (box.turn_rad) + y * cos (box.turn_rad));

  return box.half_width_mm * along + box.half_height_mm * across;
}

/* Separating axis theorem: two convex boxes are apart if some side's direction shows a gap. */
gboolean
sw_label_boxes_meet (SwLabelBox a, SwLabelBox b)
{
  const double turns[4] = { a.turn_rad, a.turn_rad + G_PI_2, b.turn_rad,
                            b.turn_rad + G_PI_2 };

  for (guint i = 0; i < G_N_ELEMENTS (turns); i++)
    {
      double x = cos (turns[i]), y = -sin (turns[i]);
      double apart = fabs ((b.x_mm - a.x_mm) * x + (b.y_mm - a.y_mm) * y);

      if (apart > half_shadow (a, x, y) + half_shadow (b, x, y) - HAIR_MM)
        return FALSE;
    }
  return TRUE;
}

void
sw_labels_reserve (SwLabels *labels, SwLabelBox box)
{
  g_array_append_val (labels->taken, box);
}

void
sw_labels_reserve_rect (SwLabels *labels, double x_mm, double y_mm, double width_mm,
                        double height_mm)
{
  sw_labels_reserve (labels, (SwLabelBox){ x_mm + width_mm / 2.0, y_mm + height_mm / 2.0,
                                           width_mm / 2.0, height_mm / 2.0, 0.0 });
}

void
sw_labels_wish (SwLabels *labels, const SwLabelWish *wish)
{
  Asked asked = { .wish = *wish, .first_spot = labels->spots->len };

  asked.wish.text = g_strdup (wish->text);
  g_array_append_vals (labels->spots, wish->spots, wish->n_spots);
  g_array_append_val (labels->asked, asked);
}

static double
text_width_mm (const SwLabels *labels, const SwLabelWish *wish)
{
  SwTypeface typeface = wish->style & SW_LABEL_BOLD ? SW_FACE_BOLD : SW_FACE_REGULAR;

  return labels->measure->width_mm (typeface, wish->size_mm, wish->text,
                                    labels->measure->data);
}

double
sw_label_reading_turn_rad (double turn_rad)
{
  while (turn_rad > G_PI_2 + 1e-6)
    turn_rad -= G_PI;
  while (turn_rad <= -G_PI_2 + 1e-6)
    turn_rad += G_PI;
  return turn_rad;
}

double
sw_label_shadow_mm (SwLabelBox box, double turn_rad)
{
  return half_shadow (box, cos (turn_rad), -sin (turn_rad));
}

void
sw_labels_dimension (SwLabels *labels, SwLabelRank rank, SwLabelSpan span, double size_mm,
                     const char *object, const char *text)
{
  double dx = span.x1_mm - span.x0_mm, dy = span.y1_mm - span.y0_mm;
  double length = hypot (dx, dy);
  SwLabelWish wish = { .rank = rank,
                       .role = SW_ROLE_TEXT,
                       .style = SW_LABEL_KNOCK_OUT,
                       .size_mm = size_mm,
                       .object = object,
                       .text = text };
  double width, turn, x, y, ux, uy, beside;
  SwLabelSpot spots[5];
  Asked *asked;
  guint n = 0;

  if (length < HAIR_MM)
    return;
  ux = dx / length;
  uy = dy / length;
  x = (span.x0_mm + span.x1_mm) / 2.0 + uy * span.offset_mm;
  y = (span.y0_mm + span.y1_mm) / 2.0 - ux * span.offset_mm;
  width = text_width_mm (labels, &wish);
  turn = sw_label_reading_turn_rad (atan2 (-dy, dx));
  beside = (span.offset_mm < 0.0 ? -1.0 : 1.0) * size_mm * 1.15;
  if (width + 2.0 * (PAD_MM + SW_ARROW_MM) <= length)
    spots[n++] = (SwLabelSpot){ x, y, turn };
  else if (width <= length * 1.6)
    spots[n++] = (SwLabelSpot){ x + uy * beside, y - ux * beside, turn };
  /* Upright beside a short and nearly vertical one, on the side away from the thing. */
  if (fabs (ux) < UPRIGHT_COSINE && width + 2.0 * (PAD_MM + SW_ARROW_MM) > length)
    {
      beside = (span.offset_mm < 0.0 ? -1.0 : 1.0) * (width / 2.0 + 2.0 * PAD_MM);
      spots[n++] = (SwLabelSpot){ x + uy * beside, y - ux * beside, 0.0 };
    }
  /* Beyond the ends, where the outside arrows are. */
  beside = length / 2.0 + width / 2.0 + 2.0 * SW_ARROW_MM + 2.0 * PAD_MM;
  spots[n++] = (SwLabelSpot){ x + ux * beside, y + uy * beside, turn };
  spots[n++] = (SwLabelSpot){ x - ux * beside, y - uy * beside, turn };
  wish.spots = spots;
  wish.n_spots = n;
  sw_labels_wish (labels, &wish);
  asked = &g_array_index (labels->asked, Asked, labels->asked->len - 1);
  asked->is_span = TRUE;
  asked->is_cramped = width + 2.0 * (PAD_MM + SW_ARROW_MM) > length;
  asked->span = span;
}

static gboolean
is_inside (const SwLabels *labels, SwLabelBox box)
{
  double x = half_shadow (box, 1.0, 0.0), y = half_shadow (box, 0.0, 1.0);

  return box.x_mm - x >= -HAIR_MM && box.x_mm + x <= labels->width_mm + HAIR_MM
         && box.y_mm - y >= -HAIR_MM && box.y_mm + y <= labels->height_mm + HAIR_MM;
}

static gboolean
meets_none (SwLabelBox box, const GArray *boxes)
{
  for (guint i = 0; i < boxes->len; i++)
    if (sw_label_boxes_meet (box, g_array_index (boxes, SwLabelBox, i)))
      return FALSE;
  return TRUE;
}

/* From @target to the nearest point of the box's middle line. FALSE: too near for a line. */
static gboolean
leader_end (SwLabelBox box, SwPaperPoint target, SwPaperPoint *end)
{
  double c = cos (box.turn_rad), s = sin (box.turn_rad);
  double u = (target.x_mm - box.x_mm) * c - (target.y_mm - box.y_mm) * s;
  double v = (target.x_mm - box.x_mm) * s + (target.y_mm - box.y_mm) * c;
  double near_u = CLAMP (u, -box.half_width_mm, box.half_width_mm);
  double near_v = CLAMP (v, -box.half_height_mm, box.half_height_mm);

  if (hypot (u - near_u, v - near_v) < SHORT_LEADER_MM)
    return FALSE;
  if (fabs (u) > box.half_width_mm)
    near_v = 0.0;
  *end = (SwPaperPoint){ box.x_mm + near_u * c + near_v * s,
                         box.y_mm - near_u * s + near_v * c };
  return TRUE;
}

/* The strip of paper that a label's leader takes. FALSE: it has none. */
static gboolean
leader_box (const SwLabelWish *wish, SwLabelBox box, SwLabelBox *leader)
{
  SwPaperPoint end;
  double dx, dy;

  if (!(wish->style & SW_LABEL_LEADER) || !leader_end (box, wish->target, &end))
    return FALSE;
  dx = end.x_mm - wish->target.x_mm;
  dy = end.y_mm - wish->target.y_mm;
  *leader = (SwLabelBox){ (end.x_mm + wish->target.x_mm) / 2.0,
                          (end.y_mm + wish->target.y_mm) / 2.0, hypot (dx, dy) / 2.0,
                          LINE_MM / 2.0, atan2 (-dy, dx) };
  return TRUE;
}

/* A dimension whose lines would leave the figure is not drawn. */
static gboolean
span_is_inside (const SwLabels *labels, const SwLabelSpan *span)
{
  SwLabelBox ends = { 0 };
  double dx = span->x1_mm - span->x0_mm, dy = span->y1_mm - span->y0_mm;
  double length = hypot (dx, dy);

  for (guint i = 0; i < 2; i++)
    {
      ends.x_mm = (i ? span->x1_mm : span->x0_mm) + dy / length * span->offset_mm;
      ends.y_mm = (i ? span->y1_mm : span->y0_mm) - dx / length * span->offset_mm;
      if (!is_inside (labels, ends))
        return FALSE;
    }
  return TRUE;
}

/* Lines of a dimension: later texts keep off them. */
static void
reserve_span (SwLabels *labels, const SwLabelSpan *span)
{
  double dx = span->x1_mm - span->x0_mm, dy = span->y1_mm - span->y0_mm;
  double length = hypot (dx, dy), nx = dy / length, ny = -dx / length;
  double half = fabs (span->offset_mm) / 2.0, turn = atan2 (-dy, dx);

  sw_labels_reserve (
      labels, (SwLabelBox){ (span->x0_mm + span->x1_mm) / 2.0 + nx * span->offset_mm,
                            (span->y0_mm + span->y1_mm) / 2.0 + ny * span->offset_mm,
                            length / 2.0, LINE_MM, turn });
  for (guint end = 0; end < 2; end++)
    sw_labels_reserve (
        labels,
        (SwLabelBox){ (end ? span->x1_mm : span->x0_mm) + nx * span->offset_mm / 2.0,
                      (end ? span->y1_mm : span->y0_mm) + ny * span->offset_mm / 2.0,
                      LINE_MM, half, turn });
}

static void
take_spot (SwLabels *labels, Asked *asked, SwLabelBox box)
{
  SwLabelBox leader;

  asked->box = box;
  asked->placed = TRUE;
  sw_labels_reserve (labels, box);
  g_array_append_val (labels->texts, box);
  if (leader_box (&asked->wish, box, &leader))
    sw_labels_reserve (labels, leader);
  if (asked->is_span)
    reserve_span (labels, &asked->span);
}

/* @clear: only where the leader crosses no text. Else a label that stands near what it speaks
 * of goes without its leader. */
static void
choose_spot (SwLabels *labels, Asked *asked, gboolean clear)
{
  double width = text_width_mm (labels, &asked->wish);

  if (asked->is_span && !span_is_inside (labels, &asked->span))
    return;
  for (guint i = 0; i < asked->wish.n_spots && !asked->placed; i++)
    {
      SwLabelSpot spot =
          g_array_index (labels->spots, SwLabelSpot, asked->first_spot + i);
      SwLabelBox box = { spot.x_mm, spot.y_mm, width / 2.0 + PAD_MM,
                         asked->wish.size_mm * INK_RATIO / 2.0 + PAD_MM / 2.0,
                         spot.turn_rad };
      SwLabelBox leader;

      if (is_inside (labels, box) && meets_none (box, labels->taken)
          && !(clear && leader_box (&asked->wish, box, &leader)
               && !meets_none (leader, labels->texts)))
        {
          if (!clear
              && hypot (box.x_mm - asked->wish.target.x_mm,
                        box.y_mm - asked->wish.target.y_mm)
                     < NEAR_MM)
            asked->wish.style &= ~(guint) SW_LABEL_LEADER;
          take_spot (labels, asked, box);
        }
    }
}

static void
draw_knock_out (SwFigure *figure, SwRole ground, SwLabelBox box)
{
  double c = cos (box.turn_rad), s = sin (box.turn_rad);
  static const int corners[4][2] = { { -1, -1 }, { 1, -1 }, { 1, 1 }, { -1, 1 } };
  SwPaperPoint points[4];

  for (guint i = 0; i < 4; i++)
    {
      double u = corners[i][0] * box.half_width_mm;
      double v = corners[i][1] * box.half_height_mm;

      points[i] = (SwPaperPoint){ box.x_mm + u * c + v * s, box.y_mm - u * s + v * c };
    }
  sw_figure_area (figure, ground == SW_ROLE_TEXT ? SW_ROLE_WHITE : ground, points, 4);
}

static void
draw_leader (SwFigure *figure, const Asked *asked)
{
  SwPaperPoint from = asked->wish.target, to;

  if (!leader_end (asked->box, from, &to))
    return;
  sw_figure_segment (figure, SW_ROLE_DIMENSION, from.x_mm, from.y_mm, to.x_mm, to.y_mm);
  sw_figure_circle (figure, SW_ROLE_DIMENSION, from.x_mm, from.y_mm, 0.25);
}

static void
draw_text (SwFigure *figure, const Asked *asked)
{
  SwLabelBox box = asked->box;
  double below = BASE_RATIO * asked->wish.size_mm;

  sw_figure_text (figure, asked->wish.role, box.x_mm + below * sin (box.turn_rad),
                  box.y_mm + below * cos (box.turn_rad), asked->wish.size_mm,
                  SW_ALIGN_CENTRE,
                  asked->wish.style & SW_LABEL_BOLD ? SW_FACE_BOLD : SW_FACE_REGULAR,
                  box.turn_rad, asked->wish.text);
}

static gint
compare_rank (gconstpointer a, gconstpointer b)
{
  const Asked *x = *(Asked *const *) a, *y = *(Asked *const *) b;

  if (x->wish.rank != y->wish.rank)
    return x->wish.rank > y->wish.rank ? -1 : 1;
  if (x->is_cramped != y->is_cramped)
    return x->is_cramped ? 1 : -1;
  return x < y ? -1 : x > y;
}

static GPtrArray *
by_rank (SwLabels *labels)
{
  GPtrArray *order = g_ptr_array_new ();

  for (guint i = 0; i < labels->asked->len; i++)
    g_ptr_array_add (order, &g_array_index (labels->asked, Asked, i));
  g_ptr_array_sort (order, compare_rank);
  return order;
}

/* Lines first, then white, then text: a line that has to cross a text goes behind it. */
static void
draw_layer (const GPtrArray *order, SwFigure *figure, guint layer)
{
  for (guint i = 0; i < order->len; i++)
    {
      const Asked *asked = order->pdata[i];

      if (!asked->placed)
        continue;
      sw_figure_object (figure, asked->wish.object ? asked->wish.object : "");
      if (layer == 0 && asked->is_span)
        sw_draft_dimension (figure, &asked->span,
                            2.0 * asked->box.half_width_mm + 2.0 * SW_ARROW_MM);
      if (layer == 0 && asked->wish.style & SW_LABEL_LEADER)
        draw_leader (figure, asked);
      if (layer == 1 && asked->wish.style & SW_LABEL_KNOCK_OUT)
        draw_knock_out (figure, asked->wish.ground, asked->box);
      if (layer == 2)
        draw_text (figure, asked);
    }
}

guint
sw_labels_place (SwLabels *labels, SwFigure *figure)
{
  g_autoptr (GPtrArray) order = by_rank (labels);
  guint left_out = 0;

  for (guint i = 0; i < order->len; i++)
    {
      choose_spot (labels, order->pdata[i], TRUE);
      if (!((Asked *) order->pdata[i])->placed)
        choose_spot (labels, order->pdata[i], FALSE);
      if (!((Asked *) order->pdata[i])->placed)
        left_out++;
    }
  for (guint layer = 0; layer < 3; layer++)
    draw_layer (order, figure, layer);
  g_array_set_size (labels->asked, 0);
  g_array_set_size (labels->spots, 0);
  return left_out;
}
