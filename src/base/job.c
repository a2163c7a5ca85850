/* SPDX-License-Identifier: MIT */
#include <slopewright/base/job.h>

#include <math.h>
#include <string.h>

static const char *const obtained_codes[SW_OBTAINED_COUNT] = {
  [SW_OBTAINED_TAPED_ANGLE] = "taped-angle",
  [SW_OBTAINED_RISE_RATIO] = "rise-ratio",
  [SW_OBTAINED_RUN_RISE] = "run-rise",
  [SW_OBTAINED_TAPED_SHAPE] = "taped-shape",
  [SW_OBTAINED_DRAWN] = "drawn",
  [SW_OBTAINED_IMPORTED] = "imported",
};

const char *const sw_site_question_keys[SW_SITE_QUESTION_COUNT] = {
  [SW_SITE_SEEPAGE] = "seepage",
  [SW_SITE_CHANNEL_FLOW] = "channel_flow",
  [SW_SITE_RUN_ON] = "run_on",
  [SW_SITE_WATER_AT_TOE] = "water_at_toe",
  [SW_SITE_TRAFFIC] = "traffic",
  [SW_SITE_UTILITIES_MARKED] = "utilities_marked",
  [SW_SITE_WILDLIFE] = "wildlife",
  [SW_SITE_LINER] = "liner",
  [SW_SITE_LONE_WORK] = "lone_work",
  [SW_SITE_HOT_WEATHER] = "hot_weather",
  [SW_SITE_WIND_EXPOSED] = "wind_exposed",
  [SW_SITE_IGNITION] = "ignition",
  [SW_SITE_LATE_SOWING] = "late_sowing",
  [SW_SITE_MACHINES] = "machines",
  [SW_SITE_OVERHEAD_LINES] = "overhead_lines",
  [SW_SITE_ROPES] = "ropes",
  [SW_SITE_CHEMICALS] = "chemicals",
  [SW_SITE_COLD_WEATHER] = "cold_weather",
  [SW_SITE_REMOTE] = "remote",
  [SW_SITE_PUBLIC] = "public",
};

/* Every text of a job, so that new, copy, equal and free cannot forget one. */
static const gsize text_offsets[] = {
  G_STRUCT_OFFSET (SwJob, card.name),
  G_STRUCT_OFFSET (SwJob, card.number),
  G_STRUCT_OFFSET (SwJob, card.revision),
  G_STRUCT_OFFSET (SwJob, card.date),
  G_STRUCT_OFFSET (SwJob, card.prepared_by),
  G_STRUCT_OFFSET (SwJob, card.checked_by),
  G_STRUCT_OFFSET (SwJob, card.client),
  G_STRUCT_OFFSET (SwJob, card.place),
  G_STRUCT_OFFSET (SwJob, card.permit),
  G_STRUCT_OFFSET (SwJob, card.authority),
  G_STRUCT_OFFSET (SwJob, card.utility_ticket),
  G_STRUCT_OFFSET (SwJob, card.supervisor),
  G_STRUCT_OFFSET (SwJob, card.emergency),
  G_STRUCT_OFFSET (SwJob, card.muster),
  G_STRUCT_OFFSET (SwJob, card.notes),
  G_STRUCT_OFFSET (SwJob, card.install_date),
  G_STRUCT_OFFSET (SwJob, card.sow_from),
  G_STRUCT_OFFSET (SwJob, card.sow_to),
  G_STRUCT_OFFSET (SwJob, language),
  G_STRUCT_OFFSET (SwJob, practice_id),
  G_STRUCT_OFFSET (SwJob, own.name),
  G_STRUCT_OFFSET (SwJob, own.source),
  G_STRUCT_OFFSET (SwJob, blanket_id),
  G_STRUCT_OFFSET (SwJob, product.name),
  G_STRUCT_OFFSET (SwJob, product.source),
  G_STRUCT_OFFSET (SwJob, product.cover_test),
  G_STRUCT_OFFSET (SwJob, pin_id),
  G_STRUCT_OFFSET (SwJob, seed.name),
  G_STRUCT_OFFSET (SwJob, plan.fertiliser),
  G_STRUCT_OFFSET (SwJob, plan.currency),
  G_STRUCT_OFFSET (SwJob, pack.texts[SW_PACK_TEXT_OFFICE]),
  G_STRUCT_OFFSET (SwJob, pack.texts[SW_PACK_TEXT_EDITION]),
  G_STRUCT_OFFSET (SwJob, pack.texts[SW_PACK_TEXT_BASIS]),
  G_STRUCT_OFFSET (SwJob, pack.texts[SW_PACK_TEXT_CONTACT]),
  G_STRUCT_OFFSET (SwJob, pack.texts[SW_PACK_TEXT_CONDITIONS]),
  G_STRUCT_OFFSET (SwJob, pack.texts[SW_PACK_TEXT_SUBMITTALS]),
  G_STRUCT_OFFSET (SwJob, pack.texts[SW_PACK_TEXT_NOTICE]),
  G_STRUCT_OFFSET (SwJob, pack.texts[SW_PACK_TEXT_DEADLINES]),
  G_STRUCT_OFFSET (SwJob, pack.texts[SW_PACK_TEXT_RECORDS]),
  G_STRUCT_OFFSET (SwJob, pack.texts[SW_PACK_TEXT_ENFORCEMENT]),
  G_STRUCT_OFFSET (SwJob, pack.texts[SW_PACK_TEXT_CLOSING]),
  G_STRUCT_OFFSET (SwJob, pack.texts[SW_PACK_TEXT_CERTIFICATION]),
  G_STRUCT_OFFSET (SwJob, pack.texts[SW_PACK_TEXT_COURSE]),
  G_STRUCT_OFFSET (SwJob, pack.texts[SW_PACK_TEXT_LEVEL]),
  G_STRUCT_OFFSET (SwJob, pack.texts[SW_PACK_TEXT_TRAINER]),
  G_STRUCT_OFFSET (SwJob, unknown_json),
};

static char **
job_text (SwJob *job, gsize i)
{
  return G_STRUCT_MEMBER_P (job, text_offsets[i]);
}

static const char *
job_text_get (const SwJob *job, gsize i)
{
  return G_STRUCT_MEMBER (const char *, job, text_offsets[i]);
}

const char *
sw_obtained_code (SwObtained obtained)
{
  g_return_val_if_fail ((unsigned) obtained < SW_OBTAINED_COUNT, NULL);
  return obtained_codes[obtained];
}

SwJob *
sw_job_new_empty (void)
{
  SwJob *job = g_new0 (SwJob, 1);

  job->refs = 1;
  for (gsize i = 0; i < G_N_ELEMENTS (text_offsets); i++)
    *job_text (job, i) = g_strdup ("");
  g_clear_pointer (&job->unknown_json, g_free);
  sw_work_plan_reset (&job->plan);
  job->stock = g_array_new (FALSE, TRUE, sizeof (SwStockLine));
  job->faces = g_ptr_array_new_with_free_func ((GDestroyNotify) sw_face_free);
  return job;
}

SwJob *
sw_job_new_default (void)
{
  static const SwPoint section[] = { { 0.0, 5.0 }, { 10.0, 0.0 } };
  static const SwPoint outline[] = {
    { 0.0, 0.0 }, { 20.0, 0.0 }, { 20.0, 10.0 }, { 0.0, 10.0 }
  };
  SwJob *job = sw_job_new_empty ();
  SwFace *face = sw_face_new ("A");

  sw_face_set_section (face, section, G_N_ELEMENTS (section));
  sw_face_set_outline (face, outline, G_N_ELEMENTS (outline));
  sw_text_set (&face->soil_id, "loam");
  g_ptr_array_add (job->faces, face);
  sw_text_set (&job->language, "en");
  sw_text_set (&job->practice_id, "common");
  sw_text_set (&job->blanket_id, "2.D");
  job->roll_width_m = 2.44;
  job->roll_length_m = 34.3;
  job->roll_core_m = 0.076;
  return job;
}

SwJob *
sw_job_ref (const SwJob *job)
{
  SwJob *shared = (SwJob *) job;

  g_atomic_int_inc (&shared->refs);
  return shared;
}

void
sw_job_unref (SwJob *job)
{
  if (job == NULL || !g_atomic_int_dec_and_test (&job->refs))
    return;
  for (gsize i = 0; i < G_N_ELEMENTS (text_offsets); i++)
    g_free (*job_text (job, i));
  for (guint i = 0; i < job->n_overrides; i++)
    g_free (job->overrides[i].why);
  g_free (job->overrides);
  sw_seed_mix_clear (&job->seed);
  g_array_unref (job->stock);
  g_ptr_array_unref (job->faces);
  g_free (job);
}

static gpointer
copy_face (gconstpointer face, gpointer unused)
{
  return sw_face_copy (face);
}

SwJob *
sw_job_copy (const SwJob *job)
{
  SwJob *copy = g_memdup2 (job, sizeof *job);

  copy->refs = 1;
  for (gsize i = 0; i < G_N_ELEMENTS (text_offsets); i++)
    *job_text (copy, i) = g_strdup (job_text_get (job, i));
  copy->overrides = g_memdup2 (job->overrides, job->n_overrides * sizeof *job->overrides);
  for (guint i = 0; i < job->n_overrides; i++)
    copy->overrides[i].why = g_strdup (job->overrides[i].why);
  sw_seed_mix_own_species (&copy->seed);
  copy->stock = g_array_copy (job->stock);
  copy->faces = g_ptr_array_copy (job->faces, copy_face, NULL);
  g_ptr_array_set_free_func (copy->faces, (GDestroyNotify) sw_face_free);
  return copy;
}

double
sw_job_roll_width_m (const SwJob *job, gboolean narrow)
{
  return narrow ? job->narrow_width_m : job->roll_width_m;
}

double
sw_job_roll_length_m (const SwJob *job, gboolean narrow)
{
  return narrow ? job->narrow_length_m : job->roll_length_m;
}

static gboolean
same_number (double a, double b)
{
  return memcmp (&a, &b, sizeof a) == 0;
}

static gboolean
same_overrides (const SwJob *a, const SwJob *b)
{
  if (a->n_overrides != b->n_overrides)
    return FALSE;
  for (guint i = 0; i < a->n_overrides; i++)
    if (a->overrides[i].value != b->overrides[i].value
        || !same_number (a->overrides[i].number, b->overrides[i].number)
        || g_strcmp0 (a->overrides[i].why, b->overrides[i].why) != 0)
      return FALSE;
  return TRUE;
}

static gboolean
same_ways (const SwOwnPractice *a, const SwOwnPractice *b)
{
  return a->toe_kind == b->toe_kind && a->trench_lining == b->trench_lining
         && a->toe_lining == b->toe_lining;
}

static gboolean
same_product (const SwProduct *a, const SwProduct *b)
{
  return same_number (a->life_months, b->life_months)
         && same_number (a->shear_pa, b->shear_pa) && same_number (a->max_hv, b->max_hv)
         && a->net == b->net;
}

static gboolean
same_stock (const GArray *a, const GArray *b)
{
  if (a->len != b->len)
    return FALSE;
  for (guint i = 0; i < a->len; i++)
    {
      const SwStockLine *x = &g_array_index (a, SwStockLine, i),
                        *y = &g_array_index (b, SwStockLine, i);

      if (x->source != y->source || !same_number (x->length_m, y->length_m)
          || x->count != y->count)
        return FALSE;
    }
  return TRUE;
}

static gboolean
same_materials (const SwJob *a, const SwJob *b)
{
  return same_number (a->roll_width_m, b->roll_width_m)
         && same_number (a->roll_length_m, b->roll_length_m)
         && same_number (a->roll_core_m, b->roll_core_m)
         && same_number (a->blanket_mass_kg_per_m2, b->blanket_mass_kg_per_m2)
         && same_number (a->blanket_thickness_m, b->blanket_thickness_m)
         && same_product (&a->product, &b->product) && same_stock (a->stock, b->stock)
         && same_number (a->narrow_width_m, b->narrow_width_m)
         && same_number (a->narrow_length_m, b->narrow_length_m)
         && a->surplus == b->surplus && a->joints == b->joints
         && a->zone_rule == b->zone_rule && sw_seed_mix_equal (&a->seed, &b->seed)
         && sw_work_plan_same_numbers (&a->plan, &b->plan) && a->pack.kind == b->pack.kind
         && a->pack.seed == b->pack.seed;
}

static gboolean
same_site_numbers (const SwSiteNumbers *a, const SwSiteNumbers *b)
{
  return memcmp (a->values, b->values, sizeof a->values) == 0
         && a->loss_units == b->loss_units && a->rills == b->rills
         && a->bench_drained == b->bench_drained && a->mown == b->mown;
}

gboolean
sw_job_equal (const SwJob *a, const SwJob *b)
{
  if (a == b)
    return TRUE;
  if (a == NULL || b == NULL || a->faces->len != b->faces->len)
    return FALSE;
  for (gsize i = 0; i < G_N_ELEMENTS (text_offsets); i++)
    if (g_strcmp0 (job_text_get (a, i), job_text_get (b, i)) != 0)
      return FALSE;
  for (guint i = 0; i < a->faces->len; i++)
    if (!sw_face_equal (a->faces->pdata[i], b->faces->pdata[i]))
      return FALSE;
  return a->units == b->units && a->paper == b->paper && same_materials (a, b)
         && same_overrides (a, b) && same_ways (&a->own, &b->own)
         && memcmp (a->site, b->site, sizeof a->site) == 0
         && same_site_numbers (&a->numbers, &b->numbers);
}

SwFace *
sw_job_face (const SwJob *job, const char *id)
{
  for (guint i = 0; i < job->faces->len; i++)
    {
      SwFace *face = g_ptr_array_index (job->faces, i);
      if (g_strcmp0 (face->id, id) == 0)
        return face;
    }
  return NULL;
}

SwPractice *
sw_job_practice (const SwJob *job, const SwCatalogue *catalogue)
{
  const SwPractice *shipped = sw_catalogue_practice (catalogue, job->practice_id);

  if (shipped == NULL)
    return NULL;
  SwPractice *practice = sw_practice_copy (shipped);
  sw_own_practice_lay_over (&job->own, practice);
  for (guint i = 0; i < job->n_overrides; i++)
    {
      const SwOverride *override = &job->overrides[i];
      SwSourced *sourced = &practice->values[override->value];
      sourced->value = override->number;
      sourced->evidence = SW_EVIDENCE_USER;
      sw_text_set (&sourced->source,
                   *override->why != '\0' ? override->why : job->own.source);
    }
  return practice;
}

SwBlanket *
sw_job_blanket (const SwJob *job, const SwCatalogue *catalogue)
{
  const SwBlanket *shipped = sw_catalogue_blanket (catalogue, job->blanket_id);
  SwBlanket *blanket;

  if (shipped == NULL)
    return NULL;
  blanket = sw_blanket_copy (shipped);
  if (sw_product_given (&job->product))
    sw_product_lay_over (&job->product, blanket);
  return blanket;
}

SwSourced
sw_job_site_number (const SwJob *job, const SwCatalogue *catalogue, SwSiteNumber number)
{
  double typed = job->numbers.values[number];
  const SwDefault *value =
      sw_catalogue_default (catalogue, sw_site_number_keys[number].key);

  if (typed > 0.0)
    return (SwSourced){ typed, SW_EVIDENCE_USER, NULL };
  return value != NULL ? value->number : (SwSourced){ NAN, SW_EVIDENCE_USER, NULL };
}

static guint
override_index (const SwJob *job, SwPracticeValue value)
{
  guint i = 0;

  while (i < job->n_overrides && job->overrides[i].value != value)
    i++;
  return i;
}

void
sw_job_set_override (SwJob *job, SwPracticeValue value, double number, const char *why)
{
  g_return_if_fail ((unsigned) value < SW_PRACTICE_VALUE_COUNT);
  guint i = override_index (job, value);

  if (i == job->n_overrides)
    {
      job->overrides = g_renew (SwOverride, job->overrides, ++job->n_overrides);
      job->overrides[i] = (SwOverride){ .value = value };
    }
  job->overrides[i].number = number;
  sw_text_set (&job->overrides[i].why, why);
}

void
sw_job_clear_own_practice (SwJob *job)
{
  while (job->n_overrides > 0)
    sw_job_clear_override (job, job->overrides[job->n_overrides - 1].value);
  sw_text_set (&job->own.name, "");
  sw_text_set (&job->own.source, "");
  job->own.toe_kind = job->own.trench_lining = job->own.toe_lining = 0;
}

void
sw_job_clear_override (SwJob *job, SwPracticeValue value)
{
  guint i = override_index (job, value);

  if (i == job->n_overrides)
    return;
  g_free (job->overrides[i].why);
  job->n_overrides--;
  memmove (&job->overrides[i], &job->overrides[i + 1],
           (job->n_overrides - i) * sizeof *job->overrides);
}
