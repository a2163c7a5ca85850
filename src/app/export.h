/* SPDX-License-Identifier: MIT */
#pragma once

#include <gio/gio.h>

#include "canvas-kind.h"
#include "sw-stage.h"

/** Words in the pack's language; those of the window when there are none in it.
 * (transfer full) */
SwTexts *sw_export_texts (SwStage *stage);

/**
 * sw_export_pages:
 *
 * Returns: (transfer full) (element-type SwFigure): the pack of the committed
 *   job in its own language, units and paper; NULL when it cannot be laid out
 */
GPtrArray *sw_export_pages (SwStage *stage);

/** Write the pack as a PDF, the same bytes as slopepack writes for the saved job. */
gboolean sw_export_pack (SwStage *stage, GFile *file, GError **error);

/** Write a blank measuring form in the job's language, units and paper, as a PDF. */
gboolean sw_export_form (SwStage *stage, GFile *file, GError **error);

/** Write every quantity as CSV, as slopepack tally does. */
gboolean sw_export_quantities (SwStage *stage, GFile *file, GError **error);

/**
 * Write one drawing of the face shown, in the language of the pack; the ending of the
 * name decides: .svg or .png.
 */
gboolean sw_export_drawing (SwStage *stage, const SwCanvasKind *kind, GFile *file,
                            GError **error);

/** "bank": the job's file name without its ending, or its name, as a start for others. (transfer full) */
char *sw_export_stem (SwStage *stage);
