import type { Change, Item } from './item.ts'

/** What becomes of the item at `k` beside its neighbours; undefined where it stays as it is. */
export type Ruling = (items: Item[], k: number, i: Item) => Change | undefined

export const UNCOUNTED = { num: undefined, unit: undefined }

export const FILLER: Change = { senses: ['filler'] }
export const FED: Change = { senses: ['v:feed'] }
export const PLAN: Change = { senses: ['m:plan'] }
export const A_HEAD: Change = { senses: ['per:head'] }
export const FILM: Change = { senses: ['mat:barrier film'] }
export const PATCHED: Change = { senses: ['v:patch'] }
export const ROLLED: Change = { senses: ['v:roll'] }
export const LABEL: Change = { senses: ['label'], ...UNCOUNTED }
export const STUTTER: Change = { senses: ['filler'], ...UNCOUNTED }
export const OF_EACH: Change = { senses: ['each'], ...UNCOUNTED }
export const GOT: Change = { senses: ['v:buy'] }
export const WIND: Change = { senses: ['sky:wind', 'cause:wind'] }
export const NOTHING: Change = { senses: [] }
export const PUT: Change = { senses: ['v:put'] }
export const PLACE: Change = { senses: ['where:place'] }
export const ON_TOP: Change = { senses: ['where:place'], text: 'top' }
export const DRY: Change = { senses: ['group:dry'] }
export const BUT: Change = { senses: ['but'] }
export const MESH: Change = { senses: ['mat:mesh'] }
export const TIRES: Change = { senses: ['mat:tires'] }

export const textAt = (items: Item[], k: number): string => items[k]?.text.toLowerCase() ?? ''
