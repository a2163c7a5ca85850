/* SPDX-License-Identifier: MIT */
#include "form-shape.h"

#include <glib/gi18n.h>

#include "form-choices.h"

static gpointer
shown (SwStage *stage, SwFace *face, SwListKind kind)
{
  SwPointList list = sw_stage_list (stage, FALSE);

  if (list.kind != kind || !sw_points_exist (face, list))
    return NULL;
  return g_ptr_array_index (kind == SW_LIST_OBSTACLE ? face->obstacles : face->zones,
                            list.which);
}

static gpointer
obstacle_of (SwStage *stage, SwFace *face)
{
  return shown (stage, face, SW_LIST_OBSTACLE);
}

static gpointer
zone_of (SwStage *stage, SwFace *face)
{
  return shown (stage, face, SW_LIST_ZONE);
}

static int
zone_soil_get (SwStage *stage, gsize which)
{
  const SwZone *zone = zone_of (stage, (SwFace *) sw_stage_face (stage));
  const GPtrArray *soils = sw_stage_stock (stage)->catalogue->soils;

  for (guint i = 0; zone != NULL && i < soils->len; i++)
    if (g_str_equal (((SwSoil *) g_ptr_array_index (soils, i))->id, zone->soil_id))
      return (int) i;
  return -1;
}

static void
zone_soil_set (SwStage *stage, SwJob *job, SwFace *face, gsize which, guint index)
{
  SwZone *zone = zone_of (stage, face);
  const SwSoil *soil =
      g_ptr_array_index (sw_stage_stock (stage)->catalogue->soils, index);

  if (zone != NULL)
    sw_text_set (&zone->soil_id, soil->id);
}

const SwField sw_obstacle_fields[] = {
  { .kind = SW_FIELD_TEXT,
    .label = N_ ("Name"),
    .step = N_ ("Rename Obstacle"),
    .of = obstacle_of,
    .offset = G_STRUCT_OFFSET (SwObstacle, name) },
  { .kind = SW_FIELD_END },
};

const SwField sw_zone_fields[] = {
  { .kind = SW_FIELD_TEXT,
    .label = N_ ("Name"),
    .step = N_ ("Rename Zone"),
    .of = zone_of,
    .offset = G_STRUCT_OFFSET (SwZone, name) },
  { .kind = SW_FIELD_CHOICE,
    .label = N_ ("Soil"),
    .step = N_ ("Change Soil of Zone"),
    .of = zone_of,
    .names = sw_choice_soil_names,
    .get = zone_soil_get,
    .set = zone_soil_set },
  { .kind = SW_FIELD_SWITCH,
    .label = N_ ("Loose ground"),
    .step = N_ ("Change Soil State of Zone"),
    .of = zone_of,
    .offset = G_STRUCT_OFFSET (SwZone, loose) },
  { .kind = SW_FIELD_VALUE,
    .label = N_ ("Loose topsoil"),
    .step = N_ ("Change Topsoil of Zone"),
    .of = zone_of,
    .offset = G_STRUCT_OFFSET (SwZone, topsoil_m),
    .unit = SW_UNIT_SMALL_M,
    .least = 0.0,
    .most = 2.0 },
  { .kind = SW_FIELD_END },
};
