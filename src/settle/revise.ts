import { eventsFrom, type Logged, nameOf } from '../book/book.ts'
import type { Body } from '../book/entries.ts'
import type { Event } from '../book/events.ts'
import type { Draft, Question } from '../book/questions.ts'
import type { Reading } from '../reading/reading.ts'
import { askMeant, askOthers, choice } from '../saying/ask.ts'
import { phrase } from '../saying/phrases.ts'
import { openQuestions } from './answer.ts'
import { certain } from './certain.ts'
import type { Context } from './context.ts'
import { corrected, recentHere, targets } from './correct.ts'

import { ask, clear, m, nothing, question, record, type Settled, withdraw } from './settled.ts'
import { told } from './told.ts'
import { unread } from './unread.ts'

/** The message as a correction of an earlier record. */
export const fixed = (r: Reading, c: Context): Settled | undefined => {
  const replied =
    c.message.replyTo !== undefined &&
    eventsFrom(c.book, { channel: c.message.channel, chat: c.message.chat, id: c.message.replyTo }).length > 0
  const fix = r.fix ?? (replied ? r.plain : undefined)
  if (!fix) return undefined
  // "no hail here" is a denial, not a correction
  if (fix.kind === 'change' && r.acts.some(a => a.mood === 'denial' && a.frame === 'weather')) return undefined
  const list = targets(c, fix)
  const yours = (l: Logged) => l.by === c.message.from || c.role === 'owner'
  if (fix.kind === 'undo') {
    const open = openQuestions(c).find(q => q.to === c.message.from)
    const newest = list.at(-1)
    if (open && (!newest || open.at > newest.at) && c.message.replyTo === undefined)
      return { ...nothing('answered', m('closed-question')), entries: [{ kind: 'close', question: open.id, how: 'dropped' }] }
    let some = list
    const wanted = Object.entries(fix.slots)
    if (wanted.length) {
      const match = list.filter(l =>
        wanted.every(([k, v]) => Object.values(l.event).includes(v as never) || (l.event as unknown as Record<string, unknown>)[k] === v),
      )
      if (match.length) some = match
    } else if (/\b(last one|el ultimo|la ultima|lo ultimo)\b/i.test(c.message.text) && c.message.replyTo === undefined && list.length > 1)
      some = list.slice(-1)
    if (!some.length) return nothing('answered', m('nothing-to-undo'))
    if (!some.every(yours)) return confirmed(some, [], c)
    const out = nothing('recorded')
    for (const l of some) withdraw(out, l, 'undo')
    return out
  }
  if (!list.length || (fix.among && list.length < 2)) return undefined
  const plain = r.acts.find(a => a.mood === 'fact' && a.full && clear(a))
  // "them 9 should have been 8": whoever told the 9
  const hit = corrected(list, fix, r) ?? (fix.named ? corrected(recentHere(c), fix, r) : undefined)
  if (!hit) return fix.named ? nothing('answered', m('nothing-to-fix')) : undefined
  // "thats 11 ton of haylage up on creek": a report of its own, where the one before was of another feed or in another unit
  const was = hit.was.event as unknown as Record<string, unknown>
  const own =
    plain?.frame === 'load' &&
    was.type === 'load' &&
    plain.slots.pile !== undefined &&
    plain.slots.crop !== undefined &&
    (plain.slots.crop !== was.crop || (plain.slots.lb !== undefined && was.lb === undefined))
  if (own && fix.strength < 2 && !Object.keys(fix.wrong).length && !/^(?:no|sorry|oops|perdon)/i.test(c.message.text)) return undefined
  const other = plain !== undefined && plain.frame !== hit.was.event.type && plain.frame !== 'load'
  // "3 holes, not 2": what was wrong is named, and it was told
  const denies = Object.keys(fix.wrong).length > 0
  if (other && !denies && (fix.strength < 2 || plain.slots.pile !== undefined)) return undefined
  // "ponle que fueron 4 botes de podrido": a whole report of another kind is no correction
  if (plain && plain.frame === 'spoil' && hit.was.event.type !== 'spoil' && hit.was.event.type !== 'feed') return undefined
  if (fix.slots.strange !== undefined && hit.was.event.type !== 'pile') return undefined
  if (!yours(hit.was)) return confirmed([hit.was], [hit.draft], c)
  // what went before was not understood: the correction may mean that, not the last record
  if (c.missed && c.message.replyTo === undefined) {
    const out = nothing('asked')
    ask(
      out,
      [
        {
          ask: askMeant(phrase({ type: hit.draft.type, ...hit.draft.slots } as never)),
          choices: [
            { label: choice.yes, act: 'sure' },
            { label: choice.no, act: 'drop' },
          ],
          draft: hit.draft,
        },
      ],
      c,
    )
    return out
  }
  const s = certain(c, hit.draft)
  const out: Settled = { ...nothing('recorded'), ...rootOf(hit.was, c) }
  if ('event' in s) record(out, s.event, hit.draft, c)
  else {
    ask(out, [s.need], c)
    out.outcome = 'asked'
  }
  return out
}

/** What somebody else recorded is changed only where they or the owner say so. */
export const confirmed = (was: Logged[], drafts: Draft[], c: Context): Settled => {
  const out = nothing('asked')
  const q: Question = {
    ...question(
      c,
      {
        ask: askOthers(nameOf(c.book, was[0]!.by), was.map(l => l.event) as never),
        choices: [
          { label: choice.yes, act: 'undo' },
          { label: choice.no, act: 'drop' },
        ],
        draft: drafts[0]!,
      },
      drafts,
    ),
    undo: was.map(l => l.id),
    needs: 'owner',
  }
  out.entries.push({ kind: 'ask', question: q })
  out.question = q
  return out
}

const same = (a: Event, b: Event): boolean => {
  const strip = ({ said: _, by: __, on, ...rest }: Event & { said?: string; by?: string }) =>
    JSON.stringify(
      Object.entries({ ...rest, on })
        .filter(([, v]) => v !== undefined)
        .sort(([x], [y]) => (x < y ? -1 : 1)),
    )
  return strip(a) === strip(b)
}

/** The record that a draft became once its question was answered. */
const completes = (l: Logged, d: Draft): boolean => {
  const e = l.event as unknown as Record<string, unknown>
  return (
    l.source?.raised !== undefined &&
    e.type === d.type &&
    Object.entries(d.slots).every(([k, v]) => k === 'said' || k === 'by' || v === undefined || e[k] === v)
  )
}

/** "6" made "7": the edited message had answered a question, and now answers it otherwise. */
const answerEdited = (r: Reading, c: Context, old: Logged[]): Settled | undefined => {
  const own = old.filter(l => l.source?.raised !== undefined && l.source.id === c.message.id)
  const hit = own.length && r.plain ? corrected(own, r.plain, r) : undefined
  const s = hit && certain(c, hit.draft)
  if (!s || !('event' in s)) return undefined
  const out: Settled = { ...nothing('recorded'), raised: hit.was.source!.raised }
  record(out, s.event, hit.draft, { ...c, message: { ...c.message, edits: c.message.id } })
  return out
}

/** The message that a record goes back to, where it was told in this chat. */
const rootOf = (l: Logged, c: Context): { raised?: string } => {
  const { source } = l
  return source?.chat === c.message.chat && source.channel === c.message.channel ? { raised: source.raised ?? source.id } : {}
}

/** An edited message: what it recorded before gives way to what it says now. */
export const edited = (r: Reading, c: Context): Settled => {
  const source = { channel: c.message.channel, chat: c.message.chat, id: c.message.edits! }
  const old = eventsFrom(c.book, source)
  const raised = [...c.book.questions.values()].filter(
    q => q.source.chat === c.message.chat && (q.source.id === c.message.edits || q.raised === c.message.edits),
  )
  const ctx: Context = { ...c, message: { ...c.message, edits: undefined } }
  const fresh = r.acts.some(a => a.mood === 'fact') || r.asks.length ? told(r, ctx, []) : unread(r, ctx)
  const closing: Body[] = raised.map(q => ({ kind: 'close', question: q.id, how: 'dropped' }))
  if (old.length === fresh.recorded.length && old.every((l, k) => same(l.event, { ...fresh.recorded[k]!, on: fresh.recorded[k]!.on }))) {
    return old.length || !fresh.question
      ? { ...nothing(old.length ? 'ignored' : fresh.outcome, old.length ? undefined : fresh.word), entries: closing, asks: fresh.asks }
      : { ...fresh, entries: [...closing, ...fresh.entries] }
  }
  // what its question was answered with does not stand in its words: as long as they deny nothing of it, it holds
  if (fresh.question && !fresh.recorded.length && fresh.question.drafts.every(d => old.some(l => completes(l, d))))
    return { ...nothing('ignored'), entries: closing }
  const answer = fresh.recorded.length || fresh.question ? undefined : answerEdited(r, ctx, old)
  if (answer) return { ...answer, entries: [...closing, ...answer.entries] }
  const out: Settled = { ...fresh, withdrawn: [], entries: [...closing] }
  if (fresh.question) {
    // nothing is taken back until the new words are certain
    const q = { ...fresh.question, drafts: fresh.question.drafts.map((d, k) => (k === 0 ? { ...d, replaces: old.map(l => l.id) } : d)) }
    out.question = q
    out.entries.push(...fresh.entries.map(e => (e.kind === 'ask' ? { ...e, question: q } : e)))
    if (fresh.recorded.length) for (const l of old) withdraw(out, l, 'edit')
    return out
  }
  for (const l of old) withdraw(out, l, 'edit')
  out.entries.push(...fresh.entries)
  if (out.withdrawn.length) out.outcome = 'recorded'
  return out
}
