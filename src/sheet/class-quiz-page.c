/* SPDX-License-Identifier: MIT */
#include "class-quiz.h"
#include "class-sheet.h"

#define ITEM_GAP_MM 2.5

static const char *
letter (const SwSheet *sheet, guint index)
{
  return sw_sheet_format (sheet, "%c", 'a' + (char) index);
}

static void
add_ask (const SwSheet *sheet, SwFlow *flow, guint number, const SwQuizItem *item)
{
  sw_flow_space (flow, ITEM_GAP_MM);
  sw_flow_item (flow, SW_STYLE_BODY, sw_sheet_format (sheet, "%u", number),
                sw_sheet_fill (sheet, "class.quiz.ask", "ask", item->ask, "points",
                               sw_sheet_format (sheet, "%u", item->points), NULL));
}

static void
add_choices (const SwSheet *sheet, SwFlow *flow, const SwQuizItem *item, gboolean key)
{
  gboolean marked = key && item->answer == NULL;

  for (guint i = 0; i < item->n_choices; i++)
    {
      sw_flow_tie (flow);
      sw_flow_item (flow, SW_STYLE_BODY, letter (sheet, i),
                    marked && i == item->right
                        ? sw_sheet_format (sheet, "*%s*", item->choices[i])
                        : item->choices[i]);
    }
}

static void
add_line (const SwSheet *sheet, SwFlow *flow, SwQuizKind kind)
{
  static const char *const labels[] = {
    [SW_QUIZ_TRUE_FALSE] = "class.quiz.line.because",
    [SW_QUIZ_ORDER] = "class.quiz.line.order",
    [SW_QUIZ_NUMBER] = "class.quiz.line.number",
  };

  if (kind == SW_QUIZ_CHOICE)
    return;
  sw_flow_tie (flow);
  sw_flow_write_in (flow, sw_sheet_get (sheet, labels[kind]));
}

static void
add_reason (const SwSheet *sheet, SwFlow *flow, const SwQuizItem *item)
{
  const char *right = item->answer != NULL ? item->answer : letter (sheet, item->right);

  sw_flow_tie (flow);
  sw_flow_item (flow, SW_STYLE_SMALL, "",
                sw_sheet_fill (sheet, "class.quiz.because", "letter", right, "why",
                               item->why, NULL));
}

static void
add_quiz (SwSheet *sheet, gboolean key)
{
  SwFlow *flow = sw_sheet_flow (sheet);
  SwQuizItem items[SW_QUIZ_ITEMS];

  sw_quiz (sheet, items);
  sw_flow_text (flow, SW_STYLE_BODY, SW_ROLE_TEXT,
                sw_sheet_get (sheet, key ? "class.quiz.key" : "class.quiz.how"));
  for (guint i = 0; i < SW_QUIZ_ITEMS && items[i].ask != NULL; i++)
    {
      add_ask (sheet, flow, i + 1, &items[i]);
      add_choices (sheet, flow, &items[i], key);
      if (key)
        add_reason (sheet, flow, &items[i]);
      else
        add_line (sheet, flow, items[i].kind);
    }
  sw_sheet_add (sheet, sw_sheet_get (sheet, "class.quiz.title"), flow);
}

void
sw_page_class_quiz (SwSheet *sheet)
{
  add_quiz (sheet, FALSE);
}

void
sw_class_quiz_answers (SwSheet *sheet)
{
  add_quiz (sheet, TRUE);
}

guint
sw_class_quiz_points (const SwSheet *sheet)
{
  SwQuizItem items[SW_QUIZ_ITEMS];
  guint points = 0;

  sw_quiz (sheet, items);
  for (guint i = 0; i < SW_QUIZ_ITEMS; i++)
    points += items[i].points;
  return points;
}
