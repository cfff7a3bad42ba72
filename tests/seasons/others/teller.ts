import type { Event } from '../../../src/book/events.ts'
import type { Day } from '../../../src/units/calendar.ts'
import type { Said } from '../season.ts'

/** What crews tell, each thing as an event and in words. Every farm of the other simulators speaks through it. */
export interface Teller {
  told: Said[]
  pile(on: Day, pile: string, size?: { widthFt: number; lengthFt?: number; heightFt?: number }): void
  box(on: Day, name: string, lb: number): void
  loads(on: Day, pile: string, crop: string, count: number, box?: string, lb?: number): void
  cover(on: Day, pile: string): void
  size(on: Day, pile: string, widthFt: number, lengthFt: number, heightFt: number): void
  open(on: Day, pile: string): void
  perDay(on: Day, pile: string, lbPerDay: number): void
  head(on: Day, head: number): void
  perHead(on: Day, crop: string, lbPerHead: number): void
  fed(on: Day, pile: string, lb: number): void
  batches(on: Day, pile: string, count: number): void
  buckets(on: Day, pile: string, count: number): void
  face(on: Day, pile: string, atFt: number): void
  left(on: Day, pile: string, leftFt: number): void
  thrown(on: Day, pile: string, lb: number): void
  dry(on: Day, pile: string, dmPct: number): void
  gone(on: Day, pile: string): void
}

const some = (n: number, one: string, many: string): string => `${n} ${n === 1 ? one : many}`

export const teller = (): Teller => {
  const told: Said[] = []
  const say = (on: Day, hour: number, event: Event, words: string): void => {
    told.push({ on, hour, event, words })
  }
  return {
    told,
    pile: (on, name, size) => {
      const by = size?.lengthFt !== undefined ? ` by ${size.lengthFt}` : ' wide'
      const high = size?.heightFt !== undefined ? ` and ${size.heightFt} high` : ''
      say(on, 6.5, { type: 'pile', name, ...size, on }, `new pile called ${name}${size ? `, ${size.widthFt}${by}${high}` : ''}`)
    },
    box: (on, name, lb) => say(on, 6.75, { type: 'box', name, lb, on }, `the ${name} holds ${lb} lb`),
    loads: (on, pile, crop, count, box, lb) =>
      say(
        on,
        18,
        { type: 'load', pile, crop, count, ...(box && { box }), ...(lb !== undefined && { lb }), on },
        `put ${some(count, 'load', 'loads')} ${crop} on ${pile}${box ? ` with the ${box}` : ''}${lb === undefined ? '' : `, ${lb} lb`}`,
      ),
    cover: (on, pile) => say(on, 12, { type: 'cover', pile, material: 'plastic', change: 'on', on }, `covered ${pile} with plastic`),
    size: (on, pile, widthFt, lengthFt, heightFt) =>
      say(
        on,
        13,
        { type: 'size', pile, widthFt, lengthFt, heightFt, on },
        `${pile} is ${widthFt} wide, ${lengthFt} long and ${heightFt} high`,
      ),
    open: (on, pile) => say(on, 7, { type: 'open', pile, why: 'feed', on }, `opened ${pile} to feed`),
    perDay: (on, pile, lbPerDay) => say(on, 6, { type: 'ration', pile, lbPerDay, on }, `feeding ${lbPerDay} a day off ${pile}`),
    head: (on, head) => say(on, 6, { type: 'ration', group: 'milking', head, on }, `milking ${head} now`),
    perHead: (on, crop, lbPerHead) => say(on, 6.25, { type: 'ration', crop, lbPerHead, on }, `feeding ${lbPerHead} lb ${crop} a head`),
    fed: (on, pile, lb) => say(on, 17, { type: 'feed', pile, lb, on }, `fed ${lb} off ${pile}`),
    batches: (on, pile, count) =>
      say(on, 17, { type: 'feed', pile, count, unit: 'batch', on }, `fed ${some(count, 'batch', 'batches')} off ${pile}`),
    buckets: (on, pile, count) =>
      say(on, 17, { type: 'feed', pile, count, unit: 'bucket', on }, `fed ${some(count, 'bucket', 'buckets')} off ${pile}`),
    face: (on, pile, atFt) => say(on, 17.5, { type: 'face', pile, atFt, on }, `face is at ${atFt} ft on ${pile}`),
    left: (on, pile, leftFt) => say(on, 17.5, { type: 'face', pile, leftFt, on }, `${leftFt} ft left on ${pile}`),
    thrown: (on, pile, lb) => say(on, 16, { type: 'spoil', pile, lb, on }, `threw out ${lb} lb spoiled off ${pile}`),
    dry: (on, pile, dmPct) => say(on, 15, { type: 'test', pile, dmPct, on }, `${pile} tested ${dmPct} dry matter`),
    gone: (on, pile) => say(on, 19, { type: 'empty', pile, on }, `${pile} is all gone`),
  }
}

export const round = (x: number, grain: number): number => (grain > 0 ? Math.round(Math.round(x / grain) * grain * 1000) / 1000 : x)
