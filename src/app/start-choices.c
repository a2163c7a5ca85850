/* SPDX-License-Identifier: MIT */
#include "start-choices.h"

#include <slopewright/store/store.h>
#include <string.h>

#define ENDING ".slope.json"
#define EXAMPLES "/io/slopewright/Slopewright/examples/"

static void
free_choice (gpointer data)
{
  SwStartChoice *choice = data;

  g_free (choice->name);
  g_free (choice->note);
  g_object_unref (choice->file);
  g_free (choice);
}

static SwStartChoice *
make_choice (const char *name, const char *note, GFile *file)
{
  SwStartChoice *choice = g_new0 (SwStartChoice, 1);

  choice->name = g_strdup (name);
  choice->note = g_strdup (note);
  choice->file = g_object_ref (file);
  return choice;
}

static int
newest_first (gconstpointer a, gconstpointer b)
{
  GtkRecentInfo *x = (GtkRecentInfo *) a, *y = (GtkRecentInfo *) b;

  return g_date_time_compare (gtk_recent_info_get_modified (y),
                              gtk_recent_info_get_modified (x));
}

static SwStartChoice *
choice_of_recent (GtkRecentInfo *info)
{
  g_autoptr (GFile) file = g_file_new_for_uri (gtk_recent_info_get_uri (info));
  g_autofree char *base = g_file_get_basename (file);
  g_autofree char *stem = NULL;
  g_autoptr (GFile) folder = g_file_get_parent (file);
  g_autofree char *place =
      folder != NULL ? g_file_get_parse_name (folder) : g_strdup ("");

  if (!g_str_has_suffix (base, ENDING) || !gtk_recent_info_exists (info))
    return NULL;
  stem = g_strndup (base, strlen (base) - strlen (ENDING));
  return make_choice (stem, place, file);
}

GPtrArray *
sw_start_recent (guint most)
{
  GPtrArray *choices = g_ptr_array_new_with_free_func (free_choice);
  GList *all = gtk_recent_manager_get_items (gtk_recent_manager_get_default ());

  all = g_list_sort (all, newest_first);
  for (GList *l = all; l != NULL && choices->len < most; l = l->next)
    {
      SwStartChoice *choice = choice_of_recent (l->data);
      if (choice != NULL)
        g_ptr_array_add (choices, choice);
    }
  g_list_free_full (all, (GDestroyNotify) gtk_recent_info_unref);
  return choices;
}

void
sw_start_forget_recent (void)
{
  GtkRecentManager *manager = gtk_recent_manager_get_default ();
  GList *all = gtk_recent_manager_get_items (manager);

  for (GList *l = all; l != NULL; l = l->next)
    if (g_str_has_suffix (gtk_recent_info_get_uri (l->data), ENDING))
      gtk_recent_manager_remove_item (manager, gtk_recent_info_get_uri (l->data), NULL);
  g_list_free_full (all, (GDestroyNotify) gtk_recent_info_unref);
}

static int
by_name (gconstpointer a, gconstpointer b)
{
  return g_utf8_collate ((*(SwStartChoice *const *) a)->name,
                         (*(SwStartChoice *const *) b)->name);
}

/* Files that are no jobs are left out. */
static void
add_job (GPtrArray *choices, GFile *file)
{
  g_autoptr (SwJob) job = sw_job_load (file, NULL);
  g_autofree char *base = g_file_get_basename (file);

  if (job != NULL)
    g_ptr_array_add (choices,
                     make_choice (*job->card.name != '\0' ? job->card.name : base,
                                  job->card.place, file));
}

GPtrArray *
sw_start_examples (void)
{
  GPtrArray *choices = g_ptr_array_new_with_free_func (free_choice);
  g_auto (GStrv) names =
      g_resources_enumerate_children (EXAMPLES, G_RESOURCE_LOOKUP_FLAGS_NONE, NULL);

  for (char **name = names; name != NULL && *name != NULL; name++)
    {
      g_autofree char *uri = g_strconcat ("resource://" EXAMPLES, *name, NULL);
      g_autoptr (GFile) file = g_file_new_for_uri (uri);

      add_job (choices, file);
    }
  g_ptr_array_sort (choices, by_name);
  return choices;
}

/* Where a desktop has no such folder, it names the home folder. */
const char *
sw_start_template_folder (void)
{
  const char *folder = g_get_user_special_dir (G_USER_DIRECTORY_TEMPLATES);

  return folder != NULL && !g_str_equal (folder, g_get_home_dir ()) ? folder : NULL;
}

GPtrArray *
sw_start_templates (const char *folder)
{
  GPtrArray *choices = g_ptr_array_new_with_free_func (free_choice);
  g_autoptr (GDir) dir = folder != NULL ? g_dir_open (folder, 0, NULL) : NULL;
  const char *name;

  while (dir != NULL && (name = g_dir_read_name (dir)) != NULL)
    if (g_str_has_suffix (name, ENDING))
      {
        g_autoptr (GFile) file = g_file_new_build_filename (folder, name, NULL);

        add_job (choices, file);
      }
  g_ptr_array_sort (choices, by_name);
  return choices;
}
