import type { Message } from '../book/questions.ts'
import type { Day, Instant } from '../units/calendar.ts'
import type { Alert } from './alerts.ts'

/** One thing that is due. It is said once: the caller writes `key` into the book as said, in the same step as the sending. */
export interface DueItem {
  key: string
  /** When it should have been said. */
  at: Instant
  /** `owner`, `crew` (the farm's common chat), a person, or `chat:` and a chat; `landing` knows chats and languages. */
  to: string
  /** One message, or the lines of one message. Never empty. */
  message: Message | Message[]
  /** Keys of what was said along with it: they become said in the same step. */
  also?: string[]
  /** Questions that end with it unanswered. */
  lapses?: string[]
  /** The reminder that it is: it may be answered by done or later. */
  reminder?: string
  /** What a tap under it records: these piles patched, or walked and found whole; or that the weather it asks about came. */
  offer?: Offer
}

/** The slot of a question that the clock put: it is answered by a tap, or by words that its own kind knows. */
export const TAPPED = 'tapped'

export interface Offer {
  did: 'patched' | 'walked' | 'hail' | 'wind' | 'rain'
  piles: string[]
}

export interface Now {
  at: Instant
  zone: string
}

export interface DaysLeft {
  days: number
  /** Ends of the interval, where one is known, days. */
  low?: number
  high?: number
  runsOut?: Day
}

export interface FaceRate {
  inPerDay: number
  /** What the season asks for at least, in/day. */
  minInPerDay: number
  enough: boolean
}

export interface CoverNeed {
  widthFt: number
  lengthFt: number
  tires?: number
  bags?: number
  /** A sheet in stock is large enough. */
  fromStock?: boolean
}

export interface Stock {
  item: string
  count: number
  widthFt?: number
  lengthFt?: number
}

/**
 * What the watch wants to know from the figures, each undefined where the book does not tell enough. A function that is
 * left out silences what needs it and nothing else.
 */
export interface WatchFigures {
  daysLeft?(pile: string): DaysLeft | undefined
  faceRate?(pile: string): FaceRate | undefined
  /** Where the face stands today, ft from the end first opened. */
  faceAt?(pile: string): number | undefined
  need?(pile: string): CoverNeed | undefined
  /** Day from which a sealed pile may be opened. */
  readyOn?(pile: string): Day | undefined
  /** What lies free, not what is in use. */
  stock?(): Stock[]
  /** The mix at the face changes soon: where along the pile, and when. */
  mixTurn?(pile: string): { atFt: number; on?: Day; crop?: string } | undefined
  /** What an outside feed warned of for the farm's place; none where no feed is set up. */
  alerts?(): Alert[]
  /** As-fed weight of what was hauled onto a pile on one day, lb. */
  hauledLb?(pile: string, from: Day, to: Day): number | undefined
}
