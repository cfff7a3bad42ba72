import { parse as chronoParse } from 'chrono-node/en'
import { addDays, type Day, dayOf } from '../units/calendar.ts'
import { DAY_STARTS, partPhrase, Words } from './days.ts'
import { EN_BETWEEN, EN_JOINS, EN_PARTS, EN_SINCE, EN_UNTIL } from './en/dates.ts'
import { ES_BETWEEN, ES_JOINS, ES_PARTS, ES_SINCE, ES_UNTIL } from './es/dates.ts'
import type { DateItem } from './item.ts'
import { type Clock, settle, TIME_STARTS, takesTimes, timeAt } from './times.ts'
import type { Token } from './token.ts'
import { earlier, later, type Part, resolve, type Said, type When } from './when.ts'

/** A date with what the reader may need beyond the shared shape. */
export interface FoundDate extends DateItem {
  /** Only a day to come can be meant ("tomorrow", "in 3 weeks", "next friday"): `past` is then merely today. */
  ahead?: true
}

const STOP = new Set(['.', ';', '!', '?'])
const JOINS = new Set([...EN_JOINS, ...ES_JOINS])

// most words of a message begin no date: they are passed over at once
const STARTS = new Set([...DAY_STARTS, ...TIME_STARTS, ...EN_PARTS.keys(), ...ES_PARTS.keys()])

interface Piece {
  from: number
  to: number
  said?: Said
  until?: Said
  since?: boolean
  clock?: Clock
  part?: Part
}

/** True where a day without a time stands right before. */
const beside = (s: Words, last: Piece | undefined, i: number): boolean =>
  last?.said !== undefined && !last.clock && (last.to === i || (last.to === i - 1 && JOINS.has(s.w[i - 1]!)))

/** What stands in the message, from left to right: days with the part of the day behind them, times, parts. */
const pieces = (s: Words): Piece[] => {
  const out: Piece[] = []
  for (let i = 0; i < s.w.length; i++) {
    const word = s.w[i]!
    const { kind } = s.tokens[i]!
    if (word === '' || (kind === 'mark' && word !== '@') || (kind === 'word' && !STARTS.has(word))) continue
    const of = (EN_PARTS.has(word) && s.w[i + 1] === 'of') || (ES_PARTS.has(word) && s.w[i + 1] === 'del')
    const inner = of ? s.day(i + 2) : undefined
    if (inner && !inner.part) {
      const led = /^(the|la)$/.test(s.w[i - 1] ?? '') && out.at(-1)?.to !== i ? i - 1 : i
      out.push({ from: led, to: inner.to, said: inner.said, part: EN_PARTS.get(word) ?? ES_PARTS.get(word) })
      i = inner.to - 1
      continue
    }
    const day = s.day(i)
    let clock = timeAt(s, i)
    if (clock?.bare) {
      const follows = s.day(clock.to) !== undefined
      const meant = clock.loose
        ? follows || ((beside(s, out.at(-1), i) || takesTimes(s, clock.to)) && s.ends(clock.to))
        : follows || beside(s, out.at(-1), i) || takesTimes(s, clock.to)
      if (clock.hour > 12 || !meant) clock = undefined
    }
    if (clock && (!day || clock.to > day.to)) {
      out.push({ from: i, to: clock.to, clock, part: clock.part })
      i = clock.to - 1
      continue
    }
    if (!day) {
      const p = partPhrase(s, i)
      if (!p) continue
      out.push({ from: i, to: i + p.words.length, part: p.what[0] })
      i += p.words.length - 1
      continue
    }
    const since = EN_SINCE.has(s.w[i - 1] ?? '') || ES_SINCE.has(s.w[i - 1] ?? '')
    const single = !day.part && !day.until && ['day', 'weekday', 'date', 'shift', 'feast'].includes(day.said.as)
    const weak = single ? (EN_PARTS.get(s.w[day.to] ?? '') ?? ES_PARTS.get(s.w[day.to] ?? '')) : undefined
    const taken = weak !== undefined && weak !== 'noon'
    out.push({
      from: since ? i - 1 : i,
      to: taken ? day.to + 1 : day.to,
      said: day.said,
      until: day.until,
      since,
      part: day.part ?? (taken ? weak : undefined),
    })
    i = out.at(-1)!.to - 1
  }
  return out
}

const joined = (s: Words, a: Piece, b: Piece): boolean => {
  if (b.from - a.to > 2) return false
  for (let i = a.to; i < b.from; i++) if (!JOINS.has(s.w[i]!)) return false
  return true
}

/** "thurs 7am", "friday the 12th", "mon thru wed": neighbours that say one thing. */
const merge = (s: Words, list: Piece[]): Piece[] => {
  const out: Piece[] = []
  for (const b of list) {
    const a = out.at(-1)
    if (a && joined(s, a, b)) {
      const times = !(a.clock && b.clock) && (!(a.part && b.part) || a.part === b.part || !!b.clock)
      const dated = a.said?.as === 'weekday' && !a.said.which && b.said?.as === 'date' && !a.part && !a.clock && !a.since
      if (dated || (!(a.said && b.said) && times && !(a.until && b.since))) {
        out[out.length - 1] = {
          from: a.from,
          to: b.to,
          said: b.said ?? a.said,
          until: b.until ?? a.until,
          since: a.since || b.since,
          clock: a.clock ?? b.clock,
          part: b.part ?? a.part,
        }
        continue
      }
    }
    const join = a && b.from === a.to + 1 ? (s.w[a.to] ?? '') : ''
    if (a?.said && b.said && !a.until && !b.until && !b.since && join) {
      const before = s.w[a.from - 1] ?? ''
      const led = EN_BETWEEN.has(before) || ES_BETWEEN.has(before)
      const both = /^(between|entre)$/.test(before) && /^(and|y)$/.test(join)
      if (both || ((EN_UNTIL.has(join) || ES_UNTIL.has(join)) && (join !== 'a' || led))) {
        out[out.length - 1] = {
          from: led && out.at(-2)?.to !== a.from ? a.from - 1 : a.from,
          to: b.to,
          said: a.said,
          until: b.said,
          part: b.part,
          clock: b.clock,
        }
        continue
      }
    }
    out.push(b)
  }
  return out
}

/** Hours from which a part of the day has begun, and after which a plan for it means tomorrow. Common practice, no source. */
const PARTS: Record<Part, [begins: number, over: number]> = {
  morning: [3, 10],
  noon: [11, 13],
  afternoon: [12, 17],
  evening: [16, 21],
  night: [17, 24],
}

const hours = (time: string) => Number(time.slice(0, 2)) + Number(time.slice(3)) / 60

const dayOfPiece = (p: Piece, now: { day: Day; hour: number }, ahead: boolean): FoundDate => {
  const base = { from: p.from, to: p.to, ...(p.part && { part: p.part }) }
  if (!p.said) {
    const time = p.clock && settle(p.clock, p.part, true, now.hour, ahead)
    const [begins, over] = time ? [hours(time), hours(time)] : PARTS[p.part!]
    // an hour of either half of the day says nothing against today
    const yesterday = begins > now.hour && !(p.clock && !p.clock.sure)
    return {
      ...base,
      past: addDays(now.day, yesterday ? -1 : 0),
      future: addDays(now.day, now.hour >= over ? 1 : 0),
      explicit: false,
      ...(time && { time }),
    }
  }
  const when = resolve(p.said, now)
  const today = p.said.as === 'day' && p.said.n === 0
  const time = p.clock ? settle(p.clock, p.part, today, now.hour, ahead) : when.time
  // "1 this morning" written at two is of the new day
  if (today && p.part === 'morning' && time && now.hour < 3 && hours(time) <= now.hour) when.past = now.day
  const item: FoundDate = {
    ...base,
    past: when.past,
    future: when.future,
    explicit: true,
    ...(time && { time }),
    ...(when.span && { span: when.span }),
    ...(when.ahead && { ahead: true as const }),
  }
  if (p.until) return ranged(item, p.said, p.until, when, now)
  if (p.since && !when.ahead) {
    // "since monday" said on a Monday is a week
    const from = p.said.as === 'weekday' && when.past === now.day ? addDays(now.day, -7) : (when.span?.from ?? when.past)
    return { ...item, past: when.span ? item.past : from, future: now.day, span: { from, to: now.day } }
  }
  return item
}

const ranged = (item: FoundDate, first: Said, last: Said, when: When, now: { day: Day; hour: number }): FoundDate => {
  if (when.ahead) {
    const to = resolve(last, { day: when.future, hour: 12 }).future
    return { ...item, span: { from: when.future, to: later(to, when.future) } }
  }
  // "mon to wed" said on a Monday is the week before
  const from = first.as === 'weekday' && when.past === now.day ? addDays(now.day, -7) : when.past
  const end = resolve(last, { day: from, hour: 12 }).future
  const to = last.as === 'day' || last.as === 'shift' ? resolve(last, now).past : end
  return { ...item, past: earlier(to, now.day), span: { from, to: later(to, from) } }
}

/** Leftovers a general library may know ("2 weeks and 3 days ago"): only beside "ago", and only a day it is certain of. */
const CHRONO = new Set(['ago', 'hence'])
const MOST_LEFTOVERS = 2
const leftovers = (s: Words, used: (i: number) => boolean, now: { day: Day; hour: number }): FoundDate[] => {
  const out: FoundDate[] = []
  let tried = 0
  for (let i = 0; i < s.w.length; i++) {
    if (!CHRONO.has(s.w[i]!) || used(i)) continue
    if (++tried > MOST_LEFTOVERS) break
    let a = i
    while (a > 0 && i - a < 6 && s.w[a - 1] && !used(a - 1) && !s.ends(a - 1)) a--
    const words = s.w.slice(a, i + 1)
    // noon by the machine's own clock, whatever its zone: told another zone the library is a day off in some (seen in Auckland)
    const [y, m, d] = now.day.split('-').map(Number) as [number, number, number]
    const hit = chronoParse(words.join(' '), new Date(y, m - 1, d, 12)).at(-1)
    if (!hit?.start.isCertain('day') || !hit.start.isCertain('month') || hit.index + hit.text.length !== words.join(' ').length) continue
    const skipped = hit.index ? words.join(' ').slice(0, hit.index).trim().split(' ').length : 0
    // it drops what it does not know: "two and a half weeks ago" came out as half a week
    if (skipped && (/^(and|half|a|or)$/.test(words[skipped - 1]!) || s.number(a + skipped - 1) !== undefined)) continue
    const day = dayOf(hit.start.get('year')!, hit.start.get('month')!, hit.start.get('day')!)
    if (day <= now.day) out.push({ from: a + skipped, to: i + 1, past: day, future: now.day, explicit: true })
  }
  return out
}

/**
 * The dates and times of a message, English and Spanish, left to right.
 * @param taken tokens claimed by names and quantities; never used, though what stands beside a date is looked at
 * @param now the farm's day and its hour, 0 up to 24, by the wall clock
 * @returns token spans with `past` (as a log means it, never after today), `future` (as a plan means it, not before today but
 * for a date said with its year), `explicit` true where a day was named; a bare time or part of the day takes the day
 * named beside it in the sentence. Errors: none, no date is an empty list.
 */
export const findDates = (tokens: Token[], taken: (i: number) => boolean, now: { day: Day; hour: number }): FoundDate[] => {
  if (!tokens.some((t, i) => (t.kind === 'number' || STARTS.has(t.norm) || CHRONO.has(t.norm)) && !taken(i))) return []
  const s = new Words(tokens, taken)
  const list = merge(s, pieces(s))
  if (!list.length) return leftovers(s, () => false, now)
  let n = 0
  const sentence = s.all.map(word => (STOP.has(word) ? n++ : n))
  // a time that stands apart from its day: "hail yesterday, golf balls, around 6pm"
  const near = new Map<number, number>()
  for (const [k, p] of list.entries()) {
    if (p.said) continue
    let best = -1
    for (const [j, q] of list.entries()) {
      if (!q.said || q.until || sentence[q.from] !== sentence[p.from]) continue
      if ((q.clock && p.clock) || (p.part && q.part && p.part !== q.part)) continue
      if (best < 0 || Math.abs(q.from - p.from) < Math.abs(list[best]!.from - p.from)) best = j
    }
    if (best < 0) continue
    list[best]!.clock ??= p.clock
    list[best]!.part ??= p.part
    near.set(k, best)
  }
  const out = list.map(p => dayOfPiece(p, now, s.ahead))
  for (const [k, j] of near) {
    const { past, future, time, ahead } = out[j]!
    out[k] = { ...out[k]!, past, future, ...(time && list[k]!.clock && { time }), ...(ahead && { ahead }) }
  }
  const more = leftovers(s, i => out.some(d => i >= d.from && i < d.to), now)
  return more.length ? [...out, ...more].sort((a, b) => a.from - b.from) : out
}
