import { join } from 'node:path'
import type { Ear } from '../ports.ts'
import { endpointEar } from './voice/ears/endpoint.ts'
import { neuralEar } from './voice/ears/neural.ts'
import { embeddedEar } from './voice/embedded.ts'

export { EarFault } from './voice/fault.ts'
export { farmWords, LIMITS, makeListener } from './voice/listener.ts'
export { secondsOf, soundOf } from './voice/sound.ts'
export { makeSpeaker } from './voice/speak.ts'

/** Which recogniser, by configuration. */
export type EarChoice =
  | { kind: 'embedded' }
  | { kind: 'neural'; model: string }
  | { kind: 'endpoint'; url: string; name?: string; key?: string }
  | { kind: 'off' }

/**
 * The recogniser that was chosen, or the embedded one. What it makes of the farm's names is kept under `data`.
 *
 * @throws EarFault where the folder of a downloaded model holds none
 */
export const makeEar = (choice: EarChoice | undefined, data: string): Ear | undefined => {
  switch (choice?.kind) {
    case undefined:
    case 'embedded':
      return embeddedEar({ folder: join(data, 'voice', 'models') })
    case 'neural':
      return neuralEar({ folder: choice.model })
    case 'endpoint':
      return endpointEar({ url: choice.url, ...(choice.name && { model: choice.name }), ...(choice.key && { key: choice.key }) })
    case 'off':
      return undefined
  }
}
