/* SPDX-License-Identifier: MIT */
#include "sheet.h"

#define MARGIN_MM 15.0
#define BINDER_MM 20.0 /* on the edge that is punched */
#define HEAD_GAP_MM 3.0
#define BANNER_MM 8.5
#define FOOT_GAP_MM 3.0
#define ROW_HEAD_PAD_MM 5.0
/* Below this a drawing has no room for more than what it writes round itself. */
#define DRAWING_LEAST_MM 58.0
/* A last page filled by less than this share of its height ends high on it. */
#define SHORT_END 0.4
/* A long title is set smaller down to this share of its size, and then a hair more. */
#define TITLE_LEAST 0.65
#define TITLE_SLACK 0.999
/* Share of the width that the job's name may take beside the title. */
#define JOB_SHARE 0.42

/* Where things go on one page. */
typedef struct
{
  double width_mm, height_mm;
  double left_mm, top_mm, right_mm, bottom_mm; /* of the frame */
  double head_mm, banner_mm, foot_mm;          /* heights */
} Frame;

/* A stop is a reason not to begin work; the sheets of a class are not for work, and say so
 * on their first page. */
static gboolean
has_banner (const SwSheet *sheet)
{
  return sheet->stops > 0 && sheet->plan->kind != SW_PACK_CLASS
         && sheet->plan->kind != SW_PACK_CLASS_KEY;
}

/* However tight a part is set, the frame is the same on every page.
 * A page on its side is punched along its top, which was the left of the sheet. */
static Frame
frame_of (const SwSheet *sheet, gboolean turned)
{
  SwPen pen = { sheet->pen.measure, sheet->pen.scale, 0.0 };
  Frame frame = {
    .width_mm = turned ? sheet->height_mm : sheet->width_mm,
    .height_mm = turned ? sheet->width_mm : sheet->height_mm,
    .left_mm = turned ? MARGIN_MM : BINDER_MM,
    .top_mm = turned ? BINDER_MM : MARGIN_MM,
  };

  frame.right_mm = frame.width_mm - MARGIN_MM;
  frame.bottom_mm = frame.height_mm - MARGIN_MM;
  frame.head_mm = sw_pen_line_mm (&pen, SW_STYLE_TITLE) + HEAD_GAP_MM;
  frame.banner_mm = has_banner (sheet) ? BANNER_MM * sheet->pen.scale + HEAD_GAP_MM : 0.0;
  frame.foot_mm = FOOT_GAP_MM + 3.0 * sw_pen_line_mm (&pen, SW_STYLE_TINY) + 1.0;
  return frame;
}

static double
body_top_mm (const Frame *frame)
{
  return frame->top_mm + frame->head_mm + frame->banner_mm;
}

static double
body_height_mm (const Frame *frame)
{
  return frame->bottom_mm - frame->foot_mm - body_top_mm (frame);
}

double
sw_sheet_body_width_mm (const SwSheet *sheet)
{
  Frame frame = frame_of (sheet, FALSE);

  return frame.right_mm - frame.left_mm;
}

double
sw_sheet_body_height_mm (const SwSheet *sheet)
{
  Frame frame = frame_of (sheet, FALSE);

  return body_height_mm (&frame);
}

void
sw_sheet_turned_body_mm (const SwSheet *sheet, double *width_mm, double *height_mm)
{
  Frame frame = frame_of (sheet, TRUE);

  *width_mm = frame.right_mm - frame.left_mm;
  *height_mm = body_height_mm (&frame);
}

SwFlow *
sw_sheet_flow (const SwSheet *sheet)
{
  return sw_flow_new (&sheet->pen, sw_sheet_body_width_mm (sheet));
}

guint
sw_sheet_rows_that_fit (const SwSheet *sheet, const SwFlow *flow, double row_mm)
{
  double head_mm = sw_pen_line_mm (&sheet->pen, SW_STYLE_BODY) + ROW_HEAD_PAD_MM;
  double room_mm = sw_flow_room_mm (flow, sw_sheet_body_height_mm (sheet)) - head_mm;

  return room_mm > 0.0 ? (guint) (room_mm / (row_mm * sheet->pen.scale)) : 0;
}

double
sw_sheet_drawing_mm (const SwSheet *sheet,
                     SwView (*fit) (const SwResult *result, guint face, double width_mm,
                                    double height_mm, const SwDraw *draw, double *scale),
                     guint face, double width_mm, double most_mm)
{
  double low_mm = DRAWING_LEAST_MM * sheet->pen.scale;
  double high_mm = most_mm, best = 0.0, scale = 0.0;

  fit (sheet->result, face, width_mm, most_mm, sheet->draw, &best);
  while (high_mm - low_mm > 0.5)
    {
      double middle_mm = (low_mm + high_mm) / 2.0;

      fit (sheet->result, face, width_mm, middle_mm, sheet->draw, &scale);
      /* Scales are whole numbers. */
      if (scale < best + 0.5)
        high_mm = middle_mm;
      else
        low_mm = middle_mm;
    }
  return high_mm;
}

/* A layout may begin on its side and go on upright: one line of contents for both. */
static void
add_entry (SwSheet *sheet, const char *title)
{
  SwSheetEntry entry = { sw_sheet_format (sheet, "%s", title), sheet->part,
                         sheet->pages->len };
  const SwSheetEntry *last =
      sheet->contents->len > 0
          ? &g_array_index (sheet->contents, SwSheetEntry, sheet->contents->len - 1)
          : NULL;

  if (last == NULL || !g_str_equal (last->title, title))
    g_array_append_val (sheet->contents, entry);
}

const SwSheetEntry *
sw_sheet_entry (const SwSheet *sheet, SwPart part)
{
  for (guint i = 0; i < sheet->contents->len; i++)
    {
      const SwSheetEntry *entry = &g_array_index (sheet->contents, SwSheetEntry, i);

      if (entry->part == part)
        return entry;
    }
  return NULL;
}

gboolean
sw_sheet_has_page (const SwSheet *sheet, const char *title)
{
  return g_ptr_array_find_with_equal_func (sheet->titles, title, g_str_equal, NULL);
}

guint
sw_sheet_entry_page (const SwSheet *sheet, const SwSheetEntry *entry)
{
  return entry->page + sheet->front + 1;
}

static SwFigure *
add_page (SwSheet *sheet, const char *title, gboolean turned, const SwFigure *body)
{
  Frame frame = frame_of (sheet, turned);
  SwFigure *page = sw_figure_new (frame.width_mm, frame.height_mm);

  sw_figure_place (page, body, frame.left_mm, body_top_mm (&frame));
  page->title = g_strdup (title);
  g_ptr_array_add (sheet->pages, page);
  g_ptr_array_add (sheet->titles, g_strdup (title));
  return page;
}

void
sw_sheet_note_end (SwSheet *sheet, const SwFlow *flow)
{
  double body_mm = sw_sheet_body_height_mm (sheet);

  if (sw_flow_count_pages (flow, body_mm) > 1
      && sw_flow_room_mm (flow, body_mm) > (1.0 - SHORT_END) * body_mm)
    sheet->short_end = TRUE;
}

void
sw_sheet_add (SwSheet *sheet, const char *title, SwFlow *flow)
{
  g_autoptr (GPtrArray) bodies = sw_flow_to_pages (flow, sw_sheet_body_height_mm (sheet));
  g_autofree char *more =
      sw_texts_fill (sheet->texts, "pack.continued", "title", title, NULL);

  add_entry (sheet, title);
  for (guint i = 0; i < bodies->len; i++)
    add_page (sheet, i == 0 ? title : more, FALSE, g_ptr_array_index (bodies, i))
        ->goes_on = i > 0;
  sw_sheet_note_end (sheet, flow);
  sw_flow_free (flow);
}

void
sw_sheet_add_turned (SwSheet *sheet, const char *title, SwFigure *drawing)
{
  g_autoptr (SwFigure) body = sw_figure_new (drawing->width_mm, drawing->height_mm);
  g_autofree char *words = sw_figure_words (drawing);

  sw_figure_tag (body, SW_TAG_PICTURE, words);
  sw_figure_place (body, drawing, 0.0, 0.0);
  sw_figure_untag (body);
  add_entry (sheet, title);
  add_page (sheet, title, TRUE, body);
  sw_figure_free (drawing);
}

/* @text on one line of @width_mm, with … for what does not fit. (transfer full) */
static char *
fitted (const SwPen *pen, SwStyle style, const char *text, double width_mm)
{
  g_autofree char *markup = sw_markup_escape (text);
  g_autoptr (SwTextBlock) whole = sw_text_block_new (pen, style, markup, width_mm);
  double dots_mm = sw_pen_width_mm (pen, style, "…");
  g_autoptr (SwTextBlock) cut = NULL;
  const SwTextLine *line;

  if (whole->lines->len == 1)
    return g_strdup (whole->text);
  cut = sw_text_block_new (pen, style, markup, width_mm - dots_mm);
  line = &g_array_index (cut->lines, SwTextLine, 0);
  return g_strdup_printf ("%.*s…", (int) (line->to - line->from), cut->text + line->from);
}

/* "No. 12 · rev B · 2026-09-21", of what the card has. (transfer full) */
static char *
identity (const SwSheet *sheet, gboolean with_name, gboolean with_date)
{
  const SwJobCard *card = &sheet->job->card;
  GString *text = g_string_new (with_name ? card->name : "");
  const char *parts[] = {
    *card->number != '\0'
        ? sw_sheet_fill (sheet, "pack.number", "number", card->number, NULL)
        : "",
    *card->revision != '\0'
        ? sw_sheet_fill (sheet, "pack.revision", "revision", card->revision, NULL)
        : "",
    with_date ? card->date : "",
  };

  for (guint i = 0; i < G_N_ELEMENTS (parts); i++)
    if (*parts[i] != '\0')
      g_string_append_printf (text, "%s%s", text->len > 0 ? " · " : "", parts[i]);
  return g_string_free (text, FALSE);
}

/* A pen with which a long title fits its line, as far as it stays a title. */
static SwPen
narrowed (const SwPen *pen, const char *title, double width_mm)
{
  SwPen narrow = *pen;
  double title_mm = sw_pen_width_mm (pen, SW_STYLE_TITLE, title);

  if (title_mm > width_mm)
    narrow.scale *= MAX (TITLE_LEAST, TITLE_SLACK * width_mm / title_mm);
  return narrow;
}

static void
draw_head (const SwSheet *sheet, const Frame *frame, SwFigure *page, const char *title)
{
  const SwPen *pen = &sheet->pen;
  double width_mm = frame->right_mm - frame->left_mm;
  double small_mm = sw_pen_line_mm (pen, SW_STYLE_SMALL);
  double rule_mm = frame->top_mm + sw_pen_line_mm (pen, SW_STYLE_TITLE);
  g_autofree char *name =
      fitted (pen, SW_STYLE_SMALL, sheet->job->card.name, JOB_SHARE * width_mm);
  g_autofree char *id = identity (sheet, FALSE, TRUE);
  g_autofree char *id_fitted = fitted (pen, SW_STYLE_SMALL, id, JOB_SHARE * width_mm);
  double job_mm = MAX (sw_pen_width_mm (pen, SW_STYLE_SMALL, name),
                       sw_pen_width_mm (pen, SW_STYLE_SMALL, id_fitted));
  SwPen title_pen = narrowed (pen, title, width_mm - job_mm - HEAD_GAP_MM);
  g_autofree char *title_fitted =
      fitted (&title_pen, SW_STYLE_TITLE, title, width_mm - job_mm - HEAD_GAP_MM);

  sw_figure_tag (page, SW_TAG_TITLE, title);
  sw_pen_write (&title_pen, SW_STYLE_TITLE, page, SW_ROLE_HEADING, frame->left_mm,
                rule_mm - sw_pen_line_mm (&title_pen, SW_STYLE_TITLE), SW_ALIGN_LEFT,
                title_fitted);
  sw_figure_untag (page);
  sw_figure_tag (page, SW_TAG_FURNITURE, "");
  sw_pen_write (pen, SW_STYLE_SMALL, page, SW_ROLE_TEXT, frame->right_mm,
                rule_mm - 2.0 * small_mm - 0.7, SW_ALIGN_RIGHT, name);
  sw_pen_write (pen, SW_STYLE_SMALL, page, SW_ROLE_MUTED, frame->right_mm,
                rule_mm - small_mm - 0.7, SW_ALIGN_RIGHT, id_fitted);
  sw_figure_segment (page, SW_ROLE_HEADING, frame->left_mm, rule_mm, frame->right_mm,
                     rule_mm);
  sw_figure_untag (page);
}

static void
draw_banner (const SwSheet *sheet, const Frame *frame, SwFigure *page, gboolean spoken)
{
  const SwPen *pen = &sheet->pen;
  double height_mm = frame->banner_mm - HEAD_GAP_MM;
  double top_mm = frame->top_mm + frame->head_mm;
  double line_mm = sw_pen_line_mm (pen, SW_STYLE_HEADING);
  const char *count = sw_sheet_count (sheet, sheet->stops);
  const char *words =
      sw_sheet_fill (sheet,
                     sheet->plan->kind != SW_PACK_CREW ? "pack.banner.elsewhere"
                     : sheet->stops == 1               ? "pack.banner.one"
                                                       : "pack.banner.many",
                     "count", count, NULL);
  double width_mm = frame->right_mm - frame->left_mm;
  g_autofree char *text = fitted (pen, SW_STYLE_HEADING, words, width_mm - 6.0);

  if (!has_banner (sheet))
    return;
  sw_figure_tag (page, spoken ? SW_TAG_PARAGRAPH : SW_TAG_FURNITURE, spoken ? words : "");
  sw_figure_box (page, SW_ROLE_STOP, frame->left_mm, top_mm, width_mm, height_mm);
  sw_pen_write (pen, SW_STYLE_HEADING, page, SW_ROLE_STOP, frame->left_mm + 3.0,
                top_mm + (height_mm - line_mm) / 2.0, SW_ALIGN_LEFT, text);
  sw_figure_untag (page);
}

static void
draw_foot (const SwSheet *sheet, const Frame *frame, SwFigure *page, guint number)
{
  const SwPen *pen = &sheet->pen;
  double width_mm = frame->right_mm - frame->left_mm;
  double line_mm = sw_pen_line_mm (pen, SW_STYLE_TINY);
  double y_mm = frame->bottom_mm - 3.0 * line_mm;
  const char *at = sw_sheet_format (sheet, "%u", number);
  const char *of = sw_sheet_format (sheet, "%u", sheet->pages->len);
  const char *page_of =
      sw_sheet_fill (sheet, "pack.page-of", "page", at, "pages", of, NULL);
  const char *origin =
      sw_sheet_fill (sheet, "pack.foot-origin", "version", sheet->version, "fingerprint",
                     sheet->fingerprint, NULL);
  g_autoptr (SwTextBlock) defer = sw_text_block_new (
      pen, SW_STYLE_TINY, sw_sheet_get (sheet, "pack.defer"), width_mm);
  g_autofree char *id = identity (sheet, TRUE, FALSE);
  double origin_mm = sw_pen_width_mm (pen, SW_STYLE_TINY, origin);
  g_autofree char *job =
      fitted (pen, SW_STYLE_TINY, sw_sheet_format (sheet, "%s · %s", page_of, id),
              width_mm - origin_mm - HEAD_GAP_MM);

  sw_figure_tag (page, SW_TAG_FURNITURE, "");
  sw_figure_segment (page, SW_ROLE_TABLE_RULE, frame->left_mm, y_mm - 1.0,
                     frame->right_mm, y_mm - 1.0);
  sw_text_block_draw (pen, defer, 0, 2, page, SW_ROLE_TEXT, frame->left_mm, y_mm,
                      width_mm, SW_ALIGN_LEFT);
  y_mm += 2.0 * line_mm;
  sw_pen_write (pen, SW_STYLE_TINY, page, SW_ROLE_MUTED, frame->left_mm, y_mm,
                SW_ALIGN_LEFT, job);
  sw_pen_write (pen, SW_STYLE_TINY, page, SW_ROLE_MUTED, frame->right_mm, y_mm,
                SW_ALIGN_RIGHT, origin);
  sw_figure_untag (page);
}

/* The head comes first: pages are read aloud in the order in which they are drawn. */
static SwFigure *
framed (const SwSheet *sheet, const SwFigure *body, guint index)
{
  Frame frame = frame_of (sheet, body->width_mm > body->height_mm);
  SwFigure *page = sw_figure_new (body->width_mm, body->height_mm);

  page->title = g_strdup (body->title);
  page->goes_on = body->goes_on;
  draw_head (sheet, &frame, page, g_ptr_array_index (sheet->titles, index));
  draw_banner (sheet, &frame, page, index == 0);
  sw_figure_place (page, body, 0.0, 0.0);
  draw_foot (sheet, &frame, page, index + 1);
  return page;
}

void
sw_sheet_frame_pages (SwSheet *sheet)
{
  for (guint i = 0; i < sheet->pages->len; i++)
    {
      SwFigure *body = sheet->pages->pdata[i];

      sheet->pages->pdata[i] = framed (sheet, body, i);
      sw_figure_free (body);
    }
}
