/* SPDX-License-Identifier: MIT */
#include "sw-application.h"

#include <glib/gi18n.h>

#include "first-job.h"
#include "key-letters.h"
#include "sw-help-window.h"
#include "sw-preferences-window.h"
#include "sw-window.h"

#define APP_ID "io.slopewright.Slopewright"

struct _SwApplication
{
  GtkApplication parent_instance;
  SwStock *stock;
  GtkWidget *help; /* NULL until it is asked for, and once it is closed */
  SwPreferences *preferences;
  GtkWidget *preferences_window; /* weak */
  gboolean quitting;             /* window by window, until one stays open */
};

G_DEFINE_FINAL_TYPE (SwApplication, sw_application, GTK_TYPE_APPLICATION)

static SwWindow *
add_window (SwApplication *self, gboolean with_start)
{
  SwWindow *window =
      sw_window_new (GTK_APPLICATION (self), self->stock, self->preferences);

  if (with_start)
    sw_window_show_start (window);
  gtk_window_present (GTK_WINDOW (window));
  return window;
}

/* The active window if nothing has been done in it, or a new one. */
static SwWindow *
fresh_window (SwApplication *self, gboolean with_start)
{
  GtkWindow *active = gtk_application_get_active_window (GTK_APPLICATION (self));

  if (active != NULL && SW_IS_WINDOW (active) && sw_window_is_fresh (SW_WINDOW (active)))
    return SW_WINDOW (active);
  return add_window (self, with_start);
}

/* A file open already is brought to the front instead of opened twice. */
static SwWindow *
window_of (SwApplication *self, GFile *file)
{
  for (GList *l = gtk_application_get_windows (GTK_APPLICATION (self)); l; l = l->next)
    {
      GFile *open = SW_IS_WINDOW (l->data)
                        ? sw_document_file (sw_stage_document (sw_window_stage (l->data)))
                        : NULL;
      if (open != NULL && g_file_equal (open, file))
        return l->data;
    }
  return NULL;
}

static void
open_file (SwApplication *self, GFile *file)
{
  SwWindow *window = window_of (self, file);

  if (window != NULL)
    gtk_window_present (GTK_WINDOW (window));
  else
    {
      window = fresh_window (self, FALSE);
      if (!sw_window_load (window, file))
        sw_window_show_start (window);
    }
}

static void
new_action (GSimpleAction *action, GVariant *parameter, gpointer data)
{
  add_window (data, TRUE);
}

/* Those with something to ask come first: as long as one may stay, none is gone. */
static SwWindow *
next_to_close (SwApplication *self)
{
  SwWindow *next = NULL;

  for (GList *l = gtk_application_get_windows (GTK_APPLICATION (self)); l; l = l->next)
    if (SW_IS_WINDOW (l->data)
        && (next == NULL
            || (sw_window_is_unsaved (l->data) && !sw_window_is_unsaved (next))))
      next = l->data;
  return next;
}

/* One at a time, so that a question is answered before the next is asked. */
static void
close_next (SwApplication *self)
{
  SwWindow *window = next_to_close (self);

  if (window != NULL)
    {
      gtk_window_present (GTK_WINDOW (window));
      gtk_window_close (GTK_WINDOW (window));
    }
  else if (self->preferences_window != NULL)
    gtk_window_destroy (GTK_WINDOW (self->preferences_window));
}

static void
quit_action (GSimpleAction *action, GVariant *parameter, gpointer data)
{
  SwApplication *self = data;

  self->quitting = TRUE;
  close_next (self);
}

static void
on_kept_open (SwApplication *self)
{
  self->quitting = FALSE;
}

static void
sw_application_window_added (GtkApplication *app, GtkWindow *window)
{
  GTK_APPLICATION_CLASS (sw_application_parent_class)->window_added (app, window);
  if (SW_IS_WINDOW (window))
    g_signal_connect_object (window, "kept-open", G_CALLBACK (on_kept_open), app,
                             G_CONNECT_SWAPPED);
}

/* Help without a job is no reason for the program to go on. */
static void
close_help_alone (SwApplication *self)
{
  GList *windows = gtk_application_get_windows (GTK_APPLICATION (self));

  for (GList *l = windows; l != NULL; l = l->next)
    if (SW_IS_WINDOW (l->data))
      return;
  if (self->help != NULL)
    gtk_window_destroy (GTK_WINDOW (self->help));
}

static void
sw_application_window_removed (GtkApplication *app, GtkWindow *window)
{
  GTK_APPLICATION_CLASS (sw_application_parent_class)->window_removed (app, window);
  if (SW_IS_WINDOW (window) && SW_APPLICATION (app)->quitting)
    close_next (SW_APPLICATION (app));
  close_help_alone (SW_APPLICATION (app));
}

static void
preferences_action (GSimpleAction *action, GVariant *parameter, gpointer data)
{
  SwApplication *self = data;

  if (self->preferences_window == NULL)
    g_set_weak_pointer (&self->preferences_window,
                        sw_preferences_window_new (
                            gtk_application_get_active_window (GTK_APPLICATION (self)),
                            self->preferences, self->stock));
  gtk_window_present (GTK_WINDOW (self->preferences_window));
}

/* Reset, the setting is the desktop's own again. */
static void
on_style (SwApplication *self)
{
  const char *style = sw_preferences_style (self->preferences);
  GtkSettings *settings = gtk_settings_get_default ();

  if (g_str_equal (style, "system"))
    gtk_settings_reset_property (settings, "gtk-application-prefer-dark-theme");
  else
    g_object_set (settings, "gtk-application-prefer-dark-theme",
                  g_str_equal (style, "dark"), NULL);
}

static void
about_action (GSimpleAction *action, GVariant *parameter, gpointer data)
{
  gtk_show_about_dialog (
      gtk_application_get_active_window (GTK_APPLICATION (data)), "program-name",
      "Slopewright", "version", SW_VERSION, "logo-icon-name", APP_ID, "license-type",
      GTK_LICENSE_MIT_X11, "comments",
      _ ("Draws an earth slope, lays rolled erosion control blankets on it, and prints "
         "the installation and safety pack for that slope.\n\n"
         "A planning aid, not an engineering design. The permit, local codes, the "
         "product’s own instructions and the responsible licensed professional take "
         "precedence."),
      NULL);
}

/* In the units that a new job would have. */
static GtkWidget *
make_help (SwApplication *self)
{
  g_autoptr (SwJob) first =
      sw_first_job (self->preferences, (const char *const *) self->stock->languages);

  return sw_help_window_new (self->stock, first->units);
}

/* @target: a page; empty: the page that it is open at. */
static void
help_action (GSimpleAction *action, GVariant *target, gpointer data)
{
  SwApplication *self = data;
  const char *page = g_variant_get_string (target, NULL);

  if (self->help == NULL)
    {
      self->help = make_help (self);
      g_object_add_weak_pointer (G_OBJECT (self->help), (gpointer *) &self->help);
      gtk_window_set_application (GTK_WINDOW (self->help), GTK_APPLICATION (self));
    }
  if (*page != '\0' && !sw_help_window_go (SW_HELP_WINDOW (self->help), page))
    g_critical ("the help has no page “%s”", page);
  gtk_window_present (GTK_WINDOW (self->help));
}

static const GActionEntry actions[] = {
  { .name = "new", .activate = new_action },
  { .name = "quit", .activate = quit_action },
  { .name = "about", .activate = about_action },
  { .name = "help", .activate = help_action, .parameter_type = "s" },
  { .name = "preferences", .activate = preferences_action },
};

static void
set_keys (GtkApplication *app)
{
  static const struct
  {
    const char *action;
    const char *keys[3];
  } rows[] = {
    { "app.new", { "<Control>n" } },
    { "app.quit", { "<Control>q" } },
    { "app.preferences", { "<Control>comma" } },
    { "win.open", { "<Control>o" } },
    { "win.save", { "<Control>s" } },
    { "win.save-as", { "<Control><Shift>s" } },
    { "win.undo", { "<Control>z" } },
    { "win.redo", { "<Control><Shift>z", "<Control>y" } },
    { "win.export-pack", { "<Control>e" } },
    { "win.show-view('drawing')", { "<Alt>1" } },
    { "win.show-view('pack')", { "<Alt>2" } },
    { "win.show-alone('section')", { "<Control>1" } },
    { "win.show-alone('plan')", { "<Control>2" } },
    { "win.show-alone('face-view')", { "<Control>3" } },
    { "win.show-alone('all')", { "<Control>4" } },
    { "win.print", { "<Control>p" } },
    { "win.step-through", { "F5" } },
    { "win.step-part(1)", { "F6" } },
    { "win.step-part(-1)", { "<Shift>F6" } },
    { "win.side", { "F9" } },
    { "window.close", { "<Control>w" } },
    { "app.help('')", { "F1" } },
  };

  for (gsize i = 0; i < G_N_ELEMENTS (rows); i++)
    gtk_application_set_accels_for_action (app, rows[i].action, rows[i].keys);
}

static void
sw_application_startup (GApplication *app)
{
  SwApplication *self = SW_APPLICATION (app);
  g_autoptr (GError) error = NULL;

  G_APPLICATION_CLASS (sw_application_parent_class)->startup (app);
  sw_key_letters_say_once ();
  self->stock = sw_stock_new (&error);
  if (self->stock == NULL)
    {
      g_printerr ("slopewright: %s\n", error->message);
      exit (EXIT_FAILURE);
    }
  g_action_map_add_action_entries (G_ACTION_MAP (app), actions, G_N_ELEMENTS (actions),
                                   app);
  self->preferences = sw_preferences_new ();
  g_signal_connect_swapped (self->preferences, "notify::style", G_CALLBACK (on_style),
                            self);
  on_style (self);
  set_keys (GTK_APPLICATION (app));
  gtk_window_set_default_icon_name (APP_ID);
}

static void
sw_application_activate (GApplication *app)
{
  gtk_window_present (GTK_WINDOW (fresh_window (SW_APPLICATION (app), TRUE)));
}

static void
sw_application_open (GApplication *app, GFile **files, int count, const char *hint)
{
  for (int i = 0; i < count; i++)
    open_file (SW_APPLICATION (app), files[i]);
}

static void
sw_application_finalize (GObject *object)
{
  SwApplication *self = SW_APPLICATION (object);

  g_clear_weak_pointer (&self->preferences_window);
  g_clear_object (&self->preferences);
  g_clear_pointer (&self->stock, sw_stock_free);
  G_OBJECT_CLASS (sw_application_parent_class)->finalize (object);
}

static void
sw_application_class_init (SwApplicationClass *klass)
{
  G_OBJECT_CLASS (klass)->finalize = sw_application_finalize;
  G_APPLICATION_CLASS (klass)->startup = sw_application_startup;
  G_APPLICATION_CLASS (klass)->activate = sw_application_activate;
  G_APPLICATION_CLASS (klass)->open = sw_application_open;
  GTK_APPLICATION_CLASS (klass)->window_added = sw_application_window_added;
  GTK_APPLICATION_CLASS (klass)->window_removed = sw_application_window_removed;
}

static void
sw_application_init (SwApplication *self)
{
}

SwApplication *
sw_application_new (void)
{
  return g_object_new (SW_TYPE_APPLICATION, "application-id", APP_ID, "flags",
                       G_APPLICATION_HANDLES_OPEN, NULL);
}
