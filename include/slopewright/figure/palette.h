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
  double width_mm;               /* of lines and of the edges of areas; 0: no edge */
  double dash_mm[4];             /* on, off, on, off; zeros: solid */
  double hatch_mm;       /* spacing of 45 degree hatch lines in areas, rising to the
                              right; negative: falling; 0: none */
  double hatch_width_mm; /* their width, in the line colour */
} SwLook;

typedef struct
{
  SwLook looks[SW_ROLE_COUNT];
} SwPalette;

/** Every look plain: black lines of 0.25 mm, nothing filled. For store to fill in. */
SwPalette *sw_palette_new (void);
void sw_palette_free (SwPalette *palette);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (SwPalette, sw_palette_free)
