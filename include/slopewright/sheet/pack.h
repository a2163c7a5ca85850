/* SPDX-License-Identifier: MIT */
#pragma once

#include <slopewright/base/long-work.h>
#include <slopewright/figure/drawings.h>

/** Paper size in mm, portrait. */
void sw_paper_size_mm (SwPaper paper, double *width_mm, double *height_mm);
/** "A4", "Letter", "A3", "Tabloid". */
const char *sw_paper_code (SwPaper paper);
gboolean sw_paper_from_code (const char *code, SwPaper *paper);

/**
 * sw_pack_new:
 * @result: status must be SW_OK
 * @draw: texts and style of the pack's language and units
 * @paper: page size
 * @plan: which kind of document, with its texts; usually the job's own
 * @version: program version, printed in the footer
 * @fingerprint: hash of the job file's bytes, printed in the footer
 * @work: (nullable): asked before each part of the pack; its number of parts is that of
 *   the kind of document
 *
 * Reads nothing but its arguments and writes to none, so a thread can make one pack while
 * others read the same result; @draw's measure must be that thread's own.
 *
 * Returns: (transfer full) (element-type SwFigure): the pages, in
 *   order; each page's title is its bookmark, but for one that goes on with the page
 *   before. NULL when @work stopped it.
 */
GPtrArray *sw_pack_new (const SwResult *result, const SwDraw *draw, SwPaper paper,
                        const SwPackPlan *plan, const char *version,
                        const char *fingerprint, const SwLongWork *work);
