/* SPDX-License-Identifier: MIT */
#include <glib/gi18n.h>

#include "language.h"
#include "sw-application.h"

static const GOptionEntry options[] = { { "version", 'V', 0, G_OPTION_ARG_NONE, NULL,
                                          N_ ("Show the version and end"), NULL },
                                        G_OPTION_ENTRY_NULL };

static int
on_options (GApplication *app, GVariantDict *given)
{
  if (!g_variant_dict_contains (given, "version"))
    return -1;
  g_print ("slopewright %s\n", SW_VERSION);
  return 0;
}

int
main (int argc, char *argv[])
{
  sw_language_begin ();

  g_autoptr (SwApplication) app = sw_application_new ();
  g_application_add_main_option_entries (G_APPLICATION (app), options);
  g_signal_connect (app, "handle-local-options", G_CALLBACK (on_options), NULL);
  return g_application_run (G_APPLICATION (app), argc, argv);
}
