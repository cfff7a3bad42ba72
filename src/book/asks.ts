import type { Event } from './events.ts'

/** The kinds of question the assistant can answer, and the figures an answer carries. */
export const ASKS = [
  'left',
  'reach',
  'status',
  'loads',
  'density',
  'face',
  'cover',
  'plan',
  'ready',
  'mix',
  'checks',
  'loss',
  'supplies',
  'who',
  'history',
  'picture',
  'help',
  'why',
] as const
export type About = (typeof ASKS)[number]

export interface Ask {
  about: About
  pile?: string
  crop?: string
  /** For `loads`, `history`, `who`: the days meant, inclusive. */
  from?: string
  to?: string
  /** For `reach` and its what-ifs. */
  until?: string
  head?: number
  group?: string
  lbPerDay?: number
  lbPerHead?: number
  delayDays?: number
  addLb?: number
  /** More head than now, or fewer. */
  headMore?: number
  /** More pounds than now, or fewer, a head and a day; and percent. */
  perHeadMore?: number
  perDayMore?: number
  pctMore?: number
  /** Piles fed at once; empty for all that can be. */
  together?: string[]
  /** For `status`: what the feed in it is worth. */
  worth?: boolean
  /** For `plan`. */
  lb?: number
  days?: number
  item?: string
  /** For `who` and `history`: the event type asked about. */
  type?: string
  by?: string
}

export interface Answer {
  about: About
  pile?: string
  [slot: string]: unknown
  events?: Event[]
}
