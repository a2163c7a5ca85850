/* SPDX-License-Identifier: MIT */
#include "judge-workings.h"
#include <slopewright/judge/face-flow.h>

static SwWorking *
add (SwTally *tally, const char *formula, double value, SwUnit unit, const char *face,
     const char *name)
{
  return sw_judge_append (tally, sw_working_new (formula, value, unit, SW_ROUNDING_NONE,
                                                 "%s.%s", face, name));
}

static void
add_flow (SwTally *tally, const char *face, const SwFaceFlow *found)
{
  const SwSheetFlow *flow = &found->flow;
  SwWorking *depth, *velocity, *shear;

  depth = add (tally, "flow_depth", flow->depth_m, SW_UNIT_SMALL_M, face, "flow-depth");
  sw_working_typed (depth, "rain", found->rain_m_per_s, SW_UNIT_RAIN);
  sw_working_measured (depth, "length", found->length_m, SW_UNIT_M);
  if (found->run_on_m > 0.0)
    sw_working_typed (depth, "run_on", found->run_on_m, SW_UNIT_M);
  sw_working_measured (depth, "gradient", found->angle_rad, SW_UNIT_RAD);
  sw_judge_sourced (depth, "roughness", &found->roughness, SW_UNIT_FACTOR);
  velocity = add (tally, "flow_velocity", flow->velocity_m_per_s, SW_UNIT_M_PER_S, face,
                  "flow-velocity");
  sw_working_typed (velocity, "rain", found->rain_m_per_s, SW_UNIT_RAIN);
  sw_working_measured (velocity, "length", found->length_m, SW_UNIT_M);
  sw_working_computed (velocity, "depth", depth);
  shear = add (tally, "flow_shear", flow->shear_pa, SW_UNIT_PA, face, "flow-shear");
  sw_working_computed (shear, "depth", depth);
  sw_working_measured (shear, "gradient", found->angle_rad, SW_UNIT_RAD);
  sw_working_part (shear, "water_weight", SW_WATER_N_PER_M3, SW_UNIT_N_PER_M3);
}

void
sw_judge_flow_workings (SwTally *tally, const SwLayout *layout)
{
  for (guint i = 0; i < layout->n_faces; i++)
    {
      SwFaceFlow flow;

      if (sw_face_flow (layout, i, &flow))
        add_flow (tally, layout->faces[i].face->id, &flow);
    }
}
