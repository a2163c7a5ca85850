/* SPDX-License-Identifier: MIT */
#include "pack-order.h"

#include <slopewright/sheet/pack.h>

#include "export.h"

struct SwPackOrder
{
  SwStage *stage;
  SwResult *result;
  SwTexts *texts;
  const SwPalette *palette;
  char *fingerprint; /* of the bytes that saving the job would write */
};

SwPackOrder *
sw_pack_order_new (SwStage *stage)
{
  const SwResult *result = sw_stage_result (stage);
  SwPackOrder *order;

  if (result->status != SW_OK)
    return NULL;
  order = g_new0 (SwPackOrder, 1);
  order->stage = g_object_ref (stage);
  order->result = sw_result_ref (result);
  order->texts = sw_export_texts (stage);
  order->palette = sw_stage_stock (stage)->palette;
  order->fingerprint = sw_export_fingerprint (result->job);
  return order;
}

void
sw_pack_order_free (SwPackOrder *order)
{
  if (order == NULL)
    return;
  g_object_unref (order->stage);
  sw_result_unref (order->result);
  sw_texts_unref (order->texts);
  g_free (order->fingerprint);
  g_free (order);
}

const SwJob *
sw_pack_order_job (const SwPackOrder *order)
{
  return order->result->job;
}

GPtrArray *
sw_pack_order_pages (const SwPackOrder *order, const SwLongWork *work, GError **error)
{
  const SwJob *job = order->result->job;
  /* Each thread measures with fonts of its own. */
  const SwDraw draw = { .texts = order->texts,
                        .measure = sw_paint_measure (error),
                        .style = { job->units, sw_texts_decimal_mark (order->texts),
                                   order->texts } };
  GPtrArray *pages;

  if (draw.measure == NULL)
    return NULL;
  pages = sw_pack_new (order->result, &draw, job->paper, &job->pack, SW_VERSION,
                       order->fingerprint, work);
  if (pages == NULL)
    g_set_error_literal (error, SW_PAINT_ERROR, SW_PAINT_ERROR_STOPPED,
                         "making the pages was stopped");
  return pages;
}

gboolean
sw_pack_order_write (const SwPackOrder *order, const GPtrArray *pages, const char *path,
                     const SwLongWork *work, GError **error)
{
  const SwJobCard *card = &order->result->job->card;
  const SwPdfInfo info = { .title = card->name,
                           .author = card->prepared_by,
                           .creator = "slopepack " SW_VERSION,
                           .language = sw_texts_language (order->texts) };

  return sw_paint_pdf (pages, order->palette, &info, path, work, error);
}
