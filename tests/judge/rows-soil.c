/* SPDX-License-Identifier: MIT */
#undef G_DISABLE_ASSERT
#include "rows.h"
#include <slopewright/judge/ls-factor.h>
#include <slopewright/judge/soil-loss.h>
#include <slopewright/judge/texture.h>

static SwLsMethod
input_method (const CheckRow *row)
{
  static const char *const names[SW_LS_METHOD_COUNT] = { "low", "moderate", "high",
                                                         "usle" };
  g_autofree char *name = check_input_text (row, "method");

  for (guint i = 0; i < SW_LS_METHOD_COUNT; i++)
    if (g_strcmp0 (name, names[i]) == 0)
      return (SwLsMethod) i;
  g_error ("row %s: no method %s", row->id, name);
}

static double
angle_of_percent (double percent)
{
  double angle_rad = NAN;

  MUST (sw_gradient_from_ratio (percent / 100.0, &angle_rad));
  return angle_rad;
}

static double
input_angle (const CheckRow *row)
{
  return angle_of_percent (check_input (row, "slope_pct"));
}

static double
ls (const CheckRow *row)
{
  double length_m = check_input_or (row, "length_m", NAN), got = NAN;

  if (isnan (length_m))
    length_m = check_input (row, "length_ft") * SW_M_PER_FT;
  MUST (sw_ls_factor (input_method (row), length_m, input_angle (row), &got));
  return got;
}

static double
exponent_m (const CheckRow *row)
{
  double got = NAN;

  MUST (sw_length_exponent (input_method (row), input_angle (row), &got));
  return got;
}

static double
steepness (const CheckRow *row)
{
  double got = NAN;

  MUST (sw_steepness_factor (input_method (row), input_angle (row), &got));
  return got;
}

static double
steepness_short (const CheckRow *row)
{
  double got = NAN;

  MUST (sw_steepness_factor_short (input_angle (row), &got));
  return got;
}

static double
share_of_segment (const CheckRow *row)
{
  double got = NAN;

  MUST (sw_ls_share ((guint) check_input (row, "segment"),
                     (guint) check_input (row, "count"), check_input (row, "m"), &got));
  return got;
}

/* The segments as drawn points, so that the reading of a section is run too. */
static SwLsSegment *
input_segments (const CheckRow *row, guint *count)
{
  g_autoptr (GArray) percents = check_input_list (row, "slope_pct");
  g_autoptr (GArray) feet = check_input_list (row, "length_ft");
  g_autofree SwPoint *points = g_new0 (SwPoint, percents->len + 1);
  SwLsSegment *segments = NULL;

  g_assert_cmpuint (percents->len, ==, feet->len);
  for (guint i = 0; i < feet->len; i++)
    {
      double length_m = g_array_index (feet, double, i) * SW_M_PER_FT;

      points[i + 1].x_m = points[i].x_m + length_m;
      points[i + 1].y_m =
          points[i].y_m - length_m * g_array_index (percents, double, i) / 100.0;
    }
  *count = feet->len;
  MUST (sw_ls_segments_new (points, *count + 1, NULL, &segments));
  return segments;
}

static double
mean_ls (const CheckRow *row)
{
  guint count = 0;
  g_autofree SwLsSegment *segments = input_segments (row, &count);
  g_autofree double *each = g_new0 (double, count);
  g_autofree char *text = check_input_text (row, "weights");
  g_autoptr (GArray) weights = text != NULL ? check_input_list (row, "weights") : NULL;
  double got = NAN;

  MUST (sw_ls_segments (input_method (row), segments, count, each, NULL));
  MUST (sw_ls_segments_mean (segments, count, each,
                             weights != NULL ? (double *) weights->data : NULL, &got));
  return got;
}

static double
segment_ls (const CheckRow *row)
{
  guint count = 0, segment = (guint) check_input (row, "segment");
  g_autofree SwLsSegment *segments = input_segments (row, &count);
  g_autofree double *each = g_new0 (double, count);

  MUST (sw_ls_segments (input_method (row), segments, count, each, NULL));
  g_assert_cmpuint (segment, <=, count);
  return each[segment - 1];
}

static double
k_by_nomograph (const CheckRow *row)
{
  SwErodibilitySoil soil = {
    .silt_and_fine_sand = check_input (row, "si_vfs_pct") / 100.0,
    .clay = check_input (row, "clay_pct") / 100.0,
    .organic = check_input (row, "om_pct") / 100.0,
    .structure = (int) check_input (row, "structure"),
    .permeability = (int) check_input (row, "perm"),
  };
  double got = NAN;

  MUST (sw_erodibility (&soil, &got, NULL));
  return got / sw_erodibility_si_per_us ();
}

static double
unit_factor (const CheckRow *row)
{
  g_autofree char *factor = check_input_text (row, "factor");

  if (g_str_equal (factor, "A"))
    return sw_soil_loss_si_per_us ();
  if (g_str_equal (factor, "A_kg_per_m2"))
    return sw_soil_loss_si_per_us () * 1000.0 / SW_M2_PER_HA;
  if (g_str_equal (factor, "R"))
    return sw_erosivity_si_per_us ();
  if (g_str_equal (factor, "K"))
    return sw_erodibility_si_per_us ();
  g_assert_cmpstr (factor, ==, "R_times_K_over_A");
  return sw_erosivity_si_per_us () * sw_erodibility_si_per_us ()
         / sw_soil_loss_si_per_us ();
}

static double
r_of_period (const CheckRow *row)
{
  double got = NAN;

  MUST (sw_erosivity_of_period (check_input (row, "per_year"),
                                (guint) check_input (row, "new_years"),
                                check_input (row, "start_pct") / 100.0,
                                check_input (row, "end_pct") / 100.0, &got));
  return got;
}

static double
soil_loss (const CheckRow *row)
{
  double got = NAN;

  MUST (sw_soil_loss (check_input (row, "r_us") * sw_erosivity_si_per_us (),
                      check_input (row, "k_us") * sw_erodibility_si_per_us (),
                      check_input (row, "ls"), check_input (row, "c"),
                      check_input (row, "p"), &got));
  return got / sw_soil_loss_si_per_us ();
}

static double
loss_kept_back (const CheckRow *row)
{
  double got = NAN;

  MUST (sw_soil_loss_reduction (check_input (row, "bare"), check_input (row, "covered"),
                                &got));
  return 100.0 * got;
}

static double
sediment_class (const CheckRow *row)
{
  static const char *const names[] = { "low", "medium", "high" };
  g_autofree char *want = check_input_text (row, "class");
  SwSedimentClass got = SW_SEDIMENT_CLASS_COUNT;

  MUST (sw_sediment_class (check_input (row, "ton_per_ac") * sw_soil_loss_si_per_us (),
                           &got));
  return g_str_equal (names[got], want);
}

static double
texture_class (const CheckRow *row)
{
  g_autofree char *want = check_input_text (row, "class");
  SwTexture got = SW_TEXTURE_COUNT;

  MUST (sw_texture_from_fractions (check_input (row, "sand_pct") / 100.0,
                                   check_input (row, "silt_pct") / 100.0,
                                   check_input (row, "clay_pct") / 100.0, &got));
  return g_str_equal (sw_texture_code (got), want);
}

const CheckQuantity rows_soil[] = {
  { "LS", ls },
  { "exponent m", exponent_m },
  { "S", steepness },
  { "short S", steepness_short },
  { "share of segment", share_of_segment },
  { "mean LS", mean_ls },
  { "segment LS", segment_ls },
  { "K by nomograph", k_by_nomograph },
  { "soil loss unit factor", unit_factor },
  { "R of period", r_of_period },
  { "A", soil_loss },
  { "loss kept back", loss_kept_back },
  { "sediment class", sediment_class },
  { "texture class", texture_class },
};
const guint n_rows_soil = G_N_ELEMENTS (rows_soil);
