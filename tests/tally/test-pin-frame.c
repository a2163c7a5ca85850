/* SPDX-License-Identifier: MIT */
#undef G_DISABLE_ASSERT
#include <glib.h>
#include <slopewright/tally/pin-frame.h>

static void
check (SwPinFrame frame, double mean, int least, int most)
{
  g_assert_cmpfloat_with_epsilon (frame.mean, mean, 0.005);
  g_assert_cmpint (frame.least, ==, least);
  g_assert_cmpint (frame.most, ==, most);
}

/*
 * By hand, a frame of 1 m. Between the lines 2.1418, columns at most 0.30 apart:
 * 2.1418 / 0.30 = 7.1, 8 gaps of 0.26773, 7 columns; 1 / 0.26773 = 3.7, so 3 or 4 columns.
 * The frame can be pushed 1.1418 sideways; column i is under it for
 * min (0.26773 i, 1.1418) - max (0.26773 i - 1, 0) of that: 0.26773 + 0.53546 + 0.80319
 * + 1.00000 + 0.80315 + 0.53542 + 0.26769 = 4.2126; 4.2126 / 1.1418 = 3.69. One pin a
 * metre down each.
 */
static void
test_seven_columns (void)
{
  check (sw_pin_frame (2.1418, 0.30, 1.0, 1.0), 3.69, 3, 4);
}

/* By hand: 1.80 / 0.60 = 3 gaps, columns at 0.60 and 1.20; frames that begin at 0 to 0.20
 * hold the first alone, at 0.20 to 0.60 both, to 0.80 the second alone: 1.5 on average.
 * 1 / 0.40 = 2.5 pins down each: 3.75; at least 1 x 2, at most 2 x 3. */
static void
test_two_columns (void)
{
  check (sw_pin_frame (1.80, 0.60, 0.40, 1.0), 3.75, 2, 6);
}

/* A frame that divides evenly holds the same everywhere: 2 columns of 2. */
static void
test_even (void)
{
  check (sw_pin_frame (2.0, 0.50, 0.50, 1.0), 4.0, 4, 4);
}

/* Lines nearer to each other than the frame's sides: what stands between them counts. */
static void
test_narrow (void)
{
  check (sw_pin_frame (0.90, 0.50, 0.50, 1.0), 2.0, 2, 2);
  check (sw_pin_frame (0.40, 0.50, 0.50, 1.0), 0.0, 0, 0);
}

/* A yard is 0.9144 m: 0.9144 / 0.50 = 1.83 pins down each of 1 or 2 columns. Frames
 * that begin at 0 to 0.0856 hold the columns at 0.5; at 0.0856 to 0.5 those at 0.5 and
 * 1.0; and so on, 1.0 at 1.0 to 1.0856: (0.5 + 0.9144 + 0.5) / 1.0856 = 1.7634. */
static void
test_yard (void)
{
  check (sw_pin_frame (2.0, 0.50, 0.50, 0.9144), 1.7634 * 1.8288, 1, 4);
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/tally/pin-frame/seven-columns", test_seven_columns);
  g_test_add_func ("/tally/pin-frame/two-columns", test_two_columns);
  g_test_add_func ("/tally/pin-frame/even", test_even);
  g_test_add_func ("/tally/pin-frame/narrow", test_narrow);
  g_test_add_func ("/tally/pin-frame/yard", test_yard);
  return g_test_run ();
}
