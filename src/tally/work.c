/* SPDX-License-Identifier: MIT */
#include "tally-private.h"
#include <slopewright/base/count.h>
#include <slopewright/tally/earth-loads.h>

/* Trench spoil that does not go back, and the loads it makes. */
void
sw_tally_haul (SwTally *tally, const SwLayout *layout)
{
  const double *values = layout->job->plan.values;
  SwWorking *haul, *loads;

  if (!(values[SW_PLAN_TRUCK_M3] > 0.0))
    return;
  tally->haul_m3 = tally->trench_loose_m3 * (1.0 - values[SW_PLAN_BACKFILL]);
  haul = sw_tally_add (tally, sw_working_new ("haul", tally->haul_m3, SW_UNIT_M3,
                                              SW_ROUNDING_NONE, "haul"));
  for (guint i = 0; i < tally->workings->len; i++)
    {
      const SwWorking *part = g_ptr_array_index (tally->workings, i);

      if (g_str_equal (part->formula, "spoil_loose"))
        sw_working_computed (haul, "loose", part);
    }
  sw_working_typed (haul, "backfill", values[SW_PLAN_BACKFILL], SW_UNIT_PERCENT);
  if (sw_earth_loads (tally->haul_m3, values[SW_PLAN_TRUCK_M3], &tally->loads) != SW_OK)
    return;
  loads = sw_tally_add (tally, sw_working_new ("truck_loads", tally->loads, SW_UNIT_COUNT,
                                               SW_ROUNDING_UP, "truck-loads"));
  sw_working_computed (loads, "haul", haul);
  sw_working_typed (loads, "truck", values[SW_PLAN_TRUCK_M3], SW_UNIT_M3);
}

/* Work that takes time by its amount. */
typedef struct
{
  SwPlanNumber rate;
  const char *formula, *name;
  double amount;
  SwUnit unit;
} Task;

static double
hours_of (const Task *task, double rate)
{
  return task->rate == SW_PLAN_PINS_H_PER_100 ? task->amount / 100.0 * rate
                                              : task->amount * rate;
}

/* Every task with a rate, and their sum; NULL where no rate is given. */
static SwWorking *
add_tasks (SwTally *tally, const double *values)
{
  const Task tasks[] = {
    { SW_PLAN_SETUP_H, "crew_setup", "crew-setup", 1.0, SW_UNIT_COUNT },
    { SW_PLAN_RUN_H, "crew_runs", "crew-runs", tally->runs, SW_UNIT_COUNT },
    { SW_PLAN_TRENCH_H_PER_M, "crew_trench", "crew-trench",
      tally->key_trench_m + tally->slot_m + tally->toe_trench_m, SW_UNIT_M },
    { SW_PLAN_PINS_H_PER_100, "crew_pins", "crew-pins", (double) tally->pins,
      SW_UNIT_COUNT },
    { SW_PLAN_SEEDING_H_PER_M2, "crew_seeding", "crew-seeding", tally->areas.net_m2,
      SW_UNIT_M2 },
  };
  SwWorking *sum =
      sw_working_new ("crew_hours", 0.0, SW_UNIT_HOUR, SW_ROUNDING_NONE, "crew-hours");

  for (guint i = 0; i < G_N_ELEMENTS (tasks); i++)
    {
      double rate = values[tasks[i].rate];
      SwWorking *task;

      if (!(rate > 0.0))
        continue;
      task = sw_tally_add (
          tally, sw_working_new (tasks[i].formula, hours_of (&tasks[i], rate),
                                 SW_UNIT_HOUR, SW_ROUNDING_NONE, "%s", tasks[i].name));
      sw_working_part (task, "amount", tasks[i].amount, tasks[i].unit);
      sw_working_typed (task, "time", rate, sw_plan_keys[tasks[i].rate].unit);
      sw_working_computed (sum, "task", task);
      sum->value += task->value;
    }
  if (sum->value > 0.0)
    return sum;
  sw_working_free (sum);
  return NULL;
}

static void
add_days (SwTally *tally, const double *values, const SwWorking *man_days)
{
  SwCrewTime *crew = &tally->crew;
  int people = (int) values[SW_PLAN_PEOPLE];
  double equivalent;
  SwWorking *days, *whole;

  if (sw_day_equivalent (values[SW_PLAN_DAY_H], &equivalent) != SW_OK
      || sw_duration (crew->man_days, people, values[SW_PLAN_AT_WORK], equivalent,
                      &crew->days)
             != SW_OK)
    return;
  days = sw_tally_add (tally, sw_working_new ("crew_days", crew->days, SW_UNIT_DAY,
                                              SW_ROUNDING_NONE, "crew-days"));
  sw_working_computed (days, "man_days", man_days);
  sw_working_typed (days, "people", people, SW_UNIT_COUNT);
  sw_working_typed (days, "at_work", values[SW_PLAN_AT_WORK], SW_UNIT_PERCENT);
  sw_working_typed (days, "day", values[SW_PLAN_DAY_H], SW_UNIT_HOUR);
  crew->whole_days = sw_count_up_ratio (crew->days);
  whole = sw_tally_add (tally, sw_working_new ("crew_whole_days", crew->whole_days,
                                               SW_UNIT_COUNT, SW_ROUNDING_UP,
                                               "crew-whole-days"));
  sw_working_computed (whole, "days", days);
}

void
sw_tally_crew (SwTally *tally, const SwLayout *layout)
{
  const double *values = layout->job->plan.values;
  SwCrewTime *crew = &tally->crew;
  SwWorking *hours = add_tasks (tally, values), *man_days, *paid;

  if (hours == NULL)
    return;
  sw_tally_add (tally, hours);
  hours->value *= values[SW_PLAN_DIFFICULTY];
  sw_working_typed (hours, "difficulty", values[SW_PLAN_DIFFICULTY], SW_UNIT_RATIO);
  crew->hours = hours->value;
  if (sw_man_days (crew->hours, 1.0, 1.0, 1.0, &crew->man_days) != SW_OK)
    return;
  man_days =
      sw_tally_add (tally, sw_working_new ("crew_man_days", crew->man_days, SW_UNIT_RATIO,
                                           SW_ROUNDING_NONE, "crew-man-days"));
  sw_working_computed (man_days, "hours", hours);
  crew->paid_hours = crew->hours / values[SW_PLAN_AT_WORK];
  paid = sw_tally_add (tally, sw_working_new ("crew_paid", crew->paid_hours, SW_UNIT_HOUR,
                                              SW_ROUNDING_NONE, "crew-paid-hours"));
  sw_working_computed (paid, "hours", hours);
  sw_working_typed (paid, "at_work", values[SW_PLAN_AT_WORK], SW_UNIT_PERCENT);
  add_days (tally, values, man_days);
}
