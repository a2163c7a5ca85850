/* SPDX-License-Identifier: MIT */
#include "export.h"

#include <glib/gi18n.h>
#include <slopewright/sheet/pack.h>
#include <slopewright/sheet/report.h>

#define FINGERPRINT_DIGITS 12
#define PNG_DPI 200.0
#define JOB_SUFFIX ".slope.json"

char *
sw_export_fingerprint (const SwJob *job)
{
  g_autofree char *digest = sw_job_digest (job);

  return g_strndup (digest, FINGERPRINT_DIGITS);
}

SwTexts *
sw_export_texts (SwStage *stage)
{
  SwTexts *texts = sw_texts_load (sw_stage_job (stage)->language);

  return texts != NULL ? texts : sw_texts_ref (sw_stage_stock (stage)->texts);
}

static SwDraw
draw_with (SwStage *stage, const SwTexts *texts)
{
  return (SwDraw){ .texts = texts,
                   .measure = sw_stage_stock (stage)->measure,
                   .style = { sw_stage_job (stage)->units, sw_texts_decimal_mark (texts),
                              texts } };
}

char *
sw_export_path (GFile *file, GError **error)
{
  char *path = g_file_get_path (file);

  if (path == NULL)
    g_set_error (error, G_IO_ERROR, G_IO_ERROR_NOT_SUPPORTED,
                 _ ("Only folders of this computer can be written to."));
  return path;
}

/* A form to be filled in at the slope says nothing of the job shown, which may not even
 * be one that can be laid out. */
static SwResult *
new_job_result (SwStage *stage)
{
  g_autoptr (SwJob) job = sw_job_new_default ();

  job->units = sw_stage_job (stage)->units;
  job->paper = sw_stage_job (stage)->paper;
  return sw_result_new (job, sw_stage_stock (stage)->catalogue);
}

gboolean
sw_export_form (SwStage *stage, GFile *file, GError **error)
{
  g_autoptr (SwResult) result = new_job_result (stage);
  const SwJob *job = result->job;
  SwPackPlan plan = job->pack;
  g_autoptr (SwTexts) texts = sw_export_texts (stage);
  const SwDraw draw = draw_with (stage, texts);
  const SwPdfInfo info = { .title = sw_texts_get (texts, "pack-kind.measure-blank"),
                           .creator = "slopepack " SW_VERSION,
                           .language = sw_texts_language (texts) };
  g_autofree char *fingerprint = sw_export_fingerprint (job);
  g_autofree char *path = sw_export_path (file, error);
  g_autoptr (GPtrArray) pages = NULL;

  if (path == NULL)
    return FALSE;
  plan.kind = SW_PACK_MEASURE_BLANK;
  pages = sw_pack_new (result, &draw, job->paper, &plan, SW_VERSION, fingerprint, NULL);
  return sw_paint_pdf (pages, sw_stage_stock (stage)->palette, &info, path, NULL, error);
}

gboolean
sw_export_quantities (SwStage *stage, GFile *file, GError **error)
{
  const SwJob *job = sw_stage_job (stage);
  g_autofree char *path = sw_export_path (file, error);
  g_autoptr (SwTexts) texts = sw_export_texts (stage);
  g_autofree char *table = NULL;

  if (path == NULL)
    return FALSE;
  table = sw_report_tally (sw_stage_result (stage), texts,
                           (SwNumberStyle){ job->units, '.', texts }, SW_TALLY_CSV);
  return g_file_set_contents (path, table, -1, error);
}

static SwFigure *
make_drawing (SwStage *stage, const SwCanvasKind *kind)
{
  const SwResult *result = sw_stage_result (stage);
  g_autoptr (SwTexts) texts = sw_export_texts (stage);
  const SwDraw draw = draw_with (stage, texts);
  double short_mm, long_mm;
  SwView view;

  sw_paper_size_mm (sw_stage_job (stage)->paper, &short_mm, &long_mm);
  view = kind->fit (result, sw_stage_face_index (stage), long_mm, short_mm, &draw, NULL);
  return kind->draw (result, sw_stage_face_index (stage), &view, &draw);
}

gboolean
sw_export_drawing (SwStage *stage, const SwCanvasKind *kind, GFile *file, GError **error)
{
  g_autofree char *path = sw_export_path (file, error);
  g_autoptr (SwFigure) figure = NULL;

  if (path == NULL)
    return FALSE;
  if (!g_str_has_suffix (path, ".svg") && !g_str_has_suffix (path, ".png"))
    {
      g_set_error (error, G_IO_ERROR, G_IO_ERROR_INVALID_FILENAME,
                   _ ("The name must end in .svg or .png."));
      return FALSE;
    }
  figure = make_drawing (stage, kind);
  if (g_str_has_suffix (path, ".svg"))
    return sw_paint_svg (figure, sw_stage_stock (stage)->palette, path, error);
  return sw_paint_png (figure, sw_stage_stock (stage)->palette, PNG_DPI, path, error);
}

char *
sw_export_stem (SwStage *stage)
{
  GFile *file = sw_document_file (sw_stage_document (stage));
  const char *name = sw_stage_job (stage)->card.name;
  char *stem;

  if (file == NULL)
    {
      stem = g_strdup (*name != '\0' ? name : _ ("Untitled job"));
      return g_strdelimit (stem, "/\\:", '-');
    }
  stem = g_file_get_basename (file);
  if (g_str_has_suffix (stem, JOB_SUFFIX))
    stem[strlen (stem) - strlen (JOB_SUFFIX)] = '\0';
  return stem;
}
