/* SPDX-License-Identifier: MIT */
#include <slopewright/base/job.h>

SwFace *
sw_face_new (const char *id)
{
  SwFace *face = g_new0 (SwFace, 1);

  face->id = g_strdup (id != NULL ? id : "");
  face->name = g_strdup ("");
  face->soil_id = g_strdup ("");
  face->obtained = SW_OBTAINED_DRAWN;
  return face;
}

static SwPoint *
points_copy (const SwPoint *points, guint count)
{
  return g_memdup2 (points, count * sizeof *points);
}

static void
clear_further (SwFace *face)
{
  for (guint i = 0; i < face->n_further; i++)
    g_free (face->further[i].section);
  g_clear_pointer (&face->further, g_free);
  face->n_further = 0;
}

SwFace *
sw_face_copy (const SwFace *face)
{
  SwFace *copy = g_memdup2 (face, sizeof *face);

  copy->id = g_strdup (face->id);
  copy->name = g_strdup (face->name);
  copy->soil_id = g_strdup (face->soil_id);
  copy->section = points_copy (face->section, face->n_section);
  copy->outline = points_copy (face->outline, face->n_outline);
  copy->further = g_memdup2 (face->further, face->n_further * sizeof *face->further);
  for (guint i = 0; i < face->n_further; i++)
    copy->further[i].section = points_copy (face->further[i].section, face->n_section);
  return copy;
}

void
sw_face_free (SwFace *face)
{
  if (face == NULL)
    return;
  g_free (face->id);
  g_free (face->name);
  g_free (face->soil_id);
  g_free (face->section);
  g_free (face->outline);
  clear_further (face);
  g_free (face);
}

void
sw_face_set_section (SwFace *face, const SwPoint *points, guint count)
{
  SwPoint *old = face->section;

  clear_further (face);
  face->section = points_copy (points, count);
  face->n_section = count;
  face->crest = 0;
  face->toe = count > 0 ? count - 1 : 0;
  g_free (old);
}

void
sw_face_add_section (SwFace *face, double along_m, const SwPoint *points)
{
  guint at = face->n_further;

  face->further = g_renew (SwCrossSection, face->further, face->n_further + 1);
  for (; at > 0 && face->further[at - 1].along_m > along_m; at--)
    face->further[at] = face->further[at - 1];
  face->further[at] = (SwCrossSection){ along_m, points_copy (points, face->n_section) };
  face->n_further++;
}

void
sw_face_set_outline (SwFace *face, const SwPoint *points, guint count)
{
  SwPoint *old = face->outline;

  face->outline = points_copy (points, count);
  face->n_outline = count;
  g_free (old);
}

void
sw_text_set (char **place, const char *text)
{
  char *old = *place;

  *place = g_strdup (text != NULL ? text : "");
  g_free (old);
}
