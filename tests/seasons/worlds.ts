import type { World } from './world.ts'

/** Errors on the hard side: every pile has steep ends, uneven feed and a length told 2 % off. */
const PLAIN: World = {
  name: 'plain',
  lasts: [65, 150],
  box: [0.98, 0.07],
  load: 0.06,
  loss: [0.15, 0.04],
  over: [1.03, 0.05],
  drift: 0.003,
  daily: 0.06,
  logged: [0.5, 0.9],
  runs: 2,
  logs: 'rounded',
  faceAs: 'at',
  faceEvery: 12,
  faceGrain: 1,
  faceSd: 1.2,
  slope: 2.5,
  uneven: 0.02,
  length: 0.8,
  lengthSd: 0.02,
  height: 0.5,
  tickets: 0.3,
  ration: 0.9,
  rationBy: 'day',
  herdChange: 0.15,
}

/**
 * Ordinary errors: boxes that hold 7 % less than said, days that nobody logged, a loss that nobody knows. The notebook is off by
 * some six days here with 20 to 45 left.
 */
const ORDINARY: World = {
  ...PLAIN,
  name: 'ordinary',
  lasts: [60, 130],
  box: [0.93, 0.04],
  loss: [0.12, 0.04],
  over: [1.01, 0.03],
  drift: 0.002,
  logged: [0.6, 0.9],
  faceEvery: 10,
  uneven: 0.01,
  length: 1,
  lengthSd: 0.01,
  height: 0.6,
  ration: 1,
  herdChange: 0.1,
}

/** Worlds that err in other ways: what is good in one only is not good. */
export const WORLDS: World[] = [
  ORDINARY,
  PLAIN,
  { ...ORDINARY, name: 'ordinary, no face', faceEvery: 0 },
  { ...ORDINARY, name: 'ordinary, flat', slope: 0, uneven: 0, lengthSd: 0 },
  { ...ORDINARY, name: 'ordinary, short', lasts: [50, 100] },
  { ...PLAIN, name: 'light boxes', box: [0.93, 0.03], over: [1.05, 0.03], tickets: 0, slope: 0, uneven: 0 },
  { ...PLAIN, name: 'honest', box: [1, 0.02], over: [1, 0.01], loss: [0.15, 0.02], daily: 0.03, logged: [0.9, 1] },
  { ...PLAIN, name: 'all light, no face', box: [0.94, 0.04], faceEvery: 0, length: 0.4 },
  { ...PLAIN, name: 'face only', logged: [0, 0], faceEvery: 9, faceGrain: 5 },
  { ...PLAIN, name: 'long silence', logged: [0.25, 0.5], runs: 8, faceEvery: 20, faceGrain: 5 },
  { ...PLAIN, name: 'steep ends, uneven', slope: 4, uneven: 0.05, faceSd: 2.5 },
  { ...PLAIN, name: 'upright, square', slope: 0, uneven: 0.01, lengthSd: 0, length: 1 },
  { ...PLAIN, name: 'heavy loss', loss: [0.24, 0.05], box: [1, 0.07] },
  { ...PLAIN, name: 'logs the ration', logs: 'ration', over: [1.07, 0.05] },
  { ...PLAIN, name: 'no ration told', ration: 0, height: 0.3 },
  { ...PLAIN, name: 'long piles', lasts: [140, 300] },
  { ...PLAIN, name: 'by the head', rationBy: 'head', ration: 1 },
  { ...PLAIN, name: 'feet left, in fives', faceAs: 'left', faceGrain: 5, length: 1 },
  { ...PLAIN, name: 'batches', logs: 'batches' },
  { ...PLAIN, name: 'simple', slope: 0, uneven: 0, drift: 0, herdChange: 0, lengthSd: 0.01, length: 0.75, tickets: 0 },
  { ...PLAIN, name: 'feet logged', logs: 'feet', faceEvery: 25 },
]
