/* SPDX-License-Identifier: MIT */
#include <slopewright/base/own-practice.h>

#include <slopewright/base/job.h>

gboolean
sw_own_practice_given (const SwOwnPractice *own)
{
  return *own->name != '\0' || *own->source != '\0' || sw_own_practice_ways (own) > 0;
}

guint
sw_own_practice_ways (const SwOwnPractice *own)
{
  return (own->toe_kind > 0 ? 1u : 0u) + (own->trench_lining > 0 ? 1u : 0u)
         + (own->toe_lining > 0 ? 1u : 0u);
}

void
sw_own_practice_lay_over (const SwOwnPractice *own, SwPractice *practice)
{
  if (own->toe_kind > 0)
    practice->toe_kind = (SwToeKind) (own->toe_kind - 1);
  if (own->trench_lining > 0)
    practice->trench_lining = (SwLining) (own->trench_lining - 1);
  if (own->toe_lining > 0)
    practice->toe_lining = (SwLining) (own->toe_lining - 1);
  sw_text_set (&practice->own_name, own->name);
  sw_text_set (&practice->own_source, own->source);
}
