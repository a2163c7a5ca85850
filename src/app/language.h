/* SPDX-License-Identifier: MIT */
#pragma once

/**
 * Takes language and number form of the window from the locale, and its words from the
 * catalogue that was built beside this program, or else from the installed one. Call it
 * once, before anything is shown.
 */
void sw_language_begin (void);

/** Returns: the language of sw_texts_load() that goes with the words of the window. */
const char *sw_language_of_texts (void);
