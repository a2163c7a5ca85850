/* SPDX-License-Identifier: MIT */
#include <slopewright/store/store.h>

#define RESOURCE_PREFIX "/slopewright/"

GBytes *
sw_resource_bytes (const char *path)
{
  g_autofree char *full = g_strconcat (RESOURCE_PREFIX, path, NULL);

  return g_resources_lookup_data (full, G_RESOURCE_LOOKUP_FLAGS_NONE, NULL);
}
