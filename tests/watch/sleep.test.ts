import { afterEach, describe, expect, it } from 'vitest'
import { Yard } from './yard.ts'

let y: Yard
afterEach(() => y.close())

/** A farm with a covered pile being fed by a ration, a weekly and a daily reminder, and an unpatched hole. */
const farm = (zone?: string): Yard => {
  y = new Yard(zone)
  y.say('2026-10-01 08:00', 'ada', 'new pile called glen, 40 by 120, 10 high')
  y.say('2026-10-01 08:01', 'lenny@crew', 'hi')
  y.say('2026-10-01 09:00', 'lenny@crew', 'put 60 loads of corn on glen')
  y.say('2026-10-01 17:00', 'lenny@crew', 'covered glen with plastic and 330 tires')
  y.say('2026-11-02 08:00', 'ada@crew', 'opened glen to feed')
  y.say('2026-11-02 08:01', 'ada@crew', 'feeding 8,000 a day off glen')
  y.say('2026-11-02 08:02', 'ada', 'remind me every tuesday to check the tires')
  y.say('2026-11-02 08:03', 'ada', 'remind me every day at 4 pm to look at the face')
  y.say('2026-11-02 09:00', 'lenny@crew', 'coons got in glen, two holes')
  y.until('2026-11-02 09:00', '2026-11-03 07:00')
  return y
}

describe('a machine that slept for a week', () => {
  it('says one morning, each reminder once, and no more nudges than a day may have; and then nothing more', () => {
    farm()
    y.restart()
    const woken = y.look('2026-11-10 14:20')
    expect(woken.filter(c => / morning\./.test(c.text)).map(c => c.text.split('\n')[0])).toEqual(['Tue Nov 10, morning.'])
    expect(woken.filter(c => /check the tires/.test(c.text))).toHaveLength(1)
    expect(woken.filter(c => /look at the face/.test(c.text))).toHaveLength(1)
    expect(woken.filter(c => /^(?:Patched yet|Still |Asked twice)/.test(c.text)).length).toBeLessThanOrEqual(3)
    expect(woken.length).toBeLessThanOrEqual(6)
    expect(y.look('2026-11-10 14:21')).toEqual([])
    y.restart()
    expect(y.look('2026-11-10 14:22')).toEqual([])
  })
  it('and woke at night waits for the morning', () => {
    farm()
    expect(y.look('2026-11-10 02:00')).toEqual([])
    expect(y.look('2026-11-10 06:00').filter(c => / morning\./.test(c.text))).toHaveLength(1)
  })
})

describe('a farm in another zone', () => {
  // Adelaide is 10 h 30 min ahead in its summer, Kathmandu 5 h 45 min all year; Lord Howe moves its clock by half an hour (IANA tz database).
  it.each([
    ['Australia/Adelaide', '2026-11-03T19:30:00.000Z'],
    ['Asia/Kathmandu', '2026-11-04T00:15:00.000Z'],
    ['Australia/Lord_Howe', '2026-11-03T19:00:00.000Z'],
    ['America/Anchorage', '2026-11-04T15:00:00.000Z'],
  ])('%s has its mornings at six by its own wall', (zone, at) => {
    farm(zone)
    y.until('2026-11-03 07:00', '2026-11-04 12:00')
    expect(y.came.filter(c => c.text.startsWith('Wed Nov 4, morning.')).map(c => c.at)).toEqual([at])
  })
})

describe('a restart', () => {
  it('at any hour changes nothing of what is said', () => {
    const plain = (restarts: boolean) => {
      farm()
      for (let h = 0; h < 80; h++) {
        const from = new Date(Date.parse(y.at('2026-11-03 07:00')) + h * 3_600_000).toISOString()
        const to = new Date(Date.parse(from) + 3_600_000).toISOString()
        if (restarts && h % 7 === 0) y.restart()
        y.until(from, to)
      }
      const said = y.came.map(c => `${c.at} ${c.to} ${c.text}`)
      if (!restarts) y.close()
      return said
    }
    expect(plain(false)).toEqual(plain(true))
  })
})
