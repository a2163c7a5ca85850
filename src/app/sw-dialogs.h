/* SPDX-License-Identifier: MIT */
#pragma once

#include <gtk/gtk.h>

/* All questions to the user, in one place: newer toolkits ask differently. */

void sw_dialogs_error (GtkWindow *window, const char *heading, const char *detail);

typedef enum
{
  SW_ANSWER_CANCEL,
  SW_ANSWER_DISCARD,
  SW_ANSWER_SAVE
} SwSaveAnswer;

typedef void (*SwSaveAnswered) (GtkWindow *window, SwSaveAnswer answer);

/** Ask what becomes of changes to @name that are not saved. Escape and closing mean cancel. */
void sw_dialogs_ask_save (GtkWindow *window, const char *name, SwSaveAnswered answered);

typedef struct
{
  const char *name;    /* "Job files" */
  const char *pattern; /* "*.slope.json" */
} SwFileKind;

/** @file: (nullable): NULL when the user changed their mind */
typedef void (*SwFileChosen) (GtkWindow *window, GFile *file, gpointer data);

/**
 * sw_dialogs_choose_file:
 * @save: to write to, else to read from
 * @name: (nullable): start, for saving
 * @beside: (nullable): a file in whose folder to begin
 * @kinds: ends with a name of NULL
 */
void sw_dialogs_choose_file (GtkWindow *window, const char *title, gboolean save,
                             const char *name, GFile *beside, const SwFileKind *kinds,
                             SwFileChosen chosen, gpointer data);
