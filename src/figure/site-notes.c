/* SPDX-License-Identifier: MIT */
#include "site-marks.h"
#include <math.h>

/* A name stands so far off its obstacle, or off the patch round that; further out it has a
 * leader. */
#define BESIDE_MM 2.3
#define OFF_PATCH_MM 0.8
#define RING_MM 4.0
#define RINGS 6

/* A longer name stands in the key only. */
#define LONGEST_NAME_MM 34.0

/* Names of soils try the middles of a grid over the face. */
#define COLUMNS 12
#define ROWS 7

/* A soil's name outside the face stands in one of these rows above or below it. */
#define BELOW_MM 9.5
#define ABOVE_MM 12.6
#define OUTSIDE_ROW_MM 4.0

/* Places are in one row within this. */
#define SAME_ROW_MM 0.1

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

static double
patch_mm (const SwDrawing *drawing)
{
  return drawing->laid != NULL ? sw_drawing_practice (drawing, SW_PRACTICE_COLLAR_M)
                                     * fabs (drawing->view->x_mm_per_m)
                               : 0.0;
}

/* The obstacle and its patch, but for a line of text through its middle. */
static void
keep_clear (SwDrawing *drawing, SwBoxOnPaper paper, double half_line_mm)
{
  double by = patch_mm (drawing) + 0.4;
  double x = paper.x0_mm - by, width = paper.x1_mm - paper.x0_mm + 2.0 * by;
  double middle = (paper.y0_mm + paper.y1_mm) / 2.0;
  double half = middle - paper.y0_mm + by - half_line_mm;

  sw_labels_reserve_rect (drawing->labels, x, paper.y0_mm - by, width, half);
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

static SwBoxOnPaper
box_on_paper (const GArray *path)
{
  SwBoxOnPaper box = { INFINITY, INFINITY, -INFINITY, -INFINITY };

  for (guint p = 0; p < path->len; p++)
    {
      SwPaperPoint at = g_array_index (path, SwPaperPoint, p);

      box = (SwBoxOnPaper){ fmin (box.x0_mm, at.x_mm), fmin (box.y0_mm, at.y_mm),
                            fmax (box.x1_mm, at.x_mm), fmax (box.y1_mm, at.y_mm) };
    }
  return box;
}

/* Within the obstacle when the words fit, else round it. */
static void
note_obstacle (SwDrawing *drawing, const SwLie *lie, guint i)
{
  const SwObstacle *obstacle = drawing->face->obstacles->pdata[i];
  g_autofree char *words = short_words (drawing, i);
  g_autofree char *number = g_strdup_printf ("%u", i + 1);
  g_autoptr (GArray) ring =
      lie->path (drawing, obstacle->outline, obstacle->n_outline, TRUE);
  SwBoxOnPaper box = box_on_paper (ring);
  SwPaperPoint middle = { (box.x0_mm + box.x1_mm) / 2.0, (box.y0_mm + box.y1_mm) / 2.0 };
  double half = half_width_mm (drawing, words);
  double off_mm = fmax (BESIDE_MM, patch_mm (drawing) + OFF_PATCH_MM);
  SwLabelSpot spots[1 + RINGS * SW_LABEL_WAYS];
  gboolean fits = box.x1_mm - box.x0_mm > 2.0 * half + 1.0
                  && box.y1_mm - box.y0_mm > drawing->text_mm * 1.6;
  guint n = 0;

  if (fits)
    spots[n++] = (SwLabelSpot){ middle.x_mm, middle.y_mm, 0.0 };
  for (guint k = 0; k < RINGS; k++, n += SW_LABEL_WAYS)
    sw_label_round (box, half, drawing->text_mm / 2.0, off_mm + k * RING_MM, spots + n);
  keep_clear (drawing, box, fits ? drawing->text_mm * 0.8 : 0.0);
  sw_labels_wish (drawing->labels,
                  &(SwLabelWish){ .rank = SW_LABEL_NEEDED,
                                  .role = SW_ROLE_TEXT,
                                  .style = SW_LABEL_KNOCK_OUT | SW_LABEL_LEADER,
                                  .size_mm = drawing->text_mm,
                                  .object = sw_drawing_object_id (drawing, "/obstacle/%s",
                                                                  obstacle->id),
                                  .text = words,
                                  .shorter = number,
                                  .target = middle,
                                  .spots = spots,
                                  .n_spots = n,
                                  .n_beside = n - (RINGS - 1) * SW_LABEL_WAYS });
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

/* The middle one of those level with the first. */
static SwLabelSpot
middle_of_row (const SwLabelSpot *spots, guint n_spots)
{
  guint n = 1;

  while (n < n_spots && fabs (spots[n].y_mm - spots[0].y_mm) < SAME_ROW_MM)
    n++;
  return spots[n / 2];
}

/* Below and above the face, straight off the place or to either side of that. */
static void
add_outside (const SwDrawing *drawing, const SwLie *lie, double x_mm, double half_mm,
             GArray *spots)
{
  const SwFace *face = drawing->face;
  g_autoptr (GArray) ring = lie->path (drawing, face->outline, face->n_outline, TRUE);
  SwBoxOnPaper box = box_on_paper (ring);

  for (guint row = 0; row < 3; row++)
    for (int below = 1; below >= 0; below--)
      for (int side = 0; side < 3; side++)
        {
          double off_mm = row * OUTSIDE_ROW_MM;
          SwLabelSpot spot = { x_mm + (side == 2 ? -1 : side) * half_mm,
                               below ? box.y1_mm + BELOW_MM + off_mm
                                     : box.y0_mm - ABOVE_MM - off_mm,
                               0.0 };

          g_array_append_val (spots, spot);
        }
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
  g_autoptr (GArray) target = spots_on (drawing, lie, entry->zone, 0.0);
  g_autoptr (GArray) spots = spots_on (drawing, lie, entry->zone, half_m);
  guint n_beside = spots->len;
  const char *object = entry->zone != NULL
                           ? sw_drawing_object_id (drawing, "/zone/%s", entry->zone->id)
                           : NULL;
  SwLabelSpot at;

  if (target->len == 0)
    return;
  at = middle_of_row ((const SwLabelSpot *) (gpointer) target->data, target->len);
  add_outside (drawing, lie, at.x_mm, half_m * fabs (drawing->view->x_mm_per_m), spots);
  sw_drawing_name (drawing, SW_LABEL_NEEDED, (SwPaperPoint){ at.x_mm, at.y_mm },
                   (const SwLabelSpot *) spots->data, spots->len, n_beside, object,
                   words);
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
