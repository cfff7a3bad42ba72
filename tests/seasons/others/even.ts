import { addDays, type Day } from '../../../src/units/calendar.ts'
import { dice } from '../random.ts'
import type { Season } from '../season.ts'
import { askAlong } from './ask.ts'
import { round, teller } from './teller.ts'

/** What differs between farms where a foot of the pile is a foot of the pile. */
export interface Even {
  /** True box weight over said, mean and spread. */
  box: [number, number]
  loss: [number, number]
  /** Chance that a day is logged, the same for each day of a season, from and to. */
  logged: [number, number]
  /** Error of one log, a share, and the pounds it is rounded to. */
  log: [number, number]
  /** Days between readings of the face, from and to; none for never. Their error, ft, and to what feet. */
  face?: [number, number]
  read: [number, number]
  /** Spread of a day around the herd's need, and of the season's need around the figure told. */
  daily: number
  need: number
  /** Chance that a filling day's loads are told one short. */
  miss: number
}

/**
 * The simplest farm there can be: as much in one foot as in the next, a fixed need, days of the log falling out one by one, one loss
 * taken off at the start.
 */
export const even =
  (w: Even) =>
  (seed: number): Season => {
    const d = dice(seed * 6151 + 101)
    const say = teller()
    const pile = d.pick(['creek', 'barn', 'hill', 'road'])
    const crop = 'corn silage'
    const head = Math.round(d.between(60, 220))
    const told = round(head * d.between(45, 70), 100)
    const need = told * d.normal(1, w.need)
    const said = round(d.between(8000, 15_000), 500)
    const count = Math.max(4, Math.round((told * d.between(60, 150)) / 0.8 / said))
    const trueBox = said * d.normal(...w.box)
    const loss = d.between(...w.loss)
    const length = round(d.between(70, 200), 1)
    const start: Day = '2024-09-10'
    say.pile(start, pile, { widthFt: round(d.between(30, 60), 1), lengthFt: length, heightFt: round(d.between(8, 13), 1) })
    say.box(start, 'big truck', said)
    let whole = 0
    let toldLoads = 0
    let day = start
    for (let left = count; left > 0; day = addDays(day, 1)) {
      const n = Math.min(left, Math.round(d.between(10, 30)))
      left -= n
      for (let i = 0; i < n; i++) whole += trueBox * d.normal(1, 0.05)
      const t = Math.max(1, n - (d.chance(w.miss) ? 1 : 0))
      toldLoads += t
      say.loads(day, pile, crop, t, 'big truck')
    }
    say.cover(day, pile)
    const opened = addDays(day, Math.round(d.between(20, 60)))
    say.open(opened, pile)
    say.perDay(opened, pile, told)
    const usable = whole * (1 - loss)
    const logged = d.between(...w.logged)
    let next = w.face ? Math.round(d.between(...w.face)) : -1
    let gone = 0
    let ends = 0
    for (let i = 0; ; i++) {
      const on = addDays(opened, i)
      const use = need * Math.max(0.4, d.normal(1, w.daily))
      if (gone + use >= usable) {
        ends = i + (usable - gone) / use
        break
      }
      gone += use
      if (d.chance(logged)) say.fed(on, pile, round(use * d.normal(1, w.log[0]), w.log[1]))
      if (i === next && w.face) {
        next += Math.max(1, Math.round(d.between(...w.face)))
        const at = round((length * gone) / usable + d.normal(0, w.read[0]), w.read[1])
        if (at > 0 && at < length) say.face(on, pile, at)
      }
    }
    const questions = askAlong(d, opened, ends)
    return { told: say.told, questions, pile, crop, notebook: { saidLb: toldLoads * said, opened, rations: [{ on: opened, lb: told }] } }
  }
