import { addDays, type Day } from '../../../src/units/calendar.ts'
import { dice } from '../random.ts'
import type { Season } from '../season.ts'
import { askAlong } from './ask.ts'
import { round, teller } from './teller.ts'

/** What differs between farms where a pile is pushed up slice by slice. */
export interface Slices {
  box: [number, number]
  /** Spread of the weight of a slice, and how much of a slice's is the next one's. */
  cv: number
  keep: number
  /** Ramp at the opened end, slices from and to. */
  ramp: [number, number]
  loss: [number, number]
  logged: [number, number]
  faceEvery: number
  /** Two rations told late, by so many days. */
  late: number
}

/**
 * Foot by foot: slices a foot thick, each with a weight that resembles its neighbour's; a wedge at the opened end and the other end
 * against the bank. The ration changes twice and is told late; after a day off the log is sometimes for two days.
 */
export const slices =
  (w: Slices) =>
  (seed: number): Season => {
    const d = dice(seed * 3571 + 57)
    const say = teller()
    const pile = d.pick(['north bank', 'quonset', 'east', 'pit'])
    const crop = d.pick(['corn silage', 'small-grain silage'])
    const length = Math.round(d.between(70, 210))
    const ramp = Math.min(0.5 * length, d.between(...w.ramp))
    let like = d.normal(0, w.cv)
    const slice = Array.from({ length }, (_, i) => {
      like = w.keep * like + Math.sqrt(1 - w.keep ** 2) * d.normal(0, w.cv)
      return Math.max(0.2, 1 + like) * Math.min(1, (i + 1) / Math.max(1, ramp))
    })
    const total = slice.reduce((a, b) => a + b, 0)
    const count = Math.round(d.between(40, 140))
    const said = round(d.between(8000, 16_000), 500)
    let whole = 0
    const start: Day = '2024-09-02'
    const trueBox = said * d.normal(...w.box)
    say.pile(start, pile, { widthFt: round(d.between(25, 50), 1), lengthFt: length })
    say.box(start, 'farm truck', said)
    let day = start
    for (let left = count; left > 0; day = addDays(day, 1)) {
      const n = Math.min(left, Math.round(d.between(5, 18)))
      left -= n
      // Loads get drier and lighter as the harvest goes on.
      const dry = 1 - 0.06 * (1 - left / count)
      for (let i = 0; i < n; i++) whole += trueBox * dry * 1.03 * d.normal(1, 0.06)
      say.loads(day, pile, crop, n, 'farm truck')
    }
    say.cover(day, pile)
    const opened = addDays(day, Math.round(d.between(14, 140)))
    const usable = whole * (1 - d.between(...w.loss))
    let ration = round(usable / d.between(65, 150), 100)
    const rations = [{ on: opened, lb: ration }]
    say.open(opened, pile)
    say.perDay(opened, pile, ration)
    const over = d.normal(1.02, 0.04)
    const turns = [Math.round(d.between(15, 50)), Math.round(d.between(55, 110))]
    let pending: { at: number; lb: number } | undefined
    const logged = d.between(...w.logged)
    let gone = 0
    let ends = 0
    let owed = 0
    let next = w.faceEvery > 0 ? Math.round(d.between(3, w.faceEvery)) : -1
    for (let i = 0; ; i++) {
      const on = addDays(opened, i)
      if (turns.includes(i)) {
        ration = round(ration * d.between(0.88, 1.14), 100)
        pending = { at: i + Math.round(d.between(0, w.late)), lb: ration }
      }
      if (pending?.at === i) {
        say.perDay(on, pile, pending.lb)
        rations.push({ on, lb: pending.lb })
        pending = undefined
      }
      const use = ration * over * Math.max(0.5, d.normal(1, 0.05))
      if (gone + use >= usable) {
        ends = i + (usable - gone) / use
        break
      }
      gone += use
      if (d.chance(logged)) {
        const both = owed > 0 && d.chance(0.3)
        say.fed(on, pile, round(use + (both ? owed : 0), 100))
        owed = 0
      } else owed = use
      if (i === next) {
        next += Math.max(2, Math.round(d.between(0.6, 1.4) * w.faceEvery))
        let rest = (gone / usable) * total
        let at = 0
        while (at < length && rest > slice[at]!) rest -= slice[at++]!
        const read = Math.round(at + rest / Math.max(0.05, slice[Math.min(at, length - 1)]!) + d.normal(0, 1.5))
        if (read > 0 && read < length) say.face(on, pile, read)
      }
    }
    return { told: say.told, questions: askAlong(d, opened, ends), pile, crop, notebook: { saidLb: count * said, opened, rations } }
  }
