import { lessons } from '../book/book.ts'
import type { Body } from '../book/entries.ts'
import type { Reading } from '../reading/reading.ts'
import { notYours } from '../saying/ask.ts'
import { TAPPED } from '../watch/item.ts'
import { alerted } from './alerted.ts'
import { lapsed, over } from './answer.ts'
import { chored } from './chores.ts'
import type { Context } from './context.ts'
import { pricedAt } from './prices.ts'
import { removed } from './remove.ts'
import { renamed } from './rename.ts'
import { answered } from './reply.ts'
import { edited, fixed } from './revise.ts'
import { clear, m, nothing, type Settled } from './settled.ts'
import { askOf, LONGEST, told } from './told.ts'
import { unread } from './unread.ts'
import { wished } from './wishes.ts'

export type { Settled } from './settled.ts'
export { guessed } from './told.ts'

/** Settles one message. The rules stand in the order they are tried. */
export const settle = (r: Reading, c: Context): Settled => {
  if (c.role === 'stranger') return nothing('refused', m('refused-stranger'))
  const facts = r.acts.filter(a => a.mood === 'fact')
  const writes = facts.length > 0 || r.fix !== undefined
  const looks = r.wish?.kind === 'list' || r.chore?.kind === 'list' || r.chore?.kind === 'where'
  if (c.role === 'viewer' && !r.asks.length && !looks)
    return writes && (!r.chatter || (r.fix?.strength ?? 0) >= 2) ? nothing('refused', m('refused-viewer')) : unread(r, c)
  // a button that outlived its question says nothing any more: its label is no message
  if (c.message.pick && !stands(c, c.message.pick.question)) return nothing('ignored')
  if (c.message.edits !== undefined) return wished(r, c) ?? edited(r, c)
  // the watch tells of what is let go; what needs no word, or got none in days, ends here
  const old = [...c.book.questions.values()].filter(q => q.chat === c.message.chat && lapsed(c, q) && (q.slot === TAPPED || over(c, q)))
  const s = { ...answeredOrTold(r, c), cut: r.cut }
  return old.length ? { ...s, entries: [...old.map((q): Body => ({ kind: 'close', question: q.id, how: 'lapsed' })), ...s.entries] } : s
}

/** A question of this chat that may still be answered. */
const stands = (c: Context, id: string): boolean => {
  const q = c.book.questions.get(id)
  return q !== undefined && q.chat === c.message.chat && (q.slot === TAPPED || !lapsed(c, q))
}

const answeredOrTold = (r: Reading, c: Context): Settled => {
  const facts = r.acts.filter(a => a.mood === 'fact')
  const wish = wished(r, c) ?? alerted(r, c) ?? chored(r, c)
  if (wish) return wish
  const lesson = taught(r, c)
  if (lesson) return lesson
  if (r.price) return pricedAt(r.price, c)
  if (r.alias) return renamed(r.alias, c)
  const removal = removed(r, c)
  if (removal) return removal
  const answer = answered(r, c)
  if (answer) return answer
  const fix = fixed(r, c)
  if (fix) return fix
  if (r.asks.length && r.words > LONGEST && !c.message.private && !c.message.addressed) return told({ ...r, asks: [] }, c, [])
  if (r.asks.length && !facts.some(a => a.full && clear(a))) return { ...nothing('answered'), asks: r.asks.map(a => askOf(a, c)) }
  return told(r, c, [])
}

/** The farm's own words: the owner teaches them and takes them back; anybody may ask for them. */
const taught = (r: Reading, c: Context): Settled | undefined => {
  if (r.asksLessons) {
    const list = lessons(c.book)
    return nothing(
      'answered',
      list.size ? m('words-known', { list: [...list].map(([word, means]) => m('word-means', { word, means })) }) : m('words-none'),
    )
  }
  if (!r.lesson && r.forget === undefined) return undefined
  if (c.role !== 'owner') return nothing('refused', notYours())
  const word = r.lesson?.word ?? r.forget!
  const entry: Body = { kind: 'setting', name: `word:${word}`, value: r.lesson?.means ?? '' }
  return {
    ...nothing('answered', r.lesson ? m('word-taught', { word, means: r.lesson.means }) : m('word-forgotten', { word })),
    entries: [entry],
  }
}
