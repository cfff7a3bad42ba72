import { type Logged, nameOf, personOf, pileNames, pileState, piles } from '../book/book.ts'
import type { Body } from '../book/entries.ts'
import type { Event } from '../book/events.ts'
import type { Told } from '../book/pile.ts'
import type { Message, Question } from '../book/questions.ts'
import type { DateItem } from '../reading/item.ts'
import type { Reading } from '../reading/reading.ts'
import { foldWord } from '../reading/tokens.ts'
import type { Chore } from '../reading/wish/chore.ts'
import { addDays, localTime } from '../units/calendar.ts'
import { filledKey } from '../watch/coverTonight.ts'
import { hoursOf, isQuiet, momentOf } from '../watch/hours.ts'
import { TAPPED } from '../watch/item.ts'
import { mayTouch, type Occurrence, remindersAhead, remindsWhom } from '../watch/reminders.ts'
import { whereabouts } from '../watch/whereabouts.ts'
import { type Context, ownRecent } from './context.ts'
import { m, nothing, record, type Settled, withdraw } from './settled.ts'

type Reminder = Told<'remind'>

/** A reminder without an hour of its own is put off by so long, ms. */
const LATER_MS = 3_600_000

/** The reminders that were said in this chat and are neither done nor put off, newest first. */
const ringing = (c: Context): { q: Question; told: Reminder }[] =>
  [...c.book.questions.values()]
    .filter(q => q.chat === c.message.chat && q.ask.code === 'reminder')
    .reverse()
    .flatMap(q => {
      const told = c.book.byId.get(String(q.ask.data.id))
      return told?.event.type === 'remind' ? [{ q, told: told as unknown as Reminder }] : []
    })

const closed = (q: Question): Body => ({ kind: 'close', question: q.id, how: 'answered' })
const refuse = (code: string): Settled => nothing('refused', m(code))

const done = (c: Context, { q, told }: { q: Question; told: Reminder }): Settled =>
  mayTouch(c.book, told, c.message.from)
    ? { ...nothing('answered', m('reminder-done', { about: told.event.about })), entries: [closed(q)] }
    : refuse('reminder-not-yours')

/** The same reminder once more, later: an event of its own, so that it is listed, changed and taken back like any other. */
const snooze = (c: Context, { q, told }: { q: Question; told: Reminder }, date: DateItem | undefined): Settled => {
  if (!mayTouch(c.book, told, c.message.from)) return refuse('reminder-not-yours')
  const { about } = told.event
  const whom = remindsWhom(c.book, told)
  const who = whom === 'crew' ? told.event.who : whom === c.message.from || whom === 'owner' ? undefined : nameOf(c.book, whom)
  const later = localTime(new Date(Date.parse(c.message.at) + LATER_MS).toISOString(), c.zone)
  const quiet = isQuiet(later.hour, hoursOf(c.book, c.message.private ? c.message.from : undefined))
  const clock = `${String(Math.floor(later.hour)).padStart(2, '0')}:${String(Math.floor((later.hour % 1) * 60 + 1e-6)).padStart(2, '0')}`
  const when = date
    ? { on: date.future, time: date.time }
    : quiet
      ? { on: addDays(c.day, later.day === c.day ? 1 : 0), time: undefined }
      : { on: later.day, time: clock }
  if (date && !date.time && date.future === c.day && date.part === undefined) return snooze(c, { q, told }, undefined)
  const event: Event = {
    type: 'remind',
    about,
    on: when.on,
    ...(when.time && { time: when.time }),
    ...(who && { who }),
    by: c.name,
    said: c.message.text.slice(0, 4096),
  }
  const out = nothing('recorded')
  out.entries.push(closed(q))
  record(out, event, { type: 'remind', slots: {}, sure: [], replaces: [] }, c)
  return out
}

const list = (c: Context): { told: Reminder; next: Occurrence }[] => {
  const all = remindersAhead(c.book, momentOf(c.book, { at: c.message.at, zone: c.zone }))
  return c.role === 'owner' ? all : all.filter(x => mayTouch(c.book, x.told, c.message.from))
}

const lineOf = (c: Context, { told, next }: { told: Reminder; next: Occurrence }, n: number): Message => {
  const whom = remindsWhom(c.book, told)
  const own = whom === c.message.from || (whom === 'owner' && c.role === 'owner')
  const who = own ? '' : whom === 'crew' ? (told.event.who ?? '') : nameOf(c.book, whom)
  const { about, every, step, time } = told.event
  return m('reminders-line', { n, on: next.day, time: time ?? '', every: every ?? '', step: step ?? 1, who, about })
}

const listed = (c: Context, some = list(c)): Message =>
  some.length ? m('join', { list: some.map((x, k) => lineOf(c, x, k + 1)), by: 'line' }) : m('reminders-none')

const SMALL = new Set('the a an to of on for about with and my our el la los las un una de del que para con lo y mi'.split(' '))
const wordsOf = (text: string): string[] =>
  text
    .split(/[^\p{L}\p{M}\p{N}]+/u)
    .map(foldWord)
    .filter(w => w.length > 1 && !SMALL.has(w))
const like = (a: string, b: string): boolean =>
  a === b || (Math.min(a.length, b.length) >= 4 && (a.startsWith(b.slice(0, -1)) || b.startsWith(a.slice(0, -1))))

/** Those whose words hold every word that was said. */
const about = <T extends { told: Reminder }>(some: T[], said: string): T[] => {
  const wanted = wordsOf(said)
  return wanted.length ? some.filter(x => wanted.every(w => wordsOf(x.told.event.about).some(v => like(v, w)))) : []
}

const cancelled = (c: Context, some: Reminder[]): Settled => {
  if (some.some(t => !mayTouch(c.book, t, c.message.from))) return refuse('reminder-not-yours')
  const out = nothing('recorded')
  for (const t of some) {
    withdraw(out, c.book.byId.get(t.id) as Logged, 'undo')
    for (const { q } of ringing(c)) if (q.ask.data.id === t.id) out.entries.push(closed(q))
  }
  return out
}

const cancel = (c: Context, chore: Extract<Chore, { kind: 'cancel' }>): Settled => {
  const mine = list(c)
  if (chore.all)
    return mine.length
      ? cancelled(
          c,
          mine
            .map(x => x.told)
            .filter(
              t => c.role === 'owner' || personOf(c.book, t.event.by, t.by) === c.message.from || remindsWhom(c.book, t) === c.message.from,
            ),
        )
      : nothing('answered', m('reminders-none'))
  if (chore.number !== undefined) {
    const one = mine[chore.number - 1]
    return one ? cancelled(c, [one.told]) : refuse('reminder-no-such')
  }
  if (chore.about !== undefined) {
    const found = about(mine, chore.about)
    if (found.length === 1) return cancelled(c, [found[0]!.told])
    if (!found.length) {
      const others = about(remindersAhead(c.book, momentOf(c.book, { at: c.message.at, zone: c.zone })), chore.about)
      return refuse(others.length ? 'reminder-not-yours' : 'reminder-no-such')
    }
    return which(c)
  }
  const [last] = ringing(c)
  if (mine.length === 1) return cancelled(c, [mine[0]!.told])
  if (last?.told.event.every) return cancelled(c, [last.told])
  if (last) return done(c, last)
  return mine.length ? which(c) : nothing('answered', m('reminders-none'))
}

const which = (c: Context): Settled => nothing('asked', m('join', { list: [m('reminders-which'), listed(c)], by: 'line' }))

/** A tap under an asking after something undone: patched, or walked and whole, today and by who tapped. */
const nudgeTapped = (c: Context): Settled | undefined => {
  const pick = c.message.pick
  const q = pick && c.book.questions.get(pick.question)
  if (!q || q.slot !== TAPPED || q.chat !== c.message.chat || q.ask.code === 'reminder') return undefined
  const value = q.choices[pick.choice]?.value
  const names = Array.isArray(q.ask.data.piles) ? q.ask.data.piles.map(String) : []
  if (value === 'later') return { ...nothing('answered', m('nudge-not-yet')), entries: [closed(q)] }
  const out = nothing('recorded')
  out.entries.push(closed(q))
  for (const pile of names) {
    const state = pileState(c.book, pile)
    if (!state || (value === 'patched' && !state.open.length)) continue
    const said = { on: c.day, by: c.name, said: c.message.text.slice(0, 4096) }
    const event: Event = value === 'patched' ? { type: 'patch', pile, ...said } : { type: 'check', pile, finding: 'good', ...said }
    record(out, event, { type: event.type, slots: {}, sure: [], replaces: [] }, c)
  }
  return out.recorded.length ? out : { ...nothing('answered', m('nudge-over')), entries: [closed(q)] }
}

/** A tap under a reminder. */
const tapped = (c: Context): Settled | undefined => {
  const pick = c.message.pick
  const one = pick && ringing(c).find(x => x.q.id === pick.question)
  const value = one?.q.choices[pick!.choice]?.value
  if (!one || value === undefined) return undefined
  if (value === 'done') return done(c, one)
  if (value === 'hour') return snooze(c, one, undefined)
  const day = addDays(c.day, 1)
  return snooze(c, one, { from: 0, to: 0, past: day, future: day, explicit: true })
}

/** Whether the last thing asked of this person here was a reminder, and not a question about the work. */
const reminderIsLast = (c: Context): boolean => {
  const here = [...c.book.questions.values()].filter(q => q.chat === c.message.chat && (q.slot !== TAPPED || q.ask.code === 'reminder'))
  return here.at(-1)?.ask.code === 'reminder'
}

/** "last load": the pile being filled is full for today, and the watch says what its cover takes. */
const filled = (r: Reading, c: Context, said: string | undefined): Settled | undefined => {
  const filling = piles(c.book).filter(p => p.stage === 'filling')
  const named = said === undefined ? undefined : (pileNames(c.book).get(said) ?? r.bare.piles[0])
  if (said !== undefined && named === undefined) return undefined
  const own = ownRecent(c, 2).flatMap(l => (l.event.type === 'load' ? [l.event.pile] : []))[0]
  const pile = named ?? own ?? (filling.length === 1 ? filling[0]!.name : undefined)
  const state = filling.find(p => p.name === pile)
  if (!state) return undefined
  const count = state.loads.filter(t => t.event.on === c.day).reduce((sum, t) => sum + (t.event.count ?? 0), 0)
  return {
    ...nothing('answered', m('filled', { pile: state.name, count })),
    entries: [{ kind: 'said', key: filledKey(state.name, c.day) }],
  }
}

/** A word about the reminders themselves: listed, done, put off, dropped; by tap or by text. */
export const chored = (r: Reading, c: Context): Settled | undefined => {
  const tap = tapped(c) ?? nudgeTapped(c)
  if (tap) return tap
  const chore = r.chore
  if (!chore) return undefined
  if (chore.kind === 'list') return nothing('answered', listed(c))
  if (chore.kind === 'where') return nothing('answered', m('join', { list: whereabouts(c.book, c.day, chore.item), by: 'line' }))
  if (chore.kind === 'cancel') return cancel(c, chore)
  if (chore.kind === 'filled') return filled(r, c, chore.pile)
  const open = ringing(c)
  if (chore.kind === 'done' && chore.about !== undefined) {
    const rung = about(open, chore.about)[0]
    if (rung) return done(c, rung)
    const ahead = about(list(c), chore.about).filter(x => x.told.event.every === undefined)
    return ahead.length === 1 ? cancelled(c, [ahead[0]!.told]) : undefined
  }
  const own = open.find(x => mayTouch(c.book, x.told, c.message.from)) ?? open[0]
  if (!own || !reminderIsLast(c)) return undefined
  return chore.kind === 'done' ? done(c, own) : snooze(c, own, chore.date)
}
