/* SPDX-License-Identifier: MIT */
#undef G_DISABLE_ASSERT
#include <math.h>

#include <slopewright/store/store.h>

/* Every role reads; loading stops the program otherwise. */
static void
test_loads (void)
{
  g_autoptr (SwPalette) palette = sw_palette_load ();

  for (guint i = 0; i < SW_ROLE_COUNT; i++)
    {
      const SwLook *look = &palette->looks[i];

      g_test_message ("%s", sw_role_code (i));
      g_assert_true (look->line.alpha > 0.0 || look->fill.alpha > 0.0);
      g_assert_true ((look->line.alpha > 0.0) == (look->line_dark.alpha > 0.0));
      g_assert_true ((look->fill.alpha > 0.0) == (look->fill_dark.alpha > 0.0));
      g_assert_cmpfloat (look->width_mm, >=, 0.0);
      /* A hatch without a width would silently vanish. */
      g_assert_true ((fabs (look->hatch_mm) > 0.0) == (look->hatch_width_mm > 0.0));
    }
}

/* Nothing that prints is thinner than 0.18 mm (ISO 128: the second thinnest line
   is 0.18 mm; from memory), and the ground line is the heaviest of plain lines. */
static void
test_line_weights (void)
{
  g_autoptr (SwPalette) palette = sw_palette_load ();

  for (guint i = 0; i < SW_ROLE_COUNT; i++)
    if (palette->looks[i].width_mm > 0.0)
      g_assert_cmpfloat (palette->looks[i].width_mm, >=, 0.18);
  g_assert_cmpfloat (palette->looks[SW_ROLE_GROUND].width_mm, >,
                     palette->looks[SW_ROLE_RUN_EDGE].width_mm);
  g_assert_cmpfloat (palette->looks[SW_ROLE_RUN_EDGE].width_mm, >,
                     palette->looks[SW_ROLE_DIMENSION].width_mm);
}

/* Source: WCAG 2.1, relative luminance and contrast ratio. */
static double
luminance (SwColour colour)
{
  const double parts[] = { colour.red, colour.green, colour.blue };
  const double weights[] = { 0.2126, 0.7152, 0.0722 };
  double sum = 0.0;

  for (guint i = 0; i < 3; i++)
    sum += weights[i]
           * (parts[i] <= 0.03928 ? parts[i] / 12.92
                                  : pow ((parts[i] + 0.055) / 1.055, 2.4));
  return sum;
}

static double
contrast (SwColour a, SwColour b)
{
  const double brighter = MAX (luminance (a), luminance (b));
  const double darker = MIN (luminance (a), luminance (b));

  return (brighter + 0.05) / (darker + 0.05);
}

/* Source: WCAG 2.1, 1.4.3 (text 4.5 : 1) and 1.4.11 (graphics 3 : 1). */
static void
test_contrast (void)
{
  static const SwRole texts[] = { SW_ROLE_TEXT, SW_ROLE_MUTED, SW_ROLE_HEADING,
                                  SW_ROLE_CAUTION, SW_ROLE_STOP };
  static const SwRole lines[] = {
    SW_ROLE_GROUND,    SW_ROLE_RUN_EDGE, SW_ROLE_LAP,      SW_ROLE_JOINT,
    SW_ROLE_TRENCH,    SW_ROLE_SLOT,     SW_ROLE_PIN,      SW_ROLE_DIMENSION,
    SW_ROLE_FALL_LINE, SW_ROLE_WIND,     SW_ROLE_BREAK,    SW_ROLE_HANDLE,
    SW_ROLE_HIGHLIGHT, SW_ROLE_BLANKET,  SW_ROLE_SCALE_BAR
  };
  g_autoptr (SwPalette) palette = sw_palette_load ();
  const SwLook *ground = &palette->looks[SW_ROLE_WHITE];
  const SwLook *run = &palette->looks[SW_ROLE_RUN];

  for (guint i = 0; i < G_N_ELEMENTS (texts); i++)
    {
      const SwLook *look = &palette->looks[texts[i]];
      g_assert_cmpfloat (contrast (look->line, ground->fill), >=, 4.5);
      g_assert_cmpfloat (contrast (look->line_dark, ground->fill_dark), >=, 4.5);
    }
  for (guint i = 0; i < G_N_ELEMENTS (lines); i++)
    {
      const SwLook *look = &palette->looks[lines[i]];
      g_test_message ("%s", sw_role_code (lines[i]));
      g_assert_cmpfloat (contrast (look->line, ground->fill), >=, 3.0);
      g_assert_cmpfloat (contrast (look->line_dark, ground->fill_dark), >=, 3.0);
      g_assert_cmpfloat (contrast (look->line, run->fill), >=, 3.0);
      g_assert_cmpfloat (contrast (look->line_dark, run->fill_dark), >=, 3.0);
    }
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/store/palette/loads", test_loads);
  g_test_add_func ("/store/palette/line-weights", test_line_weights);
  g_test_add_func ("/store/palette/contrast", test_contrast);
  return g_test_run ();
}
