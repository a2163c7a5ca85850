/* SPDX-License-Identifier: MIT */
#include <slopewright/paint/paint.h>
