/* SPDX-License-Identifier: MIT */
#pragma once

#include <slopewright/paint/paint.h>
#include <slopewright/sheet/pack.h>
#include <slopewright/store/store.h>

/* An example laid out, with the shipped catalogue and words and the sheet font. */
typedef struct
{
  SwCatalogue *catalogue;
  SwTexts *texts;
  SwJob *job;
  SwResult *result;
  SwDraw draw;
} Example;

/** Names of all examples; NULL-terminated. */
extern const char *const example_names[];
/** Add @test for each of them, below @path; its data is the name. */
void example_add_tests (const char *path, GTestDataFunc test);

/**
 * Whether to look at all of a pack in this language, on this paper, in these units: all of
 * them where SLOPEWRIGHT_ALL_SHEETS is set, as in an optimised build; else one in four,
 * others for each example.
 */
gboolean example_is_tried (const char *name, guint language, guint paper, guint units);

/** @name: of a file of the examples, without its ending. */
Example *example_new (const char *name);
/** Change the job, then lay it out again. */
Example *example_new_changed (const char *name, void (*change) (SwJob *job));
void example_free (Example *example);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (Example, example_free)

/** Let it speak another of the shipped languages, by its code. */
void example_speak (Example *example, const char *code);

GPtrArray *example_pack (const Example *example, SwPaper paper);
GPtrArray *example_pack_of_kind (const Example *example, SwPaper paper, SwPackKind kind);
GPtrArray *example_pack_by_plan (const Example *example, SwPaper paper,
                                 const SwPackPlan *plan);
/** The first page of that title; a test without one fails. */
const SwFigure *page_titled (const GPtrArray *pages, const char *title);
/** All texts of a page, each on a line. (transfer full) */
char *page_words (const SwFigure *page);
/** The same of all pages. (transfer full) */
char *pack_words (const GPtrArray *pages);

/** Words have this in them. */
void assert_says (const char *words, const char *part);
/** How often they have it. */
guint count_of (const char *words, const char *part);
