/* SPDX-License-Identifier: MIT */
#include "job-fields.h"

#include <glib/gi18n.h>
#include <math.h>

void
sw_read_text (const SwJsonPlace *object, const char *key, char **text)
{
  SwJsonPlace place = sw_json_member (object, key);

  if (place.value == NULL)
    return;
  g_free (*text);
  *text = sw_json_string (&place);
}

void
sw_read_words (const SwJsonPlace *object, const char *key, char **text)
{
  SwJsonPlace place = sw_json_member (object, key);

  g_free (*text);
  *text = sw_json_words (&place);
}

double
sw_read_number (const SwJsonPlace *object, const char *key, double least, double most)
{
  SwJsonPlace place = sw_json_member (object, key);

  return sw_json_number (&place, (SwJsonRange){ least, most, FALSE, FALSE });
}

double
sw_read_extra (const SwJsonPlace *object, const char *key, double most)
{
  SwJsonPlace place = sw_json_member (object, key);

  return place.value != NULL
             ? sw_json_number (&place, (SwJsonRange){ 0.0, most, FALSE, FALSE })
             : 0.0;
}

double
sw_read_above_zero (const SwJsonPlace *object, const char *key, double most)
{
  SwJsonPlace place = sw_json_member (object, key);

  return sw_json_number (&place, (SwJsonRange){ 0.0, most, TRUE, FALSE });
}

int
sw_read_choice (const SwJsonPlace *object, const char *key, const char *const *words)
{
  SwJsonPlace place = sw_json_member (object, key);

  return sw_json_choice (&place, words);
}

int
sw_read_option (const SwJsonPlace *object, const char *key, const char *const *words)
{
  SwJsonPlace place = sw_json_member (object, key);

  return place.value != NULL ? sw_json_choice (&place, words) : 0;
}

gsize
sw_count_parts (const SwJsonPlace *list, gsize most, const char *expected)
{
  gsize count = list->value != NULL ? sw_json_list (list, 0, expected) : 0;

  if (count > most)
    sw_json_trouble (list, SW_STORE_ERROR_VALUE,
                     _ ("found %u in the list, expected at most %u"), (guint) count,
                     (guint) most);
  return list->reader->error == NULL ? count : 0;
}

json_t *
sw_json_of_number (double value)
{
  return isfinite (value) ? json_real (value) : json_null ();
}

void
sw_put_text (json_t *object, const char *key, const char *text)
{
  json_object_set_new (object, key, json_string (text != NULL ? text : ""));
}

void
sw_put_number (json_t *object, const char *key, double value)
{
  json_object_set_new (object, key, sw_json_of_number (value));
}
