/* SPDX-License-Identifier: MIT */
#include "sw-practices-dialog.h"

#include <glib/gi18n.h>
#include <slopewright/sheet/practices.h>

#include "choice.h"
#include "form-choices.h"
#include "text-grid.h"

struct _SwPracticesDialog
{
  GtkWindow parent_instance;
  SwStage *stage;
  GtkDropDown *other;
  GtkLabel *now;
  GtkGrid *grid; /* mark, label, the job's own, the other */
  GtkWidget *use;
};

G_DEFINE_FINAL_TYPE (SwPracticesDialog, sw_practices_dialog, GTK_TYPE_WINDOW)

static const SwPractice *
chosen (SwPracticesDialog *self)
{
  const GPtrArray *practices = sw_stage_stock (self->stage)->catalogue->practices;
  guint index = gtk_drop_down_get_selected (self->other);

  return index < practices->len ? g_ptr_array_index (practices, index) : NULL;
}

static void
show_line (SwPracticesDialog *self, guint row, const SwPracticeLine *line)
{
  const char *style = line->differs ? "unlike" : NULL;
  gboolean heading = line->now == NULL;

  sw_text_grid_set (self->grid, row, 0, line->differs ? "≠" : "", NULL);
  sw_text_grid_set (self->grid, row, 1, line->label, heading ? "heading" : NULL);
  sw_text_grid_set (self->grid, row, 2, heading ? "" : line->now, style);
  sw_text_grid_set (self->grid, row, 3, heading ? "" : line->other, style);
}

static void
show_now (SwPracticesDialog *self)
{
  const SwStock *stock = sw_stage_stock (self->stage);
  g_autoptr (SwPractice) practice =
      sw_job_practice (sw_stage_job (self->stage), stock->catalogue);
  g_autofree char *name =
      practice != NULL ? sw_report_practice_name (practice, stock->texts)
                       : g_strdup (_ ("An unknown practice"));
  g_autofree char *text = g_strdup_printf (_ ("%s, as in the job, and"), name);

  gtk_label_set_text (self->now, text);
}

static void
refresh (SwPracticesDialog *self)
{
  const SwResult *result = sw_stage_result (self->stage);
  const char *practice_id = result->job->practice_id;
  const SwPractice *practice = chosen (self);
  g_autoptr (SwResult) other = NULL;
  g_autoptr (GPtrArray) words = NULL;

  show_now (self);
  if (practice == NULL)
    return;
  other = sw_result_of_practice (result, practice->id);
  words = sw_report_practices (result, other, sw_stage_stock (self->stage)->texts,
                               sw_stage_style (self->stage));
  for (guint i = 0; i < words->len; i++)
    show_line (self, i, words->pdata[i]);
  sw_text_grid_keep (self->grid, words->len);
  gtk_widget_set_sensitive (self->use, !g_str_equal (practice->id, practice_id));
}

static void
set_practice (SwJob *job, SwFace *face, gconstpointer data)
{
  sw_text_set (&job->practice_id, data);
}

void
sw_practices_dialog_use (SwPracticesDialog *self)
{
  const SwPractice *practice = chosen (self);

  if (practice != NULL)
    sw_stage_edit (self->stage, set_practice, practice->id, _ ("Change Practice"), NULL);
  gtk_window_close (GTK_WINDOW (self));
}

void
sw_practices_dialog_choose (SwPracticesDialog *self, guint index)
{
  gtk_drop_down_set_selected (self->other, index);
}

const char *
sw_practices_dialog_text (SwPracticesDialog *self, guint index, guint column)
{
  return sw_text_grid_get (self->grid, index, column + 1);
}

static void
sw_practices_dialog_dispose (GObject *object)
{
  g_clear_object (&SW_PRACTICES_DIALOG (object)->stage);
  G_OBJECT_CLASS (sw_practices_dialog_parent_class)->dispose (object);
}

static void
sw_practices_dialog_class_init (SwPracticesDialogClass *klass)
{
  G_OBJECT_CLASS (klass)->dispose = sw_practices_dialog_dispose;
  gtk_widget_class_add_binding_action (GTK_WIDGET_CLASS (klass), GDK_KEY_Escape, 0,
                                       "window.close", NULL);
}

static GtkWidget *
make_head (SwPracticesDialog *self)
{
  GtkWidget *head = gtk_box_new (GTK_ORIENTATION_VERTICAL, 6);

  self->now = GTK_LABEL (gtk_label_new (NULL));
  gtk_label_set_wrap (self->now, TRUE);
  gtk_label_set_xalign (self->now, 0.0f);
  self->other = GTK_DROP_DOWN (sw_choice_new (_ ("The other practice")));
  gtk_widget_set_hexpand (GTK_WIDGET (self->other), TRUE);
  gtk_box_append (GTK_BOX (head), GTK_WIDGET (self->now));
  gtk_box_append (GTK_BOX (head), GTK_WIDGET (self->other));
  return head;
}

static GtkWidget *
make_foot (SwPracticesDialog *self)
{
  GtkWidget *foot = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 12);
  GtkWidget *note = gtk_label_new (
      _ ("≠ marks what differs. Neither is the better one: the permit, the contract and "
         "the product’s instructions say which holds."));

  gtk_label_set_wrap (GTK_LABEL (note), TRUE);
  gtk_label_set_xalign (GTK_LABEL (note), 0.0f);
  gtk_widget_set_hexpand (note, TRUE);
  gtk_widget_add_css_class (note, "dim-label");
  self->use = gtk_button_new_with_mnemonic (_ ("_Use the Other Practice"));
  gtk_widget_set_valign (self->use, GTK_ALIGN_CENTER);
  g_signal_connect_swapped (self->use, "clicked", G_CALLBACK (sw_practices_dialog_use),
                            self);
  gtk_box_append (GTK_BOX (foot), note);
  gtk_box_append (GTK_BOX (foot), self->use);
  return foot;
}

static void
sw_practices_dialog_init (SwPracticesDialog *self)
{
  GtkWidget *box = gtk_box_new (GTK_ORIENTATION_VERTICAL, 12);
  GtkWidget *scrolled = gtk_scrolled_window_new ();

  self->grid = GTK_GRID (sw_text_grid_new ());
  gtk_scrolled_window_set_child (GTK_SCROLLED_WINDOW (scrolled), GTK_WIDGET (self->grid));
  gtk_scrolled_window_set_policy (GTK_SCROLLED_WINDOW (scrolled), GTK_POLICY_NEVER,
                                  GTK_POLICY_AUTOMATIC);
  gtk_widget_set_vexpand (scrolled, TRUE);
  gtk_widget_add_css_class (box, "dialog-page");
  gtk_box_append (GTK_BOX (box), make_head (self));
  gtk_box_append (GTK_BOX (box), scrolled);
  gtk_box_append (GTK_BOX (box), make_foot (self));
  gtk_window_set_child (GTK_WINDOW (self), box);
  gtk_window_set_title (GTK_WINDOW (self), _ ("Practices on This Slope"));
  gtk_window_set_default_size (GTK_WINDOW (self), 760, 680);
}

/* The first practice that is not the job's own. */
static int
first_other (SwStage *stage)
{
  const GPtrArray *practices = sw_stage_stock (stage)->catalogue->practices;

  for (guint i = 0; i < practices->len; i++)
    if (!g_str_equal (((SwPractice *) practices->pdata[i])->id,
                      sw_stage_job (stage)->practice_id))
      return (int) i;
  return 0;
}

GtkWidget *
sw_practices_dialog_new (GtkWindow *parent, SwStage *stage)
{
  SwPracticesDialog *self = g_object_new (SW_TYPE_PRACTICES_DIALOG, "transient-for",
                                          parent, "destroy-with-parent", TRUE, NULL);
  g_auto (GStrv) names = sw_choice_practice_names (stage, 0);

  self->stage = g_object_ref (stage);
  sw_choice_show (self->other, (const char *const *) names, first_other (stage));
  g_signal_connect_swapped (self->other, "notify::selected", G_CALLBACK (refresh), self);
  g_signal_connect_object (stage, "changed", G_CALLBACK (refresh), self,
                           G_CONNECT_SWAPPED);
  refresh (self);
  return GTK_WIDGET (self);
}
