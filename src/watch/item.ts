import type { Message } from '../book/questions.ts'
import type { Day, Instant } from '../units/calendar.ts'

/** One thing that is due. It is said once: the caller writes `key` into the book as said, in the same step as the sending. */
export interface DueItem {
  key: string
  /** When it should have been said. */
  at: Instant
  /** `owner`, `crew` (the farm's common chat) or a person; the caller knows their chats and languages. */
  to: string
  /** One message, or the lines of one message. Never empty. */
  message: Message | Message[]
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
  /** As-fed weight of what was hauled onto a pile on one day, lb. */
  hauledLb?(pile: string, from: Day, to: Day): number | undefined
}
