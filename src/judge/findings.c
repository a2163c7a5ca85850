/* SPDX-License-Identifier: MIT */
#include <slopewright/judge/findings.h>
