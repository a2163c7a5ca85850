/* SPDX-License-Identifier: MIT */
#pragma once

#include <slopewright/base/number-text.h>

#include "point-edit.h"

/* Points and faces in words, for labels and assistive tools. All (transfer full). */

/** "Section point 3 of 6, toe", "Outline point 2 of 4", "Obstacle 1, Utility box". */
char *sw_point_label (const SwFace *face, SwPointList list, int index);

/** "4.20 m out, 1.35 m up; to the next point 2H:1V · 26.6° · 50 %". */
char *sw_point_description (const SwFace *face, SwPointList list, int index,
                            SwNumberStyle style);

/** A list in a choice: "Section at 12.50 m", "Outline", "Obstacle 1 · Utility box". */
char *sw_points_name (const SwFace *face, SwPointList list, SwNumberStyle style);

/** Id in drawings: "A/obstacle/1", "A/zone/S"; NULL for section and outline. */
char *sw_points_object (const SwFace *face, SwPointList list);

/** The obstacle or zone with that id, FALSE if none. */
gboolean sw_points_of_object (const SwFace *face, const char *object, SwPointList *list);

typedef enum
{
  SW_STEP_MOVE,
  SW_STEP_ADD,
  SW_STEP_REMOVE,
  SW_STEP_VERB_COUNT
} SwStepVerb;

/** What an edit is called in the menu: "Move Section Point 3", "Remove Obstacle 1". */
char *sw_point_step (SwStepVerb verb, const SwFace *face, SwPointList list, int index);

/** "Face A falls 5.00 m over 10.00 m: 2H:1V · 26.6° · 50 %". */
char *sw_face_description (const SwFace *face, SwNumberStyle style);
