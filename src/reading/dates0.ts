import { addDays, addMonths, type Day, dayOf, daysBetween, isDay, weekday } from '../units/calendar.ts'
import type { DateItem } from './item.ts'
import type { Token } from './token.ts'

const MONTHS: Record<string, number> = {}
for (const [k, names] of Object.entries({
  1: 'jan january ene enero', 2: 'feb february febrero', 3: 'mar march marzo', 4: 'apr april abr abril', 5: 'may mayo', 6: 'jun june junio', 7: 'jul july julio', 8: 'aug august ago agosto',
  9: 'sep sept september septiembre setiembre', 10: 'oct october octubre', 11: 'nov november noviembre', 12: 'dec december dic diciembre',
})) for (const n of names.split(' ')) MONTHS[n] = Number(k)

const WEEKDAYS: Record<string, number> = {}
for (const [k, names] of Object.entries({
  0: 'sunday sun domingo dom sundy', 1: 'monday mon lunes mondy', 2: 'tuesday tues tue martes tuesdy', 3: 'wednesday weds wed miercoles wensday wednsday', 4: 'thursday thurs thur thu jueves thrusday thursdy', 5: 'friday fri viernes fridy viernez', 6: 'saturday sat sabado saterday saturdy',
})) for (const n of names.split(' ')) WEEKDAYS[n] = Number(k)
const SHORT = new Set(['sun', 'sat', 'mon', 'wed', 'dom'])

const ORDINALS: Record<string, number> = { first: 1, second: 2, third: 3, primero: 1, fourth: 4, fifth: 5, sixth: 6, seventh: 7, eighth: 8, ninth: 9, tenth: 10, twelfth: 12, fifteenth: 15, twentieth: 20, thirtieth: 30 }
const SMALL: Record<string, number> = { a: 1, an: 1, one: 1, un: 1, una: 1, two: 2, dos: 2, couple: 2, par: 2, three: 3, tres: 3, four: 4, cuatro: 4, five: 5, cinco: 5, six: 6, seis: 6, seven: 7, siete: 7, eight: 8, ocho: 8, nine: 9, nueve: 9, ten: 10, diez: 10, few: 3, quince: 15 }
const SPANS: Record<string, number> = { day: 1, days: 1, dia: 1, dias: 1, week: 7, weeks: 7, semana: 7, semanas: 7, wk: 7, wks: 7 }
const MONTHLY = new Set(['month', 'months', 'mes', 'meses'])

const num = (t: Token | undefined): number | undefined => (t === undefined ? undefined : t.kind === 'number' ? t.value : SMALL[t.norm])

/** Dates and times of a message in tokens nobody has claimed. */
export const findDates = (tokens: Token[], taken: (i: number) => boolean, now: { day: Day; hour: number }): DateItem[] => {
  const out: DateItem[] = []
  const w = (i: number): string => (i >= 0 && i < tokens.length && !taken(i) ? tokens[i]!.norm : '')
  const raw = (i: number): string => tokens[i]?.norm ?? ''
  const today = now.hour < 3 ? addDays(now.day, -1) : now.day
  const year = Number(now.day.slice(0, 4))
  const both = (d: Day) => ({ past: d, future: d })
  const lastWeekday = (n: number, strict = false): Day => {
    const back = (weekday(now.day) - n + 7) % 7
    return addDays(now.day, -(back === 0 && strict ? 7 : back))
  }
  const nextWeekday = (n: number, strict = true): Day => {
    const on = (n - weekday(now.day) + 7) % 7
    return addDays(now.day, on === 0 && strict ? 7 : on)
  }
  const monthDay = (m: number, d: number): { past: Day; future: Day } | undefined => {
    const at = (y: number) => dayOf(y, m, d)
    if (!isDay(at(year)) && !isDay(at(year + 1)) && !isDay(at(year - 1))) return undefined
    const past = [at(year), at(year - 1), at(year - 2), at(year - 3), at(year - 4)].find(x => isDay(x) && x <= now.day)
    const future = [at(year), at(year + 1), at(year + 2), at(year + 3), at(year + 4)].find(x => isDay(x) && x >= now.day)
    return past && future ? { past, future } : undefined
  }
  const dayOnly = (d: number): { past: Day; future: Day } | undefined => {
    if (d < 1 || d > 31) return undefined
    const of = (k: number) => {
      const m = addMonths(`${now.day.slice(0, 7)}-01`, k)
      return `${m.slice(0, 7)}-${String(d).padStart(2, '0')}`
    }
    const past = [0, -1, -2].map(of).find(x => isDay(x) && x <= now.day)
    const future = [0, 1, 2].map(of).find(x => isDay(x) && x >= now.day)
    return past && future ? { past, future } : undefined
  }
  const push = (from: number, to: number, d: { past: Day; future: Day }, more: Partial<DateItem> = {}) => {
    out.push({ from, to, explicit: true, ...d, ...more })
    return to - 1
  }
  const part = (i: number): { to: number; part: DateItem['part'] } | undefined => {
    const words: [RegExp, DateItem['part']][] = [[/^(morning|am|mornin|manana)$/, 'morning'], [/^(noon|mediodia)$/, 'noon'], [/^(afternoon|aft|pm|tarde|afternon)$/, 'afternoon'], [/^(evening|eve)$/, 'evening'], [/^(night|nite|noche|nght)$/, 'night']]
    let k = i
    if (w(k) === 'in' || w(k) === 'por' || w(k) === 'en' || w(k) === 'at' || w(k) === 'a' || w(k) === 'de') k++
    if (w(k) === 'the' || w(k) === 'la' || w(k) === 'el') k++
    const hit = words.find(([r]) => r.test(w(k)))
    if (!hit) return undefined
    if (k > i && w(i) === 'a' ) return undefined
    return { to: k + 1, part: hit[1] }
  }
  for (let i = 0; i < tokens.length; i++) {
    if (taken(i)) continue
    const a = w(i)
    const prev = raw(i - 1)
    if (!a) continue
    // clock times
    const clock = /^(\d{1,2})(?::(\d{2}))?\s?([ap])?\.?m?\.?$/.exec(a)
    if (tokens[i]!.kind === 'number' && tokens[i]!.value === undefined && clock && (clock[2] || clock[3])) {
      let h = Number(clock[1])
      if (clock[3] === 'p' && h < 12) h += 12
      if (clock[3] === 'a' && h === 12) h = 0
      if (h < 24) {
        const time = `${String(h).padStart(2, '0')}:${clock[2] ?? '00'}`
        const last = out.at(-1)
        if (last && last.to >= i - 2 && !last.time) {
          last.time = time
          last.to = i + 1
        } else i = push(i, i + 1, both(today), { explicit: false, time })
        continue
      }
    }
    if (/^\d{4}-\d{2}-\d{2}$/.test(a) && isDay(a)) {
      i = push(i, i + 1, both(a))
      continue
    }
    const slash = /^(\d{1,2})\/(\d{1,2})(?:\/(\d{2,4}))?$/.exec(a)
    if (slash && Number(slash[1]) <= 12 && Number(slash[2]) <= 31 && (Number(slash[2]) > 16 || prev === 'on' || prev === 'el' || i === 0 || i === tokens.length - 1 || slash[3]) && !(Number(slash[1]) < Number(slash[2]) && [2, 3, 4, 8, 16].includes(Number(slash[2])) && prev !== 'on')) {
      const d = monthDay(Number(slash[1]), Number(slash[2]))
      if (d) {
        i = push(i, i + 1, d)
        continue
      }
    }
    const withPart = (from: number, to: number, d: { past: Day; future: Day }) => {
      const p = part(to)
      return push(from, p ? p.to : to, d, p ? { part: p.part } : {})
    }
    if (/^(yesterday|yest|yday|ystrday|yestrday|yesterdy|yesturday|ayer|aller|yesterdays|yester)$/.test(a)) {
      if (out.at(-1)?.to === i && false) continue
      i = withPart(i, i + 1, both(addDays(today, -1)))
      continue
    }
    if (a === 'day' && w(i + 1) === 'before' && /^yest/.test(w(i + 2))) {
      i = push(i, i + 3, both(addDays(today, -2)))
      continue
    }
    if (/^(antier|anteayer|antiayer|antiyer)$/.test(a)) {
      i = withPart(i, i + 1, both(addDays(today, -2)))
      continue
    }
    if (a === 'antes' && w(i + 1) === 'de' && w(i + 2) === 'ayer') {
      i = push(i, i + 3, both(addDays(today, -2)))
      continue
    }
    if (/^(anoche|anohe|anoxe)$/.test(a) || (a === 'last' && /^(night|nite|nght|nigt|evening|nigth)$/.test(w(i + 1)))) {
      const to = a === 'last' ? i + 2 : i + 1
      i = push(i, to, both(addDays(now.day, -1)), { part: 'night' })
      continue
    }
    if (/^overnight$/.test(a)) {
      i = push(i, i + 1, both(addDays(now.day, -1)), { part: 'night', explicit: false })
      continue
    }
    if (a === 'antenoche' || a === 'antier en la noche') {
      i = push(i, i + 1, both(addDays(now.day, -2)), { part: 'night' })
      continue
    }
    if (/^(today|hoy|todays|tday)$/.test(a)) {
      i = withPart(i, i + 1, both(today))
      continue
    }
    if (/^(tonight|tonite)$/.test(a) || (a === 'esta' && w(i + 1) === 'noche')) {
      i = push(i, a === 'esta' ? i + 2 : i + 1, both(today), { part: 'night' })
      continue
    }
    if ((a === 'this' && /^(morning|am|mornin|aft|afternoon|pm|evening|eve|mrng|morn)$/.test(w(i + 1))) || (a === 'esta' && /^(manana|tarde)$/.test(w(i + 1)))) {
      i = push(i, i + 2, both(now.day), { part: /m$|n|manana/.test(w(i + 1)) && !/pm|aft|eve/.test(w(i + 1)) ? 'morning' : 'afternoon' })
      continue
    }
    if (/^(this|esta|last|past|la)$/.test(a) && /^(week|semana)$/.test(w(i + 1))) {
      const monday = addDays(now.day, -((weekday(now.day) + 6) % 7))
      const last = a === 'last' || a === 'past' || w(i + 2) === 'pasada'
      if (a === 'la' && !last && !/^(que|proxima|entrante)$/.test(w(i + 2))) continue
      if (w(i + 2) === 'que' || w(i + 2) === 'proxima' || w(i + 2) === 'entrante') {
        i = push(i, i + (w(i + 2) === 'que' ? 4 : 3), both(addDays(monday, 7)), { span: { from: addDays(monday, 7), to: addDays(monday, 13) } })
        continue
      }
      const span = last ? { from: addDays(monday, -7), to: addDays(monday, -1) } : { from: monday, to: now.day }
      i = push(i, i + (w(i + 2) === 'pasada' ? 3 : 2), { past: span.from, future: now.day }, { span, explicit: false })
      continue
    }
    if ((a === 'next' || a === 'proxima') && /^(week|semana)$/.test(w(i + 1))) {
      const monday = addDays(now.day, 7 - ((weekday(now.day) + 6) % 7))
      i = push(i, i + 2, both(monday), { span: { from: monday, to: addDays(monday, 6) } })
      continue
    }
    if (/^(tomorrow|tmrw|tmw|tomorow|tommorow|tomorro|tomm|2morrow)$/.test(a) || (a === 'manana' && !/^(la|esta)$/.test(prev))) {
      i = withPart(i, i + 1, both(addDays(today, 1)))
      continue
    }
    if (a === 'pasado' && w(i + 1) === 'manana') {
      i = push(i, i + 2, both(addDays(today, 2)))
      continue
    }
    if (a === 'day' && w(i + 1) === 'after' && /^tom/.test(w(i + 2))) {
      i = push(i, i + 3, both(addDays(today, 2)))
      continue
    }
    // N days ago, hace N dias, in N days
    {
      let k = i
      let dir = 0
      if (a === 'hace') {
        dir = -1
        k++
      } else if (a === 'in' || a === 'en' || a === 'within') {
        dir = 1
        k++
      } else if (a === 'dentro' && w(i + 1) === 'de') {
        dir = 1
        k += 2
      }
      if (w(k) === 'a' && w(k + 1) === 'couple') k++
      if (w(k) === 'un' && w(k + 1) === 'par') k++
      const n = num(tokens[k])
      let u = k + 1
      if (w(u) === 'of' || w(u) === 'de') u++
      const unit = w(u)
      const span = SPANS[unit]
      if (n !== undefined && (span || MONTHLY.has(unit)) && w(k)) {
        const ago = w(u + 1) === 'ago' || w(u + 1) === 'back' || w(u + 1) === 'atras'
        const d = ago ? -1 : dir
        const from = a === 'a' && k > i ? i : i
        if (d !== 0) {
          const day = span ? addDays(today, d * n * span) : addMonths(today, d * n)
          i = push(from, u + 1 + (ago ? 1 : 0), both(day))
          continue
        }
      }
      if ((a === 'last' || a === 'past' || a === 'ultimos') && num(tokens[i + 1]) !== undefined && SPANS[w(i + 2)]) {
        const days = num(tokens[i + 1])! * SPANS[w(i + 2)]!
        const span2 = { from: addDays(today, -days + 1), to: today }
        i = push(i, i + 3, { past: span2.from, future: today }, { span: span2, explicit: false })
        continue
      }
    }
    if (/^(since|desde)$/.test(a)) {
      const k = w(i + 1) === 'el' || w(i + 1) === 'last' ? i + 2 : i + 1
      const wd = WEEKDAYS[w(k)]
      if (wd !== undefined) {
        const from = lastWeekday(wd, true)
        i = push(i, k + 1, { past: from, future: now.day }, { span: { from, to: now.day }, explicit: false })
        continue
      }
    }
    // weekdays
    const wd = WEEKDAYS[a]
    if (wd !== undefined && !(a === 'mon' && false)) {
      const led = /^(last|this|next|on|el|este|proximo|since|every|until|by|pasado)$/.test(prev)
      const nextWord = raw(i + 1)
      const ambiguous = SHORT.has(a)
      const clear = !ambiguous || led || part(i + 1) !== undefined || i === tokens.length - 1 || i === 0 || tokens[i + 1]?.kind === 'mark' || tokens[i + 1]?.kind === 'number' || tokens[i - 1]?.kind === 'mark' || (a !== 'sun' && a !== 'sat') || /^(ok|good|fine|tight|all|bueno|fed|put|load|loads)$/.test(nextWord)
      const verbish = a === 'sat' && /^(the|it|them|him|her|there|in|on|down|up|out|we|i|he|she|they|and)$/.test(nextWord) && !led || a === 'sat' && /^(i|we|he|she|they|it|just|been|has|have|who|that)$/.test(prev) || a === 'sun' && (/^(came|is|was|out|shine|up|comes|went|set|hit|warmed|side|burn)$/.test(nextWord) || /^(the|in|full|some)$/.test(prev))
      if (clear && !verbish) {
        let to = i + 1
        let past = lastWeekday(wd)
        let future = nextWeekday(wd)
        let from = i
        if (prev === 'last' || prev === 'pasado' || w(to) === 'pasado') {
          past = lastWeekday(wd, true)
          future = past
          if (w(to) === 'pasado') to++
        }
        if (prev === 'next' || prev === 'proximo') {
          past = future
        }
        if (w(to) === 'que' && w(to + 1) === 'viene') {
          to += 2
          past = future
        }
        if (w(to) === 'proximo') {
          to++
          past = future
        }
        if (led && !taken(i - 1) && !/^(since|until|by|every)$/.test(prev)) from = i - 1
        if (w(from - 1) === 'week' && w(from - 2) === 'a') future = addDays(future, 7)
        // "a week from friday"
        if (prev === 'from' && w(i - 2) === 'week') {
          future = addDays(nextWeekday(wd), 7)
          past = future
          from = w(i - 3) === 'a' ? i - 3 : i - 2
        }
        const p = part(to)
        i = push(from, p ? p.to : to, { past, future }, p ? { part: p.part } : {})
        continue
      }
    }
    // month and day
    const m = MONTHS[a]
    if (m !== undefined && !(a === 'may' && !/\d/.test(raw(i + 1)) && !/^(of|de)$/.test(prev) && !/\d/.test(prev)) && !(a === 'mar' && raw(i + 1) === 'pile')) {
      const after = tokens[i + 1]
      const dAfter = after && !taken(i + 1) ? (after.kind === 'number' ? (after.value ?? Number(/^(\d{1,2})(?:st|nd|rd|th)$/.exec(after.norm)?.[1] ?? Number.NaN)) : ORDINALS[after.norm]) : undefined
      if (dAfter !== undefined && Number.isInteger(dAfter) && dAfter >= 1 && dAfter <= 31) {
        const d = monthDay(m, dAfter)
        if (d) {
          let to = i + 2
          const y = tokens[to]?.norm === ',' ? tokens[to + 1] : tokens[to]
          if (y?.kind === 'number' && y.value && y.value >= 2000 && y.value < 2100 && !taken(tokens.indexOf(y))) {
            const full = dayOf(y.value, m, dAfter)
            if (isDay(full)) {
              to = tokens.indexOf(y) + 1
              i = push(i, to, both(full))
              continue
            }
          }
          i = push(i, to, d)
          continue
        }
      }
      // "28 de mayo", "3 sept", "first of june", "end of june"
      let k = i - 1
      if (w(k) === 'de' || w(k) === 'of') k--
      const before = tokens[k]
      const dBefore = before && !taken(k) ? (before.kind === 'number' ? (before.value ?? Number(/^(\d{1,2})(?:st|nd|rd|th|ro|°)$/.exec(before.norm)?.[1] ?? Number.NaN)) : ORDINALS[before.norm]) : undefined
      if (dBefore !== undefined && Number.isInteger(dBefore) && dBefore >= 1 && dBefore <= 31) {
        const d = monthDay(m, dBefore)
        if (d) {
          const from = /^(el|the|on)$/.test(w(k - 1)) ? k - 1 : k
          while (out.length && out.at(-1)!.to > from) out.pop()
          i = push(from, i + 1, d)
          continue
        }
      }
      if (/^(end|middle|mid|early|late|start|beginning|mediados|finales|fines|principios)$/.test(w(k)) || /^(early|late|mid)$/.test(prev)) {
        const word = /^(early|late|mid)$/.test(prev) ? prev : w(k)
        const day = /^(end|late|finales|fines)$/.test(word) ? 28 : /^(mid|middle|mediados)$/.test(word) ? 15 : 3
        const d = monthDay(m, day)
        if (d) {
          i = push(word === prev ? i - 1 : k, i + 1, d, { explicit: false })
          continue
        }
      }
    }
    // the 12th, el 12, on the 3rd
    const ord = /^(\d{1,2})(?:st|nd|rd|th)$/.exec(a)
    if (ord && /^(the|on|of|since|by)$/.test(prev) && !/^(crop|cut|cutting|corte|plastic|sheet|one)$/.test(raw(i + 1))) {
      const d = dayOnly(Number(ord[1]))
      if (d) {
        i = push(/^(the|on)$/.test(w(i - 1)) ? i - 1 : i, i + 1, d)
        continue
      }
    }
    if ((a === 'el' || (a === 'dia')) && tokens[i + 1]?.kind === 'number' && !taken(i + 1) && tokens[i + 1]!.value !== undefined && Number.isInteger(tokens[i + 1]!.value) && tokens[i + 1]!.value! <= 31 && raw(i + 2) !== 'de' && !/^(por|pies|libras|viajes|%)$/.test(raw(i + 2))) {
      const d = dayOnly(tokens[i + 1]!.value!)
      if (d && a === 'el') {
        i = push(i, i + 2, d)
        continue
      }
    }
    if (a === 'end' && w(i + 1) === 'of' && (w(i + 2) === 'month' || (w(i + 2) === 'the' && w(i + 3) === 'month'))) {
      const last = addDays(addMonths(`${now.day.slice(0, 7)}-01`, 1), -1)
      i = push(i, i + (w(i + 2) === 'month' ? 3 : 4), both(last))
      continue
    }
    if ((a === 'fin' && w(i + 1) === 'de' && w(i + 2) === 'mes')) {
      i = push(i, i + 3, both(addDays(addMonths(`${now.day.slice(0, 7)}-01`, 1), -1)))
      continue
    }
    if (a === 'christmas' || a === 'navidad') {
      const d = monthDay(12, 25)!
      i = push(i, i + 1, d)
      continue
    }
    if (/^(spring|primavera)$/.test(a)) {
      const d = monthDay(4, 15)!
      i = push(i, i + 1, d, { explicit: false })
      continue
    }
    if ((a === 'at' || a === 'a') && (a === 'at' || w(i + 1) === 'las' || w(i + 1) === 'la')) {
      const k = a === 'a' ? i + 2 : i + 1
      const t = tokens[k]
      const n = t && !taken(k) ? t.kind === 'number' && Number.isInteger(t.value) ? t.value : SMALL[t.norm] : undefined
      if (n !== undefined && n >= 1 && n <= 12 && (a === 'a' || k === tokens.length - 1 || part(k + 1)) && t!.norm !== 'a' && t!.norm !== 'an') {
        const p = part(k + 1)
        let h = n
        if (p && (p.part === 'afternoon' || p.part === 'evening' || p.part === 'night') && h < 12) h += 12
        else if (!p && h < 5) h += 12
        const time = `${String(h).padStart(2, '0')}:00`
        const last = out.at(-1)
        if (last && !last.time && last.to >= i - 2) {
          last.time = time
          last.to = p ? p.to : k + 1
        } else push(i, p ? p.to : k + 1, both(today), { explicit: false, time })
        i = (p ? p.to : k + 1) - 1
        continue
      }
    }
    if (a === 'noon' || a === 'mediodia') {
      const last = out.at(-1)
      if (last && last.to === i) {
        last.to = i + 1
        last.time ??= '12:00'
      }
    }
  }
  void daysBetween
  return out
}
