/* SPDX-License-Identifier: MIT */
#include "json-text.h"
#include <math.h>
#include <slopewright/base/number-text.h>

/* Source: RFC 8259 sec. 7: quotation mark, reverse solidus and controls are escaped. */
static void
append_string (GString *text, const char *value)
{
  g_string_append_c (text, '"');
  for (const char *c = value; *c != '\0'; c++)
    if (*c == '"' || *c == '\\')
      g_string_append_printf (text, "\\%c", *c);
    else if ((guchar) *c < 0x20)
      g_string_append_printf (text, "\\u%04x", (guint) *c);
    else
      g_string_append_c (text, *c);
  g_string_append_c (text, '"');
}

static void
begin_line (SwReportJson *json)
{
  g_string_append_c (json->text, '\n');
  for (guint i = 0; i < json->depth; i++)
    g_string_append (json->text, "  ");
}

static void
begin_value (SwReportJson *json, const char *key)
{
  if (json->depth > 0)
    {
      if (!json->first)
        g_string_append_c (json->text, ',');
      begin_line (json);
    }
  json->first = FALSE;
  if (key == NULL)
    return;
  append_string (json->text, key);
  g_string_append (json->text, ": ");
}

void
sw_report_json_open (SwReportJson *json, const char *key, char bracket)
{
  begin_value (json, key);
  g_string_append_c (json->text, bracket);
  json->depth++;
  json->first = TRUE;
}

void
sw_report_json_close (SwReportJson *json, char bracket)
{
  json->depth--;
  if (!json->first)
    begin_line (json);
  g_string_append_c (json->text, bracket);
  json->first = FALSE;
  if (json->depth == 0)
    g_string_append_c (json->text, '\n');
}

void
sw_report_json_string (SwReportJson *json, const char *key, const char *value)
{
  begin_value (json, key);
  append_string (json->text, value);
}

void
sw_report_json_number (SwReportJson *json, const char *key, double value)
{
  char number[G_ASCII_DTOSTR_BUF_SIZE];

  begin_value (json, key);
  g_string_append (json->text,
                   isfinite (value) ? sw_number_exact (value, number) : "null");
}
