/* SPDX-License-Identifier: MIT */
#include "mark-words.h"

#include <glib/gi18n.h>
#include <string.h>

#include "point-words.h"

/* "A/run/7" with @kind "/run/": 7. -1 for another kind. */
static gint64
number_of (const char *object, const char *kind)
{
  const char *at = strstr (object, kind);

  return at != NULL ? g_ascii_strtoll (at + strlen (kind), NULL, 10) : -1;
}

static char *
run_text (const SwRun *run, SwNumberStyle style)
{
  g_autofree char *label = sw_run_label (run);
  g_autofree char *cut = sw_quantity_text (run->cut_m, SW_UNIT_M, style);

  return g_strdup_printf (ngettext ("Run %s: cut %s, in %u piece",
                                    "Run %s: cut %s, in %u pieces", run->n_pieces),
                          label, cut, run->n_pieces);
}

static char *
trench_text (const SwTrench *trench, SwNumberStyle style)
{
  static const char *const words[] = {
    [SW_TRENCH_KEY] = N_ ("Key trench: %s long, %s deep, %s wide"),
    [SW_TRENCH_SLOT] = N_ ("Check slot: %s long, %s deep, %s wide"),
    [SW_TRENCH_TOE] = N_ ("Toe trench: %s long, %s deep, %s wide"),
  };
  g_autofree char *length = sw_quantity_text (trench->length_m, SW_UNIT_M, style);
  g_autofree char *depth =
      sw_quantity_limit_text (trench->depth_m, SW_UNIT_SMALL_M, SW_LIMIT_LEAST, style);
  g_autofree char *width =
      sw_quantity_limit_text (trench->width_m, SW_UNIT_SMALL_M, SW_LIMIT_LEAST, style);

  return g_strdup_printf (_ (words[trench->kind]), length, depth, width);
}

static char *
shape_text (const SwFace *face, SwPointList list, SwNumberStyle style)
{
  g_autofree char *label = sw_point_label (face, list, SW_WHOLE);
  g_autofree char *words = sw_point_description (face, list, SW_WHOLE, style);

  return g_strdup_printf (_ ("%s: %s"), label, words);
}

char *
sw_mark_text (const SwResult *result, guint face, const char *object, SwNumberStyle style)
{
  const SwFace *of_job = g_ptr_array_index (result->job->faces, face);
  const SwFaceLayout *laid;
  gint64 run = number_of (object, "/run/"), trench = number_of (object, "/trench/");
  SwPointList list;

  if (sw_points_of_object (of_job, object, &list))
    return shape_text (of_job, list, style);
  if (result->layout == NULL)
    return NULL;
  laid = &result->layout->faces[face];
  if (run >= 0 && run < laid->n_runs)
    return run_text (&laid->runs[run], style);
  if (trench >= 0 && trench < laid->n_trenches)
    return trench_text (&laid->trenches[trench], style);
  return NULL;
}
