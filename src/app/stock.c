/* SPDX-License-Identifier: MIT */
#include "stock.h"

#include <locale.h>

#include "language.h"

SwStock *
sw_stock_new (GError **error)
{
  const SwTextMeasure *measure = sw_paint_measure (error);
  SwStock *stock;

  if (measure == NULL)
    return NULL;
  stock = g_new0 (SwStock, 1);
  stock->catalogue = sw_catalogue_load ();
  stock->texts = sw_texts_load (sw_language_of_texts ());
  stock->languages = sw_texts_languages ();
  stock->palette = sw_palette_load ();
  stock->measure = measure;
  return stock;
}

void
sw_stock_free (SwStock *stock)
{
  if (stock == NULL)
    return;
  sw_catalogue_free (stock->catalogue);
  sw_texts_unref (stock->texts);
  g_strfreev (stock->languages);
  sw_palette_free (stock->palette);
  g_free (stock);
}

SwNumberStyle
sw_stock_style (const SwStock *stock, SwUnitSystem units)
{
  const char *mark = localeconv ()->decimal_point;

  return (SwNumberStyle){ units, mark != NULL && mark[0] == ',' ? ',' : '.',
                          stock->texts };
}
