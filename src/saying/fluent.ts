import { type FluentBundle, FluentNumber, type FluentResource, FluentType, type FluentValue, type Scope } from '@fluent/bundle'
import { type Day, monthOf, weekday } from '../units/calendar.ts'

const DAYS = ['sun', 'mon', 'tue', 'wed', 'thu', 'fri', 'sat']

const format = (bundle: FluentBundle, code: string, args: Record<string, FluentValue>): string => {
  const pattern = bundle.getMessage(code)?.value
  return pattern ? bundle.formatPattern(pattern, args as never, []) : code
}

/**
 * A calendar day among a message's data. Its words are messages of our own: Intl's short dates change with the version
 * of its tables, and a date that reads differently after an update of Node is a new reading to the crew.
 */
export class DayText extends FluentType<Day> {
  override toString(scope: Scope): string {
    return this.short(scope.bundle)
  }
  short(bundle: FluentBundle): string {
    return format(bundle, 'day-short', { month: new FluentNumber(monthOf(this.value)), day: new FluentNumber(Number(this.value.slice(8))) })
  }
  long(bundle: FluentBundle): string {
    return format(bundle, 'day-long', { weekday: DAYS[weekday(this.value)] ?? '', date: this.short(bundle) })
  }
}

/** A list of words among a message's data, so that each can be said by itself. */
export class WordList extends FluentType<string[]> {
  readonly join: (words: string[]) => string
  constructor(words: string[], join: (words: string[]) => string) {
    super(words)
    this.join = join
  }
  override toString(): string {
    return this.join(this.value)
  }
  map(say: (word: string) => string): string {
    return this.join(this.value.map(say))
  }
}

/** The text of a value outside of a pattern. */
export const textOf = (bundle: FluentBundle, value: FluentValue | undefined): string => {
  if (value === undefined) return ''
  if (value instanceof DayText) return value.short(bundle)
  if (value instanceof WordList) return value.toString()
  if (value instanceof FluentNumber) return new Intl.NumberFormat(bundle.locales, value.opts).format(value.value)
  return typeof value === 'string' ? value : String(value.valueOf())
}

interface Node {
  type?: string
  name?: string
  args?: Node[]
}

/**
 * For each message the variables that it, or a message it refers to, hands to the function `name`.
 */
export const usedVariables = (resources: FluentResource[], name: string): Map<string, string[]> => {
  const entries = new Map(resources.flatMap(r => r.body).map(e => [e.id, e.value as unknown]))
  const walk = (node: unknown, found: Set<string>, seen: Set<string>): void => {
    if (Array.isArray(node)) for (const n of node) walk(n, found, seen)
    else if (node && typeof node === 'object') {
      const { type, name: called, args } = node as Node
      if (type === 'func' && called === name) for (const a of args ?? []) if (a.type === 'var' && a.name) found.add(a.name)
      if (type === 'mesg' && called && !seen.has(called)) walk(entries.get(called), found, seen.add(called))
      for (const child of Object.values(node)) walk(child, found, seen)
    }
  }
  return new Map(
    [...entries].map(([id, value]) => {
      const found = new Set<string>()
      walk(value, found, new Set([id]))
      return [id, [...found]]
    }),
  )
}
