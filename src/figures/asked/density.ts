import type { Answer } from '../../book/asks.ts'
import type { Book } from '../../book/book.ts'
import { hasFeed, type PileState } from '../../book/pile.ts'
import { cropDefaults } from '../cropDefaults.ts'
import { densityLoss } from '../densityLoss.ts'
import { fillingOf } from '../farm/layers.ts'
import { packedOf } from '../farm/packed.ts'
import { lengthKnown } from '../farm/position.ts'
import { usualDensity, volumeOf } from '../farm/volume.ts'
import { BULK_TARGET, DENSITY_TARGET, deliveryFor, measuredDensity, packingLbFor, tractorFor } from '../packing.ts'
import { POROSITY_TARGET, porosity } from '../porosity.ts'
import { type Refusal, refuse, slots, told } from './refusal.ts'

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
  const measured =
    volume?.form.measured && p.measured?.lengthFt !== undefined && filling.lb > 0 ? measuredDensity(filling.lb, volume.ft3) : undefined
  const dry = measured !== undefined ? measured * dm : (packed?.dryLbFt3 ?? usualDensity(filling).lbFt3)
  const bulk = dry / dm
  const phi = porosity(bulk, dmPct, ash)
  const basis = measured !== undefined ? 'measured' : packed ? 'packing' : 'assumed'
  const enough = dry >= DENSITY_TARGET || (bulk >= BULK_TARGET && phi.value <= POROSITY_TARGET)
  const cost = densityLoss(dry)
  const mend =
    packed && !enough
      ? slots({
          tractorLb: tractorFor(DENSITY_TARGET, packed.as).value,
          tonsHour: deliveryFor(DENSITY_TARGET, packed.as).value,
          ruleOf800Lb: packingLbFor(packed.as.tonsHour),
          tonsHourNow: packed.as.tonsHour,
        })
      : undefined
  const odd = [...(packed?.outside ?? []), ...(phi.outside ?? [])]
  return slots({
    about: 'density' as const,
    pile: p.name,
    dryLbFt3: dry,
    bulkLbFt3: bulk,
    porosity: phi.value,
    basis,
    enough,
    targetDryLbFt3: DENSITY_TARGET,
    lossPct: cost.value,
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
      told('how-porosity', { dmPct, target: POROSITY_TARGET }),
      told('how-density-loss', { pct: cost.value }),
    ],
    notes: [
      ...(odd.length ? [told('note-outside', { what: [...new Set(odd)] })] : []),
      ...(basis === 'packing' ? [told('note-density-guide')] : []),
      ...(basis === 'assumed' ? [told('note-density-assumed')] : []),
      ...(packed?.hoursAssumed && basis === 'packing' ? [told('note-hours-assumed')] : []),
      ...(volume?.form.problems ?? []).map(code => told(`note-${code}`)),
    ],
  })
}
