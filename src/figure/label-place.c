/* SPDX-License-Identifier: MIT */
#include "label-place.h"
#include "drafting.h"
#include "label-span.h"
#include <math.h>

/* A label so near says what it speaks of by its place, too. */
#define NEAR_MM 16.0

/* Height of the ink over the em: from a descender to a capital's top. */
#define INK_RATIO 1.0

/* Shorter than this nothing is measured. */
#define LEAST_SPAN_MM 0.01

/* How far the base line lies below the middle of the ink. */
#define BASE_RATIO 0.35

typedef struct
{
  SwLabelWish wish; /* owns its text; spots are in the labels' array */
  guint first_spot;
  gboolean is_span, is_cramped; /* no room for the text between the arrows */
  SwLabelSpan span;
  SwLabelBox box;
  gboolean placed, led; /* with a leader */
} Asked;

/* A line that texts keep off where they have another place. */
typedef struct
{
  SwLabelBox box;
  guint owner; /* which of those asked draws it; NOBODY: the drawing */
} Line;

#define NOBODY G_MAXUINT

/* How much a label puts up with; those that find no place try again with more. */
typedef enum
{
  CLEAR_OF_ALL,
  OVER_LINES,   /* on a line that may be there */
  BESIDE_LEADER /* with a leader across a text, or near enough without one */
} Patience;

struct SwLabels
{
  double width_mm, height_mm;
  const SwTextMeasure *measure;
  GArray *taken; /* (element-type SwLabelBox) */
  GArray *texts; /* (element-type SwLabelBox): those of @taken that no leader crosses */
  GArray *lines; /* (element-type Line) */
  GArray *spots; /* (element-type SwLabelSpot) */
  GArray *asked; /* (element-type Asked) */
};

static void
clear_asked (gpointer data)
{
  g_free ((char *) ((Asked *) data)->wish.text);
  g_free ((char *) ((Asked *) data)->wish.shorter);
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
  labels->lines = g_array_new (FALSE, FALSE, sizeof (Line));
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
  g_array_unref (labels->lines);
  g_array_unref (labels->spots);
  g_array_unref (labels->asked);
  g_free (labels);
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

static void
keep_off (SwLabels *labels, SwLabelBox box, guint owner)
{
  Line line = { box, owner };

  g_array_append_val (labels->lines, line);
}

static void
keep_off_path (SwLabels *labels, const SwPaperPoint *points, guint count, guint owner)
{
  for (guint i = 0; i + 1 < count; i++)
    keep_off (labels, sw_label_strip (points[i], points[i + 1], SW_LABEL_LINE_MM), owner);
}

void
sw_labels_keep_off (SwLabels *labels, const SwPaperPoint *points, guint count)
{
  keep_off_path (labels, points, count, NOBODY);
}

void
sw_labels_keep_others_off (SwLabels *labels, const SwPaperPoint *points, guint count)
{
  g_return_if_fail (labels->asked->len > 0);
  keep_off_path (labels, points, count, labels->asked->len - 1);
}

void
sw_labels_wish (SwLabels *labels, const SwLabelWish *wish)
{
  Asked asked = { .wish = *wish, .first_spot = labels->spots->len };

  asked.wish.text = g_strdup (wish->text);
  asked.wish.shorter = g_strdup (wish->shorter);
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

static SwLabelBox
text_box (const SwLabels *labels, const SwLabelWish *wish, SwLabelSpot spot)
{
  return (SwLabelBox){ spot.x_mm, spot.y_mm,
                       text_width_mm (labels, wish) / 2.0 + SW_LABEL_PAD_MM,
                       wish->size_mm * INK_RATIO / 2.0 + SW_LABEL_PAD_MM / 2.0,
                       spot.turn_rad };
}

/* Lines of a dimension and its text's best place: others keep off them from the start. */
static void
foresee_span (SwLabels *labels, const Asked *asked, guint owner)
{
  SwLabelSpot best = g_array_index (labels->spots, SwLabelSpot, asked->first_spot);
  SwLabelBox lines[SW_SPAN_LINES];

  if (!sw_span_is_inside (&asked->span, labels->width_mm, labels->height_mm))
    return;
  sw_span_lines (&asked->span, lines);
  for (guint i = 0; i < SW_SPAN_LINES; i++)
    keep_off (labels, lines[i], owner);
  keep_off (labels, text_box (labels, &asked->wish, best), owner);
}

void
sw_labels_dimension (SwLabels *labels, SwLabelRank rank, SwLabelSpan span, double size_mm,
                     const char *object, const char *text)
{
  SwLabelSpot spots[SW_SPAN_SPOTS];
  SwLabelWish wish = { .rank = rank,
                       .role = SW_ROLE_TEXT,
                       .style = SW_LABEL_KNOCK_OUT,
                       .size_mm = size_mm,
                       .object = object,
                       .text = text,
                       .spots = spots };
  double width = text_width_mm (labels, &wish);
  Asked *asked;

  if (sw_span_length_mm (&span) < LEAST_SPAN_MM)
    return;
  wish.n_spots = sw_span_spots (&span, width, size_mm, spots);
  sw_labels_wish (labels, &wish);
  asked = &g_array_index (labels->asked, Asked, labels->asked->len - 1);
  asked->is_span = TRUE;
  asked->is_cramped = sw_span_is_cramped (&span, width);
  asked->span = span;
  foresee_span (labels, asked, labels->asked->len - 1);
}

static gboolean
meets_none (SwLabelBox box, const GArray *boxes)
{
  for (guint i = 0; i < boxes->len; i++)
    if (sw_label_boxes_meet (box, g_array_index (boxes, SwLabelBox, i)))
      return FALSE;
  return TRUE;
}

static gboolean
is_off_lines (const SwLabels *labels, SwLabelBox box, guint owner)
{
  for (guint i = 0; i < labels->lines->len; i++)
    {
      const Line *line = &g_array_index (labels->lines, Line, i);

      if (line->owner != owner && sw_label_boxes_meet (box, line->box))
        return FALSE;
    }
  return TRUE;
}

/* The strip of paper that a label's leader takes. FALSE: it has none. */
static gboolean
leader_box (const SwLabelWish *wish, guint spot, SwLabelBox box, SwLabelBox *leader)
{
  SwPaperPoint end;

  if (!(wish->style & SW_LABEL_LEADER) || spot < wish->n_beside
      || !sw_label_leader_end (box, wish->target, &end))
    return FALSE;
  *leader = sw_label_strip (wish->target, end, SW_LABEL_LINE_MM / 2.0);
  return TRUE;
}

static void
take_spot (SwLabels *labels, Asked *asked, SwLabelBox box, const SwLabelBox *leader)
{
  asked->box = box;
  asked->placed = TRUE;
  asked->led = leader != NULL;
  sw_labels_reserve (labels, box);
  g_array_append_val (labels->texts, box);
  if (leader != NULL)
    sw_labels_reserve (labels, *leader);
  if (asked->is_span)
    {
      SwLabelBox lines[SW_SPAN_LINES];

      sw_span_lines (&asked->span, lines);
      g_array_append_vals (labels->taken, lines, SW_SPAN_LINES);
    }
}

/* A dimension whose lines would leave the figure or cross a text is not drawn. */
static gboolean
can_draw_span (const SwLabels *labels, const SwLabelSpan *span)
{
  SwLabelBox lines[SW_SPAN_LINES];

  sw_span_lines (span, lines);
  for (guint i = 0; i < SW_SPAN_LINES; i++)
    if (!meets_none (lines[i], labels->texts))
      return FALSE;
  return sw_span_is_inside (span, labels->width_mm, labels->height_mm);
}

static gboolean
is_near (SwLabelBox box, SwPaperPoint target)
{
  return hypot (box.x_mm - target.x_mm, box.y_mm - target.y_mm) < NEAR_MM;
}

/* A leader to something out of view would say nothing. */
static gboolean
is_in_view (const SwLabels *labels, const SwLabelWish *wish, guint spot)
{
  SwLabelBox target = { wish->target.x_mm, wish->target.y_mm, 0.0, 0.0, 0.0 };

  return !(wish->style & SW_LABEL_LEADER) || spot < wish->n_beside
         || sw_label_box_is_inside (target, labels->width_mm, labels->height_mm);
}

static gboolean
try_spot (SwLabels *labels, Asked *asked, guint spot, Patience patience)
{
  SwLabelBox leader,
      box =
          text_box (labels, &asked->wish,
                    g_array_index (labels->spots, SwLabelSpot, asked->first_spot + spot));
  guint owner = (guint) (asked - (Asked *) (gpointer) labels->asked->data);
  gboolean led = leader_box (&asked->wish, spot, box, &leader);

  if (!sw_label_box_is_inside (box, labels->width_mm, labels->height_mm)
      || !is_in_view (labels, &asked->wish, spot) || !meets_none (box, labels->taken)
      || (patience == CLEAR_OF_ALL && !is_off_lines (labels, box, owner))
      || (patience < BESIDE_LEADER && led && !meets_none (leader, labels->texts)))
    return FALSE;
  if (patience == BESIDE_LEADER && is_near (box, asked->wish.target))
    led = FALSE;
  take_spot (labels, asked, box, led ? &leader : NULL);
  return TRUE;
}

static gboolean
try_spots (SwLabels *labels, Asked *asked, Patience patience)
{
  for (guint i = 0; i < asked->wish.n_spots; i++)
    if (try_spot (labels, asked, i, patience))
      return TRUE;
  return FALSE;
}

static void
shorten (Asked *asked)
{
  const char *text = asked->wish.text;

  asked->wish.text = asked->wish.shorter;
  asked->wish.shorter = text;
}

static gboolean
try_shorter (SwLabels *labels, Asked *asked)
{
  if (asked->wish.shorter == NULL)
    return FALSE;
  shorten (asked);
  if (try_spots (labels, asked, CLEAR_OF_ALL))
    return TRUE;
  shorten (asked);
  return FALSE;
}

static void
choose_spot (SwLabels *labels, Asked *asked)
{
  Patience most = asked->wish.style & SW_LABEL_OFF_LINES ? CLEAR_OF_ALL : BESIDE_LEADER;

  if (asked->is_span && !can_draw_span (labels, &asked->span))
    return;
  if (try_spots (labels, asked, CLEAR_OF_ALL) || try_shorter (labels, asked))
    return;
  for (Patience patience = OVER_LINES; patience <= most; patience++)
    if (try_spots (labels, asked, patience))
      return;
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

  if (!sw_label_leader_end (asked->box, from, &to))
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

static void
draw_span (SwFigure *figure, const Asked *asked)
{
  SwPaperPoint from, to;

  sw_draft_dimension (figure, &asked->span,
                      2.0 * asked->box.half_width_mm + 2.0 * SW_ARROW_MM);
  if (sw_span_tail (&asked->span, asked->box, &from, &to))
    sw_figure_segment (figure, SW_ROLE_DIMENSION, from.x_mm, from.y_mm, to.x_mm, to.y_mm);
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
        draw_span (figure, asked);
      if (layer == 0 && asked->led)
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
      choose_spot (labels, order->pdata[i]);
      if (!((Asked *) order->pdata[i])->placed)
        left_out++;
    }
  for (guint layer = 0; layer < 3; layer++)
    draw_layer (order, figure, layer);
  g_array_set_size (labels->lines, 0);
  g_array_set_size (labels->asked, 0);
  g_array_set_size (labels->spots, 0);
  return left_out;
}
