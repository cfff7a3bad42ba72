import { boxes, nameOf, pileState } from '../book/book.ts'
import { checkEvent, type Event, type EventType } from '../book/events.ts'
import type { Choice, Draft, Message } from '../book/questions.ts'
import {
  askAmount,
  askCount,
  askCrop,
  askFaceBack,
  askImplausible,
  askMeant,
  askPile,
  askSame,
  askSlot,
  askUnknownPile,
  choice,
} from '../saying/ask.ts'
import { phrase } from '../saying/phrases.ts'
import type { Context, Need } from './context.ts'
import { within } from './context.ts'
import { likelyCounts, likelyOf, likelyWeights } from './counts.ts'
import { doubtOf } from './doubts.ts'
import { defaultCrop, defaultPile, fitting, nearNames } from './piles.ts'

/** Types that stand on a pile. */
const ON_PILE = new Set<EventType>([
  'load',
  'pack',
  'size',
  'cover',
  'damage',
  'patch',
  'check',
  'open',
  'feed',
  'face',
  'spoil',
  'shift',
  'empty',
])

const fill = (label: string | Message, value: unknown): Choice => ({ label, act: 'fill', value })
const drop: Choice = { label: choice.neverMind, act: 'drop' }

/** What is wrong or missing in a draft, or the event it makes. One question at a time, the pile first. */
export const certain = (c: Context, d: Draft, strange?: string): { event: Event } | { need: Need } => {
  const need = (ask: Message, choices: Choice[], more: Partial<Need> = {}) => ({ need: { ask, choices, draft: d, ...more } })
  const s = d.slots
  if (strange && ON_PILE.has(d.type)) {
    const near = nearNames(c.book, strange)
    s.strange = strange
    return need(
      askUnknownPile(strange, near),
      [...near.map(n => fill(n, n)), { label: choice.newPile(strange), act: 'pile', value: strange }, drop],
      // "pushed 10 ft of shop onto the knob": it is where it went that nobody knows
      { slot: d.type === 'shift' && s.pile !== undefined ? 'toPile' : 'pile' },
    )
  }
  if (d.type === 'pile') {
    if (typeof s.name !== 'string') return need(askSlot('name'), [], { slot: 'name' })
    s.name = (s.name as string).toLowerCase()
  }
  if (ON_PILE.has(d.type) && s.pile === undefined) {
    const pile = defaultPile(c, d)
    if (pile) s.pile = pile
    else {
      const fits = fitting(c.book, d)
      const all = fits.length ? fits : fitting(c.book, { ...d, type: 'note' })
      return need(
        askPile({ type: d.type, ...s } as never),
        [...all.slice(0, 6).map(n => fill(n, n)), ...(d.type === 'check' ? [fill({ code: 'choice-all', data: {} }, 'all')] : []), drop],
        { slot: 'pile' },
      )
    }
  }
  const pile = typeof s.pile === 'string' ? s.pile : undefined
  if (d.type === 'shift' && s.toPile === undefined) {
    const fits = fitting(c.book, { ...d, type: 'load' }).filter(p => p !== pile)
    if (fits.length === 1) s.toPile = fits[0]
    else return need(askPile({ type: d.type, ...s } as never), [...fits.map(n => fill(n, n)), drop], { slot: 'toPile' })
  }
  if (d.type === 'load' && s.crop === undefined) {
    const box = typeof s.box === 'string' ? boxes(c.book).get(s.box) : undefined
    const crop = box?.crop ? { crop: box.crop } : defaultCrop(c, pile!)
    if (crop) {
      s.crop = crop.crop
      if (crop && 'cut' in crop && crop.cut !== undefined) s.cut ??= crop.cut
    } else {
      const seen = new Set(
        (c.book.byPile.get(pile!) ?? []).flatMap(l => (l.event.type === 'load' && l.withdrawnBy === undefined ? [l.event.crop] : [])),
      )
      const offer = [...new Set([...seen, 'corn silage', 'haylage'])].slice(0, 4)
      return need(askCrop(pile), [...offer.map(x => fill({ code: 'crop-said', data: { crop: x } }, x)), drop], { slot: 'crop' })
    }
  }
  if (d.type === 'load' && s.count === undefined && s.lb === undefined)
    return need(
      askCount(s.crop as string, pile),
      likelyCounts(c, pile, s.unit as string | undefined).map(n => fill(String(n), n)),
      { slot: 'count' },
    )
  if ((d.type === 'feed' || d.type === 'spoil') && s.lb === undefined && s.count === undefined && s.ft === undefined)
    return need(
      askAmount(d.type, pile),
      likelyWeights(c, d.type, pile).map(lb => fill({ code: 'amount-lb', data: { n: lb } }, lb)),
      { slot: 'amount' },
    )
  if (d.type === 'check' && s.finding === undefined)
    return need(
      askSlot('finding'),
      [fill({ code: 'choice-good', data: {} }, 'good'), fill({ code: 'choice-trouble', data: {} }, 'trouble'), drop],
      { slot: 'finding' },
    )
  if (d.type === 'open' && s.why === undefined)
    return need(
      askSlot('why'),
      [fill({ code: 'choice-why-feed', data: {} }, 'feed'), fill({ code: 'choice-why-add', data: {} }, 'add'), drop],
      { slot: 'why' },
    )
  if (d.type === 'test' && s.dmPct === undefined) return need(askSlot('dmPct'), [], { slot: 'dmPct' })
  if (d.type === 'test' && s.pile === undefined && s.crop === undefined)
    return need(
      askSlot('crop'),
      [fill({ code: 'crop-corn-silage', data: {} }, 'corn silage'), fill({ code: 'crop-haylage', data: {} }, 'haylage'), drop],
      { slot: 'crop' },
    )
  if (d.type === 'supply' && s.count === undefined)
    return need(
      askSlot('count'),
      likelyOf(c, 'supply', { item: s.item }).map(n => fill(String(n), n)),
      { slot: 'count' },
    )
  if (d.type === 'remind' && s.about === undefined) return need(askSlot('about'), [], { slot: 'about' })
  if ((d.type === 'remind' || d.type === 'harvest') && s.on === undefined) return need(askSlot('on'), [drop], { slot: 'on' })
  // "done with north" said of a pile that is being filled is no end of its feed
  if (d.type === 'empty' && !d.sure.includes('stage') && pileState(c.book, pile!)?.stage === 'filling')
    return need(
      askMeant(phrase({ type: d.type, ...s } as never)),
      [
        { label: choice.yes, act: 'sure' },
        { label: choice.no, act: 'drop' },
      ],
      {
        doubt: 'stage',
      },
    )
  const doubt = doubtOf(c, d)
  if (doubt?.code === 'face-back')
    return need(askFaceBack(doubt.was!, doubt.value), [{ label: choice.asSaid(doubt.value), act: 'sure' }, drop], {
      slot: doubt.slot,
      doubt: doubt.code,
    })
  if (doubt)
    return need(
      askImplausible(doubt.slot, doubt.value, { unit: doubt.unit, pile: doubt.most !== undefined ? pile : undefined, most: doubt.most }),
      [...doubt.instead.map(v => fill(String(v), v)), { label: choice.asSaid(doubt.value), act: 'sure' }, drop],
      { slot: doubt.slot, doubt: doubt.code },
    )
  const twice = d.sure.includes('twice') || d.replaces.length ? undefined : sameReport(c, d)
  if (twice)
    return need(
      askSame(twice, { type: d.type, ...s } as never),
      [
        { label: choice.same, act: 'drop' },
        { label: choice.more, act: 'sure' },
      ],
      { doubt: 'twice' },
    )
  const { strange: _, ...clean } = s
  const event = Object.fromEntries(Object.entries({ type: d.type, ...clean }).filter(([, v]) => v !== undefined))
  if (event.type === 'load' && event.unit === 'load') delete event.unit
  const checked = checkEvent(event)
  if (checked.ok) return { event: checked.event }
  return need(askSlot(checked.data.why.split(':')[0] ?? ''), [drop])
}

const COMPARED = ['pile', 'crop', 'count', 'lb', 'ft', 'unit', 'material', 'change', 'what', 'toPile', 'cut'] as const
const ONCE = new Set<EventType>(['load', 'feed', 'spoil', 'shift', 'damage', 'patch', 'cover', 'empty', 'open', 'pack'])

/** Who reported the same within half an hour; never the sender themselves. */
const sameReport = (c: Context, d: Draft): string | undefined => {
  if (!ONCE.has(d.type) || d.sure.includes('more')) return undefined
  for (let k = c.book.logged.length - 1; k >= 0; k--) {
    const l = c.book.logged[k]!
    if (!within(c, l, 0.5)) {
      if (Date.parse(c.message.at) - Date.parse(l.at) > 1_800_000) break
      continue
    }
    if (l.withdrawnBy !== undefined || l.by === c.message.from || l.event.type !== d.type) continue
    const e = l.event as unknown as Record<string, unknown>
    if (
      e.on === d.slots.on &&
      COMPARED.every(k2 => e[k2] === d.slots[k2] || (k2 === 'cut' && (e[k2] === undefined || d.slots[k2] === undefined)))
    )
      return nameOf(c.book, l.by)
  }
  return undefined
}
