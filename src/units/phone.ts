/** A telephone number as ITU-T E.164 has it: a plus, a country code that does not begin with 0, fifteen digits at most. */
export const isPhone = (text: string): boolean => /^\+[1-9]\d{6,14}$/.test(text)

/** What gateways and people put between the digits. */
export const tidyPhone = (text: string): string => text.trim().replace(/[\s().-]+/g, '')
