import { boxes, type Logged, pileNames } from '../book/book.ts'
import type { Reading } from '../reading/reading.ts'
import { foldWord } from '../reading/tokens.ts'
import { askRemove, choice } from '../saying/ask.ts'
import type { Context } from './context.ts'
import { m, nothing, question, type Settled } from './settled.ts'

const REMOVES = /\b(?:delete|remove|erase|borra|borrar|elimina|eliminar|quita del libro|take out of the book)\b|^del (?=.*\bpile\b)/
/** "delete that", "remove the last one": an entry, no pile. */
const ENTRY = /\b(?:delete|remove|erase|borra|borrar|elimina|eliminar) (?:(?:the|el|la) )?(?:that|last|it|eso|esa|ultimo|ultima)\b/
const THINGS = /\b(?:pile|box|wagon|truck|pila|caja|monton|carreta|camion)\b/

/** The box that a text names, the longest name first. */
const boxIn = (text: string, c: Context): string | undefined =>
  [...boxes(c.book).keys()].sort((a, b) => b.length - a.length).find(b => ` ${text} `.includes(` ${foldWord(b)} `))

/**
 * "delete the far corner pile": only the owner takes a pile or a box out of the book, and only after a yes that says how
 * much goes with it. The entries stay in the history, withdrawn.
 */
export const removed = (r: Reading, c: Context): Settled | undefined => {
  const text = c.message.text.trim().split(/\s+/).map(foldWord).join(' ')
  if (!REMOVES.test(text) || r.questionMark || ENTRY.test(text) || r.bare.numbers.length) return undefined
  const pile = r.bare.piles[0]
  const box = pile === undefined ? boxIn(text, c) : undefined
  if (!THINGS.test(text) || (pile === undefined && box === undefined && r.bare.size > 6)) return undefined
  if (c.role !== 'owner') return nothing('refused', m('remove-owner-only'))
  const name = pile ?? box
  if (name === undefined) return nothing('refused', m('remove-unknown', { names: [...new Set([...pileNames(c.book).values()])] }))
  const all: Logged[] =
    pile !== undefined
      ? (c.book.byPile.get(pile) ?? [])
      : c.book.logged.filter(l => l.event.type === 'box' && l.event.name.toLowerCase() === name)
  const undo = all.filter(l => l.withdrawnBy === undefined).map(l => l.id)
  const out = nothing('asked')
  const q = {
    ...question(
      c,
      {
        ask: askRemove(name, undo.length),
        choices: [
          { label: choice.yes, act: 'undo' },
          { label: choice.no, act: 'drop' },
        ],
        draft: { type: 'note', slots: {}, sure: [], replaces: [] },
      },
      [],
    ),
    undo,
    needs: 'owner' as const,
  }
  out.entries.push({ kind: 'ask', question: q })
  out.question = q
  return out
}
