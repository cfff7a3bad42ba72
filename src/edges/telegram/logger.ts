import { type Logger, pino } from 'pino'
import { scrubber } from './faults.ts'

/** A line at a time. */
export interface Sink {
  write(line: string): unknown
}

/**
 * A logger that can't write the bot's token: an error of the network carries the whole address, token and all, and
 * pino's own redaction doesn't look inside texts. So every finished line is scrubbed.
 */
export const makeLogger = (token: string, sink: Sink = process.stderr, level = 'info'): Logger => {
  const scrub = scrubber(token)
  return pino({ level, base: null }, { write: (line: string) => void sink.write(scrub(line)) })
}
