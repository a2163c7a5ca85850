/* SPDX-License-Identifier: MIT */
#include "sw-file-bar.h"

#include <glib/gi18n.h>

struct _SwFileBar
{
  GtkWidget parent_instance;
  SwDocument *document;
  GtkWidget *box, *reload, *keep, *save;
  GtkLabel *words;
};

G_DEFINE_FINAL_TYPE (SwFileBar, sw_file_bar, GTK_TYPE_WIDGET)

static const char *
words_for (SwDocument *document)
{
  switch (sw_document_on_disk (document))
    {
    case SW_ON_DISK_CHANGED:
      return _ ("The file “%s” was changed by something else since it was read here.");
    case SW_ON_DISK_GONE:
      return _ ("The file “%s” is no longer where it was. The job is kept here.");
    case SW_ON_DISK_SAME:
      break;
    }
  if (!sw_document_newer (document))
    return NULL;
  return _ ("The file “%s” was made by a newer version of the program. What only that "
            "version knows is not shown here, and the file is not written over.");
}

static char *
name_of (SwDocument *document)
{
  GFile *file = sw_document_file (document);

  return file != NULL ? g_file_get_basename (file) : sw_document_title (document);
}

static void
show (SwFileBar *self)
{
  SwOnDisk on_disk = sw_document_on_disk (self->document);
  const char *format = words_for (self->document);
  g_autofree char *name = name_of (self->document);
  g_autofree char *words = NULL;

  gtk_widget_set_visible (GTK_WIDGET (self), format != NULL);
  if (format == NULL)
    {
      gtk_label_set_text (self->words, "");
      return;
    }
  words = g_strdup_printf (format, name);
  gtk_label_set_text (self->words, words);
  gtk_widget_set_visible (self->reload, on_disk == SW_ON_DISK_CHANGED);
  gtk_widget_set_visible (self->keep, on_disk == SW_ON_DISK_CHANGED);
  gtk_widget_set_visible (self->save, on_disk == SW_ON_DISK_GONE);
}

static void
sw_file_bar_dispose (GObject *object)
{
  gtk_widget_dispose_template (GTK_WIDGET (object), SW_TYPE_FILE_BAR);
  g_clear_object (&SW_FILE_BAR (object)->document);
  G_OBJECT_CLASS (sw_file_bar_parent_class)->dispose (object);
}

static void
sw_file_bar_class_init (SwFileBarClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = sw_file_bar_dispose;
  gtk_widget_class_set_template_from_resource (
      widget_class, "/io/slopewright/Slopewright/sw-file-bar.ui");
  gtk_widget_class_bind_template_child (widget_class, SwFileBar, box);
  gtk_widget_class_bind_template_child (widget_class, SwFileBar, words);
  gtk_widget_class_bind_template_child (widget_class, SwFileBar, reload);
  gtk_widget_class_bind_template_child (widget_class, SwFileBar, keep);
  gtk_widget_class_bind_template_child (widget_class, SwFileBar, save);
  gtk_widget_class_set_layout_manager_type (widget_class, GTK_TYPE_BIN_LAYOUT);
  gtk_widget_class_set_css_name (widget_class, "file-bar");
}

static void
sw_file_bar_init (SwFileBar *self)
{
  gtk_widget_init_template (GTK_WIDGET (self));
}

GtkWidget *
sw_file_bar_new (SwDocument *document)
{
  SwFileBar *self = g_object_new (SW_TYPE_FILE_BAR, NULL);
  static const char *const signals[] = { "notify::on-disk", "notify::newer",
                                         "notify::file" };

  self->document = g_object_ref (document);
  for (gsize i = 0; i < G_N_ELEMENTS (signals); i++)
    g_signal_connect_object (document, signals[i], G_CALLBACK (show), self,
                             G_CONNECT_SWAPPED);
  show (self);
  return GTK_WIDGET (self);
}

const char *
sw_file_bar_words (SwFileBar *self)
{
  return gtk_label_get_text (self->words);
}
