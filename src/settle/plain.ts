import { type Book, pileNames, pileState } from '../book/book.ts'
import type { Event } from '../book/events.ts'
import type { Incoming } from '../ports.ts'
import type { Reading } from '../reading/reading.ts'
import { foldWord } from '../reading/tokens.ts'
import type { Day } from '../units/calendar.ts'
import { settingOf, TOTAL_EVERY } from '../watch/settings.ts'
import type { Settled } from './settled.ts'

const UNSAID = new Set(['type', 'on', 'by', 'said', 'pile', 'toPile'])

/** Records that are made every day. All others (a new pile, a box, a reminder, a ration) are worth a word. */
const ROUTINE = new Set<Event['type']>([
  'load',
  'feed',
  'pack',
  'face',
  'spoil',
  'shift',
  'damage',
  'patch',
  'check',
  'cover',
  'weather',
  'supply',
])

/** The figures of a text: "11,200" is 11200. */
const figuresIn = (text: string): Set<number> =>
  new Set([...text.matchAll(/\d+(?:,\d{3})*(?:\.\d+)?/g)].map(m => Number(m[0].replaceAll(',', ''))))

/** Every slot stands in the words as it was taken: nothing was filled in, worked out, mended or dated. */
const asSaid = (e: Event, r: Reading, words: string, figures: Set<number>, names: Map<string, string>, day: Day): boolean => {
  if (e.on !== day || !ROUTINE.has(e.type)) return false
  const named = (pile: string): boolean =>
    [...names].some(([name, own]) => own === pile && ` ${words} `.includes(` ${name.split(/\s+/).map(foldWord).join(' ')} `))
  const piles = [('pile' in e && e.pile) || '', (e.type === 'shift' && e.toPile) || ''].filter(p => p !== '' && p !== 'all')
  if (!piles.every(named)) return false
  const act = r.acts.find(
    a =>
      a.frame === e.type &&
      a.mood === 'fact' &&
      Object.entries(e).every(([k, v]) => UNSAID.has(k) || v === undefined || a.slots[k] === v || (k === 'unit' && v === 'load')),
  )
  return act !== undefined && Object.entries(e).every(([k, v]) => UNSAID.has(k) || typeof v !== 'number' || figures.has(v))
}

/** A load that takes its pile past a round number of them: the total is worth a word. */
const atTotal = (book: Book, e: Event): boolean => {
  const every = settingOf(book, 'totalEvery', TOTAL_EVERY)
  if (e.type !== 'load' || e.count === undefined || every <= 0) return false
  const after = (pileState(book, e.pile)?.loads ?? []).reduce((sum, l) => sum + (l.event.count ?? 0), 0)
  return Math.floor(after / every) > Math.floor((after - e.count) / every)
}

/**
 * True where the reply to a message would only repeat it: all it told was recorded as it was said, and no total is due. `book` has it
 * already.
 */
export const isPlain = (book: Book, s: Settled, r: Reading, message: Incoming, day: Day): boolean => {
  if (s.outcome !== 'recorded' || s.withdrawn.length || s.question || s.word || s.cut || s.asks.length || s.raised !== undefined)
    return false
  // what was heard may have been misheard, and what was tapped or changed is said back
  if (message.edits !== undefined || message.pick || message.voice || message.heard) return false
  const words = message.text
    .trim()
    .split(/[\s,.;:!?]+/)
    .map(foldWord)
    .join(' ')
  const figures = figuresIn(message.text)
  const names = pileNames(book)
  return s.recorded.every(e => asSaid(e, r, words, figures, names, day) && !atTotal(book, e))
}
