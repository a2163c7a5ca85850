/* SPDX-License-Identifier: MIT */
#include "pdf-tags.h"

#include <slopewright/base/units.h>

#include "write.h"

static gboolean
check_haru (const SwPdf *pdf, const char *doing, GError **error)
{
  const HPDF_STATUS status =
      pdf->doc ? HPDF_GetError (pdf->doc) : HPDF_FAILD_TO_ALLOC_MEM;

  if (status == HPDF_OK)
    return TRUE;
  g_set_error (error, SW_PAINT_ERROR, SW_PAINT_ERROR_WRITE,
               "the PDF cannot be made: libharu error 0x%04lX when %s", (gulong) status,
               doing);
  return FALSE;
}

static void
load_fonts (SwPdf *pdf)
{
  /* One font object a face, made once, or every page would carry its own. */
  for (guint i = 0; i < SW_FACE_COUNT; i++)
    {
      const char *path = sw_paint_font_path (i, NULL);
      const char *name = HPDF_LoadTTFontFromFile (pdf->doc, path, HPDF_TRUE);
      pdf->fonts[i] = HPDF_GetFont (pdf->doc, name, "UTF-8");
      sw_pdf_map_to_unicode (pdf->fonts[i]);
    }
}

static void
set_info (SwPdf *pdf, const SwPdfInfo *info)
{
  const struct
  {
    HPDF_InfoType type;
    const char *value;
  } entries[] = {
    { HPDF_INFO_TITLE, info->title },     { HPDF_INFO_AUTHOR, info->author },
    { HPDF_INFO_SUBJECT, info->subject }, { HPDF_INFO_KEYWORDS, info->keywords },
    { HPDF_INFO_CREATOR, info->creator },
  };

  for (guint i = 0; i < G_N_ELEMENTS (entries); i++)
    if (entries[i].value)
      HPDF_SetInfoAttr (pdf->doc, entries[i].type, entries[i].value);
}

/* libharu has no call for these two, but gives out its dictionaries. */
static void
set_language (SwPdf *pdf, const char *language)
{
  const HPDF_MMgr memory = pdf->doc->mmgr;

  HPDF_Dict_Add (pdf->doc->catalog, "Lang", HPDF_String_New (memory, language, NULL));
}

static void
show_title_in_window (SwPdf *pdf)
{
  HPDF_Dict preferences =
      HPDF_Dict_GetItem (pdf->doc->catalog, "ViewerPreferences", HPDF_OCLASS_DICT);

  if (preferences)
    HPDF_Dict_AddBoolean (preferences, "DisplayDocTitle", HPDF_TRUE);
}

static gboolean
open_document (SwPdf *pdf, const SwPdfInfo *info, GError **error)
{
  pdf->doc = HPDF_New (NULL, NULL);
  if (!check_haru (pdf, "starting", error))
    return FALSE;
  HPDF_SetCompressionMode (pdf->doc, HPDF_COMP_ALL);
  HPDF_UseUTFEncodings (pdf->doc);
  HPDF_SetCurrentEncoder (pdf->doc, "UTF-8");
  pdf->utf8 = HPDF_GetEncoder (pdf->doc, "UTF-8");
  load_fonts (pdf);
  if (!check_haru (pdf, "loading the sheet font", error))
    return FALSE;
  /* "Fit to page" would spoil the scale of every drawing. */
  HPDF_SetViewerPreference (pdf->doc, HPDF_PRINT_SCALING_NONE);
  if (info)
    set_info (pdf, info);
  if (info && info->title)
    show_title_in_window (pdf);
  if (info && info->language)
    set_language (pdf, info->language);
  HPDF_AddPageLabel (pdf->doc, 0, HPDF_PAGE_NUM_STYLE_DECIMAL, 1, "");
  return check_haru (pdf, "writing the document's information", error);
}

/* Pages come before their contents, since links lead forwards too. */
static gboolean
add_page (SwPdf *pdf, const SwFigure *figure, guint number, GError **error)
{
  HPDF_Page page;

  if (!sw_pdf_check_size (figure, number, error))
    return FALSE;
  page = HPDF_AddPage (pdf->doc);
  HPDF_Page_SetWidth (page, (HPDF_REAL) (figure->width_mm * SW_PT_PER_MM));
  HPDF_Page_SetHeight (page, (HPDF_REAL) (figure->height_mm * SW_PT_PER_MM));
  if (figure->title)
    {
      HPDF_Destination target = HPDF_Page_CreateDestination (page);

      if (!figure->goes_on)
        HPDF_Outline_SetDestination (
            HPDF_CreateOutline (pdf->doc, NULL, figure->title, pdf->utf8), target);
      if (!g_hash_table_contains (pdf->targets, figure->title))
        g_hash_table_insert (pdf->targets, figure->title, target);
      HPDF_SetPageMode (pdf->doc, HPDF_PAGE_MODE_USE_OUTLINE);
    }
  return check_haru (pdf, "adding a page", error);
}

static gboolean
check_links (const SwPdf *pdf, const SwFigure *figure, guint number, GError **error)
{
  for (guint i = 0; i < figure->items->len; i++)
    {
      const SwItem *item = &g_array_index (figure->items, SwItem, i);

      if (item->kind != SW_ITEM_LINK || g_hash_table_contains (pdf->targets, item->text))
        continue;
      g_set_error (error, SW_PAINT_ERROR, SW_PAINT_ERROR_WRITE,
                   "page %u: a link leads to “%s”, but no page has this title", number,
                   item->text);
      return FALSE;
    }
  return TRUE;
}

static gboolean
check_work (const SwLongWork *work, guint done, guint n_pages, GError **error)
{
  if (sw_long_work_goes_on (work, done, n_pages))
    return TRUE;
  g_set_error (error, SW_PAINT_ERROR, SW_PAINT_ERROR_STOPPED,
               "the PDF was stopped after page %u of %u", done, n_pages);
  return FALSE;
}

static gboolean
add_pages (SwPdf *pdf, const GPtrArray *pages, const SwLongWork *work, GError **error)
{
  for (guint i = 0; i < pages->len; i++)
    if (!add_page (pdf, g_ptr_array_index (pages, i), i + 1, error))
      return FALSE;
  pdf->tags = sw_pdf_tags_new (pdf, pages->len);
  for (guint i = 0; i < pages->len; i++)
    {
      const SwFigure *figure = g_ptr_array_index (pages, i);

      if (!check_links (pdf, figure, i + 1, error)
          || !check_work (work, i, pages->len, error))
        return FALSE;
      sw_pdf_paint_page (pdf, HPDF_GetPageByIndex (pdf->doc, i), figure);
      if (!check_haru (pdf, "drawing a page", error))
        return FALSE;
    }
  sw_pdf_tags_finish (pdf->tags);
  return check_haru (pdf, "writing the structure tree", error);
}

static gboolean
save (SwPdf *pdf, guint n_pages, const char *path, const SwLongWork *work, GError **error)
{
  g_autofree guint8 *bytes = NULL;
  HPDF_UINT32 length;

  HPDF_SaveToStream (pdf->doc);
  HPDF_ResetStream (pdf->doc);
  if (!check_haru (pdf, "putting the document together", error))
    return FALSE;
  length = HPDF_GetStreamSize (pdf->doc);
  bytes = g_malloc (length);
  HPDF_ReadFromStream (pdf->doc, bytes, &length);
  return check_haru (pdf, "reading the finished document", error)
         && check_work (work, n_pages, n_pages, error)
         && sw_write_whole (path, bytes, length, error);
}

gboolean
sw_paint_pdf (const GPtrArray *pages, const SwPalette *palette, const SwPdfInfo *info,
              const char *path, const SwLongWork *work, GError **error)
{
  g_autoptr (GHashTable) targets = g_hash_table_new (g_str_hash, g_str_equal);
  g_autoptr (GArray) veils = g_array_new (FALSE, FALSE, sizeof (SwPdfVeil));
  g_autoptr (GArray) hatch = g_array_new (FALSE, FALSE, sizeof (SwPaperPoint));
  SwPdf pdf = { .palette = palette, .targets = targets, .veils = veils, .hatch = hatch };
  gboolean done;

  g_return_val_if_fail (pages->len > 0, FALSE);
  pdf.faces = sw_faces_get (error);
  if (!pdf.faces)
    return FALSE;
  done = open_document (&pdf, info, error) && add_pages (&pdf, pages, work, error)
         && save (&pdf, pages->len, path, work, error);
  g_clear_pointer (&pdf.tags, sw_pdf_tags_free);
  if (pdf.doc)
    HPDF_Free (pdf.doc);
  return done;
}
