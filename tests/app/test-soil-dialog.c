/* SPDX-License-Identifier: MIT */
#undef G_DISABLE_ASSERT
#include "sw-soil-dialog.h"
#include "sw-value-entry.h"
#include "window-fixture.h"

typedef struct
{
  WindowFixture w;
  SwStage *stage;
  SwDocument *document;
  SwSoilDialog *dialog;
} Fixture;

static void
set_up (Fixture *f, gconstpointer data)
{
  window_fixture_set_up (&f->w);
  f->stage = f->w.stage;
  f->document = f->w.document;
  f->dialog = SW_SOIL_DIALOG (sw_soil_dialog_new (NULL, f->stage));
}

static void
tear_down (Fixture *f, gconstpointer data)
{
  window_fixture_tear_down (&f->w);
}

static void
type (Fixture *f, guint field, const char *text)
{
  GtkWidget *entry = sw_soil_dialog_field (f->dialog, field);

  gtk_editable_set_text (GTK_EDITABLE (sw_value_entry_field (SW_VALUE_ENTRY (entry))),
                         text);
}

static void
choose (Fixture *f, guint answer)
{
  sw_soil_dialog_choose (f->dialog, answer);
  sw_soil_dialog_next (f->dialog);
}

/* Thien 1979: a ribbon of 30 mm, smooth, is silty clay loam. One step, undone in one. */
static void
test_field_test (Fixture *f, gconstpointer data)
{
  g_autofree char *before = g_strdup (sw_stage_face (f->stage)->soil_id);

  choose (f, 0);
  g_assert_cmpstr (sw_soil_dialog_page (f->dialog), ==, "ball");
  choose (f, 0);
  type (f, 0, "30 mm");
  sw_soil_dialog_next (f->dialog);
  g_assert_cmpstr (sw_soil_dialog_page (f->dialog), ==, "feel");
  choose (f, 1);
  g_assert_cmpstr (sw_soil_dialog_page (f->dialog), ==, "result");
  sw_soil_dialog_next (f->dialog);
  g_assert_cmpstr (sw_stage_face (f->stage)->soil_id, ==, "silty-clay-loam");
  g_assert_cmpint (sw_stage_face (f->stage)->soil_test.known, ==, SW_SOIL_BY_FEEL);
  sw_document_undo (f->document);
  g_assert_cmpstr (sw_stage_face (f->stage)->soil_id, ==, before);
  g_assert_cmpint (sw_stage_face (f->stage)->soil_test.known, ==, SW_SOIL_BY_EYE);
}

/* What falls apart is sand, and nothing more is asked. */
static void
test_sand_is_asked_little (Fixture *f, gconstpointer data)
{
  choose (f, 0);
  choose (f, 1);
  g_assert_cmpstr (sw_soil_dialog_page (f->dialog), ==, "result");
  sw_soil_dialog_back (f->dialog);
  g_assert_cmpstr (sw_soil_dialog_page (f->dialog), ==, "ball");
  sw_soil_dialog_next (f->dialog);
  sw_soil_dialog_next (f->dialog);
  g_assert_cmpstr (sw_stage_face (f->stage)->soil_id, ==, "sand");
}

/* Sand 65, clay 10 leave silt 25: sandy loam (Soil Survey Manual). Shares over 100 % and
 * more very fine sand than sand are refused where they are typed. */
static void
test_laboratory (Fixture *f, gconstpointer data)
{
  choose (f, 1);
  g_assert_cmpstr (sw_soil_dialog_page (f->dialog), ==, "shares");
  type (f, 0, "65");
  type (f, 1, "40");
  sw_soil_dialog_next (f->dialog);
  g_assert_cmpstr (sw_soil_dialog_page (f->dialog), ==, "shares");
  type (f, 1, "10 %");
  sw_soil_dialog_next (f->dialog);
  g_assert_cmpstr (sw_soil_dialog_page (f->dialog), ==, "erodibility");
  type (f, 0, "70");
  sw_soil_dialog_next (f->dialog);
  g_assert_cmpstr (sw_soil_dialog_page (f->dialog), ==, "erodibility");
  type (f, 0, "20");
  sw_soil_dialog_next (f->dialog);
  sw_soil_dialog_next (f->dialog);
  g_assert_cmpstr (sw_stage_face (f->stage)->soil_id, ==, "sandy-loam");
  g_assert_cmpfloat_with_epsilon (sw_stage_face (f->stage)->soil_test.silt, 0.25, 1e-12);
  g_assert_cmpfloat_with_epsilon (sw_stage_face (f->stage)->soil_test.fine_sand, 0.20,
                                  1e-12);
}

/* Nothing is taken for an answer that nobody gave: whoever presses Next on gets nowhere. */
static void
test_nothing_is_guessed (Fixture *f, gconstpointer data)
{
  for (int i = 0; i < 5; i++)
    sw_soil_dialog_next (f->dialog);
  g_assert_cmpstr (sw_soil_dialog_page (f->dialog), ==, "how");
  choose (f, 0);
  sw_soil_dialog_next (f->dialog);
  g_assert_cmpstr (sw_soil_dialog_page (f->dialog), ==, "ball");
  choose (f, 0);
  sw_soil_dialog_next (f->dialog);
  g_assert_cmpstr (sw_soil_dialog_page (f->dialog), ==, "ribbon");
  type (f, 0, "0");
  sw_soil_dialog_next (f->dialog);
  g_assert_cmpstr (sw_soil_dialog_page (f->dialog), ==, "result");
  sw_soil_dialog_next (f->dialog);
}

int
main (int argc, char **argv)
{
  gtk_test_init (&argc, &argv, NULL);
  g_test_add ("/app/soil-dialog/field-test", Fixture, NULL, set_up, test_field_test,
              tear_down);
  g_test_add ("/app/soil-dialog/sand-is-asked-little", Fixture, NULL, set_up,
              test_sand_is_asked_little, tear_down);
  g_test_add ("/app/soil-dialog/laboratory", Fixture, NULL, set_up, test_laboratory,
              tear_down);
  g_test_add ("/app/soil-dialog/nothing-is-guessed", Fixture, NULL, set_up,
              test_nothing_is_guessed, tear_down);
  return g_test_run ();
}
