/* SPDX-License-Identifier: MIT */
#undef G_DISABLE_ASSERT
#include "random-slope.h"
#include "slope-checks.h"
#include <math.h>
#include <slopewright/base/count.h>
#include <slopewright/store/store.h>

/*
 * The properties of the layout over random faces of every kind and practice. How many
 * faces is said by the environment, and from which on: one that failed is run alone by
 * its number and one face.
 */
#define FACES_VARIABLE "SLOPEWRIGHT_RANDOM_FACES"
#define FIRST_VARIABLE "SLOPEWRIGHT_FIRST_FACE"
#define FACES 300

/* Two threads share the faces, so that two jobs are always laid at once. */
#define THREADS 2

/* Failures that are printed before the rest is only counted. */
#define PRINTED 20

static guint
wanted (const char *variable, guint otherwise)
{
  const char *text = g_getenv (variable);

  return text != NULL ? (guint) g_ascii_strtoull (text, NULL, 10) : otherwise;
}

static SwFace *
face_of (SwJob *job)
{
  return g_ptr_array_index (job->faces, 0);
}

static SwJob *
slope (const SwCatalogue *catalogue, guint seed)
{
  g_autoptr (GRand) rand = g_rand_new_with_seed (seed);

  return random_slope (rand, catalogue);
}

/* --- the same face said in another way --- */

static void
negate (SwPoint *points, guint count)
{
  for (guint i = 0; i < count; i++)
    points[i].x_m = -points[i].x_m;
}

static void
mirror_stations (SwFace *face)
{
  guint n = face->n_further;

  if (n == 0)
    return;
  face->section_along_m = -face->section_along_m;
  for (guint i = 0; i < n; i++)
    face->further[i].along_m = -face->further[i].along_m;
  for (guint i = 0; i < n / 2; i++)
    {
      SwCrossSection other = face->further[i];

      face->further[i] = face->further[n - 1 - i];
      face->further[n - 1 - i] = other;
    }
}

static void
mirror (SwJob *job)
{
  SwFace *face = face_of (job);

  negate (face->outline, face->n_outline);
  for (guint i = 0; i < face->obstacles->len; i++)
    {
      SwObstacle *obstacle = face->obstacles->pdata[i];

      negate (obstacle->outline, obstacle->n_outline);
    }
  for (guint i = 0; i < face->zones->len; i++)
    {
      SwZone *zone = face->zones->pdata[i];

      negate (zone->outline, zone->n_outline);
    }
  mirror_stations (face);
  face->leeward = face->leeward == SW_SIDE_LEFT ? SW_SIDE_RIGHT : SW_SIDE_LEFT;
}

static void
reverse (SwJob *job)
{
  SwFace *face = face_of (job);

  for (guint i = 0; i < face->n_outline / 2; i++)
    {
      SwPoint p = face->outline[i];

      face->outline[i] = face->outline[face->n_outline - 1 - i];
      face->outline[face->n_outline - 1 - i] = p;
    }
}

static SwPoint
halfway (SwPoint a, SwPoint b)
{
  return (SwPoint){ (a.x_m + b.x_m) / 2.0, (a.y_m + b.y_m) / 2.0 };
}

static void
add_to_outline (SwJob *job)
{
  SwFace *face = face_of (job);
  guint n = face->n_outline;
  g_autofree SwPoint *more = g_new (SwPoint, 2 * n);

  for (guint i = 0; i < n; i++)
    {
      more[2 * i] = face->outline[i];
      more[2 * i + 1] = halfway (face->outline[i], face->outline[(i + 1) % n]);
    }
  sw_face_set_outline (face, more, 2 * n);
}

static SwPoint *
with_halves (const SwPoint *points, guint count)
{
  SwPoint *more = g_new (SwPoint, 2 * count - 1);

  for (guint i = 0; i < count; i++)
    {
      more[2 * i] = points[i];
      if (i + 1 < count)
        more[2 * i + 1] = halfway (points[i], points[i + 1]);
    }
  return more;
}

static void
add_to_section (SwJob *job)
{
  g_autoptr (SwJob) before = sw_job_copy (job);
  const SwFace *was = face_of (before);
  SwFace *face = face_of (job);
  g_autofree SwPoint *own = with_halves (was->section, was->n_section);

  sw_face_set_section (face, own, 2 * was->n_section - 1);
  for (guint i = 0; i < was->n_further; i++)
    {
      g_autofree SwPoint *section = with_halves (was->further[i].section, was->n_section);

      sw_face_add_section (face, was->further[i].along_m, section);
    }
}

static void
to_feet_and_back (SwPoint *points, guint count)
{
  for (guint i = 0; i < count; i++)
    points[i] = (SwPoint){ points[i].x_m / SW_M_PER_FT * SW_M_PER_FT,
                           points[i].y_m / SW_M_PER_FT * SW_M_PER_FT };
}

/* The other unit system, and all lengths as they come back from it. */
static void
say_in_feet (SwJob *job)
{
  SwFace *face = face_of (job);

  job->units = job->units == SW_UNITS_US ? SW_UNITS_METRIC : SW_UNITS_US;
  to_feet_and_back (face->outline, face->n_outline);
  to_feet_and_back (face->section, face->n_section);
  for (guint i = 0; i < face->n_further; i++)
    to_feet_and_back (face->further[i].section, face->n_section);
  job->roll_width_m = job->roll_width_m / SW_M_PER_FT * SW_M_PER_FT;
  job->roll_length_m = job->roll_length_m / SW_M_PER_FT * SW_M_PER_FT;
}

/* --- comparison --- */

#define SAME_M 1e-5

/* Pins are stored to 0.01 mm. */
#define STORED_M 2e-5

/* A point added to the section of warped or round ground begins a new step of what lies
 * along the outline, which is straight in space from step to step: it moves by millimetres,
 * and one of two pins that nearly meet may come or go. */
#define FOLLOWED_M 0.003
#define FOLLOWED_PINS 2

/* The line round an obstacle is GEOS's offset of it by 0.1 m, which leaves out hollows
 * shallower than a hundredth of that, beginning at either end. */
#define OFFSET_M 0.001

/* How like two layouts are to be: along = @sign x along. */
typedef struct
{
  double sign, place_m;
  int pins;
} Likeness;

static gboolean
differ (double a, double b)
{
  return fabs (a - b) > SAME_M;
}

static const char *
compare_tiers (const SwFaceLayout *x, const SwFaceLayout *y)
{
  if (x->n_tiers != y->n_tiers || x->n_runs != y->n_runs)
    return "tiers or runs";
  for (guint t = 0; t < x->n_tiers; t++)
    {
      if (fabs (x->tiers[t].net_m2 - y->tiers[t].net_m2)
          > 1e-6 * (x->tiers[t].net_m2 + 1.0))
        return "net area";
      if (differ (x->tiers[t].length_m, y->tiers[t].length_m))
        return "tier length";
      if (differ (x->tiers[t].side_lap_m, y->tiers[t].side_lap_m)
          || x->tiers[t].strips != y->tiers[t].strips
          || x->tiers[t].slots != y->tiers[t].slots)
        return "strips, laps or slots";
    }
  return NULL;
}

static const char *
compare_runs (const SwFaceLayout *x, const SwFaceLayout *y, double sign)
{
  for (guint r = 0; r < x->n_runs; r++)
    {
      const SwRun *a = &x->runs[r], *b = &y->runs[r];

      if (a->number != b->number || a->part != b->part || a->n_pieces != b->n_pieces
          || a->n_cut_outs != b->n_cut_outs)
        return "run's number, pieces or cut-outs";
      if (differ (a->cut_m, b->cut_m) || differ (a->down_from_m, b->down_from_m))
        return "run's length";
      if (differ (sign * (a->along_from_m + a->along_to_m),
                  b->along_from_m + b->along_to_m))
        return "run's place";
      if (x->pin_lengths[a->pin_length].pin != y->pin_lengths[b->pin_length].pin)
        return "run's pin length";
    }
  return NULL;
}

static gboolean
counts_differ (gsize a, gsize b, Likeness like)
{
  return ABS ((gint64) a - (gint64) b) > like.pins;
}

static const char *
compare_places (const SwFaceLayout *x, const SwFaceLayout *y, Likeness like)
{
  double along[SW_PIN_ROLE_COUNT] = { 0 }, down[SW_PIN_ROLE_COUNT] = { 0 };

  for (gsize i = 0; i < x->n_pins; i++)
    {
      along[x->pins[i].role] += like.sign * (double) x->pins[i].along_m;
      down[x->pins[i].role] += (double) x->pins[i].down_m;
      along[y->pins[i].role] -= (double) y->pins[i].along_m;
      down[y->pins[i].role] -= (double) y->pins[i].down_m;
    }
  for (int role = 0; role < SW_PIN_ROLE_COUNT; role++)
    {
      double place_m = role == SW_PIN_RING ? fmax (like.place_m, OFFSET_M) : like.place_m;
      double slack_m = place_m * (double) (x->pins_by_role[role] + 1);

      /* Where a heap's round is cut open is no place of its own. */
      if (fabs (down[role]) > slack_m
          || (fabs (along[role]) > slack_m && !x->tiers[0].closed))
        return "places of pins";
    }
  return NULL;
}

static const char *
compare_pins (const SwFaceLayout *x, const SwFaceLayout *y, Likeness like)
{
  for (int role = 0; role < SW_PIN_ROLE_COUNT; role++)
    if (counts_differ (x->pins_by_role[role], y->pins_by_role[role], like))
      return sw_pin_role_code ((SwPinRole) role);
  for (guint i = 0; i < x->n_pin_lengths; i++)
    if (counts_differ (x->pin_lengths[i].count, y->pin_lengths[i].count, like))
      return "pins of a length";
  return x->n_pins == y->n_pins ? compare_places (x, y, like) : NULL;
}

static const char *
compare (const SwLayout *a, const SwLayout *b, Likeness like)
{
  const SwFaceLayout *x = &a->faces[0], *y = &b->faces[0];
  const char *wrong = compare_tiers (x, y);

  if (wrong == NULL
      && (a->rolls != b->rolls || a->rolls_naive != b->rolls_naive
          || a->rolls_bound != b->rolls_bound))
    wrong = "rolls";
  if (wrong == NULL)
    wrong = compare_runs (x, y, like.sign);
  if (wrong == NULL && x->n_trenches != y->n_trenches)
    wrong = "trenches";
  if (wrong == NULL)
    wrong = compare_pins (x, y, like);
  return wrong;
}

/* --- doubled width --- */

static void
widen (SwPoint *points, guint count)
{
  for (guint i = 0; i < count; i++)
    points[i].x_m *= 2.0;
}

static gboolean
double_width (SwJob *job)
{
  SwFace *face = face_of (job);
  SwBox box = sw_ring_box ((SwRing){ face->outline, face->n_outline });

  if (face->crest_form != SW_CREST_STRAIGHT
      && 2.0 * (box.x1_m - box.x0_m) > 1.99 * G_PI * face->crest_radius_m)
    return FALSE;
  widen (face->outline, face->n_outline);
  for (guint i = 0; i < face->obstacles->len; i++)
    {
      SwObstacle *obstacle = face->obstacles->pdata[i];

      widen (obstacle->outline, obstacle->n_outline);
    }
  for (guint i = 0; i < face->zones->len; i++)
    {
      SwZone *zone = face->zones->pdata[i];

      widen (zone->outline, zone->n_outline);
    }
  face->section_along_m *= 2.0;
  for (guint i = 0; i < face->n_further; i++)
    face->further[i].along_m *= 2.0;
  return TRUE;
}

static const char *
fewer (const SwLayout *once, const SwLayout *twice)
{
  const SwFaceLayout *x = &once->faces[0], *y = &twice->faces[0];

  for (guint t = 0; t < MIN (x->n_tiers, y->n_tiers); t++)
    if (y->tiers[t].strips < x->tiers[t].strips)
      return "strips";
  if (y->n_runs < x->n_runs)
    return "runs";
  /* The naive count, and a plan not proved to be the least, may fall: strips lie elsewhere on
   * the wider face, so its longest run may be shorter and no longer take a second roll, as in
   * face 4784. */
  if (twice->rolls < once->rolls_bound || twice->rolls_bound < once->rolls_bound)
    return "rolls";
  return y->n_pins < x->n_pins ? "pins" : NULL;
}

/* --- the run --- */

typedef struct
{
  const SwCatalogue *catalogue;
  guint from, first, end;
  char **
      checksums; /* from face @from on, of every face as laid beside another; NULL if refused */
  GPtrArray *wrongs; /* (element-type char *) */
  const char *kind;  /* of the face at hand */
} Worker;

static void
report (Worker *worker, guint seed, const char *what, const char *wrong)
{
  if (wrong != NULL)
    g_ptr_array_add (worker->wrongs, g_strdup_printf ("face %u (%s), %s: %s", seed,
                                                      worker->kind, what, wrong));
}

static void
check_same (Worker *worker, guint seed, const SwJob *job, const SwLayout *layout)
{
  static const struct
  {
    const char *name;
    void (*change) (SwJob *job);
    double sign;
    gboolean adds_breaks;
  } rows[] = {
    { "mirrored", mirror, -1.0, FALSE },
    { "reversed", reverse, 1.0, FALSE },
    { "with collinear outline points", add_to_outline, 1.0, FALSE },
    { "with collinear section points", add_to_section, 1.0, TRUE },
    { "in feet", say_in_feet, 1.0, FALSE },
  };
  const SwFace *face = layout->faces[0].face;
  gboolean curved = face->n_further > 0 || face->crest_form != SW_CREST_STRAIGHT;

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      g_autoptr (SwJob) changed = sw_job_copy (job);
      g_autoptr (SwLayout) other = NULL;
      Likeness like = { rows[i].sign, STORED_M, 0 };

      if (curved && rows[i].adds_breaks)
        like = (Likeness){ rows[i].sign, FOLLOWED_M, FOLLOWED_PINS };

      rows[i].change (changed);
      report (worker, seed, rows[i].name,
              sw_layout_new (changed, worker->catalogue, &other, NULL) != SW_OK
                  ? "refused"
                  : compare (layout, other, like));
    }
}

static void
check_doubled (Worker *worker, guint seed, const SwJob *job, const SwLayout *layout)
{
  g_autoptr (SwJob) wide = sw_job_copy (job);
  g_autoptr (SwLayout) other = NULL;

  if (!double_width (wide))
    return;
  report (worker, seed, "twice as wide",
          sw_layout_new (wide, worker->catalogue, &other, NULL) != SW_OK
              ? "refused"
              : fewer (layout, other));
}

static void
check_itself (Worker *worker, guint seed, const SwLayout *layout)
{
  static const SlopeCheck checks[] = { check_no_bare_ground, check_side_laps,
                                       check_pieces,         check_rolls,
                                       check_clips_add_up,   check_pins };
  g_autoptr (GRand) rand = g_rand_new_with_seed (seed);

  for (guint i = 0; i < G_N_ELEMENTS (checks); i++)
    report (worker, seed, "as it is", checks[i](layout, rand));
}

static char *
checksum (const SwLayout *layout)
{
  g_autoptr (GByteArray) bytes = fixture_layout_bytes (layout);

  return g_compute_checksum_for_data (G_CHECKSUM_MD5, bytes->data, bytes->len);
}

static const char *
kind_of (const SwFace *face)
{
  if (face->crest_form == SW_CREST_BOWL)
    return "bowl";
  if (face->crest_form == SW_CREST_NOSE)
    return "nose or heap";
  return face->n_further > 0 ? "ruled" : "straight";
}

static gpointer
work (gpointer data)
{
  Worker *worker = data;

  for (guint seed = worker->first; seed < worker->end; seed += THREADS)
    {
      g_autoptr (SwJob) job = slope (worker->catalogue, seed);
      g_autoptr (SwLayout) layout = NULL;

      if (sw_layout_new (job, worker->catalogue, &layout, NULL) != SW_OK)
        continue;
      worker->kind = kind_of (face_of (job));
      worker->checksums[seed - worker->from] = checksum (layout);
      check_itself (worker, seed, layout);
      check_same (worker, seed, job, layout);
      check_doubled (worker, seed, job, layout);
    }
  return NULL;
}

static guint
print_wrongs (const Worker *workers)
{
  guint count = 0;

  for (guint w = 0; w < THREADS; w++)
    for (guint i = 0; i < workers[w].wrongs->len; i++)
      if (count++ < PRINTED)
        g_printerr ("%s\n", (const char *) workers[w].wrongs->pdata[i]);
  return count;
}

/* Laid alone, every face is bit for bit what it was beside another. */
static guint
count_disturbed (const SwCatalogue *catalogue, char **checksums, guint from, guint faces)
{
  guint disturbed = 0;

  for (guint i = 0; i < faces; i++)
    {
      g_autoptr (SwJob) job = slope (catalogue, from + i);
      g_autoptr (SwLayout) layout = NULL;
      g_autofree char *alone = NULL;

      if (sw_layout_new (job, catalogue, &layout, NULL) == SW_OK)
        alone = checksum (layout);
      disturbed += g_strcmp0 (alone, checksums[i]) != 0;
    }
  return disturbed;
}

static void
test_random_faces (void)
{
  g_autoptr (SwCatalogue) catalogue = sw_catalogue_load ();
  guint faces = wanted (FACES_VARIABLE, FACES), from = wanted (FIRST_VARIABLE, 0),
        laid = 0;
  g_autofree char **checksums = g_new0 (char *, faces);
  Worker workers[THREADS];
  GThread *threads[THREADS];

  for (guint w = 0; w < THREADS; w++)
    {
      workers[w] = (Worker){ catalogue, from,
                             from + w,  from + faces,
                             checksums, g_ptr_array_new_with_free_func (g_free),
                             "" };
      threads[w] = g_thread_new ("faces", work, &workers[w]);
    }
  for (guint w = 0; w < THREADS; w++)
    g_thread_join (threads[w]);
  g_assert_cmpuint (print_wrongs (workers), ==, 0);
  g_assert_cmpuint (count_disturbed (catalogue, checksums, from, faces), ==, 0);
  for (guint i = 0; i < faces; i++)
    {
      laid += checksums[i] != NULL;
      g_free (checksums[i]);
    }
  for (guint w = 0; w < THREADS; w++)
    g_ptr_array_unref (workers[w].wrongs);
  g_test_message ("%u random faces; %u laid, the others rightly refused", faces, laid);
  /* A roll too short for a joint, or obstacles over all of a small face: few. */
  g_assert_cmpuint (laid, >=, faces - faces / 20);
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/layout/properties/random-faces", test_random_faces);
  return g_test_run ();
}
