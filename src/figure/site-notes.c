/* SPDX-License-Identifier: MIT */
#include "site-marks.h"
#include <math.h>

/* A name stands so far off its obstacle. */
#define BESIDE_MM 3.8

/* A longer name stands in the key only. */
#define LONGEST_NAME_MM 34.0

/* Names of soils try the middles of a grid over the face. */
#define COLUMNS 12
#define ROWS 7

/* The key lists so many obstacles; the findings have them all. */
#define MOST_LISTED 6

static double
half_width_mm (const SwDrawing *drawing, const char *text)
{
  return sw_drawing_width_mm (drawing, text, drawing->text_mm) / 2.0;
}

/* "2 Tree ring" */
static char *
obstacle_words (const SwFace *face, guint i, const SwDraw *draw)
{
  const SwObstacle *obstacle = face->obstacles->pdata[i];
  g_autofree char *number = g_strdup_printf ("%u", i + 1);
  const char *name = *obstacle->name != '\0'
                         ? obstacle->name
                         : sw_texts_get (draw->texts, "drawing.obstacle-unnamed");

  return sw_texts_fill (draw->texts, "drawing.obstacle", "number", number, "name", name,
                        NULL);
}

/* The obstacle and its patch, but for a line of text through its middle. */
static void
keep_clear (SwDrawing *drawing, SwBox paper, double half_line_mm)
{
  double patch_mm = drawing->laid != NULL
                        ? sw_drawing_practice (drawing, SW_PRACTICE_COLLAR_M)
                              * fabs (drawing->view->x_mm_per_m)
                        : 0.0;
  double by = patch_mm + 0.4;
  double x = paper.x0_m - by, width = paper.x1_m - paper.x0_m + 2.0 * by;
  double middle = (paper.y0_m + paper.y1_m) / 2.0;
  double half = middle - paper.y0_m + by - half_line_mm;

  sw_labels_reserve_rect (drawing->labels, x, paper.y0_m - by, width, half);
  sw_labels_reserve_rect (drawing->labels, x, middle + half_line_mm, width, half);
}

/* The name, or on paper the number alone when the name is long. */
static char *
short_words (const SwDrawing *drawing, guint i)
{
  g_autofree char *words = obstacle_words (drawing->face, i, drawing->draw);

  if (drawing->draw->on_screen || 2.0 * half_width_mm (drawing, words) < LONGEST_NAME_MM)
    return g_steal_pointer (&words);
  return g_strdup_printf ("%u", i + 1);
}

/* Within the obstacle when the words fit, else round it. */
static void
note_obstacle (SwDrawing *drawing, const SwLie *lie, guint i)
{
  const SwObstacle *obstacle = drawing->face->obstacles->pdata[i];
  g_autofree char *words = short_words (drawing, i);
  g_autoptr (GArray) ring =
      lie->path (drawing, obstacle->outline, obstacle->n_outline, TRUE);
  double x0 = INFINITY, y0 = INFINITY, x1 = -INFINITY, y1 = -INFINITY, x, y;
  double half = half_width_mm (drawing, words);
  SwLabelSpot spots[6];
  guint n = 0;

  for (guint p = 0; p < ring->len; p++)
    {
      SwPaperPoint at = g_array_index (ring, SwPaperPoint, p);

      x0 = fmin (x0, at.x_mm);
      x1 = fmax (x1, at.x_mm);
      y0 = fmin (y0, at.y_mm);
      y1 = fmax (y1, at.y_mm);
    }
  x = (x0 + x1) / 2.0;
  y = (y0 + y1) / 2.0;
  if (x1 - x0 > 2.0 * half + 1.0 && y1 - y0 > drawing->text_mm * 1.6)
    spots[n++] = (SwLabelSpot){ x, y, 0.0 };
  spots[n++] = (SwLabelSpot){ x, y0 - BESIDE_MM, 0.0 };
  spots[n++] = (SwLabelSpot){ x, y1 + BESIDE_MM, 0.0 };
  spots[n++] = (SwLabelSpot){ x1 + BESIDE_MM + half, y, 0.0 };
  spots[n++] = (SwLabelSpot){ x0 - BESIDE_MM - half, y, 0.0 };
  spots[n++] = (SwLabelSpot){ x, y0 - 3.0 * BESIDE_MM, 0.0 };
  keep_clear (drawing, (SwBox){ x0, y0, x1, y1 }, n > 5 ? drawing->text_mm * 0.8 : 0.0);
  sw_drawing_label (drawing, SW_LABEL_NEEDED, spots, n,
                    sw_drawing_object_id (drawing, "/obstacle/%s", obstacle->id), words);
}

void
sw_note_obstacles (SwDrawing *drawing, const SwLie *lie)
{
  const GPtrArray *obstacles = drawing->face->obstacles;

  for (guint i = 0; i < obstacles->len; i++)
    if (((const SwObstacle *) obstacles->pdata[i])->n_outline >= 3)
      note_obstacle (drawing, lie, i);
}

static gboolean
in_obstacle (const SwFace *face, SwPoint at)
{
  for (guint i = 0; i < face->obstacles->len; i++)
    {
      const SwObstacle *obstacle = face->obstacles->pdata[i];

      if (obstacle->n_outline >= 3
          && sw_ring_contains ((SwRing){ obstacle->outline, obstacle->n_outline }, at))
        return TRUE;
    }
  return FALSE;
}

/* Whether the place lies on the face, on this soil. */
static gboolean
is_on (const SwFace *face, const SwZone *zone, SwPoint at)
{
  return sw_ring_contains ((SwRing){ face->outline, face->n_outline }, at)
         && sw_face_zone_at (face, at) == zone && !in_obstacle (face, at);
}

/* Middles of a grid where a text of this half width lies on the soil. */
static GArray *
spots_on (const SwDrawing *drawing, const SwLie *lie, const SwZone *zone, double half_m)
{
  const SwFace *face = drawing->face;
  SwBox box = sw_ring_box ((SwRing){ face->outline, face->n_outline });
  double dx = (box.x1_m - box.x0_m) / COLUMNS, dy = (box.y1_m - box.y0_m) / ROWS;
  GArray *spots = g_array_new (FALSE, FALSE, sizeof (SwLabelSpot));

  for (guint row = 0; row < ROWS; row++)
    for (guint column = 0; column < COLUMNS; column++)
      {
        /* From the middle row downwards, then upwards. */
        SwPoint at = { box.x0_m + (column + 0.5) * dx,
                       box.y0_m + ((row + ROWS / 2) % ROWS + 0.5) * dy };
        SwPaperPoint p = lie->at (drawing, at.x_m, at.y_m);
        SwLabelSpot spot = { p.x_mm, p.y_mm, 0.0 };

        if (is_on (face, zone, at)
            && is_on (face, zone, (SwPoint){ at.x_m - half_m, at.y_m })
            && is_on (face, zone, (SwPoint){ at.x_m + half_m, at.y_m }))
          g_array_append_val (spots, spot);
      }
  return spots;
}

/* "Sand, loose: pins 300 mm" */
static char *
soil_words (const SwDrawing *drawing, const SwPinLength *entry)
{
  const SwDraw *draw = drawing->draw;
  const SwZone *zone = entry->zone;
  const char *id = zone != NULL ? zone->soil_id : drawing->face->soil_id;
  const SwSoil *soil = sw_catalogue_soil (drawing->result->layout->catalogue, id);
  gboolean loose = zone != NULL ? zone->loose : drawing->face->loose;
  g_autofree char *length = sw_drawing_small (
      drawing, entry->pin != NULL ? entry->pin->length_m : entry->need_m);

  return sw_texts_fill (
      draw->texts, loose ? "drawing.soil-loose" : "drawing.soil", "soil",
      soil != NULL && soil->name_id != NULL ? sw_texts_get (draw->texts, soil->name_id)
                                            : id,
      "length", length, NULL);
}

static void
note_soil (SwDrawing *drawing, const SwLie *lie, const SwPinLength *entry)
{
  g_autofree char *words = soil_words (drawing, entry);
  double half_m = half_width_mm (drawing, words) / fabs (drawing->view->x_mm_per_m);
  g_autoptr (GArray) spots = spots_on (drawing, lie, entry->zone, half_m);
  const char *object = entry->zone != NULL
                           ? sw_drawing_object_id (drawing, "/zone/%s", entry->zone->id)
                           : NULL;

  if (spots->len == 0)
    return;
  sw_drawing_label (drawing, SW_LABEL_NEEDED, (const SwLabelSpot *) spots->data,
                    spots->len, object, words);
}

void
sw_note_zones (SwDrawing *drawing, const SwLie *lie)
{
  const SwFaceLayout *laid = drawing->laid;

  if (laid == NULL || drawing->face->zones->len == 0)
    return;
  for (guint i = 0; i < laid->n_pin_lengths; i++)
    note_soil (drawing, lie, &laid->pin_lengths[i]);
}

/* Where it stands and how large it is, from the edges that a tape can be hooked on. */
static char *
place_words (const SwFaceLayout *laid, guint i, const SwDraw *draw)
{
  const SwObstaclePlace *place = &laid->obstacles[i];
  SwBox box = sw_ring_box ((SwRing){ laid->face->outline, laid->face->n_outline });
  /* A tape follows the contour through its middle. */
  double stretch = sw_ground_stretch (
      laid->ground, sw_ground_out_m (laid->ground, place->along_from_m,
                                     (place->down_from_m + place->down_to_m) / 2.0));
  g_autofree char *name = obstacle_words (laid->face, i, draw);
  g_autofree char *crest = sw_quantity_text (place->down_from_m, SW_UNIT_M, draw->style);
  g_autofree char *left = sw_quantity_text ((place->along_from_m - box.x0_m) * stretch,
                                            SW_UNIT_M, draw->style);
  g_autofree char *wide = sw_quantity_text (
      (place->along_to_m - place->along_from_m) * stretch, SW_UNIT_M, draw->style);
  g_autofree char *tall =
      sw_quantity_text (place->down_to_m - place->down_from_m, SW_UNIT_M, draw->style);

  return sw_texts_fill (draw->texts, "drawing.key.obstacle-place", "obstacle", name,
                        "crest", crest, "left", left, "wide", wide, "tall", tall, NULL);
}

static void
add_places (GArray *key, const SwFaceLayout *laid, const SwDraw *draw)
{
  guint listed = 0, standing = 0;
  g_autofree char *count = NULL;

  for (guint i = 0; i < laid->n_obstacles; i++)
    if (laid->obstacles[i].standing && ++standing <= MOST_LISTED)
      {
        sw_key_add (key, SW_ROLE_TEXT, SW_KEY_NONE, place_words (laid, i, draw));
        listed++;
      }
  if (standing == listed)
    return;
  count = g_strdup_printf ("%u", standing - listed);
  sw_key_add (
      key, SW_ROLE_TEXT, SW_KEY_NONE,
      sw_texts_fill (draw->texts, "drawing.key.obstacles-more", "count", count, NULL));
}

void
sw_key_add_site (GArray *key, const SwResult *result, guint face_index,
                 const SwDraw *draw)
{
  const SwFace *face = sw_result_face (result, face_index);

  if (face->zones->len > 0)
    sw_key_add (key, SW_ROLE_ZONE, SW_KEY_LINE,
                g_strdup (sw_texts_get (draw->texts, "drawing.key.zone")));
  if (face->obstacles->len == 0)
    return;
  sw_key_add (key, SW_ROLE_OBSTACLE, SW_KEY_BOX,
              g_strdup (sw_texts_get (draw->texts, "drawing.key.obstacle")));
  if (result->layout == NULL)
    return;
  {
    const SwSourced *values = result->layout->practice->values;
    g_autofree char *size = sw_quantity_limit_text (
        values[SW_PRACTICE_COLLAR_M].value, SW_UNIT_SMALL_M, SW_LIMIT_LEAST, draw->style);
    g_autofree char *every =
        sw_quantity_limit_text (values[SW_PRACTICE_RING_PIN_M].value, SW_UNIT_SMALL_M,
                                SW_LIMIT_MOST, draw->style);

    sw_key_add (key, SW_ROLE_COLLAR, SW_KEY_BOX,
                sw_texts_fill (draw->texts, "drawing.key.collar", "size", size, "every",
                               every, NULL));
  }
  add_places (key, &result->layout->faces[face_index], draw);
}
