/* SPDX-License-Identifier: MIT */
#include "first-job.h"

#include <gtk/gtk.h>
#include <langinfo.h>

#include "language.h"

/* What the GNU C library calls measurement: 1 metric, 2 as in the United States. */
#define MEASURES_US 2

static gboolean
prints_on_letter (void)
{
  return g_strcmp0 (gtk_paper_size_get_default (), GTK_PAPER_NAME_LETTER) == 0;
}

static gboolean
measures_in_feet (void)
{
  return *nl_langinfo (_NL_MEASUREMENT_MEASUREMENT) == MEASURES_US;
}

SwJob *
sw_first_job (void)
{
  SwJob *job = sw_job_new_default ();

  job->paper = prints_on_letter () ? SW_PAPER_LETTER : SW_PAPER_A4;
  job->units = measures_in_feet () ? SW_UNITS_US : SW_UNITS_METRIC;
  sw_text_set (&job->language, sw_language_of_texts ());
  return job;
}
