import { addDays, type Day } from '../../../src/units/calendar.ts'
import { dice } from '../random.ts'
import type { Season } from '../season.ts'
import { askAlong } from './ask.ts'
import { round, teller } from './teller.ts'

/** What differs between farms with a clerk who is not always there. */
export interface Clerk {
  /** True weight over said of each box by itself, mean and spread. */
  box: [number, number]
  /** Loads that nobody told, a share. */
  lost: number
  /** Lost in the making, and by each day that it lies, shares. */
  made: [number, number]
  aging: number
  /** Days of the week without the clerk. */
  off: number
  /** Chance that the length is told, and that a reading is ten feet off. */
  length: number
  slip: number
  faceEvery: number
}

/**
 * Three boxes of different kinds, some loads over the scale, some told by nobody; a pile that goes on wasting away while it lies; logs
 * only on the clerk's days, in buckets now and then; readings of the face that are sometimes far off. The face is read from its toe.
 */
export const clerk =
  (w: Clerk) =>
  (seed: number): Season => {
    const d = dice(seed * 2749 + 31)
    const say = teller()
    const pile = d.pick(['dairy', 'bull', 'river', 'willow'])
    const crop = d.pick(['corn silage', 'haylage', 'sorghum silage'])
    const names = ['red wagon', 'green truck', 'old dump'].slice(0, Math.ceil(d.between(0, 3)))
    const kinds = names.map(name => {
      const said = round(d.between(6000, 18_000), 500)
      return { name, said, truly: said * d.normal(...w.box) }
    })
    const weighs = d.chance(0.25)
    const start: Day = '2025-06-01'
    const length = d.between(60, 170)
    const knows = d.chance(w.length)
    const toldLength = round(length * d.normal(1, 0.015), 1)
    say.pile(start, pile, { widthFt: round(d.between(28, 60), 2), ...(knows && { lengthFt: toldLength }) })
    for (const k of kinds) say.box(start, k.name, k.said)
    let whole = 0
    let saidLb = 0
    let day = start
    const days = Math.round(d.between(3, 8))
    for (let i = 0; i < days; i++, day = addDays(day, 1)) {
      for (const k of kinds) {
        const n = Math.round(d.between(3, 14))
        let lb = 0
        for (let j = 0; j < n; j++) lb += k.truly * d.normal(1, 0.07)
        whole += lb
        const told = Array.from({ length: n }).filter(() => !d.chance(w.lost)).length
        if (!told) continue
        saidLb += told * k.said
        say.loads(day, pile, crop, told, k.name, weighs && told === n && d.chance(0.3) ? Math.round(lb) : undefined)
      }
    }
    say.cover(day, pile)
    const opened = addDays(day, Math.round(d.between(30, 120)))
    let usable = whole * (1 - d.between(...w.made)) * (1 - w.aging) ** 60
    const ration = round(usable / d.between(60, 170), 100)
    const use0 = ration * d.normal(1.03, 0.04)
    if (d.chance(0.9)) say.perDay(addDays(opened, d.chance(0.3) ? 6 : 0), pile, ration)
    say.open(opened, pile)
    const bucket = d.chance(0.3) ? round(d.between(1500, 3500), 100) : 0
    if (bucket) say.box(opened, 'bucket', bucket)
    const off = new Set(Array.from({ length: 7 }, (_, i) => i).filter(() => d.chance(w.off / 7)))
    let away = 0
    let at = 0
    let level = 1
    let ends = 0
    let next = w.faceEvery > 0 ? Math.round(d.between(2, w.faceEvery)) : -1
    // What lies in a foot goes up and down slowly along the pile.
    const phase = d.between(0, 6)
    const swing = Math.abs(d.normal(0, 0.06))
    for (let i = 0; ; i++) {
      const on = addDays(opened, i)
      level += d.normal(0, 0.0025)
      const use = use0 * level * Math.max(0.5, d.normal(1, 0.05))
      usable *= 1 - w.aging
      const perFt = (usable / Math.max(0.5, length - at)) * (1 + swing * Math.sin(phase + (4 * at) / length))
      if (use >= usable || at + use / perFt >= length - 0.2) {
        ends = i + Math.min(1, usable / use)
        break
      }
      usable -= use
      at += use / perFt
      if (away > 0) away--
      else if (d.chance(0.012)) away = Math.round(d.between(4, 12))
      if (away === 0 && !off.has(i % 7)) {
        if (bucket) say.buckets(on, pile, Math.max(1, Math.round(use / bucket)))
        else say.fed(on, pile, round(use * d.normal(1, 0.02), 50))
      }
      if (i === next) {
        next += Math.max(2, Math.round(d.between(0.4, 1.6) * w.faceEvery))
        const read = round(at + d.normal(0.8, 1.2) + (d.chance(w.slip) ? d.pick([-10, 10]) : 0), 1)
        if (read > 0 && (!knows || read < toldLength)) say.face(on, pile, read)
      }
    }
    return {
      told: say.told,
      questions: askAlong(d, opened, ends),
      pile,
      crop,
      notebook: { saidLb, opened, rations: [{ on: opened, lb: ration }] },
    }
  }
