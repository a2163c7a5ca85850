/* SPDX-License-Identifier: MIT */
#undef G_DISABLE_ASSERT
#include "check-rows.h"
#include <math.h>
#include <string.h>

enum
{
  COLUMN_ID,
  COLUMN_ROOM,
  COLUMN_QUANTITY,
  COLUMN_INPUTS,
  COLUMN_EXPECTED,
  COLUMN_UNIT,
  COLUMN_TOLERANCE,
  COLUMN_SOURCE,
  COLUMN_HOW_KNOWN,
  COLUMN_COUNT
};

/* Fields of one line; a field with commas stands in quotes. */
static GPtrArray *
split_line (const char *line)
{
  GPtrArray *fields = g_ptr_array_new_with_free_func (g_free);
  GString *field = g_string_new (NULL);
  gboolean quoted = FALSE;

  for (const char *c = line; *c != '\0'; c++)
    if (*c == '"')
      quoted = !quoted;
    else if (*c == ',' && !quoted)
      {
        g_ptr_array_add (fields, g_string_free (field, FALSE));
        field = g_string_new (NULL);
      }
    else
      g_string_append_c (field, *c);
  g_ptr_array_add (fields, g_string_free (field, FALSE));
  return fields;
}

static double
number (const char *text, const CheckRow *row)
{
  char *end = NULL;
  double value = g_ascii_strtod (text, &end);

  if (end == text || *end != '\0')
    g_error ("row %s: \"%s\" is not a number", row->id, text);
  return value;
}

char *
check_input_text (const CheckRow *row, const char *key)
{
  g_auto (GStrv) inputs = g_strsplit (row->inputs, ";", -1);
  gsize length = strlen (key);

  for (guint i = 0; inputs[i] != NULL; i++)
    if (strncmp (inputs[i], key, length) == 0 && inputs[i][length] == '=')
      return g_strdup (inputs[i] + length + 1);
  return NULL;
}

double
check_input_or (const CheckRow *row, const char *key, double otherwise)
{
  g_autofree char *text = check_input_text (row, key);

  return text != NULL ? number (text, row) : otherwise;
}

double
check_input (const CheckRow *row, const char *key)
{
  g_autofree char *text = check_input_text (row, key);

  if (text == NULL)
    g_error ("row %s has no input \"%s\"", row->id, key);
  return number (text, row);
}

GArray *
check_input_list (const CheckRow *row, const char *key)
{
  g_autofree char *text = check_input_text (row, key);
  GArray *list = g_array_new (FALSE, FALSE, sizeof (double));
  g_auto (GStrv) words = NULL;

  if (text == NULL)
    g_error ("row %s has no input \"%s\"", row->id, key);
  words = g_strsplit (text, " ", -1);
  for (guint i = 0; words[i] != NULL; i++)
    {
      g_auto (GStrv) parts = g_strsplit (words[i], "x", 2);
      double value = number (parts[0], row);
      int times = parts[1] != NULL ? (int) number (parts[1], row) : 1;

      for (int t = 0; t < times; t++)
        g_array_append_val (list, value);
    }
  return list;
}

/* Returns whether the row holds. */
static gboolean
run_row (const CheckRow *row, const CheckQuantity *quantities, guint n_quantities)
{
  for (guint i = 0; i < n_quantities; i++)
    if (g_str_equal (row->quantity, quantities[i].quantity))
      {
        double got = quantities[i].compute (row);

        if (fabs (got - row->expected) <= row->tolerance)
          return TRUE;
        g_test_message ("%s, %s: %s: got %.12g, expected %.12g ± %g %s; source: %s",
                        row->id, row->quantity, row->inputs, got, row->expected,
                        row->tolerance, row->unit, row->source);
        return FALSE;
      }
  g_test_message ("%s: nothing computes \"%s\"", row->id, row->quantity);
  return FALSE;
}

void
check_rows_run (const char *room, const CheckQuantity *quantities, guint n_quantities)
{
  g_autofree char *text = NULL;
  g_autoptr (GError) error = NULL;
  g_auto (GStrv) lines = NULL;
  guint run = 0, failed = 0;

  g_file_get_contents (CHECK_VALUES_FILE, &text, NULL, &error);
  g_assert_no_error (error);
  lines = g_strsplit (text, "\n", -1);
  for (guint i = 1; lines[i] != NULL && lines[i][0] != '\0'; i++)
    {
      g_autoptr (GPtrArray) fields = split_line (lines[i]);
      char **field = (char **) fields->pdata;
      CheckRow row;

      g_assert_cmpuint (fields->len, ==, COLUMN_COUNT);
      if (!g_str_equal (field[COLUMN_ROOM], room))
        continue;
      row = (CheckRow){ .id = field[COLUMN_ID],
                        .quantity = field[COLUMN_QUANTITY],
                        .inputs = field[COLUMN_INPUTS],
                        .unit = field[COLUMN_UNIT],
                        .source = field[COLUMN_SOURCE] };
      g_assert_cmpstr (row.source, !=, "");
      row.expected = number (field[COLUMN_EXPECTED], &row);
      row.tolerance = number (field[COLUMN_TOLERANCE], &row);
      run++;
      if (!run_row (&row, quantities, n_quantities))
        failed++;
    }
  g_test_message ("%u rows of room %s, %u failed", run, room, failed);
  g_assert_cmpuint (run, >, 0);
  g_assert_cmpuint (failed, ==, 0);
}
