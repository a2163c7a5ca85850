/* SPDX-License-Identifier: MIT */
#include "chain.h"
#include <math.h>
#include <slopewright/base/count.h>
#include <slopewright/base/order.h>

/* Bends so near to each other or to an end of their edge are one. */
#define SAME_SHARE 1e-9

/* On curved ground an edge is taken as straight over so much of it on plan. */
#define STEP_M 0.5

typedef struct
{
  SwChainKind kind;
  gboolean ground_right;
  gboolean obstacle;
} EdgeKind;

static void
free_chain (gpointer data)
{
  SwChain *chain = data;

  g_array_unref (chain->points);
  g_free (chain);
}

/* Rings turn from along towards out, so the ground is on the left of the way: downslope
 * of an edge that runs to the right. */
static EdgeKind
edge_kind (const SwRegion *whole, SwPoint a, SwPoint b)
{
  double along = b.x_m - a.x_m, out = b.y_m - a.y_m;
  SwPoint middle = { (a.x_m + b.x_m) / 2.0, (a.y_m + b.y_m) / 2.0 };
  gboolean obstacle = whole != NULL && !sw_region_on_edge (whole, middle);

  if (fabs (along) <= SW_SIDE_TAN * fabs (out))
    return (EdgeKind){ SW_CHAIN_SIDE, out < 0.0, obstacle };
  return (EdgeKind){ along > 0.0 ? SW_CHAIN_CREST : SW_CHAIN_TOE, FALSE, obstacle };
}

static gboolean
same_kind (EdgeKind a, EdgeKind b)
{
  return a.kind == b.kind && a.ground_right == b.ground_right && a.obstacle == b.obstacle;
}

/* The way round leaves toe chains and left sides backwards. */
static void
turn_about (SwChain *chain)
{
  SwPoint *p = (SwPoint *) chain->points->data;
  guint n = chain->points->len;

  if (chain->kind == SW_CHAIN_CREST
      || (chain->kind == SW_CHAIN_SIDE && !chain->ground_right))
    return;
  for (guint i = 0; i < n / 2; i++)
    {
      SwPoint kept = p[i];

      p[i] = p[n - 1 - i];
      p[n - 1 - i] = kept;
    }
}

static SwPoint
ring_point (SwRing ring, guint index)
{
  return ring.points[index % ring.count];
}

static SwChain *
add_chain (GPtrArray *chains, EdgeKind kind, SwPoint first)
{
  SwChain *chain = g_new0 (SwChain, 1);

  chain->kind = kind.kind;
  chain->ground_right = kind.ground_right;
  chain->obstacle = kind.obstacle;
  chain->points = g_array_new (FALSE, FALSE, sizeof (SwPoint));
  g_array_append_val (chain->points, first);
  g_ptr_array_add (chains, chain);
  return chain;
}

/* Curved ground is followed in steps. */
static void
add_steps (SwPoint a, SwPoint b, GArray *shares)
{
  int steps = sw_count_up (hypot (b.x_m - a.x_m, b.y_m - a.y_m), STEP_M);

  for (int i = 1; i < steps; i++)
    {
      double share = (double) i / steps;

      g_array_append_val (shares, share);
    }
  g_array_sort (shares, sw_compare_doubles);
}

/* The end @b of an edge that begins at @a, after the places where the ground bends. */
static void
add_edge (SwChain *chain, const SwGround *ground, SwPoint a, SwPoint b)
{
  g_autoptr (GArray) shares = g_array_new (FALSE, FALSE, sizeof (double));
  double before = 0.0;

  sw_ground_kinks (ground, a, b, shares);
  if (sw_ground_is_curved (ground))
    add_steps (a, b, shares);
  for (guint i = 0; i < shares->len; i++)
    {
      double share = g_array_index (shares, double, i);
      SwPoint p = { a.x_m + share * (b.x_m - a.x_m), a.y_m + share * (b.y_m - a.y_m) };

      if (share - before > SAME_SHARE && 1.0 - share > SAME_SHARE)
        g_array_append_val (chain->points, p);
      before = share;
    }
  g_array_append_val (chain->points, b);
}

static void
add_ring_chains (GPtrArray *chains, SwRing ring, const SwGround *ground,
                 const SwRegion *whole)
{
  g_autofree EdgeKind *kinds = g_new (EdgeKind, ring.count);
  SwChain *chain = NULL;
  guint start = 0;

  for (guint i = 0; i < ring.count; i++)
    kinds[i] = edge_kind (whole, ring_point (ring, i), ring_point (ring, i + 1));
  /* Begin where the kind changes, so that no chain is cut in two. */
  while (start < ring.count
         && same_kind (kinds[(start + ring.count - 1) % ring.count], kinds[start]))
    start++;
  for (guint i = start; i < start + ring.count; i++)
    {
      EdgeKind kind = kinds[i % ring.count];
      SwPoint end = ring_point (ring, i + 1);

      if (i == start || !same_kind (kind, kinds[(i - 1) % ring.count]))
        chain = add_chain (chains, kind, ring_point (ring, i));
      add_edge (chain, ground, ring_point (ring, i), end);
    }
}

/* By the left end, upper first: an outline may begin anywhere. */
static int
compare_chains (gconstpointer a, gconstpointer b)
{
  const SwChain *x = *(SwChain *const *) a, *y = *(SwChain *const *) b;
  SwPoint p = g_array_index (x->points, SwPoint, 0);
  SwPoint q = g_array_index (y->points, SwPoint, 0);

  if (p.x_m < q.x_m || p.x_m > q.x_m)
    return p.x_m < q.x_m ? -1 : 1;
  return (p.y_m > q.y_m) - (p.y_m < q.y_m);
}

GPtrArray *
sw_chains_new (const SwRegion *region, const SwGround *ground, const SwRegion *whole)
{
  GPtrArray *chains = g_ptr_array_new_with_free_func (free_chain);

  for (guint i = 0; i < sw_region_rings (region); i++)
    add_ring_chains (chains, sw_region_ring (region, i), ground, whole);
  for (guint i = 0; i < chains->len; i++)
    turn_about (g_ptr_array_index (chains, i));
  g_ptr_array_sort (chains, compare_chains);
  return chains;
}
