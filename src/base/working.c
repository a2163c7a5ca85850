/* SPDX-License-Identifier: MIT */
#include <slopewright/base/working.h>

static void
clear_input (gpointer data)
{
  SwInput *input = data;

  g_free (input->name);
  g_free (input->source);
}

SwWorking *
sw_working_new (const char *formula, double value, SwUnit unit, SwRounding rounding,
                const char *name_format, ...)
{
  SwWorking *working = g_new0 (SwWorking, 1);
  va_list args;

  va_start (args, name_format);
  working->name = g_strdup_vprintf (name_format, args);
  va_end (args);
  working->formula = formula;
  working->value = value;
  working->unit = unit;
  working->rounding = rounding;
  working->inputs = g_array_new (FALSE, TRUE, sizeof (SwInput));
  g_array_set_clear_func (working->inputs, clear_input);
  return working;
}

void
sw_working_free (SwWorking *working)
{
  if (working == NULL)
    return;
  g_free (working->name);
  g_array_unref (working->inputs);
  g_free (working);
}

static SwInput *
add_input (SwWorking *working, const char *symbol, double value, SwUnit unit,
           SwOrigin origin)
{
  SwInput input = { .symbol = symbol, .value = value, .unit = unit, .origin = origin };

  g_array_append_val (working->inputs, input);
  return &g_array_index (working->inputs, SwInput, working->inputs->len - 1);
}

void
sw_working_measured (SwWorking *working, const char *symbol, double value, SwUnit unit)
{
  add_input (working, symbol, value, unit, SW_ORIGIN_MEASURED);
}

void
sw_working_typed (SwWorking *working, const char *symbol, double value, SwUnit unit)
{
  add_input (working, symbol, value, unit, SW_ORIGIN_TYPED);
}

void
sw_working_part (SwWorking *working, const char *symbol, double value, SwUnit unit)
{
  add_input (working, symbol, value, unit, SW_ORIGIN_COMPUTED);
}

void
sw_working_computed (SwWorking *working, const char *symbol, const SwWorking *from)
{
  SwInput *input =
      add_input (working, symbol, from->value, from->unit, SW_ORIGIN_COMPUTED);

  input->name = g_strdup (from->name);
}

void
sw_working_practice (SwWorking *working, const char *symbol, const SwPractice *practice,
                     SwPracticeValue value)
{
  const SwSourced *sourced = &practice->values[value];
  SwInput *input = add_input (working, symbol, sourced->value,
                              sw_practice_keys[value].unit, SW_ORIGIN_PRACTICE);

  input->name = g_strdup (sw_practice_keys[value].key);
  input->evidence = sourced->evidence;
  input->source = g_strdup (sw_practice_source (practice, value));
}

void
sw_working_sourced (SwWorking *working, const char *symbol, const SwSourced *sourced,
                    SwUnit unit)
{
  SwInput *input = add_input (working, symbol, sourced->value, unit, SW_ORIGIN_CATALOGUE);

  input->evidence = sourced->evidence;
  input->source = g_strdup (sourced->source);
}
