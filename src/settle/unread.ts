import type { Reading } from '../reading/reading.ts'
import type { Context } from './context.ts'

import { m, nothing, type Settled } from './settled.ts'

/** What ends a talk asks for no answer. */
const THANKS =
  /^(?:thanks|thank you|thx|ty|ok|okay|k|kk|good|great|perfect|got it|copy(?: that)?|10-?4|alright|all right|cool|yep|nice|gracias|muchas gracias|sale|vale|va|bueno|listo|de acuerdo|perfecto|orale|👍|🙏)[.!]*$/iu

/** Nothing to record and nothing to answer: silence in a group, one line in private. */
export const unread = (r: Reading, c: Context): Settled => {
  const loud = c.message.private || c.message.addressed === true
  if (!loud || THANKS.test(c.message.text.trim())) return nothing('ignored')
  const moody = r.acts.find(a => a.mood !== 'fact' && a.used > a.left)
  if (moody)
    return nothing(
      'ignored',
      moody.mood === 'denial' ? m('noted-denial') : moody.mood === 'plan' || moody.mood === 'order' ? m('noted-plan') : undefined,
    )
  if (r.hoped && c.message.private) return nothing('ignored')
  return nothing('puzzled', m('puzzled'))
}
