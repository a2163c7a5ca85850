/* SPDX-License-Identifier: MIT */
#include "form-choices.h"

#include <glib/gi18n.h>
#include <math.h>
#include <slopewright/sheet/pack.h>

#include "crest-edit.h"

static const char *
text_of (SwStage *stage, const char *id)
{
  return sw_texts_get (sw_stage_stock (stage)->texts, id);
}

static const SwCatalogue *
catalogue_of (SwStage *stage)
{
  return sw_stage_stock (stage)->catalogue;
}

/* "left, seen from the toe" stands in sentences; in a list it begins with a capital. */
static char *
capitalised (const char *text)
{
  gunichar first = g_unichar_toupper (g_utf8_get_char (text));
  char head[7] = "";

  g_unichar_to_utf8 (first, head);
  return g_strconcat (head, g_utf8_next_char (text), NULL);
}

static char **
names_of_ids (SwStage *stage, const char *const *ids, guint count)
{
  char **names = g_new0 (char *, count + 1);

  for (guint i = 0; i < count; i++)
    names[i] = capitalised (text_of (stage, ids[i]));
  return names;
}

/* Every catalogue entry begins with its id. */
static const char *
entry_id (const GPtrArray *entries, guint index)
{
  return *(const char *const *) g_ptr_array_index (entries, index);
}

static int
index_of_id (const GPtrArray *entries, const char *id)
{
  for (guint i = 0; i < entries->len; i++)
    if (g_strcmp0 (entry_id (entries, i), id) == 0)
      return (int) i;
  return -1;
}

G_STATIC_ASSERT (G_STRUCT_OFFSET (SwSoil, id) == 0);
G_STATIC_ASSERT (G_STRUCT_OFFSET (SwBlanket, id) == 0);
G_STATIC_ASSERT (G_STRUCT_OFFSET (SwPin, id) == 0);
G_STATIC_ASSERT (G_STRUCT_OFFSET (SwPractice, id) == 0);

char **
sw_choice_soil_names (SwStage *stage, gsize which)
{
  const GPtrArray *soils = catalogue_of (stage)->soils;
  char **names = g_new0 (char *, soils->len + 1);

  for (guint i = 0; i < soils->len; i++)
    {
      const SwSoil *soil = g_ptr_array_index (soils, i);
      names[i] = g_strdup (text_of (stage, soil->name_id));
    }
  return names;
}

int
sw_choice_soil_get (SwStage *stage, gsize which)
{
  return index_of_id (catalogue_of (stage)->soils, sw_stage_face (stage)->soil_id);
}

void
sw_choice_soil_set (SwStage *stage, SwJob *job, SwFace *face, gsize which, guint index)
{
  sw_text_set (&face->soil_id, entry_id (catalogue_of (stage)->soils, index));
  face->soil_test = (SwSoilTest){ .known = SW_SOIL_BY_EYE };
}

char **
sw_choice_leeward_names (SwStage *stage, gsize which)
{
  static const char *const ids[] = { "side.left", "side.right" };

  return names_of_ids (stage, ids, G_N_ELEMENTS (ids));
}

char **
sw_choice_bench_names (SwStage *stage, gsize which)
{
  static const char *const ids[] = { "bench-rule.split", "bench-rule.continuous" };

  return names_of_ids (stage, ids, G_N_ELEMENTS (ids));
}

char **
sw_choice_obtained_names (SwStage *stage, gsize which)
{
  char **names = g_new0 (char *, SW_OBTAINED_COUNT + 1);

  for (guint i = 0; i < SW_OBTAINED_COUNT; i++)
    {
      g_autofree char *id = g_strconcat ("obtained.", sw_obtained_code (i), NULL);
      names[i] = capitalised (text_of (stage, id));
    }
  return names;
}

char **
sw_choice_crest_names (SwStage *stage, gsize which)
{
  const char *names[] = { _ ("Straight"), _ ("Round a nose"), _ ("Round a bowl"),
                          _ ("All round a heap"), NULL };

  return g_strdupv ((char **) names);
}

int
sw_choice_crest_get (SwStage *stage, gsize which)
{
  return (int) sw_crest_kind (sw_stage_face (stage));
}

void
sw_choice_crest_set (SwStage *stage, SwJob *job, SwFace *face, gsize which, guint index)
{
  sw_crest_set_kind (face, (SwCrestKind) index);
}

char **
sw_choice_fan_names (SwStage *stage, gsize which)
{
  static const char *const ids[] = { "fan.full-runs", "fan.infill" };

  return names_of_ids (stage, ids, G_N_ELEMENTS (ids));
}

char **
sw_choice_joints_names (SwStage *stage, gsize which)
{
  static const char *const ids[] = { "joints.long-runs", "joints.save-rolls" };

  return names_of_ids (stage, ids, G_N_ELEMENTS (ids));
}

char **
sw_choice_blanket_names (SwStage *stage, gsize which)
{
  const GPtrArray *blankets = catalogue_of (stage)->blankets;
  char **names = g_new0 (char *, blankets->len + 1);

  for (guint i = 0; i < blankets->len; i++)
    {
      const SwBlanket *blanket = g_ptr_array_index (blankets, i);
      names[i] = g_strdup (text_of (stage, blanket->name_id));
    }
  return names;
}

int
sw_choice_blanket_get (SwStage *stage, gsize which)
{
  return index_of_id (catalogue_of (stage)->blankets, sw_stage_job (stage)->blanket_id);
}

void
sw_choice_blanket_set (SwStage *stage, SwJob *job, SwFace *face, gsize which, guint index)
{
  sw_text_set (&job->blanket_id, entry_id (catalogue_of (stage)->blankets, index));
}

/* Sizes of the catalogue, then "Other size" for what is typed below. */
char **
sw_choice_roll_names (SwStage *stage, gsize which)
{
  const GPtrArray *rolls = catalogue_of (stage)->rolls;
  SwNumberStyle style = sw_stage_style (stage);
  char **names = g_new0 (char *, rolls->len + 2);

  for (guint i = 0; i < rolls->len; i++)
    {
      const SwRoll *roll = g_ptr_array_index (rolls, i);
      g_autofree char *width = sw_quantity_text (roll->width_m, SW_UNIT_M, style);
      g_autofree char *length = sw_quantity_text (roll->length_m, SW_UNIT_M, style);
      names[i] = g_strdup_printf ("%s × %s", width, length);
    }
  names[rolls->len] = g_strdup (_ ("Other size"));
  return names;
}

/* Files may carry a rounded size: within 0.1 mm it is the same roll. */
static gboolean
is_size (double a_m, double b_m)
{
  return fabs (a_m - b_m) < 1e-4;
}

int
sw_choice_roll_get (SwStage *stage, gsize which)
{
  const GPtrArray *rolls = catalogue_of (stage)->rolls;
  const SwJob *job = sw_stage_job (stage);

  for (guint i = 0; i < rolls->len; i++)
    {
      const SwRoll *roll = g_ptr_array_index (rolls, i);
      if (is_size (roll->width_m, job->roll_width_m)
          && is_size (roll->length_m, job->roll_length_m))
        return (int) i;
    }
  return (int) rolls->len;
}

void
sw_choice_roll_set (SwStage *stage, SwJob *job, SwFace *face, gsize which, guint index)
{
  const GPtrArray *rolls = catalogue_of (stage)->rolls;
  const SwRoll *roll;

  if (index >= rolls->len)
    return;
  roll = g_ptr_array_index (rolls, index);
  job->roll_width_m = roll->width_m;
  job->roll_length_m = roll->length_m;
  job->roll_core_m = roll->core_m;
}

char **
sw_choice_surplus_names (SwStage *stage, gsize which)
{
  static const char *const ids[] = { "surplus.spread", "surplus.trim", "surplus.narrow" };

  return names_of_ids (stage, ids, G_N_ELEMENTS (ids));
}

int
sw_choice_surplus_get (SwStage *stage, gsize which)
{
  return (int) sw_stage_job (stage)->surplus;
}

void
sw_choice_surplus_set (SwStage *stage, SwJob *job, SwFace *face, gsize which, guint index)
{
  job->surplus = (SwSurplus) index;
  if (job->surplus != SW_SURPLUS_NARROW || job->narrow_width_m > 0.0)
    return;
  /* Something to lay with until the fields below say which roll there is. */
  job->narrow_width_m = job->roll_width_m / 2.0;
  job->narrow_length_m = job->roll_length_m;
}

/* The soil decides, or one pin for all. */
char **
sw_choice_pin_names (SwStage *stage, gsize which)
{
  const GPtrArray *pins = catalogue_of (stage)->pins;
  SwNumberStyle style = sw_stage_style (stage);
  char **names = g_new0 (char *, pins->len + 2);

  names[0] = g_strdup (_ ("By soil"));
  for (guint i = 0; i < pins->len; i++)
    {
      const SwPin *pin = g_ptr_array_index (pins, i);
      g_autofree char *length =
          sw_quantity_limit_text (pin->length_m, SW_UNIT_SMALL_M, SW_LIMIT_LEAST, style);
      names[i + 1] =
          g_strdup_printf ("%s %s", text_of (stage, sw_pin_name_id (pin)), length);
    }
  return names;
}

int
sw_choice_pin_get (SwStage *stage, gsize which)
{
  const char *id = sw_stage_job (stage)->pin_id;

  if (*id == '\0')
    return 0;
  int index = index_of_id (catalogue_of (stage)->pins, id);
  return index < 0 ? -1 : index + 1;
}

void
sw_choice_pin_set (SwStage *stage, SwJob *job, SwFace *face, gsize which, guint index)
{
  sw_text_set (&job->pin_id,
               index == 0 ? "" : entry_id (catalogue_of (stage)->pins, index - 1));
}

char **
sw_choice_practice_names (SwStage *stage, gsize which)
{
  const GPtrArray *practices = catalogue_of (stage)->practices;
  char **names = g_new0 (char *, practices->len + 1);

  for (guint i = 0; i < practices->len; i++)
    {
      const SwPractice *practice = g_ptr_array_index (practices, i);
      names[i] =
          g_strdup (sw_texts_get (sw_stage_stock (stage)->texts, practice->name_id));
    }
  return names;
}

int
sw_choice_practice_get (SwStage *stage, gsize which)
{
  return index_of_id (catalogue_of (stage)->practices, sw_stage_job (stage)->practice_id);
}

void
sw_choice_practice_set (SwStage *stage, SwJob *job, SwFace *face, gsize which,
                        guint index)
{
  sw_text_set (&job->practice_id, entry_id (catalogue_of (stage)->practices, index));
}

char **
sw_choice_answer_names (SwStage *stage, gsize which)
{
  static const char *const ids[] = { "answer.unknown", "answer.no", "answer.yes" };

  return names_of_ids (stage, ids, G_N_ELEMENTS (ids));
}

/* "3 %: for a shape taped on the face", or "Usual" where there is no share. */
char **
sw_choice_allowance_names (SwStage *stage, gsize which)
{
  char **names = g_new0 (char *, SW_ALLOWANCE_COUNT + 1);

  for (guint i = 0; i < SW_ALLOWANCE_COUNT; i++)
    {
      g_autofree char *id = g_strconcat ("allowance.", sw_allowance_codes[i], NULL);
      const char *basis = text_of (stage, id);
      g_autofree char *share = sw_quantity_text (sw_allowance_shares[i], SW_UNIT_PERCENT,
                                                 sw_stage_style (stage));

      /* Translators: a name and what is said of it */
      names[i] = sw_allowance_shares[i] > 0.0
                     ? g_strdup_printf (_ ("%s: %s"), share, basis)
                     : capitalised (basis);
    }
  return names;
}

char **
sw_choice_loss_units_names (SwStage *stage, gsize which)
{
  const char *names[] = { C_ ("units", "Metric (SI)"), C_ ("units", "US"), NULL };

  return g_strdupv ((char **) names);
}

char **
sw_choice_rills_names (SwStage *stage, gsize which)
{
  static const char *const ids[] = { "rills.high", "rills.moderate", "rills.low" };

  return names_of_ids (stage, ids, G_N_ELEMENTS (ids));
}

char **
sw_choice_net_names (SwStage *stage, gsize which)
{
  static const char *const ids[] = { "net.not-stated", "net.none", "net.plastic",
                                     "net.plant" };

  return names_of_ids (stage, ids, G_N_ELEMENTS (ids));
}

char **
sw_choice_units_names (SwStage *stage, gsize which)
{
  const char *names[] = { C_ ("units", "Metric"), C_ ("units", "US"), NULL };

  return g_strdupv ((char **) names);
}

char **
sw_choice_language_names (SwStage *stage, gsize which)
{
  char **codes = sw_stage_stock (stage)->languages;
  char **names = g_new0 (char *, g_strv_length (codes) + 1);

  for (guint i = 0; codes[i] != NULL; i++)
    {
      g_autofree char *id = g_strconcat ("language.", codes[i], NULL);
      names[i] = g_strdup (text_of (stage, id));
    }
  return names;
}

int
sw_choice_language_get (SwStage *stage, gsize which)
{
  char **codes = sw_stage_stock (stage)->languages;

  for (int i = 0; codes[i] != NULL; i++)
    if (g_str_equal (codes[i], sw_stage_job (stage)->language))
      return i;
  return -1;
}

void
sw_choice_language_set (SwStage *stage, SwJob *job, SwFace *face, gsize which,
                        guint index)
{
  sw_text_set (&job->language, sw_stage_stock (stage)->languages[index]);
}

char **
sw_choice_paper_names (SwStage *stage, gsize which)
{
  char **names = g_new0 (char *, SW_PAPER_COUNT + 1);

  for (guint i = 0; i < SW_PAPER_COUNT; i++)
    names[i] = g_strdup (sw_paper_code ((SwPaper) i));
  return names;
}

char **
sw_choice_kind_names (SwStage *stage, gsize which)
{
  char **names = g_new0 (char *, SW_PACK_KIND_COUNT + 1);

  for (int i = 0; i < SW_PACK_KIND_COUNT; i++)
    {
      g_autofree char *id = g_strconcat ("pack-kind.", sw_pack_kind_codes[i], NULL);
      names[i] = g_strdup (text_of (stage, id));
    }
  return names;
}

/* Sets of exercises to choose from here; a file may name any other. */
#define SEEDS 20

char **
sw_choice_seed_names (SwStage *stage, gsize which)
{
  char **names = g_new0 (char *, SEEDS + 1);

  for (int i = 0; i < SEEDS; i++)
    names[i] = g_strdup_printf (_ ("Set %d"), i + 1);
  return names;
}

int
sw_choice_seed_get (SwStage *stage, gsize which)
{
  guint seed = sw_pack_plan_seed (&sw_stage_job (stage)->pack);

  return seed <= SEEDS ? (int) seed - 1 : -1;
}

void
sw_choice_seed_set (SwStage *stage, SwJob *job, SwFace *face, gsize which, guint index)
{
  job->pack.seed = index + 1;
}
