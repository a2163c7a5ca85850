/* SPDX-License-Identifier: MIT */
#pragma once

#include <glib.h>

/**
 * SwTexts: the words of one language, by id. Read from resources by store;
 * the model only names ids. Sentences hold named places: "Cut {count} pieces".
 */
typedef struct SwTexts SwTexts;

/** @language: "en", "fr", "es". Takes nothing; fill with sw_texts_add(). */
SwTexts *sw_texts_new (const char *language);
SwTexts *sw_texts_ref (SwTexts *texts);
void sw_texts_unref (SwTexts *texts);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (SwTexts, sw_texts_unref)

void sw_texts_add (SwTexts *texts, const char *id, const char *text);
const char *sw_texts_language (const SwTexts *texts);

/** The language's own decimal mark, ',' or '.': text id "language.decimal-mark". */
char sw_texts_decimal_mark (const SwTexts *texts);
gboolean sw_texts_has (const SwTexts *texts, const char *id);

/** Returns: (transfer none): the text, or @id itself when there is none, so that a gap is seen. */
const char *sw_texts_get (const SwTexts *texts, const char *id);

/**
 * sw_texts_fill:
 * @texts: a language
 * @id: text id
 * @...: pairs of place name and value (both const char *), then NULL
 *
 * Returns: (transfer full): the text with every {name} replaced. A place with
 *   no value is left as it stands.
 */
char *sw_texts_fill (const SwTexts *texts, const char *id, ...) G_GNUC_NULL_TERMINATED;

/** The same with pairs in a table of char * to char *. */
char *sw_texts_fill_table (const SwTexts *texts, const char *id, GHashTable *places);

/** (element-type utf8) (transfer container): all ids, sorted. */
GPtrArray *sw_texts_ids (const SwTexts *texts);
