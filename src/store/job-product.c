/* SPDX-License-Identifier: MIT */
#include "job-fields.h"

void
sw_read_product (const SwJsonPlace *blanket, SwProduct *product)
{
  SwJsonPlace place = sw_json_member (blanket, "product");

  if (place.value == NULL)
    return;
  sw_read_text (&place, "name", &product->name);
  sw_read_text (&place, "source", &product->source);
  product->life_months = sw_read_extra (&place, "life_months", SW_PRODUCT_LIFE_MOST);
  product->shear_pa = sw_read_extra (&place, "shear_pa", SW_PRODUCT_SHEAR_MOST);
  product->max_hv = sw_read_extra (&place, "max_hv", SW_PRODUCT_HV_MOST);
  product->net = (SwNetKind) sw_read_option (&place, "net", sw_net_words);
  sw_read_text (&place, "cover_test", &product->cover_test);
}

json_t *
sw_product_tree (const SwProduct *product)
{
  json_t *tree = json_object ();

  sw_put_text (tree, "name", product->name);
  sw_put_text (tree, "source", product->source);
  sw_put_number (tree, "life_months", product->life_months);
  sw_put_number (tree, "shear_pa", product->shear_pa);
  sw_put_number (tree, "max_hv", product->max_hv);
  sw_put_text (tree, "net", sw_net_words[product->net]);
  sw_put_text (tree, "cover_test", product->cover_test);
  return tree;
}
