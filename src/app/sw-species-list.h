/* SPDX-License-Identifier: MIT */
#pragma once

#include <gtk/gtk.h>

#include "sw-stage.h"

/**
 * SwSpeciesList: the species of the job's seed mix, each as on its tag, with buttons to
 * add and remove one. Each change is one step of the document. Of the two rates, typing
 * one takes the other away; live seeds can be typed once their number in a unit of mass
 * is known.
 */
#define SW_TYPE_SPECIES_LIST (sw_species_list_get_type ())
G_DECLARE_FINAL_TYPE (SwSpeciesList, sw_species_list, SW, SPECIES_LIST, GtkWidget)

GtkWidget *sw_species_list_new (SwStage *stage);

typedef enum
{
  SW_SPECIES_PLS,
  SW_SPECIES_SEEDS,
  SW_SPECIES_PURITY,
  SW_SPECIES_GERMINATION,
  SW_SPECIES_HARD,
  SW_SPECIES_PER_KG,
  SW_SPECIES_NUMBER_COUNT
} SwSpeciesNumber;

guint sw_species_list_count (SwSpeciesList *list);

/** Entry of a number of species @index, for tests. (transfer none) */
GtkWidget *sw_species_list_entry (SwSpeciesList *list, guint index,
                                  SwSpeciesNumber number);

/** Buttons, for tests. (transfer none) */
GtkWidget *sw_species_list_add_button (SwSpeciesList *list);
GtkWidget *sw_species_list_remove_button (SwSpeciesList *list, guint index);
