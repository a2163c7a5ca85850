/* SPDX-License-Identifier: MIT */
#include "points-paste.h"

#include <glib/gi18n.h>
#include <string.h>

#include "length-text.h"

/* Where the second number begins; the separator becomes the end of the first. */
static char *
part_line (char *line)
{
  char *mark = strpbrk (line, "\t;");

  if (mark == NULL)
    mark = strstr (line, ", ");
  if (mark == NULL && strchr (line, ' ') != NULL)
    mark = strchr (line, ' ');
  if (mark == NULL && strchr (line, ',') == strrchr (line, ','))
    mark = strchr (line, ',');
  if (mark == NULL)
    return NULL;
  *mark = '\0';
  return mark + 1;
}

static gboolean
read_line (char *line, SwNumberStyle style, SwPoint *point, char **problem)
{
  char *second;

  g_strstrip (line);
  second = part_line (line);
  if (second == NULL)
    {
      *problem = g_strdup (_ ("two numbers are expected"));
      return FALSE;
    }
  return sw_length_parse (line, SW_UNIT_M, style, &point->x_m, problem)
         && sw_length_parse (second, SW_UNIT_M, style, &point->y_m, problem);
}

/* A word, but no unit: numbers under "ft" are not taken for metres in silence. */
static gboolean
is_title (const char *cell, SwNumberStyle style)
{
  const char *last = strrchr (cell, ' ');
  g_autofree char *measured = g_strconcat ("1 ", last != NULL ? last + 1 : cell, NULL);
  g_autofree char *problem = NULL;
  double length_m;

  return *cell != '\0' && strpbrk (cell, "0123456789()[]/") == NULL
         && !sw_length_parse (measured, SW_UNIT_M, style, &length_m, &problem);
}

/* Spreadsheets name their columns in the first row. */
static gboolean
is_heading (const char *line, SwNumberStyle style)
{
  g_autofree char *first = g_strdup (line);
  char *second = part_line (first);

  return second != NULL && is_title (g_strstrip (first), style)
         && is_title (g_strstrip (second), style);
}

static char *
list_problem (const GArray *points, SwPointList list)
{
  gboolean section = list.kind == SW_LIST_SECTION;
  guint least = section ? 2 : 3;

  if (points->len < least)
    return g_strdup_printf (_ ("At least %u points are expected; %u were found."), least,
                            points->len);
  for (guint i = 1; section && i < points->len; i++)
    if (g_array_index (points, SwPoint, i).x_m
        < g_array_index (points, SwPoint, i - 1).x_m + SW_POINT_GAP_M)
      return g_strdup_printf (_ ("Point %u is not farther out than point %u."), i + 1, i);
  return NULL;
}

GArray *
sw_points_from_text (const char *text, SwNumberStyle style, SwPointList list,
                     char **problem)
{
  g_autoptr (GArray) points = g_array_new (FALSE, FALSE, sizeof (SwPoint));
  g_auto (GStrv) lines = g_strsplit (text, "\n", -1);
  gboolean begun = FALSE;

  for (guint i = 0; lines[i] != NULL; i++)
    {
      g_autofree char *wrong = NULL;
      SwPoint point;

      if (*g_strstrip (lines[i]) == '\0')
        continue;
      if (!begun && is_heading (lines[i], style))
        {
          begun = TRUE;
          continue;
        }
      begun = TRUE;
      if (!read_line (lines[i], style, &point, &wrong))
        {
          *problem = g_strdup_printf (_ ("Line %u: %s"), i + 1, wrong);
          return NULL;
        }
      g_array_append_val (points, point);
    }
  *problem = list_problem (points, list);
  return *problem == NULL ? g_steal_pointer (&points) : NULL;
}
