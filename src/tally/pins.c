/* SPDX-License-Identifier: MIT */
#include "tally-private.h"
#include <math.h>
#include <slopewright/base/count.h>
#include <string.h>

/* How far apart the pins of a role stand; the field grid is the tier's own. */
static const SwPracticeValue spacing_of[SW_PIN_ROLE_COUNT] = {
  [SW_PIN_KEY_TRENCH] = SW_PRACTICE_TRENCH_PIN_M,
  [SW_PIN_SLOT] = SW_PRACTICE_SLOT_PIN_M,
  [SW_PIN_SIDE_LAP] = SW_PRACTICE_SIDE_LAP_PIN_M,
  [SW_PIN_END_LAP] = SW_PRACTICE_END_LAP_PIN_M,
  [SW_PIN_EDGE] = SW_PRACTICE_EDGE_PIN_M,
  [SW_PIN_TOE] = SW_PRACTICE_TOE_PIN_M,
  [SW_PIN_FIELD] = SW_PRACTICE_PIN_DOWN_M,
  [SW_PIN_RING] = SW_PRACTICE_RING_PIN_M,
};

static const char *const formula_of[SW_PIN_ROLE_COUNT] = {
  [SW_PIN_KEY_TRENCH] = "pins_line", [SW_PIN_SLOT] = "pins_line",
  [SW_PIN_TOE] = "pins_line",        [SW_PIN_SIDE_LAP] = "pins_lap",
  [SW_PIN_EDGE] = "pins_edge",       [SW_PIN_FIELD] = "pins_field",
  [SW_PIN_END_LAP] = "pins_end_lap", [SW_PIN_RING] = "pins_ring",
};

/* Every trench line of the kind, and how many of its pins another row had already. */
static void
add_lines (SwWorking *working, const SwLayout *layout, const SwFaceLayout *face,
           SwTrenchKind kind, SwPinRole role)
{
  double spacing_m = layout->practice->values[spacing_of[role]].value;
  double pins = 0.0;

  for (guint i = 0; i < face->n_trenches; i++)
    if (face->trenches[i].kind == kind)
      {
        double length_m = face->trenches[i].length_m;

        pins += sw_count_up (length_m, spacing_m) + 1;
        sw_working_part (working, "line", length_m, SW_UNIT_M);
      }
  sw_working_part (working, "shared", pins - (double) face->pins_by_role[role],
                   SW_UNIT_COUNT);
}

/* Tiers may differ in gradient, and so in what a density rule asks for. */
static void
add_grids (SwWorking *working, const SwLayout *layout, const SwFaceLayout *face)
{
  for (guint i = 0; i < face->n_tiers; i++)
    {
      sw_working_part (working, "down", face->tiers[i].pin_down_m, SW_UNIT_M);
      if (face->tiers[i].density_floor_per_m2 > 0.0)
        sw_working_part (working, "floor", face->tiers[i].density_floor_per_m2,
                         SW_UNIT_PER_M2);
    }
  sw_working_practice (working, "down_most", layout->practice, SW_PRACTICE_PIN_DOWN_M);
  sw_working_practice (working, "across_most", layout->practice,
                       SW_PRACTICE_PIN_ACROSS_M);
}

static double
count_laps (const SwFaceLayout *face)
{
  int laps = 0;

  for (guint i = 0; i < face->n_tiers; i++)
    laps += face->tiers[i].closed ? face->tiers[i].strips : face->tiers[i].strips - 1;
  return laps;
}

static double
count_joints (const SwFaceLayout *face)
{
  guint joints = 0;

  for (guint i = 0; i < face->n_runs; i++)
    joints += sw_run_end_laps (&face->runs[i]);
  return joints;
}

static int
count_infill (const SwFaceLayout *face)
{
  int infill = 0;

  for (guint i = 0; i < face->n_tiers; i++)
    infill += face->tiers[i].infill;
  return infill;
}

static SwWorking *
add_role (SwTally *tally, const SwLayout *layout, const SwFaceLayout *face,
          SwPinRole role)
{
  gsize count = face->pins_by_role[role];
  int infill = count_infill (face);
  const char *formula =
      role == SW_PIN_SIDE_LAP && infill > 0 ? "pins_lap_infill" : formula_of[role];
  SwWorking *working = sw_tally_add (
      tally, sw_working_new (formula, (double) count, SW_UNIT_COUNT, SW_ROUNDING_NONE,
                             "%s.pins.%s", face->face->id, sw_pin_role_code (role)));

  if (role == SW_PIN_FIELD)
    add_grids (working, layout, face);
  else
    sw_working_practice (working, "spacing", layout->practice, spacing_of[role]);
  if (role == SW_PIN_KEY_TRENCH)
    add_lines (working, layout, face, SW_TRENCH_KEY, role);
  if (role == SW_PIN_SLOT)
    add_lines (working, layout, face, SW_TRENCH_SLOT, role);
  if (role == SW_PIN_TOE)
    add_lines (working, layout, face, SW_TRENCH_TOE, role);
  if (role == SW_PIN_SIDE_LAP)
    sw_working_part (working, "laps", count_laps (face), SW_UNIT_COUNT);
  if (role == SW_PIN_SIDE_LAP && infill > 0)
    sw_working_part (working, "infill", infill, SW_UNIT_COUNT);
  if (role == SW_PIN_END_LAP)
    sw_working_part (working, "joints", count_joints (face), SW_UNIT_COUNT);
  return working;
}

static SwWorking *
add_face_pins (SwTally *tally, const SwLayout *layout, const SwFaceLayout *face)
{
  g_autoptr (GPtrArray) parts = g_ptr_array_new ();
  SwWorking *sum;

  for (int role = 0; role < SW_PIN_ROLE_COUNT; role++)
    if (face->pins_by_role[role] > 0)
      g_ptr_array_add (parts, add_role (tally, layout, face, (SwPinRole) role));
  sum = sw_tally_add (tally,
                      sw_working_new ("pins_face", (double) face->n_pins, SW_UNIT_COUNT,
                                      SW_ROUNDING_NONE, "%s.pins", face->face->id));
  for (guint i = 0; i < parts->len; i++)
    sw_working_computed (sum, "role", g_ptr_array_index (parts, i));
  return sum;
}

/* One working a soil: the face's own, then the zones that have pins. */
static void
add_pin_length (SwTally *tally, const SwLayout *layout, const SwFaceLayout *face,
                const SwPinLength *length)
{
  const SwZone *zone = length->zone;
  const SwSoil *soil = sw_catalogue_soil (
      layout->catalogue, zone != NULL ? zone->soil_id : face->face->soil_id);
  gboolean loose = zone != NULL ? zone->loose : face->face->loose;
  SwWorking *working =
      zone == NULL ? sw_working_new ("pin_length", length->need_m, SW_UNIT_SMALL_M,
                                     SW_ROUNDING_NONE, "%s.pin-length", face->face->id)
                   : sw_working_new ("pin_length_zone", length->need_m, SW_UNIT_SMALL_M,
                                     SW_ROUNDING_NONE, "%s.zone.%s.pin-length",
                                     face->face->id, zone->id);

  sw_tally_add (tally, working);
  sw_working_practice (working, "least", layout->practice, SW_PRACTICE_PIN_LENGTH_M);
  sw_working_sourced (working, "by_soil", loose ? &soil->pin_loose_m : &soil->pin_firm_m,
                      SW_UNIT_SMALL_M);
  sw_working_measured (working, "topsoil",
                       zone != NULL ? zone->topsoil_m : face->face->topsoil_m,
                       SW_UNIT_SMALL_M);
  if (zone != NULL)
    sw_working_part (working, "pins", (double) length->count, SW_UNIT_COUNT);
}

static SwPinOrder *
order_for (SwTally *tally, const SwPinLength *length)
{
  SwPinOrder fresh = { .pin = length->pin, .need_m = length->need_m };

  for (guint i = 0; i < tally->pin_orders->len; i++)
    {
      SwPinOrder *order = &g_array_index (tally->pin_orders, SwPinOrder, i);

      if (order->pin == length->pin
          && (length->pin != NULL
              || sw_ticks (order->need_m) == sw_ticks (length->need_m)))
        {
          order->need_m = fmax (order->need_m, length->need_m);
          return order;
        }
    }
  g_array_append_val (tally->pin_orders, fresh);
  return &g_array_index (tally->pin_orders, SwPinOrder, tally->pin_orders->len - 1);
}

static void
add_to_orders (SwTally *tally, const SwFaceLayout *face)
{
  g_autofree gsize *counts = g_new0 (gsize, face->n_pin_lengths * SW_PIN_ROLE_COUNT);

  if (face->n_pin_lengths == 1)
    memcpy (counts, face->pins_by_role, sizeof face->pins_by_role);
  else
    for (gsize i = 0; i < face->n_pins; i++)
      counts[face->pins[i].length * SW_PIN_ROLE_COUNT + face->pins[i].role]++;
  for (guint l = 0; l < face->n_pin_lengths; l++)
    {
      SwPinOrder *order;

      /* Zones may take every pin from the face's own soil. */
      if (face->n_pin_lengths > 1 && face->pin_lengths[l].count == 0)
        continue;
      order = order_for (tally, &face->pin_lengths[l]);
      order->count += face->pin_lengths[l].count;
      for (int role = 0; role < SW_PIN_ROLE_COUNT; role++)
        order->by_role[role] += counts[l * SW_PIN_ROLE_COUNT + (guint) role];
    }
}

static int
compare_orders (gconstpointer a, gconstpointer b)
{
  const SwPinOrder *x = a, *y = b;
  double length_x = x->pin != NULL ? x->pin->length_m : x->need_m;
  double length_y = y->pin != NULL ? y->pin->length_m : y->need_m;

  return (length_x > length_y) - (length_x < length_y);
}

/* Boxes for the count and its spares; without a box size the pins are ordered singly. */
static void
round_to_boxes (SwTally *tally, const SwLayout *layout, SwPinOrder *order)
{
  const SwSourced *spare = &layout->practice->values[SW_PRACTICE_PIN_SPARE];
  gsize wanted = (gsize) sw_count_up_ratio ((double) order->count * (1.0 + spare->value));
  double length_m = order->pin != NULL ? order->pin->length_m : order->need_m;
  SwWorking *working;

  order->boxes = order->pin != NULL && order->pin->per_box > 0
                     ? (int) ((wanted + (gsize) order->pin->per_box - 1)
                              / (gsize) order->pin->per_box)
                     : 0;
  order->order =
      order->boxes > 0 ? (gsize) order->boxes * (gsize) order->pin->per_box : wanted;
  order->spare = wanted - order->count;
  working = sw_tally_add (tally, sw_working_new ("pins_order", (double) order->order,
                                                 SW_UNIT_COUNT, SW_ROUNDING_UP,
                                                 "pins.%.0f", length_m * 1000.0));
  sw_working_part (working, "pins", (double) order->count, SW_UNIT_COUNT);
  sw_working_practice (working, "spare", layout->practice, SW_PRACTICE_PIN_SPARE);
  if (order->boxes > 0)
    {
      SwSourced per_box = { order->pin->per_box, order->pin->evidence,
                            order->pin->source_id };

      sw_working_sourced (working, "per_box", &per_box, SW_UNIT_COUNT);
      sw_working_part (working, "boxes", order->boxes, SW_UNIT_COUNT);
    }
}

void
sw_tally_pins (SwTally *tally, const SwLayout *layout)
{
  for (guint f = 0; f < layout->n_faces; f++)
    {
      const SwFaceLayout *face = &layout->faces[f];

      for (guint l = 0; l < face->n_pin_lengths; l++)
        if (l == 0 || face->pin_lengths[l].count > 0)
          add_pin_length (tally, layout, face, &face->pin_lengths[l]);
      add_face_pins (tally, layout, face);
      add_to_orders (tally, face);
      tally->pins += face->n_pins;
    }
  g_array_sort (tally->pin_orders, compare_orders);
  for (guint i = 0; i < tally->pin_orders->len; i++)
    round_to_boxes (tally, layout, &g_array_index (tally->pin_orders, SwPinOrder, i));
}
