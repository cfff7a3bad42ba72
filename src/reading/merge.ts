import type { Act } from './reading.ts'

const MERGES = new Set(['size', 'pack', 'ration', 'feed', 'weather', 'damage'])

const BARE = ['widthFt', 'lengthFt', 'count', 'ft'] as const

/** The same sheet on the same pile told twice in a sentence, once without its size, is one. */
export const covered = (acts: { act: Act; sentence: number }[]): void => {
  for (let k = acts.length - 1; k >= 0; k--) {
    const { act, sentence } = acts[k]!
    if (act.frame !== 'cover' || BARE.some(s => act.slots[s] !== undefined)) continue
    const twin = acts.find(
      (o, j) =>
        j !== k &&
        // "creek is buttoned up. covered it with a 50x150"
        Math.abs(o.sentence - sentence) <= 1 &&
        o.act.frame === 'cover' &&
        o.act.slots.material === act.slots.material &&
        o.act.slots.change === act.slots.change &&
        (o.act.slots.pile === act.slots.pile || act.slots.pile === undefined),
    )
    if (twin) acts.splice(k, 1)
  }
}

/** "had to pitch 2 buckets, so I pitched it out, 2 buckets": the same deed told twice in a sentence. */
export const toldTwice = (acts: { act: Act; sentence: number }[]): void => {
  for (let k = acts.length - 1; k > 0; k--) {
    const { act: a, sentence } = acts[k - 1]!
    const b = acts[k]!.act
    if (a.frame !== 'spoil' && a.frame !== 'patch') continue
    const same = Object.entries(b.slots).every(([s, v]) => v === undefined || a.slots[s] === v)
    if (
      acts[k]!.sentence === sentence &&
      b.frame === a.frame &&
      b.mood === a.mood &&
      same &&
      !b.date &&
      !b.more &&
      b.slots.count !== undefined
    )
      acts.splice(k, 1)
  }
}

/** Two clauses that tell one thing in two breaths are one: "34 wide and 94 long", "took 2 ft off and fed 11k". */
export const merge = (acts: { act: Act; sentence: number }[]): void => {
  for (let k = 1; k < acts.length; k++) {
    const a = acts[k - 1]!.act
    const b = acts[k]!.act
    if (a.mood !== b.mood) continue
    // "caught the cover on shop with the skid steer. one hole"
    const goesOn =
      a.frame === 'damage' &&
      b.frame === 'damage' &&
      acts[k]!.sentence - acts[k - 1]!.sentence === 1 &&
      a.slots.cause !== 'unknown' &&
      (a.slots.what === undefined || a.implied === true) &&
      a.slots.count === undefined &&
      b.slots.cause === 'unknown' &&
      // "caught the cover with the skid steer. ripped it by the corner"
      (b.slots.count !== undefined ||
        (a.slots.what === undefined &&
          b.slots.what !== undefined &&
          b.implied === true &&
          (b.slots.pile === undefined || b.slots.pile === a.slots.pile)))
    // "new pile called dugout. walls are 10 ft, 30 wide"
    const measured =
      a.frame === 'pile' &&
      b.frame === 'size' &&
      acts[k]!.sentence - acts[k - 1]!.sentence === 1 &&
      b.slots.pile === undefined &&
      !b.strange
    if (acts[k - 1]!.sentence !== acts[k]!.sentence && !goesOn && !measured) continue
    if (goesOn) a.full ||= b.full
    // "one load of corn on creek, it weighed in at 14,200"
    if (a.frame === 'load' && b.frame === 'load' && b.weighed && a.slots.lb === undefined && a.slots.count === 1) {
      a.slots.lb = b.slots.lb
      a.used += b.used
      acts.splice(k, 1)
      k--
      continue
    }
    // "8 loads on north, running 42 percent dry matter"
    if (
      a.frame === 'load' &&
      b.frame === 'test' &&
      a.slots.dmPct === undefined &&
      b.slots.dmPct !== undefined &&
      (b.slots.pile === undefined || a.slots.pile === undefined || b.slots.pile === a.slots.pile) &&
      (b.slots.crop === undefined || a.slots.crop === undefined || b.slots.crop === a.slots.crop) &&
      !b.strange
    ) {
      a.slots.dmPct = b.slots.dmPct
      if (b.slots.pile !== undefined) a.slots.pile ??= b.slots.pile
      if (b.slots.crop !== undefined && a.slots.box === undefined) a.slots.crop ??= b.slots.crop
      a.used += b.used
      acts.splice(k, 1)
      k--
      continue
    }
    // "took the last ten feet of shop and pushed it up on top of creek": moved, not fed
    if (
      a.frame === 'feed' &&
      b.frame === 'shift' &&
      a.slots.lb === undefined &&
      a.slots.pile !== undefined &&
      b.slots.toPile === undefined &&
      b.slots.pile !== undefined &&
      b.slots.pile !== a.slots.pile &&
      ['ft', 'count', 'lb'].every(s => b.slots[s] === undefined)
    ) {
      Object.assign(a, { frame: 'shift', full: true, slots: { ...a.slots, toPile: b.slots.pile } })
      a.used += b.used
      acts.splice(k, 1)
      k--
      continue
    }
    // "bought 30 ton haylage, put it on north": the second says where
    const where = a.frame === 'load' && b.frame === 'load' && a.slots.pile === undefined && b.slots.pile !== undefined
    if (where && !a.strange && ['count', 'lb', 'crop', 'box'].every(s => b.slots[s] === undefined)) {
      a.slots.pile = b.slots.pile
      a.used += b.used
      a.full = true
      acts.splice(k, 1)
      k--
      continue
    }
    const sized = a.frame === 'pile' && b.frame === 'size'
    if (!sized && (a.frame !== b.frame || !MERGES.has(a.frame))) continue
    if (a.date && b.date && a.date.past !== b.date.past) continue
    const { pile, ...rest } = b.slots
    if (!sized && pile !== undefined && a.slots.pile !== undefined && pile !== a.slots.pile) continue
    if (
      a.frame === 'damage' &&
      ((b.slots.cause !== 'unknown' && !b.leans) ||
        (a.slots.what !== undefined && b.slots.what !== a.slots.what && !a.implied) ||
        a.slots.count !== undefined)
    )
      continue
    if (a.frame === 'damage') delete rest.cause
    // "tore shop with the bucket, 1 hole"
    if (a.frame === 'damage' && a.implied && b.slots.what !== undefined) delete a.slots.what
    const clash = Object.entries(rest).some(([s, v]) => v !== undefined && a.slots[s] !== undefined && a.slots[s] !== v)
    if (clash || b.vague || b.strange) continue
    Object.assign(a.slots, rest, pile !== undefined && !sized && a.slots.pile === undefined ? { pile } : {})
    a.used += b.used
    a.left += b.left
    a.leftNumbers += b.leftNumbers
    acts.splice(k, 1)
    k--
  }
}
