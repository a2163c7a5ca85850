/* SPDX-License-Identifier: MIT */
#pragma once

#include "sw-stage.h"

/* What the drop-downs of the forms offer; see SwField for the three functions of each. */
#define SW_CHOICE_OF(prefix)                                                             \
  char **sw_choice_##prefix##_names (SwStage *stage, gsize which);                       \
  int sw_choice_##prefix##_get (SwStage *stage, gsize which);                            \
  void sw_choice_##prefix##_set (SwStage *stage, SwJob *job, SwFace *face, gsize which,  \
                                 guint index);

SW_CHOICE_OF (soil)
SW_CHOICE_OF (leeward)
SW_CHOICE_OF (bench)
SW_CHOICE_OF (obtained)
SW_CHOICE_OF (crest)
SW_CHOICE_OF (fan)
SW_CHOICE_OF (joints)
SW_CHOICE_OF (blanket)
SW_CHOICE_OF (roll)
SW_CHOICE_OF (surplus)
SW_CHOICE_OF (pin)
SW_CHOICE_OF (practice)
SW_CHOICE_OF (answer)
SW_CHOICE_OF (bench_drained)
SW_CHOICE_OF (mown)
SW_CHOICE_OF (loss_units)
SW_CHOICE_OF (rills)
SW_CHOICE_OF (net)
SW_CHOICE_OF (allowance)
SW_CHOICE_OF (units)
SW_CHOICE_OF (paper)
SW_CHOICE_OF (language)
