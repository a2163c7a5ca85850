/* SPDX-License-Identifier: MIT */
#pragma once

#include <glib.h>

/* JSON being written: two-space indent, keys in the order they come. */
typedef struct
{
  GString *text;
  guint depth;
  gboolean first; /* in the object or array being written */
} SwJsonText;

/** @key: NULL inside an array. */
void sw_json_open (SwJsonText *json, const char *key, char bracket);
void sw_json_close (SwJsonText *json, char bracket);
void sw_json_string (SwJsonText *json, const char *key, const char *value);
/** Shortest decimal that reads back; null when @value is not finite. */
void sw_json_number (SwJsonText *json, const char *key, double value);
