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
  readFileSync(join(promptsFolder(), '..', 'shared', 'demo.season.jsonl'), 'utf8')
    .split('\n')
    .filter(Boolean)

const MONTHS = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec']
const dateOf = (day: string): string => `${MONTHS[Number(day.slice(5, 7)) - 1]} ${Number(day.slice(8))}`
const clock = (hour: number): string => {
  const minutes = Math.round(hour * 60)
  return `${String(Math.floor(minutes / 60)).padStart(2)}:${String(minutes % 60).padStart(2, '0')}`
}

/** Where two lines are that far apart the latest thing said unasked between them is shown; the others are only counted. */
const QUIET_DAYS = 10
/** Widths of the columns: date, time, speaker. */
const [DATE, TIME, SPEAKER] = [8, 7, 10]
const HOUSE = 'Pilehand'

/**
 * Plays a season through `take` (the line channel's reader) and writes what the crew would see. Of what is said unasked
 * only some is shown: a year of mornings is long.
 */
export const playDemo = (season: string[], take: (line: string) => Played[], write: (text: string) => void): void => {
  let day = ''
  let time = ''
  let before = ''
  let unasked = 0
  let shown = 0
  const tell = (at: string, who: string, said: Said): void => {
    const now = localTime(at, DEMO_ZONE)
    const hour = clock(now.hour)
    const when = `${(now.day === day ? '' : dateOf(now.day)).padEnd(DATE)}${(now.day === day && hour === time && who === HOUSE ? '' : hour).padEnd(TIME)}`
    day = now.day
    time = hour
    const [first, ...more] = [...said.text.split('\n'), ...(said.choices?.length ? [`[${said.choices.join('] [')}]`] : [])]
    write(`${when}${who.padEnd(SPEAKER)}${first}`)
    for (const l of more) write(`${' '.repeat(DATE + TIME + SPEAKER)}${l}`)
  }
  for (const line of season) {
    const spoken = JSON.parse(line) as Spoken
    const today = localTime(spoken.at, DEMO_ZONE).day
    const quiet = before === '' ? 0 : daysBetween(before, today)
    before = today
    const played = take(line)
    const own = played.findIndex(p => 'line' in p)
    const due = played.slice(0, own).flatMap(p => ('due' in p ? p.replies.map(r => ({ at: p.due, said: r })) : []))
    unasked += due.length
    const worth = quiet >= QUIET_DAYS ? due.at(-1) : undefined
    if (worth) {
      shown++
      tell(worth.at, HOUSE, worth.said)
    }
    tell(spoken.at, spoken.from, { text: spoken.text })
    for (const p of played.slice(own)) {
      if ('error' in p) tell(spoken.at, HOUSE, { text: p.error })
      else for (const r of p.replies ?? []) tell(spoken.at, HOUSE, r)
    }
  }
  write(`(Shown: ${shown} of the ${unasked} mornings, checks and reminders that came by themselves between the messages.)`)
}
