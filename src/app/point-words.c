/* SPDX-License-Identifier: MIT */
#include "point-words.h"

#include <glib/gi18n.h>
#include <math.h>

char *
sw_point_label (const SwFace *face, SwPointList list, guint index)
{
  guint count = sw_points_count (face, list);

  if (list == SW_POINTS_OUTLINE)
    return g_strdup_printf (_ ("Outline point %u of %u"), index + 1, count);
  if (index == face->crest)
    return g_strdup_printf (_ ("Section point %u of %u, crest"), index + 1, count);
  if (index == face->toe)
    return g_strdup_printf (_ ("Section point %u of %u, toe"), index + 1, count);
  return g_strdup_printf (_ ("Section point %u of %u"), index + 1, count);
}

static char *
gradient_between (SwPoint a, SwPoint b, SwNumberStyle style)
{
  return sw_gradient_text (atan2 (fabs (a.y_m - b.y_m), fabs (b.x_m - a.x_m)), style);
}

char *
sw_point_description (const SwFace *face, SwPointList list, guint index,
                      SwNumberStyle style)
{
  SwPoint p = sw_points_get (face, list, index);
  g_autofree char *x = sw_quantity_text (p.x_m, SW_UNIT_M, style);
  g_autofree char *y = sw_quantity_text (p.y_m, SW_UNIT_M, style);
  g_autofree char *gradient = NULL;

  if (list == SW_POINTS_OUTLINE)
    return g_strdup_printf (_ ("%s along, %s out"), x, y);
  if (index + 1 >= face->n_section)
    return g_strdup_printf (_ ("%s out, %s up"), x, y);
  gradient = gradient_between (p, face->section[index + 1], style);
  return g_strdup_printf (_ ("%s out, %s up; to the next point %s"), x, y, gradient);
}

char *
sw_face_description (const SwFace *face, SwNumberStyle style)
{
  if (face->toe >= face->n_section || face->crest >= face->toe)
    return g_strdup_printf (_ ("Face %s"), face->id);

  SwPoint crest = face->section[face->crest], toe = face->section[face->toe];
  g_autofree char *fall = sw_quantity_text (crest.y_m - toe.y_m, SW_UNIT_M, style);
  g_autofree char *run = sw_quantity_text (toe.x_m - crest.x_m, SW_UNIT_M, style);
  g_autofree char *gradient = gradient_between (crest, toe, style);

  return g_strdup_printf (_ ("Face %s falls %s over %s: %s"), face->id, fall, run,
                          gradient);
}
