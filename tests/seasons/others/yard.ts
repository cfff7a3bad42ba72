import { addDays, type Day } from '../../../src/units/calendar.ts'
import { dice } from '../random.ts'
import type { Season } from '../season.ts'
import { askAlong } from './ask.ts'
import { round, teller } from './teller.ts'

/** What differs between farms with a pile on an open yard. */
export interface Yard {
  box: [number, number]
  /** Run over rise of the rounded ends, from and to. */
  ramp: [number, number]
  /** How much tighter (or looser) the far end is packed than the near one: spread, a share. */
  rise: number
  /** Lost of what is fed first, and of what is fed last. */
  early: number
  late: number
  /** What the cows eat goes up and down with the season by so much. */
  season: number
  logged: [number, number]
  /** Silent days come in runs of about so many. */
  runs: number
  faceEvery: number
}

/**
 * Rounded ends that grow with the square of the way, a density that rises or falls along the pile, a loss that grows with the time that
 * the feed lies, appetite by the season; the face told now from the one end, now as what is left.
 */
export const yard =
  (w: Yard) =>
  (seed: number): Season => {
    const d = dice(seed * 1697 + 77)
    const say = teller()
    const pile = d.pick(['plum', 'windmill', 'south', 'canal'])
    const crop = d.pick(['corn silage', 'grass silage'])
    const length = d.between(80, 180)
    const height = d.between(7, 12)
    const run = [d.between(...w.ramp) * height, d.between(...w.ramp) * height]
    const rise = d.normal(0, w.rise)
    const perFt = (x: number): number =>
      Math.min(1, x / run[0]!) ** 2 * Math.min(1, Math.max(0, length - x) / run[1]!) ** 2 * (1 + 2 * rise * (x / length - 0.5))
    const step = 0.25
    let whole = 0
    for (let x = step / 2; x < length; x += step) whole += perFt(x) * step
    const said = round(d.between(8000, 18_000), 1000)
    const trueBox = said * d.normal(...w.box)
    const ration = round(d.between(4000, 15_000), 500)
    const count = Math.max(6, Math.round((ration * d.between(65, 140)) / 0.8 / said))
    let lb = 0
    let day: Day = '2025-08-28'
    say.pile(day, pile, { widthFt: round(d.between(30, 60), 5), lengthFt: round(length * d.normal(1, 0.015), 1) })
    say.box(day, 'dump truck', said)
    for (let left = count; left > 0; day = addDays(day, 1)) {
      const n = Math.min(left, Math.round(d.between(6, 22)))
      left -= n
      for (let i = 0; i < n; i++) lb += trueBox * d.normal(1, 0.08)
      say.loads(day, pile, crop, n, 'dump truck')
    }
    say.cover(day, pile)
    const opened = addDays(day, Math.round(d.between(20, 100)))
    say.open(opened, pile)
    say.perDay(opened, pile, ration)
    const over = d.normal(1.02, 0.04)
    const phase = d.between(0, 2 * Math.PI)
    const toldLength = say.told.flatMap(t => (t.event.type === 'pile' ? (t.event.lengthFt ?? []) : []))[0]!
    const logged = d.between(...w.logged)
    let silent = false
    let x = 0
    let ends = 0
    let next = Math.round(d.between(3, w.faceEvery))
    for (let i = 0; ; i++) {
      const on = addDays(opened, i)
      const use = ration * over * (1 + w.season * Math.sin(phase + (2 * Math.PI * i) / 365)) * Math.max(0.5, d.normal(1, 0.06))
      let got = 0
      while (got < use && x < length) {
        const lbFt = (perFt(x + step / 2) / whole) * lb * (1 - (w.early + (w.late - w.early) * (x / length)))
        const ft = Math.min(step, length - x, (use - got) / Math.max(1, lbFt))
        got += lbFt * ft
        x += ft
        if (got >= use * (1 - 1e-9)) break
      }
      if (x >= length - 1e-6) {
        ends = i + Math.min(1, got / use)
        break
      }
      silent = silent ? !d.chance(1 / w.runs) : d.chance((1 - logged) / logged / w.runs)
      if (!silent) say.fed(on, pile, round(use * d.normal(1, 0.02), 100))
      if (i === next) {
        next += Math.max(2, Math.round(d.between(0.5, 1.5) * w.faceEvery))
        const at = round(x + d.normal(0, 1.3), 1)
        if (at > 0 && at < toldLength) {
          if (d.chance(0.5)) say.face(on, pile, at)
          else say.left(on, pile, Math.max(1, round(length - x + d.normal(0, 1.3), 1)))
        }
      }
    }
    return {
      told: say.told,
      questions: askAlong(d, opened, ends),
      pile,
      crop,
      notebook: { saidLb: count * said, opened, rations: [{ on: opened, lb: ration }] },
    }
  }
