/* SPDX-License-Identifier: MIT */
#include "job-json.h"

/* Elements of a list are the same when they say the same under one of these. */
static const char *
identity_key (const json_t *element)
{
  if (json_is_string (json_object_get (element, "id")))
    return "id";
  if (json_is_string (json_object_get (element, "key")))
    return "key";
  return NULL;
}

static json_t *
same_element (const json_t *list, const json_t *element)
{
  const char *key = identity_key (element);
  gsize i;
  json_t *other;

  if (key == NULL)
    return NULL;
  json_array_foreach (
      list, i, other) if (json_equal (json_object_get (other, key),
                                      json_object_get (element, key))) return other;
  return NULL;
}

static json_t *
null_if_empty (json_t *tree)
{
  gboolean empty = json_object_size (tree) == 0 && json_array_size (tree) == 0;

  if (empty)
    json_decref (tree);
  return empty ? NULL : tree;
}

static json_t *
unknown_of_object (const json_t *file, const json_t *known)
{
  json_t *unknown = json_object ();
  const char *key;
  json_t *value;

  json_object_foreach ((json_t *) file, key, value)
  {
    json_t *counterpart = json_object_get (known, key);
    json_t *rest =
        counterpart == NULL ? json_incref (value) : sw_json_unknown (value, counterpart);
    if (rest != NULL)
      json_object_set_new (unknown, key, rest);
  }
  return null_if_empty (unknown);
}

static json_t *
unknown_of_list (const json_t *file, const json_t *known)
{
  json_t *unknown = json_array ();
  gsize i;
  json_t *element;

  json_array_foreach (file, i, element)
  {
    json_t *counterpart = same_element (known, element);
    json_t *rest = counterpart != NULL ? sw_json_unknown (element, counterpart) : NULL;
    if (rest == NULL)
      continue;
    const char *key = identity_key (element);
    json_object_set (rest, key, json_object_get (element, key));
    json_array_append_new (unknown, rest);
  }
  return null_if_empty (unknown);
}

json_t *
sw_json_unknown (const json_t *file, const json_t *known)
{
  if (json_is_object (file) && json_is_object (known))
    return unknown_of_object (file, known);
  if (json_is_array (file) && json_is_array (known))
    return unknown_of_list (file, known);
  return NULL;
}

void
sw_json_restore (json_t *tree, const json_t *unknown)
{
  const char *key;
  gsize i;
  json_t *value;

  json_object_foreach ((json_t *) unknown, key, value)
  {
    json_t *place = json_object_get (tree, key);
    if (place != NULL)
      sw_json_restore (place, value);
    else if (json_is_object (tree))
      json_object_set (tree, key, value);
  }
  json_array_foreach (unknown, i, value)
  {
    json_t *place = same_element (tree, value);
    if (place != NULL)
      sw_json_restore (place, value);
  }
}
