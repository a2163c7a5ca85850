/* SPDX-License-Identifier: MIT */
#undef G_DISABLE_ASSERT
#include "pages-tidy.h"
#include <math.h>
#include <string.h>

/* Whether a page has that title. */
static gboolean
has_title (const GPtrArray *pages, const char *title)
{
  for (guint i = 0; i < pages->len; i++)
    if (g_strcmp0 (((const SwFigure *) pages->pdata[i])->title, title) == 0)
      return TRUE;
  return FALSE;
}

/* Every link leads to a page of this pack; returns how many there are. */
static guint
count_links (const GPtrArray *pages)
{
  guint count = 0;

  for (guint i = 0; i < pages->len; i++)
    {
      const SwFigure *page = g_ptr_array_index (pages, i);

      for (guint k = 0; k < page->items->len; k++)
        {
          const SwItem *item = &g_array_index (page->items, SwItem, k);

          if (item->kind != SW_ITEM_LINK)
            continue;
          count++;
          if (!has_title (pages, item->text))
            g_error ("page %u has a link to %s, which is no page", i + 1, item->text);
        }
    }
  return count;
}

static void
assert_tidy (Example *example, const char *name, SwPaper paper)
{
  g_autoptr (GPtrArray) pages = example_pack (example, paper);
  g_autofree char *words = pack_words (pages);
  g_autofree char *what = g_strdup_printf ("%s on %s in %s", name, sw_paper_code (paper),
                                           sw_texts_language (example->texts));

  assert_pages_tidy (example, pages, what);
  assert_headings_have_bodies (pages, what);
  assert_titles_whole (pages, what);
  assert_links_on_page (pages, what);
  g_assert_cmpuint (count_links (pages), >, 0);
  assert_no_gaps (words);
}

static void
assert_all_papers_tidy (Example *example, const char *name)
{
  for (int paper = 0; paper < SW_PAPER_COUNT; paper++)
    assert_tidy (example, name, (SwPaper) paper);
}

static void
test_tidy (gconstpointer name)
{
  g_autoptr (Example) example = example_new (name);
  g_auto (GStrv) languages = sw_texts_languages ();

  for (guint i = 0; languages[i] != NULL; i++)
    for (int units = 0; units < 2; units++)
      for (int paper = 0; paper < SW_PAPER_COUNT; paper++)
        {
          if (!example_is_tried (name, i, (guint) paper, (guint) units))
            continue;
          example_speak (example, languages[i]);
          example->draw.style.units = (SwUnitSystem) units;
          assert_tidy (example, name, (SwPaper) paper);
        }
}

/* A face of that outline, on a plane 2:1 slope. */
static SwFace *
plane_face (const char *id, double width_m, double run_m)
{
  SwFace *face = sw_face_new (id);
  const SwPoint section[] = { { 0.0, run_m / 2.0 }, { run_m, 0.0 } };
  const SwPoint outline[] = {
    { 0.0, 0.0 }, { width_m, 0.0 }, { width_m * 1.2, run_m }, { -0.2 * width_m, run_m }
  };

  sw_face_set_section (face, section, G_N_ELEMENTS (section));
  sw_face_set_outline (face, outline, G_N_ELEMENTS (outline));
  sw_text_set (&face->soil_id, "clay-loam");
  return face;
}

/* 60 runs of many lengths, end laps, nothing answered, nothing on the card. */
static void
change_to_60_runs (SwJob *job)
{
  g_ptr_array_set_size (job->faces, 0);
  g_ptr_array_add (job->faces, plane_face ("A", 100.0, 40.0));
  for (guint i = 0; i < SW_SITE_QUESTION_COUNT; i++)
    job->site[i] = SW_ANSWER_UNKNOWN;
}

static void
test_60_runs (void)
{
  g_autoptr (Example) example =
      example_new_changed ("pinfold-cutting", change_to_60_runs);

  g_assert_cmpint (example->result->tally->runs, >=, 59);
  g_assert_cmpint (example->result->tally->joints, >, 0);
  assert_all_papers_tidy (example, "60 runs");
}

static void
change_to_2_runs (SwJob *job)
{
  char **const card[] = {
    &job->card.name,   &job->card.number,     &job->card.revision, &job->card.date,
    &job->card.client, &job->card.place,      &job->card.permit,   &job->card.emergency,
    &job->card.muster, &job->card.supervisor, &job->card.notes
  };

  g_ptr_array_set_size (job->faces, 0);
  g_ptr_array_add (job->faces, plane_face ("A", 3.2, 4.0));
  sw_seed_mix_clear (&job->seed);
  for (guint i = 0; i < G_N_ELEMENTS (card); i++)
    sw_text_set (card[i], "");
}

static void
test_2_runs (void)
{
  g_autoptr (Example) example = example_new_changed ("pinfold-cutting", change_to_2_runs);

  g_assert_cmpint (example->result->tally->runs, ==, 2);
  assert_all_papers_tidy (example, "2 runs");
}

/* A foundation to cut round and a lens of sand that calls for longer pins. */
static void
change_to_parts (SwJob *job)
{
  SwFace *face = job->faces->pdata[0];
  SwObstacle *obstacle = sw_obstacle_new ("1");
  SwZone *zone = sw_zone_new ("1");
  const SwPoint base[] = { { 20.0, 4.0 }, { 22.0, 4.0 }, { 22.0, 6.0 }, { 20.0, 6.0 } };
  const SwPoint lens[] = { { 30.0, 0.0 }, { 48.0, 0.0 }, { 48.0, 12.0 }, { 30.0, 12.0 } };

  sw_text_set (&obstacle->name, "Sign *foundation*");
  sw_obstacle_set_outline (obstacle, base, G_N_ELEMENTS (base));
  g_ptr_array_add (face->obstacles, obstacle);
  sw_text_set (&zone->name, "Sand lens");
  sw_text_set (&zone->soil_id, "sand");
  zone->loose = TRUE;
  sw_zone_set_outline (zone, lens, G_N_ELEMENTS (lens));
  g_ptr_array_add (face->zones, zone);
}

static void
test_obstacles_and_zones (void)
{
  g_autoptr (Example) example = example_new_changed ("pinfold-cutting", change_to_parts);
  g_autoptr (GPtrArray) pages = example_pack (example, SW_PAPER_A4);
  g_autofree char *words = pack_words (pages);

  assert_all_papers_tidy (example, "obstacles and zones");
  g_assert_nonnull (strstr (words, "1, Sign *foundation*"));
  g_assert_nonnull (strstr (words, "1, Sand lens"));
  /* Firm sandy clay 150 mm, loose sand 300 mm: the catalogue's lengths. */
  g_assert_nonnull (strstr (words, "150\xc2\xa0mm or 300\xc2\xa0mm, by soil zone"));
  g_assert_nonnull (strstr (words, "Obstacles to cut round"));
}

static void
change_to_many_faces (SwJob *job)
{
  g_ptr_array_set_size (job->faces, 0);
  for (guint i = 0; i < 5; i++)
    {
      g_autofree char *id = g_strdup_printf ("RAMP-%u", i);

      g_ptr_array_add (job->faces, plane_face (id, 10.0 + 5.0 * i, 6.0 + 4.0 * i));
    }
  ((SwFace *) job->faces->pdata[3])->loose = TRUE;
}

static void
test_many_faces (void)
{
  g_autoptr (Example) example =
      example_new_changed ("pinfold-cutting", change_to_many_faces);
  g_autoptr (GPtrArray) pages = example_pack (example, SW_PAPER_A4);
  g_autofree char *words = pack_words (pages);

  assert_pages_tidy (example, pages, "five faces");
  assert_no_gaps (words);
  for (guint i = 0; i < 5; i++)
    {
      g_autofree char *title = g_strdup_printf ("Layout, face RAMP-%u\n", i);

      g_assert_nonnull (strstr (words, title));
    }
}

/* What people type: no spaces, markup, places, quotes, lines, 3000 characters. */
static void
change_to_hostile_texts (SwJob *job)
{
  g_autofree char *endless = g_strnfill (3000, 'W');
  g_autoptr (GString) prose = g_string_new (NULL);

  for (guint i = 0; i < 400; i++)
    g_string_append (prose, "mud, ");
  sw_text_set (&job->card.name, endless);
  sw_text_set (&job->card.number, endless);
  sw_text_set (&job->card.revision, "*{rev}* \"x\"\t\r\nnext");
  sw_text_set (&job->card.permit, endless);
  sw_text_set (&job->card.utility_ticket, prose->str);
  sw_text_set (&job->card.emergency, prose->str);
  sw_text_set (&job->card.muster, endless);
  sw_text_set (&job->card.notes, prose->str);
  sw_text_set (&((SwFace *) job->faces->pdata[0])->name, "*stars* and {places}");
}

static void
test_hostile_texts (void)
{
  g_autoptr (Example) example =
      example_new_changed ("sallow-bank", change_to_hostile_texts);

  for (int paper = 0; paper < SW_PAPER_COUNT; paper++)
    {
      g_autoptr (GPtrArray) pages = example_pack (example, (SwPaper) paper);
      g_autofree char *words = pack_words (pages);

      assert_pages_tidy (example, pages, "hostile texts");
      g_assert_nonnull (strstr (words, "*stars* and {places}"));
    }
}

/* Whether a text item with exactly those words is in the pack. */
static gboolean
says (const char *words, const char *line)
{
  g_autofree char *whole = g_strdup_printf ("\n%s\n", line);

  return strstr (words, whole) != NULL;
}

/* Source: examples/pinfold-cutting.expected.md, worked by hand, rounded as read. */
static void
test_numbers_of_the_cutting (void)
{
  static const char *const lines[] = { "13.42\xc2\xa0m",  "17.89\xc2\xa0m",
                                       "644.0\xc2\xa0m²", "858.7\xc2\xa0m²",
                                       "14.77\xc2\xa0m",  "19.24\xc2\xa0m",
                                       "162\xc2\xa0mm",   "1742.4\xc2\xa0m²",
                                       "1757.5\xc2\xa0m²" };
  g_autoptr (Example) example = example_new ("pinfold-cutting");
  g_autoptr (GPtrArray) pages = example_pack (example, SW_PAPER_A4);
  g_autofree char *words = pack_words (pages);

  for (guint i = 0; i < G_N_ELEMENTS (lines); i++)
    if (!says (words, lines[i]))
      g_error ("the pack does not say %s", lines[i]);
  g_assert_true (says (words, "21"));
  /* Three ways, on the tier table: no break between them. */
  g_assert_true (says (words, "2H:1V\xc2\xa0·\xc2\xa0"
                              "26.6°\xc2\xa0·\xc2\xa0"
                              "50\xc2\xa0%"));
  /* 21 x 34.3 = 720.3, from the cutting plan's 714.1029 + 6.1971. */
  g_assert_nonnull (strstr (words, "= 720.30\xc2\xa0m = 21 rolls"));
}

/* Source: the same of sallow-bank (6 rolls, 21 runs, 8.36 m) and sandlark-bluff-road. */
static void
test_numbers_of_the_banks (void)
{
  g_autoptr (Example) house = example_new ("sallow-bank");
  g_autoptr (Example) sand = example_new ("sandlark-bluff-road");
  g_autoptr (GPtrArray) house_pages = example_pack (house, SW_PAPER_LETTER);
  g_autoptr (GPtrArray) sand_pages = example_pack (sand, SW_PAPER_LETTER);
  g_autofree char *house_words = page_words (g_ptr_array_index (house_pages, 0));
  g_autofree char *sand_words = page_words (g_ptr_array_index (sand_pages, 0));

  g_assert_true (says (house_words, "8.36\xc2\xa0m"));
  g_assert_true (says (house_words, "157.9\xc2\xa0m²"));
  g_assert_true (says (house_words, "6"));
  /* 9.92 m and 12 runs of 11.27 m: training item 1 and 2, by hand. */
  g_assert_true (says (sand_words, "9.92\xc2\xa0m"));
  g_assert_true (says (sand_words, "12"));
  g_assert_true (says (sand_words, "11.27\xc2\xa0m"));
}

static guint
count_pages_that_say (const GPtrArray *pages, const char *start)
{
  guint count = 0;

  for (guint i = 0; i < pages->len; i++)
    {
      g_autofree char *words = page_words (g_ptr_array_index (pages, i));

      count += strstr (words, start) != NULL;
    }
  return count;
}

/* By hand: lap middles of the bank are 2.44 - 3.28 / 11 = 2.1418 m apart, 2.1418 / 0.30 =
 * 7.1, so 8 gaps of 267.7 mm; the drawing has the same number. A heap has no leftmost run,
 * and its columns draw together. */
static void
test_as_laid (void)
{
  g_autoptr (Example) bank = example_new ("sandlark-bluff-road");
  g_autoptr (Example) heap = example_new ("quernby-heap");
  g_autoptr (GPtrArray) of_bank = example_pack (bank, SW_PAPER_A4);
  g_autoptr (GPtrArray) of_heap = example_pack (heap, SW_PAPER_A4);
  g_autofree char *bank_words = pack_words (of_bank);
  g_autofree char *heap_words = pack_words (of_heap);
  const char *columns = strstr (bank_words, "Columns as laid");

  g_assert_nonnull (columns);
  g_assert_true (g_str_has_prefix (columns, "Columns as laid\n268\302\240mm\n"));
  g_assert_nonnull (strstr (bank_words, "Run 1 is the rightmost"));
  g_assert_null (strstr (heap_words, "Columns as laid"));
  g_assert_null (strstr (heap_words, "leftmost"));
  g_assert_nonnull (strstr (heap_words, "Run 1 begins at the line"));
}

/* The house lot has a downspout on the slope, a stop; the cutting has none. */
static void
test_stop_banner (void)
{
  g_autoptr (Example) stop = example_new ("sallow-bank");
  g_autoptr (Example) free_of_it = example_new ("pinfold-cutting");
  g_autoptr (GPtrArray) stop_pages = example_pack (stop, SW_PAPER_A4);
  g_autoptr (GPtrArray) free_pages = example_pack (free_of_it, SW_PAPER_A4);

  g_assert_cmpuint (count_pages_that_say (stop_pages, "STOP: settle"), ==,
                    stop_pages->len);
  g_assert_cmpuint (count_pages_that_say (free_pages, "STOP"), ==, 0);
}

static void
test_foot (void)
{
  g_autoptr (Example) example = example_new ("pinfold-cutting");
  g_autoptr (GPtrArray) pages = example_pack (example, SW_PAPER_A4);

  for (guint i = 0; i < pages->len; i++)
    {
      g_autofree char *words = page_words (g_ptr_array_index (pages, i));
      g_autofree char *at = g_strdup_printf (
          "\nPage %u of %u · Pinfold Cutting, Route K7", i + 1, pages->len);

      g_assert_nonnull (strstr (words, at));
      g_assert_nonnull (strstr (words, "Slopewright 1.2.3 · input 0123456789ab · prints "
                                       "at true scale"));
      g_assert_nonnull (strstr (words, "Planning aid, not an engineering design."));
    }
}

/* Every page named in the list of contents begins with that title. */
static void
test_contents (void)
{
  g_autoptr (Example) example = example_new ("pinfold-cutting");
  g_autoptr (GPtrArray) pages = example_pack (example, SW_PAPER_A4);
  g_autofree char *words = pack_words (pages);
  const char *title;

  for (guint i = 1; i < pages->len; i++)
    {
      g_autofree char *entry = NULL;

      if (((SwFigure *) pages->pdata[i])->goes_on)
        continue;
      title = ((SwFigure *) pages->pdata[i])->title;
      entry = g_strdup_printf ("\n%s\n%u\n", title, i + 1);
      if (strstr (words, entry) == NULL)
        g_error ("the list of contents has no %s on page %u", title, i + 1);
    }
}

/* Pages that go on say so, and are marked as such for the bookmarks. */
static void
test_pages_that_go_on (void)
{
  g_autoptr (Example) example = example_new ("pinfold-cutting");
  g_autoptr (GPtrArray) pages = NULL;
  guint going_on = 0;

  example_speak (example, "fr");
  pages = example_pack (example, SW_PAPER_A4);
  for (guint i = 0; i < pages->len; i++)
    {
      const SwFigure *page = pages->pdata[i];

      g_assert_cmpint (page->goes_on, ==, g_str_has_suffix (page->title, ", suite"));
      going_on += page->goes_on;
    }
  g_assert_cmpuint (going_on, >, 0);
}

/* Three tiers-worth of one doubt are one entry that names its places. */
static void
test_findings_told_once (void)
{
  g_autoptr (Example) example = example_new ("corvendale-interchange");
  g_autoptr (GPtrArray) pages = example_pack (example, SW_PAPER_A4);
  g_autofree char *words = pack_words (pages);
  guint footings = 0;

  for (guint i = 0; i < example->result->findings->len; i++)
    footings += g_str_has_prefix (
        ((const SwFinding *) example->result->findings->pdata[i])->code, "footing");
  g_assert_cmpuint (footings, ==, 3);
  g_assert_cmpuint (count_of (words, "Footing."), ==, 1);
}

/* The west ramp's 26 runs stand in two rows, however its joined runs lie among the others:
 * 0.60 + 0.45 + 13.4164 + 0.30 = 14.77 m in one piece, 0.30 m of end lap more in two. */
static void
test_runs_cut_alike_are_one_row (void)
{
  g_autoptr (Example) example = example_new ("corvendale-interchange");
  g_autoptr (GPtrArray) pages = example_pack (example, SW_PAPER_A4);
  const SwFaceLayout *west = &example->result->layout->faces[0];
  g_autofree char *words = pack_words (pages);
  g_autofree char *whole = NULL, *joined = NULL;
  guint n_joined = 0;

  for (guint i = 0; i < west->n_runs; i++)
    n_joined += west->runs[i].n_pieces == 2;
  g_assert_cmpuint (west->n_runs, ==, 26);
  whole = g_strdup_printf ("\n%u\n13.42\xc2\xa0m\n14.77\xc2\xa0m\n1\n", 26 - n_joined);
  joined = g_strdup_printf ("\n%u\n13.42\xc2\xa0m\n15.07\xc2\xa0m\n2\n", n_joined);
  g_assert_cmpuint (count_of (words, whole), ==, 1);
  g_assert_cmpuint (count_of (words, joined), ==, 1);
}

/* By hand, examples/pinfold-cutting.expected.md: 13.42 m, 21 runs, 14.77 m, 21 rolls;
 * 48.00 / 0.30 = 160 gaps, 161 pins. */
static void
test_hand_check (void)
{
  static const char *const lines[] = { "13.42\xc2\xa0m", "21", "14.77\xc2\xa0m", "161" };
  g_autoptr (Example) example = example_new ("pinfold-cutting");
  g_autoptr (GPtrArray) pages = example_pack (example, SW_PAPER_A4);
  const SwFigure *page = page_titled (pages, "Check this pack by hand");
  g_autofree char *words = page_words (page);

  for (guint i = 0; i < G_N_ELEMENTS (lines); i++)
    if (!says (words, lines[i]))
      g_error ("the hand check does not say %s", lines[i]);
}

static double
height_of (const SwFigure *page, const char *text)
{
  for (guint i = 0; i < page->items->len; i++)
    {
      const SwItem *item = &g_array_index (page->items, SwItem, i);

      if (item->kind == SW_ITEM_TEXT && g_str_equal (item->text, text))
        return sw_figure_item_points (page, item)->y_mm;
    }
  g_error ("the page has no text %s", text);
}

/* On the pages of details; a staple is one line through four corners. */
static guint
count_staples (const GPtrArray *pages)
{
  guint count = 0;

  for (guint p = 0; p < pages->len; p++)
    {
      const SwFigure *page = g_ptr_array_index (pages, p);

      for (guint i = 0; g_str_has_prefix (page->title, "Details") && i < page->items->len;
           i++)
        {
          const SwItem *item = &g_array_index (page->items, SwItem, i);

          count += item->role == SW_ROLE_PIN && item->kind == SW_ITEM_LINE
                   && item->n_points == 4;
        }
    }
  return count;
}

/* A pin with a washer has one shaft, and says what is measured on it. */
static void
test_washer_pin_is_a_shaft (void)
{
  g_autoptr (Example) washers = example_new ("veldmoor-cell");
  g_autoptr (Example) staples = example_new ("pinfold-cutting");
  g_autoptr (GPtrArray) with_washers = example_pack (washers, SW_PAPER_A4);
  g_autoptr (GPtrArray) with_staples = example_pack (staples, SW_PAPER_A4);
  g_autofree char *words = pack_words (with_washers);

  g_assert_cmpuint (count_staples (with_washers), ==, 0);
  g_assert_cmpuint (count_staples (with_staples), >, 0);
  g_assert_nonnull (strstr (words, "Washer 40\u00a0mm"));
}

/* Height of the topmost point of a role. */
static double
top_of (const SwFigure *page, SwRole role)
{
  double top_mm = page->height_mm;

  for (guint i = 0; i < page->items->len; i++)
    {
      const SwItem *item = &g_array_index (page->items, SwItem, i);

      for (guint k = 0; item->role == role && k < item->n_points; k++)
        top_mm = MIN (top_mm, sw_figure_item_points (page, item)[k].y_mm);
    }
  return top_mm;
}

/* Cut along its frame, the stick measures from the cut. */
static void
test_stick_begins_at_its_cut (void)
{
  g_autoptr (Example) example = example_new ("veldmoor-cell");
  g_autoptr (GPtrArray) pages = example_pack (example, SW_PAPER_A4);
  const SwFigure *page = page_titled (pages, "Check this pack by hand");
  double zero_mm = top_of (page, SW_ROLE_SCALE_BAR);
  gboolean cut = FALSE;

  for (guint i = 0; i < page->items->len; i++)
    {
      const SwItem *item = &g_array_index (page->items, SwItem, i);
      const SwPaperPoint *points = sw_figure_item_points (page, item);

      cut = cut
            || (item->role == SW_ROLE_FRAME && item->n_points >= 4
                && fabs (points[0].y_mm - zero_mm) < 1e-6);
    }
  g_assert_true (cut);
}

/* The ruler on paper: 40 and 140 are 100 mm apart, 1 and 3 inches 50.8 mm, on any paper. */
static void
test_stick_is_full_size (void)
{
  g_autoptr (Example) example = example_new ("pinfold-cutting");

  for (int paper = 0; paper < SW_PAPER_COUNT; paper++)
    {
      g_autoptr (GPtrArray) metric = NULL;
      g_autoptr (GPtrArray) us = NULL;
      const SwFigure *page;

      example->draw.style.units = SW_UNITS_METRIC;
      metric = example_pack (example, (SwPaper) paper);
      page = page_titled (metric, "Check this pack by hand");
      g_assert_cmpfloat_with_epsilon (height_of (page, "140") - height_of (page, "40"),
                                      100.0, 1e-6);
      example->draw.style.units = SW_UNITS_US;
      us = example_pack (example, (SwPaper) paper);
      page = page_titled (us, "Check this pack by hand");
      g_assert_cmpfloat_with_epsilon (height_of (page, "3") - height_of (page, "1"), 50.8,
                                      1e-6);
    }
}

/* Installed 2026-10-05, inspected every 7 days, mended within 4: by the calendar. */
static void
test_dates (void)
{
  g_autoptr (Example) example = example_new ("pinfold-cutting");
  g_autoptr (GPtrArray) pages = example_pack (example, SW_PAPER_A4);
  g_autofree char *words = pack_words (pages);

  g_assert_nonnull (strstr (words, "\n1\n2026-10-12\n2026-10-16\n"));
}

/* The ditch job replaces two values, and says why. */
static void
test_overrides_are_listed (void)
{
  g_autoptr (Example) changed = example_new ("kelpie-lane");
  g_autoptr (Example) plain = example_new ("pinfold-cutting");
  g_autoptr (GPtrArray) changed_pages = example_pack (changed, SW_PAPER_A4);
  g_autoptr (GPtrArray) plain_pages = example_pack (plain, SW_PAPER_A4);
  g_autofree char *changed_words = pack_words (changed_pages);
  g_autofree char *plain_words = pack_words (plain_pages);

  g_assert_cmpuint (changed->job->n_overrides, ==, 2);
  g_assert_nonnull (strstr (changed_words, "\nReason given\n"));
  g_assert_null (strstr (plain_words, "\nReason given\n"));
  g_assert_nonnull (strstr (plain_words, "the practice’s own"));
}

static void
copy_practice (SwJob *job)
{
  sw_text_set (&job->own.name, "County <D-14> & *");
  sw_text_set (&job->own.source, "County drawings, 2024");
  job->own.toe_kind = 1 + SW_TOE_ROW;
}

/* A copy is named before the practice it comes from, with its source and its ways. */
static void
test_own_practice_is_named (void)
{
  g_autoptr (Example) example = example_new_changed ("kelpie-lane", copy_practice);
  g_autoptr (GPtrArray) pages = example_pack (example, SW_PAPER_A4);
  g_autofree char *words = pack_words (pages);

  g_assert_nonnull (strstr (words, "County <D-14> & *, own copy of"));
  g_assert_nonnull (strstr (words, "\nOne pinned row,"));
  g_assert_nonnull (strstr (words, "\nCounty drawings, 2024\n"));
}

/* Nothing here may be taken for a verdict; the page's name is the one exception. */
static void
test_no_verdict (void)
{
  for (guint i = 0; example_names[i] != NULL; i++)
    {
      g_autoptr (Example) example = example_new (example_names[i]);
      g_autoptr (GPtrArray) pages = example_pack (example, SW_PAPER_A4);
      g_autofree char *words = pack_words (pages);

      g_assert_false (
          g_regex_match_simple ("\\bsafe(ly)?\\b", words, G_REGEX_CASELESS, 0));
    }
}

static void
test_every_glyph_is_in_the_font (void)
{
  g_autoptr (SwTexts) texts = sw_texts_load ("en");
  g_autoptr (GPtrArray) ids = sw_texts_ids (texts);

  for (guint i = 0; i < ids->len; i++)
    {
      const char *id = g_ptr_array_index (ids, i);
      g_auto (GStrv) lines = g_strsplit (sw_texts_get (texts, id), "\n", -1);
      gunichar missing;

      for (guint line = 0; lines[line] != NULL; line++)
        {
          g_assert_true (sw_paint_missing_glyph (lines[line], &missing, NULL));
          if (missing != 0)
            g_error ("%s: U+%04X is not in the sheet font", id, missing);
        }
    }
}

static void
test_same_bytes (void)
{
  g_autoptr (Example) one = example_new ("sandlark-bluff-road");
  g_autoptr (Example) two = example_new ("sandlark-bluff-road");
  g_autoptr (GPtrArray) first = example_pack (one, SW_PAPER_TABLOID);
  g_autoptr (GPtrArray) second = example_pack (two, SW_PAPER_TABLOID);

  g_assert_cmpuint (first->len, ==, second->len);
  for (guint i = 0; i < first->len; i++)
    {
      g_autofree char *a = sw_figure_dump (g_ptr_array_index (first, i));
      g_autofree char *b = sw_figure_dump (g_ptr_array_index (second, i));

      g_assert_cmpstr (a, ==, b);
    }
}

/* Source: ISO 216; ANSI Y14.1, inches times 25.4. */
static void
test_papers (void)
{
  static const struct
  {
    const char *code;
    double width_mm, height_mm;
  } rows[] = { { "A4", 210.0, 297.0 },
               { "Letter", 215.9, 279.4 },
               { "A3", 297.0, 420.0 },
               { "Tabloid", 279.4, 431.8 } };
  SwPaper paper;
  double width_mm, height_mm;

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      g_assert_true (sw_paper_from_code (rows[i].code, &paper));
      g_assert_cmpstr (sw_paper_code (paper), ==, rows[i].code);
      sw_paper_size_mm (paper, &width_mm, &height_mm);
      g_assert_cmpfloat_with_epsilon (width_mm, rows[i].width_mm, 1e-9);
      g_assert_cmpfloat_with_epsilon (height_mm, rows[i].height_mm, 1e-9);
    }
  g_assert_false (sw_paper_from_code ("a4", &paper));
  g_assert_false (sw_paper_from_code (NULL, &paper));
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, NULL);
  example_add_tests ("/sheet/pack/tidy", test_tidy);
  g_test_add_func ("/sheet/pack/60-runs", test_60_runs);
  g_test_add_func ("/sheet/pack/2-runs", test_2_runs);
  g_test_add_func ("/sheet/pack/many-faces", test_many_faces);
  g_test_add_func ("/sheet/pack/obstacles-and-zones", test_obstacles_and_zones);
  g_test_add_func ("/sheet/pack/hostile-texts", test_hostile_texts);
  g_test_add_func ("/sheet/pack/numbers-of-the-cutting", test_numbers_of_the_cutting);
  g_test_add_func ("/sheet/pack/numbers-of-the-banks", test_numbers_of_the_banks);
  g_test_add_func ("/sheet/pack/as-laid", test_as_laid);
  g_test_add_func ("/sheet/pack/stop-banner", test_stop_banner);
  g_test_add_func ("/sheet/pack/foot", test_foot);
  g_test_add_func ("/sheet/pack/contents", test_contents);
  g_test_add_func ("/sheet/pack/pages-that-go-on", test_pages_that_go_on);
  g_test_add_func ("/sheet/pack/findings-told-once", test_findings_told_once);
  g_test_add_func ("/sheet/pack/runs-cut-alike", test_runs_cut_alike_are_one_row);
  g_test_add_func ("/sheet/pack/hand-check", test_hand_check);
  g_test_add_func ("/sheet/pack/washer-pin-is-a-shaft", test_washer_pin_is_a_shaft);
  g_test_add_func ("/sheet/pack/stick-begins-at-its-cut", test_stick_begins_at_its_cut);
  g_test_add_func ("/sheet/pack/stick-is-full-size", test_stick_is_full_size);
  g_test_add_func ("/sheet/pack/dates", test_dates);
  g_test_add_func ("/sheet/pack/overrides-are-listed", test_overrides_are_listed);
  g_test_add_func ("/sheet/pack/own-practice-is-named", test_own_practice_is_named);
  g_test_add_func ("/sheet/pack/no-verdict", test_no_verdict);
  g_test_add_func ("/sheet/pack/every-glyph-is-in-the-font",
                   test_every_glyph_is_in_the_font);
  g_test_add_func ("/sheet/pack/same-bytes", test_same_bytes);
  g_test_add_func ("/sheet/paper/sizes", test_papers);
  return g_test_run ();
}
