/* SPDX-License-Identifier: MIT */
#pragma once

#include <gtk/gtk.h>

/** A job file that can be opened from the start page. */
typedef struct
{
  char *name; /* as people know it */
  char *note; /* where it stands, or what it shows */
  GFile *file;
} SwStartChoice;

/** Jobs opened before that are still there, newest first, at most @most. (transfer full) (element-type SwStartChoice) */
GPtrArray *sw_start_recent (guint most);

/** Forget which jobs were opened and saved; other programs' files stay listed. */
void sw_start_forget_recent (void);

/** The user's folder of templates, NULL where there is none. */
const char *sw_start_template_folder (void);

/**
 * sw_start_templates:
 * @folder: (nullable): where to look
 *
 * Returns: (transfer full) (element-type SwStartChoice): its jobs by name; none for NULL
 */
GPtrArray *sw_start_templates (const char *folder);

/** Jobs that come with the program. (transfer full) (element-type SwStartChoice) */
GPtrArray *sw_start_examples (void);
