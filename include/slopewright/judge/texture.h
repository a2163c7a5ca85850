/* SPDX-License-Identifier: MIT */
#pragma once

#include <glib.h>
#include <slopewright/base/soil-test.h>
#include <slopewright/base/status.h>

/*
 * Soil texture in the twelve classes of the USDA (Soil Survey Manual, ch. 3),
 * from a laboratory's figures or from a wet handful.
 */

typedef enum
{
  SW_TEXTURE_SAND,
  SW_TEXTURE_LOAMY_SAND,
  SW_TEXTURE_SANDY_LOAM,
  SW_TEXTURE_LOAM,
  SW_TEXTURE_SILT_LOAM,
  SW_TEXTURE_SILT,
  SW_TEXTURE_SANDY_CLAY_LOAM,
  SW_TEXTURE_CLAY_LOAM,
  SW_TEXTURE_SILTY_CLAY_LOAM,
  SW_TEXTURE_SANDY_CLAY,
  SW_TEXTURE_SILTY_CLAY,
  SW_TEXTURE_CLAY,
  SW_TEXTURE_COUNT
} SwTexture;

/** Sand, silt and clay may miss 100 % by this much, as three figures rounded to 0.1 % do. */
#define SW_TEXTURE_SUM_TOLERANCE 0.0015

/** "sand", "silty-clay-loam"; stable, part of text and catalogue ids. */
const char *sw_texture_code (SwTexture texture);

/**
 * sw_texture_from_fractions:
 * @sand, @silt, @clay: ratios by mass of the soil under 2 mm, >= 0
 * @texture: (out): its class
 *
 * Sand and clay are taken in whole hundredths of a percent and silt as the
 * rest, so every soil has exactly one class and the borders are exact.
 *
 * Returns: SW_OK; SW_E_RANGE, also where they miss 1 by more than
 *   SW_TEXTURE_SUM_TOLERANCE.
 */
SwStatus sw_texture_from_fractions (double sand, double silt, double clay,
                                    SwTexture *texture);

/**
 * sw_texture_from_feel:
 * @holds: a moist handful, squeezed, stays together
 * @ribbon_m: how long a ribbon it makes before it breaks by its weight, >= 0
 * @feel: how it feels; not asked for sand and loamy sand
 * @texture: (out): class, sure to within its neighbours only
 *
 * Ribbon under 25 mm: loams; 25 to 50 mm: clay loams; over 50 mm: clays.
 * Source: Thien 1979, J. Agronomic Education 8:54, as USDA hands it out. The
 * test cannot tell silt from silt loam.
 *
 * Returns: SW_OK; SW_E_RANGE, also for a ribbon of soil that does not hold.
 */
SwStatus sw_texture_from_feel (gboolean holds, double ribbon_m, SwFeel feel,
                               SwTexture *texture);

/**
 * sw_texture_from_test:
 *
 * Returns: SW_OK; SW_E_RANGE where the soil is known by eye only, or its answers give no
 *   class.
 */
SwStatus sw_texture_from_test (const SwSoilTest *test, SwTexture *texture);

/** Class with that code; FALSE for a soil that is none of the twelve. */
gboolean sw_texture_from_code (const char *code, SwTexture *texture);

/**
 * sw_texture_neighbours:
 * Returns: bit mask, 1 << SwTexture, of the classes that share a border with
 *   @texture in the triangle: what it may be when it is sure to one class only.
 *   Corners do not count, and @texture itself is not in it.
 */
guint sw_texture_neighbours (SwTexture texture);
