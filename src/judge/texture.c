/* SPDX-License-Identifier: MIT */
#include <math.h>
#include <slopewright/judge/texture.h>

/* Shares are compared in whole hundredths of a percent. */
#define PARTS 10000
#define PERCENT 100

/* A rounded sum of doubles may pass the tolerance by a trace. */
#define SUM_SLACK 1e-12

/* Ribbons come from inches or millimetres; 25 mm belongs to the longer class. */
#define RIBBON_SLACK_M 1e-9

static const char *const codes[SW_TEXTURE_COUNT] = {
  [SW_TEXTURE_SAND] = "sand",
  [SW_TEXTURE_LOAMY_SAND] = "loamy-sand",
  [SW_TEXTURE_SANDY_LOAM] = "sandy-loam",
  [SW_TEXTURE_LOAM] = "loam",
  [SW_TEXTURE_SILT_LOAM] = "silt-loam",
  [SW_TEXTURE_SILT] = "silt",
  [SW_TEXTURE_SANDY_CLAY_LOAM] = "sandy-clay-loam",
  [SW_TEXTURE_CLAY_LOAM] = "clay-loam",
  [SW_TEXTURE_SILTY_CLAY_LOAM] = "silty-clay-loam",
  [SW_TEXTURE_SANDY_CLAY] = "sandy-clay",
  [SW_TEXTURE_SILTY_CLAY] = "silty-clay",
  [SW_TEXTURE_CLAY] = "clay",
};

const char *
sw_texture_code (SwTexture texture)
{
  return (guint) texture < SW_TEXTURE_COUNT ? codes[texture] : "";
}

static gboolean
is_share (double share)
{
  return isfinite (share) && share >= 0.0 && share <= 1.0 + SW_TEXTURE_SUM_TOLERANCE;
}

/* From the bottom of the triangle, less than 20 % clay, upwards. */
static SwTexture
with_little_clay (int sand, int silt, int clay)
{
  if (2 * silt + 3 * clay < 30 * PERCENT)
    return SW_TEXTURE_SAND;
  if (silt + 2 * clay < 30 * PERCENT)
    return SW_TEXTURE_LOAMY_SAND;
  if (clay < 12 * PERCENT && silt >= 80 * PERCENT)
    return SW_TEXTURE_SILT;
  if (silt >= 50 * PERCENT)
    return SW_TEXTURE_SILT_LOAM;
  if (clay >= 7 * PERCENT && sand <= 52 * PERCENT)
    return SW_TEXTURE_LOAM;
  return SW_TEXTURE_SANDY_LOAM;
}

static SwTexture
with_some_clay (int sand, int silt, int clay)
{
  if (clay >= 27 * PERCENT && sand <= 20 * PERCENT)
    return SW_TEXTURE_SILTY_CLAY_LOAM;
  if (clay >= 27 * PERCENT && sand <= 45 * PERCENT)
    return SW_TEXTURE_CLAY_LOAM;
  if (silt < 28 * PERCENT)
    return SW_TEXTURE_SANDY_CLAY_LOAM;
  return silt >= 50 * PERCENT ? SW_TEXTURE_SILT_LOAM : SW_TEXTURE_LOAM;
}

static SwTexture
with_much_clay (int sand, int silt)
{
  if (sand > 45 * PERCENT)
    return SW_TEXTURE_SANDY_CLAY;
  return silt >= 40 * PERCENT ? SW_TEXTURE_SILTY_CLAY : SW_TEXTURE_CLAY;
}

static SwTexture
class_of (int sand, int silt, int clay)
{
  if (clay < 20 * PERCENT)
    return with_little_clay (sand, silt, clay);
  if (clay < 35 * PERCENT)
    return with_some_clay (sand, silt, clay);
  if (clay >= 40 * PERCENT || sand > 45 * PERCENT)
    return with_much_clay (sand, silt);
  return with_some_clay (sand, silt, clay);
}

SwStatus
sw_texture_from_fractions (double sand, double silt, double clay, SwTexture *texture)
{
  int sand_parts, clay_parts;

  if (!is_share (sand) || !is_share (silt) || !is_share (clay)
      || fabs (sand + silt + clay - 1.0) > SW_TEXTURE_SUM_TOLERANCE + SUM_SLACK)
    return SW_E_RANGE;
  sand_parts = (int) lround (sand * PARTS);
  clay_parts = (int) lround (clay * PARTS);
  *texture = class_of (sand_parts, MAX (0, PARTS - sand_parts - clay_parts), clay_parts);
  return SW_OK;
}

SwStatus
sw_texture_from_feel (gboolean holds, double ribbon_m, SwFeel feel, SwTexture *texture)
{
  static const SwTexture classes[3][SW_FEEL_COUNT] = {
    { SW_TEXTURE_SANDY_LOAM, SW_TEXTURE_SILT_LOAM, SW_TEXTURE_LOAM },
    { SW_TEXTURE_SANDY_CLAY_LOAM, SW_TEXTURE_SILTY_CLAY_LOAM, SW_TEXTURE_CLAY_LOAM },
    { SW_TEXTURE_SANDY_CLAY, SW_TEXTURE_SILTY_CLAY, SW_TEXTURE_CLAY },
  };
  int row = (ribbon_m >= 0.025 - RIBBON_SLACK_M) + (ribbon_m > 0.050 + RIBBON_SLACK_M);

  if (!isfinite (ribbon_m) || ribbon_m < 0.0 || (guint) feel >= SW_FEEL_COUNT
      || (!holds && ribbon_m > 0.0))
    return SW_E_RANGE;
  if (ribbon_m > 0.0)
    *texture = classes[row][feel];
  else
    *texture = holds ? SW_TEXTURE_LOAMY_SAND : SW_TEXTURE_SAND;
  return SW_OK;
}

SwStatus
sw_texture_from_test (const SwSoilTest *test, SwTexture *texture)
{
  switch (test->known)
    {
    case SW_SOIL_BY_FEEL:
      return sw_texture_from_feel (test->holds, test->ribbon_m, test->feel, texture);
    case SW_SOIL_BY_LABORATORY:
      return sw_texture_from_fractions (test->sand, test->silt, test->clay, texture);
    default:
      return SW_E_RANGE;
    }
}

gboolean
sw_texture_from_code (const char *code, SwTexture *texture)
{
  for (int i = 0; i < SW_TEXTURE_COUNT; i++)
    if (g_str_equal (codes[i], code))
      {
        *texture = (SwTexture) i;
        return TRUE;
      }
  return FALSE;
}

guint
sw_texture_neighbours (SwTexture texture)
{
#define BIT(name) (1u << SW_TEXTURE_##name)
  static const guint neighbours[SW_TEXTURE_COUNT] = {
    [SW_TEXTURE_SAND] = BIT (LOAMY_SAND),
    [SW_TEXTURE_LOAMY_SAND] = BIT (SAND) | BIT (SANDY_LOAM),
    [SW_TEXTURE_SANDY_LOAM] =
        BIT (LOAMY_SAND) | BIT (SILT_LOAM) | BIT (LOAM) | BIT (SANDY_CLAY_LOAM),
    [SW_TEXTURE_LOAM] =
        BIT (SANDY_LOAM) | BIT (SILT_LOAM) | BIT (SANDY_CLAY_LOAM) | BIT (CLAY_LOAM),
    [SW_TEXTURE_SILT_LOAM] = BIT (SANDY_LOAM) | BIT (SILT) | BIT (LOAM) | BIT (CLAY_LOAM)
                             | BIT (SILTY_CLAY_LOAM),
    [SW_TEXTURE_SILT] = BIT (SILT_LOAM),
    [SW_TEXTURE_SANDY_CLAY_LOAM] =
        BIT (SANDY_LOAM) | BIT (LOAM) | BIT (CLAY_LOAM) | BIT (SANDY_CLAY),
    [SW_TEXTURE_CLAY_LOAM] = BIT (SANDY_CLAY_LOAM) | BIT (LOAM) | BIT (SILT_LOAM)
                             | BIT (SILTY_CLAY_LOAM) | BIT (SANDY_CLAY) | BIT (CLAY),
    [SW_TEXTURE_SILTY_CLAY_LOAM] = BIT (CLAY_LOAM) | BIT (SILT_LOAM) | BIT (SILTY_CLAY),
    [SW_TEXTURE_SANDY_CLAY] = BIT (SANDY_CLAY_LOAM) | BIT (CLAY_LOAM) | BIT (CLAY),
    [SW_TEXTURE_SILTY_CLAY] = BIT (SILTY_CLAY_LOAM) | BIT (CLAY),
    [SW_TEXTURE_CLAY] = BIT (SANDY_CLAY) | BIT (CLAY_LOAM) | BIT (SILTY_CLAY),
  };
#undef BIT

  return (guint) texture < SW_TEXTURE_COUNT ? neighbours[texture] : 0;
}
