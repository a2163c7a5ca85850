/* SPDX-License-Identifier: MIT */
#pragma once

#include <slopewright/base/catalogue.h>

/** What a product's netting is made of. File words "not-stated", "none", "plastic", "plant". */
typedef enum
{
  SW_NET_NOT_STATED,
  SW_NET_NONE,
  SW_NET_PLASTIC,
  SW_NET_PLANT, /* jute, coir, cotton */
  SW_NET_COUNT
} SwNetKind;

/**
 * SwProduct: a blanket's data sheet, as typed from it. Its class, mass, thickness,
 * C and roll stand where every job has them. 0 is "not stated".
 */
typedef struct
{
  char *name;         /* as on the roll; may be "" */
  char *source;       /* which sheet, of what date */
  char *cover_test;   /* the test that its C comes from */
  double life_months; /* functional life */
  double shear_pa;    /* permissible, bare of plants */
  double max_hv;      /* steepest gradient, horizontal per 1 vertical */
  SwNetKind net;
} SwProduct;

/** Largest numbers that a data sheet may state. */
#define SW_PRODUCT_LIFE_MOST 1200.0
#define SW_PRODUCT_SHEAR_MOST 2000.0
#define SW_PRODUCT_HV_MOST 20.0

/** Whether there is a data sheet: a name, or anything else that it states. */
gboolean sw_product_given (const SwProduct *product);

/**
 * sw_product_lay_over:
 * @product: a data sheet
 * @blanket: of the class it claims; changed: what the sheet states takes the place of
 *   the class's figure, with evidence "user" and the sheet as source
 */
void sw_product_lay_over (const SwProduct *product, SwBlanket *blanket);
