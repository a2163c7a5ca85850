/* SPDX-License-Identifier: MIT */
#pragma once

#include <gio/gio.h>
#include <slopewright/judge/result.h>

/**
 * SwDocument: the job being worked on, its result, its file and its undo
 * steps. No GTK. Signals: "changed" (job or preview changed, result is fresh);
 * properties "modified", "title", "can-undo", "can-redo", "file".
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

gboolean sw_document_modified (SwDocument *document);
GFile *sw_document_file (SwDocument *document); /* (transfer none) (nullable) */
char *sw_document_title (SwDocument *document); /* job or file name; (transfer full) */

/** Reading never touches the document until it has fully succeeded. */
gboolean sw_document_load (SwDocument *document, GFile *file, GError **error);
/** The same without keeping the file: saving asks for a name. */
gboolean sw_document_load_copy (SwDocument *document, GFile *file, GError **error);
gboolean sw_document_save (SwDocument *document, GFile *file, GError **error);
