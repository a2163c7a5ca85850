/* SPDX-License-Identifier: MIT */
#pragma once

#include <slopewright/document/document.h>

#include "point-edit.h"
#include "stock.h"

/**
 * SwStage: what the parts of a window look at together: the document, which of
 * its faces is shown, which point is selected, which object is marked, and
 * where on the face the pointer is. Signals, all without arguments:
 *
 * "changed": the job shown, its result, the face or the list of points shown is another
 * "selected": another point is selected
 * "marked": another object is marked
 * "hovered": the pointer is over another object
 * "pointed": the pointer is elsewhere on the face, or left it
 * "told": there is something to say in the status line: sw_stage_message(), until the
 *   next step of the document
 */
#define SW_TYPE_STAGE (sw_stage_get_type ())
G_DECLARE_FINAL_TYPE (SwStage, sw_stage, SW, STAGE, GObject)

/** @stock: borrowed; must outlive the stage. */
SwStage *sw_stage_new (SwDocument *document, const SwStock *stock);

SwDocument *sw_stage_document (SwStage *stage);
const SwStock *sw_stage_stock (SwStage *stage);
const SwJob *sw_stage_job (SwStage *stage);
const SwResult *sw_stage_result (SwStage *stage);
SwNumberStyle sw_stage_style (SwStage *stage);

/** Index of the face shown; always one of the job's. */
guint sw_stage_face_index (SwStage *stage);
const SwFace *sw_stage_face (SwStage *stage);
void sw_stage_show_face (SwStage *stage, guint index);

/**
 * sw_stage_list:
 *
 * Returns: which section is looked at (@in_section), or which of outline, obstacles
 *   and zones on plan; always one that the face has
 */
SwPointList sw_stage_list (SwStage *stage, gboolean in_section);
void sw_stage_show_list (SwStage *stage, SwPointList list);

/** Shows @list too, and marks an obstacle or zone. @index: -1 for no point; a shape is then chosen as a whole */
void sw_stage_select (SwStage *stage, SwPointList list, int index);
/** Returns: -1 when no point of @list is selected */
int sw_stage_selected (SwStage *stage, SwPointList list);

/** Object id as in drawings.h: "A/run/7"; NULL for none. */
void sw_stage_mark (SwStage *stage, const char *object);
const char *sw_stage_marked (SwStage *stage);

/** What the pointer is over, in any view; NULL for nothing. */
void sw_stage_hover (SwStage *stage, const char *object);
const char *sw_stage_hovered (SwStage *stage);

/** @plan: along, out; NULL: the pointer left. @along_known: FALSE over the section. */
void sw_stage_point_at (SwStage *stage, const SwPoint *plan, gboolean along_known);
gboolean sw_stage_pointed (SwStage *stage, SwPoint *plan, gboolean *along_known);

void sw_stage_tell (SwStage *stage, const char *message);
const char *sw_stage_message (SwStage *stage);

/** Changes @job or its @face in place; @data is the caller's. */
typedef void (*SwEdit) (SwJob *job, SwFace *face, gconstpointer data);

/** One edit of a copy of the committed job, committed as one step. */
void sw_stage_edit (SwStage *stage, SwEdit edit, gconstpointer data, const char *label,
                    const char *key);
