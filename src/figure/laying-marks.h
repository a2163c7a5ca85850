/* SPDX-License-Identifier: MIT */
#pragma once

#include "face-view.h"

/** Smallest distance of the pins of a step, as its role is spaced; metres, > 0. */
double sw_laying_pin_gap_m (const SwDrawing *drawing, const SwLayingStep *step);

/** The pins of a step that are in view, every @every of them, as dots. */
void sw_laying_draw_pins (SwDrawing *drawing, const SwLayingStep *step, SwRole role,
                          double radius_mm, gsize every);

/** What is new in the drawing's step, over everything else. */
void sw_laying_mark_new (SwDrawing *drawing);
