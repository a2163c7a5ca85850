/* SPDX-License-Identifier: MIT */
#undef G_DISABLE_ASSERT
#include <slopewright/store/help.h>
#include <slopewright/store/store.h>
#include <string.h>

static SwTexts *
make_texts (void)
{
  SwTexts *texts = sw_texts_new ("en");

  sw_texts_add (texts, "soil.sand", "Sand");
  return texts;
}

static SwHelpPage *
parse (const char *name, const char *text, GError **error)
{
  g_autoptr (SwTexts) texts = make_texts ();

  return sw_help_page_parse (name, text, strlen (text), texts, "page.md", error);
}

static SwHelpPage *
parse_well (const char *name, const char *text)
{
  g_autoptr (GError) error = NULL;
  SwHelpPage *page = parse (name, text, &error);

  g_assert_no_error (error);
  return page;
}

static const SwHelpBlock *
block_of (const SwHelpPage *page, guint index)
{
  g_assert_cmpuint (index, <, page->blocks->len);
  return g_ptr_array_index (page->blocks, index);
}

static void
assert_line (const SwHelpBlock *block, guint index, const char *words)
{
  g_assert_cmpuint (index, <, block->lines->len);
  g_autofree char *line = sw_help_line_text (g_ptr_array_index (block->lines, index));
  g_assert_cmpstr (line, ==, words);
}

/* Every kind of block, as the header lists them. */
static void
test_blocks (void)
{
  g_autoptr (SwHelpPage) page = parse_well ("soil", "# Soil\n"
                                                    "\n"
                                                    "First words\n"
                                                    "and more of them.\n"
                                                    "\n"
                                                    "Second.\n"
                                                    "## By hand {#hand}\n"
                                                    "- wet it\n"
                                                    "- squeeze\n"
                                                    "  it\n"
                                                    "\n"
                                                    "1. one\n"
                                                    "2. two\n"
                                                    "### Table\n"
                                                    "| a | b \\| c |\n"
                                                    "|---|---|\n"
                                                    "| d | |\n"
                                                    "\n"
                                                    "> Mind\n"
                                                    "> this.\n"
                                                    "\n"
                                                    "![A trench](bank/key-trench)\n");
  static const SwHelpBlockKind kinds[] = {
    SW_HELP_PARAGRAPH,  SW_HELP_PARAGRAPH, SW_HELP_HEADING, SW_HELP_POINTS, SW_HELP_STEPS,
    SW_HELP_SUBHEADING, SW_HELP_TABLE,     SW_HELP_CAUTION, SW_HELP_FIGURE
  };

  g_assert_cmpstr (page->title, ==, "Soil");
  g_assert_cmpstr (page->language, ==, "en");
  g_assert_cmpuint (page->blocks->len, ==, G_N_ELEMENTS (kinds));
  for (guint i = 0; i < G_N_ELEMENTS (kinds); i++)
    g_assert_cmpint (block_of (page, i)->kind, ==, kinds[i]);
  assert_line (block_of (page, 0), 0, "First words and more of them.");
  assert_line (block_of (page, 2), 0, "By hand");
  g_assert_cmpint (sw_help_page_place (page, "hand"), ==, 2);
  g_assert_cmpint (sw_help_page_place (page, "foot"), ==, -1);
  assert_line (block_of (page, 3), 1, "squeeze it");
  assert_line (block_of (page, 4), 1, "two");
  g_assert_cmpuint (block_of (page, 6)->columns, ==, 2);
  g_assert_cmpuint (block_of (page, 6)->lines->len, ==, 4);
  assert_line (block_of (page, 6), 1, "b | c");
  assert_line (block_of (page, 6), 3, "");
  assert_line (block_of (page, 7), 0, "Mind this.");
  g_assert_cmpstr (block_of (page, 8)->figure, ==, "bank/key-trench");
  assert_line (block_of (page, 8), 0, "A trench");
}

/* Every mark, one after the other. */
static void
test_marks (void)
{
  g_autoptr (SwHelpPage) page = parse_well (
      "p",
      "# P\n**bold**, *Save As…*, `13.4`, [[Ctrl+S]], [words](soil#hand), {soil.sand}"
      " and \\*signs\\{\n");
  const GPtrArray *line = g_ptr_array_index (block_of (page, 0)->lines, 0);
  static const struct
  {
    SwHelpSpanKind kind;
    const char *text, *target;
  } spans[] = {
    { SW_HELP_STRONG, "bold", NULL },       { SW_HELP_PLAIN, ", ", NULL },
    { SW_HELP_LABEL, "Save As…", NULL },    { SW_HELP_PLAIN, ", ", NULL },
    { SW_HELP_TYPED, "13.4", NULL },        { SW_HELP_PLAIN, ", ", NULL },
    { SW_HELP_KEY, "Ctrl+S", NULL },        { SW_HELP_PLAIN, ", ", NULL },
    { SW_HELP_LINK, "words", "soil#hand" }, { SW_HELP_PLAIN, ", Sand and *signs{", NULL }
  };

  g_assert_cmpuint (line->len, ==, G_N_ELEMENTS (spans));
  for (guint i = 0; i < line->len; i++)
    {
      const SwHelpSpan *span = g_ptr_array_index (line, i);
      g_assert_cmpint (span->kind, ==, spans[i].kind);
      g_assert_cmpstr (span->text, ==, spans[i].text);
      g_assert_cmpstr (span->target, ==, spans[i].target);
    }
}

/* What is wrong is said with file, line, found and expected. */
static void
test_bad_markup (void)
{
  static const struct
  {
    const char *text, *line, *expected;
  } rows[] = {
    { "Words\n", "page.md:1:", "# title" },
    { "", "page.md:1:", "# title" },
    { "# T\n\n# Again\n", "page.md:3:", "## heading" },
    { "# T\n#### Deep\n", "page.md:2:", "## heading" },
    { "# T\n## H {#a} b\n", "page.md:2:", "{#place}" },
    { "# T\n\na\nb **bold\nc\n", "page.md:3:", "\"**\"" },
    { "# T\n`open\n", "page.md:2:", "\"`\"" },
    { "# T\n**** four\n", "page.md:2:", "\"**\"" },
    { "# T\n[[Ctrl+S\n", "page.md:2:", "\"]]\"" },
    { "# T\n[words]\n", "page.md:2:", "[words](page)" },
    { "# T\n[words]()\n", "page.md:2:", "[words](page)" },
    { "# T\n{soil.moon}\n", "page.md:2:", "resources/texts" },
    { "# T\n| a | b |\n| c | d |\n", "page.md:3:", "second row" },
    { "# T\n|---|\n", "page.md:2:", "second row" },
    { "# T\n| a |\n|---|\n|---|\n", "page.md:4:", "second row" },
    { "# T\n| a | b |\n|---|---|\n| c |\n", "page.md:4:", "as many cells" },
    { "# T\n| a | b\n", "page.md:2:", "| cell | cell |" },
    { "# T\n![no drawing](bank)\n", "page.md:2:", "job/drawing" },
    { "# T\n![](bank/slot)\n", "page.md:2:", "what it shows" },
    { "# T\n- point\nnot indented\n", "page.md:3:", "two blanks" },
    { "# T\n  indented\n", "page.md:2:", "no blank" },
    { "# T\n> caution\nwithout\n", "page.md:3:", "\"> \"" },
    { "# T\n\xff\n", "page.md:1:", "UTF-8" },
  };

  for (gsize i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      g_autoptr (GError) error = NULL;
      g_autoptr (SwHelpPage) page = parse ("p", rows[i].text, &error);

      g_test_message ("%s", error != NULL ? error->message : rows[i].text);
      g_assert_null (page);
      g_assert_error (error, SW_STORE_ERROR, SW_STORE_ERROR_SYNTAX);
      g_assert_true (g_str_has_prefix (error->message, rows[i].line));
      g_assert_nonnull (strstr (error->message, "found "));
      g_assert_nonnull (strstr (error->message, rows[i].expected));
    }
}

static SwHelp *
make_help (void)
{
  SwHelp *help = sw_help_new ();

  g_ptr_array_add (help->pages,
                   parse_well ("contents", "# Help\n- [](pins)\n- [](soil)\n"));
  g_ptr_array_add (help->pages,
                   parse_well ("pins", "# Pins\nA pin holds the blanket.\n"
                                       "## Trial\nIn loose soil drive five.\n"));
  g_ptr_array_add (help->pages,
                   parse_well ("soil", "# Soil\nSee [](pins#trial).\n"
                                       "## Clay\nÉtoffe of pins and a Trench’s end.\n"));
  ((SwHelpBlock *) block_of (sw_help_page (help, "pins"), 1))->place = g_strdup ("trial");
  return help;
}

/* Links without words get the title or heading they lead to; others must lead somewhere. */
static void
test_links (void)
{
  g_autoptr (SwHelp) help = make_help ();
  g_autoptr (GError) error = NULL;
  int block;

  g_assert_true (sw_help_join (help, &error));
  assert_line (block_of (g_ptr_array_index (help->pages, 0), 0), 0, "Pins");
  assert_line (block_of (sw_help_page (help, "soil"), 0), 0, "See Trial.");
  g_assert_true (sw_help_target (help, "pins#trial", &block)
                 == sw_help_page (help, "pins"));
  g_assert_cmpint (block, ==, 1);
  g_assert_true (sw_help_target (help, "pins", &block) == sw_help_page (help, "pins"));
  g_assert_cmpint (block, ==, -1);
  g_assert_null (sw_help_target (help, "pins#error", NULL));
  g_assert_null (sw_help_target (help, "moon", NULL));
  g_ptr_array_add (help->pages, parse_well ("last", "# Last\n[there](pins#moon)\n"));
  g_assert_false (sw_help_join (help, &error));
  g_assert_error (error, SW_STORE_ERROR, SW_STORE_ERROR_VALUE);
  g_assert_nonnull (strstr (error->message, "pins#moon"));
}

static void
assert_hit (const GPtrArray *hits, guint index, const char *page, int block)
{
  g_assert_cmpuint (index, <, hits->len);
  const SwHelpHit *hit = g_ptr_array_index (hits, index);
  g_assert_cmpstr (hit->page->name, ==, page);
  g_assert_cmpint (hit->block, ==, block);
}

/* All words under one heading; titles before headings before text; no case, no accents. */
static void
test_search (void)
{
  g_autoptr (SwHelp) help = make_help ();
  g_autoptr (GPtrArray) pins = NULL, loose = NULL, accent = NULL, none = NULL;
  g_autoptr (GPtrArray) blank = NULL;

  g_assert_true (sw_help_join (help, NULL));
  pins = sw_help_search (help, " PINS ");
  g_assert_cmpuint (pins->len, ==, 3);
  assert_hit (pins, 0, "pins", -1);
  assert_hit (pins, 1, "pins", 1);
  assert_hit (pins, 2, "soil", 1);
  loose = sw_help_search (help, "soil loose");
  g_assert_cmpuint (loose->len, ==, 1);
  assert_hit (loose, 0, "pins", 1);
  g_assert_cmpstr (((SwHelpHit *) g_ptr_array_index (loose, 0))->line, ==,
                   "In loose soil drive five.");
  accent = sw_help_search (help, "etoffe trench's");
  g_assert_cmpuint (accent->len, ==, 1);
  none = sw_help_search (help, "moon");
  g_assert_cmpuint (none->len, ==, 0);
  blank = sw_help_search (help, "  ");
  g_assert_cmpuint (blank->len, ==, 0);
}

/* The pages shipped: loading stops the program where one does not read or a link leads
 * nowhere. A language without pages gets the English ones, which say so. */
static void
test_shipped (void)
{
  g_autoptr (SwHelp) english = sw_help_load ("en");
  g_autoptr (SwHelp) unknown = sw_help_load ("xx");

  g_assert_cmpuint (english->pages->len, >, 10);
  g_assert_cmpuint (unknown->pages->len, ==, english->pages->len);
  for (guint i = 0; i < unknown->pages->len; i++)
    g_assert_cmpstr (((SwHelpPage *) g_ptr_array_index (unknown->pages, i))->language, ==,
                     "en");
}

/* Every language has the same pages with the same places, for the links of the window. */
static void
test_languages (void)
{
  g_autoptr (SwHelp) english = sw_help_load ("en");
  g_auto (GStrv) languages = sw_texts_languages ();

  for (char **language = languages; *language != NULL; language++)
    {
      g_autoptr (SwHelp) help = sw_help_load (*language);
      for (guint i = 0; i < english->pages->len; i++)
        {
          const SwHelpPage *from = g_ptr_array_index (english->pages, i);
          const SwHelpPage *to = sw_help_page (help, from->name);
          g_assert_nonnull (to);
          for (guint k = 0; k < from->blocks->len; k++)
            if (block_of (from, k)->place != NULL)
              g_assert_cmpint (sw_help_page_place (to, block_of (from, k)->place), >=, 0);
        }
    }
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/store/help/blocks", test_blocks);
  g_test_add_func ("/store/help/marks", test_marks);
  g_test_add_func ("/store/help/bad-markup", test_bad_markup);
  g_test_add_func ("/store/help/links", test_links);
  g_test_add_func ("/store/help/search", test_search);
  g_test_add_func ("/store/help/shipped", test_shipped);
  g_test_add_func ("/store/help/languages", test_languages);
  return g_test_run ();
}
