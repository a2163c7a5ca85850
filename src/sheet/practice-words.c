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

static const char *
toe_kind_words (const SwPractice *practice, const SwTexts *texts)
{
  static const char *const ids[] = { [SW_TOE_TRENCH] = "toe-kind.trench",
                                     [SW_TOE_FOLD] = "toe-kind.fold",
                                     [SW_TOE_ROW] = "toe-kind.row" };

  return sw_texts_get (texts, ids[practice->toe_kind]);
}

static const char *
lining_words (SwLining lining, const SwTexts *texts)
{
  static const char *const ids[] = { [SW_LINING_DOWN] = "lining.down",
                                     [SW_LINING_DOWN_ACROSS] = "lining.down-across",
                                     [SW_LINING_DOWN_ACROSS_UP] =
                                         "lining.down-across-up" };

  return sw_texts_get (texts, ids[lining]);
}

const char *
sw_practice_way_id (SwPracticeWay way)
{
  static const char *const ids[] = { [SW_WAY_TOE_KIND] = "practice.toe_kind",
                                     [SW_WAY_TRENCH_LINING] = "practice.trench_lining",
                                     [SW_WAY_TOE_LINING] = "practice.toe_lining" };

  return ids[way];
}

const char *
sw_report_practice_way (const SwPractice *practice, SwPracticeWay way,
                        const SwTexts *texts)
{
  switch (way)
    {
    case SW_WAY_TOE_KIND:
      return toe_kind_words (practice, texts);
    case SW_WAY_TRENCH_LINING:
      return lining_words (practice->trench_lining, texts);
    default:
      return lining_words (practice->toe_lining, texts);
    }
}
