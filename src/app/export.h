/* SPDX-License-Identifier: MIT */
#pragma once

#include <gio/gio.h>

#include "canvas-kind.h"
#include "sw-stage.h"

/** Words in the pack's language; those of the window when there are none in it.
 * (transfer full) */
SwTexts *sw_export_texts (SwStage *stage);

/** A short name for what saving the job would write, for the footers of pages. (transfer full) */
char *sw_export_fingerprint (const SwJob *job);

/** Where to write what goes to @file. (transfer full): NULL with @error set where it is not a
 * file of this computer. */
char *sw_export_path (GFile *file, GError **error);

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
