/* SPDX-License-Identifier: MIT */
#pragma once

#include <slopewright/document/document.h>

/**
 * SwDiskCopy: a job's file, and whether what stands in it is still what this program read
 * from it or wrote to it. Bytes are compared, so that a file that was only touched, or
 * came back, has not changed.
 */
typedef struct SwDiskCopy SwDiskCopy;

/** @changed: called with @data when sw_disk_copy_state() is another. */
SwDiskCopy *sw_disk_copy_new (void (*changed) (gpointer data), gpointer data);
void sw_disk_copy_free (SwDiskCopy *copy);

/**
 * Watch @file (NULL for none) from now on.
 *
 * @digest: (nullable): of the bytes known, as sw_job_file_digest() gives it; NULL when no
 *   file is known to be there. The state begins as SW_ON_DISK_SAME.
 */
void sw_disk_copy_follow (SwDiskCopy *copy, GFile *file, const char *digest);

SwOnDisk sw_disk_copy_state (const SwDiskCopy *copy);
GFile *sw_disk_copy_file (const SwDiskCopy *copy);
const char *sw_disk_copy_digest (const SwDiskCopy *copy);

/** Read the file now, without waiting to be told. */
void sw_disk_copy_look (SwDiskCopy *copy);
/** Take what is there now for known. */
void sw_disk_copy_accept (SwDiskCopy *copy);
