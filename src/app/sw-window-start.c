/* SPDX-License-Identifier: MIT */
#include <glib/gi18n.h>

#include "start-choices.h"
#include "sw-dialogs.h"
#include "sw-measure-dialog.h"
#include "sw-window-private.h"

#define START_VIEW "start"
#define DRAWING_VIEW "drawing"

static void
refresh (SwWindow *self)
{
  g_autofree char *folder = sw_draft_folder ();

  sw_start_page_refresh (self->start, folder,
                         sw_preferences_remember_recent (self->preferences));
}

gboolean
sw_window_is_at_start (SwWindow *self)
{
  return g_strcmp0 (gtk_stack_get_visible_child_name (self->views), START_VIEW) == 0;
}

void
sw_window_refresh_start (SwWindow *self)
{
  if (sw_window_is_at_start (self))
    refresh (self);
}

void
sw_window_show_start (SwWindow *self)
{
  refresh (self);
  gtk_stack_set_visible_child_name (self->views, START_VIEW);
}

/* Once there is something to draw. */
void
sw_window_leave_start (SwWindow *self)
{
  if (sw_window_is_at_start (self))
    gtk_stack_set_visible_child_name (self->views, DRAWING_VIEW);
}

static SwObtained
obtained_of_code (const char *code)
{
  for (SwObtained how = 0; how < SW_OBTAINED_COUNT; how++)
    if (g_str_equal (sw_obtained_code (how), code))
      return how;
  return SW_OBTAINED_COUNT;
}

static void
measure_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  SwWindow *self = SW_WINDOW (widget);
  SwObtained how = obtained_of_code (g_variant_get_string (parameter, NULL));

  sw_window_settle (self);
  sw_window_leave_start (self);
  gtk_window_present (
      GTK_WINDOW (sw_measure_dialog_new (GTK_WINDOW (self), self->stage, how)));
}

/* Beside the start page the job can be edited: then another window takes the next one. */
static SwWindow *
window_for_another (SwWindow *self)
{
  GtkApplication *app = gtk_window_get_application (GTK_WINDOW (self));
  SwWindow *other;

  sw_window_settle (self);
  if (sw_window_is_fresh (self) || app == NULL)
    return self;
  other = sw_window_new (app, sw_stage_stock (self->stage), self->preferences);
  gtk_window_present (GTK_WINDOW (other));
  sw_window_leave_start (self);
  return other;
}

static void
open_uri_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  g_autoptr (GFile) file = g_file_new_for_uri (g_variant_get_string (parameter, NULL));

  sw_window_load (window_for_another (SW_WINDOW (widget)), file);
}

static void
open_example_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  g_autoptr (GFile) file = g_file_new_for_uri (g_variant_get_string (parameter, NULL));

  sw_window_load_copy (window_for_another (SW_WINDOW (widget)), file);
}

static void
add_section (GMenu *menu, const char *label, const GPtrArray *choices)
{
  g_autoptr (GMenu) section = g_menu_new ();

  for (guint i = 0; i < choices->len; i++)
    {
      const SwStartChoice *choice = g_ptr_array_index (choices, i);
      g_autofree char *uri = g_file_get_uri (choice->file);
      g_autoptr (GMenuItem) item = g_menu_item_new (choice->name, NULL);

      g_menu_item_set_action_and_target (item, "win.open-example", "s", uri);
      g_menu_append_item (section, item);
    }
  if (choices->len > 0)
    g_menu_append_section (menu, label, G_MENU_MODEL (section));
}

static gboolean
fill_examples (gpointer data)
{
  SwWindow *self = data;
  g_autoptr (GPtrArray) templates = NULL;
  g_autoptr (GPtrArray) examples = NULL;

  if (self->examples == NULL)
    return G_SOURCE_REMOVE;
  templates = sw_start_templates (sw_start_template_folder ());
  examples = sw_start_examples ();
  add_section (self->examples, _ ("Your templates"), templates);
  add_section (self->examples, templates->len > 0 ? _ ("Examples") : NULL, examples);
  return G_SOURCE_REMOVE;
}

/* They are read to be named, for which the first picture of the window should not wait. */
void
sw_window_list_examples (SwWindow *self)
{
  g_idle_add_full (G_PRIORITY_LOW, fill_examples, g_object_ref (self), g_object_unref);
}

static const SwLostDraft *
draft_at (const GPtrArray *drafts, const char *path)
{
  for (guint i = 0; i < drafts->len; i++)
    {
      const SwLostDraft *draft = g_ptr_array_index (drafts, i);
      if (g_str_equal (draft->path, path))
        return draft;
    }
  return NULL;
}

static void
recover (SwWindow *self, const SwLostDraft *draft)
{
  g_autoptr (GError) error = NULL;

  if (!sw_draft_recover (draft, sw_stage_document (self->stage), _ ("Recover Draft"),
                         &error))
    {
      sw_dialogs_error (GTK_WINDOW (self), _ ("The draft could not be recovered"),
                        error->message);
      return;
    }
  sw_draft_flush (self->draft);
  sw_draft_discard (draft);
  sw_window_fit (self);
  sw_stage_tell (self->stage, _ ("Recovered the draft; it is not saved yet"));
}

static void
recover_draft_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  SwWindow *self = SW_WINDOW (widget);
  g_autofree char *folder = sw_draft_folder ();
  g_autoptr (GPtrArray) drafts = sw_draft_lost (folder);
  const SwLostDraft *draft = draft_at (drafts, g_variant_get_string (parameter, NULL));

  if (draft == NULL) /* recovered in another window meanwhile */
    refresh (self);
  else
    recover (window_for_another (self), draft);
}

static void
discard_draft_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  SwWindow *self = SW_WINDOW (widget);
  g_autofree char *folder = sw_draft_folder ();
  g_autoptr (GPtrArray) drafts = sw_draft_lost (folder);
  const SwLostDraft *draft = draft_at (drafts, g_variant_get_string (parameter, NULL));

  if (draft != NULL)
    sw_draft_discard (draft);
  refresh (self);
}

void
sw_window_install_start_actions (GtkWidgetClass *klass)
{
  gtk_widget_class_install_action (klass, "win.measure", "s", measure_action);
  gtk_widget_class_install_action (klass, "win.open-uri", "s", open_uri_action);
  gtk_widget_class_install_action (klass, "win.open-example", "s", open_example_action);
  gtk_widget_class_install_action (klass, "win.recover-draft", "s", recover_draft_action);
  gtk_widget_class_install_action (klass, "win.discard-draft", "s", discard_draft_action);
}
