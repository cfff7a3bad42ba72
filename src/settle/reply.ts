import type { Body } from '../book/entries.ts'
import type { Event } from '../book/events.ts'
import type { Reading } from '../reading/reading.ts'
import { applied, effectOf, openQuestions } from './answer.ts'
import { certain } from './certain.ts'
import type { Context, Need } from './context.ts'

import { m, nothing, question, record, type Settled, withdraw } from './settled.ts'

/** The message as an answer to a question that is open in this chat. */
export const answered = (r: Reading, c: Context): Settled | undefined => {
  for (const q of openQuestions(c)) {
    const effect = effectOf(c, q, r)
    if (!effect) continue
    const close = (how: 'answered' | 'dropped'): Body => ({ kind: 'close', question: q.id, how })
    if (q.needs === 'owner' && effect.act === 'undo') {
      const owners = q.undo?.map(id => c.book.byId.get(id)?.by)
      if (c.role !== 'owner' && !owners?.includes(c.message.from)) continue
    }
    if (effect.act === 'drop') return { ...nothing('answered', m('closed-question')), entries: [close('dropped')] }
    const raised = q.raised ?? q.source.id
    const out: Settled = { ...nothing('recorded'), ...(raised !== '' && { raised }) }
    out.entries.push(close('answered'))
    if (effect.act === 'undo') {
      for (const id of q.undo ?? []) withdraw(out, c.book.byId.get(id), 'correction')
      for (const d of q.drafts) {
        const s = certain(c, { ...d, replaces: [], sure: [...d.sure, 'twice'] })
        if ('event' in s) record(out, s.event, { ...d, replaces: [] }, c)
      }
      return out
    }
    let drafts = applied(q, effect)
    if (effect.act === 'pile') {
      const fresh: Event = { type: 'pile', name: effect.name.toLowerCase(), on: c.day, by: c.name, said: c.message.text }
      out.entries.push({ kind: 'event', id: c.id(), event: fresh })
      out.recorded.push(fresh)
      drafts = drafts.map((d, k) => {
        const { strange: _, ...slots } = d.slots
        const slot = k === 0 && q.slot === 'toPile' ? 'toPile' : 'pile'
        return { ...d, slots: k === 0 || d.slots.pile === undefined ? { ...slots, [slot]: effect.name.toLowerCase() } : slots }
      })
    }
    const needs: Need[] = []
    for (const [k, d] of drafts.entries()) {
      const sure = effect.act === 'sure' && k === 0 ? [...d.sure, ...d.sure.filter(x => x.startsWith('?')).map(x => x.slice(1))] : d.sure
      const back = sure.includes('?face-back') && effect.act === 'sure' ? [...sure, 'face-back'] : sure
      const said = typeof d.slots.strange === 'string' ? d.slots.strange : undefined
      const s = certain(c, { ...d, sure: back.filter(x => !x.startsWith('?')) }, k > 0 ? said : undefined)
      if ('event' in s) record(out, s.event, d, c)
      else needs.push(s.need)
    }
    if (needs.length) {
      const next = {
        ...question(
          { ...c, message: { ...c.message, from: q.to } },
          needs[0]!,
          needs.map(n => n.draft),
        ),
        raised,
      }
      out.entries.push({ kind: 'ask', question: next })
      out.question = next
      if (!out.recorded.length) out.outcome = 'asked'
    }
    return out
  }
  return undefined
}
