/* SPDX-License-Identifier: MIT */
#pragma once

#include "random-face.h"

/**
 * random_slope:
 * @rand: seeded, so that a failure can be run again
 * @catalogue: practices, soils and blankets to choose from
 *
 * Returns: (transfer full): a job with one face of any kind: straight, ruled
 *   between sections, nose, bowl or heap; plane, bent or benched; any outline of
 *   random-face.h (a heap goes all round); none to three obstacles, none to two soil
 *   zones; any practice, roll, surplus, joints, bench, fan and zone rule; either unit
 *   system.
 */
SwJob *random_slope (GRand *rand, const SwCatalogue *catalogue);
