/* SPDX-License-Identifier: MIT */
#include <slopewright/ground/ground.h>
