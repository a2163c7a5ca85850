/* SPDX-License-Identifier: MIT */
#undef G_DISABLE_ASSERT
#include "pages-tidy.h"
#include <slopewright/tally/pin-frame.h>
#include <string.h>

/* Words of the pages of that title, line ends read as spaces. */
static char *
words_of (const GPtrArray *pages, const char *title)
{
  GString *words = g_string_new (NULL);

  for (guint i = 0; i < pages->len; i++)
    {
      const SwFigure *page = g_ptr_array_index (pages, i);

      if (g_str_has_prefix (page->title, title))
        {
          g_autofree char *text = page_words (page);

          g_string_append (words, text);
        }
    }
  g_strdelimit (words->str, "\n", ' ');
  return g_string_free (words, FALSE);
}

/*
 * Sandlark, by hand: 12 runs of 2.44 m over 26 m lap (12 x 2.44 - 26) / 11 = 0.298 m, so
 * that laps lie 2.142 m apart; pins at most 0.30 m across and 1 m down each. The frame of
 * 1 m holds 3 or 4, 3.69 on average (see tests/tally/test-pin-frame.c); three 11.07.
 */
static void
test_frame (void)
{
  g_autoptr (Example) example = example_new ("sandlark-bluff-road");
  g_autoptr (GPtrArray) pages = example_pack (example, SW_PAPER_A4);
  g_autofree char *words = words_of (pages, "Inspection");

  assert_says (words, "3 to 4 in each, about 11 in all three");
  assert_says (words, "five pins of 300\xc2\xa0mm");
  assert_says (words, "at least 150\xc2\xa0mm deep");
}

/* Field pins of the layout in a frame of @side_m whose corner is at (@along_m, @down_m). */
static int
pins_in (const SwFaceLayout *face, double along_m, double down_m, double side_m)
{
  int count = 0;

  for (gsize i = 0; i < face->n_pins; i++)
    {
      double along = (double) face->pins[i].along_m - along_m;
      double down = (double) face->pins[i].down_m - down_m;

      count += face->pins[i].role == SW_PIN_FIELD && along > 0.0 && along < side_m
               && down > 0.0 && down < side_m;
    }
  return count;
}

/* Frames laid between the first two laps all over a plain face hold as many pins of the
 * layout as is printed, and so many on average. */
static void
test_frames_on_layout (gconstpointer name)
{
  g_autoptr (Example) example = example_new (name);
  const SwFaceLayout *face = &example->result->layout->faces[0];
  const SwTier *tier = &face->tiers[0];
  double between_m = sw_tier_between_laps_m (example->job, tier);
  double lap_m = between_m + tier->side_lap_m / 2.0; /* from the leeward end */
  double first_m = face->face->leeward == SW_SIDE_LEFT
                       ? tier->along_from_m + lap_m
                       : tier->along_to_m - lap_m - between_m;
  double play_m = between_m - 1.0, sum = 0.0;
  SwPinFrame frame = sw_pin_frame (between_m, tier->pin_across_m, tier->pin_down_m, 1.0);
  guint steps = 50, count = 0;

  for (guint i = 0; i < steps; i++)
    for (guint k = 0; k < steps; k++)
      {
        double along_m = first_m + play_m * (i + 0.517) / steps;
        double down_m = 1.0 + tier->pin_down_m * (k + 0.491) / steps;
        int pins = pins_in (face, along_m, down_m, 1.0);

        g_assert_cmpint (pins, >=, frame.least);
        g_assert_cmpint (pins, <=, frame.most);
        sum += pins;
        count++;
      }
  g_assert_cmpfloat_with_epsilon (sum / count, frame.mean, 0.06);
}

/* What the reference asks of a report of one visit; what the job does not have is not
 * asked for. */
static void
test_report (void)
{
  static const char *const wanted[] = {
    "DHA-ESC-118",
    "Inspector, qualification",
    "Start, finish",
    "Rain since last, mm",
    "Hours since it ended",
    "could not be inspected",
    "Complaint or call",
    "Plants grow",
    "every 7\xc2\xa0"
    "d, and within 24\xc2\xa0h of 13\xc2\xa0mm",
    "Contact under the blanket",
    "Key trench",
    "Side laps",
    "Pins missing or lifted",
    "Rills under the blanket",
    "Sediment at the toe",
    "the aim is 70\xc2\xa0%",
    "Animals trapped",
    "Water coming in from above",
    "keep off, call engineer",
    "2 mend within 4\xc2\xa0"
    "d",
    "By whom",
    "Seen by",
    "Certification",
    "I walked this site on the day above, and this report is complete and true",
    "Next inspection due on",
    "Copies to",
  };
  g_autoptr (Example) example = example_new ("sandlark-bluff-road");
  g_autoptr (GPtrArray) pages = example_pack (example, SW_PAPER_A4);
  g_autofree char *words = words_of (pages, "Inspection report");

  for (guint i = 0; i < G_N_ELEMENTS (wanted); i++)
    assert_says (words, wanted[i]);
  g_assert_null (strstr (words, "Round obstacles"));
  g_assert_null (strstr (words, "Check slots"));
  g_assert_null (strstr (words, "End laps"));
}

static guint
pages_of (const GPtrArray *pages, const char *title)
{
  guint count = 0;

  for (guint i = 0; i < pages->len; i++)
    count += g_str_has_prefix (((const SwFigure *) pages->pdata[i])->title, title);
  return count;
}

/* Front and back of one sheet, in the crew's pack and in the permit's. */
static void
test_one_sheet (gconstpointer name)
{
  static const SwPackKind kinds[] = { SW_PACK_CREW, SW_PACK_PERMIT };
  g_autoptr (Example) example = example_new (name);
  g_auto (GStrv) languages = sw_texts_languages ();

  for (guint i = 0; languages[i] != NULL; i++)
    for (int paper = 0; paper < SW_PAPER_COUNT; paper++)
      for (guint k = 0; k < G_N_ELEMENTS (kinds); k++)
        {
          g_autoptr (GPtrArray) pages = NULL;

          example_speak (example, languages[i]);
          pages = example_pack_of_kind (example, (SwPaper) paper, kinds[k]);
          g_assert_cmpuint (
              pages_of (pages, sw_texts_get (example->texts, "inspecting.title")), ==, 2);
        }
}

/* What is done about rills, tears and slides stands with this practice's sizes. */
static void
test_repairs (void)
{
  g_autoptr (Example) example = example_new ("halter-brook");
  g_autoptr (GPtrArray) pages = example_pack (example, SW_PAPER_A4);
  g_autofree char *words = words_of (pages, "Inspection");

  assert_says (words, "Find the water and lead it away first.");
  assert_says (words, "a patch 150\xc2\xa0mm larger all round");
  assert_says (words, "Everybody off, above and below.");
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/sheet/inspecting/frame", test_frame);
  g_test_add_data_func ("/sheet/inspecting/frames-on-layout/sandlark",
                        "sandlark-bluff-road", test_frames_on_layout);
  g_test_add_data_func ("/sheet/inspecting/frames-on-layout/old-weir", "old-weir-terrace",
                        test_frames_on_layout);
  g_test_add_func ("/sheet/inspecting/report", test_report);
  g_test_add_func ("/sheet/inspecting/repairs", test_repairs);
  example_add_tests ("/sheet/inspecting/one-sheet", test_one_sheet);
  return g_test_run ();
}
