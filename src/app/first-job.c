/* SPDX-License-Identifier: MIT */
#include "first-job.h"

#include <gtk/gtk.h>
#include <langinfo.h>
#include <slopewright/base/units.h>
#include <slopewright/sheet/pack.h>

#include "language.h"

/* What the GNU C library calls measurement: 1 metric, 2 as in the United States. */
#define MEASURES_US 2

static SwPaper
paper_for (const char *code)
{
  SwPaper paper;

  if (sw_paper_from_code (code, &paper))
    return paper;
  return g_strcmp0 (gtk_paper_size_get_default (), GTK_PAPER_NAME_LETTER) == 0
             ? SW_PAPER_LETTER
             : SW_PAPER_A4;
}

static SwUnitSystem
units_for (const char *word)
{
  if (*word != '\0')
    return g_str_equal (word, "us") ? SW_UNITS_US : SW_UNITS_METRIC;
  return *nl_langinfo (_NL_MEASUREMENT_MEASUREMENT) == MEASURES_US ? SW_UNITS_US
                                                                   : SW_UNITS_METRIC;
}

/* Round numbers of whoever reads a tape in feet: 16 ft high at 2:1, 64 ft wide. */
static void
shape_in_feet (SwFace *face)
{
  const double rise_m = 16.0 * SW_M_PER_FT, run_m = 2.0 * rise_m, width_m = 4.0 * rise_m;
  const SwPoint section[] = { { 0.0, rise_m }, { run_m, 0.0 } };
  const SwPoint outline[] = {
    { 0.0, 0.0 }, { width_m, 0.0 }, { width_m, run_m }, { 0.0, run_m }
  };

  sw_face_set_section (face, section, G_N_ELEMENTS (section));
  sw_face_set_outline (face, outline, G_N_ELEMENTS (outline));
}

SwJob *
sw_first_job (SwPreferences *preferences, const char *const *languages)
{
  SwJob *job = sw_job_new_default ();
  const char *language = sw_preferences_language (preferences);

  job->paper = paper_for (sw_preferences_paper (preferences));
  job->units = units_for (sw_preferences_units (preferences));
  if (job->units == SW_UNITS_US)
    shape_in_feet (g_ptr_array_index (job->faces, 0));
  sw_text_set (&job->language, g_strv_contains (languages, language)
                                   ? language
                                   : sw_language_of_texts ());
  return job;
}
