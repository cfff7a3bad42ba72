import type { Pool } from '../pool.ts'
import type { FrameName } from '../reading.ts'
import { amount } from './amounts.ts'
import { check } from './check.ts'
import { cover } from './cover.ts'
import { box, pile, size, test } from './facts.ts'
import { feed, spoil } from './feed.ts'
import { damage } from './harm.ts'
import { harvest } from './harvest.ts'
import { load } from './load.ts'
import { pack } from './pack.ts'
import { patch } from './patch.ts'
import { empty, face, open, shift } from './pileLife.ts'
import { ration } from './ration.ts'
import type { Found } from './slots.ts'
import { supply } from './supply.ts'
import { weather } from './weather.ts'

type Frame = (p: Pool) => Found | undefined

export interface Rule {
  name: FrameName
  frame: Frame
  /** One of these senses or categories (`cat:`) must be in the clause; a cheap gate before the frame itself. */
  needs: string[]
  /** What a clause without its own verb may lean on, after a clause of this frame. */
  ghost?: string
  /** What it must have found to lean: something counted or measured. Where left out, anything will do. */
  leans?: (found: Found) => boolean
}

// "and 3 in barn" leans on the holes before; a length does not
const isCounted = ({ slots }: Found): boolean => slots.count !== undefined
const hasAmount = ({ slots }: Found): boolean => amount(slots) || slots.bare !== undefined
// "plastic on creek, 50x150 and 280 tires"
const areSized = ({ several }: Found): boolean => several!.every(o => o.count !== undefined || o.widthFt !== undefined)
// "rain 1.25 fri, .4 sat"
const isMeasured = ({ slots }: Found): boolean => slots.inches !== undefined

/** The frames, in the order that breaks a tie. */
export const FRAMES: Rule[] = [
  { name: 'pile', frame: pile, needs: ['v:new'] },
  { name: 'box', frame: box, needs: ['v:hold'] },
  { name: 'spoil', frame: spoil, needs: ['v:pitch', 'thing:spoiled'], ghost: 'v:pitch' },
  { name: 'shift', frame: shift, needs: ['v:push', 'b:push', 'v:put'] },
  { name: 'ration', frame: ration, needs: ['v:milk', 'cat:per', 'cat:group', 'basis:as fed'] },
  { name: 'harvest', frame: harvest, needs: ['harv:expect', 'acre', 'approx'], ghost: 'harv:expect' },
  { name: 'patch', frame: patch, needs: ['v:patch', 'b:patch'], ghost: 'v:patch', leans: isCounted },
  { name: 'damage', frame: damage, needs: ['cat:what', 'cat:animal', 'v:break', 'v:lift'], ghost: 'what:hole', leans: isCounted },
  { name: 'cover', frame: cover, needs: ['v:cover', 'v:uncover', 'v:roll', 'cat:mat'], ghost: 'v:put', leans: areSized },
  { name: 'pack', frame: pack, needs: ['v:pack', 'b:pack', 'v:roll', 'tractor'] },
  { name: 'test', frame: test, needs: ['cat:dm', 'v:test'], ghost: 'v:test' },
  { name: 'face', frame: face, needs: ['thing:face', 'thing:left', 'thing:at'] },
  { name: 'size', frame: size, needs: ['cat:dim', 'v:measure', 'sides'] },
  {
    name: 'load',
    frame: load,
    needs: ['v:put', 'b:put', 'unit:load', 'cat:crop', 'load', 'bucket', 'more', 'v:weigh', 'total', 'lb', 'ton', 'tonne'],
    ghost: 'v:put',
    leans: hasAmount,
  },
  {
    name: 'feed',
    frame: feed,
    needs: ['v:feed', 'to:cows', 'v:take', 'b:feed', 'b:take', 'batch', 'off', 'cat:group', 'unit:head'],
    ghost: 'v:feed',
    leans: hasAmount,
  },
  { name: 'open', frame: open, needs: ['v:open', 'b:open', 'v:uncover'] },
  { name: 'empty', frame: empty, needs: ['thing:gone'] },
  { name: 'check', frame: check, needs: ['v:check', 'b:check', 'find:good', 'find:trouble'], ghost: 'v:check' },
  { name: 'supply', frame: supply, needs: ['v:buy', 'v:have', 'v:use', 'thing:home', 'thing:out'], ghost: 'v:have' },
  { name: 'weather', frame: weather, needs: ['cat:sky', 'degF'], ghost: 'sky:rain', leans: isMeasured },
]
