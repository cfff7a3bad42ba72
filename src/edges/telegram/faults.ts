export type TelegramFaultCode = 'telegram-token-refused' | 'telegram-second-reader' | 'telegram-webhook-refused' | 'telegram-webhook-port'

/** Why the channel can not go on. It has no `cause`: the errors behind it carry the address with the token in it. */
export class TelegramFault extends Error {
  readonly code: TelegramFaultCode
  readonly data: Record<string, string>
  constructor(code: TelegramFaultCode, why: string) {
    super(`${code}: ${why}`)
    this.name = 'TelegramFault'
    this.code = code
    this.data = { why }
  }
}

/** Any text without the bot's token. */
export const scrubber = (token: string): ((text: string) => string) => {
  const secret = token.slice(token.indexOf(':') + 1)
  return text => {
    const known = secret.length < 4 ? text : text.replaceAll(token, '[token]').replaceAll(secret, '[token]')
    return known.replace(/\d{5,}(?::|%3A)[\w-]{30,}/gi, '[token]')
  }
}
