/* SPDX-License-Identifier: MIT */
#pragma once

#include "sheet.h"

/* What the pages of the class handout and of its answers share. */

/** The line that both print, so that they find each other again. */
void sw_class_seed (const SwSheet *sheet, SwFlow *flow);

/** Pages of the answers. */
void sw_class_exercise_answers (SwSheet *sheet);
void sw_class_fault_answers (SwSheet *sheet);
void sw_class_quiz_answers (SwSheet *sheet);

/** Points that each part can give. */
guint sw_class_exercise_points (const SwSheet *sheet);
guint sw_class_fault_points (const SwSheet *sheet);
guint sw_class_quiz_points (const SwSheet *sheet);
guint sw_class_practice_points (void);
