/* SPDX-License-Identifier: MIT */
#pragma once

#include "flow.h"

typedef enum
{
  SW_CELL_TEXT,   /* may wrap */
  SW_CELL_LINE,   /* never wraps */
  SW_CELL_NUMBER, /* the same, set to the right */
  SW_CELL_CHECK,  /* a box to tick, unless the row has a text there */
  SW_CELL_BLANK   /* to write in; the text, small in its upper corner, is what is known */
} SwCellKind;

typedef struct
{
  const char *head; /* markup; "" for none */
  SwCellKind kind;
  double width_mm; /* 0: by its contents */
} SwColumn;

/** A table being filled; its widths come from all of its rows. */
typedef struct SwTable SwTable;

SwTable *sw_table_new (const SwPen *pen, SwStyle style, const SwColumn *columns,
                       guint n_columns);
void sw_table_free (SwTable *table);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (SwTable, sw_table_free)

/** Lines between the columns too: for tables that people write in. */
void sw_table_set_ruled (SwTable *table);
/** Never divided between two pages. */
void sw_table_set_whole (SwTable *table);
/** Rows are at least so high. */
void sw_table_set_row_mm (SwTable *table, double height_mm);

/** Add a row: as many markup strings as columns, then NULL. Copied. */
void sw_table_row (SwTable *table, ...) G_GNUC_NULL_TERMINATED;
/** The same, bold above a heavier line. */
void sw_table_total (SwTable *table, ...) G_GNUC_NULL_TERMINATED;
/** The row added last leads to the page with that title. */
void sw_table_link (SwTable *table, const char *target);
/** A row of one cell over the whole width that names the rows below it. */
void sw_table_band (SwTable *table, const char *markup);

guint sw_table_n_rows (const SwTable *table);

/** Set the table in @flow's width and free it. */
void sw_flow_table (SwFlow *flow, SwTable *table);
