/* SPDX-License-Identifier: MIT */
#include <slopewright/layout/layout.h>
