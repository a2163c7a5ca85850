/* SPDX-License-Identifier: MIT */
#include "sw-face-bar.h"

#include <glib/gi18n.h>

#include "choice.h"

struct _SwFaceBar
{
  GtkWidget parent_instance;
  SwStage *stage;
  GtkWidget *box;
  GtkDropDown *choice;
  GtkWidget *remove;
  gboolean refreshing;
};

G_DEFINE_FINAL_TYPE (SwFaceBar, sw_face_bar, GTK_TYPE_WIDGET)

static void
refresh (SwFaceBar *self)
{
  const SwJob *job = sw_stage_job (self->stage);
  g_auto (GStrv) names = g_new0 (char *, job->faces->len + 1);

  self->refreshing = TRUE;
  for (guint i = 0; i < job->faces->len; i++)
    {
      const SwFace *face = g_ptr_array_index (job->faces, i);
      names[i] = *face->name != '\0'
                     ? g_strdup_printf (_ ("Face %s · %s"), face->id, face->name)
                     : g_strdup_printf (_ ("Face %s"), face->id);
    }
  sw_choice_show (self->choice, (const char *const *) names,
                  (int) sw_stage_face_index (self->stage));
  gtk_widget_set_sensitive (self->remove, job->faces->len > 1);
  self->refreshing = FALSE;
}

static void
on_chosen (SwFaceBar *self)
{
  guint selected = gtk_drop_down_get_selected (self->choice);

  if (!self->refreshing && selected != GTK_INVALID_LIST_POSITION)
    sw_stage_show_face (self->stage, selected);
}

/* "A" to "Z", then "A1" and so on: the first that is free. */
static char *
free_id (const SwJob *job)
{
  for (int n = 0;; n++)
    {
      g_autofree char *id = n < 26 ? g_strdup_printf ("%c", 'A' + n)
                                   : g_strdup_printf ("%c%d", 'A' + n % 26, n / 26);
      if (sw_job_face (job, id) == NULL)
        return g_steal_pointer (&id);
    }
}

/* A copy of the face shown: the next face of a site is mostly like the last. */
static void
add_face (SwJob *job, SwFace *face, gconstpointer data)
{
  SwFace *added = sw_face_copy (face);

  sw_text_set (&added->id, data);
  sw_text_set (&added->name, "");
  g_ptr_array_add (job->faces, added);
}

static void
on_add (SwFaceBar *self)
{
  g_autofree char *id = free_id (sw_stage_job (self->stage));
  g_autofree char *label = g_strdup_printf (_ ("Add Face %s"), id);

  sw_stage_edit (self->stage, add_face, id, label, NULL);
  sw_stage_show_face (self->stage, sw_stage_job (self->stage)->faces->len - 1);
}

static void
remove_face (SwJob *job, SwFace *face, gconstpointer data)
{
  g_ptr_array_remove (job->faces, face);
}

static void
on_remove (SwFaceBar *self)
{
  g_autofree char *label =
      g_strdup_printf (_ ("Remove Face %s"), sw_stage_face (self->stage)->id);

  if (sw_stage_job (self->stage)->faces->len > 1)
    sw_stage_edit (self->stage, remove_face, NULL, label, NULL);
}

static void
sw_face_bar_dispose (GObject *object)
{
  SwFaceBar *self = SW_FACE_BAR (object);

  g_clear_pointer (&self->box, gtk_widget_unparent);
  g_clear_object (&self->stage);
  G_OBJECT_CLASS (sw_face_bar_parent_class)->dispose (object);
}

static void
sw_face_bar_class_init (SwFaceBarClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = sw_face_bar_dispose;
  gtk_widget_class_set_layout_manager_type (widget_class, GTK_TYPE_BIN_LAYOUT);
  gtk_widget_class_set_css_name (widget_class, "face-bar");
}

static GtkWidget *
add_button (SwFaceBar *self, const char *icon, const char *words, GCallback clicked)
{
  GtkWidget *button = gtk_button_new_from_icon_name (icon);

  gtk_widget_set_tooltip_text (button, words);
  gtk_accessible_update_property (GTK_ACCESSIBLE (button), GTK_ACCESSIBLE_PROPERTY_LABEL,
                                  words, -1);
  g_signal_connect_swapped (button, "clicked", clicked, self);
  gtk_box_append (GTK_BOX (self->box), button);
  return button;
}

static void
sw_face_bar_init (SwFaceBar *self)
{
  self->box = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 6);
  gtk_widget_set_parent (self->box, GTK_WIDGET (self));
  self->choice = GTK_DROP_DOWN (sw_choice_new (_ ("Face shown")));
  gtk_widget_set_hexpand (GTK_WIDGET (self->choice), TRUE);
  gtk_box_append (GTK_BOX (self->box), GTK_WIDGET (self->choice));
  g_signal_connect_swapped (self->choice, "notify::selected", G_CALLBACK (on_chosen),
                            self);
  add_button (self, "list-add-symbolic", _ ("Add a face like this one"),
              G_CALLBACK (on_add));
  self->remove = add_button (self, "list-remove-symbolic", _ ("Remove this face"),
                             G_CALLBACK (on_remove));
}

GtkWidget *
sw_face_bar_new (SwStage *stage)
{
  SwFaceBar *self = g_object_new (SW_TYPE_FACE_BAR, NULL);

  self->stage = g_object_ref (stage);
  g_signal_connect_object (stage, "changed", G_CALLBACK (refresh), self,
                           G_CONNECT_SWAPPED);
  refresh (self);
  return GTK_WIDGET (self);
}
