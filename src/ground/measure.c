/* SPDX-License-Identifier: MIT */
#include "ground-private.h"
#include <math.h>
#include <slopewright/base/order.h>

/* Gauss-Legendre, 8 points on (-1, 1), half of them: the other half is the mirror image.
 * Source: Abramowitz and Stegun, Handbook of Mathematical Functions, table 25.4. */
static const double gauss_at[] = { 0.183434642495650, 0.525532409916329,
                                   0.796666477413627, 0.960289856497536 };
static const double gauss_weight[] = { 0.362683783378362, 0.313706645877887,
                                       0.222381034453374, 0.101228536290376 };

typedef double (*Integrand) (double at, gpointer data);

static double
integrate (Integrand f, gpointer data, double from, double to)
{
  double half = (to - from) / 2.0, middle = (from + to) / 2.0, sum = 0.0;

  for (guint i = 0; i < G_N_ELEMENTS (gauss_at); i++)
    sum +=
        gauss_weight[i]
        * (f (middle - half * gauss_at[i], data) + f (middle + half * gauss_at[i], data));
  return half * sum;
}

/* Halved until halving no longer tells, at most so often. */
#define HALVINGS 12
#define SAME_INTEGRAL 1e-9

static double
refine (Integrand f, gpointer data, double from, double to, double whole, int halvings)
{
  double middle = (from + to) / 2.0;
  double upper = integrate (f, data, from, middle);
  double lower = integrate (f, data, middle, to);

  if (halvings == 0
      || fabs (upper + lower - whole) <= SAME_INTEGRAL * fabs (upper + lower))
    return upper + lower;
  return refine (f, data, from, middle, upper, halvings - 1)
         + refine (f, data, middle, to, lower, halvings - 1);
}

/* Change of height per metre along and per metre out. */
typedef struct
{
  double along, out;
} Rise;

/* Break @point at @along_m: where it is, how high, and how both change along the crest. */
typedef struct
{
  double out_m, up_m, out_per_m, up_per_m;
} Break;

static Break
break_at (const SwGround *ground, guint point, double along_m)
{
  guint after = 0;
  const SwPoint *a, *b;
  double length, t;

  while (after < ground->stations && ground->along_m[after] <= along_m)
    after++;
  if (after == 0 || after == ground->stations)
    {
      a = ground->section + (gsize) (after == 0 ? 0 : after - 1) * ground->count + point;
      return (Break){ a->x_m, a->y_m, 0.0, 0.0 };
    }
  a = ground->section + (gsize) (after - 1) * ground->count + point;
  b = a + ground->count;
  length = ground->along_m[after] - ground->along_m[after - 1];
  t = (along_m - ground->along_m[after - 1]) / length;
  return (Break){ a->x_m + t * (b->x_m - a->x_m), a->y_m + t * (b->y_m - a->y_m),
                  (b->x_m - a->x_m) / length, (b->y_m - a->y_m) / length };
}

/* Rise of the ruled cell between two breaks: z = zu + s (zl - zu), s = (y - yu) / (yl - yu). */
static Rise
cell_rise (Break upper, Break lower, double out_m)
{
  double width = lower.out_m - upper.out_m, drop = lower.up_m - upper.up_m;
  double s = (out_m - upper.out_m) / width;
  double s_along = (-upper.out_per_m - s * (lower.out_per_m - upper.out_per_m)) / width;

  return (Rise){ upper.up_per_m + s_along * drop + s * (lower.up_per_m - upper.up_per_m),
                 drop / width };
}

/* @stretch: which cell, as sw_profile_stretch() counts; level beyond the first and last break. */
static Rise
rise_in (const SwGround *ground, guint stretch, double along_m, double out_m)
{
  if (stretch == 0)
    return (Rise){ break_at (ground, 0, along_m).up_per_m, 0.0 };
  if (stretch == ground->count)
    return (Rise){ break_at (ground, ground->count - 1, along_m).up_per_m, 0.0 };
  return cell_rise (break_at (ground, stretch - 1, along_m),
                    break_at (ground, stretch, along_m), out_m);
}

static guint
stretch_at (const SwGround *ground, double along_m, double out_m)
{
  SwProfile profile = sw_profile_at (ground, along_m, SW_PROFILE_ROOM (ground));

  return sw_profile_stretch (&profile, out_m);
}

/* Where the line from @a to @b crosses break @point between two stations, as a share of
 * the line. */
static void
add_crossing (const SwGround *ground, guint station, guint point, SwPoint a, SwPoint b,
              GArray *shares)
{
  double from_m = ground->along_m[station], to_m = ground->along_m[station + 1];
  const SwPoint *p = ground->section + (gsize) station * ground->count + point;
  double slope = (p[ground->count].x_m - p[0].x_m) / (to_m - from_m);
  double gap_a = a.y_m - (p[0].x_m + slope * (a.x_m - from_m));
  double gap_b = b.y_m - (p[0].x_m + slope * (b.x_m - from_m));
  double share, along_m;

  if ((gap_a < 0.0) == (gap_b < 0.0))
    return;
  share = gap_a / (gap_a - gap_b);
  along_m = a.x_m + share * (b.x_m - a.x_m);
  if (along_m >= from_m && along_m <= to_m)
    g_array_append_val (shares, share);
}

/* Beyond the outer stations the breaks run straight along the crest. */
static void
add_outer_crossing (const SwGround *ground, guint station, guint point, gboolean before,
                    SwPoint a, SwPoint b, GArray *shares)
{
  double out_m = ground->section[(gsize) station * ground->count + point].x_m;
  double share, along_m;

  if ((a.y_m < out_m) == (b.y_m < out_m))
    return;
  share = (out_m - a.y_m) / (b.y_m - a.y_m);
  along_m = a.x_m + share * (b.x_m - a.x_m);
  if (before ? along_m <= ground->along_m[station] : along_m >= ground->along_m[station])
    g_array_append_val (shares, share);
}

void
sw_ground_kinks (const SwGround *ground, SwPoint a, SwPoint b, GArray *shares)
{
  g_array_set_size (shares, 0);
  for (guint s = 0; s < ground->stations; s++)
    if ((a.x_m < ground->along_m[s]) != (b.x_m < ground->along_m[s]))
      {
        double share = (ground->along_m[s] - a.x_m) / (b.x_m - a.x_m);
        g_array_append_val (shares, share);
      }
  for (guint p = 0; p < ground->count; p++)
    {
      add_outer_crossing (ground, 0, p, TRUE, a, b, shares);
      add_outer_crossing (ground, ground->stations - 1, p, FALSE, a, b, shares);
      for (guint s = 0; s + 1 < ground->stations; s++)
        add_crossing (ground, s, p, a, b, shares);
    }
  g_array_sort (shares, sw_compare_doubles);
}

typedef struct
{
  const SwGround *ground;
  SwPoint a, b;
  guint stretch;
} Line;

static double
line_speed (double share, gpointer data)
{
  const Line *line = data;
  double along = line->b.x_m - line->a.x_m, out = line->b.y_m - line->a.y_m;
  Rise rise = rise_in (line->ground, line->stretch, line->a.x_m + share * along,
                       line->a.y_m + share * out);
  double up = rise.along * along + rise.out * out;
  double arc = along * sw_ground_stretch (line->ground, line->a.y_m + share * out);

  return sqrt (arc * arc + out * out + up * up);
}

double
sw_ground_length_m (const SwGround *ground, SwPoint a, SwPoint b)
{
  g_autoptr (GArray) kinks = g_array_new (FALSE, FALSE, sizeof (double));
  Line line = { ground, a, b, 0 };
  double from = 0.0, one = 1.0, length_m = 0.0;

  sw_ground_kinks (ground, a, b, kinks);
  g_array_append_val (kinks, one);
  for (guint i = 0; i < kinks->len; i++)
    {
      double to = g_array_index (kinks, double, i), middle = (from + to) / 2.0;

      line.stretch = stretch_at (ground, a.x_m + middle * (b.x_m - a.x_m),
                                 a.y_m + middle * (b.y_m - a.y_m));
      length_m += integrate (line_speed, &line, from, to);
      from = to;
    }
  return length_m;
}

typedef struct
{
  const SwGround *ground;
  SwRing plan;
  GArray *spans;
  double along_m;
  guint stretch;
} Surface;

/* Ruled ground that twists changes too fast for one step; on other ground one is exact. */
static double
integrate_surface (Integrand f, Surface *surface, double from, double to)
{
  double whole = integrate (f, surface, from, to);

  return surface->ground->stations > 1 ? refine (f, surface, from, to, whole, HALVINGS)
                                       : whole;
}

static double
area_density (double out_m, gpointer data)
{
  const Surface *surface = data;
  Rise rise = rise_in (surface->ground, surface->stretch, surface->along_m, out_m);
  double arc = sw_ground_stretch (surface->ground, out_m);

  return sqrt (arc * arc * (1.0 + rise.out * rise.out) + rise.along * rise.along);
}

/* Area per metre along of one span, cell by cell. */
static double
span_area (Surface *surface, SwSpan span)
{
  const SwGround *ground = surface->ground;
  SwProfile profile = sw_profile_at (ground, surface->along_m, SW_PROFILE_ROOM (ground));
  double from_m = span.from_m, area = 0.0;

  for (guint i = sw_profile_stretch (&profile, from_m); i <= profile.count; i++)
    {
      gboolean last = i == profile.count || profile.section[i].x_m >= span.to_m;
      double to_m = last ? span.to_m : profile.section[i].x_m;

      surface->stretch = i;
      area += integrate_surface (area_density, surface, from_m, to_m);
      from_m = to_m;
      if (last)
        break;
    }
  return area;
}

static double
column_area (double along_m, gpointer data)
{
  Surface *surface = data;
  double area = 0.0;

  surface->along_m = along_m;
  sw_ring_cut_x (surface->plan, along_m, surface->spans);
  for (guint i = 0; i < surface->spans->len; i++)
    area += span_area (surface, g_array_index (surface->spans, SwSpan, i));
  return area;
}

/* Places along the crest between which the column area changes smoothly. */
static GArray *
find_column_kinks (const SwGround *ground, SwRing plan)
{
  GArray *kinks = g_array_new (FALSE, FALSE, sizeof (double));
  g_autoptr (GArray) shares = g_array_new (FALSE, FALSE, sizeof (double));

  for (guint i = 0, j = plan.count - 1; i < plan.count; j = i++)
    {
      SwPoint a = plan.points[j], b = plan.points[i];

      g_array_append_val (kinks, b.x_m);
      sw_ground_kinks (ground, a, b, shares);
      for (guint k = 0; k < shares->len; k++)
        {
          double along_m = a.x_m + g_array_index (shares, double, k) * (b.x_m - a.x_m);
          g_array_append_val (kinks, along_m);
        }
    }
  for (guint s = 0; s < ground->stations; s++)
    g_array_append_val (kinks, ground->along_m[s]);
  g_array_sort (kinks, sw_compare_doubles);
  return kinks;
}

double
sw_ground_area_m2 (const SwGround *ground, SwRing plan)
{
  g_autoptr (GArray) kinks = find_column_kinks (ground, plan);
  g_autoptr (GArray) spans = g_array_new (FALSE, FALSE, sizeof (SwSpan));
  Surface surface = { ground, plan, spans, 0.0, 0 };
  double area_m2 = 0.0;

  for (guint i = 1; i < kinks->len; i++)
    {
      double from_m = g_array_index (kinks, double, i - 1);
      double to_m = g_array_index (kinks, double, i);

      if (to_m > from_m)
        area_m2 += integrate_surface (column_area, &surface, from_m, to_m);
    }
  return area_m2;
}
