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
