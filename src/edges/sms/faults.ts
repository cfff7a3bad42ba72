/** Why the door can not be opened. */
export class SmsFault extends Error {
  readonly code = 'sms-port'
  readonly data: Record<string, string | number>
  constructor(host: string, port: number, why: string) {
    super(`sms-port: ${why}`)
    this.name = 'SmsFault'
    this.data = { host, port: String(port), why }
  }
}

/** A store that can't write: the message is not safe, so the gateway must keep it. (Known by its shape: edges don't import one another.) */
export const isStoreFault = (error: unknown): error is Error =>
  error instanceof Error && error.name === 'StoreFault' && (error as Error & { code?: string }).code !== 'entry-refused'
