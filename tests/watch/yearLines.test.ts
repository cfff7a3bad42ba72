import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { addDays, instantOf, localTime, weekday } from '../../src/units/calendar.ts'
import { type Came, Yard } from './yard.ts'

// A year from June to June behind the real line channel, a line in every hour of it. What must come is counted here by the
// calendar alone; the U.S. clocks change on 1 November 2026 and 14 March 2027 at two: 15 U.S.C. 260a.

const ZONE = 'America/New_York'
const FIRST = '2026-06-01'
const LAST = '2027-05-31'

/** What the crew says, by day and hour of its clock. */
const STORY: [string, string, string][] = [
  [`${FIRST} 00`, 'ada', 'hello'],
  [`${FIRST} 08`, 'ada', 'new pile called west, 40 by 120, 10 high'],
  [`${FIRST} 08`, 'ada', 'new pile called east, 40 by 120, 10 high'],
  [`${FIRST} 08`, 'lenny', 'hello'],
  [`${FIRST} 09`, 'ada', 'remind me every tuesday to check the tires'],
  [`${FIRST} 09`, 'ada', 'remind lenny the first of every month at 16:30 to pay the custom crew'],
  [`${FIRST} 09`, 'ada', 'remind everyone every day at 1:30 am to look at the pump'],
  ['2026-06-20 09', 'ada', 'cancel the reminder about the pump'],
  ['2026-10-30 09', 'ada', 'remind me every day at 2:30 am to look at the heater'],
  ['2027-03-16 09', 'ada', 'stop reminding me about the heater'],
  ['2026-06-02 10', 'lenny@crew', 'put 30 loads of haylage on west'],
  ['2026-06-03 10', 'lenny@crew', 'put 30 loads of haylage on west'],
  ['2026-06-03 17', 'lenny@crew', 'covered west with plastic and 340 tires'],
  ['2026-07-10 07', 'lenny@crew', 'golf ball hail last night'],
  ['2026-07-12 15', 'lenny@crew', 'walked west, all good'],
  ['2026-08-03 09', 'lenny@crew', 'coons got in west, two holes'],
  ['2026-08-05 16', 'lenny@crew', 'patched west'],
  ['2026-09-14 10', 'lenny@crew', 'put 50 loads of corn on east'],
  ['2026-09-15 10', 'lenny@crew', 'put 50 loads of corn on east'],
  ['2026-09-15 18', 'lenny@crew', 'covered east with plastic and 360 tires'],
  ['2026-10-01 07', 'ada', 'opened west to feed'],
  ['2026-10-01 07', 'ada', 'feeding 7,000 a day off west'],
  ['2026-10-20 07', 'lenny@crew', 'face is at 10 ft on west'],
  ['2026-11-10 07', 'lenny@crew', 'face is at 20 ft on west'],
  ['2026-12-20 07', 'lenny@crew', 'west has a tear on the north side'],
  ['2027-01-10 07', 'ada', 'remind me in 3 days to order tape'],
  ['2027-05-01 07', 'ada', 'figure on first crop around May 28'],
]

let y: Yard
const heard: Came[] = []
beforeAll(() => {
  y = new Yard(ZONE)
  let hours = 0
  for (let ms = Date.parse(instantOf(FIRST, '00:00', ZONE)); ; ms += 3_600_000) {
    const at = new Date(ms).toISOString()
    const { day, hour } = localTime(at, ZONE)
    if (day > LAST) break
    const key = `${day} ${String(hour).padStart(2, '0')}`
    const lines = STORY.filter(s => s[0] === key)
    if (!lines.length) y.say(at, 'lenny@crew', 'ok')
    for (const [, who, text] of lines) expect(y.say(at, who, text).outcome, text).toMatch(/recorded|answered|ignored|puzzled/)
    // Every hundred days the process ends and begins anew.
    if (++hours % 2400 === 0) y.restart()
  }
  heard.push(...y.came)
}, 120_000)
afterAll(() => y.close())

const local = (c: Came) => localTime(c.at, ZONE)
const of = (like: RegExp) => heard.filter(c => like.test(c.text))
const times = (list: Came[]) => list.map(c => c.at)
const daily = (from: string, to: string, time: string, fits: (day: string) => boolean = () => true): string[] => {
  const out: string[] = []
  for (let day = from; day <= to; day = addDays(day, 1)) if (fits(day)) out.push(instantOf(day, time, ZONE))
  return out
}

describe('a year behind the line channel', () => {
  it('misses no reminder and says none twice, over both clock changes', () => {
    expect(times(of(/^Reminder: check the tires/))).toEqual(daily('2026-06-02', LAST, '06:00', d => weekday(d) === 2))
    expect(times(of(/^Reminder: pay the custom crew/))).toEqual(daily('2026-06-01', LAST, '16:30', d => d.endsWith('-01')))
    expect(times(of(/^Reminder: look at the pump/))).toEqual(daily('2026-06-02', '2026-06-20', '01:30'))
    // An hour that the spring change leaves out has moved on by one, and one that comes twice is the first.
    const heater = times(of(/^Reminder: look at the heater/))
    expect(heater).toEqual(daily('2026-10-31', '2027-03-16', '02:30'))
    expect(heater).toContain('2027-03-14T07:30:00.000Z')
    expect(times(of(/order tape/))).toEqual([instantOf('2027-01-13', '06:00', ZONE)])
  })
  it('says nothing in the quiet hours but what was asked for at an hour', () => {
    for (const c of heard) {
      const { hour } = local(c)
      if (!/pump|heater/.test(c.text)) expect(hour >= 5 && hour < 21, `${c.at} ${c.text}`).toBe(true)
    }
  })
  it('has at most one morning a day, at six, of at most twelve lines', () => {
    const mornings = of(/ morning\./)
    expect(new Set(mornings.map(c => local(c).day)).size).toBe(mornings.length)
    expect(mornings.length).toBeGreaterThan(200)
    for (const c of mornings) {
      expect(local(c).hour).toBe(6)
      expect(c.text.split('\n').length).toBeLessThanOrEqual(12)
    }
  })
  it('asks after a hole until it is patched, and not after', () => {
    const asked = of(/^(?:Patched yet|Still open|Asked twice, not patched)/)
    const august = asked.filter(c => c.at >= '2026-08-03' && c.at < '2026-09-01')
    expect(august.length).toBeGreaterThan(0)
    for (const c of august) expect(c.at < instantOf('2026-08-05', '16:00', ZONE)).toBe(true)
    // One that nobody patches: asked, once more, and then the owner, each once.
    expect(asked.filter(c => c.at > '2026-12-20').map(c => [c.to, c.text.split('\n')[0]])).toEqual([
      ['crew', 'Patched yet?'],
      ['crew', 'Still open, as far as the book knows:'],
      ['ada', 'Asked twice, not patched yet:'],
    ])
  })
  it('begins one round after the hail and closes it once', () => {
    expect(of(/^Hail Jul 9/)).toHaveLength(1)
    expect(of(/^Hail round done/)).toHaveLength(1)
    expect(of(/^Hail round done/)[0]!.at).toBe(instantOf('2026-07-12', '15:00', ZONE))
    expect(of(/After the hail/).filter(c => c.at > instantOf('2026-07-12', '15:00', ZONE))).toEqual([])
  })
  it('has no more than three nudges on any day', () => {
    const perDay = new Map<string, number>()
    for (const c of of(/^(?:Patched yet|Still |Asked twice|After the hail|Before the ground|The ground freezes soon)/))
      perDay.set(local(c).day, (perDay.get(local(c).day) ?? 0) + 1)
    expect(perDay.size).toBeGreaterThan(10)
    expect(Math.max(...perDay.values())).toBeLessThanOrEqual(3)
  })
  it('says a walk that nobody takes once, asks once more, tells the owner, and leaves it to the week', () => {
    const east = of(/^East: walk the cover|\nEast: walk the cover/).filter(c => c.at > '2026-09-16' && c.at < '2027-02-01')
    const due = east.map(c => local(c).day)
    expect(due).toEqual(['2026-09-16'])
    expect(of(/not walked since|not walked yet\./).length).toBeGreaterThan(20)
  })
  it('says the same words to the same chat on the same day never twice', () => {
    const keys = heard.map(c => `${local(c).day} ${c.to} ${c.text}`)
    expect(keys.filter((k, i) => keys.indexOf(k) !== i)).toEqual([])
  })
})
