/* SPDX-License-Identifier: MIT */
#pragma once

#include <gtk/gtk.h>

/* All questions to the user, in one place: newer toolkits ask differently. */

void sw_dialogs_error (GtkWindow *window, const char *heading, const char *detail);

typedef enum
{
  SW_REPLY_CANCEL, /* Escape and closing mean it too */
  SW_REPLY_DISCARD,
  SW_REPLY_SAVE,
  SW_REPLY_REPLACE,
  SW_REPLY_SAVE_AS
} SwReply;

typedef struct
{
  const char *label; /* marked for translation, with its mnemonic */
  SwReply reply;
  gboolean loses; /* something is lost by it */
} SwReplyButton;

typedef void (*SwReplied) (GtkWindow *window, SwReply reply, gpointer data);

/**
 * sw_dialogs_ask:
 * @buttons: beside Cancel; the last one is what Enter means; ends with a label of NULL
 * @replied: called once, after the dialog has gone
 */
void sw_dialogs_ask (GtkWindow *window, const char *heading, const char *detail,
                     const SwReplyButton *buttons, SwReplied replied, gpointer data);

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
