/* SPDX-License-Identifier: MIT */
#pragma once

#include "drawing.h"

/*
 * What stands on a face and what it is made of: obstacles and soil zones. Plan
 * and face view draw them alike, each in its own shape of the ground.
 */

/** How a drawing shows the ground: points (along, out) on paper. */
typedef struct
{
  /** (element-type SwPaperPoint) (transfer full) */
  GArray *(*path) (const SwDrawing *drawing, const SwPoint *points, guint count,
                   gboolean closed);
  SwPaperPoint (*at) (const SwDrawing *drawing, double along_m, double out_m);
} SwLie;

/** Boundaries of the soil zones, as far as they lie on the face. */
void sw_draw_zones (SwDrawing *drawing, const SwLie *lie);

/** Obstacles, each with the patch round it once the face is laid out. */
void sw_draw_obstacles (SwDrawing *drawing, const SwLie *lie);

/** Numbers and names of the obstacles; soils with their pins. */
void sw_note_obstacles (SwDrawing *drawing, const SwLie *lie);
void sw_note_zones (SwDrawing *drawing, const SwLie *lie);

/** Entries for both, with each obstacle's place; nothing when the face has neither. */
void sw_key_add_site (GArray *key, const SwResult *result, guint face,
                      const SwDraw *draw);

/** The patch round an obstacle on plan. (element-type SwPoint) (transfer full) */
GArray *sw_collar_outline (const SwFaceLayout *laid, const SwObstacle *obstacle,
                           double overlap_m);
