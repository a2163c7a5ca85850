/* SPDX-License-Identifier: MIT */
#undef G_DISABLE_ASSERT
#include <math.h>

#include "viewport.h"

/* Pixels; far below what anybody sees. */
#define NEAR 1e-9

static const SwInsets insets = { 40.0, 60.0, 30.0, 50.0 };

static SwViewport
fitted (gboolean y_up)
{
  SwViewport viewport = { .width_px = 500.0, .height_px = 280.0, .y_up = y_up };

  sw_viewport_fit (&viewport, (SwBox){ 0.0, 0.0, 10.0, 5.0 }, insets);
  return viewport;
}

/* Room: 500 - 100 wide for 10 m, 280 - 80 high for 5 m: 40 px per m both ways. */
static void
test_fit (void)
{
  SwViewport viewport = fitted (TRUE);
  SwPoint low = sw_viewport_to_px (&viewport, (SwPoint){ 0.0, 0.0 });
  SwPoint high = sw_viewport_to_px (&viewport, (SwPoint){ 10.0, 5.0 });

  g_assert_cmpfloat_with_epsilon (viewport.px_per_m, 40.0, NEAR);
  g_assert_cmpfloat_with_epsilon (low.x_m, 40.0, NEAR);
  g_assert_cmpfloat_with_epsilon (low.y_m, 230.0, NEAR); /* up is up */
  g_assert_cmpfloat_with_epsilon (high.x_m, 440.0, NEAR);
  g_assert_cmpfloat_with_epsilon (high.y_m, 30.0, NEAR);
  viewport = fitted (FALSE);
  low = sw_viewport_to_px (&viewport, (SwPoint){ 0.0, 0.0 });
  g_assert_cmpfloat_with_epsilon (low.y_m, 30.0, NEAR); /* down is down */
}

/* Heights five times as large: 5 m of them need as much as 25 m. Room of 200 px for 25
 * m is 8 px per m along, 40 px per m up; there and back is the same place. */
static void
test_stretched (void)
{
  SwViewport viewport = {
    .width_px = 500.0, .height_px = 280.0, .y_up = TRUE, .y_stretch = 5.0
  };
  SwPoint low, high, back;

  sw_viewport_fit (&viewport, (SwBox){ 0.0, 0.0, 10.0, 5.0 }, insets);
  g_assert_cmpfloat_with_epsilon (viewport.px_per_m, 8.0, NEAR);
  low = sw_viewport_to_px (&viewport, (SwPoint){ 0.0, 0.0 });
  high = sw_viewport_to_px (&viewport, (SwPoint){ 10.0, 5.0 });
  g_assert_cmpfloat_with_epsilon (high.x_m - low.x_m, 80.0, NEAR);
  g_assert_cmpfloat_with_epsilon (low.y_m - high.y_m, 200.0, NEAR);
  back = sw_viewport_to_world (&viewport, high);
  g_assert_cmpfloat_with_epsilon (back.x_m, 10.0, NEAR);
  g_assert_cmpfloat_with_epsilon (back.y_m, 5.0, NEAR);
  g_assert_cmpfloat_with_epsilon (sw_viewport_view (&viewport, 4.0).y_mm_per_m, -10.0,
                                  NEAR);
}

static void
test_fit_without_room (void)
{
  SwViewport viewport = { .width_px = 10.0, .height_px = 10.0 };

  sw_viewport_fit (&viewport, (SwBox){ 0.0, 0.0, 10.0, 5.0 }, insets);
  g_assert_cmpfloat (viewport.px_per_m, >, 0.0);
  sw_viewport_fit (&viewport, (SwBox){ 3.0, 3.0, 3.0, 3.0 }, insets);
  g_assert_true (isfinite (viewport.px_per_m));
}

/* 100 x 60 px with insets of 100 and 80: half the room stays, 50 x 30 px for 10 x 5 m. */
static void
test_insets_leave_half (void)
{
  SwViewport viewport = { .width_px = 100.0, .height_px = 60.0 };

  sw_viewport_fit (&viewport, (SwBox){ 0.0, 0.0, 10.0, 5.0 }, insets);
  g_assert_cmpfloat_with_epsilon (viewport.px_per_m, 5.0, NEAR);
  g_assert_true (sw_viewport_shows (&viewport, (SwBox){ 0.0, 0.0, 10.0, 5.0 }, insets));
}

static void
test_there_and_back (void)
{
  for (int up = 0; up < 2; up++)
    {
      SwViewport viewport = fitted (up);
      SwPoint world = { 3.25, 1.75 };
      SwPoint back =
          sw_viewport_to_world (&viewport, sw_viewport_to_px (&viewport, world));
      g_assert_cmpfloat_with_epsilon (back.x_m, world.x_m, NEAR);
      g_assert_cmpfloat_with_epsilon (back.y_m, world.y_m, NEAR);
    }
}

static void
test_zoom_holds_the_pointer (void)
{
  SwViewport viewport = fitted (TRUE);
  SwPoint pointer = { 123.0, 45.0 };
  SwPoint before = sw_viewport_to_world (&viewport, pointer);

  sw_viewport_zoom (&viewport, 1.7, pointer);
  SwPoint after = sw_viewport_to_world (&viewport, pointer);
  g_assert_cmpfloat_with_epsilon (after.x_m, before.x_m, NEAR);
  g_assert_cmpfloat_with_epsilon (after.y_m, before.y_m, NEAR);
  g_assert_cmpfloat_with_epsilon (viewport.px_per_m, 68.0, NEAR); /* 40 x 1.7 */
}

static void
test_zoom_has_ends (void)
{
  SwViewport viewport = fitted (TRUE);

  for (int i = 0; i < 200; i++)
    sw_viewport_zoom (&viewport, 2.0, (SwPoint){ 0.0, 0.0 });
  g_assert_cmpfloat (viewport.px_per_m, ==, 2000.0);
  for (int i = 0; i < 200; i++)
    sw_viewport_zoom (&viewport, 0.5, (SwPoint){ 0.0, 0.0 });
  g_assert_cmpfloat (viewport.px_per_m, ==, 0.05);
}

static void
test_shows (void)
{
  SwViewport viewport = fitted (TRUE);
  SwBox world = { 0.0, 0.0, 10.0, 5.0 };

  g_assert_true (sw_viewport_shows (&viewport, world, insets));
  world.y1_m = 5.1; /* 4 of the 30 px above, then 8 */
  g_assert_true (sw_viewport_shows (&viewport, world, insets));
  world.y1_m = 5.2;
  g_assert_false (sw_viewport_shows (&viewport, world, insets));
  world.y1_m = 5.0;
  sw_viewport_pan (&viewport, -100.0, 0.0);
  g_assert_false (sw_viewport_shows (&viewport, world, insets));
}

/* 40 px per m: 0.1 m is 4 px, 0.05 m is 2; 1 ft is 12.2 px, 6 in is 6.1, 3 in is 3.05. */
static void
test_steps (void)
{
  SwViewport viewport = fitted (TRUE);

  g_assert_cmpfloat (sw_viewport_step_m (&viewport, SW_UNITS_METRIC, 3.0), ==, 0.1);
  g_assert_cmpfloat_with_epsilon (sw_viewport_step_m (&viewport, SW_UNITS_US, 3.1),
                                  0.1524, NEAR);
}

static void
test_snap_gives_decimals (void)
{
  SwPoint snapped = sw_viewport_snap ((SwPoint){ 0.31, -1.26 }, 0.1);

  g_assert_cmpfloat (snapped.x_m, ==, 0.3); /* the double that "0.3" reads as */
  g_assert_cmpfloat (snapped.y_m, ==, -1.3);
}

static void
test_view_agrees (void)
{
  SwViewport viewport = fitted (TRUE);
  SwView view = sw_viewport_view (&viewport, 5.0);
  SwPoint world = { 2.0, 1.0 };
  SwPaperPoint paper = sw_view_to_paper (&view, world);
  SwPoint px = sw_viewport_to_px (&viewport, world);

  g_assert_cmpfloat_with_epsilon (paper.x_mm * 5.0, px.x_m, NEAR);
  g_assert_cmpfloat_with_epsilon (paper.y_mm * 5.0, px.y_m, NEAR);
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/app/viewport/fit", test_fit);
  g_test_add_func ("/app/viewport/stretched", test_stretched);
  g_test_add_func ("/app/viewport/fit-without-room", test_fit_without_room);
  g_test_add_func ("/app/viewport/insets-leave-half", test_insets_leave_half);
  g_test_add_func ("/app/viewport/there-and-back", test_there_and_back);
  g_test_add_func ("/app/viewport/zoom-holds-the-pointer", test_zoom_holds_the_pointer);
  g_test_add_func ("/app/viewport/zoom-has-ends", test_zoom_has_ends);
  g_test_add_func ("/app/viewport/shows", test_shows);
  g_test_add_func ("/app/viewport/steps", test_steps);
  g_test_add_func ("/app/viewport/snap-gives-decimals", test_snap_gives_decimals);
  g_test_add_func ("/app/viewport/view-agrees", test_view_agrees);
  return g_test_run ();
}
