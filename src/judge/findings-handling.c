/* SPDX-License-Identifier: MIT */
#include "findings-private.h"
#include <math.h>
#include <slopewright/judge/face-slide.h>
#include <slopewright/judge/roll-lift.h>

/* Factor that EM 1110-2-1902 (2003) table 3-1 asks of finished slopes; here it only
 * decides how loudly a review is asked for. */
#define ASKED_FACTOR 1.5

/* Over it a lift asks too much of some; DHHS (NIOSH) 94-110. */
#define INDEX_MOST 1.0

void
sw_judge_slides (GPtrArray *findings, const SwLayout *layout)
{
  for (guint i = 0; i < layout->n_faces; i++)
    {
      gboolean asked = layout->job->numbers.values[SW_NUMBER_SLIDE_DEPTH_M] > 0.0;
      SwFaceSlide slide;
      SwFinding *finding;

      if (!sw_face_slide (layout, i, &slide))
        {
          if (asked)
            sw_finding_add (findings, SW_SEVERITY_NOTE, "friction-missing", "F15",
                            (int) i, -1);
          continue;
        }
      finding =
          sw_finding_add (findings,
                          slide.screen.full_seepage < ASKED_FACTOR ? SW_SEVERITY_CAUTION
                                                                   : SW_SEVERITY_NOTE,
                          "slide-screen", "F15", (int) i, (int) slide.tier);
      sw_finding_number (finding, "dry", slide.screen.dry, SW_UNIT_RATIO);
      sw_finding_number (finding, "seepage", slide.screen.full_seepage, SW_UNIT_RATIO);
      sw_finding_number (finding, "depth", slide.depth_m, SW_UNIT_SMALL_M);
      sw_finding_number (finding, "gradient", slide.angle_rad, SW_UNIT_RAD);
      if (slide.screen.limits & SW_SLIDE_NOT_THIN)
        {
          finding = sw_finding_add (findings, SW_SEVERITY_NOTE, "slide-not-thin", "F15",
                                    (int) i, (int) slide.tier);
          sw_finding_number (finding, "depth", slide.depth_m, SW_UNIT_SMALL_M);
        }
    }
}

void
sw_judge_lifting (GPtrArray *findings, const SwLayout *layout, const SwTally *tally)
{
  SwRollLift lift;
  SwFinding *finding;

  if (!sw_roll_lift (layout, tally, &lift)
      || !(fmax (lift.result.index, lift.wet_index) > INDEX_MOST))
    return;
  finding = sw_finding_add (findings, SW_SEVERITY_CAUTION,
                            isnan (lift.wet_index) ? "lift-index" : "lift-index-wet", "",
                            -1, -1);
  sw_finding_number (finding, "index", lift.result.index, SW_UNIT_RATIO);
  sw_finding_number (finding, "mass", lift.mass_kg, SW_UNIT_KG);
  sw_finding_number (finding, "limit", lift.result.limit_kg, SW_UNIT_KG);
  sw_finding_number (finding, "to", lift.to_m.value, SW_UNIT_SMALL_M);
  if (isnan (lift.wet_index))
    return;
  sw_finding_number (finding, "wet_index", lift.wet_index, SW_UNIT_RATIO);
  sw_finding_number (finding, "wet_mass", lift.wet_mass_kg, SW_UNIT_KG);
}
