/* SPDX-License-Identifier: MIT */
#pragma once

#include "pdf.h"

/*
 * The structure tree of a tagged PDF (ISO 32000-1, 14.7 and 14.8), made from the tags of
 * the figures through libharu's dictionaries. Marked contents on a page are numbered;
 * the tree's elements point at the numbers, and the parent tree back.
 */
typedef struct SwPdfTags SwPdfTags;

/** @n_pages: how many pages are going to be begun, each once. */
SwPdfTags *sw_pdf_tags_new (SwPdf *pdf, guint n_pages);
void sw_pdf_tags_free (SwPdfTags *tags);

/** What is written from here on is on @page. */
void sw_pdf_tags_begin_page (SwPdfTags *tags, HPDF_Page page);
/** Close what is open. */
void sw_pdf_tags_end_page (SwPdfTags *tags);

void sw_pdf_tags_begin (SwPdfTags *tags, SwTag tag, const char *words);
void sw_pdf_tags_end (SwPdfTags *tags);
/** Before each item: what no tag holds becomes a paragraph, or furniture. */
void sw_pdf_tags_before (SwPdfTags *tags, const SwItem *item);

/** The contents that come next are those of @link, which leads to what @words name. */
void sw_pdf_tags_link (SwPdfTags *tags, HPDF_Annotation link, const char *words);

/** Put the finished tree into the document's catalog. */
void sw_pdf_tags_finish (SwPdfTags *tags);
