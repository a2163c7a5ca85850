/* SPDX-License-Identifier: MIT */
#include <slopewright/document/document.h>
