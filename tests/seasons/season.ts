import type { Event } from '../../src/book/events.ts'
import { addDays, type Day } from '../../src/units/calendar.ts'
import { behind, faceAt } from './ground.ts'
import { type Dice, dice } from './random.ts'
import type { World } from './world.ts'

export interface Question {
  on: Day
  /** Days until the pile is gone, after this one. */
  truth: number
}

/** What was said, as an event and in words. */
export interface Said {
  on: Day
  hour: number
  event: Event
  words: string
}

export interface Season {
  /** What the crew told, in the order it was told. */
  told: Said[]
  questions: Question[]
  pile: string
  crop: string
  /** What a notebook has. */
  /** `saidLb`: what the loads add up to by what the boxes are said to hold. */
  notebook: { saidLb: number; opened: Day; rations: { on: Day; lb: number }[] }
}

type Tell = (on: Day, hour: number, event: Event, words: string) => void

const PILES = ['upper', 'orchard', 'well', 'sand', 'gate', 'quarry']
const round = (x: number, grain: number): number => (grain > 0 ? Math.round(x / grain) * grain : x)

/** A pile as it truly is, and as it was told. */
interface Pile {
  name: string
  crop: string
  ration: number
  /** Really fed over the ration, at the opening. */
  over: number
  days: number
  usable: number
  length: number
  height: number
  saidLength: number
  loads: number
  boxLb: number
  covered: Day
}

/** Fills and covers a pile, from the first load to the sheet. */
const fill = (world: World, d: Dice, tell: Tell): Pile => {
  const name = d.pick(PILES)
  const crop = d.chance(0.6) ? 'corn silage' : 'haylage'
  const boxLb = round(d.between(8000, 16_000), 500)
  const trueBox = boxLb * d.normal(...world.box)
  const ration = round(d.between(4500, 16_000), 500)
  const days = d.between(...world.lasts)
  const loss = Math.min(0.4, Math.max(0.03, d.normal(...world.loss)))
  const over = d.normal(...world.over)
  const loads = Math.max(6, Math.round((days * ration * over) / (1 - loss) / trueBox))
  const start: Day = crop === 'corn silage' ? '2025-09-12' : '2025-06-03'
  const known = d.chance(world.length)
  const volume = (loads * trueBox) / 42
  // Big herds have big piles: the length stays within what a yard has room for.
  const wanted = d.between(70, 190)
  const height = Math.min(14, Math.max(6, Math.cbrt(volume / wanted / 2.6 / 0.66) * d.between(0.9, 1.1)))
  const width = Math.max(16, round(volume / wanted / 0.66 / height, 2))
  const length = volume / (0.66 * width * height)
  const saidLength = round(length * (1 + d.normal(0, world.lengthSd)), 1)
  const long = known ? { lengthFt: saidLength } : {}
  const by = known ? `by ${saidLength}` : 'wide'
  tell(start, 7, { type: 'pile', name, widthFt: width, ...long, on: start }, `new pile called ${name}, ${width} ${by}`)
  tell(start, 7, { type: 'box', name: 'red wagon', lb: boxLb, on: start }, `the red wagon holds ${boxLb} lb`)
  let whole = 0
  let day = start
  for (let left = loads; left > 0; day = addDays(day, 1)) {
    const count = Math.min(left, Math.round(d.between(6, 24)))
    left -= count
    let lb = 0
    for (let i = 0; i < count; i++) lb += trueBox * Math.max(0.5, d.normal(1, world.load))
    lb = Math.round(lb)
    whole += lb
    const weighed = d.chance(world.tickets * 0.4)
    const event: Event = { type: 'load', pile: name, crop, count, box: 'red wagon', ...(weighed && { lb }), on: day }
    tell(day, 18, event, `put ${count} loads ${crop} on ${name} with the red wagon${weighed ? `, ${lb} lb` : ''}`)
  }
  tell(day, 12, { type: 'cover', pile: name, material: 'plastic', change: 'on', on: day }, `covered ${name} with plastic`)
  if (d.chance(world.height)) {
    const heightFt = round(height, 0.5)
    const event: Event = { type: 'size', pile: name, widthFt: width, ...long, heightFt, on: day }
    tell(day, 13, event, `${name} is ${width} wide${known ? `, ${saidLength} long` : ''} and ${heightFt} high`)
  }
  return { name, crop, ration, over, days, usable: whole * (1 - loss), length, height, saidLength, loads, boxLb, covered: day }
}

/** Tells the ration, each farm in its way. */
const rationTeller = (world: World, d: Dice, p: Pile, tell: Tell): ((on: Day, lbPerDay: number) => void) => {
  const head = Math.round(d.between(60, 250))
  const each = round(p.ration / head, 0.5)
  let first = true
  return (on, lbPerDay) => {
    if (world.rationBy === 'day') {
      tell(on, 6, { type: 'ration', pile: p.name, lbPerDay, on }, `feeding ${lbPerDay} a day off ${p.name}`)
      return
    }
    const now = Math.round((head * lbPerDay) / p.ration)
    tell(on, 6, { type: 'ration', group: 'milking', head: now, on }, `milking ${now} now`)
    if (first) tell(on, 6.5, { type: 'ration', crop: p.crop, lbPerHead: each, on }, `feeding ${each} lb ${p.crop} a head`)
    first = false
  }
}

/** One day's log, the way the crew logs. */
const logger = (world: World, d: Dice, p: Pile, tell: Tell): ((on: Day, use: number, base: number, feet: number) => void) => {
  const batchLb = round(d.between(2500, 5500), 100)
  const pile = p.name
  return (on, use, base, feet) => {
    if (world.logs === 'feet') {
      const ft = round(Math.max(0.5, feet + d.normal(0, 0.3)), 0.5)
      tell(on, 17, { type: 'feed', pile, ft, on }, `took ${ft} ft off ${pile}`)
    } else if (world.logs === 'batches') {
      const count = Math.max(1, Math.round(use / batchLb))
      tell(on, 17, { type: 'feed', pile, count, unit: 'batch', on }, `fed ${count} ${count === 1 ? 'batch' : 'batches'} off ${pile}`)
    } else {
      const lb = world.logs === 'ration' ? base : round(use, world.logs === 'rounded' ? 500 : 20)
      if (lb > 0) tell(on, 17, { type: 'feed', pile, lb, on }, `fed ${lb} off ${pile}`)
    }
  }
}

/** One pile from its first load to its last day, and what of it was told. */
export const season = (world: World, seed: number): Season => {
  const d = dice(seed * 7919 + 13)
  const told: Said[] = []
  const tell: Tell = (on, hour, event, words) => {
    told.push({ on, hour, event, words })
  }
  const p = fill(world, d, tell)
  const opened = addDays(p.covered, Math.round(d.between(25, 160)))
  const tellRation = rationTeller(world, d, p, tell)
  if (d.chance(world.ration)) tellRation(opened, p.ration)
  tell(opened, 7, { type: 'open', pile: p.name, why: 'feed', on: opened }, `opened ${p.name} to feed`)

  const share = behind(d, world, p.length, p.height)
  const place = (gone: number): number => faceAt(share, gone / p.usable, p.length)
  const log = logger(world, d, p, tell)
  const logShare = d.between(...world.logged)
  const change = d.chance(world.herdChange) ? Math.round(p.days * d.between(0.3, 0.7)) : -1
  const rations = [{ on: opened, lb: p.ration }]
  let base = p.ration
  let over = p.over
  let gone = 0
  let silent = false
  let nextFace = Math.round(d.between(3, Math.max(4, world.faceEvery)))
  let lastFace = 0
  let total = 0
  for (; gone < p.usable && total < 600; total++) {
    const on = addDays(opened, total)
    if (total === change) {
      base = round(base * d.pick([0.85, 0.9, 1.1, 1.2]), 100)
      rations.push({ on, lb: base })
      tellRation(on, base)
    }
    over *= 1 + d.normal(0, world.drift)
    const use = Math.min(p.usable - gone, base * over * Math.max(0.3, d.normal(1, world.daily)))
    const before = place(gone)
    gone += use
    // Runs of silence: each day the state changes with the chance that gives the share and the length of the runs.
    silent = silent ? !d.chance(1 / world.runs) : d.chance(logShare >= 1 ? 0 : (1 - logShare) / logShare / world.runs)
    if (logShare > 0 && !silent) log(on, use, base, place(gone) - before)
    if (world.faceEvery > 0 && total === nextFace) {
      nextFace += Math.max(2, Math.round(world.faceEvery * d.between(0.6, 1.5)))
      const atFt = Math.max(lastFace, round(Math.max(0, place(gone) + d.normal(0, world.faceSd)), world.faceGrain))
      if (atFt > 0 && atFt < p.saidLength) {
        lastFace = atFt
        const leftFt = Math.max(1, round(p.saidLength - atFt, world.faceGrain))
        if (world.faceAs === 'left') tell(on, 17.5, { type: 'face', pile: p.name, leftFt, on }, `${leftFt} ft left on ${p.name}`)
        else tell(on, 17.5, { type: 'face', pile: p.name, atFt, on }, `face is at ${atFt} ft on ${p.name}`)
      }
    }
  }
  const questions: Question[] = []
  for (let ahead = 8; ahead < Math.min(total - 4, 120); ahead += Math.round(d.between(5, 12))) {
    questions.push({ on: addDays(opened, total - 1 - ahead), truth: ahead })
  }
  return { told, questions, pile: p.name, crop: p.crop, notebook: { saidLb: p.loads * p.boxLb, opened, rations } }
}

/** Loads times what the box is said to hold, less 15 percent, less the daily figure for every day since the opening. */
export const notebookDays = (s: Season, on: Day): number => {
  const { saidLb, opened, rations } = s.notebook
  let rest = saidLb * 0.85
  let daily = 0
  for (let day = opened; day <= on; day = addDays(day, 1)) {
    daily = rations.findLast(r => r.on <= day)!.lb
    rest -= daily
  }
  return Math.max(0, rest / daily)
}
