/* SPDX-License-Identifier: MIT */
#include "form-fields.h"

#include <glib/gi18n.h>

#include <slopewright/judge/sowing-window.h>

#include "crest-edit.h"
#include "form-choices.h"

#define TEXT_OF(field, name, words)                                                      \
  {                                                                                      \
    .kind = SW_FIELD_TEXT, .label = name, .step = words,                                 \
    .offset = G_STRUCT_OFFSET (SwJob, field)                                             \
  }
#define HEADING(words, target)                                                           \
  {                                                                                      \
    .kind = SW_FIELD_HEADING, .label = words, .help = target                             \
  }
#define CHOICE(name, words, prefix)                                                      \
  {                                                                                      \
    .kind = SW_FIELD_CHOICE, .label = name, .step = words,                               \
    .names = sw_choice_##prefix##_names, .get = sw_choice_##prefix##_get,                \
    .set = sw_choice_##prefix##_set                                                      \
  }
/* The form reads and writes an enumeration as a guint. */
G_STATIC_ASSERT (sizeof (SwAnswer) == sizeof (guint));
#define ENUM(field, name, words, prefix)                                                 \
  {                                                                                      \
    .kind = SW_FIELD_ENUM, .label = name, .step = words,                                 \
    .names = sw_choice_##prefix##_names, .offset = G_STRUCT_OFFSET (SwJob, field)        \
  }
#define FACE_ENUM(field, name, words, prefix)                                            \
  {                                                                                      \
    .kind = SW_FIELD_ENUM, .label = name, .step = words, .of_face = TRUE,                \
    .names = sw_choice_##prefix##_names, .offset = G_STRUCT_OFFSET (SwFace, field)       \
  }
#define FACE_VALUE(field, name, words, of_unit, from, to)                                \
  {                                                                                      \
    .kind = SW_FIELD_VALUE, .label = name, .step = words, .of_face = TRUE,               \
    .offset = G_STRUCT_OFFSET (SwFace, field), .unit = of_unit, .least = from,           \
    .most = to                                                                           \
  }
#define VALUE(field, name, words, of_unit, from, to)                                     \
  {                                                                                      \
    .kind = SW_FIELD_VALUE, .label = name, .step = words,                                \
    .offset = G_STRUCT_OFFSET (SwJob, field), .unit = of_unit, .least = from, .most = to \
  }

static gboolean
crest_is_round (const SwJob *job, const SwFace *face)
{
  return face->crest_form != SW_CREST_STRAIGHT;
}

const SwField sw_face_fields[] = {
  { .kind = SW_FIELD_TEXT,
    .label = N_ ("Name"),
    .step = N_ ("Rename Face"),
    .of_face = TRUE,
    .offset = G_STRUCT_OFFSET (SwFace, name) },
  CHOICE (N_ ("Soil"), N_ ("Change Soil"), soil),
  { .kind = SW_FIELD_SWITCH,
    .label = N_ ("Loose ground"),
    .step = N_ ("Change Soil State"),
    .of_face = TRUE,
    .offset = G_STRUCT_OFFSET (SwFace, loose) },
  FACE_VALUE (topsoil_m, N_ ("Loose topsoil"), N_ ("Change Topsoil"), SW_UNIT_SMALL_M,
              0.0, 2.0),
  FACE_ENUM (leeward, N_ ("Leeward end"), N_ ("Change Leeward End"), leeward),
  FACE_ENUM (bench, N_ ("At benches"), N_ ("Change Bench Rule"), bench),
  CHOICE (N_ ("Crest line"), N_ ("Change Crest Line"), crest),
  { .kind = SW_FIELD_VALUE,
    .label = N_ ("Crest radius"),
    .step = N_ ("Change Crest Radius"),
    .of_face = TRUE,
    .offset = G_STRUCT_OFFSET (SwFace, crest_radius_m),
    .unit = SW_UNIT_M,
    .least = 0.1,
    .most = 10000.0,
    .put = sw_crest_set_radius,
    .applies = crest_is_round },
  { .kind = SW_FIELD_ENUM,
    .label = N_ ("Round crest laid in"),
    .step = N_ ("Change Fan"),
    .of_face = TRUE,
    .offset = G_STRUCT_OFFSET (SwFace, fan),
    .names = sw_choice_fan_names,
    .applies = crest_is_round },
  FACE_ENUM (obtained, N_ ("Shape obtained"), N_ ("Change How Obtained"), obtained),
  FACE_VALUE (length_error_m, N_ ("Length error ±"), N_ ("Change Length Error"),
              SW_UNIT_M, 0.0, 10.0),
  FACE_VALUE (angle_error_rad, N_ ("Angle error ±"), N_ ("Change Angle Error"),
              SW_UNIT_ANGLE, 0.0, G_PI / 9.0),
  { .kind = SW_FIELD_END },
};

static gboolean
has_narrow_roll (const SwJob *job, const SwFace *face)
{
  return job->narrow_width_m > 0.0;
}

const SwField sw_blanket_fields[] = {
  CHOICE (N_ ("Blanket"), N_ ("Change Blanket"), blanket),
  CHOICE (N_ ("Roll"), N_ ("Change Roll"), roll),
  VALUE (roll_width_m, N_ ("Roll width"), N_ ("Change Roll Width"), SW_UNIT_M, 0.2, 20.0),
  VALUE (roll_length_m, N_ ("Roll length"), N_ ("Change Roll Length"), SW_UNIT_M, 1.0,
         1000.0),
  VALUE (roll_core_m, N_ ("Core diameter"), N_ ("Change Core"), SW_UNIT_SMALL_M, 0.0,
         0.5),
  CHOICE (N_ ("Surplus width"), N_ ("Change Surplus"), surplus),
  VALUE (narrow_width_m, N_ ("Narrow roll width"), N_ ("Change Narrow Roll"), SW_UNIT_M,
         0.0, 20.0),
  { .kind = SW_FIELD_VALUE,
    .label = N_ ("Narrow roll length"),
    .step = N_ ("Change Narrow Roll"),
    .offset = G_STRUCT_OFFSET (SwJob, narrow_length_m),
    .unit = SW_UNIT_M,
    .least = 0.0,
    .most = 1000.0,
    .applies = has_narrow_roll },
  ENUM (joints, N_ ("End laps"), N_ ("Change End Laps"), joints),
  CHOICE (N_ ("Pin"), N_ ("Change Pin"), pin),
  { .kind = SW_FIELD_END },
};

/* As VALUE, where an empty field means that the data sheet is silent. */
#define STATED(field, name, words, of_unit, from, to)                                    \
  {                                                                                      \
    .kind = SW_FIELD_VALUE, .label = name, .step = words,                                \
    .offset = G_STRUCT_OFFSET (SwJob, field), .unit = of_unit, .least = from,            \
    .most = to, .optional = TRUE                                                         \
  }

const SwField sw_product_fields[] = {
  HEADING (N_ ("Product Data Sheet"), "blanket#data-sheet"),
  TEXT_OF (product.name, N_ ("Product"), N_ ("Change Product")),
  TEXT_OF (product.source, N_ ("Read in"), N_ ("Change Product")),
  STATED (product.max_hv, N_ ("Steepest gradient"), N_ ("Change Product"), SW_UNIT_HV,
          0.05, SW_PRODUCT_HV_MOST),
  STATED (product.life_months, N_ ("Functional life"), N_ ("Change Product"),
          SW_UNIT_MONTH, 0.25, SW_PRODUCT_LIFE_MOST),
  STATED (product.shear_pa, N_ ("Permissible shear"), N_ ("Change Product"), SW_UNIT_PA,
          0.1, SW_PRODUCT_SHEAR_MOST),
  ENUM (product.net, N_ ("Netting"), N_ ("Change Product"), net),
  STATED (blanket_mass_kg_per_m2, N_ ("Mass, dry"), N_ ("Change Product"),
          SW_UNIT_KG_PER_M2, 0.001, 20.0),
  STATED (blanket_thickness_m, N_ ("Thickness"), N_ ("Change Product"), SW_UNIT_SMALL_M,
          0.0001, 0.2),
  STATED (numbers.values[SW_NUMBER_COVER], N_ ("Cover factor C"), N_ ("Change Product"),
          SW_UNIT_FACTOR, 0.0001, 1.0),
  TEXT_OF (product.cover_test, N_ ("C by the test"), N_ ("Change Product")),
  { .kind = SW_FIELD_END },
};

const SwField sw_seed_fields[] = {
  HEADING (N_ ("Seed"), "seed"),
  TEXT_OF (seed.name, N_ ("Mix"), N_ ("Change Seed Mix")),
  { .kind = SW_FIELD_END },
};

#define QUESTION(key, question)                                                          \
  {                                                                                      \
    .kind = SW_FIELD_ENUM, .label_id = "site." key, .step = N_ ("Answer Question"),      \
    .names = sw_choice_answer_names, .offset = G_STRUCT_OFFSET (SwJob, site[question])   \
  }

const SwField sw_site_fields[] = {
  QUESTION ("seepage", SW_SITE_SEEPAGE),
  QUESTION ("channel_flow", SW_SITE_CHANNEL_FLOW),
  QUESTION ("run_on", SW_SITE_RUN_ON),
  QUESTION ("water_at_toe", SW_SITE_WATER_AT_TOE),
  QUESTION ("traffic", SW_SITE_TRAFFIC),
  QUESTION ("utilities_marked", SW_SITE_UTILITIES_MARKED),
  QUESTION ("wildlife", SW_SITE_WILDLIFE),
  QUESTION ("liner", SW_SITE_LINER),
  QUESTION ("lone_work", SW_SITE_LONE_WORK),
  QUESTION ("hot_weather", SW_SITE_HOT_WEATHER),
  QUESTION ("wind_exposed", SW_SITE_WIND_EXPOSED),
  QUESTION ("ignition", SW_SITE_IGNITION),
  QUESTION ("late_sowing", SW_SITE_LATE_SOWING),
  QUESTION ("machines", SW_SITE_MACHINES),
  QUESTION ("overhead_lines", SW_SITE_OVERHEAD_LINES),
  QUESTION ("ropes", SW_SITE_ROPES),
  QUESTION ("chemicals", SW_SITE_CHEMICALS),
  QUESTION ("cold_weather", SW_SITE_COLD_WEATHER),
  QUESTION ("remote", SW_SITE_REMOTE),
  QUESTION ("public", SW_SITE_PUBLIC),
  { .kind = SW_FIELD_END },
};

#define SITE_NUMBER(key, number)                                                         \
  {                                                                                      \
    .kind = SW_FIELD_SITE_NUMBER, .label_id = "number." key,                             \
    .step = N_ ("Change Site Number"), .which = number                                   \
  }
#define SITE_ENUM(key, field, prefix)                                                    \
  {                                                                                      \
    .kind = SW_FIELD_ENUM, .label_id = "number." key, .step = N_ ("Change Site Number"), \
    .names = sw_choice_##prefix##_names,                                                 \
    .offset = G_STRUCT_OFFSET (SwJob, numbers.field)                                     \
  }

/* What a file would refuse must not get into the job. */
static const char *
month_day_problem (const char *text)
{
  int month, day;

  if (*text == '\0' || sw_month_day_parse (text, &month, &day))
    return NULL;
  return N_ ("Type a day of the year as month and day, such as 09-01.");
}

#define MONTH_DAY(field, name)                                                           \
  {                                                                                      \
    .kind = SW_FIELD_TEXT, .label = name, .step = N_ ("Change Sowing Window"),           \
    .offset = G_STRUCT_OFFSET (SwJob, card.field), .problem = month_day_problem          \
  }

const SwField sw_site_number_fields[] = {
  HEADING (N_ ("Soil Loss"), "water#soil-loss"),
  SITE_ENUM ("loss_units", loss_units, loss_units),
  SITE_NUMBER ("erosivity", SW_NUMBER_EROSIVITY),
  SITE_NUMBER ("erosivity_share", SW_NUMBER_EROSIVITY_SHARE),
  SITE_NUMBER ("erodibility", SW_NUMBER_ERODIBILITY),
  SITE_ENUM ("rill_ratio", rills, rills),
  SITE_ENUM ("bench_drained", bench_drained, answer),
  HEADING (N_ ("Water"), "water#sheet-flow"),
  SITE_NUMBER ("rain_mm_per_h", SW_NUMBER_RAIN),
  SITE_NUMBER ("run_on_m", SW_NUMBER_RUN_ON_M),
  SITE_NUMBER ("roughness_n", SW_NUMBER_ROUGHNESS),
  HEADING (N_ ("Plants"), "seed#plants"),
  SITE_NUMBER ("grow_months", SW_NUMBER_GROW_MONTHS),
  SITE_ENUM ("mown", mown, answer),
  HEADING (N_ ("Shallow Slides"), "water#slides"),
  SITE_NUMBER ("slide_depth_m", SW_NUMBER_SLIDE_DEPTH_M),
  SITE_NUMBER ("friction_deg", SW_NUMBER_FRICTION_RAD),
  SITE_NUMBER ("cohesion_pa", SW_NUMBER_COHESION_PA),
  SITE_NUMBER ("soil_weight_n_per_m3", SW_NUMBER_SOIL_WEIGHT),
  HEADING (N_ ("Handling"), "rolls#handling"),
  SITE_NUMBER ("wet_ratio", SW_NUMBER_WET_RATIO),
  SITE_NUMBER ("lift_from_m", SW_NUMBER_LIFT_FROM_M),
  SITE_NUMBER ("lift_to_m", SW_NUMBER_LIFT_TO_M),
  SITE_NUMBER ("lift_reach_m", SW_NUMBER_LIFT_REACH_M),
  HEADING (N_ ("Footing"), "findings#footing"),
  SITE_NUMBER ("fall_plan_deg", SW_NUMBER_FALL_PLAN_RAD),
  HEADING (N_ ("Weather"), "findings#weather"),
  SITE_NUMBER ("wind_limit_m_per_s", SW_NUMBER_WIND_LIMIT),
  SITE_NUMBER ("rain_stop_m", SW_NUMBER_RAIN_STOP_M),
  SITE_NUMBER ("temperature_least_k", SW_NUMBER_TEMPERATURE_LEAST),
  MONTH_DAY (sow_from, N_ ("Sow from (MM-DD)")),
  MONTH_DAY (sow_to, N_ ("Sow until (MM-DD)")),
  { .kind = SW_FIELD_END },
};

#define CARD(field, name) TEXT_OF (card.field, name, N_ ("Change Job Card"))

const SwField sw_job_fields[] = {
  CARD (name, N_ ("Job name")),
  CARD (number, N_ ("Number")),
  CARD (revision, N_ ("Revision")),
  CARD (date, N_ ("Date")),
  CARD (prepared_by, N_ ("Prepared by")),
  CARD (checked_by, N_ ("Checked by")),
  CARD (client, N_ ("Client")),
  CARD (place, N_ ("Place")),
  CARD (permit, N_ ("Permit")),
  CARD (authority, N_ ("Authority")),
  CARD (utility_ticket, N_ ("Utility ticket")),
  CARD (supervisor, N_ ("Supervisor")),
  CARD (emergency, N_ ("Emergency")),
  CARD (muster, N_ ("Muster point")),
  CARD (install_date, N_ ("Installed on (YYYY-MM-DD)")),
  CARD (notes, N_ ("Notes")),
  { .kind = SW_FIELD_END },
};

static gboolean
is_permit (const SwJob *job, const SwFace *face)
{
  return job->pack.kind == SW_PACK_PERMIT;
}

static gboolean
has_inspection_report (const SwJob *job, const SwFace *face)
{
  return job->pack.kind == SW_PACK_CREW || job->pack.kind == SW_PACK_PERMIT;
}

static gboolean
is_class (const SwJob *job, const SwFace *face)
{
  return job->pack.kind == SW_PACK_CLASS || job->pack.kind == SW_PACK_CLASS_KEY;
}

#define PACK_TEXT(key, text, when)                                                       \
  {                                                                                      \
    .kind = SW_FIELD_TEXT, .label_id = "permit.label." key,                              \
    .step = N_ ("Change Document"), .offset = G_STRUCT_OFFSET (SwJob, pack.texts[text]), \
    .applies = when                                                                      \
  }

/* Asked for among the job's fields, and beside the pages. */
#define PRINT_AS ENUM (pack.kind, N_ ("Print as"), N_ ("Change Document"), kind)
#define UNITS ENUM (units, N_ ("Units"), N_ ("Change Units"), units)
#define PAPER ENUM (paper, N_ ("Paper"), N_ ("Change Paper"), paper)
#define LANGUAGE CHOICE (N_ ("Language of the pack"), N_ ("Change Language"), language)

const SwField sw_pack_fields[] = {
  HEADING (N_ ("Document"), "packs#kinds"),
  PRINT_AS,
  PACK_TEXT ("certification", SW_PACK_TEXT_CERTIFICATION, has_inspection_report),
  { .kind = SW_FIELD_HEADING,
    .label = N_ ("Permit Guidance (lists: one item after the other, with ;)"),
    .help = "packs#permit",
    .applies = is_permit },
  PACK_TEXT ("office", SW_PACK_TEXT_OFFICE, is_permit),
  PACK_TEXT ("edition", SW_PACK_TEXT_EDITION, is_permit),
  PACK_TEXT ("basis", SW_PACK_TEXT_BASIS, is_permit),
  PACK_TEXT ("contact", SW_PACK_TEXT_CONTACT, is_permit),
  PACK_TEXT ("conditions", SW_PACK_TEXT_CONDITIONS, is_permit),
  PACK_TEXT ("submittals", SW_PACK_TEXT_SUBMITTALS, is_permit),
  PACK_TEXT ("notice", SW_PACK_TEXT_NOTICE, is_permit),
  PACK_TEXT ("deadlines", SW_PACK_TEXT_DEADLINES, is_permit),
  PACK_TEXT ("records", SW_PACK_TEXT_RECORDS, is_permit),
  PACK_TEXT ("enforcement", SW_PACK_TEXT_ENFORCEMENT, is_permit),
  PACK_TEXT ("closing", SW_PACK_TEXT_CLOSING, is_permit),
  { .kind = SW_FIELD_HEADING,
    .label = N_ ("Class Handout"),
    .help = "packs#class",
    .applies = is_class },
  { .kind = SW_FIELD_CHOICE,
    .label = N_ ("Exercises"),
    .step = N_ ("Change Exercises"),
    .names = sw_choice_seed_names,
    .get = sw_choice_seed_get,
    .set = sw_choice_seed_set,
    .applies = is_class },
  PACK_TEXT ("course", SW_PACK_TEXT_COURSE, is_class),
  PACK_TEXT ("level", SW_PACK_TEXT_LEVEL, is_class),
  PACK_TEXT ("trainer", SW_PACK_TEXT_TRAINER, is_class),
  { .kind = SW_FIELD_END },
};

const SwField sw_paper_fields[] = {
  HEADING (N_ ("Units and Paper"), "packs#paper"),
  UNITS,
  PAPER,
  LANGUAGE,
  { .kind = SW_FIELD_END },
};

const SwField sw_document_fields[] = {
  PRINT_AS, LANGUAGE, PAPER, UNITS, { .kind = SW_FIELD_END },
};
