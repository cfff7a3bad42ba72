import type { Answer } from '../../book/asks.ts'
import type { Book } from '../../book/book.ts'
import { hasFeed, type PileState } from '../../book/pile.ts'
import { cropDefaults } from '../cropDefaults.ts'
import { densityLoss } from '../densityLoss.ts'
import { fillingOf } from '../farm/layers.ts'
import { packedOf } from '../farm/packed.ts'
import { lengthKnown } from '../farm/position.ts'
import { mixPrice } from '../farm/prices.ts'
import { usualDensity, volumeOf } from '../farm/volume.ts'
import { lossCost } from '../money.ts'
import { BULK_TARGET, DENSITY_TARGET, deliveryFor, measuredDensity, PREDICTION_SD, packingLbFor, tractorFor } from '../packing.ts'
import { POROSITY_TARGET, porosity } from '../porosity.ts'
import { by } from './by.ts'
import { type Refusal, refuse, slots, told } from './refusal.ts'
import { Z80 } from './z80.ts'

/** A few loads weighed make the weight in so sure, a share of it. Common practice, no source. */
const TICKET_SD = 0.03

/**
 * How sure the density is, a share of it; and what would make it surer. Measured: the weight in and the shape; by the packing: how
 * far piles lie from the equation; else how far piles of a crop lie from their usual.
 */
const sureness = (
  basis: 'measured' | 'packing' | 'assumed',
  weightSd: number,
  shapeSd: number,
  usualSd: number,
): { sd: number; what?: 'size' | 'tickets' | 'packing'; after?: number } => {
  const sd = basis === 'measured' ? Math.hypot(weightSd, shapeSd) : basis === 'packing' ? PREDICTION_SD : usualSd
  const tries: ['size' | 'tickets' | 'packing', number][] = [
    ...(basis === 'measured'
      ? [['tickets', Math.hypot(Math.min(weightSd, TICKET_SD), shapeSd)] as ['tickets', number]]
      : [['size', Math.hypot(weightSd, shapeSd)] as ['size', number]]),
    ...(basis === 'assumed' ? [['packing', PREDICTION_SD] as ['packing', number]] : []),
  ]
  const [what, after] = tries.reduce((a, b) => (b[1] < a[1] ? b : a))
  return after < sd * 0.9 ? { sd, what, after } : { sd }
}
/** A pile's shape is never quite the figure's, as a share of its volume. Common practice, no source. */
const SHAPE_SD = 0.12

/**
 * How tight a pile lies: measured where its size was, worked out from the packing where that was told, else the crop's usual; what
 * it costs, and what would mend it.
 */
export const density = (book: Book, p: PileState): Answer | Refusal => {
  if (!hasFeed(p)) return refuse('nothing-in-pile', { pile: p.name, stage: p.stage })
  const filling = fillingOf(book, p)
  const dmPct = filling.dmPct || cropDefaults('corn silage').dmPct.value
  const dm = dmPct / 100
  const ash = filling.lbDry > 0 ? filling.layers.reduce((s, l) => s + l.lbDry * cropDefaults(l.crop).ash.value, 0) / filling.lbDry : 0.05
  const volume = volumeOf(p, lengthKnown(p), filling)
  const packed = packedOf(book, p, filling)
  // The length and the height must have been measured for a weight over a volume to mean anything.
  const inSize =
    volume?.form.measured && p.measured?.lengthFt !== undefined && filling.lb > 0 ? measuredDensity(filling.lb, volume.ft3) : undefined
  // Heavier than full of water: the loads and the size do not go together, and neither can be believed.
  const misfit = inSize !== undefined && porosity(inSize, dmPct, ash).outside?.includes('past-saturation') === true
  const measured = misfit ? undefined : inSize
  const dry = measured !== undefined ? measured * dm : (packed?.dryLbFt3 ?? usualDensity(filling).lbFt3)
  const bulk = dry / dm
  const phi = porosity(bulk, dmPct, ash)
  const basis = measured !== undefined ? 'measured' : packed ? 'packing' : 'assumed'
  const tight = dry >= DENSITY_TARGET || (bulk >= BULK_TARGET && phi.value <= POROSITY_TARGET)
  // Of the usual alone nothing can be said of this pile.
  const enough = misfit || basis === 'assumed' ? undefined : tight
  const cost = densityLoss(dry)
  const mend =
    packed && enough === false
      ? slots({
          tractorLb: tractorFor(DENSITY_TARGET, packed.as).value,
          tonsHour: deliveryFor(DENSITY_TARGET, packed.as).value,
          ruleOf800Lb: packingLbFor(packed.as.tonsHour),
          tonsHourNow: packed.as.tonsHour,
        })
      : undefined
  const sure = sureness(basis, filling.sd, SHAPE_SD, usualDensity(filling).sd)
  const half = Z80 * sure.sd * dry
  // What the pile's thinness costs over one at the target, of what went in.
  const over = enough !== false ? undefined : Math.max(0, cost.value - densityLoss(DENSITY_TARGET).value)
  const price = mixPrice(book, filling.layers)
  const ruleLb = packed && packingLbFor(packed.as.tonsHour)
  const packingLb = packed && packed.as.tractorLb * (packed.as.tractors ?? 1)
  const odd = [...(basis === 'packing' ? (packed?.outside ?? []) : []), ...(phi.outside ?? []), ...(cost.outside ?? [])]
  return slots({
    about: 'density' as const,
    pile: p.name,
    dryLbFt3: dry,
    bulkLbFt3: bulk,
    porosity: phi.value,
    basis,
    enough,
    dryLow: Math.max(0, dry - half),
    dryHigh: dry + half,
    targetDryLbFt3: DENSITY_TARGET,
    lossPct: cost.value,
    overPct: over,
    overLbDry: over !== undefined && filling.lbDry > 0 ? (filling.lbDry * over) / 100 : undefined,
    cost: over === undefined ? undefined : lossCost(filling.lb, over, price),
    ruleOf800:
      ruleLb !== undefined && packingLb !== undefined ? { wantLb: ruleLb, haveLb: packingLb, tonsHour: packed!.as.tonsHour } : undefined,
    packingDryLbFt3: packed?.dryLbFt3,
    mend,
    how: [
      measured !== undefined
        ? told('how-density-measured', { lb: filling.lb, ft3: volume!.ft3 })
        : packed
          ? told('how-density-packing', {
              tractorLb: packed.as.tractorLb,
              tractors: packed.as.tractors,
              layerIn: packed.as.layerIn,
              tonsHour: packed.as.tonsHour,
            })
          : told('how-density-usual', { crop: filling.layers[0]?.crop }),
      told('how-porosity', { dmPct, air: phi.value, target: POROSITY_TARGET }),
      told('how-density-loss', { pct: cost.value }),
      by(
        ...(measured !== undefined
          ? (['formula-measured'] as const)
          : packed
            ? (['formula-muck-holmes', 'formula-eight-hundred'] as const)
            : (['formula-survey'] as const)),
        'formula-richard',
        'formula-ruppel',
      ),
      sure.what
        ? told('how-narrow-density', { what: sure.what, half, after: Z80 * sure.after! * dry })
        : told('how-narrow-density', { what: 'none', half, after: half }),
    ],
    notes: [
      ...(misfit ? [told('note-density-misfit', { lb: filling.lb, ft3: volume!.ft3, dry, basis })] : []),
      ...(odd.length ? [told('note-outside', { what: [...new Set(odd)] })] : []),
      ...(basis === 'packing' ? [told('note-density-guide')] : []),
      ...(basis === 'assumed' ? [told('note-density-assumed')] : []),
      ...(packed?.hoursAssumed && basis === 'packing' ? [told('note-hours-assumed')] : []),
      ...(volume?.form.problems ?? []).map(code => told(`note-${code}`)),
    ],
  })
}
