/* SPDX-License-Identifier: MIT */
#pragma once

#include "flow.h"

/* What the files of the flow share. */

typedef struct
{
  SwFigure *figure;
  SwFigure *head;  /* of the flow's heads; NULL: none */
  double space_mm; /* above, unless first on the page */
  gboolean tied;   /* to the next */
  gboolean breaks; /* begins a page */
} SwSlug;

struct SwFlow
{
  SwPen pen;
  double width_mm;
  GArray *slugs;
  GPtrArray *heads;
  double space_mm; /* above the next slug */
  gboolean breaks; /* before the next slug */
};

SwSlug *sw_flow_slug (const SwFlow *flow, guint index);
/** Whether the slug sets its head; @empty: it begins a page. */
gboolean sw_flow_wants_head (const SwFlow *flow, guint index, gboolean empty);
/** Height with head and the space above. */
double sw_flow_slug_mm (const SwFlow *flow, guint index, gboolean empty);
