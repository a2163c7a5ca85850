/* SPDX-License-Identifier: MIT */
#undef G_DISABLE_ASSERT
#include "../out-of-range.h"
#include <slopewright/judge/texture.h>

/* Half percents: 100 % is 200. */
#define WHOLE 200
#define POINTS 20301

/* The definitions as the Soil Survey Manual words them, each by itself and in no order;
 * s, i and c are sand, silt and clay in half percents. */
static guint
classes_by_definition (int s, int i, int c)
{
  const gboolean is[SW_TEXTURE_COUNT] = {
    [SW_TEXTURE_SAND] = 2 * i + 3 * c < 60,
    [SW_TEXTURE_LOAMY_SAND] = 2 * i + 3 * c >= 60 && i + 2 * c < 60,
    [SW_TEXTURE_SANDY_LOAM] = (c >= 14 && c < 40 && s > 104 && i + 2 * c >= 60)
                              || (c < 14 && i < 100 && i + 2 * c >= 60),
    [SW_TEXTURE_LOAM] = c >= 14 && c < 54 && i >= 56 && i < 100 && s <= 104,
    [SW_TEXTURE_SILT_LOAM] =
        (i >= 100 && c >= 24 && c < 54) || (i >= 100 && i < 160 && c < 24),
    [SW_TEXTURE_SILT] = i >= 160 && c < 24,
    [SW_TEXTURE_SANDY_CLAY_LOAM] = c >= 40 && c < 70 && i < 56 && s > 90,
    [SW_TEXTURE_CLAY_LOAM] = c >= 54 && c < 80 && s > 40 && s <= 90,
    [SW_TEXTURE_SILTY_CLAY_LOAM] = c >= 54 && c < 80 && s <= 40,
    [SW_TEXTURE_SANDY_CLAY] = c >= 70 && s > 90,
    [SW_TEXTURE_SILTY_CLAY] = c >= 80 && i >= 80,
    [SW_TEXTURE_CLAY] = c >= 80 && s <= 90 && i < 80,
  };
  guint mask = 0;

  for (guint t = 0; t < SW_TEXTURE_COUNT; t++)
    mask |= is[t] ? 1u << t : 0;
  return mask;
}

static SwTexture
class_of (int sand, int silt, int clay)
{
  SwTexture texture = SW_TEXTURE_COUNT;

  g_assert_cmpint (sw_texture_from_fractions (sand / (double) WHOLE,
                                              silt / (double) WHOLE,
                                              clay / (double) WHOLE, &texture),
                   ==, SW_OK);
  return texture;
}

/* One class by the definitions at every half-percent point, and it is ours. Exact: the
 * program compares whole hundredths of a percent. */
static void
test_every_half_percent (void)
{
  guint points = 0;

  for (int clay = 0; clay <= WHOLE; clay++)
    for (int silt = 0; silt <= WHOLE - clay; silt++)
      {
        int sand = WHOLE - clay - silt;

        g_assert_cmphex (classes_by_definition (sand, silt, clay), ==,
                         1u << class_of (sand, silt, clay));
        points++;
      }
  g_assert_cmpuint (points, ==, POINTS);
}

/* Steps to the next point of the triangle that cross a border, counted class to class. */
static void
count_borders (int borders[SW_TEXTURE_COUNT][SW_TEXTURE_COUNT])
{
  for (int clay = 0; clay <= WHOLE; clay++)
    for (int silt = 0; silt <= WHOLE - clay; silt++)
      {
        int sand = WHOLE - clay - silt;
        SwTexture here = class_of (sand, silt, clay);

        if (sand > 0)
          {
            SwTexture siltier = class_of (sand - 1, silt + 1, clay);
            SwTexture heavier = class_of (sand - 1, silt, clay + 1);

            borders[here][siltier]++;
            borders[siltier][here]++;
            borders[here][heavier]++;
            borders[heavier][here]++;
          }
        if (silt > 0)
          {
            SwTexture heavier = class_of (sand, silt - 1, clay + 1);

            borders[here][heavier]++;
            borders[heavier][here]++;
          }
      }
}

/* The table of neighbours against the triangle itself; one crossing is a corner. */
static void
test_neighbours (void)
{
  int borders[SW_TEXTURE_COUNT][SW_TEXTURE_COUNT] = { 0 };

  count_borders (borders);
  for (guint a = 0; a < SW_TEXTURE_COUNT; a++)
    for (guint b = 0; b < SW_TEXTURE_COUNT; b++)
      {
        gboolean listed = (sw_texture_neighbours ((SwTexture) a) >> b & 1u) != 0;

        g_assert_cmpint (listed, ==, a != b && borders[a][b] > 1);
      }
}

/* Three figures rounded to 0.1 % are taken, 99 % in all is not. */
static void
test_sums (void)
{
  SwTexture texture = SW_TEXTURE_COUNT;

  g_assert_cmpint (sw_texture_from_fractions (0.334, 0.333, 0.334, &texture), ==, SW_OK);
  g_assert_cmpint (texture, ==, SW_TEXTURE_CLAY_LOAM);
  g_assert_cmpint (sw_texture_from_fractions (0.5005, 0.0, 0.5005, &texture), ==, SW_OK);
  g_assert_cmpint (texture, ==, SW_TEXTURE_SANDY_CLAY);
  g_assert_cmpint (sw_texture_from_fractions (0.4005, 0.3505, 0.2505, &texture), ==,
                   SW_OK);
  texture = SW_TEXTURE_COUNT;
  g_assert_cmpint (sw_texture_from_fractions (0.33, 0.33, 0.33, &texture), ==,
                   SW_E_RANGE);
  g_assert_cmpint (sw_texture_from_fractions (0.40, 0.35, 0.252, &texture), ==,
                   SW_E_RANGE);
  g_assert_cmpint (sw_texture_from_fractions (40.0, 35.0, 25.0, &texture), ==,
                   SW_E_RANGE);
  g_assert_cmpint (sw_texture_from_fractions (-0.1, 0.6, 0.5, &texture), ==, SW_E_RANGE);
  g_assert_cmpint (sw_texture_from_fractions (0.6, -0.1, 0.5, &texture), ==, SW_E_RANGE);
  g_assert_cmpint (sw_texture_from_fractions (0.6, 0.5, -0.1, &texture), ==, SW_E_RANGE);
  g_assert_cmpint (sw_texture_from_fractions (NAN, 0.5, 0.5, &texture), ==, SW_E_RANGE);
  g_assert_cmpint (texture, ==, SW_TEXTURE_COUNT);
}

/* Thien 1979, the table as handed out by USDA. */
static void
test_feel (void)
{
  static const struct
  {
    gboolean holds;
    double ribbon_m;
    SwFeel feel;
    SwTexture want;
  } rows[] = {
    { FALSE, 0.0, SW_FEEL_GRITTY, SW_TEXTURE_SAND },
    { TRUE, 0.0, SW_FEEL_GRITTY, SW_TEXTURE_LOAMY_SAND },
    { TRUE, 0.005, SW_FEEL_GRITTY, SW_TEXTURE_SANDY_LOAM },
    { TRUE, 0.020, SW_FEEL_GRITTY, SW_TEXTURE_SANDY_LOAM },
    { TRUE, 0.020, SW_FEEL_SMOOTH, SW_TEXTURE_SILT_LOAM },
    { TRUE, 0.0249, SW_FEEL_NEITHER, SW_TEXTURE_LOAM },
    { TRUE, 0.025, SW_FEEL_NEITHER, SW_TEXTURE_CLAY_LOAM },
    { TRUE, 0.040, SW_FEEL_GRITTY, SW_TEXTURE_SANDY_CLAY_LOAM },
    { TRUE, 0.040, SW_FEEL_SMOOTH, SW_TEXTURE_SILTY_CLAY_LOAM },
    { TRUE, 0.050, SW_FEEL_NEITHER, SW_TEXTURE_CLAY_LOAM },
    { TRUE, 0.0501, SW_FEEL_NEITHER, SW_TEXTURE_CLAY },
    { TRUE, 0.070, SW_FEEL_GRITTY, SW_TEXTURE_SANDY_CLAY },
    { TRUE, 0.070, SW_FEEL_SMOOTH, SW_TEXTURE_SILTY_CLAY },
  };

  for (gsize i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      SwTexture got = SW_TEXTURE_COUNT;

      g_assert_cmpint (
          sw_texture_from_feel (rows[i].holds, rows[i].ribbon_m, rows[i].feel, &got), ==,
          SW_OK);
      g_assert_cmpint (got, ==, rows[i].want);
    }
}

static void
test_feel_refusals (void)
{
  SwTexture got = SW_TEXTURE_COUNT;

  g_assert_cmpint (sw_texture_from_feel (FALSE, 0.005, SW_FEEL_GRITTY, &got), ==,
                   SW_E_RANGE);
  g_assert_cmpint (sw_texture_from_feel (FALSE, 0.02, SW_FEEL_GRITTY, &got), ==,
                   SW_E_RANGE);
  g_assert_cmpint (sw_texture_from_feel (TRUE, -0.02, SW_FEEL_GRITTY, &got), ==,
                   SW_E_RANGE);
  g_assert_cmpint (sw_texture_from_feel (TRUE, NAN, SW_FEEL_GRITTY, &got), ==,
                   SW_E_RANGE);
  g_assert_cmpint (sw_texture_from_feel (TRUE, 0.02, SW_FEEL_COUNT, &got), ==,
                   SW_E_RANGE);
  g_assert_cmpint (got, ==, SW_TEXTURE_COUNT);
}

static void
test_codes_differ (void)
{
  for (guint a = 0; a < SW_TEXTURE_COUNT; a++)
    for (guint b = 0; b < a; b++)
      g_assert_cmpstr (sw_texture_code ((SwTexture) a), !=,
                       sw_texture_code ((SwTexture) b));
  g_assert_cmpstr (sw_texture_code (SW_TEXTURE_COUNT), ==, "");
  g_assert_cmphex (sw_texture_neighbours (SW_TEXTURE_COUNT), ==, 0);
  g_assert_cmpstr (sw_texture_code (SW_TEXTURE_SILTY_CLAY_LOAM), ==, "silty-clay-loam");
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/judge/texture/every-half-percent", test_every_half_percent);
  g_test_add_func ("/judge/texture/neighbours", test_neighbours);
  g_test_add_func ("/judge/texture/sums", test_sums);
  g_test_add_func ("/judge/texture/feel", test_feel);
  g_test_add_func ("/judge/texture/feel-refusals", test_feel_refusals);
  g_test_add_func ("/judge/texture/codes-differ", test_codes_differ);
  return g_test_run ();
}
