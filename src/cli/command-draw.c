/* SPDX-License-Identifier: MIT */
#include "opened-job.h"
#include "written-file.h"

#include <slopewright/figure/drawings.h>
#include <slopewright/paint/paint.h>
#include <slopewright/sheet/pack.h>
#include <slopewright/store/store.h>

#define MARGIN_MM 12.0
#define LEAST_DPI 36
#define MOST_DPI 600
#define USUAL_DPI 150

static SlopepackExit run (char **argv);

const SlopepackCommand slopepack_draw = {
  "draw",
  "Draw one face as a picture.",
  "JOB --view VIEW -o FILE.svg",
  "The ending of FILE decides what is written: .svg or .png. The drawing fills a page\n"
  "of the job's paper laid on its side, at the largest usual scale that fits.",
  run,
};

typedef struct
{
  char *view, *face, *output;
  int dots_per_inch;
} Wish;

typedef struct
{
  const char *name;
  SwView (*fit) (const SwResult *result, guint face, double width_mm, double height_mm,
                 const SwDraw *draw, double *scale);
  SwFigure *(*draw) (const SwResult *result, guint face, const SwView *view,
                     const SwDraw *draw);
} Drawing;

static const Drawing drawings[] = {
  { "section", sw_section_fit, sw_draw_section },
  { "plan", sw_plan_fit, sw_draw_plan },
  { "face", sw_face_view_fit, sw_draw_face_view },
};

static const Drawing *
find_drawing (const char *name)
{
  for (guint i = 0; i < G_N_ELEMENTS (drawings); i++)
    if (g_strcmp0 (drawings[i].name, name) == 0)
      return &drawings[i];
  return NULL;
}

static SlopepackExit
find_face (const SwJob *job, const char *id, guint *index)
{
  g_autoptr (GString) known = g_string_new (NULL);

  *index = 0;
  if (id == NULL)
    return SLOPEPACK_DONE;
  for (guint i = 0; i < job->faces->len; i++)
    {
      const SwFace *face = g_ptr_array_index (job->faces, i);
      if (g_str_equal (face->id, id))
        {
          *index = i;
          return SLOPEPACK_DONE;
        }
      g_string_append_printf (known, "%s%s", i == 0 ? "" : ", ", face->id);
    }
  return slopepack_complain (SLOPEPACK_USAGE, "--face: found '%s'; this job has: %s", id,
                             known->str);
}

/* A page of the job's paper on its side, the drawing within its margins. */
static SwFigure *
make_page (const SlopepackJob *opened, const Drawing *drawing, guint face,
           const SwTextMeasure *measure)
{
  const SwDraw draw = { .texts = opened->texts,
                        .measure = measure,
                        .style = opened->style };
  double short_mm, long_mm;

  sw_paper_size_mm (opened->job->paper, &short_mm, &long_mm);

  SwView view = drawing->fit (opened->result, face, long_mm - 2 * MARGIN_MM,
                              short_mm - 2 * MARGIN_MM, &draw, NULL);
  g_autoptr (SwFigure) figure = drawing->draw (opened->result, face, &view, &draw);
  SwFigure *page = sw_figure_new (long_mm, short_mm);

  page->title = g_strdup (figure->title);
  sw_figure_place (page, figure, MARGIN_MM, MARGIN_MM);
  return page;
}

static SlopepackExit
draw (const char *path, const SlopepackReader *reader, const Drawing *drawing,
      const Wish *wish)
{
  g_auto (SlopepackJob) opened = { 0 };
  g_autoptr (GError) error = NULL;
  guint face;
  SlopepackExit code = slopepack_job_open (path, reader, &opened);

  if (code == SLOPEPACK_DONE)
    code = find_face (opened.job, wish->face, &face);
  if (code != SLOPEPACK_DONE)
    return code;

  const SwTextMeasure *measure = sw_paint_measure (&error);
  if (measure == NULL)
    return slopepack_paint_complaint (error);

  g_autoptr (SwPalette) palette = sw_palette_load ();
  g_autoptr (SwFigure) page = make_page (&opened, drawing, face, measure);
  gboolean done =
      g_str_has_suffix (wish->output, ".svg")
          ? sw_paint_svg (page, palette, wish->output, &error)
          : sw_paint_png (page, palette, wish->dots_per_inch, wish->output, &error);
  return done ? SLOPEPACK_DONE : slopepack_paint_complaint (error);
}

static SlopepackExit
check_wish (const Wish *wish, const char *job_path)
{
  if (wish->view == NULL)
    return slopepack_complain (SLOPEPACK_USAGE,
                               "draw: expected --view section, plan or face");
  if (find_drawing (wish->view) == NULL)
    return slopepack_complain (SLOPEPACK_USAGE,
                               "--view: found '%s'; expected section, plan or face",
                               wish->view);
  SlopepackExit code = slopepack_check_output (&slopepack_draw, wish->output, job_path);
  if (code != SLOPEPACK_DONE)
    return code;
  if (!g_str_has_suffix (wish->output, ".svg")
      && !g_str_has_suffix (wish->output, ".png"))
    return slopepack_complain (
        SLOPEPACK_USAGE, "-o: found '%s'; expected a name that ends in .svg or .png",
        wish->output);
  if (wish->dots_per_inch < LEAST_DPI || wish->dots_per_inch > MOST_DPI)
    return slopepack_complain (SLOPEPACK_USAGE, "--dpi: found %d; expected %d to %d",
                               wish->dots_per_inch, LEAST_DPI, MOST_DPI);
  return SLOPEPACK_DONE;
}

static void
clear_wish (Wish *wish)
{
  g_free (wish->view);
  g_free (wish->face);
  g_free (wish->output);
}
G_DEFINE_AUTO_CLEANUP_CLEAR_FUNC (Wish, clear_wish)

static SlopepackExit
run (char **argv)
{
  g_auto (SlopepackReader) reader = { 0 };
  g_auto (Wish) wish = { .dots_per_inch = USUAL_DPI };
  const GOptionEntry entries[] = {
    { "view", 0, 0, G_OPTION_ARG_FILENAME, &wish.view,
      "section, plan or face (the face laid flat at true length)", "VIEW" },
    { "face", 0, 0, G_OPTION_ARG_FILENAME, &wish.face, "Which face (default: the first)",
      "ID" },
    { "output", 'o', 0, G_OPTION_ARG_FILENAME, &wish.output, "Where to write", "FILE" },
    { "dpi", 0, 0, G_OPTION_ARG_INT, &wish.dots_per_inch,
      "Dots per inch of a .png (default: 150)", "DPI" },
    SLOPEPACK_READER_OPTIONS (reader),
    G_OPTION_ENTRY_NULL
  };
  g_auto (GStrv) words = NULL;
  SlopepackExit code;

  if (!slopepack_read_options (&slopepack_draw, argv, entries, 1, 1, &words, &code))
    return code;
  code = check_wish (&wish, words[1]);
  return code == SLOPEPACK_DONE
             ? draw (words[1], &reader, find_drawing (wish.view), &wish)
             : code;
}
