/* SPDX-License-Identifier: MIT */
#undef G_DISABLE_ASSERT
#include "found.h"

const SwFinding *
found_finding (const SwResult *result, const char *code)
{
  for (guint i = 0; i < result->findings->len; i++)
    {
      const SwFinding *finding = g_ptr_array_index (result->findings, i);

      if (g_str_equal (finding->code, code))
        return finding;
    }
  return NULL;
}

gboolean
found_in (const SwJob *job, const SwCatalogue *catalogue, const char *code)
{
  g_autoptr (SwResult) result = sw_result_new (job, catalogue);

  g_assert_cmpint (result->status, ==, SW_OK);
  return found_finding (result, code) != NULL;
}

void
found_number (const SwJob *job, const SwCatalogue *catalogue, const char *code,
              const char *symbol, double want)
{
  g_autoptr (SwResult) result = sw_result_new (job, catalogue);
  const SwFinding *finding = found_finding (result, code);

  g_assert_nonnull (finding);
  for (guint i = 0; i < finding->inputs->len; i++)
    {
      const SwInput *input = &g_array_index (finding->inputs, SwInput, i);

      if (!g_str_equal (input->symbol, symbol))
        continue;
      g_assert_cmpfloat_with_epsilon (input->value, want, 1e-6);
      return;
    }
  g_error ("%s has no input \"%s\"", code, symbol);
}
