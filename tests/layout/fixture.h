/* SPDX-License-Identifier: MIT */
#pragma once

#include <slopewright/layout/layout.h>

/*
 * A catalogue of known round numbers and jobs built from them, for the tests
 * of layout, tally and judge: nothing here comes from the catalogue files.
 *
 * Practice "worked": set-back 0.60; key trench 0.15 x 0.15 lined down, across
 * and up (0.45); toe trench 0.15 x 0.15 lined down and across (0.30); side lap
 * 0.10; end lap 0.30, steeper than 1.5:1 0.45; trench and toe pins every 0.30,
 * all others every 0.60; no check slots; benches flatter than 10:1 from 2 m.
 */
SwCatalogue *fixture_catalogue (void);

/** No face yet; practice "worked", blanket "mat", roll 2.44 x 34.3 m, every site
 * question answered so that nothing is found. */
SwJob *fixture_job (void);

/** Add a face with firm soil; crest and toe are the first and last point. (transfer
 * none) */
SwFace *fixture_add_face (SwJob *job, const char *id, const SwPoint *section,
                          guint n_section, const SwPoint *outline, guint n_outline);

/** Add a plane rectangle: @hv to 1, @rise_m high, @width_m along the crest. (transfer
 * none) */
SwFace *fixture_add_plane (SwJob *job, const char *id, double hv, double rise_m,
                           double width_m);

/** Lay out @job; the test fails if it cannot be laid. */
SwLayout *fixture_lay (const SwJob *job, const SwCatalogue *catalogue);

/** Every number of a layout, bit for bit, without padding between them. */
GByteArray *fixture_layout_bytes (const SwLayout *layout);
