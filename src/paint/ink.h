/* SPDX-License-Identifier: MIT */
#pragma once

#include <slopewright/paint/paint.h>

/* What both painters must decide alike. */

/* Whether an item of this look is filled, hatched, stroked. */
gboolean sw_ink_fills (SwColour fill);
gboolean sw_ink_hatches (const SwLook *look, SwColour line);
gboolean sw_ink_strokes (const SwLook *look, SwColour line);

/*
 * The look's dashes in whole points, because libharu takes no others; on
 * screen they are the same, or the preview would not be the print.
 * Returns: how many; 0: solid.
 */
guint sw_ink_dash_pt (const SwLook *look, guint16 dash_pt[4]);

/* Where the text starts, given its width and alignment. */
SwPaperPoint sw_ink_text_start (const SwItem *item, SwPaperPoint at, double width_mm);

/*
 * sw_ink_dots: how many items from @first on are dots alike: discs of one
 * role, one radius and one opaque colour through and through; 0: none.
 *
 * Such a disc can be a line of no length with round ends. It takes a tenth of
 * the bytes of four curves and a quarter of their time, which counts where a
 * page has 30 000 pins.
 */
guint sw_ink_dots (const SwFigure *figure, guint first, const SwLook *look, SwColour line,
                   SwColour fill);

/* The width of the line that makes such a dot. */
double sw_ink_dot_width_mm (const SwFigure *figure, guint first, const SwLook *look);
