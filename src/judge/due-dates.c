/* SPDX-License-Identifier: MIT */
#include <math.h>
#include <slopewright/judge/due-dates.h>
#include <string.h>

#define DATE_FORM "dddd-dd-dd"

/* Mean length of a month, for parts of one. */
#define DAYS_PER_MONTH (365.2425 / 12.0)

const char *
sw_due_code (SwDueKind kind)
{
  static const char *const codes[] = { "inspection", "blanket-end" };

  return codes[kind];
}

static gboolean
has_date_form (const char *text)
{
  if (strlen (text) != strlen (DATE_FORM))
    return FALSE;
  for (gsize i = 0; text[i] != '\0'; i++)
    if (DATE_FORM[i] == 'd' ? !g_ascii_isdigit (text[i]) : text[i] != DATE_FORM[i])
      return FALSE;
  return TRUE;
}

gboolean
sw_install_date (const SwJob *job, GDate *date)
{
  const char *text = job->card.install_date;
  guint64 year, month, day;

  if (!has_date_form (text))
    return FALSE;
  year = g_ascii_strtoull (text, NULL, 10);
  month = g_ascii_strtoull (text + 5, NULL, 10);
  day = g_ascii_strtoull (text + 8, NULL, 10);
  if (!g_date_valid_dmy ((GDateDay) day, (GDateMonth) month, (GDateYear) year))
    return FALSE;
  g_date_clear (date, 1);
  g_date_set_dmy (date, (GDateDay) day, (GDateMonth) month, (GDateYear) year);
  return TRUE;
}

static guint
days_of_months (double months)
{
  return (guint) floor (months * DAYS_PER_MONTH + 0.5);
}

static double
months_to_watch (const SwLayout *layout)
{
  double months = layout->job->numbers.values[SW_NUMBER_GROW_MONTHS];

  if (!(months > 0.0))
    months = layout->blanket->life_months.value;
  return fmin (months, SW_DUE_MONTHS_MOST);
}

static void
add_inspections (GArray *dues, const SwLayout *layout, const GDate *installed)
{
  const SwSourced *values = layout->practice->values;
  guint every = (guint) fmax (values[SW_PRACTICE_INSPECT_DAYS].value, 1.0);
  guint mend = (guint) values[SW_PRACTICE_REPAIR_DAYS].value;
  guint last = days_of_months (months_to_watch (layout));

  for (guint days = every; days <= last; days += every)
    {
      SwDue due = { .kind = SW_DUE_INSPECTION, .number = (int) (days / every) };

      due.date = due.repair_by = *installed;
      g_date_add_days (&due.date, days);
      g_date_add_days (&due.repair_by, days + mend);
      g_array_append_val (dues, due);
    }
}

static int
compare_dates (gconstpointer a, gconstpointer b)
{
  return g_date_compare (&((const SwDue *) a)->date, &((const SwDue *) b)->date);
}

GArray *
sw_due_dates_new (const SwLayout *layout, const GDate *installed)
{
  GArray *dues = g_array_new (FALSE, FALSE, sizeof (SwDue));
  double life = layout->blanket->life_months.value;

  add_inspections (dues, layout, installed);
  if (isfinite (life))
    {
      SwDue end = { .kind = SW_DUE_BLANKET_END, .number = 1 };

      end.date = *installed;
      g_date_add_days (&end.date, days_of_months (life));
      end.repair_by = end.date;
      g_array_append_val (dues, end);
    }
  g_array_sort (dues, compare_dates);
  return dues;
}
