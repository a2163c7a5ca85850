/* SPDX-License-Identifier: MIT */
#pragma once

#include <glib.h>

/** How a face's soil is known; printed with it. File words "eye", "feel", "laboratory". */
typedef enum
{
  SW_SOIL_BY_EYE,
  SW_SOIL_BY_FEEL,      /* wet handful: ball, ribbon, feel */
  SW_SOIL_BY_LABORATORY /* shares of sand, silt and clay */
} SwSoilKnown;

/** How a very wet handful feels when rubbed. File words "gritty", "smooth", "neither". */
typedef enum
{
  SW_FEEL_GRITTY,
  SW_FEEL_SMOOTH,
  SW_FEEL_NEITHER,
  SW_FEEL_COUNT
} SwFeel;

/** What was found out about a soil; the class that follows from it stands in the face. */
typedef struct
{
  SwSoilKnown known;
  /* BY_FEEL */
  gboolean holds;  /* a moist handful, squeezed, stays together */
  double ribbon_m; /* before it breaks by its weight; 0: none */
  SwFeel feel;     /* asked for with a ribbon only */
  /* BY_LABORATORY, ratios by mass of the soil under 2 mm, 1 in all */
  double sand, silt, clay;
  /* BY_LABORATORY and for K by the nomograph equation only */
  double
      fine_sand;  /* very fine sand, 0.05 to 0.1 mm: the part of @sand that is so fine */
  double organic; /* organic matter, ratio */
  int structure;  /* 1 very fine granular .. 4 blocky or massive; 0: not given */
  int permeability; /* 1 rapid .. 6 very slow; 0: not given */
} SwSoilTest;

/** Whether two tests say the same (numbers bit for bit). */
gboolean sw_soil_test_equal (const SwSoilTest *a, const SwSoilTest *b);
