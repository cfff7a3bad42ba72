import type { Ask } from '../book/asks.ts'
import { eventsFrom, lessons, type Logged, nameOf } from '../book/book.ts'
import type { Body } from '../book/entries.ts'
import type { Event } from '../book/events.ts'
import type { Choice, Draft, Message, Question } from '../book/questions.ts'
import type { Outcome } from '../ports.ts'
import type { Act, AskSaid, Reading } from '../reading/reading.ts'
import { askInAll, askMeant, askOthers, choice, notYours } from '../saying/ask.ts'
import { phrase } from '../saying/phrases.ts'
import { applied, effectOf, openQuestions } from './answer.ts'
import { certain } from './certain.ts'
import type { Context, Need } from './context.ts'
import { corrected, targets } from './correct.ts'
import { draftOf } from './draft.ts'

/** What a message comes to, before any figure is worked out or word is said. */
export interface Settled {
  outcome: Outcome
  entries: Body[]
  recorded: Event[]
  withdrawn: Event[]
  /** Questions that figures answer. */
  asks: Ask[]
  /** The question put back, if one is. */
  question?: Question
  /** A short line that is neither record nor question. */
  word?: Message
}

const nothing = (outcome: Outcome, word?: Message): Settled => ({ outcome, entries: [], recorded: [], withdrawn: [], asks: [], word })
const m = (code: string, data: Message['data'] = {}): Message => ({ code, data })

/** How far a reading may leave words unexplained and still be taken as certain. */
const clear = (a: Act): boolean => a.leftNumbers === 0 && a.left <= Math.max(1.5, a.used * 0.34)

/** Settles one message. The rules stand in the order they are tried. */
export const settle = (r: Reading, c: Context): Settled => {
  if (c.role === 'stranger') return nothing('refused', m('refused-stranger'))
  const facts = r.acts.filter(a => a.mood === 'fact')
  const writes = facts.length > 0 || r.fix !== undefined
  if (c.role === 'viewer' && !r.asks.length) return writes && !r.chatter ? nothing('refused', m('refused-viewer')) : unread(r, c)
  if (c.message.edits !== undefined) return edited(r, c)
  const lesson = taught(r, c)
  if (lesson) return lesson
  if (removes(r, c)) return c.role === 'owner' ? unread(r, c) : nothing('refused', notYours())
  const answer = answered(r, c)
  if (answer) return answer
  const fix = fixed(r, c)
  if (fix) return fix
  if (r.asks.length && !facts.some(a => a.full && clear(a))) return { ...nothing('answered'), asks: r.asks.map(a => askOf(a, c)) }
  return told(r, c, [])
}

/** The farm's own words: the owner teaches them and takes them back; anybody may ask for them. */
const taught = (r: Reading, c: Context): Settled | undefined => {
  if (r.asksLessons) {
    const list = lessons(c.book)
    return nothing(
      'answered',
      list.size ? m('words-known', { list: [...list].map(([word, means]) => m('word-means', { word, means })) }) : m('words-none'),
    )
  }
  if (!r.lesson && r.forget === undefined) return undefined
  if (c.role !== 'owner') return nothing('refused', notYours())
  const word = r.lesson?.word ?? r.forget!
  const entry: Body = { kind: 'setting', name: `word:${word}`, value: r.lesson?.means ?? '' }
  return {
    ...nothing('answered', r.lesson ? m('word-taught', { word, means: r.lesson.means }) : m('word-forgotten', { word })),
    entries: [entry],
  }
}

/** "delete the far corner pile": only the owner takes a pile out of the book. */
const removes = (_r: Reading, c: Context): boolean =>
  /\b(delete|remove|erase|borra|elimina)\b.*\b(pile|box|pila|caja|monton)\b/i.test(c.message.text) &&
  !/\b(that|last|it)\b/i.test(c.message.text)

const told = (r: Reading, c: Context, replaces: string[]): Settled => {
  const facts = r.acts.filter(a => a.mood === 'fact')
  const usable = facts.filter(a => clear(a) && !(r.chatter && !a.full))
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
    const total = a.total && a.frame === 'load' ? inAll(d, c) : undefined
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
    const s = certain(c, d, a.strange)
    if ('event' in s) record(out, s.event, d, c)
    else needs.push({ need: s.need, act: a })
  }
  // in a group, half-sentences about nothing in particular are talk
  const loud = c.message.private || c.message.addressed
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
  if (real.length)
    ask(
      out,
      real.map(n => n.need),
      c,
    )
  if (!out.recorded.length && !real.length && doubtful.length && (loud || !r.chatter)) {
    const drafts = doubtful.map(a => draftOf(a, c))
    const ready = drafts.map(d => certain(c, d)).filter(x => 'event' in x)
    if (ready.length && doubtful[0]!.used >= 5) {
      const d = drafts[0]!
      const q = question(
        c,
        {
          ask: askMeant(phrase({ type: d.type, ...d.slots } as never)),
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
      ask: askMeant(
        drafts.length === 1
          ? phrase({ type: first.type, ...first.slots } as never)
          : { code: 'join', data: { list: drafts.map(d => phrase({ type: d.type, ...d.slots } as never)), by: 'and' } },
      ),
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

const amountSlots = (a: Act): string[] => ['count', 'lb', 'ft'].filter(k => a.slots[k] !== undefined)

/** "Walked barn, two holes" is the damage alone; weather told only to explain damage may stand. */
const redundant = (a: Act, facts: Act[]): boolean => {
  if (a.frame === 'check' && a.slots.finding !== 'good') return facts.some(b => b !== a && (b.frame === 'damage' || b.frame === 'patch'))
  return false
}

const record = (out: Settled, event: Event, d: Draft, c: Context): void => {
  for (const id of d.replaces) {
    const was = c.book.byId.get(id)
    if (was && was.withdrawnBy === undefined && !out.entries.some(e => e.kind === 'withdraw' && e.id === id)) {
      out.entries.push({ kind: 'withdraw', id, why: c.message.edits !== undefined ? 'edit' : 'correction' })
      out.withdrawn.push(was.event)
    }
  }
  out.entries.push({ kind: 'event', id: c.id(), event })
  out.recorded.push(event)
}

const question = (c: Context, need: Need, drafts: Draft[]): Question => ({
  id: c.id(),
  chat: c.message.chat,
  to: c.message.from,
  lang: c.lang,
  at: c.message.at,
  source: { channel: c.message.channel, chat: c.message.chat, id: c.message.id, edit: c.message.edit },
  ask: need.ask,
  slot: need.slot,
  choices: need.choices,
  drafts: need.doubt ? drafts.map((d, k) => (k === 0 ? { ...d, sure: [...d.sure, `?${need.doubt}`] } : d)) : drafts,
})

const ask = (out: Settled, needs: Need[], c: Context): void => {
  const q = question(
    c,
    needs[0]!,
    needs.map(n => n.draft),
  )
  out.entries.push({ kind: 'ask', question: q })
  out.question = q
}

/** "12 loads in all" where some are logged already. */
const inAll = (d: Draft, c: Context): Need | undefined => {
  const s = certain(c, { ...d, slots: { ...d.slots }, sure: [...d.sure, 'twice'] })
  if (!('event' in s) || s.event.type !== 'load' || s.event.count === undefined) return undefined
  const e = s.event
  let logged = 0
  for (const l of c.book.byPile.get(e.pile) ?? [])
    if (l.withdrawnBy === undefined && l.event.type === 'load' && l.event.on === e.on && l.event.crop === e.crop)
      logged += l.event.count ?? 0
  if (!logged) return undefined
  const rest = e.count! - logged
  d.slots = { ...d.slots, pile: e.pile, crop: e.crop }
  const choices: Choice[] = [
    ...(rest > 0 ? [{ label: choice.inAll(e.count!), act: 'fill', value: rest } as Choice] : []),
    { label: choice.moreOf(e.count!), act: 'sure' },
    { label: choice.neverMind, act: 'drop' },
  ]
  return { ask: askInAll(logged, e.count!), choices, slot: 'count', draft: { ...d, sure: [...d.sure, 'twice'] }, doubt: 'total' }
}

const countOf = (d: Draft, c: Context): Need => {
  const s = certain(c, d)
  if ('need' in s) return s.need
  return { slot: 'count', ask: m('ask-slot-generic', { slot: 'count' }), choices: [], draft: d }
}

/** Nothing to record and nothing to answer: silence in a group, one line in private. */
const unread = (r: Reading, c: Context): Settled => {
  const loud = c.message.private || c.message.addressed === true
  if (!loud) return nothing('ignored')
  const moody = r.acts.find(a => a.mood !== 'fact' && a.used > a.left)
  if (moody)
    return nothing(
      'ignored',
      moody.mood === 'denial' ? m('noted-denial') : moody.mood === 'plan' || moody.mood === 'order' ? m('noted-plan') : undefined,
    )
  return nothing('puzzled', m('puzzled'))
}

const askOf = (a: AskSaid, c: Context): Ask => {
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

/** The message as an answer to a question that is open in this chat. */
const answered = (r: Reading, c: Context): Settled | undefined => {
  for (const q of openQuestions(c)) {
    const effect = effectOf(c, q, r)
    if (!effect) continue
    const close = (how: 'answered' | 'dropped'): Body => ({ kind: 'close', question: q.id, how })
    if (q.needs === 'owner' && effect.act === 'undo') {
      const owners = q.undo?.map(id => c.book.byId.get(id)?.by)
      if (c.role !== 'owner' && !owners?.includes(c.message.from)) continue
    }
    if (effect.act === 'drop') return { ...nothing('answered', m('closed-question')), entries: [close('dropped')] }
    const out = nothing('recorded')
    out.entries.push(close('answered'))
    if (effect.act === 'undo') {
      for (const id of q.undo ?? []) withdraw(out, c.book.byId.get(id), 'correction')
      for (const d of q.drafts) {
        const s = certain(c, { ...d, replaces: [], sure: [...d.sure, 'twice'] })
        if ('event' in s) record(out, s.event, { ...d, replaces: [] }, c)
      }
      return out
    }
    let drafts = applied(q, effect)
    if (effect.act === 'pile') {
      const fresh: Event = { type: 'pile', name: effect.name.toLowerCase(), on: c.day, by: c.name, said: c.message.text }
      out.entries.push({ kind: 'event', id: c.id(), event: fresh })
      out.recorded.push(fresh)
      drafts = drafts.map((d, k) => {
        const { strange: _, ...slots } = d.slots
        return { ...d, slots: k === 0 || d.slots.pile === undefined ? { ...slots, pile: effect.name.toLowerCase() } : slots }
      })
    }
    const needs: Need[] = []
    for (const [k, d] of drafts.entries()) {
      const sure = effect.act === 'sure' && k === 0 ? [...d.sure, ...d.sure.filter(x => x.startsWith('?')).map(x => x.slice(1))] : d.sure
      const back = sure.includes('?face-back') && effect.act === 'sure' ? [...sure, 'face-back'] : sure
      const said = typeof d.slots.strange === 'string' ? d.slots.strange : undefined
      const s = certain(c, { ...d, sure: back.filter(x => !x.startsWith('?')) }, k > 0 ? said : undefined)
      if ('event' in s) record(out, s.event, d, c)
      else needs.push(s.need)
    }
    if (needs.length) {
      const next = question(
        { ...c, message: { ...c.message, from: q.to } },
        needs[0]!,
        needs.map(n => n.draft),
      )
      out.entries.push({ kind: 'ask', question: next })
      out.question = next
      if (!out.recorded.length) out.outcome = 'asked'
    }
    return out
  }
  return undefined
}

const withdraw = (out: Settled, l: Logged | undefined, why: 'undo' | 'correction' | 'edit'): void => {
  if (!l || l.withdrawnBy !== undefined) return
  out.entries.push({ kind: 'withdraw', id: l.id, why })
  out.withdrawn.push(l.event)
}

/** The message as a correction of an earlier record. */
const fixed = (r: Reading, c: Context): Settled | undefined => {
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
  if (!list.length) return undefined
  const plain = r.acts.find(a => a.mood === 'fact' && a.full && clear(a))
  const hit = corrected(list, fix, r)
  if (!hit) return undefined
  if (plain && plain.frame !== hit.was.event.type && fix.strength < 2 && plain.frame !== 'load') return undefined
  if (fix.slots.strange !== undefined) return undefined
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
  const out = nothing('recorded')
  if ('event' in s) record(out, s.event, hit.draft, c)
  else {
    ask(out, [s.need], c)
    out.outcome = 'asked'
  }
  return out
}

/** What somebody else recorded is changed only where they or the owner say so. */
const confirmed = (was: Logged[], drafts: Draft[], c: Context): Settled => {
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

/** An edited message: what it recorded before gives way to what it says now. */
const edited = (r: Reading, c: Context): Settled => {
  const source = { channel: c.message.channel, chat: c.message.chat, id: c.message.edits! }
  const old = eventsFrom(c.book, source)
  const raised = [...c.book.questions.values()].filter(q => q.source.chat === c.message.chat && q.source.id === c.message.edits)
  const ctx: Context = { ...c, message: { ...c.message, edits: undefined } }
  const fresh = r.acts.some(a => a.mood === 'fact') || r.asks.length ? told(r, ctx, []) : unread(r, ctx)
  const closing: Body[] = raised.map(q => ({ kind: 'close', question: q.id, how: 'dropped' }))
  if (old.length === fresh.recorded.length && old.every((l, k) => same(l.event, { ...fresh.recorded[k]!, on: fresh.recorded[k]!.on }))) {
    return old.length || !fresh.question
      ? { ...nothing(old.length ? 'ignored' : fresh.outcome, old.length ? undefined : fresh.word), entries: closing, asks: fresh.asks }
      : { ...fresh, entries: [...closing, ...fresh.entries] }
  }
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
