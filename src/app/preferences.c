/* SPDX-License-Identifier: MIT */
#include "preferences.h"

#define SCHEMA "io.slopewright.Slopewright"

enum
{
  PROP_0,
  PROP_UNITS,
  PROP_PAPER,
  PROP_LANGUAGE,
  PROP_STYLE,
  PROP_REMEMBER_RECENT,
  PROP_DRAFT_DELAY,
  N_PROPS
};

#define N_WORDS (PROP_STYLE + 1)

struct _SwPreferences
{
  GObject parent_instance;
  GSettings *settings;  /* NULL: not kept */
  char *words[N_WORDS]; /* by property */
  gboolean remember_recent;
  guint draft_delay_s;
};

G_DEFINE_FINAL_TYPE (SwPreferences, sw_preferences, G_TYPE_OBJECT)

static GParamSpec *properties[N_PROPS];

static void
sw_preferences_get_property (GObject *object, guint id, GValue *value, GParamSpec *pspec)
{
  SwPreferences *self = SW_PREFERENCES (object);

  if (id == PROP_REMEMBER_RECENT)
    g_value_set_boolean (value, self->remember_recent);
  else if (id == PROP_DRAFT_DELAY)
    g_value_set_uint (value, self->draft_delay_s);
  else
    g_value_set_string (value, self->words[id]);
}

static void
sw_preferences_set_property (GObject *object, guint id, const GValue *value,
                             GParamSpec *pspec)
{
  SwPreferences *self = SW_PREFERENCES (object);

  if (id == PROP_REMEMBER_RECENT)
    self->remember_recent = g_value_get_boolean (value);
  else if (id == PROP_DRAFT_DELAY)
    self->draft_delay_s = g_value_get_uint (value);
  else
    {
      g_free (self->words[id]);
      self->words[id] = g_value_dup_string (value);
    }
}

static void
sw_preferences_finalize (GObject *object)
{
  SwPreferences *self = SW_PREFERENCES (object);

  g_clear_object (&self->settings);
  for (guint i = 0; i < N_WORDS; i++)
    g_free (self->words[i]);
  G_OBJECT_CLASS (sw_preferences_parent_class)->finalize (object);
}

/* The same defaults as in the schema. */
static void
install_properties (GObjectClass *klass)
{
  const GParamFlags flags =
      G_PARAM_READWRITE | G_PARAM_CONSTRUCT | G_PARAM_STATIC_STRINGS;

  properties[PROP_UNITS] = g_param_spec_string ("units", NULL, NULL, "", flags);
  properties[PROP_PAPER] = g_param_spec_string ("paper", NULL, NULL, "", flags);
  properties[PROP_LANGUAGE] = g_param_spec_string ("language", NULL, NULL, "", flags);
  properties[PROP_STYLE] = g_param_spec_string ("style", NULL, NULL, "system", flags);
  properties[PROP_REMEMBER_RECENT] =
      g_param_spec_boolean ("remember-recent", NULL, NULL, TRUE, flags);
  properties[PROP_DRAFT_DELAY] =
      g_param_spec_uint ("draft-delay", NULL, NULL, 1, 300, 1, flags);
  g_object_class_install_properties (klass, N_PROPS, properties);
}

static void
sw_preferences_class_init (SwPreferencesClass *klass)
{
  GObjectClass *object_class = G_OBJECT_CLASS (klass);

  object_class->finalize = sw_preferences_finalize;
  object_class->get_property = sw_preferences_get_property;
  object_class->set_property = sw_preferences_set_property;
  install_properties (object_class);
}

static void
sw_preferences_init (SwPreferences *self)
{
}

/* g_settings_new() ends the process where the schema is not installed, and binding does
 * where an older one is. */
static void
bind_to_settings (SwPreferences *self)
{
  GSettingsSchemaSource *source = g_settings_schema_source_get_default ();
  g_autoptr (GSettingsSchema) schema =
      source != NULL ? g_settings_schema_source_lookup (source, SCHEMA, TRUE) : NULL;

  if (schema == NULL)
    return;
  self->settings = g_settings_new_full (schema, NULL, NULL);
  for (guint i = PROP_UNITS; i < N_PROPS; i++)
    if (g_settings_schema_has_key (schema, properties[i]->name))
      g_settings_bind (self->settings, properties[i]->name, self, properties[i]->name,
                       G_SETTINGS_BIND_DEFAULT);
}

SwPreferences *
sw_preferences_new (void)
{
  SwPreferences *self = g_object_new (SW_TYPE_PREFERENCES, NULL);

  bind_to_settings (self);
  return self;
}

const char *
sw_preferences_units (SwPreferences *self)
{
  return self->words[PROP_UNITS];
}

const char *
sw_preferences_paper (SwPreferences *self)
{
  return self->words[PROP_PAPER];
}

const char *
sw_preferences_language (SwPreferences *self)
{
  return self->words[PROP_LANGUAGE];
}

const char *
sw_preferences_style (SwPreferences *self)
{
  return self->words[PROP_STYLE];
}

gboolean
sw_preferences_remember_recent (SwPreferences *self)
{
  return self->remember_recent;
}

guint
sw_preferences_draft_delay_s (SwPreferences *self)
{
  return self->draft_delay_s;
}

gboolean
sw_preferences_are_kept (SwPreferences *self)
{
  return self->settings != NULL;
}
