/* SPDX-License-Identifier: MIT */
#include "sw-measure-dialog.h"

#include <glib/gi18n.h>

#include "choice.h"
#include "measured-face.h"
#include "sw-help-button.h"
#include "sw-value-entry.h"

#define FARTHEST_M 10000.0
#define HOW_COUNT 4

typedef struct
{
  const char *label;
  SwUnit unit;
  gsize offset;           /* of a double in SwMeasured */
  gboolean or_zero;       /* may be left out */
  gboolean of[HOW_COUNT]; /* asked for, by SwObtained */
} Question;

#define MEASURED(member) G_STRUCT_OFFSET (SwMeasured, member)

static const Question questions[] = {
  { N_ ("Length down the face"), SW_UNIT_M, MEASURED (length_m), FALSE, { 1, 0, 0, 0 } },
  { N_ ("Run on plan"), SW_UNIT_M, MEASURED (run_m), FALSE, { 0, 0, 1, 0 } },
  { N_ ("Rise"), SW_UNIT_M, MEASURED (rise_m), FALSE, { 0, 1, 1, 0 } },
  { N_ ("Gradient"), SW_UNIT_HV, MEASURED (hv), FALSE, { 0, 1, 0, 0 } },
  { N_ ("Angle or gradient"), SW_UNIT_RAD, MEASURED (angle_rad), FALSE, { 1, 0, 0, 0 } },
  { N_ ("Width along the crest"), SW_UNIT_M, MEASURED (width_m), FALSE, { 1, 1, 1, 0 } },
  { N_ ("Crest, A to B"), SW_UNIT_M, MEASURED (sides.ab_m), FALSE, { 0, 0, 0, 1 } },
  { N_ ("Right side, B to C"), SW_UNIT_M, MEASURED (sides.bc_m), FALSE, { 0, 0, 0, 1 } },
  { N_ ("Toe, C to D"), SW_UNIT_M, MEASURED (sides.cd_m), FALSE, { 0, 0, 0, 1 } },
  { N_ ("Left side, D to A"), SW_UNIT_M, MEASURED (sides.da_m), FALSE, { 0, 0, 0, 1 } },
  { N_ ("Diagonal, A to C"), SW_UNIT_M, MEASURED (sides.ac_m), FALSE, { 0, 0, 0, 1 } },
  { N_ ("Check, B to D"), SW_UNIT_M, MEASURED (sides.bd_m), TRUE, { 0, 0, 0, 1 } },
  { N_ ("Angle or gradient"), SW_UNIT_RAD, MEASURED (angle_rad), FALSE, { 0, 0, 0, 1 } },
};

typedef struct
{
  SwMeasureDialog *dialog;
  const Question *question;
  GtkWidget *label, *entry;
} Row;

struct _SwMeasureDialog
{
  GtkWindow parent_instance;
  SwStage *stage;
  SwMeasured measured;
  Row rows[G_N_ELEMENTS (questions)];
  GtkDropDown *how;
  GtkWidget *sketch, *use;
  GtkLabel *message, *lost;
};

G_DEFINE_FINAL_TYPE (SwMeasureDialog, sw_measure_dialog, GTK_TYPE_WINDOW)

/* What is measured here has one gradient from crest to toe. */
static gboolean
has_break (SwStage *stage)
{
  const SwFace *face = sw_stage_face (stage);

  return face->toe > face->crest + 1;
}

static void
refresh (SwMeasureDialog *self)
{
  SwNumberStyle style = sw_stage_style (self->stage);
  gboolean fits;
  g_autofree char *text = sw_measured_text (&self->measured, style, &fits);

  gtk_label_set_text (self->message, text);
  gtk_widget_set_visible (GTK_WIDGET (self->lost), has_break (self->stage));
  gtk_widget_set_sensitive (self->use, fits);
  gtk_widget_set_visible (self->sketch, self->measured.how == SW_OBTAINED_TAPED_SHAPE);
  gtk_widget_queue_draw (self->sketch);
  for (gsize i = 0; i < G_N_ELEMENTS (questions); i++)
    {
      gboolean asked = questions[i].of[self->measured.how];

      gtk_widget_set_visible (self->rows[i].label, asked);
      gtk_widget_set_visible (self->rows[i].entry, asked);
      sw_value_entry_set_value (
          SW_VALUE_ENTRY (self->rows[i].entry),
          G_STRUCT_MEMBER (double, &self->measured, questions[i].offset), style);
    }
}

static void
on_committed (Row *row, double value)
{
  G_STRUCT_MEMBER (double, &row->dialog->measured, row->question->offset) = value;
  refresh (row->dialog);
}

/* The field of the first question from @from on; NULL behind the last. */
static GtkWidget *
next_field (SwMeasureDialog *self, gsize from)
{
  for (gsize i = from; i < G_N_ELEMENTS (questions); i++)
    if (questions[i].of[self->measured.how])
      return self->rows[i].entry;
  return NULL;
}

static void
on_how (SwMeasureDialog *self)
{
  guint how = gtk_drop_down_get_selected (self->how);

  if (how < HOW_COUNT)
    self->measured.how = (SwObtained) how;
  refresh (self);
}

static void
set_shape (SwJob *job, SwFace *face, gconstpointer measured)
{
  sw_measured_shape (measured, face);
}

static gboolean
take_fields (SwMeasureDialog *self)
{
  gboolean sense = TRUE;

  for (gsize i = 0; i < G_N_ELEMENTS (questions); i++)
    if (questions[i].of[self->measured.how])
      sense &= sw_value_entry_commit (SW_VALUE_ENTRY (self->rows[i].entry));
  return sense && gtk_widget_get_sensitive (self->use);
}

gboolean
sw_measure_dialog_warns (SwMeasureDialog *self)
{
  return gtk_widget_get_visible (GTK_WIDGET (self->lost));
}

void
sw_measure_dialog_use (SwMeasureDialog *self)
{
  if (!take_fields (self))
    return;
  sw_stage_edit (self->stage, set_shape, &self->measured, _ ("Shape from Measurements"),
                 NULL);
  gtk_window_destroy (GTK_WINDOW (self));
}

/* Enter goes on to the next question, and from the last one takes the shape. */
static void
on_enter (Row *row)
{
  SwMeasureDialog *self = row->dialog;
  GtkWidget *next = next_field (self, (gsize) (row - self->rows) + 1);

  if (next == NULL)
    sw_measure_dialog_use (self);
  else if (sw_value_entry_commit (SW_VALUE_ENTRY (row->entry)))
    gtk_widget_grab_focus (next);
}

static void
draw_corner (cairo_t *cr, const char *letter, double x, double y, double away_x,
             double away_y)
{
  cairo_text_extents_t extents;

  cairo_text_extents (cr, letter, &extents);
  cairo_move_to (cr, x + away_x * 12.0 - extents.width / 2.0,
                 y + away_y * 12.0 + extents.height / 2.0);
  cairo_show_text (cr, letter);
}

/* The corners as they were taped, or a plain quadrilateral while the tapes do not meet. */
static void
draw_sketch (GtkDrawingArea *area, cairo_t *cr, int width, int height, gpointer data)
{
  SwMeasureDialog *self = data;
  SwTapedShape shape = { .corners = { { 0, 0 }, { 20, 0 }, { 18, 11 }, { 2, 11 } } };
  static const char *const letters[] = { "A", "B", "C", "D" };
  double scale, least_x, x[4], y[4];
  SwBox box;
  GdkRGBA colour;

  sw_taped_shape (&self->measured.sides, &shape);
  box = sw_ring_box ((SwRing){ shape.corners, 4 });
  scale = MIN ((width - 60.0) / (box.x1_m - box.x0_m),
               (height - 50.0) / (box.y1_m - box.y0_m));
  least_x = (width - scale * (box.x1_m - box.x0_m)) / 2.0;
  gtk_style_context_get_color (gtk_widget_get_style_context (GTK_WIDGET (area)), &colour);
  gdk_cairo_set_source_rgba (cr, &colour);
  cairo_set_font_size (cr, 14.0);
  for (guint i = 0; i < 4; i++)
    {
      x[i] = least_x + scale * (shape.corners[i].x_m - box.x0_m);
      y[i] = 25.0 + scale * (shape.corners[i].y_m - box.y0_m);
      draw_corner (cr, letters[i], x[i], y[i], i == 0 || i == 3 ? -1.0 : 1.0,
                   i < 2 ? -1.0 : 1.0);
    }
  for (guint i = 0; i < 4; i++)
    cairo_line_to (cr, x[i], y[i]);
  cairo_close_path (cr);
  cairo_set_line_join (cr, CAIRO_LINE_JOIN_ROUND);
  cairo_set_line_width (cr, 2.0);
  cairo_stroke (cr);
  cairo_set_dash (cr, (double[]){ 5.0, 4.0 }, 2, 0.0);
  cairo_set_line_width (cr, 1.0);
  for (guint i = 0; i < 2; i++)
    {
      cairo_move_to (cr, x[i], y[i]);
      cairo_line_to (cr, x[i + 2], y[i + 2]);
    }
  cairo_stroke (cr);
}

static GtkWidget *
make_sketch (SwMeasureDialog *self)
{
  GtkWidget *sketch = gtk_drawing_area_new ();

  gtk_drawing_area_set_content_width (GTK_DRAWING_AREA (sketch), 300);
  gtk_drawing_area_set_content_height (GTK_DRAWING_AREA (sketch), 160);
  gtk_drawing_area_set_draw_func (GTK_DRAWING_AREA (sketch), draw_sketch, self, NULL);
  gtk_accessible_update_property (GTK_ACCESSIBLE (sketch), GTK_ACCESSIBLE_PROPERTY_LABEL,
                                  _ ("The four corners, seen from the toe looking up: A "
                                     "left and B right on the crest, "
                                     "C right and D left at the toe"),
                                  -1);
  return sketch;
}

static void
add_row (SwMeasureDialog *self, GtkGrid *grid, gsize i)
{
  Row *row = &self->rows[i];
  const char *label = _ (questions[i].label);
  double most = questions[i].unit == SW_UNIT_M     ? FARTHEST_M
                : questions[i].unit == SW_UNIT_RAD ? G_PI_2
                                                   : 1000.0;

  *row = (Row){ self, &questions[i], gtk_label_new (label),
                sw_value_entry_new (questions[i].unit) };
  gtk_label_set_xalign (GTK_LABEL (row->label), 0.0f);
  gtk_widget_set_hexpand (row->entry, TRUE);
  sw_value_entry_set_label (SW_VALUE_ENTRY (row->entry), label);
  sw_value_entry_set_range (SW_VALUE_ENTRY (row->entry), 0.01, most);
  sw_value_entry_set_or_zero (SW_VALUE_ENTRY (row->entry), questions[i].or_zero);
  g_signal_connect_swapped (row->entry, "committed", G_CALLBACK (on_committed), row);
  g_signal_connect_swapped (sw_value_entry_field (SW_VALUE_ENTRY (row->entry)),
                            "activate", G_CALLBACK (on_enter), row);
  gtk_grid_attach (grid, row->label, 0, (int) i + 1, 1, 1);
  gtk_grid_attach (grid, row->entry, 1, (int) i + 1, 1, 1);
}

static GtkWidget *
make_grid (SwMeasureDialog *self)
{
  const char *names[] = { _ ("Face length and angle"), _ ("Rise and gradient"),
                          _ ("Run and rise"), _ ("Four sides and a diagonal"), NULL };
  GtkWidget *grid = gtk_grid_new ();
  GtkWidget *label = gtk_label_new (_ ("Measured"));

  gtk_grid_set_row_spacing (GTK_GRID (grid), 6);
  gtk_grid_set_column_spacing (GTK_GRID (grid), 12);
  gtk_label_set_xalign (GTK_LABEL (label), 0.0f);
  self->how = GTK_DROP_DOWN (sw_choice_new (_ ("Measured")));
  sw_choice_show (self->how, names, (int) self->measured.how);
  gtk_grid_attach (GTK_GRID (grid), label, 0, 0, 1, 1);
  gtk_grid_attach (GTK_GRID (grid), GTK_WIDGET (self->how), 1, 0, 1, 1);
  for (gsize i = 0; i < G_N_ELEMENTS (questions); i++)
    add_row (self, GTK_GRID (grid), i);
  g_signal_connect_swapped (self->how, "notify::selected", G_CALLBACK (on_how), self);
  return grid;
}

static void
make_header (SwMeasureDialog *self)
{
  GtkWidget *header = gtk_header_bar_new ();
  GtkWidget *cancel = gtk_button_new_with_mnemonic (_ ("_Cancel"));

  self->use = gtk_button_new_with_mnemonic (_ ("_Use This Shape"));
  gtk_widget_add_css_class (self->use, "suggested-action");
  gtk_header_bar_set_show_title_buttons (GTK_HEADER_BAR (header), FALSE);
  gtk_header_bar_pack_start (GTK_HEADER_BAR (header), cancel);
  gtk_header_bar_pack_end (GTK_HEADER_BAR (header), self->use);
  gtk_header_bar_pack_end (GTK_HEADER_BAR (header),
                           sw_help_button_new ("measure", _ ("Measure a slope")));
  g_signal_connect_swapped (cancel, "clicked", G_CALLBACK (gtk_window_close), self);
  g_signal_connect_swapped (self->use, "clicked", G_CALLBACK (sw_measure_dialog_use),
                            self);
  gtk_window_set_titlebar (GTK_WINDOW (self), header);
}

/* As high as all of it where the screen is; what comes of the numbers stays in sight. */
static GtkWidget *
make_questions (SwMeasureDialog *self)
{
  GtkWidget *scrolled = gtk_scrolled_window_new ();
  GtkWidget *box = gtk_box_new (GTK_ORIENTATION_VERTICAL, 12);

  self->sketch = make_sketch (self);
  gtk_box_append (GTK_BOX (box), make_grid (self));
  gtk_box_append (GTK_BOX (box), self->sketch);
  gtk_scrolled_window_set_child (GTK_SCROLLED_WINDOW (scrolled), box);
  gtk_scrolled_window_set_policy (GTK_SCROLLED_WINDOW (scrolled), GTK_POLICY_NEVER,
                                  GTK_POLICY_AUTOMATIC);
  gtk_scrolled_window_set_propagate_natural_height (GTK_SCROLLED_WINDOW (scrolled), TRUE);
  gtk_widget_set_vexpand (scrolled, TRUE);
  return scrolled;
}

static GtkLabel *
make_words (const char *words)
{
  GtkLabel *label = GTK_LABEL (gtk_label_new (words));

  gtk_label_set_wrap (label, TRUE);
  gtk_label_set_xalign (label, 0.0f);
  gtk_label_set_max_width_chars (label, 44);
  return label;
}

static void
make_contents (SwMeasureDialog *self)
{
  GtkWidget *box = gtk_box_new (GTK_ORIENTATION_VERTICAL, 12);

  self->message = make_words (NULL);
  self->lost =
      make_words (_ ("This face has a bench or another break between crest and toe. The "
                     "shape measured here has none and takes its place."));
  gtk_widget_add_css_class (GTK_WIDGET (self->lost), "heading");
  gtk_widget_set_margin_top (box, 18);
  gtk_widget_set_margin_bottom (box, 18);
  gtk_widget_set_margin_start (box, 18);
  gtk_widget_set_margin_end (box, 18);
  gtk_box_append (GTK_BOX (box), make_questions (self));
  gtk_box_append (GTK_BOX (box), GTK_WIDGET (self->message));
  gtk_box_append (GTK_BOX (box), GTK_WIDGET (self->lost));
  gtk_window_set_child (GTK_WINDOW (self), box);
}

static void
sw_measure_dialog_dispose (GObject *object)
{
  g_clear_object (&SW_MEASURE_DIALOG (object)->stage);
  G_OBJECT_CLASS (sw_measure_dialog_parent_class)->dispose (object);
}

static void
sw_measure_dialog_class_init (SwMeasureDialogClass *klass)
{
  G_OBJECT_CLASS (klass)->dispose = sw_measure_dialog_dispose;
  gtk_widget_class_add_binding_action (GTK_WIDGET_CLASS (klass), GDK_KEY_Escape, 0,
                                       "window.close", NULL);
}

static void
sw_measure_dialog_init (SwMeasureDialog *self)
{
}

GtkWidget *
sw_measure_dialog_new (GtkWindow *parent, SwStage *stage, SwObtained how)
{
  SwMeasureDialog *self =
      g_object_new (SW_TYPE_MEASURE_DIALOG, "transient-for", parent, "modal", TRUE,
                    "title", _ ("Shape from Measurements"), "resizable", FALSE,
                    "destroy-with-parent", TRUE, NULL);

  self->stage = g_object_ref (stage);
  self->measured = sw_measured_from_face (sw_stage_face (stage));
  if (how < HOW_COUNT)
    self->measured.how = how;
  make_header (self);
  make_contents (self);
  refresh (self);
  gtk_widget_grab_focus (next_field (self, 0)); /* typing begins at once */
  return GTK_WIDGET (self);
}

GtkWidget *
sw_measure_dialog_field (SwMeasureDialog *self, guint index)
{
  g_return_val_if_fail (index < G_N_ELEMENTS (questions), NULL);
  return self->rows[index].entry;
}

const char *
sw_measure_dialog_message (SwMeasureDialog *self)
{
  return gtk_label_get_text (self->message);
}
