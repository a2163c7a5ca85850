/* SPDX-License-Identifier: MIT */
#undef G_DISABLE_ASSERT
#include "fixture.h"
#include <slopewright/figure/laying-view.h>
#include <string.h>

#define WIDTH_MM 320.0
#define HEIGHT_MM 180.0

typedef struct
{
  Fixture job;
  SwLayingSequence *sequence;
  SwView view;
} Work;

static void
set_up (Work *w, SlopeKind kind)
{
  fixture_set_up (&w->job, kind, SW_TOE_TRENCH, SW_UNITS_METRIC,
                  g_getenv ("SW_DRAWING_TEXTS"));
  w->job.draw.on_screen = TRUE;
  w->sequence = sw_laying_sequence_new (w->job.result->layout);
  w->view = sw_view_fit (sw_laying_view_box (w->job.result, w->sequence, 0, FALSE),
                         WIDTH_MM, HEIGHT_MM, 25.0, FALSE, NULL);
}

static void
tear_down (Work *w)
{
  sw_laying_sequence_free (w->sequence);
  fixture_tear_down (&w->job);
}

static SwFigure *
draw_at (const Work *w, guint step)
{
  return sw_draw_laying_view (w->job.result, w->sequence, step, &w->view, &w->job.draw);
}

static guint
count_items (const SwFigure *figure, SwItemKind kind, SwRole role)
{
  guint count = 0;

  for (guint i = 0; i < figure->items->len; i++)
    {
      const SwItem *item = &g_array_index (figure->items, SwItem, i);

      count += item->kind == kind && item->role == role;
    }
  return count;
}

/* Runs that lie there. Their first area is the blanket; further ones are the ground of their
 * labels. */
static guint
count_runs (const SwFigure *figure)
{
  g_autoptr (GHashTable) seen = g_hash_table_new (g_str_hash, g_str_equal);

  for (guint i = 0; i < figure->items->len; i++)
    {
      const SwItem *item = &g_array_index (figure->items, SwItem, i);

      if (item->kind == SW_ITEM_AREA && item->role == SW_ROLE_RUN)
        g_hash_table_add (seen, (gpointer) item->object);
    }
  return g_hash_table_size (seen);
}

/* The areas of a role, of each run the first, point by point. (transfer full) */
static char *
areas_of (const SwFigure *figure, SwRole role)
{
  g_autoptr (GString) made = g_string_new (NULL);
  g_autoptr (GHashTable) seen = g_hash_table_new (g_str_hash, g_str_equal);

  for (guint i = 0; i < figure->items->len; i++)
    {
      const SwItem *item = &g_array_index (figure->items, SwItem, i);
      const SwPaperPoint *points = sw_figure_item_points (figure, item);

      if (item->kind != SW_ITEM_AREA || item->role != role
          || (!g_hash_table_add (seen, (gpointer) item->object) && role == SW_ROLE_RUN))
        continue;
      g_string_append_printf (made, "%s:", item->object);
      for (guint k = 0; k < item->n_points; k++)
        g_string_append_printf (made, " %.3f %.3f", points[k].x_mm, points[k].y_mm);
      g_string_append_c (made, '\n');
    }
  return g_strdup (made->str);
}

/* When all is done, the face lies there as the pack draws it. */
static void
test_ends_as_the_face_view (gconstpointer data)
{
  static const SwRole roles[] = { SW_ROLE_RUN,    SW_ROLE_LAP,  SW_ROLE_JOINT,
                                  SW_ROLE_TRENCH, SW_ROLE_SLOT, SW_ROLE_OBSTACLE,
                                  SW_ROLE_COLLAR };
  Work w;
  g_autoptr (SwFigure) done = NULL;
  g_autoptr (SwFigure) whole = NULL;

  set_up (&w, (SlopeKind) GPOINTER_TO_INT (data));
  done = draw_at (&w, w.sequence->n_steps - 1);
  whole = sw_draw_face_view (w.job.result, 0, &w.view, &w.job.draw);
  for (gsize i = 0; i < G_N_ELEMENTS (roles); i++)
    {
      g_autofree char *made = areas_of (done, roles[i]);
      g_autofree char *wanted = areas_of (whole, roles[i]);

      if (roles[i] == SW_ROLE_TRENCH || roles[i] == SW_ROLE_SLOT)
        g_assert_cmpuint (count_items (done, SW_ITEM_AREA, roles[i]), ==,
                          count_items (whole, SW_ITEM_AREA, roles[i]));
      else
        g_assert_cmpstr (made, ==, wanted);
    }
  tear_down (&w);
}

/* Ground is only ever covered, never laid bare; nothing lies there before its turn, and
 * every step but the last look shows something new. */
static void
test_grows (gconstpointer data)
{
  Work w;
  guint runs = 0;

  set_up (&w, (SlopeKind) GPOINTER_TO_INT (data));
  for (guint i = 0; i < w.sequence->n_steps; i++)
    {
      const SwLayingStep *step = &w.sequence->steps[i];
      g_autoptr (SwFigure) figure = draw_at (&w, i);
      guint now = count_runs (figure), begun = 0;
      guint fresh = count_items (figure, SW_ITEM_AREA, SW_ROLE_NEW)
                    + count_items (figure, SW_ITEM_AREA, SW_ROLE_NEW_EDGE);

      for (guint r = 0; r < w.job.result->layout->faces[0].n_runs; r++)
        begun += w.sequence->faces[0].runs[r].first <= i;
      g_assert_cmpuint (now, >=, runs);
      g_assert_cmpuint (now, ==, begun);
      if (step->act != SW_LAYING_INSPECT)
        g_assert_cmpuint (fresh, >, 0);
      if (step->n_pins > 0)
        g_assert_cmpuint (count_items (figure, SW_ITEM_CIRCLE, SW_ROLE_NEW_PIN), >, 0);
      runs = now;
    }
  tear_down (&w);
}

/* A close view lies within reach of the step, and shows each pin of the trench apart. */
static void
test_close (void)
{
  Work w;

  set_up (&w, SLOPE_CUTTING);
  for (guint i = 0; i < w.sequence->n_steps; i++)
    {
      SwBox whole = sw_laying_view_box (w.job.result, w.sequence, i, FALSE);
      SwBox close = sw_laying_view_box (w.job.result, w.sequence, i, TRUE);

      if (w.sequence->steps[i].run != SW_LAYING_NONE)
        g_assert_true (sw_laying_has_close_view (w.sequence, i));
      g_assert_cmpfloat (close.x1_m - close.x0_m, <=, whole.x1_m - whole.x0_m);
      g_assert_cmpfloat (close.x1_m, >, whole.x0_m);
      g_assert_cmpfloat (close.x0_m, <, whole.x1_m);
      g_assert_cmpfloat (close.y1_m, >, whole.y0_m);
      g_assert_cmpfloat (close.y0_m, <, whole.y1_m);
    }
  tear_down (&w);
}

int
main (int argc, char *argv[])
{
  static const struct
  {
    const char *name;
    SlopeKind kind;
  } slopes[] = {
    { "cutting", SLOPE_CUTTING }, { "wide", SLOPE_WIDE },   { "l", SLOPE_L },
    { "tall", SLOPE_TALL },       { "nose", SLOPE_NOSE },   { "bowl", SLOPE_BOWL },
    { "heap", SLOPE_HEAP },       { "ruled", SLOPE_RULED }, { "site", SLOPE_SITE },
    { "sand", SLOPE_SAND }
  };

  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/figure/laying-view/close", test_close);
  for (gsize i = 0; i < G_N_ELEMENTS (slopes); i++)
    {
      g_autofree char *grows =
          g_strconcat ("/figure/laying-view/grows/", slopes[i].name, NULL);
      g_autofree char *ends = g_strconcat ("/figure/laying-view/ends-as-the-face-view/",
                                           slopes[i].name, NULL);

      g_test_add_data_func (grows, GINT_TO_POINTER (slopes[i].kind), test_grows);
      g_test_add_data_func (ends, GINT_TO_POINTER (slopes[i].kind),
                            test_ends_as_the_face_view);
    }
  return g_test_run ();
}
