/* SPDX-License-Identifier: MIT */
#include "opened-job.h"
#include "written-file.h"

#include <slopewright/sheet/report.h>
#include <slopewright/store/calendar.h>

static SlopepackExit run (char **argv);

const SlopepackCommand slopepack_calendar = {
  "calendar",
  "List inspection and repair dates, or write them as iCalendar.",
  "JOB [-o FILE.ics]",
  "Counts from the install date of the job card (card.install_date, as 2026-03-31) by\n"
  "the practice's intervals. Inspections after rain have no date.",
  run,
};

static SlopepackExit
write_calendar (const SlopepackJob *opened, const GDate *installed, const char *output)
{
  g_autoptr (GArray) dues = sw_due_dates_new (opened->result->layout, installed);
  g_autofree char *text =
      sw_calendar_text (&opened->job->card, dues, installed, opened->texts);
  g_autoptr (GFile) file = g_file_new_for_commandline_arg (output);
  g_autoptr (GError) error = NULL;

  if (!sw_calendar_save (text, file, &error))
    return slopepack_complain (SLOPEPACK_CANNOT_WRITE, "%s", error->message);
  return SLOPEPACK_DONE;
}

static SlopepackExit
calendar (const char *path, const SlopepackReader *reader, const char *output)
{
  g_auto (SlopepackJob) opened = { 0 };
  SlopepackExit code = slopepack_job_open (path, reader, &opened);
  GDate installed;

  if (code != SLOPEPACK_DONE)
    return code;
  if (!sw_install_date (opened.job, &installed))
    return slopepack_complain (
        SLOPEPACK_UNREADABLE,
        "%s: card.install_date: found \"%s\", expected a date such as \"2026-03-31\"",
        path, opened.job->card.install_date);
  if (output != NULL)
    return write_calendar (&opened, &installed, output);

  g_autofree char *report = sw_report_dates (opened.result, opened.texts);
  return slopepack_print (report);
}

static SlopepackExit
run (char **argv)
{
  g_auto (SlopepackReader) reader = { 0 };
  g_autofree char *output = NULL;
  const GOptionEntry entries[] = { { "output", 'o', 0, G_OPTION_ARG_FILENAME, &output,
                                     "Where to write an iCalendar file", "FILE.ics" },
                                   SLOPEPACK_READER_OPTIONS (reader),
                                   G_OPTION_ENTRY_NULL };
  g_auto (GStrv) words = NULL;
  SlopepackExit code;

  if (!slopepack_read_options (&slopepack_calendar, argv, entries, 1, 1, &words, &code))
    return code;
  if (output != NULL)
    code = slopepack_check_output (&slopepack_calendar, output, words[1]);
  else
    code = SLOPEPACK_DONE;
  return code == SLOPEPACK_DONE ? calendar (words[1], &reader, output) : code;
}
