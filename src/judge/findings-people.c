/* SPDX-License-Identifier: MIT */
#include "findings-private.h"
#include "laying-facts.h"
#include <slopewright/base/gradient.h>

/* From here on footing gets a word; advice of this program, no regulator's value. */
#define FOOTING_HV 3.0

/* Cal/OSHA Title 8 s. 1670(a) names ground steeper than 40 degrees where the fall can
 * exceed 7.5 ft. Named as an example: the local rule decides. */
#define NAMED_FALL_RAD (40.0 * G_PI / 180.0)
#define NAMED_FALL_M (7.5 * SW_M_PER_FT)

/* WorkSafeBC OHSR 26.16 names 35 % (40 % for some machines) for forestry machines: from
 * there on a risk assessment and written procedures. Named here as an example. */
#define MACHINE_RATIO 0.35

/* Deepest trench in the agency texts read: Queensland guidance, 300 mm. */
#define SHALLOW_M 0.30

#define ANGLE_TOLERANCE_RAD 1e-6
#define LENGTH_TOLERANCE_M 1e-4
#define RATIO_TOLERANCE 1e-3

static SwFinding *
add_face (GPtrArray *findings, const char *code, const SwLayout *layout, int face)
{
  SwFinding *finding = sw_finding_add (findings, SW_SEVERITY_CAUTION, code, "", face, -1);
  const SwFaceLayout *laid = &layout->faces[face];

  sw_finding_number (finding, "gradient", sw_face_steepest_rad (laid), SW_UNIT_RAD);
  sw_finding_number (finding, "height", sw_fall_height_m (laid), SW_UNIT_M);
  return finding;
}

static void
judge_footing (GPtrArray *findings, const SwLayout *layout, int face)
{
  double steepest_rad = sw_face_steepest_rad (&layout->faces[face]);
  double plan_rad = layout->job->numbers.values[SW_NUMBER_FALL_PLAN_RAD];

  if (sw_gradient_hv (steepest_rad) <= FOOTING_HV + RATIO_TOLERANCE)
    add_face (findings, "footing", layout, face);
  if (plan_rad > 0.0 && steepest_rad >= plan_rad - ANGLE_TOLERANCE_RAD)
    sw_finding_number (add_face (findings, "fall-plan", layout, face), "set", plan_rad,
                       SW_UNIT_ANGLE);
  if (steepest_rad > NAMED_FALL_RAD + ANGLE_TOLERANCE_RAD
      && sw_fall_height_m (&layout->faces[face]) > NAMED_FALL_M)
    add_face (findings, "fall-named", layout, face);
}

/* Nobody has said yet at which angle people must be held; no angle is made up here. */
static void
judge_fall_angle (GPtrArray *findings, const SwLayout *layout)
{
  SwFinding *finding;
  double steepest_rad = sw_steepest_rad (layout);

  if (layout->job->numbers.values[SW_NUMBER_FALL_PLAN_RAD] > 0.0
      || sw_gradient_hv (steepest_rad) > FOOTING_HV + RATIO_TOLERANCE)
    return;
  finding = sw_finding_add (findings, SW_SEVERITY_NOTE, "fall-angle-missing", "", -1, -1);
  sw_finding_number (finding, "gradient", steepest_rad, SW_UNIT_RAD);
}

static void
judge_machines (GPtrArray *findings, const SwLayout *layout)
{
  SwAnswer answer = layout->job->site[SW_SITE_MACHINES];
  double steepest_rad = sw_steepest_rad (layout);
  SwFinding *finding;

  if (answer == SW_ANSWER_NO
      || (answer == SW_ANSWER_UNKNOWN
          && sw_gradient_ratio (steepest_rad) < MACHINE_RATIO - RATIO_TOLERANCE))
    return;
  finding = sw_finding_add (
      findings, answer == SW_ANSWER_YES ? SW_SEVERITY_CAUTION : SW_SEVERITY_NOTE,
      answer == SW_ANSWER_YES ? "machines" : "machines-unknown", "", -1, -1);
  sw_finding_number (finding, "gradient", steepest_rad, SW_UNIT_RAD);
}

static void
judge_digging (GPtrArray *findings, const SwLayout *layout)
{
  double depth_m = sw_deepest_trench_m (layout);
  SwFinding *finding;

  if (depth_m <= SHALLOW_M + LENGTH_TOLERANCE_M)
    return;
  finding = sw_finding_add (findings, SW_SEVERITY_CAUTION, "trench-deep", "", -1, -1);
  sw_finding_number (finding, "depth", depth_m, SW_UNIT_SMALL_M);
  sw_finding_number (finding, "limit", SHALLOW_M, SW_UNIT_SMALL_M);
}

void
sw_judge_people (GPtrArray *findings, const SwLayout *layout)
{
  for (guint f = 0; f < layout->n_faces; f++)
    judge_footing (findings, layout, (int) f);
  judge_fall_angle (findings, layout);
  judge_machines (findings, layout);
  judge_digging (findings, layout);
}
