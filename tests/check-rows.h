/* SPDX-License-Identifier: MIT */
#pragma once

#include <glib.h>

/*
 * Runs the rows of tests/data/check-values.csv: published and independently
 * computed numbers, each with its source. Every row belongs to one room; that
 * room's test must be able to compute it.
 */

typedef struct
{
  const char *id, *quantity, *inputs, *unit, *source;
  double expected, tolerance;
} CheckRow;

/** How to compute one quantity with the program's own functions. */
typedef struct
{
  const char *quantity;
  double (*compute) (const CheckRow *row);
} CheckQuantity;

/** Input "key=value" of @row; the test fails if it is not there. */
double check_input (const CheckRow *row, const char *key);

/** The same, or @otherwise. */
double check_input_or (const CheckRow *row, const char *key, double otherwise);

/** Text of an input, NULL if not there. (transfer full) */
char *check_input_text (const CheckRow *row, const char *key);

/** Numbers of "key=1 2 3x4": 1, 2 and four times 3. (transfer full) (element-type
 * double) */
GArray *check_input_list (const CheckRow *row, const char *key);

/**
 * check_rows_run:
 * @room: rows of this room are run
 * @quantities: how, @n_quantities of them
 *
 * Prints how many rows were run; for each that fails its id, inputs, what was
 * got and expected, tolerance and source. Fails if a row fails, if the room
 * has no rows, or if a row's quantity is not among @quantities.
 */
void check_rows_run (const char *room, const CheckQuantity *quantities,
                     guint n_quantities);
