import type { Share } from '../../units/measure.ts'
import type { Form } from './advance.ts'

/** One set of guesses about how far the record may be off, beside the form. */
export interface Guess {
  /** Error of what went in and stays, as a multiple of what its parts add up to. */
  wide: number
  /** Error of the weight behind the face, twice what it is at its widest, a share of the whole: density differs along a pile. */
  uneven: Share
  /** Error of the length, as a multiple of the usual. */
  long: number
  /** How often it is so, before any reading. */
  weight: Share
}

/**
 * Density differs along a pile by the day it was filled and how it was packed: single cores 61 to 470 kg/m3, bunker means 206 to 354
 * (D'Amours and Savoie 2005). Over whole sections most of that evens out; what is left of it is assumed.
 */
const UNEVEN = { tidy: 0.006, usual: 0.04 }
/** A pile that is even is measured well, too: assumed. */
const TIDY_LONG = 0.5
/** How often a pile is as even as that, where its front stands upright (a slab between walls) and where it runs out: assumed. */
const TIDY = { upright: 0.66, ramp: 0.27 }
/**
 * Errors of boxes, of loads and of the loss are each told on the safe side, and seldom are all at their worst: together somewhat less.
 * Now and then something is far off, a box that is not the one thought of, loads nobody told, a top that rotted: then much more.
 * Common practice, no source.
 */
const WIDE = { usual: 0.85, far: 2.2 }
const FAR: Share = 0.16

/** Sets of guesses under one form; the weights add up to 1. The record itself shows which of them it is. */
export const guessesOf = (form: Form): Guess[] => {
  const tidy = form.front === 0 ? TIDY.upright : TIDY.ramp
  return [
    { wide: WIDE.usual, uneven: UNEVEN.tidy, long: TIDY_LONG, weight: (1 - FAR) * tidy },
    { wide: WIDE.usual, uneven: UNEVEN.usual, long: 1, weight: (1 - FAR) * (1 - tidy) },
    { wide: WIDE.far, uneven: UNEVEN.usual, long: 1, weight: FAR },
  ]
}
