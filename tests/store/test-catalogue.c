/* SPDX-License-Identifier: MIT */
#undef G_DISABLE_ASSERT
#include <slopewright/store/store.h>

#include <math.h>
#include <string.h>

static double
value_of (const SwCatalogue *catalogue, const char *practice, SwPracticeValue value)
{
  return sw_catalogue_practice (catalogue, practice)->values[value].value;
}

/* The ranges that guard job files hold for what is shipped. */
static void
test_values_in_range (void)
{
  g_autoptr (SwCatalogue) catalogue = sw_catalogue_load ();

  g_assert_cmpuint (catalogue->practices->len, ==, 6);
  for (guint i = 0; i < catalogue->practices->len; i++)
    for (int v = 0; v < SW_PRACTICE_VALUE_COUNT; v++)
      {
        const SwPractice *practice = catalogue->practices->pdata[i];
        g_assert_true (
            sw_practice_accepts ((SwPracticeValue) v, practice->values[v].value));
      }
}

static void
check_sourced (const SwSourced *sourced)
{
  g_assert_nonnull (sourced->source);
  g_assert_cmpuint (strlen (sourced->source), >, 3);
  g_assert_cmpint (sourced->evidence, !=, SW_EVIDENCE_USER);
}

static void
test_everything_has_a_source (void)
{
  g_autoptr (SwCatalogue) catalogue = sw_catalogue_load ();

  for (guint i = 0; i < catalogue->practices->len; i++)
    {
      const SwPractice *practice = catalogue->practices->pdata[i];
      for (int v = 0; v < SW_PRACTICE_VALUE_COUNT; v++)
        check_sourced (&practice->values[v]);
      for (guint d = 0; d < practice->n_density; d++)
        check_sourced (&practice->density[d].per_m2);
    }
  for (guint i = 0; i < catalogue->soils->len; i++)
    {
      const SwSoil *soil = catalogue->soils->pdata[i];
      check_sourced (&soil->pin_firm_m);
      check_sourced (&soil->pin_loose_m);
      check_sourced (&soil->swell);
      check_sourced (&soil->compaction);
      check_sourced (&soil->erodibility);
      check_sourced (&soil->friction_rad);
    }
  for (guint i = 0; i < catalogue->blankets->len; i++)
    {
      const SwBlanket *blanket = catalogue->blankets->pdata[i];
      check_sourced (&blanket->life_months);
      check_sourced (&blanket->max_hv);
      check_sourced (&blanket->max_c);
      check_sourced (&blanket->shear_pa);
      check_sourced (&blanket->mass_kg_per_m2);
      check_sourced (&blanket->thickness_m);
    }
}

/* Class table of the industry specification of 2005 as US agencies print it, from memory:
 * .C single-net, .D double-net, .A open nets and .B netless; 3.B to 5.C hold several. */
static void
test_nets (void)
{
  static const struct
  {
    const char *id;
    int nets;
  } rows[] = { { "1.A", 0 }, { "1.B", 0 }, { "1.C", 1 },  { "1.D", 2 }, { "2.C", 1 },
               { "2.D", 2 }, { "3.A", 0 }, { "3.B", -1 }, { "4", -1 },  { "5.A", -1 } };
  g_autoptr (SwCatalogue) catalogue = sw_catalogue_load ();

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    g_assert_cmpint (sw_catalogue_blanket (catalogue, rows[i].id)->nets, ==,
                     rows[i].nets);
}

/*
 * What the agencies print, in their inches and feet. Sources: Renton Standard
 * Plan 213.20 (March 2008); Illinois Urban Manual 830; Ohio DOT C&MS 2010 item
 * 671; Washington Ecology C122 as printed by Everett. 1 in = 0.0254 m exactly.
 */
static void
test_published_numbers (void)
{
  static const struct
  {
    const char *practice;
    SwPracticeValue value;
    double inches;
  } rows[] = {
    { "renton-213-20", SW_PRACTICE_TRENCH_DEPTH_M, 6 },
    { "renton-213-20", SW_PRACTICE_TRENCH_WIDTH_M, 6 },
    { "renton-213-20", SW_PRACTICE_TRENCH_PIN_M, 12 },
    { "renton-213-20", SW_PRACTICE_TOE_FOLD_M, 4 },
    { "renton-213-20", SW_PRACTICE_TOE_PIN_M, 12 },
    { "renton-213-20", SW_PRACTICE_SIDE_LAP_M, 2 },
    { "renton-213-20", SW_PRACTICE_SIDE_LAP_PIN_M, 60 },
    { "renton-213-20", SW_PRACTICE_END_LAP_M, 6 },
    { "illinois-830", SW_PRACTICE_TRENCH_DEPTH_M, 6 },
    { "illinois-830", SW_PRACTICE_SIDE_LAP_M, 4 },
    { "illinois-830", SW_PRACTICE_END_LAP_M, 12 },
    { "ohio-671", SW_PRACTICE_TRENCH_DEPTH_M, 6 },
    { "ohio-671", SW_PRACTICE_PIN_DOWN_M, 36 },
    { "ohio-671", SW_PRACTICE_EDGE_PIN_M, 36 },
    { "ohio-671", SW_PRACTICE_SLOT_EVERY_M, 600 },
    { "ohio-671", SW_PRACTICE_SLOT_DEPTH_M, 6 },
    { "washington-c122", SW_PRACTICE_TRENCH_DEPTH_M, 6 },
    { "washington-c122", SW_PRACTICE_TRENCH_WIDTH_M, 12 },
    { "washington-c122", SW_PRACTICE_TRENCH_PIN_M, 18 },
    { "washington-c122", SW_PRACTICE_PIN_LENGTH_M, 6 },
  };
  g_autoptr (SwCatalogue) catalogue = sw_catalogue_load ();

  for (gsize i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      const SwPractice *practice = sw_catalogue_practice (catalogue, rows[i].practice);
      const SwSourced *sourced = &practice->values[rows[i].value];
      g_assert_cmpfloat_with_epsilon (sourced->value, rows[i].inches * 0.0254, 1e-12);
      g_assert_cmpint (sourced->evidence, ==, SW_EVIDENCE_SEEN);
    }
  g_assert_cmpfloat (value_of (catalogue, "ohio-671", SW_PRACTICE_SLOT_HV), ==, 3.0);
  g_assert_cmpint (sw_catalogue_practice (catalogue, "ohio-671")->trench_lining, ==,
                   SW_LINING_DOWN);
  g_assert_cmpint (sw_catalogue_practice (catalogue, "renton-213-20")->toe_kind, ==,
                   SW_TOE_FOLD);
}

/* What an agency does not print is this program's, and says so. */
static void
test_gaps_are_owned (void)
{
  g_autoptr (SwCatalogue) catalogue = sw_catalogue_load ();
  g_autoptr (SwTexts) texts = sw_texts_load ("en");
  guint gaps = 0;

  for (guint i = 0; i < catalogue->practices->len; i++)
    {
      const SwPractice *practice = catalogue->practices->pdata[i];
      if (practice->evidence != SW_EVIDENCE_SEEN)
        continue;
      for (int v = 0; v < SW_PRACTICE_VALUE_COUNT; v++)
        {
          const SwSourced *sourced = &practice->values[v];
          gboolean ours = sourced->evidence == SW_EVIDENCE_PROPOSED;
          gboolean says = g_str_has_prefix (sw_texts_get (texts, sourced->source),
                                            "this program's default");
          g_assert_cmpint (ours, ==, says);
          gaps += ours;
        }
    }
  g_assert_cmpuint (gaps, >, 80);
}

/* Common practice, no source: 150 x 150 mm trench, 0.10 m lap, 1.0 x 0.3 m field, 150 mm pins. */
static void
test_common_practice (void)
{
  static const struct
  {
    SwPracticeValue value;
    double want;
  } rows[] = {
    { SW_PRACTICE_TRENCH_DEPTH_M, 0.15 }, { SW_PRACTICE_TRENCH_WIDTH_M, 0.15 },
    { SW_PRACTICE_SIDE_LAP_M, 0.10 },     { SW_PRACTICE_PIN_DOWN_M, 1.0 },
    { SW_PRACTICE_PIN_ACROSS_M, 0.3 },    { SW_PRACTICE_PIN_LENGTH_M, 0.15 },
  };
  g_autoptr (SwCatalogue) catalogue = sw_catalogue_load ();
  const SwPractice *common = sw_catalogue_practice (catalogue, "common");

  for (gsize i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      g_assert_cmpfloat (common->values[rows[i].value].value, ==, rows[i].want);
      g_assert_cmpint (common->values[rows[i].value].evidence, ==,
                       SW_EVIDENCE_COMMON_PRACTICE);
    }
}

/* Crest allowance 1.05 m and toe allowance 0.30 m, on which the training slopes stand. */
static void
test_common_allowances (void)
{
  g_autoptr (SwCatalogue) catalogue = sw_catalogue_load ();
  const SwPractice *common = sw_catalogue_practice (catalogue, "common");
  const SwSourced *v = common->values;

  g_assert_cmpint (common->trench_lining, ==, SW_LINING_DOWN_ACROSS_UP);
  g_assert_cmpint (common->toe_kind, ==, SW_TOE_TRENCH);
  g_assert_cmpint (common->toe_lining, ==, SW_LINING_DOWN_ACROSS);
  /* 0.60 + (0.15 + 0.15 + 0.15) + 0 = 1.05; 0.15 + 0.15 = 0.30 */
  g_assert_cmpfloat_with_epsilon (
      v[SW_PRACTICE_SET_BACK_M].value + 2.0 * v[SW_PRACTICE_TRENCH_DEPTH_M].value
          + v[SW_PRACTICE_TRENCH_WIDTH_M].value + v[SW_PRACTICE_TRENCH_FOLD_M].value,
      1.05, 1e-12);
  g_assert_cmpfloat_with_epsilon (
      v[SW_PRACTICE_TOE_DEPTH_M].value + v[SW_PRACTICE_TOE_WIDTH_M].value, 0.30, 1e-12);
}

static void
test_density_rows (void)
{
  g_autoptr (SwCatalogue) catalogue = sw_catalogue_load ();
  const SwPractice *stepped = sw_catalogue_practice (catalogue, "stepped-density");

  /* Own default, 2.0, 1.5 and 1.0 per square yard rounded to 0.1 per m2. */
  g_assert_cmpuint (stepped->n_density, ==, 3);
  g_assert_cmpfloat (stepped->density[0].hv, ==, 2.0);
  g_assert_cmpfloat (stepped->density[0].per_m2.value, ==, 2.4);
  g_assert_cmpfloat (stepped->density[1].per_m2.value, ==, 1.8);
  g_assert_cmpfloat (stepped->density[2].per_m2.value, ==, 1.2);
}

/* Class table: 1 lb/ft2 is rounded to 48 Pa by the agencies that print both. */
static void
test_blanket_classes (void)
{
  static const struct
  {
    const char *id;
    double months, hv, c, psf;
  } rows[] = {
    { "1.A", 3, 5, 0.10, 0.25 },        { "1.D", 3, 2, 0.20, 1.75 },
    { "2.C", 12, 3, 0.15, 1.50 },       { "2.D", 12, 2, 0.20, 1.75 },
    { "3.B", 24, 1.5, 0.25, 2.00 },     { "4", 36, 1, 0.25, 2.25 },
    { "5.A", INFINITY, 0.5, NAN, 6.0 }, { "5.C", INFINITY, 0.5, NAN, 10.0 },
  };
  g_autoptr (SwCatalogue) catalogue = sw_catalogue_load ();

  g_assert_cmpuint (catalogue->blankets->len, ==, 14);
  for (gsize i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      const SwBlanket *blanket = sw_catalogue_blanket (catalogue, rows[i].id);
      g_assert_cmpfloat (blanket->life_months.value, ==, rows[i].months);
      g_assert_cmpfloat (blanket->max_hv.value, ==, rows[i].hv);
      g_assert_cmpfloat (blanket->shear_pa.value, ==, rows[i].psf * 48.0);
      if (isnan (rows[i].c))
        g_assert_true (isnan (blanket->max_c.value));
      else
        g_assert_cmpfloat (blanket->max_c.value, ==, rows[i].c);
    }
}

/* US Army FM 5-434: sand 1.11 loose, 0.95 compacted; loam 1.25, 0.90; clay 1.43, 0.90. */
static void
test_soils (void)
{
  g_autoptr (SwCatalogue) catalogue = sw_catalogue_load ();
  const SwSoil *sand = sw_catalogue_soil (catalogue, "sand");
  const SwSoil *clay = sw_catalogue_soil (catalogue, "clay");
  const SwSoil *loam = sw_catalogue_soil (catalogue, "loam");

  g_assert_cmpfloat (sand->swell.value, ==, 0.11);
  g_assert_cmpfloat (sand->compaction.value, ==, 0.95);
  g_assert_cmpfloat (loam->swell.value, ==, 0.25);
  g_assert_cmpfloat (clay->swell.value, ==, 0.43);
  g_assert_cmpfloat (clay->compaction.value, ==, 0.90);
  /* K by texture of the fact sheet, US 0.22, times 0.1317136 (Handbook 703 appendix A). */
  g_assert_cmpfloat_with_epsilon (clay->erodibility.value, 0.22 * 0.1317136076, 1e-9);
  g_assert_true (isnan (sw_catalogue_soil (catalogue, "silt")->erodibility.value));
  /* common practice: 150 mm in firm soil */
  g_assert_cmpfloat (clay->pin_firm_m.value, ==, 0.15);
  for (guint i = 0; i < catalogue->soils->len; i++)
    {
      const SwSoil *soil = catalogue->soils->pdata[i];
      g_assert_cmpfloat (soil->pin_loose_m.value, >, soil->pin_firm_m.value);
      g_assert_nonnull (sw_catalogue_pin_of_length (catalogue, soil->pin_loose_m.value));
    }
}

static void
test_pins_serve_their_nominal_length (void)
{
  g_autoptr (SwCatalogue) catalogue = sw_catalogue_load ();

  g_assert_cmpstr (sw_catalogue_pin_of_length (catalogue, 0.15)->id, ==, "staple-150");
  g_assert_cmpstr (sw_catalogue_pin_of_length (catalogue, 0.1524)->id, ==, "staple-6in");
  g_assert_cmpstr (sw_catalogue_pin_of_length (catalogue, 0.3)->id, ==, "staple-300");
  g_assert_cmpstr (sw_catalogue_pin_of_length (catalogue, 0.4)->id, ==, "washer-pin-450");
}

static void
check_text (const SwTexts *texts, const char *id)
{
  if (!sw_texts_has (texts, id))
    g_error ("no text \"%s\"", id);
}

static void
test_every_name_has_words (void)
{
  static const char *const more[] = { "toe-kind.trench",    "toe-kind.fold",
                                      "toe-kind.row",       "lining.down",
                                      "lining.down-across", "lining.down-across-up",
                                      "surplus.spread",     "surplus.trim",
                                      "bench-rule.split",   "bench-rule.continuous",
                                      "side.left",          "side.right",
                                      "fan.full-runs",      "fan.infill" };
  g_autoptr (SwCatalogue) catalogue = sw_catalogue_load ();
  g_autoptr (SwTexts) texts = sw_texts_load ("en");

  for (int i = 0; i < SW_PRACTICE_VALUE_COUNT; i++)
    {
      g_autofree char *id = g_strconcat ("practice.", sw_practice_keys[i].key, NULL);
      check_text (texts, id);
    }
  for (int i = 0; i < SW_EVIDENCE_COUNT; i++)
    {
      g_autofree char *id =
          g_strconcat ("evidence.", sw_evidence_code ((SwEvidence) i), NULL);
      check_text (texts, id);
    }
  for (int i = 0; i < SW_OBTAINED_COUNT; i++)
    {
      g_autofree char *id =
          g_strconcat ("obtained.", sw_obtained_code ((SwObtained) i), NULL);
      check_text (texts, id);
    }
  for (int i = 0; i < SW_SITE_QUESTION_COUNT; i++)
    {
      g_autofree char *id = g_strconcat ("site.", sw_site_question_keys[i], NULL);
      check_text (texts, id);
    }
  for (gsize i = 0; i < G_N_ELEMENTS (more); i++)
    check_text (texts, more[i]);
  for (guint i = 0; i < catalogue->soils->len; i++)
    check_text (texts, ((const SwSoil *) catalogue->soils->pdata[i])->name_id);
  for (guint i = 0; i < catalogue->blankets->len; i++)
    check_text (texts, ((const SwBlanket *) catalogue->blankets->pdata[i])->name_id);
  for (guint i = 0; i < catalogue->pins->len; i++)
    check_text (texts, sw_pin_name_id (catalogue->pins->pdata[i]));
}

/* Sources of numbers, and of entries as a whole. */
static void
each_number (const SwCatalogue *catalogue, void (*look) (const SwSourced *, gpointer),
             gpointer data)
{
  for (guint i = 0; i < catalogue->practices->len; i++)
    {
      const SwPractice *practice = catalogue->practices->pdata[i];
      for (int v = 0; v < SW_PRACTICE_VALUE_COUNT; v++)
        look (&practice->values[v], data);
      for (guint d = 0; d < practice->n_density; d++)
        look (&practice->density[d].per_m2, data);
      look (&(SwSourced){ 1.0, practice->evidence, practice->source_id }, data);
    }
  for (guint i = 0; i < catalogue->soils->len; i++)
    {
      const SwSoil *soil = catalogue->soils->pdata[i];
      const SwSourced *const numbers[] = { &soil->pin_firm_m,  &soil->pin_loose_m,
                                           &soil->swell,       &soil->compaction,
                                           &soil->erodibility, &soil->friction_rad };
      for (gsize n = 0; n < G_N_ELEMENTS (numbers); n++)
        look (numbers[n], data);
      look (&(SwSourced){ 1.0, SW_EVIDENCE_SEEN, soil->source_id }, data);
    }
  for (guint i = 0; i < catalogue->blankets->len; i++)
    {
      const SwBlanket *blanket = catalogue->blankets->pdata[i];
      const SwSourced *const numbers[] = {
        &blanket->life_months, &blanket->max_hv,         &blanket->max_c,
        &blanket->shear_pa,    &blanket->mass_kg_per_m2, &blanket->thickness_m
      };
      for (gsize n = 0; n < G_N_ELEMENTS (numbers); n++)
        look (numbers[n], data);
      look (&(SwSourced){ 1.0, SW_EVIDENCE_MEMORY, blanket->source_id }, data);
    }
  for (guint i = 0; i < catalogue->rolls->len; i++)
    {
      const SwRoll *roll = catalogue->rolls->pdata[i];
      look (&(SwSourced){ 1.0, roll->evidence, roll->source_id }, data);
    }
  for (guint i = 0; i < catalogue->pins->len; i++)
    {
      const SwPin *pin = catalogue->pins->pdata[i];
      look (&(SwSourced){ 1.0, pin->evidence, pin->source_id }, data);
    }
  for (guint i = 0; i < catalogue->defaults->len; i++)
    look (&((const SwDefault *) catalogue->defaults->pdata[i])->number, data);
}

/* How the sources of this program's own numbers, and of common practice, begin: they stand
 * without their evidence. */
static const struct
{
  const char *language, *own, *common;
} beginnings[] = {
  { "en", "this program's default", "common practice, no source" },
  { "fr", "valeur propre à ce programme", "usage courant, sans source" },
  { "es", "valor propio de este programa", "práctica común, sin fuente" },
};

static void
look_at_source (const SwSourced *sourced, gpointer data)
{
  const SwTexts *texts = data;
  const char *words = sw_texts_get (texts, sourced->source);

  check_text (texts, sourced->source);
  for (gsize i = 0; i < G_N_ELEMENTS (beginnings); i++)
    if (g_str_equal (beginnings[i].language, sw_texts_language (texts))
        && isfinite (sourced->value) && sw_evidence_is_source (sourced->evidence)
        && !g_str_has_prefix (words, sourced->evidence == SW_EVIDENCE_PROPOSED
                                         ? beginnings[i].own
                                         : beginnings[i].common))
      g_error ("%s: \"%s\" does not say whose number it is", sourced->source, words);
}

/* Names and sources are read in every language; agencies and titles keep their own. */
static void
test_sources_in_every_language (void)
{
  g_autoptr (SwCatalogue) catalogue = sw_catalogue_load ();
  g_auto (GStrv) languages = sw_texts_languages ();

  g_assert_cmpuint (g_strv_length (languages), ==, G_N_ELEMENTS (beginnings));
  for (guint i = 0; languages[i] != NULL; i++)
    {
      g_autoptr (SwTexts) texts = sw_texts_load (languages[i]);

      each_number (catalogue, look_at_source, texts);
      for (guint p = 0; p < catalogue->practices->len; p++)
        {
          const SwPractice *practice = catalogue->practices->pdata[p];
          check_text (texts, practice->name_id);
          check_text (texts, practice->agency_id);
          check_text (texts, practice->edition_id);
        }
    }
}

static void
note_source (const SwSourced *sourced, gpointer data)
{
  g_hash_table_add (data, g_strdup (sourced->source));
}

/* No words for a source that nothing names: the nomograph is named by the soil loss. */
static void
test_no_idle_sources (void)
{
  g_autoptr (SwCatalogue) catalogue = sw_catalogue_load ();
  g_autoptr (SwTexts) texts = sw_texts_load ("en");
  g_autoptr (GPtrArray) ids = sw_texts_ids (texts);
  g_autoptr (GHashTable) named =
      g_hash_table_new_full (g_str_hash, g_str_equal, g_free, NULL);

  g_hash_table_add (named, g_strdup ("source.nomograph"));
  each_number (catalogue, note_source, named);
  for (guint i = 0; i < ids->len; i++)
    if (g_str_has_prefix (ids->pdata[i], "source.")
        && !g_hash_table_contains (named, ids->pdata[i]))
      g_error ("%s: nothing has this source", (const char *) ids->pdata[i]);
}

static void
test_default_job_is_in_the_catalogue (void)
{
  g_autoptr (SwCatalogue) catalogue = sw_catalogue_load ();
  g_autoptr (SwJob) job = sw_job_new_default ();
  const SwFace *face = g_ptr_array_index (job->faces, 0);
  const SwRoll *roll = sw_catalogue_roll (catalogue, "2.44x34.3");

  g_assert_nonnull (sw_catalogue_practice (catalogue, job->practice_id));
  g_assert_nonnull (sw_catalogue_blanket (catalogue, job->blanket_id));
  g_assert_nonnull (sw_catalogue_soil (catalogue, face->soil_id));
  g_assert_cmpfloat (roll->width_m, ==, job->roll_width_m);
  g_assert_cmpfloat (roll->length_m, ==, job->roll_length_m);
  g_assert_cmpfloat (roll->core_m, ==, job->roll_core_m);
}

static void
check_refused (const char *kind, const char *text, const char *message)
{
  g_autoptr (SwCatalogue) catalogue = sw_catalogue_new ();
  g_autoptr (GError) error = NULL;

  g_assert_false (
      sw_catalogue_parse (catalogue, kind, text, strlen (text), "c.json", &error));
  g_assert_error (error, SW_STORE_ERROR, SW_STORE_ERROR_VALUE);
  g_assert_cmpstr (error->message, ==, message);
  g_assert_cmpuint (catalogue->rolls->len, ==, 0);
  g_assert_cmpuint (catalogue->pins->len, ==, 0);
}

#define ROLL                                                                             \
  "{ \"id\": \"r\", \"source\": \"s\", \"evidence\": \"seen\", \"width_m\": 1,\n"        \
  "\"length_m\": 30, \"core_m\": 0 }"

static void
test_refused (void)
{
  check_refused (
      "rolls", "{ \"version\": 1, \"rolls\": [ " ROLL ",\n" ROLL " ] }",
      "c.json:3: rolls[1].id: found \"r\", expected an id that no other entry has");
  check_refused ("rolls", "{ \"version\": 2, \"rolls\": [ " ROLL " ] }",
                 "c.json:1: version: found 2, expected a number from 1 to 1");
  check_refused (
      "rolls", "{ \"version\": 1,\n\"rolls\": [] }",
      "c.json:2: rolls: found an empty list, expected a list with at least one entry");
  check_refused (
      "rolls",
      "{ \"version\": 1, \"rolls\": [ { \"id\": \"r\", \"evidence\": \"seen\",\n"
      "\"width_m\": 1, \"length_m\": 30, \"core_m\": 0 } ] }",
      "c.json:1: rolls[0].source: missing, expected text in quotes");
  check_refused (
      "rolls",
      "{ \"version\": 1, \"rolls\": [ { \"id\": \"r\", \"source\": \"s\",\n"
      "\"evidence\": \"seen\", \"width_m\": 1, \"length_m\": 30,\n\"coer_m\": 0 } ] }",
      "c.json:3: rolls[0].coer_m: unknown key, expected one of \"id\", \"source\", "
      "\"evidence\", \"width_m\", \"length_m\", \"core_m\"");
  check_refused (
      "rolls",
      "{ \"version\": 1, \"rolls\": [ { \"id\": \"r\", \"source\": \"s\",\n"
      "\"evidence\": \"user\", \"width_m\": 1, \"length_m\": 30, \"core_m\": 0 } ] }",
      "c.json:2: rolls[0].evidence: found \"user\", expected one of \"seen\", "
      "\"second-hand\", \"memory\", \"derived\", \"proposed\", \"common-practice\"");
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/store/catalogue/everything-has-a-source",
                   test_everything_has_a_source);
  g_test_add_func ("/store/catalogue/nets", test_nets);
  g_test_add_func ("/store/catalogue/values-in-range", test_values_in_range);
  g_test_add_func ("/store/catalogue/published-numbers", test_published_numbers);
  g_test_add_func ("/store/catalogue/gaps-are-owned", test_gaps_are_owned);
  g_test_add_func ("/store/catalogue/common-practice", test_common_practice);
  g_test_add_func ("/store/catalogue/common-allowances", test_common_allowances);
  g_test_add_func ("/store/catalogue/density-rows", test_density_rows);
  g_test_add_func ("/store/catalogue/blanket-classes", test_blanket_classes);
  g_test_add_func ("/store/catalogue/soils", test_soils);
  g_test_add_func ("/store/catalogue/pins-serve-their-nominal-length",
                   test_pins_serve_their_nominal_length);
  g_test_add_func ("/store/catalogue/every-name-has-words", test_every_name_has_words);
  g_test_add_func ("/store/catalogue/sources-in-every-language",
                   test_sources_in_every_language);
  g_test_add_func ("/store/catalogue/no-idle-sources", test_no_idle_sources);
  g_test_add_func ("/store/catalogue/default-job", test_default_job_is_in_the_catalogue);
  g_test_add_func ("/store/catalogue/refused", test_refused);
  return g_test_run ();
}
