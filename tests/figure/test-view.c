/* SPDX-License-Identifier: MIT */
#undef G_DISABLE_ASSERT
#include <math.h>

#include <slopewright/figure/view.h>

/* World to paper and back, over every scale, up and down; 1 nm is rounding. */
static void
test_round_trip (void)
{
  for (double size_m = 0.1; size_m < 1e5; size_m *= 3.0)
    for (int y_up = 0; y_up <= 1; y_up++)
      {
        const SwBox world = { -size_m, size_m / 7.0, size_m, size_m };
        const SwView view = sw_view_fit (world, 180.0, 120.0, 10.0, y_up, NULL);

        for (double t = 0.0; t <= 1.0; t += 0.1)
          {
            const SwPoint at = { -size_m + 2.0 * size_m * t, size_m * t };
            const SwPoint back = sw_view_to_world (&view, sw_view_to_paper (&view, at));
            g_assert_cmpfloat_with_epsilon (back.x_m, at.x_m, 1e-9 * (1.0 + size_m));
            g_assert_cmpfloat_with_epsilon (back.y_m, at.y_m, 1e-9 * (1.0 + size_m));
          }
      }
}

/*
 * Source: by hand. 160 mm are free; a box of w metres at 1 : s takes
 * 1000 w / s mm, so it fits when s >= 6.25 w.
 */
static void
test_scales (void)
{
  static const struct
  {
    double width_m, want;
  } rows[] = {
    { 0.5, 10.0 },     { 1.6, 10.0 },     { 1.61, 20.0 },    { 3.2, 20.0 },
    { 3.3, 25.0 },     { 4.0, 25.0 },     { 4.1, 50.0 },     { 8.0, 50.0 },
    { 8.1, 100.0 },    { 16.0, 100.0 },   { 16.1, 125.0 },   { 20.0, 125.0 },
    { 20.1, 200.0 },   { 32.0, 200.0 },   { 32.1, 250.0 },   { 40.0, 250.0 },
    { 40.1, 500.0 },   { 80.0, 500.0 },   { 80.1, 1000.0 },  { 161.0, 1250.0 },
    { 201.0, 2000.0 }, { 321.0, 2500.0 }, { 401.0, 5000.0 }, { 801.0, 10000.0 },
  };

  for (gsize i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      const SwBox world = { 5.0, 5.0, 5.0 + rows[i].width_m, 5.1 };
      double scale = NAN;
      const SwView view = sw_view_fit (world, 180.0, 100.0, 10.0, FALSE, &scale);

      g_assert_cmpfloat_with_epsilon (scale, rows[i].want, 1e-9);
      g_assert_cmpfloat_with_epsilon (view.x_mm_per_m * scale, 1000.0, 1e-9);
    }
}

/* The height decides when it is the tighter: 40 m into 80 mm is 1 : 500. */
static void
test_height_decides (void)
{
  double scale = NAN;

  sw_view_fit ((SwBox){ 0.0, 0.0, 10.0, 40.0 }, 180.0, 100.0, 10.0, TRUE, &scale);
  g_assert_cmpfloat_with_epsilon (scale, 500.0, 1e-9);
}

static void
test_centred_and_up (void)
{
  const SwBox world = { 2.0, 10.0, 12.0, 16.0 };
  const SwView up = sw_view_fit (world, 180.0, 120.0, 10.0, TRUE, NULL);
  const SwView down = sw_view_fit (world, 180.0, 120.0, 10.0, FALSE, NULL);
  const SwPaperPoint middle = sw_view_to_paper (&up, (SwPoint){ 7.0, 13.0 });
  const SwPaperPoint top = sw_view_to_paper (&up, (SwPoint){ 7.0, 16.0 });
  const SwPaperPoint low = sw_view_to_paper (&down, (SwPoint){ 7.0, 16.0 });

  g_assert_cmpfloat_with_epsilon (middle.x_mm, 90.0, 1e-9);
  g_assert_cmpfloat_with_epsilon (middle.y_mm, 60.0, 1e-9);
  g_assert_cmpfloat (top.y_mm, <, middle.y_mm);
  g_assert_cmpfloat (low.y_mm, >, middle.y_mm);
}

/* Nothing to show and no room to show it in must still end. */
static void
test_degenerate (void)
{
  double scale = NAN;
  const SwView view =
      sw_view_fit ((SwBox){ 1.0, 1.0, 1.0, 1.0 }, 50.0, 50.0, 5.0, TRUE, &scale);

  g_assert_cmpfloat_with_epsilon (scale, 10.0, 1e-9);
  g_assert_true (isfinite (view.x_origin_mm));
  sw_view_fit ((SwBox){ 0.0, 0.0, 9.0, 9.0 }, 10.0, 10.0, 5.0, FALSE, &scale);
  g_assert_true (isfinite (scale) && scale > 0.0);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/figure/view/round-trip", test_round_trip);
  g_test_add_func ("/figure/view/scales", test_scales);
  g_test_add_func ("/figure/view/height-decides", test_height_decides);
  g_test_add_func ("/figure/view/centred-and-up", test_centred_and_up);
  g_test_add_func ("/figure/view/degenerate", test_degenerate);
  return g_test_run ();
}
