/* SPDX-License-Identifier: MIT */
#pragma once

#include <glib.h>
#include <slopewright/base/number-text.h>
#include <slopewright/base/units.h>

/*
 * The catalogue: practices, soils, blankets, rolls and pins. Data with
 * sources, read from resources by store; plain values here.
 */

/** How well a catalogue value is known; printed beside it. */
typedef enum
{
  SW_EVIDENCE_SEEN,            /* read in the agency's own text */
  SW_EVIDENCE_SECOND_HAND,     /* read in a copy of the text */
  SW_EVIDENCE_MEMORY,          /* recalled, not re-read */
  SW_EVIDENCE_DERIVED,         /* arithmetic on a cited number */
  SW_EVIDENCE_PROPOSED,        /* this program's own default */
  SW_EVIDENCE_COMMON_PRACTICE, /* common practice, no source */
  SW_EVIDENCE_USER,            /* typed for this job */
  SW_EVIDENCE_COUNT
} SwEvidence;

/** Code used in files ("seen", "second-hand", "memory", "derived", "proposed", "common-practice", "user") and as text id "evidence.<code>". */
const char *sw_evidence_code (SwEvidence evidence);
gboolean sw_evidence_from_code (const char *code, SwEvidence *evidence);

/** Whether the words of a source with this evidence tell it already: what is this
 * program's own, or common practice, has no other source to name. */
gboolean sw_evidence_is_source (SwEvidence evidence);

/** A number that knows where it comes from. @value is SI. */
typedef struct
{
  double value;
  SwEvidence evidence;
  char *source; /* text id "source.<…>", or the user's own words when the evidence is
                   SW_EVIDENCE_USER; may be NULL: then the source of the whole entry holds */
} SwSourced;

/** The numbers of a practice. Each is a key of the practice file and a text id "practice.<key>". */
typedef enum
{
  SW_PRACTICE_SET_BACK_M, /* key trench behind the crest break, along the ground */
  SW_PRACTICE_TRENCH_DEPTH_M,
  SW_PRACTICE_TRENCH_WIDTH_M,
  SW_PRACTICE_TRENCH_FOLD_M, /* tail folded back downslope over the filled trench */
  SW_PRACTICE_TRENCH_PIN_M,  /* pin spacing along the key trench */
  SW_PRACTICE_TOE_DEPTH_M,   /* of the toe trench, when the toe kind is a trench */
  SW_PRACTICE_TOE_WIDTH_M,
  SW_PRACTICE_TOE_FOLD_M, /* turned under on level ground, when the toe kind is a fold */
  SW_PRACTICE_TOE_PIN_M,
  SW_PRACTICE_SIDE_LAP_M,
  SW_PRACTICE_SIDE_LAP_PIN_M,
  SW_PRACTICE_EDGE_PIN_M, /* along the outer edges of the first and last run */
  SW_PRACTICE_END_LAP_M,
  SW_PRACTICE_END_LAP_STEEP_M,   /* end lap on ground steeper than STEEP_HV */
  SW_PRACTICE_STEEP_HV,          /* H:V; this ratio or steeper counts as steep */
  SW_PRACTICE_END_LAP_PIN_M,     /* in each of the two staggered rows */
  SW_PRACTICE_END_LAP_ROW_GAP_M, /* between the two rows */
  SW_PRACTICE_PIN_DOWN_M,        /* field grid, down the run */
  SW_PRACTICE_PIN_ACROSS_M,      /* field grid, across the run */
  SW_PRACTICE_PIN_LENGTH_M,      /* shortest pin the practice accepts, in firm soil */
  SW_PRACTICE_SLOT_EVERY_M,      /* largest distance between check slots; 0 for none */
  SW_PRACTICE_SLOT_HV,           /* check slots on this ratio or steeper */
  SW_PRACTICE_SLOT_DEPTH_M,
  SW_PRACTICE_SLOT_WIDTH_M,
  SW_PRACTICE_SLOT_PIN_M,
  SW_PRACTICE_BENCH_HV,           /* ground flatter than this H:V is a bench … */
  SW_PRACTICE_BENCH_MIN_M,        /* … when at least this long on plan */
  SW_PRACTICE_MIN_PIECE_M,        /* shortest piece worth laying */
  SW_PRACTICE_JOINT_STAGGER_M,    /* least offset of end laps in neighbouring runs */
  SW_PRACTICE_JOINT_FREE_CREST_M, /* no end lap nearer to the crest */
  SW_PRACTICE_JOINT_FREE_TOE_M,   /* nor to the toe */
  SW_PRACTICE_PIN_SPARE,          /* ratio: 0.05 is five spare in a hundred */
  SW_PRACTICE_ROLL_SPARE,         /* ratio added to the rolls before rounding up */
  SW_PRACTICE_INSPECT_DAYS,       /* routine inspection interval */
  SW_PRACTICE_INSPECT_RAIN_M, /* rain in 24 h that calls for an inspection; 0: any runoff */
  SW_PRACTICE_INSPECT_HOURS, /* within so many hours after it */
  SW_PRACTICE_COVER,         /* ratio of plant cover that ends inspection */
  SW_PRACTICE_REPAIR_DAYS,
  SW_PRACTICE_DEDUCT_M2,  /* obstacles no larger than this stay in the net area */
  SW_PRACTICE_RING_PIN_M, /* pins round an obstacle */
  SW_PRACTICE_COLLAR_M,   /* overlap of the patch round an obstacle */
  SW_PRACTICE_VALUE_COUNT
} SwPracticeValue;

typedef struct
{
  const char *key; /* "side_lap_m" */
  SwUnit unit;
  double least, most; /* what the catalogue, a job file or an entry field accepts */
  gboolean or_zero;   /* 0 is accepted too and means none */
} SwPracticeKey;

/** Table of SW_PRACTICE_VALUE_COUNT rows, indexed by SwPracticeValue. */
extern const SwPracticeKey sw_practice_keys[SW_PRACTICE_VALUE_COUNT];

/** Whether @value is a least length, a largest spacing, or neither. */
SwLimit sw_practice_limit (SwPracticeValue value);

/** Returns: the value with that key, or SW_PRACTICE_VALUE_COUNT. */
SwPracticeValue sw_practice_value_from_key (const char *key);

/** Whether @number is one that @value may have. */
gboolean sw_practice_accepts (SwPracticeValue value, double number);

/** Way of the blanket's end through the key or toe trench; d depth, w width. */
typedef enum
{
  SW_LINING_DOWN,           /* d: a slot, end pressed straight down */
  SW_LINING_DOWN_ACROSS,    /* d + w */
  SW_LINING_DOWN_ACROSS_UP, /* 2 d + w */
} SwLining;

typedef enum
{
  SW_TOE_TRENCH,
  SW_TOE_FOLD, /* carried to level ground and turned under */
  SW_TOE_ROW   /* one pinned row, nothing buried */
} SwToeKind;

/** One row of a density rule: at least @per_m2 field pins on ground of @hv or steeper. */
typedef struct
{
  double hv;
  SwSourced per_m2;
} SwDensityRow;

/** A named, dated, sourced set of dimensions. */
typedef struct
{
  char *id;
  char *name_id, *agency_id, *edition_id; /* text ids "practice-name.<id>" and so on */
  char *source_id;                        /* text id "source.<…>", as in every entry */
  SwEvidence evidence;                    /* of values that do not say their own */
  char *own_name, *own_source;            /* of a job's own copy; else NULL or "" */
  SwLining trench_lining, toe_lining;
  SwToeKind toe_kind;
  SwSourced values[SW_PRACTICE_VALUE_COUNT];
  SwDensityRow *density; /* steepest first; may be NULL */
  guint n_density;
} SwPractice;

typedef struct
{
  char *id, *name_id, *source_id;    /* name_id: text id "soil.<id>" */
  SwSourced pin_firm_m, pin_loose_m; /* pin length by state */
  SwSourced swell;                   /* loose volume per bank volume, minus 1 */
  SwSourced compaction;              /* compacted volume per bank volume */
  SwSourced erodibility;             /* K, SI; NaN where the class has none */
  SwSourced friction_rad;            /* effective angle of friction; NaN likewise */
} SwSoil;

typedef struct
{
  char *id, *name_id, *source_id;
  SwSourced life_months; /* INFINITY: permanent */
  SwSourced max_hv;      /* steepest H:V the class table allows */
  SwSourced max_c;       /* C factor ceiling; NaN where the table has none */
  SwSourced shear_pa;
  SwSourced mass_kg_per_m2; /* dry */
  SwSourced thickness_m;    /* for the roll's diameter */
  gboolean net_plastic_usual;
  int nets; /* that hold a filling: 0 none, 1 it has a face that lies up, 2 both faces
               alike; -1 where products of the class differ */
} SwBlanket;

typedef struct
{
  char *id, *source_id; /* "1.22x34.3" */
  double width_m, length_m, core_m;
  SwEvidence evidence;
} SwRoll;

typedef enum
{
  SW_PIN_KIND_STAPLE,     /* two legs, a crown between them */
  SW_PIN_KIND_WASHER_PIN, /* a shaft; its crown is the washer */
  SW_PIN_KIND_STAKE,      /* of wood */
  SW_PIN_KIND_COUNT
} SwPinKind;

/** "staple", "washer-pin", "stake"; NULL-terminated. */
extern const char *const sw_pin_kind_codes[SW_PIN_KIND_COUNT + 1];

typedef struct
{
  char *id, *source_id;
  SwPinKind kind;
  double length_m, crown_m, wire_m;
  int per_box;
  SwEvidence evidence;
} SwPin;

/** What a site number is taken as where the job does not give it. */
typedef struct
{
  char *id; /* key of the site number */
  SwSourced number;
} SwDefault;

typedef struct
{
  GPtrArray *practices;                       /* (element-type SwPractice), file order */
  GPtrArray *soils, *blankets, *rolls, *pins; /* pins shortest first */
  GPtrArray *defaults;                        /* (element-type SwDefault) */
} SwCatalogue;

/** A value of the practice, SI, without its source. */
static inline double
sw_practice_get (const SwPractice *practice, SwPracticeValue value)
{
  return practice->values[value].value;
}

/** Where a value of the practice comes from: its own source, or that of the practice;
 * NULL where the user typed the value and gave no reason. */
const char *sw_practice_source (const SwPractice *practice, SwPracticeValue value);

/** What it is called, a text: "pin.staple". */
const char *sw_pin_name_id (const SwPin *pin);

SwPractice *sw_practice_new (void);
SwPractice *sw_practice_copy (const SwPractice *practice);
void sw_practice_free (SwPractice *practice);
void sw_soil_free (SwSoil *soil);
SwBlanket *sw_blanket_copy (const SwBlanket *blanket);
void sw_blanket_free (SwBlanket *blanket);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (SwBlanket, sw_blanket_free)
void sw_roll_free (SwRoll *roll);
void sw_pin_free (SwPin *pin);
void sw_default_free (SwDefault *value);

/** Empty catalogue whose arrays own their entries. */
SwCatalogue *sw_catalogue_new (void);
void sw_catalogue_free (SwCatalogue *catalogue);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (SwCatalogue, sw_catalogue_free)
G_DEFINE_AUTOPTR_CLEANUP_FUNC (SwPractice, sw_practice_free)

/** Look-ups by id. Returns: (transfer none) (nullable). */
const SwPractice *sw_catalogue_practice (const SwCatalogue *catalogue, const char *id);
const SwSoil *sw_catalogue_soil (const SwCatalogue *catalogue, const char *id);
const SwBlanket *sw_catalogue_blanket (const SwCatalogue *catalogue, const char *id);
const SwRoll *sw_catalogue_roll (const SwCatalogue *catalogue, const char *id);
const SwPin *sw_catalogue_pin (const SwCatalogue *catalogue, const char *id);
const SwDefault *sw_catalogue_default (const SwCatalogue *catalogue, const char *id);

/** Shortest pin of at least @length_m, NULL when all are shorter. */
const SwPin *sw_catalogue_pin_of_length (const SwCatalogue *catalogue, double length_m);
