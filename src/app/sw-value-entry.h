/* SPDX-License-Identifier: MIT */
#pragma once

#include <gtk/gtk.h>
#include <slopewright/base/number-text.h>

/**
 * SwValueEntry: the one way to type a measured value. While typing it shows
 * what it understood; Enter, Tab and leaving commit; Escape restores; text that
 * makes no sense stays, marked with what is wrong, and the value stays too. A
 * gradient is shown as it was typed: 2:1, 50 % or 26.6°.
 *
 * Signal "committed" (double value in SI), only when the value is another.
 */
#define SW_TYPE_VALUE_ENTRY (sw_value_entry_get_type ())
G_DECLARE_FINAL_TYPE (SwValueEntry, sw_value_entry, SW, VALUE_ENTRY, GtkWidget)

GtkWidget *sw_value_entry_new (SwUnit unit);

/** What assistive tools call it. */
void sw_value_entry_set_label (SwValueEntry *entry, const char *label);
const char *sw_value_entry_label (SwValueEntry *entry);

/** Smallest and largest value taken, SI. */
void sw_value_entry_set_range (SwValueEntry *entry, double least, double most);

/** Whether 0, for none, is taken below the smallest value too. */
void sw_value_entry_set_or_zero (SwValueEntry *entry, gboolean or_zero);

/** Whether an empty field stands for 0, which means "not given" and is shown so. */
void sw_value_entry_set_optional (SwValueEntry *entry, gboolean optional);

/** Read a US length as the pack does: 150 mm as 6 in where it is a least depth. */
void sw_value_entry_set_limit (SwValueEntry *entry, SwLimit limit);

/** Show @value, nothing for NAN; what is just being typed is left alone. */
void sw_value_entry_set_value (SwValueEntry *entry, double value, SwNumberStyle style);
double sw_value_entry_value (SwValueEntry *entry);

/** Take what is typed. Returns: FALSE when it makes no sense. */
gboolean sw_value_entry_commit (SwValueEntry *entry);
void sw_value_entry_restore (SwValueEntry *entry);
gboolean sw_value_entry_is_edited (SwValueEntry *entry);
/** Whether it was left with a text that made no sense, and is marked so. */
gboolean sw_value_entry_is_refused (SwValueEntry *entry);

/** The text field itself, to focus or to type into. (transfer none) */
GtkEntry *sw_value_entry_field (SwValueEntry *entry);
