import { has, hasCat, type Item } from './item.ts'
import { isThin } from './pool.ts'
import type { Act } from './reading.ts'

/** `remind` and `note` take the rest of their sentence as words. */
export const wordy = (items: Item[], text: string): Act | undefined => {
  const content = items.findIndex(i => (!isThin(i) && !hasCat(i, 'person')) || has(i, 'v:note') || has(i, 'v:remind'))
  const i = items[content]
  if (!i) return undefined
  if (has(i, 'v:remind')) {
    const dates = items.filter(x => x.date)
    const date = dates.find(x => x.date!.explicit)?.date ?? dates[0]?.date
    const time = dates.map(x => x.date!.time).find(Boolean)
    const skip = (x: Item) => x.date !== undefined
    let rest = items.slice(content + 1)
    while (
      rest[0] &&
      (skip(rest[0]) ||
        has(rest[0], 'comma') ||
        /^(to|that|on|about|de|que|for|at|a|el|the|us|me|por|para|en|of)$/.test(rest[0].tokens[0]?.norm ?? ''))
    )
      rest = rest.slice(1)
    while (
      rest.at(-1) &&
      (skip(rest.at(-1)!) ||
        has(rest.at(-1), 'comma') ||
        (rest.at(-1)!.tokens.length === 1 && /^(on|at|el|la|a|for|para|the|por|en|by)$/.test(rest.at(-1)!.tokens[0]?.norm ?? '')))
    )
      rest = rest.slice(0, -1)
    const parts: string[] = []
    let run: Item[] = []
    const flush = () => {
      if (run.length) parts.push(text.slice(run[0]!.tokens[0]!.from, run.at(-1)!.tokens.at(-1)!.to))
      run = []
    }
    for (const x of rest) {
      if (skip(x)) flush()
      else run.push(x)
    }
    flush()
    const about = parts
      .join(' ')
      .replace(/\s+/g, ' ')
      .replace(/^[\s,]+|[\s,]+$/g, '')
    const every = /\b(every|each|cada|todos los)\s+(day|dia|week|semana|month|mes|\w+)\b/i.exec(text)
    const slots: Record<string, unknown> = {}
    if (about) slots.about = about
    if (time) slots.time = time
    if (every)
      slots.every =
        /day|dia/i.test(every[2]!) && !/(sun|mon|tues|wednes|thurs|fri|satur)day/i.test(every[2]!)
          ? 'day'
          : /month|mes/i.test(every[2]!)
            ? 'month'
            : 'week'
    return {
      frame: 'remind',
      mood: 'fact',
      slots,
      date,
      used: 5,
      left: 0,
      leftWords: [],
      leftNumbers: 0,
      full: about !== '' && (date !== undefined || time !== undefined || every !== null),
    }
  }
  if (has(i, 'v:note') && content <= 2) {
    const rest = items.slice(content + 1).filter((x, k) => !(k === 0 && (has(x, 'comma') || has(x, 'mark'))))
    // "apunta 7 viajes" is a log, not a note
    if (has(i, 'v:put') && items.some(x => x.num !== undefined)) return undefined
    if (!rest.length) return undefined
    const first = rest[0]!.tokens[0]!
    const last = rest.at(-1)!.tokens.at(-1)!
    return {
      frame: 'note',
      mood: 'fact',
      slots: { text: text.slice(first.from, last.to).replace(/^that\s+/i, '') },
      used: 4,
      left: 0,
      leftWords: [],
      leftNumbers: 0,
      full: true,
    }
  }
  return undefined
}
