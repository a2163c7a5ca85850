/* SPDX-License-Identifier: MIT */
#pragma once

#include <slopewright/layout/layout.h>

/** What is due on a day. Text ids "due.<code>" and "due.<code>.what". */
typedef enum
{
  SW_DUE_INSPECTION, /* "inspection": routine, by the practice's interval */
  SW_DUE_BLANKET_END /* "blanket-end": the class's life is over */
} SwDueKind;

const char *sw_due_code (SwDueKind kind);

typedef struct
{
  SwDueKind kind;
  int number; /* 1.. within its kind */
  GDate date;
  GDate repair_by; /* of an inspection: what it finds is mended by then */
} SwDue;

/**
 * sw_install_date:
 * @job: its card's install date, as in ISO 8601: "2026-03-31"
 * @date: (out): untouched on FALSE
 *
 * Returns: FALSE where it is empty or no such day.
 */
gboolean sw_install_date (const SwJob *job, GDate *date);

/**
 * sw_due_dates_new:
 * @layout: for practice, blanket and the months that plants need
 * @installed: day on which the blankets lay
 *
 * Routine inspections every so many days of the practice, for the months that plants
 * need where the job says it, else for the life of the blanket class, in any case at
 * most SW_DUE_MONTHS_MOST. Inspections after rain have no date.
 *
 * Returns: (transfer full) (element-type SwDue): by date
 */
GArray *sw_due_dates_new (const SwLayout *layout, const GDate *installed);

/** A list of dates beyond that is no plan but a wish. */
#define SW_DUE_MONTHS_MOST 24
