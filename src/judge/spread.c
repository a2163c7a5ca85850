/* SPDX-License-Identifier: MIT */
#include <math.h>
#include <slopewright/base/gradient.h>
#include <slopewright/judge/spread.h>

/* A misread angle stays a slope: between a tenth of a degree and 85 degrees. */
#define LEAST_ANGLE_RAD 0.0017453292519943296
#define MOST_ANGLE_RAD 1.4835298641951802

const char *
sw_error_source_code (SwErrorSource source)
{
  static const char *const codes[SW_ERROR_SOURCE_COUNT] = { "length", "angle", "width" };

  return codes[source];
}

/* x' = x0 + (x - x0) fx, and the same of y. */
typedef struct
{
  SwPoint about;
  double x_factor, y_factor;
} Scaling;

static void
scale (SwPoint *points, guint count, Scaling by)
{
  for (guint i = 0; i < count; i++)
    {
      points[i].x_m = by.about.x_m + (points[i].x_m - by.about.x_m) * by.x_factor;
      points[i].y_m = by.about.y_m + (points[i].y_m - by.about.y_m) * by.y_factor;
    }
}

/* What stands on the face, or under it, was taped from the same pegs. */
static void
scale_plan (SwFace *face, Scaling by)
{
  scale (face->outline, face->n_outline, by);
  for (guint i = 0; i < face->obstacles->len; i++)
    {
      SwObstacle *obstacle = g_ptr_array_index (face->obstacles, i);

      scale (obstacle->outline, obstacle->n_outline, by);
    }
  for (guint i = 0; i < face->zones->len; i++)
    {
      SwZone *zone = g_ptr_array_index (face->zones, i);

      scale (zone->outline, zone->n_outline, by);
    }
}

static void
scale_down_slope (SwFace *face, double out_factor, double up_factor)
{
  SwPoint crest = face->section[face->crest];

  scale (face->section, face->n_section, (Scaling){ crest, out_factor, up_factor });
  scale_plan (face, (Scaling){ { 0.0, crest.x_m }, 1.0, out_factor });
}

static void
scale_along (SwFace *face, double factor)
{
  SwBox box = sw_ring_box ((SwRing){ face->outline, face->n_outline });

  scale_plan (face, (Scaling){ { (box.x0_m + box.x1_m) / 2.0, 0.0 }, factor, 1.0 });
}

static void
misread_angle (SwFace *face, double error_rad)
{
  SwPoint crest = face->section[face->crest], toe = face->section[face->toe];
  double angle = atan2 (crest.y_m - toe.y_m, toe.x_m - crest.x_m);
  double read = CLAMP (angle + error_rad, LEAST_ANGLE_RAD, MOST_ANGLE_RAD);

  if (face->obtained == SW_OBTAINED_RISE_RATIO)
    scale_down_slope (face, tan (angle) / tan (read), 1.0);
  else
    scale_down_slope (face, cos (read) / cos (angle), sin (read) / sin (angle));
}

void
sw_face_misread (SwFace *face, SwErrorSource source, double errors)
{
  SwPoint crest = face->section[face->crest], toe = face->section[face->toe];
  SwBox box = sw_ring_box ((SwRing){ face->outline, face->n_outline });
  double length_m = hypot (toe.x_m - crest.x_m, toe.y_m - crest.y_m);
  double off_m = errors * face->length_error_m;

  switch (source)
    {
    case SW_ERROR_LENGTH:
      scale_down_slope (face, (length_m + off_m) / length_m,
                        (length_m + off_m) / length_m);
      break;
    case SW_ERROR_ANGLE:
      misread_angle (face, errors * face->angle_error_rad);
      break;
    case SW_ERROR_WIDTH:
    default:
      scale_along (face, (box.x1_m - box.x0_m + off_m) / (box.x1_m - box.x0_m));
      break;
    }
}

/* The numbers that spread, of one layout. */
typedef struct
{
  double rolls, runs, pins, blanket_m;
} Counts;

static Counts
count (const SwResult *result)
{
  return (Counts){ result->tally->rolls, result->tally->runs,
                   (double) result->tally->pins, result->tally->piece_length_m };
}

static SwResult *
misread_job (const SwResult *result, SwErrorSource source, double errors)
{
  g_autoptr (SwJob) job = sw_job_copy (result->job);

  for (guint i = 0; i < job->faces->len; i++)
    sw_face_misread (g_ptr_array_index (job->faces, i), source, errors);
  return sw_result_new (job, result->catalogue);
}

/* Squares of the largest change up and down. */
typedef struct
{
  double up, down;
} Change;

static void
note_change (Change *change, double before, double after)
{
  double square = (after - before) * (after - before);

  if (after > before)
    change->up += square;
  else
    change->down += square;
}

static SwBand
band (double middle, Change change)
{
  return (SwBand){ fmax (0.0, floor (middle - sqrt (change.down))),
                   ceil (middle + sqrt (change.up)) };
}

static void
spread_counts (SwSpread *spread, const SwResult *result)
{
  Counts middle = count (result);
  Change rolls = { 0 }, runs = { 0 }, pins = { 0 };
  double largest_m = 0.0;

  for (int source = 0; source < SW_ERROR_SOURCE_COUNT; source++)
    for (int sign = -1; sign <= 1; sign += 2)
      {
        g_autoptr (SwResult) other = misread_job (result, (SwErrorSource) source, sign);
        Counts counts;

        if (other->status != SW_OK)
          continue;
        counts = count (other);
        note_change (&rolls, middle.rolls, counts.rolls);
        note_change (&runs, middle.runs, counts.runs);
        note_change (&pins, middle.pins, counts.pins);
        if (fabs (counts.blanket_m - middle.blanket_m) > largest_m)
          {
            largest_m = fabs (counts.blanket_m - middle.blanket_m);
            spread->largest = (SwErrorSource) source;
            spread->any = TRUE;
          }
      }
  spread->rolls = band (middle.rolls, rolls);
  spread->runs = band (middle.runs, runs);
  spread->pins = band (middle.pins, pins);
}

static SwBand
ratio_band (const SwFaceLayout *face)
{
  double steepest = 0.0, error = face->face->angle_error_rad;

  for (guint i = 0; i < face->n_tiers; i++)
    steepest = fmax (steepest, face->tiers[i].steepest_rad);
  return (SwBand){ sw_gradient_hv (fmin (steepest + error, MOST_ANGLE_RAD)),
                   sw_gradient_hv (fmax (steepest - error, LEAST_ANGLE_RAD)) };
}

SwSpread *
sw_spread_new (const SwResult *result)
{
  SwSpread *spread;

  if (result->status != SW_OK)
    return NULL;
  spread = g_new0 (SwSpread, 1);
  spread_counts (spread, result);
  spread->n_faces = result->layout->n_faces;
  spread->ratio_hv = g_new (SwBand, spread->n_faces);
  for (guint i = 0; i < spread->n_faces; i++)
    spread->ratio_hv[i] = ratio_band (&result->layout->faces[i]);
  return spread;
}

void
sw_spread_free (SwSpread *spread)
{
  if (spread == NULL)
    return;
  g_free (spread->ratio_hv);
  g_free (spread);
}
