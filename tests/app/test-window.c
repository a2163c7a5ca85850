/* SPDX-License-Identifier: MIT */
#undef G_DISABLE_ASSERT
#include <glib/gstdio.h>

#include "export.h"
#include "form-fields.h"
#include "print.h"
#include "sw-canvas-pane.h"
#include "sw-findings-list.h"
#include "sw-page-view.h"
#include "sw-point-table.h"
#include "sw-practice-page.h"
#include "sw-practices-dialog.h"
#include "sw-preview.h"
#include "sw-roll-list.h"
#include "sw-species-list.h"
#include "sw-types-dialog.h"
#include "sw-value-entry.h"
#include "sw-window-private.h"
#include "window-fixture.h"

typedef WindowFixture Fixture;

static void
set_up (Fixture *f, gconstpointer data)
{
  window_fixture_set_up (f);
}

static void
tear_down (Fixture *f, gconstpointer data)
{
  window_fixture_tear_down (f);
}

/* Fits a screen 1280 wide, in every language a little longer too. */
static void
test_room (Fixture *f, gconstpointer data)
{
  int least, natural;

  gtk_widget_measure (GTK_WIDGET (f->window), GTK_ORIENTATION_HORIZONTAL, -1, &least,
                      &natural, NULL, NULL);
  g_assert_cmpint (least, <=, 1100);
  gtk_widget_measure (GTK_WIDGET (f->window), GTK_ORIENTATION_VERTICAL, 1280, &least,
                      &natural, NULL, NULL);
  g_assert_cmpint (least, <=, 720);
}

static void
test_examples_open (Fixture *f, gconstpointer data)
{
  static const char *const names[] = { "pinfold-cutting.slope.json",
                                       "sallow-bank.slope.json",
                                       "sandlark-bluff-road.slope.json" };

  for (gsize i = 0; i < G_N_ELEMENTS (names); i++)
    {
      window_fixture_load_example (f, names[i]);
      g_assert_cmpint (sw_stage_result (f->stage)->status, ==, SW_OK);
      g_assert_cmpstr (sw_tally_bar_text (sw_window_tally (f->window), "rolls"), !=, "–");
      g_assert_false (sw_document_modified (f->document));
    }
}

/* What the tally line says is what the tally says, before and after an edit and its undo. */
static void
test_tally_is_true (Fixture *f, gconstpointer data)
{
  SwTallyBar *bar = sw_window_tally (f->window);
  g_autofree char *before = NULL;
  g_autoptr (SwJob) job = NULL;
  g_autofree char *now = NULL;

  window_fixture_load_example (f, "sandlark-bluff-road.slope.json");
  before = g_strdup (sw_tally_bar_text (bar, "net-area"));
  job = sw_points_move (sw_document_committed (f->document), 0, SW_POINTS_OUTLINE, 1,
                        (SwPoint){ 30.0, 0.0 });
  sw_document_commit (f->document, job, "Move", NULL);
  now = sw_quantity_text (sw_stage_result (f->stage)->tally->areas.net_m2, SW_UNIT_M2,
                          sw_stage_style (f->stage));
  g_assert_cmpstr (sw_tally_bar_text (bar, "net-area"), ==, now);
  g_assert_cmpstr (now, !=, before);
  gtk_widget_activate_action (GTK_WIDGET (f->window), "win.undo", NULL);
  g_assert_cmpstr (sw_tally_bar_text (bar, "net-area"), ==, before);
}

static void
test_units_change_words_only (Fixture *f, gconstpointer data)
{
  double net_m2 = sw_stage_result (f->stage)->tally->areas.net_m2;
  g_autofree char *metric =
      g_strdup (sw_tally_bar_text (sw_window_tally (f->window), "net-area"));
  g_autoptr (SwJob) job = sw_job_copy (sw_document_committed (f->document));

  job->units = SW_UNITS_US;
  sw_document_commit (f->document, job, "Change Units", NULL);
  g_assert_cmpfloat (sw_stage_result (f->stage)->tally->areas.net_m2, ==, net_m2);
  g_assert_cmpstr (sw_tally_bar_text (sw_window_tally (f->window), "net-area"), !=,
                   metric);
}

static void
test_bad_job_is_explained (Fixture *f, gconstpointer data)
{
  g_autoptr (SwJob) job = sw_points_move (sw_document_committed (f->document), 0,
                                          SW_POINTS_OUTLINE, 1, (SwPoint){ 10.0, 15.0 });

  sw_document_commit (f->document, job, "Cross", NULL);
  g_assert_cmpstr (sw_tally_bar_text (sw_window_tally (f->window), "rolls"), ==, "–");
  gtk_widget_activate_action (GTK_WIDGET (f->window), "win.undo", NULL);
  g_assert_cmpstr (sw_tally_bar_text (sw_window_tally (f->window), "rolls"), !=, "–");
}

static void
test_point_table_commits (Fixture *f, gconstpointer data)
{
  GtkWidget *table = g_object_ref_sink (
      sw_point_table_new (f->stage, sw_canvas_kind (SW_CANVAS_SECTION)));
  SwValueEntry *toe_out =
      SW_VALUE_ENTRY (sw_point_table_entry (SW_POINT_TABLE (table), 1, TRUE));

  gtk_editable_set_text (GTK_EDITABLE (sw_value_entry_field (toe_out)), "12,5");
  g_assert_true (sw_value_entry_commit (toe_out));
  g_assert_cmpfloat (sw_stage_face (f->stage)->section[1].x_m, ==, 12.5);
  g_assert_cmpstr (sw_document_undo_label (f->document), ==, "Move Section Point 2");
  /* Behind the point before it: refused, in words. */
  gtk_editable_set_text (GTK_EDITABLE (sw_value_entry_field (toe_out)), "-3");
  g_assert_false (sw_value_entry_commit (toe_out));
  g_assert_cmpfloat (sw_stage_face (f->stage)->section[1].x_m, ==, 12.5);
  g_assert_finalize_object (table);
}

static void
test_forms_commit (Fixture *f, gconstpointer data)
{
  GtkWidget *form = g_object_ref_sink (sw_form_new (f->stage, sw_face_fields));
  GtkDropDown *soil = GTK_DROP_DOWN (sw_form_control (SW_FORM (form), 1));
  GtkSwitch *loose = GTK_SWITCH (sw_form_control (SW_FORM (form), 2));
  g_autofree char *before = g_strdup (sw_stage_face (f->stage)->soil_id);

  gtk_drop_down_set_selected (soil, 0);
  g_assert_cmpstr (sw_stage_face (f->stage)->soil_id, ==, "sand");
  g_assert_cmpstr (sw_document_undo_label (f->document), ==, "Change Soil");
  gtk_switch_set_active (loose, TRUE);
  g_assert_true (sw_stage_face (f->stage)->loose);
  sw_document_undo (f->document);
  g_assert_false (gtk_switch_get_active (loose));
  sw_document_undo (f->document);
  g_assert_cmpstr (sw_stage_face (f->stage)->soil_id, ==, before);
  g_assert_false (sw_document_can_undo (f->document));
  g_assert_finalize_object (form);
}

/* A field that means nothing for this job is not there to be puzzled over. */
static void
test_forms_show_what_applies (Fixture *f, gconstpointer data)
{
  GtkWidget *form = g_object_ref_sink (sw_form_new (f->stage, sw_face_fields));
  GtkDropDown *crest = GTK_DROP_DOWN (sw_form_control (SW_FORM (form), 6));
  GtkWidget *radius = sw_form_control (SW_FORM (form), 7);

  g_assert_false (gtk_widget_get_visible (radius));
  gtk_drop_down_set_selected (crest, SW_CREST_NOSE);
  g_assert_true (gtk_widget_get_visible (radius));
  sw_document_undo (f->document);
  g_assert_false (gtk_widget_get_visible (radius));
  g_assert_finalize_object (form);
}

/* Every row of every form: showing the job must not change it. */
static void
test_forms_only_look (Fixture *f, gconstpointer data)
{
  static const SwField *const forms[] = {
    sw_face_fields,       sw_blanket_fields, sw_seed_fields, sw_site_fields,
    sw_job_fields,        sw_paper_fields,   sw_pack_fields, sw_allowance_fields,
    sw_fertiliser_fields, sw_haul_fields,    sw_crew_fields, sw_price_fields
  };

  window_fixture_load_example (f, "pinfold-cutting.slope.json");
  for (gsize i = 0; i < G_N_ELEMENTS (forms); i++)
    {
      GtkWidget *form = g_object_ref_sink (sw_form_new (f->stage, forms[i]));
      g_assert_false (sw_document_can_undo (f->document));
      g_assert_finalize_object (form);
    }
  GtkWidget *practice = g_object_ref_sink (sw_practice_page_new (f->stage));
  g_assert_false (sw_document_can_undo (f->document));
  g_assert_finalize_object (practice);
}

/* F6 goes round the parts of the window, Shift+F6 back. */
static void
test_keyboard_goes_round_the_parts (Fixture *f, gconstpointer data)
{
  GtkWidget *parts[] = { GTK_WIDGET (f->window->inspector),
                         GTK_WIDGET (f->window->findings_room),
                         GTK_WIDGET (f->window->tally_room),
                         GTK_WIDGET (f->window->views) };

  window_fixture_load_example (f, "pinfold-cutting.slope.json");
  gtk_window_present (GTK_WINDOW (f->window));
  while (!gtk_widget_get_mapped (GTK_WIDGET (sw_window_canvas (f->window, SW_CANVAS_PLAN))))
    g_main_context_iteration (NULL, TRUE);
  gtk_widget_grab_focus (GTK_WIDGET (sw_window_canvas (f->window, SW_CANVAS_PLAN)));
  for (guint i = 0; i < G_N_ELEMENTS (parts); i++)
    {
      gtk_widget_activate_action (GTK_WIDGET (f->window), "win.step-part", "i", 1);
      g_assert_true (
          gtk_widget_is_ancestor (gtk_root_get_focus (GTK_ROOT (f->window)), parts[i]));
    }
  gtk_widget_activate_action (GTK_WIDGET (f->window), "win.step-part", "i", -1);
  g_assert_true (
      gtk_widget_is_ancestor (gtk_root_get_focus (GTK_ROOT (f->window)), parts[2]));
}

static void
assert_file_keeps (const SwJob *job, const char *what)
{
  g_autofree char *text = sw_job_write (job);
  g_autoptr (GError) error = NULL;
  g_autoptr (SwJob) back = sw_job_parse (text, strlen (text), what, &error);

  g_assert_no_error (error);
  g_assert_true (sw_job_equal (back, job));
}

/* What a field takes must be a job that can be opened again. */
static void
test_limits_are_the_files (Fixture *f, gconstpointer data)
{
  static const SwField *const forms[] = { sw_face_fields, sw_blanket_fields,
                                          sw_seed_fields };

  for (gsize i = 0; i < G_N_ELEMENTS (forms); i++)
    for (const SwField *field = forms[i]; field->kind != SW_FIELD_END; field++)
      for (int end = 0; end < 2 && field->kind == SW_FIELD_VALUE; end++)
        {
          g_autoptr (SwJob) job = sw_job_copy (sw_document_committed (f->document));
          SwFace *face = g_ptr_array_index (job->faces, 0);
          gpointer place = field->of_face ? (gpointer) face : (gpointer) job;

          face->crest_form = SW_CREST_NOSE;
          face->crest_radius_m = 50.0;
          G_STRUCT_MEMBER (double, place, field->offset) =
              end == 0 ? field->least : field->most;
          assert_file_keeps (job, field->label);
        }
}

/* Practice values at the ends of what their fields take. */
static void
test_practice_limits_are_the_files (Fixture *f, gconstpointer data)
{
  for (guint i = 0; i < SW_PRACTICE_VALUE_COUNT; i++)
    for (int end = 0; end < 2; end++)
      {
        const SwPracticeKey *key = &sw_practice_keys[i];
        g_autoptr (SwJob) job = sw_job_copy (sw_document_committed (f->document));

        sw_job_set_override (job, (SwPracticeValue) i, end == 0 ? key->least : key->most,
                             "test");
        assert_file_keeps (job, key->key);
      }
}

/* The ends of what the order page takes, with all that is blank beside it. */
static void
test_plan_limits_are_the_files (Fixture *f, gconstpointer data)
{
  for (int i = 0; i < SW_PLAN_COUNT; i++)
    for (int end = 0; end < 2; end++)
      {
        g_autoptr (SwJob) job = sw_job_copy (sw_document_committed (f->document));

        job->plan.values[i] = end == 0 ? sw_plan_keys[i].least : sw_plan_keys[i].most;
        assert_file_keeps (job, sw_plan_keys[i].key);
      }
}

/* Type into an entry as a user does. */
static void
type_value (GtkWidget *entry, const char *text)
{
  GtkEntry *field = sw_value_entry_field (SW_VALUE_ENTRY (entry));

  gtk_editable_set_text (GTK_EDITABLE (field), text);
  sw_value_entry_commit (SW_VALUE_ENTRY (entry));
}

/* Species are added, typed and removed, each step undone by itself; a rate in seeds takes
 * the place of one by mass, once seeds are counted. */
static void
test_species_list (Fixture *f, gconstpointer data)
{
  GtkWidget *widget = g_object_ref_sink (sw_species_list_new (f->stage));
  SwSpeciesList *list = SW_SPECIES_LIST (widget);
  const SwSeedSpecies *species;

  g_assert_cmpuint (sw_species_list_count (list), ==, 0);
  g_signal_emit_by_name (sw_species_list_add_button (list), "clicked");
  g_signal_emit_by_name (sw_species_list_add_button (list), "clicked");
  g_assert_cmpuint (sw_species_list_count (list), ==, 2);
  g_assert_false (
      gtk_widget_get_sensitive (sw_species_list_entry (list, 1, SW_SPECIES_SEEDS)));
  type_value (sw_species_list_entry (list, 1, SW_SPECIES_PLS), "3");
  type_value (sw_species_list_entry (list, 1, SW_SPECIES_PER_KG), "550000");
  type_value (sw_species_list_entry (list, 1, SW_SPECIES_SEEDS), "400");
  type_value (sw_species_list_entry (list, 1, SW_SPECIES_GERMINATION), "90");
  type_value (sw_species_list_entry (list, 1, SW_SPECIES_HARD), "11");
  type_value (sw_species_list_entry (list, 1, SW_SPECIES_PER_KG), "0");
  species = &sw_stage_job (f->stage)->seed.species[1];
  g_assert_cmpfloat (species->pls_kg_per_m2, ==, 0.0);
  g_assert_cmpfloat (species->seeds_per_m2, ==, 400.0);
  g_assert_cmpfloat (species->hard, ==, 0.0);           /* 90 and 11 are too many */
  g_assert_cmpfloat (species->seeds_per_kg, ==, 550e3); /* the rate needs it */
  assert_file_keeps (sw_stage_job (f->stage), "species");
  g_signal_emit_by_name (sw_species_list_remove_button (list, 0), "clicked");
  g_assert_cmpuint (sw_species_list_count (list), ==, 1);
  g_assert_cmpfloat (sw_stage_job (f->stage)->seed.species[0].seeds_per_m2, ==, 400.0);
  for (int step = 0; step < 4; step++)
    sw_document_undo (f->document);
  g_assert_cmpuint (sw_stage_job (f->stage)->seed.n_species, ==, 2);
  g_assert_cmpfloat (sw_stage_job (f->stage)->seed.species[1].pls_kg_per_m2, >, 0.0);
  for (int step = 0; step < 2; step++)
    sw_document_undo (f->document);
  g_assert_cmpuint (sw_species_list_count (list), ==, 1);
  g_assert_finalize_object (widget);
}

/* A length of the yard is cut before rolls are ordered, and is in the file. */
static void
test_roll_list (Fixture *f, gconstpointer data)
{
  GtkWidget *widget = g_object_ref_sink (sw_roll_list_new (f->stage));
  SwRollList *list = SW_ROLL_LIST (widget);
  const SwLayout *layout = sw_stage_result (f->stage)->layout;
  double ordered_m2 = layout->ordered_m2;
  double roll_m2 =
      sw_stage_job (f->stage)->roll_width_m * sw_stage_job (f->stage)->roll_length_m;

  g_signal_emit_by_name (sw_roll_list_add_button (list), "clicked");
  layout = sw_stage_result (f->stage)->layout;
  g_assert_cmpfloat_with_epsilon (layout->ordered_m2, ordered_m2 - roll_m2, 1e-6);
  type_value (sw_roll_list_length (list, 0), "0.5");
  g_assert_cmpfloat_with_epsilon (
      g_array_index (sw_stage_job (f->stage)->stock, SwStockLine, 0).length_m, 0.5, 1e-9);
  layout = sw_stage_result (f->stage)->layout;
  g_assert_cmpfloat_with_epsilon (layout->ordered_m2, ordered_m2, 1e-6);
  assert_file_keeps (sw_stage_job (f->stage), "stock");
  for (int step = 0; step < 2; step++)
    sw_document_undo (f->document);
  g_assert_cmpuint (sw_stage_job (f->stage)->stock->len, ==, 0);
  g_assert_finalize_object (widget);
}

static GtkWidget *
descendant (GtkWidget *root, GType type)
{
  for (GtkWidget *child = gtk_widget_get_first_child (root); child != NULL;
       child = gtk_widget_get_next_sibling (child))
    {
      GtkWidget *found =
          G_TYPE_CHECK_INSTANCE_TYPE (child, type) ? child : descendant (child, type);

      if (found != NULL)
        return found;
    }
  return NULL;
}

static gboolean
view_shown (Fixture *f, SwCanvasView view)
{
  GtkWidget *canvas = GTK_WIDGET (sw_window_canvas (f->window, view));

  return gtk_widget_get_visible (gtk_widget_get_ancestor (canvas, SW_TYPE_CANVAS_PANE));
}

static void
test_view_alone (Fixture *f, gconstpointer data)
{
  GtkWidget *window = GTK_WIDGET (f->window);

  gtk_widget_activate_action (window, "win.show-alone", "s", "plan");
  g_assert_true (view_shown (f, SW_CANVAS_PLAN));
  g_assert_false (view_shown (f, SW_CANVAS_SECTION));
  gtk_widget_activate_action (window, "win.show-alone", "s", "section");
  g_assert_false (view_shown (f, SW_CANVAS_PLAN));
  g_assert_true (view_shown (f, SW_CANVAS_SECTION));
  gtk_widget_activate_action (window, "win.show-alone", "s", "section");
  g_assert_true (view_shown (f, SW_CANVAS_PLAN));
  gtk_widget_activate_action (window, "win.show-alone", "s", "plan");
  gtk_widget_activate_action (window, "win.show-alone", "s", "all");
  g_assert_true (view_shown (f, SW_CANVAS_FACE_VIEW));
}

/* What is printed is chosen beside the pages; each choice is one step. */
static void
test_preview_chooses_the_document (Fixture *f, gconstpointer data)
{
  GtkWidget *preview = descendant (GTK_WIDGET (f->window), SW_TYPE_PREVIEW);
  SwForm *form = SW_FORM (descendant (preview, SW_TYPE_FORM));
  GtkDropDown *kind = GTK_DROP_DOWN (sw_form_control (form, 0));

  gtk_drop_down_set_selected (kind, SW_PACK_PERMIT);
  g_assert_cmpint (sw_stage_job (f->stage)->pack.kind, ==, SW_PACK_PERMIT);
  sw_document_undo (f->document);
  g_assert_cmpuint (gtk_drop_down_get_selected (kind), ==, SW_PACK_CREW);
}

/* By hand: an A4 page at 4 px to the millimetre is 840 px wide and 1188 px high. */
static void
test_page_keeps_its_scale (Fixture *f, gconstpointer data)
{
  g_autoptr (GPtrArray) pages = window_fixture_pages (f);
  GtkWidget *view = g_object_ref_sink (sw_page_view_new (f->stock, 700));
  int least, natural;

  sw_page_view_show (SW_PAGE_VIEW (view), pages, 0);
  sw_page_view_set_scale (SW_PAGE_VIEW (view), 4.0);
  gtk_widget_measure (view, GTK_ORIENTATION_HORIZONTAL, -1, &least, &natural, NULL, NULL);
  g_assert_cmpint (least, ==, 840);
  gtk_widget_measure (view, GTK_ORIENTATION_VERTICAL, 840, &least, &natural, NULL, NULL);
  g_assert_cmpint (natural, ==, 1188);
  g_assert_cmpfloat_with_epsilon (sw_page_view_scale (SW_PAGE_VIEW (view)), 4.0, 1e-9);
  sw_page_view_set_scale (SW_PAGE_VIEW (view), 0.0);
  gtk_widget_measure (view, GTK_ORIENTATION_HORIZONTAL, -1, &least, &natural, NULL, NULL);
  g_assert_cmpint (natural, ==, 700);
  g_assert_finalize_object (view);
}

/* What is asked for stands first, then every type of the catalogue. */
static void
test_types_dialog (Fixture *f, gconstpointer data)
{
  SwTypesDialog *dialog;

  window_fixture_load_example (f, "sandlark-bluff-road.slope.json");
  dialog = SW_TYPES_DIALOG (sw_types_dialog_new (GTK_WINDOW (f->window), f->stage));
  g_assert_nonnull (strstr (sw_types_dialog_text (dialog, 1, 1), "1.5"));
  g_assert_cmpuint (sw_stage_stock (f->stage)->catalogue->blankets->len, >=, 2);
  g_assert_nonnull (sw_types_dialog_text (
      dialog, 1 + sw_stage_stock (f->stage)->catalogue->blankets->len, 1));
  gtk_window_destroy (GTK_WINDOW (dialog));
}

/* Side by side on this slope; taking the other one is one step. */
static void
test_practices_dialog (Fixture *f, gconstpointer data)
{
  GtkWidget *dialog;
  g_autofree char *before = NULL;

  window_fixture_load_example (f, "sallow-bank.slope.json");
  before = g_strdup (sw_stage_job (f->stage)->practice_id);
  dialog = sw_practices_dialog_new (GTK_WINDOW (f->window), f->stage);
  sw_practices_dialog_choose (SW_PRACTICES_DIALOG (dialog), 3);
  g_assert_cmpstr (sw_practices_dialog_text (SW_PRACTICES_DIALOG (dialog), 1, 0), ==,
                   "Runs");
  g_assert_cmpstr (sw_practices_dialog_text (SW_PRACTICES_DIALOG (dialog), 1, 1), ==,
                   "21");
  sw_practices_dialog_use (SW_PRACTICES_DIALOG (dialog));
  g_assert_cmpstr (sw_stage_job (f->stage)->practice_id, ==, "illinois-830");
  sw_document_undo (f->document);
  g_assert_cmpstr (sw_stage_job (f->stage)->practice_id, ==, before);
}

static void
test_findings_follow (Fixture *f, gconstpointer data)
{
  GtkWidget *list = g_object_ref_sink (sw_findings_list_new ());
  g_autoptr (SwJob) job = sw_job_copy (sw_document_committed (f->document));

  sw_findings_list_set_stage (SW_FINDINGS_LIST (list), f->stage);
  g_assert_cmpuint (sw_findings_list_count (SW_FINDINGS_LIST (list)), ==,
                    sw_stage_result (f->stage)->findings->len);
  job->site[SW_SITE_SEEPAGE] = SW_ANSWER_YES;
  sw_document_commit (f->document, job, "Answer", NULL);
  g_assert_cmpuint (sw_findings_list_count (SW_FINDINGS_LIST (list)), ==,
                    sw_stage_result (f->stage)->findings->len);
  g_assert_finalize_object (list);
}

/* The ending of the name decides what is written; another one is refused. */
static void
test_drawing_is_written (Fixture *f, gconstpointer data)
{
  g_autofree char *folder = g_dir_make_tmp ("slopewright-app-XXXXXX", NULL);
  g_autofree char *svg_path = g_build_filename (folder, "plan.svg", NULL);
  g_autofree char *odd_path = g_build_filename (folder, "plan.gif", NULL);
  g_autoptr (GFile) svg = g_file_new_for_path (svg_path);
  g_autoptr (GFile) odd = g_file_new_for_path (odd_path);
  g_autoptr (GError) error = NULL;

  g_assert_true (
      sw_export_drawing (f->stage, sw_canvas_kind (SW_CANVAS_PLAN), svg, &error));
  g_assert_no_error (error);
  g_assert_false (
      sw_export_drawing (f->stage, sw_canvas_kind (SW_CANVAS_PLAN), odd, &error));
  g_assert_nonnull (error);
  g_assert_cmpint (g_unlink (svg_path), ==, 0);
  g_rmdir (folder);
}

/* Two windows at once do not disturb each other. */
static void
test_two_windows (Fixture *f, gconstpointer data)
{
  SwWindow *other = sw_window_new (NULL, f->stock, f->preferences);
  g_autoptr (SwJob) job = sw_points_move (sw_document_committed (f->document), 0,
                                          SW_POINTS_SECTION, 1, (SwPoint){ 15.0, 0.0 });

  sw_document_commit (f->document, job, "Move", NULL);
  g_assert_true (sw_window_is_fresh (other));
  g_assert_false (sw_window_is_fresh (f->window));
  gtk_window_destroy (GTK_WINDOW (other));
}

static void
test_faces (Fixture *f, gconstpointer data)
{
  g_autoptr (SwJob) job = sw_job_copy (sw_document_committed (f->document));
  SwFace *second = sw_face_copy (g_ptr_array_index (job->faces, 0));

  sw_text_set (&second->id, "B");
  g_ptr_array_add (job->faces, second);
  sw_document_commit (f->document, job, "Add Face B", NULL);
  sw_stage_show_face (f->stage, 1);
  g_assert_cmpstr (sw_stage_face (f->stage)->id, ==, "B");
  /* Undo takes away the face that is shown: the other one is shown. */
  sw_document_undo (f->document);
  g_assert_cmpstr (sw_stage_face (f->stage)->id, ==, "A");
}

/* What goes to the printer has as many pages as the pack, on the job's paper. */
static void
test_prints_true_pages (Fixture *f, gconstpointer data)
{
  g_autofree char *folder = g_dir_make_tmp ("slopewright-print-XXXXXX", NULL);
  g_autofree char *path = g_build_filename (folder, "pack.pdf", NULL);
  g_autofree char *command = g_strdup_printf ("pdfinfo %s", path);
  g_autoptr (GtkPrintOperation) print = NULL;
  g_autoptr (GPtrArray) pages = NULL;
  g_autofree char *about = NULL;
  g_autofree char *count = NULL;

  window_fixture_load_example (f, "sandlark-bluff-road.slope.json");
  pages = window_fixture_pages (f);
  print = sw_print_new (f->stage, pages, sw_stage_job (f->stage)->paper);
  gtk_print_operation_set_export_filename (print, path);
  g_assert_cmpint (
      gtk_print_operation_run (print, GTK_PRINT_OPERATION_ACTION_EXPORT, NULL, NULL), ==,
      GTK_PRINT_OPERATION_RESULT_APPLY);
  g_assert_true (g_spawn_command_line_sync (command, &about, NULL, NULL, NULL));
  count = g_strdup_printf ("Pages:           %u\n", pages->len);
  g_assert_nonnull (strstr (about, count));
  /* ISO 216: A4 is 210 x 297 mm, 595.276 x 841.89 pt. */
  g_assert_nonnull (strstr (about, "595.276 x 841.89 pts (A4)"));
  g_unlink (path);
  g_rmdir (folder);
}

/* The same table as slopepack writes. */
static void
test_exports_quantities (Fixture *f, gconstpointer data)
{
  g_autofree char *folder = g_dir_make_tmp ("slopewright-csv-XXXXXX", NULL);
  g_autofree char *path = g_build_filename (folder, "bank.csv", NULL);
  g_autoptr (GFile) file = g_file_new_for_path (path);
  g_autofree char *table = NULL;

  window_fixture_load_example (f, "sandlark-bluff-road.slope.json");
  g_assert_true (sw_export_quantities (f->stage, file, NULL));
  g_assert_true (g_file_get_contents (path, &table, NULL, NULL));
  g_assert_true (g_str_has_prefix (table, "name,title,value,unit"));
  g_assert_nonnull (strstr (table, "\nrolls,"));
  g_unlink (path);
  g_rmdir (folder);
}

int
main (int argc, char *argv[])
{
  gtk_test_init (&argc, &argv, NULL);
#define ADD(path, function)                                                              \
  g_test_add ("/app/window/" path, Fixture, NULL, set_up, function, tear_down)
  ADD ("room", test_room);
  ADD ("examples-open", test_examples_open);
  ADD ("tally-is-true", test_tally_is_true);
  ADD ("units-change-words-only", test_units_change_words_only);
  ADD ("bad-job-is-explained", test_bad_job_is_explained);
  ADD ("point-table-commits", test_point_table_commits);
  ADD ("forms-commit", test_forms_commit);
  ADD ("forms-show-what-applies", test_forms_show_what_applies);
  ADD ("forms-only-look", test_forms_only_look);
  ADD ("limits-are-the-files", test_limits_are_the_files);
  ADD ("practice-limits-are-the-files", test_practice_limits_are_the_files);
  ADD ("plan-limits-are-the-files", test_plan_limits_are_the_files);
  ADD ("species-list", test_species_list);
  ADD ("roll-list", test_roll_list);
  ADD ("view-alone", test_view_alone);
  ADD ("preview-chooses-the-document", test_preview_chooses_the_document);
  ADD ("page-keeps-its-scale", test_page_keeps_its_scale);
  ADD ("types-dialog", test_types_dialog);
  ADD ("practices-dialog", test_practices_dialog);
  ADD ("findings-follow", test_findings_follow);
  ADD ("prints-true-pages", test_prints_true_pages);
  ADD ("exports-quantities", test_exports_quantities);
  ADD ("drawing-is-written", test_drawing_is_written);
  ADD ("two-windows", test_two_windows);
  ADD ("keyboard-goes-round-the-parts", test_keyboard_goes_round_the_parts);
  ADD ("faces", test_faces);
#undef ADD
  return g_test_run ();
}
