/* SPDX-License-Identifier: MIT */
#pragma once

#include "drawing.h"

/** A step picture in the making: a slope with its crest at the left and its toe at the right. */
typedef struct
{
  const SwResult *result;
  const SwFace *face;
  SwFigure *figure;
  double slope_rad;
  SwPaperPoint crest, toe;
  double unit_mm; /* 1 at 30 x 22 mm */
} SwStepPicture;

void sw_step_prepare (SwStepPicture *picture);
void sw_step_seed (SwStepPicture *picture);
void sw_step_dig_key (SwStepPicture *picture);
void sw_step_anchor (SwStepPicture *picture);
void sw_step_backfill (SwStepPicture *picture);
void sw_step_unroll (SwStepPicture *picture);
void sw_step_pin_field (SwStepPicture *picture);
void sw_step_side_lap (SwStepPicture *picture);
void sw_step_end_lap (SwStepPicture *picture);
void sw_step_slot (SwStepPicture *picture);
void sw_step_toe (SwStepPicture *picture);
void sw_step_inspect (SwStepPicture *picture);

/** Point on the slope, 0 crest, 1 toe, moved @off_mm off the ground. */
SwPaperPoint sw_step_on_slope (const SwStepPicture *picture, double t, double off_mm);

void sw_step_segment (SwStepPicture *picture, SwRole role, double x0, double y0,
                      double x1, double y1);
void sw_step_arrow (SwStepPicture *picture, SwPaperPoint from, SwPaperPoint to);
