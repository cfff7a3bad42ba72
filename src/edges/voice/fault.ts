/** Why an ear cannot listen, or a note cannot be heard. Its sentence stands in `prompts/voice.*.ftl` or `ears.*.ftl` under its code. */
export class EarFault extends Error {
  readonly code: string
  readonly data: Record<string, string | number | boolean>
  constructor(code: string, data: Record<string, string | number | boolean> = {}) {
    super(`${code} ${JSON.stringify(data)}`)
    this.name = 'EarFault'
    this.code = code
    this.data = data
  }
}
