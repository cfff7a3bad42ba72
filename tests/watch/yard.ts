import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { type House, openHouse } from '../../src/compose.ts'
import { type LineReader, lineReader } from '../../src/edges/lines.ts'
import type { Due, Reply, Result } from '../../src/ports.ts'
import { instantOf } from '../../src/units/calendar.ts'

/** What came by itself: when it was said, to whom, and its words. */
export interface Came extends Reply {
  at: string
}

/** A made-up farm behind the line channel, over a real book in a folder of its own; ada owns it. */
export class Yard {
  readonly zone: string
  readonly folder: string
  house!: House
  private reader!: LineReader
  private runs = 0
  private id = 0
  /** All that came by itself, oldest first. */
  readonly came: Came[] = []
  constructor(zone = 'America/New_York') {
    this.zone = zone
    this.folder = mkdtempSync(join(tmpdir(), 'pilehand-yard-'))
    this.open()
  }
  private open(): void {
    this.house = openHouse({ data: this.folder, zone: this.zone }, { firstOwns: true, passing: true })
    this.reader = lineReader(this.house.core, `run${++this.runs}`)
  }
  /** The process ends and begins anew. */
  restart(): void {
    this.house.store.close()
    this.open()
  }
  close(): void {
    this.house.store.close()
    rmSync(this.folder, { recursive: true, force: true })
  }
  /** "day hour" by the farm's clock, or an instant. */
  at(when: string): string {
    if (when.endsWith('Z')) return when
    const [day, time = '12:00'] = when.split(' ') as [string, string?]
    return instantOf(day, time, this.zone)
  }
  /** One message; `who@chat` writes in a group. What came due before and after it is kept in `came`. */
  say(when: string, who: string, text: string, more: Record<string, unknown> = {}): Partial<Result> & { text: string } {
    const [from, chat] = who.split('@') as [string, string?]
    const at = this.at(when)
    let own: Partial<Result> | undefined
    for (const o of this.reader.take(JSON.stringify({ at, from, ...(chat && { chat }), id: ++this.id, text, ...more }))) {
      if ('due' in o) this.keep(o)
      else if ('error' in o) throw new Error(o.error)
      else own = o
    }
    return { ...own, text: own?.replies?.map(r => r.text).join('\n') ?? '' }
  }
  /** A tap on what stands under a reply. */
  tap(when: string, who: string, question: string | undefined, choice: number): Result {
    const [from, chat] = who.split('@') as [string, string?]
    const message = {
      channel: 'lines',
      farm: 'home',
      chat: chat ?? from,
      private: chat === undefined,
      from,
      id: `tap${++this.id}`,
      edit: '',
    }
    return this.house.core.handle({ ...message, at: this.at(when), text: 'tap', pick: { question: question ?? '', choice } })
  }
  private keep(due: Due, at = due.due): void {
    for (const r of due.replies) this.came.push({ at, ...r })
  }
  /** The clock goes on to `when` without a word, looking whenever something may be due. */
  until(from: string, when: string): Came[] {
    const before = this.came.length
    const end = this.at(when)
    let now = this.at(from)
    for (let next = this.house.core.next('home', now); next <= end; next = this.house.core.next('home', now)) {
      for (const d of this.house.core.tick('home', 'lines', next)) this.keep(d, next)
      now = next
    }
    return this.came.slice(before)
  }
  /** One look at the clock, however long after the last. */
  look(when: string): Came[] {
    const before = this.came.length
    for (const d of this.house.core.tick('home', 'lines', this.at(when))) this.keep(d, this.at(when))
    return this.came.slice(before)
  }
}
