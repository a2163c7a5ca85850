/* SPDX-License-Identifier: MIT */
#pragma once

#include <slopewright/judge/result.h>

/** What a face's numbers may be off by. Text ids "error-source.<code>". */
typedef enum
{
  SW_ERROR_LENGTH, /* "length": taped down the face */
  SW_ERROR_ANGLE,  /* "angle" */
  SW_ERROR_WIDTH,  /* "width": taped along the crest */
  SW_ERROR_SOURCE_COUNT
} SwErrorSource;

const char *sw_error_source_code (SwErrorSource source);

typedef struct
{
  double low, high;
} SwBand;

/**
 * SwSpread: how far measuring errors carry. Every face is measured again one
 * standard error too long and too short in each way; the job is laid out each
 * time, and the changes of the ways are added as squares.
 */
typedef struct
{
  SwBand rolls, runs, pins; /* whole numbers */
  SwErrorSource largest;    /* of the roll count's spread, by blanket length */
  gboolean any;             /* FALSE: no error was given, or it changes nothing */
  SwBand *ratio_hv;         /* per face: steepest tier's H:V, low is steeper */
  guint n_faces;
} SwSpread;

/**
 * sw_spread_new:
 * @result: a laid-out job, status SW_OK
 *
 * Lays the job out six times more; not for every frame of a drag.
 * Returns: (transfer full) (nullable): NULL if @result has no layout.
 */
SwSpread *sw_spread_new (const SwResult *result);
void sw_spread_free (SwSpread *spread);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (SwSpread, sw_spread_free)

/**
 * sw_face_misread:
 * @face: (inout): its section and outline are replaced by what would have been
 *   drawn had @source been read @errors standard errors too large
 *
 * An angle read with a taped face turns the face about its crest; an angle
 * read with a rise keeps the rise (dL / L = -cot (angle) d(angle)).
 */
void sw_face_misread (SwFace *face, SwErrorSource source, double errors);
