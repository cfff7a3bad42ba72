import type { Choice, Draft, Question } from '../book/questions.ts'
import { inFt, inLb } from '../reading/frames/slots.ts'
import type { Act, Reading } from '../reading/reading.ts'
import { dateIn } from '../reading/wish/chore.ts'
import { TAPPED } from '../watch/item.ts'
import type { Context } from './context.ts'
import { wasWet } from './correct.ts'

/** What a message does to an open question. */
export type Effect =
  | { act: 'fill'; slots: Record<string, unknown> }
  | { act: 'sure' }
  | { act: 'drop' }
  | { act: 'pile'; name: string }
  | { act: 'undo' }
  | { act: 'take'; drafts: Draft[] }

/** A question lapses after a day and a half, ms: by then nobody knows what "8" was an answer to. */
export const LAPSES = 36 * 3_600_000

export const lapsed = (c: Context, q: Question): boolean => Date.parse(c.message.at) - Date.parse(q.at) > LAPSES

/** So long after a question has lapsed nobody will hear that it has, ms. */
const HEARD = 3 * 24 * 3_600_000
export const over = (c: Context, q: Question): boolean => Date.parse(c.message.at) - Date.parse(q.at) > LAPSES + HEARD

/** Open questions of this chat, newest first, that this person may answer. */
export const openQuestions = (c: Context): Question[] =>
  [...c.book.questions.values()]
    .filter(q => q.chat === c.message.chat && !lapsed(c, q) && q.slot !== TAPPED && (q.to === c.message.from || !c.message.private))
    .reverse()

const ofChoice = (q: Question, ch: Choice): Effect =>
  ch.act === 'fill'
    ? { act: 'fill', slots: { [q.slot === 'amount' ? 'lb' : q.slot!]: ch.value } }
    : ch.act === 'pile'
      ? { act: 'pile', name: String(ch.value) }
      : ch.act === 'undo'
        ? { act: 'undo' }
        : ch.act === 'take'
          ? { act: 'take', drafts: ch.value as Draft[] }
          : { act: ch.act as 'sure' | 'drop' }

/** A statement of its own, not an answer: it says something that the draft denies, or is about another thing, be it said whole or not. */
const standsAlone = (q: Question, acts: Act[]): boolean =>
  acts.some(a => {
    if (a.mood !== 'fact') return false
    const d = q.drafts[0]
    if (!a.full) return d !== undefined && d.type !== a.frame && a.slots.pile !== undefined && q.slot === 'pile'
    if (!d || d.type !== a.frame) return true
    return Object.entries(a.slots).some(
      ([k, v]) => v !== undefined && d.slots[k] !== undefined && d.slots[k] !== v && k !== q.slot && !(k === 'cause' && v === 'unknown'),
    )
  })

/** What is told of a place on a cover. */
const ON_COVER = new Set<string>(['damage', 'patch'])

/** Words that may stand unexplained behind a word of answer. */
const MOST_REASON = 6

/** Slots that are answered by a name or a word, never by a number. */
const NAMED = new Set(['pile', 'toPile', 'crop', 'finding', 'why'])

/** How a message answers a question; undefined where it does not. */
export const effectOf = (c: Context, q: Question, r: Reading): Effect | undefined => {
  const own = q.to === c.message.from
  const replied = c.message.replyTo !== undefined && (c.message.replyTo === q.id || c.message.replyTo === q.source.id)
  if (c.message.pick && c.message.pick.question === q.id) {
    const ch = q.choices[c.message.pick.choice]
    if (ch) return ofChoice(q, ch)
  }
  const text = c.message.text
    .trim()
    .toLowerCase()
    .replace(/[.!]+$/, '')
  const exact = q.choices.find(ch => typeof ch.label === 'string' && ch.label.toLowerCase() === text)
  if (exact) return ofChoice(q, exact)
  if (r.asks.length || r.questionMark) return undefined
  const b = r.bare
  if (standsAlone(q, r.acts)) return undefined
  if (b.size > 12) return undefined
  // an answer is short: words that explain nothing make it something else
  if (b.rest > (own ? 2 : 0) && !(own && b.leads && b.rest <= MOST_REASON) && q.slot !== 'about' && q.slot !== 'name') return undefined
  const merge = r.acts.find(a => a.mood === 'fact' && a.frame === q.drafts[0]?.type)
  const code = q.ask.code
  if (b.drop && !b.numbers.length && !b.piles.length && (b.rest <= 1 || (own && b.leads === 'drop'))) return { act: 'drop' }
  if (b.pick !== undefined && b.rest <= 1 && q.choices.length && b.crops.length === 0 && !b.piles.length) {
    const real = q.choices.filter(ch => ch.act !== 'drop')
    const ch = b.pick === 'last' ? real.at(-1) : real[b.pick - 1]
    if (ch && !(code === 'ask-same')) return ofChoice(q, ch)
  }
  // "1" where no number is asked for: the first of the choices
  const nth = b.numbers.length === 1 && b.size === 1 && b.numbers[0]!.unit === undefined ? b.numbers[0]!.num! : 0
  if (Number.isInteger(nth) && nth >= 1 && nth <= q.choices.length && (q.slot === undefined || NAMED.has(q.slot)) && (own || replied))
    return ofChoice(q, q.choices[nth - 1]!)
  // what was heard is confirmed by a yes to the first wording
  if (code.startsWith('ask-heard')) {
    if (b.yes && !b.no && b.rest <= 1) return ofChoice(q, q.choices[0]!)
    if (b.no && b.size <= 2 && b.rest === 0) return { act: 'drop' }
  }
  switch (code) {
    case 'ask-same':
      // "more. well, 5 more"
      if (
        (b.more || b.no) &&
        !b.same &&
        b.numbers.length === 1 &&
        b.numbers[0]!.num !== q.drafts[0]?.slots.count &&
        q.drafts[0]?.slots.count !== undefined
      )
        return { act: 'fill', slots: { count: b.numbers[0]!.num } }
      if (b.more || (b.no && !b.same)) return { act: 'sure' }
      if (b.same || (b.yes && own)) return { act: 'drop' }
      return undefined
    case 'ask-in-all': {
      const all = q.choices.find(ch => ch.act === 'fill')
      if (b.all && all) return ofChoice(q, all)
      // "12 so far", answered by "3 more": so many have come since
      if (all && b.numbers.length === 1 && b.numbers[0]!.num === all.value) return ofChoice(q, all)
      if (b.more) return { act: 'sure' }
      return undefined
    }
    case 'ask-others':
    case 'ask-remove':
    case 'ask-meant':
      if (b.yes && !b.no && b.rest <= 1) return code === 'ask-meant' ? { act: 'sure' } : { act: 'undo' }
      if (b.no && b.rest <= 1) return { act: 'drop' }
      return undefined
    case 'ask-face-back':
      if (b.numbers.length === 1)
        return b.numbers[0]!.num === q.drafts[0]?.slots[q.slot!] ? { act: 'sure' } : fillNumber(q, b.numbers[0]!.num!)
      if (b.yes && !b.no) return { act: 'sure' }
      if (b.no) return { act: 'drop' }
      return undefined
    case 'ask-implausible':
      if (b.numbers.length === 1 && (own || replied)) {
        const n = b.numbers[0]!
        const share = q.slot === 'dmPct' && wasWet(q.drafts[0]!.slots) ? 100 - n.num! : n.num!
        const lb = q.slot === 'lb' ? (inLb(n) ?? n.num!) : share
        if (lb === q.drafts[0]?.slots[q.slot!]) return { act: 'sure' }
        return fillNumber(q, lb)
      }
      if (b.yes && !b.no && b.rest <= 1) return { act: 'sure' }
      if (b.no && b.size <= 2 && b.rest === 0) return { act: 'drop' }
      return undefined
  }
  const slots: Record<string, unknown> = {}
  if (merge && (own || replied))
    for (const [k, v] of Object.entries(merge.slots))
      if (v !== undefined && q.drafts[0]!.slots[k] === undefined && !(k === 'cause')) slots[k] = v
  // "corn, and it was 8 not 7"
  if (own && b.denied !== undefined && b.denied === q.drafts[0]?.slots.count && b.numbers.length === 1) slots.count = b.numbers[0]!.num
  switch (q.slot) {
    case 'pile':
    case 'toPile':
      // "its the barn and its 3": more than was asked, and it contradicts what was told
      if (b.numbers.length && q.drafts[0]?.slots.count !== undefined && b.numbers.every(n => n.num !== q.drafts[0]!.slots.count))
        return undefined
      // "shop, west end"
      if (ON_COVER.has(q.drafts[0]?.type ?? '') && q.drafts[0]!.slots.where === undefined && b.where?.includes(' ')) slots.where ??= b.where
      if (b.piles.length === 1) return { act: 'fill', slots: { ...slots, [q.slot]: b.piles[0] } }
      if (code === 'ask-unknown-pile') {
        const fresh = q.choices.find(ch => ch.act === 'pile')
        if (fresh && ((b.yes && !b.no) || /\b(new|nueva|nuevo)\b/.test(text))) return ofChoice(q, fresh)
        if (b.no && b.size <= 2 && b.rest === 0) return { act: 'drop' }
      }
      if (q.drafts[0]?.type === 'check' && (b.all || /\b(all|both|every\w*|todas?|todos?|ambas?)\b/.test(text)))
        return { act: 'fill', slots: { pile: 'all' } }
      return undefined
    case 'crop':
      if (b.crops.length === 1) return { act: 'fill', slots: { ...slots, ...b.crops[0] } }
      return undefined
    case 'finding':
      if (b.good || b.yes) return { act: 'fill', slots: { finding: 'good' } }
      if (b.trouble || b.no) return { act: 'fill', slots: { finding: 'trouble' } }
      return undefined
    case 'why':
      if (b.why) return { act: 'fill', slots: { why: b.why } }
      return undefined
    case 'on': {
      const date = own ? dateIn(c.message.text, { day: c.day, hour: c.hour }) : undefined
      return date && { act: 'fill', slots: { on: date.future, ...(date.time && q.drafts[0]?.type === 'remind' && { time: date.time }) } }
    }
    case 'about':
    case 'name':
      return own && b.size <= 8 ? { act: 'fill', slots: { [q.slot]: c.message.text.trim() } } : undefined
  }
  if (b.numbers.length === 1 && (own || replied || b.rest === 0)) {
    const n = b.numbers[0]!
    const type = q.drafts[0]?.type
    if (q.slot === 'amount') {
      const lb = inLb(n)
      if (lb !== undefined) return { act: 'fill', slots: { ...slots, lb } }
      if (n.unit === 'load' || n.unit === 'bucket' || n.unit === 'batch')
        return { act: 'fill', slots: { ...slots, count: n.num, ...(n.unit === 'load' ? {} : { unit: n.unit }) } }
      if (n.unit === 'ft') return { act: 'fill', slots: { ...slots, ft: inFt(n) } }
      const counted = q.drafts[0]?.slots.unit !== undefined ? 500 : 50
      if (n.unit === undefined) return { act: 'fill', slots: { ...slots, [n.num! >= counted ? 'lb' : 'count']: n.num } }
      return undefined
    }
    if (q.slot === 'count' && type === 'load') {
      const lb = inLb(n)
      return {
        act: 'fill',
        slots: { ...slots, ...(lb !== undefined ? { lb } : { count: n.num, ...(n.unit === 'bucket' ? { unit: 'bucket' } : {}) }) },
      }
    }
    if (q.slot && n.num !== undefined) return { act: 'fill', slots: { ...slots, [q.slot]: n.num } }
  }
  return undefined
}

const fillNumber = (q: Question, value: number): Effect => ({ act: 'fill', slots: { [q.slot!]: value } })

/** The drafts of a question after its answer. */
export const applied = (q: Question, effect: Effect): Draft[] => {
  if (effect.act === 'take') return effect.drafts
  if (effect.act === 'fill') {
    return q.drafts.map((d, k) => {
      const slots = { ...d.slots }
      for (const [key, v] of Object.entries(effect.slots)) {
        if (k === 0 || slots[key] === undefined) slots[key] = v
      }
      if (effect.slots.pile !== undefined || effect.slots.toPile !== undefined) delete slots.strange
      // "a few buckets", answered by a weight
      if (effect.slots.lb !== undefined && slots.count === undefined) delete slots.unit
      return { ...d, slots }
    })
  }
  return q.drafts
}
