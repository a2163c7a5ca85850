/* SPDX-License-Identifier: MIT */
#include <slopewright/base/soil-test.h>
#include <string.h>

static gboolean
same_number (double a, double b)
{
  return memcmp (&a, &b, sizeof a) == 0;
}

gboolean
sw_soil_test_equal (const SwSoilTest *a, const SwSoilTest *b)
{
  return a->known == b->known && !a->holds == !b->holds && a->feel == b->feel
         && same_number (a->ribbon_m, b->ribbon_m) && same_number (a->sand, b->sand)
         && same_number (a->silt, b->silt) && same_number (a->clay, b->clay)
         && same_number (a->fine_sand, b->fine_sand)
         && same_number (a->organic, b->organic) && a->structure == b->structure
         && a->permeability == b->permeability;
}
