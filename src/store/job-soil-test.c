/* SPDX-License-Identifier: MIT */
#include "job-fields.h"

#include <glib/gi18n.h>
#include <slopewright/judge/texture.h>

#define RIBBON_MOST_M 0.3
#define STRUCTURE_MOST 4
#define PERMEABILITY_MOST 6

static int
read_rank (const SwJsonPlace *object, const char *key, guint most)
{
  SwJsonPlace place = sw_json_member (object, key);

  return place.value != NULL ? (int) sw_json_index (&place, most) : 0;
}

static void
read_feel (const SwJsonPlace *place, SwSoilTest *test)
{
  SwJsonPlace holds = sw_json_member (place, "holds");

  test->holds = holds.value != NULL && sw_json_boolean (&holds);
  test->ribbon_m = sw_read_extra (place, "ribbon_m", RIBBON_MOST_M);
  test->feel = (SwFeel) sw_read_option (place, "feel", sw_feel_words);
}

static void
read_laboratory (const SwJsonPlace *place, SwSoilTest *test)
{
  SwJsonPlace fine_sand = sw_json_member (place, "fine_sand");

  test->sand = sw_read_extra (place, "sand", 1.0);
  test->silt = sw_read_extra (place, "silt", 1.0);
  test->clay = sw_read_extra (place, "clay", 1.0);
  test->fine_sand = sw_read_extra (place, "fine_sand", 1.0);
  test->organic = sw_read_extra (place, "organic", 1.0);
  test->structure = read_rank (place, "structure", STRUCTURE_MOST);
  test->permeability = read_rank (place, "permeability", PERMEABILITY_MOST);
  if (test->fine_sand > test->sand + SW_TEXTURE_SUM_TOLERANCE)
    sw_json_expected (&fine_sand, _ ("no more very fine sand than sand"));
}

static void
check_class (const SwJsonPlace *face_place, const SwJsonPlace *place, const SwFace *face)
{
  SwJsonPlace soil = sw_json_member (face_place, "soil");
  SwTexture texture;

  if (face->soil_test.known == SW_SOIL_BY_EYE || place->reader->error != NULL)
    return;
  if (sw_texture_from_test (&face->soil_test, &texture) != SW_OK)
    sw_json_expected (place, face->soil_test.known == SW_SOIL_BY_FEEL
                                 ? _ ("no ribbon of a soil that does not hold together")
                                 : _ ("sand, silt and clay that add up to 1"));
  else if (!g_str_equal (sw_texture_code (texture), face->soil_id))
    sw_json_expected (&soil, _ ("\"%s\", the class that follows from soil_test"),
                      sw_texture_code (texture));
}

void
sw_read_soil_test (const SwJsonPlace *face_place, SwFace *face)
{
  SwJsonPlace place = sw_json_member (face_place, "soil_test");

  if (place.value == NULL)
    return;
  face->soil_test.known =
      (SwSoilKnown) sw_read_choice (&place, "known", sw_soil_known_words);
  read_feel (&place, &face->soil_test);
  read_laboratory (&place, &face->soil_test);
  check_class (face_place, &place, face);
}

json_t *
sw_soil_test_tree (const SwSoilTest *test)
{
  json_t *tree = json_object ();

  sw_put_text (tree, "known", sw_soil_known_words[test->known]);
  json_object_set_new (tree, "holds", json_boolean (test->holds));
  sw_put_number (tree, "ribbon_m", test->ribbon_m);
  sw_put_text (tree, "feel", sw_feel_words[test->feel]);
  sw_put_number (tree, "sand", test->sand);
  sw_put_number (tree, "silt", test->silt);
  sw_put_number (tree, "clay", test->clay);
  sw_put_number (tree, "fine_sand", test->fine_sand);
  sw_put_number (tree, "organic", test->organic);
  json_object_set_new (tree, "structure", json_integer (test->structure));
  json_object_set_new (tree, "permeability", json_integer (test->permeability));
  return tree;
}
