/* SPDX-License-Identifier: MIT */
#pragma once

#include <slopewright/base/number-text.h>

#include "point-edit.h"

/* What a dragged point holds on to. */

typedef enum
{
  SW_SNAP_FREE,
  SW_SNAP_GRID,
  SW_SNAP_LEVEL,      /* section: at the height of another point; plan: as far out */
  SW_SNAP_IN_LINE,    /* plan: at the same place along the crest as another point */
  SW_SNAP_BREAK,      /* section: as far out as the same break of a section elsewhere */
  SW_SNAP_RATIO,      /* section: at a gradient from a neighbour */
  SW_SNAP_SQUARE,     /* plan: the side makes a right angle at a neighbour */
  SW_SNAP_CREST_LINE, /* plan */
  SW_SNAP_TOE_LINE,
} SwSnapKind;

typedef struct
{
  SwSnapKind kind;
  int of;    /* point, or section for SW_SNAP_BREAK */
  double hv; /* of SW_SNAP_RATIO */
} SwHold;

typedef struct
{
  SwPoint to;
  SwHold x, y; /* what each coordinate holds on to */
} SwSnap;

typedef struct
{
  SwPoint wish;          /* where the pointer wants it */
  double step_m;         /* of the grid, > 0 */
  double reach_m;        /* holds nearer than this win over the grid, >= 0 */
  gboolean fix_x, fix_y; /* this coordinate stays as wished */
} SwSnapWish;

/**
 * sw_snap_point:
 * @index: the point being moved; SW_WHOLE keeps to the grid
 *
 * Section: 2:1 and 3:1 from the neighbours, heights of other points, breaks of
 * sections elsewhere. Plan: in line with neighbours, on the crest or toe line,
 * right angles. Else the grid.
 */
SwSnap sw_snap_point (const SwFace *face, SwPointList list, int index, SwSnapWish wish);

/** "2H:1V · 26.6° · 50 % from point 2". (transfer full) */
char *sw_snap_text (SwSnap snap, double step_m, SwNumberStyle style);
