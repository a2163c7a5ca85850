/* SPDX-License-Identifier: MIT */
#pragma once

#include <glib.h>
#include <jansson.h>
#include <slopewright/store/store.h>

/*
 * Reading JSON values with messages that say file, line, key, found, expected.
 *
 * A reader remembers the first trouble only; after it every call is harmless
 * and returns zeros, so a file is read from top to bottom without a test after
 * each value, and the caller asks once, at the end.
 */
typedef struct
{
  const char *where; /* file name for messages */
  const char *text;
  gsize length;
  json_t *root;
  GError *error; /* first trouble */
} SwJsonReader;

/* A value and the way to it. Lives on the stack; must not outlive its parent. */
typedef struct SwJsonPlace
{
  SwJsonReader *reader;
  const struct SwJsonPlace *parent;
  const char *key; /* NULL for an element of a list */
  gsize index;
  json_t *value; /* borrowed; NULL when the key is missing */
} SwJsonPlace;

/* Parse @text. FALSE and an error in the reader when it is not JSON. */
gboolean sw_json_open (SwJsonReader *reader, const char *text, gsize length,
                       const char *where);
/* Free the tree and hand over the first trouble. TRUE if there was none. */
gboolean sw_json_close (SwJsonReader *reader, GError **error);

SwJsonPlace sw_json_root (SwJsonReader *reader);

/* @object must be an object, or that is the trouble. */
SwJsonPlace sw_json_member (const SwJsonPlace *object, const char *key);
SwJsonPlace sw_json_element (const SwJsonPlace *list, gsize index);

/* Elements of a list, 0 if it is not one or has fewer than @least. */
gsize sw_json_list (const SwJsonPlace *place, gsize least, const char *expected);

typedef struct
{
  double least, most;
  gboolean above;   /* more than @least; equal is refused */
  gboolean or_zero; /* 0 is taken too */
} SwJsonRange;

double sw_json_number (const SwJsonPlace *place, SwJsonRange range);
/* What sw_practice_accepts() takes. */
SwJsonRange sw_json_practice_range (SwPracticeValue value);
guint sw_json_index (const SwJsonPlace *place, guint most);
gboolean sw_json_boolean (const SwJsonPlace *place);

/* (transfer full); never NULL. */
char *sw_json_string (const SwJsonPlace *place);
char *sw_json_words (const SwJsonPlace *place); /* not empty */

/* Position of the string in @choices (NULL-terminated). */
int sw_json_choice (const SwJsonPlace *place, const char *const *choices);

/* Trouble unless every key of @object is in @keys (NULL-terminated). */
void sw_json_only (const SwJsonPlace *object, const char *const *keys);

/* Note trouble at @place: what was found is added, what was expected is told. */
void sw_json_expected (const SwJsonPlace *place, const char *format, ...)
    G_GNUC_PRINTF (2, 3);
/* Note trouble at @place in own words. */
void sw_json_trouble (const SwJsonPlace *place, SwStoreError code, const char *format,
                      ...) G_GNUC_PRINTF (3, 4);
