/* SPDX-License-Identifier: MIT */
#pragma once

#include <glib.h>
#include <slopewright/base/status.h>

/*
 * Fertiliser by the label N-P2O5-K2O, percent by mass. Phosphorus and potassium
 * stand on labels as oxides, in some soil reports as elements.
 */

typedef enum
{
  SW_NUTRIENT_N,
  SW_NUTRIENT_P2O5,
  SW_NUTRIENT_K2O,
  SW_NUTRIENT_COUNT
} SwNutrient;

/** P in P2O5 by mass, by IUPAC atomic weights (P 30.973762, K 39.0983, O 15.999). */
double sw_phosphorus_per_p2o5 (void);

/** K in K2O by mass, likewise. */
double sw_potassium_per_k2o (void);

typedef struct
{
  double product_kg_per_m2;                  /* to spread */
  double given_kg_per_m2[SW_NUTRIENT_COUNT]; /* what it brings, >= what is needed */
  SwNutrient limiting;                       /* which nutrient asks for that much */
  guint missing; /* bit mask, 1 << SwNutrient: needed, but not in this product */
} SwFertiliser;

/**
 * sw_fertiliser:
 * @grade: ratios by mass of the label, each >= 0, in all at most 1, one above 0
 * @need_kg_per_m2: each >= 0
 * @result: (out): the least product that covers every need it can
 *
 * Product = need / grade; the nutrient that asks for most governs.
 *
 * Returns: SW_OK or SW_E_RANGE.
 */
SwStatus sw_fertiliser (const double grade[SW_NUTRIENT_COUNT],
                        const double need_kg_per_m2[SW_NUTRIENT_COUNT],
                        SwFertiliser *result);

/** What @product_kg holds of each nutrient, and what is filler. */
SwStatus sw_fertiliser_contents (const double grade[SW_NUTRIENT_COUNT], double product_kg,
                                 double nutrient_kg[SW_NUTRIENT_COUNT],
                                 double *filler_kg);

/** Bags to buy, rounded up. @product_kg >= 0, @bag_kg > 0. */
SwStatus sw_bags (double product_kg, double bag_kg, int *bags);
