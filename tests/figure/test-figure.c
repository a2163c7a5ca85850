/* SPDX-License-Identifier: MIT */
#undef G_DISABLE_ASSERT
#include <math.h>

#include <slopewright/figure/figure.h>
#include <slopewright/figure/palette.h>

static SwFigure *
small_figure (void)
{
  const SwPaperPoint triangle[] = { { 10.0, 10.0 }, { 30.0, 10.0 }, { 20.0, 25.0 } };
  SwFigure *figure = sw_figure_new (100.0, 50.0);

  figure->title = g_strdup ("Section A");
  sw_figure_clip (figure, triangle, G_N_ELEMENTS (triangle));
  sw_figure_object (figure, "A/section/1");
  sw_figure_area (figure, SW_ROLE_SOIL, triangle, G_N_ELEMENTS (triangle));
  sw_figure_unclip (figure);
  sw_figure_segment (figure, SW_ROLE_GROUND, 0.0, -0.0001, 12.3456, 40.0);
  sw_figure_object (figure, NULL);
  sw_figure_circle (figure, SW_ROLE_PIN, 5.0, 6.0, 0.75);
  sw_figure_box (figure, SW_ROLE_FRAME, 1.0, 2.0, 98.0, 46.0);
  sw_figure_text (figure, SW_ROLE_HEADING, 50.0, 45.0, 3.5, SW_ALIGN_CENTRE, SW_FACE_BOLD,
                  G_PI_2, "26.6°\nhalf");
  sw_figure_link (figure, 1.0, 2.0, 10.0, 5.0, "Page 2");
  return figure;
}

/* Golden: the text of the display list, written by hand from the calls above. */
static void
test_dump (void)
{
  g_autoptr (SwFigure) figure = small_figure ();
  g_autofree char *dump = sw_figure_dump (figure);

  g_assert_cmpstr (
      dump, ==,
      "figure 100.000 50.000 \"Section A\"\n"
      "clip 10.000,10.000 30.000,10.000 20.000,25.000\n"
      "area soil A/section/1 10.000,10.000 30.000,10.000 20.000,25.000\n"
      "unclip\n"
      "line ground A/section/1 0.000,0.000 12.346,40.000\n"
      "circle pin - 5.000,6.000 0.750,0.000\n"
      "area frame - 1.000,2.000 99.000,2.000 99.000,48.000 1.000,48.000\n"
      "text heading - 50.000,45.000 3.500 centre bold turn 1.571 \"26.6°\\nhalf\"\n"
      "link 1.000,2.000 11.000,7.000 \"Page 2\"\n");
}

/* Every coordinate moves by the shift; a radius stays. Source: translation. */
static void
test_place (void)
{
  g_autoptr (SwFigure) part = small_figure ();
  g_autoptr (SwFigure) whole = sw_figure_new (200.0, 200.0);

  sw_figure_segment (whole, SW_ROLE_GRID, 0.0, 0.0, 1.0, 1.0);
  sw_figure_place (whole, part, 7.0, -3.0);
  g_assert_cmpuint (whole->items->len, ==, part->items->len + 1);
  for (guint i = 0; i < part->items->len; i++)
    {
      const SwItem *from = &g_array_index (part->items, SwItem, i);
      const SwItem *to = &g_array_index (whole->items, SwItem, i + 1);
      const SwPaperPoint *a = sw_figure_item_points (part, from);
      const SwPaperPoint *b = sw_figure_item_points (whole, to);

      g_assert_cmpint (from->kind, ==, to->kind);
      g_assert_cmpint (from->role, ==, to->role);
      g_assert_true (from->object == to->object);
      g_assert_cmpstr (from->text, ==, to->text);
      g_assert_cmpuint (from->n_points, ==, to->n_points);
      for (guint j = 0; j < from->n_points; j++)
        {
          const gboolean is_radius = from->kind == SW_ITEM_CIRCLE && j == 1;
          g_assert_cmpfloat_with_epsilon (b[j].x_mm - a[j].x_mm, is_radius ? 0.0 : 7.0,
                                          1e-12);
          g_assert_cmpfloat_with_epsilon (b[j].y_mm - a[j].y_mm, is_radius ? 0.0 : -3.0,
                                          1e-12);
        }
    }
}

/* Freeing the part must leave the whole alone (run under the sanitizers). */
static void
test_place_copies_text (void)
{
  SwFigure *part = small_figure ();
  g_autoptr (SwFigure) whole = sw_figure_new (200.0, 200.0);
  g_autofree char *dump = NULL;

  sw_figure_place (whole, part, 0.0, 0.0);
  sw_figure_free (part);
  dump = sw_figure_dump (whole);
  g_assert_nonnull (strstr (dump, "Page 2"));
}

static void
test_role_codes_differ (void)
{
  g_autoptr (GHashTable) seen = g_hash_table_new (g_str_hash, g_str_equal);

  for (guint i = 0; i < SW_ROLE_COUNT; i++)
    {
      const char *code = sw_role_code (i);
      g_assert_nonnull (code);
      g_assert_true (g_hash_table_add (seen, (gpointer) code));
    }
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/figure/figure/dump", test_dump);
  g_test_add_func ("/figure/figure/place-shifts-points", test_place);
  g_test_add_func ("/figure/figure/place-copies-text", test_place_copies_text);
  g_test_add_func ("/figure/figure/role-codes-differ", test_role_codes_differ);
  return g_test_run ();
}
