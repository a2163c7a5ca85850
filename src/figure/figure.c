/* SPDX-License-Identifier: MIT */
#include <slopewright/figure/figure.h>
