/* SPDX-License-Identifier: MIT */
#include "canvas-kind.h"

#include <glib/gi18n.h>

static const SwCanvasKind kinds[SW_CANVAS_KIND_COUNT] = {
  [SW_CANVAS_SECTION] = { "section", N_ ("Section"), TRUE, TRUE,
                          NC_ ("coordinate", "Out"), NC_ ("coordinate", "Up"),
                          sw_section_box, sw_section_fit, sw_draw_section, 12.0, 16.0,
                          13.0, 19.0 },
  [SW_CANVAS_PLAN] = { "plan", N_ ("Plan"), FALSE, TRUE, NC_ ("coordinate", "Along"),
                       NC_ ("coordinate", "Out"), sw_plan_box, sw_plan_fit, sw_draw_plan,
                       17.0, 17.0, 17.0, 12.0 },
  [SW_CANVAS_FACE_VIEW] = { "face-view", N_ ("Face view"), FALSE, FALSE, "", "",
                            sw_face_view_box, sw_face_view_fit, sw_draw_face_view, 17.0,
                            17.0, 15.0, 11.0 },
};

const SwCanvasKind *
sw_canvas_kind (SwCanvasView view)
{
  g_return_val_if_fail ((unsigned) view < SW_CANVAS_KIND_COUNT, NULL);
  return &kinds[view];
}

const char *
sw_canvas_kind_coordinate (const char *label)
{
  return g_dpgettext2 (NULL, "coordinate", label);
}

const SwCanvasKind *
sw_canvas_kind_of_code (const char *code)
{
  for (guint i = 0; i < SW_CANVAS_KIND_COUNT; i++)
    if (g_strcmp0 (kinds[i].code, code) == 0)
      return &kinds[i];
  return NULL;
}

SwPoint
sw_canvas_kind_lay (const SwCanvasKind *kind, const SwFace *face, SwPoint point)
{
  return kind == &kinds[SW_CANVAS_PLAN] ? sw_plan_lay (face, point) : point;
}

SwPoint
sw_canvas_kind_lift (const SwCanvasKind *kind, const SwFace *face, SwPoint world)
{
  return kind == &kinds[SW_CANVAS_PLAN] ? sw_plan_lift (face, world) : world;
}

SwPoint
sw_canvas_kind_from_plan (const SwCanvasKind *kind, const SwResult *result, guint face,
                          SwPoint plan)
{
  const SwFace *of_job = g_ptr_array_index (result->job->faces, face);

  if (kind == &kinds[SW_CANVAS_SECTION])
    return (SwPoint){ plan.y_m, sw_face_up_m (of_job, plan.y_m) };
  if (kind == &kinds[SW_CANVAS_FACE_VIEW])
    return sw_face_view_from_plan (result, face, plan);
  return sw_canvas_kind_lay (kind, of_job, plan);
}

SwPoint
sw_canvas_kind_to_plan (const SwCanvasKind *kind, const SwResult *result, guint face,
                        SwPoint world)
{
  if (kind == &kinds[SW_CANVAS_SECTION])
    return (SwPoint){ 0.0, world.x_m };
  if (kind == &kinds[SW_CANVAS_FACE_VIEW])
    return sw_face_view_to_plan (result, face, world);
  return sw_canvas_kind_lift (kind, g_ptr_array_index (result->job->faces, face), world);
}
