// Run as a process of its own: loading and hearing take seconds in one go, and the native code ends its process over a bad file.
import type { Engine, Part } from './engine.ts'
import type { Options } from './options.ts'

export type Order = { open: Options } | { sound: Float32Array }
/** `failed` tells what did not work, `why` in the words of whoever refused. */
export type Report = { ready: true } | { parts: Part[] } | { failed: 'package' | 'model' | 'note'; why: string }

const wordsFrom = (error: unknown): string => {
  const { code, message } = error as { code?: string; message?: string }
  return code ?? message?.trim().split('\n')[0] ?? String(error)
}

let engine: Engine | undefined

const open = async (options: Options): Promise<Report> => {
  let openEngine: (o: Options) => Engine
  try {
    ;({ openEngine } = await import('./engine.ts'))
  } catch (error) {
    return { failed: 'package', why: wordsFrom(error) }
  }
  try {
    engine = openEngine(options)
    return { ready: true }
  } catch (error) {
    return { failed: 'model', why: wordsFrom(error) }
  }
}

const hear = (sound: Float32Array): Report => {
  try {
    return { parts: engine!(sound) }
  } catch (error) {
    return { failed: 'note', why: wordsFrom(error) }
  }
}

process.on('message', (order: Order) => {
  void (async () => {
    const report = 'open' in order ? await open(order.open) : hear(order.sound)
    process.send?.(report)
  })()
})
// whoever started it is gone
process.on('disconnect', () => process.exit())
