/* SPDX-License-Identifier: MIT */
#include "job-json.h"

#include <slopewright/base/number-text.h>

const char *const sw_unit_system_words[] = { "metric", "us", NULL };
const char *const sw_paper_words[] = { "A4", "Letter", "A3", "Tabloid", NULL };
const char *const sw_joints_words[] = { "long-runs", "save-rolls", NULL };
const char *const sw_zone_rule_words[] = { "worse", "split", NULL };
const char *const sw_surplus_words[] = { "spread", "trim", "narrow", NULL };
const char *const sw_stock_source_words[] = { "on-hand", "order", NULL };
const char *const sw_own_toe_words[] = { "as-practice", "trench", "fold", "row", NULL };
const char *const sw_own_lining_words[] = { "as-practice", "down", "down-across",
                                            "down-across-up", NULL };
const char *const sw_crest_form_words[] = { "straight", "nose", "bowl", NULL };
const char *const sw_fan_words[] = { "full-runs", "infill", NULL };
const char *const sw_side_words[] = { "left", "right", NULL };
const char *const sw_bench_words[] = { "split", "continuous", NULL };
const char *const sw_answer_words[] = { "unknown", "no", "yes", NULL };
const char *const sw_loss_units_words[] = { "si", "us", NULL };
const char *const sw_rills_words[] = { "high", "moderate", "low", NULL };
const char *const sw_soil_known_words[] = { "eye", "feel", "laboratory", NULL };
const char *const sw_feel_words[] = { "gritty", "smooth", "neither", NULL };
const char *const sw_net_words[] = { "not-stated", "none", "plastic", "plant", NULL };
const char *const sw_obtained_words[] = { "taped-angle", "rise-ratio", "run-rise",
                                          "taped-shape", "drawn",      "imported",
                                          NULL };

#define LINE(name)                                                                       \
  {                                                                                      \
#name, G_STRUCT_OFFSET(SwJobCard, name)                                              \
  }

const SwCardLine sw_card_lines[] = {
  LINE (name),        LINE (number),     LINE (revision),       LINE (date),
  LINE (prepared_by), LINE (checked_by), LINE (client),         LINE (place),
  LINE (permit),      LINE (authority),  LINE (utility_ticket), LINE (supervisor),
  LINE (emergency),   LINE (muster),     LINE (notes),          LINE (install_date),
  LINE (sow_from),    LINE (sow_to),
};
const gsize sw_n_card_lines = G_N_ELEMENTS (sw_card_lines);

double
sw_radians_of_degrees (double degrees)
{
  return degrees * (G_PI / 180.0);
}

/* Shortest decimal that times @factor is @value again, bit for bit. */
static double
shortest (double value, double factor)
{
  char buffer[G_ASCII_DTOSTR_BUF_SIZE], format[8];

  for (int digits = 1; digits <= 17; digits++)
    {
      g_snprintf (format, sizeof format, "%%.%dg", digits);
      g_ascii_formatd (buffer, sizeof buffer, format, value / factor);
      double shorter = g_ascii_strtod (buffer, NULL);
      if (shorter * factor == value)
        return shorter;
    }
  return value / factor;
}

double
sw_degrees_of_radians (double radians)
{
  return shortest (radians, G_PI / 180.0);
}

double
sw_site_number_factor (SwSiteNumber number)
{
  switch (sw_site_number_keys[number].unit)
    {
    case SW_UNIT_ANGLE:
      return G_PI / 180.0;
    case SW_UNIT_RAIN:
      return 1e-3 / SW_S_PER_H;
    default:
      return 1.0;
    }
}

double
sw_site_number_in_file (SwSiteNumber number, double value)
{
  return shortest (value, sw_site_number_factor (number));
}
