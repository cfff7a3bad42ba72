import { type Book, pileNames, piles } from '../book/book.ts'
import { hasFeed, isCovered, type PileState } from '../book/pile.ts'
import type { Draft } from '../book/questions.ts'
import { type Context, ownRecent } from './context.ts'

const SHEET = new Set(['plastic', 'second plastic', 'barrier film', 'tarp'])

const open = (p: PileState): boolean => hasFeed(p) && p.sheets.length === 0

/** The piles that a draft could belong to, in falling order of fit: the first group that is not empty counts. */
const groups = (d: Draft): ((p: PileState) => boolean)[] => {
  const feeding = (p: PileState) => p.stage === 'feeding'
  const filling = (p: PileState) => p.stage === 'filling'
  switch (d.type) {
    case 'load':
    case 'pack':
      return [filling, p => p.stage === 'planned']
    case 'feed':
    case 'face':
    case 'spoil':
    case 'empty':
      return [feeding]
    case 'shift':
      return [feeding, hasFeed]
    case 'damage':
    case 'patch':
    case 'check':
      return [isCovered]
    case 'cover': {
      const on = d.slots.change === 'on'
      if (d.slots.change === 'back') return [feeding]
      if (on && SHEET.has(d.slots.material as string)) return [p => open(p) || filling(p), isCovered]
      return [isCovered, hasFeed]
    }
    case 'size':
      return [filling, p => p.stage !== 'empty']
    case 'open':
      return [p => p.stage === 'sealed', isCovered]
    default:
      return [p => p.stage !== 'empty']
  }
}

/** Every pile that fits a draft by what it is used for. */
export const fitting = (book: Book, d: Draft): string[] => {
  const all = piles(book)
  for (const g of groups(d)) {
    const some = all.filter(g).map(p => p.name)
    if (some.length) return some
  }
  return []
}

/** The pile meant by a draft that names none: the only one that fits, or the sender's own of the last two hours. */
export const defaultPile = (c: Context, d: Draft): string | undefined => {
  const fits = fitting(c.book, d)
  if (fits.length === 1) return fits[0]
  const last = ownRecent(c, 2).find(l => 'pile' in l.event && l.event.pile && l.event.pile !== 'all')
  const pile = last && 'pile' in last.event ? last.event.pile : undefined
  if (!pile) return undefined
  const all = piles(c.book)
  const could = groups(d).some(g => all.filter(g).some(p => p.name === pile))
  return could ? pile : undefined
}

/** Known names that start like, or share a word with, a name nobody knows; own names only. */
export const nearNames = (book: Book, said: string): string[] => {
  const words = said.split(/\s+/)
  return [
    ...new Set(
      [...pileNames(book)]
        .filter(([alias]) =>
          alias.split(/\s+/).some(w => words.some(x => x.length > 2 && (w.startsWith(x.slice(0, 3)) || x.startsWith(w.slice(0, 3))))),
        )
        .map(([, name]) => name),
    ),
  ].slice(0, 3)
}

/** The crop of a load that names none: the sender's last on that pile within two hours, or the only one it ever had. */
export const defaultCrop = (c: Context, pile: string): { crop: string; cut?: number } | undefined => {
  const own = ownRecent(c, 2).find(l => l.event.type === 'load' && l.event.pile === pile)
  if (own?.event.type === 'load') return { crop: own.event.crop, cut: own.event.cut }
  const seen = new Set<string>()
  let last: string | undefined
  for (const l of c.book.byPile.get(pile) ?? []) {
    if (l.withdrawnBy !== undefined || l.event.type !== 'load') continue
    seen.add(l.event.crop)
    last = l.event.crop
  }
  return seen.size === 1 ? { crop: last! } : undefined
}
