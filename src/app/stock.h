/* SPDX-License-Identifier: MIT */
#pragma once

#include <slopewright/base/number-text.h>
#include <slopewright/paint/paint.h>
#include <slopewright/store/store.h>

/** What all windows share and none changes. */
typedef struct
{
  SwCatalogue *catalogue;
  SwTexts *texts;   /* in the language of the window; packs have their own */
  char **languages; /* codes of what a pack can be printed in */
  SwPalette *palette;
  const SwTextMeasure *measure;
} SwStock;

/** Returns: (transfer full): NULL with @error set when the sheet font is not installed. */
SwStock *sw_stock_new (GError **error);
void sw_stock_free (SwStock *stock);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (SwStock, sw_stock_free)

/** The decimal mark of the locale, and the job's units. */
SwNumberStyle sw_stock_style (const SwStock *stock, SwUnitSystem units);
