import type { Lb, Pct } from '../../units/measure.ts'
export const cropUsual = (crop: string): { dmPct: Pct; dmSd: Pct; boxLb: Lb } => ({ dmPct: crop === 'corn silage' ? 35 : 40, dmSd: 4, boxLb: 10_000 })
