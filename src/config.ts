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
  MODEL_URL: address,
  MODEL_NAME: text,
  MODEL_KEY: text,
  WEATHER_URL: address,
  WEATHER_PLACE: text.refine(
    v => v === undefined || placeOf(v) !== undefined,
    'must be a latitude and a longitude in degrees, like 43.07,-89.40',
  ),
  WEATHER_AREA: text,
})

/** "43.07,-89.40" as degrees north and east; undefined where it is no place on earth. */
const placeOf = (text: string): { lat: number; lon: number } | undefined => {
  const [lat, lon, ...rest] = text.split(/[,;\s]+/).map(Number)
  const there = rest.length === 0 && lat !== undefined && lon !== undefined && Math.abs(lat) <= 90 && Math.abs(lon) <= 180
  return there ? { lat, lon } : undefined
}

export interface Config {
  data: string
  zone: string
  telegram?: { token: string; apiRoot?: string }
  ownerCode?: string
  /** The second reader. Without it no message leaves this machine, but for the crew's chat itself. */
  model?: { url: string; name?: string; key?: string }
  /** An alert feed of the weather, off where it is not set; the place may come from the book. */
  weather?: { url: string; place?: { lat: number; lon: number }; area?: string }
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
      ...(e.WEATHER_URL
        ? {
            weather: {
              url: e.WEATHER_URL,
              ...(e.WEATHER_PLACE ? { place: placeOf(e.WEATHER_PLACE)! } : {}),
              ...(e.WEATHER_AREA ? { area: e.WEATHER_AREA } : {}),
            },
          }
        : {}),
    },
  }
}
