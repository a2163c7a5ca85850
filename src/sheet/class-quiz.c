/* SPDX-License-Identifier: MIT */
#include "class-quiz.h"

#define QUIZ_STREAM 77 /* keeps the dice of the quiz apart from those of the slopes */

/* Questions whose choices are texts: ".right", ".wrong1", ".wrong2". */
static const char *const said[] = { "end-lap", "first-run", "contact", "seedbed", "crack",
                                    "net",     "marks",     "rills",   "sources" };

/* Questions whose right answer is a value of the practice. */
static const struct
{
  const char *code;
  SwPracticeValue value;
} measured[] = {
  { "side-lap", SW_PRACTICE_SIDE_LAP_M },
  { "trench-depth", SW_PRACTICE_TRENCH_DEPTH_M },
  { "trench-pin", SW_PRACTICE_TRENCH_PIN_M },
  { "set-back", SW_PRACTICE_SET_BACK_M },
};

#define SAID G_N_ELEMENTS (said)
#define ALL (SAID + G_N_ELEMENTS (measured))

static const char *
part (const SwSheet *sheet, const char *code, const char *ending)
{
  return sw_sheet_get (sheet, sw_sheet_format (sheet, "class.quiz.%s.%s", code, ending));
}

/* Half and twice the value are what is misread most often. */
static const char *
scaled (const SwSheet *sheet, SwPracticeValue value, double by)
{
  return sw_sheet_limit (sheet, by * sw_practice_get (sheet->practice, value),
                         sw_practice_limit (value));
}

static void
fill (const SwSheet *sheet, guint index, const char *choices[SW_QUIZ_CHOICES],
      SwQuizItem *item)
{
  const char *code;

  if (index < SAID)
    {
      code = said[index];
      choices[0] = part (sheet, code, "right");
      choices[1] = part (sheet, code, "wrong1");
      choices[2] = part (sheet, code, "wrong2");
    }
  else
    {
      SwPracticeValue value = measured[index - SAID].value;

      code = measured[index - SAID].code;
      choices[0] = scaled (sheet, value, 1.0);
      choices[1] = scaled (sheet, value, 0.5);
      choices[2] = scaled (sheet, value, 2.0);
    }
  item->ask = part (sheet, code, "ask");
  item->why = part (sheet, code, "why");
}

/* A value that the practice does not have, or that reads the same when halved, makes no
 * question. */
static gboolean
makes_question (const SwSheet *sheet, guint index)
{
  const char *choices[SW_QUIZ_CHOICES];
  SwQuizItem item;

  if (index < SAID)
    return TRUE;
  if (sw_practice_get (sheet->practice, measured[index - SAID].value) <= 0.0)
    return FALSE;
  fill (sheet, index, choices, &item);
  return !g_str_equal (choices[0], choices[1]) && !g_str_equal (choices[0], choices[2])
         && !g_str_equal (choices[1], choices[2]);
}

void
sw_quiz (const SwSheet *sheet, SwQuizItem *items)
{
  SwDice dice = sw_class_dice (sheet, QUIZ_STREAM);
  guint order[ALL], count = 0, taken = 0;

  for (guint i = 0; i < ALL; i++)
    if (makes_question (sheet, i))
      order[count++] = i;
  sw_dice_shuffle (&dice, order, count);
  for (guint i = 0; i < count && taken < SW_QUIZ_ITEMS; i++)
    {
      SwQuizItem *item = &items[taken++];
      guint places[SW_QUIZ_CHOICES] = { 0, 1, 2 };
      const char *choices[SW_QUIZ_CHOICES];

      fill (sheet, order[i], choices, item);
      sw_dice_shuffle (&dice, places, SW_QUIZ_CHOICES);
      for (guint k = 0; k < SW_QUIZ_CHOICES; k++)
        {
          item->choices[k] = choices[places[k]];
          if (places[k] == 0)
            item->right = k;
        }
    }
  for (; taken < SW_QUIZ_ITEMS; taken++)
    items[taken] = (SwQuizItem){ 0 };
}
