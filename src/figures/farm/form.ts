import type { PileState } from '../../book/pile.ts'
import type { Ft } from '../../units/measure.ts'
import { type PileShape, shapeProblems, USUAL_RUN } from '../shape.ts'
import { LEAST_FT, type Length, lengthKnown } from './position.ts'

/**
 * Height over width where nobody measured the height: sides of 3 to 1 under a crown would be a sixth; packed piles stand a little
 * higher. Common practice, no source.
 */
const USUAL_HEIGHT = 0.2
const HEIGHTS: [Ft, Ft] = [5, 14]

export interface PileForm {
  shape: PileShape
  /** What was not told and had to be assumed. */
  assumed: ('width' | 'length' | 'height')[]
  /** Codes of what cannot be in the size as told. */
  problems: string[]
  /** Somebody measured the height; a planned one is a wish. */
  measured: boolean
}

/** Lower is no height but a slip of the thumb, ft. Common practice, no source. */
const LEAST_HIGH_FT = 0.5

/**
 * The pile's shape as measured, else as planned. A flat top makes it a trapezoid, else it is crowned. Undefined without width or
 * length.
 */
export const formOf = (p: PileState, length: Length | undefined = lengthKnown(p)): PileForm | undefined => {
  const widthFt = p.measured?.widthFt ?? p.planned.widthFt
  if (!(widthFt && widthFt >= LEAST_FT) || !length) return undefined
  const high = p.measured?.heightFt ?? p.planned.heightFt
  const told = high && high >= LEAST_HIGH_FT ? high : undefined
  const heightFt = told ?? Math.min(HEIGHTS[1], Math.max(HEIGHTS[0], widthFt * USUAL_HEIGHT))
  const topWidthFt = p.measured?.topWidthFt
  const ramp = Math.min(USUAL_RUN * heightFt, length.ft / 2)
  const shape: PileShape = {
    section: topWidthFt ? 'trapezoid' : 'crowned',
    widthFt,
    lengthFt: length.ft,
    heightFt,
    rampStartFt: ramp,
    rampEndFt: ramp,
    ...(topWidthFt && { topWidthFt }),
    ...(p.wallFt && { wallFt: p.wallFt }),
  }
  return {
    shape,
    assumed: told === undefined ? ['height'] : [],
    problems: shapeProblems(shape),
    measured: p.measured?.heightFt !== undefined,
  }
}
