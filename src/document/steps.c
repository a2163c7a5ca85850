/* SPDX-License-Identifier: MIT */
#include "steps.h"

/* Values kept; the oldest go first. A job is some tens of kilobytes. */
#define DEPTH 500

typedef struct
{
  SwJob *job;
  char *label; /* what led here from the value before */
  char *key;
} Step;

struct SwSteps
{
  GPtrArray *values; /* (element-type Step) */
  guint at;
  gboolean open; /* the last step may still be merged into */
  SwJob *saved;  /* (nullable): the very value that stands in the file */
};

static void
free_step (gpointer data)
{
  Step *step = data;

  sw_job_unref (step->job);
  g_free (step->label);
  g_free (step->key);
  g_free (step);
}

static Step *
step_new (const SwJob *job, const char *label, const char *key)
{
  Step *step = g_new0 (Step, 1);

  step->job = sw_job_ref (job);
  step->label = g_strdup (label);
  step->key = g_strdup (key);
  return step;
}

static Step *
step_at (const SwSteps *steps, guint index)
{
  return g_ptr_array_index (steps->values, index);
}

SwSteps *
sw_steps_new (const SwJob *job)
{
  SwSteps *steps = g_new0 (SwSteps, 1);

  steps->values = g_ptr_array_new_with_free_func (free_step);
  g_ptr_array_add (steps->values, step_new (job, NULL, NULL));
  sw_steps_mark_saved (steps);
  return steps;
}

void
sw_steps_free (SwSteps *steps)
{
  if (steps == NULL)
    return;
  g_ptr_array_unref (steps->values);
  g_clear_pointer (&steps->saved, sw_job_unref);
  g_free (steps);
}

const SwJob *
sw_steps_job (const SwSteps *steps)
{
  return step_at (steps, steps->at)->job;
}

/* A merged gesture that ends where it began leaves no step behind. */
static void
drop_if_empty (SwSteps *steps)
{
  if (!sw_job_equal (step_at (steps, steps->at)->job,
                     step_at (steps, steps->at - 1)->job))
    return;
  g_ptr_array_set_size (steps->values, (int) steps->at);
  steps->at--;
  steps->open = FALSE;
}

static gboolean
may_merge (const SwSteps *steps, const char *key)
{
  return steps->open && key != NULL && steps->at > 0
         && g_strcmp0 (step_at (steps, steps->at)->key, key) == 0
         && step_at (steps, steps->at)->job != steps->saved;
}

gboolean
sw_steps_commit (SwSteps *steps, const SwJob *job, const char *label, const char *key)
{
  if (sw_job_equal (job, sw_steps_job (steps)))
    return FALSE;
  g_ptr_array_set_size (steps->values, (int) steps->at + 1);
  if (may_merge (steps, key))
    {
      Step *step = step_at (steps, steps->at);

      sw_job_unref (step->job);
      step->job = sw_job_ref (job);
      drop_if_empty (steps);
      return TRUE;
    }
  g_ptr_array_add (steps->values, step_new (job, label, key));
  steps->at++;
  steps->open = TRUE;
  if (steps->values->len > DEPTH)
    {
      g_ptr_array_remove_index (steps->values, 0);
      steps->at--;
    }
  return TRUE;
}

void
sw_steps_close (SwSteps *steps)
{
  steps->open = FALSE;
}

gboolean
sw_steps_undo (SwSteps *steps)
{
  steps->open = FALSE;
  if (steps->at == 0)
    return FALSE;
  steps->at--;
  return TRUE;
}

gboolean
sw_steps_redo (SwSteps *steps)
{
  steps->open = FALSE;
  if (steps->at + 1 == steps->values->len)
    return FALSE;
  steps->at++;
  return TRUE;
}

const char *
sw_steps_undo_label (const SwSteps *steps)
{
  return steps->at > 0 ? step_at (steps, steps->at)->label : NULL;
}

const char *
sw_steps_redo_label (const SwSteps *steps)
{
  return steps->at + 1 < steps->values->len ? step_at (steps, steps->at + 1)->label
                                            : NULL;
}

void
sw_steps_mark_saved (SwSteps *steps)
{
  SwJob *now = sw_job_ref (sw_steps_job (steps));

  g_clear_pointer (&steps->saved, sw_job_unref);
  steps->saved = now;
  steps->open = FALSE;
}

void
sw_steps_forget_saved (SwSteps *steps)
{
  g_clear_pointer (&steps->saved, sw_job_unref);
  steps->open = FALSE;
}

gboolean
sw_steps_is_saved (const SwSteps *steps)
{
  return sw_steps_job (steps) == steps->saved;
}
