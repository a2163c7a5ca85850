/* SPDX-License-Identifier: MIT */
#undef G_DISABLE_ASSERT
#include "clearance.h"
#include "pack-fixture.h"
#include <math.h>

/* Every drawing of every face of every example, in the sheet font and in every language, on
 * paper and as the window shows it: no text lies on another, on a line that says something
 * or under a handle, nothing leaves the sheet, and what a crew looks for first is there. */

typedef SwView Fit (const SwResult *result, guint face, double width_mm, double height_mm,
                    const SwDraw *draw, double *scale);
typedef SwBox Box (const SwResult *result, guint face);
typedef SwFigure *Draw (const SwResult *result, guint face, const SwView *view,
                        const SwDraw *draw);

static const struct
{
  const char *name;
  Fit *fit;
  Draw *draw;
  Box *box;
  double insets_mm[4]; /* left, right, top, bottom: as the window's canvases have them */
  double canvases_mm[4][2]; /* of a window of 1280 x 720, 1920 x 1080, alone in one, and
                              of the first with text twice as large */
  const char *wanted[5];    /* ids of texts that it must carry on paper */
} views[] = {
  { "section",
    sw_section_fit,
    sw_draw_section,
    sw_section_box,
    { 12.0, 16.0, 13.0, 19.0 },
    { { 185.0, 55.0 }, { 307.0, 95.0 }, { 300.0, 170.0 }, { 137.0, 41.0 } },
    { "drawing.fall-line" } },
  { "plan",
    sw_plan_fit,
    sw_draw_plan,
    sw_plan_box,
    { 17.0, 17.0, 17.0, 12.0 },
    { { 92.6, 54.0 }, { 153.0, 95.0 }, { 300.0, 170.0 }, { 68.6, 40.0 } },
    { "drawing.fall-line", "drawing.wind", "drawing.crest-line", "drawing.toe-line" } },
  { "face view",
    sw_face_view_fit,
    sw_draw_face_view,
    sw_face_view_box,
    { 17.0, 17.0, 15.0, 11.0 },
    { { 92.6, 54.0 }, { 153.0, 95.0 }, { 300.0, 170.0 }, { 68.6, 40.0 } },
    { "drawing.laying-order", "drawing.crest-line", "drawing.toe-line",
      "drawing.fall-line" } },
};

/* A4 and Letter on their side, A3, upright pages, a narrow column and half of one. */
static const double sizes_mm[][2] = {
  { 273.0, 186.0 }, { 255.4, 191.9 }, { 396.0, 273.0 },
  { 180.0, 240.0 }, { 180.0, 120.0 }, { 175.0, 90.0 },
};

/* On less paper than this a text may find no place. */
#define LEAST_PAPER_MM 100.0

/* Half the diamond by which the canvas has a whole obstacle or zone moved: 7 of its pixels,
 * 4.8 to a millimetre. */
#define HALF_GRIP_MM (7.0 / 4.8)

/* The canvas paints its grips itself: as handles they are seen by the questions above. */
static void
add_grip (SwFigure *figure, const SwView *view, const SwFace *face,
          const SwPoint *outline, guint n_outline)
{
  SwBox box = sw_ring_box ((SwRing){ outline, n_outline });
  SwPoint middle = { (box.x0_m + box.x1_m) / 2.0, (box.y0_m + box.y1_m) / 2.0 };
  SwPaperPoint at = sw_view_to_paper (view, sw_plan_lay (face, middle));

  sw_figure_circle (figure, SW_ROLE_HANDLE, at.x_mm, at.y_mm, HALF_GRIP_MM);
}

static void
add_grips (SwFigure *figure, const SwView *view, const SwFace *face)
{
  sw_figure_object (figure, "grip");
  for (guint i = 0; i < face->obstacles->len; i++)
    {
      const SwObstacle *obstacle = face->obstacles->pdata[i];

      add_grip (figure, view, face, obstacle->outline, obstacle->n_outline);
    }
  for (guint i = 0; i < face->zones->len; i++)
    {
      const SwZone *zone = face->zones->pdata[i];

      add_grip (figure, view, face, zone->outline, zone->n_outline);
    }
}

/* Parts a and b of a canvas that leave less than half of it are taken as far as they do. */
static double
kept (double room_mm, double a_mm, double b_mm)
{
  return fmin (1.0, room_mm / 2.0 / (a_mm + b_mm));
}

/* As large as the canvas allows: it knows no ruler. */
static SwView
canvas_view (const Example *example, guint face, guint v, const double *size_mm)
{
  SwBox box = views[v].box (example->result, face);
  const double *in = views[v].insets_mm;
  double x = kept (size_mm[0], in[0], in[1]), y = kept (size_mm[1], in[2], in[3]);
  double wide_mm = size_mm[0] - x * (in[0] + in[1]);
  double tall_mm = size_mm[1] - y * (in[2] + in[3]);
  double mm_per_m =
      fmin (wide_mm / (box.x1_m - box.x0_m), tall_mm / (box.y1_m - box.y0_m));
  double down = views[v].draw == sw_draw_section ? -mm_per_m : mm_per_m;

  return (SwView){ size_mm[0],
                   size_mm[1],
                   x * in[0] + wide_mm / 2.0 - (box.x0_m + box.x1_m) / 2.0 * mm_per_m,
                   y * in[2] + tall_mm / 2.0 - (box.y0_m + box.y1_m) / 2.0 * down,
                   mm_per_m,
                   down };
}

static void
check_canvas (Example *example, guint face, guint v, guint c, const char *name)
{
  const double *size_mm = views[v].canvases_mm[c];
  SwView view = canvas_view (example, face, v, size_mm);
  g_autoptr (SwFigure) figure = NULL;
  g_autofree char *what =
      g_strdup_printf ("%s, face %u, %s, canvas of %.0f mm, %s", name, face,
                       views[v].name, size_mm[0], sw_texts_language (example->texts));

  example->draw.on_screen = TRUE;
  figure = views[v].draw (example->result, face, &view, &example->draw);
  example->draw.on_screen = FALSE;
  if (views[v].draw == sw_draw_plan)
    add_grips (figure, &view, example->job->faces->pdata[face]);
  assert_readable (figure, example->draw.measure, what);
}

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
  assert_readable (figure, example->draw.measure, what);
  if (sizes_mm[s][1] < LEAST_PAPER_MM)
    return;
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
      {
        for (guint s = 0; s < G_N_ELEMENTS (sizes_mm); s++)
          check_view (example, face, v, s, name);
        for (guint c = 0; c < G_N_ELEMENTS (views[v].canvases_mm); c++)
          check_canvas (example, face, v, c, name);
      }
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
