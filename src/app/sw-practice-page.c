/* SPDX-License-Identifier: MIT */
#include "sw-practice-page.h"

#include <glib/gi18n.h>
#include <slopewright/sheet/practices.h>
#include <slopewright/sheet/report.h>

#include "form-choices.h"
#include "sw-form.h"
#include "sw-text-entry.h"
#include "sw-value-entry.h"

typedef struct
{
  SwPracticePage *page;
  SwPracticeValue value;
  GtkWidget *label;
  SwValueEntry *entry;
  GtkWidget *reset, *why;
} Row;

struct _SwPracticePage
{
  GtkWidget parent_instance;
  SwStage *stage;
  GtkWidget *box;
  GtkLabel *source;
  Row rows[SW_PRACTICE_VALUE_COUNT];
};

G_DEFINE_FINAL_TYPE (SwPracticePage, sw_practice_page, GTK_TYPE_WIDGET)

static const SwField practice_fields[] = {
  { .kind = SW_FIELD_CHOICE,
    .label = N_ ("Practice"),
    .step = N_ ("Change Practice"),
    .names = sw_choice_practice_names,
    .get = sw_choice_practice_get,
    .set = sw_choice_practice_set },
  { .kind = SW_FIELD_END },
};

/* @which: a SwPracticeWay */
static char **
way_names (SwStage *stage, gsize which)
{
  guint count;
  const char *const *ids = sw_practice_way_values ((SwPracticeWay) which, &count);
  char **names = g_new0 (char *, count + 2);

  names[0] = g_strdup (_ ("Unchanged"));
  for (guint i = 0; i < count; i++)
    names[i + 1] = g_strdup (sw_texts_get (sw_stage_stock (stage)->texts, ids[i]));
  return names;
}

/* A toe that is no trench has nothing to line. */
static gboolean
toe_may_be_trench (const SwJob *job, const SwFace *face)
{
  return job->own.toe_kind == 0 || job->own.toe_kind == 1 + SW_TOE_TRENCH;
}

#define WAY(member, id, way)                                                             \
  .kind = SW_FIELD_ENUM, .label_id = id, .step = N_ ("Change Own Practice"),             \
  .names = way_names, .which = way, .offset = G_STRUCT_OFFSET (SwJob, own.member)

static const SwField own_fields[] = {
  { .kind = SW_FIELD_HEADING, .label = N_ ("Own Copy"), .help = "blanket#own-values" },
  { .kind = SW_FIELD_TEXT,
    .label = N_ ("Name"),
    .step = N_ ("Change Own Practice"),
    .offset = G_STRUCT_OFFSET (SwJob, own.name) },
  { .kind = SW_FIELD_TEXT,
    .label = N_ ("Source"),
    .step = N_ ("Change Own Practice"),
    .offset = G_STRUCT_OFFSET (SwJob, own.source) },
  { WAY (toe_kind, "practice.toe_kind", SW_WAY_TOE_KIND) },
  { WAY (trench_lining, "practice.trench_lining", SW_WAY_TRENCH_LINING) },
  { WAY (toe_lining, "practice.toe_lining", SW_WAY_TOE_LINING),
    .applies = toe_may_be_trench },
  { .kind = SW_FIELD_HEADING, .label = N_ ("Values") },
  { .kind = SW_FIELD_END },
};

static const SwOverride *
override_of (const SwJob *job, SwPracticeValue value)
{
  for (guint i = 0; i < job->n_overrides; i++)
    if (job->overrides[i].value == value)
      return &job->overrides[i];
  return NULL;
}

typedef struct
{
  SwPracticeValue value;
  double number;
  const char *why;
} Wish;

static void
set_override (SwJob *job, SwFace *face, gconstpointer data)
{
  const Wish *wish = data;

  sw_job_set_override (job, wish->value, wish->number, wish->why);
}

static void
clear_override (SwJob *job, SwFace *face, gconstpointer data)
{
  sw_job_clear_override (job, ((const Wish *) data)->value);
}

static const char *
name_of (Row *row)
{
  g_autofree char *id = g_strconcat ("practice.", sw_practice_keys[row->value].key, NULL);

  return sw_texts_get (sw_stage_stock (row->page->stage)->texts, id);
}

static void
on_value (Row *row, double number)
{
  const SwOverride *now = override_of (sw_stage_job (row->page->stage), row->value);
  Wish wish = { row->value, number, now != NULL ? now->why : "" };
  /* Translators: the name of a field */
  g_autofree char *label = g_strdup_printf (_ ("Change %s"), name_of (row));

  sw_stage_edit (row->page->stage, set_override, &wish, label, NULL);
}

static void
on_why (Row *row, const char *why)
{
  const SwOverride *now = override_of (sw_stage_job (row->page->stage), row->value);

  if (now != NULL)
    sw_stage_edit (row->page->stage, set_override,
                   &(Wish){ row->value, now->number, why }, _ ("Change Reason"), NULL);
}

static void
on_reset (Row *row)
{
  g_autofree char *label = g_strdup_printf (_ ("Reset %s"), name_of (row));

  sw_stage_edit (row->page->stage, clear_override, &(Wish){ .value = row->value }, label,
                 NULL);
}

static char *
origin_words (SwPracticePage *self, const SwPractice *practice, SwPracticeValue value)
{
  return sw_report_source_words (sw_practice_source (practice, value),
                                 practice->values[value].evidence,
                                 sw_stage_stock (self->stage)->texts);
}

static void
refresh_row (Row *row, const SwPractice *practice)
{
  SwPracticePage *self = row->page;
  const SwSourced *sourced = &practice->values[row->value];
  const SwOverride *own = override_of (sw_stage_job (self->stage), row->value);
  g_autofree char *origin = origin_words (self, practice, row->value);

  sw_value_entry_set_value (row->entry, sourced->value, sw_stage_style (self->stage));
  gtk_widget_set_tooltip_text (row->label, origin);
  gtk_widget_set_visible (row->reset, own != NULL);
  gtk_widget_set_visible (row->why, own != NULL);
  if (own != NULL)
    {
      gtk_widget_add_css_class (row->label, "own");
      sw_text_entry_set_text (SW_TEXT_ENTRY (row->why), own->why);
    }
  else
    gtk_widget_remove_css_class (row->label, "own");
}

static void
refresh (SwPracticePage *self)
{
  g_autoptr (SwPractice) practice = sw_job_practice (
      sw_stage_job (self->stage), sw_stage_stock (self->stage)->catalogue);
  const SwTexts *texts = sw_stage_stock (self->stage)->texts;
  g_autofree char *source = NULL;

  if (practice == NULL)
    {
      gtk_label_set_text (self->source,
                          _ ("This practice is not in the catalogue: choose another."));
      return;
    }
  source = g_strdup_printf ("%s, %s", sw_texts_get (texts, practice->agency_id),
                            sw_texts_get (texts, practice->edition_id));
  gtk_label_set_text (self->source, source);
  for (guint i = 0; i < SW_PRACTICE_VALUE_COUNT; i++)
    refresh_row (&self->rows[i], practice);
}

static void
make_row (SwPracticePage *self, GtkGrid *grid, SwPracticeValue value)
{
  const SwPracticeKey *key = &sw_practice_keys[value];
  Row *row = &self->rows[value];
  int at = 2 * (int) value;

  *row = (Row){ .page = self, .value = value };
  row->label = gtk_label_new (name_of (row));
  gtk_label_set_xalign (GTK_LABEL (row->label), 0.0f);
  gtk_label_set_wrap (GTK_LABEL (row->label), TRUE);
  gtk_label_set_width_chars (GTK_LABEL (row->label), 14);
  gtk_label_set_max_width_chars (GTK_LABEL (row->label), 22);
  gtk_widget_set_hexpand (row->label, TRUE);
  row->entry = SW_VALUE_ENTRY (sw_value_entry_new (key->unit));
  sw_value_entry_set_label (row->entry, name_of (row));
  sw_value_entry_set_range (row->entry, key->least, key->most);
  sw_value_entry_set_or_zero (row->entry, key->or_zero);
  sw_value_entry_set_limit (row->entry, sw_practice_limit (value));
  gtk_widget_set_valign (GTK_WIDGET (row->entry), GTK_ALIGN_CENTER);
  row->reset = gtk_button_new_from_icon_name ("edit-clear-symbolic");
  gtk_widget_add_css_class (row->reset, "flat");
  gtk_widget_set_valign (row->reset, GTK_ALIGN_CENTER);
  gtk_widget_set_tooltip_text (row->reset, _ ("Back to the practice’s own value"));
  row->why = sw_text_entry_new ();
  sw_text_entry_set_label (SW_TEXT_ENTRY (row->why), _ ("Reason"));
  gtk_entry_set_placeholder_text (sw_text_entry_field (SW_TEXT_ENTRY (row->why)),
                                  _ ("Reason, printed in the pack"));
  g_signal_connect_swapped (row->entry, "committed", G_CALLBACK (on_value), row);
  g_signal_connect_swapped (row->reset, "clicked", G_CALLBACK (on_reset), row);
  g_signal_connect_swapped (row->why, "committed", G_CALLBACK (on_why), row);
  gtk_grid_attach (grid, row->label, 0, at, 1, 1);
  gtk_grid_attach (grid, GTK_WIDGET (row->entry), 1, at, 1, 1);
  gtk_grid_attach (grid, row->reset, 2, at, 1, 1);
  gtk_grid_attach (grid, row->why, 0, at + 1, 3, 1);
}

static void
sw_practice_page_dispose (GObject *object)
{
  SwPracticePage *self = SW_PRACTICE_PAGE (object);

  g_clear_pointer (&self->box, gtk_widget_unparent);
  g_clear_object (&self->stage);
  G_OBJECT_CLASS (sw_practice_page_parent_class)->dispose (object);
}

static void
sw_practice_page_class_init (SwPracticePageClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = sw_practice_page_dispose;
  gtk_widget_class_set_layout_manager_type (widget_class, GTK_TYPE_BIN_LAYOUT);
  gtk_widget_class_set_css_name (widget_class, "practice-page");
}

static void
sw_practice_page_init (SwPracticePage *self)
{
  self->box = gtk_box_new (GTK_ORIENTATION_VERTICAL, 6);
  gtk_widget_set_parent (self->box, GTK_WIDGET (self));
}

static GtkWidget *
make_compare (void)
{
  GtkWidget *button = gtk_button_new_with_mnemonic (_ ("_Compare with Another…"));

  gtk_actionable_set_action_name (GTK_ACTIONABLE (button), "win.compare-practices");
  gtk_widget_set_halign (button, GTK_ALIGN_START);
  return button;
}

GtkWidget *
sw_practice_page_new (SwStage *stage)
{
  SwPracticePage *self = g_object_new (SW_TYPE_PRACTICE_PAGE, NULL);
  GtkGrid *grid = GTK_GRID (gtk_grid_new ());

  self->stage = g_object_ref (stage);
  gtk_box_append (GTK_BOX (self->box), sw_form_new (stage, practice_fields));
  self->source = GTK_LABEL (gtk_label_new (NULL));
  gtk_label_set_wrap (self->source, TRUE);
  gtk_label_set_xalign (self->source, 0.0f);
  gtk_widget_add_css_class (GTK_WIDGET (self->source), "dim-label");
  gtk_box_append (GTK_BOX (self->box), GTK_WIDGET (self->source));
  gtk_box_append (GTK_BOX (self->box), make_compare ());
  gtk_box_append (GTK_BOX (self->box), sw_form_new (stage, own_fields));
  gtk_grid_set_row_spacing (grid, 4);
  gtk_grid_set_column_spacing (grid, 8);
  for (guint i = 0; i < SW_PRACTICE_VALUE_COUNT; i++)
    make_row (self, grid, (SwPracticeValue) i);
  gtk_box_append (GTK_BOX (self->box), GTK_WIDGET (grid));
  g_signal_connect_object (stage, "changed", G_CALLBACK (refresh), self,
                           G_CONNECT_SWAPPED);
  refresh (self);
  return GTK_WIDGET (self);
}
