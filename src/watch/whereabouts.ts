import { type Book, piles } from '../book/book.ts'
import type { PileState } from '../book/pile.ts'
import type { Message } from '../book/questions.ts'
import { stockOf } from '../figures/farm/stock.ts'
import { type Day, daysBetween } from '../units/calendar.ts'

const SHEETS = ['plastic', 'second plastic', 'barrier film', 'tarp']

/** Something that lies on a pile or free. */
interface Thing {
  item: string
  count?: number
  widthFt?: number
  lengthFt?: number
  /** Of a sheet: since when it lies there. */
  on?: Day
}

const onPile = (p: PileState): Thing[] => [
  ...p.sheets.map((s): Thing => ({ item: s.material, widthFt: s.widthFt, lengthFt: s.lengthFt, on: s.on })),
  ...(p.mesh ? [{ item: 'mesh' }] : []),
  ...(p.tires ? [{ item: 'tires', count: p.tires }] : []),
  ...(p.bags ? [{ item: 'gravel bags', count: p.bags }] : []),
]

const thing = ({ item, count, widthFt, lengthFt, on }: Thing, day: Day): Message => {
  const data = { item, kind: item.replaceAll(' ', '-'), count: count ?? '', widthFt: widthFt ?? '', lengthFt: lengthFt ?? '' }
  const what: Message = { code: 'things', data }
  return on === undefined ? what : { code: 'stock-sheet', data: { what, days: Math.max(0, daysBetween(on, day)) } }
}

/**
 * What covers the farm's piles, in use and free, a line for each place: all of it, or one item (`plastic` is every sheet).
 * One line where nothing of it is known.
 */
export const whereabouts = (book: Book, day: Day, item?: string): Message[] => {
  const wanted = (t: Thing): boolean => item === undefined || t.item === item || (item === 'plastic' && SHEETS.includes(t.item))
  const lines: Message[] = piles(book).flatMap(p => {
    const here = p.stage === 'empty' ? [] : onPile(p).filter(wanted)
    return here.length ? [{ code: 'stock-on', data: { pile: p.name, things: here.map(t => thing(t, day)) } }] : []
  })
  const free = stockOf(book, day).filter(s => s.count > 0 && wanted(s))
  if (free.length) lines.push({ code: 'stock-free', data: { things: free.map(t => thing(t, day)) } })
  return lines.length ? lines : [{ code: 'stock-unknown', data: {} }]
}
