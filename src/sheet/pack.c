/* SPDX-License-Identifier: MIT */
#include "sheet.h"

/* Large paper hangs on the wall of the site hut: larger type, larger drawings. */
#define LARGE_PAPER_MM 250.0
#define LARGE_PAPER_SCALE 1.3
#define DRAWING_TEXT_MM 2.5

static guint
count_stops (const GPtrArray *findings)
{
  guint count = 0;

  for (guint i = 0; i < findings->len; i++)
    count += ((const SwFinding *) g_ptr_array_index (findings, i))->severity
             == SW_SEVERITY_STOP;
  return count;
}

static void
add_pages (SwSheet *sheet)
{
  sw_page_glance (sheet);
  for (guint face = 0; face < sheet->layout->n_faces; face++)
    sw_page_layout (sheet, face);
  sw_page_details (sheet);
  sw_page_steps (sheet);
  sw_page_materials (sheet);
  sw_page_safety (sheet);
  sw_page_inspection (sheet);
  sw_page_workings (sheet);
  sw_sheet_frame_pages (sheet);
}

GPtrArray *
sw_pack_new (const SwResult *result, const SwDraw *draw, SwPaper paper,
             const char *version, const char *fingerprint)
{
  SwDraw scaled = *draw;
  SwSheet sheet = { .result = result,
                    .layout = result->layout,
                    .tally = result->tally,
                    .job = result->job,
                    .draw = &scaled,
                    .texts = draw->texts,
                    .version = version,
                    .fingerprint = fingerprint };

  g_return_val_if_fail (result->status == SW_OK, NULL);
  sheet.practice = result->layout->practice;
  sheet.stops = count_stops (result->findings);
  sw_paper_size_mm (paper, &sheet.width_mm, &sheet.height_mm);
  sheet.pen =
      (SwPen){ draw->measure, sheet.width_mm > LARGE_PAPER_MM ? LARGE_PAPER_SCALE : 1.0 };
  scaled.on_screen = FALSE;
  scaled.text_mm =
      (draw->text_mm > 0.0 ? draw->text_mm : DRAWING_TEXT_MM) * sheet.pen.scale;
  sheet.pages = g_ptr_array_new_with_free_func ((GDestroyNotify) sw_figure_free);
  sheet.titles = g_ptr_array_new_with_free_func (g_free);
  sheet.strings = g_string_chunk_new (4096);
  add_pages (&sheet);
  g_string_chunk_free (sheet.strings);
  g_ptr_array_unref (sheet.titles);
  return sheet.pages;
}
