/* SPDX-License-Identifier: MIT */
#include "sw-inspector.h"

#include <glib/gi18n.h>
#include <string.h>

#include "form-fields.h"
#include "sw-face-bar.h"
#include "sw-help-button.h"
#include "sw-list-bar.h"
#include "sw-point-table.h"
#include "sw-practice-page.h"
#include "sw-roll-list.h"
#include "sw-soil-row.h"
#include "sw-species-list.h"

struct _SwInspector
{
  GtkWidget parent_instance;
  SwStage *stage;
  GtkWidget *box;
  GtkStack *stack;
  GtkBox *pages;
  GtkWidget *help;
  GtkBox *face, *blanket, *practice, *site, *job, *order;
};

G_DEFINE_FINAL_TYPE (SwInspector, sw_inspector, GTK_TYPE_WIDGET)

void
sw_inspector_show_page (SwInspector *self, const char *page)
{
  gtk_stack_set_visible_child_name (self->stack, page);
}

static GtkWidget *
make_compare_types (void)
{
  GtkWidget *button = gtk_button_new_with_mnemonic (_ ("_Types Against This Job…"));

  gtk_actionable_set_action_name (GTK_ACTIONABLE (button), "win.compare-types");
  gtk_widget_set_halign (button, GTK_ALIGN_START);
  return button;
}

/* The page of the help about each of the inspector's. */
static const char *
help_of (const char *page)
{
  static const struct
  {
    const char *page, *help;
  } rows[] = {
    { "face", "draw" },
    { "blanket", "blanket" },
    { "practice", "blanket#practice" },
    { "site", "findings#site-visit" },
    { "order", "seed" },
    { "job", "packs" },
  };

  for (gsize i = 0; i < G_N_ELEMENTS (rows); i++)
    if (strcmp (rows[i].page, page) == 0)
      return rows[i].help;
  return "start";
}

static void
show_help_of_page (SwInspector *self)
{
  const char *page = gtk_stack_get_visible_child_name (self->stack);

  if (page != NULL)
    gtk_actionable_set_action_target (GTK_ACTIONABLE (self->help), "s", help_of (page));
}

static void
add_help (SwInspector *self)
{
  self->help = sw_help_button_new ("start", _ ("This page"));
  gtk_box_append (self->pages, self->help);
  g_signal_connect_object (self->stack, "notify::visible-child-name",
                           G_CALLBACK (show_help_of_page), self, G_CONNECT_SWAPPED);
  show_help_of_page (self);
}

void
sw_inspector_set_stage (SwInspector *self, SwStage *stage)
{
  g_return_if_fail (self->stage == NULL && SW_IS_STAGE (stage));

  self->stage = g_object_ref (stage);
  gtk_box_append (self->face, sw_face_bar_new (stage));
  gtk_box_append (self->face, sw_soil_row_new (stage));
  gtk_box_append (self->face, sw_form_new (stage, sw_face_fields));
  for (guint view = SW_CANVAS_SECTION; view <= SW_CANVAS_PLAN; view++)
    {
      const SwCanvasKind *kind = sw_canvas_kind ((SwCanvasView) view);
      gtk_box_append (self->face, sw_list_bar_new (stage, kind->y_up));
      gtk_box_append (self->face, sw_point_table_new (stage, kind));
    }
  gtk_box_append (self->blanket, sw_form_new (stage, sw_blanket_fields));
  gtk_box_append (self->blanket, make_compare_types ());
  gtk_box_append (self->blanket, sw_roll_list_new (stage));
  gtk_box_append (self->blanket, sw_form_new (stage, sw_product_fields));
  gtk_box_append (self->practice, sw_practice_page_new (stage));
  gtk_box_append (self->site, sw_form_new (stage, sw_site_fields));
  gtk_box_append (self->site, sw_form_new (stage, sw_site_number_fields));
  gtk_box_append (self->order, sw_form_new (stage, sw_allowance_fields));
  gtk_box_append (self->order, sw_form_new (stage, sw_seed_fields));
  gtk_box_append (self->order, sw_species_list_new (stage));
  gtk_box_append (self->order, sw_form_new (stage, sw_fertiliser_fields));
  gtk_box_append (self->order, sw_form_new (stage, sw_haul_fields));
  gtk_box_append (self->order, sw_form_new (stage, sw_crew_fields));
  gtk_box_append (self->order, sw_form_new (stage, sw_price_fields));
  gtk_box_append (self->job, sw_form_new (stage, sw_job_fields));
  gtk_box_append (self->job, sw_form_new (stage, sw_paper_fields));
  gtk_box_append (self->job, sw_form_new (stage, sw_pack_fields));
}

static void
sw_inspector_dispose (GObject *object)
{
  SwInspector *self = SW_INSPECTOR (object);

  gtk_widget_dispose_template (GTK_WIDGET (self), SW_TYPE_INSPECTOR);
  g_clear_object (&self->stage);
  G_OBJECT_CLASS (sw_inspector_parent_class)->dispose (object);
}

static void
sw_inspector_class_init (SwInspectorClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = sw_inspector_dispose;
  gtk_widget_class_set_template_from_resource (
      widget_class, "/io/slopewright/Slopewright/sw-inspector.ui");
  gtk_widget_class_bind_template_child (widget_class, SwInspector, box);
  gtk_widget_class_bind_template_child (widget_class, SwInspector, stack);
  gtk_widget_class_bind_template_child (widget_class, SwInspector, pages);
  gtk_widget_class_bind_template_child (widget_class, SwInspector, face);
  gtk_widget_class_bind_template_child (widget_class, SwInspector, blanket);
  gtk_widget_class_bind_template_child (widget_class, SwInspector, practice);
  gtk_widget_class_bind_template_child (widget_class, SwInspector, site);
  gtk_widget_class_bind_template_child (widget_class, SwInspector, job);
  gtk_widget_class_bind_template_child (widget_class, SwInspector, order);
  gtk_widget_class_set_layout_manager_type (widget_class, GTK_TYPE_BIN_LAYOUT);
  gtk_widget_class_set_css_name (widget_class, "inspector");
}

static void
sw_inspector_init (SwInspector *self)
{
  gtk_widget_init_template (GTK_WIDGET (self));
  add_help (self);
}
