/* SPDX-License-Identifier: MIT */
#include <glib/gi18n.h>

#include "export.h"
#include "sw-dialogs.h"
#include "sw-window-private.h"

#define JOB_SUFFIX ".slope.json"

const SwFileKind sw_job_file_kinds[] = { { N_ ("Job files (*.slope.json)"),
                                           "*" JOB_SUFFIX },
                                         { N_ ("All files"), "*" },
                                         { NULL, NULL } };

static void save_as (SwWindow *self);

static SwDocument *
document_of (SwWindow *self)
{
  return sw_stage_document (self->stage);
}

void
sw_window_tell_file (SwWindow *self, const char *format, GFile *file)
{
  g_autofree char *name = g_file_get_parse_name (file);
  g_autofree char *message = g_strdup_printf (format, name);

  sw_stage_tell (self->stage, message);
}

void
sw_window_remember (SwWindow *self, GFile *file)
{
  g_autofree char *uri = g_file_get_uri (file);

  if (sw_preferences_remember_recent (self->preferences))
    gtk_recent_manager_add_item (gtk_recent_manager_get_default (), uri);
}

/* Saving was to be the last thing, but was not done. */
static void
stay_open (SwWindow *self)
{
  self->closing = FALSE;
  g_signal_emit_by_name (self, "kept-open");
}

static void
on_failure_replied (GtkWindow *window, SwReply reply, gpointer data)
{
  if (reply == SW_REPLY_SAVE_AS)
    save_as (SW_WINDOW (window));
}

static void
tell_failure (SwWindow *self, const GError *error)
{
  static const SwReplyButton buttons[] = { { N_ ("Save Under Another _Name…"),
                                             SW_REPLY_SAVE_AS, FALSE },
                                           { NULL, SW_REPLY_CANCEL, FALSE } };
  g_autofree char *detail = g_strdup_printf (
      /* Translators: what went wrong comes first */
      _ ("%s\n\nNothing is lost: the job stays open here, and can be saved elsewhere."),
      error->message);

  stay_open (self);
  sw_dialogs_ask (GTK_WINDOW (self), _ ("The job could not be saved"), detail, buttons,
                  on_failure_replied, NULL);
}

static void
save_to (SwWindow *self, GFile *file)
{
  g_autoptr (GError) error = NULL;

  if (!sw_document_save (document_of (self), file, &error))
    {
      tell_failure (self, error);
      return;
    }
  sw_window_remember (self, file);
  sw_window_tell_file (self, _ ("Saved %s"), file);
  if (self->closing)
    gtk_window_destroy (GTK_WINDOW (self));
}

static void
on_replace_replied (GtkWindow *window, SwReply reply, gpointer data)
{
  g_autoptr (GFile) file = data;

  if (reply == SW_REPLY_REPLACE)
    save_to (SW_WINDOW (window), file);
  else if (reply == SW_REPLY_SAVE_AS)
    save_as (SW_WINDOW (window));
  else
    stay_open (SW_WINDOW (window));
}

static void
ask_to_replace (SwWindow *self, GFile *file, const char *detail)
{
  static const SwReplyButton buttons[] = { { N_ ("_Replace"), SW_REPLY_REPLACE, TRUE },
                                           { N_ ("Save Under Another _Name…"),
                                             SW_REPLY_SAVE_AS, FALSE },
                                           { NULL, SW_REPLY_CANCEL, FALSE } };
  g_autofree char *name = g_file_get_basename (file);
  g_autofree char *heading = g_strdup_printf (_ ("Replace the file “%s”?"), name);

  sw_dialogs_ask (GTK_WINDOW (self), heading, detail, buttons, on_replace_replied,
                  g_object_ref (file));
}

/* A file of a later format holds what this program would lose. */
static gboolean
is_protected (SwWindow *self, GFile *file)
{
  GFile *own = sw_document_file (document_of (self));

  return sw_document_newer (document_of (self)) && own != NULL
         && g_file_equal (own, file);
}

static void
on_save_chosen (GtkWindow *window, GFile *file, gpointer data)
{
  SwWindow *self = SW_WINDOW (window);
  g_autoptr (GFile) named = file != NULL ? sw_file_with_suffix (file, JOB_SUFFIX) : NULL;

  if (named == NULL)
    stay_open (self);
  else if (is_protected (self, named))
    {
      stay_open (self);
      sw_dialogs_error (window, _ ("The job could not be saved"),
                        _ ("This file was made by a newer version of the program, and "
                           "is not written over. Choose another name."));
    }
  /* The file dialog asked about the name as it was typed. */
  else if (!g_file_equal (named, file) && g_file_query_exists (named, NULL))
    ask_to_replace (self, named, _ ("There is a file of this name already."));
  else
    save_to (self, named);
}

/* "bank (copy)": the name of a file that is not written over must be another. */
static char *
name_to_start_with (SwWindow *self)
{
  g_autofree char *stem = sw_export_stem (self->stage);
  g_autofree char *copy = g_strdup_printf (_ ("%s (copy)"), stem);

  return g_strconcat (sw_document_newer (document_of (self)) ? copy : stem, JOB_SUFFIX,
                      NULL);
}

static void
save_as (SwWindow *self)
{
  g_autofree char *name = name_to_start_with (self);

  sw_dialogs_choose_file (GTK_WINDOW (self), _ ("Save Job"), TRUE, name,
                          sw_document_file (document_of (self)), sw_job_file_kinds,
                          on_save_chosen, NULL);
}

void
sw_window_save (SwWindow *self)
{
  SwDocument *document = document_of (self);
  GFile *file = sw_document_file (document);

  sw_document_look_at_disk (document);
  if (file == NULL || sw_document_newer (document))
    save_as (self);
  else if (sw_document_on_disk (document) == SW_ON_DISK_CHANGED)
    ask_to_replace (self, file,
                    _ ("Something else changed the file since it was read here. "
                       "Replacing it loses what was changed there; saving under "
                       "another name keeps both."));
  else
    save_to (self, file);
}

static void
save_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  sw_window_settle (SW_WINDOW (widget));
  sw_window_save (SW_WINDOW (widget));
}

static void
save_as_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  sw_window_settle (SW_WINDOW (widget));
  save_as (SW_WINDOW (widget));
}

static void
reload_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  SwWindow *self = SW_WINDOW (widget);
  g_autoptr (GError) error = NULL;

  sw_window_settle (self);
  if (!sw_document_reload (document_of (self), _ ("Reload File"), &error))
    sw_dialogs_error (GTK_WINDOW (self), _ ("The job could not be opened"),
                      error->message);
  else
    sw_stage_tell (self->stage,
                   _ ("Shows what stands in the file now; undoing brings yours back"));
}

static void
keep_own_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  sw_document_keep_own (document_of (SW_WINDOW (widget)));
}

static void
on_close_replied (GtkWindow *window, SwReply reply, gpointer data)
{
  SwWindow *self = SW_WINDOW (window);

  if (reply == SW_REPLY_DISCARD)
    gtk_window_destroy (window);
  else if (reply == SW_REPLY_SAVE)
    {
      self->closing = TRUE;
      sw_window_save (self);
    }
  else
    stay_open (self);
}

void
sw_window_ask_to_close (SwWindow *self)
{
  static const SwReplyButton buttons[] = { { N_ ("_Discard"), SW_REPLY_DISCARD, TRUE },
                                           { N_ ("_Save"), SW_REPLY_SAVE, FALSE },
                                           { NULL, SW_REPLY_CANCEL, FALSE } };
  g_autofree char *name = sw_document_title (document_of (self));
  g_autofree char *heading = g_strdup_printf (_ ("Save the changes to “%s”?"),
                                              *name != '\0' ? name : _ ("Untitled job"));

  sw_dialogs_ask (GTK_WINDOW (self), heading,
                  _ ("What is not saved is lost when it is discarded."), buttons,
                  on_close_replied, NULL);
}

/* The session does not end over a job that is not saved. */
void
sw_window_hold_session (SwWindow *self, gboolean hold)
{
  GApplication *app = g_application_get_default ();

  if (!GTK_IS_APPLICATION (app) || hold == (self->hold != 0))
    return;
  if (hold)
    self->hold = gtk_application_inhibit (GTK_APPLICATION (app), GTK_WINDOW (self),
                                          GTK_APPLICATION_INHIBIT_LOGOUT,
                                          _ ("A job is not saved yet"));
  else
    {
      gtk_application_uninhibit (GTK_APPLICATION (app), self->hold);
      self->hold = 0;
    }
}

void
sw_window_install_save_actions (GtkWidgetClass *klass)
{
  gtk_widget_class_install_action (klass, "win.save", NULL, save_action);
  gtk_widget_class_install_action (klass, "win.save-as", NULL, save_as_action);
  gtk_widget_class_install_action (klass, "win.reload", NULL, reload_action);
  gtk_widget_class_install_action (klass, "win.keep-own", NULL, keep_own_action);
}
