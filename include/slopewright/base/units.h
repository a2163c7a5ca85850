/* SPDX-License-Identifier: MIT */
#pragma once

/*
 * Exact unit factors. Everything inside is SI and radians; these are used at
 * the edge only (files with US data, number entry, number text, paper).
 *
 * Source: international yard and pound agreement of 1959 (1 yd = 0.9144 m,
 * 1 lb = 0.45359237 kg, both exact); PostScript point = 1/72 in.
 */
#define SW_M_PER_FT 0.3048
#define SW_M_PER_IN 0.0254
#define SW_M_PER_YD 0.9144
#define SW_MM_PER_IN 25.4
#define SW_PT_PER_MM (72.0 / 25.4)
#define SW_KG_PER_LB 0.45359237
#define SW_M2_PER_FT2 (SW_M_PER_FT * SW_M_PER_FT)
#define SW_M2_PER_YD2 (SW_M_PER_YD * SW_M_PER_YD)
#define SW_M3_PER_YD3 (SW_M_PER_YD * SW_M_PER_YD * SW_M_PER_YD)
#define SW_M2_PER_ACRE (4840.0 * SW_M2_PER_YD2)
#define SW_M2_PER_HA 10000.0
#define SW_PA_PER_PSF 47.880258980335840

/** Which units a person reads. Never changes a stored or computed value. */
typedef enum
{
  SW_UNITS_METRIC,
  SW_UNITS_US
} SwUnitSystem;

/** What kind of quantity a number is; the number itself is in the SI unit named here. */
typedef enum
{
  SW_UNIT_RATIO,   /* 1 */
  SW_UNIT_COUNT,   /* pieces; shown without decimals */
  SW_UNIT_PERCENT, /* ratio, shown times 100 with % */
  SW_UNIT_M,       /* metres: face lengths, runs, pieces */
  SW_UNIT_SMALL_M, /* metres, shown in mm or inches: trench, lap, pin */
  SW_UNIT_M2,
  SW_UNIT_M3,
  SW_UNIT_KG,
  SW_UNIT_RAD,       /* shown in degrees */
  SW_UNIT_HV,        /* horizontal per 1 vertical, shown "2:1" */
  SW_UNIT_PER_M2,    /* pins per square metre */
  SW_UNIT_KG_PER_M2, /* seed and blanket mass per area */
  SW_UNIT_PA,        /* shear */
  SW_UNIT_MONTH,
  SW_UNIT_DAY,
  SW_UNIT_HOUR,
  SW_UNIT_COUNT_OF_UNITS /* not a unit: how many there are */
} SwUnit;
