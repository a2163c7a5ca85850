/* SPDX-License-Identifier: MIT */
#include "random-face.h"

static double
between (GRand *rand, double from, double to)
{
  return g_rand_double_range (rand, from, to);
}

/* Millimetres, as a tape gives them. */
static double
taped (GRand *rand, double from, double to)
{
  return (double) g_rand_int_range (rand, (gint32) (from * 1000), (gint32) (to * 1000))
         / 1000.0;
}

static GArray *
random_section (GRand *rand, double out_m)
{
  GArray *section = g_array_new (FALSE, FALSE, sizeof (SwPoint));
  double hv = between (rand, 0.8, 4.0), up_m = 60.0;
  SwPoint p = { 0.0, up_m };
  int kind = g_rand_int_range (rand, 0, 3);

  g_array_append_val (section, p);
  if (kind == 1) /* bent */
    {
      p = (SwPoint){ 0.4 * out_m, up_m - 0.4 * out_m / hv };
      g_array_append_val (section, p);
      hv *= between (rand, 0.6, 1.6);
    }
  else if (kind == 2 && out_m > 8.0) /* benched: 3 m, 3 % falling inward */
    {
      p = (SwPoint){ 0.4 * out_m, up_m - 0.4 * out_m / hv };
      g_array_append_val (section, p);
      p = (SwPoint){ p.x_m + 3.0, p.y_m + 0.09 };
      g_array_append_val (section, p);
    }
  p = (SwPoint){ out_m, p.y_m - (out_m - p.x_m) / hv };
  g_array_append_val (section, p);
  return section;
}

static void
add (GArray *outline, double along_m, double out_m)
{
  SwPoint p = { along_m, out_m };

  g_array_append_val (outline, p);
}

static GArray *
random_outline (GRand *rand, OutlineKind kind, double width_m, double out_m)
{
  GArray *o = g_array_new (FALSE, FALSE, sizeof (SwPoint));
  double a = between (rand, 0.15, 0.45) * width_m;
  double b = between (rand, 0.55, 0.85) * width_m;
  double middle_m = between (rand, 0.3, 0.7) * out_m;

  switch (kind)
    {
    case OUTLINE_TRAPEZOID:
      add (o, a, 0.0), add (o, b, 0.0), add (o, width_m, out_m), add (o, 0.0, out_m);
      break;
    case OUTLINE_TRIANGLE:
      add (o, 0.0, 0.0), add (o, width_m, 0.0), add (o, a, out_m);
      break;
    case OUTLINE_L:
      add (o, 0.0, 0.0), add (o, width_m, 0.0), add (o, width_m, middle_m);
      add (o, a, middle_m), add (o, a, out_m), add (o, 0.0, out_m);
      break;
    case OUTLINE_U_OPEN_AT_TOE:
      add (o, 0.0, 0.0), add (o, width_m, 0.0), add (o, width_m, out_m);
      add (o, b, out_m), add (o, b, middle_m), add (o, a, middle_m);
      add (o, a, out_m), add (o, 0.0, out_m);
      break;
    case OUTLINE_U_OPEN_AT_CREST:
      add (o, 0.0, 0.0), add (o, a, 0.0), add (o, a, middle_m), add (o, b, middle_m);
      add (o, b, 0.0), add (o, width_m, 0.0), add (o, width_m, out_m),
          add (o, 0.0, out_m);
      break;
    case OUTLINE_C:
      add (o, 0.0, 0.0), add (o, width_m, 0.0), add (o, width_m, 0.4 * middle_m);
      add (o, a, 0.4 * middle_m), add (o, a, middle_m), add (o, width_m, middle_m);
      add (o, width_m, out_m), add (o, 0.0, out_m);
      break;
    case OUTLINE_SKEW:
      add (o, 0.0, 0.1 * out_m), add (o, a, 0.0), add (o, width_m, 0.15 * out_m);
      add (o, 0.95 * width_m, 0.9 * out_m), add (o, b, out_m),
          add (o, 0.05 * width_m, out_m);
      break;
    case OUTLINE_RECTANGLE:
    default:
      add (o, 0.0, 0.0), add (o, width_m, 0.0), add (o, width_m, out_m),
          add (o, 0.0, out_m);
      break;
    }
  return o;
}

SwJob *
random_job (GRand *rand, OutlineKind kind)
{
  static const struct
  {
    double width_m, length_m;
  } rolls[] = {
    { 2.44, 34.3 }, { 1.22, 34.3 }, { 2.0, 50.0 }, { 4.0, 20.0 }, { 1.0, 12.0 }
  };
  SwJob *job = fixture_job ();
  double width_m = taped (rand, 4.0, 60.0), out_m = taped (rand, 3.0, 40.0);
  g_autoptr (GArray) section = random_section (rand, out_m);
  g_autoptr (GArray) outline = random_outline (rand, kind, width_m, out_m);
  guint roll = (guint) g_rand_int_range (rand, 0, G_N_ELEMENTS (rolls));
  SwFace *face =
      fixture_add_face (job, "A", (const SwPoint *) section->data, section->len,
                        (const SwPoint *) outline->data, outline->len);

  face->leeward = g_rand_boolean (rand) ? SW_SIDE_LEFT : SW_SIDE_RIGHT;
  job->surplus = g_rand_boolean (rand) ? SW_SURPLUS_SPREAD : SW_SURPLUS_TRIM;
  job->joints = g_rand_boolean (rand) ? SW_JOINTS_LONG_RUNS : SW_JOINTS_SAVE_ROLLS;
  job->roll_width_m = rolls[roll].width_m;
  job->roll_length_m = rolls[roll].length_m;
  if (g_rand_boolean (rand))
    sw_job_set_override (job, SW_PRACTICE_SLOT_EVERY_M, 7.5, "");
  return job;
}
