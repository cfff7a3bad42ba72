import type { Farm } from '../farms.ts'
import { clerk } from './clerk.ts'
import { even } from './even.ts'
import { pair } from './pair.ts'
import { shaped } from './shaped.ts'
import { slices } from './slices.ts'
import { yard } from './yard.ts'

const EVEN = {
  box: [0.93, 0.02],
  loss: [0.08, 0.22],
  logged: [0.6, 0.95],
  log: [0.02, 100],
  face: [5, 12],
  read: [1.2, 1],
  daily: 0.05,
  need: 0.03,
  miss: 0.15,
} as const
const e = (more: object) => even({ ...EVEN, ...more } as Parameters<typeof even>[0])
const SHAPED = {
  box: [0.95, 0.05],
  front: [2, 4],
  back: [2, 4],
  loss: [0.1, 0.22],
  seen: 0.2,
  logged: [0.5, 0.95],
  faceEvery: 9,
  faceSd: 1.5,
  grain: 100,
  scale: 0.02,
}
const s = (more: object) => shaped({ ...SHAPED, ...more } as Parameters<typeof shaped>[0])
const CLERK = { box: [0.95, 0.06], lost: 0.02, made: [0.06, 0.16], aging: 0.0003, off: 2, length: 0.8, slip: 0.03, faceEvery: 10 }
const c = (more: object) => clerk({ ...CLERK, ...more } as Parameters<typeof clerk>[0])
const SLICES = { box: [0.94, 0.05], cv: 0.1, keep: 0.9, ramp: [5, 35], loss: [0.1, 0.24], logged: [0.6, 0.9], faceEvery: 8, late: 5 }
const l = (more: object) => slices({ ...SLICES, ...more } as Parameters<typeof slices>[0])
const PAIR = { box: [0.94, 0.05], loss: [0.15, 0.04], own: 0.02, logged: [0.6, 0.95], faceEvery: 10 }
const p = (more: object) => pair({ ...PAIR, ...more } as Parameters<typeof pair>[0])

const YARD = {
  box: [0.93, 0.05],
  ramp: [1, 3],
  rise: 0.04,
  early: 0.1,
  late: 0.18,
  season: 0.04,
  logged: [0.6, 0.9],
  runs: 3,
  faceEvery: 10,
}
const y = (more: object) => yard({ ...YARD, ...more } as Parameters<typeof yard>[0])

const farm = (name: string, heldOut: boolean, season: Farm['season']): Farm => ({ name, heldOut, season })

/** Farms of other simulators, each with a structure of its own. */
export const OTHERS: Farm[] = [
  farm('even', false, e({})),
  farm('even, wide boxes', false, e({ box: [0.98, 0.07], loss: [0.1, 0.25], need: 0.05 })),
  farm('even, no face', true, e({ face: undefined, box: [0.93, 0.05] })),
  farm('even, sparse', true, e({ logged: [0.3, 0.6], face: [12, 25], read: [2, 1], log: [0.05, 500] })),
  farm('even, exact', true, e({ box: [0.93, 0], loss: [0.15, 0.15], logged: [0.85, 0.85], log: [0, 10], need: 0, miss: 0 })),
  farm('shaped', false, s({})),
  farm('shaped, walled back', false, s({ back: [0, 0] })),
  farm('shaped, batches', true, s({ grain: 0, faceEvery: 14 })),
  farm('shaped, long ends', true, s({ front: [4, 6], back: [4, 6], loss: [0.14, 0.26], faceSd: 2 })),
  farm('clerk', false, c({})),
  farm('clerk, half there', true, c({ off: 4, faceEvery: 16, lost: 0.04 })),
  farm('clerk, no face', true, c({ faceEvery: 0 })),
  farm('slices', true, l({})),
  farm('slices, rough', true, l({ cv: 0.18, logged: [0.4, 0.8], faceEvery: 12 })),
  farm('pair', false, p({})),
  farm('pair, no face', true, p({ faceEvery: 0, box: [0.95, 0.06] })),
  farm('yard', true, y({})),
  farm('yard, tighter back', true, y({ rise: 0.12, early: 0.08, late: 0.12 })),
]
