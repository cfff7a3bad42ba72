import { has, hasCat, type Item, valueOf } from './item.ts'
import { isThin } from './pool.ts'
import type { Act, FrameName } from './reading.ts'

const ON_PILE = new Set<FrameName>(['load', 'pack', 'size', 'cover', 'damage', 'patch', 'check', 'open', 'feed', 'face', 'spoil', 'empty'])

/** The pile that a sentence begins with, by itself before its pause: "creek: film on, 50x150 plastic over it and 280 tires". */
export const topicOf = (clause: Item[]): string | undefined => {
  if (!has(clause.at(-1), 'comma')) return undefined
  const said = clause.filter(i => !isThin(i) && !has(i, 'comma') && !has(i, 'pileword'))
  return said.length === 1 && hasCat(said[0], 'pile') ? valueOf(said[0], 'pile') : undefined
}

/** What is told of a topic is told of that pile, where no other is named. */
export const onTopic = (acts: Act[], pile: string): void => {
  for (const act of acts) if (ON_PILE.has(act.frame) && !act.strange) act.slots.pile ??= pile
}
