/* SPDX-License-Identifier: MIT */
#include "sw-species-list.h"

#include <glib/gi18n.h>

#include "sw-text-entry.h"
#include "sw-value-entry.h"

typedef struct
{
  SwSpeciesList *list;
  guint index;
  GtkWidget *box, *name, *remove;
  SwValueEntry *entries[SW_SPECIES_NUMBER_COUNT];
} Row;

struct _SwSpeciesList
{
  GtkWidget parent_instance;
  SwStage *stage;
  GtkWidget *box, *rows_box, *add;
  GPtrArray *rows; /* (element-type Row) */
};

G_DEFINE_FINAL_TYPE (SwSpeciesList, sw_species_list, GTK_TYPE_WIDGET)

static const struct
{
  const char *label;
  gsize offset;
  SwUnit unit;
} numbers[SW_SPECIES_NUMBER_COUNT] = {
  [SW_SPECIES_PLS] = { N_ ("Pure live seed"),
                       G_STRUCT_OFFSET (SwSeedSpecies, pls_kg_per_m2),
                       SW_UNIT_KG_PER_M2 },
  [SW_SPECIES_SEEDS] = { N_ ("or live seeds"),
                         G_STRUCT_OFFSET (SwSeedSpecies, seeds_per_m2),
                         SW_UNIT_SEEDS_PER_M2 },
  [SW_SPECIES_PURITY] = { N_ ("Purity"), G_STRUCT_OFFSET (SwSeedSpecies, purity),
                          SW_UNIT_PERCENT },
  [SW_SPECIES_GERMINATION] = { N_ ("Germination"),
                               G_STRUCT_OFFSET (SwSeedSpecies, germination),
                               SW_UNIT_PERCENT },
  [SW_SPECIES_HARD] = { N_ ("Hard seed"), G_STRUCT_OFFSET (SwSeedSpecies, hard),
                        SW_UNIT_PERCENT },
  [SW_SPECIES_PER_KG] = { N_ ("Seeds by mass"),
                          G_STRUCT_OFFSET (SwSeedSpecies, seeds_per_kg),
                          SW_UNIT_SEEDS_PER_KG },
};

/* What a row asks to be changed. */
typedef struct
{
  guint index;
  SwSpeciesNumber number;
  double value;
  const char *name;
} Wish;

static void
set_number (SwJob *job, SwFace *face, gconstpointer data)
{
  const Wish *wish = data;
  SwSeedSpecies *species = &job->seed.species[wish->index];

  G_STRUCT_MEMBER (double, species, numbers[wish->number].offset) = wish->value;
  if (wish->value > 0.0 && wish->number == SW_SPECIES_PLS)
    species->seeds_per_m2 = 0.0;
  if (wish->value > 0.0 && wish->number == SW_SPECIES_SEEDS)
    species->pls_kg_per_m2 = 0.0;
}

static void
set_name (SwJob *job, SwFace *face, gconstpointer data)
{
  const Wish *wish = data;

  sw_text_set (&job->seed.species[wish->index].name, wish->name);
}

static void
add_species (SwJob *job, SwFace *face, gconstpointer data)
{
  sw_seed_mix_add (&job->seed, &(SwSeedSpecies){ .purity = 1.0, .germination = 1.0 });
}

static void
remove_species (SwJob *job, SwFace *face, gconstpointer data)
{
  sw_seed_mix_remove (&job->seed, ((const Wish *) data)->index);
}

static void
on_value (Row *row, double value, SwValueEntry *entry)
{
  Wish wish = { .index = row->index, .value = value };
  g_autofree char *step = NULL;

  while (row->entries[wish.number] != entry)
    wish.number++;
  step = g_strdup_printf (_ ("Change %s"), _ (numbers[wish.number].label));
  sw_stage_edit (row->list->stage, set_number, &wish, step, NULL);
}

static void
on_name (Row *row, const char *name)
{
  sw_stage_edit (row->list->stage, set_name, &(Wish){ .index = row->index, .name = name },
                 _ ("Rename Species"), NULL);
}

static void
on_add (SwSpeciesList *self)
{
  sw_stage_edit (self->stage, add_species, NULL, _ ("Add Species"), NULL);
}

static void
on_remove (Row *row)
{
  sw_stage_edit (row->list->stage, remove_species, &(Wish){ .index = row->index },
                 _ ("Remove Species"), NULL);
}

static void
add_number (Row *row, GtkGrid *grid, SwSpeciesNumber number)
{
  const char *words = _ (numbers[number].label);
  GtkWidget *label = gtk_label_new (words);
  GtkWidget *entry = sw_value_entry_new (numbers[number].unit);
  g_autofree char *spoken = g_strdup_printf (_ ("Species %u, %s"), row->index + 1, words);
  int column = (int) number % 2, at = 2 * ((int) number / 2);

  gtk_label_set_xalign (GTK_LABEL (label), 0.0f);
  gtk_widget_add_css_class (label, "dim-label");
  gtk_widget_set_hexpand (entry, TRUE);
  sw_value_entry_set_label (SW_VALUE_ENTRY (entry), spoken);
  g_signal_connect_swapped (entry, "committed", G_CALLBACK (on_value), row);
  gtk_grid_attach (grid, label, column, at, 1, 1);
  gtk_grid_attach (grid, entry, column, at + 1, 1, 1);
  row->entries[number] = SW_VALUE_ENTRY (entry);
}

static GtkWidget *
make_head (Row *row)
{
  GtkWidget *line = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 6);
  g_autofree char *number = g_strdup_printf ("%u", row->index + 1);
  g_autofree char *spoken = g_strdup_printf (_ ("Species %u, name"), row->index + 1);
  g_autofree char *remove = g_strdup_printf (_ ("Remove species %u"), row->index + 1);

  row->name = sw_text_entry_new ();
  sw_text_entry_set_label (SW_TEXT_ENTRY (row->name), spoken);
  gtk_entry_set_placeholder_text (sw_text_entry_field (SW_TEXT_ENTRY (row->name)),
                                  _ ("Species, as on the tag"));
  gtk_widget_set_hexpand (row->name, TRUE);
  row->remove = gtk_button_new_from_icon_name ("list-remove-symbolic");
  gtk_widget_add_css_class (row->remove, "flat");
  gtk_widget_set_tooltip_text (row->remove, remove);
  gtk_accessible_update_property (GTK_ACCESSIBLE (row->remove),
                                  GTK_ACCESSIBLE_PROPERTY_LABEL, remove, -1);
  g_signal_connect_swapped (row->name, "committed", G_CALLBACK (on_name), row);
  g_signal_connect_swapped (row->remove, "clicked", G_CALLBACK (on_remove), row);
  gtk_box_append (GTK_BOX (line), gtk_label_new (number));
  gtk_box_append (GTK_BOX (line), row->name);
  gtk_box_append (GTK_BOX (line), row->remove);
  return line;
}

static Row *
add_row (SwSpeciesList *self, guint index)
{
  Row *row = g_new0 (Row, 1);
  GtkWidget *grid = gtk_grid_new ();

  row->list = self;
  row->index = index;
  row->box = gtk_box_new (GTK_ORIENTATION_VERTICAL, 4);
  gtk_grid_set_column_spacing (GTK_GRID (grid), 8);
  gtk_grid_set_column_homogeneous (GTK_GRID (grid), TRUE);
  gtk_box_append (GTK_BOX (row->box), make_head (row));
  for (int i = 0; i < SW_SPECIES_NUMBER_COUNT; i++)
    add_number (row, GTK_GRID (grid), (SwSpeciesNumber) i);
  gtk_box_append (GTK_BOX (row->box), grid);
  gtk_box_append (GTK_BOX (self->rows_box), row->box);
  return row;
}

static void
match_rows (SwSpeciesList *self, guint count)
{
  while (self->rows->len > count)
    {
      Row *last = g_ptr_array_index (self->rows, self->rows->len - 1);

      gtk_box_remove (GTK_BOX (self->rows_box), last->box);
      g_ptr_array_set_size (self->rows, (int) self->rows->len - 1);
    }
  while (self->rows->len < count)
    g_ptr_array_add (self->rows, add_row (self, self->rows->len));
}

/* What each number can be beside the others, so that the file takes it. */
static void
set_ranges (Row *row, const SwSeedSpecies *species)
{
  gboolean by_seeds = species->seeds_per_m2 > 0.0;
  gboolean counted = species->seeds_per_kg > 0.0;
  SwValueEntry **entries = row->entries;

  sw_value_entry_set_range (entries[SW_SPECIES_PLS], 0.0, 1.0);
  sw_value_entry_set_range (entries[SW_SPECIES_SEEDS], 0.0, SW_SEEDS_PER_M2_MOST);
  gtk_widget_set_sensitive (GTK_WIDGET (entries[SW_SPECIES_SEEDS]), counted);
  sw_value_entry_set_range (entries[SW_SPECIES_PURITY], 0.01, 1.0);
  sw_value_entry_set_range (entries[SW_SPECIES_GERMINATION], 0.01, 1.0 - species->hard);
  sw_value_entry_set_range (entries[SW_SPECIES_HARD], 0.0, 1.0 - species->germination);
  sw_value_entry_set_range (entries[SW_SPECIES_PER_KG], 1.0, SW_SEEDS_PER_KG_MOST);
  sw_value_entry_set_or_zero (entries[SW_SPECIES_PER_KG], !by_seeds);
}

static void
refresh_row (Row *row, const SwSeedSpecies *species)
{
  SwNumberStyle style = sw_stage_style (row->list->stage);

  set_ranges (row, species);
  sw_text_entry_set_text (SW_TEXT_ENTRY (row->name), species->name);
  for (int i = 0; i < SW_SPECIES_NUMBER_COUNT; i++)
    sw_value_entry_set_value (
        row->entries[i], G_STRUCT_MEMBER (double, species, numbers[i].offset), style);
}

static void
refresh (SwSpeciesList *self)
{
  const SwSeedMix *mix = &sw_stage_job (self->stage)->seed;

  match_rows (self, mix->n_species);
  for (guint i = 0; i < mix->n_species; i++)
    refresh_row (g_ptr_array_index (self->rows, i), &mix->species[i]);
  gtk_widget_set_sensitive (self->add, mix->n_species < SW_SPECIES_MOST);
}

static void
sw_species_list_dispose (GObject *object)
{
  SwSpeciesList *self = SW_SPECIES_LIST (object);

  g_clear_pointer (&self->box, gtk_widget_unparent);
  g_clear_object (&self->stage);
  G_OBJECT_CLASS (sw_species_list_parent_class)->dispose (object);
}

static void
sw_species_list_finalize (GObject *object)
{
  g_ptr_array_unref (SW_SPECIES_LIST (object)->rows);
  G_OBJECT_CLASS (sw_species_list_parent_class)->finalize (object);
}

static void
sw_species_list_class_init (SwSpeciesListClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = sw_species_list_dispose;
  G_OBJECT_CLASS (klass)->finalize = sw_species_list_finalize;
  gtk_widget_class_set_layout_manager_type (widget_class, GTK_TYPE_BIN_LAYOUT);
  gtk_widget_class_set_css_name (widget_class, "species-list");
}

static void
sw_species_list_init (SwSpeciesList *self)
{
  self->rows = g_ptr_array_new_with_free_func (g_free);
  self->box = gtk_box_new (GTK_ORIENTATION_VERTICAL, 10);
  self->rows_box = gtk_box_new (GTK_ORIENTATION_VERTICAL, 14);
  self->add = gtk_button_new_with_label (_ ("Add Species"));
  gtk_widget_set_halign (self->add, GTK_ALIGN_START);
  g_signal_connect_swapped (self->add, "clicked", G_CALLBACK (on_add), self);
  gtk_box_append (GTK_BOX (self->box), self->rows_box);
  gtk_box_append (GTK_BOX (self->box), self->add);
  gtk_widget_set_parent (self->box, GTK_WIDGET (self));
}

GtkWidget *
sw_species_list_new (SwStage *stage)
{
  SwSpeciesList *self = g_object_new (SW_TYPE_SPECIES_LIST, NULL);

  self->stage = g_object_ref (stage);
  g_signal_connect_object (stage, "changed", G_CALLBACK (refresh), self,
                           G_CONNECT_SWAPPED);
  refresh (self);
  return GTK_WIDGET (self);
}

guint
sw_species_list_count (SwSpeciesList *self)
{
  return self->rows->len;
}

GtkWidget *
sw_species_list_entry (SwSpeciesList *self, guint index, SwSpeciesNumber number)
{
  g_return_val_if_fail (index < self->rows->len, NULL);
  return GTK_WIDGET (((Row *) g_ptr_array_index (self->rows, index))->entries[number]);
}

GtkWidget *
sw_species_list_add_button (SwSpeciesList *self)
{
  return self->add;
}

GtkWidget *
sw_species_list_remove_button (SwSpeciesList *self, guint index)
{
  g_return_val_if_fail (index < self->rows->len, NULL);
  return ((Row *) g_ptr_array_index (self->rows, index))->remove;
}
