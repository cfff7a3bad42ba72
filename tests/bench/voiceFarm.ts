import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { Entry } from '../../src/book/entries.ts'
import { loadPrompts } from '../../src/edges/prompts.ts'
import { openStore } from '../../src/edges/store.ts'
import { answer, pilesFor } from '../../src/figures/asked/answer.ts'
import { type Core, makeCore } from '../../src/pipeline.ts'
import type { EventLog, Incoming, Result } from '../../src/ports.ts'
import { makeSayer } from '../../src/saying/say.ts'

/** An invented farm in September: one pile being filled with two feeds on it, one with haylage begun, one fed from, one under plastic. */
const SETUP = [
  'new pile called quarry, 40 by 130',
  'new pile called ridge, 36 by 120',
  'new pile called willow, 30 by 90',
  'new pile called loma, 34 by 100',
  'put 60 loads haylage on ridge',
  'covered ridge with a 50x130 plastic and 200 tires',
  'opened ridge to feed',
  'put 40 loads corn on willow',
  'covered willow with a 40x100 plastic and 180 tires',
  'put 3 loads corn on quarry',
  'put 2 loads haylage on quarry',
  'put 2 loads haylage on loma',
  'put 2 loads corn on loma',
  'fed 10,000 lb off ridge',
  'milking 110',
]
const FROM = Date.parse('2026-09-14T14:00:00Z')

const logOf = (entries: Entry[]): EventLog => ({
  farms: () => ['home'],
  entries: () => [...entries],
  take: () => ({ fresh: true }),
  settle: () => undefined,
  append: () => undefined,
  unsettled: () => [],
  close: () => undefined,
})
const say = makeSayer(loadPrompts())
const coreOn = (log: EventLog): Core => makeCore({ log, zone: 'America/Chicago', say, answer, pilesFor, firstOwns: true })

const made = (): Entry[] => {
  const folder = mkdtempSync(join(tmpdir(), 'pilehand-voice-farm-'))
  const store = openStore(folder, { passing: true })
  try {
    const core = coreOn(store)
    SETUP.forEach((text, k) => {
      const r = core.handle(message(text, k - 300))
      if (r.outcome !== 'recorded') throw new Error(`${text}: ${r.outcome}: ${r.replies[0]?.text}`)
    })
    return store.entries('home')
  } finally {
    store.close()
    rmSync(folder, { recursive: true, force: true })
  }
}
let kept: Entry[] | undefined

export const message = (text: string, minute: number, more: Partial<Incoming> = {}): Incoming => ({
  channel: 'lines',
  farm: 'home',
  chat: 'lea',
  private: true,
  from: 'lea',
  id: `m${minute}`,
  edit: '',
  at: new Date(FROM + minute * 60_000).toISOString(),
  text,
  ...more,
})

/** The farm, as often as it is wanted: each has its own book. */
export const farm = (): { core: Core; tell(text: string, more?: Partial<Incoming>): Result } => {
  kept ??= made()
  const core = coreOn(logOf(kept))
  let n = 600
  return { core, tell: (text, more) => core.handle(message(text, ++n, more)) }
}
