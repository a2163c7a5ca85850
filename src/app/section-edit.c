/* SPDX-License-Identifier: MIT */
#include "section-edit.h"

#include <math.h>
#include <slopewright/ground/ground.h>
#include <string.h>

double
sw_section_along_m (const SwFace *face, SwPointList list)
{
  return list.which == 0 ? face->section_along_m : face->further[list.which - 1].along_m;
}

gboolean
sw_section_place_taken (const SwFace *face, SwPointList list, double along_m)
{
  for (SwPointList other = SW_POINTS_SECTION; sw_points_exist (face, other);
       other.which++)
    if (!sw_points_same (other, list)
        && fabs (sw_section_along_m (face, other) - along_m) < SW_SECTION_GAP_M)
      return TRUE;
  return FALSE;
}

gboolean
sw_section_can_add (const SwFace *face)
{
  return face->crest_form == SW_CREST_STRAIGHT;
}

/* The ground at @along_m, break by break; the face's own section where there is no ground. */
static SwPoint *
ruled_section (const SwFace *face, double along_m)
{
  g_autoptr (SwGround) ground = NULL;
  SwPoint *section = g_memdup2 (face->section, face->n_section * sizeof *section);

  if (sw_ground_new (face, &ground) != SW_OK)
    return section;
  for (guint i = 0; i < face->n_section; i++)
    {
      double out_m = sw_ground_break_out_m (ground, i, along_m);
      section[i] =
          (SwPoint){ out_m, sw_ground_up_m (ground, (SwPoint){ along_m, out_m }) };
    }
  return section;
}

static SwPointList
list_at (const SwFace *face, double along_m)
{
  SwPointList list = SW_POINTS_SECTION;

  while (fabs (sw_section_along_m (face, list) - along_m) >= SW_SECTION_GAP_M)
    list.which++;
  return list;
}

SwJob *
sw_section_add (const SwJob *job, guint face, double along_m, SwPointList *added)
{
  SwJob *copy = sw_job_copy (job);
  SwFace *edited = g_ptr_array_index (copy->faces, face);
  g_autofree SwPoint *section = ruled_section (edited, along_m);

  sw_face_add_section (edited, along_m, section);
  *added = list_at (edited, along_m);
  return copy;
}

static void
drop_further (SwFace *face, guint at)
{
  g_free (face->further[at].section);
  face->n_further--;
  memmove (face->further + at, face->further + at + 1,
           (face->n_further - at) * sizeof *face->further);
}

SwJob *
sw_section_move (const SwJob *job, guint face, SwPointList list, double along_m,
                 SwPointList *moved)
{
  SwJob *copy = sw_job_copy (job);
  SwFace *edited = g_ptr_array_index (copy->faces, face);

  if (list.which == 0)
    edited->section_along_m = along_m;
  else
    {
      SwCrossSection taken = edited->further[list.which - 1];
      g_autofree SwPoint *section =
          g_memdup2 (taken.section, edited->n_section * sizeof *section);

      drop_further (edited, list.which - 1);
      sw_face_add_section (edited, along_m, section);
    }
  *moved = list_at (edited, along_m);
  return copy;
}

SwJob *
sw_section_remove (const SwJob *job, guint face, SwPointList list)
{
  const SwFace *now = g_ptr_array_index (job->faces, face);
  SwJob *copy;
  SwFace *edited;

  if (now->n_further == 0)
    return NULL;
  copy = sw_job_copy (job);
  edited = g_ptr_array_index (copy->faces, face);
  if (list.which == 0)
    {
      memcpy (edited->section, edited->further[0].section,
              edited->n_section * sizeof *edited->section);
      edited->section_along_m = edited->further[0].along_m;
    }
  drop_further (edited, list.which == 0 ? 0 : list.which - 1);
  return copy;
}
