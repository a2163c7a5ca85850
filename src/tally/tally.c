/* SPDX-License-Identifier: MIT */
#include <slopewright/tally/tally.h>
