/* SPDX-License-Identifier: MIT */
#pragma once

/* Standard gravity, exact by definition (3rd CGPM, 1901). */
#define STANDARD_GRAVITY_M_PER_S2 9.80665
