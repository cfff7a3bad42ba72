import type { Day } from '../units/calendar.ts'
import { isQuestion, readAsk } from './asks.ts'
import { clauses, type Segment } from './clauses.ts'
import { findDates } from './dates.ts'
import { has, hasCat, type Item } from './item.ts'
import type { NameIndex } from './names.ts'
import { isThin, weightOf } from './pool.ts'
import type { Act, FrameName, Mood, Reading } from './reading.ts'
import { repair } from './repair.ts'
import { type Lang, scan } from './scan.ts'
import { bareFix, bareOf, fixOf } from './talk.ts'
import { asksLessons, forgottenIn, lessonIn, spellOut } from './taught.ts'
import { tokenise } from './tokens.ts'

export interface ReadContext {
  names: NameIndex
  now: { day: Day; hour: number }
  /** The language the sender last wrote. */
  lang: Lang
  /** What the sender told last, a moment ago: "and 3 of corn" goes on with it. */
  last?: FrameName
  /** Keep a trace of how it was read; it costs as much as the reading. */
  explain?: boolean
}

/** Frames that look forward by nature: their plans are what they record. */
const FORWARD = new Set(['remind', 'harvest', 'note', 'pile', 'box'])

/** Words beyond these are talk. */
const mostTokens = 300

/** Sentences: runs of items between full stops. A stop behind a short measure ("12 ft. wide") is none. */
const sentences = (items: Item[]): { items: Item[]; mark: boolean }[] => {
  const out: { items: Item[]; mark: boolean }[] = []
  let run: Item[] = []
  const close = (mark: boolean) => {
    if (run.length) out.push({ items: run, mark })
    run = []
  }
  for (const [k, i] of items.entries()) {
    if (has(i, 'ask?')) {
      // "¿" opens, "?" closes
      if (i.text === '¿') continue
      close(true)
    } else if (has(i, 'stop')) {
      const prev = items[k - 1]
      if (prev && i.text === '.' && /^(lb|lbs|ft|in|hrs?|approx|no|st|mr|mrs)$/i.test(prev.tokens.at(-1)?.text ?? '') && items[k + 1]) continue
      close(false)
    } else run.push(i)
  }
  close(false)
  return out
}

const moodOf = (items: Item[], from: number, seg: Segment, carried: Mood | undefined): Mood => {
  let mood: Mood = carried ?? 'fact'
  for (let k = from; k < seg.to; k++) {
    const i = items[k]!
    if (has(i, 'find:good')) continue
    const inside = k >= seg.from
    if (has(i, 'but')) mood = 'fact'
    if (has(i, 'so') && inside && seg.act?.frame !== 'open') return 'plan'
    if (has(i, 'm:hope')) return 'hope'
    // "si, di 11 mil": yes, not if
    const yes = i.tokens[0]?.norm === 'si' && k === 0 && (has(items[1], 'comma') || /í/.test(i.text))
    if (has(i, 'm:if') && inside && !yes && seg.act?.frame !== 'open') return 'if'
    if (has(i, 'm:no') && !has(i, 'find:good') && (inside || k >= from)) mood = 'denial'
    if (has(i, 'm:tell') && mood === 'fact') mood = 'hearsay'
    if (has(i, 'm:plan') && mood === 'fact' && !has(i, 'approx')) mood = 'plan'
    if (i.date?.ahead && mood === 'fact') mood = 'plan'
  }
  return mood
}

/** `remind` and `note` take the rest of their sentence as words. */
const wordy = (items: Item[], text: string): Act | undefined => {
  const content = items.findIndex(i => !isThin(i) && !hasCat(i, 'person') || has(i, 'v:note') || has(i, 'v:remind'))
  const i = items[content]
  if (!i) return undefined
  if (has(i, 'v:remind')) {
    const dates = items.filter(x => x.date)
    const date = dates.find(x => x.date!.explicit)?.date ?? dates[0]?.date
    const time = dates.map(x => x.date!.time).find(Boolean)
    const skip = (x: Item) => x.date !== undefined
    let rest = items.slice(content + 1)
    while (rest[0] && (skip(rest[0]) || has(rest[0], 'comma') || /^(to|that|on|about|de|que|for|at|a|el|the|us|me|por|para|en|of)$/.test(rest[0].tokens[0]?.norm ?? ''))) rest = rest.slice(1)
    while (rest.at(-1) && (skip(rest.at(-1)!) || has(rest.at(-1), 'comma') || /^(on|at|el|la|a|for|para|the|por|en|by)$/.test(rest.at(-1)!.tokens[0]?.norm ?? ''))) rest = rest.slice(0, -1)
    const parts: string[] = []
    let run: Item[] = []
    const flush = () => {
      while (run.length && /^(on|at|el|la|a|for|para|the|en|by)$/.test(run.at(-1)!.tokens[0]?.norm ?? '') && parts.length === 0 && false) run.pop()
      if (run.length) parts.push(text.slice(run[0]!.tokens[0]!.from, run.at(-1)!.tokens.at(-1)!.to))
      run = []
    }
    for (const x of rest) {
      if (skip(x)) flush()
      else run.push(x)
    }
    flush()
    const about = parts.join(' ').replace(/\s+/g, ' ').replace(/^[\s,]+|[\s,]+$/g, '')
    const every = /\b(every|each|cada|todos los)\s+(day|dia|week|semana|month|mes|\w+)\b/i.exec(text)
    const slots: Record<string, unknown> = {}
    if (about) slots.about = about
    if (time) slots.time = time
    if (every) slots.every = /day|dia/i.test(every[2]!) && !/(sun|mon|tues|wednes|thurs|fri|satur)day/i.test(every[2]!) ? 'day' : /month|mes/i.test(every[2]!) ? 'month' : 'week'
    return { frame: 'remind', mood: 'fact', slots, date, used: 5, left: 0, leftWords: [], leftNumbers: 0, full: about !== '' && (date !== undefined || time !== undefined || every !== null) }
  }
  if (has(i, 'v:note') && content <= 2) {
    const rest = items.slice(content + 1).filter((x, k) => !(k === 0 && (has(x, 'comma') || has(x, 'mark'))))
    // "apunta 7 viajes" is a log, not a note
    if (has(i, 'v:put') && items.some(x => x.num !== undefined)) return undefined
    if (!rest.length) return undefined
    const first = rest[0]!.tokens[0]!
    const last = rest.at(-1)!.tokens.at(-1)!
    return { frame: 'note', mood: 'fact', slots: { text: text.slice(first.from, last.to).replace(/^that\s+/i, '') }, used: 4, left: 0, leftWords: [], leftNumbers: 0, full: true }
  }
  return undefined
}

const SHARED = new Set(['load', 'feed', 'face', 'check', 'damage', 'patch', 'weather', 'cover', 'spoil', 'test', 'pack', 'size', 'open', 'empty', 'shift'])

/** What one clause lends to its neighbours: the pile, a date said early, weather's date and cause. */
const lend = (acts: { act: Act; sentence: number }[]): void => {
  for (let k = 0; k < acts.length; k++) {
    const { act, sentence } = acts[k]!
    const before = acts[k - 1]
    if (before && before.sentence === sentence && !act.date && before.act.date && SHARED.has(act.frame)) act.date = before.act.date
    if (before && act.frame === 'damage' && act.slots.cause === 'unknown' && before.act.frame === 'weather' && before.act.mood === 'fact' && acts[k]!.sentence - before.sentence <= 1) {
      const kind = before.act.slots.kind
      if (kind === 'hail' || kind === 'wind') act.slots.cause = kind
      act.date ??= before.act.date
    }
    if (act.strange || act.slots.pile !== undefined || !SHARED.has(act.frame) || act.frame === 'weather' || act.frame === 'test') continue
    // the same sentence, or the next clause of the same kind: "5 loads corn and 2 haylage on creek"
    const next = acts[k + 1]
    const near = before && (before.sentence === sentence || before.act.frame === act.frame) && before.act.slots.pile !== undefined && before.act.slots.pile !== 'all' ? before : next && next.sentence === sentence && next.act.frame === act.frame && next.act.slots.pile !== undefined ? next : undefined
    if (near && PLACED[act.frame] === PLACED[near.act.frame]) act.slots.pile = near.act.slots.pile
    else if (before && before.act.slots.pile !== undefined && before.act.slots.pile !== 'all' && before.sentence === sentence && (act.frame === 'damage' || act.frame === 'patch' || act.frame === 'cover' || act.frame === 'pack' || act.frame === 'size' || act.frame === 'face')) act.slots.pile = before.act.slots.pile
  }
}

/** Hail that broke a cover at a time that is told, or of a size, is weather too. */
const withWeather = (acts: { act: Act; sentence: number }[]): void => {
  if (acts.some(a => a.act.frame === 'weather')) return
  const at = acts.findIndex(a => a.act.frame === 'damage' && a.act.mood === 'fact' && a.act.slots.cause === 'hail' && (a.act.date?.explicit === true || a.act.slots.inches !== undefined))
  if (at < 0) return
  const { act, sentence } = acts[at]!
  const { inches } = act.slots
  delete act.slots.inches
  acts.splice(at, 0, { sentence, act: { ...act, frame: 'weather', slots: { kind: 'hail', ...(inches === undefined ? {} : { inches }) }, left: 0, leftWords: [], leftNumbers: 0, full: true } })
}

const MERGES = new Set(['size', 'pack', 'ration', 'feed', 'weather', 'damage'])

/** Two clauses that tell one thing in two breaths are one: "34 wide and 94 long", "took 2 ft off and fed 11k". */
const merge = (acts: { act: Act; sentence: number }[]): void => {
  for (let k = 1; k < acts.length; k++) {
    const a = acts[k - 1]!.act
    const b = acts[k]!.act
    if (acts[k - 1]!.sentence !== acts[k]!.sentence || a.mood !== b.mood) continue
    const sized = a.frame === 'pile' && b.frame === 'size'
    if (!sized && (a.frame !== b.frame || !MERGES.has(a.frame))) continue
    if (a.date && b.date && a.date.past !== b.date.past) continue
    const { pile, ...rest } = b.slots
    if (!sized && pile !== undefined && a.slots.pile !== undefined && pile !== a.slots.pile) continue
    if (a.frame === 'damage' && (b.slots.cause !== 'unknown' || (a.slots.what !== undefined && b.slots.what !== a.slots.what) || a.slots.count !== undefined)) continue
    if (a.frame === 'damage') delete rest.cause
    const clash = Object.entries(rest).some(([s, v]) => v !== undefined && a.slots[s] !== undefined && a.slots[s] !== v)
    if (clash || b.vague || b.strange) continue
    Object.assign(a.slots, rest, pile !== undefined && !sized && a.slots.pile === undefined ? { pile } : {})
    a.used += b.used
    a.left += b.left
    a.leftNumbers += b.leftNumbers
    acts.splice(k, 1)
    k--
  }
}

/** Frames whose pile is likely one and the same in one breath. */
const PLACED: Record<string, number> = { load: 1, pack: 1, feed: 2, face: 2, spoil: 2, empty: 2, damage: 3, patch: 3, check: 3, cover: 4, size: 4, open: 5, shift: 6 }

/** Reads one message: pure, and never throws on any text. */
export const read = (text: string, ctx: ReadContext): Reading => {
  const trace: string[] = []
  const tokens = spellOut(tokenise(text, mostTokens), ctx.names.taught).slice(0, mostTokens)
  const s = scan(tokens, ctx.names, (words, taken) => findDates(words, taken, ctx.now), ctx.lang)
  const explain = ctx.explain === true
  if (explain) trace.push(`words: ${s.items.map(i => `${i.text}‹${i.sides ? `sides ${i.sides.join('x')}` : i.num !== undefined ? `${i.num}${i.unit ? ` ${i.unit}` : ''}` : i.date ? `${i.date.past}/${i.date.future}` : i.senses.join('|') || '?'}›`).join(' ')}`)
  const items = repair(s.items, trace)
  const found: { act: Act; sentence: number }[] = []
  const asks: Reading['asks'] = []
  let unread = 0
  let explained = 0
  let carried: Mood | undefined
  for (const [n, sentence] of sentences(items).entries()) {
    const run = sentence.items
    const word = wordy(run, text)
    if (word) {
      found.push({ act: word, sentence: n })
      explained += word.used
      continue
    }
    if (isQuestion(run, sentence.mark)) {
      const ask = readAsk(run)
      if (ask) {
        asks.push(ask)
        explained += ask.used
        unread += ask.left
      } else unread += run.reduce((t, i) => t + Math.max(weightOf(i), i.senses.length ? 0 : 1), 0)
      if (explain) trace.push(`asks: ${ask ? `${ask.about} ${JSON.stringify(ask.slots)}` : 'something else'}`)
      // a question tells nothing, but "7 loads on creek, how many is that?" would: only clauses before it in other sentences count
      continue
    }
    if (run.length > 70) {
      unread += run.reduce((t, i) => t + (i.senses.length ? 0.3 : 1), 0)
      continue
    }
    carried = undefined
    let from = 0
    let lost = 0
    const first = found.length
    const goesOn = n === 0 && (has(run[0], 'and') || run.some(i => has(i, 'more')))
    for (const seg of clauses(run, goesOn ? ctx.last : undefined)) {
      if (!seg.act) {
        // a number that no clause explains makes the whole sentence doubtful
        lost += run.slice(seg.from, seg.to).filter(i => i.num !== undefined || i.sides !== undefined).length
        for (let k = seg.from; k < seg.to; k++) unread += weightOf(run[k]!)
        // a mood said in a clause of its own reaches the next: "hope | it hails"
        continue
      }
      const mood = moodOf(run, from, seg, carried)
      if (mood === 'hope' || mood === 'if' || mood === 'hearsay' || mood === 'plan') carried = mood === 'plan' && !run.slice(from, seg.to).some(i => has(i, 'm:plan')) ? undefined : mood
      seg.act.mood = FORWARD.has(seg.act.frame) && mood !== 'denial' && mood !== 'hope' && mood !== 'hearsay' ? 'fact' : mood === 'fact' && seg.order ? 'order' : mood
      // "checked north, not one hole": the denial of harm is the finding
      if (mood === 'denial' && seg.act.frame === 'damage' && run.slice(seg.from, seg.to).some(i => has(i, 'v:check'))) {
        const { pile } = seg.act.slots
        Object.assign(seg.act, { frame: 'check', mood: 'fact', slots: { finding: 'good', ...(pile === undefined ? {} : { pile }) } })
      }
      if (seg.act.frame === 'supply' && mood === 'denial') seg.act.mood = 'denial'
      from = seg.to
      explained += seg.act.used
      unread += seg.act.left
      if (seg.several) for (const one of seg.several) found.push({ act: { ...seg.act, slots: { ...seg.act.slots, ...one } }, sentence: n })
      else found.push({ act: seg.act, sentence: n })
      for (const pile of seg.morePiles ?? []) found.push({ act: { ...seg.act, slots: { ...seg.act.slots, pile } }, sentence: n })
    }
    if (lost) for (const f of found.slice(first)) f.act.leftNumbers += lost
  }
  lend(found)
  withWeather(found)
  merge(found)
  const acts = distribute(found.map(f => f.act), items)
  if (explain) for (const a of acts) trace.push(`${a.frame} (${a.mood}) ${JSON.stringify(a.slots)}${a.date ? ` on ${a.date.past}` : ''}${a.left ? ` left over: ${a.leftWords.join(', ')}` : ''}`)
  const fix = fixOf(s.items)
  if (fix && explain) trace.push(`corrects: ${fix.kind} ${JSON.stringify(fix.slots)} not ${JSON.stringify(fix.wrong)}`)
  const words = items.filter(i => i.tokens.some(t => t.kind !== 'mark')).length
  const unknown = items.filter(i => !i.senses.length).length
  const trade = items.filter(i => i.num !== undefined || i.sides || i.senses.some(x => /^(pile|crop|v|mat|what|cause|animal|sky|unit|thing|find|box):/.test(x))).length
  const code = /[{}[\]<>]|":/.test(text)
  const chatter = code || items.some(i => has(i, '<link>') || has(i, '<phone>')) || unread > Math.max(3, explained * 0.8) || unknown > Math.max(4, words * 0.4)
  if (explain) trace.push(`explained ${explained.toFixed(1)}, left over ${unread.toFixed(1)}`)
  const plain = bareFix(s.items)
  const lesson = lessonIn(text)
  const forget = lesson ? undefined : forgottenIn(text, ctx.names.taught)
  return { lang: s.lang, lesson, forget, asksLessons: asksLessons(text), plain, acts: code ? [] : acts, asks, fix, bare: bareOf(items), chatter, trade, words, questionMark: /[?¿]/.test(text), trace }
}

/** "patched barn and shop, 3 holes on each": what was said of both belongs to each. */
const distribute = (acts: Act[], items: Item[]): Act[] => {
  const out: Act[] = []
  const each = items.some(i => has(i, 'each'))
  for (const a of acts) {
    const prev = out.at(-1)
    if (each && prev && a.frame === 'damage' && prev.frame === 'patch' && a.mood === 'fact' && a.slots.cause === 'unknown') {
      for (const p of out.filter(x => x.frame === 'patch')) p.slots.count ??= a.slots.count
      continue
    }
    out.push(a)
  }
  return out
}
