/* SPDX-License-Identifier: MIT */
#include "sheet.h"

/* Large paper hangs on the wall of the site hut: larger type, larger drawings. */
#define LARGE_PAPER_MM 250.0
#define LARGE_PAPER_SCALE 1.3
#define DRAWING_TEXT_MM 2.5
#define LIKELY_FRONT_PAGES 2

static void
add_layouts (SwSheet *sheet)
{
  for (guint face = 0; face < sheet->layout->n_faces; face++)
    sw_page_layout (sheet, face);
}

typedef struct
{
  SwPart part;
  void (*add) (SwSheet *sheet);
} Part;

static const Part crew_parts[] = {
  { SW_PART_LAYOUT, add_layouts },
  { SW_PART_DETAILS, sw_page_details },
  { SW_PART_STEPS, sw_page_steps },
  { SW_PART_MATERIALS, sw_page_materials },
  { SW_PART_WORK, sw_page_work },
  { SW_PART_SAFETY, sw_page_safety },
  { SW_PART_INSPECTION, sw_page_inspection },
  { SW_PART_INSPECTION, sw_page_inspection_report },
  { SW_PART_AS_BUILT, sw_page_as_built },
  { SW_PART_JUDGEMENT, sw_page_judgement },
  { SW_PART_HAND_CHECK, sw_page_hand_check },
  { SW_PART_MEASURING, sw_page_measuring },
  { SW_PART_MEASURING, sw_page_site_visit },
  { SW_PART_WORKINGS, sw_page_workings },
  { SW_PART_COST, sw_page_cost },
};

static const Part permit_parts[] = {
  { SW_PART_PERMIT, sw_page_permit_counter },
  { SW_PART_JUDGEMENT, sw_page_permit_guide },
  { SW_PART_DETAILS, sw_page_details },
  { SW_PART_INSPECTION, sw_page_permit_control },
  { SW_PART_INSPECTION, sw_page_inspection_report },
  { SW_PART_PERMIT, sw_page_permit_notes },
};

static const Part class_parts[] = {
  { SW_PART_CLASS, sw_page_class_front },    { SW_PART_CLASS, sw_page_class_words },
  { SW_PART_CLASS, sw_page_class_example },  { SW_PART_CLASS, sw_page_class_exercises },
  { SW_PART_CLASS, sw_page_class_faults },   { SW_PART_CLASS, sw_page_class_quiz },
  { SW_PART_CLASS, sw_page_class_practice },
};

static const Part key_parts[] = {
  { SW_PART_CLASS, sw_page_class_key },
};

static const Part measuring_parts[] = {
  { SW_PART_MEASURING, sw_page_measuring },
  { SW_PART_MEASURING, sw_page_site_visit },
};

/* What each kind of document contains, in order; only a crew pack has front pages, which
 * list the others. */
static const struct
{
  const Part *parts;
  guint n_parts;
  void (*front) (SwSheet *sheet);
} kinds[SW_PACK_KIND_COUNT] = {
  [SW_PACK_CREW] = { crew_parts, G_N_ELEMENTS (crew_parts), sw_page_glance },
  [SW_PACK_CLASS] = { class_parts, G_N_ELEMENTS (class_parts), NULL },
  [SW_PACK_CLASS_KEY] = { key_parts, G_N_ELEMENTS (key_parts), NULL },
  [SW_PACK_MEASURE] = { measuring_parts, G_N_ELEMENTS (measuring_parts), NULL },
  [SW_PACK_MEASURE_BLANK] = { measuring_parts, G_N_ELEMENTS (measuring_parts), NULL },
  [SW_PACK_PERMIT] = { permit_parts, G_N_ELEMENTS (permit_parts), NULL },
};

/* How many pages, lines of contents and plans left to the front there are. */
typedef struct
{
  guint pages, contents, plans;
} Progress;

static void
add_part_so_tight (SwSheet *sheet, void (*add) (SwSheet *sheet), const Progress *before,
                   double tight)
{
  g_ptr_array_set_size (sheet->pages, (gint) before->pages);
  g_ptr_array_set_size (sheet->titles, (gint) before->pages);
  g_array_set_size (sheet->contents, before->contents);
  g_array_set_size (sheet->plans, before->plans);
  sheet->short_end = FALSE;
  sheet->pen.tight = tight;
  add (sheet);
  sheet->pen.tight = 0.0;
}

/* A part whose last page would be nearly empty is set tighter where that saves the page. */
static void
add_part (SwSheet *sheet, void (*add) (SwSheet *sheet))
{
  static const double tighter[] = { 0.5, 1.0 };
  Progress before = { sheet->pages->len, sheet->contents->len, sheet->plans->len };
  guint usual;

  add_part_so_tight (sheet, add, &before, 0.0);
  usual = sheet->pages->len;
  if (!sheet->short_end)
    return;
  for (guint i = 0; i < G_N_ELEMENTS (tighter); i++)
    {
      add_part_so_tight (sheet, add, &before, tighter[i]);
      if (sheet->pages->len < usual)
        return;
    }
  add_part_so_tight (sheet, add, &before, 0.0);
}

static void
set_front (SwSheet *sheet)
{
  guint n_entries = sheet->contents->len;

  g_clear_pointer (&sheet->pages, g_ptr_array_unref);
  g_clear_pointer (&sheet->titles, g_ptr_array_unref);
  sheet->pages = g_ptr_array_new_with_free_func ((GDestroyNotify) sw_figure_free);
  sheet->titles = g_ptr_array_new_with_free_func (g_free);
  add_part (sheet, kinds[sheet->plan->kind].front);
  g_array_set_size (sheet->contents, n_entries);
}

/*
 * The front pages list the others with their numbers, which depend on how many
 * front pages there are: set them for a likely number, and again where that was wrong.
 */
static void
add_front (SwSheet *sheet)
{
  GPtrArray *pages = g_steal_pointer (&sheet->pages);
  GPtrArray *titles = g_steal_pointer (&sheet->titles);

  sheet->front = LIKELY_FRONT_PAGES;
  set_front (sheet);
  if (sheet->pages->len != sheet->front)
    {
      sheet->front = sheet->pages->len;
      set_front (sheet);
    }
  g_ptr_array_extend_and_steal (sheet->pages, pages);
  g_ptr_array_extend_and_steal (sheet->titles, titles);
}

/* Returns: FALSE when @work stopped it. */
static gboolean
add_pages (SwSheet *sheet, const SwLongWork *work)
{
  guint n_parts = kinds[sheet->plan->kind].n_parts;
  guint n_with_front = n_parts + (kinds[sheet->plan->kind].front != NULL);

  for (guint i = 0; i < n_parts; i++)
    {
      const Part *part = &kinds[sheet->plan->kind].parts[i];

      if (!sw_long_work_goes_on (work, i, n_with_front))
        return FALSE;
      sheet->part = part->part;
      add_part (sheet, part->add);
    }
  sheet->part = SW_PART_FRONT;
  if (kinds[sheet->plan->kind].front == NULL)
    return TRUE;
  if (!sw_long_work_goes_on (work, n_parts, n_with_front))
    return FALSE;
  add_front (sheet);
  return TRUE;
}

GPtrArray *
sw_pack_new (const SwResult *result, const SwDraw *draw, SwPaper paper,
             const SwPackPlan *plan, const char *version, const char *fingerprint,
             const SwLongWork *work)
{
  SwDraw scaled = *draw;
  SwSheet sheet = { .result = result,
                    .layout = result->layout,
                    .tally = result->tally,
                    .job = result->job,
                    .plan = plan,
                    .draw = &scaled,
                    .texts = draw->texts,
                    .version = version,
                    .fingerprint = fingerprint };

  g_return_val_if_fail (result->status == SW_OK, NULL);
  sheet.practice = result->layout->practice;
  /* A blank form says nothing of the job, and so nothing of its findings. */
  sheet.stops = plan->kind == SW_PACK_MEASURE_BLANK
                    ? 0
                    : sw_findings_count (result->findings, SW_SEVERITY_STOP);
  sw_paper_size_mm (paper, &sheet.width_mm, &sheet.height_mm);
  sheet.pen = (SwPen){ draw->measure,
                       sheet.width_mm > LARGE_PAPER_MM ? LARGE_PAPER_SCALE : 1.0, 0.0 };
  scaled.on_screen = FALSE;
  scaled.text_mm =
      (draw->text_mm > 0.0 ? draw->text_mm : DRAWING_TEXT_MM) * sheet.pen.scale;
  sheet.pages = g_ptr_array_new_with_free_func ((GDestroyNotify) sw_figure_free);
  sheet.titles = g_ptr_array_new_with_free_func (g_free);
  sheet.strings = g_string_chunk_new (4096);
  sheet.contents = g_array_new (FALSE, FALSE, sizeof (SwSheetEntry));
  sheet.plans = g_array_new (FALSE, FALSE, sizeof (guint));
  if (add_pages (&sheet, work))
    sw_sheet_frame_pages (&sheet);
  else
    g_clear_pointer (&sheet.pages, g_ptr_array_unref);
  g_array_unref (sheet.contents);
  g_array_unref (sheet.plans);
  g_string_chunk_free (sheet.strings);
  g_ptr_array_unref (sheet.titles);
  return sheet.pages;
}
