import { LB_PER_TON } from '../units/measure.ts'
import type { Act } from './reading.ts'

/** "9 loads, then 4 more, so that's 13": the sum is no load of its own. */
export const summed = (acts: { act: Act; sentence: number }[]): void => {
  for (let k = acts.length - 1; k > 0; k--) {
    const { act, sentence } = acts[k]!
    if (act.frame !== 'load' || !act.leans || act.more || act.slots.pile !== undefined || act.slots.crop !== undefined) continue
    const before = acts.slice(0, k).filter(a => a.act.frame === 'load' && a.sentence === sentence)
    if (before.length && before.reduce((t, a) => t + Number(a.act.slots.count ?? Number.NaN), 0) === act.slots.count) acts.splice(k, 1)
  }
}

/** "patched four holes on barn, two on top and two by the wall": the parts are told, and the sum of them is no deed of its own. */
export const inParts = (acts: { act: Act; sentence: number }[]): void => {
  for (let k = 0; k + 2 < acts.length; k++) {
    const { act, sentence } = acts[k]!
    if ((act.frame !== 'patch' && act.frame !== 'damage') || act.slots.where !== undefined) continue
    const parts = acts
      .slice(k + 1)
      .filter(
        o => o.sentence === sentence && o.act.frame === act.frame && o.act.slots.where !== undefined && o.act.slots.pile === act.slots.pile,
      )
    const sum = parts.reduce((t, o) => t + Number(o.act.slots.count ?? Number.NaN), 0)
    if (parts.length > 1 && sum === act.slots.count) acts.splice(k, 1)
  }
}

/** Frames whose sum may be told before its parts. */
const SUMMED = new Set(['load', 'patch', 'damage', 'feed', 'spoil'])

/** "5 holes patched, 3 barn 2 shop", "11 loads corn, 7 creek 4 north": the piles share the sum, which is no deed of its own. */
export const shared = (acts: { act: Act; sentence: number }[]): void => {
  for (let k = 0; k + 2 < acts.length; k++) {
    const { act: sum, sentence } = acts[k]!
    const count = sum.slots.count
    if (!SUMMED.has(sum.frame) || typeof count !== 'number' || sum.slots.pile !== undefined || sum.strange) continue
    let total = 0
    let n = k + 1
    for (; n < acts.length && total < count; n++) {
      const { act, sentence: where } = acts[n]!
      const part = act.frame === sum.frame || (sum.frame === 'patch' && act.frame === 'damage' && act.slots.cause === 'unknown')
      if (where !== sentence || !part || (act.slots.pile === undefined && !act.strange) || typeof act.slots.count !== 'number') break
      total += act.slots.count
    }
    if (total !== count || n < k + 3) continue
    const { count: _, ...rest } = sum.slots
    for (const { act } of acts.slice(k + 1, n)) {
      if (act.frame !== sum.frame) Object.assign(act, { frame: sum.frame, slots: { pile: act.slots.pile, count: act.slots.count } })
      act.slots = { ...rest, ...act.slots }
      act.date ??= sum.date
    }
    acts.splice(k, 1)
  }
}

/** "patched 2 on shop and 4 holes on barn": the verb is said once, and nothing tells what made the others. */
export const patchedBoth = (acts: { act: Act; sentence: number }[]): void => {
  for (let k = 1; k < acts.length; k++) {
    const before = acts[k - 1]!
    const { act, sentence } = acts[k]!
    const both =
      before.act.frame === 'patch' &&
      before.act.mood === act.mood &&
      before.sentence === sentence &&
      before.act.slots.count !== undefined &&
      before.act.slots.pile !== undefined &&
      act.frame === 'damage' &&
      act.noVerb === true &&
      act.slots.cause === 'unknown' &&
      act.slots.count !== undefined &&
      act.slots.pile !== undefined &&
      act.slots.pile !== before.act.slots.pile &&
      !act.more
    if (!both) continue
    const { pile, count, where } = act.slots
    Object.assign(act, { frame: 'patch', slots: { pile, count, ...(where !== undefined && { where }) } })
    if (act.date?.explicit) before.act.date ??= act.date
  }
}

/** "uncovered barn to feed them, open since today": one deed, where no sheet is named. */
export const uncovered = (acts: { act: Act; sentence: number }[]): void => {
  for (let k = acts.length - 1; k >= 0; k--) {
    const { act, sentence } = acts[k]!
    const opened = acts.some(
      o =>
        o.sentence === sentence &&
        o.act.frame === 'open' &&
        o.act.mood === act.mood &&
        (o.act.slots.pile ?? act.slots.pile) === act.slots.pile,
    )
    if (act.frame === 'cover' && act.implied && opened) acts.splice(k, 1)
  }
}

const LAID = new Set(['plastic', 'second plastic', 'barrier film', 'tarp', 'mesh', 'tires', 'gravel bags'])

/** "Creek is covered. We used one 50x150 and 310 tires": what was used lies on that pile, and the stock follows from it. */
export const usedOn = (acts: { act: Act; sentence: number }[]): void => {
  for (const { act, sentence } of acts) {
    if (act.frame !== 'supply' || act.mood !== 'fact' || act.slots.change !== 'use' || !LAID.has(String(act.slots.item))) continue
    const over = acts.find(
      o => o.act.frame === 'cover' && o.act.mood === 'fact' && o.act.slots.change === 'on' && Math.abs(o.sentence - sentence) <= 1,
    )
    if (!over) continue
    const { item, count, widthFt, lengthFt } = act.slots
    const counts = item === 'tires' || item === 'gravel bags' || Number(count) > 1
    act.frame = 'cover'
    act.slots = {
      ...(over.act.slots.pile !== undefined && { pile: over.act.slots.pile }),
      material: item,
      change: 'on',
      ...(widthFt !== undefined && { widthFt, lengthFt }),
      ...(counts && count !== undefined && { count }),
    }
    act.date ??= over.act.date
    if (over.act.strange) act.strange = over.act.strange
  }
}

/** "21 tons of corn and 8 of haylage": tons both. */
export const inTons = (acts: { act: Act; sentence: number }[]): void => {
  for (let k = 1; k < acts.length; k++) {
    const before = acts[k - 1]!
    const { act, sentence } = acts[k]!
    const { lb, count } = before.act.slots
    const tons =
      before.act.frame === 'load' && before.sentence === sentence && typeof lb === 'number' && count === undefined && lb % LB_PER_TON === 0
    if (!tons || act.frame !== 'load' || !act.noUnit || typeof act.slots.count !== 'number' || act.slots.lb !== undefined) continue
    act.slots.lb = act.slots.count * LB_PER_TON
    delete act.slots.count
  }
}

/** "no holes in barn but two in shop": harm denied here and told there is no walk round the first. */
export const contrasted = (acts: { act: Act; sentence: number }[]): void => {
  for (let k = acts.length - 1; k >= 0; k--) {
    const { act, sentence } = acts[k]!
    const other = acts.some((o, j) => j !== k && o.sentence === sentence && o.act.mood === 'fact' && o.act.frame === 'damage')
    if (act.frame === 'check' && act.implied && other) acts.splice(k, 1)
  }
}

/** "half a load of third cutting, that's the end of it": of what was hauled, no pile is empty. */
export const ended = (acts: { act: Act; sentence: number }[]): void => {
  for (let k = acts.length - 1; k > 0; k--)
    if (acts[k]!.act.frame === 'empty' && acts[k]!.act.slots.pile === undefined && acts[k - 1]!.act.frame === 'load') acts.splice(k, 1)
}
