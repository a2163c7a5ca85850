/* SPDX-License-Identifier: MIT */
#pragma once

#include <slopewright/judge/soil-loss.h>
#include <slopewright/judge/texture.h>
#include <slopewright/layout/layout.h>

/** What follows from one class of soil on a face. Borrowed from the catalogue. */
typedef struct
{
  const SwSoil *soil;
  double pin_m;                        /* shortest that state and topsoil call for */
  SwSourced erodibility, friction_rad; /* NaN where the class has none */
} SwSoilReading;

/** The most classes that share a border with one. */
#define SW_SOIL_OTHERS_MOST 6

/**
 * SwFaceSoil: the soil of a face and what it may be instead. By eye and by feel a
 * soil is sure to one class only (Thien 1979); a laboratory's shares leave no doubt
 * about the class.
 */
typedef struct
{
  SwSoilKnown known;
  SwTexture texture;
  SwSoilReading itself;
  SwSoilReading others[SW_SOIL_OTHERS_MOST]; /* by texture */
  guint n_others;                            /* 0 without doubt */
  double pin_least_m, pin_most_m;
  double k_least, k_most; /* SI, of the classes that have one; NaN if none */
  double friction_least, friction_most; /* rad, likewise */
} SwFaceSoil;

/**
 * sw_face_soil:
 * @soil: (out): untouched on FALSE
 *
 * The face's own soil, its zones left aside. Numbers typed for the site go before
 * those of a class; they are not looked at here.
 *
 * Returns: FALSE for a soil that is none of the twelve textures.
 */
gboolean sw_face_soil (const SwLayout *layout, guint face, SwFaceSoil *soil);

/**
 * sw_face_nomograph:
 * @erodibility: (out): K, SI
 * @limits: (out) (optional): SwErodibilityLimit flags
 *
 * K by the nomograph equation, see sw_erodibility(), from a laboratory's shares, very
 * fine sand counting with the silt.
 *
 * Returns: FALSE where structure or permeability is not given, or the equation holds
 *   no positive K.
 */
gboolean sw_face_nomograph (const SwFace *face, double *erodibility, guint *limits);
