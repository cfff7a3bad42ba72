import type { Ask } from '../book/asks.ts'
import type { Event } from '../book/events.ts'
import type { Choice, Draft, Message } from '../book/questions.ts'
import type { Act, AskSaid, Reading } from '../reading/reading.ts'
import { askAmount, askInAll, askMeant, choice } from '../saying/ask.ts'
import { joined, phrase } from '../saying/phrases.ts'
import { certain } from './certain.ts'
import type { Context, Need } from './context.ts'
import { likelyOf } from './counts.ts'
import { draftOf } from './draft.ts'

import { ask, clear, m, nothing, question, record, type Settled } from './settled.ts'
import { unread } from './unread.ts'

/** Words beyond which a message in the group that records nothing is talk. */
export const LONGEST = 60
/** Weight of a clause that stands whole by itself: a deed, an amount and a pile. */
const WHOLE = 6

/** Told twice in one message, they are one: "shop empty. thats all of it". */
const ONCE = new Set(['empty', 'open', 'check', 'weather', 'face'])

/** What is told: certain clauses are recorded, the first uncertain one is asked about. */
export const told = (r: Reading, c: Context, replaces: string[]): Settled => {
  const facts = r.acts.filter(a => a.mood === 'fact')
  const loud = c.message.private || c.message.addressed
  // a long tale in the group, most of which is about something else: only what stands in it whole is told, not that it hails in it
  const aside = !loud && r.words > LONGEST && r.chatter
  const usable = facts.filter(a => clear(a) && !(r.chatter && !a.full) && !(aside && (a.left > 0 || a.used < WHOLE)))
  const out = nothing('ignored')
  const needs: { need: Need; act: Act }[] = []
  const doubtful: Act[] = []
  for (const a of facts) {
    if (!usable.includes(a)) {
      if (a.full || a.vague) doubtful.push(a)
      continue
    }
    if (r.chatter && a.used < 5) continue
    if (redundant(a, facts)) continue
    const d = draftOf(a, c)
    d.replaces = out.recorded.length || needs.length ? [] : replaces
    if (a.more) d.sure.push('more')
    const now = out.recorded.reduce((t, e) => t + (e.type === a.frame && 'count' in e ? (e.count ?? 0) : 0), 0)
    const total = a.total && a.frame in IN_ALL ? inAll(d, c, now) : undefined
    if (total === 'told') continue
    if (total) {
      needs.push({ need: total, act: a })
      continue
    }
    if (a.vague && amountSlots(a).length === 0) {
      for (const k of ['count', 'lb', 'ft']) delete d.slots[k]
    } else if (a.vague && a.frame !== 'damage' && a.frame !== 'patch')
      for (const k of ['count', 'lb', 'ft']) if (k in d.slots) delete d.slots[k]
    if (a.vague && a.frame === 'cover' && d.slots.count === undefined) {
      needs.push({ need: countOf(d, c), act: a })
      continue
    }
    if (a.vague && a.frame === 'shift' && a.slots.pile !== undefined && amountSlots(a).length === 0) {
      needs.push({ need: { slot: 'amount', ask: askAmount('shift', a.slots.pile as string), choices: [], draft: d }, act: a })
      continue
    }
    // "covered it with a 50x140 and 260 tires": one deed, one pile
    const same = out.recorded.at(-1)
    if (a.frame === 'cover' && d.slots.pile === undefined && !a.strange && same?.type === 'cover') d.slots.pile = same.pile
    // "new pile called north, 40 by 110. put 4 loads on north already"
    const fresh = out.recorded.find(e => e.type === 'pile' && e.name === a.strange)
    if (fresh) d.slots.pile = a.strange
    const s = certain(c, d, fresh ? undefined : a.strange)
    if ('event' in s && out.recorded.some(e => ONCE.has(e.type) && JSON.stringify(e) === JSON.stringify(s.event))) continue
    if ('event' in s) record(out, s.event, d, c)
    else needs.push({ need: s.need, act: a })
  }
  // in a group, half-sentences about nothing in particular are talk
  const real = needs
    .filter(n => n.act.used >= 3 || loud)
    .filter(
      n =>
        loud ||
        n.act.full ||
        n.act.left === 0 ||
        n.act.slots.pile !== undefined ||
        n.act.slots.crop !== undefined ||
        n.act.strange !== undefined,
    )
    .filter(n => !(r.chatter && !loud && !n.act.full && n.act.strange === undefined && n.act.used < 5))
  // a long tale in the group is not asked about
  const tale = !loud && r.words > LONGEST && !out.recorded.length
  if (real.length && !tale)
    ask(
      out,
      real.map(n => n.need),
      c,
    )
  if (!out.recorded.length && !real.length && !tale && doubtful.length && (loud || !r.chatter)) {
    const drafts = doubtful.map(a => draftOf(a, c))
    const ready = drafts.map(d => certain(c, d)).filter(x => 'event' in x)
    if (ready.length && doubtful[0]!.used >= 5) {
      const d = drafts[0]!
      const q = question(
        c,
        {
          ask: askMeant(saidOf(drafts)),
          choices: [
            { label: choice.yes, act: 'sure' },
            { label: choice.no, act: 'drop' },
          ],
          draft: d,
        },
        drafts,
      )
      out.entries.push({ kind: 'ask', question: q })
      out.question = q
    }
  }
  if (r.asks.length && out.recorded.length) out.asks = r.asks.map(a => askOf(a, c))
  if (out.recorded.length) out.outcome = 'recorded'
  else if (out.question) out.outcome = 'asked'
  else return unread(r, c)
  return out
}

/** A second reader's guess: asked about whole, never recorded by itself. Undefined where it makes no event. */
export const guessed = (acts: Act[], c: Context): Settled | undefined => {
  if (c.role === 'viewer' || c.role === 'stranger') return undefined
  const drafts = acts.map(a => draftOf(a, c))
  const first = drafts[0]
  if (!first || !drafts.every(d => 'event' in certain(c, { ...d, slots: { ...d.slots } }))) return undefined
  const out = nothing('asked')
  const q = question(
    c,
    {
      ask: askMeant(saidOf(drafts)),
      choices: [
        { label: choice.yes, act: 'sure' },
        { label: choice.no, act: 'drop' },
      ],
      draft: first,
    },
    drafts,
  )
  out.entries.push({ kind: 'ask', question: q })
  out.question = q
  return out
}

/** All that would be recorded, in words. */
const saidOf = (drafts: Draft[]): Message => {
  const list = drafts.map(d => phrase({ type: d.type, ...d.slots } as never))
  return list.length === 1 ? list[0]! : joined(list, 'and')
}

const amountSlots = (a: Act): string[] => ['count', 'lb', 'ft'].filter(k => a.slots[k] !== undefined)

/** "Walked barn, two holes" is the damage alone; weather told only to explain damage may stand. */
const redundant = (a: Act, facts: Act[]): boolean => {
  if (a.frame === 'check' && a.slots.finding !== 'good') return facts.some(b => b !== a && (b.frame === 'damage' || b.frame === 'patch'))
  return false
}

/** Kinds that are told in all, with what must be the same for the counts to be of one thing. */
const IN_ALL: Partial<Record<string, readonly string[]>> = { load: ['crop'], feed: ['unit'], cover: ['material', 'change'], patch: [] }

/** "12 loads in all" where some are logged already; `told` where it is the sum of those and the `now` of its kind in this same message. */
const inAll = (d: Draft, c: Context, now: number): Need | 'told' | undefined => {
  const s = certain(c, { ...d, slots: { ...d.slots }, sure: [...d.sure, 'twice'] })
  if (!('event' in s)) return undefined
  const e = s.event as Event & Record<string, unknown>
  const same = IN_ALL[e.type]
  if (!same || typeof e.count !== 'number' || typeof e.pile !== 'string') return undefined
  let logged = 0
  for (const l of c.book.byPile.get(e.pile) ?? []) {
    const was = l.event as Event & Record<string, unknown>
    // a cover is laid over days
    const day = e.type === 'cover' || was.on === e.on
    if (l.withdrawnBy === undefined && was.type === e.type && day && same.every(k => was[k] === e[k])) logged += Number(was.count ?? 0)
  }
  if (now && e.count === logged + now) return 'told'
  if (!logged) return undefined
  const rest = e.count - logged
  d.slots = { ...d.slots, pile: e.pile, ...(e.crop !== undefined && { crop: e.crop }) }
  const choices: Choice[] = [
    ...(rest > 0 ? [{ label: choice.inAll(e.count), act: 'fill', value: rest } as Choice] : []),
    { label: choice.moreOf(e.count), act: 'sure' },
    { label: choice.neverMind, act: 'drop' },
  ]
  return { ask: askInAll(logged, e.count), choices, slot: 'count', draft: { ...d, sure: [...d.sure, 'twice'] }, doubt: 'total' }
}

const countOf = (d: Draft, c: Context): Need => {
  const s = certain(c, d)
  if ('need' in s) return s.need
  const choices = likelyOf(c, 'cover', { material: d.slots.material }).map((n): Choice => ({ label: String(n), act: 'fill', value: n }))
  return { slot: 'count', ask: m('ask-slot-generic', { slot: 'count' }), choices, draft: d }
}

/** Which question the figures answer, with its days by the calendar. */
export const askOf = (a: AskSaid, c: Context): Ask => {
  const { date, ...slots } = a.slots as AskSaid['slots'] & { date?: { past: string; future: string; span?: { from: string; to: string } } }
  const out: Ask = { about: a.about as Ask['about'], ...(slots as Partial<Ask>) }
  if (date) {
    if (a.about === 'reach') out.until = date.future
    else {
      out.from = date.span?.from ?? date.past
      out.to = date.span?.to ?? date.past
    }
  } else if (a.about === 'loads' && /\b(today|hoy|so far|llevamos)\b/i.test(c.message.text)) {
    out.from = c.day
    out.to = c.day
  }
  return out
}
