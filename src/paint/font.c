/* SPDX-License-Identifier: MIT */
#include <fontconfig/fontconfig.h>
#include <glib/gi18n.h>

#include <slopewright/paint/paint.h>

#define FAMILY "DejaVu Sans Condensed"
#define PACKAGE "fonts-dejavu-extra"

GQuark
sw_paint_error_quark (void)
{
  return g_quark_from_static_string ("sw-paint-error-quark");
}

/* fontconfig always finds something; only the family asked for will do. */
static gboolean
has_family (FcPattern *font, const char *family)
{
  FcChar8 *name = NULL;

  for (int i = 0; FcPatternGetString (font, FC_FAMILY, i, &name) == FcResultMatch; i++)
    if (g_ascii_strcasecmp ((const char *) name, family) == 0)
      return TRUE;
  return FALSE;
}

static char *
path_of_best (FcFontSet *found, SwTypeface typeface)
{
  for (int i = 0; i < found->nfont; i++)
    {
      FcPattern *font = found->fonts[i];
      FcChar8 *path = NULL;
      int weight = FC_WEIGHT_REGULAR;

      FcPatternGetInteger (font, FC_WEIGHT, 0, &weight);
      if (has_family (font, FAMILY)
          && (weight >= FC_WEIGHT_SEMIBOLD) == (typeface == SW_FACE_BOLD)
          && FcPatternGetString (font, FC_FILE, 0, &path) == FcResultMatch)
        return g_strdup ((const char *) path);
    }
  return NULL;
}

static char *
find_font (FcConfig *config, SwTypeface typeface)
{
  FcPattern *wanted =
      FcPatternBuild (NULL, FC_FAMILY, FcTypeString, FAMILY, FC_SLANT, FcTypeInteger,
                      FC_SLANT_ROMAN, FC_SCALABLE, FcTypeBool, FcTrue, NULL);
  FcObjectSet *asked = FcObjectSetBuild (FC_FAMILY, FC_WEIGHT, FC_FILE, NULL);
  FcFontSet *found = FcFontList (config, wanted, asked);
  char *path = found ? path_of_best (found, typeface) : NULL;

  if (found)
    FcFontSetDestroy (found);
  FcObjectSetDestroy (asked);
  FcPatternDestroy (wanted);
  return path;
}

typedef struct
{
  char *paths[SW_FACE_BOLD + 1];
} FontPaths;

static gpointer
find_both (gpointer data)
{
  FontPaths *both = g_new0 (FontPaths, 1);
  /* Our own, given back at once: the shared one would stay until FcFini(). */
  FcConfig *config = FcInitLoadConfigAndFonts ();

  both->paths[SW_FACE_REGULAR] = find_font (config, SW_FACE_REGULAR);
  both->paths[SW_FACE_BOLD] = find_font (config, SW_FACE_BOLD);
  FcConfigDestroy (config);
  return both;
}

const char *
sw_paint_font_path (SwTypeface typeface, GError **error)
{
  static GOnce once = G_ONCE_INIT;
  const FontPaths *both = g_once (&once, find_both, NULL);
  const char *path = both->paths[typeface];

  if (!path)
    g_set_error (error, SW_PAINT_ERROR, SW_PAINT_ERROR_FONT,
                 _ ("the sheet font “%s%s” is not installed; "
                    "on Debian it comes with the package %s"),
                 FAMILY, typeface == SW_FACE_BOLD ? " Bold" : "", PACKAGE);
  return path;
}
