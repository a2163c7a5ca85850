/* SPDX-License-Identifier: MIT */
#include <math.h>
#include <slopewright/base/count.h>
#include <slopewright/base/range.h>
#include <slopewright/tally/fertiliser.h>

#define PHOSPHORUS 30.973762
#define POTASSIUM 39.0983
#define OXYGEN 15.999

double
sw_phosphorus_per_p2o5 (void)
{
  return 2.0 * PHOSPHORUS / (2.0 * PHOSPHORUS + 5.0 * OXYGEN);
}

double
sw_potassium_per_k2o (void)
{
  return 2.0 * POTASSIUM / (2.0 * POTASSIUM + OXYGEN);
}

static gboolean
is_grade (const double grade[SW_NUTRIENT_COUNT])
{
  double sum = 0.0;

  for (int i = 0; i < SW_NUTRIENT_COUNT; i++)
    {
      if (!sw_is_size (grade[i]))
        return FALSE;
      sum += grade[i];
    }
  return sum > 0.0 && sum <= 1.0 + SW_SHARES_SLACK;
}

static void
find_product (const double grade[SW_NUTRIENT_COUNT],
              const double need_kg_per_m2[SW_NUTRIENT_COUNT], SwFertiliser *found)
{
  for (int i = 0; i < SW_NUTRIENT_COUNT; i++)
    {
      if (need_kg_per_m2[i] <= 0.0)
        continue;
      if (grade[i] <= 0.0)
        found->missing |= 1u << i;
      else if (need_kg_per_m2[i] / grade[i] > found->product_kg_per_m2)
        {
          found->product_kg_per_m2 = need_kg_per_m2[i] / grade[i];
          found->limiting = (SwNutrient) i;
        }
    }
}

SwStatus
sw_fertiliser (const double grade[SW_NUTRIENT_COUNT],
               const double need_kg_per_m2[SW_NUTRIENT_COUNT], SwFertiliser *result)
{
  SwFertiliser found = { 0 };

  if (!is_grade (grade))
    return SW_E_RANGE;
  for (int i = 0; i < SW_NUTRIENT_COUNT; i++)
    if (!sw_is_size (need_kg_per_m2[i]))
      return SW_E_RANGE;
  find_product (grade, need_kg_per_m2, &found);
  for (int i = 0; i < SW_NUTRIENT_COUNT; i++)
    found.given_kg_per_m2[i] = grade[i] * found.product_kg_per_m2;
  *result = found;
  return SW_OK;
}

SwStatus
sw_fertiliser_contents (const double grade[SW_NUTRIENT_COUNT], double product_kg,
                        double nutrient_kg[SW_NUTRIENT_COUNT], double *filler_kg)
{
  double filler = product_kg;

  if (!is_grade (grade) || !sw_is_size (product_kg))
    return SW_E_RANGE;
  for (int i = 0; i < SW_NUTRIENT_COUNT; i++)
    {
      nutrient_kg[i] = grade[i] * product_kg;
      filler -= nutrient_kg[i];
    }
  *filler_kg = fmax (filler, 0.0);
  return SW_OK;
}

SwStatus
sw_bags (double product_kg, double bag_kg, int *bags)
{
  if (!sw_is_size (product_kg) || !sw_is_size (bag_kg) || bag_kg <= 0.0
      || product_kg / bag_kg > G_MAXINT - 1)
    return SW_E_RANGE;
  *bags = sw_count_up_ratio (product_kg / bag_kg);
  return SW_OK;
}
