/* SPDX-License-Identifier: MIT */
#pragma once

#include <slopewright/figure/drawings.h>

/* Jobs for the drawing tests: invented demo slopes, laid out by the engine. */

typedef enum
{
  SLOPE_CUTTING, /* road cut with a bench: 6 m, 4 m bench, 8 m, all at 2:1, 48 m wide */
  SLOPE_HOUSE,   /* house lot: 2.2:1, 2.9 m, 23 m wide, 1.22 m rolls */
  SLOPE_SAND,    /* sandy bank: 1.5:1, 5.5 m, 26 m wide, wind the other way */
  SLOPE_WIDE,    /* 60 runs and check slots */
  SLOPE_L,       /* an L-shaped outline */
  SLOPE_SURVEY,  /* a section of 30 surveyed points */
  SLOPE_DITCH,   /* 90 m long, 1.6 m high */
  SLOPE_TALL,    /* 6 m wide, 60 m down */
  SLOPE_NOSE,    /* round the end of an embankment */
  SLOPE_BOWL,    /* round the inside of a bend */
  SLOPE_HEAP,    /* all round a stockpile */
  SLOPE_TERRACED_NOSE, /* round, with a bench between two gradients */
  SLOPE_RULED,   /* lower at the far end */
  SLOPE_SITE,    /* a box, a tree, a wall right across two runs, a headwall at the toe */
  SLOPE_SOILS,   /* firm clay, and a zone of loose sand past crest and toe */
  SLOPE_COUNT
} SlopeKind;

typedef struct
{
  SwCatalogue *catalogue;
  SwTexts *texts;
  SwResult *result;
  SwTextMeasure measure;
  SwDraw draw;
} Fixture;

/** @toe: toe kind of the practice. @texts_path: the English texts of the drawings. */
void fixture_set_up (Fixture *fixture, SlopeKind slope, SwToeKind toe, SwUnitSystem units,
                     const char *texts_path);
void fixture_tear_down (Fixture *fixture);
