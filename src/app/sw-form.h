/* SPDX-License-Identifier: MIT */
#pragma once

#include <gtk/gtk.h>

#include "sw-stage.h"

typedef enum
{
  SW_FIELD_END,
  SW_FIELD_HEADING,
  SW_FIELD_TEXT,        /* char * at offset */
  SW_FIELD_VALUE,       /* double at offset */
  SW_FIELD_SITE_NUMBER, /* the SwSiteNumber @which, with its unit and limits */
  SW_FIELD_PLAN,   /* double at offset: the job's SwPlanNumber @which, by its own table */
  SW_FIELD_SWITCH, /* gboolean at offset */
  SW_FIELD_ENUM,   /* an enumeration at offset; its members in the order of the names */
  SW_FIELD_CHOICE
} SwFieldKind;

/** One row of a form. Labels are marked for translation. */
typedef struct
{
  SwFieldKind kind;
  const char *label;    /* short: it stands beside the field; NULL: by label_id */
  const char *label_id; /* text id, when label is NULL */
  const char *step;     /* what changing it is called in the menu: "Change Soil" */
  gboolean of_face;     /* offset counts from the face instead of the job */
  gpointer (*of) (SwStage *stage, SwFace *face); /* or from this; NULL: not there now */
  gsize offset;
  SwUnit unit;
  double least, most;
  gboolean (*applies) (const SwJob *job, const SwFace *face); /* NULL: always */
  void (*put) (SwFace *face,
               double value); /* VALUE of a face: writes it; NULL: plainly */
  gboolean optional;          /* VALUE: 0 and an empty field mean "not given" */
  const char *(*problem) (const char *text); /* TEXT: what is wrong with it, or NULL */
  /* ENUM, CHOICE: what can be chosen, (transfer full) strv. CHOICE: which it is, -1 for
   * none; choose. */
  char **(*names) (SwStage *stage, gsize which);
  int (*get) (SwStage *stage, gsize which);
  void (*set) (SwStage *stage, SwJob *job, SwFace *face, gsize which, guint index);
  gsize which;      /* told to the three above; or a SwSiteNumber */
  const char *help; /* HEADING: page of the help that its "?" opens; NULL for none */
} SwField;

/**
 * SwForm: rows of labels and fields over the job shown, from a table. Each
 * change is one step of the document.
 */
#define SW_TYPE_FORM (sw_form_get_type ())
G_DECLARE_FINAL_TYPE (SwForm, sw_form, SW, FORM, GtkWidget)

/** @fields: ends with SW_FIELD_END; kept by reference */
GtkWidget *sw_form_new (SwStage *stage, const SwField *fields);

/** The same side by side, without labels to see: for a few choices whose names speak. */
GtkWidget *sw_form_new_in_line (SwStage *stage, const SwField *fields);

/** The control of row @index, for tests. */
GtkWidget *sw_form_control (SwForm *form, guint index);
