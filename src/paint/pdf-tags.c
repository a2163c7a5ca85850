/* SPDX-License-Identifier: MIT */
#include "pdf-tags.h"

typedef enum
{
  OPEN_NOTHING,
  OPEN_TAG,      /* by sw_pdf_tags_begin() */
  OPEN_TEXT,     /* a paragraph made for text without a tag */
  OPEN_FURNITURE /* made for lines without a tag */
} Open;

struct SwPdfTags
{
  SwPdf *pdf;
  HPDF_Dict root, document;
  HPDF_Array document_kids;
  HPDF_Array numbers;              /* of the parent tree: page, its elements */
  HPDF_Dict table, row, paragraph; /* that further rows, cells and lines belong to */
  guint row_cells, n_columns;      /* of the table so far */
  GPtrArray *bands;                /* (borrowed) of the table: heads across all columns */
  HPDF_Page page;
  HPDF_Array page_elements; /* by number of marked content */
  guint n_pages, n_begun;
  HPDF_Annotation link; /* whose words come next; NULL */
  GPtrArray *links;     /* (borrowed) elements, by their numbers behind the pages' */
  Open open;
};

/* Structure types of ISO 32000-1, 14.8.4; NULL: no element of its own. */
static const char *const types[SW_TAG_COUNT] = {
  [SW_TAG_TITLE] = "H1",       [SW_TAG_HEADING] = "H2",   [SW_TAG_PARAGRAPH] = "P",
  [SW_TAG_PICTURE] = "Figure", [SW_TAG_HEAD_CELL] = "TH", [SW_TAG_CELL] = "TD",
  [SW_TAG_BAND] = "TH",
};

static HPDF_Dict
new_indirect (SwPdfTags *tags)
{
  HPDF_Dict dict = HPDF_Dict_New (tags->pdf->doc->mmgr);

  HPDF_Xref_Add (tags->pdf->doc->xref, dict);
  return dict;
}

static HPDF_Dict
new_element (SwPdfTags *tags, HPDF_Dict parent, const char *type)
{
  HPDF_Dict element = new_indirect (tags);
  HPDF_Array kids = HPDF_Array_New (tags->pdf->doc->mmgr);

  HPDF_Dict_AddName (element, "Type", "StructElem");
  HPDF_Dict_AddName (element, "S", type);
  HPDF_Dict_Add (element, "P", parent);
  HPDF_Dict_Add (element, "K", kids);
  HPDF_Array_Add (HPDF_Dict_GetItem (parent, "K", HPDF_OCLASS_ARRAY), element);
  return element;
}

SwPdfTags *
sw_pdf_tags_new (SwPdf *pdf, guint n_pages)
{
  SwPdfTags *tags = g_new0 (SwPdfTags, 1);
  HPDF_Dict parents;

  tags->pdf = pdf;
  tags->n_pages = n_pages;
  tags->bands = g_ptr_array_new ();
  tags->links = g_ptr_array_new ();
  tags->root = new_indirect (tags);
  HPDF_Dict_AddName (tags->root, "Type", "StructTreeRoot");
  HPDF_Dict_Add (tags->root, "K", HPDF_Array_New (pdf->doc->mmgr));
  tags->document = new_element (tags, tags->root, "Document");
  parents = new_indirect (tags);
  tags->numbers = HPDF_Array_New (pdf->doc->mmgr);
  HPDF_Dict_Add (parents, "Nums", tags->numbers);
  HPDF_Dict_Add (tags->root, "ParentTree", parents);
  return tags;
}

void
sw_pdf_tags_free (SwPdfTags *tags)
{
  g_ptr_array_unref (tags->bands);
  g_ptr_array_unref (tags->links);
  g_free (tags); /* libharu owns the dictionaries */
}

static void
write_operator (SwPdfTags *tags, const char *text)
{
  const HPDF_PageAttr attributes = tags->page->attr;

  HPDF_Stream_WriteStr (attributes->stream, text);
}

/* Content on a page after the element's first is told with its page. */
static void
add_content (SwPdfTags *tags, HPDF_Dict element, HPDF_UINT32 number)
{
  HPDF_Array kids = HPDF_Dict_GetItem (element, "K", HPDF_OCLASS_ARRAY);
  HPDF_Dict content = HPDF_Dict_New (tags->pdf->doc->mmgr);

  HPDF_Dict_AddName (content, "Type", "MCR");
  HPDF_Dict_Add (content, "Pg", tags->page);
  HPDF_Dict_AddNumber (content, "MCID", (HPDF_INT32) number);
  HPDF_Array_Add (kids, content);
}

/* The pending link below @parent. Its annotation is an object of the element, and the
 * annotation's number in the parent tree leads back (ISO 32000-1, 14.7.4.3). */
static HPDF_Dict
add_link_element (SwPdfTags *tags, HPDF_Dict parent)
{
  HPDF_Dict element = new_element (tags, parent, "Link");
  HPDF_Dict object = HPDF_Dict_New (tags->pdf->doc->mmgr);

  HPDF_Dict_AddName (object, "Type", "OBJR");
  HPDF_Dict_Add (object, "Pg", tags->page);
  HPDF_Dict_Add (object, "Obj", tags->link);
  HPDF_Array_Add (HPDF_Dict_GetItem (element, "K", HPDF_OCLASS_ARRAY), object);
  HPDF_Dict_AddNumber (tags->link, "StructParent",
                       (HPDF_INT32) (tags->n_pages + tags->links->len));
  g_ptr_array_add (tags->links, element);
  tags->link = NULL;
  return element;
}

static void
open_content (SwPdfTags *tags, HPDF_Dict owner, const char *owner_type)
{
  const char *type = tags->link != NULL ? "Link" : owner_type;
  const HPDF_Dict element = tags->link != NULL ? add_link_element (tags, owner) : owner;
  const HPDF_UINT32 number = HPDF_Array_Items (tags->page_elements);
  g_autofree char *text = g_strdup_printf ("/%s <</MCID %u>> BDC\012", type, number);

  add_content (tags, element, number);
  HPDF_Array_Add (tags->page_elements, element);
  write_operator (tags, text);
}

static void
close_content (SwPdfTags *tags)
{
  if (tags->open != OPEN_NOTHING)
    write_operator (tags, "EMC\012");
  tags->open = OPEN_NOTHING;
}

/* What a head cell is the head of: ISO 32000-1, table 349. */
static void
add_scope (SwPdfTags *tags, HPDF_Dict head, guint columns)
{
  HPDF_Dict scope = HPDF_Dict_New (tags->pdf->doc->mmgr);

  HPDF_Dict_AddName (scope, "O", "Table");
  HPDF_Dict_AddName (scope, "Scope", "Column");
  if (columns > 1)
    HPDF_Dict_AddNumber (scope, "ColSpan", (HPDF_INT32) columns);
  HPDF_Dict_Add (head, "A", scope);
}

/* How wide a band is, its table knows when it ends. */
static void
end_table (SwPdfTags *tags)
{
  for (guint i = 0; i < tags->bands->len; i++)
    add_scope (tags, g_ptr_array_index (tags->bands, i), tags->n_columns);
  g_ptr_array_set_size (tags->bands, 0);
  tags->n_columns = 0;
  tags->table = NULL;
}

void
sw_pdf_tags_begin_page (SwPdfTags *tags, HPDF_Page page)
{
  tags->page = page;
  tags->page_elements = HPDF_Array_New (tags->pdf->doc->mmgr);
  HPDF_Dict_AddNumber (page, "StructParents", (HPDF_INT32) tags->n_begun);
  HPDF_Dict_AddName (page, "Tabs", "S");
  HPDF_Array_AddNumber (tags->numbers, (HPDF_INT32) tags->n_begun++);
  HPDF_Array_Add (tags->numbers, tags->page_elements);
}

static HPDF_Dict
add_paragraph (SwPdfTags *tags)
{
  end_table (tags);
  tags->paragraph = new_element (tags, tags->document, "P");
  return tags->paragraph;
}

/* A link that no words followed. */
static void
place_link (SwPdfTags *tags)
{
  if (tags->link != NULL)
    add_link_element (tags, add_paragraph (tags));
}

void
sw_pdf_tags_end_page (SwPdfTags *tags)
{
  close_content (tags);
  place_link (tags);
  end_table (tags);
}

static void
begin_row (SwPdfTags *tags, const char *words)
{
  if (*words != '\0')
    end_table (tags);
  if (tags->table == NULL)
    tags->table = new_element (tags, tags->document, "Table");
  tags->row = new_element (tags, tags->table, "TR");
  tags->row_cells = 0;
}

static HPDF_Dict
add_cell (SwPdfTags *tags, SwTag tag)
{
  HPDF_Dict cell = new_element (tags, tags->row, types[tag]);

  tags->row_cells++;
  tags->n_columns = MAX (tags->n_columns, tags->row_cells);
  if (tag == SW_TAG_HEAD_CELL)
    add_scope (tags, cell, 1);
  else if (tag == SW_TAG_BAND)
    g_ptr_array_add (tags->bands, cell);
  return cell;
}

static HPDF_Dict
element_for (SwPdfTags *tags, SwTag tag, const char *words)
{
  HPDF_Dict element;

  if (tag == SW_TAG_HEAD_CELL || tag == SW_TAG_CELL || tag == SW_TAG_BAND)
    return add_cell (tags, tag);
  if (tag == SW_TAG_PARAGRAPH)
    return add_paragraph (tags);
  end_table (tags);
  element = new_element (tags, tags->document, types[tag]);
  if (tag == SW_TAG_PICTURE)
    HPDF_Dict_Add (element, "Alt",
                   HPDF_String_New (tags->pdf->doc->mmgr, words, tags->pdf->utf8));
  return element;
}

void
sw_pdf_tags_begin (SwPdfTags *tags, SwTag tag, const char *words)
{
  close_content (tags);
  if (tag == SW_TAG_ROW)
    {
      begin_row (tags, words);
      return;
    }
  if (tag == SW_TAG_FURNITURE)
    write_operator (tags, "/Artifact <</Type /Pagination>> BDC\012");
  else if (tag == SW_TAG_MORE && tags->paragraph != NULL)
    open_content (tags, tags->paragraph, "P");
  else if (tag == SW_TAG_MORE)
    open_content (tags, add_paragraph (tags), "P");
  else
    open_content (tags, element_for (tags, tag, words), types[tag]);
  tags->open = OPEN_TAG;
}

/* A row has no contents but its cells': nothing is open when it ends. */
void
sw_pdf_tags_end (SwPdfTags *tags)
{
  if (tags->open == OPEN_TAG)
    close_content (tags);
}

void
sw_pdf_tags_before (SwPdfTags *tags, const SwItem *item)
{
  const Open wanted = item->kind == SW_ITEM_TEXT ? OPEN_TEXT : OPEN_FURNITURE;

  if (tags->open == OPEN_TAG || (tags->open == wanted && wanted == OPEN_FURNITURE))
    return;
  close_content (tags);
  if (wanted == OPEN_TEXT)
    open_content (tags, add_paragraph (tags), "P");
  else
    write_operator (tags, "/Artifact <</Type /Layout>> BDC\012");
  tags->open = wanted;
}

void
sw_pdf_tags_link (SwPdfTags *tags, HPDF_Annotation link, const char *words)
{
  place_link (tags);
  HPDF_Dict_Add (link, "Contents",
                 HPDF_String_New (tags->pdf->doc->mmgr, words, tags->pdf->utf8));
  tags->link = link;
}

void
sw_pdf_tags_finish (SwPdfTags *tags)
{
  HPDF_Dict mark = HPDF_Dict_New (tags->pdf->doc->mmgr);

  for (guint i = 0; i < tags->links->len; i++)
    {
      HPDF_Array_AddNumber (tags->numbers, (HPDF_INT32) (tags->n_pages + i));
      HPDF_Array_Add (tags->numbers, g_ptr_array_index (tags->links, i));
    }
  HPDF_Dict_AddNumber (tags->root, "ParentTreeNextKey",
                       (HPDF_INT32) (tags->n_pages + tags->links->len));
  HPDF_Dict_AddBoolean (mark, "Marked", HPDF_TRUE);
  HPDF_Dict_Add (tags->pdf->doc->catalog, "MarkInfo", mark);
  HPDF_Dict_Add (tags->pdf->doc->catalog, "StructTreeRoot", tags->root);
}
