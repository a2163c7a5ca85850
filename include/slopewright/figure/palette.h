/* SPDX-License-Identifier: MIT */
#pragma once

#include <slopewright/figure/figure.h>

typedef struct
{
  double red, green, blue, alpha;
} SwColour; /* 0..1; alpha 0: none */

/** Look of a role. Printing in grey stays legible: roles differ in width, dash or hatch too. */
typedef struct
{
  SwColour line, fill;           /* on paper and light screens */
  SwColour line_dark, fill_dark; /* on dark screens */
  double width_mm;
  double dash_mm[4]; /* zeros: solid */
  double hatch_mm;   /* spacing of 45 degree hatch lines in areas; 0: none */
} SwLook;

typedef struct
{
  SwLook looks[SW_ROLE_COUNT];
} SwPalette;

void sw_palette_free (SwPalette *palette);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (SwPalette, sw_palette_free)
