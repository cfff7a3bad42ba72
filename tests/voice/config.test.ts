import { describe, expect, it } from 'vitest'
import { readConfig } from '../../src/config.ts'

const read = (env: Record<string, string>) => {
  const r = readConfig(env)
  return r.ok ? { ear: r.config.ear, speak: r.config.speak } : r.data
}

describe('which ear', () => {
  it('is the embedded one where nothing is said, and answers are silent', () => {
    expect(read({})).toEqual({ ear: undefined, speak: undefined })
  })

  it.each<[Record<string, string>, object]>([
    [{ EAR: 'embedded' }, { kind: 'embedded' }],
    [{ EAR: 'off' }, { kind: 'off' }],
    [
      { EAR: 'neural', EAR_MODEL: './model' },
      { kind: 'neural', model: './model' },
    ],
    [
      { EAR: 'endpoint', EAR_URL: 'http://127.0.0.1:8000/v1' },
      { kind: 'endpoint', url: 'http://127.0.0.1:8000/v1' },
    ],
    [
      { EAR: 'endpoint', EAR_URL: 'https://ears.example.org/v1', EAR_NAME: 'large', EAR_KEY: 'k' },
      { kind: 'endpoint', url: 'https://ears.example.org/v1', name: 'large', key: 'k' },
    ],
  ])('%j', (env, ear) => expect(read(env)).toMatchObject({ ear }))

  it('answers are spoken where that is asked for', () => expect(read({ EAR_SPEAK: 'on' })).toMatchObject({ speak: true }))

  it.each<[Record<string, string>, string, RegExp]>([
    [{ EAR: 'left' }, 'EAR', /one of embedded, neural, endpoint, off/],
    [{ EAR: 'neural' }, 'EAR_MODEL', /folder/],
    [{ EAR: 'endpoint' }, 'EAR_URL', /address/],
    [{ EAR: 'endpoint', EAR_URL: 'ears.example.org' }, 'EAR_URL', /http/],
    [{ EAR_SPEAK: 'loud' }, 'EAR_SPEAK', /on or off/],
  ])('%j is wrong, and %s says why', (env, name, why) => {
    expect(read(env)).toMatchObject({ name, why: expect.stringMatching(why) })
  })
})
