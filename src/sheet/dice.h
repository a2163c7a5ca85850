/* SPDX-License-Identifier: MIT */
#pragma once

#include <glib.h>

/*
 * Chance that is the same on every machine: SplitMix64 (Steele, Lea and Flood, "Fast
 * splittable pseudorandom number generators", OOPSLA 2014).
 */
typedef struct
{
  guint64 state;
} SwDice;

static inline guint64
sw_dice_next (SwDice *dice)
{
  guint64 z = dice->state += G_GUINT64_CONSTANT (0x9E3779B97F4A7C15);

  z = (z ^ (z >> 30)) * G_GUINT64_CONSTANT (0xBF58476D1CE4E5B9);
  z = (z ^ (z >> 27)) * G_GUINT64_CONSTANT (0x94D049BB133111EB);
  return z ^ (z >> 31);
}

/** One of 0 .. @sides - 1. */
static inline guint
sw_dice_throw (SwDice *dice, guint sides)
{
  return (guint) (sw_dice_next (dice) % sides);
}

/** The numbers 0 .. @count - 1 in an order by chance. */
static inline void
sw_dice_order (SwDice *dice, guint *numbers, guint count)
{
  for (guint i = 0; i < count; i++)
    numbers[i] = i;
  for (guint i = count; i > 1; i--)
    {
      guint other = sw_dice_throw (dice, i), kept = numbers[i - 1];

      numbers[i - 1] = numbers[other];
      numbers[other] = kept;
    }
}
