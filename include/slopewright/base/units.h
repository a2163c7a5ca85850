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
#define SW_STANDARD_GRAVITY_M_PER_S2 9.80665 /* 3rd CGPM, 1901 */
#define SW_S_PER_H 3600.0
#define SW_M_PER_S_PER_MPH (5280.0 * SW_M_PER_FT / SW_S_PER_H)
#define SW_HA_PER_ACRE (SW_M2_PER_ACRE / SW_M2_PER_HA)
#define SW_T_PER_SHORT_TON (2000.0 * SW_KG_PER_LB / 1000.0)
#define SW_N_PER_M3_PER_PCF                                                              \
  (SW_KG_PER_LB * SW_STANDARD_GRAVITY_M_PER_S2 / (SW_M_PER_FT * SW_M2_PER_FT2))
/* Zeros of the two everyday scales, and a degree Fahrenheit, in kelvin: exact. */
#define SW_K_AT_0_C 273.15
#define SW_K_PER_F (5.0 / 9.0)
#define SW_K_AT_0_F (459.67 * SW_K_PER_F)
/* Soil loss, short ton/acre; R, 100 ft tonf in/(acre h): their ratio is that of K. */
#define SW_LOSS_SI_PER_US (SW_T_PER_SHORT_TON / SW_HA_PER_ACRE)
#define SW_EROSIVITY_SI_PER_US                                                           \
  (100.0 * SW_M_PER_FT * SW_T_PER_SHORT_TON * 1000.0 * SW_STANDARD_GRAVITY_M_PER_S2      \
   / 1e6 * SW_MM_PER_IN / SW_HA_PER_ACRE)
#define SW_ERODIBILITY_SI_PER_US (SW_LOSS_SI_PER_US / SW_EROSIVITY_SI_PER_US)

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
  SW_UNIT_ANGLE,       /* radians of an angle that is no gradient, shown in degrees */
  SW_UNIT_FACTOR,      /* ratio that needs its third and fourth decimal */
  SW_UNIT_LOSS,        /* soil loss, t/(ha yr) */
  SW_UNIT_LOSS_IN_TIME, /* soil loss in part of a year, t/ha */
  SW_UNIT_EROSIVITY,   /* R, MJ mm/(ha h yr) */
  SW_UNIT_ERODIBILITY, /* K, t ha h/(ha MJ mm) */
  SW_UNIT_RAIN,        /* m/s, shown in mm/h or in/h */
  SW_UNIT_M_PER_S,
  SW_UNIT_N_PER_M3,      /* unit weight, shown in kN/m3 or lb/ft3 */
  SW_UNIT_KELVIN,        /* a temperature, shown in degrees Celsius or Fahrenheit */
  SW_UNIT_WIND,          /* m/s, shown in m/s or mph */
  SW_UNIT_SEEDS_PER_M2,  /* live seeds, shown per m2 or per ft2 */
  SW_UNIT_SEEDS_PER_KG,  /* shown per kg or per lb */
  SW_UNIT_H_PER_M,       /* hours of one person for a metre, shown per m or per ft */
  SW_UNIT_H_PER_M2,      /* likewise for an area, shown per 100 m2 or per 1000 ft2 */
  SW_UNIT_MONEY,         /* amount in the currency of the user, whose name stands elsewhere */
  SW_UNIT_COUNT_OF_UNITS /* not a unit: how many there are */
} SwUnit;
