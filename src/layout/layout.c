/* SPDX-License-Identifier: MIT */
#include "layout-private.h"
#include <math.h>
#include <slopewright/base/count.h>

static void
clear_trench (gpointer data)
{
  g_free (((SwTrench *) data)->line);
}

static SwLaying *
laying_new (const SwJob *job, const SwPractice *practice, const SwFace *face)
{
  SwLaying *laying = g_new0 (SwLaying, 1);

  laying->face = face;
  laying->practice = practice;
  laying->job = job;
  laying->tiers = g_array_new (FALSE, TRUE, sizeof (SwTier));
  laying->regions = g_ptr_array_new_with_free_func ((GDestroyNotify) sw_region_free);
  laying->covers = g_ptr_array_new_with_free_func ((GDestroyNotify) sw_region_free);
  laying->stands = g_ptr_array_new_with_free_func ((GDestroyNotify) sw_region_free);
  laying->infills = g_ptr_array_new_with_free_func ((GDestroyNotify) g_array_unref);
  laying->cut_outs = g_array_new (FALSE, TRUE, sizeof (SwCutOut));
  laying->runs = g_array_new (FALSE, TRUE, sizeof (SwRun));
  laying->trenches = g_array_new (FALSE, TRUE, sizeof (SwTrench));
  g_array_set_clear_func (laying->trenches, clear_trench);
  laying->pins = g_array_new (FALSE, TRUE, sizeof (SwPinPlace));
  return laying;
}

static void
laying_free (gpointer data)
{
  SwLaying *laying = data;

  g_clear_pointer (&laying->ground, sw_ground_free);
  g_clear_pointer (&laying->outline, sw_region_free);
  g_clear_pointer (&laying->tiers, g_array_unref);
  g_clear_pointer (&laying->runs, g_array_unref);
  g_clear_pointer (&laying->trenches, g_array_unref);
  g_clear_pointer (&laying->pins, g_array_unref);
  g_clear_pointer (&laying->cut_outs, g_array_unref);
  g_ptr_array_unref (laying->regions);
  g_ptr_array_unref (laying->covers);
  g_ptr_array_unref (laying->stands);
  g_ptr_array_unref (laying->infills);
  sw_region_free (laying->obstacles);
  sw_region_free (laying->deductible);
  g_free (laying);
}

/* Ground that turns further would lie over itself. */
static SwStatus
check_turn (const SwFace *face, const SwRegion *outline)
{
  SwBox box = sw_region_box (outline);

  return face->crest_form != SW_CREST_STRAIGHT
                 && sw_ticks (box.x1_m - box.x0_m)
                        > sw_ticks (sw_face_full_circle_m (face))
             ? SW_E_ROUND
             : SW_OK;
}

static SwStatus
lay_ground (SwLaying *laying)
{
  const SwFace *face = laying->face;
  SwStatus status = sw_ground_new (face, &laying->ground);

  if (status == SW_OK)
    status = sw_region_new (face->outline, face->n_outline, &laying->outline);
  if (status == SW_OK)
    status = check_turn (face, laying->outline);
  if (status == SW_OK)
    status = sw_lay_obstacles (laying);
  if (status == SW_OK)
    status = sw_lay_tiers (laying);
  if (status == SW_OK)
    status = sw_lay_runs (laying);
  if (status == SW_OK)
    sw_lay_trenches (laying);
  return status;
}

/* Hand over what the first half of the work made. */
static void
take_ground (SwLaying *laying, SwFaceLayout *out)
{
  laying->out = out;
  out->face = laying->face;
  out->n_obstacles = laying->stands->len;
  out->obstacles = sw_place_obstacles (laying);
  out->n_cut_outs = laying->cut_outs->len;
  out->cut_outs = (SwCutOut *) g_array_free (g_steal_pointer (&laying->cut_outs), FALSE);
  out->ground = g_steal_pointer (&laying->ground);
  out->n_tiers = laying->tiers->len;
  out->n_runs = laying->runs->len;
  out->n_trenches = laying->trenches->len;
  out->tiers = (SwTier *) g_array_free (g_steal_pointer (&laying->tiers), FALSE);
  out->runs = (SwRun *) g_array_free (g_steal_pointer (&laying->runs), FALSE);
  out->trenches = (SwTrench *) g_array_free (g_steal_pointer (&laying->trenches), FALSE);
}

static void
take_pins (SwLaying *laying)
{
  SwFaceLayout *out = laying->out;

  out->n_pins = laying->pins->len;
  out->pins = (SwPinPlace *) g_array_free (g_steal_pointer (&laying->pins), FALSE);
  for (gsize i = 0; i < out->n_pins; i++)
    {
      out->pins_by_role[out->pins[i].role]++;
      out->pin_lengths[out->pins[i].length].count++;
    }
}

static SwStatus
look_up (SwLayout *layout, int *bad_face)
{
  const SwJob *job = layout->job;
  SwStatus status = SW_OK;

  layout->practice = sw_job_practice (job, layout->catalogue);
  layout->blanket = sw_job_blanket (job, layout->catalogue);
  if (layout->practice == NULL || layout->blanket == NULL
      || (job->pin_id[0] != '\0'
          && sw_catalogue_pin (layout->catalogue, job->pin_id) == NULL))
    return SW_E_UNKNOWN_ID;
  for (guint i = 0; i < job->faces->len && status == SW_OK; i++)
    {
      const SwFace *face = g_ptr_array_index (job->faces, i);

      *bad_face = (int) i;
      if (sw_catalogue_soil (layout->catalogue, face->soil_id) == NULL)
        return SW_E_UNKNOWN_ID;
      status = sw_check_zones (layout, face);
    }
  if (status == SW_OK)
    *bad_face = -1;
  return status;
}

/* Numbers that would make a count endless are refused before anything is counted, whoever
 * made the job. */
static SwStatus
check_practice (const SwPractice *practice)
{
  for (guint i = 0; i < SW_PRACTICE_VALUE_COUNT; i++)
    {
      const SwPracticeKey *key = &sw_practice_keys[i];
      double value = sw_practice_get (practice, i);
      gboolean none = key->or_zero && value >= 0.0 && value <= 0.0;

      if (!isfinite (value) || (!none && (value < key->least || value > key->most)))
        return SW_E_RANGE;
    }
  return SW_OK;
}

static gboolean
is_roll (double width_m, double length_m)
{
  return isfinite (width_m) && isfinite (length_m) && width_m >= 0.1 && length_m >= 1.0;
}

static SwStatus
check_rolls (const SwJob *job)
{
  if (!is_roll (job->roll_width_m, job->roll_length_m))
    return SW_E_ROLL;
  if (job->surplus == SW_SURPLUS_NARROW
      && (!is_roll (job->narrow_width_m, job->narrow_length_m)
          || job->narrow_width_m >= job->roll_width_m))
    return SW_E_ROLL;
  for (guint i = 0; i < job->stock->len; i++)
    {
      const SwStockLine *line = &g_array_index (job->stock, SwStockLine, i);

      if (!(line->length_m > 0.0) || !isfinite (line->length_m)
          || (line->source == SW_STOCK_ON_HAND && line->count == 0))
        return SW_E_ROLL;
    }
  return SW_OK;
}

static SwStatus
lay_faces (SwLayout *layout, GPtrArray *layings, int *bad_face)
{
  SwStatus status = SW_OK;

  layout->n_faces = layout->job->faces->len;
  layout->faces = g_new0 (SwFaceLayout, layout->n_faces);
  for (guint i = 0; i < layout->n_faces; i++)
    {
      SwLaying *laying = laying_new (layout->job, layout->practice,
                                     g_ptr_array_index (layout->job->faces, i));

      g_ptr_array_add (layings, laying);
      *bad_face = (int) i;
      status = lay_ground (laying);
      if (status != SW_OK)
        return status;
      take_ground (laying, &layout->faces[i]);
      sw_lay_pin_lengths (layout, &layout->faces[i]);
    }
  *bad_face = -1;
  return layout->n_faces > 0 ? SW_OK : SW_E_EMPTY;
}

static SwStatus
lay (SwLayout *layout, int *bad_face)
{
  g_autoptr (GPtrArray) layings = g_ptr_array_new_with_free_func (laying_free);
  SwStatus status = look_up (layout, bad_face);

  if (status == SW_OK)
    status = check_practice (layout->practice);
  if (status == SW_OK)
    status = check_rolls (layout->job);
  if (status == SW_OK)
    status = lay_faces (layout, layings, bad_face);
  if (status == SW_OK)
    status = sw_lay_pieces (layout);
  for (guint i = 0; i < layings->len && status == SW_OK; i++)
    {
      SwLaying *laying = g_ptr_array_index (layings, i);

      sw_lay_pins (laying, layout->pieces);
      take_pins (laying);
    }
  return status;
}

SwStatus
sw_layout_new (const SwJob *job, const SwCatalogue *catalogue, SwLayout **layout,
               int *bad_face)
{
  g_autoptr (SwLayout) made = g_new0 (SwLayout, 1);
  int face = -1;
  SwStatus status;

  made->job = sw_job_ref (job);
  made->catalogue = catalogue;
  status = lay (made, &face);
  if (bad_face != NULL)
    *bad_face = status == SW_OK ? -1 : face;
  if (status == SW_OK)
    *layout = g_steal_pointer (&made);
  return status;
}

static void
clear_face (SwFaceLayout *face)
{
  sw_ground_free (face->ground);
  for (guint i = 0; i < face->n_trenches; i++)
    g_free (face->trenches[i].line);
  g_free (face->tiers);
  g_free (face->runs);
  g_free (face->trenches);
  g_free (face->pins);
  g_free (face->pin_lengths);
  g_free (face->obstacles);
  g_free (face->cut_outs);
}

void
sw_layout_free (SwLayout *layout)
{
  if (layout == NULL)
    return;
  for (guint i = 0; i < layout->n_faces; i++)
    clear_face (&layout->faces[i]);
  g_free (layout->faces);
  g_free (layout->pieces);
  g_free (layout->cut_rolls);
  sw_practice_free (layout->practice);
  sw_blanket_free (layout->blanket);
  sw_job_unref (layout->job);
  g_free (layout);
}
