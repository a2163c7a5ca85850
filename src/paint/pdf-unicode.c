/* SPDX-License-Identifier: MIT */
#include "pdf.h"

#define CODES_PER_ROW 256
#define ROWS 256
#define ROWS_PER_BLOCK 64 /* at most 100: ISO 32000-1, 9.10.3 and Adobe note 5014 */

static const char before[] = "/CIDInit /ProcSet findresource begin\012"
                             "12 dict begin\012"
                             "begincmap\012"
                             "/CIDSystemInfo <</Registry (Adobe) /Ordering (UCS) "
                             "/Supplement 0>> def\012"
                             "/CMapName /Adobe-Identity-UCS def\012"
                             "/CMapType 2 def\012"
                             "1 begincodespacerange\012<0000> <FFFF>\012"
                             "endcodespacerange\012";
static const char after[] = "endcmap\012"
                            "CMapName currentdict /CMap defineresource pop\012"
                            "end\012end\012";

/* Codes are characters; a range may not leave its first byte. */
static void
add_rows (GString *map)
{
  for (guint row = 0; row < ROWS; row++)
    {
      const guint first = row * CODES_PER_ROW;

      if (row % ROWS_PER_BLOCK == 0)
        g_string_append_printf (map, "%d beginbfrange\012", ROWS_PER_BLOCK);
      g_string_append_printf (map, "<%04X> <%04X> <%04X>\012", first,
                              first + CODES_PER_ROW - 1, first);
      if (row % ROWS_PER_BLOCK == ROWS_PER_BLOCK - 1)
        g_string_append (map, "endbfrange\012");
    }
}

void
sw_pdf_map_to_unicode (HPDF_Font font)
{
  HPDF_Dict to_unicode =
      font != NULL ? HPDF_Dict_GetItem (font, "ToUnicode", HPDF_OCLASS_DICT) : NULL;
  g_autoptr (GString) map = g_string_new (before);

  if (to_unicode == NULL)
    return;
  add_rows (map);
  g_string_append (map, after);
  HPDF_MemStream_FreeData (to_unicode->stream);
  HPDF_Stream_WriteStr (to_unicode->stream, map->str);
}
