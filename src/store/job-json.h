/* SPDX-License-Identifier: MIT */
#pragma once

#include "json-reader.h"

/*
 * The job file, in its parts. Every key is described in
 * resources/schema/job-1.schema.json; reader, writer and schema change together.
 */

/* Words of the file, in the order of their enumerations; NULL-terminated. */
extern const char *const sw_unit_system_words[];
extern const char *const sw_paper_words[];
extern const char *const sw_surplus_words[];
extern const char *const sw_own_toe_words[];
extern const char *const sw_own_lining_words[];
extern const char *const sw_stock_source_words[];
extern const char *const sw_joints_words[];
extern const char *const sw_crest_form_words[];
extern const char *const sw_fan_words[];
extern const char *const sw_zone_rule_words[];
extern const char *const sw_side_words[];
extern const char *const sw_bench_words[];
extern const char *const sw_obtained_words[];
extern const char *const sw_answer_words[];
extern const char *const sw_loss_units_words[];
extern const char *const sw_rills_words[];
extern const char *const sw_soil_known_words[];
extern const char *const sw_feel_words[];
extern const char *const sw_net_words[];

/* Lines of the job card: key and place in SwJobCard. */
typedef struct
{
  const char *key;
  gsize offset;
} SwCardLine;

extern const SwCardLine sw_card_lines[];
extern const gsize sw_n_card_lines;

/* People write angles in degrees; one expression for both ways keeps them exact. */
double sw_radians_of_degrees (double degrees);
/* Shortest decimal degrees that are read back as @radians. */
double sw_degrees_of_radians (double radians);

/* People write rain in mm/h: SI per unit of the file, and the shortest way to write it. */
double sw_site_number_factor (SwSiteNumber number);
double sw_site_number_in_file (SwSiteNumber number, double value);

/* @newer_too: the keys known here are read from any later format. (transfer full): never
 * NULL; trouble is in the reader. */
SwJob *sw_job_read (const SwJsonPlace *root, gboolean newer_too);

/* (transfer full): the whole file as a tree, keys in the order of the file. */
json_t *sw_job_tree (const SwJob *job);

/* (transfer full): two-space indent, short lists on one line, exact numbers. */
char *sw_json_text (const json_t *value);

/*
 * Keys of @file that @known does not have, at any depth; lists of objects are
 * matched by "id" or "key". (transfer full) (nullable): NULL when all are known.
 */
json_t *sw_json_unknown (const json_t *file, const json_t *known);
/* Put such keys back where @tree still has the object they stood in. */
void sw_json_restore (json_t *tree, const json_t *unknown);
