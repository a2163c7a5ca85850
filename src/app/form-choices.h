/* SPDX-License-Identifier: MIT */
#pragma once

#include "sw-stage.h"

/* What the drop-downs of the forms offer; see SwField. */

/* An enumeration of the job or face: the form knows where it stands. */
char **sw_choice_leeward_names (SwStage *stage, gsize which);
char **sw_choice_bench_names (SwStage *stage, gsize which);
char **sw_choice_obtained_names (SwStage *stage, gsize which);
char **sw_choice_fan_names (SwStage *stage, gsize which);
char **sw_choice_kind_names (SwStage *stage, gsize which);
char **sw_choice_seed_names (SwStage *stage, gsize which);
int sw_choice_seed_get (SwStage *stage, gsize which);
void sw_choice_seed_set (SwStage *stage, SwJob *job, SwFace *face, gsize which,
                         guint index);
char **sw_choice_joints_names (SwStage *stage, gsize which);
char **sw_choice_surplus_names (SwStage *stage, gsize which);
int sw_choice_surplus_get (SwStage *stage, gsize which);
void sw_choice_surplus_set (SwStage *stage, SwJob *job, SwFace *face, gsize which,
                            guint index);
char **sw_choice_allowance_names (SwStage *stage, gsize which);
char **sw_choice_loss_units_names (SwStage *stage, gsize which);
char **sw_choice_rills_names (SwStage *stage, gsize which);
char **sw_choice_net_names (SwStage *stage, gsize which);
char **sw_choice_units_names (SwStage *stage, gsize which);
char **sw_choice_paper_names (SwStage *stage, gsize which);
char **sw_choice_answer_names (SwStage *stage, gsize which);

/* Anything else: the three functions of each. */
#define SW_CHOICE_OF(prefix)                                                             \
  char **sw_choice_##prefix##_names (SwStage *stage, gsize which);                       \
  int sw_choice_##prefix##_get (SwStage *stage, gsize which);                            \
  void sw_choice_##prefix##_set (SwStage *stage, SwJob *job, SwFace *face, gsize which,  \
                                 guint index);

SW_CHOICE_OF (soil)
SW_CHOICE_OF (crest)
SW_CHOICE_OF (blanket)
SW_CHOICE_OF (roll)
SW_CHOICE_OF (pin)
SW_CHOICE_OF (practice)
SW_CHOICE_OF (language)
