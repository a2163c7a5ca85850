/* SPDX-License-Identifier: MIT */
#pragma once

#include <slopewright/document/document.h>

/*
 * What is not saved yet is kept as a draft beside, so that a crash or a power cut
 * loses at most the last seconds. A draft belongs to one open document, whose
 * process holds a lock on it; the lock goes with the process, however that ends.
 */

/** SwDraft: keeps the draft of one document. */
#define SW_TYPE_DRAFT (sw_draft_get_type ())
G_DECLARE_FINAL_TYPE (SwDraft, sw_draft, SW, DRAFT, GObject)

/** Where drafts are kept for this user. (transfer full) */
char *sw_draft_folder (void);

/**
 * sw_draft_new:
 * @document: watched; a change is written a second after the last one, if not told otherwise
 * @folder: made when it is needed
 *
 * Once the document has nothing unsaved, and when the draft is disposed of, the
 * files go. Trouble with writing is a warning in the log, never in the way.
 */
SwDraft *sw_draft_new (SwDocument *document, const char *folder);

/** @delay_s: seconds after the last change until it is written, from the next change on */
void sw_draft_set_delay (SwDraft *draft, guint delay_s);

/** Write now what is still to be written. */
void sw_draft_flush (SwDraft *draft);

/** A draft that no running program owns. */
typedef struct
{
  char *path;          /* of the job in it */
  char *name;          /* of the job; "" when it has none */
  GFile *origin;       /* the file it was a change of; NULL for an untitled job */
  char *origin_digest; /* of that file as the draft's writer knew it; NULL: not known */
  gboolean origin_changed; /* something else wrote to it since */
  gint64 saved_at;         /* seconds since 1970 */
} SwLostDraft;

/** (transfer full) (element-type SwLostDraft): newest first; empty when there are none. */
GPtrArray *sw_draft_lost (const char *folder);

/**
 * sw_draft_recover:
 * @document: gets the draft as an unsaved change of its origin, so that undoing it
 *   goes back to the saved file; where that changed since, it is SW_ON_DISK_CHANGED, so
 *   that saving must ask first
 * @label: what that step is called in menus
 *
 * The lost draft stays until sw_draft_discard(): flush the document's own draft first.
 *
 * Returns: FALSE with @error when it cannot be read; the document is untouched
 */
gboolean sw_draft_recover (const SwLostDraft *lost, SwDocument *document,
                           const char *label, GError **error);

/** Throw the draft away for good. */
void sw_draft_discard (const SwLostDraft *lost);
