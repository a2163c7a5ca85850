/* SPDX-License-Identifier: MIT */
#include "sw-row-layout.h"

#define SW_TYPE_ROW_LAYOUT_CHILD (sw_row_layout_child_get_type ())
G_DECLARE_FINAL_TYPE (SwRowLayoutChild, sw_row_layout_child, SW, ROW_LAYOUT_CHILD,
                      GtkLayoutChild)

struct _SwRowLayoutChild
{
  GtkLayoutChild parent_instance;
  guint gives_way, stands_in;
};

G_DEFINE_FINAL_TYPE (SwRowLayoutChild, sw_row_layout_child, GTK_TYPE_LAYOUT_CHILD)

struct _SwRowLayout
{
  GtkLayoutManager parent_instance;
  int spacing;
};

G_DEFINE_FINAL_TYPE (SwRowLayout, sw_row_layout, GTK_TYPE_LAYOUT_MANAGER)

/* One child while the row is being laid out. */
typedef struct
{
  GtkWidget *widget;
  GtkRequestedSize size;
  guint gives_way, stands_in;
  gboolean shown;
} Place;

enum
{
  CHILD_GIVES_WAY = 1,
  CHILD_STANDS_IN
};

static void
sw_row_layout_child_get_property (GObject *object, guint id, GValue *value,
                                  GParamSpec *spec)
{
  SwRowLayoutChild *self = SW_ROW_LAYOUT_CHILD (object);

  g_value_set_uint (value, id == CHILD_GIVES_WAY ? self->gives_way : self->stands_in);
}

static void
sw_row_layout_child_set_property (GObject *object, guint id, const GValue *value,
                                  GParamSpec *spec)
{
  SwRowLayoutChild *self = SW_ROW_LAYOUT_CHILD (object);

  if (id == CHILD_GIVES_WAY)
    self->gives_way = g_value_get_uint (value);
  else
    self->stands_in = g_value_get_uint (value);
  gtk_layout_manager_layout_changed (
      gtk_layout_child_get_layout_manager (GTK_LAYOUT_CHILD (self)));
}

static void
sw_row_layout_child_class_init (SwRowLayoutChildClass *klass)
{
  GObjectClass *object_class = G_OBJECT_CLASS (klass);
  GParamFlags flags = G_PARAM_READWRITE | G_PARAM_STATIC_STRINGS;

  object_class->get_property = sw_row_layout_child_get_property;
  object_class->set_property = sw_row_layout_child_set_property;
  g_object_class_install_property (
      object_class, CHILD_GIVES_WAY,
      g_param_spec_uint ("gives-way", NULL, NULL, 0, G_MAXUINT, 0, flags));
  g_object_class_install_property (
      object_class, CHILD_STANDS_IN,
      g_param_spec_uint ("stands-in", NULL, NULL, 0, G_MAXUINT, 0, flags));
}

static void
sw_row_layout_child_init (SwRowLayoutChild *self)
{
}

static Place
make_place (SwRowLayout *self, GtkWidget *widget)
{
  SwRowLayoutChild *child = SW_ROW_LAYOUT_CHILD (
      gtk_layout_manager_get_layout_child (GTK_LAYOUT_MANAGER (self), widget));
  Place place = { .widget = widget,
                  .size.data = widget,
                  .gives_way = child->gives_way,
                  .stands_in = child->stands_in,
                  .shown = child->stands_in == 0 };

  gtk_widget_measure (widget, GTK_ORIENTATION_HORIZONTAL, -1, &place.size.minimum_size,
                      &place.size.natural_size, NULL, NULL);
  if (place.gives_way > 0)
    place.size.minimum_size = place.size.natural_size;
  return place;
}

/* (element-type Place) */
static GArray *
find_places (SwRowLayout *self, GtkWidget *row)
{
  GArray *places = g_array_new (FALSE, FALSE, sizeof (Place));

  for (GtkWidget *child = gtk_widget_get_first_child (row); child != NULL;
       child = gtk_widget_get_next_sibling (child))
    if (gtk_widget_should_layout (child))
      {
        Place place = make_place (self, child);
        g_array_append_val (places, place);
      }
  return places;
}

static int
width_needed (SwRowLayout *self, const GArray *places, gboolean natural)
{
  int width = 0, count = 0;

  for (guint i = 0; i < places->len; i++)
    {
      const Place *place = &g_array_index (places, Place, i);
      if (!place->shown)
        continue;
      width += natural ? place->size.natural_size : place->size.minimum_size;
      count++;
    }
  return width + self->spacing * MAX (count - 1, 0);
}

/* NULL: all that is left stays. */
static Place *
next_to_go (GArray *places)
{
  Place *next = NULL;

  for (guint i = 0; i < places->len; i++)
    {
      Place *place = &g_array_index (places, Place, i);
      if (place->shown && place->gives_way > 0
          && (next == NULL || place->gives_way < next->gives_way))
        next = place;
    }
  return next;
}

/* @gone: the number of the child left out last */
static void
show_stand_ins (GArray *places, guint gone)
{
  for (guint i = 0; i < places->len; i++)
    {
      Place *place = &g_array_index (places, Place, i);
      if (place->stands_in > 0 && place->stands_in <= gone)
        place->shown = TRUE;
    }
}

static void
choose_shown (SwRowLayout *self, GArray *places, int width)
{
  Place *next;

  while (width_needed (self, places, FALSE) > width
         && (next = next_to_go (places)) != NULL)
    {
      next->shown = FALSE;
      show_stand_ins (places, next->gives_way);
    }
}

static void
measure_across (GtkWidget *row, int *minimum, int *natural)
{
  for (GtkWidget *child = gtk_widget_get_first_child (row); child != NULL;
       child = gtk_widget_get_next_sibling (child))
    {
      int least, wanted;

      if (!gtk_widget_should_layout (child))
        continue;
      gtk_widget_measure (child, GTK_ORIENTATION_VERTICAL, -1, &least, &wanted, NULL,
                          NULL);
      *minimum = MAX (*minimum, least);
      *natural = MAX (*natural, wanted);
    }
}

static void
sw_row_layout_measure (GtkLayoutManager *manager, GtkWidget *row,
                       GtkOrientation orientation, int for_size, int *minimum,
                       int *natural, int *minimum_baseline, int *natural_baseline)
{
  SwRowLayout *self = SW_ROW_LAYOUT (manager);
  g_autoptr (GArray) places = NULL;

  *minimum = *natural = 0;
  *minimum_baseline = *natural_baseline = -1;
  if (orientation == GTK_ORIENTATION_VERTICAL)
    {
      measure_across (row, minimum, natural);
      return;
    }
  places = find_places (self, row);
  *natural = width_needed (self, places, TRUE);
  choose_shown (self, places, 0);
  *minimum = width_needed (self, places, FALSE);
  *natural = MAX (*natural, *minimum);
}

/* What is shown gets its natural width where there is room, and what is left over goes to
 * those that expand. */
static void
share_out (SwRowLayout *self, GArray *places, int width)
{
  g_autofree GtkRequestedSize *sizes = g_new0 (GtkRequestedSize, places->len);
  int left = width - width_needed (self, places, FALSE);
  guint n_shown = 0, expanding = 0;

  for (guint i = 0; i < places->len; i++)
    {
      const Place *place = &g_array_index (places, Place, i);
      if (place->shown)
        sizes[n_shown++] = place->size;
      if (place->shown
          && gtk_widget_compute_expand (place->widget, GTK_ORIENTATION_HORIZONTAL))
        expanding++;
    }
  left = gtk_distribute_natural_allocation (MAX (left, 0), n_shown, sizes);
  n_shown = 0;
  for (guint i = 0; i < places->len; i++)
    {
      Place *place = &g_array_index (places, Place, i);
      if (!place->shown)
        continue;
      place->size = sizes[n_shown++];
      if (gtk_widget_compute_expand (place->widget, GTK_ORIENTATION_HORIZONTAL))
        place->size.minimum_size += left / (int) expanding;
    }
}

static void
sw_row_layout_allocate (GtkLayoutManager *manager, GtkWidget *row, int width, int height,
                        int baseline)
{
  SwRowLayout *self = SW_ROW_LAYOUT (manager);
  g_autoptr (GArray) places = find_places (self, row);
  int x = 0;

  choose_shown (self, places, width);
  share_out (self, places, width);
  for (guint i = 0; i < places->len; i++)
    {
      const Place *place = &g_array_index (places, Place, i);
      GtkAllocation room = { x, 0, place->size.minimum_size, height };

      gtk_widget_set_child_visible (place->widget, place->shown);
      if (!place->shown)
        continue;
      gtk_widget_size_allocate (place->widget, &room, -1);
      x += room.width + self->spacing;
    }
}

static GtkLayoutChild *
sw_row_layout_create_layout_child (GtkLayoutManager *manager, GtkWidget *row,
                                   GtkWidget *child)
{
  return g_object_new (SW_TYPE_ROW_LAYOUT_CHILD, "layout-manager", manager,
                       "child-widget", child, NULL);
}

static void
sw_row_layout_get_property (GObject *object, guint id, GValue *value, GParamSpec *spec)
{
  g_value_set_int (value, SW_ROW_LAYOUT (object)->spacing);
}

static void
sw_row_layout_set_property (GObject *object, guint id, const GValue *value,
                            GParamSpec *spec)
{
  SW_ROW_LAYOUT (object)->spacing = g_value_get_int (value);
  gtk_layout_manager_layout_changed (GTK_LAYOUT_MANAGER (object));
}

static void
sw_row_layout_class_init (SwRowLayoutClass *klass)
{
  GtkLayoutManagerClass *manager_class = GTK_LAYOUT_MANAGER_CLASS (klass);

  G_OBJECT_CLASS (klass)->get_property = sw_row_layout_get_property;
  G_OBJECT_CLASS (klass)->set_property = sw_row_layout_set_property;
  manager_class->layout_child_type = SW_TYPE_ROW_LAYOUT_CHILD;
  manager_class->measure = sw_row_layout_measure;
  manager_class->allocate = sw_row_layout_allocate;
  manager_class->create_layout_child = sw_row_layout_create_layout_child;
  g_object_class_install_property (
      G_OBJECT_CLASS (klass), 1,
      g_param_spec_int ("spacing", NULL, NULL, 0, G_MAXINT16, 0,
                        G_PARAM_READWRITE | G_PARAM_STATIC_STRINGS));
}

static void
sw_row_layout_init (SwRowLayout *self)
{
}
