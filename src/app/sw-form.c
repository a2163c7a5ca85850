/* SPDX-License-Identifier: MIT */
#include "sw-form.h"

#include <glib/gi18n.h>

#include "choice.h"
#include "sw-help-button.h"
#include "sw-text-entry.h"
#include "sw-value-entry.h"

typedef struct
{
  SwForm *form;
  const SwField *field;
  GtkWidget *label, *control; /* control: NULL for headings; label: NULL in line */
} Row;

struct _SwForm
{
  GtkWidget parent_instance;
  SwStage *stage;
  GtkGrid *grid;
  GArray *rows;        /* (element-type Row); never grows once made */
  gboolean refreshing; /* what changes now is not the user's doing */
};

G_DEFINE_FINAL_TYPE (SwForm, sw_form, GTK_TYPE_WIDGET)

static gpointer
place (SwStage *stage, const SwField *field, SwJob *job, SwFace *face)
{
  gpointer base = field->of != NULL ? field->of (stage, face)
                  : field->of_face  ? (gpointer) face
                                    : (gpointer) job;

  if (field->kind == SW_FIELD_SITE_NUMBER)
    return &job->numbers.values[field->which];
  return base != NULL ? G_STRUCT_MEMBER_P (base, field->offset) : NULL;
}

/* What a row's control asks to be changed. */
typedef struct
{
  const Row *row;
  const char *text;
  double number;
  guint index;
} Wish;

static void
apply (SwJob *job, SwFace *face, gconstpointer data)
{
  const Wish *wish = data;
  const SwField *field = wish->row->field;
  SwStage *stage = wish->row->form->stage;

  switch (field->kind)
    {
    case SW_FIELD_TEXT:
      sw_text_set (place (stage, field, job, face), wish->text);
      break;
    case SW_FIELD_VALUE:
    case SW_FIELD_SITE_NUMBER:
    case SW_FIELD_PLAN:
      if (field->put != NULL)
        field->put (face, wish->number);
      else
        *(double *) place (stage, field, job, face) = wish->number;
      break;
    case SW_FIELD_SWITCH:
      *(gboolean *) place (stage, field, job, face) = wish->index != 0;
      break;
    case SW_FIELD_ENUM:
      *(guint *) place (stage, field, job, face) = wish->index;
      break;
    case SW_FIELD_CHOICE:
      field->set (stage, job, face, field->which, wish->index);
      break;
    default:
      g_assert_not_reached ();
    }
}

static void
change (const Wish *wish)
{
  SwForm *self = wish->row->form;

  if (!self->refreshing)
    sw_stage_edit (self->stage, apply, wish, _ (wish->row->field->step), NULL);
}

static void
on_text (Row *row, const char *text)
{
  change (&(Wish){ .row = row, .text = text });
}

static void
on_value (Row *row, double value)
{
  change (&(Wish){ .row = row, .number = value });
}

static void
on_switch (Row *row)
{
  gboolean active = gtk_switch_get_active (GTK_SWITCH (row->control));

  change (&(Wish){ .row = row, .index = active ? 1 : 0 });
}

static void
on_choice (Row *row)
{
  guint selected = gtk_drop_down_get_selected (GTK_DROP_DOWN (row->control));

  if (selected != GTK_INVALID_LIST_POSITION)
    change (&(Wish){ .row = row, .index = selected });
}

/* The three shares of a label are at most one: what the others leave. */
static void
set_plan_range (GtkWidget *entry, const SwWorkPlan *plan, SwPlanNumber number)
{
  const SwPlanKey *key = &sw_plan_keys[number];
  double most =
      number <= SW_PLAN_K2O ? sw_work_plan_label_room (plan, number) : key->most;

  sw_value_entry_set_range (SW_VALUE_ENTRY (entry), key->least, most);
  sw_value_entry_set_or_zero (SW_VALUE_ENTRY (entry),
                              key->least > 0.0 && !(key->not_given > 0.0));
}

static void
show_choice (SwForm *self, Row *row, int selected)
{
  g_auto (GStrv) names = row->field->names (self->stage, row->field->which);

  sw_choice_show (GTK_DROP_DOWN (row->control), (const char *const *) names, selected);
}

static void
show_row (Row *row, gboolean visible)
{
  if (row->label != NULL)
    gtk_widget_set_visible (row->label, visible);
  if (row->control != NULL)
    gtk_widget_set_visible (row->control, visible);
}

static void
refresh_row (SwForm *self, Row *row)
{
  const SwField *field = row->field;
  SwJob *job = (SwJob *) sw_stage_job (self->stage);
  SwFace *face = (SwFace *) sw_stage_face (self->stage);

  if (field->of != NULL && field->of (self->stage, face) == NULL)
    return;
  if (field->applies != NULL)
    show_row (row, field->applies (job, face));
  switch (field->kind)
    {
    case SW_FIELD_TEXT:
      sw_text_entry_set_text (SW_TEXT_ENTRY (row->control),
                              *(char **) place (self->stage, field, job, face));
      break;
    case SW_FIELD_PLAN:
      set_plan_range (row->control, &job->plan, (SwPlanNumber) field->which);
      G_GNUC_FALLTHROUGH;
    case SW_FIELD_VALUE:
    case SW_FIELD_SITE_NUMBER:
      sw_value_entry_set_value (SW_VALUE_ENTRY (row->control),
                                *(double *) place (self->stage, field, job, face),
                                sw_stage_style (self->stage));
      break;
    case SW_FIELD_SWITCH:
      gtk_switch_set_active (GTK_SWITCH (row->control),
                             *(gboolean *) place (self->stage, field, job, face));
      break;
    case SW_FIELD_ENUM:
      show_choice (self, row, (int) *(guint *) place (self->stage, field, job, face));
      break;
    case SW_FIELD_CHOICE:
      show_choice (self, row, field->get (self->stage, field->which));
      break;
    default:
      break;
    }
}

static void
refresh (SwForm *self)
{
  self->refreshing = TRUE;
  for (guint i = 0; i < self->rows->len; i++)
    refresh_row (self, &g_array_index (self->rows, Row, i));
  self->refreshing = FALSE;
}

static const char *
label_of (SwForm *self, const SwField *field)
{
  return field->label != NULL
             ? _ (field->label)
             : sw_texts_get (sw_stage_stock (self->stage)->texts, field->label_id);
}

static GtkWidget *
make_value (const SwField *field, const char *label)
{
  gboolean planned = field->kind == SW_FIELD_PLAN;
  GtkWidget *entry =
      sw_value_entry_new (planned ? sw_plan_keys[field->which].unit : field->unit);

  if (!planned)
    {
      sw_value_entry_set_range (SW_VALUE_ENTRY (entry), field->least, field->most);
      sw_value_entry_set_or_zero (SW_VALUE_ENTRY (entry), field->optional);
      sw_value_entry_set_optional (SW_VALUE_ENTRY (entry), field->optional);
    }
  sw_value_entry_set_label (SW_VALUE_ENTRY (entry), label);
  return entry;
}

/* R and K are kept in the units they were typed in: bare numbers here. */
static GtkWidget *
make_site_number (const SwField *field, const char *label)
{
  const SwSiteNumberKey *key = &sw_site_number_keys[field->which];
  gboolean as_typed = key->unit == SW_UNIT_EROSIVITY || key->unit == SW_UNIT_ERODIBILITY;
  const SwField value = {
    .unit = as_typed || key->unit == SW_UNIT_RATIO ? SW_UNIT_FACTOR : key->unit,
    .least = key->least,
    .most = key->most,
    .optional = TRUE,
  };

  return make_value (&value, label);
}

static void
make_control (SwForm *self, Row *row)
{
  const char *label = label_of (self, row->field);

  switch (row->field->kind)
    {
    case SW_FIELD_TEXT:
      row->control = sw_text_entry_new ();
      sw_text_entry_set_label (SW_TEXT_ENTRY (row->control), label);
      sw_text_entry_set_check (SW_TEXT_ENTRY (row->control), row->field->problem);
      g_signal_connect_swapped (row->control, "committed", G_CALLBACK (on_text), row);
      break;
    case SW_FIELD_VALUE:
    case SW_FIELD_PLAN:
      row->control = make_value (row->field, label);
      g_signal_connect_swapped (row->control, "committed", G_CALLBACK (on_value), row);
      break;
    case SW_FIELD_SITE_NUMBER:
      row->control = make_site_number (row->field, label);
      g_signal_connect_swapped (row->control, "committed", G_CALLBACK (on_value), row);
      break;
    case SW_FIELD_SWITCH:
      row->control = gtk_switch_new ();
      gtk_widget_set_halign (row->control, GTK_ALIGN_START);
      gtk_accessible_update_property (GTK_ACCESSIBLE (row->control),
                                      GTK_ACCESSIBLE_PROPERTY_LABEL, label, -1);
      g_signal_connect_swapped (row->control, "notify::active", G_CALLBACK (on_switch),
                                row);
      break;
    case SW_FIELD_ENUM:
    case SW_FIELD_CHOICE:
      row->control = sw_choice_new (label);
      g_signal_connect_swapped (row->control, "notify::selected", G_CALLBACK (on_choice),
                                row);
      break;
    default:
      break;
    }
}

static void
attach_in_line (SwForm *self, Row *row, int at)
{
  make_control (self, row);
  gtk_widget_set_tooltip_text (row->control, label_of (self, row->field));
  gtk_grid_attach (self->grid, row->control, at, 0, 1, 1);
}

static void
attach_heading (SwForm *self, Row *row, GtkWidget *label, int at)
{
  const SwField *field = row->field;
  GtkWidget *line = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 6);

  gtk_widget_add_css_class (label, "heading");
  gtk_widget_set_hexpand (label, TRUE);
  gtk_box_append (GTK_BOX (line), label);
  if (field->help != NULL)
    gtk_box_append (
        GTK_BOX (line),
        sw_help_button_new (field->help, gtk_label_get_text (GTK_LABEL (label))));
  gtk_grid_attach (self->grid, line, 0, at, 2, 1);
  row->label = line;
}

static void
attach_row (SwForm *self, Row *row, int at)
{
  GtkWidget *label = gtk_label_new (label_of (self, row->field));

  row->label = label;
  gtk_label_set_xalign (GTK_LABEL (label), 0.0f);
  gtk_label_set_wrap (GTK_LABEL (label), TRUE);
  if (row->field->kind == SW_FIELD_HEADING)
    {
      attach_heading (self, row, label, at);
      return;
    }
  make_control (self, row);
  if (row->field->label_id != NULL) /* a question gets the room, its answer is short */
    gtk_widget_set_hexpand (label, TRUE);
  else
    gtk_widget_set_hexpand (row->control, TRUE);
  gtk_label_set_width_chars (GTK_LABEL (label), 12);
  gtk_label_set_max_width_chars (GTK_LABEL (label),
                                 row->field->label_id != NULL ? 40 : 18);
  gtk_widget_set_valign (row->control, GTK_ALIGN_CENTER);
  gtk_grid_attach (self->grid, label, 0, at, 1, 1);
  gtk_grid_attach (self->grid, row->control, 1, at, 1, 1);
}

static void
sw_form_dispose (GObject *object)
{
  SwForm *self = SW_FORM (object);

  if (self->grid != NULL)
    gtk_widget_unparent (GTK_WIDGET (self->grid));
  self->grid = NULL;
  g_clear_object (&self->stage);
  G_OBJECT_CLASS (sw_form_parent_class)->dispose (object);
}

static void
sw_form_finalize (GObject *object)
{
  g_array_unref (SW_FORM (object)->rows);
  G_OBJECT_CLASS (sw_form_parent_class)->finalize (object);
}

static void
sw_form_class_init (SwFormClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = sw_form_dispose;
  G_OBJECT_CLASS (klass)->finalize = sw_form_finalize;
  gtk_widget_class_set_layout_manager_type (widget_class, GTK_TYPE_BIN_LAYOUT);
  gtk_widget_class_set_css_name (widget_class, "form");
}

static void
sw_form_init (SwForm *self)
{
  self->rows = g_array_new (FALSE, TRUE, sizeof (Row));
  self->grid = GTK_GRID (gtk_grid_new ());
  gtk_grid_set_row_spacing (self->grid, 6);
  gtk_grid_set_column_spacing (self->grid, 12);
  gtk_widget_set_parent (GTK_WIDGET (self->grid), GTK_WIDGET (self));
}

static GtkWidget *
make_form (SwStage *stage, const SwField *fields, gboolean in_line)
{
  SwForm *self = g_object_new (SW_TYPE_FORM, NULL);
  guint count = 0;

  self->stage = g_object_ref (stage);
  while (fields[count].kind != SW_FIELD_END)
    count++;
  g_array_set_size (self->rows, count);
  for (guint i = 0; i < count; i++)
    {
      Row *row = &g_array_index (self->rows, Row, i);
      *row = (Row){ .form = self, .field = &fields[i] };
      if (in_line)
        attach_in_line (self, row, (int) i);
      else
        attach_row (self, row, (int) i);
    }
  refresh (self);
  g_signal_connect_object (stage, "changed", G_CALLBACK (refresh), self,
                           G_CONNECT_SWAPPED);
  return GTK_WIDGET (self);
}

GtkWidget *
sw_form_new (SwStage *stage, const SwField *fields)
{
  return make_form (stage, fields, FALSE);
}

GtkWidget *
sw_form_new_in_line (SwStage *stage, const SwField *fields)
{
  return make_form (stage, fields, TRUE);
}

GtkWidget *
sw_form_control (SwForm *self, guint index)
{
  g_return_val_if_fail (index < self->rows->len, NULL);
  return g_array_index (self->rows, Row, index).control;
}
