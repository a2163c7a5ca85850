/* SPDX-License-Identifier: MIT */
#include "conditions.h"
#include "tier-numbers.h"

static gboolean
tier_holds (const SwSheet *sheet, const SwTier *tier, SwCondition condition)
{
  if (condition == SW_IF_LAPS)
    return tier->n_runs > 1;
  if (condition == SW_IF_SLOTS)
    return tier->slots > 0;
  return condition == SW_IF_FIELD && sw_tier_frame (sheet, tier).most > 0;
}

gboolean
sw_sheet_holds (const SwSheet *sheet, SwCondition condition)
{
  if (condition == SW_IF_JOINTS)
    return sheet->tally->joints > 0;
  if (condition == SW_IF_OBSTACLES)
    return sheet->tally->collars > 0;
  for (guint f = 0; f < sheet->layout->n_faces; f++)
    for (guint t = 0; t < sheet->layout->faces[f].n_tiers; t++)
      if (tier_holds (sheet, &sheet->layout->faces[f].tiers[t], condition))
        return TRUE;
  return condition == SW_IF_ALWAYS;
}
