/* SPDX-License-Identifier: MIT */
#include "layout-private.h"
#include <math.h>

double
sw_region_true_area_m2 (const SwGround *ground, const SwRegion *region)
{
  double area_m2 = 0.0;

  for (guint i = 0; i < sw_region_rings (region); i++)
    {
      double ring_m2 = sw_ground_area_m2 (ground, sw_region_ring (region, i));

      area_m2 += sw_region_is_hole (region, i) ? -ring_m2 : ring_m2;
    }
  return area_m2;
}

SwStatus
sw_lay_obstacles (SwLaying *laying)
{
  double limit_m2 = sw_practice_get (laying->practice, SW_PRACTICE_DEDUCT_M2);
  g_autoptr (GPtrArray) large = g_ptr_array_new ();

  for (guint i = 0; i < laying->face->obstacles->len; i++)
    {
      const SwObstacle *obstacle = laying->face->obstacles->pdata[i];
      SwRegion *region;

      if (sw_region_new (obstacle->outline, obstacle->n_outline, &region) != SW_OK)
        return SW_E_OBSTACLE;
      g_ptr_array_add (laying->stands, region);
      if (sw_region_true_area_m2 (laying->ground, region) > limit_m2)
        g_ptr_array_add (large, region);
    }
  if (laying->stands->len > 0)
    laying->obstacles = sw_region_union (laying->stands);
  if (large->len > 0)
    laying->deductible = sw_region_union (large);
  return SW_OK;
}

gboolean
sw_boxes_meet (SwBox a, SwBox b)
{
  return a.x0_m <= b.x1_m && b.x0_m <= a.x1_m && a.y0_m <= b.y1_m && b.y0_m <= a.y1_m;
}

SwRegion *
sw_cover_within (const SwLaying *laying, guint tier, SwBox box)
{
  SwRegion *part = sw_region_clip_box (g_ptr_array_index (laying->regions, tier), box);
  g_autoptr (GPtrArray) near = g_ptr_array_new ();
  g_autoptr (SwRegion) obstacles = NULL;
  SwRegion *cover;

  for (guint i = 0; i < laying->stands->len; i++)
    if (sw_boxes_meet (sw_region_box (laying->stands->pdata[i]), box))
      g_ptr_array_add (near, laying->stands->pdata[i]);
  if (near->len == 0)
    return part;
  if (near->len > 1)
    obstacles = sw_region_union (near);
  cover = sw_region_minus (part, near->len > 1 ? obstacles : near->pdata[0]);
  sw_region_free (part);
  return cover;
}

const SwRegion *
sw_before_obstacles (const SwLaying *laying, guint tier)
{
  return laying->obstacles != NULL ? g_ptr_array_index (laying->regions, tier) : NULL;
}

static double
lines_length_m (const SwGround *ground, const GPtrArray *lines)
{
  double length_m = 0.0;

  for (guint i = 0; i < lines->len; i++)
    {
      const GArray *line = lines->pdata[i];

      for (guint p = 1; p < line->len; p++)
        length_m += sw_ground_length_m (ground, g_array_index (line, SwPoint, p - 1),
                                        g_array_index (line, SwPoint, p));
    }
  return length_m;
}

static void
stretch_over (const SwGround *ground, const SwRegion *part, SwObstaclePlace *place)
{
  SwBox box = sw_region_box (part);

  place->along_from_m = fmin (place->along_from_m, box.x0_m);
  place->along_to_m = fmax (place->along_to_m, box.x1_m);
  for (guint i = 0; i < part->points->len; i++)
    {
      double down_m = sw_ground_down_m (ground, g_array_index (part->points, SwPoint, i));

      place->down_from_m = fmin (place->down_from_m, down_m);
      place->down_to_m = fmax (place->down_to_m, down_m);
    }
}

/* The region and all within @by_m of it on the ground, taken as plane round its middle. */
static SwRegion *
grown_on_ground (const SwGround *ground, const SwRegion *region, double by_m)
{
  SwBox box = sw_region_box (region);
  SwPoint middle = { (box.x0_m + box.x1_m) / 2.0, (box.y0_m + box.y1_m) / 2.0 };
  double down_m = sw_ground_down_m (ground, (SwPoint){ middle.x_m, box.y1_m })
                  - sw_ground_down_m (ground, (SwPoint){ middle.x_m, box.y0_m });
  double along = sw_ground_stretch (ground, middle.y_m);
  double down = down_m / (box.y1_m - box.y0_m);
  g_autoptr (SwRegion) flat = sw_region_scaled (region, along, down);
  g_autoptr (SwRegion) grown = sw_region_grown (flat, by_m);

  return sw_region_scaled (grown, 1.0 / along, 1.0 / down);
}

/* Add what of the obstacle stands in one tier. */
static void
place_in_tier (const SwLaying *laying, guint index, guint tier, SwObstaclePlace *place)
{
  const SwRegion *stand = laying->stands->pdata[index];
  const SwRegion *region = laying->regions->pdata[tier];
  g_autoptr (SwRegion) part = sw_region_common (stand, region);
  g_autoptr (SwRegion) around = NULL, cover = NULL, collar = NULL;
  g_autoptr (GPtrArray) edges = NULL;

  if (sw_region_rings (part) == 0)
    return;
  if (!place->standing)
    *place = (SwObstaclePlace){ .obstacle = place->obstacle,
                                .standing = TRUE,
                                .along_from_m = INFINITY,
                                .along_to_m = -INFINITY,
                                .down_from_m = INFINITY,
                                .down_to_m = -INFINITY };
  stretch_over (laying->ground, part, place);
  place->area_m2 += sw_region_true_area_m2 (laying->ground, part);
  around = grown_on_ground (laying->ground, stand,
                            sw_practice_get (laying->practice, SW_PRACTICE_COLLAR_M));
  cover = sw_cover_within (laying, tier, sw_region_box (around));
  edges = sw_region_edges_within (stand, cover);
  place->around_m += lines_length_m (laying->ground, edges);
  collar = sw_region_common (around, cover);
  place->collar_m2 += sw_region_true_area_m2 (laying->ground, collar);
}

SwObstaclePlace *
sw_place_obstacles (const SwLaying *laying)
{
  double limit_m2 = sw_practice_get (laying->practice, SW_PRACTICE_DEDUCT_M2);
  SwObstaclePlace *places = g_new0 (SwObstaclePlace, laying->stands->len);

  for (guint i = 0; i < laying->stands->len; i++)
    {
      places[i].obstacle = laying->face->obstacles->pdata[i];
      for (guint t = 0; t < laying->tiers->len; t++)
        place_in_tier (laying, i, t, &places[i]);
      places[i].deducted =
          places[i].standing
          && sw_region_true_area_m2 (laying->ground, laying->stands->pdata[i]) > limit_m2;
    }
  return places;
}
