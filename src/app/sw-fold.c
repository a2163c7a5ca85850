/* SPDX-License-Identifier: MIT */
#include "sw-fold.h"

#include <glib/gi18n.h>

#define SIDE_PX 390

struct _SwFold
{
  GtkWidget parent_instance;
  GtkWidget *paned;
  GtkWidget *main_room, *side_room; /* hidden in place of what they hold, which can so be
                                       measured at any time */
  GtkWidget *main, *side;
  gboolean folded, side_allowed;
  gboolean side_next, side_instead; /* shown next to the main part, in its place */
  guint idle;
};

enum
{
  PROP_MAIN = 1,
  PROP_SIDE,
  PROP_FOLDED,
  PROP_SIDE_SHOWN,
  PROP_SIDE_ALLOWED,
  N_PROPS
};

static GParamSpec *props[N_PROPS];

G_DEFINE_FINAL_TYPE (SwFold, sw_fold, GTK_TYPE_WIDGET)

gboolean
sw_fold_is_folded (SwFold *self)
{
  return self->folded;
}

gboolean
sw_fold_side_shown (SwFold *self)
{
  return self->folded ? self->side_instead : self->side_next;
}

static int
least_width (GtkWidget *part)
{
  int least = 0;

  if (part != NULL)
    gtk_widget_measure (part, GTK_ORIENTATION_HORIZONTAL, -1, &least, NULL, NULL, NULL);
  return least;
}

/* What of the paned is none of its two parts. */
static int
handle_width (SwFold *self)
{
  int width = 0;

  for (GtkWidget *child = gtk_widget_get_first_child (self->paned); child != NULL;
       child = gtk_widget_get_next_sibling (child))
    if (child != self->main_room && child != self->side_room)
      width += least_width (child);
  return width;
}

static int
width_of_both (SwFold *self)
{
  return least_width (self->main) + handle_width (self) + least_width (self->side);
}

/* While only one was there, the width may have become another. */
static void
place_handle (SwFold *self)
{
  int width = gtk_widget_get_width (GTK_WIDGET (self));
  int side = MAX (SIDE_PX, least_width (self->side));

  if (width > 0)
    gtk_paned_set_position (GTK_PANED (self->paned),
                            MAX (width - side, least_width (self->main)));
}

static void
show (SwFold *self)
{
  gboolean side = self->side_allowed && sw_fold_side_shown (self);
  gboolean main = !(self->folded && side);

  if (side && main
      && !(gtk_widget_get_visible (self->side_room)
           && gtk_widget_get_visible (self->main_room)))
    place_handle (self);
  gtk_widget_set_visible (self->side_room, side);
  gtk_widget_set_visible (self->main_room, main);
}

void
sw_fold_set_side_shown (SwFold *self, gboolean shown)
{
  if (shown == sw_fold_side_shown (self))
    return;
  if (self->folded)
    self->side_instead = shown;
  else
    self->side_next = shown;
  show (self);
  g_object_notify_by_pspec (G_OBJECT (self), props[PROP_SIDE_SHOWN]);
}

void
sw_fold_set_side_allowed (SwFold *self, gboolean allowed)
{
  if (allowed == self->side_allowed)
    return;
  self->side_allowed = allowed;
  show (self);
  g_object_notify_by_pspec (G_OBJECT (self), props[PROP_SIDE_ALLOWED]);
}

/* What is folded begins with its main part. */
static gboolean
fold_or_unfold (gpointer data)
{
  SwFold *self = data;

  self->idle = 0;
  self->folded = !self->folded;
  self->side_instead = FALSE;
  show (self);
  g_object_notify_by_pspec (G_OBJECT (self), props[PROP_FOLDED]);
  g_object_notify_by_pspec (G_OBJECT (self), props[PROP_SIDE_SHOWN]);
  return G_SOURCE_REMOVE;
}

/* Not at once: what is being allocated cannot be hidden. Before the next frame. */
static void
follow_width (SwFold *self, int width)
{
  gboolean folded = width < width_of_both (self);

  if (folded == self->folded)
    g_clear_handle_id (&self->idle, g_source_remove);
  else if (self->idle == 0)
    self->idle = g_idle_add_full (GTK_PRIORITY_RESIZE - 1, fold_or_unfold, self, NULL);
}

static GtkSizeRequestMode
sw_fold_get_request_mode (GtkWidget *widget)
{
  return GTK_SIZE_REQUEST_HEIGHT_FOR_WIDTH;
}

static void
sw_fold_measure (GtkWidget *widget, GtkOrientation orientation, int for_size,
                 int *minimum, int *natural, int *minimum_baseline, int *natural_baseline)
{
  SwFold *self = SW_FOLD (widget);
  int least_across = 0;

  *minimum_baseline = *natural_baseline = -1;
  if (orientation == GTK_ORIENTATION_HORIZONTAL)
    {
      gtk_widget_measure (self->paned, orientation, for_size, NULL, natural, NULL, NULL);
      *minimum = MAX (least_width (self->main), least_width (self->side));
      *natural = MAX (*natural, *minimum);
      return;
    }
  least_across = least_width (self->paned);
  gtk_widget_measure (self->paned, orientation,
                      for_size < 0 ? -1 : MAX (for_size, least_across), minimum, natural,
                      NULL, NULL);
}

static void
sw_fold_size_allocate (GtkWidget *widget, int width, int height, int baseline)
{
  SwFold *self = SW_FOLD (widget);
  GtkAllocation room = { 0, 0, MAX (width, least_width (self->paned)), height };

  follow_width (self, width);
  gtk_widget_size_allocate (self->paned, &room, baseline);
}

static void
sw_fold_get_property (GObject *object, guint id, GValue *value, GParamSpec *spec)
{
  SwFold *self = SW_FOLD (object);

  switch (id)
    {
    case PROP_FOLDED:
      g_value_set_boolean (value, self->folded);
      break;
    case PROP_SIDE_SHOWN:
      g_value_set_boolean (value, sw_fold_side_shown (self));
      break;
    case PROP_SIDE_ALLOWED:
      g_value_set_boolean (value, self->side_allowed);
      break;
    default:
      G_OBJECT_WARN_INVALID_PROPERTY_ID (object, id, spec);
    }
}

static GtkWidget *
put (GtkWidget *room, GtkWidget *part)
{
  gtk_widget_set_hexpand (part, TRUE);
  gtk_box_append (GTK_BOX (room), part);
  return part;
}

static void
sw_fold_set_property (GObject *object, guint id, const GValue *value, GParamSpec *spec)
{
  SwFold *self = SW_FOLD (object);

  switch (id)
    {
    case PROP_MAIN:
      self->main = put (self->main_room, g_value_get_object (value));
      break;
    case PROP_SIDE:
      self->side = put (self->side_room, g_value_get_object (value));
      break;
    case PROP_SIDE_SHOWN:
      sw_fold_set_side_shown (self, g_value_get_boolean (value));
      break;
    case PROP_SIDE_ALLOWED:
      sw_fold_set_side_allowed (self, g_value_get_boolean (value));
      break;
    default:
      G_OBJECT_WARN_INVALID_PROPERTY_ID (object, id, spec);
    }
}

static void
sw_fold_dispose (GObject *object)
{
  SwFold *self = SW_FOLD (object);

  g_clear_handle_id (&self->idle, g_source_remove);
  g_clear_pointer (&self->paned, gtk_widget_unparent);
  self->main = self->side = NULL;
  G_OBJECT_CLASS (sw_fold_parent_class)->dispose (object);
}

static void
install_props (GObjectClass *klass)
{
  GParamFlags set = G_PARAM_WRITABLE | G_PARAM_STATIC_STRINGS;
  GParamFlags both =
      G_PARAM_READWRITE | G_PARAM_STATIC_STRINGS | G_PARAM_EXPLICIT_NOTIFY;

  props[PROP_MAIN] = g_param_spec_object ("main", NULL, NULL, GTK_TYPE_WIDGET, set);
  props[PROP_SIDE] = g_param_spec_object ("side", NULL, NULL, GTK_TYPE_WIDGET, set);
  props[PROP_FOLDED] =
      g_param_spec_boolean ("folded", NULL, NULL, FALSE,
                            G_PARAM_READABLE | G_PARAM_STATIC_STRINGS);
  props[PROP_SIDE_SHOWN] =
      g_param_spec_boolean ("side-shown", NULL, NULL, TRUE, both);
  props[PROP_SIDE_ALLOWED] =
      g_param_spec_boolean ("side-allowed", NULL, NULL, TRUE, both);
  g_object_class_install_properties (klass, N_PROPS, props);
}

static void
sw_fold_class_init (SwFoldClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = sw_fold_dispose;
  G_OBJECT_CLASS (klass)->get_property = sw_fold_get_property;
  G_OBJECT_CLASS (klass)->set_property = sw_fold_set_property;
  widget_class->get_request_mode = sw_fold_get_request_mode;
  widget_class->measure = sw_fold_measure;
  widget_class->size_allocate = sw_fold_size_allocate;
  gtk_widget_class_set_css_name (widget_class, "fold");
  install_props (G_OBJECT_CLASS (klass));
}

static void
sw_fold_init (SwFold *self)
{
  GtkPaned *paned = GTK_PANED (gtk_paned_new (GTK_ORIENTATION_HORIZONTAL));

  self->paned = GTK_WIDGET (paned);
  self->main_room = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 0);
  self->side_room = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 0);
  self->side_allowed = self->side_next = TRUE;
  gtk_paned_set_start_child (paned, self->main_room);
  gtk_paned_set_end_child (paned, self->side_room);
  gtk_paned_set_wide_handle (paned, TRUE);
  gtk_paned_set_resize_end_child (paned, FALSE);
  gtk_paned_set_shrink_start_child (paned, FALSE);
  gtk_paned_set_shrink_end_child (paned, FALSE);
  gtk_accessible_update_property (GTK_ACCESSIBLE (paned), GTK_ACCESSIBLE_PROPERTY_LABEL,
                                  _ ("Movable border"), -1);
  gtk_widget_set_parent (self->paned, GTK_WIDGET (self));
  gtk_widget_set_overflow (GTK_WIDGET (self), GTK_OVERFLOW_HIDDEN);
}
