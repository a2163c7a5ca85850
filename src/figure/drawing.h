/* SPDX-License-Identifier: MIT */
#pragma once

#include "development.h"
#include "drafting.h"
#include <slopewright/figure/drawings.h>
#include <slopewright/layout/laying-sequence.h>

/* A drawing in the making: what every drawing of a face needs at hand. */
typedef struct
{
  SwFigure *figure;
  const SwResult *result;
  guint face_index;
  const SwFace *face;
  const SwFaceLayout *laid;   /* NULL: the job could not be laid out */
  const SwPractice *practice; /* NULL with it */
  const SwView *view;
  const SwDraw *draw;
  SwLabels *labels;
  SwDevelopment development;        /* of a face view: how the face lies flat */
  const SwLayingSequence *sequence; /* of a face in the making; NULL: all is done */
  guint step;                       /* of it: done is what comes up to here */
  const SwRun *marked;              /* laps are drawn as marks, of this run; else NULL */
  double text_mm;
  SwBox seen;       /* world metres in view */
  double bottom_mm; /* where the next row of key or scale bar may begin, from below */
} SwDrawing;

/** Starts a drawing of the view's size, everything outside clipped. @title_id: text id, place {face}. */
void sw_drawing_begin (SwDrawing *drawing, const SwResult *result, guint face,
                       const SwView *view, const SwDraw *draw, const char *title_id);

/** Places the labels. Returns: (transfer full): the finished figure. */
SwFigure *sw_drawing_end (SwDrawing *drawing);

/** Whether what is done at @step of the sequence is done in this drawing. */
gboolean sw_drawing_is_done (const SwDrawing *drawing, guint step);

/** At which steps a run of the drawing's face is worked on. Needs a sequence. */
const SwRunSteps *sw_drawing_run_steps (const SwDrawing *drawing, guint run);

/** Items from here on are face @id + @format, as "A" "/run/%u". */
void sw_drawing_object (SwDrawing *drawing, const char *format, ...) G_GNUC_PRINTF (2, 3);

/** Interned id in the same form. */
const char *sw_drawing_object_id (const SwDrawing *drawing, const char *format, ...)
    G_GNUC_PRINTF (2, 3);

SwPaperPoint sw_drawing_at (const SwDrawing *drawing, double x_m, double y_m);

/** Width of a text in the regular face. */
double sw_drawing_width_mm (const SwDrawing *drawing, const char *text, double size_mm);

/** Value of the practice, SI. */
double sw_drawing_practice (const SwDrawing *drawing, SwPracticeValue value);

const char *sw_drawing_text (const SwDrawing *drawing, const char *id);

/** (transfer full): "13.42 m", "150 mm". */
char *sw_drawing_length (const SwDrawing *drawing, double length_m);
/** What has to be enough is rounded up in US units, a spacing down. */
char *sw_drawing_small (const SwDrawing *drawing, double length_m);
char *sw_drawing_spacing (const SwDrawing *drawing, double length_m);

/** A line that says something itself: texts keep off it. @path: (element-type SwPaperPoint) */
void sw_drawing_line (SwDrawing *drawing, SwRole role, const GArray *path);

/** Keep texts off a place that is taken hold of on screen. */
void sw_drawing_spare (SwDrawing *drawing, SwPaperPoint at);

/** Handle of an editable point; only on screen. */
void sw_drawing_handle (SwDrawing *drawing, SwPaperPoint at, const char *format, guint i);

/** A text at one place or not at all. */
void sw_drawing_note (SwDrawing *drawing, SwLabelRank rank, SwRole role, double x_mm,
                      double y_mm, double turn_rad, const char *object, const char *text);

/** A text at the first free of @spots. */
void sw_drawing_label (SwDrawing *drawing, SwLabelRank rank, const SwLabelSpot *spots,
                       guint n_spots, const char *object, const char *text);

/** A text for @target, with a leader, at the first free of @spots. */
void sw_drawing_callout (SwDrawing *drawing, SwLabelRank rank, SwPaperPoint target,
                         const SwLabelSpot *spots, guint n_spots, const char *object,
                         const char *text);

/** A name for @target at the first free of @spots, of which the first @n_beside stand by it
 * and need no leader. */
void sw_drawing_name (SwDrawing *drawing, SwLabelRank rank, SwPaperPoint target,
                      const SwLabelSpot *spots, guint n_spots, guint n_beside,
                      const char *object, const char *text);

/** The same, but rather left out than on a line. */
void sw_drawing_name_off_lines (SwDrawing *drawing, SwLabelRank rank, SwPaperPoint target,
                                const SwLabelSpot *spots, guint n_spots, guint n_beside,
                                const char *object, const char *text);

void sw_drawing_dimension (SwDrawing *drawing, SwLabelRank rank, SwLabelSpan span,
                           const char *object, const char *text);

/** One sample of the key: a look and its words. */
typedef struct
{
  SwRole role;
  enum
  {
    SW_KEY_BOX,
    SW_KEY_LINE,
    SW_KEY_DOT,
    SW_KEY_NONE /* words only */
  } sample;
  char *text; /* owned by the key */
} SwKeyEntry;

/** (element-type SwKeyEntry) */
GArray *sw_key_new (void);
void sw_key_add (GArray *key, SwRole role, int sample, char *text);

/** Width-wise flowed rows; draws nothing when @figure is NULL. Returns: height used. */
double sw_key_draw (const GArray *key, SwFigure *figure, const SwDraw *draw, double x_mm,
                    double y_mm, double width_mm);

/** Key, then scale bar, at the foot of a drawing on paper; keeps labels off them. */
void sw_drawing_foot (SwDrawing *drawing, const GArray *key);

double sw_scale_bar_height_mm (const SwDraw *draw);

/** Height that sw_drawing_foot() takes for @key in a figure of @width_mm. */
double sw_drawing_foot_mm (const GArray *key, const SwDraw *draw, double width_mm);

/** Caption at the upper left; nothing on screen. */
void sw_drawing_caption (SwDrawing *drawing, const char *text);

/** Text height in use. */
double sw_draw_text_mm (const SwDraw *draw);

/** Largest scale 1 : n of a ruler in the reader's units at which the metres fit into the millimetres. */
double sw_drawing_scale (const SwDraw *draw, double width_m, double height_m,
                         double width_mm, double height_mm);

/** Words for a scale. (transfer full) */
char *sw_scale_text (double scale, const SwDraw *draw);

/** Fit @world between insets: largest true scale. */
SwView sw_fit_inside (SwBox world, const SwDraw *draw, double width_mm, double height_mm,
                      double left_mm, double right_mm, double top_mm, double bottom_mm,
                      gboolean y_up, double *scale);

/** The face's key to marks, shared by plan and face view and their fits. (transfer full) */
GArray *sw_section_key (const SwResult *result, const SwDraw *draw, double mm_per_m);
GArray *sw_plan_key (const SwResult *result, guint face, const SwDraw *draw);
GArray *sw_face_view_key (const SwResult *result, guint face, const SwDraw *draw,
                          gboolean with_pins, gboolean with_lengths);

/** Face of the result, in the layout's job where there is one. */
const SwFace *sw_result_face (const SwResult *result, guint face);

/** Left (-1) or right (1) edge of a run as along_m, where a metre of along_m is @stretch
 * metres wide: constant width takes more of the shorter arc of a fan. */
double sw_run_edge_m (const SwDrawing *drawing, const SwRun *run, int side,
                      double stretch);

/** Gradient of the section between two of its points, >= 0. */
double sw_section_angle_rad (const SwFace *face, guint from, guint to);
