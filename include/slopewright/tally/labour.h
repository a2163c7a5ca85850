/* SPDX-License-Identifier: MIT */
#pragma once

#include <glib.h>
#include <slopewright/base/status.h>

/*
 * Time of a crew and price of the work, by rates the user knows. A man-day has
 * eight hours. Source of the time arithmetic: US Navy Seabee planner's and
 * estimator's handbook, NAVFAC P-405, through NAVEDTRA 14045.
 */
#define SW_HOURS_PER_MAN_DAY 8.0

/**
 * sw_man_days:
 * @quantity: of work, >= 0
 * @unit: quantity that @man_hours are given for, > 0
 * @man_hours: one person's hours for one unit, >= 0
 * @difficulty: factor on the time, > 0; 1 for usual conditions
 */
SwStatus sw_man_days (double quantity, double unit, double man_hours, double difficulty,
                      double *man_days);

/** Paid day over the man-day: 9 h is 1.125. @hours > 0, at most 24. */
SwStatus sw_day_equivalent (double hours, double *ratio);

/**
 * sw_duration:
 * @man_days: >= 0
 * @crew: people, >= 1
 * @availability: share of the time that they are at the work, (0, 1]
 * @day_equivalent: from sw_day_equivalent(), > 0
 * @days: (out): not rounded; whole days by sw_count_up_ratio()
 */
SwStatus sw_duration (double man_days, int crew, double availability,
                      double day_equivalent, double *days);

/** Days a crew takes at so much a day. @quantity >= 0, @per_day > 0. Not rounded. */
SwStatus sw_crew_days (double quantity, double per_day, double *days);

/** Hours of all together: people x days x hours. Crew-hours are those of one person. */
SwStatus sw_man_hours (int people, double days, double hours_per_day, double *man_hours);

/** Hours of one person per unit made: people x hours / units. @units > 0. */
SwStatus sw_unit_hours (int people, double hours, double units, double *hours_per_unit);

/**
 * sw_price_round:
 * @amount: of money, any sign, less than 1e13 of the smallest coin
 * @decimals: of the smallest coin, 0 to 4
 *
 * Half a coin is rounded away from zero, as on an invoice; 1.005 counts as half
 * though its double lies a trace below.
 *
 * Returns: SW_OK or SW_E_RANGE.
 */
SwStatus sw_price_round (double amount, int decimals, double *rounded);

/** A line of the price: material with waste, or hours at a rate. */
typedef struct
{
  double quantity; /* >= 0 */
  double price;    /* of one, >= 0 */
  double waste;    /* ratio added to quantity, >= 0; 0 where waste is counted already */
} SwPriceLine;

/** Mark-ups, ratios >= 0. Each is on all that stands above it. */
typedef struct
{
  double overhead, profit, tax;
} SwMarkUps;

typedef struct
{
  double lines; /* sum of the rounded lines */
  double mobilisation;
  double direct;   /* lines and mobilisation */
  double overhead; /* on direct */
  double profit;   /* on direct and overhead */
  double net;      /* direct, overhead and profit */
  double tax;      /* on net */
  double total;
} SwPrice;

/**
 * sw_price:
 * @lines: (array length=count): @count of them, 0 and up
 * @mobilisation: lump sum, >= 0
 * @mark_ups: see there
 * @decimals: of the smallest coin, 0 to 4
 * @amounts: (out caller-allocates) (optional): @count line amounts
 * @price: (out): every amount rounded
 *
 * Every line and every mark-up is rounded when it arises and sums are of rounded
 * amounts, so what is printed adds up.
 *
 * Returns: SW_OK; SW_E_RANGE, also where a line or the total reaches 1e13 of the
 *   smallest coin.
 */
SwStatus sw_price (const SwPriceLine *lines, guint count, double mobilisation,
                   const SwMarkUps *mark_ups, int decimals, double *amounts,
                   SwPrice *price);
