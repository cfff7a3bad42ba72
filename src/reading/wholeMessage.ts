import type { Day } from '../units/calendar.ts'
import { aliasIn } from './alias.ts'
import { CUE, cuesOf } from './cues.ts'
import type { NameIndex } from './names.ts'
import { plainText } from './plainText.ts'
import { priceIn } from './price.ts'
import type { Reading } from './reading.ts'
import { asksLessons, forgottenIn, lessonIn } from './taught.ts'
import type { Token } from './token.ts'
import { choreIn, REMINDERS } from './wish/chore.ts'
import { wishIn } from './wish/wish.ts'

type Whole = Pick<Reading, 'lesson' | 'forget' | 'price' | 'alias' | 'asksLessons' | 'wish' | 'chore'>

/** No wish and no word about a reminder is longer, in characters. */
const MOST_PLAIN = 140

/**
 * What a message says as a whole, by phrases that leave no word over: a lesson, a price, a second name, a wish about the assistant, a
 * word about its reminders.
 * @param tokens the words of the text
 * @param things it names a thing of the trade, and so is no bare time
 */
export const wholeMessage = (text: string, tokens: Token[], names: NameIndex, now: { day: Day; hour: number }, things: boolean): Whole => {
  const cues = cuesOf(tokens)
  const plain = cues & (CUE.wish | REMINDERS) && text.length <= MOST_PLAIN ? plainText(text) : ''
  const lesson = cues & CUE.lesson ? lessonIn(text) : undefined
  return {
    lesson,
    forget: lesson || !names.taught.size ? undefined : forgottenIn(text, names.taught),
    price: cues & CUE.price ? priceIn(text) : undefined,
    alias: lesson || !(cues & CUE.alias) ? undefined : aliasIn(text, names),
    asksLessons: (cues & CUE.ownWords) !== 0 && asksLessons(text),
    wish: cues & CUE.wish ? wishIn(text, now.day, plain) : undefined,
    chore: choreIn(text, now, things ? cues & ~CUE.time : cues, plain),
  }
}
