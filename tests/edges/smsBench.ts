import { createHmac, randomBytes } from 'node:crypto'
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { pino } from 'pino'
import { afterEach } from 'vitest'
import { FARM, type House, openHouse } from '../../src/compose.ts'
import { runSms, type SmsOptions, type SmsRun } from '../../src/edges/sms.ts'

/** Numbers set aside for stories (North American Numbering Plan: 555-0100 to 555-0199). */
export const NORA = '+16085550142'
export const EVAN = '+16085550143'
export const NOBODY = '+16085550199'
export const OWNER_CODE = 'gate nine'
const ZONE = 'America/Chicago'

export interface Answer {
  status: number
  headers: Headers
  parts: string[]
  error?: string
  why?: string
}

/** A farm of its own behind a real door on loopback, over a real book in a folder of its own. */
export class SmsBench {
  readonly folder = mkdtempSync(join(tmpdir(), 'pilehand-sms-'))
  readonly secret = randomBytes(32).toString('hex')
  /** The house's clock; the door's too. */
  clock = '2026-09-14T15:00:00.000Z'
  house!: House
  run!: SmsRun
  port = 0
  more: Partial<SmsOptions> = {}
  private n = 0

  async open(more: Partial<SmsOptions> = this.more): Promise<this> {
    this.more = more
    this.house = openHouse({ data: this.folder, zone: ZONE }, { firstOwns: false, passing: true })
    const { core, say, store } = this.house
    this.run = runSms({
      handle: core.handle,
      book: () => core.book(FARM),
      say,
      log: store,
      folder: this.folder,
      secret: this.secret,
      host: '127.0.0.1',
      port: 0,
      ownerCode: OWNER_CODE,
      zone: ZONE,
      logger: pino({ level: 'silent' }),
      now: () => this.clock,
      retryMs: 20,
      ...more,
    })
    this.run.done.catch(() => undefined)
    this.port = await this.run.started
    return this
  }
  /** The process ends. */
  async shut(): Promise<void> {
    await this.run.stop()
    this.house.store.close()
  }
  async restart(): Promise<void> {
    await this.shut()
    await this.open()
  }
  async end(): Promise<void> {
    await this.shut().catch(() => undefined)
    rmSync(this.folder, { recursive: true, force: true })
  }

  get url(): string {
    return `http://127.0.0.1:${this.port}/sms`
  }
  now(seconds = 0): string {
    return String(Math.floor(Date.parse(this.clock) / 1000) + seconds)
  }
  later(minutes: number): void {
    this.clock = new Date(Date.parse(this.clock) + minutes * 60_000).toISOString()
  }
  /** By Node's own hash, apart from the code that is tested. */
  signature(time: string, body: string, secret = this.secret): string {
    return createHmac('sha256', secret).update(`${time}.${body}`, 'utf8').digest('hex')
  }
  headers(body: string, time = this.now()): Record<string, string> {
    return { 'content-type': 'application/json', 'pilehand-time': time, 'pilehand-signature': this.signature(time, body) }
  }
  async post(body: string, headers = this.headers(body), init: RequestInit = {}): Promise<Answer> {
    const response = await fetch(this.url, { method: 'POST', headers, body, ...init })
    const value = (await response.json()) as { parts?: string[]; error?: string; why?: string }
    return { status: response.status, headers: response.headers, ...value, parts: value.parts ?? [] }
  }
  /** One text message, as a gateway hands it over; the parts of its answer. */
  async text(from: string, text: string, more: Record<string, unknown> = {}): Promise<string[]> {
    const answer = await this.post(JSON.stringify({ from, text, id: `m${++this.n}`, ...more }))
    if (answer.status !== 200) throw new Error(`${answer.status} ${answer.why}`)
    return answer.parts
  }
  line(code: string, data: Record<string, string> = {}, lang: 'en' | 'es' = 'en'): string {
    return this.house.say({ code, data }, lang)
  }
  events(): string[] {
    return this.house.core
      .book(FARM)
      .logged.filter(l => l.withdrawnBy === undefined)
      .map(l => l.event.type)
  }
  entries(): number {
    return this.house.store.entries(FARM).length
  }
  /** What fell due by the bench's clock. */
  tick(): number {
    const due = this.house.core.tick(FARM, 'telegram', this.clock)
    this.run.wake()
    return due.length
  }
}

export const useBench = (): (() => Promise<SmsBench>) => {
  const open: SmsBench[] = []
  afterEach(async () => {
    for (const b of open.splice(0)) await b.end()
  })
  return async () => {
    const b = new SmsBench()
    open.push(b)
    return await b.open()
  }
}
