/* SPDX-License-Identifier: MIT */
#undef G_DISABLE_ASSERT
#include <slopewright/store/store.h>

#include <glib/gstdio.h>
#include <locale.h>
#include <math.h>
#include <string.h>

static SwJob *
parse (const char *text)
{
  g_autoptr (GError) error = NULL;
  SwJob *job = sw_job_parse (text, strlen (text), "job", &error);

  g_assert_no_error (error);
  return job;
}

static char *
sample_text (const char *name)
{
  g_autofree char *path = g_test_build_filename (G_TEST_DIST, "data", name, NULL);
  char *text = NULL;

  g_assert_true (g_file_get_contents (path, &text, NULL, NULL));
  return text;
}

static void
add_obstacle_and_zone (SwFace *face)
{
  static const SwPoint box[] = { { 5.0, 4.0 }, { 6.1, 4.0 }, { 6.1, 5.123456789012345 } };
  SwObstacle *obstacle = sw_obstacle_new ("box-1");
  SwZone *zone = sw_zone_new ("sand");

  sw_text_set (&obstacle->name, "Utility \"box\"");
  sw_obstacle_set_outline (obstacle, box, G_N_ELEMENTS (box));
  g_ptr_array_add (face->obstacles, obstacle);
  sw_text_set (&zone->name, "Sand lens");
  sw_text_set (&zone->soil_id, "sand");
  sw_zone_set_outline (zone, box, G_N_ELEMENTS (box));
  zone->loose = TRUE;
  zone->topsoil_m = 0.05;
  g_ptr_array_add (face->zones, zone);
}

static void
add_mix (SwSeedMix *mix)
{
  const SwSeedSpecies by_mass = { 0.98, 0.85, 0.05, 550000.0, 0.0034, 0.0, "Red fescue" };
  const SwSeedSpecies by_seeds = { 0.9, 0.8, 0.0, 4.2e6, 0.0, 1250.5, "Clover \"A\"" };

  sw_text_set (&mix->name, "Verge mix");
  sw_seed_mix_add (mix, &by_mass);
  sw_seed_mix_add (mix, &by_seeds);
}

/* Every number another, none of them round. */
static void
fill_plan (SwWorkPlan *plan)
{
  for (int i = 0; i < SW_PLAN_COUNT; i++)
    plan->values[i] = sw_plan_keys[i].unit == SW_UNIT_COUNT
                          ? 7.0
                          : fmin (sw_plan_keys[i].most,
                                  sw_plan_keys[i].least + 0.1234567 + i * 0.001);
  sw_text_set (&plan->fertiliser, "Starter");
  sw_text_set (&plan->currency, "EUR");
  plan->allowance = SW_ALLOWANCE_SCALED;
  plan->spare_roll = TRUE;
  plan->cost_in_pack = TRUE;
}

/* A job in which nothing stands at its default. */
static SwJob *
full_job (void)
{
  static const SwPoint section[] = {
    { -2.0, 6.1 }, { 0.0, 6.0 }, { 12.0, 0.1 }, { 14.0, 0.0 }
  };
  static const SwPoint outline[] = {
    { 0.0, 0.0 }, { 48.0, 0.0 }, { 47.123456789012345, 12.0 }, { 0.0, 12.0 }
  };
  static const SwStockLine stock[] = { { SW_STOCK_ON_HAND, 12.4, 2 },
                                       { SW_STOCK_ORDER, 50.0, 0 } };
  SwJob *job = sw_job_new_default ();
  SwFace *face = sw_face_new ("B-2");

  sw_text_set (&job->card.name, "Sandlark Bluff Road");
  sw_text_set (&job->card.notes, "two lines\nand \"quotes\" \\ é – 土");
  job->units = SW_UNITS_US;
  job->paper = SW_PAPER_TABLOID;
  sw_job_set_override (job, SW_PRACTICE_SIDE_LAP_M, 0.15, "windy");
  sw_job_set_override (job, SW_PRACTICE_COVER, 0.8, "");
  sw_text_set (&job->own.name, "County drawing D-14");
  sw_text_set (&job->own.source, "County standard drawings, 2024");
  job->own.toe_kind = 1 + SW_TOE_FOLD;
  job->own.trench_lining = 1 + SW_LINING_DOWN;
  job->own.toe_lining = 1 + SW_LINING_DOWN_ACROSS_UP;
  job->roll_width_m = 1.2192;
  job->blanket_mass_kg_per_m2 = 0.271;
  job->blanket_thickness_m = 0.0065;
  g_array_append_vals (job->stock, stock, G_N_ELEMENTS (stock));
  job->narrow_width_m = 0.6096;
  job->narrow_length_m = 25.0;
  job->surplus = SW_SURPLUS_NARROW;
  sw_text_set (&job->pin_id, "staple-200");
  add_mix (&job->seed);
  fill_plan (&job->plan);
  job->site[SW_SITE_SEEPAGE] = SW_ANSWER_NO;
  job->site[SW_SITE_WILDLIFE] = SW_ANSWER_YES;
  sw_face_set_section (face, section, G_N_ELEMENTS (section));
  sw_face_set_outline (face, outline, G_N_ELEMENTS (outline));
  add_obstacle_and_zone (face);
  job->zone_rule = SW_ZONE_SPLIT;
  face->crest = 1;
  face->toe = 2;
  sw_text_set (&face->soil_id, "sand");
  face->loose = TRUE;
  face->topsoil_m = 0.1;
  face->leeward = SW_SIDE_RIGHT;
  face->bench = SW_BENCH_CONTINUOUS;
  face->fan = SW_FAN_INFILL;
  face->obtained = SW_OBTAINED_TAPED_ANGLE;
  face->length_error_m = 0.05;
  face->angle_error_rad = 0.5 * (G_PI / 180.0);
  g_ptr_array_add (job->faces, face);
  return job;
}

static void
test_round_trip (void)
{
  g_autoptr (SwJob) job = full_job ();
  g_autofree char *text = sw_job_write (job);
  g_autoptr (SwJob) back = parse (text);
  g_autofree char *again = sw_job_write (back);

  g_assert_true (sw_job_equal (job, back));
  g_assert_cmpstr (text, ==, again);
  g_assert_true (g_str_has_prefix (text, "{\n  \"slopewright\": 1,\n"));
  g_assert_true (g_str_has_suffix (text, "}\n"));
}

static void
test_numbers_are_short (void)
{
  g_autoptr (SwJob) job = full_job ();
  g_autofree char *text = sw_job_write (job);

  g_assert_nonnull (strstr (text, "\"length_m\": 34.3,"));
  g_assert_nonnull (strstr (text, "\"width_m\": 1.2192,"));
  g_assert_nonnull (strstr (text, "\"angle_error_deg\": 0.5"));
  g_assert_nonnull (strstr (text, "[[-2, 6.1], [0, 6], [12, 0.1], [14, 0]]"));
}

/* Files of before had one species: it is read as a mix of one, written in the new form,
 * and no old key stays behind to contradict it. */
static void
test_single_species (void)
{
  g_autofree char *old = sample_text ("good/seed-single.slope.json");
  g_autoptr (SwJob) job = parse (old);
  g_autofree char *text = sw_job_write (job);
  g_autoptr (SwJob) back = parse (text);

  g_assert_cmpuint (job->seed.n_species, ==, 1);
  g_assert_cmpstr (job->seed.name, ==, "Fescue");
  g_assert_cmpstr (job->seed.species[0].name, ==, "Fescue");
  g_assert_cmpfloat (job->seed.species[0].pls_kg_per_m2, ==, 0.003);
  g_assert_cmpfloat (job->seed.species[0].purity, ==, 0.98);
  g_assert_cmpfloat (job->seed.species[0].germination, ==, 0.8);
  g_assert_null (job->unknown_json);
  g_assert_true (sw_job_equal (job, back));
}

/* Every tenth of a degree comes back as the same radians and the same text. */
static void
test_degrees_are_stable (void)
{
  for (int tenths = 0; tenths <= 450; tenths++)
    {
      g_autoptr (SwJob) job = sw_job_new_default ();
      SwFace *face = g_ptr_array_index (job->faces, 0);
      g_autofree char *want = g_strdup_printf (
          tenths % 10 == 0 ? "\"angle_error_deg\": %d\n" : "\"angle_error_deg\": %d.%d\n",
          tenths / 10, tenths % 10);
      face->angle_error_rad = tenths / 10.0 * (G_PI / 180.0);
      g_autofree char *text = sw_job_write (job);
      g_autoptr (SwJob) back = parse (text);
      g_assert_nonnull (strstr (text, want));
      g_assert_true (sw_job_equal (job, back));
    }
}

/* Site numbers come back bit for bit; rain is written in mm/h, as whoever typed it. */
static void
test_site_numbers_are_stable (void)
{
  for (int tenths = 10; tenths <= 5000; tenths += 7)
    {
      g_autoptr (SwJob) job = sw_job_new_default ();
      g_autofree char *want = g_strdup_printf (
          tenths % 10 == 0 ? "\"rain_mm_per_h\": %d,\n" : "\"rain_mm_per_h\": %d.%d,\n",
          tenths / 10, tenths % 10);

      job->numbers.values[SW_NUMBER_RAIN] = tenths / 10.0 * (1e-3 / 3600.0);
      job->numbers.values[SW_NUMBER_EROSIVITY] = 117.5;
      job->numbers.values[SW_NUMBER_FRICTION_RAD] = 32.7 * (G_PI / 180.0);
      job->numbers.loss_units = SW_LOSS_US;
      job->numbers.mown = SW_ANSWER_YES;
      g_autofree char *text = sw_job_write (job);
      g_autoptr (SwJob) back = parse (text);

      g_assert_nonnull (strstr (text, want));
      g_assert_nonnull (strstr (text, "\"friction_deg\": 32.7,"));
      g_assert_true (sw_job_equal (job, back));
    }
}

/* Made on the spot, because machines that test seldom have one installed. */
static gboolean
enter_comma_locale (const char *folder)
{
  g_autofree char *place = g_build_filename (folder, "comma.UTF-8", NULL);
  const char *command[] = { "localedef", "-i", "de_DE", "-f", "UTF-8", place, NULL };
  const GSpawnFlags quiet =
      G_SPAWN_SEARCH_PATH | G_SPAWN_STDOUT_TO_DEV_NULL | G_SPAWN_STDERR_TO_DEV_NULL;

  g_spawn_sync (NULL, (char **) command, NULL, quiet, NULL, NULL, NULL, NULL, NULL, NULL);
  g_setenv ("LOCPATH", folder, TRUE);
  return setlocale (LC_ALL, "comma.UTF-8") != NULL;
}

static void
test_comma_locale (void)
{
  g_autofree char *folder = g_dir_make_tmp ("slope-XXXXXX", NULL);
  g_autoptr (SwJob) job = full_job ();
  g_autofree char *text = sw_job_write (job);
  gboolean entered = enter_comma_locale (folder);
  g_autofree char *half = g_strdup_printf ("%.1f", 0.5);
  g_autofree char *again = sw_job_write (job);
  g_autoptr (SwJob) back = parse (text);
  const char *remove[] = { "rm", "-r", folder, NULL };

  setlocale (LC_ALL, "C");
  g_unsetenv ("LOCPATH");
  g_spawn_sync (NULL, (char **) remove, NULL, G_SPAWN_SEARCH_PATH, NULL, NULL, NULL, NULL,
                NULL, NULL);
  g_assert_cmpstr (text, ==, again);
  g_assert_true (sw_job_equal (job, back));
  if (entered)
    g_assert_cmpstr (half, ==, "0,5");
  else
    g_test_skip ("no locale with a decimal comma could be made");
}

static void
test_unknown_keys_survive (void)
{
  g_autofree char *text = sample_text ("good/unknown-keys.slope.json");
  g_autoptr (SwJob) loaded = parse (text);
  g_autoptr (SwJob) edited = sw_job_copy (loaded);

  g_assert_nonnull (loaded->unknown_json);
  sw_job_face (edited, "A")->topsoil_m = 0.1;
  g_ptr_array_insert (edited->faces, 0, sw_face_copy (sw_job_face (edited, "A")));
  sw_text_set (&((SwFace *) edited->faces->pdata[0])->id, "Z");
  g_autofree char *saved = sw_job_write (edited);
  /* Inside the face it came with, now the second, and at the end of the file. */
  g_assert_nonnull (strstr (saved, "\"drone\": {\n        \"flight\": 7,\n"
                                   "        \"tags\": [\"x\", null, 1.5]\n"));
  g_assert_true (strstr (saved, "\"drone\"") > strstr (saved, "\"id\": \"A\""));
  g_assert_true (strstr (saved, "\"id\": \"A\"") > strstr (saved, "\"id\": \"Z\""));
  g_assert_nonnull (strstr (saved, "\"plot\": [\n    1,\n"));
  g_autoptr (SwJob) again = parse (saved);
  g_assert_true (sw_job_equal (again, edited));
}

/* What this version knows and the user removed is not put back from the file. */
static void
test_removed_keys_stay_removed (void)
{
  g_autoptr (SwJob) job = full_job ();
  g_autofree char *text = sw_job_write (job);
  g_auto (GStrv) halves = g_strsplit (text, "\"why\": \"windy\"", 2);
  g_autofree char *noted =
      g_strconcat (halves[0], "\"why\": \"windy\", \"seen\": \"May\"", halves[1], NULL);
  g_autoptr (SwJob) edited = parse (noted);

  g_autofree char *kept = sw_job_write (edited);
  g_assert_nonnull (strstr (kept, "\"seen\": \"May\""));
  sw_job_clear_override (edited, SW_PRACTICE_SIDE_LAP_M);
  g_ptr_array_remove_index (edited->faces, 1);
  g_autofree char *saved = sw_job_write (edited);
  g_assert_null (strstr (saved, "side_lap_m"));
  g_assert_null (strstr (saved, "seen"));
  g_assert_null (strstr (saved, "B-2"));
  g_autoptr (SwJob) again = parse (saved);
  g_assert_cmpuint (again->n_overrides, ==, 1);
}

/* Columns: file, reader, schema, message; test-job-schema.py reads the third. */
static void
check_row (const char *row)
{
  g_auto (GStrv) cells = g_strsplit (row, "\t", 4);
  g_autofree char *name = g_strconcat (cells[0], ".slope.json", NULL);
  g_autofree char *path = g_test_build_filename (G_TEST_DIST, "data", name, NULL);
  g_autoptr (GFile) file = g_file_new_for_path (path);
  g_autoptr (GError) error = NULL;
  g_autoptr (SwJob) job = sw_job_load (file, &error);
  static const char *const codes[] = { "read", "syntax", "version", "value", "write" };

  if (strcmp (cells[1], "ok") == 0)
    {
      g_assert_no_error (error);
      g_assert_nonnull (job);
      return;
    }
  g_assert_null (job);
  g_autofree char *want = g_strconcat (path, ":", cells[3], NULL);
  g_assert_cmpstr (codes[error->code], ==, cells[1]);
  if (strcmp (cells[1], "syntax") == 0)
    error->message[MIN (strlen (want), strlen (error->message))] = '\0';
  g_assert_cmpstr (error->message, ==, want);
}

static void
test_table (void)
{
  g_autofree char *table = sample_text ("table.tsv");
  g_auto (GStrv) rows = g_strsplit (table, "\n", -1);
  guint checked = 0;

  for (char **row = rows; *row != NULL; row++)
    if (**row != '#' && **row != '\0')
      {
        check_row (*row);
        checked++;
      }
  g_assert_cmpuint (checked, >, 70);
}

static void
test_not_utf8 (void)
{
  static const char text[] = "{ \"slopewright\": 1,\n  \"units\": \"m\xe4\" }";
  g_autoptr (GError) error = NULL;

  g_assert_null (sw_job_parse (text, strlen (text), "job", &error));
  g_assert_error (error, SW_STORE_ERROR, SW_STORE_ERROR_SYNTAX);
  g_assert_true (g_str_has_prefix (error->message, "job:2: not a JSON file: "));
}

/* Every cut of a good file is refused or, when only the last line end is gone, read. */
static void
test_truncated (void)
{
  g_autoptr (SwJob) job = full_job ();
  g_autofree char *text = sw_job_write (job);
  gsize length = strlen (text);

  for (gsize n = 0; n < length; n++)
    {
      g_autoptr (GError) error = NULL;
      g_autoptr (SwJob) cut = sw_job_parse (text, n, "cut", &error);
      g_assert_cmpint (cut != NULL, ==, n == length - 1);
      if (cut == NULL)
        g_assert_error (error, SW_STORE_ERROR, SW_STORE_ERROR_SYNTAX);
    }
}

/* One byte changed anywhere: never a crash, and never a job without a face. */
static void
test_flipped_bytes (void)
{
  g_autoptr (SwJob) job = full_job ();
  g_autofree char *text = sw_job_write (job);
  gsize length = strlen (text);
  static const char bytes[] = "\"{}[],:0-9e\\\xff ";

  for (gsize n = 0; n < length; n += 3)
    {
      g_autofree char *changed = g_memdup2 (text, length);
      g_autoptr (GError) error = NULL;
      changed[n] = bytes[n % (sizeof bytes - 1)];
      g_autoptr (SwJob) read = sw_job_parse (changed, length, "changed", &error);
      g_assert_true ((read == NULL) == (error != NULL));
      if (read != NULL)
        g_assert_cmpuint (read->faces->len, >, 0);
    }
}

static GFile *
file_in (const char *folder, const char *name)
{
  g_autofree char *path = g_build_filename (folder, name, NULL);

  return g_file_new_for_path (path);
}

static void
test_save_and_load (void)
{
  g_autofree char *folder = g_dir_make_tmp ("slope-XXXXXX", NULL);
  g_autoptr (GFile) file = file_in (folder, "a b.slope.json");
  g_autoptr (SwJob) job = full_job ();
  g_autoptr (GError) error = NULL;

  g_assert_true (sw_job_save (job, file, &error));
  g_assert_no_error (error);
  g_assert_cmpint (g_chmod (g_file_peek_path (file), 0600), ==, 0);
  g_assert_true (sw_job_save (job, file, &error));
  g_autoptr (SwJob) back = sw_job_load (file, &error);
  g_assert_true (sw_job_equal (job, back));

  GStatBuf info;
  g_assert_cmpint (g_stat (g_file_peek_path (file), &info), ==, 0);
  g_assert_cmpint (info.st_mode & 0777, ==, 0600);
  g_unlink (g_file_peek_path (file));
  /* Nothing of the writing is left beside the file. */
  g_assert_cmpint (g_rmdir (folder), ==, 0);
}

static void
test_save_follows_a_link (void)
{
  g_autofree char *folder = g_dir_make_tmp ("slope-XXXXXX", NULL);
  g_autoptr (GFile) file = file_in (folder, "real.slope.json");
  g_autoptr (GFile) link = file_in (folder, "link.slope.json");
  g_autoptr (SwJob) job = full_job ();

  g_assert_true (g_file_set_contents (g_file_peek_path (file), "old", -1, NULL));
  g_assert_true (g_file_make_symbolic_link (link, "real.slope.json", NULL, NULL));
  g_assert_true (sw_job_save (job, link, NULL));
  g_assert_true (g_file_test (g_file_peek_path (link), G_FILE_TEST_IS_SYMLINK));
  g_autoptr (SwJob) back = sw_job_load (file, NULL);
  g_assert_true (sw_job_equal (job, back));
  g_unlink (g_file_peek_path (link));
  g_unlink (g_file_peek_path (file));
  g_rmdir (folder);
}

/* A job that could not be read again leaves the old file as it was. */
static void
test_save_refuses_what_cannot_be_read (void)
{
  g_autofree char *folder = g_dir_make_tmp ("slope-XXXXXX", NULL);
  g_autoptr (GFile) file = file_in (folder, "job.slope.json");
  g_autoptr (SwJob) job = full_job ();
  g_autoptr (GError) error = NULL;

  g_assert_true (sw_job_save (job, file, NULL));
  sw_job_face (job, "B-2")->topsoil_m = NAN;
  g_assert_false (sw_job_save (job, file, &error));
  g_assert_error (error, SW_STORE_ERROR, SW_STORE_ERROR_WRITE);
  g_assert_nonnull (strstr (error->message, "faces[1].topsoil_m: found null"));
  g_autoptr (SwJob) back = sw_job_load (file, NULL);
  g_assert_cmpfloat (sw_job_face (back, "B-2")->topsoil_m, ==, 0.1);
  g_unlink (g_file_peek_path (file));
  g_rmdir (folder);
}

static void
test_no_file (void)
{
  g_autoptr (GFile) file = g_file_new_for_path ("/nowhere/at all/job.slope.json");
  g_autoptr (SwJob) job = full_job ();
  g_autoptr (GError) load_error = NULL;
  g_autoptr (GError) save_error = NULL;

  g_assert_null (sw_job_load (file, &load_error));
  g_assert_error (load_error, SW_STORE_ERROR, SW_STORE_ERROR_READ);
  g_assert_true (g_str_has_prefix (load_error->message,
                                   "/nowhere/at all/job.slope.json: cannot be read: "));
  g_assert_false (sw_job_save (job, file, &save_error));
  g_assert_error (save_error, SW_STORE_ERROR, SW_STORE_ERROR_WRITE);
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/store/job/round-trip", test_round_trip);
  g_test_add_func ("/store/job/numbers-are-short", test_numbers_are_short);
  g_test_add_func ("/store/job-file/single-species", test_single_species);
  g_test_add_func ("/store/job/site-numbers-are-stable", test_site_numbers_are_stable);
  g_test_add_func ("/store/job/degrees-are-stable", test_degrees_are_stable);
  g_test_add_func ("/store/job/comma-locale", test_comma_locale);
  g_test_add_func ("/store/job/unknown-keys-survive", test_unknown_keys_survive);
  g_test_add_func ("/store/job/removed-keys-stay-removed",
                   test_removed_keys_stay_removed);
  g_test_add_func ("/store/job/table", test_table);
  g_test_add_func ("/store/job/not-utf8", test_not_utf8);
  g_test_add_func ("/store/job/truncated", test_truncated);
  g_test_add_func ("/store/job/flipped-bytes", test_flipped_bytes);
  g_test_add_func ("/store/job/save-and-load", test_save_and_load);
  g_test_add_func ("/store/job/save-follows-a-link", test_save_follows_a_link);
  g_test_add_func ("/store/job/save-refuses-what-cannot-be-read",
                   test_save_refuses_what_cannot_be_read);
  g_test_add_func ("/store/job/no-file", test_no_file);
  return g_test_run ();
}
