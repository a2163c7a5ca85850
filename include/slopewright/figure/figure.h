/* SPDX-License-Identifier: MIT */
#pragma once

#include <glib.h>

/*
 * A figure is a drawing as data: a display list in paper millimetres, origin
 * top left, y down. Painters draw it; tests, hit-testing and accessibility
 * read it. A page of a pack is a figure too.
 */

/** What an item shows; decides its look (palette) and what it is to a test. Palette keys are the codes. */
typedef enum
{
  SW_ROLE_TEXT,  /* "text" */
  SW_ROLE_MUTED, /* secondary text */
  SW_ROLE_HEADING,
  SW_ROLE_TABLE_HEAD, /* band behind a table head */
  SW_ROLE_TABLE_RULE,
  SW_ROLE_FRAME,
  SW_ROLE_GRID,
  SW_ROLE_GROUND,   /* the ground line of a section, the outline of a face */
  SW_ROLE_SOIL,     /* fill below the ground */
  SW_ROLE_BACKFILL, /* fill of a trench */
  SW_ROLE_BLANKET,  /* blanket seen from the side */
  SW_ROLE_RUN,      /* fill of a run seen from above */
  SW_ROLE_RUN_EDGE,
  SW_ROLE_LAP,   /* hatched strip where two runs overlap */
  SW_ROLE_JOINT, /* end lap */
  SW_ROLE_TRENCH,
  SW_ROLE_SLOT,
  SW_ROLE_PIN,
  SW_ROLE_DIMENSION, /* dimension lines and arrows */
  SW_ROLE_FALL_LINE, /* arrows */
  SW_ROLE_WIND,
  SW_ROLE_BREAK,  /* crest, toe, bench lines */
  SW_ROLE_HANDLE, /* editable point on a canvas */
  SW_ROLE_HIGHLIGHT,
  SW_ROLE_CAUTION,
  SW_ROLE_STOP,
  SW_ROLE_SCALE_BAR,
  SW_ROLE_OBSTACLE,    /* what stands on the face and is not covered */
  SW_ROLE_COLLAR,      /* patch round an obstacle */
  SW_ROLE_ZONE,        /* boundary of a soil zone */
  SW_ROLE_OPEN_TRENCH, /* dug and not yet filled */
  SW_ROLE_NEW,         /* what a step of the work adds: hatched */
  SW_ROLE_NEW_EDGE,    /* the same, its edge alone */
  SW_ROLE_NEW_PIN,
  SW_ROLE_WHITE, /* knock-out behind a label */
  SW_ROLE_COUNT
} SwRole;

/** The palette key of @role: "text", "table_head", "run_edge". */
const char *sw_role_code (SwRole role);

typedef struct
{
  double x_mm, y_mm;
} SwPaperPoint;

typedef enum
{
  SW_ALIGN_LEFT,
  SW_ALIGN_CENTRE,
  SW_ALIGN_RIGHT
} SwAlign;
typedef enum
{
  SW_FACE_REGULAR,
  SW_FACE_BOLD
} SwTypeface;

typedef enum
{
  SW_ITEM_LINE,   /* open polyline, stroked */
  SW_ITEM_AREA,   /* closed polygon, filled and/or stroked as the palette says */
  SW_ITEM_CIRCLE, /* points[0] centre, points[1].x_mm radius */
  SW_ITEM_TEXT,   /* points[0] base line position */
  SW_ITEM_CLIP,   /* points: closed polygon; until the matching SW_ITEM_UNCLIP */
  SW_ITEM_UNCLIP,
  SW_ITEM_LINK, /* points[0], points[1]: corners; text: target bookmark; what is tagged
                   next are its words */
  SW_ITEM_TAG,  /* what follows is one thing to who listens instead of looks */
  SW_ITEM_UNTAG
} SwItemKind;

/**
 * What a part of a page is, for screen readers and for the pack as text. Text outside
 * any tag is a paragraph of its own; lines outside any are furniture.
 */
typedef enum
{
  SW_TAG_TITLE,   /* of a page */
  SW_TAG_HEADING, /* of a part of a page */
  SW_TAG_PARAGRAPH,
  SW_TAG_MORE,    /* further lines of the paragraph before */
  SW_TAG_PICTURE, /* its words say what it shows */
  SW_TAG_ROW,     /* of a table: holds cells; with words, the first of a new table */
  SW_TAG_HEAD_CELL,
  SW_TAG_CELL,
  SW_TAG_BAND, /* the one cell of a row: head of the rows below, across all columns */
  SW_TAG_FURNITURE, /* said on every page: passed over */
  SW_TAG_COUNT
} SwTag;

/** "title", "head-cell". */
const char *sw_tag_code (SwTag tag);

typedef struct
{
  SwItemKind kind;
  SwRole role;
  const char *object;          /* interned: "A/run/7", "A/section/2"; "" for none */
  guint first_point, n_points; /* into the figure's points */
  char *text;                  /* TEXT, LINK, TAG: its words */
  SwTag tag;                   /* TAG */
  double size_mm;              /* TEXT: height of the em */
  SwAlign align;
  SwTypeface typeface;
  double turn_rad; /* TEXT: anticlockwise */
} SwItem;

typedef struct
{
  double width_mm, height_mm;
  GArray *items;          /* (element-type SwItem) */
  GArray *points;         /* (element-type SwPaperPoint) */
  char *title;            /* spoken name and bookmark; may be NULL */
  gboolean goes_on;       /* the page before, continued: its title is no bookmark */
  const char *object_now; /* private: object id of items being added, interned */
} SwFigure;

SwFigure *sw_figure_new (double width_mm, double height_mm);
void sw_figure_free (SwFigure *figure);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (SwFigure, sw_figure_free)

/** Items added from here on belong to @object ("" for none). */
void sw_figure_object (SwFigure *figure, const char *object);

void sw_figure_line (SwFigure *figure, SwRole role, const SwPaperPoint *points,
                     guint count);
void sw_figure_segment (SwFigure *figure, SwRole role, double x0_mm, double y0_mm,
                        double x1_mm, double y1_mm);
void sw_figure_area (SwFigure *figure, SwRole role, const SwPaperPoint *points,
                     guint count);
void sw_figure_box (SwFigure *figure, SwRole role, double x_mm, double y_mm,
                    double width_mm, double height_mm);
void sw_figure_circle (SwFigure *figure, SwRole role, double x_mm, double y_mm,
                       double radius_mm);
void sw_figure_text (SwFigure *figure, SwRole role, double x_mm, double y_mm,
                     double size_mm, SwAlign align, SwTypeface typeface, double turn_rad,
                     const char *text);
void sw_figure_clip (SwFigure *figure, const SwPaperPoint *points, guint count);
void sw_figure_unclip (SwFigure *figure);
void sw_figure_link (SwFigure *figure, double x_mm, double y_mm, double width_mm,
                     double height_mm, const char *target);

/**
 * sw_figure_tag:
 * @words: what is said of it: the whole text of a paragraph or cell, the description of
 *   a picture; "" for rows, furniture and further lines
 *
 * Holds until the matching sw_figure_untag(). Only rows hold other tags: their cells.
 */
void sw_figure_tag (SwFigure *figure, SwTag tag, const char *words);
void sw_figure_untag (SwFigure *figure);

/** The words of a drawing for who cannot see it: its title and what is written in it. (transfer full) */
char *sw_figure_words (const SwFigure *figure);

/** Copy all items of @part into @figure, shifted; keeps roles and objects. */
void sw_figure_place (SwFigure *figure, const SwFigure *part, double x_mm, double y_mm);

const SwPaperPoint *sw_figure_item_points (const SwFigure *figure, const SwItem *item);

/** The display list as text, one item a line, for tests. (transfer full) */
char *sw_figure_dump (const SwFigure *figure);

/**
 * SwTextMeasure: how wide text is, unhinted. Given by paint; figure and sheet
 * know no font. @width_mm (typeface, size_mm, text, data).
 */
typedef struct
{
  double (*width_mm) (SwTypeface typeface, double size_mm, const char *text,
                      gpointer data);
  gpointer data;
  double ascent, descent; /* ratios of the em, positive */
} SwTextMeasure;
