/* SPDX-License-Identifier: MIT */
#pragma once

#include <glib.h>
#include <slopewright/base/status.h>

/*
 * Mean yearly soil loss by rain: A = R K LS C P. An estimate of sheet and rill
 * loss over many years; not of one storm, of gullies or of slides.
 *
 * SI units: A in t/(ha yr), R in MJ mm/(ha h yr), K in t ha h/(ha MJ mm). LS, C
 * and P are ratios. US tables give A in short ton/(ac yr), R in 100 ft tonf
 * in/(ac h yr), K in ton ac h/(100 ac ft tonf in): convert with the factors
 * below, each once, at the edge. K times 2.24 is no SI K.
 *
 * Sources: USDA Agriculture Handbook 703 (1997), units in its appendix A; Foster
 * et al. 1981, J. Soil and Water Conservation 36:355.
 */

/** t/ha per short ton/acre, 2.2417023, exact by definition of lb and acre. */
double sw_soil_loss_si_per_us (void);

/** SI R per US R, 17.0195195, exact by definition. */
double sw_erosivity_si_per_us (void);

/** SI K per US K, 0.1317136, exact: their product scales as A does. */
double sw_erodibility_si_per_us (void);

/**
 * sw_soil_loss:
 * @erosivity: R, >= 0
 * @erodibility: K, >= 0
 * @ls, @cover, @practice: LS, C and P, >= 0
 * @loss_t_per_ha: (out): A per year, or per period if R is of a period
 *
 * Returns: SW_OK or SW_E_RANGE.
 */
SwStatus sw_soil_loss (double erosivity, double erodibility, double ls, double cover,
                       double practice, double *loss_t_per_ha);

/**
 * sw_soil_loss_reduction:
 * @bare: C before, > 0
 * @covered: C after, >= 0
 * @reduction: (out): ratio of the loss that the cover keeps back; negative if it
 *   makes things worse
 */
SwStatus sw_soil_loss_reduction (double bare, double covered, double *reduction);

/**
 * sw_erosivity_of_period:
 * @per_year: R of a mean year, >= 0
 * @new_years: how often 1 January falls in the period, 0 and up
 * @share_start, @share_end: ratio of the year's R fallen by the first and by the
 *   last day, [0, 1], from the R table of the region
 * @erosivity: (out): R of the period, in the unit of @per_year
 *
 * R (new years + end - start). Source: California State Water Resources Control
 * Board, notice on the R factor, 2012.
 *
 * Returns: SW_OK; SW_E_RANGE, also where the end comes before the start.
 */
SwStatus sw_erosivity_of_period (double per_year, guint new_years, double share_start,
                                 double share_end, double *erosivity);

/** What to know about a K from the nomograph equation. */
typedef enum
{
  SW_ERODIBILITY_WITHIN = 0,
  SW_ERODIBILITY_TOO_SILTY = 1 << 0,     /* silt and very fine sand over 70 % */
  SW_ERODIBILITY_ORGANIC_CAPPED = 1 << 1 /* over 4 % organic matter counted as 4 % */
} SwErodibilityLimit;

/** A soil as the nomograph asks for it; ratios by mass of the soil under 2 mm. */
typedef struct
{
  double silt_and_fine_sand; /* 0.002 to 0.1 mm */
  double clay;
  double organic;
  int structure; /* 1 very fine granular, 2 fine, 3 medium or coarse, 4 blocky or massive */
  int permeability; /* 1 rapid .. 6 very slow */
} SwErodibilitySoil;

/**
 * sw_erodibility:
 * @soil: see there
 * @erodibility: (out): K in SI units
 * @limits: (out) (optional): SwErodibilityLimit flags
 *
 * US K = (2.1e-4 M^1.14 (12 - OM) + 3.25 (s - 2) + 2.5 (p - 3)) / 100, M = (silt
 * + very fine sand) (100 - clay), in percent. Source: Wischmeier, Johnson and
 * Cross 1971; Handbook 703 eq. 3-1. It is a rough figure: Auerswald et al. 2014,
 * Catena 118:220, found it off the nomograph for half of 20 000 soils, at worst
 * by half.
 *
 * Returns: SW_OK; SW_E_RANGE, also where the equation gives no positive K.
 */
SwStatus sw_erodibility (const SwErodibilitySoil *soil, double *erodibility,
                         guint *limits);

/** Classes of R K LS over a construction period, nothing covered. */
typedef enum
{
  SW_SEDIMENT_LOW,    /* under 15 short ton/acre */
  SW_SEDIMENT_MEDIUM, /* from 15 */
  SW_SEDIMENT_HIGH,   /* from 75 */
  SW_SEDIMENT_CLASS_COUNT
} SwSedimentClass;

/**
 * Sediment risk class as California sorts construction sites by (SWRCB general
 * permit, Caltrans guidance); other regions have other limits or none.
 * @loss_t_per_ha: R K LS of the period, >= 0.
 */
SwStatus sw_sediment_class (double loss_t_per_ha, SwSedimentClass *sediment_class);
