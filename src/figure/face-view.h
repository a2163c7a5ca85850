/* SPDX-License-Identifier: MIT */
#pragma once

#include "drawing.h"

/** Whether every two pins are far enough apart on paper to be told apart. */
gboolean sw_face_view_shows_pins (const SwDrawing *drawing);

/** Whether the narrowest run has room for its cut length. */
gboolean sw_face_view_shows_lengths (const SwDrawing *drawing);

/** Numbers, lengths, names, arrows and dimensions of a face view. */
void sw_face_view_notes (SwDrawing *drawing, gboolean with_pins);

/** Smallest and largest side lap as laid over the face's tiers, as text. (transfer full) */
char *sw_side_lap_text (const SwFaceLayout *laid, const SwDraw *draw);
char *sw_end_lap_text (const SwFaceLayout *laid, const SwDraw *draw);
