/* SPDX-License-Identifier: MIT */
#include "random-slope.h"
#include <math.h>

#define MOST_POINTS 12

static double
between (GRand *rand, double from, double to)
{
  return g_rand_double_range (rand, from, to);
}

static gboolean
one_in (GRand *rand, int count)
{
  return g_rand_int_range (rand, 0, count) == 0;
}

static SwBox
box_of (const SwFace *face)
{
  return sw_ring_box ((SwRing){ face->outline, face->n_outline });
}

/* A star-shaped ring round a place in the outline's box. */
static guint
random_ring (GRand *rand, const SwFace *face, double largest_m, SwPoint *points)
{
  SwBox box = box_of (face);
  SwPoint middle = { between (rand, box.x0_m, box.x1_m),
                     between (rand, box.y0_m, box.y1_m) };
  guint n = (guint) g_rand_int_range (rand, 3, MOST_POINTS + 1);
  double turn = g_rand_double (rand);

  for (guint i = 0; i < n; i++)
    {
      double angle = 2.0 * G_PI * (i + turn) / n;
      double radius_m = largest_m * between (rand, 0.3, 1.0);

      points[i] = (SwPoint){ middle.x_m + radius_m * cos (angle),
                             middle.y_m + radius_m * sin (angle) };
    }
  return n;
}

static void
add_obstacles (GRand *rand, SwFace *face)
{
  int count = one_in (rand, 2) ? g_rand_int_range (rand, 1, 4) : 0;

  for (int i = 0; i < count; i++)
    {
      g_autofree char *id = g_strdup_printf ("%d", i + 1);
      SwObstacle *obstacle = sw_obstacle_new (id);
      SwPoint points[MOST_POINTS];
      guint n = random_ring (rand, face, between (rand, 0.3, 3.0), points);

      sw_obstacle_set_outline (obstacle, points, n);
      g_ptr_array_add (face->obstacles, obstacle);
    }
}

static const char *
any_soil (GRand *rand, const SwCatalogue *catalogue)
{
  gint32 index = g_rand_int_range (rand, 0, (gint32) catalogue->soils->len);
  const SwSoil *soil = catalogue->soils->pdata[index];

  return soil->id;
}

static void
add_zones (GRand *rand, const SwCatalogue *catalogue, SwFace *face)
{
  int count = one_in (rand, 3) ? g_rand_int_range (rand, 1, 3) : 0;

  for (int i = 0; i < count; i++)
    {
      g_autofree char *id = g_strdup_printf ("%d", i + 1);
      SwZone *zone = sw_zone_new (id);
      SwPoint points[MOST_POINTS];
      guint n = random_ring (rand, face, between (rand, 1.0, 20.0), points);

      sw_zone_set_outline (zone, points, n);
      sw_text_set (&zone->soil_id, any_soil (rand, catalogue));
      zone->loose = g_rand_boolean (rand);
      g_ptr_array_add (face->zones, zone);
    }
}

/* Further sections: the first, drawn out and raised by up to a third. */
static void
rule_between (GRand *rand, SwFace *face)
{
  SwBox box = box_of (face);
  int count = g_rand_int_range (rand, 1, 4);
  g_autofree SwPoint *section = g_new (SwPoint, face->n_section);

  face->section_along_m = box.x0_m;
  for (int s = 1; s <= count; s++)
    {
      double wide = between (rand, 0.75, 1.33), high = between (rand, 0.75, 1.33);
      double foot_m = face->section[face->n_section - 1].y_m;

      for (guint i = 0; i < face->n_section; i++)
        section[i] = (SwPoint){ face->section[i].x_m * wide,
                                foot_m + (face->section[i].y_m - foot_m) * high };
      sw_face_add_section (face, box.x0_m + (box.x1_m - box.x0_m) * s / count, section);
    }
}

/* A round crest under the outline there is: its width is arc length at the crest. */
static void
bend (GRand *rand, SwFace *face, SwCrestForm form)
{
  SwBox box = box_of (face);
  double least_m = (box.x1_m - box.x0_m) / (1.9 * G_PI);

  if (form == SW_CREST_BOWL)
    least_m = fmax (least_m, face->section[face->n_section - 1].x_m + 1.0);
  face->crest_form = form;
  face->crest_radius_m = fmax (1.0, least_m) * between (rand, 1.0, 3.0);
}

static void
make_heap (GRand *rand, SwFace *face)
{
  double out_m = face->section[face->n_section - 1].x_m;
  double along_m;

  face->crest_form = SW_CREST_NOSE;
  face->crest_radius_m = between (rand, 1.0, 8.0);
  along_m = 2.0 * G_PI * face->crest_radius_m;
  sw_face_set_outline (
      face,
      (SwPoint[]){ { 0.0, 0.0 }, { along_m, 0.0 }, { along_m, out_m }, { 0.0, out_m } },
      4);
}

static void
shape_ground (GRand *rand, SwFace *face)
{
  switch (g_rand_int_range (rand, 0, 10))
    {
    case 0:
    case 1:
      rule_between (rand, face);
      break;
    case 2:
    case 3:
      bend (rand, face, SW_CREST_NOSE);
      break;
    case 4:
      bend (rand, face, SW_CREST_BOWL);
      break;
    case 5:
      make_heap (rand, face);
      break;
    default:
      break;
    }
}

/* Most faces are small: more of them in the same time. */
static void
shrink (SwFace *face, double by)
{
  for (guint i = 0; i < face->n_outline; i++)
    face->outline[i] = (SwPoint){ face->outline[i].x_m / by, face->outline[i].y_m / by };
  for (guint i = 0; i < face->n_section; i++)
    face->section[i] = (SwPoint){ face->section[i].x_m / by, face->section[i].y_m / by };
}

SwJob *
random_slope (GRand *rand, const SwCatalogue *catalogue)
{
  SwJob *job =
      random_job (rand, (OutlineKind) g_rand_int_range (rand, 0, OUTLINE_KIND_COUNT));
  SwFace *face = g_ptr_array_index (job->faces, 0);
  gint32 practice = g_rand_int_range (rand, 0, (gint32) catalogue->practices->len);
  gint32 blanket = g_rand_int_range (rand, 0, (gint32) catalogue->blankets->len);

  sw_text_set (&job->practice_id,
               ((SwPractice *) catalogue->practices->pdata[practice])->id);
  sw_text_set (&job->blanket_id, ((SwBlanket *) catalogue->blankets->pdata[blanket])->id);
  sw_text_set (&face->soil_id, any_soil (rand, catalogue));
  job->units = g_rand_boolean (rand) ? SW_UNITS_US : SW_UNITS_METRIC;
  job->zone_rule = g_rand_boolean (rand) ? SW_ZONE_SPLIT : SW_ZONE_WORSE;
  face->bench = g_rand_boolean (rand) ? SW_BENCH_CONTINUOUS : SW_BENCH_SPLIT;
  face->loose = g_rand_boolean (rand);
  if (!one_in (rand, 10))
    shrink (face, one_in (rand, 3) ? 2.0 : 4.0);
  shape_ground (rand, face);
  add_obstacles (rand, face);
  add_zones (rand, catalogue, face);
  if (one_in (rand, 2))
    face->fan = SW_FAN_INFILL;
  return job;
}
