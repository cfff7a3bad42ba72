import { z } from 'zod'
import { isZone } from './units/calendar.ts'

const text = z
  .string()
  .trim()
  .optional()
  .transform(v => (v ? v : undefined))

const Env = z.object({
  PILEHAND_DATA: text,
  PILEHAND_ZONE: text.refine(
    v => v === undefined || isZone(v),
    'is not a time zone that this machine knows; use a name like America/Chicago',
  ),
  TELEGRAM_TOKEN: text.refine(
    v => v === undefined || /^\d+:[\w-]{30,}$/.test(v),
    'is not a bot token; it looks like 123456:ABC…, as the bot’s maker gave it',
  ),
  TELEGRAM_API_ROOT: text.refine(v => v === undefined || /^https?:\/\//.test(v), 'must begin with http:// or https://'),
  OWNER_CODE: text,
  MODEL_URL: text.refine(
    v => v === undefined || (/^https?:\/\//.test(v) && URL.canParse(v)),
    'must be an address that begins with http:// or https://',
  ),
  MODEL_NAME: text,
  MODEL_KEY: text,
})

export interface Config {
  data: string
  zone: string
  telegram?: { token: string; apiRoot?: string }
  ownerCode?: string
  /** The second reader. Without it no message leaves this machine, but for the crew's chat itself. */
  model?: { url: string; name?: string; key?: string }
}

export type ConfigResult = { ok: true; config: Config } | { ok: false; code: 'config-wrong'; data: { name: string; why: string } }

/** The environment as a checked config; a wrong value names itself. */
export const readConfig = (env: Record<string, string | undefined>): ConfigResult => {
  const r = Env.safeParse(env)
  if (!r.success) {
    const i = r.error.issues[0]!
    return { ok: false, code: 'config-wrong', data: { name: String(i.path[0] ?? ''), why: i.message } }
  }
  const e = r.data
  return {
    ok: true,
    config: {
      data: e.PILEHAND_DATA ?? './data',
      zone: e.PILEHAND_ZONE ?? Intl.DateTimeFormat().resolvedOptions().timeZone,
      ...(e.TELEGRAM_TOKEN
        ? { telegram: { token: e.TELEGRAM_TOKEN, ...(e.TELEGRAM_API_ROOT ? { apiRoot: e.TELEGRAM_API_ROOT } : {}) } }
        : {}),
      ...(e.OWNER_CODE ? { ownerCode: e.OWNER_CODE } : {}),
      ...(e.MODEL_URL
        ? { model: { url: e.MODEL_URL, ...(e.MODEL_NAME ? { name: e.MODEL_NAME } : {}), ...(e.MODEL_KEY ? { key: e.MODEL_KEY } : {}) } }
        : {}),
    },
  }
}
