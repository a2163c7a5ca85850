/* SPDX-License-Identifier: MIT */
#include "plan-shape.h"
#include <math.h>

/* Parts into which an edge of a bent plan is cut to find its box. */
#define PARTS 96

/* An arc is drawn in chords that turn no more than this. */
#define CHORD_RAD 0.03

gboolean
sw_plan_is_bent (const SwFace *face)
{
  return face->crest_form != SW_CREST_STRAIGHT && face->crest_radius_m > 0.0
         && face->crest < face->n_section && face->n_outline >= 3;
}

/* The axis about which a round face is turned, and how its sheet lies to it. */
typedef struct
{
  SwPoint axis;
  double crest_m, radius_m; /* how far out the crest is; from the axis */
  double sense;             /* 1: out from the axis; -1: towards it */
} Turn;

/* A nose turns about a point behind its crest, a bowl about one before its toe. The middle
 * of the outline stays upright. */
static Turn
turn_of (const SwFace *face)
{
  SwBox box = sw_ring_box ((SwRing){ face->outline, face->n_outline });
  double crest_m = face->section[face->crest].x_m;
  double sense = face->crest_form == SW_CREST_NOSE ? 1.0 : -1.0;

  return (Turn){ { (box.x0_m + box.x1_m) / 2.0, crest_m - sense * face->crest_radius_m },
                 crest_m,
                 face->crest_radius_m,
                 sense };
}

SwPoint
sw_plan_lay (const SwFace *face, SwPoint at)
{
  Turn turn;
  double angle, radius_m;

  if (!sw_plan_is_bent (face))
    return at;
  turn = turn_of (face);
  angle = (at.x_m - turn.axis.x_m) / turn.radius_m;
  radius_m = turn.radius_m + turn.sense * (at.y_m - turn.crest_m);
  return (SwPoint){ turn.axis.x_m + radius_m * sin (angle),
                    turn.axis.y_m + turn.sense * radius_m * cos (angle) };
}

SwPoint
sw_plan_lift (const SwFace *face, SwPoint sheet)
{
  Turn turn;
  double across_m, down_m;

  if (!sw_plan_is_bent (face))
    return sheet;
  turn = turn_of (face);
  across_m = sheet.x_m - turn.axis.x_m;
  down_m = turn.sense * (sheet.y_m - turn.axis.y_m);
  return (SwPoint){ turn.axis.x_m + turn.radius_m * atan2 (across_m, down_m),
                    turn.crest_m
                        + turn.sense * (hypot (across_m, down_m) - turn.radius_m) };
}

static SwPoint
between (SwPoint a, SwPoint b, double t)
{
  return (SwPoint){ a.x_m + (b.x_m - a.x_m) * t, a.y_m + (b.y_m - a.y_m) * t };
}

static void
grow (SwBox *box, SwPoint at)
{
  *box = (SwBox){ fmin (box->x0_m, at.x_m), fmin (box->y0_m, at.y_m),
                  fmax (box->x1_m, at.x_m), fmax (box->y1_m, at.y_m) };
}

SwBox
sw_plan_bent_box (const SwFace *face, double behind_m)
{
  SwBox box = { INFINITY, INFINITY, -INFINITY, -INFINITY };
  SwBox flat = sw_ring_box ((SwRing){ face->outline, face->n_outline });
  double behind_out_m = face->section[face->crest].x_m - behind_m;

  for (guint i = 0; i < face->n_outline; i++)
    for (guint k = 0; k < PARTS; k++)
      grow (&box, sw_plan_lay (face, between (face->outline[i],
                                              face->outline[(i + 1) % face->n_outline],
                                              (double) k / PARTS)));
  for (guint k = 0; k <= PARTS; k++)
    grow (&box, sw_plan_lay (face, between ((SwPoint){ flat.x0_m, behind_out_m },
                                            (SwPoint){ flat.x1_m, behind_out_m },
                                            (double) k / PARTS)));
  return box;
}

SwPaperPoint
sw_plan_at (const SwDrawing *drawing, double along_m, double out_m)
{
  SwPoint at = sw_plan_lay (drawing->face, (SwPoint){ along_m, out_m });

  return sw_view_to_paper (drawing->view, at);
}

static guint
chords (const SwDrawing *drawing, SwPoint a, SwPoint b)
{
  const SwFace *face = drawing->face;

  if (!sw_plan_is_bent (face))
    return 1;
  return MAX (1, (guint) ceil (fabs (b.x_m - a.x_m) / face->crest_radius_m / CHORD_RAD));
}

GArray *
sw_plan_path (const SwDrawing *drawing, const SwPoint *points, guint count,
              gboolean closed)
{
  GArray *path = g_array_new (FALSE, FALSE, sizeof (SwPaperPoint));
  guint edges = closed ? count : count - 1;
  SwPaperPoint at;

  for (guint i = 0; i < edges; i++)
    {
      SwPoint a = points[i], b = points[(i + 1) % count];
      guint parts = chords (drawing, a, b);

      for (guint k = 0; k < parts; k++)
        {
          SwPoint on = between (a, b, (double) k / parts);

          at = sw_plan_at (drawing, on.x_m, on.y_m);
          g_array_append_val (path, at);
        }
    }
  at = sw_plan_at (drawing, points[edges % count].x_m, points[edges % count].y_m);
  g_array_append_val (path, at);
  return path;
}

SwBox
sw_plan_paper_box (const SwDrawing *drawing)
{
  const SwFace *face = drawing->face;
  g_autoptr (GArray) path = sw_plan_path (drawing, face->outline, face->n_outline, TRUE);
  SwBox box = { INFINITY, INFINITY, -INFINITY, -INFINITY };

  for (guint i = 0; i < path->len; i++)
    {
      SwPaperPoint at = g_array_index (path, SwPaperPoint, i);

      grow (&box, (SwPoint){ at.x_mm, at.y_mm });
    }
  return box;
}
