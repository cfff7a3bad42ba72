import { describe, expect, it } from 'vitest'
import { readConfig } from '../../src/config.ts'

const SECRET = 'x'.repeat(32)
const configOf = (env: Record<string, string>) => {
  const r = readConfig(env)
  if (!r.ok) throw new Error(`${r.data.name}: ${r.data.why}`)
  return r.config
}
const wrong = (env: Record<string, string>): string => {
  const r = readConfig(env)
  return r.ok ? '' : `${r.data.name} ${r.data.why}`
}

describe('the door for text messages', () => {
  it('is closed without its secret, and on loopback with it', () => {
    expect(configOf({}).sms).toBeUndefined()
    expect(configOf({ SMS_SECRET: SECRET }).sms).toEqual({ secret: SECRET, host: '127.0.0.1', port: 8475 })
    expect(configOf({ SMS_SECRET: SECRET, SMS_HOST: '0.0.0.0', SMS_PORT: '0', SMS_SEND_URL: 'http://127.0.0.1:9/x' }).sms).toEqual({
      secret: SECRET,
      host: '0.0.0.0',
      port: 0,
      sendUrl: 'http://127.0.0.1:9/x',
    })
  })
  it.each([
    [{ SMS_SECRET: 'short' }, 'SMS_SECRET'],
    [{ SMS_SECRET: SECRET, SMS_PORT: '80a' }, 'SMS_PORT'],
    [{ SMS_SECRET: SECRET, SMS_PORT: '70000' }, 'SMS_PORT'],
    [{ SMS_SECRET: SECRET, SMS_SEND_URL: 'gateway.example' }, 'SMS_SEND_URL'],
    [{ SMS_PORT: '8475' }, 'SMS_PORT'],
    [{ SMS_HOST: '127.0.0.1' }, 'SMS_HOST'],
    [{ SMS_SEND_URL: 'http://127.0.0.1:9/x' }, 'SMS_SEND_URL'],
  ])('%o names what is wrong, and never the secret', (env, name) => {
    expect(wrong(env as Record<string, string>)).toMatch(new RegExp(`^${name} (must|needs)`))
    expect(wrong(env as Record<string, string>)).not.toContain('short')
  })
})

describe('the weather feed', () => {
  it('is off without its address', () => {
    expect(configOf({ WEATHER_PLACE: '43.07,-89.40' }).weather).toBeUndefined()
    expect(configOf({ WEATHER_URL: 'https://alerts.example/x', WEATHER_PLACE: '43.07, -89.40' }).weather).toEqual({
      url: 'https://alerts.example/x',
      place: { lat: 43.07, lon: -89.4 },
    })
  })
  it.each(['43.07', '91,0', '43,-181', 'here', '43.07,-89.40,7', ','])('%s is no place', place => {
    expect(wrong({ WEATHER_URL: 'https://alerts.example/x', WEATHER_PLACE: place })).toMatch(/^WEATHER_PLACE must/)
  })
})
