/* SPDX-License-Identifier: MIT */
#undef G_DISABLE_ASSERT
#include "fixture.h"
#include "random-face.h"
#include <slopewright/layout/laying-sequence.h>
#include <slopewright/store/store.h>

/* What must hold of the steps of any job, whatever its slope: each thing is done once, in
 * an order in which it can be done. */

static void
check_pins (const SwLayingSequence *sequence, guint face)
{
  const SwFaceLayout *laid = &sequence->layout->faces[face];
  const SwFaceSequence *of = &sequence->faces[face];
  g_autofree gboolean *driven = g_new0 (gboolean, laid->n_pins + 1);
  gsize sum = 0;

  for (guint i = of->first_step; i < of->end_step; i++)
    {
      const SwLayingStep *step = &sequence->steps[i];
      const guint32 *pins = sw_laying_step_pins (sequence, step);

      g_assert_cmpuint (step->face, ==, face);
      g_assert_cmpuint (step->first_pin, ==, sum);
      for (gsize k = 0; k < step->n_pins; k++)
        {
          g_assert_false (driven[pins[k]]);
          driven[pins[k]] = TRUE;
        }
      sum += step->n_pins;
    }
  g_assert_cmpuint (sum, ==, laid->n_pins);
}

/* A pin is driven once, through all that lies there: the run it belongs to reaches it, and
 * no strip of full length that is laid later does. */
static void
check_run_pins (const SwLayingSequence *sequence, const SwLayingStep *step)
{
  const SwFaceLayout *laid = &sequence->layout->faces[step->face];
  const SwRunSteps *steps = sequence->faces[step->face].runs;
  const guint32 *pins = sw_laying_step_pins (sequence, step);
  const SwTier *tier = &laid->tiers[step->tier];
  double round_m = tier->along_to_m - tier->along_from_m;

  for (gsize k = 0; k < step->n_pins; k++)
    {
      const SwPinPlace *pin = &laid->pins[pins[k]];
      double stretch = sw_ground_stretch (laid->ground, (double) pin->out_m);

      g_assert_cmpuint (pin->tier, ==, step->tier);
      for (guint r = tier->first_run; r < tier->first_run + tier->n_runs; r++)
        {
          const SwRun *run = &laid->runs[r];
          double off_m =
              ABS ((run->along_from_m + run->along_to_m) / 2.0 - (double) pin->along_m);

          if (tier->closed)
            off_m = MIN (off_m, round_m - off_m);
          if (r == step->run)
            g_assert_cmpfloat (off_m * stretch, <=, run->width_m / 2.0 + 0.01);
          else if (!run->infill && run->strip != laid->runs[step->run].strip
                   && steps[r].place > steps[step->run].place)
            g_assert_cmpfloat (off_m * stretch, >=, run->width_m / 2.0 - 0.01);
        }
    }
}

static gboolean
roles_fit (const SwLayingSequence *sequence, const SwLayingStep *step)
{
  const SwPinPlace *pins = sequence->layout->faces[step->face].pins;
  const guint32 *of_step = sw_laying_step_pins (sequence, step);

  for (gsize k = 0; k < step->n_pins; k++)
    switch ((SwPinRole) pins[of_step[k]].role)
      {
      case SW_PIN_KEY_TRENCH:
        if (step->act != SW_LAYING_ANCHOR)
          return FALSE;
        break;
      case SW_PIN_SLOT:
        if (step->act != SW_LAYING_SLOT)
          return FALSE;
        break;
      case SW_PIN_SIDE_LAP:
        if (step->act != SW_LAYING_SIDE_LAP)
          return FALSE;
        break;
      case SW_PIN_END_LAP:
        if (step->act != SW_LAYING_END_LAP)
          return FALSE;
        break;
      case SW_PIN_TOE:
        if (step->act != SW_LAYING_TOE)
          return FALSE;
        break;
      case SW_PIN_RING:
        if (step->act != SW_LAYING_COLLAR)
          return FALSE;
        break;
      case SW_PIN_EDGE:
      case SW_PIN_FIELD:
        if (step->act != SW_LAYING_PIN_FIELD)
          return FALSE;
        break;
      case SW_PIN_ROLE_COUNT:
      default:
        return FALSE;
      }
  return TRUE;
}

/* Each piece once, the upslope one before the one below it. */
static void
check_pieces (const SwLayingSequence *sequence)
{
  const SwLayout *layout = sequence->layout;
  g_autofree guint *laid = g_new0 (guint, layout->n_pieces + 1);

  for (guint i = 0; i < sequence->n_steps; i++)
    if (sequence->steps[i].act == SW_LAYING_UNROLL)
      {
        const SwPiece *piece = &layout->pieces[sequence->steps[i].piece];

        laid[sequence->steps[i].piece]++;
        g_assert_cmpuint (piece->face, ==, sequence->steps[i].face);
        g_assert_cmpuint (piece->run, ==, sequence->steps[i].run);
        g_assert_cmpuint (sequence->pieces[sequence->steps[i].piece], ==, i);
        if (piece->order > 0)
          g_assert_cmpuint (sequence->pieces[sequence->steps[i].piece - 1], ==, i - 1);
      }
  for (guint p = 0; p < layout->n_pieces; p++)
    g_assert_cmpuint (laid[p], ==, 1);
}

/* From the leeward end and from the upper tier down; infill of a nose first, of a bowl
 * last. */
static void
check_order (const SwLayingSequence *sequence, guint face)
{
  const SwFaceLayout *laid = &sequence->layout->faces[face];
  const SwRunSteps *steps = sequence->faces[face].runs;
  gboolean nose = laid->face->crest_form == SW_CREST_NOSE;

  for (guint i = 1; i < laid->n_runs; i++)
    for (guint k = 0; k < i; k++)
      {
        const SwRun *a = &laid->runs[k], *b = &laid->runs[i];
        gboolean turned = a->tier == b->tier
                          && (nose ? b->infill && !a->infill : a->infill && !b->infill);
        const SwRunSteps *first = turned ? &steps[i] : &steps[k];
        const SwRunSteps *second = turned ? &steps[k] : &steps[i];

        g_assert_cmpuint (first->last, <, second->first);
      }
}

/* A trench is open before anything is laid into it. */
static void
check_trenches (const SwLayingSequence *sequence, guint face)
{
  const SwFaceLayout *laid = &sequence->layout->faces[face];
  const SwFaceSequence *of = &sequence->faces[face];

  for (guint i = 0; i < laid->n_trenches; i++)
    {
      const SwTrench *trench = &laid->trenches[i];
      const SwTier *tier = &laid->tiers[trench->tier];

      if (tier->n_runs == 0)
        continue;
      for (guint r = tier->first_run; r < tier->first_run + tier->n_runs; r++)
        if (trench->kind == SW_TRENCH_TOE)
          g_assert_cmpuint (of->trenches[i], >, of->runs[r].last);
        else
          g_assert_cmpuint (of->trenches[i], <, of->runs[r].first);
    }
}

/* What is done with a run comes in the order of the acts, and nothing else between. */
static void
check_acts (const SwLayingSequence *sequence)
{
  for (guint i = 0; i < sequence->n_steps; i++)
    {
      const SwLayingStep *step = &sequence->steps[i];
      const SwRunSteps *run;

      g_assert_true (roles_fit (sequence, step));
      if (step->run == SW_LAYING_NONE)
        continue;
      run = &sequence->faces[step->face].runs[step->run];
      g_assert_cmpuint (i, >=, run->first);
      g_assert_cmpuint (i, <=, run->last);
      if (i > run->first)
        g_assert_cmpint (sequence->steps[i - 1].act, <=, step->act);
      check_run_pins (sequence, step);
    }
}

static void
check_all (const SwLayout *layout)
{
  g_autoptr (SwLayingSequence) sequence = sw_laying_sequence_new (layout);

  check_pieces (sequence);
  check_acts (sequence);
  for (guint f = 0; f < layout->n_faces; f++)
    {
      g_assert_cmpuint (sequence->faces[f].first_step, ==,
                        f > 0 ? sequence->faces[f - 1].end_step : 0);
      check_pins (sequence, f);
      check_order (sequence, f);
      check_trenches (sequence, f);
    }
  g_assert_cmpint (sequence->steps[sequence->n_steps - 1].act, ==, SW_LAYING_INSPECT);
}

#define RANDOM_JOBS 12

static void
test_random (gconstpointer data)
{
  OutlineKind kind = (OutlineKind) GPOINTER_TO_INT (data);
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();

  for (guint32 seed = 0; seed < RANDOM_JOBS; seed++)
    {
      g_autoptr (GRand) rand = g_rand_new_with_seed (seed);
      g_autoptr (SwJob) job = random_job (rand, kind);
      g_autoptr (SwLayout) layout = NULL;

      if (sw_layout_new (job, catalogue, &layout, NULL) == SW_OK)
        check_all (layout);
    }
}

/* Each of the shipped examples, with the shipped practices. */
static void
test_examples (void)
{
  g_autoptr (SwCatalogue) catalogue = sw_catalogue_load ();
  g_autoptr (GDir) folder = g_dir_open (EXAMPLES_DIR, 0, NULL);
  guint read = 0;

  for (const char *name = g_dir_read_name (folder); name != NULL;
       name = g_dir_read_name (folder))
    if (g_str_has_suffix (name, ".slope.json"))
      {
        g_autofree char *path = g_build_filename (EXAMPLES_DIR, name, NULL);
        g_autoptr (GFile) file = g_file_new_for_path (path);
        g_autoptr (SwJob) job = sw_job_load (file, NULL);
        g_autoptr (SwLayout) layout = fixture_lay (job, catalogue);

        check_all (layout);
        read++;
      }
  g_assert_cmpuint (read, >=, 12);
}

/* By hand: 5 runs of 2.44 m with 0.10 m lap cover 11.8 m. Two pieces each would need more
 * than 34.3 m; the plane of 2:1 and 5 m rise is 11.18 m long, so one. The fixture sows
 * nothing and has no slots. Steps: prepare, dig; per run anchor, backfill, unroll, and
 * pins of the field; from the second on those of the lap; toe; inspect.
 * 2 + 5 x 4 + 4 + 2 = 28. */
static void
test_by_hand (void)
{
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();
  g_autoptr (SwJob) job = fixture_job ();
  g_autoptr (SwLayout) layout = NULL;
  g_autoptr (SwLayingSequence) sequence = NULL;
  g_autoptr (GArray) under = g_array_new (FALSE, FALSE, sizeof (guint));
  static const SwLayingAct begin[] = {
    SW_LAYING_PREPARE, SW_LAYING_DIG_KEY,   SW_LAYING_ANCHOR,   SW_LAYING_BACKFILL,
    SW_LAYING_UNROLL,  SW_LAYING_PIN_FIELD, SW_LAYING_ANCHOR,   SW_LAYING_BACKFILL,
    SW_LAYING_UNROLL,  SW_LAYING_SIDE_LAP,  SW_LAYING_PIN_FIELD
  };

  fixture_add_plane (job, "A", 2.0, 5.0, 11.5);
  layout = fixture_lay (job, catalogue);
  sequence = sw_laying_sequence_new (layout);
  g_assert_cmpuint (layout->faces[0].n_runs, ==, 5);
  g_assert_cmpuint (sequence->n_steps, ==, 28);
  for (guint i = 0; i < G_N_ELEMENTS (begin); i++)
    g_assert_cmpint (sequence->steps[i].act, ==, begin[i]);
  g_assert_cmpint (sequence->steps[26].act, ==, SW_LAYING_TOE);
  g_assert_cmpint (sequence->steps[27].act, ==, SW_LAYING_INSPECT);
  sw_laying_runs_under (sequence, 0, 3, under);
  g_assert_cmpuint (under->len, ==, 1);
  g_assert_cmpuint (g_array_index (under, guint, 0), ==, 2);
  check_all (layout);
}

/* From run to run and back: 2 steps before the runs, 4 of the first, 5 of each other. */
static void
test_between_runs (void)
{
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();
  g_autoptr (SwJob) job = fixture_job ();
  g_autoptr (SwLayout) layout = NULL;
  g_autoptr (SwLayingSequence) sequence = NULL;

  fixture_add_plane (job, "A", 2.0, 5.0, 11.5);
  layout = fixture_lay (job, catalogue);
  sequence = sw_laying_sequence_new (layout);
  g_assert_cmpuint (sw_laying_run_after (sequence, 0), ==, 2);
  g_assert_cmpuint (sw_laying_run_after (sequence, 2), ==, 6);
  g_assert_cmpuint (sw_laying_run_after (sequence, 7), ==, 11);
  g_assert_cmpuint (sw_laying_run_after (sequence, 26), ==, 27);
  g_assert_cmpuint (sw_laying_run_after (sequence, 27), ==, 27);
  g_assert_cmpuint (sw_laying_run_before (sequence, 8), ==, 6);
  g_assert_cmpuint (sw_laying_run_before (sequence, 6), ==, 2);
  g_assert_cmpuint (sw_laying_run_before (sequence, 2), ==, 0);
  g_assert_cmpuint (sw_laying_run_before (sequence, 0), ==, 0);
}

static void
test_leeward_right (void)
{
  g_autoptr (SwCatalogue) catalogue = fixture_catalogue ();
  g_autoptr (SwJob) job = fixture_job ();
  g_autoptr (SwLayout) layout = NULL;
  g_autoptr (SwLayingSequence) sequence = NULL;
  const SwRun *runs;

  fixture_add_plane (job, "A", 2.0, 5.0, 11.5)->leeward = SW_SIDE_RIGHT;
  layout = fixture_lay (job, catalogue);
  sequence = sw_laying_sequence_new (layout);
  runs = layout->faces[0].runs;
  for (guint i = 1; i < sequence->n_steps; i++)
    if (sequence->steps[i].run != SW_LAYING_NONE
        && sequence->steps[i - 1].run != SW_LAYING_NONE
        && sequence->steps[i].run != sequence->steps[i - 1].run)
      g_assert_cmpfloat (runs[sequence->steps[i].run].along_from_m, <,
                         runs[sequence->steps[i - 1].run].along_from_m);
  check_all (layout);
}

int
main (int argc, char *argv[])
{
  static const char *const kinds[OUTLINE_KIND_COUNT] = {
    "rectangle",     "trapezoid",       "triangle", "l",
    "u-open-at-toe", "u-open-at-crest", "c",        "skew"
  };

  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/layout/laying-sequence/by-hand", test_by_hand);
  g_test_add_func ("/layout/laying-sequence/between-runs", test_between_runs);
  g_test_add_func ("/layout/laying-sequence/leeward-right", test_leeward_right);
  g_test_add_func ("/layout/laying-sequence/examples", test_examples);
  for (int kind = 0; kind < OUTLINE_KIND_COUNT; kind++)
    {
      g_autofree char *path =
          g_strdup_printf ("/layout/laying-sequence/random/%s", kinds[kind]);

      g_test_add_data_func (path, GINT_TO_POINTER (kind), test_random);
    }
  return g_test_run ();
}
