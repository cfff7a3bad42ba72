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
