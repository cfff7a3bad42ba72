import type { Answer } from '../../book/asks.ts'
import { type Book, setting } from '../../book/book.ts'
import type { PileState } from '../../book/pile.ts'
import type { Now } from '../farm/now.ts'
import { readyOn, siloGas, WAIT_DAYS } from '../ready.ts'
import { by } from './by.ts'
import { nothingIn } from './left.ts'
import { type Refusal, refuse, slots, told } from './refusal.ts'

/** Whether a covered pile has had its weeks. The gas of the first three weeks and the ferment are the two reasons to wait. */
export const ready = (book: Book, p: PileState, now: Now): Answer | Refusal => {
  const nothing = nothingIn(p)
  if (nothing) return nothing
  const days = setting(book, 'waitDays', WAIT_DAYS)
  if (!p.sealedOn) {
    if (!p.openedOn) return refuse('not-covered', { pile: p.name })
    return { about: 'ready', pile: p.name, readyOn: p.openedOn, ready: true, openedOn: p.openedOn, how: [], notes: [] }
  }
  const r = readyOn(p.sealedOn, now.day, days)
  const last = p.loads.at(-1)?.event.on
  const gas = last ? siloGas(last, now.day) : undefined
  return slots({
    about: 'ready' as const,
    pile: p.name,
    sealedOn: p.sealedOn,
    readyOn: r.readyOn,
    ready: r.ready || p.stage === 'feeding',
    betterOn: r.betterOn,
    daysToGo: r.daysToGo,
    openedOn: p.openedOn,
    gasClearOn: gas && gas.stage !== 'clear' ? gas.clearOn : undefined,
    how: [told('how-ready', { sealedOn: p.sealedOn, days }), by('formula-three-weeks')],
    notes: [
      ...(gas && gas.stage !== 'clear' ? [told('note-gas', { clearOn: gas.clearOn, stage: gas.stage })] : []),
      ...(r.ready && r.betterOn > now.day && p.stage !== 'feeding' ? [told('note-better-later', { on: r.betterOn })] : []),
    ],
  })
}
