import type { Body } from '../book/entries.ts'
import type { Event } from '../book/events.ts'
import type { Choice, Datum, Draft, Message } from '../book/questions.ts'
import type { Reading } from '../reading/reading.ts'
import { choice } from '../saying/ask.ts'
import { joined, phrase } from '../saying/phrases.ts'
import type { Context } from './context.ts'
import { settle } from './settle.ts'
import { m, nothing, question, type Settled } from './settled.ts'

/** One wording of a voice note, read, with its weight. */
export interface Wording {
  text: string
  weight: number
  reading: Reading
}

/** Wordings that come to the same thing in the book. */
interface Sense {
  weight: number
  settled: Settled
  text: string
  /** Nothing in it was left unexplained. */
  plain: boolean
}

/** Share of the weight that a sense must have to be recorded unasked; below it the crew is asked. Set on the development half of the spoken notes. */
export const SURE = 0.92
/** A sense with less than this share is not offered. */
const OFFERED = 0.04
const MOST_OFFERED = 3
/** Weight of left-over words up to which a heard clause counts as plain. The recogniser bends what it does not know into words it knows. */
const LEFT = 1

const bare = (e: object): object => {
  const { said: _, by: __, id: ___, ...rest } = e as Record<string, unknown>
  return rest
}
const bodyKey = (b: Body): object =>
  b.kind === 'event'
    ? bare(b.event)
    : b.kind === 'ask'
      ? { asks: b.question.ask.code, slot: b.question.slot, drafts: b.question.drafts.map(d => ({ type: d.type, ...bare(d.slots) })) }
      : b

const keyOf = (s: Settled): string =>
  s.entries.length || s.asks.length
    ? JSON.stringify([s.entries.map(bodyKey), s.asks])
    : s.word && s.outcome !== 'puzzled' && s.outcome !== 'ignored'
      ? `word ${s.word.code}`
      : ''

/** Frames that stand on a pile, said or taken for granted. */
const ON_PILE = new Set(['load', 'pack', 'cover', 'damage', 'patch', 'check', 'feed', 'face', 'spoil', 'shift'])

/**
 * Nothing looks bent: no words left over, nothing half recorded and half asked, no second clause whose pile nobody named. That is
 * how a sentence looks whose words the recogniser did not know.
 */
const isPlainly = (r: Reading, s: Settled): boolean => {
  const facts = r.acts.filter(a => a.mood === 'fact')
  return (
    facts.every(a => a.left <= LEFT) &&
    !(s.recorded.length && s.question) &&
    !(facts.length > 1 && facts.some(a => ON_PILE.has(a.frame) && a.slots.pile === undefined))
  )
}

/** The senses of all wordings, heaviest first; those without a sense are left out. */
const sensesOf = (wordings: Wording[], c: Context): Sense[] => {
  const by = new Map<string, Sense>()
  for (const w of wordings) {
    const settled = settle(w.reading, { ...c, message: { ...c.message, text: w.text } })
    const key = keyOf(settled)
    if (!key) continue
    const plain = isPlainly(w.reading, settled)
    const s = by.get(key)
    if (s) {
      s.weight += w.weight
      s.plain ||= plain
    } else by.set(key, { weight: w.weight, settled, text: w.text, plain })
  }
  return [...by.values()].sort((a, b) => b.weight - a.weight)
}

const onlyEvents = (s: Settled): boolean => s.recorded.length > 0 && s.entries.every(e => e.kind === 'event' || e.kind === 'withdraw')

/** What a sense would record, as drafts: they are looked at again when one is picked. */
const draftsOf = (s: Settled): Draft[] => {
  const replaces = s.entries.flatMap(e => (e.kind === 'withdraw' ? [e.id] : []))
  return s.recorded.map((e, k) => {
    const { type, ...slots } = e as Event & Record<string, unknown>
    return { type, slots, sure: replaces.length ? ['twice'] : [], replaces: k === 0 ? replaces : [] }
  })
}

const saidOf = (s: Settled): Message => {
  const list = s.recorded.map(e => phrase(e as never))
  return list.length === 1 ? list[0]! : joined(list, 'and')
}

/** The one slot in which single events of one type differ. */
const differing = (list: Settled[]): string | undefined => {
  const events = list.map(s =>
    s.recorded.length === 1 && !s.withdrawn.length ? (bare(s.recorded[0]!) as Record<string, unknown>) : undefined,
  )
  const first = events[0]
  if (!first || events.some(e => e === undefined || e.type !== first.type)) return undefined
  const keys = [...new Set(events.flatMap(e => Object.keys(e!)))].filter(k => new Set(events.map(e => JSON.stringify(e![k]))).size > 1)
  return keys.length === 1 && events.every(e => e![keys[0]!] !== undefined) ? keys[0] : undefined
}

/** Where a bare count means loads. */
const COUNTED_IN_LOADS = new Set<Event['type']>(['load', 'feed', 'spoil', 'shift'])

const drop: Choice = { label: choice.neverMind, act: 'drop' }

/** "7 loads or 11?": the candidates as choices, likeliest first. */
const asking = (list: Settled[], c: Context): Settled => {
  const slot = differing(list)
  const drafts = draftsOf(list[0]!)
  const out = nothing('asked')
  const value = (s: Settled): Message => {
    const e = s.recorded[0] as unknown as Record<string, Datum>
    if (slot === 'crop') return m('crop-said', { crop: e.crop! })
    const unit = e.unit ?? (slot === 'count' && COUNTED_IN_LOADS.has(s.recorded[0]!.type) ? 'load' : '')
    return m('heard-value', { slot: slot!, value: e[slot!]!, unit })
  }
  const ask =
    list.length === 1
      ? m('ask-heard-one', { what: saidOf(list[0]!) })
      : slot
        ? m('ask-heard-slot', { list: joined(list.map(value), 'or') })
        : m('ask-heard')
  const choices: Choice[] =
    list.length === 1
      ? [
          { label: choice.yes, act: 'take', value: drafts },
          { label: choice.no, act: 'drop' },
        ]
      : [...list.map((s): Choice => ({ label: slot ? value(s) : saidOf(s), act: 'take', value: draftsOf(s) })), drop]
  const q = question(c, { ask, choices, draft: drafts[0]!, ...(slot && list.length > 1 && { slot }) }, drafts)
  out.entries.push({ kind: 'ask', question: q })
  out.question = q
  return out
}

/**
 * Settles a voice note: every wording that it may have had is settled by itself, and where they don't come to the same thing
 * with enough weight, nothing is recorded and the crew is asked which it was.
 */
export const settleHeard = (wordings: Wording[], c: Context): Settled => {
  const senses = sensesOf(wordings, c)
  const top = senses[0]
  if (!top) return { ...nothing('puzzled', m('voice-unclear')), heard: wordings[0]?.text }
  const plainly = { ...top.settled, heard: top.text }
  // what is missing from 1 was heard as nothing that makes sense
  const total = Math.max(
    1,
    wordings.reduce((t, w) => t + w.weight, 0),
  )
  const changes = top.settled.entries.length > 0
  if (!changes && top.weight >= total / 2) return plainly
  if (changes && top.weight >= SURE * total && top.plain) return plainly
  const offered = senses.filter(s => onlyEvents(s.settled) && s.weight >= OFFERED * total).slice(0, MOST_OFFERED)
  // what can't be put as a choice (an answer, a setting, a question of its own) is better said again
  if (!offered.length || offered[0]!.weight < top.weight / 2)
    return changes && top.settled.outcome !== 'asked' ? { ...nothing('asked', m('voice-again')), heard: top.text } : plainly
  return {
    ...asking(
      offered.map(s => s.settled),
      c,
    ),
    heard: offered[0]!.text,
  }
}

/** Settles a message by what came with it: typed words, or a voice note's wordings, which `read` reads. */
export const settleAny = (r: Reading, c: Context & { read: (text: string) => Reading }): Settled => {
  const note = c.message.heard
  if (!note) return settle(r, c)
  if (note.trouble) return nothing('refused', note.trouble)
  return settleHeard(
    note.wordings.map(w => ({ ...w, reading: w.text === c.message.text ? r : c.read(w.text) })),
    c,
  )
}
