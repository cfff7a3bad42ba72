import type { Message } from '../../book/questions.ts'
import type { Estimate } from '../farm/estimate.ts'
import { narrowing } from '../farm/narrowing.ts'
import { by } from './by.ts'
import { told } from './refusal.ts'

/** A range past this says nothing. */
const MOST_DAYS = 730
/** A reading so far behind an earlier one is no slip of the eye, ft. */
const BACK_FT = 3

const pct = (share: number): number => share * 100

/** How days left were worked out: inputs, formula, source, and what would narrow it. One line each. */
export const howLeft = (e: Estimate): Message[] => {
  const v = e.evidence
  const { filling, input } = v
  const lines: Message[] = []
  if (v.whole.basis === 'loads') {
    lines.push(
      told('how-in', {
        lb: filling.lb,
        loads: filling.layers.reduce((s, l) => s + l.count, 0),
        from: filling.weights[0],
        boxes: filling.boxes.join(', ') || undefined,
      }),
    )
    // Boxes seldom hold what they are said to; earlier piles of the same boxes may have shown how much.
    const less = 1 - v.whole.inLb / filling.lb
    if (less > 0.004) lines.push(told('how-light', { pct: pct(less), lb: v.whole.inLb, piles: v.shown?.piles.join(', ') }))
  } else if (v.whole.basis === 'size' && v.volume) lines.push(told('how-in-size', { lb: v.whole.inLb, ft3: v.volume.ft3 }))
  lines.push(
    told('how-loss', {
      pct: pct(v.loss.mean),
      low: pct(Math.max(0, v.loss.mean - 1.28 * v.loss.sd)),
      high: pct(v.loss.mean + 1.28 * v.loss.sd),
    }),
  )
  if (v.loggedDays) lines.push(told('how-fed', { lb: v.loggedLb, days: v.loggedDays }))
  if (v.lostLb > 0) lines.push(told('how-thrown', { lb: v.lostLb }))
  if (v.silentDays >= 0.5)
    lines.push(told('how-silent', { days: v.silentDays, lb: v.silentDays * (e.use?.lb ?? 0), copied: v.copied || undefined }))
  const face = input.faces.at(-1)
  if (face && v.length)
    lines.push(told('how-face', { ft: face.atFt, on: v.days[face.at]?.on, lengthFt: v.length.ft, readings: input.faces.length }))
  if (e.use)
    lines.push(
      told('how-use', {
        lb: e.use.lb,
        said: v.refFrom === 'ration' ? v.need?.lbDay : undefined,
        from: v.refFrom === 'ration' ? (v.need?.from ?? 'pile') : v.refFrom,
      }),
    )
  lines.push(told('how-fused', { readings: input.faces.length, days: v.days.length }))
  lines.push(by('formula-fused', 'formula-chained'))
  const better = narrowing(e)
  if (better) lines.push(told('how-narrow', { what: better.what, half: better.half, after: better.after, pile: v.pile.name }))
  else if (e.days && e.days.high - e.days.low >= 2 && e.days.high < MOST_DAYS)
    lines.push(told('how-narrow-none', { half: (e.days.high - e.days.low) / 2 }))
  return lines
}

/** What to beware of in the answer. */
export const notesLeft = (e: Estimate): Message[] => {
  const v = e.evidence
  const p = v.pile
  const notes: Message[] = []
  const width = p.measured?.widthFt ?? p.planned.widthFt
  const height = p.measured?.heightFt ?? p.planned.heightFt
  if (!p.openedOn) notes.push(told('note-not-open', { pile: p.name }))
  if (v.length && p.face && p.face.atFt > v.length.ft) notes.push(told('note-face-past-end', { atFt: p.face.atFt, lengthFt: v.length.ft }))
  if (v.odd) notes.push(told('note-record-odd', { pile: p.name }))
  // days nobody logged are days when cows ate
  if (e.overfed)
    notes.push(told('note-overfed', { pile: p.name, fed: v.loggedLb + v.silentDays * (e.use?.lb ?? 0), in: v.whole.usable.mean }))
  const back = v.input.faces.findLast((f, i, all) => i > 0 && f.atFt < all[i - 1]!.atFt - BACK_FT)
  if (back) {
    const was = v.input.faces[v.input.faces.indexOf(back) - 1]!
    notes.push(told('note-face-back', { pile: p.name, atFt: back.atFt, wasFt: was.atFt }))
  }
  if (width && height && height > width / 2) notes.push(told('note-size-odd', { widthFt: width, heightFt: height }))
  if (v.refFrom === 'ration' && v.need?.from === 'intake') notes.push(told('note-intake', { head: v.need.head }))
  if (v.refFrom === 'logs' || v.refFrom === 'face') notes.push(told('note-no-ration', { from: v.refFrom }))
  if (v.whole.basis === 'size') notes.push(told('note-no-loads', { pile: p.name }))
  if (v.filling.weights.includes('usual')) notes.push(told('note-usual-box', {}))
  return notes
}
