/* SPDX-License-Identifier: MIT */
#include <math.h>
#include <slopewright/judge/face-soil.h>

static gboolean
read_class (const SwLayout *layout, const SwFace *face, const char *id,
            SwSoilReading *reading)
{
  const SwSoil *soil = sw_catalogue_soil (layout->catalogue, id);

  if (soil == NULL)
    return FALSE;
  *reading = (SwSoilReading){
    .soil = soil,
    .pin_m = sw_layout_pin_need_m (layout, soil, face->loose, face->topsoil_m),
    .erodibility = soil->erodibility,
    .friction_rad = soil->friction_rad,
  };
  return TRUE;
}

static void
read_others (SwFaceSoil *found, const SwLayout *layout, const SwFace *face)
{
  guint neighbours = sw_texture_neighbours (found->texture);

  for (int i = 0; i < SW_TEXTURE_COUNT && found->n_others < SW_SOIL_OTHERS_MOST; i++)
    if (neighbours & (1u << i)
        && read_class (layout, face, sw_texture_code ((SwTexture) i),
                       &found->others[found->n_others]))
      found->n_others++;
}

/* fmin and fmax pass over NaN. */
static void
widen (SwFaceSoil *found, const SwSoilReading *reading)
{
  found->pin_least_m = fmin (found->pin_least_m, reading->pin_m);
  found->pin_most_m = fmax (found->pin_most_m, reading->pin_m);
  found->k_least = fmin (found->k_least, reading->erodibility.value);
  found->k_most = fmax (found->k_most, reading->erodibility.value);
  found->friction_least = fmin (found->friction_least, reading->friction_rad.value);
  found->friction_most = fmax (found->friction_most, reading->friction_rad.value);
}

gboolean
sw_face_soil (const SwLayout *layout, guint index, SwFaceSoil *soil)
{
  const SwFace *face = layout->faces[index].face;
  SwFaceSoil found = { .known = face->soil_test.known,
                       .pin_least_m = NAN,
                       .pin_most_m = NAN,
                       .k_least = NAN,
                       .k_most = NAN,
                       .friction_least = NAN,
                       .friction_most = NAN };

  if (!sw_texture_from_code (face->soil_id, &found.texture)
      || !read_class (layout, face, face->soil_id, &found.itself))
    return FALSE;
  if (found.known != SW_SOIL_BY_LABORATORY)
    read_others (&found, layout, face);
  widen (&found, &found.itself);
  for (guint i = 0; i < found.n_others; i++)
    widen (&found, &found.others[i]);
  *soil = found;
  return TRUE;
}

gboolean
sw_face_nomograph (const SwFace *face, double *erodibility, guint *limits)
{
  const SwSoilTest *test = &face->soil_test;
  const SwErodibilitySoil soil = {
    .silt_and_fine_sand = test->silt + test->fine_sand,
    .clay = test->clay,
    .organic = test->organic,
    .structure = test->structure,
    .permeability = test->permeability,
  };

  return test->known == SW_SOIL_BY_LABORATORY
         && sw_erodibility (&soil, erodibility, limits) == SW_OK;
}
