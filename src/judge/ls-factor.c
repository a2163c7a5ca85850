/* SPDX-License-Identifier: MIT */
#include <math.h>
#include <slopewright/base/units.h>
#include <slopewright/judge/ls-factor.h>

#define UNIT_PLOT_M (72.6 * SW_M_PER_FT)
#define SHORT_M (15.0 * SW_M_PER_FT)   /* no rills below */
#define SHORTEST_M (3.0 * SW_M_PER_FT) /* no change below */
#define LONG_M (400.0 * SW_M_PER_FT)
#define TOO_LONG_M (1000.0 * SW_M_PER_FT)

/* Gradients that belong to a class from a printed percent on come from tangents and
 * arctangents; so much slack keeps 9 % at 9 %. */
#define GRADIENT_SLACK 1e-9

/* The same for lengths that come from feet, metres. */
#define LENGTH_SLACK_M 1e-9

static gboolean
is_angle (double angle_rad)
{
  return isfinite (angle_rad) && angle_rad >= 0.0 && angle_rad < G_PI_2;
}

static gboolean
is_length (double length_m)
{
  return isfinite (length_m) && length_m > 0.0;
}

static gboolean
is_method (SwLsMethod method)
{
  return (guint) method < SW_LS_METHOD_COUNT;
}

static gboolean
reaches (double angle_rad, double gradient)
{
  return tan (angle_rad) >= gradient - GRADIENT_SLACK;
}

static gboolean
is_short (double length_m)
{
  return length_m < SHORT_M - LENGTH_SLACK_M;
}

static double
steepness_short (double sine)
{
  return 3.0 * pow (sine, 0.8) + 0.56;
}

static double
steepness (SwLsMethod method, double angle_rad)
{
  double sine = sin (angle_rad);

  if (method == SW_LS_USLE_1978)
    return 65.41 * sine * sine + 4.56 * sine + 0.065;
  return reaches (angle_rad, 0.09) ? 16.8 * sine - 0.50 : 10.8 * sine + 0.03;
}

SwStatus
sw_steepness_factor (SwLsMethod method, double angle_rad, double *factor)
{
  if (!is_method (method) || !is_angle (angle_rad))
    return SW_E_RANGE;
  *factor = steepness (method, angle_rad);
  return SW_OK;
}

SwStatus
sw_steepness_factor_short (double angle_rad, double *factor)
{
  if (!is_angle (angle_rad))
    return SW_E_RANGE;
  *factor = steepness_short (sin (angle_rad));
  return SW_OK;
}

SwStatus
sw_steepness_factor_steep (double angle_rad, double *factor)
{
  if (!is_angle (angle_rad) || !reaches (angle_rad, 0.09)
      || tan (angle_rad) > 0.55 + GRADIENT_SLACK)
    return SW_E_RANGE;
  *factor = 21.91 * sin (angle_rad) - 0.96;
  return SW_OK;
}

static double
exponent_1978 (double angle_rad)
{
  if (reaches (angle_rad, 0.05))
    return 0.5;
  if (reaches (angle_rad, 0.035))
    return 0.4;
  return reaches (angle_rad, 0.01) ? 0.3 : 0.2;
}

static double
exponent (SwLsMethod method, double angle_rad)
{
  static const double rill_share[] = {
    [SW_LS_RUSLE_LOW] = 0.5, [SW_LS_RUSLE_MODERATE] = 1.0, [SW_LS_RUSLE_HIGH] = 2.0
  };
  double sine = sin (angle_rad), rill;

  if (method == SW_LS_USLE_1978)
    return exponent_1978 (angle_rad);
  rill = rill_share[method] * (sine / 0.0896) / steepness_short (sine);
  return rill / (1.0 + rill);
}

SwStatus
sw_length_exponent (SwLsMethod method, double angle_rad, double *m)
{
  if (!is_method (method) || !is_angle (angle_rad))
    return SW_E_RANGE;
  *m = exponent (method, angle_rad);
  return SW_OK;
}

static double
length_factor (SwLsMethod method, double length_m, double angle_rad)
{
  return pow (length_m / UNIT_PLOT_M, exponent (method, angle_rad));
}

SwStatus
sw_length_factor (SwLsMethod method, double length_m, double angle_rad, double *factor)
{
  if (!is_method (method) || !is_length (length_m) || !is_angle (angle_rad))
    return SW_E_RANGE;
  *factor = length_factor (method, length_m, angle_rad);
  return SW_OK;
}

static double
ls_short (SwLsMethod method, double length_m, double angle_rad)
{
  double length15 = length_factor (method, SHORT_M, angle_rad);
  double ls15 = length15 * steepness (method, angle_rad);
  double ls3 = length15 * steepness_short (sin (angle_rad));
  double along;

  if (!reaches (angle_rad, 0.09))
    return ls15;
  if (length_m <= SHORTEST_M)
    return ls3;
  along = log (length_m / SHORTEST_M) / log (SHORT_M / SHORTEST_M);
  return ls3 * pow (ls15 / ls3, along);
}

static double
ls_uniform (SwLsMethod method, double length_m, double angle_rad)
{
  if (method != SW_LS_USLE_1978 && is_short (length_m))
    return ls_short (method, length_m, angle_rad);
  return length_factor (method, length_m, angle_rad) * steepness (method, angle_rad);
}

SwStatus
sw_ls_factor (SwLsMethod method, double length_m, double angle_rad, double *ls)
{
  if (!is_method (method) || !is_length (length_m) || !is_angle (angle_rad))
    return SW_E_RANGE;
  *ls = ls_uniform (method, length_m, angle_rad);
  return SW_OK;
}

static guint
angle_limits (double angle_rad)
{
  guint limits = SW_LS_WITHIN;

  if (tan (angle_rad) > 0.18 + GRADIENT_SLACK)
    limits |= SW_LS_STEEPER_THAN_PLOTS;
  if (tan (angle_rad) > 0.60 + GRADIENT_SLACK)
    limits |= SW_LS_STEEPER_THAN_TABLES;
  return limits;
}

static guint
length_limits (double length_m)
{
  guint limits = SW_LS_WITHIN;

  if (is_short (length_m))
    limits |= SW_LS_SHORT;
  if (length_m > LONG_M + LENGTH_SLACK_M)
    limits |= SW_LS_LONG;
  if (length_m > TOO_LONG_M + LENGTH_SLACK_M)
    limits |= SW_LS_TOO_LONG;
  return limits;
}

guint
sw_ls_limits (double length_m, double angle_rad)
{
  return angle_limits (angle_rad) | length_limits (length_m);
}

static SwStatus
check_section (const SwPoint *section, guint count)
{
  if (count < 2)
    return SW_E_FEW_POINTS;
  for (guint i = 0; i < count; i++)
    if (!isfinite (section[i].x_m) || !isfinite (section[i].y_m))
      return SW_E_RANGE;
  for (guint i = 1; i < count; i++)
    if (section[i].x_m <= section[i - 1].x_m)
      return SW_E_SECTION;
  return SW_OK;
}

SwStatus
sw_ls_segments_new (const SwPoint *section, guint count, const gboolean *drained,
                    SwLsSegment **segments)
{
  SwStatus status = check_section (section, count);

  if (status != SW_OK)
    return status;
  *segments = g_new0 (SwLsSegment, count - 1);
  for (guint i = 0; i + 1 < count; i++)
    {
      SwPoint top = section[i], low = section[i + 1];

      (*segments)[i] = (SwLsSegment){
        .length_m = low.x_m - top.x_m,
        .angle_rad = atan2 (top.y_m - low.y_m, low.x_m - top.x_m),
        .drained = drained != NULL && drained[i],
      };
    }
  return SW_OK;
}

static SwStatus
check_segments (SwLsMethod method, const SwLsSegment *segments, guint count)
{
  if (!is_method (method) || count == 0)
    return SW_E_RANGE;
  for (guint i = 0; i < count; i++)
    if (!is_length (segments[i].length_m) || !is_angle (fabs (segments[i].angle_rad)))
      return SW_E_RANGE;
  for (guint i = 0; i < count; i++)
    if (segments[i].angle_rad < 0.0 && !segments[i].drained)
      return SW_E_SECTION;
  return SW_OK;
}

/* How many segments from @first on one runoff passes. */
static guint
stretch_count (const SwLsSegment *segments, guint count, guint first)
{
  guint last = first;

  if (segments[first].angle_rad < 0.0)
    return 1;
  while (last + 1 < count && !segments[last].drained
         && segments[last + 1].angle_rad >= 0.0)
    last++;
  return last - first + 1;
}

static double
ls_between (SwLsMethod method, double from_m, double to_m, double angle_rad)
{
  double m = exponent (method, angle_rad);
  double rise = pow (to_m, m + 1.0) - pow (from_m, m + 1.0);

  return steepness (method, angle_rad) * rise / ((to_m - from_m) * pow (UNIT_PLOT_M, m));
}

static double
stretch_length (const SwLsSegment *segments, guint count)
{
  double length_m = 0.0;

  for (guint i = 0; i < count; i++)
    length_m += segments[i].length_m;
  return length_m;
}

static guint
fill_stretch (SwLsMethod method, const SwLsSegment *segments, guint count, double *ls)
{
  double whole_m = stretch_length (segments, count), from_m = 0.0;
  guint limits = length_limits (whole_m);

  for (guint i = 0; i < count; i++)
    {
      double to_m = from_m + segments[i].length_m;
      double angle_rad = fabs (segments[i].angle_rad);

      ls[i] = method != SW_LS_USLE_1978 && is_short (whole_m)
                  ? ls_short (method, whole_m, angle_rad)
                  : ls_between (method, from_m, to_m, angle_rad);
      limits |= angle_limits (angle_rad);
      if (i > 0 && tan (angle_rad) < tan (segments[i - 1].angle_rad) - GRADIENT_SLACK)
        limits |= SW_LS_FLATTENS;
      from_m = to_m;
    }
  return limits;
}

SwStatus
sw_ls_segments (SwLsMethod method, const SwLsSegment *segments, guint count, double *ls,
                guint *limits)
{
  SwStatus status = check_segments (method, segments, count);
  guint found = SW_LS_WITHIN;

  if (status != SW_OK)
    return status;
  for (guint first = 0; first < count;)
    {
      guint stretch = stretch_count (segments, count, first);

      found |= fill_stretch (method, segments + first, stretch, ls + first);
      first += stretch;
    }
  if (limits != NULL)
    *limits = found;
  return SW_OK;
}

SwStatus
sw_ls_segments_mean (const SwLsSegment *segments, guint count, const double *ls,
                     const double *weights, double *mean)
{
  double sum = 0.0, length_m = 0.0;

  if (count == 0)
    return SW_E_RANGE;
  for (guint i = 0; i < count; i++)
    {
      double weight = weights != NULL ? weights[i] : 1.0;

      if (!is_length (segments[i].length_m) || !isfinite (ls[i]) || !isfinite (weight)
          || ls[i] < 0.0 || weight < 0.0)
        return SW_E_RANGE;
      sum += weight * ls[i] * segments[i].length_m;
      length_m += segments[i].length_m;
    }
  *mean = sum / length_m;
  return SW_OK;
}

SwStatus
sw_ls_share (guint segment, guint count, double m, double *share)
{
  if (segment < 1 || segment > count || !isfinite (m) || m < 0.0)
    return SW_E_RANGE;
  *share = (pow (segment, m + 1.0) - pow (segment - 1.0, m + 1.0)) / pow (count, m + 1.0);
  return SW_OK;
}
