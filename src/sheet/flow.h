/* SPDX-License-Identifier: MIT */
#pragma once

#include "type.h"

/*
 * A flow is a list of slugs: strips of a page that are never cut. A page may
 * end before any slug that is not tied to the one above it. A slug of a table
 * carries the table's head, which is set again when the slug begins a page.
 */
typedef struct SwFlow SwFlow;

/** @width_mm: of every slug. @pen is copied. */
SwFlow *sw_flow_new (const SwPen *pen, double width_mm);
void sw_flow_free (SwFlow *flow);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (SwFlow, sw_flow_free)

const SwPen *sw_flow_pen (const SwFlow *flow);
double sw_flow_width_mm (const SwFlow *flow);
/** Height of all that is in it when nothing breaks. */
double sw_flow_height_mm (const SwFlow *flow);
gboolean sw_flow_is_empty (const SwFlow *flow);

/** Space above the next slug, unless it begins a page. The largest of several holds. */
void sw_flow_space (SwFlow *flow, double mm);
/** The next slug begins a page. */
void sw_flow_break (SwFlow *flow);
/** What has been added last stays on the page of what follows. */
void sw_flow_tie (SwFlow *flow);

/** Add a slug; takes @figure. */
void sw_flow_add (SwFlow *flow, SwFigure *figure);
/** The same with a table head to be set again; takes a reference to it. */
void sw_flow_add_under (SwFlow *flow, SwFigure *figure, SwFigure *head);
/** Figures of heads are kept alive by the flow: takes @head, gives it back. */
SwFigure *sw_flow_keep_head (SwFlow *flow, SwFigure *head);

/** A paragraph; pages break inside it only with two lines on both sides. */
void sw_flow_text (SwFlow *flow, SwStyle style, SwRole role, const char *markup);
/** Heading of a part: tied to what follows. */
void sw_flow_heading (SwFlow *flow, const char *text);
/** Paragraph behind a hanging mark such as "1" or "–". */
void sw_flow_item (SwFlow *flow, SwStyle style, const char *mark, const char *markup);
/** A line to write on, with the label before it. */
void sw_flow_write_in (SwFlow *flow, const char *label);
/** Place a drawing in the middle of the width; takes @figure. */
void sw_flow_drawing (SwFlow *flow, SwFigure *figure);

/**
 * sw_flow_box:
 * @role: look of the box: SW_ROLE_FRAME, SW_ROLE_CAUTION, SW_ROLE_STOP
 * @inner: what is in it, set to sw_flow_box_width_mm(); taken
 *
 * Kept on one page where that can be; a box taller than half a page loses its
 * frame instead of its contents.
 */
void sw_flow_box (SwFlow *flow, SwRole role, SwFlow *inner);
/** The same, at least @least_mm high. */
void sw_flow_box_tall (SwFlow *flow, SwRole role, SwFlow *inner, double least_mm);
double sw_flow_box_width_mm (double outer_mm);
/** A paragraph in a box of the look of cautions. */
void sw_flow_caution (SwFlow *flow, const char *markup);

/** Flows side by side with a gap; takes them. The widths are theirs. Columns too tall
 * for a page go below each other. */
void sw_flow_row (SwFlow *flow, double gap_mm, SwFlow *const *columns, guint count);

/** Boxes of one height and one width side by side; takes the flows in them, which are
 * set to sw_flow_box_width_mm() of sw_flow_share_mm(). */
void sw_flow_boxes (SwFlow *flow, SwRole role, double gap_mm, SwFlow *const *inners,
                    guint count);
/** Width of one of @count columns with gaps between them. */
double sw_flow_share_mm (const SwFlow *flow, double gap_mm, guint count);

/** How many pages of that height it takes. */
guint sw_flow_count_pages (const SwFlow *flow, double height_mm);
/** What is left of the last page when set on pages of that height. */
double sw_flow_room_mm (const SwFlow *flow, double height_mm);

/** All in one figure, nothing repeated. (transfer full) */
SwFigure *sw_flow_to_figure (const SwFlow *flow);

/**
 * sw_flow_to_pages:
 * @height_mm: of a page's body
 *
 * Returns: (transfer full) (element-type SwFigure): bodies as wide as the flow
 *   and @height_mm high; at least one.
 */
GPtrArray *sw_flow_to_pages (const SwFlow *flow, double height_mm);
