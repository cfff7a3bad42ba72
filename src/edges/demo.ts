import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import type { Result } from '../ports.ts'
import { daysBetween, localTime } from '../units/calendar.ts'
import { promptsFolder } from './prompts.ts'

/** Where the invented farm lies. */
export const DEMO_ZONE = 'America/Chicago'

/** One line of the season, as the line channel takes it. */
interface Spoken {
  at: string
  chat?: string
  from: string
  text: string
}

interface Said {
  text: string
  choices?: string[]
}

/** What the line channel gives back: what a line came to, an error of its own, or what came due before it. */
export type Played = ({ line: number } & Partial<Result>) | { line: number; error: string } | { due: string; replies: Said[] }

/** The season's lines: `shared/demo.season.jsonl`, in the line channel's format. */
export const seasonLines = (): string[] =>
  readFileSync(join(promptsFolder(), '..', 'shared', 'demo.season.jsonl'), 'utf8').split('\n').filter(Boolean)

const WEEKDAYS = new Intl.DateTimeFormat('en-US', { timeZone: 'UTC', weekday: 'short', month: 'short', day: 'numeric', year: 'numeric' })
const heading = (day: string): string => `-- ${WEEKDAYS.format(new Date(`${day}T12:00:00Z`))} --`
const clock = (hour: number): string => {
  const minutes = Math.round(hour * 60)
  return `${String(Math.floor(minutes / 60)).padStart(2)}:${String(minutes % 60).padStart(2, '0')}`
}

/** Where two lines are that far apart the latest thing said unasked between them is shown, and the others are counted. */
const QUIET_DAYS = 10
const SPEAKER = 10

/**
 * Plays a season through `take` (the line channel's reader) and writes what the crew would see. Of what is said unasked
 * only some is shown: a year of mornings is long.
 */
export const playDemo = (season: string[], take: (line: string) => Played[], write: (text: string) => void): void => {
  let day = ''
  let before = ''
  const tell = (at: string, who: string, said: Said): void => {
    const now = localTime(at, DEMO_ZONE)
    if (now.day !== day) write(heading(now.day))
    day = now.day
    const [first, ...more] = said.text.split('\n')
    write(`${clock(now.hour)}  ${who.padEnd(SPEAKER)}${first}`)
    for (const l of more) write(`${' '.repeat(7 + SPEAKER)}${l}`)
    if (said.choices?.length) write(`${' '.repeat(7 + SPEAKER)}[${said.choices.join('] [')}]`)
  }
  for (const line of season) {
    const spoken = JSON.parse(line) as Spoken
    const today = localTime(spoken.at, DEMO_ZONE).day
    const quiet = before === '' ? 0 : daysBetween(before, today)
    before = today
    const played = take(line)
    const own = played.findIndex(p => 'line' in p)
    const due = played.slice(0, own).flatMap(p => ('due' in p ? p.replies.map(r => ({ at: p.due, said: r })) : []))
    const worth = quiet >= QUIET_DAYS ? due.at(-1) : undefined
    if (worth) {
      if (due.length > 1) write(`   (${quiet} days, ${due.length - 1} times Pilehand spoke by itself; then:)`)
      tell(worth.at, 'Pilehand', worth.said)
    }
    tell(spoken.at, spoken.from, { text: spoken.text })
    for (const p of played.slice(own)) {
      if ('error' in p) tell(spoken.at, 'Pilehand', { text: p.error })
      else if ('due' in p) for (const r of p.replies) tell(p.due, 'Pilehand', r)
      else for (const r of p.replies ?? []) tell(spoken.at, 'Pilehand', r)
    }
  }
}
