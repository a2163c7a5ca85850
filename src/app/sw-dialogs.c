/* SPDX-License-Identifier: MIT */
#include "sw-dialogs.h"

#include <glib/gi18n.h>

void
sw_dialogs_error (GtkWindow *window, const char *heading, const char *detail)
{
  GtkWidget *dialog =
      gtk_message_dialog_new (window, GTK_DIALOG_MODAL | GTK_DIALOG_DESTROY_WITH_PARENT,
                              GTK_MESSAGE_ERROR, GTK_BUTTONS_CLOSE, "%s", heading);

  gtk_message_dialog_format_secondary_text (GTK_MESSAGE_DIALOG (dialog), "%s", detail);
  g_signal_connect (dialog, "response", G_CALLBACK (gtk_window_destroy), NULL);
  gtk_window_present (GTK_WINDOW (dialog));
}

typedef struct
{
  GtkWindow *window;
  SwReplied replied;
  gpointer data;
  SwReply reply;
} Question;

static gboolean
give_reply (gpointer data)
{
  Question *question = data;

  question->replied (question->window, question->reply, question->data);
  g_object_unref (question->window);
  g_free (question);
  return G_SOURCE_REMOVE;
}

/* The reply may end the window: not while the dialog that hangs on it still handles its event. */
static void
on_response (GtkDialog *dialog, int response, Question *question)
{
  question->reply = response > 0 ? (SwReply) response : SW_REPLY_CANCEL;
  gtk_window_set_transient_for (GTK_WINDOW (dialog), NULL);
  gtk_window_destroy (GTK_WINDOW (dialog));
  g_idle_add (give_reply, question);
}

/* Answers are positive responses; GTK's own ones, such as closing, are negative. */
void
sw_dialogs_ask (GtkWindow *window, const char *heading, const char *detail,
                const SwReplyButton *buttons, SwReplied replied, gpointer data)
{
  GtkWidget *dialog = gtk_message_dialog_new (
      window, GTK_DIALOG_MODAL, GTK_MESSAGE_QUESTION, GTK_BUTTONS_NONE, "%s", heading);
  Question *question = g_new0 (Question, 1);

  gtk_message_dialog_format_secondary_text (GTK_MESSAGE_DIALOG (dialog), "%s", detail);
  gtk_dialog_add_button (GTK_DIALOG (dialog), _ ("_Cancel"), GTK_RESPONSE_CANCEL);
  for (; buttons->label != NULL; buttons++)
    {
      GtkWidget *button =
          gtk_dialog_add_button (GTK_DIALOG (dialog), _ (buttons->label), buttons->reply);
      if (buttons->loses)
        gtk_widget_add_css_class (button, "destructive-action");
      gtk_dialog_set_default_response (GTK_DIALOG (dialog), buttons->reply);
    }
  *question = (Question){ g_object_ref (window), replied, data, SW_REPLY_CANCEL };
  g_signal_connect (dialog, "response", G_CALLBACK (on_response), question);
  gtk_window_present (GTK_WINDOW (dialog));
}

typedef struct
{
  GtkWindow *window;
  SwFileChosen chosen;
  gpointer data;
} Choice;

static void
on_file_response (GtkNativeDialog *dialog, int response, Choice *choice)
{
  g_autoptr (GFile) file = response == GTK_RESPONSE_ACCEPT
                               ? gtk_file_chooser_get_file (GTK_FILE_CHOOSER (dialog))
                               : NULL;

  gtk_native_dialog_hide (dialog);
  choice->chosen (choice->window, file, choice->data);
  g_object_unref (choice->window);
  g_free (choice);
  g_object_unref (dialog);
}

static void
add_filters (GtkFileChooser *chooser, const SwFileKind *kinds)
{
  for (; kinds->name != NULL; kinds++)
    {
      g_autoptr (GtkFileFilter) filter = gtk_file_filter_new ();
      gtk_file_filter_set_name (filter, _ (kinds->name));
      gtk_file_filter_add_pattern (filter, kinds->pattern);
      gtk_file_chooser_add_filter (chooser, filter);
    }
}

void
sw_dialogs_choose_file (GtkWindow *window, const char *title, gboolean save,
                        const char *name, GFile *beside, const SwFileKind *kinds,
                        SwFileChosen chosen, gpointer data)
{
  GtkFileChooserNative *dialog = gtk_file_chooser_native_new (
      title, window, save ? GTK_FILE_CHOOSER_ACTION_SAVE : GTK_FILE_CHOOSER_ACTION_OPEN,
      save ? _ ("_Save") : _ ("_Open"), _ ("_Cancel"));
  g_autoptr (GFile) folder = beside != NULL ? g_file_get_parent (beside) : NULL;
  Choice *choice = g_new0 (Choice, 1);

  *choice = (Choice){ g_object_ref (window), chosen, data };
  gtk_native_dialog_set_modal (GTK_NATIVE_DIALOG (dialog), TRUE);
  add_filters (GTK_FILE_CHOOSER (dialog), kinds);
  if (folder != NULL)
    gtk_file_chooser_set_current_folder (GTK_FILE_CHOOSER (dialog), folder, NULL);
  if (save && name != NULL)
    gtk_file_chooser_set_current_name (GTK_FILE_CHOOSER (dialog), name);
  g_signal_connect (dialog, "response", G_CALLBACK (on_file_response), choice);
  gtk_native_dialog_show (GTK_NATIVE_DIALOG (dialog));
}
