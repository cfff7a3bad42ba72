import type { Event } from '../../src/book/events.ts'
import { addDays, type Day } from '../../src/units/calendar.ts'
import { type Dice, dice } from './random.ts'

/** How a world of farms is made: what can be wrong on them, and how much. Each world is a different farm life, not a different seed. */
export interface World {
  name: string
  /** Days that a pile lasts, from and to. */
  lasts: [number, number]
  /** True box weight over the said one: mean and spread between farms. */
  box: [number, number]
  /** Spread of one load around its box, a share. */
  load: number
  /** Share of what went in that never comes out. */
  loss: [number, number]
  /** Really fed over the ration: mean and spread between farms. */
  over: [number, number]
  /** Slow drift of what is fed, a share per square root of a day. */
  drift: number
  /** Spread of one day, a share. */
  daily: number
  /** Share of the days that are logged: least and most. */
  logged: [number, number]
  /** Silent days come in runs of about so many. */
  runs: number
  /** What a log says: the scale's weight, the weight rounded to so many pounds, or the ration whatever was fed. */
  logs: 'scale' | 'rounded' | 'ration' | 'feet' | 'batches'
  /** Days between readings of the face; 0 for never. */
  faceEvery: number
  /** Faces are told to so many feet. */
  faceGrain: number
  /** Error of a reading before rounding, ft. */
  faceSd: number
  /** Ramps at the ends, run to rise; 0 for upright ends. */
  slope: number
  /** Unevenness of the density along the pile: share of the weight behind the face, at its widest. */
  uneven: number
  /** Chance that the length is known, and its error. */
  length: number
  lengthSd: number
  /** Chance that height was measured. */
  height: number
  /** Chance that some loads were weighed. */
  tickets: number
  /** Chance that a ration is told. */
  ration: number
  /** Chance that the herd changes once during the feeding. */
  herdChange: number
}

export interface Question {
  on: Day
  /** Days until the pile is gone. */
  truth: number
}

export interface Season {
  /** What the crew told, in the order it was told. */
  told: { on: Day; hour: number; event: Event; words: string }[]
  questions: Question[]
  pile: string
  crop: string
  /** What a notebook has. */
  notebook: { loads: number; boxLb: number; opened: Day; rations: { on: Day; lb: number }[] }
}

const PILES = ['upper', 'orchard', 'well', 'sand', 'gate', 'silo side']
const round = (x: number, grain: number): number => (grain > 0 ? Math.round(x / grain) * grain : x)
const lb = (x: number): string => String(Math.round(x))

/** Weight behind the face at `u` of the length, a share of the whole: ramps, and a density that wanders. */
const behind = (d: Dice, world: World, length: number, height: number): ((u: number) => number) => {
  const ramp = Math.min(0.45, (world.slope * height) / length)
  const waves = [1, 2, 3, 4].map(k => (d.normal(0, 1) * world.uneven * 2 * Math.SQRT2) / (k * Math.PI))
  const n = 400
  const cum = [0]
  for (let i = 0; i < n; i++) {
    const u = (i + 0.5) / n
    const h = Math.min(1, ramp > 0 ? u / ramp : 1, ramp > 0 ? (1 - u) / ramp : 1)
    // Side slopes stay, so the section falls a little faster than the height.
    const area = h ** 1.4
    const density = Math.max(0.3, 1 + waves.reduce((t, w, k) => t + w * (k + 1) * Math.PI * Math.cos((k + 1) * Math.PI * u), 0))
    cum.push(cum[i]! + area * density)
  }
  const all = cum[n]!
  return u => {
    const x = Math.min(1, Math.max(0, u)) * n
    const i = Math.min(n - 1, Math.floor(x))
    return (cum[i]! + (cum[i + 1]! - cum[i]!) * (x - i)) / all
  }
}

/** One pile from its first load to its last day, and what of it was told. */
export const season = (world: World, seed: number): Season => {
  const d = dice(seed * 7919 + 13)
  const pile = d.pick(PILES)
  const crop = d.chance(0.6) ? 'corn silage' : 'haylage'
  const told: Season['told'] = []
  const tell = (on: Day, hour: number, event: Event, words: string): void => {
    told.push({ on, hour, event, words })
  }
  const boxLb = round(d.between(8000, 16_000), 500)
  const trueBox = boxLb * d.normal(...world.box)
  const ration = round(d.between(4500, 16_000), 500)
  const days = d.between(...world.lasts)
  const loss = Math.min(0.4, Math.max(0.03, d.normal(...world.loss)))
  let over = d.normal(...world.over)
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
  tell(
    start,
    7,
    { type: 'pile', name: pile, on: start, widthFt: width, ...(known && { lengthFt: saidLength }) } as Event,
    `new pile called ${pile}, ${width} ${known ? `by ${saidLength}` : 'wide'}`,
  )
  tell(start, 7, { type: 'box', name: 'red wagon', lb: boxLb, on: start } as Event, `the red wagon holds ${boxLb} lb`)
  let whole = 0
  let left = loads
  let day = start
  while (left > 0) {
    const n = Math.min(left, Math.round(d.between(6, 24)))
    left -= n
    let lbs = 0
    for (let i = 0; i < n; i++) lbs += trueBox * Math.max(0.5, d.normal(1, world.load))
    whole += lbs
    const weighed = d.chance(world.tickets * 0.4)
    tell(
      day,
      18,
      { type: 'load', pile, crop, count: n, box: 'red wagon', ...(weighed && { lb: Math.round(lbs) }), on: day } as Event,
      `put ${n} loads ${crop} on ${pile} with the red wagon${weighed ? `, ${lb(lbs)} lb` : ''}`,
    )
    day = addDays(day, 1)
  }
  tell(day, 12, { type: 'cover', pile, material: 'plastic', change: 'on', on: day } as Event, `covered ${pile} with plastic`)
  if (d.chance(world.height)) {
    const h = round(height, 0.5)
    tell(
      day,
      13,
      { type: 'size', pile, widthFt: width, ...(known && { lengthFt: saidLength }), heightFt: h, on: day } as Event,
      `${pile} is ${width} wide${known ? `, ${saidLength} long` : ''} and ${h} high`,
    )
  }
  const opened = addDays(day, Math.round(d.between(25, 160)))
  if (d.chance(world.ration))
    tell(opened, 6, { type: 'ration', pile, lbPerDay: ration, on: opened } as Event, `feeding ${ration} a day off ${pile}`)
  tell(opened, 7, { type: 'open', pile, why: 'feed', on: opened } as Event, `opened ${pile} to feed`)

  const usable = whole * (1 - loss)
  const share = behind(d, world, length, height)
  const faceAt = (gone: number): number => {
    let a = 0
    let b = 1
    for (let i = 0; i < 30; i++) {
      const m = (a + b) / 2
      if (share(m) < gone / usable) a = m
      else b = m
    }
    return ((a + b) / 2) * length
  }
  const logShare = d.between(...world.logged)
  const change = d.chance(world.herdChange) ? Math.round(days * d.between(0.3, 0.7)) : -1
  const batchLb = round(d.between(2500, 5500), 100)
  let base = ration
  const rations = [{ on: opened, lb: ration }]
  let gone = 0
  let silent = false
  let nextFace = Math.round(d.between(3, Math.max(4, world.faceEvery)))
  let lastFace = 0
  const uses: number[] = []
  for (let i = 0; gone < usable && i < 600; i++) {
    const on = addDays(opened, i)
    if (i === change) {
      const factor = d.pick([0.85, 0.9, 1.1, 1.2])
      base = round(base * factor, 100)
      rations.push({ on, lb: base })
      tell(on, 6, { type: 'ration', pile, lbPerDay: base, on } as Event, `feeding ${base} a day off ${pile}`)
    }
    over *= 1 + d.normal(0, world.drift)
    const use = Math.min(usable - gone, base * over * Math.max(0.3, d.normal(1, world.daily)))
    const before = faceAt(gone)
    gone += use
    uses.push(use)
    // Runs of silence: each day the state changes with the chance that gives the share and the length of the runs.
    silent = silent ? !d.chance(1 / world.runs) : d.chance(logShare >= 1 ? 0 : (1 - logShare) / logShare / world.runs)
    if (logShare > 0 && !silent) {
      if (world.logs === 'feet') {
        const ft = round(Math.max(0.5, faceAt(gone) - before + d.normal(0, 0.3)), 0.5)
        tell(on, 17, { type: 'feed', pile, ft, on } as Event, `took ${ft} ft off ${pile}`)
      } else if (world.logs === 'batches') {
        const n = Math.max(1, Math.round(use / batchLb))
        tell(on, 17, { type: 'feed', pile, count: n, unit: 'batch', on } as Event, `fed ${n} batches off ${pile}`)
      } else {
        const said = world.logs === 'ration' ? base : round(use, world.logs === 'rounded' ? 500 : 20)
        tell(on, 17, { type: 'feed', pile, lb: said, on } as Event, `fed ${said} off ${pile}`)
      }
    }
    if (world.faceEvery > 0 && i === nextFace) {
      nextFace += Math.max(2, Math.round(world.faceEvery * d.between(0.6, 1.5)))
      const ft = Math.max(lastFace, round(Math.max(0, faceAt(gone) + d.normal(0, world.faceSd)), world.faceGrain))
      if (ft > 0 && ft < saidLength) {
        lastFace = ft
        tell(on, 17.5, { type: 'face', pile, atFt: ft, on } as Event, `face is at ${ft} ft on ${pile}`)
      }
    }
  }
  const total = uses.length
  const questions: Question[] = []
  for (let ahead = 8; ahead < Math.min(total - 4, 120); ahead += Math.round(d.between(5, 12)))
    questions.push({ on: addDays(opened, total - 1 - ahead), truth: ahead })
  return { told, questions, pile, crop, notebook: { loads, boxLb, opened, rations } }
}

/** Loads times what the box is said to hold, less 15 percent, less the daily figure for every day since the opening. */
export const notebookDays = (s: Season, on: Day): number => {
  const { loads, boxLb, opened, rations } = s.notebook
  let rest = loads * boxLb * 0.85
  let daily = 0
  for (let day = opened; day <= on; day = addDays(day, 1)) {
    daily = rations.findLast(r => r.on <= day)!.lb
    rest -= daily
  }
  return Math.max(0, rest / daily)
}
