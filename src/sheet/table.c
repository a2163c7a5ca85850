/* SPDX-License-Identifier: MIT */
#include "table.h"
#include <stdarg.h>

#define PAD_X_MM 1.3
#define PAD_Y_MM 0.9
#define GUTTER_MM 1.8
#define CHECK_BOX_MM 3.6
/* A word wider than this share of the table is broken. */
#define WORD_SHARE 0.35
/* A row with more lines than this may be cut by the end of a page. */
#define TALLEST_CELL_LINES 24

typedef enum
{
  ROW_PLAIN,
  ROW_TOTAL,
  ROW_BAND
} RowKind;

typedef struct
{
  RowKind kind;
  char **cells; /* one a column; a band has one */
  char *target; /* title of the page that the row leads to; may be NULL */
} Row;

struct SwTable
{
  SwPen pen;
  SwStyle style;
  SwColumn *columns;
  guint n_columns;
  GArray *rows;
  gboolean ruled, whole;
  double row_mm;
};

static void
clear_row (gpointer data)
{
  Row *row = data;

  g_strfreev (row->cells);
  g_free (row->target);
}

SwTable *
sw_table_new (const SwPen *pen, SwStyle style, const SwColumn *columns, guint n_columns)
{
  SwTable *table = g_new0 (SwTable, 1);

  table->pen = *pen;
  table->style = style;
  table->columns = g_memdup2 (columns, n_columns * sizeof *columns);
  for (guint i = 0; i < n_columns; i++)
    table->columns[i].head = g_strdup (columns[i].head);
  table->n_columns = n_columns;
  table->rows = g_array_new (FALSE, TRUE, sizeof (Row));
  g_array_set_clear_func (table->rows, clear_row);
  return table;
}

void
sw_table_free (SwTable *table)
{
  if (table == NULL)
    return;
  for (guint i = 0; i < table->n_columns; i++)
    g_free ((char *) table->columns[i].head);
  g_free (table->columns);
  g_array_unref (table->rows);
  g_free (table);
}

void
sw_table_set_ruled (SwTable *table)
{
  table->ruled = TRUE;
}

void
sw_table_set_whole (SwTable *table)
{
  table->whole = TRUE;
}

void
sw_table_set_row_mm (SwTable *table, double height_mm)
{
  table->row_mm = height_mm * table->pen.scale;
}

guint
sw_table_n_rows (const SwTable *table)
{
  return table->rows->len;
}

static void
add_row (SwTable *table, RowKind kind, va_list cells)
{
  Row row = { .kind = kind, .cells = g_new0 (char *, table->n_columns + 1) };

  for (guint i = 0; i < table->n_columns; i++)
    {
      const char *cell = va_arg (cells, const char *);

      g_assert (cell != NULL);
      row.cells[i] = kind == ROW_TOTAL && *cell != '\0' ? g_strdup_printf ("*%s*", cell)
                                                        : g_strdup (cell);
    }
  g_array_append_val (table->rows, row);
}

void
sw_table_row (SwTable *table, ...)
{
  va_list cells;

  va_start (cells, table);
  add_row (table, ROW_PLAIN, cells);
  va_end (cells);
}

void
sw_table_total (SwTable *table, ...)
{
  va_list cells;

  va_start (cells, table);
  add_row (table, ROW_TOTAL, cells);
  va_end (cells);
}

void
sw_table_link (SwTable *table, const char *target)
{
  Row *row = &g_array_index (table->rows, Row, table->rows->len - 1);

  g_free (row->target);
  row->target = g_strdup (target);
}

void
sw_table_band (SwTable *table, const char *markup)
{
  Row row = { .kind = ROW_BAND, .cells = g_new0 (char *, 2) };

  row.cells[0] = g_strdup_printf ("*%s*", markup);
  g_array_append_val (table->rows, row);
}

static SwStyle
cell_style (const SwTable *table, SwCellKind kind)
{
  return kind == SW_CELL_BLANK ? SW_STYLE_TINY : table->style;
}

/* Words after a number keep further off it: both would read as one. */
static double
left_pad_mm (const SwTable *table, guint column)
{
  gboolean after_number = column > 0 && !table->ruled
                          && table->columns[column - 1].kind == SW_CELL_NUMBER
                          && (table->columns[column].kind == SW_CELL_TEXT
                              || table->columns[column].kind == SW_CELL_LINE);

  return after_number ? PAD_X_MM + GUTTER_MM : PAD_X_MM;
}

/* What a cell has beside its text. */
static double
pads_mm (const SwTable *table, guint column)
{
  return left_pad_mm (table, column) + PAD_X_MM;
}

/* Width of a text in one line, and of its widest word. */
static void
measure_cell (const SwTable *table, SwStyle style, const char *markup, double *whole_mm,
              double *word_mm)
{
  g_autoptr (SwTextBlock) block =
      sw_text_block_new (&table->pen, style, markup, G_MAXDOUBLE);

  *whole_mm = MAX (*whole_mm, block->widest_mm);
  *word_mm = MAX (*word_mm, sw_text_word_mm (&table->pen, style, markup));
}

static void
measure_column (const SwTable *table, guint column, double *whole_mm, double *word_mm)
{
  g_autofree char *head = g_strdup_printf ("*%s*", table->columns[column].head);
  double lines_mm = 0.0;

  *whole_mm = *word_mm = 0.0;
  if (table->columns[column].kind == SW_CELL_CHECK)
    *whole_mm = *word_mm = CHECK_BOX_MM * table->pen.scale;
  if (*table->columns[column].head != '\0')
    measure_cell (table, table->style, head, whole_mm, word_mm);
  for (guint i = 0; i < table->rows->len; i++)
    {
      const Row *row = &g_array_index (table->rows, Row, i);

      if (row->kind != ROW_BAND && table->columns[column].kind != SW_CELL_CHECK)
        measure_cell (table, cell_style (table, table->columns[column].kind),
                      row->cells[column], &lines_mm, word_mm);
    }
  *whole_mm = MAX (*whole_mm, lines_mm);
  /* A number is one word: "12.50 m" must not be cut at its space. */
  if (table->columns[column].kind == SW_CELL_NUMBER
      || table->columns[column].kind == SW_CELL_LINE)
    *word_mm = MAX (*word_mm, lines_mm);
  *whole_mm += pads_mm (table, column);
  *word_mm += pads_mm (table, column);
}

/*
 * Every column gets the width of its widest word; what is left goes to the
 * columns by what they lack for one line, and when all have that, by their
 * width. Columns of a stated width keep it; a word too wide for any table is broken.
 */
static double *
column_widths (const SwTable *table, double total_mm)
{
  double *widths = g_new0 (double, table->n_columns);
  g_autofree double *wishes = g_new0 (double, table->n_columns);
  double least_mm = 0.0, wish_mm = 0.0, flexible_mm = 0.0;

  for (guint i = 0; i < table->n_columns; i++)
    {
      double whole_mm, word_mm, fixed_mm = table->columns[i].width_mm * table->pen.scale;

      measure_column (table, i, &whole_mm, &word_mm);
      if (table->columns[i].kind == SW_CELL_TEXT)
        word_mm = MIN (word_mm, WORD_SHARE * total_mm);
      widths[i] = fixed_mm > 0.0 ? fixed_mm : word_mm;
      wishes[i] = fixed_mm > 0.0 ? 0.0 : whole_mm - word_mm;
      least_mm += widths[i];
      wish_mm += wishes[i];
      if (fixed_mm <= 0.0 && table->columns[i].kind != SW_CELL_CHECK)
        flexible_mm += whole_mm;
    }
  double spare_mm = total_mm - least_mm;
  double granted = wish_mm > 0.0 ? CLAMP (spare_mm / wish_mm, 0.0, 1.0) : 0.0;
  double rest_mm = spare_mm - granted * wish_mm;

  for (guint i = 0; i < table->n_columns; i++)
    {
      gboolean flexible =
          table->columns[i].width_mm <= 0.0 && table->columns[i].kind != SW_CELL_CHECK;
      double whole_mm = widths[i] + wishes[i];

      widths[i] += granted * wishes[i];
      if (spare_mm < 0.0)
        widths[i] *= total_mm / least_mm;
      else if (flexible && rest_mm > 0.0)
        widths[i] += rest_mm * whole_mm / flexible_mm;
    }
  return widths;
}

/* What is needed to draw the rows of one table. */
typedef struct
{
  SwFlow *flow;
  const SwTable *table;
  const double *widths;
  double width_mm;
  SwFigure *head;
} Setting;

static double
pad_y_mm (const SwTable *table)
{
  return sw_pen_gap_mm (&table->pen, PAD_Y_MM);
}

static void
draw_rules (const Setting *s, SwFigure *figure, const Row *row)
{
  double x_mm = 0.0, height_mm = figure->height_mm;
  SwRole below = SW_ROLE_TABLE_RULE;

  sw_figure_segment (figure, below, 0.0, height_mm, s->width_mm, height_mm);
  if (row != NULL && row->kind == ROW_TOTAL)
    sw_figure_segment (figure, SW_ROLE_FRAME, 0.0, 0.0, s->width_mm, 0.0);
  if (!s->table->ruled)
    return;
  if (s->head == NULL && row != NULL && row == &g_array_index (s->table->rows, Row, 0))
    sw_figure_segment (figure, below, 0.0, 0.0, s->width_mm, 0.0);
  for (guint i = 0; i <= s->table->n_columns; i++)
    {
      gboolean inner = i > 0 && i < s->table->n_columns;

      if (!inner || row == NULL || row->kind != ROW_BAND)
        sw_figure_segment (figure, below, x_mm, 0.0, x_mm, height_mm);
      if (i < s->table->n_columns)
        x_mm += s->widths[i];
    }
}

static void
draw_check_box (const Setting *s, SwFigure *figure, double x_mm, double width_mm)
{
  double side_mm = CHECK_BOX_MM * s->table->pen.scale;

  sw_figure_box (figure, SW_ROLE_FRAME, x_mm + (width_mm - side_mm) / 2.0,
                 (figure->height_mm - side_mm) / 2.0, side_mm, side_mm);
}

/* A box to tick says so; the rest of a cell that was divided has been said. */
static const char *
cell_words (SwCellKind kind, const SwTextBlock *block, guint first)
{
  if (first > 0)
    return "";
  return kind == SW_CELL_CHECK ? "☐" : block->text;
}

/* Lines [first, first + count) of every cell of a row as one slug. */
static SwFigure *
row_figure (const Setting *s, const Row *row, SwTextBlock *const *blocks, guint n_blocks,
            guint first, guint count)
{
  const SwPen *pen = &s->table->pen;
  double text_mm = count * sw_pen_line_mm (pen, s->table->style);
  double height_mm = MAX (text_mm + 2.0 * pad_y_mm (s->table), s->table->row_mm);
  SwFigure *figure = sw_figure_new (s->width_mm, height_mm);
  double x_mm = 0.0, y_mm = (height_mm - text_mm) / 2.0;

  if (row->kind == ROW_BAND)
    sw_figure_box (figure, SW_ROLE_TABLE_HEAD, 0.0, 0.0, s->width_mm, height_mm);
  sw_figure_tag (figure, SW_TAG_ROW, "");
  for (guint i = 0; i < n_blocks; i++)
    {
      SwCellKind kind = row->kind == ROW_BAND ? SW_CELL_TEXT : s->table->columns[i].kind;
      double cell_mm = row->kind == ROW_BAND ? s->width_mm : s->widths[i];

      if (kind == SW_CELL_CHECK && *blocks[i]->text != '\0')
        kind = SW_CELL_TEXT;
      if (row->target != NULL && i == n_blocks - 1)
        sw_figure_link (figure, 0.0, 0.0, s->width_mm, height_mm, row->target);
      sw_figure_tag (figure, row->kind == ROW_BAND ? SW_TAG_BAND : SW_TAG_CELL,
                     cell_words (kind, blocks[i], first));
      if (kind == SW_CELL_CHECK && first == 0)
        draw_check_box (s, figure, x_mm, cell_mm);
      else if (kind == SW_CELL_BLANK)
        sw_text_block_draw (pen, blocks[i], first, count, figure, SW_ROLE_MUTED,
                            x_mm + PAD_X_MM, pad_y_mm (s->table),
                            cell_mm - 2.0 * PAD_X_MM, SW_ALIGN_LEFT);
      else if (kind != SW_CELL_CHECK)
        sw_text_block_draw (pen, blocks[i], first, count, figure, SW_ROLE_TEXT,
                            x_mm + left_pad_mm (s->table, i), y_mm,
                            cell_mm - pads_mm (s->table, i),
                            kind == SW_CELL_NUMBER ? SW_ALIGN_RIGHT : SW_ALIGN_LEFT);
      sw_figure_untag (figure);
      x_mm += cell_mm;
    }
  sw_figure_untag (figure);
  draw_rules (s, figure, row);
  return figure;
}

static void
set_row (const Setting *s, const Row *row)
{
  guint n_cells = row->kind == ROW_BAND ? 1 : s->table->n_columns, n_lines = 1;
  g_autofree SwTextBlock **blocks = g_new0 (SwTextBlock *, n_cells);

  for (guint i = 0; i < n_cells; i++)
    {
      gboolean band = row->kind == ROW_BAND;
      double cell_mm = band ? s->width_mm : s->widths[i];
      SwStyle style =
          cell_style (s->table, band ? SW_CELL_TEXT : s->table->columns[i].kind);

      blocks[i] = sw_text_block_new (&s->table->pen, style, row->cells[i],
                                     cell_mm - pads_mm (s->table, i));
      n_lines = MAX (n_lines, blocks[i]->lines->len);
    }
  for (guint first = 0; first < n_lines; first += TALLEST_CELL_LINES)
    sw_flow_add_under (s->flow,
                       row_figure (s, row, blocks, n_cells, first,
                                   MIN (n_lines - first, TALLEST_CELL_LINES)),
                       s->head);
  for (guint i = 0; i < n_cells; i++)
    sw_text_block_free (blocks[i]);
}

/* The band of column heads, set at the bottom of the highest of them; NULL for none. */
static SwFigure *
head_figure (const Setting *s)
{
  const SwPen *pen = &s->table->pen;
  guint n_columns = s->table->n_columns, n_lines = 0;
  g_autofree SwTextBlock **blocks = g_new0 (SwTextBlock *, n_columns);
  double line_mm = sw_pen_line_mm (pen, s->table->style), x_mm = 0.0;
  SwFigure *figure = NULL;

  for (guint i = 0; i < n_columns; i++)
    {
      g_autofree char *markup = g_strdup_printf ("*%s*", s->table->columns[i].head);

      if (*s->table->columns[i].head == '\0')
        continue;
      blocks[i] = sw_text_block_new (pen, s->table->style, markup,
                                     s->widths[i] - pads_mm (s->table, i));
      n_lines = MAX (n_lines, blocks[i]->lines->len);
    }
  if (n_lines > 0)
    {
      figure = sw_figure_new (s->width_mm, n_lines * line_mm + 2.0 * pad_y_mm (s->table));
      sw_figure_box (figure, SW_ROLE_TABLE_HEAD, 0.0, 0.0, s->width_mm,
                     figure->height_mm);
      draw_rules (s, figure, NULL);
      sw_figure_tag (figure, SW_TAG_ROW, "head");
    }
  for (guint i = 0; i < n_columns; i++)
    {
      if (figure != NULL)
        sw_figure_tag (figure, SW_TAG_HEAD_CELL,
                       blocks[i] != NULL ? blocks[i]->text : "");
      if (blocks[i] != NULL)
        sw_text_block_draw (
            pen, blocks[i], 0, n_lines, figure, SW_ROLE_HEADING,
            x_mm + left_pad_mm (s->table, i),
            pad_y_mm (s->table) + (n_lines - blocks[i]->lines->len) * line_mm,
            s->widths[i] - pads_mm (s->table, i),
            s->table->columns[i].kind == SW_CELL_NUMBER ? SW_ALIGN_RIGHT : SW_ALIGN_LEFT);
      if (figure != NULL)
        sw_figure_untag (figure);
      sw_text_block_free (blocks[i]);
      x_mm += s->widths[i];
    }
  if (figure != NULL)
    sw_figure_untag (figure);
  return figure;
}

/* The last row of a table never stands alone on a page, nor a band without a row. */
static gboolean
keeps_next (const SwTable *table, guint index)
{
  if (index + 1 == table->rows->len)
    return FALSE;
  return table->whole || index + 2 == table->rows->len
         || g_array_index (table->rows, Row, index).kind == ROW_BAND;
}

void
sw_flow_table (SwFlow *flow, SwTable *table)
{
  double width_mm = sw_flow_width_mm (flow);
  g_autofree double *widths = column_widths (table, width_mm);
  Setting s = { flow, table, widths, width_mm, NULL };
  SwFigure *head = head_figure (&s);

  if (head != NULL)
    s.head = sw_flow_keep_head (flow, head);
  for (guint i = 0; i < table->rows->len; i++)
    {
      set_row (&s, &g_array_index (table->rows, Row, i));
      if (keeps_next (table, i))
        sw_flow_tie (flow);
    }
  sw_table_free (table);
}
