/* SPDX-License-Identifier: MIT */
#undef G_DISABLE_ASSERT
#include "pack-fixture.h"
#include <jansson.h>
#include <slopewright/sheet/practices.h>
#include <slopewright/sheet/report.h>
#include <string.h>

static const SwNumberStyle metric = { SW_UNITS_METRIC, '.', NULL };

static json_t *
tally_json (const Example *example)
{
  g_autofree char *text =
      sw_report_tally (example->result, example->texts, metric, SW_TALLY_JSON);
  json_error_t error;
  json_t *root = json_loads (text, JSON_REJECT_DUPLICATES, &error);

  if (root == NULL)
    g_error ("line %d: %s", error.line, error.text);
  g_assert_true (g_str_has_suffix (text, "}\n"));
  return root;
}

static double
number_at (const json_t *root, const char *group, const char *key)
{
  const json_t *number = json_object_get (json_object_get (root, group), key);

  g_assert_true (json_is_number (number));
  return json_number_value (number);
}

/* Source: examples/pinfold-cutting.expected.md, worked by hand. */
static void
test_json (void)
{
  g_autoptr (Example) example = example_new ("pinfold-cutting");
  json_t *root = tally_json (example);

  g_assert_cmpfloat_with_epsilon (number_at (root, "areas", "net_m2"), 1502.64, 0.005);
  g_assert_cmpfloat_with_epsilon (number_at (root, "areas", "order_m2"), 1757.53, 0.005);
  g_assert_cmpfloat_with_epsilon (number_at (root, "rolls", "needed"), 21.0, 1e-9);
  g_assert_cmpfloat_with_epsilon (number_at (root, "trenches", "key_m"), 96.0, 1e-9);
  g_assert_cmpuint (json_array_size (json_object_get (root, "runs")), ==, 42);
  g_assert_cmpuint (json_array_size (json_object_get (root, "cut_list")), ==, 21);
  g_assert_cmpuint (json_array_size (json_object_get (root, "workings")), ==,
                    example->result->tally->workings->len);
  json_decref (root);
}

/* Pieces and off-cut of every roll are the roll: 34.3 m. */
static void
test_json_balance (void)
{
  g_autoptr (Example) example = example_new ("pinfold-cutting");
  json_t *root = tally_json (example), *roll, *piece;
  size_t i, k;

  json_array_foreach (json_object_get (root, "cut_list"), i, roll)
  {
    double sum_m = json_number_value (json_object_get (roll, "offcut_m"));

    json_array_foreach (json_object_get (roll, "pieces"), k, piece) sum_m +=
        json_number_value (json_object_get (piece, "length_m"));
    g_assert_cmpfloat_with_epsilon (sum_m, 34.3, 1e-6);
  }
  json_decref (root);
}

/* Fields of a line of RFC 4180, unquoted. */
static GPtrArray *
csv_fields (const char **rest)
{
  GPtrArray *fields = g_ptr_array_new_with_free_func (g_free);
  GString *field = g_string_new (NULL);
  gboolean quoted = FALSE;
  const char *c = *rest;

  for (; *c != '\0' && (quoted || !g_str_has_prefix (c, "\r\n")); c++)
    if (*c == '"' && quoted && c[1] == '"')
      g_string_append_c (field, *c++);
    else if (*c == '"')
      quoted = !quoted;
    else if (*c == ',' && !quoted)
      {
        g_ptr_array_add (fields, g_strdup (field->str));
        g_string_truncate (field, 0);
      }
    else
      g_string_append_c (field, *c);
  g_ptr_array_add (fields, g_string_free (field, FALSE));
  g_assert_true (g_str_has_prefix (c, "\r\n"));
  *rest = c + 2;
  return fields;
}

/* The row of that name; NULL if none. Checks that every row has four fields. */
static GPtrArray *
csv_row (const char *csv, const char *name)
{
  GPtrArray *found = NULL;

  while (*csv != '\0')
    {
      GPtrArray *fields = csv_fields (&csv);

      g_assert_cmpuint (fields->len, ==, 4);
      if (found == NULL && g_str_equal (fields->pdata[0], name))
        found = fields;
      else
        g_ptr_array_unref (fields);
    }
  return found;
}

/* Source: examples/sallow-bank.expected.md, worked by hand. */
static void
test_csv (void)
{
  g_autoptr (Example) example = example_new ("sallow-bank");
  g_autofree char *csv =
      sw_report_tally (example->result, example->texts, metric, SW_TALLY_CSV);
  g_autoptr (GPtrArray) head = csv_row (csv, "name"),
                        cut = csv_row (csv, "A.1.cut-length");
  g_autoptr (GPtrArray) rolls = csv_row (csv, "rolls");

  g_assert_true (g_str_has_prefix (csv, "name,title,value,unit\r\n"));
  g_assert_cmpstr (head->pdata[3], ==, "unit");
  g_assert_cmpfloat_with_epsilon (g_ascii_strtod (cut->pdata[2], NULL), 8.3582, 0.00005);
  g_assert_cmpstr (cut->pdata[3], ==, "m");
  g_assert_cmpstr (rolls->pdata[2], ==, "6");
  g_assert_cmpstr (rolls->pdata[3], ==, "1");
}

static void
change_id (SwJob *job)
{
  sw_text_set (&((SwFace *) job->faces->pdata[0])->id, "-A");
}

/* A spreadsheet would work "-A.1.length" out; a title may hold anything. */
static void
test_csv_guard_and_quotes (void)
{
  g_autoptr (Example) example = example_new_changed ("sallow-bank", change_id);
  g_autofree char *csv = NULL;
  g_autoptr (GPtrArray) row = NULL, formula = NULL;

  sw_texts_add (example->texts, "working.tier_length.title",
                "Length, \"true\"\nof the face");
  sw_texts_add (example->texts, "working.rolls.title", "=1+1");
  csv = sw_report_tally (example->result, example->texts, metric, SW_TALLY_CSV);
  row = csv_row (csv, "'-A.1.length");
  formula = csv_row (csv, "rolls");
  g_assert_nonnull (row);
  g_assert_cmpstr (row->pdata[1], ==, "Length, \"true\"\nof the face");
  g_assert_nonnull (strstr (csv, "\"Length, \"\"true\"\"\nof the face\""));
  g_assert_cmpstr (formula->pdata[1], ==, "'=1+1");
}

static void
test_text (void)
{
  g_autoptr (Example) example = example_new ("pinfold-cutting");
  g_autofree char *text =
      sw_report_tally (example->result, example->texts, metric, SW_TALLY_TEXT);

  g_assert_true (g_utf8_validate (text, -1, NULL));
  g_assert_nonnull (strstr (text, "\nFace A, East cutting\n"));
  g_assert_nonnull (strstr (text, "\nRoll 21 "));
  g_assert_nonnull (strstr (text, "A-1 14.77\xc2\xa0m + "));
  g_assert_null (strchr (text, '{'));
}

/* Hand: (48 - 0.10) / (2.44 - 0.10) = 20.47, 21 runs. */
static void
test_working (void)
{
  g_autoptr (Example) example = example_new ("pinfold-cutting");
  g_autofree char *report =
      sw_report_working (example->result, "A.1.runs", example->texts, metric);

  g_assert_true (g_str_has_prefix (report, "Runs side by side (A.1.runs): 21\n"));
  g_assert_nonnull (strstr (report, "see A.1.width"));
  g_assert_nonnull (strstr (report, "Check: (48.00\xc2\xa0m − 0.10\xc2\xa0m) ÷ "
                                    "(2.44\xc2\xa0m − 0.10\xc2\xa0m), next whole "
                                    "number: 21."));
  g_assert_null (sw_report_working (example->result, "A.9.runs", example->texts, metric));
}

/* Hand: 48 m is 157.4803 ft, 6 in is 0.50 ft; 48 x 0.15 x 0.15 m³ is 38.1398 ft³ and
 * 1.41 yd³ (27 ft³ each). */
static void
test_working_in_feet (void)
{
  g_autoptr (Example) example = example_new ("pinfold-cutting");
  const SwWorking *volume =
      sw_tally_working (example->result->tally, "A.1.key-trench-volume");
  g_autofree char *check = sw_report_working_check (
      volume, example->texts, (SwNumberStyle){ SW_UNITS_US, '.', NULL });

  g_assert_nonnull (strstr (check, "157.4803\xc2\xa0"
                                   "ft × 0.4921\xc2\xa0"
                                   "ft × 0.4921\xc2\xa0"
                                   "ft = 38.1398\xc2\xa0"
                                   "ft³ = 1.41\xc2\xa0yd³"));
}

/* Every working of every example says itself without a gap. */
static void
test_every_working (gconstpointer name)
{
  g_autoptr (Example) example = example_new (name);
  const GPtrArray *workings = example->result->tally->workings;

  for (guint i = 0; i < workings->len; i++)
    {
      const SwWorking *working = g_ptr_array_index (workings, i);
      g_autofree char *report =
          sw_report_working (example->result, working->name, example->texts, metric);

      if (strchr (report, '{') != NULL || strstr (report, "working.") != NULL
          || strstr (report, "report.") != NULL || strstr (report, "practice.") != NULL)
        g_error ("%s has a gap:\n%s", working->name, report);
    }
}

static void
test_findings (void)
{
  g_autoptr (Example) example = example_new ("sallow-bank");
  g_autofree char *report = sw_report_findings (example->result, example->texts, metric);

  g_assert_true (g_str_has_prefix (report, "Stop: Concentrated flow reaches the face\n"));
  g_assert_nonnull (strstr (report, "2.2H:1V · 24.4° · 45.5\xc2\xa0%"));
  g_assert_null (strchr (report, '{'));
  g_assert_null (strstr (report, "finding."));
}

static const SwPracticeLine *
line_of (const GPtrArray *lines, const char *label)
{
  for (guint i = 0; i < lines->len; i++)
    {
      const SwPracticeLine *line = lines->pdata[i];

      if (g_str_equal (line->label, label))
        return line;
    }
  g_error ("no line \"%s\"", label);
}

/*
 * By hand: the other practice digs its key trench 6 in (152.4 mm) deep instead of
 * 150 mm; the lining goes down, across and up, so each of the 21 pieces is 2 × 2.4 mm
 * longer, 0.10 m in all; the trench of 23 m takes 23 × 0.15 × 0.0024 = 0.0083 m3 more.
 */
static void
test_practices (void)
{
  g_autoptr (Example) example = example_new ("sallow-bank");
  g_autoptr (SwResult) other = sw_result_of_practice (example->result, "illinois-830");
  g_autoptr (GPtrArray) lines =
      sw_report_practices (example->result, other, example->texts, metric);
  const SwPracticeLine *depth = line_of (lines, "Key trench depth");
  const SwPracticeLine *runs = line_of (lines, "Runs");

  g_assert_cmpfloat_with_epsilon (other->tally->piece_length_m
                                      - example->result->tally->piece_length_m,
                                  21 * 2 * 0.0024, 1e-6);
  g_assert_cmpfloat_with_epsilon (other->tally->trench_bank_m3
                                      - example->result->tally->trench_bank_m3,
                                  23.0 * 0.15 * 0.0024, 1e-6);
  g_assert_cmpstr (depth->now, ==, "150\u00a0mm");
  g_assert_cmpstr (depth->other, ==, "152\u00a0mm");
  g_assert_true (depth->differs);
  g_assert_cmpstr (runs->other, ==, "21");
  g_assert_false (runs->differs);
}

/* A practice under which nothing can be laid: said in words, no number guessed. */
static void
test_practices_unlaid (void)
{
  g_autoptr (Example) example = example_new ("sallow-bank");
  g_autoptr (SwJob) job = sw_job_copy (example->result->job);
  g_autoptr (SwResult) broken = NULL;
  g_autoptr (GPtrArray) lines = NULL;

  job->roll_width_m = 0.1; /* as wide as its side lap */
  broken = sw_result_new (job, example->result->catalogue);
  g_assert_cmpint (broken->status, !=, SW_OK);
  lines = sw_report_practices (example->result, broken, example->texts, metric);
  g_assert_cmpstr (line_of (lines, "Runs")->other, ==, "–");
  g_assert_cmpstr (line_of (lines, "Findings")->other, ==,
                   sw_status_text (broken->status));
}

static void
test_same_bytes (void)
{
  g_autoptr (Example) one = example_new ("sallow-bank"),
                      two = example_new ("sallow-bank");

  for (int format = SW_TALLY_TEXT; format <= SW_TALLY_JSON; format++)
    {
      g_autofree char *a =
          sw_report_tally (one->result, one->texts, metric, (SwTallyFormat) format);
      g_autofree char *b =
          sw_report_tally (two->result, two->texts, metric, (SwTallyFormat) format);

      g_assert_cmpstr (a, ==, b);
    }
}

/* In every language: the program's own number says once whose it is, an agency's names its
 * text and how that was read, and a reason that somebody typed stays as it was typed. */
static void
test_sources (void)
{
  static const struct
  {
    const char *language, *source;
    SwEvidence evidence;
    const char *want;
  } rows[] = {
    { "en", "source.own", SW_EVIDENCE_PROPOSED, "this program's default" },
    { "fr", "source.own", SW_EVIDENCE_PROPOSED, "valeur propre à ce programme" },
    { "es", "source.own", SW_EVIDENCE_PROPOSED, "valor propio de este programa" },
    { "es", "source.common-practice", SW_EVIDENCE_COMMON_PRACTICE,
      "práctica común, sin fuente" },
    { "es", "source.renton-213.20", SW_EVIDENCE_SEEN,
      "City of Renton, Washington, Standard Plan 213.20; leído en el texto de la propia "
      "agencia" },
    { "fr", "cerca a 0.7 m", SW_EVIDENCE_USER,
      "cerca a 0.7 m\302\240; saisi pour ce chantier" },
    { "fr", NULL, SW_EVIDENCE_PROPOSED, "valeur propre à ce programme" },
  };

  for (gsize i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      g_autoptr (SwTexts) texts = sw_texts_load (rows[i].language);
      g_autofree char *got =
          sw_report_source_words (rows[i].source, rows[i].evidence, texts);

      g_assert_cmpstr (got, ==, rows[i].want);
    }
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/sheet/report/json", test_json);
  g_test_add_func ("/sheet/report/json-balance", test_json_balance);
  g_test_add_func ("/sheet/report/csv", test_csv);
  g_test_add_func ("/sheet/report/csv-guard-and-quotes", test_csv_guard_and_quotes);
  g_test_add_func ("/sheet/report/text", test_text);
  g_test_add_func ("/sheet/report/working", test_working);
  g_test_add_func ("/sheet/report/working-in-feet", test_working_in_feet);
  g_test_add_data_func ("/sheet/report/every-working/cutting", "pinfold-cutting",
                        test_every_working);
  g_test_add_data_func ("/sheet/report/every-working/house", "sallow-bank",
                        test_every_working);
  g_test_add_data_func ("/sheet/report/every-working/nose", "cornice-ramp-nose",
                        test_every_working);
  g_test_add_func ("/sheet/report/findings", test_findings);
  g_test_add_func ("/sheet/report/practices", test_practices);
  g_test_add_func ("/sheet/report/practices-unlaid", test_practices_unlaid);
  g_test_add_func ("/sheet/report/same-bytes", test_same_bytes);
  g_test_add_func ("/sheet/report/sources", test_sources);
  return g_test_run ();
}
