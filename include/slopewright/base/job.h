/* SPDX-License-Identifier: MIT */
#pragma once

#include <glib.h>
#include <slopewright/base/catalogue.h>
#include <slopewright/base/pack-plan.h>
#include <slopewright/base/polygon.h>
#include <slopewright/base/own-practice.h>
#include <slopewright/base/product.h>
#include <slopewright/base/seed.h>
#include <slopewright/base/site-numbers.h>
#include <slopewright/base/soil-test.h>
#include <slopewright/base/status.h>
#include <slopewright/base/units.h>
#include <slopewright/base/work-plan.h>

/*
 * The job: all that a user said about one site, and nothing computed. A job in
 * use is never changed: edit = sw_job_copy(), change, commit to the document.
 */

typedef enum
{
  SW_PAPER_A4,
  SW_PAPER_LETTER,
  SW_PAPER_A3,
  SW_PAPER_TABLOID,
  SW_PAPER_COUNT
} SwPaper;

/** What to do with width left over when whole runs cover more than the face. */
typedef enum
{
  SW_SURPLUS_SPREAD, /* all side laps a little wider */
  SW_SURPLUS_TRIM,   /* last run cut narrower */
  SW_SURPLUS_NARROW  /* last run laid in the narrow roll where that covers, else spread */
} SwSurplus;

typedef enum
{
  SW_STOCK_ON_HAND, /* rolls or off-cuts that lie ready: used before anything is ordered */
  SW_STOCK_ORDER    /* another length that can be ordered beside the job's own */
} SwStockSource;

/* What a job's stock can hold. */
#define SW_STOCK_LINES_MOST 100u
#define SW_STOCK_COUNT_MOST 1000u
#define SW_STOCK_LENGTH_LEAST_M 0.1
#define SW_STOCK_LENGTH_MOST_M 1000.0

/** Rolls of one length, of the job's blanket and width. */
typedef struct
{
  SwStockSource source;
  double length_m;
  guint count; /* how many there are; 0, to order only: as many as wanted */
} SwStockLine;

/** Which end of the crest, as the face view shows it: seen from the toe looking up, left is small along_m. */
typedef enum
{
  SW_SIDE_LEFT,
  SW_SIDE_RIGHT
} SwSide;

/** Where end laps are made. */
typedef enum
{
  SW_JOINTS_LONG_RUNS, /* only in runs longer than a roll */
  SW_JOINTS_SAVE_ROLLS /* also to use up what is left of a roll, when that saves rolls */
} SwJoints;

typedef enum
{
  SW_BENCH_SPLIT,     /* key trench and end at every bench */
  SW_BENCH_CONTINUOUS /* laid over the bench */
} SwBenchRule;

/** How a run that lies on more than one soil is pinned. */
typedef enum
{
  SW_ZONE_WORSE, /* the longest pin called for anywhere under it, over its whole length */
  SW_ZONE_SPLIT  /* each pin by the soil it stands in */
} SwZoneRule;

/** How the face's shape was obtained; printed, and later the base of its error. */
typedef enum
{
  SW_OBTAINED_TAPED_ANGLE, /* face length taped, angle read */
  SW_OBTAINED_RISE_RATIO,  /* rise and H:V */
  SW_OBTAINED_RUN_RISE,
  SW_OBTAINED_TAPED_SHAPE, /* polygon taped in the face, with a diagonal */
  SW_OBTAINED_DRAWN,
  SW_OBTAINED_IMPORTED,
  SW_OBTAINED_COUNT
} SwObtained;

/** Codes as in the file: "taped-angle", "rise-ratio", "run-rise", "taped-shape", "drawn", "imported". */
const char *sw_obtained_code (SwObtained obtained);

/** Yes/no answers of the site visit; unanswered is its own answer. */
typedef enum
{
  SW_ANSWER_UNKNOWN,
  SW_ANSWER_NO,
  SW_ANSWER_YES
} SwAnswer;

/** Questions of the site visit; file keys and text ids "site.<key>". */
typedef enum
{
  SW_SITE_SEEPAGE,      /* "seepage": springs, cracks, bulges or slumps seen */
  SW_SITE_CHANNEL_FLOW, /* "channel_flow": swale, downspout or pipe onto the face */
  SW_SITE_RUN_ON,       /* "run_on": water arrives from above */
  SW_SITE_WATER_AT_TOE,
  SW_SITE_TRAFFIC,          /* "traffic": public road within reach */
  SW_SITE_UTILITIES_MARKED, /* "utilities_marked": one-call answered, marks seen */
  SW_SITE_WILDLIFE,         /* "wildlife": reptiles, birds or amphibians likely */
  SW_SITE_LINER,            /* "liner": membrane or service under the face */
  SW_SITE_LONE_WORK,
  SW_SITE_HOT_WEATHER,
  SW_SITE_WIND_EXPOSED,
  SW_SITE_IGNITION, /* "ignition": dry grass, smokers, hot exhausts, sparks */
  SW_SITE_LATE_SOWING,
  SW_SITE_MACHINES,
  SW_SITE_OVERHEAD_LINES,
  SW_SITE_ROPES,
  SW_SITE_CHEMICALS, /* "chemicals": fertiliser, lime, tackifier */
  SW_SITE_COLD_WEATHER,
  SW_SITE_REMOTE, /* "remote": help is far, or no phone signal */
  SW_SITE_PUBLIC, /* "public": passers-by, children, animals */
  SW_SITE_QUESTION_COUNT
} SwSiteQuestion;

extern const char *const sw_site_question_keys[SW_SITE_QUESTION_COUNT];

/** How the crest runs on plan. */
typedef enum
{
  SW_CREST_STRAIGHT,
  SW_CREST_NOSE, /* round the outside of a bend: the toe is longer than the crest */
  SW_CREST_BOWL  /* round the inside: the crest is longer than the toe */
} SwCrestForm;

/** How a face with a round crest is covered. */
typedef enum
{
  SW_FAN_FULL_RUNS, /* every run from crest to toe */
  SW_FAN_INFILL     /* every second run only where the runs beside it lap too little */
} SwFan;

/** A further section at a place along the crest, matched point by point to the face's own. */
typedef struct
{
  double along_m;
  SwPoint *section; /* as many points as SwFace.section; same crest and toe */
} SwCrossSection;

/** What stands on the face and is not covered: a tree, a boulder, a headwall. */
typedef struct
{
  char *id;         /* "1": unique in the face, written like a face's */
  char *name;       /* "Utility box" */
  SwPoint *outline; /* plan, like the face's */
  guint n_outline;
} SwObstacle;

/** Part of the face with a soil of its own. */
typedef struct
{
  char *id;   /* unique among the zones of the face, written like a face's */
  char *name; /* "Sand lens" */
  SwPoint *outline;
  guint n_outline;
  char *soil_id;
  gboolean loose;
  double topsoil_m;
} SwZone;

typedef struct
{
  char *id;   /* "A": unique in the job, one to eight letters, digits or hyphens */
  char *name; /* "Upper cutting" */
  /* section: x out from any datum, strictly growing; y up */
  SwPoint *section;
  guint n_section;
  guint crest, toe; /* indices into section, crest < toe */
  double
      section_along_m; /* where the section was taken; matters with further ones only */
  SwCrossSection
      *further; /* sections elsewhere, ruled between; along_m growing; NULL if none */
  guint n_further;
  SwCrestForm crest_form;
  double
      crest_radius_m; /* on plan; of a nose or bowl, > 0. along_m is then arc length at the crest */
  SwFan fan; /* matters with a round crest only */
  /* plan: x along the crest, y out on the section's datum */
  SwPoint *outline;
  guint n_outline;
  char *soil_id; /* with a test the class that follows from it */
  SwSoilTest soil_test;
  gboolean loose;       /* fill, or a boot heel sinks more than 20 mm */
  double topsoil_m;     /* loose topsoil depth over the soil, >= 0 */
  GPtrArray *obstacles; /* (element-type SwObstacle) */
  GPtrArray
      *zones; /* (element-type SwZone): a place belongs to the first that contains it */
  SwSide leeward; /* first run goes here */
  SwBenchRule bench;
  SwObtained obtained;
  double length_error_m;  /* one sigma, >= 0 */
  double angle_error_rad; /* one sigma, >= 0 */
} SwFace;

/** A practice value this job replaces, with the reason it prints. */
typedef struct
{
  SwPracticeValue value;
  double number; /* SI */
  char *why;
} SwOverride;

/** Lines of the job card; free text, "" when not given. File keys are the names here. */
typedef struct
{
  char *name, *number, *revision, *date, *prepared_by, *checked_by;
  char *client, *place, *permit, *authority, *utility_ticket, *supervisor;
  char *emergency, *muster, *notes;
  char *install_date;      /* when the blankets lay, as in ISO 8601: "2026-03-31" */
  char *sow_from, *sow_to; /* sowing window of each year, both days within: "09-01" */
} SwJobCard;

/** What was measured, looked up or decided for this site beyond yes and no. */
typedef struct
{
  double values[SW_NUMBER_COUNT]; /* SI, but see SwLossUnits; 0: not given */
  SwLossUnits loss_units;
  SwRills rills;
  SwAnswer bench_drained; /* a drain along each bench takes its water away */
  SwAnswer mown;          /* the face will be mown */
} SwSiteNumbers;

typedef struct
{
  SwJobCard card;
  SwUnitSystem units;
  SwPaper paper;
  char *language; /* of the pack: "en" */
  char *practice_id;
  SwOwnPractice own; /* the copy of that practice that this job is laid by */
  SwOverride *overrides;
  guint n_overrides;
  char *blanket_id;
  double roll_width_m, roll_length_m, roll_core_m;
  double blanket_mass_kg_per_m2,
      blanket_thickness_m; /* of this product; <= 0: the catalogue's */
  SwProduct product;
  GArray *stock; /* (element-type SwStockLine): beside the job's own roll, which can be
                    ordered without end */
  double narrow_width_m, narrow_length_m; /* of the narrow roll; <= 0: there is none */
  SwSurplus surplus;
  SwJoints joints;
  SwZoneRule zone_rule;
  char *pin_id; /* "" : by soil */
  SwSeedMix seed;
  SwAnswer site[SW_SITE_QUESTION_COUNT];
  SwSiteNumbers numbers;
  SwWorkPlan plan;
  SwPackPlan pack;
  GPtrArray *faces; /* (element-type SwFace), at least one in a valid job */
  char *
      unknown_json; /* keys of the file this version does not know; written back; NULL if none */
  gint refs;        /* private */
} SwJob;

/** New job with one face: 2:1, 5 m rise, 20 m wide, drawn; practice "common"; every text "". */
SwJob *sw_job_new_default (void);

/** New job with no face and every text "" (for readers of files). */
SwJob *sw_job_new_empty (void);
SwJob *sw_job_ref (const SwJob *job);
void sw_job_unref (SwJob *job);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (SwJob, sw_job_unref)

/** Deep copy with one reference; change it before sharing it. */
SwJob *sw_job_copy (const SwJob *job);

/** Whether two jobs say the same (numbers bit for bit). */
gboolean sw_job_equal (const SwJob *a, const SwJob *b);

SwFace *sw_face_new (const char *id);
SwFace *sw_face_copy (const SwFace *face);
void sw_face_free (SwFace *face);

/** Replace the section; copies @points. Crest and toe become first and last; further sections go. */
void sw_face_set_section (SwFace *face, const SwPoint *points, guint count);

/** Add a section of n_section points at @along_m; copies them. Keeps along_m growing. */
void sw_face_add_section (SwFace *face, double along_m, const SwPoint *points);
void sw_face_set_outline (SwFace *face, const SwPoint *points, guint count);

/** Whether two faces say the same (numbers bit for bit). */
gboolean sw_face_equal (const SwFace *a, const SwFace *b);

/** New obstacle or zone without a point; texts "". */
SwObstacle *sw_obstacle_new (const char *id);
SwZone *sw_zone_new (const char *id);
void sw_obstacle_free (SwObstacle *obstacle);
void sw_zone_free (SwZone *zone);

/** Replace the outline; copies @points. */
void sw_obstacle_set_outline (SwObstacle *obstacle, const SwPoint *points, guint count);
void sw_zone_set_outline (SwZone *zone, const SwPoint *points, guint count);

/** The zone of @face that holds the plan point, NULL where the face's own soil holds. */
const SwZone *sw_face_zone_at (const SwFace *face, SwPoint plan);

/** Height of the face's own section at @out_m; level beyond its ends, 0 without points. */
double sw_face_up_m (const SwFace *face, double out_m);

/** How long the crest line of @face would be if it went all round; 0 if it is straight. */
double sw_face_full_circle_m (const SwFace *face);

/** Whether @face is a heap: a nose whose outline goes all round, to a tenth of a millimetre. */
gboolean sw_face_is_heap (const SwFace *face);

/** The face with that id, NULL if none. */
SwFace *sw_job_face (const SwJob *job, const char *id);

/** Replace a text of a job or face: frees the old, copies @text (NULL as ""). */
void sw_text_set (char **place, const char *text);

/** Size of the job's own roll, or of its narrow one; <= 0 where there is none. */
double sw_job_roll_width_m (const SwJob *job, gboolean narrow);
double sw_job_roll_length_m (const SwJob *job, gboolean narrow);

/**
 * sw_job_practice:
 * @job: a job
 * @catalogue: where its practice stands
 *
 * Returns: (transfer full) (nullable): the practice with the job's own copy and overrides
 *   laid over it (evidence "user", source the reason, or that of the copy); NULL for an
 *   unknown id.
 */
SwPractice *sw_job_practice (const SwJob *job, const SwCatalogue *catalogue);

/**
 * sw_job_blanket:
 *
 * Returns: (transfer full) (nullable): the class with what the product's data sheet
 *   states laid over it; NULL for an unknown id.
 */
SwBlanket *sw_job_blanket (const SwJob *job, const SwCatalogue *catalogue);

/**
 * sw_job_site_number:
 *
 * Returns: what the job gives (evidence "user"), else the catalogue's default, else
 *   NaN. R and K are as typed. The source is borrowed.
 */
SwSourced sw_job_site_number (const SwJob *job, const SwCatalogue *catalogue,
                              SwSiteNumber number);

/** Set or clear an override. @why may be "". */
void sw_job_set_override (SwJob *job, SwPracticeValue value, double number,
                          const char *why);
void sw_job_clear_override (SwJob *job, SwPracticeValue value);
/** The practice as published: no copy, no override. */
void sw_job_clear_own_practice (SwJob *job);
