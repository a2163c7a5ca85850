/* SPDX-License-Identifier: MIT */
#include <slopewright/store/store.h>
