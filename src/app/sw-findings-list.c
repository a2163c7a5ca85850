/* SPDX-License-Identifier: MIT */
#include "sw-findings-list.h"

#include <glib/gi18n.h>
#include <slopewright/sheet/report.h>

#include "point-words.h"
#include "row-name.h"
#include "sw-help-button.h"

struct _SwFindingsList
{
  GtkWidget parent_instance;
  SwStage *stage;
  GtkWidget *box;
  GtkLabel *head, *placeholder;
  GtkListBox *list;
  char *shown; /* all words on show: a drag that changes none makes no new rows */
};

G_DEFINE_FINAL_TYPE (SwFindingsList, sw_findings_list, GTK_TYPE_WIDGET)

/* Stands for the words of findings that could not be worked out. */
#define UNKNOWN "?"

static const GPtrArray *
findings_of (SwFindingsList *self)
{
  return sw_stage_result (self->stage)->findings;
}

static const char *const severity_icons[] = {
  [SW_SEVERITY_NOTE] = "dialog-information-symbolic",
  [SW_SEVERITY_CAUTION] = "dialog-warning-symbolic",
  [SW_SEVERITY_STOP] = "process-stop-symbolic",
};

static GtkWidget *
make_label (const char *text, const char *css_class)
{
  GtkWidget *label = gtk_label_new (text);

  gtk_label_set_wrap (GTK_LABEL (label), TRUE);
  gtk_label_set_xalign (GTK_LABEL (label), 0.0f);
  gtk_widget_add_css_class (label, css_class);
  return label;
}

/* Each way in which a blanket fails has a place of its own on the page of findings. */
static void
add_help (GtkWidget *line, const char *failure)
{
  g_autofree char *target = g_strdup_printf ("findings#%s", failure);
  GtkWidget *button = sw_help_button_new (target, failure);

  gtk_widget_set_valign (button, GTK_ALIGN_START);
  gtk_box_append (GTK_BOX (line), button);
}

static GtkWidget *
make_row (SwFindingsList *self, const SwFinding *finding)
{
  const SwTexts *texts = sw_stage_stock (self->stage)->texts;
  const char *code = sw_severity_code (finding->severity);
  g_autofree char *severity_id = g_strconcat ("severity.", code, NULL);
  g_autofree char *title = sw_report_finding_title (finding, texts);
  g_autofree char *text = sw_report_finding_text (sw_stage_result (self->stage), finding,
                                                  texts, sw_stage_style (self->stage));
  g_autofree char *head =
      sw_texts_fill (texts, "check.speaks", "severity", sw_texts_get (texts, severity_id),
                     "title", title, NULL);
  GtkWidget *line = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 8);
  GtkWidget *words = gtk_box_new (GTK_ORIENTATION_VERTICAL, 2);
  GtkWidget *icon = gtk_image_new_from_icon_name (severity_icons[finding->severity]);
  GtkWidget *head_label = make_label (head, "finding-head");
  GtkWidget *text_label = make_label (text, "finding-text");
  GtkWidget *row = gtk_list_box_row_new ();

  gtk_widget_set_valign (icon, GTK_ALIGN_START);
  gtk_widget_add_css_class (icon, code);
  gtk_box_append (GTK_BOX (line), icon);
  gtk_box_append (GTK_BOX (words), head_label);
  gtk_box_append (GTK_BOX (words), text_label);
  gtk_widget_set_hexpand (words, TRUE);
  gtk_box_append (GTK_BOX (line), words);
  if (*finding->failure != '\0')
    add_help (line, finding->failure);
  gtk_list_box_row_set_child (GTK_LIST_BOX_ROW (row), line);
  sw_row_name (row, head_label, text_label);
  return row;
}

static void
refresh_head (SwFindingsList *self, const GPtrArray *findings)
{
  const char *none =
      _ ("No findings. That is no proof that the slope is stable or the work "
         "without danger.");
  const char *unknown =
      _ ("What cannot be laid out cannot be judged: mend the face first.");
  guint stops = sw_findings_count (findings, SW_SEVERITY_STOP);
  guint cautions = sw_findings_count (findings, SW_SEVERITY_CAUTION);
  guint notes = sw_findings_count (findings, SW_SEVERITY_NOTE);
  g_autofree char *stop =
      g_strdup_printf (ngettext ("%u stop", "%u stops", stops), stops);
  g_autofree char *caution =
      g_strdup_printf (ngettext ("%u caution", "%u cautions", cautions), cautions);
  g_autofree char *note =
      g_strdup_printf (ngettext ("%u note", "%u notes", notes), notes);
  /* Translators: stops, cautions and notes with their numbers */
  g_autofree char *text =
      g_strdup_printf (_ ("Findings: %s, %s, %s"), stop, caution, note);

  gtk_label_set_text (self->head, findings != NULL ? text : _ ("Findings: not known"));
  gtk_label_set_text (self->placeholder, findings != NULL ? none : unknown);
}

static void
clear (SwFindingsList *self)
{
  GtkListBoxRow *row;

  while ((row = gtk_list_box_get_row_at_index (self->list, 0)) != NULL)
    gtk_list_box_remove (self->list, GTK_WIDGET (row));
}

static void
refresh (SwFindingsList *self)
{
  const GPtrArray *findings = findings_of (self);
  g_autofree char *words = findings == NULL
                               ? g_strdup (UNKNOWN)
                               : sw_report_findings (sw_stage_result (self->stage),
                                                     sw_stage_stock (self->stage)->texts,
                                                     sw_stage_style (self->stage));

  if (g_strcmp0 (words, self->shown) == 0)
    return;
  g_free (self->shown);
  self->shown = g_steal_pointer (&words);
  refresh_head (self, findings);
  clear (self);
  for (guint i = 0; findings != NULL && i < findings->len; i++)
    gtk_list_box_append (self->list, make_row (self, g_ptr_array_index (findings, i)));
}

/* The obstacle or the zone it is about, else its tier. */
static char *
place_of (const SwFace *face, const SwFinding *finding)
{
  SwPointList obstacle = { SW_LIST_OBSTACLE, (guint) finding->obstacle };
  SwPointList zone = { SW_LIST_ZONE, (guint) finding->zone };

  if (finding->obstacle >= 0 && sw_points_exist (face, obstacle))
    return sw_points_object (face, obstacle);
  if (finding->zone >= 0 && sw_points_exist (face, zone))
    return sw_points_object (face, zone);
  return g_strdup_printf ("%s/tier/%d", face->id, MAX (finding->tier, 0));
}

static void
on_row (SwFindingsList *self, GtkListBoxRow *row)
{
  const GPtrArray *findings = findings_of (self);
  int index = row != NULL ? gtk_list_box_row_get_index (row) : -1;

  if (findings == NULL || index < 0 || index >= (int) findings->len)
    return;
  const SwFinding *finding = g_ptr_array_index (findings, index);
  if (finding->face < 0)
    {
      sw_stage_mark (self->stage, NULL);
      return;
    }
  sw_stage_show_face (self->stage, (guint) finding->face);
  g_autofree char *object = place_of (sw_stage_face (self->stage), finding);
  sw_stage_mark (self->stage, object);
}

static void
sw_findings_list_dispose (GObject *object)
{
  SwFindingsList *self = SW_FINDINGS_LIST (object);

  g_clear_pointer (&self->box, gtk_widget_unparent);
  g_clear_object (&self->stage);
  G_OBJECT_CLASS (sw_findings_list_parent_class)->dispose (object);
}

static void
sw_findings_list_finalize (GObject *object)
{
  g_free (SW_FINDINGS_LIST (object)->shown);
  G_OBJECT_CLASS (sw_findings_list_parent_class)->finalize (object);
}

static void
sw_findings_list_class_init (SwFindingsListClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = sw_findings_list_dispose;
  G_OBJECT_CLASS (klass)->finalize = sw_findings_list_finalize;
  gtk_widget_class_set_layout_manager_type (widget_class, GTK_TYPE_BIN_LAYOUT);
  gtk_widget_class_set_css_name (widget_class, "findings");
}

static void
sw_findings_list_init (SwFindingsList *self)
{
  GtkWidget *scrolled = gtk_scrolled_window_new ();
  GtkWidget *line = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 6);

  self->box = gtk_box_new (GTK_ORIENTATION_VERTICAL, 4);
  self->head = GTK_LABEL (gtk_label_new (NULL));
  gtk_label_set_xalign (self->head, 0.0f);
  gtk_label_set_wrap (self->head, TRUE);
  gtk_widget_add_css_class (GTK_WIDGET (self->head), "heading");
  self->list = GTK_LIST_BOX (gtk_list_box_new ());
  self->placeholder = GTK_LABEL (make_label (NULL, "dim-label"));
  gtk_list_box_set_placeholder (self->list, GTK_WIDGET (self->placeholder));
  gtk_scrolled_window_set_policy (GTK_SCROLLED_WINDOW (scrolled), GTK_POLICY_NEVER,
                                  GTK_POLICY_AUTOMATIC);
  gtk_scrolled_window_set_child (GTK_SCROLLED_WINDOW (scrolled), GTK_WIDGET (self->list));
  gtk_widget_set_vexpand (scrolled, TRUE);
  gtk_widget_set_hexpand (GTK_WIDGET (self->head), TRUE);
  gtk_box_append (GTK_BOX (line), GTK_WIDGET (self->head));
  gtk_box_append (GTK_BOX (line), sw_help_button_new ("findings", _ ("Findings")));
  gtk_box_append (GTK_BOX (self->box), line);
  gtk_box_append (GTK_BOX (self->box), scrolled);
  gtk_widget_set_parent (self->box, GTK_WIDGET (self));
  gtk_accessible_update_property (GTK_ACCESSIBLE (self->list),
                                  GTK_ACCESSIBLE_PROPERTY_LABEL, _ ("Findings"), -1);
  g_signal_connect_swapped (self->list, "row-activated", G_CALLBACK (on_row), self);
}

GtkWidget *
sw_findings_list_new (void)
{
  return g_object_new (SW_TYPE_FINDINGS_LIST, NULL);
}

void
sw_findings_list_set_stage (SwFindingsList *self, SwStage *stage)
{
  g_return_if_fail (self->stage == NULL && SW_IS_STAGE (stage));

  self->stage = g_object_ref (stage);
  g_signal_connect_object (stage, "changed", G_CALLBACK (refresh), self,
                           G_CONNECT_SWAPPED);
  refresh (self);
}

guint
sw_findings_list_count (SwFindingsList *self)
{
  guint count = 0;

  while (gtk_list_box_get_row_at_index (self->list, (int) count) != NULL)
    count++;
  return count;
}
