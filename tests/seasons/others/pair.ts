import { addDays, type Day } from '../../../src/units/calendar.ts'
import { type Dice, dice } from '../random.ts'
import type { Season } from '../season.ts'
import { askAlong } from './ask.ts'
import { round, type Teller, teller } from './teller.ts'

/** What differs between farms that feed one pile after the other. */
export interface Pair {
  box: [number, number]
  /** Lost on this farm, mean and spread between farms, and how far each of its piles lies from that. */
  loss: [number, number]
  own: number
  logged: [number, number]
  /** Days between readings of the face; 0 for never. */
  faceEvery: number
}

interface Fed {
  ends: number
  last: Day
}

const feed = (d: Dice, say: Teller, w: Pair, pile: string, opened: Day, usable: number, use: number, length: number): Fed => {
  const logged = d.between(...w.logged)
  let gone = 0
  let next = w.faceEvery
  for (let i = 0; ; i++) {
    const on = addDays(opened, i)
    const today = use * Math.max(0.5, d.normal(1, 0.06))
    if (gone + today >= usable) return { ends: i + (usable - gone) / today, last: on }
    gone += today
    if (d.chance(logged)) say.fed(on, pile, round(today, 100))
    if (w.faceEvery > 0 && i === next) {
      next += w.faceEvery
      const at = round((gone / usable) * length + d.normal(0, 1.2), 1)
      if (at > 0 && at < length) say.face(on, pile, at)
    }
  }
}

/**
 * Two piles filled in one harvest by one truck; the first is fed out and told as gone, then the second is opened. What the first showed
 * of the truck and of the farm's loss is there to be used.
 */
export const pair =
  (w: Pair) =>
  (seed: number): Season => {
    const d = dice(seed * 5087 + 3)
    const say = teller()
    const names = d.pick([
      ['upper', 'lower'],
      ['west', 'old'],
      ['pond', 'mill'],
    ])
    const crop = 'corn silage'
    const said = round(d.between(9000, 16_000), 500)
    const trueBox = said * d.normal(...w.box)
    const farmLoss = d.normal(...w.loss)
    const ration = round(d.between(5000, 14_000), 100)
    const use = ration * d.normal(1.02, 0.03)
    let day: Day = '2024-09-08'
    say.box(day, 'tandem truck', said)
    const made = names.map(name => {
      const loads = Math.max(5, Math.round((d.between(60, 120) * ration) / 0.85 / said))
      const length = Math.round(d.between(60, 150))
      say.pile(day, name, { widthFt: round(d.between(26, 50), 1), lengthFt: length })
      let whole = 0
      for (let left = loads; left > 0; day = addDays(day, 1)) {
        const n = Math.min(left, Math.round(d.between(8, 20)))
        left -= n
        for (let i = 0; i < n; i++) whole += trueBox * d.normal(1, 0.05)
        say.loads(day, name, crop, n, 'tandem truck')
      }
      say.cover(day, name)
      return { name, length, loads, usable: whole * (1 - Math.max(0.03, farmLoss + d.normal(0, w.own))) }
    })
    const first = made[0]!
    const second = made[1]!
    const opened1 = addDays(day, 25)
    say.open(opened1, first.name)
    say.perDay(opened1, first.name, ration)
    const one = feed(d, say, w, first.name, opened1, first.usable, use, first.length)
    say.gone(one.last, first.name)
    const opened = addDays(one.last, 1)
    say.open(opened, second.name)
    say.perDay(opened, second.name, ration)
    const two = feed(d, say, w, second.name, opened, second.usable, use, second.length)
    return {
      told: say.told,
      questions: askAlong(d, opened, two.ends),
      pile: second.name,
      crop,
      notebook: { saidLb: second.loads * said, opened, rations: [{ on: opened, lb: ration }] },
    }
  }
