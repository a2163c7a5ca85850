/* SPDX-License-Identifier: MIT */
#include "sw-preview.h"

#include <glib/gi18n.h>
#include <slopewright/sheet/pack.h>

#include "export.h"
#include "form-fields.h"
#include "row-name.h"
#include "sw-making-bar.h"
#include "sw-page-view.h"

#define THUMB_PX 120
#define PAGE_PX 700
#define ZOOM_STEP 1.25
#define SMALLEST_PX_PER_MM 0.5
#define LARGEST_PX_PER_MM 30.0

struct _SwPreview
{
  GtkWidget parent_instance;
  SwStage *stage;
  GtkWidget *box;
  GtkStack *stack;
  GtkListBox *thumbs;
  GtkLabel *place, *problem;
  GtkBox *document;
  GtkScrolledWindow *paper;
  SwPageView *page;
  GPtrArray *pages;
  SwPaper on_paper; /* the pages */
  guint shown;
  gboolean stale;   /* the job has moved on from what the pages are of */
  SwMaking *making; /* of the pages to come; NULL: none */
  SwMakingBar *making_bar;
  GtkBox *bars;
  GtkWidget *old, *renew;
  GtkLabel *old_words;
};

G_DEFINE_FINAL_TYPE (SwPreview, sw_preview, GTK_TYPE_WIDGET)

static void
show_place (SwPreview *self)
{
  const SwFigure *page = g_ptr_array_index (self->pages, self->shown);
  g_autofree char *text = g_strdup_printf (
      /* Translators: page number, page count, title of the page, paper */
      _ ("Page %u of %u · %s · %s, prints at 100 %%"), self->shown + 1, self->pages->len,
      page->title != NULL ? page->title : "", sw_paper_code (self->on_paper));

  gtk_label_set_text (self->place, text);
  gtk_widget_set_tooltip_text (GTK_WIDGET (self->place), text);
  gtk_widget_action_set_enabled (GTK_WIDGET (self), "preview.previous", self->shown > 0);
  gtk_widget_action_set_enabled (GTK_WIDGET (self), "preview.next",
                                 self->shown + 1 < self->pages->len);
}

static void
show_page (SwPreview *self, guint index)
{
  GtkListBoxRow *row;

  self->shown = MIN (index, self->pages->len - 1);
  sw_page_view_show (self->page, self->pages, self->shown);
  show_place (self);
  row = gtk_list_box_get_row_at_index (self->thumbs, (int) self->shown);
  if (row != gtk_list_box_get_selected_row (self->thumbs))
    gtk_list_box_select_row (self->thumbs, row);
}

static void
match_thumbs (SwPreview *self)
{
  GtkListBoxRow *row;
  guint count = 0;

  while ((row = gtk_list_box_get_row_at_index (self->thumbs, (int) count)) != NULL)
    {
      if (count >= self->pages->len)
        {
          gtk_list_box_remove (self->thumbs, GTK_WIDGET (row));
          continue;
        }
      sw_page_view_show (SW_PAGE_VIEW (gtk_list_box_row_get_child (row)), self->pages,
                         count++);
    }
  for (; count < self->pages->len; count++)
    {
      GtkWidget *thumb = sw_page_view_new (sw_stage_stock (self->stage), THUMB_PX);
      sw_page_view_show (SW_PAGE_VIEW (thumb), self->pages, count);
      gtk_list_box_append (self->thumbs, thumb);
      sw_row_name (gtk_widget_get_parent (thumb), thumb, NULL);
    }
}

/* That the pages shown are not those of the job; a button only where nothing renews them. */
static void
show_old (SwPreview *self, gboolean old)
{
  gtk_label_set_text (self->old_words, self->pages != NULL
                                           ? _ ("These pages are of the job as it was "
                                                "before its last changes.")
                                           : _ ("The pages have not been made."));
  gtk_widget_set_visible (self->old, old);
  gtk_widget_set_visible (self->renew, self->making == NULL);
}

static void
show_problem (SwPreview *self, const char *text)
{
  show_old (self, FALSE);
  gtk_label_set_text (self->problem, text);
  gtk_stack_set_visible_child_name (self->stack, "problem");
}

static void
show_pages (SwPreview *self, SwMaking *making)
{
  g_clear_pointer (&self->pages, g_ptr_array_unref);
  self->pages = g_ptr_array_ref (sw_making_pages (making));
  self->on_paper = sw_making_job (making)->paper;
  match_thumbs (self);
  show_page (self, self->shown);
  show_old (self, FALSE);
  gtk_stack_set_visible_child_name (self->stack, "pages");
}

static void
on_progressed (SwPreview *self)
{
  show_old (self, self->pages != NULL);
}

static void renew (SwPreview *self);

/* The newest wins: what was made of a job that has moved on is thrown away. */
static void
on_finished (SwPreview *self)
{
  g_autoptr (SwMaking) making = g_steal_pointer (&self->making);

  if (self->stale && gtk_widget_get_mapped (GTK_WIDGET (self)))
    renew (self);
  else if (self->stale)
    return;
  else if (sw_making_state (making) == SW_MAKING_DONE)
    show_pages (self, making);
  else if (sw_making_state (making) == SW_MAKING_FAILED)
    show_problem (self, sw_making_error (making)->message);
  else
    {
      gtk_stack_set_visible_child_name (self->stack, "pages");
      show_old (self, TRUE);
    }
}

/* One thread at a time: the one before is waited for, to its next part. */
static void
renew (SwPreview *self)
{
  SwPackOrder *order;

  if (self->making != NULL)
    {
      self->stale = TRUE;
      sw_making_stop (self->making);
      return;
    }
  self->stale = FALSE;
  order = sw_pack_order_new (self->stage);
  if (order == NULL)
    {
      g_autofree char *text =
          g_strdup_printf (_ ("The job cannot be laid out: %s."),
                           _ (sw_status_text (sw_stage_result (self->stage)->status)));
      show_problem (self, text);
      return;
    }
  self->making = sw_making_start (order, NULL);
  g_signal_connect_object (self->making, "progressed", G_CALLBACK (on_progressed), self,
                           G_CONNECT_SWAPPED);
  g_signal_connect_object (self->making, "finished", G_CALLBACK (on_finished), self,
                           G_CONNECT_SWAPPED);
  sw_making_bar_follow (self->making_bar, self->making);
}

static void
on_changed (SwPreview *self)
{
  self->stale = TRUE;
  if (gtk_widget_get_mapped (GTK_WIDGET (self)))
    renew (self);
  else if (self->making != NULL)
    sw_making_stop (self->making);
}

static void
renew_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  renew (SW_PREVIEW (widget));
}

static void
on_row (SwPreview *self, GtkListBoxRow *row)
{
  if (row != NULL && self->pages != NULL)
    show_page (self, (guint) gtk_list_box_row_get_index (row));
}

static void
next_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  SwPreview *self = SW_PREVIEW (widget);

  if (self->pages != NULL)
    show_page (self, self->shown + 1);
}

static void
previous_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  SwPreview *self = SW_PREVIEW (widget);

  if (self->pages != NULL && self->shown > 0)
    show_page (self, self->shown - 1);
}

static void
zoom (SwPreview *self, double factor)
{
  double px_per_mm = sw_page_view_scale (self->page) * factor;

  sw_page_view_set_scale (self->page,
                          CLAMP (px_per_mm, SMALLEST_PX_PER_MM, LARGEST_PX_PER_MM));
}

static void
zoom_in_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  zoom (SW_PREVIEW (widget), ZOOM_STEP);
}

static void
zoom_out_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  zoom (SW_PREVIEW (widget), 1.0 / ZOOM_STEP);
}

static void
zoom_fit_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  sw_page_view_set_scale (SW_PREVIEW (widget)->page, 0.0);
}

static gboolean
on_scroll (SwPreview *self, double dx, double dy, GtkEventControllerScroll *scroll)
{
  GdkModifierType held =
      gtk_event_controller_get_current_event_state (GTK_EVENT_CONTROLLER (scroll));

  if ((held & GDK_CONTROL_MASK) == 0 || self->pages == NULL)
    return FALSE;
  zoom (self, dy < 0.0 ? ZOOM_STEP : 1.0 / ZOOM_STEP);
  return TRUE;
}

static void
install_zoom (GtkWidgetClass *klass)
{
  static const struct
  {
    guint key;
    const char *action;
  } keys[] = {
    { GDK_KEY_plus, "preview.zoom-in" },         { GDK_KEY_equal, "preview.zoom-in" },
    { GDK_KEY_KP_Add, "preview.zoom-in" },       { GDK_KEY_minus, "preview.zoom-out" },
    { GDK_KEY_KP_Subtract, "preview.zoom-out" }, { GDK_KEY_0, "preview.zoom-fit" },
  };

  gtk_widget_class_install_action (klass, "preview.zoom-in", NULL, zoom_in_action);
  gtk_widget_class_install_action (klass, "preview.zoom-out", NULL, zoom_out_action);
  gtk_widget_class_install_action (klass, "preview.zoom-fit", NULL, zoom_fit_action);
  for (gsize i = 0; i < G_N_ELEMENTS (keys); i++)
    gtk_widget_class_add_binding_action (klass, keys[i].key, GDK_CONTROL_MASK,
                                         keys[i].action, NULL);
}

static void
sw_preview_map (GtkWidget *widget)
{
  SwPreview *self = SW_PREVIEW (widget);

  if (self->stale && self->making == NULL)
    renew (self);
  GTK_WIDGET_CLASS (sw_preview_parent_class)->map (widget);
}

static void
sw_preview_dispose (GObject *object)
{
  SwPreview *self = SW_PREVIEW (object);

  if (self->making != NULL)
    sw_making_stop (self->making);
  g_clear_object (&self->making);
  gtk_widget_dispose_template (GTK_WIDGET (self), SW_TYPE_PREVIEW);
  g_clear_pointer (&self->pages, g_ptr_array_unref);
  g_clear_object (&self->stage);
  G_OBJECT_CLASS (sw_preview_parent_class)->dispose (object);
}

static void
sw_preview_class_init (SwPreviewClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = sw_preview_dispose;
  widget_class->map = sw_preview_map;
  gtk_widget_class_set_template_from_resource (
      widget_class, "/io/slopewright/Slopewright/sw-preview.ui");
  gtk_widget_class_bind_template_child (widget_class, SwPreview, box);
  gtk_widget_class_bind_template_child (widget_class, SwPreview, stack);
  gtk_widget_class_bind_template_child (widget_class, SwPreview, thumbs);
  gtk_widget_class_bind_template_child (widget_class, SwPreview, place);
  gtk_widget_class_bind_template_child (widget_class, SwPreview, problem);
  gtk_widget_class_bind_template_child (widget_class, SwPreview, document);
  gtk_widget_class_bind_template_child (widget_class, SwPreview, paper);
  gtk_widget_class_bind_template_child (widget_class, SwPreview, bars);
  gtk_widget_class_bind_template_child (widget_class, SwPreview, old);
  gtk_widget_class_bind_template_child (widget_class, SwPreview, renew);
  gtk_widget_class_bind_template_child (widget_class, SwPreview, old_words);
  gtk_widget_class_install_action (widget_class, "preview.renew", NULL, renew_action);
  gtk_widget_class_bind_template_callback (widget_class, on_row);
  gtk_widget_class_install_action (widget_class, "preview.next", NULL, next_action);
  gtk_widget_class_install_action (widget_class, "preview.previous", NULL,
                                   previous_action);
  install_zoom (widget_class);
  gtk_widget_class_set_layout_manager_type (widget_class, GTK_TYPE_BIN_LAYOUT);
  gtk_widget_class_set_css_name (widget_class, "preview");
}

static void
sw_preview_init (SwPreview *self)
{
  gtk_widget_init_template (GTK_WIDGET (self));
  gtk_widget_set_hexpand (GTK_WIDGET (self), TRUE);
  self->stale = TRUE;
}

/* Before the list of pages takes these keys for a screenful of it. */
static void
turn_pages_by_key (SwPreview *self)
{
  GtkEventController *keys = gtk_shortcut_controller_new ();

  gtk_event_controller_set_propagation_phase (keys, GTK_PHASE_CAPTURE);
  gtk_shortcut_controller_add_shortcut (
      GTK_SHORTCUT_CONTROLLER (keys),
      gtk_shortcut_new (gtk_keyval_trigger_new (GDK_KEY_Page_Down, 0),
                        gtk_named_action_new ("preview.next")));
  gtk_shortcut_controller_add_shortcut (
      GTK_SHORTCUT_CONTROLLER (keys),
      gtk_shortcut_new (gtk_keyval_trigger_new (GDK_KEY_Page_Up, 0),
                        gtk_named_action_new ("preview.previous")));
  gtk_widget_add_controller (GTK_WIDGET (self), keys);
}

GtkWidget *
sw_preview_new (SwStage *stage)
{
  SwPreview *self = g_object_new (SW_TYPE_PREVIEW, NULL);
  GtkEventController *scroll =
      gtk_event_controller_scroll_new (GTK_EVENT_CONTROLLER_SCROLL_VERTICAL);

  self->stage = g_object_ref (stage);
  self->page = SW_PAGE_VIEW (sw_page_view_new (sw_stage_stock (stage), PAGE_PX));
  gtk_widget_set_hexpand (GTK_WIDGET (self->page), TRUE);
  gtk_widget_set_vexpand (GTK_WIDGET (self->page), TRUE);
  gtk_scrolled_window_set_child (self->paper, GTK_WIDGET (self->page));
  self->making_bar = SW_MAKING_BAR (sw_making_bar_new ());
  gtk_box_prepend (self->bars, GTK_WIDGET (self->making_bar));
  gtk_box_append (self->document, sw_form_new_in_line (stage, sw_document_fields));
  gtk_widget_add_controller (GTK_WIDGET (self->page), scroll);
  turn_pages_by_key (self);
  g_signal_connect_swapped (scroll, "scroll", G_CALLBACK (on_scroll), self);
  g_signal_connect_object (stage, "changed", G_CALLBACK (on_changed), self,
                           G_CONNECT_SWAPPED);
  return GTK_WIDGET (self);
}

GPtrArray *
sw_preview_pages (SwPreview *self)
{
  return self->pages;
}

SwMaking *
sw_preview_making (SwPreview *self)
{
  return self->making;
}

gboolean
sw_preview_says_old (SwPreview *self)
{
  return gtk_widget_get_visible (self->old);
}
