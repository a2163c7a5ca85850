/* SPDX-License-Identifier: MIT */
#include "judge-workings.h"
#include <math.h>
#include <slopewright/judge/face-slide.h>
#include <slopewright/judge/sheet-flow.h>

static SwWorking *
add_factor (SwTally *tally, const char *face, const SwFaceSlide *slide,
            const char *formula, const char *name, double factor)
{
  SwWorking *working =
      sw_judge_append (tally, sw_working_new (formula, factor, SW_UNIT_RATIO,
                                              SW_ROUNDING_NONE, "%s.%s", face, name));

  sw_judge_sourced (working, "friction", &slide->friction_rad, SW_UNIT_ANGLE);
  sw_working_measured (working, "gradient", slide->angle_rad, SW_UNIT_RAD);
  if (slide->cohesion_pa > 0.0)
    sw_working_typed (working, "cohesion", slide->cohesion_pa, SW_UNIT_PA);
  else
    sw_working_part (working, "cohesion", 0.0, SW_UNIT_PA);
  sw_judge_sourced (working, "weight", &slide->weight_n_per_m3, SW_UNIT_N_PER_M3);
  sw_working_typed (working, "depth", slide->depth_m, SW_UNIT_SMALL_M);
  return working;
}

void
sw_judge_slide_workings (SwTally *tally, const SwLayout *layout)
{
  for (guint i = 0; i < layout->n_faces; i++)
    {
      const char *face = layout->faces[i].face->id;
      SwFaceSlide slide;
      SwWorking *wet;

      if (!sw_face_slide (layout, i, &slide))
        continue;
      add_factor (tally, face, &slide, "slide_dry", "slide-dry", slide.screen.dry);
      wet = add_factor (tally, face, &slide, "slide_seepage", "slide-seepage",
                        slide.screen.full_seepage);
      sw_working_part (wet, "water_weight", SW_WATER_N_PER_M3, SW_UNIT_N_PER_M3);
    }
}
