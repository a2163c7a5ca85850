/* SPDX-License-Identifier: MIT */
#include "sw-stage.h"

#include "point-words.h"

struct _SwStage
{
  GObject parent_instance;
  SwDocument *document;
  const SwStock *stock;
  guint face;
  SwPointList lists[2]; /* looked at on plan, in the section */
  SwPointList list;     /* of the point selected */
  int selected;
  char *marked, *hovered;
  gboolean pointed, along_known;
  SwPoint plan;
  char *message;
  SwJob *told_of; /* the job as it stood when the message was told; NULL for none */
};

enum
{
  CHANGED,
  SELECTED,
  MARKED,
  HOVERED,
  POINTED,
  TOLD,
  N_SIGNALS
};

static guint signals[N_SIGNALS];

G_DEFINE_FINAL_TYPE (SwStage, sw_stage, G_TYPE_OBJECT)

static void
sw_stage_finalize (GObject *object)
{
  SwStage *stage = SW_STAGE (object);

  g_clear_object (&stage->document);
  g_free (stage->marked);
  g_free (stage->hovered);
  g_free (stage->message);
  g_clear_pointer (&stage->told_of, sw_job_unref);
  G_OBJECT_CLASS (sw_stage_parent_class)->finalize (object);
}

static void
sw_stage_class_init (SwStageClass *klass)
{
  static const char *const names[N_SIGNALS] = { "changed", "selected", "marked",
                                                "hovered", "pointed",  "told" };

  G_OBJECT_CLASS (klass)->finalize = sw_stage_finalize;
  for (guint i = 0; i < N_SIGNALS; i++)
    signals[i] = g_signal_new (names[i], SW_TYPE_STAGE, G_SIGNAL_RUN_LAST, 0, NULL, NULL,
                               NULL, G_TYPE_NONE, 0);
}

static void
forget_lists (SwStage *stage)
{
  stage->lists[FALSE] = SW_POINTS_OUTLINE;
  stage->lists[TRUE] = SW_POINTS_SECTION;
  stage->list = SW_POINTS_SECTION;
  stage->selected = -1;
}

static void
sw_stage_init (SwStage *stage)
{
  forget_lists (stage);
}

/* What was told of the job before is no longer to be read beside this one. */
static void
forget_message (SwStage *stage)
{
  if (stage->told_of != NULL
      && stage->told_of != sw_document_committed (stage->document))
    sw_stage_tell (stage, "");
}

/* Undo may take away the face shown, the list or the point selected. */
static void
on_document_changed (SwStage *stage)
{
  guint count = sw_stage_job (stage)->faces->len;

  if (stage->face >= count)
    stage->face = count - 1;
  for (guint i = 0; i < G_N_ELEMENTS (stage->lists); i++)
    if (!sw_points_exist (sw_stage_face (stage), stage->lists[i]))
      stage->lists[i] = i ? SW_POINTS_SECTION : SW_POINTS_OUTLINE;
  if (!sw_points_exist (sw_stage_face (stage), stage->list)
      || stage->selected >= (int) sw_points_count (sw_stage_face (stage), stage->list))
    sw_stage_select (stage, stage->lists[stage->list.kind == SW_LIST_SECTION], -1);
  forget_message (stage);
  g_signal_emit (stage, signals[CHANGED], 0);
}

SwStage *
sw_stage_new (SwDocument *document, const SwStock *stock)
{
  SwStage *stage = g_object_new (SW_TYPE_STAGE, NULL);

  stage->document = g_object_ref (document);
  stage->stock = stock;
  g_signal_connect_object (document, "changed", G_CALLBACK (on_document_changed), stage,
                           G_CONNECT_SWAPPED);
  return stage;
}

SwDocument *
sw_stage_document (SwStage *stage)
{
  return stage->document;
}

const SwStock *
sw_stage_stock (SwStage *stage)
{
  return stage->stock;
}

const SwJob *
sw_stage_job (SwStage *stage)
{
  return sw_document_job (stage->document);
}

const SwResult *
sw_stage_result (SwStage *stage)
{
  return sw_document_result (stage->document);
}

SwNumberStyle
sw_stage_style (SwStage *stage)
{
  return sw_stock_style (stage->stock, sw_stage_job (stage)->units);
}

guint
sw_stage_face_index (SwStage *stage)
{
  return stage->face;
}

const SwFace *
sw_stage_face (SwStage *stage)
{
  return g_ptr_array_index (sw_stage_job (stage)->faces, stage->face);
}

void
sw_stage_show_face (SwStage *stage, guint index)
{
  if (index == stage->face || index >= sw_stage_job (stage)->faces->len)
    return;
  stage->face = index;
  forget_lists (stage);
  sw_stage_mark (stage, NULL);
  g_signal_emit (stage, signals[CHANGED], 0);
}

SwPointList
sw_stage_list (SwStage *stage, gboolean in_section)
{
  return stage->lists[in_section ? 1 : 0];
}

void
sw_stage_show_list (SwStage *stage, SwPointList list)
{
  gboolean in_section = list.kind == SW_LIST_SECTION;

  g_return_if_fail (sw_points_exist (sw_stage_face (stage), list));
  if (sw_points_same (list, stage->lists[in_section]))
    return;
  stage->lists[in_section] = list;
  sw_document_close_step (stage->document);
  g_signal_emit (stage, signals[CHANGED], 0);
}

void
sw_stage_select (SwStage *stage, SwPointList list, int index)
{
  g_autofree char *object = sw_points_object (sw_stage_face (stage), list);

  if (index == stage->selected && sw_points_same (list, stage->list))
    return;
  stage->list = list;
  stage->selected = index;
  sw_stage_show_list (stage, list);
  if (object != NULL)
    sw_stage_mark (stage, object);
  sw_document_close_step (stage->document);
  g_signal_emit (stage, signals[SELECTED], 0);
}

int
sw_stage_selected (SwStage *stage, SwPointList list)
{
  return sw_points_same (list, stage->list) ? stage->selected : -1;
}

void
sw_stage_mark (SwStage *stage, const char *object)
{
  if (g_strcmp0 (object, stage->marked) == 0)
    return;
  g_free (stage->marked);
  stage->marked = g_strdup (object);
  g_signal_emit (stage, signals[MARKED], 0);
}

const char *
sw_stage_marked (SwStage *stage)
{
  return stage->marked;
}

void
sw_stage_hover (SwStage *stage, const char *object)
{
  if (g_strcmp0 (object, stage->hovered) == 0)
    return;
  g_free (stage->hovered);
  stage->hovered = g_strdup (object);
  g_signal_emit (stage, signals[HOVERED], 0);
}

const char *
sw_stage_hovered (SwStage *stage)
{
  return stage->hovered;
}

void
sw_stage_point_at (SwStage *stage, const SwPoint *plan, gboolean along_known)
{
  if (plan == NULL && !stage->pointed)
    return;
  stage->pointed = plan != NULL;
  stage->along_known = along_known;
  if (plan != NULL)
    stage->plan = *plan;
  g_signal_emit (stage, signals[POINTED], 0);
}

gboolean
sw_stage_pointed (SwStage *stage, SwPoint *plan, gboolean *along_known)
{
  *plan = stage->plan;
  *along_known = stage->along_known;
  return stage->pointed;
}

void
sw_stage_tell (SwStage *stage, const char *message)
{
  g_free (stage->message);
  stage->message = g_strdup (message);
  g_clear_pointer (&stage->told_of, sw_job_unref);
  if (*message != '\0')
    stage->told_of = sw_job_ref (sw_document_committed (stage->document));
  g_signal_emit (stage, signals[TOLD], 0);
}

const char *
sw_stage_message (SwStage *stage)
{
  return stage->message != NULL ? stage->message : "";
}

void
sw_stage_edit (SwStage *stage, SwEdit edit, gconstpointer data, const char *label,
               const char *key)
{
  g_autoptr (SwJob) copy = sw_job_copy (sw_document_committed (stage->document));

  edit (copy, g_ptr_array_index (copy->faces, stage->face), data);
  sw_document_commit (stage->document, copy, label, key);
}
