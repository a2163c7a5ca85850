/* SPDX-License-Identifier: MIT */
#pragma once

#include <gio/gio.h>
#include <slopewright/judge/result.h>

/** What has become of a job's file since it was read or written here. */
typedef enum
{
  SW_ON_DISK_SAME,    /* or there is no file yet */
  SW_ON_DISK_CHANGED, /* something else wrote to it */
  SW_ON_DISK_GONE     /* removed or moved away */
} SwOnDisk;

/**
 * SwDocument: the job being worked on, its result, its file and its undo
 * steps. No GTK. Signals: "changed" (job or preview changed, result is fresh);
 * properties "modified", "title", "can-undo", "can-redo", "file", "on-disk",
 * "newer".
 */
#define SW_TYPE_DOCUMENT (sw_document_get_type ())
G_DECLARE_FINAL_TYPE (SwDocument, sw_document, SW, DOCUMENT, GObject)

/** @catalogue: kept by reference to the caller's; must outlive the document. @job: NULL for the default job. */
SwDocument *sw_document_new (const SwCatalogue *catalogue, const SwJob *job);

/** The job shown: the preview while there is one, else the committed one. (transfer none) */
const SwJob *sw_document_job (SwDocument *document);
/** The committed job, whatever is previewed. (transfer none) */
const SwJob *sw_document_committed (SwDocument *document);
/** Result of sw_document_job(). (transfer none) */
const SwResult *sw_document_result (SwDocument *document);
const SwCatalogue *sw_document_catalogue (SwDocument *document);

/**
 * sw_document_commit:
 * @job: new value; a value equal to the committed one makes no step
 * @label: what was done, for menus: "Move point 3"
 * @key: (nullable): steps with the same key in a row merge, until sw_document_close_step()
 *
 * One gesture, one call. Ends any preview.
 */
void sw_document_commit (SwDocument *document, const SwJob *job, const char *label,
                         const char *key);
void sw_document_close_step (SwDocument *document);

/** Show @job without a step while a drag lasts; NULL ends it and shows the committed job. */
void sw_document_preview (SwDocument *document, const SwJob *job);

gboolean sw_document_can_undo (SwDocument *document);
gboolean sw_document_can_redo (SwDocument *document);
const char *sw_document_undo_label (SwDocument *document); /* NULL if none */
const char *sw_document_redo_label (SwDocument *document);
void sw_document_undo (SwDocument *document);
void sw_document_redo (SwDocument *document);

/** Whether the job is another than the one in its file: by steps taken here, or because the file changed or went. */
gboolean sw_document_modified (SwDocument *document);
GFile *sw_document_file (SwDocument *document); /* (transfer none) (nullable) */
char *sw_document_title (SwDocument *document); /* job or file name; (transfer full) */

/** Reading never touches the document until it has fully succeeded. */
gboolean sw_document_load (SwDocument *document, GFile *file, GError **error);
/** The same without keeping the file: saving asks for a name. */
gboolean sw_document_load_copy (SwDocument *document, GFile *file, GError **error);
/** Writes over whatever stands in @file: see sw_document_look_at_disk(). */
gboolean sw_document_save (SwDocument *document, GFile *file, GError **error);

/** The job was read from a file of a later format, of which this program knows a part: not to be written over it. */
gboolean sw_document_newer (SwDocument *document);

/**
 * The file is watched while the program's main loop runs. Where a file system cannot be
 * watched, and before saving, it is to be looked at.
 */
SwOnDisk sw_document_on_disk (SwDocument *document);
void sw_document_look_at_disk (SwDocument *document);

/**
 * Take what stands in the file now, as a step that undoing takes back.
 *
 * @label: of that step, for menus
 *
 * Returns: FALSE with @error when it cannot be read; the document is untouched
 */
gboolean sw_document_reload (SwDocument *document, const char *label, GError **error);

/** Keep the job here as an unsaved change of what stands in the file now. */
void sw_document_keep_own (SwDocument *document);
