/* SPDX-License-Identifier: MIT */
#include <slopewright/base/pack-plan.h>

const char *const sw_pack_kind_codes[SW_PACK_KIND_COUNT + 1] = {
  "crew", "permit", "class", "class-key", "measure", "measure-blank", NULL
};

const char *const sw_pack_text_keys[SW_PACK_TEXT_COUNT] = {
  [SW_PACK_TEXT_OFFICE] = "office",
  [SW_PACK_TEXT_EDITION] = "edition",
  [SW_PACK_TEXT_BASIS] = "basis",
  [SW_PACK_TEXT_CONTACT] = "contact",
  [SW_PACK_TEXT_CONDITIONS] = "conditions",
  [SW_PACK_TEXT_SUBMITTALS] = "submittals",
  [SW_PACK_TEXT_NOTICE] = "notice",
  [SW_PACK_TEXT_DEADLINES] = "deadlines",
  [SW_PACK_TEXT_RECORDS] = "records",
  [SW_PACK_TEXT_ENFORCEMENT] = "enforcement",
  [SW_PACK_TEXT_CLOSING] = "closing",
  [SW_PACK_TEXT_CERTIFICATION] = "certification",
  [SW_PACK_TEXT_COURSE] = "course",
  [SW_PACK_TEXT_LEVEL] = "level",
  [SW_PACK_TEXT_TRAINER] = "trainer",
};

guint
sw_pack_plan_seed (const SwPackPlan *plan)
{
  return MAX (plan->seed, 1);
}

char **
sw_pack_text_items (const SwPackPlan *plan, SwPackText text)
{
  g_auto (GStrv) parts = g_strsplit_set (plan->texts[text], ";\n", -1);
  GPtrArray *items = g_ptr_array_new ();

  for (guint i = 0; parts[i] != NULL; i++)
    if (*g_strstrip (parts[i]) != '\0')
      g_ptr_array_add (items, g_strdup (parts[i]));
  g_ptr_array_add (items, NULL);
  return (char **) g_ptr_array_free (items, FALSE);
}
