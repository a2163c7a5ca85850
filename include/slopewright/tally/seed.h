/* SPDX-License-Identifier: MIT */
#pragma once

#include <slopewright/base/status.h>

/**
 * sw_seed_pls:
 * @purity: ratio by mass, (0, 1]
 * @germination: ratio, hard and dormant seed included, (0, 1]
 * @pls: (out): pure live seed per seed as sold
 *
 * Source: PLS = purity x germination, e.g. Texas DOT, seed tag arithmetic.
 */
SwStatus sw_seed_pls (double purity, double germination, double *pls);

/** Seed as sold for a pure-live-seed need; same range rules. */
SwStatus sw_seed_bulk_kg (double pls_kg, double purity, double germination,
                          double *bulk_kg);
