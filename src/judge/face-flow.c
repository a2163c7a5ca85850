/* SPDX-License-Identifier: MIT */
#include <slopewright/judge/face-flow.h>

static gboolean
find_largest_shear (const SwFallLine *line, SwFaceFlow *found)
{
  gboolean any = FALSE;

  for (guint i = 0; i < line->count; i++)
    {
      const SwFallSegment *here = &line->segments[i];
      SwSheetFlow flow;

      if (sw_sheet_flow_on_plane (found->rain_m_per_s, here->to_m,
                                  here->segment.angle_rad, found->roughness.value, &flow)
              != SW_OK
          || (any && flow.shear_pa <= found->flow.shear_pa))
        continue;
      any = TRUE;
      found->segment = i;
      found->length_m = here->to_m;
      found->angle_rad = here->segment.angle_rad;
      found->flow = flow;
    }
  return any;
}

gboolean
sw_face_flow (const SwLayout *layout, guint face, SwFaceFlow *flow)
{
  SwFaceFlow found = {
    .rain_m_per_s = layout->job->numbers.values[SW_NUMBER_RAIN],
    .run_on_m = layout->job->numbers.values[SW_NUMBER_RUN_ON_M],
    .roughness = sw_job_site_number (layout->job, layout->catalogue, SW_NUMBER_ROUGHNESS),
  };
  SwFallLine line;
  gboolean any;

  if (!(found.rain_m_per_s > 0.0) || !(found.roughness.value > 0.0))
    return FALSE;
  sw_fall_line_init (&line, layout, face);
  any = !line.ponds && find_largest_shear (&line, &found);
  sw_fall_line_clear (&line);
  if (any)
    *flow = found;
  return any;
}
