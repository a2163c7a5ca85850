/* SPDX-License-Identifier: MIT */
#include "square-job.h"
#include <math.h>
#include <slopewright/base/units.h>

SwJob *
square_job (double ha)
{
  SwJob *job = sw_job_new_default ();
  SwFace *face = g_ptr_array_index (job->faces, 0);
  double side_m = sqrt (ha * SW_M2_PER_HA);
  const SwPoint section[] = { { 0.0, side_m / 3.0 }, { side_m, 0.0 } };
  const SwPoint outline[] = {
    { 0.0, 0.0 }, { side_m, 0.0 }, { side_m, side_m }, { 0.0, side_m }
  };

  sw_face_set_section (face, section, 2);
  sw_face_set_outline (face, outline, 4);
  return job;
}
