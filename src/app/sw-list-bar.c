/* SPDX-License-Identifier: MIT */
#include "sw-list-bar.h"

#include <glib/gi18n.h>

#include "choice.h"
#include "form-shape.h"
#include "point-words.h"
#include "section-edit.h"
#include "shape-edit.h"
#include "sw-add-shape.h"
#include "sw-value-entry.h"

#define FARTHEST_M 10000.0

struct _SwListBar
{
  GtkWidget parent_instance;
  SwStage *stage;
  gboolean in_section;
  GtkWidget *box;
  GtkDropDown *choice;
  GtkWidget *add, *remove;
  GtkWidget *forms[SW_LIST_KIND_COUNT]; /* fields of the list shown, NULL for none */
  SwValueEntry *along;                  /* of the section shown; NULL on plan */
  SwValueEntry *add_along;              /* of a section to be added; NULL on plan */
  GArray *lists;                        /* (element-type SwPointList), as in the choice */
  gboolean refreshing;
};

G_DEFINE_FINAL_TYPE (SwListBar, sw_list_bar, GTK_TYPE_WIDGET)

static const SwJob *
committed (SwListBar *self)
{
  return sw_document_committed (sw_stage_document (self->stage));
}

static SwPointList
shown (SwListBar *self)
{
  return sw_stage_list (self->stage, self->in_section);
}

static void
find_lists (SwListBar *self)
{
  static const SwListKind plan[] = { SW_LIST_OUTLINE, SW_LIST_OBSTACLE, SW_LIST_ZONE };
  static const SwListKind section[] = { SW_LIST_SECTION };
  const SwListKind *kinds = self->in_section ? section : plan;
  guint count = self->in_section ? G_N_ELEMENTS (section) : G_N_ELEMENTS (plan);

  g_array_set_size (self->lists, 0);
  for (guint i = 0; i < count; i++)
    for (SwPointList list = { kinds[i], 0 };
         sw_points_exist (sw_stage_face (self->stage), list); list.which++)
      g_array_append_val (self->lists, list);
}

static void
refresh_choice (SwListBar *self)
{
  const SwFace *face = sw_stage_face (self->stage);
  g_auto (GStrv) names = NULL;
  int selected = -1;

  find_lists (self);
  names = g_new0 (char *, self->lists->len + 1);
  for (guint i = 0; i < self->lists->len; i++)
    {
      SwPointList list = g_array_index (self->lists, SwPointList, i);

      names[i] = sw_points_name (face, list, sw_stage_style (self->stage));
      selected = sw_points_same (list, shown (self)) ? (int) i : selected;
    }
  sw_choice_show (self->choice, (const char *const *) names, selected);
}

static void
refresh (SwListBar *self)
{
  const SwFace *face = sw_stage_face (self->stage);
  SwPointList list = shown (self);

  self->refreshing = TRUE;
  refresh_choice (self);
  gtk_widget_set_sensitive (self->remove, self->in_section ? face->n_further > 0
                                                           : sw_points_is_shape (list));
  for (guint i = 0; i < SW_LIST_KIND_COUNT; i++)
    if (self->forms[i] != NULL)
      gtk_widget_set_visible (
          self->forms[i], i == list.kind && (!self->in_section || face->n_further > 0));
  if (self->in_section)
    {
      sw_value_entry_set_value (self->along, sw_section_along_m (face, list),
                                sw_stage_style (self->stage));
      gtk_widget_set_sensitive (self->add, sw_section_can_add (face));
    }
  self->refreshing = FALSE;
}

static void
on_chosen (SwListBar *self)
{
  guint selected = gtk_drop_down_get_selected (self->choice);

  if (self->refreshing || selected >= self->lists->len)
    return;
  sw_stage_select (self->stage, g_array_index (self->lists, SwPointList, selected), -1);
}

static gboolean
refuse_taken (SwListBar *self, SwPointList list, double along_m)
{
  if (!sw_section_place_taken (sw_stage_face (self->stage), list, along_m))
    return FALSE;
  sw_stage_tell (self->stage, _ ("There is a section at that place along the crest."));
  return TRUE;
}

static void
commit_section (SwListBar *self, const SwJob *job, const char *label, SwPointList list)
{
  sw_document_commit (sw_stage_document (self->stage), job, label, NULL);
  sw_stage_select (self->stage, list, -1);
}

static void
on_along (SwListBar *self, double along_m)
{
  SwPointList moved;

  if (refuse_taken (self, shown (self), along_m))
    {
      refresh (self);
      return;
    }
  g_autoptr (SwJob) job = sw_section_move (
      committed (self), sw_stage_face_index (self->stage), shown (self), along_m, &moved);
  commit_section (self, job, _ ("Move Section Along"), moved);
}

void
sw_list_bar_add_section (SwListBar *self, double along_m)
{
  SwPointList added;

  if (refuse_taken (self, SW_POINTS_OUTLINE, along_m))
    return;
  g_autoptr (SwJob) job = sw_section_add (
      committed (self), sw_stage_face_index (self->stage), along_m, &added);
  gtk_menu_button_popdown (GTK_MENU_BUTTON (self->add));
  commit_section (self, job, _ ("Add Section"), added);
}

static void
on_add_section (SwListBar *self)
{
  if (sw_value_entry_commit (self->add_along))
    sw_list_bar_add_section (self, sw_value_entry_value (self->add_along));
}

static void
on_remove (SwListBar *self)
{
  guint face = sw_stage_face_index (self->stage);
  SwPointList list = shown (self);
  g_autofree char *label =
      self->in_section
          ? g_strdup (_ ("Remove Section"))
          : sw_point_step (SW_STEP_REMOVE, sw_stage_face (self->stage), list, SW_WHOLE);
  g_autoptr (SwJob) job = self->in_section
                              ? sw_section_remove (committed (self), face, list)
                              : sw_shapes_remove (committed (self), face, list);

  if (job != NULL)
    sw_document_commit (sw_stage_document (self->stage), job, label, NULL);
}

static void
sw_list_bar_dispose (GObject *object)
{
  SwListBar *self = SW_LIST_BAR (object);

  g_clear_pointer (&self->box, gtk_widget_unparent);
  g_clear_object (&self->stage);
  G_OBJECT_CLASS (sw_list_bar_parent_class)->dispose (object);
}

static void
sw_list_bar_finalize (GObject *object)
{
  g_array_unref (SW_LIST_BAR (object)->lists);
  G_OBJECT_CLASS (sw_list_bar_parent_class)->finalize (object);
}

static void
sw_list_bar_class_init (SwListBarClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = sw_list_bar_dispose;
  G_OBJECT_CLASS (klass)->finalize = sw_list_bar_finalize;
  gtk_widget_class_set_layout_manager_type (widget_class, GTK_TYPE_BIN_LAYOUT);
  gtk_widget_class_set_css_name (widget_class, "list-bar");
}

static void
sw_list_bar_init (SwListBar *self)
{
  self->lists = g_array_new (FALSE, FALSE, sizeof (SwPointList));
  self->box = gtk_box_new (GTK_ORIENTATION_VERTICAL, 6);
  gtk_widget_set_parent (self->box, GTK_WIDGET (self));
}

static SwValueEntry *
make_along (const char *label)
{
  SwValueEntry *entry = SW_VALUE_ENTRY (sw_value_entry_new (SW_UNIT_M));

  sw_value_entry_set_label (entry, label);
  sw_value_entry_set_range (entry, -FARTHEST_M, FARTHEST_M);
  gtk_widget_set_hexpand (GTK_WIDGET (entry), TRUE);
  return entry;
}

/* A field with its label to the left. */
static GtkWidget *
beside (const char *label, GtkWidget *field)
{
  GtkWidget *line = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 12);

  gtk_box_append (GTK_BOX (line), gtk_label_new (label));
  gtk_box_append (GTK_BOX (line), field);
  return line;
}

static GtkWidget *
make_add_section (SwListBar *self)
{
  GtkWidget *popover = gtk_popover_new (),
            *box = gtk_box_new (GTK_ORIENTATION_VERTICAL, 6);
  GtkWidget *add = gtk_button_new_with_label (_ ("Add"));
  SwBox outline =
      sw_ring_box (sw_points_ring (sw_stage_face (self->stage), SW_POINTS_OUTLINE));

  self->add_along = make_along (_ ("Place along the crest"));
  sw_value_entry_set_value (self->add_along, outline.x1_m, sw_stage_style (self->stage));
  gtk_widget_add_css_class (add, "suggested-action");
  g_signal_connect_swapped (add, "clicked", G_CALLBACK (on_add_section), self);
  g_signal_connect_swapped (sw_value_entry_field (self->add_along), "activate",
                            G_CALLBACK (on_add_section), self);
  gtk_box_append (GTK_BOX (box),
                  beside (_ ("Place along the crest"), GTK_WIDGET (self->add_along)));
  gtk_box_append (GTK_BOX (box), add);
  gtk_popover_set_child (GTK_POPOVER (popover), box);
  return popover;
}

static void
on_add_shown (SwAddShape *popover)
{
  sw_add_shape_begin (popover, SW_LIST_OBSTACLE, NULL);
}

static GtkWidget *
make_add_shape (SwListBar *self)
{
  GtkWidget *popover = sw_add_shape_new (self->stage);

  g_signal_connect (popover, "show", G_CALLBACK (on_add_shown), NULL);
  return popover;
}

static void
set_words (GtkWidget *widget, const char *words)
{
  gtk_widget_set_tooltip_text (widget, words);
  gtk_accessible_update_property (GTK_ACCESSIBLE (widget), GTK_ACCESSIBLE_PROPERTY_LABEL,
                                  words, -1);
}

static void
add_choice_line (SwListBar *self)
{
  GtkWidget *line = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 6);

  self->choice = GTK_DROP_DOWN (
      sw_choice_new (self->in_section ? _ ("Section shown") : _ ("Outline shown")));
  gtk_widget_set_hexpand (GTK_WIDGET (self->choice), TRUE);
  g_signal_connect_swapped (self->choice, "notify::selected", G_CALLBACK (on_chosen),
                            self);
  self->add = gtk_menu_button_new ();
  gtk_menu_button_set_icon_name (GTK_MENU_BUTTON (self->add), "list-add-symbolic");
  gtk_menu_button_set_popover (GTK_MENU_BUTTON (self->add), self->in_section
                                                                ? make_add_section (self)
                                                                : make_add_shape (self));
  set_words (self->add, self->in_section ? _ ("Add a section elsewhere along the crest")
                                         : _ ("Add an obstacle or a soil zone"));
  self->remove = gtk_button_new_from_icon_name ("list-remove-symbolic");
  set_words (self->remove, self->in_section ? _ ("Remove this section")
                                            : _ ("Remove this obstacle or zone"));
  g_signal_connect_swapped (self->remove, "clicked", G_CALLBACK (on_remove), self);
  gtk_box_append (GTK_BOX (line), GTK_WIDGET (self->choice));
  gtk_box_append (GTK_BOX (line), self->add);
  gtk_box_append (GTK_BOX (line), self->remove);
  gtk_box_append (GTK_BOX (self->box), line);
}

static void
add_fields (SwListBar *self)
{
  if (self->in_section)
    {
      self->along = make_along (_ ("Taken at"));
      g_signal_connect_swapped (self->along, "committed", G_CALLBACK (on_along), self);
      self->forms[SW_LIST_SECTION] = beside (_ ("Taken at"), GTK_WIDGET (self->along));
    }
  else
    {
      self->forms[SW_LIST_OBSTACLE] = sw_form_new (self->stage, sw_obstacle_fields);
      self->forms[SW_LIST_ZONE] = sw_form_new (self->stage, sw_zone_fields);
    }
  for (guint i = 0; i < SW_LIST_KIND_COUNT; i++)
    if (self->forms[i] != NULL)
      gtk_box_append (GTK_BOX (self->box), self->forms[i]);
}

GtkWidget *
sw_list_bar_new (SwStage *stage, gboolean in_section)
{
  SwListBar *self = g_object_new (SW_TYPE_LIST_BAR, NULL);

  self->stage = g_object_ref (stage);
  self->in_section = in_section;
  add_choice_line (self);
  add_fields (self);
  g_signal_connect_object (stage, "changed", G_CALLBACK (refresh), self,
                           G_CONNECT_SWAPPED);
  refresh (self);
  return GTK_WIDGET (self);
}

GtkDropDown *
sw_list_bar_choice (SwListBar *self)
{
  return self->choice;
}

GtkWidget *
sw_list_bar_along (SwListBar *self)
{
  return GTK_WIDGET (self->along);
}
