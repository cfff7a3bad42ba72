import type { Act } from './reading.ts'

const SHARED = new Set([
  'load',
  'feed',
  'face',
  'check',
  'damage',
  'patch',
  'weather',
  'cover',
  'spoil',
  'test',
  'pack',
  'size',
  'open',
  'empty',
  'shift',
])

/** "rolled the plastic back 4 ft and took 2 ft off north": a cover goes back where it is fed. */
const rolledToFeed = (cover: Act, feed: Act): boolean => cover.frame === 'cover' && cover.slots.change === 'back' && feed.frame === 'feed'

/** Frames whose pile is likely one and the same in one breath. */
const PLACED: Record<string, number> = {
  load: 1,
  pack: 1,
  feed: 2,
  face: 2,
  spoil: 2,
  empty: 2,
  damage: 3,
  patch: 3,
  check: 3,
  cover: 4,
  size: 4,
  open: 5,
  shift: 6,
}

/** What one clause lends to its neighbours: the pile, a date said early, weather's date and cause. */
export const lend = (acts: { act: Act; sentence: number }[]): void => {
  for (let k = 0; k < acts.length; k++) {
    const { act, sentence } = acts[k]!
    const before = acts[k - 1]
    if (before && before.sentence === sentence && !act.date && before.act.date && SHARED.has(act.frame)) act.date = before.act.date
    if (
      before &&
      act.frame === 'damage' &&
      act.slots.cause === 'unknown' &&
      before.act.frame === 'weather' &&
      before.act.mood === 'fact' &&
      acts[k]!.sentence - before.sentence <= 1
    ) {
      const kind = before.act.slots.kind
      if (kind === 'hail' || kind === 'wind') act.slots.cause = kind
      act.date ??= before.act.date
    }
    // "the corn came to 33 dry matter, the alfalfa 39"
    if (act.slots.bare !== undefined) {
      if (before?.act.frame === 'test' && before.sentence === sentence && before.act.slots.dmPct !== undefined) {
        act.slots.dmPct = before.act.wet ? 100 - Number(act.slots.bare) : act.slots.bare
        act.vague = undefined
        act.full = true
      }
      // "di 6 cucharones de shop y tire 1 podrido"
      const of =
        (before?.act.frame === 'feed' || (before?.act.frame === 'spoil' && act.frame === 'spoil')) &&
        before.sentence === sentence &&
        before.act.slots.count !== undefined
          ? before.act
          : undefined
      const unit = of?.slots.unit
      if (of && (act.frame === 'feed' || (act.frame === 'spoil' && unit !== undefined))) {
        Object.assign(act.slots, { count: act.slots.bare, ...(unit !== undefined && { unit }) })
        act.vague = undefined
        act.full = true
      }
      // "sat took 2 ft off shop sun 1.5"
      const far =
        before?.act.frame === 'feed' &&
        before.sentence === sentence &&
        before.act.slots.ft !== undefined &&
        before.act.slots.lb === undefined
      if (far && act.frame === 'feed' && act.date && Number(act.slots.bare) < 10) {
        act.slots.ft = act.slots.bare
        act.vague = undefined
        act.full = true
      }
      delete act.slots.bare
    }
    // "rain 1.25 fri, .4 sat"
    if (before && act.leans && act.frame === 'weather' && before.act.frame === 'weather') act.slots.kind = before.act.slots.kind
    // "corn on creek came in at 34 and the haylage on there was 41"
    if (before && act.there && act.frame === 'test' && before.act.frame === 'test' && before.sentence === sentence)
      act.slots.pile ??= before.act.slots.pile
    // "bought 2 plastics and 100 tires"
    if (before && act.leans && act.frame === 'supply' && before.act.frame === 'supply') act.slots.change = before.act.slots.change
    // "2 holes in barn and 3 in shop"
    if (before && act.leans && act.frame === 'damage' && before.act.frame === 'damage') {
      const { what, cause, animal } = before.act.slots
      Object.assign(act.slots, { what, cause, ...(animal !== undefined && { animal }) })
    }
    // "the wind left 2 tears and a loose edge on barn": one breath, one cause
    if (
      before &&
      before.sentence === sentence &&
      act.frame === 'damage' &&
      before.act.frame === 'damage' &&
      before.act.mood === act.mood &&
      !before.act.implied &&
      before.act.slots.what !== undefined &&
      before.act.slots.what !== act.slots.what &&
      act.slots.cause === 'unknown' &&
      before.act.slots.cause !== 'unknown' &&
      (before.act.slots.pile === undefined || act.slots.pile === undefined || before.act.slots.pile === act.slots.pile)
    ) {
      const { cause, animal, pile } = before.act.slots
      Object.assign(act.slots, { cause, ...(animal !== undefined && { animal }) })
      if (act.slots.pile !== undefined) before.act.slots.pile ??= act.slots.pile
      else if (pile !== undefined) act.slots.pile = pile
    }
    // "6 loads corn to north then 4 more": what is not named again is the same feed
    if (
      before &&
      (before.sentence === sentence || act.more === true) &&
      act.frame === 'load' &&
      before.act.frame === 'load' &&
      act.slots.crop === undefined &&
      act.slots.box === undefined &&
      before.act.slots.crop !== undefined
    ) {
      act.slots.crop = before.act.slots.crop
      if (before.act.slots.cut !== undefined) act.slots.cut = before.act.slots.cut
    }
    // "opened lane this morning, fed 9,000": opened to feed, and fed from there
    const after = acts[k + 1]
    if (act.frame === 'open' && after && (after.act.frame === 'feed' || after.act.frame === 'face') && after.act.mood === 'fact') {
      act.slots.why ??= 'feed'
      if (!after.act.strange) after.act.slots.pile ??= act.slots.pile
    }
    // one breath, one pile, though nobody knows it: "3 viajes de alfalfa y 5 de maíz en el aroyo"
    const strange = act.slots.pile === undefined && !act.strange && SHARED.has(act.frame) && act.frame !== 'weather' && act.frame !== 'test'
    if (strange && before?.sentence === sentence && before.act.strange) act.strange = before.act.strange
    else if (strange && after?.sentence === sentence && after.act.frame === act.frame && after.act.strange) act.strange = after.act.strange
    if (act.strange || act.slots.pile !== undefined || !SHARED.has(act.frame) || act.frame === 'weather' || act.frame === 'test') continue
    // the same sentence, or the next clause of the same kind: "5 loads corn and 2 haylage on creek"
    const next = acts[k + 1]
    const near =
      before &&
      (before.sentence === sentence ||
        before.act.frame === act.frame ||
        (sentence - before.sentence === 1 && PLACED[before.act.frame] === PLACED[act.frame])) &&
      before.act.slots.pile !== undefined &&
      before.act.slots.pile !== 'all'
        ? before
        : next &&
            next.sentence === sentence &&
            (next.act.frame === act.frame || rolledToFeed(act, next.act) || (act.frame === 'cover' && next.act.frame === 'open')) &&
            next.act.slots.pile !== undefined
          ? next
          : undefined
    if (near && (PLACED[act.frame] === PLACED[near.act.frame] || rolledToFeed(act, near.act) || near.act.frame === 'open')) {
      act.slots.pile = near.act.slots.pile
      // "pulled two dozen tires and folded the plastic back on shop last night": one breath, one day
      if (near === next && act.date === undefined && near.act.date?.explicit) act.date = near.act.date
    } else if (
      before &&
      before.act.slots.pile !== undefined &&
      before.act.slots.pile !== 'all' &&
      before.sentence === sentence &&
      // "6 loads on creek and patched 2 holes": a pile that is being filled has no cover yet
      !(before.act.frame === 'load' && (act.frame === 'damage' || act.frame === 'patch')) &&
      (act.frame === 'damage' ||
        act.frame === 'patch' ||
        act.frame === 'cover' ||
        act.frame === 'pack' ||
        act.frame === 'size' ||
        act.frame === 'face')
    )
      act.slots.pile = before.act.slots.pile
  }
}
