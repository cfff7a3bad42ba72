import type { PileState } from '../../book/pile.ts'
import type { Ft3, Lb, Share } from '../../units/measure.ts'
import type { Length } from './position.ts'
export interface Volume { ft3: Ft3; lb: Lb; sd: Share; measured: boolean }
export const volumeOf = (p: PileState, length: Length | undefined): Volume | undefined => {
  const w = p.measured?.widthFt ?? p.planned.widthFt
  const h = p.measured?.heightFt ?? p.planned.heightFt
  if (!w || !length) return undefined
  const ft3 = (2 / 3) * w * (h ?? w / 4.5) * length.ft * 0.85
  return { ft3, lb: ft3 * 42, sd: h ? 0.12 : 0.3, measured: p.measured?.heightFt !== undefined }
}
