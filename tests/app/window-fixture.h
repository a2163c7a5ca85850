/* SPDX-License-Identifier: MIT */
#pragma once

#include "pack-order.h"
#include "sw-window.h"

/* A window of its own over the default job. */
typedef struct
{
  SwStock *stock;
  SwPreferences *preferences;
  SwWindow *window;
  SwStage *stage;
  SwDocument *document;
} WindowFixture;

void window_fixture_set_up (WindowFixture *fixture);

/* Opens a file of the examples in it. */
void window_fixture_load_example (WindowFixture *fixture, const char *name);

/* Until @window, of the fixture or a dialog, stands as it will: half a second, and as many
 * frames as a change of its layout may take, however slow the machine. It is shown. */
void window_settle (GtkWidget *window);

/* The pack of the job shown, made while the caller waits. (transfer full) */
GPtrArray *window_fixture_pages (WindowFixture *fixture);

/* Closes the window and holds that nothing keeps it, its stage or its document. */
void window_fixture_tear_down (WindowFixture *fixture);
