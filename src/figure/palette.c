/* SPDX-License-Identifier: MIT */
#include <slopewright/figure/palette.h>

static const char *const role_codes[SW_ROLE_COUNT] = {
  [SW_ROLE_TEXT] = "text",
  [SW_ROLE_MUTED] = "muted",
  [SW_ROLE_HEADING] = "heading",
  [SW_ROLE_TABLE_HEAD] = "table_head",
  [SW_ROLE_TABLE_RULE] = "table_rule",
  [SW_ROLE_FRAME] = "frame",
  [SW_ROLE_GRID] = "grid",
  [SW_ROLE_GROUND] = "ground",
  [SW_ROLE_SOIL] = "soil",
  [SW_ROLE_BACKFILL] = "backfill",
  [SW_ROLE_BLANKET] = "blanket",
  [SW_ROLE_RUN] = "run",
  [SW_ROLE_RUN_EDGE] = "run_edge",
  [SW_ROLE_LAP] = "lap",
  [SW_ROLE_JOINT] = "joint",
  [SW_ROLE_TRENCH] = "trench",
  [SW_ROLE_SLOT] = "slot",
  [SW_ROLE_PIN] = "pin",
  [SW_ROLE_DIMENSION] = "dimension",
  [SW_ROLE_FALL_LINE] = "fall_line",
  [SW_ROLE_WIND] = "wind",
  [SW_ROLE_BREAK] = "break",
  [SW_ROLE_HANDLE] = "handle",
  [SW_ROLE_HIGHLIGHT] = "highlight",
  [SW_ROLE_CAUTION] = "caution",
  [SW_ROLE_STOP] = "stop",
  [SW_ROLE_SCALE_BAR] = "scale_bar",
  [SW_ROLE_OBSTACLE] = "obstacle",
  [SW_ROLE_COLLAR] = "collar",
  [SW_ROLE_ZONE] = "zone",
  [SW_ROLE_OPEN_TRENCH] = "open_trench",
  [SW_ROLE_NEW] = "new",
  [SW_ROLE_NEW_EDGE] = "new_edge",
  [SW_ROLE_NEW_PIN] = "new_pin",
  [SW_ROLE_WHITE] = "white",
};

const char *
sw_role_code (SwRole role)
{
  g_return_val_if_fail ((guint) role < SW_ROLE_COUNT, "");
  return role_codes[role];
}

SwPalette *
sw_palette_new (void)
{
  SwPalette *palette = g_new0 (SwPalette, 1);

  for (guint i = 0; i < SW_ROLE_COUNT; i++)
    palette->looks[i] = (SwLook){ .line = { 0.0, 0.0, 0.0, 1.0 },
                                  .line_dark = { 1.0, 1.0, 1.0, 1.0 },
                                  .width_mm = 0.25 };
  return palette;
}

void
sw_palette_free (SwPalette *palette)
{
  g_free (palette);
}
