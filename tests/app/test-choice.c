/* SPDX-License-Identifier: MIT */
#include <gtk/gtk.h>

#include "choice.h"

static void
assert_says (GtkDropDown *choice, const char *label, const char *words)
{
  GtkAccessible *button =
      GTK_ACCESSIBLE (gtk_widget_get_first_child (GTK_WIDGET (choice)));

  gtk_test_accessible_assert_property (button, GTK_ACCESSIBLE_PROPERTY_LABEL, label);
  gtk_test_accessible_assert_property (button, GTK_ACCESSIBLE_PROPERTY_DESCRIPTION,
                                       words);
}

/* Tab goes to the button inside, so that is what has to say its name and what is chosen. */
static void
test_button_says_what_is_chosen (void)
{
  const char *const soils[] = { "Loam", "Clay", NULL };
  const char *const forms[] = { "Rectangle", NULL };
  g_autoptr (GtkWidget) widget = g_object_ref_sink (sw_choice_new ("Soil"));
  GtkDropDown *choice = GTK_DROP_DOWN (widget);

  assert_says (choice, "Soil", "");
  sw_choice_show (choice, soils, 0);
  assert_says (choice, "Soil", "Loam");
  gtk_drop_down_set_selected (choice, 1);
  assert_says (choice, "Soil", "Clay");
  sw_choice_show (choice, forms, 0);
  assert_says (choice, "Soil", "Rectangle");
  sw_choice_show (choice, forms, -1);
  assert_says (choice, "Soil", "");
}

static void
test_names_one_of_a_template (void)
{
  const char *const paces[] = { "2 s a step", "4 s a step", NULL };
  g_autoptr (GtkWidget) widget =
      g_object_ref_sink (gtk_drop_down_new_from_strings (paces));

  sw_choice_name (GTK_DROP_DOWN (widget), "Pace");
  assert_says (GTK_DROP_DOWN (widget), "Pace", "2 s a step");
}

int
main (int argc, char **argv)
{
  gtk_test_init (&argc, &argv, NULL);
  g_test_add_func ("/app/choice/button-says-what-is-chosen",
                   test_button_says_what_is_chosen);
  g_test_add_func ("/app/choice/names-one-of-a-template", test_names_one_of_a_template);
  return g_test_run ();
}
