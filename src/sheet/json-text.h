/* SPDX-License-Identifier: MIT */
#pragma once

#include <glib.h>

/* JSON being written: two-space indent, keys in the order they come. */
typedef struct
{
  GString *text;
  guint depth;
  gboolean first; /* in the object or array being written */
} SwReportJson;

/** @key: NULL inside an array. */
void sw_report_json_open (SwReportJson *json, const char *key, char bracket);
void sw_report_json_close (SwReportJson *json, char bracket);
void sw_report_json_string (SwReportJson *json, const char *key, const char *value);
/** Shortest decimal that reads back; null when @value is not finite. */
void sw_report_json_number (SwReportJson *json, const char *key, double value);
