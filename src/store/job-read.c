/* SPDX-License-Identifier: MIT */
#include "job-fields.h"

#include <glib/gi18n.h>
#include <math.h>
#include <slopewright/judge/sowing-window.h>
#include <string.h>

static void
read_version (const SwJsonPlace *root, gboolean newer_too)
{
  SwJsonPlace place = sw_json_member (root, "slopewright");
  double version = json_number_value (place.value);

  if (!json_is_number (place.value) || version < 1.0 || floor (version) != version)
    sw_json_expected (&place,
                      _ ("%d, the format of the file; without it this is not a job file"),
                      SW_JOB_FORMAT_VERSION);
  else if (version > SW_JOB_FORMAT_VERSION && !newer_too)
    sw_json_trouble (&place, SW_STORE_ERROR_VERSION,
                     _ ("made by a newer version of the program (found format %.15g, "
                        "expected at most %d): open it there, or update this program; "
                        "the file was not changed"),
                     version, SW_JOB_FORMAT_VERSION);
}

static void
check_month_day (const SwJsonPlace *card, const char *key, const char *text)
{
  SwJsonPlace place = sw_json_member (card, key);
  int month, day;

  if (*text != '\0' && !sw_month_day_parse (text, &month, &day))
    sw_json_expected (&place, _ ("a day of the year such as \"09-01\", or \"\""));
}

static void
read_card (const SwJsonPlace *root, SwJobCard *card)
{
  SwJsonPlace place = sw_json_member (root, "card");

  if (place.value == NULL)
    return;
  for (gsize i = 0; i < sw_n_card_lines; i++)
    sw_read_text (&place, sw_card_lines[i].key,
                  G_STRUCT_MEMBER_P (card, sw_card_lines[i].offset));
  check_month_day (&place, "sow_from", card->sow_from);
  check_month_day (&place, "sow_to", card->sow_to);
}

static void
read_override (const SwJsonPlace *place, SwJob *job)
{
  SwJsonPlace key = sw_json_member (place, "key");
  SwJsonPlace number = sw_json_member (place, "value");
  g_autofree char *name = sw_json_words (&key);
  g_autofree char *why = g_strdup ("");
  SwPracticeValue value = sw_practice_value_from_key (name);

  if (value == SW_PRACTICE_VALUE_COUNT)
    {
      sw_json_expected (&key, _ ("a practice value such as \"side_lap_m\""));
      return;
    }
  for (guint i = 0; i < job->n_overrides; i++)
    if (job->overrides[i].value == value)
      sw_json_expected (&key, _ ("a practice value that no other override replaces"));
  sw_read_text (place, "why", &why);
  sw_job_set_override (job, value,
                       sw_json_number (&number, sw_json_practice_range (value)), why);
}

static void
read_own_practice (const SwJsonPlace *practice, SwOwnPractice *own)
{
  SwJsonPlace place = sw_json_member (practice, "own");

  if (place.value == NULL)
    return;
  sw_read_text (&place, "name", &own->name);
  sw_read_text (&place, "source", &own->source);
  own->toe_kind = (guint) sw_read_option (&place, "toe_kind", sw_own_toe_words);
  own->trench_lining =
      (guint) sw_read_option (&place, "trench_lining", sw_own_lining_words);
  own->toe_lining = (guint) sw_read_option (&place, "toe_lining", sw_own_lining_words);
}

static void
read_practice (const SwJsonPlace *root, SwJob *job)
{
  SwJsonPlace place = sw_json_member (root, "practice");

  sw_read_words (&place, "id", &job->practice_id);
  read_own_practice (&place, &job->own);
  SwJsonPlace overrides = sw_json_member (&place, "overrides");
  if (overrides.value == NULL)
    return;
  gsize count = sw_json_list (&overrides, 0, _ ("a list of replaced practice values"));
  for (gsize i = 0; i < count; i++)
    {
      SwJsonPlace override = sw_json_element (&overrides, i);
      read_override (&override, job);
    }
}

static SwStockLine
read_stock_line (const SwJsonPlace *place)
{
  SwJsonPlace count = sw_json_member (place, "count");
  SwStockLine line = { .source = (SwStockSource) sw_read_choice (place, "source",
                                                                 sw_stock_source_words) };

  line.length_m =
      sw_read_number (place, "length_m", SW_STOCK_LENGTH_LEAST_M, SW_STOCK_LENGTH_MOST_M);
  line.count = sw_json_index (&count, SW_STOCK_COUNT_MOST);
  if (line.source == SW_STOCK_ON_HAND && line.count == 0)
    sw_json_expected (&count, _ ("how many lie ready, at least 1"));
  return line;
}

static void
read_stock (const SwJsonPlace *root, SwJob *job)
{
  SwJsonPlace place = sw_json_member (root, "stock");
  gsize count =
      sw_count_parts (&place, SW_STOCK_LINES_MOST, _ ("a list of rolls and off-cuts"));

  for (gsize i = 0; i < count && root->reader->error == NULL; i++)
    {
      SwJsonPlace element = sw_json_element (&place, i);
      SwStockLine line = read_stock_line (&element);

      g_array_append_val (job->stock, line);
    }
}

/* Remembered while another rule for the surplus is chosen; whether it can be laid beside
 * the job's roll is the layout's to say. */
static void
read_narrow_roll (const SwJsonPlace *root, SwJob *job)
{
  SwJsonPlace place = sw_json_member (root, "narrow_roll");

  if (place.value == NULL)
    return;
  job->narrow_width_m = sw_read_extra (&place, "width_m", 20.0);
  job->narrow_length_m = sw_read_extra (&place, "length_m", 1000.0);
}

static void
read_materials (const SwJsonPlace *root, SwJob *job)
{
  SwJsonPlace blanket = sw_json_member (root, "blanket");
  SwJsonPlace roll = sw_json_member (root, "roll");

  sw_read_words (&blanket, "id", &job->blanket_id);
  job->blanket_mass_kg_per_m2 = sw_read_extra (&blanket, "mass_kg_per_m2", 20.0);
  job->blanket_thickness_m = sw_read_extra (&blanket, "thickness_m", 0.2);
  sw_read_product (&blanket, &job->product);
  job->roll_width_m = sw_read_number (&roll, "width_m", 0.2, 20.0);
  job->roll_length_m = sw_read_number (&roll, "length_m", 1.0, 1000.0);
  job->roll_core_m = sw_read_extra (&roll, "core_m", 1.0);
  read_stock (root, job);
  job->surplus = (SwSurplus) sw_read_option (root, "surplus", sw_surplus_words);
  read_narrow_roll (root, job);
  job->joints = (SwJoints) sw_read_option (root, "joints", sw_joints_words);
  job->zone_rule = (SwZoneRule) sw_read_option (root, "zone_rule", sw_zone_rule_words);
  sw_read_text (root, "pin_id", &job->pin_id);
}

static void
read_site (const SwJsonPlace *root, SwAnswer *site)
{
  SwJsonPlace place = sw_json_member (root, "site");

  if (place.value == NULL)
    return;
  for (int i = 0; i < SW_SITE_QUESTION_COUNT; i++)
    site[i] =
        (SwAnswer) sw_read_option (&place, sw_site_question_keys[i], sw_answer_words);
}

static double
read_site_number (const SwJsonPlace *object, SwSiteNumber number)
{
  const SwSiteNumberKey *key = &sw_site_number_keys[number];
  SwJsonPlace place = sw_json_member (object, key->key);
  double factor = sw_site_number_factor (number);
  SwJsonRange range = { sw_site_number_in_file (number, key->least),
                        sw_site_number_in_file (number, key->most), FALSE, TRUE };

  return place.value != NULL ? sw_json_number (&place, range) * factor : 0.0;
}

static void
read_site_numbers (const SwJsonPlace *root, SwSiteNumbers *numbers)
{
  SwJsonPlace place = sw_json_member (root, "site_numbers");

  if (place.value == NULL)
    return;
  for (int i = 0; i < SW_NUMBER_COUNT; i++)
    numbers->values[i] = read_site_number (&place, (SwSiteNumber) i);
  numbers->loss_units =
      (SwLossUnits) sw_read_option (&place, "loss_units", sw_loss_units_words);
  numbers->rills = (SwRills) sw_read_option (&place, "rill_ratio", sw_rills_words);
  numbers->bench_drained =
      (SwAnswer) sw_read_option (&place, "bench_drained", sw_answer_words);
  numbers->mown = (SwAnswer) sw_read_option (&place, "mown", sw_answer_words);
}

static void
read_language (const SwJsonPlace *root, SwJob *job)
{
  SwJsonPlace place = sw_json_member (root, "language");

  sw_text_set (&job->language, "en");
  sw_read_text (root, "language", &job->language);
  if (strlen (job->language) != 2 || strspn (job->language, G_CSET_a_2_z) != 2)
    sw_json_expected (&place, _ ("a language code of two small letters such as \"en\""));
}

static void
read_pack (const SwJsonPlace *root, SwPackPlan *pack)
{
  SwJsonPlace place = sw_json_member (root, "pack"), seed;

  if (place.value == NULL)
    return;
  pack->kind = (SwPackKind) sw_read_option (&place, "kind", sw_pack_kind_codes);
  seed = sw_json_member (&place, "seed");
  if (seed.value != NULL)
    pack->seed = sw_json_index (&seed, SW_PACK_MOST_SEED);
  for (int i = 0; i < SW_PACK_TEXT_COUNT; i++)
    sw_read_text (&place, sw_pack_text_keys[i], &pack->texts[i]);
}

SwJob *
sw_job_read (const SwJsonPlace *root, gboolean newer_too)
{
  SwJob *job = sw_job_new_empty ();

  read_version (root, newer_too);
  read_card (root, &job->card);
  job->units = (SwUnitSystem) sw_read_option (root, "units", sw_unit_system_words);
  job->paper = (SwPaper) sw_read_option (root, "paper", sw_paper_words);
  read_language (root, job);
  read_practice (root, job);
  read_materials (root, job);
  sw_read_seed (root, &job->seed);
  sw_read_plan (root, &job->plan);
  read_pack (root, &job->pack);
  read_site (root, job->site);
  read_site_numbers (root, &job->numbers);
  sw_read_faces (root, job);
  return job;
}
