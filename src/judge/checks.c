/* SPDX-License-Identifier: MIT */
#include "checks-private.h"

#define ASKS_MOST 3
#define ALSO_MOST 3

static const char steps[] = "pack.steps.title";
static const char details[] = "pack.details.title";
static const char materials[] = "pack.materials.title";
static const char safety[] = "pack.safety.title";
static const char inspection[] = "pack.inspection.title";
static const char cut_list[] = "pack.cut-list.title";

/* Where each is read, what the site visit must answer for it, and findings of another
 * failure mode that speak on it too. */
static const struct
{
  const char *failure, *page;
  SwSiteQuestion asks[ASKS_MOST];
  guint n_asks;
  const char *also[ALSO_MOST];
} rows[SW_CHECK_COUNT] = {
  { "F1", steps, { SW_SITE_RUN_ON }, 1, { NULL } },
  { "F2", steps, { 0 }, 0, { NULL } },
  { "F3", details, { SW_SITE_RUN_ON }, 1, { "run-on" } },
  { "F4", details, { SW_SITE_WATER_AT_TOE }, 1, { NULL } },
  { "F5",
    details,
    { SW_SITE_RUN_ON, SW_SITE_WILDLIFE, SW_SITE_WIND_EXPOSED },
    3,
    { NULL } },
  { "F6", safety, { SW_SITE_WIND_EXPOSED }, 1, { NULL } },
  { "F7", steps, { 0 }, 0, { "joints" } },
  { "F8", cut_list, { 0 }, 0, { NULL } },
  { "F9", materials, { 0 }, 0, { NULL } },
  { "F10", materials, { 0 }, 0, { NULL } },
  { "F11", materials, { 0 }, 0, { NULL } },
  { "F12", safety, { SW_SITE_WILDLIFE }, 1, { NULL } },
  { "F13", inspection, { 0 }, 0, { NULL } },
  { "F14", safety, { SW_SITE_CHANNEL_FLOW }, 1, { NULL } },
  { "F15", safety, { SW_SITE_SEEPAGE }, 1, { NULL } },
  { "F16", details, { 0 }, 0, { NULL } },
  { "F17", inspection, { 0 }, 0, { NULL } },
  { "F18",
    steps,
    { SW_SITE_MACHINES, SW_SITE_PUBLIC },
    2,
    { "machines", "machines-unknown" } },
  { "F19", safety, { SW_SITE_IGNITION }, 1, { NULL } },
};

const char *
sw_check_state_code (SwCheckState state)
{
  static const char *const codes[] = { "pass", "warn", "unknown" };

  return codes[state];
}

void
sw_check_number (SwCheck *check, const char *symbol, double value, SwUnit unit)
{
  SwInput input = {
    .symbol = symbol, .value = value, .unit = unit, .origin = SW_ORIGIN_COMPUTED
  };

  g_array_append_val (check->inputs, input);
}

void
sw_check_open (SwCheck *check, const char *text_id)
{
  g_ptr_array_add (check->open, g_strdup (text_id));
}

static void
free_check (gpointer data)
{
  SwCheck *check = data;

  g_ptr_array_unref (check->findings);
  g_array_unref (check->inputs);
  g_ptr_array_unref (check->open);
  g_free (check);
}

static gboolean
speaks (guint row, const SwFinding *finding)
{
  if (g_str_equal (finding->failure, rows[row].failure))
    return TRUE;
  for (guint i = 0; i < ALSO_MOST && rows[row].also[i] != NULL; i++)
    if (g_str_equal (finding->code, rows[row].also[i]))
      return TRUE;
  return FALSE;
}

static void
ask (SwCheck *check, guint row, const SwJob *job)
{
  for (guint i = 0; i < rows[row].n_asks; i++)
    if (job->site[rows[row].asks[i]] == SW_ANSWER_UNKNOWN)
      {
        g_autofree char *id =
            g_strconcat ("site.", sw_site_question_keys[rows[row].asks[i]], NULL);

        sw_check_open (check, id);
      }
}

/* A caution that an open question itself raises does not make the answer known. */
static SwCheckState
state_of (const SwCheck *check)
{
  gboolean caution = FALSE;

  for (guint i = 0; i < check->findings->len; i++)
    {
      const SwFinding *finding = g_ptr_array_index (check->findings, i);

      caution |= finding->severity > SW_SEVERITY_NOTE
                 && !g_str_has_suffix (finding->code, "-unknown");
    }
  if (caution)
    return SW_CHECK_WARN;
  if (check->open->len > 0)
    return SW_CHECK_UNKNOWN;
  return check->findings->len > 0 ? SW_CHECK_WARN : SW_CHECK_PASS;
}

static SwCheck *
check_new (guint row, const SwLayout *layout, const SwTally *tally,
           const GPtrArray *findings)
{
  SwCheck *check = g_new0 (SwCheck, 1);

  check->failure = rows[row].failure;
  check->page = rows[row].page;
  check->findings = g_ptr_array_new ();
  check->inputs = g_array_new (FALSE, TRUE, sizeof (SwInput));
  check->open = g_ptr_array_new_with_free_func (g_free);
  for (guint i = 0; i < findings->len; i++)
    if (speaks (row, g_ptr_array_index (findings, i)))
      g_ptr_array_add (check->findings, g_ptr_array_index (findings, i));
  ask (check, row, layout->job);
  sw_check_looks[row](check, layout, tally);
  check->state = state_of (check);
  return check;
}

GPtrArray *
sw_checks_new (const SwLayout *layout, const SwTally *tally, const GPtrArray *findings)
{
  GPtrArray *checks = g_ptr_array_new_with_free_func (free_check);

  for (guint i = 0; i < SW_CHECK_COUNT; i++)
    g_ptr_array_add (checks, check_new (i, layout, tally, findings));
  return checks;
}
