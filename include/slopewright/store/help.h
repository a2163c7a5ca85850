/* SPDX-License-Identifier: MIT */
#pragma once

#include <gio/gio.h>
#include <slopewright/base/texts.h>

/*
 * The help pages, as data: resources/help/<language>/<page>.md, a small part of
 * Markdown. A page is read line by line:
 *
 *   # Title                       the first line, once
 *   ## Heading {#place}           "{#place}" is optional: a name to link to
 *   ### Subheading {#place}
 *   Words of a paragraph          go on until a blank line
 *   - point                       goes on in lines that begin with two blanks
 *   1. step                       the same, numbered
 *   | cell | cell |               a table; the first row is its head, the second |---|---|
 *   > words                       a caution
 *   ![what it shows](job/drawing) a drawing of an example
 *
 * In the words of all of them:
 *
 *   **strong**   *words of the window*   `what is typed`   [[Ctrl+S]] a key
 *   [words](page#place)           a link; without words the title of what it leads to
 *   {text-id}                     a text of the language's resources/texts
 *   \*                            the sign itself: one of \ * ` [ { |
 */

typedef enum
{
  SW_HELP_PLAIN,
  SW_HELP_STRONG,
  SW_HELP_LABEL, /* words of the window */
  SW_HELP_TYPED,
  SW_HELP_KEY,
  SW_HELP_LINK
} SwHelpSpanKind;

typedef struct
{
  SwHelpSpanKind kind;
  char *text;
  char *target; /* of a link: "page" or "page#place"; else NULL */
} SwHelpSpan;

typedef enum
{
  SW_HELP_HEADING,
  SW_HELP_SUBHEADING,
  SW_HELP_PARAGRAPH,
  SW_HELP_POINTS,
  SW_HELP_STEPS,
  SW_HELP_TABLE,
  SW_HELP_CAUTION,
  SW_HELP_FIGURE
} SwHelpBlockKind;

typedef struct
{
  SwHelpBlockKind kind;
  char *place;   /* of a heading: name to link to; else NULL */
  char *figure;  /* of a figure: "sallow-bank/key-trench"; else NULL */
  guint columns; /* of a table; else 1 */
  GPtrArray *
      lines; /* (element-type GPtrArray<SwHelpSpan>): points, steps, cells row by row; one else */
} SwHelpBlock;

typedef struct
{
  char *name;        /* "soil" */
  char *language;    /* of its words */
  char *title;       /* its first line */
  GPtrArray *blocks; /* (element-type SwHelpBlock) */
} SwHelpPage;

typedef struct
{
  GPtrArray
      *pages; /* (element-type SwHelpPage): the contents first, then in their order */
} SwHelp;

/** The page that lists all others: its headings are groups, its points are links. */
#define SW_HELP_CONTENTS "contents"

/**
 * sw_help_page_parse:
 * @name: "soil"
 * @texts: for {text-id}; its language becomes the page's
 * @where: names the file in messages
 *
 * Returns: (transfer full): NULL with @error set: file, line, found, expected
 */
SwHelpPage *sw_help_page_parse (const char *name, const char *text, gsize length,
                                const SwTexts *texts, const char *where, GError **error);
void sw_help_page_free (SwHelpPage *page);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (SwHelpPage, sw_help_page_free)

SwHelp *sw_help_new (void);
void sw_help_free (SwHelp *help);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (SwHelp, sw_help_free)

/**
 * sw_help_join:
 *
 * Give links without words the title of what they lead to.
 *
 * Returns: FALSE with @error set when a link leads nowhere
 */
gboolean sw_help_join (SwHelp *help, GError **error);

/**
 * sw_help_load:
 * @language: "fr". A page that is not there in it is taken from English, and says so
 *   in its language.
 *
 * Help that does not read is a bug: aborts with the message.
 */
SwHelp *sw_help_load (const char *language);

/** Returns: (transfer none): NULL when there is none of that @name */
const SwHelpPage *sw_help_page (const SwHelp *help, const char *name);

/** Returns: index of the block that @place names; -1 when there is none */
int sw_help_page_place (const SwHelpPage *page, const char *place);

/**
 * sw_help_target:
 * @target: "page" or "page#place"
 * @block: (out) (optional): where on it; -1 for its beginning
 *
 * Returns: (transfer none): NULL when it leads nowhere
 */
const SwHelpPage *sw_help_target (const SwHelp *help, const char *target, int *block);

/** The words of a line without their marks. (transfer full) */
char *sw_help_line_text (const GPtrArray *line);

/** Where something was found. */
typedef struct
{
  const SwHelpPage *page;
  int block;    /* the heading it stands under; -1: the page's beginning */
  char *line;   /* the words it stands in */
  guint weight; /* private */
} SwHelpHit;

/**
 * sw_help_search:
 * @words: all of them must stand under one heading; case and accents do not matter
 *
 * Returns: (transfer full) (element-type SwHelpHit): what fits best first: words in
 *   titles before words in headings before words in the text
 */
GPtrArray *sw_help_search (const SwHelp *help, const char *words);
