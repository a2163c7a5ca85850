/* SPDX-License-Identifier: MIT */
#include <jansson.h>
#include <slopewright/store/store.h>

#define RESOURCE "palette.json"

/* The palette ships inside the program, so a fault in it is ours: stop and say where. */
G_GNUC_PRINTF (3, 4)
G_NORETURN static void
refuse (const char *role, const char *key, const char *format, ...)
{
  g_autofree char *message = NULL;
  va_list arguments;

  va_start (arguments, format);
  message = g_strdup_vprintf (format, arguments);
  va_end (arguments);
  g_error (RESOURCE ": role “%s”, key “%s”: %s", role, key, message);
}

static double
hex_pair (const char *digits)
{
  return (g_ascii_xdigit_value (digits[0]) * 16 + g_ascii_xdigit_value (digits[1]))
         / 255.0;
}

/* "none", "#rrggbb" or "#rrggbbaa". */
static SwColour
read_colour (const json_t *look, const char *role, const char *key)
{
  const char *text = json_string_value (json_object_get (look, key));
  SwColour colour = { 0.0, 0.0, 0.0, 0.0 };
  gsize length;

  if (!text)
    refuse (role, key, "is missing, expected a colour");
  if (g_str_equal (text, "none"))
    return colour;
  length = strlen (text);
  if (text[0] != '#' || (length != 7 && length != 9)
      || strspn (text + 1, "0123456789abcdef") != length - 1)
    refuse (role, key, "found “%s”, expected none, #rrggbb or #rrggbbaa", text);
  colour.red = hex_pair (text + 1);
  colour.green = hex_pair (text + 3);
  colour.blue = hex_pair (text + 5);
  colour.alpha = length == 9 ? hex_pair (text + 7) : 1.0;
  return colour;
}

static double
read_number (const json_t *look, const char *role, const char *key)
{
  const json_t *value = json_object_get (look, key);

  if (!json_is_number (value))
    refuse (role, key, "is missing or not a number");
  return json_number_value (value);
}

static void
read_dash (const json_t *look, const char *role, double dash_mm[4])
{
  const json_t *list = json_object_get (look, "dash_mm");
  const gsize count = json_array_size (list);

  if (!json_is_array (list) || count > 4 || count % 2 != 0)
    refuse (role, "dash_mm", "expected a list of no, two or four lengths");
  for (gsize i = 0; i < 4; i++)
    {
      const json_t *length = json_array_get (list, i);

      if (i < count && !(json_number_value (length) > 0.0))
        refuse (role, "dash_mm", "expected lengths above 0");
      dash_mm[i] = i < count ? json_number_value (length) : 0.0;
    }
}

static SwLook
read_look (const json_t *roles, const char *role)
{
  const json_t *look = json_object_get (roles, role);
  SwLook result = { .line = read_colour (look, role, "line"),
                    .fill = read_colour (look, role, "fill"),
                    .line_dark = read_colour (look, role, "line_dark"),
                    .fill_dark = read_colour (look, role, "fill_dark"),
                    .width_mm = read_number (look, role, "width_mm"),
                    .hatch_mm = read_number (look, role, "hatch_mm"),
                    .hatch_width_mm = read_number (look, role, "hatch_width_mm") };

  read_dash (look, role, result.dash_mm);
  return result;
}

SwPalette *
sw_palette_load (void)
{
  g_autoptr (GBytes) bytes = sw_resource_bytes (RESOURCE);
  SwPalette *palette = sw_palette_new ();
  json_error_t fault;
  json_t *root;
  const json_t *roles;

  if (!bytes)
    g_error (RESOURCE ": not among the program's resources");
  root = json_loadb (g_bytes_get_data (bytes, NULL), g_bytes_get_size (bytes),
                     JSON_REJECT_DUPLICATES, &fault);
  if (!root)
    g_error (RESOURCE ":%d:%d: %s", fault.line, fault.column, fault.text);
  roles = json_object_get (root, "roles");
  if (json_object_size (roles) != SW_ROLE_COUNT)
    g_error (RESOURCE ": found %" G_GSIZE_FORMAT " roles, expected %d",
             json_object_size (roles), SW_ROLE_COUNT);
  for (guint i = 0; i < SW_ROLE_COUNT; i++)
    palette->looks[i] = read_look (roles, sw_role_code (i));
  json_decref (root);
  return palette;
}
