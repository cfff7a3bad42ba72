import type { Book } from '../../book/book.ts'
import type { Told } from '../../book/pile.ts'
import type { Message } from '../../book/questions.ts'
import { weigher } from '../farm/weights.ts'
import { by } from './by.ts'
import { told } from './refusal.ts'

/** How loads were weighed: pounds by each kind of weight, with the box. */
export const howWeighed = (book: Book, loads: readonly Told<'load'>[]): Message[] => {
  const weigh = weigher(book)
  const kinds = new Map<string, { lb: number; from: string; box?: string }>()
  for (const t of loads) {
    const w = weigh(t.event)
    const key = `${w.from} ${w.box ?? ''}`
    kinds.set(key, { lb: (kinds.get(key)?.lb ?? 0) + w.lb, from: w.from, ...(w.box !== undefined && { box: w.box }) })
  }
  if (!kinds.size) return []
  return [...[...kinds.values()].map(k => told('how-weighed', { ...k })), by('formula-boxes')]
}
