/* SPDX-License-Identifier: MIT */
#include "help-figure.h"

#include <slopewright/figure/drawings.h>
#include <string.h>

#define EXAMPLE "resource:///io/slopewright/Slopewright/examples/%s.slope.json"

/* Room for a drawing in the column of the text, and its lettering. */
#define DETAIL_WIDE_MM 105.0
#define DETAIL_HIGH_MM 62.0
#define FAULT_WIDE_MM 58.0
#define VIEW_WIDE_MM 130.0
#define VIEW_HIGH_MM 70.0
#define TEXT_MM 2.6

static const char *const detail_names[SW_DETAIL_COUNT] = {
  [SW_DETAIL_KEY_TRENCH] = "key-trench",
  [SW_DETAIL_SIDE_LAP] = "side-lap",
  [SW_DETAIL_END_LAP] = "end-lap",
  [SW_DETAIL_SLOT] = "slot",
  [SW_DETAIL_TOE] = "toe",
  [SW_DETAIL_PIN] = "pin",
  [SW_DETAIL_PIN_PATTERN] = "pin-pattern",
  [SW_DETAIL_COLLAR] = "collar",
};

static const struct
{
  const char *name;
  SwView (*fit) (const SwResult *result, guint face, double width_mm, double height_mm,
                 const SwDraw *draw, double *scale);
  SwFigure *(*draw) (const SwResult *result, guint face, const SwView *view,
                     const SwDraw *draw);
} views[] = {
  { "section", sw_section_fit, sw_draw_section },
  { "plan", sw_plan_fit, sw_draw_plan },
  { "face-view", sw_face_view_fit, sw_draw_face_view },
};

static SwFigure *
draw_of (const SwResult *result, const char *what, const SwDraw *draw)
{
  for (gsize i = 0; i < G_N_ELEMENTS (views); i++)
    if (strcmp (views[i].name, what) == 0)
      {
        SwView view = views[i].fit (result, 0, VIEW_WIDE_MM, VIEW_HIGH_MM, draw, NULL);
        return views[i].draw (result, 0, &view, draw);
      }
  for (guint i = 0; i < SW_DETAIL_COUNT; i++)
    if (strcmp (detail_names[i], what) == 0)
      return sw_draw_detail (result, 0, (SwDetail) i, DETAIL_WIDE_MM, DETAIL_HIGH_MM,
                             draw);
  return NULL;
}

static SwFigure *
draw_fault (const char *code, gboolean wrong)
{
  for (guint i = 0; i < SW_FAULT_COUNT; i++)
    if (strcmp (sw_fault_code ((SwFault) i), code) == 0)
      return sw_draw_fault ((SwFault) i, wrong, FAULT_WIDE_MM);
  return NULL;
}

SwFigure *
sw_help_figure (const SwStock *stock, SwUnitSystem units, const char *name)
{
  g_auto (GStrv) parts = g_strsplit (name, "/", 2);
  g_autofree char *uri = NULL;
  g_autoptr (GFile) file = NULL;
  g_autoptr (SwJob) job = NULL;
  g_autoptr (SwResult) result = NULL;
  SwDraw draw = { .texts = stock->texts,
                  .measure = stock->measure,
                  .style = sw_stock_style (stock, units),
                  .text_mm = TEXT_MM };

  if (parts[0] == NULL || parts[1] == NULL)
    return NULL;
  if (strcmp (parts[0], "right") == 0 || strcmp (parts[0], "wrong") == 0)
    return draw_fault (parts[1], strcmp (parts[0], "wrong") == 0);
  uri = g_strdup_printf (EXAMPLE, parts[0]);
  file = g_file_new_for_uri (uri);
  job = sw_job_load (file, NULL);
  if (job == NULL)
    return NULL;
  result = sw_result_new (job, stock->catalogue);
  return result->status == SW_OK ? draw_of (result, parts[1], &draw) : NULL;
}
