import { mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { Entry } from '../../src/book/entries.ts'
import { loadPrompts } from '../../src/edges/prompts.ts'
import { openStore } from '../../src/edges/store.ts'
import { answer, pilesFor } from '../../src/figures/asked/answer.ts'
import { makeCore } from '../../src/pipeline.ts'
import type { Result } from '../../src/ports.ts'
import { makeSayer } from '../../src/saying/say.ts'
import { type Case, judge, type Said, type Verdict } from './scorer.ts'

const ZONE = 'America/Chicago'
/** When a line is sent that does not say when: one a minute, on the day of the farm's last line. */
export const sentAt = (l: Said, k: number): string => l.at ?? `2026-09-14T13:${30 + k}:00-05:00`

export const linesOf = <T>(path: string): T[] =>
  readFileSync(path, 'utf8')
    .split('\n')
    .filter(l => l.trim())
    .map(l => JSON.parse(l) as T)

export interface Played {
  verdict: Verdict
  /** What was wanted, what came, and how the last line was read. */
  report: () => string
}

export interface Stage {
  /** Tells a farm's own lines; gives the texts that were not recorded. */
  raise(farm: string, lines: (Said & { at: string })[]): string[]
  /** A farm's log after its own lines. */
  told(farm: string): Entry[]
  /** Plays a case on a farm of its own that begins with the log of `farm`: farms share nothing, and a book is the fold of its log. */
  play(farm: string, id: string, c: Case): Played
  close(): void
}

/** The house on a store of its own, as the line channel drives it, without the clock between two lines. */
export const openStage = (): Stage => {
  const folder = mkdtempSync(join(tmpdir(), 'pilehand-corpora-'))
  const store = openStore(folder, { passing: true })
  const core = makeCore({ log: store, zone: ZONE, say: makeSayer(loadPrompts()), answer, pilesFor, firstOwns: true })
  const told = new Map<string, Entry[]>()
  const hear = (farm: string, l: Said, at: string, k: number): Result => {
    const chat = l.chat ?? l.from
    const id = String(l.id ?? `line-${k}`)
    return core.handle({
      channel: 'lines',
      farm,
      chat,
      private: chat === l.from,
      from: l.from,
      role: l.role,
      id,
      edit: l.edits === undefined ? '' : id,
      at: new Date(at).toISOString(),
      text: l.text,
      ...(l.edits === undefined ? {} : { edits: String(l.edits) }),
      ...(l.replyTo === undefined ? {} : { replyTo: String(l.replyTo) }),
      ...(/\bpilehand\b/i.test(l.text) ? { addressed: true } : {}),
    })
  }
  return {
    raise: (farm, lines) => {
      const unheard = lines.filter((l, k) => hear(farm, l, l.at, -1 - k).outcome !== 'recorded').map(l => l.text)
      told.set(farm, store.entries(farm))
      return unheard
    },
    told: farm => told.get(farm) ?? [],
    play: (farm, id, c) => {
      const own = `${farm} ${id}`
      store.append(own, 'lines', told.get(farm)!, [])
      let result: Result | undefined
      for (const [k, l] of c.lines.entries()) result = hear(own, l, sentAt(l, k), k)
      const last = c.lines.at(-1)!
      const at = sentAt(last, c.lines.length - 1)
      const verdict = judge(c, result as unknown as Parameters<typeof judge>[1], at.slice(0, 10))
      const report = (): string => {
        const { outcome, recorded, withdrawn, asks, replies } = result!
        const trace = core.explain(own, last.text, new Date(at).toISOString()).trace.map(t => `      ${t}`)
        return [
          `${verdict}  ${c.id}  ${c.lines.map(l => `${l.from}: ${l.text}`).join(' / ')}`,
          `    want ${JSON.stringify(c.expect)}`,
          `    got  ${JSON.stringify({ outcome, recorded, withdrawn, asks, replies: replies.map(r => r.text) })}`,
          ...trace,
        ].join('\n')
      }
      return { verdict, report }
    },
    close: () => {
      store.close()
      rmSync(folder, { recursive: true, force: true })
    },
  }
}
