/* SPDX-License-Identifier: MIT */
#include <slopewright/store/store.h>

#define RESOURCE_PREFIX "/slopewright/"

/* Of the generated source; named here so that the linker keeps it. */
GResource *sw_resources_get_resource (void);

GBytes *
sw_resource_bytes (const char *path)
{
  g_autofree char *full = g_strconcat (RESOURCE_PREFIX, path, NULL);

  return g_resource_lookup_data (sw_resources_get_resource (), full,
                                 G_RESOURCE_LOOKUP_FLAGS_NONE, NULL);
}
