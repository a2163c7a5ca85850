/* SPDX-License-Identifier: MIT */
#include <slopewright/sheet/practices.h>

char *
sw_report_practice_name (const SwPractice *practice, const SwTexts *texts)
{
  const char *published = sw_texts_get (texts, practice->name_id);

  if (practice->own_name == NULL || *practice->own_name == '\0')
    return g_strdup (published);
  return sw_texts_fill (texts, "practice.own-name", "own", practice->own_name, "name",
                        published, NULL);
}

const char *
sw_practice_way_id (SwPracticeWay way)
{
  static const char *const ids[] = { [SW_WAY_TOE_KIND] = "practice.toe_kind",
                                     [SW_WAY_TRENCH_LINING] = "practice.trench_lining",
                                     [SW_WAY_TOE_LINING] = "practice.toe_lining" };

  return ids[way];
}

const char *const *
sw_practice_way_values (SwPracticeWay way, guint *count)
{
  static const char *const toe_kinds[] = { [SW_TOE_TRENCH] = "toe-kind.trench",
                                           [SW_TOE_FOLD] = "toe-kind.fold",
                                           [SW_TOE_ROW] = "toe-kind.row" };
  static const char *const linings[] = { [SW_LINING_DOWN] = "lining.down",
                                         [SW_LINING_DOWN_ACROSS] = "lining.down-across",
                                         [SW_LINING_DOWN_ACROSS_UP] =
                                             "lining.down-across-up" };

  *count = way == SW_WAY_TOE_KIND ? G_N_ELEMENTS (toe_kinds) : G_N_ELEMENTS (linings);
  return way == SW_WAY_TOE_KIND ? toe_kinds : linings;
}

const char *
sw_report_practice_way (const SwPractice *practice, SwPracticeWay way,
                        const SwTexts *texts)
{
  const guint values[SW_WAY_COUNT] = { [SW_WAY_TOE_KIND] = practice->toe_kind,
                                       [SW_WAY_TRENCH_LINING] = practice->trench_lining,
                                       [SW_WAY_TOE_LINING] = practice->toe_lining };
  guint count;
  const char *const *ids = sw_practice_way_values (way, &count);

  g_return_val_if_fail (values[way] < count, NULL);
  return sw_texts_get (texts, ids[values[way]]);
}
