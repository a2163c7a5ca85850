/* SPDX-License-Identifier: MIT */
#include "job-fields.h"

#include <math.h>

static json_t *
card_tree (const SwJobCard *card)
{
  json_t *tree = json_object ();

  for (gsize i = 0; i < sw_n_card_lines; i++)
    sw_put_text (tree, sw_card_lines[i].key,
                 G_STRUCT_MEMBER (const char *, card, sw_card_lines[i].offset));
  return tree;
}

static json_t *
own_practice_tree (const SwOwnPractice *own)
{
  json_t *tree = json_object ();

  sw_put_text (tree, "name", own->name);
  sw_put_text (tree, "source", own->source);
  sw_put_text (tree, "toe_kind", sw_own_toe_words[own->toe_kind]);
  sw_put_text (tree, "trench_lining", sw_own_lining_words[own->trench_lining]);
  sw_put_text (tree, "toe_lining", sw_own_lining_words[own->toe_lining]);
  return tree;
}

static json_t *
practice_tree (const SwJob *job)
{
  json_t *tree = json_object ();
  json_t *overrides = json_array ();

  sw_put_text (tree, "id", job->practice_id);
  if (sw_own_practice_given (&job->own)) /* else as files of before have it */
    json_object_set_new (tree, "own", own_practice_tree (&job->own));
  for (guint i = 0; i < job->n_overrides; i++)
    {
      json_t *override = json_object ();
      sw_put_text (override, "key", sw_practice_keys[job->overrides[i].value].key);
      sw_put_number (override, "value", job->overrides[i].number);
      sw_put_text (override, "why", job->overrides[i].why);
      json_array_append_new (overrides, override);
    }
  json_object_set_new (tree, "overrides", overrides);
  return tree;
}

static json_t *
blanket_tree (const SwJob *job)
{
  json_t *tree = json_object ();

  sw_put_text (tree, "id", job->blanket_id);
  sw_put_number (tree, "mass_kg_per_m2", fmax (job->blanket_mass_kg_per_m2, 0.0));
  sw_put_number (tree, "thickness_m", fmax (job->blanket_thickness_m, 0.0));
  json_object_set_new (tree, "product", sw_product_tree (&job->product));
  return tree;
}

static json_t *
roll_tree (const SwJob *job)
{
  json_t *tree = json_object ();

  sw_put_number (tree, "width_m", job->roll_width_m);
  sw_put_number (tree, "length_m", job->roll_length_m);
  sw_put_number (tree, "core_m", job->roll_core_m);
  return tree;
}

static json_t *
stock_tree (const SwJob *job)
{
  json_t *tree = json_array ();

  for (guint i = 0; i < job->stock->len; i++)
    {
      const SwStockLine *line = &g_array_index (job->stock, SwStockLine, i);
      json_t *element = json_object ();

      sw_put_text (element, "source", sw_stock_source_words[line->source]);
      sw_put_number (element, "length_m", line->length_m);
      json_object_set_new (element, "count", json_integer (line->count));
      json_array_append_new (tree, element);
    }
  return tree;
}

static json_t *
narrow_roll_tree (const SwJob *job)
{
  json_t *tree = json_object ();

  sw_put_number (tree, "width_m", fmax (job->narrow_width_m, 0.0));
  sw_put_number (tree, "length_m", fmax (job->narrow_length_m, 0.0));
  return tree;
}

static json_t *
site_tree (const SwAnswer *site)
{
  json_t *tree = json_object ();

  for (int i = 0; i < SW_SITE_QUESTION_COUNT; i++)
    sw_put_text (tree, sw_site_question_keys[i], sw_answer_words[site[i]]);
  return tree;
}

static json_t *
site_numbers_tree (const SwSiteNumbers *numbers)
{
  json_t *tree = json_object ();

  for (int i = 0; i < SW_NUMBER_COUNT; i++)
    sw_put_number (tree, sw_site_number_keys[i].key,
                   sw_site_number_in_file ((SwSiteNumber) i, numbers->values[i]));
  sw_put_text (tree, "loss_units", sw_loss_units_words[numbers->loss_units]);
  sw_put_text (tree, "rill_ratio", sw_rills_words[numbers->rills]);
  sw_put_text (tree, "bench_drained", sw_answer_words[numbers->bench_drained]);
  sw_put_text (tree, "mown", sw_answer_words[numbers->mown]);
  return tree;
}

static json_t *
pack_tree (const SwPackPlan *pack)
{
  json_t *tree = json_object ();

  sw_put_text (tree, "kind", sw_pack_kind_codes[pack->kind]);
  json_object_set_new (tree, "seed", json_integer (pack->seed));
  for (int i = 0; i < SW_PACK_TEXT_COUNT; i++)
    sw_put_text (tree, sw_pack_text_keys[i], pack->texts[i]);
  return tree;
}

json_t *
sw_job_tree (const SwJob *job)
{
  json_t *tree = json_object ();

  json_object_set_new (tree, "slopewright", json_integer (SW_JOB_FORMAT_VERSION));
  json_object_set_new (tree, "card", card_tree (&job->card));
  sw_put_text (tree, "units", sw_unit_system_words[job->units]);
  sw_put_text (tree, "paper", sw_paper_words[job->paper]);
  sw_put_text (tree, "language", job->language);
  json_object_set_new (tree, "practice", practice_tree (job));
  json_object_set_new (tree, "blanket", blanket_tree (job));
  json_object_set_new (tree, "roll", roll_tree (job));
  json_object_set_new (tree, "stock", stock_tree (job));
  json_object_set_new (tree, "narrow_roll", narrow_roll_tree (job));
  sw_put_text (tree, "surplus", sw_surplus_words[job->surplus]);
  sw_put_text (tree, "joints", sw_joints_words[job->joints]);
  sw_put_text (tree, "zone_rule", sw_zone_rule_words[job->zone_rule]);
  sw_put_text (tree, "pin_id", job->pin_id);
  json_object_set_new (tree, "seed", sw_seed_tree (&job->seed));
  sw_put_plan (tree, &job->plan);
  json_object_set_new (tree, "pack", pack_tree (&job->pack));
  json_object_set_new (tree, "site", site_tree (job->site));
  json_object_set_new (tree, "site_numbers", site_numbers_tree (&job->numbers));
  json_object_set_new (tree, "faces", sw_faces_tree (job));
  return tree;
}
