import { addDays, type Day } from '../../../src/units/calendar.ts'
import { dice } from '../random.ts'
import type { Season } from '../season.ts'
import { askAlong } from './ask.ts'
import { round, teller } from './teller.ts'

/** What differs between farms where the pile is drawn first and filled after. */
export interface Shaped {
  box: [number, number]
  /** Run over rise of the ramps, front and back, from and to each. */
  front: [number, number]
  back: [number, number]
  loss: [number, number]
  /** Thrown out of the loss where people see it: its share, told now and then. */
  seen: number
  logged: [number, number]
  faceEvery: number
  faceSd: number
  /** Pounds the log is rounded to; 0 for batches. */
  grain: number
  /** Mixer scale that weighs wrong, spread. */
  scale: number
}

/** Cuts along the length; weight of each by its section and how it was packed. */
const CUTS = 300

/**
 * A pile with flat top, sides and ramps of their own, denser below than above, fed by the head from a herd that comes and goes. The
 * crew tells batches or weights off a scale that is a little wrong, and feet left.
 */
export const shaped =
  (w: Shaped) =>
  (seed: number): Season => {
    const d = dice(seed * 4099 + 7)
    const say = teller()
    const pile = d.pick(['oak', 'silo', 'ditch', 'lane'])
    const crop = d.pick(['corn silage', 'haylage'])
    const height = d.between(7, 13)
    const side = d.between(2, 3.2)
    const width = 2 * side * height + d.between(6, 24)
    const length = d.between(70, 190)
    const ramps = [d.between(...w.front) * height, d.between(...w.back) * height].map(r => Math.min(r, 0.48 * length))
    const sums = [0]
    for (let i = 0; i < CUTS; i++) {
      const x = ((i + 0.5) / CUTS) * length
      const h = height * Math.min(1, ramps[0]! > 0 ? x / ramps[0]! : 1, ramps[1]! > 0 ? (length - x) / ramps[1]! : 1)
      sums.push(sums[i]! + h * (width - side * h) * (0.82 + (0.18 * h) / height))
    }
    const behind = (x: number): number => {
      const at = Math.min(CUTS, Math.max(0, (x / length) * CUTS))
      const i = Math.min(CUTS - 1, Math.floor(at))
      return (sums[i]! + (sums[i + 1]! - sums[i]!) * (at - i)) / sums[CUTS]!
    }
    const volume = (sums[CUTS]! * length) / CUTS
    const whole = volume * d.normal(44, 4)
    const said = round(d.between(9000, 20_000), 1000)
    const count = Math.max(5, Math.round(whole / (said * d.normal(...w.box))))
    const loss = d.between(...w.loss)
    const usable = whole * (1 - loss)
    // The herd that such a pile lasts for some months.
    let head = Math.max(15, Math.round(usable / d.between(60, 160) / 55))
    const each = round(d.between(48, 62), 1)
    const over = d.normal(1.02, 0.03)
    const scale = d.normal(1, w.scale)
    const start: Day = '2023-09-05'
    const size = { widthFt: round(width, 1), lengthFt: round(length, d.chance(0.4) ? 5 : 1), heightFt: round(height, 1) }
    say.pile(start, pile)
    say.box(start, 'silage wagon', said)
    let day = start
    for (let left = count; left > 0; day = addDays(day, 1)) {
      const n = Math.min(left, Math.round(d.between(8, 26)))
      left -= n
      say.loads(day, pile, crop, n, 'silage wagon')
    }
    say.cover(day, pile)
    say.size(addDays(day, 1), pile, size.widthFt, size.lengthFt, size.heightFt)
    if (d.chance(0.6)) say.dry(addDays(day, 1), pile, round(d.normal(36, 3), 0.5))
    const opened = addDays(day, Math.round(d.between(21, 90)))
    say.open(opened, pile)
    say.head(opened, head)
    say.perHead(opened, crop, each)
    const rations = [{ on: opened, lb: head * each }]
    const batch = round((head * each) / d.pick([2, 3, 4]), 100)
    if (w.grain === 0) say.box(opened, 'batch', batch)
    const logged = d.between(...w.logged)
    let gone = 0
    let ends = 0
    let next = Math.round(w.faceEvery * d.between(0.5, 1.5))
    let toldHead = head
    for (let i = 0; ; i++) {
      const on = addDays(opened, i)
      if (d.chance(0.12)) head = Math.max(10, head + Math.round(d.normal(0, 0.012) * head))
      if (Math.abs(head - toldHead) > 0.04 * toldHead && d.chance(0.5)) {
        toldHead = head
        say.head(on, head)
        rations.push({ on, lb: head * each })
      }
      const use = head * each * over * Math.max(0.5, d.normal(1, 0.04))
      if (gone + use >= usable) {
        ends = i + (usable - gone) / use
        break
      }
      gone += use
      if (d.chance(logged)) {
        if (w.grain === 0) say.batches(on, pile, Math.max(1, Math.round(use / batch)))
        else say.fed(on, pile, round(use * scale, w.grain))
      }
      if (w.seen > 0 && d.chance(0.06)) say.thrown(on, pile, round(Math.max(100, (use * w.seen * loss) / 0.06), 100))
      if (w.faceEvery > 0 && i === next) {
        next += Math.max(2, Math.round(w.faceEvery * d.between(0.5, 1.5)))
        let a = 0
        let b = length
        for (let k = 0; k < 30; k++) {
          const m = (a + b) / 2
          if (behind(m) < gone / usable) a = m
          else b = m
        }
        const left = round(length - a + d.normal(0, w.faceSd), 1)
        if (left > 0 && left < size.lengthFt) say.left(on, pile, left)
      }
    }
    return { told: say.told, questions: askAlong(d, opened, ends), pile, crop, notebook: { saidLb: count * said, opened, rations } }
  }
