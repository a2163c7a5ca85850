/* SPDX-License-Identifier: MIT */
#pragma once

#include <slopewright/paint/paint.h>

/* What the tests of this room draw and how they reach outside tools. */

/* Every character kind the sheets print: accents, degree, powers, Greek, boxes. */
#define SAMPLE_TEXT                                                                      \
  "33.7° 1.5H:1V · 50 % — ½ × 3 ft² ≤ 12 m³ → é è ç œ ñ ¿ ¡ ü α τ γ φ ☐ ✓ “Å” −5"

/* A look of its own for each role: widths, dashes, both hatches, one veil. */
SwPalette *sample_palette (void);

/* A figure of 6 x 8.5 inches with every role, every item kind, turned text and clips. */
SwFigure *sample_figure (void);

/* A temporary folder, removed with its files by sample_folder_remove(). */
char *sample_folder (void);
void sample_folder_remove (char *folder);

/* Paints @figure alone into @folder/@name; fails the test on error. */
char *sample_pdf (const SwFigure *figure, const char *folder, const char *name);

/* Runs a tool and gives what it printed; NULL, with the test skipped, when it is missing. */
char *sample_tool (const char *const *arguments);
