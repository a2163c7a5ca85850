/* SPDX-License-Identifier: MIT */
#pragma once

#include <slopewright/base/number-text.h>
#include <slopewright/ground/measured.h>

/* What a measuring dialog begins with and what it says, without a widget. */

/** The numbers that describe @face, in each of the ways; a straight face keeps its shape by them. */
SwMeasured sw_measured_from_face (const SwFace *face);

/**
 * sw_measured_text:
 * @fits: (out): whether a face can be made of it
 *
 * Returns: (transfer full): what follows from the numbers, or what is wrong with them
 */
char *sw_measured_text (const SwMeasured *measured, SwNumberStyle style, gboolean *fits);
