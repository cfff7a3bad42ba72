import { eventsFrom, type Logged } from '../book/book.ts'
import type { Draft } from '../book/questions.ts'
import type { Fix, Reading } from '../reading/reading.ts'
import { LB_PER_TON } from '../units/measure.ts'
import type { Context } from './context.ts'
import { ownRecent, within } from './context.ts'

/** The records a correction could mean: those of the message replied to, else the last that fits in this chat. */
export const targets = (c: Context, fix: Fix): Logged[] => {
  const { book, message } = c
  if (message.replyTo !== undefined) {
    const events = eventsFrom(book, { channel: message.channel, chat: message.chat, id: message.replyTo })
    if (events.length) return events
  }
  const own = ownRecent(c, fix.kind === 'undo' ? 24 * 365 : 12).filter(l => l.source?.chat === message.chat || l.source === undefined)
  const lastOf = (list: Logged[]): Logged[] => {
    const first = list[0]
    return first
      ? list.filter(l => l.source?.id === first.source?.id && l.source?.chat === first.source?.chat && l.at === first.at).reverse()
      : []
  }
  const mine = lastOf(own)
  if (mine.length && (within(c, mine[0]!, 2) || fix.kind === 'undo'))
    return fix.many && mine.length < 2 ? [...(own[1] ? [own[1]] : []), ...mine] : mine
  if (message.private) return mine
  // somebody else's, just said in this chat
  const others: Logged[] = []
  for (let k = book.logged.length - 1; k >= 0; k--) {
    const l = book.logged[k]!
    if (Date.parse(message.at) - Date.parse(l.at) > 3_600_000) break
    if (l.withdrawnBy === undefined && l.source?.chat === message.chat) others.push(l)
  }
  return others.length ? lastOf(others) : mine
}

/** All that the crew told in this chat in the last twelve hours and that is in force, oldest first. */
export const recentHere = (c: Context): Logged[] => {
  const out: Logged[] = []
  for (let k = c.book.logged.length - 1; k >= 0 && within(c, c.book.logged[k]!, 12); k--) {
    const l = c.book.logged[k]!
    if (l.withdrawnBy === undefined && l.source?.chat === c.message.chat) out.unshift(l)
  }
  return out
}

/** The slot that a bare number changes. */
const numberSlot = (e: Record<string, unknown>, value: number): string | undefined => {
  switch (e.type) {
    case 'load':
      return e.count !== undefined && value < 500 ? 'count' : 'lb'
    case 'feed':
    case 'spoil':
      return e.lb !== undefined ? 'lb' : e.count !== undefined ? 'count' : 'ft'
    case 'face':
      return e.atFt !== undefined ? 'atFt' : 'leftFt'
    case 'damage':
    case 'patch':
    case 'supply':
      return 'count'
    case 'cover':
      return e.change === 'back' ? 'ft' : e.count !== undefined ? 'count' : undefined
    case 'weather':
      return e.mph !== undefined || e.kind === 'wind' ? 'mph' : e.degF !== undefined || e.kind === 'freeze' ? 'degF' : 'inches'
    case 'test':
      return 'dmPct'
    case 'ration':
      return e.head !== undefined ? 'head' : e.lbPerHead !== undefined ? 'lbPerHead' : 'lbPerDay'
    case 'shift':
      return e.ft !== undefined ? 'ft' : e.lb !== undefined ? 'lb' : 'count'
    case 'pack':
      return value > 1000 ? 'tractorLb' : 'tractors'
    case 'box':
      return 'lb'
    case 'size':
    case 'pile': {
      const dims = ['widthFt', 'lengthFt', 'heightFt'].filter(k => typeof e[k] === 'number')
      return dims.length === 1 ? dims[0] : dims.sort((a, b) => Math.abs((e[a] as number) - value) - Math.abs((e[b] as number) - value))[0]
    }
    default:
      return undefined
  }
}

/** Slots an event of a type can take from a correction. */
const TAKES: Record<string, string[]> = {
  load: ['pile', 'crop', 'cut', 'count', 'lb', 'unit', 'dmPct', 'box'],
  feed: ['pile', 'lb', 'count', 'ft', 'unit'],
  spoil: ['pile', 'lb', 'count', 'ft', 'unit'],
  face: ['pile', 'atFt', 'leftFt'],
  cover: ['pile', 'material', 'widthFt', 'lengthFt', 'count', 'ft'],
  damage: ['pile', 'cause', 'animal', 'what', 'count'],
  patch: ['pile', 'count'],
  check: ['pile', 'finding'],
  weather: ['kind', 'inches', 'mph', 'degF'],
  open: ['pile', 'why'],
  size: ['pile', 'widthFt', 'lengthFt', 'heightFt'],
  pile: ['widthFt', 'lengthFt', 'heightFt', 'wallFt', 'name'],
  shift: ['pile', 'toPile', 'ft', 'lb', 'count'],
  empty: ['pile'],
  test: ['pile', 'crop', 'dmPct'],
  ration: ['pile', 'crop', 'head', 'lbPerHead', 'lbPerDay', 'group'],
  supply: ['item', 'count', 'widthFt', 'lengthFt'],
  harvest: ['crop', 'cut'],
  box: ['lb', 'crop', 'name'],
  pack: ['pile', 'tractors', 'tractorLb', 'hours', 'layerIn'],
  remind: ['time', 'about'],
  note: [],
}

/** A test that was told as moisture, in percent of the whole: its dry matter is not among the numbers that were said. */
export const wasWet = (e: Record<string, unknown>): boolean => {
  const said = String(e.said ?? '')
  const numbers = (said.match(/\d+(?:\.\d+)?/g) ?? []).map(Number)
  return /\b(?:moist\w*|mst|wet|water|humedad|agua)\b/i.test(said) && !numbers.includes(Number(e.dmPct))
}

/** The slots that a correction would put into one event; undefined where it does not fit it. */
export const change = (e: Record<string, unknown>, fix: Fix): Record<string, unknown> | undefined => {
  const out: Record<string, unknown> = {}
  const takes = TAKES[e.type as string] ?? []
  for (const [k, v] of Object.entries(fix.wrong)) {
    const slot = k === 'number' ? numberSlot(e, v as number) : k
    if (slot && e[slot] !== undefined && e[slot] !== v) return undefined
  }
  for (const [k, v] of Object.entries(fix.slots)) {
    if (k === 'number') {
      const slot = numberSlot(e, v as number)
      if (!slot) return undefined
      // "the red wagon holds 6 ton", "make that 6 1/2": in the unit it was said in
      const tons = slot === 'lb' && (v as number) < 100 && /\bt(?:on|onelada)s?\b/i.test(String(e.said ?? ''))
      // "fed 11k", "oops make that 12"
      const thousands = !tons && slot === 'lb' && (v as number) < 100 && Number(e.lb) >= 1000
      // "came back 60 moisture", "no wait 64": of what was told
      const wet = slot === 'dmPct' && wasWet(e)
      out[slot] = wet ? 100 - (v as number) : tons ? (v as number) * LB_PER_TON : thousands ? (v as number) * 1000 : v
    } else if (k === 'what' && e.type === 'patch') continue
    else if (k === 'strange' && e.type === 'pile') out.name = v
    else if (k === 'number2' || k === 'strange') continue
    else if (k === 'feet') {
      const slot =
        e.type === 'face'
          ? e.atFt !== undefined
            ? 'atFt'
            : 'leftFt'
          : takes.includes('ft') && (e.ft !== undefined || e.type === 'shift')
            ? 'ft'
            : numberSlot(e, v as number)
      if (!slot) return undefined
      out[slot] = v
    } else if (k === 'sides') {
      if (!takes.includes('widthFt')) return undefined
      const [a, b] = v as number[]
      if (e.type === 'cover' || e.type === 'supply') Object.assign(out, { widthFt: Math.min(a!, b!), lengthFt: Math.max(a!, b!) })
      else Object.assign(out, { widthFt: a, lengthFt: b })
    } else if (k === 'material' && e.type === 'supply') out.item = v
    else if (k === 'unit' && (v === 'load' || v === undefined)) {
      if (e.type === 'load') out.unit = undefined
      // "make the loads 7" means no feed that was told in pounds
      else if (fix.slots.count !== undefined && e.count === undefined) return undefined
    } else if (k === 'animal' && e.type === 'damage') Object.assign(out, { cause: 'animal', animal: v })
    else if (k === 'kind' && e.type === 'damage' && (v === 'hail' || v === 'wind')) Object.assign(out, { cause: v, animal: undefined })
    else if (k === 'cause' && e.type === 'damage') Object.assign(out, { cause: v, animal: undefined })
    else if (takes.includes(k)) out[k] = v
    else if (k === 'crop' && e.type === 'open') continue
    else if (k === 'material' || k === 'what' || k === 'item' || k === 'cause' || k === 'why') continue
    else return undefined
  }
  if (out.crop !== undefined && out.crop !== e.crop && out.cut === undefined && e.cut !== undefined) out.cut = undefined
  if (e.type === 'load' && out.lb !== undefined && out.count === undefined && e.count !== undefined && e.lb === undefined) return out
  if (e.type === 'feed' && (out.lb !== undefined || out.count !== undefined || out.ft !== undefined))
    for (const k of ['lb', 'count', 'ft', 'unit'])
      if (!(k in out) && e[k] !== undefined && !(k === 'unit' && 'count' in out)) out[k] = k in out ? out[k] : undefined
  // "6 loads, 15,400 each" made 8: the weight was told for one load
  if (
    e.type === 'load' &&
    typeof out.count === 'number' &&
    out.lb === undefined &&
    typeof e.lb === 'number' &&
    typeof e.count === 'number' &&
    /\b(each|ea|apiece|cada)\b|@/i.test(String(e.said ?? ''))
  )
    out.lb = Math.round((e.lb / e.count) * out.count * 100) / 100
  if (fix.date) out.on = e.type === 'remind' || e.type === 'harvest' ? fix.date.future : fix.date.past
  return Object.keys(out).length ? out : undefined
}

/** Which of several events a correction means, and the draft that takes its place. */
export const corrected = (list: Logged[], fix: Fix, reading: Reading): { was: Logged; draft: Draft } | undefined => {
  const fed = fix.becomes ? list.findLast(l => l.event.type === 'feed') : undefined
  if (fed && fix.becomes) {
    const { pile, count, unit, lb, ft, on } = fed.event as unknown as Record<string, unknown>
    const slots = Object.fromEntries(Object.entries({ pile, count, unit, lb, ft, on }).filter(([, v]) => v !== undefined))
    return { was: fed, draft: { type: fix.becomes, slots, sure: ['twice'], replaces: [fed.id] } }
  }
  const act = reading.acts.find(a => a.mood === 'fact' && a.full)
  const fits: { was: Logged; slots: Record<string, unknown> }[] = []
  for (const l of list) {
    const e = l.event as unknown as Record<string, unknown>
    // "only rolled it back 10 ft": what was rolled is what was told before
    const byAct =
      act && act.frame === e.type
        ? Object.fromEntries(Object.entries(act.slots).filter(([k, v]) => v !== undefined && !(k === 'material' && act.implied)))
        : undefined
    const slots = change(e, fix) ?? byAct
    if (slots && Object.entries(slots).some(([k, v]) => e[k] !== v)) fits.push({ was: l, slots })
  }
  const named =
    fix.slots.crop !== undefined && (fix.slots.number !== undefined || fix.slots.count !== undefined)
      ? fits.find(f => (f.was.event as { crop?: string }).crop === fix.slots.crop)
      : undefined
  const pick =
    named ?? fits.findLast(f => f.slots.crop === undefined || (f.was.event as { crop?: string }).crop !== f.slots.crop) ?? fits.at(-1)
  if (!pick) return undefined
  const { type, ...old } = pick.was.event as unknown as Record<string, unknown>
  return {
    was: pick.was,
    draft: { type: type as Draft['type'], slots: { ...old, ...pick.slots }, sure: ['twice'], replaces: [pick.was.id] },
  }
}
