/* SPDX-License-Identifier: MIT */
#pragma once

/**
 * SwStatus: why a computation gave no answer.
 *
 * A function that returns anything but SW_OK leaves its outputs untouched.
 * Engineering doubt is a finding (judge), trouble with files is a GError
 * (store, paint); neither is a status.
 */
typedef enum
{
  SW_OK = 0,
  SW_E_RANGE,      /* a number is not finite, or outside its stated range */
  SW_E_FEW_POINTS, /* a section needs two points, an outline three */
  SW_E_SECTION,  /* section points do not run outwards, or crest and toe are misplaced */
  SW_E_OUTLINE,  /* the outline crosses or touches itself */
  SW_E_ROUND,    /* a round face turns through more than a full circle */
  SW_E_EMPTY,    /* nothing of the outline lies between crest and toe */
  SW_E_ROLL,     /* the roll is too narrow for its lap, or too short for a piece */
  SW_E_TOO_MANY, /* more strips or pins than this program counts one by one */
  SW_E_UNKNOWN_ID, /* a practice, soil, blanket or pin is not in the catalogue */
  SW_E_OBSTACLE,   /* an obstacle's outline crosses or touches itself or is too small */
  SW_E_ZONE,       /* the same of a soil zone */
  SW_STATUS_COUNT  /* not a status: how many there are */
} SwStatus;

/**
 * sw_status_text:
 * @status: any status
 *
 * Returns: (transfer none): one English sentence without a full stop.
 */
const char *sw_status_text (SwStatus status);
