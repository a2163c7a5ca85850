/* SPDX-License-Identifier: MIT */
#include <math.h>
#include <slopewright/base/range.h>
#include <slopewright/tally/labour.h>

#define DECIMALS_MOST 4

/* In smallest coins: up to here a double still tells a half coin from its neighbours. */
#define COINS_MOST 1e13

/* So little below half a coin is half a coin: a price typed as 1.005 is a double just
 * below it. As a share of a coin, and of the amount for large ones. */
#define COIN_SLACK 1e-6
#define AMOUNT_SLACK 2e-16

static const double coins[DECIMALS_MOST + 1] = { 1.0, 10.0, 100.0, 1000.0, 10000.0 };

SwStatus
sw_man_days (double quantity, double unit, double man_hours, double difficulty,
             double *man_days)
{
  if (!sw_is_size (quantity) || !sw_is_positive (unit) || !sw_is_size (man_hours)
      || !sw_is_positive (difficulty))
    return SW_E_RANGE;
  *man_days = quantity / unit * man_hours / SW_HOURS_PER_MAN_DAY * difficulty;
  return SW_OK;
}

SwStatus
sw_day_equivalent (double hours, double *ratio)
{
  if (!sw_is_positive (hours) || hours > 24.0)
    return SW_E_RANGE;
  *ratio = hours / SW_HOURS_PER_MAN_DAY;
  return SW_OK;
}

SwStatus
sw_duration (double man_days, int crew, double availability, double day_equivalent,
             double *days)
{
  if (!sw_is_size (man_days) || crew < 1 || !sw_is_positive (availability)
      || availability > 1.0 || !sw_is_positive (day_equivalent))
    return SW_E_RANGE;
  *days = man_days / crew / availability / day_equivalent;
  return SW_OK;
}

SwStatus
sw_crew_days (double quantity, double per_day, double *days)
{
  if (!sw_is_size (quantity) || !sw_is_positive (per_day))
    return SW_E_RANGE;
  *days = quantity / per_day;
  return SW_OK;
}

SwStatus
sw_man_hours (int people, double days, double hours_per_day, double *man_hours)
{
  if (people < 0 || !sw_is_size (days) || !sw_is_size (hours_per_day)
      || hours_per_day > 24.0)
    return SW_E_RANGE;
  *man_hours = people * days * hours_per_day;
  return SW_OK;
}

SwStatus
sw_unit_hours (int people, double hours, double units, double *hours_per_unit)
{
  if (people < 0 || !sw_is_size (hours) || !sw_is_positive (units))
    return SW_E_RANGE;
  *hours_per_unit = people * hours / units;
  return SW_OK;
}

static gboolean
is_decimals (int decimals)
{
  return decimals >= 0 && decimals <= DECIMALS_MOST;
}

static gboolean
is_amount (double amount, int decimals)
{
  return isfinite (amount) && fabs (amount) * coins[decimals] < COINS_MOST;
}

static double
round_to (double amount, int decimals)
{
  double count = fabs (amount) * coins[decimals];

  return copysign (floor (count + 0.5 + COIN_SLACK + count * AMOUNT_SLACK), amount)
         / coins[decimals];
}

SwStatus
sw_price_round (double amount, int decimals, double *rounded)
{
  if (!is_decimals (decimals) || !is_amount (amount, decimals))
    return SW_E_RANGE;
  *rounded = round_to (amount, decimals);
  return SW_OK;
}

static double
line_amount (const SwPriceLine *line)
{
  return line->quantity * line->price * (1.0 + line->waste);
}

static gboolean
are_lines (const SwPriceLine *lines, guint count, int decimals)
{
  for (guint i = 0; i < count; i++)
    if (!sw_is_size (lines[i].quantity) || !sw_is_size (lines[i].price)
        || !sw_is_size (lines[i].waste) || !is_amount (line_amount (&lines[i]), decimals))
      return FALSE;
  return TRUE;
}

static gboolean
are_mark_ups (const SwMarkUps *mark_ups)
{
  return sw_is_size (mark_ups->overhead) && sw_is_size (mark_ups->profit)
         && sw_is_size (mark_ups->tax);
}

/* Sums are rounded too: adding hundredths leaves traces. */
static SwPrice
price_of (double lines, double mobilisation, const SwMarkUps *mark_ups, int decimals)
{
  SwPrice price = { .lines = round_to (lines, decimals),
                    .mobilisation = round_to (mobilisation, decimals) };

  price.direct = round_to (price.lines + price.mobilisation, decimals);
  price.overhead = round_to (price.direct * mark_ups->overhead, decimals);
  price.profit = round_to ((price.direct + price.overhead) * mark_ups->profit, decimals);
  price.net = round_to (price.direct + price.overhead + price.profit, decimals);
  price.tax = round_to (price.net * mark_ups->tax, decimals);
  price.total = round_to (price.net + price.tax, decimals);
  return price;
}

SwStatus
sw_price (const SwPriceLine *lines, guint count, double mobilisation,
          const SwMarkUps *mark_ups, int decimals, double *amounts, SwPrice *price)
{
  double sum = 0.0, marked;

  if (!is_decimals (decimals) || !are_lines (lines, count, decimals)
      || !sw_is_size (mobilisation) || !are_mark_ups (mark_ups))
    return SW_E_RANGE;
  for (guint i = 0; i < count; i++)
    sum += round_to (line_amount (&lines[i]), decimals);
  marked = (sum + mobilisation) * (1.0 + mark_ups->overhead) * (1.0 + mark_ups->profit)
           * (1.0 + mark_ups->tax);
  if (!is_amount (marked, decimals))
    return SW_E_RANGE;
  for (guint i = 0; i < count && amounts != NULL; i++)
    amounts[i] = round_to (line_amount (&lines[i]), decimals);
  *price = price_of (sum, mobilisation, mark_ups, decimals);
  return SW_OK;
}
