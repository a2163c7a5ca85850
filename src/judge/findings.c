/* SPDX-License-Identifier: MIT */
#include "findings-private.h"
#include <math.h>
#include <slopewright/base/gradient.h>

/* No practice here is meant for ground steeper than 1:1: an engineer decides. */
#define STEEPEST_HV 1.0

/* The flat allowance that this program replaces; shown where the true figure is above
 * it. */
#define FLAT_ALLOWANCE 0.10

/* Load constant of the revised NIOSH lifting equation, DHHS (NIOSH) 94-110: the most for
 * one person under ideal conditions, kg. */
#define NIOSH_LOAD_KG 23.0

/* Ratios are compared with so much slack, as class tables print them. */
#define RATIO_TOLERANCE 1e-3

const char *
sw_severity_code (SwSeverity severity)
{
  static const char *const codes[] = { "note", "caution", "stop" };

  return codes[severity];
}

static void
free_finding (gpointer data)
{
  SwFinding *finding = data;

  g_array_unref (finding->inputs);
  g_free (finding);
}

SwFinding *
sw_finding_add (GPtrArray *findings, SwSeverity severity, const char *code,
                const char *failure, int face, int tier)
{
  SwFinding *finding = g_new0 (SwFinding, 1);

  *finding = (SwFinding){ .code = code,
                          .failure = failure,
                          .severity = severity,
                          .face = face,
                          .tier = tier,
                          .obstacle = -1,
                          .zone = -1 };
  finding->inputs = g_array_new (FALSE, TRUE, sizeof (SwInput));
  g_ptr_array_add (findings, finding);
  return finding;
}

void
sw_finding_number (SwFinding *finding, const char *symbol, double value, SwUnit unit)
{
  SwInput input = {
    .symbol = symbol, .value = value, .unit = unit, .origin = SW_ORIGIN_COMPUTED
  };

  g_array_append_val (finding->inputs, input);
}

/* The angle may be read either side of the class limit: the steeper rule holds. */
static void
judge_borderline (GPtrArray *findings, const SwLayout *layout, int face, int index)
{
  double angle = layout->faces[face].tiers[index].steepest_rad;
  double error = layout->faces[face].face->angle_error_rad;
  double limit_hv = layout->blanket->max_hv.value;
  double low_hv = sw_gradient_hv (fmin (angle + error, G_PI / 2.0 - error));
  double high_hv = angle > error ? sw_gradient_hv (angle - error) : INFINITY;
  SwFinding *finding;

  if (error <= 0.0 || !isfinite (limit_hv) || low_hv >= limit_hv || high_hv <= limit_hv)
    return;
  finding = sw_finding_add (findings, SW_SEVERITY_CAUTION, "borderline", "", face, index);
  sw_finding_number (finding, "low", low_hv, SW_UNIT_HV);
  sw_finding_number (finding, "high", high_hv, SW_UNIT_HV);
  sw_finding_number (finding, "limit", limit_hv, SW_UNIT_HV);
}

static void
judge_gradient (GPtrArray *findings, const SwLayout *layout, int face, int index)
{
  const SwTier *tier = &layout->faces[face].tiers[index];
  double limit_hv = layout->blanket->max_hv.value;
  double hv = sw_gradient_hv (tier->steepest_rad);
  SwFinding *finding;

  if (hv < STEEPEST_HV - RATIO_TOLERANCE)
    {
      finding =
          sw_finding_add (findings, SW_SEVERITY_STOP, "too-steep", "F15", face, index);
      sw_finding_number (finding, "gradient", tier->steepest_rad, SW_UNIT_RAD);
    }
  if (isfinite (limit_hv) && hv < limit_hv - RATIO_TOLERANCE)
    {
      finding = sw_finding_add (findings, SW_SEVERITY_CAUTION, "class-gradient", "", face,
                                index);
      sw_finding_number (finding, "gradient", hv, SW_UNIT_HV);
      sw_finding_number (finding, "limit", limit_hv, SW_UNIT_HV);
    }
  judge_borderline (findings, layout, face, index);
}

static void
judge_pin_length (GPtrArray *findings, const SwFaceLayout *face, int index, int zone)
{
  const SwPinLength *length = &face->pin_lengths[zone + 1];
  gboolean loose = length->zone != NULL ? length->zone->loose : face->face->loose;
  SwFinding *finding;

  if (length->pin == NULL || length->pin->length_m < length->need_m - 1e-6)
    {
      finding =
          sw_finding_add (findings, SW_SEVERITY_CAUTION,
                          zone < 0 ? "pin-short" : "pin-short-zone", "F9", index, -1);
      finding->zone = zone;
      if (zone >= 0)
        sw_finding_number (finding, "zone", zone + 1, SW_UNIT_COUNT);
      sw_finding_number (finding, "need", length->need_m, SW_UNIT_SMALL_M);
    }
  if (loose)
    {
      finding =
          sw_finding_add (findings, SW_SEVERITY_NOTE,
                          zone < 0 ? "pin-trial" : "pin-trial-zone", "F9", index, -1);
      finding->zone = zone;
      if (zone >= 0)
        sw_finding_number (finding, "zone", zone + 1, SW_UNIT_COUNT);
      sw_finding_number (finding, "length",
                         length->pin != NULL ? length->pin->length_m : length->need_m,
                         SW_UNIT_SMALL_M);
    }
}

static void
judge_pins (GPtrArray *findings, const SwLayout *layout, int index)
{
  const SwFaceLayout *face = &layout->faces[index];
  SwFinding *finding;

  for (guint i = 0; i < face->n_pin_lengths; i++)
    if (face->n_pin_lengths == 1 || face->pin_lengths[i].count > 0)
      judge_pin_length (findings, face, index, (int) i - 1);
  if (face->n_pin_lengths > 1)
    {
      finding =
          sw_finding_add (findings, SW_SEVERITY_NOTE, "soil-zones", "F9", index, -1);
      sw_finding_number (finding, "zones", face->n_pin_lengths - 1, SW_UNIT_COUNT);
    }
}

/* Where to cut, from the two edges that a tape can be hooked on. */
static void
judge_obstacles (GPtrArray *findings, const SwLayout *layout, int index)
{
  const SwFaceLayout *face = &layout->faces[index];
  SwBox box = sw_ring_box ((SwRing){ face->face->outline, face->face->n_outline });

  for (guint i = 0; i < face->n_obstacles; i++)
    {
      const SwObstaclePlace *place = &face->obstacles[i];
      SwFinding *finding;

      if (!place->standing)
        continue;
      finding = sw_finding_add (findings, SW_SEVERITY_NOTE, "obstacle", "F16", index, -1);
      finding->obstacle = (int) i;
      sw_finding_number (finding, "number", i + 1, SW_UNIT_COUNT);
      sw_finding_number (finding, "wide", place->along_to_m - place->along_from_m,
                         SW_UNIT_M);
      sw_finding_number (finding, "long", place->down_to_m - place->down_from_m,
                         SW_UNIT_M);
      sw_finding_number (finding, "from_crest", place->down_from_m, SW_UNIT_M);
      sw_finding_number (finding, "from_left", place->along_from_m - box.x0_m, SW_UNIT_M);
      sw_finding_number (finding, "collar",
                         sw_practice_get (layout->practice, SW_PRACTICE_COLLAR_M),
                         SW_UNIT_SMALL_M);
      sw_finding_number (finding, "spacing",
                         sw_practice_get (layout->practice, SW_PRACTICE_RING_PIN_M),
                         SW_UNIT_SMALL_M);
    }
}

static void
judge_face (GPtrArray *findings, const SwLayout *layout, int index)
{
  const SwFaceLayout *face = &layout->faces[index];

  for (guint i = 0; i < face->n_tiers; i++)
    {
      judge_gradient (findings, layout, index, (int) i);
    }
  judge_pins (findings, layout, index);
  judge_obstacles (findings, layout, index);
}

/* A roll that one person might lift dry. */
static void
judge_wet_roll (GPtrArray *findings, const SwLayout *layout, const SwTally *tally)
{
  double wet_kg = tally->roll_mass_kg * layout->job->numbers.values[SW_NUMBER_WET_RATIO];
  SwFinding *finding;

  if (!(wet_kg > NIOSH_LOAD_KG) || tally->roll_mass_kg > NIOSH_LOAD_KG)
    return;
  finding = sw_finding_add (findings, SW_SEVERITY_CAUTION, "roll-heavy-wet", "", -1, -1);
  sw_finding_number (finding, "mass", tally->roll_mass_kg, SW_UNIT_KG);
  sw_finding_number (finding, "wet", wet_kg, SW_UNIT_KG);
  sw_finding_number (finding, "limit", NIOSH_LOAD_KG, SW_UNIT_KG);
}

static void
judge_material (GPtrArray *findings, const SwLayout *layout, const SwTally *tally)
{
  double over = tally->areas.placed_m2 / tally->areas.net_m2 - 1.0;
  SwFinding *finding;

  if (over > FLAT_ALLOWANCE)
    {
      finding = sw_finding_add (findings, SW_SEVERITY_NOTE, "flat-allowance", "", -1, -1);
      sw_finding_number (finding, "over", over, SW_UNIT_PERCENT);
      sw_finding_number (finding, "flat", FLAT_ALLOWANCE, SW_UNIT_PERCENT);
    }
  if (tally->roll_mass_kg > NIOSH_LOAD_KG)
    {
      finding = sw_finding_add (findings, SW_SEVERITY_CAUTION, "roll-heavy", "", -1, -1);
      sw_finding_number (finding, "mass", tally->roll_mass_kg, SW_UNIT_KG);
      sw_finding_number (finding, "limit", NIOSH_LOAD_KG, SW_UNIT_KG);
    }
  judge_wet_roll (findings, layout, tally);
  if (layout->blanket->net_plastic_usual
      && layout->job->site[SW_SITE_WILDLIFE] == SW_ANSWER_YES)
    sw_finding_add (findings, SW_SEVERITY_CAUTION, "plastic-net", "F12", -1, -1);
}

static int
compare_severity (gconstpointer a, gconstpointer b)
{
  const SwFinding *x = *(SwFinding *const *) a, *y = *(SwFinding *const *) b;

  return (int) y->severity - (int) x->severity;
}

GPtrArray *
sw_findings_new (const SwLayout *layout, const SwTally *tally)
{
  GPtrArray *findings = g_ptr_array_new_with_free_func (free_finding);

  sw_judge_site (findings, layout);
  sw_judge_people (findings, layout);
  for (guint i = 0; i < layout->n_faces; i++)
    judge_face (findings, layout, (int) i);
  sw_judge_laying (findings, layout);
  sw_judge_edges (findings, layout);
  judge_material (findings, layout, tally);
  sw_judge_water (findings, layout);
  sw_judge_slides (findings, layout);
  sw_judge_lifting (findings, layout, tally);
  sw_judge_fit (findings, layout, tally);
  /* g_ptr_array_sort() is stable. */
  g_ptr_array_sort (findings, compare_severity);
  return findings;
}

guint
sw_findings_count (const GPtrArray *findings, SwSeverity severity)
{
  guint count = 0;

  for (guint i = 0; findings != NULL && i < findings->len; i++)
    count += ((const SwFinding *) g_ptr_array_index (findings, i))->severity == severity;
  return count;
}
