/* SPDX-License-Identifier: MIT */
#include "sw-soil-dialog.h"

#include <glib/gi18n.h>
#include <math.h>
#include <slopewright/judge/soil-loss.h>
#include <slopewright/judge/texture.h>

#include "choice.h"
#include "sw-help-button.h"
#include "sw-value-entry.h"

#define FIELDS_MOST 4
#define RIBBON_MOST_M 0.3

typedef enum
{
  PAGE_HOW,
  PAGE_BALL,
  PAGE_RIBBON,
  PAGE_FEEL,
  PAGE_SHARES,
  PAGE_ERODIBILITY,
  PAGE_RESULT,
  PAGE_COUNT
} Page;

static const char *const page_names[PAGE_COUNT] = { "how",   "ball",   "ribbon",
                                                    "feel",  "shares", "erodibility",
                                                    "result" };

typedef struct
{
  GtkWidget *box, *question;
  GtkWidget *fields[FIELDS_MOST];
  guint n_fields;
} PageParts;

struct _SwSoilDialog
{
  GtkWindow parent_instance;
  SwStage *stage;
  GtkStack *stack;
  GtkButton *back, *next;
  GtkLabel *problem;
  PageParts pages[PAGE_COUNT];
  Page page, visited[PAGE_COUNT];
  guint n_visited;
  SwSoilTest test;
  SwTexture texture;
};

G_DEFINE_FINAL_TYPE (SwSoilDialog, sw_soil_dialog, GTK_TYPE_WINDOW)

static void
add_field (SwSoilDialog *self, Page page, GtkWidget *field, GtkWidget *row)
{
  PageParts *parts = &self->pages[page];

  parts->fields[parts->n_fields++] = field;
  gtk_accessible_update_relation (GTK_ACCESSIBLE (field),
                                  GTK_ACCESSIBLE_RELATION_DESCRIBED_BY, parts->question,
                                  NULL, -1);
  gtk_box_append (GTK_BOX (parts->box), row);
}

static void
add_page (SwSoilDialog *self, Page page, const char *question)
{
  PageParts *parts = &self->pages[page];

  parts->box = gtk_box_new (GTK_ORIENTATION_VERTICAL, 12);
  parts->question = gtk_label_new (question);
  gtk_label_set_wrap (GTK_LABEL (parts->question), TRUE);
  gtk_label_set_max_width_chars (GTK_LABEL (parts->question), 52);
  gtk_label_set_xalign (GTK_LABEL (parts->question), 0.0f);
  gtk_box_append (GTK_BOX (parts->box), parts->question);
  gtk_stack_add_named (self->stack, parts->box, page_names[page]);
}

/* One answer of several: none is chosen until somebody does. */
static void
add_answer (SwSoilDialog *self, Page page, const char *words)
{
  PageParts *parts = &self->pages[page];
  GtkWidget *button = gtk_check_button_new_with_mnemonic (words);

  if (parts->n_fields > 0)
    gtk_check_button_set_group (GTK_CHECK_BUTTON (button),
                                GTK_CHECK_BUTTON (parts->fields[0]));
  add_field (self, page, button, button);
}

static GtkWidget *
labelled (const char *words, GtkWidget *field)
{
  GtkWidget *row = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 12);
  GtkWidget *label = gtk_label_new (words);

  gtk_label_set_xalign (GTK_LABEL (label), 0.0f);
  gtk_widget_set_hexpand (label, TRUE);
  gtk_box_append (GTK_BOX (row), label);
  gtk_box_append (GTK_BOX (row), field);
  return row;
}

/* @first: NAN where a number has to be typed */
static void
add_value (SwSoilDialog *self, Page page, const char *words, SwUnit unit, double first,
           double most)
{
  GtkWidget *entry = sw_value_entry_new (unit);

  sw_value_entry_set_range (SW_VALUE_ENTRY (entry), 0.0, most);
  sw_value_entry_set_label (SW_VALUE_ENTRY (entry), words);
  sw_value_entry_set_value (SW_VALUE_ENTRY (entry), first, sw_stage_style (self->stage));
  gtk_entry_set_activates_default (sw_value_entry_field (SW_VALUE_ENTRY (entry)), TRUE);
  add_field (self, page, entry, labelled (words, entry));
}

static void
add_drop_down (SwSoilDialog *self, Page page, const char *words,
               const char *const *answers)
{
  GtkWidget *choice = sw_choice_new (words);

  sw_choice_show (GTK_DROP_DOWN (choice), answers, 0);
  add_field (self, page, choice, labelled (words, choice));
}

static void
make_field_test_pages (SwSoilDialog *self)
{
  add_page (
      self, PAGE_BALL,
      _ ("Wet a handful of soil until it is like putty and squeeze it. Does it stay "
         "together when you open your hand?"));
  add_answer (self, PAGE_BALL, _ ("_Yes, it stays together"));
  add_answer (self, PAGE_BALL, _ ("N_o, it falls apart"));
  add_page (self, PAGE_RIBBON,
            _ ("Press it between thumb and forefinger into a ribbon and let it grow over "
               "the finger. How long is it when it breaks by its own weight? 0 if it "
               "makes none."));
  add_value (self, PAGE_RIBBON, _ ("Ribbon"), SW_UNIT_SMALL_M, NAN, RIBBON_MOST_M);
  add_page (self, PAGE_FEEL,
            _ ("Make a pinch very wet in the palm and rub it with a finger. How does it "
               "feel?"));
  add_answer (self, PAGE_FEEL, _ ("_Gritty"));
  add_answer (self, PAGE_FEEL, _ ("_Smooth"));
  add_answer (self, PAGE_FEEL, _ ("_Neither gritty nor smooth"));
}

static void
make_laboratory_pages (SwSoilDialog *self)
{
  const char *structures[] = { _ ("not given"),
                               _ ("1 very fine granular"),
                               _ ("2 fine granular"),
                               _ ("3 medium or coarse granular"),
                               _ ("4 blocky, platy or massive"),
                               NULL };
  const char *permeabilities[] = { _ ("not given"),           _ ("1 rapid"),
                                   _ ("2 moderate to rapid"), _ ("3 moderate"),
                                   _ ("4 slow to moderate"),  _ ("5 slow"),
                                   _ ("6 very slow"),         NULL };

  add_page (
      self, PAGE_SHARES,
      _ ("Shares by mass of the soil under 2 mm, from the laboratory's report. Silt "
         "is the rest."));
  add_value (self, PAGE_SHARES, _ ("Sand"), SW_UNIT_PERCENT, NAN, 1.0);
  add_value (self, PAGE_SHARES, _ ("Clay"), SW_UNIT_PERCENT, NAN, 1.0);
  add_page (self, PAGE_ERODIBILITY,
            _ ("For the erodibility K by the nomograph equation. Leave structure and "
               "permeability open to take K by the class of the soil."));
  add_value (self, PAGE_ERODIBILITY, _ ("Very fine sand"), SW_UNIT_PERCENT, 0.0, 1.0);
  add_value (self, PAGE_ERODIBILITY, _ ("Organic matter"), SW_UNIT_PERCENT, 0.0, 1.0);
  add_drop_down (self, PAGE_ERODIBILITY, _ ("Structure"), structures);
  add_drop_down (self, PAGE_ERODIBILITY, _ ("Permeability"), permeabilities);
}

/* FALSE where none is chosen yet, which is said. */
static gboolean
take_choice (SwSoilDialog *self, guint *answer)
{
  const PageParts *parts = &self->pages[self->page];

  for (guint i = 0; i < parts->n_fields; i++)
    if (gtk_check_button_get_active (GTK_CHECK_BUTTON (parts->fields[i])))
      {
        *answer = i;
        return TRUE;
      }
  gtk_label_set_text (self->problem, _ ("Choose one of the answers."));
  return FALSE;
}

/* FALSE where what is typed makes no sense, as the field says itself, or nothing is. */
static gboolean
take_value (SwSoilDialog *self, guint field, double *value)
{
  SwValueEntry *entry = SW_VALUE_ENTRY (self->pages[self->page].fields[field]);

  if (!sw_value_entry_commit (entry))
    return FALSE;
  if (isnan (sw_value_entry_value (entry)))
    {
      gtk_label_set_text (self->problem, _ ("Type what was found."));
      gtk_widget_grab_focus (GTK_WIDGET (entry));
      return FALSE;
    }
  *value = sw_value_entry_value (entry);
  return TRUE;
}

static int
take_rank (SwSoilDialog *self, guint field)
{
  return (int) gtk_drop_down_get_selected (
      GTK_DROP_DOWN (self->pages[self->page].fields[field]));
}

static gboolean
take_shares (SwSoilDialog *self)
{
  SwSoilTest *test = &self->test;

  if (!take_value (self, 0, &test->sand) || !take_value (self, 1, &test->clay))
    return FALSE;
  test->silt = MAX (0.0, 1.0 - test->sand - test->clay);
  if (sw_texture_from_test (test, &self->texture) == SW_OK)
    return TRUE;
  /* xgettext:no-c-format */
  gtk_label_set_text (self->problem, _ ("Sand and clay are more than 100 % together."));
  return FALSE;
}

static gboolean
take_erodibility (SwSoilDialog *self)
{
  SwSoilTest *test = &self->test;

  if (!take_value (self, 0, &test->fine_sand) || !take_value (self, 1, &test->organic))
    return FALSE;
  test->structure = take_rank (self, 2);
  test->permeability = take_rank (self, 3);
  if (test->fine_sand <= test->sand)
    return TRUE;
  gtk_label_set_text (self->problem,
                      _ ("Very fine sand is a part of the sand and cannot be more."));
  return FALSE;
}

static gboolean
take_answer (SwSoilDialog *self)
{
  SwSoilTest *test = &self->test;
  guint answer;

  switch (self->page)
    {
    case PAGE_HOW:
      if (!take_choice (self, &answer))
        return FALSE;
      *test =
          (SwSoilTest){ .known = answer == 0 ? SW_SOIL_BY_FEEL : SW_SOIL_BY_LABORATORY };
      return TRUE;
    case PAGE_BALL:
      if (!take_choice (self, &answer))
        return FALSE;
      test->holds = answer == 0;
      test->ribbon_m = 0.0;
      return TRUE;
    case PAGE_RIBBON:
      return take_value (self, 0, &test->ribbon_m);
    case PAGE_FEEL:
      if (!take_choice (self, &answer))
        return FALSE;
      test->feel = (SwFeel) answer;
      return TRUE;
    case PAGE_SHARES:
      return take_shares (self);
    case PAGE_ERODIBILITY:
      return take_erodibility (self);
    default:
      return TRUE;
    }
}

static Page
page_after (const SwSoilDialog *self)
{
  switch (self->page)
    {
    case PAGE_HOW:
      return self->test.known == SW_SOIL_BY_FEEL ? PAGE_BALL : PAGE_SHARES;
    case PAGE_BALL:
      return self->test.holds ? PAGE_RIBBON : PAGE_RESULT;
    case PAGE_RIBBON:
      return self->test.ribbon_m > 0.0 ? PAGE_FEEL : PAGE_RESULT;
    case PAGE_SHARES:
      return PAGE_ERODIBILITY;
    default:
      return PAGE_RESULT;
    }
}

static const char *
soil_name (SwSoilDialog *self, SwTexture texture)
{
  g_autofree char *id = g_strconcat ("soil.", sw_texture_code (texture), NULL);

  return sw_texts_get (sw_stage_stock (self->stage)->texts, id);
}

static void
show_result (SwSoilDialog *self)
{
  guint neighbours;
  g_autoptr (GString) words = g_string_new (NULL);

  if (sw_texture_from_test (&self->test, &self->texture) != SW_OK)
    return;
  g_string_append (words, soil_name (self, self->texture));
  neighbours =
      self->test.known == SW_SOIL_BY_FEEL ? sw_texture_neighbours (self->texture) : 0;
  if (neighbours != 0)
    g_string_append_printf (words, "\n\n%s",
                            _ ("A field test is sure to one class only. It may be:"));
  for (int i = 0; i < SW_TEXTURE_COUNT; i++)
    if (neighbours & (1u << i))
      g_string_append_printf (words, "\n%s", soil_name (self, (SwTexture) i));
  gtk_label_set_text (GTK_LABEL (self->pages[PAGE_RESULT].question), words->str);
}

static void
show_page (SwSoilDialog *self, Page page)
{
  const PageParts *parts = &self->pages[page];

  self->page = page;
  gtk_label_set_text (self->problem, "");
  if (page == PAGE_RESULT)
    show_result (self);
  gtk_stack_set_visible_child_name (self->stack, page_names[page]);
  gtk_widget_set_sensitive (GTK_WIDGET (self->back), self->n_visited > 0);
  gtk_button_set_label (self->next,
                        page == PAGE_RESULT ? _ ("_Use This Soil") : _ ("_Next"));
  gtk_widget_grab_focus (parts->n_fields > 0 ? parts->fields[0]
                                             : GTK_WIDGET (self->next));
}

static void
use_soil (SwJob *job, SwFace *face, gconstpointer data)
{
  const SwSoilDialog *self = data;

  face->soil_test = self->test;
  sw_text_set (&face->soil_id, sw_texture_code (self->texture));
}

void
sw_soil_dialog_next (SwSoilDialog *self)
{
  if (self->page == PAGE_RESULT)
    {
      sw_stage_edit (self->stage, use_soil, self, _ ("Test Soil"), NULL);
      gtk_window_destroy (GTK_WINDOW (self));
      return;
    }
  if (!take_answer (self))
    return;
  self->visited[self->n_visited++] = self->page;
  show_page (self, page_after (self));
}

void
sw_soil_dialog_back (SwSoilDialog *self)
{
  if (self->n_visited > 0)
    show_page (self, self->visited[--self->n_visited]);
}

const SwSoilTest *
sw_soil_dialog_test (SwSoilDialog *self)
{
  return &self->test;
}

const char *
sw_soil_dialog_page (SwSoilDialog *self)
{
  return page_names[self->page];
}

void
sw_soil_dialog_choose (SwSoilDialog *self, guint index)
{
  g_return_if_fail (index < self->pages[self->page].n_fields);
  gtk_check_button_set_active (GTK_CHECK_BUTTON (self->pages[self->page].fields[index]),
                               TRUE);
}

GtkWidget *
sw_soil_dialog_field (SwSoilDialog *self, guint index)
{
  g_return_val_if_fail (index < self->pages[self->page].n_fields, NULL);
  return self->pages[self->page].fields[index];
}

static void
sw_soil_dialog_dispose (GObject *object)
{
  g_clear_object (&SW_SOIL_DIALOG (object)->stage);
  G_OBJECT_CLASS (sw_soil_dialog_parent_class)->dispose (object);
}

static void
sw_soil_dialog_class_init (SwSoilDialogClass *klass)
{
  G_OBJECT_CLASS (klass)->dispose = sw_soil_dialog_dispose;
  gtk_widget_class_add_binding_action (GTK_WIDGET_CLASS (klass), GDK_KEY_Escape, 0,
                                       "window.close", NULL);
}

static GtkWidget *
make_buttons (SwSoilDialog *self)
{
  GtkWidget *row = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 12);
  GtkWidget *cancel = gtk_button_new_with_mnemonic (_ ("_Cancel"));

  self->back = GTK_BUTTON (gtk_button_new_with_mnemonic (_ ("_Back")));
  self->next = GTK_BUTTON (gtk_button_new_with_mnemonic (_ ("_Next")));
  gtk_widget_add_css_class (GTK_WIDGET (self->next), "suggested-action");
  gtk_widget_set_hexpand (cancel, TRUE);
  gtk_widget_set_halign (cancel, GTK_ALIGN_START);
  gtk_box_append (GTK_BOX (row), cancel);
  gtk_box_append (GTK_BOX (row), sw_help_button_new ("soil#hand", _ ("Test the Soil")));
  gtk_box_append (GTK_BOX (row), GTK_WIDGET (self->back));
  gtk_box_append (GTK_BOX (row), GTK_WIDGET (self->next));
  g_signal_connect_swapped (cancel, "clicked", G_CALLBACK (gtk_window_close), self);
  g_signal_connect_swapped (self->back, "clicked", G_CALLBACK (sw_soil_dialog_back),
                            self);
  g_signal_connect_swapped (self->next, "clicked", G_CALLBACK (sw_soil_dialog_next),
                            self);
  return row;
}

static void
sw_soil_dialog_init (SwSoilDialog *self)
{
  GtkWidget *box = gtk_box_new (GTK_ORIENTATION_VERTICAL, 18);

  gtk_widget_set_margin_top (box, 18);
  gtk_widget_set_margin_bottom (box, 18);
  gtk_widget_set_margin_start (box, 18);
  gtk_widget_set_margin_end (box, 18);
  self->stack = GTK_STACK (gtk_stack_new ());
  gtk_widget_set_vexpand (GTK_WIDGET (self->stack), TRUE);
  self->problem = GTK_LABEL (gtk_label_new (""));
  gtk_label_set_xalign (self->problem, 0.0f);
  gtk_widget_add_css_class (GTK_WIDGET (self->problem), "error");
  gtk_box_append (GTK_BOX (box), GTK_WIDGET (self->stack));
  gtk_box_append (GTK_BOX (box), GTK_WIDGET (self->problem));
  gtk_box_append (GTK_BOX (box), make_buttons (self));
  gtk_window_set_child (GTK_WINDOW (self), box);
  gtk_window_set_title (GTK_WINDOW (self), _ ("Test the Soil"));
  gtk_window_set_modal (GTK_WINDOW (self), TRUE);
  gtk_window_set_default_widget (GTK_WINDOW (self), GTK_WIDGET (self->next));
}

GtkWidget *
sw_soil_dialog_new (GtkWindow *parent, SwStage *stage)
{
  SwSoilDialog *self = g_object_new (SW_TYPE_SOIL_DIALOG, "transient-for", parent, NULL);

  self->stage = g_object_ref (stage);
  add_page (self, PAGE_HOW, _ ("How do you find out which soil it is?"));
  add_answer (self, PAGE_HOW, _ ("_Feel a wet handful, here and now"));
  add_answer (self, PAGE_HOW, _ ("From a _laboratory's report"));
  make_field_test_pages (self);
  make_laboratory_pages (self);
  add_page (self, PAGE_RESULT, "");
  show_page (self, PAGE_HOW);
  return GTK_WIDGET (self);
}
