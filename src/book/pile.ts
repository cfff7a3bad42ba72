import type { Day, Instant } from '../units/calendar.ts'
import type { EventOf, EventType } from './events.ts'

/** One event in force, with when it was told and by whom. */
export interface Told<T extends EventType = EventType> {
  id: string
  n: number
  at: Instant
  by: string
  event: EventOf<T>
}

export interface Size {
  widthFt?: number
  lengthFt?: number
  heightFt?: number
  topWidthFt?: number
}

export type Stage = 'planned' | 'filling' | 'sealed' | 'feeding' | 'empty'

export interface SheetOn {
  material: 'plastic' | 'second plastic' | 'barrier film' | 'tarp'
  widthFt?: number
  lengthFt?: number
  on: Day
}

export interface OpenDamage {
  told: Told<'damage'>
  /** Holes or tears of this report that are not patched yet. */
  left: number
}

/** What happened to one pile since it was last empty, and what that adds up to. Facts only: no estimate stands here. */
export interface PileState {
  name: string
  alsoCalled: string[]
  planned: Size
  wallFt?: number
  measured?: Size & { on: Day }
  loads: Told<'load'>[]
  packs: Told<'pack'>[]
  covers: Told<'cover'>[]
  damages: Told<'damage'>[]
  patches: Told<'patch'>[]
  checks: Told<'check'>[]
  opens: Told<'open'>[]
  feeds: Told<'feed'>[]
  faces: Told<'face'>[]
  spoils: Told<'spoil'>[]
  shiftsIn: Told<'shift'>[]
  shiftsOut: Told<'shift'>[]
  tests: Told<'test'>[]
  rations: Told<'ration'>[]
  stage: Stage
  /** Last day a sheet went over the whole pile. */
  sealedOn?: Day
  /** First day of feeding. */
  openedOn?: Day
  emptyOn?: Day
  /** Last told position of the face from the end first opened, with `ft` fed since added by nobody. */
  face?: { atFt: number; on: Day }
  sheets: SheetOn[]
  mesh: boolean
  tires: number
  bags: number
  open: OpenDamage[]
  lastCheck?: Day
}

export const newPile = (name: string): PileState => ({
  name,
  alsoCalled: [],
  planned: {},
  loads: [],
  packs: [],
  covers: [],
  damages: [],
  patches: [],
  checks: [],
  opens: [],
  feeds: [],
  faces: [],
  spoils: [],
  shiftsIn: [],
  shiftsOut: [],
  tests: [],
  rations: [],
  stage: 'planned',
  sheets: [],
  mesh: false,
  tires: 0,
  bags: 0,
  open: [],
})

/** Length along which the face moves: measured where it was measured, else as planned, ft. */
export const lengthOf = (p: PileState): number | undefined => p.measured?.lengthFt ?? p.planned.lengthFt
export const isCovered = (p: PileState): boolean => p.sheets.length > 0 && p.stage !== 'empty'
/** Feed has gone in and not all of it has come out. */
export const hasFeed = (p: PileState): boolean => p.stage !== 'empty' && (p.loads.length > 0 || p.shiftsIn.length > 0)

const SHEETS = new Set(['plastic', 'second plastic', 'barrier film', 'tarp'])

const addCover = (p: PileState, t: Told<'cover'>): void => {
  const e = t.event
  p.covers.push(t)
  const sheet = SHEETS.has(e.material)
  if (e.change === 'on') {
    if (sheet) {
      p.sheets.push({ material: e.material as SheetOn['material'], widthFt: e.widthFt, lengthFt: e.lengthFt, on: e.on })
      if (p.stage === 'filling' || p.stage === 'planned' || p.stage === 'sealed') {
        p.stage = 'sealed'
        p.sealedOn = e.on
      }
    }
    if (e.material === 'mesh') p.mesh = true
    if (e.material === 'tires') p.tires += e.count ?? 0
    if (e.material === 'gravel bags') p.bags += e.count ?? 0
  } else if (e.change === 'off') {
    if (sheet) {
      const at = p.sheets.findLastIndex(s => s.material === e.material)
      if (at >= 0) p.sheets.splice(at, 1)
    }
    if (e.material === 'mesh') p.mesh = false
    if (e.material === 'tires') p.tires = e.count === undefined ? 0 : Math.max(0, p.tires - e.count)
    if (e.material === 'gravel bags') p.bags = e.count === undefined ? 0 : Math.max(0, p.bags - e.count)
  }
}

const closeDamage = (p: PileState, e: EventOf<'patch'>): void => {
  let left = e.count ?? Number.POSITIVE_INFINITY
  const here = p.open.filter(o => !e.where || o.told.event.where === e.where)
  for (const o of here.length ? here : p.open) {
    const done = Math.min(left, o.left)
    o.left -= done
    left -= done
  }
  p.open = p.open.filter(o => o.left > 0)
}

const startFeeding = (p: PileState, on: Day): void => {
  if (p.stage === 'empty') return
  p.stage = 'feeding'
  p.openedOn ??= on
}

/** Adds one event to a pile's state. Events come in the order they happened. `from` tells the pile's side of a shift. */
export const addToPile = (p: PileState, t: Told, side: 'from' | 'to' = 'from'): void => {
  const e = t.event
  // An emptied pile that is filled again is a new one on the old slab.
  if (p.stage === 'empty' && (e.type === 'load' || (e.type === 'shift' && side === 'to'))) {
    const { name, alsoCalled, planned, wallFt } = p
    Object.assign(p, newPile(name), {
      alsoCalled,
      planned,
      wallFt,
      measured: undefined,
      sealedOn: undefined,
      openedOn: undefined,
      emptyOn: undefined,
      face: undefined,
      lastCheck: undefined,
    })
  }
  switch (e.type) {
    case 'pile':
      p.alsoCalled = [...new Set([...p.alsoCalled, ...(e.alsoCalled ?? [])])]
      p.planned = { ...p.planned, ...pick(e, ['widthFt', 'lengthFt', 'heightFt']) }
      if (e.wallFt !== undefined) p.wallFt = e.wallFt
      break
    case 'load':
      p.loads.push(t as Told<'load'>)
      if (p.stage === 'planned' || p.stage === 'sealed') p.stage = 'filling'
      break
    case 'pack':
      p.packs.push(t as Told<'pack'>)
      break
    case 'size':
      p.measured = { ...p.measured, ...pick(e, ['widthFt', 'lengthFt', 'heightFt', 'topWidthFt']), on: e.on }
      break
    case 'cover':
      addCover(p, t as Told<'cover'>)
      break
    case 'damage':
      p.damages.push(t as Told<'damage'>)
      p.open.push({ told: t as Told<'damage'>, left: e.count ?? 1 })
      break
    case 'patch':
      p.patches.push(t as Told<'patch'>)
      closeDamage(p, e)
      break
    case 'check':
      p.checks.push(t as Told<'check'>)
      p.lastCheck = e.on
      break
    case 'open':
      p.opens.push(t as Told<'open'>)
      if (e.why === 'feed') startFeeding(p, e.on)
      else if (p.stage === 'sealed') p.stage = 'filling'
      break
    case 'feed':
      p.feeds.push(t as Told<'feed'>)
      startFeeding(p, e.on)
      break
    case 'face': {
      p.faces.push(t as Told<'face'>)
      startFeeding(p, e.on)
      const length = lengthOf(p)
      const atFt = e.atFt ?? (length === undefined ? undefined : Math.max(0, length - (e.leftFt ?? 0)))
      if (atFt !== undefined) p.face = { atFt, on: e.on }
      break
    }
    case 'spoil':
      p.spoils.push(t as Told<'spoil'>)
      break
    case 'shift':
      if (side === 'to') {
        p.shiftsIn.push(t as Told<'shift'>)
        if (p.stage === 'planned') p.stage = 'filling'
      } else p.shiftsOut.push(t as Told<'shift'>)
      break
    case 'empty':
      p.stage = 'empty'
      p.emptyOn = e.on
      p.sheets = []
      p.mesh = false
      p.tires = 0
      p.bags = 0
      p.open = []
      break
    case 'test':
      p.tests.push(t as Told<'test'>)
      break
    case 'ration':
      p.rations.push(t as Told<'ration'>)
      break
  }
}

const pick = <T extends object, K extends keyof T>(from: T, keys: K[]): Partial<Pick<T, K>> =>
  Object.fromEntries(keys.filter(k => from[k] !== undefined).map(k => [k, from[k]])) as Partial<Pick<T, K>>
