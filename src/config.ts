import { z } from 'zod'
import { isZone } from './units/calendar.ts'

const text = z
  .string()
  .trim()
  .optional()
  .transform(v => (v ? v : undefined))

const address = text.refine(
  v => v === undefined || (/^https?:\/\//.test(v) && URL.canParse(v)),
  'must be an address that begins with http:// or https://',
)

/** RFC 2104, section 3: a key shorter than the hash weakens it; 32 characters of text hold at least 128 bits where they are random. */
const LEAST_SECRET = 32
const SMS_PORT = 8475

/** "127.0.0.1:8443", or a port alone on loopback; undefined for what is neither. */
const listenOf = (text: string): { host: string; port: number } | undefined => {
  const m = /^(?:(.+):)?(\d{1,5})$/.exec(text)
  return m && Number(m[2]) <= 65_535 ? { host: m[1] ?? '127.0.0.1', port: Number(m[2]) } : undefined
}
const HOOK_LISTEN = '127.0.0.1:8443'

/** Who hears voice notes. */
const EARS = new Set(['embedded', 'neural', 'endpoint', 'off'])
/** What each ear cannot do without. */
const EAR_NEEDS: Record<string, [name: 'EAR_MODEL' | 'EAR_URL', why: string]> = {
  neural: ['EAR_MODEL', 'must name the folder of a downloaded model where EAR is neural'],
  endpoint: ['EAR_URL', 'must be the address of the service where EAR is endpoint, like http://127.0.0.1:8000/v1'],
}

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
  TELEGRAM_WEBHOOK: text.refine(
    v => v === undefined || (/^https:\/\//.test(v) && URL.canParse(v)),
    'must be the address that Telegram can call, and begin with https://',
  ),
  TELEGRAM_WEBHOOK_LISTEN: text.refine(
    v => v === undefined || listenOf(v) !== undefined,
    'must be where this program listens, like 127.0.0.1:8443',
  ),
  TELEGRAM_WEBHOOK_SECRET: text.refine(v => v === undefined || /^[\w-]{16,256}$/.test(v), 'must be 16 to 256 letters, digits, _ or -'),
  TELEGRAM_API_ROOT: text.refine(v => v === undefined || /^https?:\/\//.test(v), 'must begin with http:// or https://'),
  OWNER_CODE: text,
  MODEL_URL: address,
  MODEL_NAME: text,
  MODEL_KEY: text,
  WEATHER_URL: address,
  WEATHER_PLACE: text.refine(
    v => v === undefined || placeOf(v) !== undefined,
    'must be a latitude and a longitude in degrees, like 43.07,-89.40',
  ),
  WEATHER_AREA: text,
  SMS_SECRET: text.refine(
    v => v === undefined || v.length >= LEAST_SECRET,
    `must be ${LEAST_SECRET} characters or more; \`openssl rand -hex 32\` makes one`,
  ),
  SMS_HOST: text,
  SMS_PORT: text.refine(v => v === undefined || (/^\d{1,5}$/.test(v) && Number(v) <= 65_535), 'must be a port, 0 to 65535'),
  SMS_SEND_URL: address,
  EAR: text.refine(v => v === undefined || EARS.has(v), `must be one of ${[...EARS].join(', ')}`),
  EAR_MODEL: text,
  EAR_URL: address,
  EAR_NAME: text,
  EAR_KEY: text,
  EAR_SPEAK: text.refine(v => v === undefined || v === 'on' || v === 'off', 'must be on or off'),
})

/** "43.07,-89.40" as degrees north and east; undefined where it is no place on earth. */
const placeOf = (text: string): { lat: number; lon: number } | undefined => {
  const [lat, lon, ...rest] = text.split(/[,;\s]+/).map(p => (p === '' ? Number.NaN : Number(p)))
  const there = rest.length === 0 && lat !== undefined && lon !== undefined && Math.abs(lat) <= 90 && Math.abs(lon) <= 180
  return there ? { lat, lon } : undefined
}

export interface Config {
  data: string
  zone: string
  /** With `webhook` Telegram calls us; without it we ask. */
  telegram?: { token: string; apiRoot?: string; webhook?: { url: string; host: string; port: number; secret?: string } }
  ownerCode?: string
  /** The second reader. Without it no message leaves this machine, but for the crew's chat itself. */
  model?: { url: string; name?: string; key?: string }
  /** An alert feed of the weather, off where it is not set; the place may come from the book. */
  weather?: { url: string; place?: { lat: number; lon: number }; area?: string }
  /** The door for text messages, closed where it has no secret. */
  sms?: { secret: string; host: string; port: number; sendUrl?: string }
  /** The recogniser for voice notes; the embedded one where it is not set. */
  ear?:
    | { kind: 'embedded' }
    | { kind: 'neural'; model: string }
    | { kind: 'endpoint'; url: string; name?: string; key?: string }
    | { kind: 'off' }
  /** Short replies to voice notes are spoken too, where a synthesiser is installed. */
  speak?: boolean
}

const earOf = (e: z.infer<typeof Env>): NonNullable<Config['ear']> => {
  if (e.EAR === 'neural') return { kind: 'neural', model: e.EAR_MODEL! }
  if (e.EAR === 'endpoint')
    return { kind: 'endpoint', url: e.EAR_URL!, ...(e.EAR_NAME ? { name: e.EAR_NAME } : {}), ...(e.EAR_KEY ? { key: e.EAR_KEY } : {}) }
  return { kind: e.EAR === 'off' ? 'off' : 'embedded' }
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
  const lost = (['SMS_HOST', 'SMS_PORT', 'SMS_SEND_URL'] as const).find(name => e[name] !== undefined)
  if (lost && e.SMS_SECRET === undefined)
    return { ok: false, code: 'config-wrong', data: { name: lost, why: 'needs SMS_SECRET, which opens the door for text messages' } }
  const needs = EAR_NEEDS[e.EAR ?? '']
  if (needs && e[needs[0]] === undefined) return { ok: false, code: 'config-wrong', data: { name: needs[0], why: needs[1] } }
  return {
    ok: true,
    config: {
      ...(e.EAR ? { ear: earOf(e) } : {}),
      ...(e.EAR_SPEAK === 'on' ? { speak: true } : {}),
      data: e.PILEHAND_DATA ?? './data',
      zone: e.PILEHAND_ZONE ?? Intl.DateTimeFormat().resolvedOptions().timeZone,
      ...(e.TELEGRAM_TOKEN
        ? {
            telegram: {
              token: e.TELEGRAM_TOKEN,
              ...(e.TELEGRAM_API_ROOT ? { apiRoot: e.TELEGRAM_API_ROOT } : {}),
              ...(e.TELEGRAM_WEBHOOK
                ? {
                    webhook: {
                      url: e.TELEGRAM_WEBHOOK,
                      ...listenOf(e.TELEGRAM_WEBHOOK_LISTEN ?? HOOK_LISTEN)!,
                      ...(e.TELEGRAM_WEBHOOK_SECRET ? { secret: e.TELEGRAM_WEBHOOK_SECRET } : {}),
                    },
                  }
                : {}),
            },
          }
        : {}),
      ...(e.OWNER_CODE ? { ownerCode: e.OWNER_CODE } : {}),
      ...(e.MODEL_URL
        ? { model: { url: e.MODEL_URL, ...(e.MODEL_NAME ? { name: e.MODEL_NAME } : {}), ...(e.MODEL_KEY ? { key: e.MODEL_KEY } : {}) } }
        : {}),
      ...(e.WEATHER_URL
        ? {
            weather: {
              url: e.WEATHER_URL,
              ...(e.WEATHER_PLACE ? { place: placeOf(e.WEATHER_PLACE)! } : {}),
              ...(e.WEATHER_AREA ? { area: e.WEATHER_AREA } : {}),
            },
          }
        : {}),
      ...(e.SMS_SECRET
        ? {
            sms: {
              secret: e.SMS_SECRET,
              host: e.SMS_HOST ?? '127.0.0.1',
              port: Number(e.SMS_PORT ?? SMS_PORT),
              ...(e.SMS_SEND_URL ? { sendUrl: e.SMS_SEND_URL } : {}),
            },
          }
        : {}),
    },
  }
}
