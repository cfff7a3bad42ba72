import type { PileState } from '../../book/pile.ts'
import type { Share } from '../../units/measure.ts'
import type { Filling } from './layers.ts'
import type { Now } from './now.ts'
export interface LossPrior { mean: Share; sd: Share }
export const lossPrior = (_p: PileState, _f: Filling, _now: Now): LossPrior => ({ mean: 0.155, sd: 0.045 })
