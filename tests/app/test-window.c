/* SPDX-License-Identifier: MIT */
#undef G_DISABLE_ASSERT
#include <gtk/gtk.h>

#include "form-fields.h"
#include "sw-findings-list.h"
#include "sw-point-table.h"
#include "sw-practice-page.h"
#include "sw-window.h"

static SwStock *stock;

static void
test_room (void)
{
  SwWindow *window = sw_window_new (NULL, stock);
  int least, natural;

  gtk_widget_measure (GTK_WIDGET (window), GTK_ORIENTATION_HORIZONTAL, -1, &least,
                      &natural, NULL, NULL);
  g_test_message ("window: at least %d, best %d wide", least, natural);
  struct
  {
    const char *name;
    const SwField *fields;
  } forms[] = { { "face", sw_face_fields }, { "blanket", sw_blanket_fields },
                { "seed", sw_seed_fields }, { "site", sw_site_fields },
                { "job", sw_job_fields },   { "paper", sw_paper_fields } };
  for (int i = 0; i < 6; i++)
    {
      GtkWidget *f =
          g_object_ref_sink (sw_form_new (sw_window_stage (window), forms[i].fields));
      gtk_widget_measure (f, GTK_ORIENTATION_HORIZONTAL, -1, &least, &natural, NULL,
                          NULL);
      g_test_message ("%s: at least %d, best %d wide", forms[i].name, least, natural);
      g_object_unref (f);
    }
  GtkWidget *f = g_object_ref_sink (sw_practice_page_new (sw_window_stage (window)));
  gtk_widget_measure (f, GTK_ORIENTATION_HORIZONTAL, -1, &least, &natural, NULL, NULL);
  g_test_message ("practice: at least %d, best %d wide", least, natural);
  g_object_unref (f);
  f = g_object_ref_sink (
      sw_point_table_new (sw_window_stage (window), sw_canvas_kind (0)));
  gtk_widget_measure (f, GTK_ORIENTATION_HORIZONTAL, -1, &least, &natural, NULL, NULL);
  g_test_message ("points: at least %d, best %d wide", least, natural);
  g_object_unref (f);
  f = g_object_ref_sink (sw_findings_list_new ());
  sw_findings_list_set_stage (SW_FINDINGS_LIST (f), sw_window_stage (window));
  gtk_widget_measure (f, GTK_ORIENTATION_HORIZONTAL, -1, &least, &natural, NULL, NULL);
  g_test_message ("findings: at least %d, best %d wide", least, natural);
  g_object_unref (f);
  gtk_window_destroy (GTK_WINDOW (window));
}

int
main (int argc, char *argv[])
{
  int status;

  gtk_test_init (&argc, &argv, NULL);
  stock = sw_stock_new (NULL);
  g_test_add_func ("/app/window/room", test_room);
  status = g_test_run ();
  sw_stock_free (stock);
  return status;
}
