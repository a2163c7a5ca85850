/* SPDX-License-Identifier: MIT */
#include "findings-private.h"
#include "laying-facts.h"

/* Which length of the job a hazard goes on along, or how deep it is reached. */
typedef enum
{
  PLACE_NONE,
  PLACE_CREST,
  PLACE_TOE,
  PLACE_DEPTH
} Place;

/* Answers of the site visit that stop or shape the work. */
static const struct
{
  SwSiteQuestion question;
  SwAnswer when;
  SwSeverity severity;
  const char *code, *failure;
  Place place;
} rules[] = {
  { SW_SITE_SEEPAGE, SW_ANSWER_YES, SW_SEVERITY_STOP, "seepage", "F15", PLACE_NONE },
  { SW_SITE_SEEPAGE, SW_ANSWER_UNKNOWN, SW_SEVERITY_CAUTION, "seepage-unknown", "F15",
    PLACE_NONE },
  { SW_SITE_CHANNEL_FLOW, SW_ANSWER_YES, SW_SEVERITY_STOP, "channel-flow", "F14",
    PLACE_NONE },
  { SW_SITE_CHANNEL_FLOW, SW_ANSWER_UNKNOWN, SW_SEVERITY_CAUTION, "channel-flow-unknown",
    "F14", PLACE_NONE },
  { SW_SITE_UTILITIES_MARKED, SW_ANSWER_NO, SW_SEVERITY_STOP, "utilities", "",
    PLACE_DEPTH },
  { SW_SITE_UTILITIES_MARKED, SW_ANSWER_UNKNOWN, SW_SEVERITY_CAUTION, "utilities-unknown",
    "", PLACE_DEPTH },
  { SW_SITE_RUN_ON, SW_ANSWER_YES, SW_SEVERITY_CAUTION, "run-on", "F1", PLACE_CREST },
  { SW_SITE_WATER_AT_TOE, SW_ANSWER_YES, SW_SEVERITY_CAUTION, "water-at-toe", "F4",
    PLACE_TOE },
  { SW_SITE_LINER, SW_ANSWER_YES, SW_SEVERITY_STOP, "liner", "", PLACE_DEPTH },
  { SW_SITE_WILDLIFE, SW_ANSWER_YES, SW_SEVERITY_CAUTION, "wildlife", "F12", PLACE_NONE },
  { SW_SITE_TRAFFIC, SW_ANSWER_YES, SW_SEVERITY_CAUTION, "traffic", "", PLACE_NONE },
  { SW_SITE_LONE_WORK, SW_ANSWER_YES, SW_SEVERITY_CAUTION, "lone-work", "", PLACE_NONE },
  { SW_SITE_HOT_WEATHER, SW_ANSWER_YES, SW_SEVERITY_CAUTION, "heat", "", PLACE_NONE },
  { SW_SITE_OVERHEAD_LINES, SW_ANSWER_YES, SW_SEVERITY_CAUTION, "overhead-lines", "",
    PLACE_NONE },
  { SW_SITE_ROPES, SW_ANSWER_YES, SW_SEVERITY_CAUTION, "ropes", "", PLACE_NONE },
  { SW_SITE_CHEMICALS, SW_ANSWER_YES, SW_SEVERITY_CAUTION, "chemicals", "", PLACE_NONE },
  { SW_SITE_COLD_WEATHER, SW_ANSWER_YES, SW_SEVERITY_CAUTION, "cold", "", PLACE_NONE },
  { SW_SITE_REMOTE, SW_ANSWER_YES, SW_SEVERITY_CAUTION, "remote", "", PLACE_NONE },
  { SW_SITE_PUBLIC, SW_ANSWER_YES, SW_SEVERITY_CAUTION, "public", "F18", PLACE_NONE },
};

static double
line_m (const SwLayout *layout, SwTrenchKind kind)
{
  double length_m = 0.0;

  for (guint f = 0; f < layout->n_faces; f++)
    {
      const SwFaceLayout *face = &layout->faces[f];
      guint tier = kind == SW_TRENCH_KEY ? 0 : face->n_tiers - 1;

      for (guint i = 0; i < face->n_trenches; i++)
        if (face->trenches[i].kind == kind && face->trenches[i].tier == tier
            && !face->trenches[i].obstacle)
          length_m += face->trenches[i].length_m;
    }
  return length_m;
}

static void
add_depth (SwFinding *finding, const SwLayout *layout)
{
  double pin_m = 0.0;

  for (guint f = 0; f < layout->n_faces; f++)
    for (guint i = 0; i < layout->faces[f].n_pin_lengths; i++)
      {
        const SwPinLength *length = &layout->faces[f].pin_lengths[i];

        pin_m = MAX (pin_m, length->pin != NULL ? length->pin->length_m : length->need_m);
      }
  sw_finding_number (finding, "trench", sw_deepest_trench_m (layout), SW_UNIT_SMALL_M);
  sw_finding_number (finding, "pin", pin_m, SW_UNIT_SMALL_M);
}

static void
add_place (SwFinding *finding, const SwLayout *layout, Place place)
{
  if (place == PLACE_CREST)
    sw_finding_number (finding, "crest", line_m (layout, SW_TRENCH_KEY), SW_UNIT_M);
  else if (place == PLACE_TOE)
    sw_finding_number (finding, "toe", line_m (layout, SW_TRENCH_TOE), SW_UNIT_M);
  else if (place == PLACE_DEPTH)
    add_depth (finding, layout);
}

void
sw_judge_site (GPtrArray *findings, const SwLayout *layout)
{
  for (guint i = 0; i < G_N_ELEMENTS (rules); i++)
    if (layout->job->site[rules[i].question] == rules[i].when)
      add_place (sw_finding_add (findings, rules[i].severity, rules[i].code,
                                 rules[i].failure, -1, -1),
                 layout, rules[i].place);
}
