import type { Answer, Ask } from '../../book/asks.ts'
import { type Book, piles } from '../../book/book.ts'

export const answer = (_book: Book, ask: Ask, _now: unknown): Answer => ({ about: ask.about, ...(ask.pile ? { pile: ask.pile } : {}) })
export const pilesFor = (book: Book, _ask: Ask): string[] => piles(book).filter(p => p.stage === 'feeding').map(p => p.name)
