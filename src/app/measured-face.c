/* SPDX-License-Identifier: MIT */
#include "measured-face.h"

#include <glib/gi18n.h>
#include <math.h>
#include <slopewright/base/gradient.h>
#include <slopewright/ground/ground.h>

/* Between two tapes; beyond, a slip of centimetres moves the corner by decimetres. */
#define SHARPEST_RAD (30.0 * G_PI / 180.0)
#define FLATTEST_RAD (120.0 * G_PI / 180.0)

SwMeasured
sw_measured_from_face (const SwFace *face)
{
  SwBox box = sw_ring_box ((SwRing){ face->outline, face->n_outline });
  double run_m = face->section[face->toe].x_m - face->section[face->crest].x_m;
  double rise_m = face->section[face->crest].y_m - face->section[face->toe].y_m;
  double width_m = box.x1_m - box.x0_m, length_m = hypot (run_m, rise_m);
  double across_m = hypot (width_m, length_m);

  return (SwMeasured){
    .how = face->obtained <= SW_OBTAINED_TAPED_SHAPE ? face->obtained
                                                     : SW_OBTAINED_TAPED_ANGLE,
    .length_m = length_m,
    .angle_rad = atan2 (rise_m, run_m),
    .rise_m = rise_m,
    .hv = run_m / rise_m,
    .run_m = run_m,
    .width_m = width_m,
    .sides = { width_m, length_m, width_m, length_m, across_m, 0.0 },
  };
}

static char *
diagonal_text (const SwTapedShape *shape, SwNumberStyle style)
{
  g_autofree char *bd = sw_quantity_text (shape->bd_m, SW_UNIT_M, style);
  g_autofree char *off = sw_quantity_text (fabs (shape->residual_m), SW_UNIT_M, style);
  g_autofree char *allowed = sw_quantity_text (shape->allowed_m, SW_UNIT_M, style);

  if (!shape->checked)
    return g_strdup_printf (_ ("The other diagonal, B to D, must be %s: tape it too."),
                            bd);
  if (fabs (shape->residual_m) > shape->allowed_m)
    return g_strdup_printf (_ ("The diagonal B to D is %s off; %s is allowed. Tape the "
                               "sides and both diagonals again."),
                            off, allowed);
  return g_strdup_printf (_ ("The diagonal B to D fits: %s off, %s is allowed."), off,
                          allowed);
}

static char *
tapes_text (const SwMeasured *measured, SwNumberStyle style)
{
  SwTapedShape shape;
  g_autofree char *diagonal = NULL;

  if (measured->how != SW_OBTAINED_TAPED_SHAPE
      || sw_taped_shape (&measured->sides, &shape) != SW_OK)
    return g_strdup ("");
  diagonal = diagonal_text (&shape, style);
  if (shape.sharpest_rad >= SHARPEST_RAD && shape.flattest_rad <= FLATTEST_RAD)
    return g_strconcat ("\n", diagonal, NULL);
  return g_strconcat (
      "\n", diagonal, "\n",
      _ ("Two tapes meet at less than 30° or more than 120°: a small slip "
         "moves that corner far."),
      NULL);
}

static char *
trouble (const SwMeasured *measured, SwStatus status)
{
  if (measured->how != SW_OBTAINED_TAPED_SHAPE)
    return g_strdup (_ ("Each length must be more than 0, and the angle between 0° and "
                        "90°."));
  if (status == SW_E_OUTLINE)
    return g_strdup (_ ("Corner D comes to lie above the crest: compare the side C to D "
                        "and the diagonal A to C with the sketch."));
  return g_strdup (_ ("These tapes do not meet: a side is shorter or longer than the "
                      "others leave room for."));
}

char *
sw_measured_text (const SwMeasured *measured, SwNumberStyle style, gboolean *fits)
{
  SwFace *face = sw_face_new ("A");
  SwStatus status = sw_measured_shape (measured, face);
  g_autoptr (SwGround) ground = NULL;
  char *text;

  *fits = status == SW_OK && sw_ground_new (face, &ground) == SW_OK;
  if (*fits)
    {
      SwPoint crest = face->section[0], toe = face->section[1];
      g_autofree char *length = sw_quantity_text (
          hypot (toe.x_m - crest.x_m, crest.y_m - toe.y_m), SW_UNIT_M, style);
      g_autofree char *gradient =
          sw_gradient_text (atan2 (crest.y_m - toe.y_m, toe.x_m - crest.x_m), style);
      g_autofree char *area = sw_quantity_text (
          sw_ground_area_m2 (ground, (SwRing){ face->outline, face->n_outline }),
          SW_UNIT_M2, style);
      g_autofree char *tapes = tapes_text (measured, style);

      text = g_strdup_printf (_ ("%s down the face · %s · %s%s"), length, gradient, area,
                              tapes);
    }
  else
    text = trouble (measured, status);
  sw_face_free (face);
  return text;
}
