/* SPDX-License-Identifier: MIT */
#include <slopewright/base/status.h>

static const char *const texts[SW_STATUS_COUNT] = {
  [SW_OK] = "no fault",
  [SW_E_RANGE] = "a number is missing or outside its range",
  [SW_E_FEW_POINTS] = "a section needs at least two points and an outline three",
  [SW_E_SECTION] = "the section must run outwards and downhill from crest to toe",
  [SW_E_OUTLINE] = "the outline crosses or touches itself",
  [SW_E_EMPTY] = "nothing of the outline lies between crest and toe",
  [SW_E_ROLL] = "a roll is too narrow for its side lap or too short for one piece, or "
                "the narrow roll is as wide as the other",
  [SW_E_TOO_MANY] = "the face would take more runs or pins than can be placed one by one",
  [SW_E_UNKNOWN_ID] = "a practice, soil, blanket or pin is not in the catalogue",
  [SW_E_OBSTACLE] = "the outline of an obstacle crosses or touches itself",
  [SW_E_ZONE] = "the outline of a soil zone crosses or touches itself",
};

const char *
sw_status_text (SwStatus status)
{
  return (unsigned) status < SW_STATUS_COUNT ? texts[status] : "unknown fault";
}
