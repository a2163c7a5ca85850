/* SPDX-License-Identifier: MIT */
#pragma once

#include "sw-form.h"

/* The forms of the inspector, as tables. */
extern const SwField sw_face_fields[];
extern const SwField sw_blanket_fields[];
extern const SwField sw_product_fields[];
extern const SwField sw_seed_fields[];
extern const SwField sw_allowance_fields[];
extern const SwField sw_fertiliser_fields[];
extern const SwField sw_haul_fields[];
extern const SwField sw_crew_fields[];
extern const SwField sw_price_fields[];
extern const SwField sw_site_fields[];
extern const SwField sw_site_number_fields[];
extern const SwField sw_job_fields[];
extern const SwField sw_pack_fields[]; /* which document, and its words */
extern const SwField sw_paper_fields[];
extern const SwField
    sw_document_fields[]; /* kind, language, paper and units, for a line */
