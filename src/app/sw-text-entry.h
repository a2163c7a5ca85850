/* SPDX-License-Identifier: MIT */
#pragma once

#include <gtk/gtk.h>

/**
 * SwTextEntry: a line of free text with the same manners as SwValueEntry:
 * Enter, Tab and leaving commit, Escape restores. Signal "committed" (text).
 */
#define SW_TYPE_TEXT_ENTRY (sw_text_entry_get_type ())
G_DECLARE_FINAL_TYPE (SwTextEntry, sw_text_entry, SW, TEXT_ENTRY, GtkWidget)

/** What is wrong with a text, marked for translation, or NULL. */
typedef const char *(*SwTextCheck) (const char *text);

/** @check: (nullable): what it refuses stays in the field, marked, and is not committed */
void sw_text_entry_set_check (SwTextEntry *entry, SwTextCheck check);

GtkWidget *sw_text_entry_new (void);
void sw_text_entry_set_label (SwTextEntry *entry, const char *label);
void sw_text_entry_set_text (SwTextEntry *entry, const char *text);
gboolean sw_text_entry_is_edited (SwTextEntry *entry);
void sw_text_entry_restore (SwTextEntry *entry);
GtkEntry *sw_text_entry_field (SwTextEntry *entry);
