/* SPDX-License-Identifier: MIT */
#pragma once

#include "job-json.h"

/*
 * Members of an object of the job file, one by one. Trouble goes to the reader of
 * the object and what is read then is of no use.
 */

/* Optional text: *@text stays as it is when the key is missing. */
void sw_read_text (const SwJsonPlace *object, const char *key, char **text);
/* A text of at least one letter; replaces *@text. */
void sw_read_words (const SwJsonPlace *object, const char *key, char **text);
double sw_read_number (const SwJsonPlace *object, const char *key, double least,
                       double most);
/* Optional number in 0..@most: 0 when the key is missing. */
double sw_read_extra (const SwJsonPlace *object, const char *key, double most);
/* A number above 0, at most @most. */
double sw_read_above_zero (const SwJsonPlace *object, const char *key, double most);
/* Place of the member's word in the NULL-terminated @words. */
int sw_read_choice (const SwJsonPlace *object, const char *key, const char *const *words);
/* Optional choice: the first when the key is missing. */
int sw_read_option (const SwJsonPlace *object, const char *key, const char *const *words);
/* Elements of an optional list: 0 without it, and once there is trouble. */
gsize sw_count_parts (const SwJsonPlace *list, gsize most, const char *expected);

/* A number that JSON cannot hold becomes null, which the reader refuses by name. */
json_t *sw_json_of_number (double value);
void sw_put_text (json_t *object, const char *key, const char *text);
void sw_put_number (json_t *object, const char *key, double value);

/* What was found out about a face's soil; it must give the class the face has. */
void sw_read_soil_test (const SwJsonPlace *face_place, SwFace *face);
json_t *sw_soil_test_tree (const SwSoilTest *test);

/* The data sheet of the blanket. */
void sw_read_product (const SwJsonPlace *blanket, SwProduct *product);
json_t *sw_product_tree (const SwProduct *product);

/* Seed as a list of species, or as the one species that files of before have. */
void sw_read_seed (const SwJsonPlace *root, SwSeedMix *mix);
json_t *sw_seed_tree (const SwSeedMix *mix);

/* Fertiliser, haulage, allowance, crew and prices: an object for each. */
void sw_read_plan (const SwJsonPlace *root, SwWorkPlan *plan);
void sw_put_plan (json_t *root, const SwWorkPlan *plan);

/* The faces of the file, with all that stands on them. */
void sw_read_faces (const SwJsonPlace *root, SwJob *job);
json_t *sw_faces_tree (const SwJob *job);
