/* SPDX-License-Identifier: MIT */
#include "tally-private.h"

SwWorking *
sw_tally_add (SwTally *tally, SwWorking *working)
{
  g_ptr_array_add (tally->workings, working);
  return working;
}

SwTally *
sw_tally_new (const SwLayout *layout)
{
  SwTally *tally = g_new0 (SwTally, 1);

  tally->workings = g_ptr_array_new_with_free_func ((GDestroyNotify) sw_working_free);
  tally->roll_orders = g_array_new (FALSE, TRUE, sizeof (SwRollOrder));
  tally->pin_orders = g_array_new (FALSE, TRUE, sizeof (SwPinOrder));
  tally->seed_lines = g_array_new (FALSE, TRUE, sizeof (SwSeedLine));
  sw_tally_faces (tally, layout);
  sw_tally_material (tally, layout);
  sw_tally_seed (tally, layout);
  sw_tally_fertiliser (tally, layout);
  sw_tally_pins (tally, layout);
  sw_tally_haul (tally, layout);
  sw_tally_crew (tally, layout);
  sw_tally_cost (tally, layout);
  return tally;
}

void
sw_tally_free (SwTally *tally)
{
  if (tally == NULL)
    return;
  g_ptr_array_unref (tally->workings);
  g_array_unref (tally->roll_orders);
  g_array_unref (tally->pin_orders);
  g_array_unref (tally->seed_lines);
  g_free (tally);
}

const SwWorking *
sw_tally_working (const SwTally *tally, const char *name)
{
  for (guint i = 0; i < tally->workings->len; i++)
    {
      const SwWorking *working = g_ptr_array_index (tally->workings, i);

      if (g_str_equal (working->name, name))
        return working;
    }
  return NULL;
}
