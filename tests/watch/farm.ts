import { apply, type Book, foldBook } from '../../src/book/book.ts'
import type { Body, Entry } from '../../src/book/entries.ts'
import { checkEvent, type Event } from '../../src/book/events.ts'
import type { Role } from '../../src/ports.ts'
import { instantOf, localDay } from '../../src/units/calendar.ts'
import { type DueItem, due, type WatchFigures } from '../../src/watch/due.ts'

export const ZONE = 'America/New_York'
type Slots = { type: string; on?: string } & Record<string, unknown>

/** A made-up farm whose log is written line by line, as "day hour" of its own clock. */
export class Farm {
  readonly book: Book = foldBook([])
  readonly zone: string
  /** The log as it was written, to be folded again. */
  readonly entries: Entry[] = []
  private n = 0
  constructor(zone = ZONE) {
    this.zone = zone
    this.member('ada', 'owner')
    this.member('lenny', 'crew')
  }
  at(when: string): string {
    if (when.endsWith('Z')) return new Date(when).toISOString()
    const [day, time = '12:00'] = when.split(' ') as [string, string?]
    return instantOf(day, time, this.zone)
  }
  private put(at: string, by: string, body: Body): void {
    const entry: Entry = { v: 1, n: ++this.n, at, by, body }
    this.entries.push(entry)
    apply(this.book, entry)
  }
  /** Records events at a moment; the id of the last comes back. `on` is that day unless it is given. */
  told(when: string, by: string, ...events: Slots[]): string {
    const at = this.at(when)
    let id = ''
    for (const slots of events) {
      const checked = checkEvent({ on: localDay(at, this.zone), ...slots })
      if (!checked.ok) throw new Error(JSON.stringify(checked.data))
      id = `e${this.n + 1}`
      this.put(at, by, { kind: 'event', id, event: checked.event as Event })
    }
    return id
  }
  back(when: string, id: string): void {
    this.put(this.at(when), 'ada', { kind: 'withdraw', id, why: 'undo' })
  }
  set(name: string, value: string | number | boolean): this {
    this.put(this.at('2026-01-01'), 'ada', { kind: 'setting', name, value })
    return this
  }
  member(person: string, role: Role, name?: string): this {
    this.put(this.at('2026-01-01'), 'ada', { kind: 'member', person, role, address: person, ...(name && { name }) })
    return this
  }
  said(when: string, key: string): void {
    this.put(this.at(when), 'clock', { kind: 'said', key })
  }
  /** Marks what was said, as the clock does. */
  sayAll(when: string, items: DueItem[]): void {
    for (const i of items) {
      for (const key of [i.key, ...(i.also ?? [])]) this.said(when, key)
      for (const question of i.lapses ?? []) this.put(this.at(when), 'clock', { kind: 'close', question, how: 'lapsed' })
    }
  }
  /** What is due at a moment; nothing is marked. */
  due(when: string, figures: WatchFigures = {}): DueItem[] {
    return due(this.book, { at: this.at(when), zone: this.zone }, figures)
  }
  /** What is due at a moment, and said. */
  tick(when: string, figures: WatchFigures = {}): DueItem[] {
    const items = this.due(when, figures)
    this.sayAll(when, items)
    return items
  }
}

export const codes = (items: DueItem[]): string[] =>
  items.flatMap(i => (Array.isArray(i.message) ? i.message : [i.message])).map(m => m.code)
export const keys = (items: DueItem[]): string[] => items.map(i => i.key)
export const FED: WatchFigures = {
  daysLeft: () => ({ days: 42, low: 36, high: 49, runsOut: '2026-12-20' }),
  faceRate: () => ({ inPerDay: 7, minInPerDay: 3, enough: true }),
}

export const lines = (item: DueItem) => (Array.isArray(item.message) ? item.message : [item.message])

/** Random words of a crew over some weeks, as seeds for `play`. */
export interface Act {
  /** Hours since the last. */
  wait: number
  what: number
  pile: number
}
const NAMES = ['alder', 'birch', 'cedar']

/** Says one act of a crew at an instant; whatever comes out is a valid event, however odd its order. */
export const play = (f: Farm, at: string, { what, pile }: Act): void => {
  const name = NAMES[pile % NAMES.length]!
  const on = localDay(at, f.zone)
  const yesterday = new Date(Date.parse(on) - 86_400_000).toISOString().slice(0, 10)
  const list: Slots[] = [
    { type: 'pile', name, widthFt: 30, lengthFt: 90, heightFt: 8 },
    { type: 'load', pile: name, crop: 'corn silage', count: 6 },
    { type: 'cover', pile: name, material: 'plastic', change: 'on' },
    { type: 'cover', pile: name, material: 'tires', change: 'on', count: 300 },
    { type: 'cover', pile: name, material: 'plastic', change: 'back', ft: 4 },
    { type: 'check', pile: name, finding: 'good' },
    { type: 'check', pile: 'all', finding: 'good' },
    { type: 'damage', pile: name, cause: 'animal', animal: 'raccoon', count: 2 },
    { type: 'damage', pile: name, cause: 'hail', what: 'tear', on: yesterday },
    { type: 'patch', pile: name, count: 1 },
    { type: 'patch', pile: name },
    { type: 'weather', kind: 'hail', inches: 1, on: yesterday },
    { type: 'weather', kind: 'hail' },
    { type: 'weather', kind: 'wind', mph: 50 },
    { type: 'weather', kind: 'freeze', degF: 18 },
    { type: 'weather', kind: 'thaw' },
    { type: 'open', pile: name, why: 'feed' },
    { type: 'open', pile: name, why: 'add' },
    { type: 'feed', pile: name, lb: 6000 },
    { type: 'face', pile: name, atFt: 12 },
    { type: 'empty', pile: name },
    { type: 'pack', pile: name, tractors: 1, tractorLb: 20000 },
    { type: 'harvest', crop: 'corn silage', on: new Date(Date.parse(on) + 20 * 86_400_000).toISOString().slice(0, 10) },
    { type: 'remind', about: 'order tape', on: new Date(Date.parse(on) + 2 * 86_400_000).toISOString().slice(0, 10) },
    { type: 'remind', about: 'grease the blade', every: 'week', time: '16:30' },
  ]
  const slots = list[what % (list.length + 1)]
  if (slots) f.told(at, pile % 2 ? 'lenny' : 'ada', slots)
  else {
    const last = f.book.logged.findLast(l => l.withdrawnBy === undefined)
    if (last) f.back(at, last.id)
  }
}
