/* SPDX-License-Identifier: MIT */
#include <math.h>
#include <slopewright/base/gradient.h>
#include <slopewright/judge/choice.h>
#include <slopewright/judge/face-flow.h>

/* Ratios are compared with so much slack, as class tables print them. */
#define RATIO_TOLERANCE 1e-3

const char *
sw_choice_code (SwChoiceAspect aspect)
{
  static const char *const codes[SW_CHOICE_COUNT] = { "gradient", "life", "shear",
                                                      "animals", "mowing" };

  return codes[aspect];
}

/* What the job asks of a blanket; NaN where it does not say. */
typedef struct
{
  double hv, months, shear_pa;
  gboolean animals, mowing;
} Needs;

static double
steepest_hv (const SwLayout *layout)
{
  double hv = INFINITY;

  for (guint f = 0; f < layout->n_faces; f++)
    for (guint t = 0; t < layout->faces[f].n_tiers; t++)
      hv = fmin (hv, sw_gradient_hv (layout->faces[f].tiers[t].steepest_rad));
  return hv;
}

static double
largest_shear_pa (const SwLayout *layout)
{
  double shear_pa = NAN;

  for (guint f = 0; f < layout->n_faces; f++)
    {
      SwFaceFlow flow;

      if (sw_face_flow (layout, f, &flow))
        shear_pa = fmax (shear_pa, flow.flow.shear_pa);
    }
  return shear_pa;
}

static Needs
needs_of (const SwLayout *layout)
{
  double months = layout->job->numbers.values[SW_NUMBER_GROW_MONTHS];

  return (Needs){
    .hv = steepest_hv (layout),
    .months = months > 0.0 ? months : NAN,
    .shear_pa = largest_shear_pa (layout),
    .animals = layout->job->site[SW_SITE_WILDLIFE] == SW_ANSWER_YES,
    .mowing = layout->job->numbers.mown == SW_ANSWER_YES,
  };
}

/* A permanent mat has INFINITY months, and meets; a need that is NaN is not asked for. */
static SwChoiceTest
number_test (const SwSourced *has, double need, SwUnit unit, gboolean enough)
{
  return (SwChoiceTest){ .answer = isnan (need) ? SW_CHOICE_NOT_ASKED
                                   : enough     ? SW_CHOICE_MEETS
                                                : SW_CHOICE_FAILS,
                         .has = has->value,
                         .need = need,
                         .unit = unit,
                         .evidence = has->evidence };
}

static SwChoiceTest
netting_test (const SwBlanket *blanket, gboolean asked)
{
  return (SwChoiceTest){ .answer = !asked                       ? SW_CHOICE_NOT_ASKED
                                   : blanket->net_plastic_usual ? SW_CHOICE_FAILS
                                                                : SW_CHOICE_MEETS,
                         .has = blanket->net_plastic_usual ? 1.0 : 0.0,
                         .unit = SW_UNIT_COUNT,
                         .evidence = SW_EVIDENCE_COMMON_PRACTICE };
}

static gboolean
meets_all (const SwChoice *choice)
{
  for (int i = 0; i < SW_CHOICE_COUNT; i++)
    if (choice->tests[i].answer == SW_CHOICE_FAILS
        || choice->tests[i].answer == SW_CHOICE_NOT_STATED)
      return FALSE;
  return TRUE;
}

static SwChoice
choice_of (const SwBlanket *blanket, const Needs *needs)
{
  SwChoice choice = { .blanket = blanket };

  choice.tests[SW_CHOICE_GRADIENT] =
      number_test (&blanket->max_hv, needs->hv, SW_UNIT_HV,
                   blanket->max_hv.value <= needs->hv + RATIO_TOLERANCE);
  choice.tests[SW_CHOICE_LIFE] =
      number_test (&blanket->life_months, needs->months, SW_UNIT_MONTH,
                   blanket->life_months.value >= needs->months);
  choice.tests[SW_CHOICE_SHEAR] =
      number_test (&blanket->shear_pa, needs->shear_pa, SW_UNIT_PA,
                   blanket->shear_pa.value >= needs->shear_pa);
  choice.tests[SW_CHOICE_ANIMALS] = netting_test (blanket, needs->animals);
  choice.tests[SW_CHOICE_MOWING] = netting_test (blanket, needs->mowing);
  choice.meets = meets_all (&choice);
  return choice;
}

static void
mark_silent (SwChoice *choice, SwChoiceAspect aspect, gboolean stated)
{
  if (!stated && choice->tests[aspect].answer != SW_CHOICE_NOT_ASKED)
    choice->tests[aspect].answer = SW_CHOICE_NOT_STATED;
}

/* A class's figure is no test of the product that claims it. */
static SwChoice
choice_of_product (const SwLayout *layout, const Needs *needs)
{
  const SwProduct *product = &layout->job->product;
  SwChoice choice = choice_of (layout->blanket, needs);
  gboolean net = product->net != SW_NET_NOT_STATED;

  choice.product = product;
  mark_silent (&choice, SW_CHOICE_GRADIENT, product->max_hv > 0.0);
  mark_silent (&choice, SW_CHOICE_LIFE, product->life_months > 0.0);
  mark_silent (&choice, SW_CHOICE_SHEAR, product->shear_pa > 0.0);
  mark_silent (&choice, SW_CHOICE_ANIMALS, net);
  mark_silent (&choice, SW_CHOICE_MOWING, net);
  for (int i = SW_CHOICE_ANIMALS; net && i < SW_CHOICE_COUNT; i++)
    choice.tests[i].evidence = SW_EVIDENCE_USER;
  choice.meets = meets_all (&choice);
  return choice;
}

GArray *
sw_choices_new (const SwLayout *layout)
{
  const GPtrArray *blankets = layout->catalogue->blankets;
  GArray *choices = g_array_new (FALSE, FALSE, sizeof (SwChoice));
  Needs needs = needs_of (layout);

  if (sw_product_given (&layout->job->product))
    {
      SwChoice product = choice_of_product (layout, &needs);

      g_array_append_val (choices, product);
    }
  for (guint i = 0; i < blankets->len; i++)
    {
      SwChoice choice = choice_of (g_ptr_array_index (blankets, i), &needs);

      choice.chosen = g_str_equal (choice.blanket->id, layout->blanket->id);
      g_array_append_val (choices, choice);
    }
  return choices;
}
