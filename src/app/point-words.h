/* SPDX-License-Identifier: MIT */
#pragma once

#include <slopewright/base/number-text.h>

#include "point-edit.h"

/* Points and faces in words, for labels and assistive tools. All (transfer full). */

/** "Section point 3 of 6, toe", "Outline point 2 of 4". */
char *sw_point_label (const SwFace *face, SwPointList list, guint index);

/** "4.20 m out, 1.35 m up; to the next point 2H:1V · 26.6° · 50 %". */
char *sw_point_description (const SwFace *face, SwPointList list, guint index,
                            SwNumberStyle style);

/** "Face A falls 5.00 m over 10.00 m: 2H:1V · 26.6° · 50 %". */
char *sw_face_description (const SwFace *face, SwNumberStyle style);
