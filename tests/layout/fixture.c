/* SPDX-License-Identifier: MIT */
#undef G_DISABLE_ASSERT
#include "fixture.h"

#define SOURCE "round numbers of the tests"

static const struct
{
  SwPracticeValue value;
  double number;
} worked[] = {
  { SW_PRACTICE_SET_BACK_M, 0.60 },
  { SW_PRACTICE_TRENCH_DEPTH_M, 0.15 },
  { SW_PRACTICE_TRENCH_WIDTH_M, 0.15 },
  { SW_PRACTICE_TRENCH_FOLD_M, 0.0 },
  { SW_PRACTICE_TRENCH_PIN_M, 0.30 },
  { SW_PRACTICE_TOE_DEPTH_M, 0.15 },
  { SW_PRACTICE_TOE_WIDTH_M, 0.15 },
  { SW_PRACTICE_TOE_FOLD_M, 0.50 },
  { SW_PRACTICE_TOE_PIN_M, 0.30 },
  { SW_PRACTICE_SIDE_LAP_M, 0.10 },
  { SW_PRACTICE_SIDE_LAP_PIN_M, 0.60 },
  { SW_PRACTICE_EDGE_PIN_M, 0.60 },
  { SW_PRACTICE_END_LAP_M, 0.30 },
  { SW_PRACTICE_END_LAP_STEEP_M, 0.45 },
  { SW_PRACTICE_STEEP_HV, 1.5 },
  { SW_PRACTICE_END_LAP_PIN_M, 0.60 },
  { SW_PRACTICE_END_LAP_ROW_GAP_M, 0.10 },
  { SW_PRACTICE_PIN_DOWN_M, 0.60 },
  { SW_PRACTICE_PIN_ACROSS_M, 0.60 },
  { SW_PRACTICE_PIN_LENGTH_M, 0.15 },
  { SW_PRACTICE_SLOT_EVERY_M, 0.0 },
  { SW_PRACTICE_SLOT_HV, 3.0 },
  { SW_PRACTICE_SLOT_DEPTH_M, 0.15 },
  { SW_PRACTICE_SLOT_WIDTH_M, 0.15 },
  { SW_PRACTICE_SLOT_PIN_M, 0.30 },
  { SW_PRACTICE_BENCH_HV, 10.0 },
  { SW_PRACTICE_BENCH_MIN_M, 2.0 },
  { SW_PRACTICE_MIN_PIECE_M, 2.0 },
  { SW_PRACTICE_JOINT_STAGGER_M, 1.0 },
  { SW_PRACTICE_JOINT_FREE_CREST_M, 1.0 },
  { SW_PRACTICE_JOINT_FREE_TOE_M, 1.0 },
  { SW_PRACTICE_PIN_SPARE, 0.05 },
  { SW_PRACTICE_ROLL_SPARE, 0.0 },
  { SW_PRACTICE_INSPECT_DAYS, 7.0 },
  { SW_PRACTICE_INSPECT_RAIN_M, 0.006 },
  { SW_PRACTICE_INSPECT_HOURS, 24.0 },
  { SW_PRACTICE_COVER, 0.70 },
  { SW_PRACTICE_REPAIR_DAYS, 7.0 },
  { SW_PRACTICE_DEDUCT_M2, 1.0 },
  { SW_PRACTICE_RING_PIN_M, 0.30 },
  { SW_PRACTICE_COLLAR_M, 0.15 },
};

static SwPractice *
practice_new (void)
{
  SwPractice *practice = sw_practice_new ();

  practice->id = g_strdup ("worked");
  practice->name_id = g_strdup ("Worked by hand");
  practice->agency_id = g_strdup ("tests");
  practice->edition_id = g_strdup ("1");
  practice->source_id = g_strdup (SOURCE);
  practice->evidence = SW_EVIDENCE_PROPOSED;
  practice->trench_lining = SW_LINING_DOWN_ACROSS_UP;
  practice->toe_lining = SW_LINING_DOWN_ACROSS;
  practice->toe_kind = SW_TOE_TRENCH;
  G_STATIC_ASSERT (G_N_ELEMENTS (worked) == SW_PRACTICE_VALUE_COUNT);
  for (guint i = 0; i < G_N_ELEMENTS (worked); i++)
    practice->values[worked[i].value] =
        (SwSourced){ worked[i].number, SW_EVIDENCE_PROPOSED, NULL };
  return practice;
}

static void
add_soil (SwCatalogue *catalogue)
{
  SwSoil *soil = g_new0 (SwSoil, 1);

  soil->id = g_strdup ("firm");
  soil->name_id = g_strdup ("soil.firm");
  soil->source_id = g_strdup (SOURCE);
  soil->pin_firm_m = (SwSourced){ 0.15, SW_EVIDENCE_PROPOSED, NULL };
  soil->pin_loose_m = (SwSourced){ 0.30, SW_EVIDENCE_PROPOSED, NULL };
  soil->swell = (SwSourced){ 0.25, SW_EVIDENCE_PROPOSED, NULL };
  soil->compaction = (SwSourced){ 0.90, SW_EVIDENCE_PROPOSED, NULL };
  soil->erodibility = (SwSourced){ 0.04, SW_EVIDENCE_PROPOSED, NULL };
  soil->friction_rad = (SwSourced){ 34.0 * G_PI / 180.0, SW_EVIDENCE_PROPOSED, NULL };
  g_ptr_array_add (catalogue->soils, soil);
}

static void
add_blanket (SwCatalogue *catalogue)
{
  SwBlanket *blanket = g_new0 (SwBlanket, 1);

  blanket->id = g_strdup ("mat");
  blanket->name_id = g_strdup ("blanket.mat");
  blanket->source_id = g_strdup (SOURCE);
  blanket->life_months = (SwSourced){ 12.0, SW_EVIDENCE_PROPOSED, NULL };
  blanket->max_hv = (SwSourced){ 1.5, SW_EVIDENCE_PROPOSED, NULL };
  blanket->max_c = (SwSourced){ 0.10, SW_EVIDENCE_PROPOSED, NULL };
  blanket->shear_pa = (SwSourced){ 84.0, SW_EVIDENCE_PROPOSED, NULL };
  blanket->mass_kg_per_m2 = (SwSourced){ 0.25, SW_EVIDENCE_PROPOSED, NULL };
  blanket->thickness_m = (SwSourced){ 0.008, SW_EVIDENCE_PROPOSED, NULL };
  blanket->net_plastic_usual = TRUE;
  g_ptr_array_add (catalogue->blankets, blanket);
}

static void
add_pin (SwCatalogue *catalogue, const char *id, double length_m, int per_box)
{
  SwPin *pin = g_new0 (SwPin, 1);

  pin->id = g_strdup (id);
  pin->source_id = g_strdup (SOURCE);
  pin->length_m = length_m;
  pin->crown_m = 0.025;
  pin->wire_m = 0.003;
  pin->per_box = per_box;
  pin->evidence = SW_EVIDENCE_PROPOSED;
  g_ptr_array_add (catalogue->pins, pin);
}

SwCatalogue *
fixture_catalogue (void)
{
  SwCatalogue *catalogue = sw_catalogue_new ();

  g_ptr_array_add (catalogue->practices, practice_new ());
  add_soil (catalogue);
  add_blanket (catalogue);
  add_pin (catalogue, "p150", 0.15, 500);
  add_pin (catalogue, "p200", 0.20, 500);
  add_pin (catalogue, "p300", 0.30, 250);
  return catalogue;
}

SwJob *
fixture_job (void)
{
  SwJob *job = sw_job_new_empty ();

  sw_text_set (&job->language, "en");
  sw_text_set (&job->practice_id, "worked");
  sw_text_set (&job->blanket_id, "mat");
  job->roll_width_m = 2.44;
  job->roll_length_m = 34.3;
  job->roll_core_m = 0.075;
  for (int i = 0; i < SW_SITE_QUESTION_COUNT; i++)
    job->site[i] = SW_ANSWER_NO;
  job->site[SW_SITE_UTILITIES_MARKED] = SW_ANSWER_YES;
  return job;
}

SwFace *
fixture_add_face (SwJob *job, const char *id, const SwPoint *section, guint n_section,
                  const SwPoint *outline, guint n_outline)
{
  SwFace *face = sw_face_new (id);

  sw_face_set_section (face, section, n_section);
  sw_face_set_outline (face, outline, n_outline);
  sw_text_set (&face->soil_id, "firm");
  g_ptr_array_add (job->faces, face);
  return face;
}

SwFace *
fixture_add_plane (SwJob *job, const char *id, double hv, double rise_m, double width_m)
{
  double out_m = hv * rise_m;
  const SwPoint section[] = { { 0.0, rise_m }, { out_m, 0.0 } };
  const SwPoint outline[] = {
    { 0.0, 0.0 }, { width_m, 0.0 }, { width_m, out_m }, { 0.0, out_m }
  };

  return fixture_add_face (job, id, section, G_N_ELEMENTS (section), outline,
                           G_N_ELEMENTS (outline));
}

SwLayout *
fixture_lay (const SwJob *job, const SwCatalogue *catalogue)
{
  SwLayout *layout = NULL;
  int bad_face = -2;
  SwStatus status = sw_layout_new (job, catalogue, &layout, &bad_face);

  g_assert_cmpstr (sw_status_text (status), ==, sw_status_text (SW_OK));
  g_assert_cmpint (bad_face, ==, -1);
  return layout;
}

static void
add_number (GByteArray *bytes, double number)
{
  g_byte_array_append (bytes, (const guint8 *) &number, sizeof number);
}

static void
add_tier (GByteArray *bytes, const SwTier *tier)
{
  const double numbers[] = {
    tier->reach.out_from_m, tier->reach.out_to_m, tier->reach.down_from_m,
    tier->reach.down_to_m,  tier->along_from_m,   tier->along_to_m,
    tier->length_m,         tier->mean_rad,       tier->steepest_rad,
    tier->net_m2,           tier->strips,         tier->side_lap_m,
    tier->surplus_m,        tier->end_lap_m,      tier->slots,
    tier->pin_down_m,       tier->pin_across_m,   tier->density_floor_per_m2,
    tier->first_run,        tier->n_runs
  };

  for (guint i = 0; i < G_N_ELEMENTS (numbers); i++)
    add_number (bytes, numbers[i]);
}

static void
add_run (GByteArray *bytes, const SwRun *run)
{
  const double numbers[] = { run->tier,
                             run->number,
                             run->part,
                             run->along_from_m,
                             run->along_to_m,
                             run->out_from_m,
                             run->out_to_m,
                             run->down_from_m,
                             run->down_to_m,
                             run->terms.set_back,
                             run->terms.key_lining,
                             run->terms.key_fold,
                             run->terms.face,
                             run->terms.slots,
                             run->terms.end_laps,
                             run->terms.toe,
                             run->cut_m,
                             run->n_pieces,
                             run->first_piece };

  for (guint i = 0; i < G_N_ELEMENTS (numbers); i++)
    add_number (bytes, numbers[i]);
}

static void
add_trench (GByteArray *bytes, const SwTrench *trench)
{
  const double numbers[] = { trench->kind,     trench->tier,    trench->n_line,
                             trench->length_m, trench->depth_m, trench->width_m,
                             trench->volume_m3 };

  for (guint i = 0; i < G_N_ELEMENTS (numbers); i++)
    add_number (bytes, numbers[i]);
  for (guint i = 0; i < trench->n_line; i++)
    {
      add_number (bytes, trench->line[i].along_m);
      add_number (bytes, trench->line[i].out_m);
      add_number (bytes, trench->line[i].down_m);
    }
}

static void
add_piece (GByteArray *bytes, const SwPiece *piece)
{
  const double numbers[] = { piece->run,         piece->face,     piece->order,
                             piece->length_m,    piece->roll,     piece->from_m,
                             piece->down_from_m, piece->down_to_m };

  for (guint i = 0; i < G_N_ELEMENTS (numbers); i++)
    add_number (bytes, numbers[i]);
}

GByteArray *
fixture_layout_bytes (const SwLayout *layout)
{
  GByteArray *bytes = g_byte_array_new ();

  G_STATIC_ASSERT (sizeof (SwPinPlace) == 16); /* no padding */
  for (guint f = 0; f < layout->n_faces; f++)
    {
      const SwFaceLayout *face = &layout->faces[f];

      for (guint i = 0; i < face->n_tiers; i++)
        add_tier (bytes, &face->tiers[i]);
      for (guint i = 0; i < face->n_runs; i++)
        add_run (bytes, &face->runs[i]);
      for (guint i = 0; i < face->n_trenches; i++)
        add_trench (bytes, &face->trenches[i]);
      g_byte_array_append (bytes, (const guint8 *) face->pins,
                           (guint) (face->n_pins * sizeof *face->pins));
      add_number (bytes, face->pin_need_m);
    }
  for (guint i = 0; i < layout->n_pieces; i++)
    add_piece (bytes, &layout->pieces[i]);
  for (int i = 0; i < layout->rolls; i++)
    add_number (bytes, layout->cut_rolls[i].offcut_m);
  add_number (bytes, layout->rolls_naive);
  add_number (bytes, layout->rolls_bound);
  return bytes;
}
