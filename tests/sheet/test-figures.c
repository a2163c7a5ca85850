/* SPDX-License-Identifier: MIT */
#undef G_DISABLE_ASSERT
#include "boxes.h"
#include "pack-fixture.h"

/* Every drawing of every face of every example, in the sheet font and in every language:
 * nothing overlaps, nothing leaves the sheet, and what a crew looks for first is there. */

typedef SwView Fit (const SwResult *result, guint face, double width_mm, double height_mm,
                    const SwDraw *draw, double *scale);
typedef SwFigure *Draw (const SwResult *result, guint face, const SwView *view,
                        const SwDraw *draw);

static const struct
{
  const char *name;
  Fit *fit;
  Draw *draw;
  const char *wanted[5]; /* ids of texts that it must carry */
} views[] = {
  { "section", sw_section_fit, sw_draw_section, { "drawing.fall-line" } },
  { "plan",
    sw_plan_fit,
    sw_draw_plan,
    { "drawing.fall-line", "drawing.wind", "drawing.crest-line", "drawing.toe-line" } },
  { "face view",
    sw_face_view_fit,
    sw_draw_face_view,
    { "drawing.laying-order", "drawing.crest-line", "drawing.toe-line",
      "drawing.fall-line" } },
};

/* A4 and Letter on their side, A3, upright pages and a narrow column. */
static const double sizes_mm[][2] = {
  { 273.0, 186.0 }, { 255.4, 191.9 }, { 396.0, 273.0 },
  { 180.0, 240.0 }, { 180.0, 120.0 },
};

static void
check_view (const Example *example, guint face, guint v, guint s, const char *name)
{
  SwView view = views[v].fit (example->result, face, sizes_mm[s][0], sizes_mm[s][1],
                              &example->draw, NULL);
  g_autoptr (SwFigure) figure =
      views[v].draw (example->result, face, &view, &example->draw);
  g_autofree char *what =
      g_strdup_printf ("%s, face %u, %s, %.0f mm, %s", name, face, views[v].name,
                       sizes_mm[s][0], sw_texts_language (example->texts));

  assert_tidy (figure, example->draw.measure, what);
  for (guint i = 0; views[v].wanted[i] != NULL; i++)
    if (figure_text (figure, sw_texts_get (example->texts, views[v].wanted[i])) == NULL)
      g_error ("%s: no \"%s\"", what, sw_texts_get (example->texts, views[v].wanted[i]));
}

static void
check_units (Example *example, SwUnitSystem units, const char *name)
{
  example->draw.style.units = units;
  for (guint face = 0; face < example->job->faces->len; face++)
    for (guint v = 0; v < G_N_ELEMENTS (views); v++)
      for (guint s = 0; s < G_N_ELEMENTS (sizes_mm); s++)
        check_view (example, face, v, s, name);
}

static void
test_tidy (gconstpointer name)
{
  g_autoptr (Example) example = example_new (name);
  g_auto (GStrv) languages = sw_texts_languages ();

  for (guint l = 0; languages[l] != NULL; l++)
    {
      example_speak (example, languages[l]);
      check_units (example, SW_UNITS_METRIC, name);
      check_units (example, SW_UNITS_US, name);
    }
}

static gboolean
has_text_ending (const SwFigure *figure, const char *ending)
{
  for (guint i = 0; i < figure->items->len; i++)
    {
      const SwItem *item = &g_array_index (figure->items, SwItem, i);

      if (item->kind == SW_ITEM_TEXT && g_str_has_suffix (item->text, ending))
        return TRUE;
    }
  return FALSE;
}

/* The bench of the cutting falls 3 % back to the hill: its section says so, though the
 * words are longer than the bench. */
static void
test_falls_back (void)
{
  g_autoptr (Example) example = example_new ("pinfold-cutting");
  g_auto (GStrv) languages = sw_texts_languages ();

  for (guint l = 0; languages[l] != NULL; l++)
    for (guint s = 0; s < G_N_ELEMENTS (sizes_mm); s++)
      {
        SwView view = sw_section_fit (example->result, 0, sizes_mm[s][0], sizes_mm[s][1],
                                      &example->draw, NULL);
        g_autoptr (SwFigure) figure = NULL;
        g_autofree char *ending = NULL;

        example_speak (example, languages[l]);
        figure = sw_draw_section (example->result, 0, &view, &example->draw);
        ending =
            sw_texts_fill (example->texts, "drawing.falls-back", "gradient", "", NULL);
        if (!has_text_ending (figure, ending))
          g_error ("%s, %.0f mm: no \"%s\"", languages[l], sizes_mm[s][0], ending);
      }
}

static void
add_example (const char *file)
{
  g_autofree char *name = g_strndup (file, strlen (file) - strlen (".slope.json"));
  g_autofree char *path = g_strdup_printf ("/sheet/figures/tidy/%s", name);

  g_test_add_data_func_full (path, g_steal_pointer (&name), test_tidy, g_free);
}

int
main (int argc, char **argv)
{
  g_autoptr (GDir) examples = NULL;
  const char *file;

  g_test_init (&argc, &argv, NULL);
  examples = g_dir_open (g_getenv ("SW_EXAMPLES"), 0, NULL);
  g_assert_nonnull (examples);
  while ((file = g_dir_read_name (examples)) != NULL)
    if (g_str_has_suffix (file, ".slope.json"))
      add_example (file);
  g_test_add_func ("/sheet/figures/falls-back", test_falls_back);
  return g_test_run ();
}
