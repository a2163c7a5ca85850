/* SPDX-License-Identifier: MIT */
#include <slopewright/sheet/pack.h>
