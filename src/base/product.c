/* SPDX-License-Identifier: MIT */
#include <slopewright/base/product.h>

gboolean
sw_product_given (const SwProduct *product)
{
  return *product->name != '\0' || product->life_months > 0.0 || product->shear_pa > 0.0
         || product->max_hv > 0.0 || product->net != SW_NET_NOT_STATED;
}

static void
lay_over (SwSourced *figure, double stated, const char *source)
{
  if (!(stated > 0.0))
    return;
  figure->value = stated;
  figure->evidence = SW_EVIDENCE_USER;
  g_free (figure->source);
  figure->source = g_strdup (source);
}

void
sw_product_lay_over (const SwProduct *product, SwBlanket *blanket)
{
  lay_over (&blanket->life_months, product->life_months, product->source);
  lay_over (&blanket->shear_pa, product->shear_pa, product->source);
  lay_over (&blanket->max_hv, product->max_hv, product->source);
  if (product->net != SW_NET_NOT_STATED)
    blanket->net_plastic_usual = product->net == SW_NET_PLASTIC;
  if (product->net == SW_NET_NONE)
    blanket->nets = 0;
}
