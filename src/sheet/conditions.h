/* SPDX-License-Identifier: MIT */
#pragma once

#include "sheet.h"

/** What a job must have for a row or a rule that is about it. */
typedef enum
{
  SW_IF_ALWAYS,
  SW_IF_LAPS,
  SW_IF_FIELD, /* pins between the laps */
  SW_IF_JOINTS,
  SW_IF_SLOTS,
  SW_IF_OBSTACLES /* with a collar */
} SwCondition;

/** Whether the job has it anywhere. */
gboolean sw_sheet_holds (const SwSheet *sheet, SwCondition condition);
