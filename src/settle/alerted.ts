import { pileState } from '../book/book.ts'
import type { Event } from '../book/events.ts'
import type { Question } from '../book/questions.ts'
import type { Reading } from '../reading/reading.ts'
import { TAPPED } from '../watch/item.ts'
import { lapsed } from './answer.ts'
import type { Context } from './context.ts'
import { m, nothing, record, type Settled } from './settled.ts'

/** What an answer says: the weather came (with its inches, where they were said), it did not, or the covers were walked and are whole. */
type Said = { came: true; inches?: number } | { came: false } | 'walked'

const KINDS = ['hail', 'wind', 'rain'] as const
type Kind = (typeof KINDS)[number]

const tapped = (q: Question, c: Context): Said | undefined => {
  if (c.message.pick?.question !== q.id) return undefined
  const value = q.choices[c.message.pick.choice]?.value
  if (value === 'none') return { came: false }
  if (value === 'walked') return 'walked'
  return typeof value === 'number' ? { came: true, inches: value } : value === undefined ? undefined : { came: true }
}

/** A bare yes or no, or the inches of the rain; anything that says more is read for itself. */
const typed = (r: Reading, kind: Kind): Said | undefined => {
  const b = r.bare
  if (r.acts.some(a => a.full) || r.asks.length || r.questionMark || b.rest > 1 || b.piles.length || b.crops.length) return undefined
  const [n] = b.numbers
  if (n) {
    const inches = kind === 'rain' && b.numbers.length === 1 && (n.unit === undefined || n.unit === 'in') ? n.num : undefined
    return inches !== undefined && inches > 0 && inches <= 15 ? { came: true, inches } : undefined
  }
  if (b.yes !== b.no) return { came: b.yes }
  return undefined
}

/**
 * The answer to what a weather alert was asked about. Only here does weather from outside become a record: by the word of a
 * person, who was there.
 */
export const alerted = (r: Reading, c: Context): Settled | undefined => {
  const here = [...c.book.questions.values()].filter(q => q.chat === c.message.chat && !lapsed(c, q))
  const asked = here.filter(q => q.slot === TAPPED && q.ask.code === 'alert-past')
  const q = c.message.pick ? asked.find(x => x.id === c.message.pick?.question) : here.at(-1)
  const kind = KINDS.find(k => k === q?.ask.data.kind)
  if (!q || !kind || !asked.includes(q)) return undefined
  const said = c.message.pick ? tapped(q, c) : typed(r, kind)
  if (said === undefined) return undefined
  const out = nothing(said !== 'walked' && !said.came ? 'answered' : 'recorded')
  out.entries.push({ kind: 'close', question: q.id, how: 'answered' })
  if (said !== 'walked' && !said.came) return { ...out, word: m('alert-none') }
  const slots = { by: c.name, said: c.message.text.slice(0, 4096) }
  const events: Event[] =
    said === 'walked'
      ? (Array.isArray(q.ask.data.piles) ? q.ask.data.piles : [])
          .map(String)
          .filter(pile => pileState(c.book, pile))
          .map(pile => ({ type: 'check', pile, finding: 'good', on: c.day, ...slots }))
      : [{ type: 'weather', kind, on: String(q.ask.data.on), ...(said.inches !== undefined && { inches: said.inches }), ...slots }]
  for (const event of events) record(out, event, { type: event.type, slots: {}, sure: [], replaces: [] }, c)
  return out
}
