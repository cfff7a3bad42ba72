import { describe, expect, it } from 'vitest'
import { nextDue } from '../../src/watch/due.ts'
import { momentOf } from '../../src/watch/hours.ts'
import { remindersAhead } from '../../src/watch/reminders.ts'
import { Farm, keys } from './farm.ts'

const remind = (f: Farm, when: string, slots: Record<string, unknown>, by = 'lenny') =>
  f.told(when, by, { type: 'remind', about: 'order plastic', ...slots })

describe('reminders', () => {
  it('come at the morning hour of their day, to who asked, once', () => {
    const f = new Farm()
    const id = remind(f, '2026-09-14 10:00', { on: '2026-09-18' })
    expect(f.due('2026-09-18 05:59')).toEqual([])
    expect(f.tick('2026-09-18 06:00')).toEqual([
      {
        key: `remind:${id}:2026-09-18`,
        at: '2026-09-18T10:00:00.000Z',
        to: 'lenny',
        message: { code: 'reminder', data: { about: 'order plastic', who: '', by: '' } },
        reminder: id,
      },
    ])
    expect(f.due('2026-09-18 06:00')).toEqual([])
    expect(f.due('2026-09-25 06:00')).toEqual([])
  })
  it('come at the hour that was said, in the quiet hours too', () => {
    const f = new Farm()
    remind(f, '2026-09-14 10:00', { on: '2026-09-15', time: '04:15' })
    expect(f.due('2026-09-15 04:14')).toEqual([])
    expect(f.due('2026-09-15 04:15')).toHaveLength(1)
  })
  it('wait for the quiet to end where they come late', () => {
    const f = new Farm()
    remind(f, '2026-09-14 10:00', { on: '2026-09-15', time: '18:00' })
    expect(f.due('2026-09-16 02:00')).toEqual([])
    expect(f.due('2026-09-16 05:00')).toHaveLength(1)
  })
  it('are never said once they are withdrawn', () => {
    const f = new Farm()
    const id = remind(f, '2026-09-14 10:00', { on: '2026-09-18' })
    f.back('2026-09-15 10:00', id)
    expect(f.due('2026-09-20 12:00')).toEqual([])
  })
  it.each([
    ['day', '2026-09-15', ['2026-09-15', '2026-09-16', '2026-09-17']],
    ['week', '2026-09-15', ['2026-09-15', '2026-09-22', '2026-09-29']],
    ['month', '2026-10-31', ['2026-10-31', '2026-11-30', '2026-12-31', '2027-01-31', '2027-02-28', '2027-03-31']],
  ])('come back every %s', (every, on, days) => {
    const f = new Farm()
    const id = remind(f, '2026-09-14 10:00', { on, every })
    for (const day of days) {
      expect(f.due(`${day} 05:30`)).toEqual([])
      expect(keys(f.tick(`${day} 06:00`))).toEqual([`remind:${id}:${day}`])
    }
  })
  it('are caught up with the last of those slept through', () => {
    const f = new Farm()
    const id = remind(f, '2026-09-14 10:00', { on: '2026-09-15', every: 'day' })
    expect(keys(f.tick('2026-09-22 11:00'))).toEqual([`remind:${id}:2026-09-22`])
    expect(keys(f.tick('2026-09-22 12:00'))).toEqual([])
  })
  it('reach the one they are meant for, and the owner where he left', () => {
    const f = new Farm().member('u7', 'crew', 'Walt')
    remind(f, '2026-09-14 10:00', { on: '2026-09-15', who: 'walt' })
    remind(f, '2026-09-14 10:00', { on: '2026-09-15', who: 'nobody we know' })
    remind(f, '2026-09-14 10:00', { on: '2026-09-15', who: 'everyone' })
    remind(f, '2026-09-14 10:00', { on: '2026-09-15' }, 'u7')
    expect(f.due('2026-09-15 06:00').map(i => i.to)).toEqual(['u7', 'lenny', 'crew', 'u7'])
    f.member('u7', 'stranger').member('lenny', 'stranger')
    expect(f.due('2026-09-15 06:00').map(i => i.to)).toEqual(['owner', 'owner', 'crew', 'owner'])
  })
  it('for today without an hour come later today, when the morning is over', () => {
    const f = new Farm()
    remind(f, '2026-09-14 10:00', { on: '2026-09-14' })
    expect(f.due('2026-09-14 10:01')).toEqual([])
    expect(f.due('2026-09-14 12:00')).toHaveLength(1)
  })
  it('that come back begin with the first that lies ahead', () => {
    const f = new Farm()
    const id = remind(f, '2026-09-14 10:00', { on: '2026-09-14', every: 'day' })
    expect(f.due('2026-09-14 10:01')).toEqual([])
    expect(f.due('2026-09-14 20:00')).toEqual([])
    expect(keys(f.due('2026-09-15 06:00'))).toEqual([`remind:${id}:2026-09-15`])
  })
  it('keep their wall clock over both changes', () => {
    const f = new Farm()
    remind(f, '2026-03-01 10:00', { on: '2026-03-07', time: '02:30', every: 'day' })
    const said = (hour: string) => f.tick(hour).map(i => i.at)
    expect(said('2026-03-07T07:30:00Z')).toEqual(['2026-03-07T07:30:00.000Z'])
    // 02:30 does not exist on 8 March 2026; the clock then shows 03:30.
    expect(said('2026-03-08T07:29:00Z')).toEqual([])
    expect(said('2026-03-08T07:30:00Z')).toEqual(['2026-03-08T07:30:00.000Z'])
    expect(said('2026-03-09T06:30:00Z')).toEqual(['2026-03-09T06:30:00.000Z'])
  })
  it('are listed soonest first, and looked for in time', () => {
    const f = new Farm()
    remind(f, '2026-09-14 10:00', { on: '2026-09-20', about: 'b' })
    remind(f, '2026-09-14 10:00', { on: '2026-09-14', time: '10:20', about: 'a' })
    const now = { at: f.at('2026-09-14 10:05'), zone: f.zone }
    expect(remindersAhead(f.book, momentOf(f.book, now)).map(r => r.told.event.about)).toEqual(['a', 'b'])
    expect(nextDue(f.book, now)).toBe(f.at('2026-09-14 10:20'))
    expect(nextDue(f.book, { ...now, at: f.at('2026-09-14 10:20') })).toBe(f.at('2026-09-14 12:00'))
  })
})
