import { createInterface, type Interface } from 'node:readline'
import type { Book } from '../book/book.ts'
import type { Incoming, Reply, Result } from '../ports.ts'
import type { Reading } from '../reading/reading.ts'
import type { Instant } from '../units/calendar.ts'
import { type Shown, shownBy, typed } from './choices.ts'

export const CHANNEL = 'console'
/** Whoever sits at the machine that keeps the book owns it. */
export const PERSON = 'me'

/** What the console asks of the house. All of it is synchronous. */
export interface ConsoleCore {
  handle(message: Incoming): Result
  tick(farm: string, channel: string, now: Instant): { replies: Reply[] }[]
  next(farm: string, now: Instant): Instant
  book(farm: string): Book
}

export interface ConsoleOptions {
  core: ConsoleCore
  farm: string
  /** The first words to somebody whose book has no pile yet. */
  hello: string
  input: NodeJS.ReadableStream & { isTTY?: boolean }
  output: NodeJS.WritableStream
  now?: () => Instant
  /** Sets the ids of this run's messages apart from those of every other run. */
  run: string
}

const LEAVE = /^(exit|quit|bye|salir|adi[oó]s)[.!]?$/i
/** However far off the next hour is, the clock is read again by then: a laptop that slept has missed its timer. */
const LOOK_MS = 60_000
/** A reply as lines of text; choices on a line of their own. */
const onScreen = (reply: Reply, shown: Shown | undefined): string => {
  const choices = reply.choices ?? []
  if (!choices.length) return `${reply.text}\n`
  return `${reply.text}\n  ${choices.map((c, k) => (shown?.numbered ? `${k + 1}) ${c}` : c)).join(shown?.numbered ? '  ' : ' · ')}\n`
}

/**
 * The assistant in a terminal: one line typed is one message, until Ctrl-D or "exit". Where the input is no terminal
 * its lines are answered one after the other, without a prompt. Resolves at the end of the input; rejects with the
 * store's fault where the book can not be kept.
 */
export const runConsole = (o: ConsoleOptions): Promise<void> => {
  const now = o.now ?? (() => new Date().toISOString())
  const live = o.input.isTTY === true
  const say = (text: string): void => void o.output.write(text)
  let shown: Shown | undefined
  let n = 0
  let timer: NodeJS.Timeout | undefined

  const show = (reply: Reply): void => {
    const asked = shownBy(reply, o.core.book(o.farm))
    if (asked) shown = asked
    say(onScreen(reply, asked))
  }
  /** What came due, said; true where there was something. */
  const due = (before = ''): boolean => {
    const replies = o.core.tick(o.farm, CHANNEL, now()).flatMap(d => d.replies)
    if (replies.length) say(before)
    for (const r of replies) show(r)
    return replies.length > 0
  }
  const take = (text: string): void => {
    const pick = typed(text, shown)
    const result = o.core.handle({
      channel: CHANNEL,
      farm: o.farm,
      chat: PERSON,
      private: true,
      from: PERSON,
      role: 'owner',
      id: `${o.run}-${++n}`,
      edit: '',
      at: now(),
      text: pick?.label ?? text,
      addressed: true,
      ...(pick && { pick: { question: pick.question, choice: pick.choice } }),
    })
    if (shown && !o.core.book(o.farm).questions.has(shown.question)) shown = undefined
    for (const r of result.replies) show(r)
    due()
  }

  return new Promise((resolve, reject) => {
    // A terminal that is only half one (output sent to a file) is read plainly, or its control codes would end up there.
    const lines: Interface = createInterface({
      input: o.input,
      ...(live && { output: o.output, prompt: '> ' }),
      crlfDelay: Number.POSITIVE_INFINITY,
    })
    let fault: unknown
    // A closed interface still hands over the lines that came in the same piece of input.
    let left = false
    const leave = (): void => {
      left = true
      lines.close()
    }
    const guarded = (work: () => void): void => {
      try {
        work()
      } catch (error) {
        fault ??= error
        leave()
      }
    }
    const watch = (): void => {
      const wait = Math.min(LOOK_MS, Math.max(1000, Date.parse(o.core.next(o.farm, now())) - Date.parse(now())))
      timer = setTimeout(() => {
        guarded(() => {
          if (due(live ? '\n' : '') && live) lines.prompt(true)
          watch()
        })
      }, wait)
      timer.unref()
    }
    lines.on('line', text => {
      if (left) return
      if (LEAVE.test(text.trim())) return leave()
      guarded(() => {
        if (text.trim()) take(text)
        if (live) lines.prompt()
      })
    })
    lines.on('close', () => {
      clearTimeout(timer)
      if (fault === undefined && live) say('\n')
      if (fault === undefined) resolve()
      else reject(fault)
    })
    guarded(() => {
      if (!o.core.book(o.farm).byType.get('pile')?.length) say(`${o.hello}\n`)
      due()
      watch()
      if (live) lines.prompt()
    })
  })
}

const slotsOf = (slots: Record<string, unknown>): string =>
  Object.entries(slots)
    .filter(([, v]) => v !== undefined)
    .map(([k, v]) => `${k} ${typeof v === 'object' ? JSON.stringify(v) : String(v)}`)
    .join(', ')

/** Only a fact is logged; what else a clause can be, in words. */
const MOODS: Record<string, string> = {
  fact: '',
  question: 'a question',
  plan: 'a plan, not logged',
  hope: 'a hope, not logged',
  denial: 'denied, not logged',
  if: 'a condition, not logged',
  order: 'an order to somebody, not logged',
  hearsay: 'hearsay, not logged',
}

/** How a sentence is read, in plain text: what it comes to, then the steps to it. */
export const explained = (r: Reading): string => {
  const out = [`Language: ${r.lang === 'es' ? 'Spanish' : 'English'}`]
  for (const a of r.acts) {
    const notes = [
      MOODS[a.mood],
      a.vague && 'the amount is vague, it will be asked for',
      a.strange && `no pile is called "${a.strange}", it will be asked about`,
      a.slip && 'a name was taken in spite of a slip',
    ]
    out.push(`Tells: ${a.frame}${slotsOf(a.slots) && `: ${slotsOf(a.slots)}`}${a.date ? `, on ${a.date.past}` : ''}`)
    for (const n of notes) if (n) out.push(`  ${n}`)
    if (a.leftWords.length) out.push(`  not understood: ${a.leftWords.join(', ')}`)
  }
  for (const a of r.asks) out.push(`Asks: ${a.about}${slotsOf(a.slots) && `: ${slotsOf(a.slots)}`}`)
  if (r.fix) out.push(`Changes an earlier message: ${r.fix.kind}${slotsOf(r.fix.slots) && `: ${slotsOf(r.fix.slots)}`}`)
  if (out.length === 1) out.push('Tells and asks nothing by itself; it may answer a question that is open.')
  return `${[...out, 'Step by step:', ...r.trace.map(t => `  ${t}`)].join('\n')}\n`
}
