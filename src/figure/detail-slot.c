/* SPDX-License-Identifier: MIT */
#include "detail.h"
#include <math.h>

#define OFF_MM 0.55

/** A slot across a slope, on paper. */
typedef struct
{
  SwDetailSheet sheet;
  SwHole hole;
  SwPaperPoint start, end; /* of the ground in the picture */
  double middle, bottom;
  guint tier;
} SlotSheet;

static gboolean
find_slots (const SwFaceLayout *laid, guint *tier)
{
  for (guint t = 0; t < laid->n_tiers; t++)
    if (laid->tiers[t].slots > 0)
      {
        *tier = t;
        return TRUE;
      }
  return FALSE;
}

static void
begin (SlotSheet *slot, const SwResult *result, guint face, double width_mm,
       double height_mm, const SwDraw *draw)
{
  const SwSourced *values = result->layout->practice->values;
  double depth_m = values[SW_PRACTICE_SLOT_DEPTH_M].value;
  double slot_m = values[SW_PRACTICE_SLOT_WIDTH_M].value;
  double slope = sw_detail_slope_rad (result, face), level = height_mm * 0.36;
  double rise = fmin ((width_mm * 0.5 - 1.0) * tan (slope), height_mm * 0.26);
  double reach = rise / tan (slope), half, fall, scale;

  scale =
      sw_drawing_scale (draw, slot_m, depth_m + result->layout->faces[face].pin_need_m,
                        width_mm * 0.3, height_mm - level - 9.0);
  half = slot_m * 500.0 / scale;
  fall = half * tan (slope);
  slot->middle = width_mm * 0.5;
  slot->bottom = height_mm - 5.0;
  slot->hole = (SwHole){ slot->middle - half, slot->middle + half, level - fall,
                         level + fall, level + depth_m * 1000.0 / scale };
  slot->start = (SwPaperPoint){ slot->middle - reach, level - rise };
  slot->end = (SwPaperPoint){ slot->middle + reach, level + rise };
  sw_detail_begin (&slot->sheet, result, face, width_mm, height_mm, 0.0, level, scale,
                   draw, "drawing.detail.slot");
}

/* The blanket goes down one wall and up the other; backfill holds it there. */
static void
draw_fold (SlotSheet *slot)
{
  SwHole hole = slot->hole;
  SwPaperPoint above[2] = { { slot->start.x_mm, slot->start.y_mm - OFF_MM },
                            { hole.left + OFF_MM, hole.level_left - OFF_MM } };
  SwPaperPoint fold[4] = { above[1],
                           { hole.left + OFF_MM, hole.floor - OFF_MM },
                           { hole.right - OFF_MM, hole.floor - OFF_MM },
                           { hole.right - OFF_MM, hole.level_right - OFF_MM } };
  SwPaperPoint below[2] = { fold[3], { slot->end.x_mm, slot->end.y_mm - OFF_MM } };

  sw_drawing_object (&slot->sheet.drawing, "/trench");
  sw_detail_hole (&slot->sheet, hole, &slot->start, 1, &slot->end, 1, slot->bottom);
  sw_detail_lining (&slot->sheet, fold, 4, 1.0);
  sw_drawing_object (&slot->sheet.drawing, "/tier/%u", slot->tier);
  sw_detail_line (&slot->sheet, SW_ROLE_BLANKET, above, 2);
  sw_detail_line (&slot->sheet, SW_ROLE_BLANKET, below, 2);
  sw_detail_callout (&slot->sheet,
                     (SwPaperPoint){ (below[0].x_mm + below[1].x_mm) / 2.0,
                                     (below[0].y_mm + below[1].y_mm) / 2.0 },
                     sw_detail_words (&slot->sheet, "drawing.key.blanket"));
}

static void
note (SlotSheet *slot)
{
  SwDrawing *drawing = &slot->sheet.drawing;
  const SwTier *tier = &drawing->laid->tiers[slot->tier];
  SwHole hole = slot->hole;
  double depth_m = sw_drawing_practice (drawing, SW_PRACTICE_SLOT_DEPTH_M);
  double level = hole.floor - sw_detail_mm (&slot->sheet, depth_m);
  g_autofree char *apart =
      sw_drawing_length (drawing, tier->length_m / (tier->slots + 1));
  g_autofree char *words = sw_texts_fill (
      drawing->draw->texts, "drawing.detail.slots-every", "size", apart, NULL);

  sw_detail_dimension (
      &slot->sheet, (SwPaperPoint){ hole.left, hole.level_left },
      (SwPaperPoint){ hole.right, hole.level_left }, 6.0,
      sw_drawing_small (drawing,
                        sw_drawing_practice (drawing, SW_PRACTICE_SLOT_WIDTH_M)));
  sw_detail_dimension (&slot->sheet, (SwPaperPoint){ hole.left, level },
                       (SwPaperPoint){ hole.left, hole.floor }, -7.0,
                       sw_drawing_small (drawing, depth_m));
  sw_detail_callout (&slot->sheet,
                     (SwPaperPoint){ slot->middle, (level + hole.floor) / 2.0 },
                     sw_detail_words (&slot->sheet, "drawing.detail.backfill"));
  sw_detail_callout (
      &slot->sheet, (SwPaperPoint){ slot->middle, hole.floor + 3.0 },
      sw_detail_spacing_text (&slot->sheet, "drawing.detail.pins-every",
                              sw_drawing_practice (drawing, SW_PRACTICE_SLOT_PIN_M)));
  sw_drawing_note (drawing, SW_LABEL_MAIN, SW_ROLE_TEXT, slot->middle,
                   drawing->figure->height_mm - 2.0, 0.0, NULL, words);
}

SwFigure *
sw_detail_slot (const SwResult *result, guint face, double width_mm, double height_mm,
                const SwDraw *draw)
{
  SlotSheet slot;

  if (!find_slots (&result->layout->faces[face], &slot.tier))
    return NULL;
  begin (&slot, result, face, width_mm, height_mm, draw);
  draw_fold (&slot);
  sw_detail_pin (&slot.sheet, (SwPaperPoint){ slot.middle, slot.hole.floor - OFF_MM },
                 0.0, 1.0);
  note (&slot);
  return sw_detail_end (&slot.sheet);
}
