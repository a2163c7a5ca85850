/* SPDX-License-Identifier: MIT */
#pragma once

#include "sw-form.h"

/* Fields of the obstacle or the soil zone that the stage shows. */
extern const SwField sw_obstacle_fields[], sw_zone_fields[];
