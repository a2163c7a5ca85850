/* SPDX-License-Identifier: MIT */
#include "sw-value-entry.h"

#include <glib/gi18n.h>
#include <math.h>

#include "value-text.h"

struct _SwValueEntry
{
  GtkWidget parent_instance;
  GtkEntry *field;
  GtkPopover *hint;
  GtkLabel *hint_label;
  SwUnit unit;
  SwNumberStyle style;
  double value, least, most;
  gboolean or_zero;  /* 0 is taken too, below the least */
  gboolean optional; /* nothing typed is 0: not given */
  SwLimit limit;     /* how a US length is read */
  char *label;       /* what it is called; NULL for nothing yet */
  char *shown;       /* text of the value, as put into the field */
  gboolean showing;  /* the text changes because we put it there */
  char *gradient;    /* as it was typed, and its value; NULL for none */
  double gradient_value;
};

static guint committed_signal;

G_DEFINE_FINAL_TYPE (SwValueEntry, sw_value_entry, GTK_TYPE_WIDGET)

gboolean
sw_value_entry_is_edited (SwValueEntry *self)
{
  return g_strcmp0 (gtk_editable_get_text (GTK_EDITABLE (self->field)), self->shown) != 0;
}

static char *
range_problem (SwValueEntry *self)
{
  g_autofree char *least = sw_value_edit_text (self->least, self->unit, self->style);
  g_autofree char *most = sw_value_edit_text (self->most, self->unit, self->style);

  if (self->or_zero)
    return g_strdup_printf (_ ("It must be between %s and %s, or 0 for none."), least,
                            most);
  if (isfinite (self->least) && isfinite (self->most))
    return g_strdup_printf (_ ("It must be between %s and %s."), least, most);
  if (isfinite (self->least))
    return g_strdup_printf (_ ("It must be at least %s."), least);
  return g_strdup_printf (_ ("It must be at most %s."), most);
}

/* Below what a field shows, a limit typed as shown must not be refused. */
#define RANGE_TOLERANCE 1e-9

static gboolean
is_none (SwValueEntry *self, double value)
{
  return self->optional && fabs (value) <= RANGE_TOLERANCE;
}

static char *
text_of (SwValueEntry *self, double value)
{
  if (isnan (value) || is_none (self, value))
    return g_strdup ("");
  if (self->gradient != NULL && fabs (value - self->gradient_value) <= RANGE_TOLERANCE)
    return g_strdup (self->gradient);
  if (self->unit == SW_UNIT_M || self->unit == SW_UNIT_SMALL_M)
    value = sw_limit_length_m (value, self->unit, self->limit, self->style.units);
  return sw_value_edit_text (value, self->unit, self->style);
}

/* Who thinks of a gradient as 3 % wants to find it again as 3 %; a bare number gets the
 * sign that it stands for. */
static void
keep_gradient (SwValueEntry *self, double value)
{
  const char *typed = gtk_editable_get_text (GTK_EDITABLE (self->field));

  g_clear_pointer (&self->gradient, g_free);
  if ((self->unit == SW_UNIT_RAD || self->unit == SW_UNIT_HV)
      && strspn (typed, "0123456789.,+- ") < strlen (typed))
    self->gradient = g_strstrip (g_strdup (typed));
  self->gradient_value = value;
}

static gboolean
read_typed (SwValueEntry *self, double *value, char **problem)
{
  g_autofree char *text =
      g_strstrip (g_strdup (gtk_editable_get_text (GTK_EDITABLE (self->field))));

  if (self->optional && *text == '\0')
    {
      *value = 0.0;
      return TRUE;
    }
  if (!sw_value_parse (text, self->unit, self->style, value, problem))
    return FALSE;
  if (self->or_zero && fabs (*value) <= RANGE_TOLERANCE)
    {
      *value = 0.0;
      return TRUE;
    }
  if (*value < self->least - RANGE_TOLERANCE || *value > self->most + RANGE_TOLERANCE)
    {
      *problem = range_problem (self);
      return FALSE;
    }
  *value = CLAMP (*value, self->least, self->most);
  return TRUE;
}

static void
show_problem (SwValueEntry *self, const char *problem)
{
  GtkWidget *field = GTK_WIDGET (self->field);

  if (problem != NULL)
    gtk_widget_add_css_class (field, "error");
  else
    gtk_widget_remove_css_class (field, "error");
  gtk_entry_set_icon_from_icon_name (self->field, GTK_ENTRY_ICON_SECONDARY,
                                     problem != NULL ? "dialog-warning-symbolic" : NULL);
  gtk_entry_set_icon_activatable (self->field, GTK_ENTRY_ICON_SECONDARY, FALSE);
  gtk_widget_set_tooltip_text (field, problem);
  gtk_accessible_update_state (
      GTK_ACCESSIBLE (field), GTK_ACCESSIBLE_STATE_INVALID,
      problem != NULL ? GTK_ACCESSIBLE_INVALID_TRUE : GTK_ACCESSIBLE_INVALID_FALSE, -1);
  gtk_accessible_update_property (GTK_ACCESSIBLE (field),
                                  GTK_ACCESSIBLE_PROPERTY_DESCRIPTION,
                                  problem != NULL ? problem : "", -1);
}

static gboolean
has_focus (SwValueEntry *self)
{
  GtkStateFlags state = gtk_widget_get_state_flags (GTK_WIDGET (self->field));

  return gtk_widget_get_mapped (GTK_WIDGET (self)) && state & GTK_STATE_FLAG_FOCUS_WITHIN;
}

static void
show_hint (SwValueEntry *self, const char *text)
{
  gtk_label_set_text (self->hint_label, text);
  if (has_focus (self))
    gtk_popover_popup (self->hint);
}

static void
put_text (SwValueEntry *self)
{
  g_free (self->shown);
  self->shown = text_of (self, self->value);
  self->showing = TRUE;
  gtk_editable_set_text (GTK_EDITABLE (self->field), self->shown);
  self->showing = FALSE;
  show_problem (self, NULL);
  gtk_popover_popdown (self->hint);
}

static void
on_changed (SwValueEntry *self)
{
  g_autofree char *problem = NULL;
  g_autofree char *understood = NULL;
  g_autofree char *hint = NULL;
  double value;

  if (self->showing)
    return;
  if (!sw_value_entry_is_edited (self))
    {
      show_problem (self, NULL);
      gtk_popover_popdown (self->hint);
      return;
    }
  if (!read_typed (self, &value, &problem))
    {
      show_hint (self, problem);
      return;
    }
  understood = is_none (self, value) ? g_strdup (_ ("not given"))
                                     : sw_quantity_text (value, self->unit, self->style);
  hint = g_strconcat ("= ", understood, NULL);
  show_problem (self, NULL);
  show_hint (self, hint);
}

gboolean
sw_value_entry_commit (SwValueEntry *self)
{
  g_autofree char *problem = NULL;
  double value, before = self->value;

  gtk_popover_popdown (self->hint);
  if (!sw_value_entry_is_edited (self))
    return TRUE;
  if (!read_typed (self, &value, &problem))
    {
      show_problem (self, problem);
      return FALSE;
    }
  self->value = value;
  keep_gradient (self, value);
  put_text (self);
  if (value < before || value > before || isnan (before))
    g_signal_emit (self, committed_signal, 0, value);
  return TRUE;
}

gboolean
sw_value_entry_is_refused (SwValueEntry *self)
{
  return gtk_widget_has_css_class (GTK_WIDGET (self->field), "error");
}

void
sw_value_entry_restore (SwValueEntry *self)
{
  put_text (self);
}

static void
on_activate (SwValueEntry *self)
{
  if (sw_value_entry_commit (self))
    gtk_editable_select_region (GTK_EDITABLE (self->field), 0, -1);
  else
    show_hint (self, gtk_widget_get_tooltip_text (GTK_WIDGET (self->field)));
}

/* Another window, or a popover's coming up, takes no focus from the field in its own. */
static gboolean
is_still_at_it (SwValueEntry *self)
{
  GtkRoot *root = gtk_widget_get_root (GTK_WIDGET (self));
  GtkWidget *focus = root != NULL ? gtk_root_get_focus (root) : NULL;

  return focus != NULL && gtk_widget_is_ancestor (focus, GTK_WIDGET (self));
}

static void
on_leave (SwValueEntry *self)
{
  if (!is_still_at_it (self))
    sw_value_entry_commit (self);
}

static gboolean
on_key (SwValueEntry *self, guint keyval)
{
  if (keyval != GDK_KEY_Escape || !sw_value_entry_is_edited (self))
    return GDK_EVENT_PROPAGATE;
  sw_value_entry_restore (self);
  return GDK_EVENT_STOP;
}

/* The field alone has the focus; the widget round it would take it back from Shift+Tab. */
static gboolean
sw_value_entry_focus (GtkWidget *widget, GtkDirectionType direction)
{
  return gtk_widget_child_focus (GTK_WIDGET (SW_VALUE_ENTRY (widget)->field), direction);
}

static gboolean
sw_value_entry_grab_focus (GtkWidget *widget)
{
  return gtk_widget_grab_focus (GTK_WIDGET (SW_VALUE_ENTRY (widget)->field));
}

static void
sw_value_entry_size_allocate (GtkWidget *widget, int width, int height, int baseline)
{
  SwValueEntry *self = SW_VALUE_ENTRY (widget);

  gtk_widget_allocate (GTK_WIDGET (self->field), width, height, baseline, NULL);
  gtk_popover_present (self->hint);
}

static void
sw_value_entry_measure (GtkWidget *widget, GtkOrientation orientation, int for_size,
                        int *least, int *natural, int *least_base, int *natural_base)
{
  gtk_widget_measure (GTK_WIDGET (SW_VALUE_ENTRY (widget)->field), orientation, for_size,
                      least, natural, least_base, natural_base);
}

/* An open hint would keep the entry it belongs to alive. */
static void
sw_value_entry_unroot (GtkWidget *widget)
{
  gtk_popover_popdown (SW_VALUE_ENTRY (widget)->hint);
  GTK_WIDGET_CLASS (sw_value_entry_parent_class)->unroot (widget);
}

static void
sw_value_entry_dispose (GObject *object)
{
  SwValueEntry *self = SW_VALUE_ENTRY (object);

  if (self->hint != NULL)
    gtk_widget_unparent (GTK_WIDGET (self->hint));
  self->hint = NULL;
  if (self->field != NULL)
    gtk_widget_unparent (GTK_WIDGET (self->field));
  self->field = NULL;
  G_OBJECT_CLASS (sw_value_entry_parent_class)->dispose (object);
}

static void
sw_value_entry_finalize (GObject *object)
{
  g_free (SW_VALUE_ENTRY (object)->label);
  g_free (SW_VALUE_ENTRY (object)->shown);
  g_free (SW_VALUE_ENTRY (object)->gradient);
  G_OBJECT_CLASS (sw_value_entry_parent_class)->finalize (object);
}

static void
sw_value_entry_class_init (SwValueEntryClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = sw_value_entry_dispose;
  G_OBJECT_CLASS (klass)->finalize = sw_value_entry_finalize;
  widget_class->focus = sw_value_entry_focus;
  widget_class->grab_focus = sw_value_entry_grab_focus;
  widget_class->size_allocate = sw_value_entry_size_allocate;
  widget_class->measure = sw_value_entry_measure;
  widget_class->unroot = sw_value_entry_unroot;
  gtk_widget_class_set_css_name (widget_class, "value-entry");
  committed_signal = g_signal_new ("committed", SW_TYPE_VALUE_ENTRY, G_SIGNAL_RUN_LAST, 0,
                                   NULL, NULL, NULL, G_TYPE_NONE, 1, G_TYPE_DOUBLE);
}

/* Not being a target counts within a surface only, and the hint has one of its own, over
 * the field below, which is often the next to be clicked. */
static void
let_pointer_through (GdkSurface *surface)
{
  cairo_region_t *nowhere = cairo_region_create ();

  gdk_surface_set_input_region (surface, nowhere);
  cairo_region_destroy (nowhere);
}

/* Each layout gives a pop-up the shape of its contents, so ours comes after it. */
static void
on_hint_realized (GtkWidget *hint)
{
  g_signal_connect_after (gtk_native_get_surface (GTK_NATIVE (hint)), "layout",
                          G_CALLBACK (let_pointer_through), NULL);
}

static void
make_hint (SwValueEntry *self)
{
  self->hint = GTK_POPOVER (gtk_popover_new ());
  self->hint_label = GTK_LABEL (gtk_label_new (NULL));
  gtk_label_set_wrap (self->hint_label, TRUE);
  gtk_label_set_max_width_chars (self->hint_label, 36);
  gtk_popover_set_child (self->hint, GTK_WIDGET (self->hint_label));
  gtk_popover_set_autohide (self->hint, FALSE);
  gtk_popover_set_has_arrow (self->hint, FALSE);
  gtk_popover_set_position (self->hint, GTK_POS_BOTTOM);
  gtk_widget_set_can_target (GTK_WIDGET (self->hint), FALSE);
  g_signal_connect (self->hint, "realize", G_CALLBACK (on_hint_realized), NULL);
  gtk_widget_add_css_class (GTK_WIDGET (self->hint), "hint");
  gtk_widget_set_parent (GTK_WIDGET (self->hint), GTK_WIDGET (self));
}

static void
sw_value_entry_init (SwValueEntry *self)
{
  GtkEventController *focus = gtk_event_controller_focus_new ();
  GtkEventController *key = gtk_event_controller_key_new ();

  self->least = -INFINITY;
  self->most = INFINITY;
  self->value = NAN;
  self->style = (SwNumberStyle){ SW_UNITS_METRIC, '.', NULL };
  self->field = GTK_ENTRY (gtk_entry_new ());
  gtk_editable_set_width_chars (GTK_EDITABLE (self->field), 9);
  gtk_editable_set_max_width_chars (GTK_EDITABLE (self->field), 12);
  gtk_widget_set_parent (GTK_WIDGET (self->field), GTK_WIDGET (self));
  make_hint (self);
  g_signal_connect_swapped (self->field, "changed", G_CALLBACK (on_changed), self);
  g_signal_connect_swapped (self->field, "activate", G_CALLBACK (on_activate), self);
  g_signal_connect_swapped (focus, "leave", G_CALLBACK (on_leave), self);
  g_signal_connect_swapped (key, "key-pressed", G_CALLBACK (on_key), self);
  gtk_event_controller_set_propagation_phase (key, GTK_PHASE_CAPTURE);
  gtk_widget_add_controller (GTK_WIDGET (self), focus);
  gtk_widget_add_controller (GTK_WIDGET (self), key);
}

GtkWidget *
sw_value_entry_new (SwUnit unit)
{
  SwValueEntry *self = g_object_new (SW_TYPE_VALUE_ENTRY, NULL);

  self->unit = unit;
  return GTK_WIDGET (self);
}

void
sw_value_entry_set_label (SwValueEntry *self, const char *label)
{
  g_free (self->label);
  self->label = g_strdup (label);
  gtk_accessible_update_property (GTK_ACCESSIBLE (self->field),
                                  GTK_ACCESSIBLE_PROPERTY_LABEL, label, -1);
}

const char *
sw_value_entry_label (SwValueEntry *self)
{
  return self->label != NULL ? self->label : "";
}

void
sw_value_entry_set_range (SwValueEntry *self, double least, double most)
{
  self->least = least;
  self->most = most;
}

void
sw_value_entry_set_or_zero (SwValueEntry *self, gboolean or_zero)
{
  self->or_zero = or_zero;
}

void
sw_value_entry_set_limit (SwValueEntry *self, SwLimit limit)
{
  self->limit = limit;
}

void
sw_value_entry_set_optional (SwValueEntry *self, gboolean optional)
{
  self->optional = optional;
  gtk_entry_set_placeholder_text (self->field, optional ? _ ("not given") : NULL);
}

void
sw_value_entry_set_value (SwValueEntry *self, double value, SwNumberStyle style)
{
  gboolean edited = self->shown != NULL && sw_value_entry_is_edited (self);
  g_autofree char *text = NULL;

  self->value = value;
  self->style = style;
  text = text_of (self, value);
  if (edited || g_strcmp0 (text, self->shown) == 0)
    return;
  put_text (self);
}

double
sw_value_entry_value (SwValueEntry *self)
{
  return self->value;
}

GtkEntry *
sw_value_entry_field (SwValueEntry *self)
{
  return self->field;
}
