/* SPDX-License-Identifier: MIT */
#undef G_DISABLE_ASSERT
#include "json-line.h"

#include <string.h>

static const char sample[] = "{\n"                               /* 1 */
                             "  \"a\": { \"b\": [1, 2 ] },\n"    /* 2 */
                             "  \"text, {\\\"}\": \"x]\\\\\",\n" /* 3 */
                             "  \"list\": [\n"                   /* 4 */
                             "    [0, 5],\n"                     /* 5 */
                             "\n"                                /* 6 */
                             "    { \"b\" : null,\n"             /* 7 */
                             "      \"deep\": [[], {}, [ 7 ]]\n" /* 8 */
                             "    }\n"                           /* 9 */
                             "  ],\n"                            /* 10 */
                             "  \"last\"\n"                      /* 11 */
                             "   :\n"                            /* 12 */
                             " 3 }\n";                           /* 13 */

/* Lines counted by eye in the sample above. */
static void
test_lines (void)
{
  static const struct
  {
    SwJsonStep steps[4];
    guint n_steps, line;
  } rows[] = {
    { { { 0 } }, 0, 1 },
    { { { "a", 0 } }, 1, 2 },
    { { { "a", 0 }, { "b", 0 }, { NULL, 1 } }, 3, 2 },
    { { { "list", 0 } }, 1, 4 },
    { { { "list", 0 }, { NULL, 0 } }, 2, 5 },
    { { { "list", 0 }, { NULL, 1 } }, 2, 7 },
    { { { "list", 0 }, { NULL, 1 }, { "deep", 0 }, { NULL, 2 } }, 4, 8 },
    { { { "last", 0 } }, 1, 13 },
    /* a missing key: the object it should stand in */
    { { { "list", 0 }, { NULL, 1 }, { "none", 0 } }, 3, 7 },
    { { { "none", 0 } }, 1, 1 },
    { { { "list", 0 }, { NULL, 9 } }, 2, 4 },
    { { { "last", 0 }, { "deep", 0 } }, 2, 13 },
  };

  for (gsize i = 0; i < G_N_ELEMENTS (rows); i++)
    g_assert_cmpuint (
        sw_json_line (sample, strlen (sample), rows[i].steps, rows[i].n_steps), ==,
        rows[i].line);
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/store/json-line/lines", test_lines);
  return g_test_run ();
}
