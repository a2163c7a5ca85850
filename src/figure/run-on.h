/* SPDX-License-Identifier: MIT */
#pragma once

#include "drawing.h"

/*
 * Water that arrives from above the crest, where the site visit says so or a length of
 * ground above is given: an arrow towards the crest, "/run-on".
 */

/** @paper: box of the outline on paper; @row_mm: how far above it the arrow has its middle */
void sw_plan_run_on (SwDrawing *drawing, SwBox paper, double row_mm);
void sw_section_run_on (SwDrawing *drawing);
