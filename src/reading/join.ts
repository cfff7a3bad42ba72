import { has, type Item } from './item.ts'
import type { Act } from './reading.ts'

const BECAUSE = new Set(['because', 'becuz', 'cuz', 'coz', 'bc', 'porque', 'pq', 'porq'])
/** "25 more tires on barn because it was flapping": why something was done, told without a count or a day, is no harm of its own. */
export const isWhy = (act: Act, lead: Item[]): boolean =>
  (act.frame === 'damage' || act.frame === 'weather' || act.frame === 'check') &&
  lead.some(i => BECAUSE.has(i.tokens[0]?.norm ?? '')) &&
  act.slots.count === undefined &&
  !act.date

const LEADS = /^(?:con|in|from|por|by|with)$/
/** "lost 6 tires in the wind", "con el aire": weather that is named as a cause, with no time and no measure of its own. */
export const isCause = (act: Act, items: readonly Item[], from: number, to: number): boolean => {
  if (act.frame !== 'weather' || act.date || Object.keys(act.slots).length > 1) return false
  const sky = items.findIndex((i, k) => k >= from && k < to && i.senses.some(s => s.startsWith('sky:')))
  return sky > 0 && items.slice(Math.max(0, sky - 2), sky).some(i => LEADS.test(i.tokens[0]?.norm ?? ''))
}

/** Hail that broke a cover at a time that is told, or of a size, is weather too. */
export const withWeather = (acts: { act: Act; sentence: number }[]): void => {
  if (acts.some(a => a.act.frame === 'weather' && a.act.slots.kind === 'hail')) return
  const at = acts.findIndex(
    a =>
      a.act.frame === 'damage' &&
      a.act.mood === 'fact' &&
      a.act.slots.cause === 'hail' &&
      (a.act.date?.explicit === true || a.act.slots.inches !== undefined),
  )
  if (at < 0) return
  const { act, sentence } = acts[at]!
  const { inches } = act.slots
  delete act.slots.inches
  // "wind 50 mph and golf ball hail last night": one breath, one day
  const sky = acts[at - 1]
  if (sky?.act.frame === 'weather' && sky.sentence === sentence && !sky.act.date) sky.act.date = act.date
  acts.splice(at, 0, {
    sentence,
    act: {
      ...act,
      frame: 'weather',
      slots: { kind: 'hail', ...(inches === undefined ? {} : { inches }) },
      left: 0,
      leftWords: [],
      leftNumbers: 0,
      full: true,
    },
  })
}

/** "12 viajes al norte, 9 de maiz y 3 de alfalfa": the parts take the place of the sum. */
export const parted = (acts: { act: Act; sentence: number }[]): void => {
  for (let k = 0; k < acts.length; k++) {
    const { act, sentence } = acts[k]!
    const count = act.slots.count
    if (act.frame !== 'load' || act.slots.crop !== undefined || typeof count !== 'number') continue
    let sum = 0
    let n = k + 1
    while (acts[n]?.act.frame === 'load' && acts[n]!.sentence === sentence && acts[n]!.act.slots.crop !== undefined && sum < count)
      sum += Number(acts[n++]!.act.slots.count ?? Number.NaN)
    if (n < k + 3 || sum !== count) continue
    for (const part of acts.slice(k + 1, n)) part.act.slots.pile ??= act.slots.pile
    acts.splice(k, 1)
  }
}

/** "terminamos el arroyo con 14 viajes mas": a pile that something went on is not empty. */
export const finished = (acts: { act: Act; sentence: number }[]): void => {
  for (let k = acts.length - 1; k >= 0; k--) {
    const { act, sentence } = acts[k]!
    if (act.frame !== 'empty') continue
    const load = acts.find(
      a =>
        a.sentence === sentence &&
        a.act.frame === 'load' &&
        // a load with no pile of its own goes on there only where it is more of the same
        (a.act.slots.pile === undefined ? a.act.more === true : a.act.slots.pile === act.slots.pile),
    )
    // "creek done! 50x150 and 320 tires on top": closed, not fed out
    const closed = acts.some(
      a =>
        Math.abs(a.sentence - sentence) <= 1 &&
        a.act.frame === 'cover' &&
        a.act.slots.change === 'on' &&
        (a.act.slots.pile === undefined || a.act.slots.pile === act.slots.pile),
    )
    if (closed) {
      for (const a of acts) if (a.act.frame === 'cover' && Math.abs(a.sentence - sentence) <= 1) a.act.slots.pile ??= act.slots.pile
      acts.splice(k, 1)
      continue
    }
    if (!load) continue
    load.act.slots.pile ??= act.slots.pile
    acts.splice(k, 1)
  }
}

/** "patched shop, 5 holes": what the second clause counts, with no verb of its own, is what was patched. */
export const isPatched = (before: Act | undefined, act: Act, items: readonly Item[]): boolean =>
  before?.frame === 'patch' &&
  before.mood === 'fact' &&
  before.slots.count === undefined &&
  act.frame === 'damage' &&
  act.mood === 'fact' &&
  act.slots.count !== undefined &&
  act.slots.cause === 'unknown' &&
  act.slots.pile === undefined &&
  !act.strange &&
  !items.some(
    i => has(i, 'more') || has(i, 'v:new') || i.date !== undefined || i.senses.some(s => s.startsWith('v:') || s === 'find:trouble'),
  )

/** "taped 2 on barn and 1 on shop yesterday": the day said last is of all that leans on one verb. */
export const dateBack = (acts: { act: Act; sentence: number }[]): void => {
  for (let k = acts.length - 1; k > 0; k--) {
    const { act, sentence } = acts[k]!
    const before = acts[k - 1]!
    const own = before.act.slots.pile !== undefined && act.slots.pile !== undefined && act.slots.pile !== before.act.slots.pile
    if (act.leans && act.date?.explicit && !before.act.date && own && before.sentence === sentence && before.act.frame === act.frame)
      before.act.date = act.date
  }
}

/** "put the tape on the face, it's at 23", "43 wide, just taped it". */
const measured = (a: Act, b: Act): boolean =>
  a.frame === 'patch' &&
  a.tape === true &&
  a.slots.count === undefined &&
  (b.frame === 'face' ||
    (b.frame === 'size' && Object.entries(b.slots).some(([s, v]) => s !== 'pile' && s !== 'where' && Number(v) >= LEAST_PILE_FT)))

/** "a tear about two feet long" is no size of the pile, nor is a hailstone's; and tape that measures mends nothing. */
export const small = (acts: { act: Act; sentence: number }[]): void => {
  for (let k = acts.length - 1; k > 0; k--) {
    const { act, sentence } = acts[k]!
    const before = acts[k - 1]!
    if (before.sentence === sentence && (measured(before.act, act) || measured(act, before.act))) {
      acts.splice(before.act.frame === 'patch' ? k - 1 : k, 1)
      continue
    }
    const dims = Object.entries(act.slots).filter(([s]) => s !== 'pile' && s !== 'where')
    if (act.frame !== 'size' || before.sentence !== sentence || !dims.every(([, v]) => Number(v) < LEAST_PILE_FT)) continue
    const isStone = before.act.frame === 'weather' && before.act.slots.kind === 'hail'
    // "hail 2 inches across"
    if (isStone && act.slots.widthFt !== undefined) {
      before.act.slots.inches ??= Math.round(Number(act.slots.widthFt) * 1200) / 100
      before.act.date ??= act.date
    }
    // "a rip 3 ft long on shop"
    if (before.act.frame === 'damage') before.act.slots.pile ??= act.slots.pile
    if (before.act.frame === 'damage' && act.slots.where !== undefined) before.act.slots.where ??= act.slots.where
    if (isStone || before.act.frame === 'damage') acts.splice(k, 1)
  }
  for (const { act } of acts) if (act.frame === 'size') delete act.slots.where
}
/** No side of a pile is shorter, ft. Common practice, no source. */
export const LEAST_PILE_FT = 12

/** "patched barn and shop, 3 holes on each": what was said of both belongs to each. */
export const distribute = (acts: Act[], items: Item[]): Act[] => {
  const out: Act[] = []
  const each = items.some(i => has(i, 'each'))
  for (const a of acts) {
    const prev = out.at(-1)
    if (each && prev && a.frame === 'damage' && prev.frame === 'patch' && a.mood === 'fact' && a.slots.cause === 'unknown') {
      for (const p of out.filter(x => x.frame === 'patch')) p.slots.count ??= a.slots.count
      continue
    }
    out.push(a)
  }
  return out
}
