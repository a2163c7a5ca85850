/* SPDX-License-Identifier: MIT */
#pragma once

#include <slopewright/figure/laying-view.h>

/*
 * What is said to a crew or a class at each step of the laying sequence: the words of the
 * pack's steps and of its hazard table, with the numbers of this run on this slope.
 */
typedef struct SwBriefing SwBriefing;

/** Everything said at one step; in markup as in packs: *bold*, ** for an asterisk. */
typedef struct
{
  char *where;  /* "Face A, tier 2 · run 7, 3 of 27 in the laying order" */
  char *title;  /* what is done */
  char *number; /* the numbers of this step */
  char **doing; /* one action each; NULL-terminated */
  char *who;    /* tools and people */
  char *hold;   /* hold point; NULL at a step without one */
  char *caution;
  char *so_far; /* how much of the face is laid and pinned */
} SwBriefingWords;

/**
 * sw_briefing_new:
 * @result: status must be SW_OK
 * @sequence: of the result's layout
 * @draw: texts and style of the language to speak
 *
 * All are borrowed and must outlive the briefing. Returns: (transfer full)
 */
SwBriefing *sw_briefing_new (const SwResult *result, const SwLayingSequence *sequence,
                             const SwDraw *draw);
void sw_briefing_free (SwBriefing *briefing);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (SwBriefing, sw_briefing_free)

/** @step: of the sequence. Returns: (transfer full) */
SwBriefingWords *sw_briefing_words (SwBriefing *briefing, guint step);
void sw_briefing_words_free (SwBriefingWords *words);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (SwBriefingWords, sw_briefing_words_free)
