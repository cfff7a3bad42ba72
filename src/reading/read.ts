import type { Day } from '../units/calendar.ts'
import { absorbed } from './absorbed.ts'
import { bareOf } from './bare.ts'
import { clauses } from './clauses.ts'
import { culpritIn } from './culprit.ts'
import { dailyFeed } from './daily.ts'
import { findDates } from './dates.ts'
import { isQuestion } from './isQuestion.ts'
import { has, hasCat, type Item, isVerb, valueOf } from './item.ts'
import { distribute, isCause, isPatched, isWhy } from './join.ts'
import { moodOf, moodOfAct } from './mood.ts'
import type { NameIndex } from './names.ts'
import { narrowed } from './narrow.ts'
import { isThin, weightOf } from './pool.ts'
import { withoutPrices } from './priceAside.ts'
import { asksIn } from './questions.ts'
import { isQuoted } from './quoted.ts'
import type { Act, FrameName, Mood, Reading } from './reading.ts'
import { withoutReason } from './reason.ts'
import { repair, setsRight } from './repair.ts'
import { type Lang, scan } from './scan.ts'
import { sentences } from './sentences.ts'
import { bareFix, fixOf } from './talk.ts'
import { spellOut } from './taught.ts'
import { together } from './together.ts'
import { tokenise } from './tokens.ts'
import { onTopic, topicOf } from './topic.ts'
import { unplaced } from './unplaced.ts'
import { wholeMessage } from './wholeMessage.ts'
import { wordy } from './wordy.ts'

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

const REPORTED = new Set(['load', 'feed', 'spoil', 'patch', 'damage', 'cover', 'supply'])
const MORE = /^(?:more|mor|another|additional|extra|mas|otros?|otras?)$/

/** Words beyond these are talk. */
const mostTokens = 240

/** A message that names one of these is no bare time. */
const THINGS = ['pile', 'crop', 'mat', 'box', 'animal', 'what']

const MOST_TOLD = 30

/** "another 5 loads corn on creek, whats that make" tells without a verb. */
const HAULED = new Set(['load', 'bucket', 'batch', 'ton', 'lb'])

/** Where the question begins in a sentence that tells something first, and asks behind a comma; 0 where none does. */
const toldFirst = (run: Item[], mark: boolean): number => {
  // a long tale with a question in it is talk
  if (run.length > MOST_TOLD) return 0
  for (let k = run.length - 2; k > 1; k--) {
    if (!has(run[k], 'comma')) continue
    const told = run.slice(0, k)
    // "rdy to cover, how big a sheet": nothing is told, and what is asked is
    const idle = !told.some(i => i.num !== undefined || i.sides || isVerb(i))
    if (!idle && !told.some(i => isVerb(i) || (i.num !== undefined && HAULED.has(i.unit ?? '')))) continue
    if (!idle && !told.some(i => i.num !== undefined)) continue
    if (!isQuestion(told, false) && isQuestion(run.slice(k + 1), false) && (mark || run.slice(k + 1).some(i => hasCat(i, 'q'))))
      return k + 1
  }
  return 0
}

/** "today 11200": of what was told the sentence before. */
const isDayAndAmount = (run: Item[]): boolean =>
  run.length < 6 &&
  run.some(i => i.date) &&
  run.some(i => i.num !== undefined) &&
  run.every(i => i.date || (i.num !== undefined && !i.ordinal) || isThin(i) || has(i, 'comma') || has(i, 'and'))

const TRADE = /^(?:pile|crop|v|mat|what|cause|animal|sky|unit|thing|find|box):/
// the lists of senses are shared by all messages
const ofTrade = new WeakMap<string[], boolean>()
const isTrade = (i: Item): boolean => {
  if (i.num !== undefined || i.sides) return true
  let known = ofTrade.get(i.senses)
  if (known === undefined) {
    known = i.senses.some(x => TRADE.test(x))
    ofTrade.set(i.senses, known)
  }
  return known
}

/** Words of a message by kind; `away`: it has a link or a telephone number. */
const tally = (items: Item[]): { words: number; unknown: number; trade: number; hoped: boolean; away: boolean } => {
  const out = { words: 0, unknown: 0, trade: 0, hoped: false, away: false }
  for (const i of items) {
    if (i.tokens.some(t => t.kind !== 'mark')) out.words++
    if (!i.senses.length) out.unknown++
    if (isTrade(i)) out.trade++
    if (has(i, 'm:hope')) out.hoped = true
    if (has(i, '<link>') || has(i, '<phone>')) out.away = true
  }
  return out
}

/** Reads one message: pure, and never throws on any text. */
export const read = (text: string, ctx: ReadContext): Reading => {
  const trace: string[] = []
  const typed = tokenise(text, mostTokens)
  const tokens = ctx.names.taught.size ? spellOut(typed, ctx.names.taught).slice(0, mostTokens) : typed
  const s = scan(tokens, ctx.names, (words, taken) => findDates(words, taken, ctx.now), ctx.lang)
  const explain = ctx.explain === true
  if (explain)
    trace.push(
      `words: ${s.items.map(i => `${i.text}‹${i.sides ? `sides ${i.sides.join('x')}` : i.num !== undefined ? `${i.num}${i.unit ? ` ${i.unit}` : ''}` : i.date ? `${i.date.past}/${i.date.future}` : i.senses.join('|') || '?'}›`).join(' ')}`,
    )
  const said = narrowed(s.items)
  const items = absorbed(withoutPrices(repair(said, trace, s.lang)))
  const found: { act: Act; sentence: number }[] = []
  const asks: Reading['asks'] = []
  let unread = 0
  let explained = 0
  let strangeQuestion = false
  let carried: Mood | undefined
  for (const [n, sentence] of sentences(items).entries()) {
    let run = sentence.items
    const word = wordy(run, text, ctx.now.day)
    if (word) {
      for (const act of word) {
        found.push({ act, sentence: n })
        explained += act.used
      }
      continue
    }
    const cut = toldFirst(run, sentence.mark)
    if (cut > 0 || isQuestion(run, sentence.mark)) {
      // a question somewhere in a long tale is somebody's in the tale
      const real = asksIn(cut > 0 ? run.slice(cut) : run).filter(
        a => !(a.left > 2 * a.used && run.length > (a.about === 'loads' ? 14 : MOST_TOLD)),
      )
      for (const ask of real) {
        asks.push(ask)
        explained += ask.used
        unread += ask.left
        if (explain) trace.push(`asks: ${ask.about} ${JSON.stringify(ask.slots)}`)
      }
      if (!real.length) {
        unread += run.reduce((t, i) => t + Math.max(weightOf(i), i.senses.length ? 0 : 1), 0)
        strangeQuestion = true
        if (explain) trace.push('asks: something else')
      }
      // "put 4 loads on north, how many is that?"
      if (cut > 0) run = run.slice(0, cut)
      // a question tells nothing, but "7 loads on creek, how many is that?" would: only clauses before it in other sentences count
      else continue
    }
    const days = dailyFeed(run)
    if (days) {
      for (const act of days) {
        found.push({ act, sentence: n })
        explained += act.used
      }
      continue
    }
    if (run.length > 70) {
      unread += run.reduce((t, i) => t + (i.senses.length ? 0.3 : 1), 0)
      continue
    }
    carried = undefined
    let forecast = false
    let from = 0
    let lost = 0
    let culprit: Item | undefined
    let topic: string | undefined
    const first = found.length
    const goesOn = has(run[0], 'and') || run.some(i => has(i, 'more')) || (n > 0 && isDayAndAmount(run))
    for (const seg of clauses(run, goesOn ? (found.at(-1)?.act.frame ?? (n === 0 ? ctx.last : undefined)) : undefined)) {
      if (!seg.act) {
        if (seg.from === 0) topic = topicOf(run.slice(0, seg.to))
        if (topic !== undefined && seg.from === 0) continue
        // what no clause explains makes the whole sentence doubtful
        const left = unplaced(run.slice(seg.from, seg.to))
        // "so that's thirteen": the sum of what was just told
        const sum = found.slice(first).reduce((t, f) => t + (f.act.frame === 'load' ? Number(f.act.slots.count ?? 0) : 0), 0)
        culprit = culpritIn(run.slice(seg.from, seg.to)) ?? culprit
        if (!(left.length === 1 && left[0]!.num === sum && run.slice(seg.from, seg.to).some(i => hasCat(i, 'fix') || has(i, 'total'))))
          lost += left.length
        for (let k = seg.from; k < seg.to; k++) unread += weightOf(run[k]!)
        // a mood said in a clause of its own reaches the next: "hope | it hails"
        continue
      }
      // "calling for 2 inches, so we hustled: 6 loads on creek": a forecast rules the sky alone
      const ruled = carried === 'hearsay' && forecast && seg.act.frame !== 'weather' ? undefined : carried
      const mood = moodOf(run, from, seg, ruled, found.at(-1)?.act.mood === 'fact')
      forecast = mood === 'hearsay' && seg.act.frame === 'weather'
      if (mood === 'hope' || mood === 'if' || mood === 'hearsay' || mood === 'plan')
        carried =
          mood === 'plan' && !run.slice(from, seg.to).some((i, k) => has(i, 'm:plan') || (k < 2 && i.date?.ahead)) ? undefined : mood
      seg.act.mood = moodOfAct(mood, seg, run, from)
      // "checked north, not one hole": the denial of harm is the finding
      if (mood === 'denial' && seg.act.frame === 'damage' && run.slice(seg.from, seg.to).some(i => has(i, 'v:check'))) {
        const { pile } = seg.act.slots
        Object.assign(seg.act, { frame: 'check', mood: 'fact', slots: { finding: 'good', ...(pile === undefined ? {} : { pile }) } })
      }
      if (seg.act.frame === 'supply' && mood === 'denial') seg.act.mood = 'denial'
      if (found.length > first && (isCause(seg.act, run, seg.from, seg.to) || isWhy(seg.act, run.slice(from, seg.from + 1)))) {
        from = seg.to
        continue
      }
      const patched = found.length > first ? found.at(-1)!.act : undefined
      if (isPatched(patched, seg.act, run.slice(seg.from, seg.to))) {
        Object.assign(patched!.slots, {
          count: seg.act.slots.count,
          ...(seg.act.slots.where !== undefined && { where: seg.act.slots.where }),
        })
        explained += seg.act.used
        from = seg.to
        continue
      }
      // "se metieron las vacas y le hicieron 6 hoyos": who did it stands in a clause of its own
      if (culprit && seg.act.frame === 'damage' && seg.act.slots.cause === 'unknown') {
        const animal = valueOf(culprit, 'animal')
        Object.assign(seg.act.slots, animal === undefined ? { cause: 'machine' } : { cause: 'animal', animal })
        if (animal !== undefined) lost--
        culprit = undefined
      }
      // "ten of corn nope I lied eleven": one of the two is wrong, and nobody can tell which
      if (found.length > first && found.at(-1)!.act.frame === seg.act.frame && setsRight(run, from, seg.to)) lost++
      // "5 more loads", "another 9k": not the ones told before
      if (REPORTED.has(seg.act.frame) && run.slice(seg.from, seg.to).some(i => i.tokens.some(t => MORE.test(t.norm)))) seg.act.more = true
      from = seg.to
      explained += seg.act.used
      unread += seg.act.left
      // "otros 4 viajes, ya van 10": how many they are by now
      if (
        seg.act.frame === 'load' &&
        found.length > first &&
        found.at(-1)!.act.frame === 'load' &&
        run.slice(seg.from, seg.to).some(i => /^(?:ya )?(?:van|llevamos)$/.test(i.text.toLowerCase()))
      )
        seg.act.total = true
      if (seg.several) for (const one of seg.several) found.push({ act: { ...seg.act, slots: { ...seg.act.slots, ...one } }, sentence: n })
      else found.push({ act: seg.act, sentence: n })
      for (const pile of seg.morePiles ?? []) found.push({ act: { ...seg.act, slots: { ...seg.act.slots, pile } }, sentence: n })
    }
    if (topic !== undefined)
      onTopic(
        found.slice(first).map(f => f.act),
        topic,
      )
    // what one clause could not place may belong to its neighbour: both are asked about
    const facts = found.slice(first).filter(f => f.act.mood === 'fact')
    if (facts.length > 1) lost += facts.reduce((t, f) => t + f.act.leftNumbers, 0)
    if (lost) for (const f of found.slice(first)) f.act.leftNumbers += lost
  }
  // "who wants tamales? I brought 2 dozen", a telephone number: what is counted there is not said to be feed
  const offTopic = strangeQuestion || items.some(i => has(i, '<phone>'))
  if (offTopic)
    for (const { act } of found) {
      const unnamed = act.frame === 'load' && act.slots.crop === undefined && act.slots.box === undefined
      if ((unnamed || (act.frame === 'cover' && act.slots.pile === undefined)) && act.mood === 'fact') act.mood = 'hearsay'
    }
  // "'put 7 loads on north' is what I told him": somebody's words
  if (isQuoted(text)) for (const f of found) if (f.act.mood === 'fact') f.act.mood = 'hearsay'
  together(found)
  const acts = distribute(
    found.map(f => f.act),
    items,
  )
  if (explain)
    for (const a of acts)
      trace.push(
        `${a.frame} (${a.mood}) ${JSON.stringify(a.slots)}${a.date ? ` on ${a.date.past}` : ''}${a.left ? ` left over: ${a.leftWords.join(', ')}` : ''}`,
      )
  const fix = fixOf(said)
  if (fix && explain) trace.push(`corrects: ${fix.kind} ${JSON.stringify(fix.slots)} not ${JSON.stringify(fix.wrong)}`)
  const { words, unknown, trade, hoped, away } = tally(items)
  const code = /[{}[\]<>]|":/.test(text)
  const chatter = code || away || unread > Math.max(3, explained * 0.8) || unknown > Math.max(4, words * 0.4)
  if (explain) trace.push(`explained ${explained.toFixed(1)}, left over ${unread.toFixed(1)}`)
  const plain = bareFix(said)
  const things = s.items.some(i => i.sides !== undefined || THINGS.some(cat => hasCat(i, cat)))
  return {
    lang: s.lang,
    ...wholeMessage(text, typed, ctx.names, ctx.now, things),
    cut: tokens.length >= mostTokens,
    plain,
    acts: code ? [] : acts,
    asks,
    fix,
    bare: bareOf(withoutReason(items)),
    chatter,
    hoped,
    trade,
    words,
    questionMark: /[?¿]/.test(text),
    trace,
  }
}
