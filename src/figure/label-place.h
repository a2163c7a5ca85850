/* SPDX-License-Identifier: MIT */
#pragma once

#include <slopewright/figure/figure.h>

/*
 * Labels that never cover one another. A drawing asks for its labels, each
 * with places where it could go; then the most important choose first, and
 * one that finds no free place is left out.
 */

/** A turned box: half sizes along and across its own axis, turned anticlockwise as seen on paper. */
typedef struct
{
  double x_mm, y_mm;
  double half_width_mm, half_height_mm;
  double turn_rad;
} SwLabelBox;

/** An upright box, y down. */
typedef struct
{
  double x0_mm, y0_mm, x1_mm, y1_mm;
} SwBoxOnPaper;

/** Whether the boxes overlap by more than a hair (0.01 mm). */
gboolean sw_label_boxes_meet (SwLabelBox a, SwLabelBox b);

/** Whether the box lies on a sheet of this size, but for a hair. */
gboolean sw_label_box_is_inside (SwLabelBox box, double width_mm, double height_mm);

/** The box along a line from @a to @b, so wide to either side of it. */
SwLabelBox sw_label_strip (SwPaperPoint a, SwPaperPoint b, double half_mm);

/** Where a leader from @target ends at the box. FALSE: the two are
 * too near for one. */
gboolean sw_label_leader_end (SwLabelBox box, SwPaperPoint target, SwPaperPoint *end);

/** Half the length of what @box throws on a line turned by @turn_rad. */
double sw_label_shadow_mm (SwLabelBox box, double turn_rad);

/** @turn_rad or its opposite: whichever a reader in front of the sheet, or at its right
 * edge, reads upright. */
double sw_label_reading_turn_rad (double turn_rad);

/** Where the middle of a label could be, and how the text is turned there. */
typedef struct
{
  double x_mm, y_mm, turn_rad;
} SwLabelSpot;

/** Places round a thing. */
#define SW_LABEL_WAYS 8

/**
 * sw_label_round:
 * @half_width_mm: of the text
 * @half_height_mm: of it
 * @off_mm: between the thing and the text
 * @spots: (out): above, below, right, left, then the corners
 */
void sw_label_round (SwBoxOnPaper thing, double half_width_mm, double half_height_mm,
                     double off_mm, SwLabelSpot spots[SW_LABEL_WAYS]);

typedef enum
{
  SW_LABEL_EXTRA, /* first to be left out */
  SW_LABEL_USEFUL,
  SW_LABEL_MAIN,
  SW_LABEL_NEEDED
} SwLabelRank;

typedef enum
{
  SW_LABEL_PLAIN,
  SW_LABEL_KNOCK_OUT = 1 << 0, /* a ground behind the text */
  SW_LABEL_LEADER = 1 << 1,    /* a thin line from the target, in view, to the text */
  SW_LABEL_BOLD = 1 << 2,
  SW_LABEL_OFF_LINES = 1 << 3 /* rather left out than on a line */
} SwLabelStyle;

/** What a drawing asks for. Everything is copied. */
typedef struct
{
  SwLabelRank rank;
  SwRole role;
  SwRole ground; /* KNOCK_OUT: filled behind the text; SW_ROLE_TEXT: white */
  guint style;   /* SwLabelStyle */
  double size_mm;
  const char *object; /* NULL: none */
  const char *text;
  const char *shorter; /* said where @text finds no place clear of lines; NULL: nothing */
  SwPaperPoint target; /* LEADER: what the label speaks of */
  const SwLabelSpot *spots;
  guint n_spots;  /* in order of preference */
  guint n_beside; /* LEADER: so many of the first stand by the thing, and need none */
} SwLabelWish;

/** A measured distance: drawn only if its text finds a place. */
typedef struct
{
  double x0_mm, y0_mm, x1_mm, y1_mm;
  double offset_mm; /* to the left of the way from 0 to 1; negative: to the right */
} SwLabelSpan;

typedef struct SwLabels SwLabels;

/** Labels of a figure of this size; text keeps inside it. @measure is borrowed. */
SwLabels *sw_labels_new (double width_mm, double height_mm, const SwTextMeasure *measure);
void sw_labels_free (SwLabels *labels);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (SwLabels, sw_labels_free)

/** Keep @box free of labels. */
void sw_labels_reserve (SwLabels *labels, SwLabelBox box);
void sw_labels_reserve_rect (SwLabels *labels, double x_mm, double y_mm, double width_mm,
                             double height_mm);

/** Texts keep off the line through @points where they have another place. The lines of
 * dimensions are known without. */
void sw_labels_keep_off (SwLabels *labels, const SwPaperPoint *points, guint count);

/** The same, but for the label last asked for, which belongs there. */
void sw_labels_keep_others_off (SwLabels *labels, const SwPaperPoint *points,
                                guint count);

void sw_labels_wish (SwLabels *labels, const SwLabelWish *wish);

/** Dimension with extension lines and arrows; its text goes into the line, else beside it. */
void sw_labels_dimension (SwLabels *labels, SwLabelRank rank, SwLabelSpan span,
                          double size_mm, const char *object, const char *text);

/** Choose places and draw everything asked for. Returns: how many were left out. */
guint sw_labels_place (SwLabels *labels, SwFigure *figure);
