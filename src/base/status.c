/* SPDX-License-Identifier: MIT */
#include <slopewright/base/status.h>

/* Marks words that the window shows in its own language. */
#define N_(words) words

static const char *const texts[SW_STATUS_COUNT] = {
  [SW_OK] = N_ ("no fault"),
  [SW_E_RANGE] = N_ ("a number is missing or outside its range"),
  [SW_E_FEW_POINTS] = N_ ("a section needs at least two points and an outline three"),
  [SW_E_SECTION] = N_ ("the section must run outwards and downhill from crest to toe"),
  [SW_E_OUTLINE] = N_ ("the outline crosses or touches itself"),
  [SW_E_ROUND] =
      N_ ("a round face is longer at its crest than a full circle of its crest radius"),
  [SW_E_EMPTY] = N_ ("nothing of the outline lies between crest and toe"),
  [SW_E_ROLL] =
      N_ ("a roll is too narrow for its side lap or too short for one piece, or "
          "the narrow roll is as wide as the other"),
  [SW_E_TOO_MANY] =
      N_ ("the face would take more runs or pins than can be placed one by one"),
  [SW_E_UNKNOWN_ID] = N_ ("a practice, soil, blanket or pin is not in the catalogue"),
  [SW_E_OBSTACLE] = N_ ("the outline of an obstacle crosses or touches itself"),
  [SW_E_ZONE] = N_ ("the outline of a soil zone crosses or touches itself"),
};

const char *
sw_status_text (SwStatus status)
{
  return (unsigned) status < SW_STATUS_COUNT ? texts[status] : N_ ("unknown fault");
}
