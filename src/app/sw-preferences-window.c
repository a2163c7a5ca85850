/* SPDX-License-Identifier: MIT */
#include "sw-preferences-window.h"

#include <glib/gi18n.h>

#include "choice.h"
#include "start-choices.h"

struct _SwPreferencesWindow
{
  GtkWindow parent_instance;
  GtkDropDown *units, *paper, *language, *style, *draft_delay;
  GtkWidget *remember_recent, *not_kept;
};

G_DEFINE_FINAL_TYPE (SwPreferencesWindow, sw_preferences_window, GTK_TYPE_WINDOW)

/* What the rows of the lists in the template stand for, in their order. */
static const char *const units_codes[] = { "", "metric", "us", NULL };
static const char *const paper_codes[] = { "", "A4", "Letter", "A3", "Tabloid", NULL };
static const char *const style_codes[] = { "system", "light", "dark", NULL };
static const char *const delay_codes[] = { "1", "5", "15", "60", NULL };

static gboolean
row_of_value (GBinding *binding, const GValue *value, GValue *row, gpointer codes)
{
  g_auto (GValue) words = G_VALUE_INIT;
  guint index = 0;

  g_value_init (&words, G_TYPE_STRING);
  g_value_transform (value, &words);
  for (char **code = codes; *code != NULL; code++, index++)
    if (g_strcmp0 (*code, g_value_get_string (&words)) == 0)
      {
        g_value_set_uint (row, index);
        return TRUE;
      }
  g_value_set_uint (row, GTK_INVALID_LIST_POSITION);
  return TRUE;
}

static gboolean
value_of_row (GBinding *binding, const GValue *row, GValue *value, gpointer codes)
{
  guint index = g_value_get_uint (row);
  const char *code;

  if (index >= g_strv_length (codes))
    return FALSE;
  code = ((char **) codes)[index];
  if (G_VALUE_HOLDS_UINT (value))
    g_value_set_uint (value, (guint) g_ascii_strtoull (code, NULL, 10));
  else
    g_value_set_string (value, code);
  return TRUE;
}

static void
bind (SwPreferences *preferences, const char *name, GtkDropDown *list,
      const char *const *codes)
{
  g_object_bind_property_full (preferences, name, list, "selected",
                               G_BINDING_BIDIRECTIONAL | G_BINDING_SYNC_CREATE,
                               row_of_value, value_of_row, g_strdupv ((char **) codes),
                               (GDestroyNotify) g_strfreev);
}

/* The languages are data: each has its name in itself. */
static void
bind_language (SwPreferencesWindow *self, SwPreferences *preferences,
               const SwStock *stock)
{
  g_autoptr (GtkStringList) names = gtk_string_list_new (NULL);
  g_autoptr (GStrvBuilder) codes = g_strv_builder_new ();
  g_auto (GStrv) all = NULL;

  gtk_string_list_append (names, _ ("That of the locale"));
  g_strv_builder_add (codes, "");
  for (char **code = stock->languages; *code != NULL; code++)
    {
      g_autofree char *id = g_strconcat ("language.", *code, NULL);

      gtk_string_list_append (names, sw_texts_get (stock->texts, id));
      g_strv_builder_add (codes, *code);
    }
  all = g_strv_builder_end (codes);
  gtk_drop_down_set_model (self->language, G_LIST_MODEL (names));
  bind (preferences, "language", self->language, (const char *const *) all);
}

static void
clear_recent_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  sw_start_forget_recent ();
  gtk_widget_action_set_enabled (widget, "preferences.clear-recent", FALSE);
}

static void
sw_preferences_window_dispose (GObject *object)
{
  gtk_widget_dispose_template (GTK_WIDGET (object), SW_TYPE_PREFERENCES_WINDOW);
  G_OBJECT_CLASS (sw_preferences_window_parent_class)->dispose (object);
}

static void
sw_preferences_window_class_init (SwPreferencesWindowClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = sw_preferences_window_dispose;
  gtk_widget_class_set_template_from_resource (
      widget_class, "/io/slopewright/Slopewright/sw-preferences-window.ui");
  gtk_widget_class_bind_template_child (widget_class, SwPreferencesWindow, units);
  gtk_widget_class_bind_template_child (widget_class, SwPreferencesWindow, paper);
  gtk_widget_class_bind_template_child (widget_class, SwPreferencesWindow, language);
  gtk_widget_class_bind_template_child (widget_class, SwPreferencesWindow, style);
  gtk_widget_class_bind_template_child (widget_class, SwPreferencesWindow, draft_delay);
  gtk_widget_class_bind_template_child (widget_class, SwPreferencesWindow,
                                        remember_recent);
  gtk_widget_class_bind_template_child (widget_class, SwPreferencesWindow, not_kept);
  gtk_widget_class_install_action (widget_class, "preferences.clear-recent", NULL,
                                   clear_recent_action);
  gtk_widget_class_add_binding_action (widget_class, GDK_KEY_Escape, 0, "window.close",
                                       NULL);
}

static void
sw_preferences_window_init (SwPreferencesWindow *self)
{
  gtk_widget_init_template (GTK_WIDGET (self));
  sw_choice_name (self->units, _ ("Units of new jobs"));
  sw_choice_name (self->paper, _ ("Paper of new jobs"));
  sw_choice_name (self->language, _ ("Language of the pack of new jobs"));
  sw_choice_name (self->style, _ ("Style"));
  sw_choice_name (self->draft_delay, _ ("Keep a draft of what is not saved"));
}

GtkWidget *
sw_preferences_window_new (GtkWindow *parent, SwPreferences *preferences,
                           const SwStock *stock)
{
  SwPreferencesWindow *self = g_object_new (SW_TYPE_PREFERENCES_WINDOW, "transient-for",
                                            parent, "destroy-with-parent", TRUE, NULL);
  g_autoptr (GPtrArray) recent = sw_start_recent (1);

  bind (preferences, "units", self->units, units_codes);
  bind (preferences, "paper", self->paper, paper_codes);
  bind_language (self, preferences, stock);
  bind (preferences, "style", self->style, style_codes);
  bind (preferences, "draft-delay", self->draft_delay, delay_codes);
  g_object_bind_property (preferences, "remember-recent", self->remember_recent, "active",
                          G_BINDING_BIDIRECTIONAL | G_BINDING_SYNC_CREATE);
  gtk_widget_set_visible (self->not_kept, !sw_preferences_are_kept (preferences));
  gtk_widget_action_set_enabled (GTK_WIDGET (self), "preferences.clear-recent",
                                 recent->len > 0);
  return GTK_WIDGET (self);
}
