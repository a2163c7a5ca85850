/* SPDX-License-Identifier: MIT */
#include "print.h"

#include <glib/gi18n.h>

#include "export.h"
#include "sw-dialogs.h"

typedef struct
{
  GPtrArray *pages;
  SwStage *stage;
} Work;

static void
free_work (gpointer data, GClosure *closure)
{
  Work *work = data;

  g_ptr_array_unref (work->pages);
  g_object_unref (work->stage);
  g_free (work);
}

static GtkPageSetup *
setup_for (SwPaper paper)
{
  static const char *const names[SW_PAPER_COUNT] = { [SW_PAPER_A4] = GTK_PAPER_NAME_A4,
                                                     [SW_PAPER_LETTER] =
                                                         GTK_PAPER_NAME_LETTER,
                                                     [SW_PAPER_A3] = GTK_PAPER_NAME_A3,
                                                     [SW_PAPER_TABLOID] = "na_ledger" };
  GtkPageSetup *setup = gtk_page_setup_new ();
  GtkPaperSize *size = gtk_paper_size_new (names[paper]);

  gtk_page_setup_set_paper_size (setup, size);
  gtk_paper_size_free (size);
  return setup;
}

static void
on_page_setup (GtkPrintOperation *print, GtkPrintContext *context, int page,
               GtkPageSetup *setup, Work *work)
{
  const SwFigure *figure = g_ptr_array_index (work->pages, page);

  gtk_page_setup_set_orientation (setup, figure->width_mm > figure->height_mm
                                             ? GTK_PAGE_ORIENTATION_LANDSCAPE
                                             : GTK_PAGE_ORIENTATION_PORTRAIT);
}

static void
on_draw_page (GtkPrintOperation *print, GtkPrintContext *context, int page, Work *work)
{
  sw_paint_cairo (g_ptr_array_index (work->pages, page),
                  gtk_print_context_get_cairo_context (context),
                  sw_stage_stock (work->stage)->palette, SW_THEME_PAPER);
}

GtkPrintOperation *
sw_print_new (SwStage *stage, GPtrArray *pages, SwPaper paper)
{
  g_autoptr (GtkPageSetup) setup = setup_for (paper);
  g_autofree char *stem = sw_export_stem (stage);
  GtkPrintOperation *print = gtk_print_operation_new ();
  Work *work = g_new0 (Work, 1);

  *work = (Work){ g_ptr_array_ref (pages), g_object_ref (stage) };
  gtk_print_operation_set_job_name (print, stem);
  gtk_print_operation_set_n_pages (print, (int) pages->len);
  gtk_print_operation_set_default_page_setup (print, setup);
  gtk_print_operation_set_use_full_page (print, TRUE);
  gtk_print_operation_set_unit (print, GTK_UNIT_MM);
  gtk_print_operation_set_embed_page_setup (print, FALSE);
  g_signal_connect (print, "request-page-setup", G_CALLBACK (on_page_setup), work);
  g_signal_connect_data (print, "draw-page", G_CALLBACK (on_draw_page), work, free_work,
                         G_CONNECT_DEFAULT);
  return print;
}

void
sw_print_pack (GtkWindow *window, SwStage *stage, SwMaking *making)
{
  g_autoptr (GtkPrintOperation) print =
      sw_print_new (stage, sw_making_pages (making), sw_making_job (making)->paper);
  g_autoptr (GError) error = NULL;

  if (gtk_print_operation_run (print, GTK_PRINT_OPERATION_ACTION_PRINT_DIALOG, window,
                               &error)
      == GTK_PRINT_OPERATION_RESULT_ERROR)
    sw_dialogs_error (window, _ ("The pack could not be printed"), error->message);
}
