/* SPDX-License-Identifier: MIT */
#pragma once

#include "pack-fixture.h"

/** Nothing in the margins, and no text on another. @what: of a failure's message. */
void assert_pages_tidy (const Example *example, const GPtrArray *pages, const char *what);
/** No title cut for want of room. */
void assert_titles_whole (const GPtrArray *pages, const char *what);
/** No heading at the end of a page, or right above another. */
void assert_headings_have_bodies (const GPtrArray *pages, const char *what);
/** No link beyond the frame. */
void assert_links_on_page (const GPtrArray *pages, const char *what);
/** No text that printed its id, no place left without a number. */
void assert_no_gaps (const char *words);
