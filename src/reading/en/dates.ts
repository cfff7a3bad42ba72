import type { Found, Part, Rule, Said, Unit, Words } from '../dates.ts'
import { EN_TENS, EN_UNITS } from './numbers.ts'

const set = (words: string): ReadonlySet<string> => new Set(words.split(' '))
const table = (rows: Record<string, number>): ReadonlyMap<string, number> =>
  new Map(Object.entries(rows).flatMap(([words, value]) => words.split(' ').map(word => [word, value] as const)))
const day = (n: number): Said => ({ as: 'day', n })
/** Before three in the morning it is still the evening before to the one who writes. */
const own = (n: number): Said => ({ as: 'day', n, own: true })
const date = (month: number, dayNo: number): Said => ({ as: 'date', month, day: dayNo })

/** Phrases that mean a day by themselves. */
export const EN_PHRASES: [words: string, said: Said, part?: Part][] = [
  ['today, tday, tdy, todays, 2day, earlier today, later today', own(0)],
  ['tonight, tonite, tnite, tonights, 2nite, 2night, this nite', own(0), 'night'],
  ['this morning, this mornin, this morn, this am', own(0), 'morning'],
  ['this afternoon, this aft, this aftnoon, this afternon, this pm', own(0), 'afternoon'],
  ['this evening, this evenin, this eve', own(0), 'evening'],
  ['this noon', own(0), 'noon'],
  ['yesterday, yest, yday, ystrday, ystdy, yesterdy, yestrday, yesturday, yestday, yesterdays, yestarday, yesterd', day(-1)],
  ['last night, last nite, last nght, last nigth, last nights, lst night, lst nite, lastnight, overnight, over night', day(-1), 'night'],
  ['during the night, in the night, through the night, in the middle of the night', day(-1), 'night'],
  ['last evening, last eve', day(-1), 'evening'],
  ['day before yesterday, day before yest, day before yday, day b4 yesterday', day(-2)],
  ['night before last', day(-2), 'night'],
  ['tomorrow, tmrw, tmw, tmrrw, tomorow, tommorow, tommorrow, tomorro, tomarrow, tmr, tmro, tomorrows, 2morrow, 2moro', own(1)],
  ['day after tomorrow, day after tmrw', own(2)],
  ['end of the month, end of month, month end, months end, eom, end of this month', { as: 'date', day: 0 }],
  ['end of next month', { as: 'date', day: 0, months: 1 }],
  ['end of last month', { as: 'date', day: 0, months: -1 }],
  ['first of the month, beginning of the month, start of the month', { as: 'date', day: 1 }],
  ['first of next month, beginning of next month, start of next month', { as: 'date', day: 1, months: 1 }],
  ['end of the week, end of this week, end of week', { as: 'weekday', wd: 5, which: 'this' }],
  ['end of next week', { as: 'weekday', wd: 5, week: 1 }],
  ['end of the year, end of year, years end', date(12, 31)],
  ['this week, this wk', { as: 'period', unit: 'week', n: 0 }],
  ['last week, last wk, lst week, previous week, last weeks', { as: 'period', unit: 'week', n: -1 }],
  ['week before last', { as: 'period', unit: 'week', n: -2 }],
  ['next week, next wk, nxt week, coming week', { as: 'period', unit: 'week', n: 1 }],
  ['week after next', { as: 'period', unit: 'week', n: 2 }],
  ['past week', { as: 'run', n: 7, unit: 'day' }],
  ['this month', { as: 'period', unit: 'month', n: 0 }],
  ['last month, previous month', { as: 'period', unit: 'month', n: -1 }],
  ['next month, coming month', { as: 'period', unit: 'month', n: 1 }],
  ['this year', { as: 'period', unit: 'year', n: 0 }],
  ['last year, previous year', { as: 'period', unit: 'year', n: -1 }],
  ['next year', { as: 'period', unit: 'year', n: 1 }],
  ['this weekend, this wknd, this wkend, over the weekend, over the wknd, on the weekend, during the weekend', { as: 'period', unit: 'weekend', n: 0 }],
  ['last weekend, last wknd, past weekend, this past weekend', { as: 'period', unit: 'weekend', n: -1 }],
  ['next weekend, next wknd', { as: 'period', unit: 'weekend', n: 1 }],
  ['christmas, xmas, christmas day, x mas', date(12, 25)],
  ['christmas eve, xmas eve', date(12, 24)],
  ['new years, new years day', date(1, 1)],
  ['new years eve', date(12, 31)],
  ['4th of july, fourth of july, independence day', date(7, 4)],
  ['halloween', date(10, 31)],
  ['valentines, valentines day', date(2, 14)],
  ['st patricks day, st pattys day, saint patricks day', date(3, 17)],
  ['veterans day', date(11, 11)],
  ['thanksgiving, thanksgivin, thanksgiving day', { as: 'feast', name: 'thanksgiving' }],
  ['labor day, labour day', { as: 'feast', name: 'labor day' }],
  ['memorial day', { as: 'feast', name: 'memorial day' }],
  ['easter, easter sunday', { as: 'feast', name: 'easter' }],
  ['good friday', { as: 'feast', name: 'good friday' }],
  ['mothers day', { as: 'feast', name: 'mothers day' }],
  ['fathers day', { as: 'feast', name: 'fathers day' }],
]

/** Parts of the day that stand on their own. */
export const EN_PART_PHRASES: [words: string, part: Part][] = [
  ['in the morning, in the mornin, in the am, all morning, all mornin, all am, first thing in the morning, by morning', 'morning'],
  ['in the afternoon, in the aft, in the pm, all afternoon', 'afternoon'],
  ['in the evening, in the evenin, all evening', 'evening'],
  ['at night, at nite, by night', 'night'],
]
/** Parts that need a day before them: "friday morning", "sat nite". */
export const EN_PARTS: ReadonlyMap<string, Part> = new Map<string, Part>([
  ...['morning', 'mornin', 'morn', 'am', 'mornings'].map(w => [w, 'morning'] as const),
  ...['noon', 'midday', 'noontime'].map(w => [w, 'noon'] as const),
  ...['afternoon', 'aft', 'pm', 'afternon'].map(w => [w, 'afternoon'] as const),
  ...['evening', 'evenin', 'eve'].map(w => [w, 'evening'] as const),
  ...['night', 'nite', 'nght', 'nigth'].map(w => [w, 'night'] as const),
])
/** Where a bare hour ("at 6") looks ahead instead of back. */
export const EN_AHEAD = set('remind rmind rmd reminder remember alarm')
/** Where a bare hour is a time at all; "face at 12" and "we are at 8" are not. */
export const EN_CLOCKED = set(
  'hail hailed hale rain rained raining storm stormed wind snow snowed froze frost start started starting begin began quit stopped stop done finished finish broke home here there meet meeting be back came left',
)
/** Joins that may stand between a day and its time. */
export const EN_JOINS = set('at @ on the , around about by')
/** Between two days: "mon to wed". */
export const EN_UNTIL = set('to thru through til till until -')
export const EN_BETWEEN = set('from between')
export const EN_SINCE = set('since ever')

const WEEKDAYS = table({
  'sunday sun sund sundy': 0,
  'monday mon mond mondy munday': 1,
  'tuesday tue tues tuesd tusday teusday': 2,
  'wednesday wed weds wedn wensday wednsday wendsday wednesdy': 3,
  'thursday thu thur thurs thrs thr thursdy thirsday thrusday': 4,
  'friday fri frid fridy frday firday': 5,
  'saturday sat satur satday saterday satrday saturdy': 6,
})
const MONTHS = table({
  'january jan': 1,
  'february feb febuary': 2,
  'march mar': 3,
  'april apr': 4,
  may: 5,
  'june jun': 6,
  'july jul': 7,
  'august aug agust': 8,
  'september sept sep septemeber setember': 9,
  'october oct': 10,
  'november nov': 11,
  'december dec': 12,
})
const SEASONS = table({ spring: 3, summer: 6, 'fall autumn': 9, winter: 12 })
const UNITS = new Map<string, Unit>([
  ...['day', 'days', 'dys'].map(w => [w, 'day'] as const),
  ...['week', 'weeks', 'wk', 'wks'].map(w => [w, 'week'] as const),
  ...['month', 'months', 'mo', 'mos'].map(w => [w, 'month'] as const),
  ...['year', 'years', 'yr', 'yrs'].map(w => [w, 'year'] as const),
  ...['hour', 'hours', 'hr', 'hrs'].map(w => [w, 'hour'] as const),
  ...['minute', 'minutes', 'min', 'mins'].map(w => [w, 'minute'] as const),
  ...['night', 'nights', 'nite', 'nites'].map(w => [w, 'night'] as const),
])
const ORDINALS = table({
  first: 1, second: 2, third: 3, fourth: 4, fifth: 5, sixth: 6, seventh: 7, eighth: 8, ninth: 9, tenth: 10, eleventh: 11, twelfth: 12, thirteenth: 13,
  fourteenth: 14, fifteenth: 15, sixteenth: 16, seventeenth: 17, eighteenth: 18, nineteenth: 19, twentieth: 20, thirtieth: 30,
})
const SMALL: ReadonlyMap<string, number> = new Map(Object.entries({ ...EN_UNITS, ...EN_TENS, a: 1, an: 1, another: 1, couple: 2, few: 3 }))
const WHICH = new Map<string, 'last' | 'this' | 'next' | 'coming'>([
  ...['last', 'lst', 'past', 'previous'].map(w => [w, 'last'] as const),
  ...['this', 'ths'].map(w => [w, 'this'] as const),
  ...['next', 'nxt'].map(w => [w, 'next'] as const),
  ['coming', 'coming'],
])

const BEFORE_DAY = set('on last lst past this next nxt coming since by til till until before after from thru through every for between fri friday')
const BEFORE_SAT_VERB = set('it just we he she they i that which who has had have been was were truck loader tractor wagon always')
const AFTER_SAT_VERB = set('the on in there here down out up open for at around by idle empty still all too a an with behind over uncovered under outside loose next')
const BEFORE_SAT_DAY = set('fed covered cvrd checked chkd walked walkd patched packed hauled dumped put hail hailed hale rain rained wind windy snow snowed loads lds')
const BEFORE_SUN = set('the in hot no some full direct more bright much any big with of out afternoon good from')
const AFTER_SUN = set(
  'came comes coming is was isnt up down out shining shine shines set rise beat beating hit hits cooked dried burned burnt bleached bakes baked melts melted rotted damage and or will dont doesnt has had got gets side block screen light spot finally really just dog flower',
)
const MONTH_BY = set('since by before until till til after come through thru')
const PILES = set('pile piles stack stacks bunker pit bag side end slab pad pen field')
const NUMBERED = set('load loads wagon box truck trailer number no pile field tractor pen group batch lot # bucket')
/** A date may go before these; a counted thing may not. */
const FOLLOW = set('to we i he she they it you at around by with and & put fed for hail had got then of or if before after because when this next - we\'ve were im ill well')
const PICKING = set('undo scratch delete cancel remove not no make pick change')
const CLOUDY = set('may march mar')

const ends = (s: Words, i: number) => s.ends(i) || FOLLOW.has(s.all[i]!) || EN_PARTS.has(s.all[i]!) || s.clock(i)

/** "sat the tires on" and "sun came out" name no day. */
const meansDay = (s: Words, i: number): boolean => {
  const word = s.w[i]
  if (word !== 'sat' && word !== 'sun') return true
  const before = s.all[i - 1] ?? ''
  const after = s.all[i + 1] ?? ''
  if (EN_PARTS.has(after)) return true
  const counted = s.number(i + 1) !== undefined || s.claimed(i + 1)
  if (word === 'sat') {
    if (BEFORE_DAY.has(before) || WEEKDAYS.has(before) || after === 'and' || after === '&') return true
    if (BEFORE_SAT_VERB.has(before)) return false
    if (UNITS.has(s.all[i + 2] ?? '') && counted) return false
    if (AFTER_SAT_VERB.has(after)) return BEFORE_SAT_DAY.has(before) || (s.claimed(i - 1) && after !== 'the' && after !== 'all') || (after === 'at' && s.clock(i + 1))
    return true
  }
  if (before === 'and' || before === '&') return WEEKDAYS.has(s.all[i - 2] ?? '')
  if (AFTER_SUN.has(after) && !(after === 'and' && WEEKDAYS.has(s.all[i + 2] ?? ''))) return false
  return BEFORE_DAY.has(before) ? before !== 'from' && before !== 'by' : !BEFORE_SUN.has(before)
}

/** The day of the month at `i`, in figures or words. */
const dayNo = (s: Words, i: number): { to: number; n: number; ordinal: boolean } | undefined => {
  const plain = s.number(i)
  if (plain !== undefined) return plain >= 1 && plain <= 31 ? { to: i + 1, n: plain, ordinal: false } : undefined
  const word = s.w[i] ?? ''
  const figures = /^(\d{1,2})(?:st|nd|rd|th)$/.exec(word)
  if (figures) return Number(figures[1]) >= 1 && Number(figures[1]) <= 31 ? { to: i + 1, n: Number(figures[1]), ordinal: true } : undefined
  const first = ORDINALS.get(word)
  if (first !== undefined) return { to: i + 1, n: first, ordinal: true }
  const ten = word === 'twenty' ? 20 : word === 'thirty' ? 30 : 0
  if (ten) {
    const tail = ORDINALS.get(s.w[i + 1] ?? '')
    if (tail !== undefined && tail < 10 && ten + tail <= 31) return { to: i + 2, n: ten + tail, ordinal: true }
    const unit = SMALL.get(s.w[i + 1] ?? '')
    if (unit !== undefined && unit > 0 && unit < 10 && s.w[i + 1] !== 'a' && ten + unit <= 31) return { to: i + 2, n: ten + unit, ordinal: false }
    return { to: i + 1, n: ten, ordinal: false }
  }
  const small = SMALL.get(word)
  return small !== undefined && small >= 1 && small <= 20 && word.length > 2 && word !== 'few' && word !== 'couple' ? { to: i + 1, n: small, ordinal: false } : undefined
}

const yearAt = (s: Words, i: number): { to: number; year?: number } => {
  const k = s.w[i] === ',' ? i + 1 : i
  const year = s.number(k)
  return year !== undefined && year >= 2000 && year < 2100 && /^\d{4}$/.test(s.tokens[k]!.text) && !s.measure(k + 1) ? { to: k + 1, year } : { to: i }
}

/** "sept 3", "may 28, 2027", "sept 3-9", "june first". */
const monthDay = (s: Words, i: number): Found | undefined => {
  const month = MONTHS.get(s.w[i] ?? '')
  if (month === undefined) return undefined
  const k = s.w[i + 1] === 'the' ? i + 2 : i + 1
  const d = dayNo(s, k)
  if (!d || (!d.ordinal && s.measure(d.to))) return undefined
  if (/^(by|x|\*)$/.test(s.all[d.to] ?? '') && s.number(d.to + 1) !== undefined) return undefined
  // "may one of you", "may 6 be enough"
  if (month === 5 && !d.ordinal && (s.number(k) === undefined ? !ends(s, d.to) : /^(be|have|or|more|of)$/.test(s.all[d.to] ?? ''))) return undefined
  const said: Said = { as: 'date', month, day: d.n }
  if (EN_UNTIL.has(s.w[d.to] ?? '')) {
    const end = dayNo(s, s.w[d.to + 1] === 'the' ? d.to + 2 : d.to + 1)
    if (end && !end.ordinal && s.measure(end.to)) return undefined
    if (end && end.n > d.n) {
      const y = yearAt(s, end.to)
      return { to: y.to, said: { ...said, year: y.year }, until: { as: 'date', month, day: end.n, year: y.year } }
    }
  }
  const y = yearAt(s, d.to)
  return { to: y.to, said: { ...said, year: y.year } }
}

/** "early june", "end of may", "mid next week", "first week of june", "late fall". */
const piece: Rule = (s, i) => {
  const word = s.w[i]!
  let k = i + 1
  const slice = /^(early|beginning|start)$/.test(word) ? 0 : /^(mid|middle)$/.test(word) ? 1 : /^(late|end)$/.test(word) ? 2 : -1
  if (slice >= 0) {
    if (s.w[k] === '-') k++
    const of = s.w[k] === 'of' || s.w[k] === 'in'
    if (of) k++
    const month = MONTHS.get(s.w[k] ?? '')
    if (month !== undefined && !PILES.has(s.all[k + 1] ?? '')) {
      const y = yearAt(s, k + 1)
      if (word === 'end') return of ? { to: y.to, said: { as: 'date', month, day: 0, year: y.year } } : undefined
      const from = [1, 11, 21][slice]!
      return { to: y.to, said: { as: 'piece', month, year: y.year, a: from, b: [10, 20, 0][slice]!, at: from + 4 } }
    }
    const which = WHICH.get(s.w[k] ?? '')
    if (which && which !== 'coming' && UNITS.get(s.w[k + 1] ?? '') === 'week') {
      return { to: k + 2, said: { as: 'weekday', wd: [1, 3, 5][slice]!, week: which === 'last' ? -1 : which === 'next' ? 1 : 0 } }
    }
    if (which && which !== 'coming' && UNITS.get(s.w[k + 1] ?? '') === 'month') {
      const months = which === 'last' ? -1 : which === 'next' ? 1 : 0
      return { to: k + 2, said: { as: 'piece', months, a: [1, 11, 21][slice]!, b: [10, 20, 0][slice]!, at: [5, 15, 25][slice]! } }
    }
    const season = SEASONS.get(s.w[k] ?? '')
    if (season !== undefined && !of) return { to: k + 1, said: { as: 'piece', month: ((season + slice - 1) % 12) + 1, a: 1, b: 0 } }
    return undefined
  }
  // "first week of june"
  const n = word === 'last' ? 5 : (ORDINALS.get(word) ?? Number(/^([1-4])(?:st|nd|rd|th)$/.exec(word)?.[1] ?? 0))
  if (n >= 1 && n <= 5 && UNITS.get(s.w[k] ?? '') === 'week' && (s.w[k + 1] === 'of' || s.w[k + 1] === 'in')) {
    const month = MONTHS.get(s.w[k + 2] ?? '')
    if (month !== undefined) return { to: k + 3, said: n === 5 ? { as: 'piece', month, a: -6, b: 0 } : { as: 'piece', month, a: 7 * n - 6, b: 7 * n, at: 7 * n - 3 } }
  }
  return undefined
}

/** "12th", "the 3rd", "the 12th of last month"; counted things ("3rd crop", "the 2nd sheet") and picks ("undo the 2nd") are none. */
const ordinalDay = (s: Words, i: number): Found | undefined => {
  const d = dayNo(s, i)
  if (!d?.ordinal) return undefined
  const the = s.all[i - 1] === 'the'
  const before = s.all[the ? i - 2 : i - 1] ?? ''
  const said: Said = { as: 'date', day: d.n }
  if (s.w[d.to] === 'of') {
    const k = s.w[d.to + 1] === 'the' ? d.to + 2 : d.to + 1
    if (UNITS.get(s.w[k] ?? '') === 'month' && k > d.to + 1) return { to: k + 1, said }
    const which = WHICH.get(s.w[k] ?? '')
    if (which && UNITS.get(s.w[k + 1] ?? '') === 'month') return { to: k + 2, said: { ...said, months: which === 'last' ? -1 : which === 'this' ? 0 : 1 } }
  }
  // spelt out ("the third") it is a pick or a cut unless a month stands by it
  if (!/^\d/.test(s.w[i]!)) return undefined
  if (PICKING.has(before) || s.measure(d.to) || s.alone(the ? i - 1 : i, d.to)) return undefined
  if (BEFORE_DAY.has(before) && before !== 'last' && before !== 'next' && before !== 'past' && before !== 'this') return d.n > 6 || ends(s, d.to) ? { to: d.to, said } : undefined
  if (WEEKDAYS.has(before)) return { to: d.to, said }
  return (the || d.n > 6) && ends(s, d.to) ? { to: d.to, said } : undefined
}

/** "3 sept", "the 12th of june 2027", "first of june". */
const dayMonth = (s: Words, i: number): Found | undefined => {
  const d = dayNo(s, i)
  if (!d) return undefined
  const of = s.w[d.to] === 'of'
  const at = of ? d.to + 1 : d.to
  const name = s.w[at] ?? ''
  const month = MONTHS.get(name)
  if (month === undefined || PILES.has(s.all[at + 1] ?? '') || NUMBERED.has(s.all[i - 1] ?? '')) return undefined
  if (!of && !d.ordinal && s.number(i) === undefined) return undefined
  const y = yearAt(s, at + 1)
  // "load 12 may be wet", "put 12 march …"
  if (CLOUDY.has(name) && !of && y.year === undefined && !s.ends(at + 1) && !s.clock(at + 1) && !/^(at|we|i)$/.test(s.all[at + 1] ?? '')) return undefined
  // "sept 3": the month of "10 sept 3" belongs to what follows
  return { to: y.to, said: { as: 'date', month, day: d.n, year: y.year } }
}

/** A count before days and weeks: "2", "a couple of", "two and a half". */
const countAt = (s: Words, i: number): { to: number; n: number; loose?: boolean } | undefined => {
  const plain = s.tokens[i]?.kind === 'number' && s.w[i] ? s.tokens[i]!.value : undefined
  let k = i
  let n: number
  if (plain !== undefined) {
    if (plain > 400) return undefined
    n = plain
    k++
  } else {
    let word = s.w[i] ?? ''
    if ((word === 'a' || word === 'the') && /^(couple|few|half)$/.test(s.w[i + 1] ?? '')) word = s.w[++k]!
    if (word === 'half') return s.w[k + 1] === 'a' || s.w[k + 1] === 'an' ? { to: k + 2, n: 0.5 } : { to: k + 1, n: 0.5 }
    const small = SMALL.get(word)
    if (small === undefined) return undefined
    n = small
    k++
    const tail = SMALL.get(s.w[k] ?? '')
    if (small >= 20 && small % 10 === 0 && tail !== undefined && tail > 0 && tail < 10 && (s.w[k]?.length ?? 0) > 2) {
      n += tail
      k++
    }
    if (word === 'couple' || word === 'few') {
      if (s.w[k] === 'of') k++
      if (word === 'few') return { to: k, n, loose: true }
    }
  }
  if (s.w[k] === 'and' && s.w[k + 1] === 'a' && s.w[k + 2] === 'half') return { to: k + 3, n: n + 0.5 }
  return { to: k, n }
}

const spanAt = (s: Words, i: number): { to: number; n: number; unit: Unit; loose?: boolean } | undefined => {
  const c = countAt(s, i)
  const unit = c && UNITS.get(s.w[c.to] ?? '')
  if (!c || !unit) return undefined
  if (s.w[c.to + 1] === 'and' && s.w[c.to + 2] === 'a' && s.w[c.to + 3] === 'half') return { to: c.to + 4, n: c.n + 0.5, unit, loose: c.loose }
  return { to: c.to + 1, n: c.n, unit, loose: c.loose }
}

/** "3 days ago", "a week ago friday", "a week from friday", "45 days after sept 3". */
const counted: Rule = (s, i) => {
  const c = spanAt(s, i)
  if (!c) return undefined
  const tail = s.w[c.to]
  const weeks = c.unit === 'week' && Number.isInteger(c.n) ? c.n : 0
  if (tail === 'ago' || (tail === 'back' && c.unit !== 'hour' && c.unit !== 'minute')) {
    const wd = WEEKDAYS.get(s.w[c.to + 1] ?? '')
    if (weeks && wd !== undefined && meansDay(s, c.to + 1)) return { to: c.to + 2, said: { as: 'weekday', wd, which: 'last', weeks: -weeks } }
    return { to: s.w[c.to + 1] === 'today' ? c.to + 2 : c.to + 1, said: { as: 'shift', n: -c.n, unit: c.unit, loose: c.loose } }
  }
  if (tail === 'from') {
    if (/^(now|today)$/.test(s.w[c.to + 1] ?? '')) return { to: c.to + 2, said: { as: 'shift', n: c.n, unit: c.unit, loose: c.loose } }
  } else if (tail !== 'after' && tail !== 'before') return undefined
  const base = s.day(c.to + 1)
  if (!base || c.unit === 'hour' || c.unit === 'minute') return undefined
  return { to: base.to, said: { as: 'shift', n: tail === 'before' ? -c.n : c.n, unit: c.unit, base: base.said }, part: base.part }
}

/** "in 3 weeks", "within 2 days", "in may", "in the spring". */
const within: Rule = (s, i) => {
  let k = i + 1
  if (/^(about|around|roughly|another|maybe)$/.test(s.w[k] ?? '')) k++
  const c = spanAt(s, k)
  if (c && c.unit !== 'night') {
    // "70 loads in an hour", "120 in a day", "60 loads on north in 2 days" tell how long it took
    const before = s.all[i - 1] ?? ''
    if (s.claimed(i - 1) || s.measure(i - 1) || s.number(i - 1) !== undefined || (s.w[k] === 'a' && c.unit === 'day') || s.w[c.to] === 'ago') return undefined
    if (/^(all|took|done|only|lasted|row)$/.test(before)) return undefined
    let to = c.to
    if (s.w[to] === 'or' && s.w[to + 1] === 'so') to += 2
    else if (s.w[to] === 'time' || (s.w[to] === 'from' && s.w[to + 1] === 'now')) to += s.w[to] === 'time' ? 1 : 2
    return { to, said: { as: 'shift', n: c.n, unit: c.unit, loose: c.loose } }
  }
  const name = s.w[i + 1] === 'the' ? (s.w[i + 2] ?? '') : (s.w[i + 1] ?? '')
  const to = s.w[i + 1] === 'the' ? i + 3 : i + 2
  const season = SEASONS.get(name)
  if (season !== undefined) return { to, said: { as: 'season', month: season } }
  const month = to === i + 2 ? MONTHS.get(name) : undefined
  if (month !== undefined && !PILES.has(s.all[to] ?? '') && !monthDay(s, i + 1)) {
    const y = yearAt(s, to)
    return { to: y.to, said: { as: 'piece', month, year: y.year, a: 1, b: 0 } }
  }
  const f = monthDay(s, i + 1) ?? (/^(early|mid|late)$/.test(s.w[i + 1] ?? '') ? piece(s, i + 1) : undefined)
  return f
}

/** "last friday", "this past sat", "next may", "the last 3 days". */
const modified: Rule = (s, i) => {
  let which = WHICH.get(s.w[i]!)!
  let k = i + 1
  if (which === 'this' && /^(past|last)$/.test(s.w[k] ?? '')) {
    which = 'last'
    k++
  } else if (s.w[k] === 'coming') {
    which = 'coming'
    k++
  }
  const name = s.w[k] ?? ''
  const wd = WEEKDAYS.get(name)
  if (wd !== undefined) {
    if (!meansDay(s, k)) return undefined
    const before = s.w[k + 1] === 'before' && s.w[k + 2] === 'last'
    return { to: before ? k + 3 : k + 1, said: { as: 'weekday', wd, which } }
  }
  const dated = monthDay(s, k)
  if (dated) return dated
  const month = MONTHS.get(name)
  if (month !== undefined && !PILES.has(s.all[k + 1] ?? '') && !(name === 'may' && which === 'this')) return { to: k + 1, said: { as: 'piece', month, a: 1, b: 0, which } }
  const season = SEASONS.get(name)
  if (season !== undefined) return { to: k + 1, said: { as: 'season', month: season, which } }
  const whole = piece(s, i)
  if (whole) return whole
  const c = which === 'this' ? undefined : spanAt(s, k)
  if (c && c.n >= 1 && c.unit !== 'minute') return { to: c.to, said: { as: 'run', n: c.n, unit: c.unit, ahead: which === 'next' || which === 'coming' || undefined } }
  return undefined
}

const weekday: Rule = (s, i) => {
  const wd = WEEKDAYS.get(s.w[i]!)!
  if (!meansDay(s, i)) return undefined
  let k = i + 1
  if (s.w[k] === 'of') k++
  const which = WHICH.get(s.w[k] ?? '')
  if (which && which !== 'coming' && UNITS.get(s.w[k + 1] ?? '') === 'week') return { to: k + 2, said: { as: 'weekday', wd, week: which === 'last' ? -1 : which === 'next' ? 1 : 0 } }
  if (s.w[i + 1] === 'before' && s.w[i + 2] === 'last') return { to: i + 3, said: { as: 'weekday', wd, which: 'last', weeks: -1 } }
  return { to: i + 1, said: { as: 'weekday', wd } }
}

const month: Rule = (s, i) => {
  const f = monthDay(s, i)
  if (f) return f
  const y = yearAt(s, i + 1)
  const named = MONTH_BY.has(s.all[i - 1] ?? '') && !PILES.has(s.all[i + 1] ?? '')
  return named || (y.year !== undefined && s.w[i] !== 'may' && s.w[i] !== 'march') ? { to: y.to, said: { as: 'piece', month: MONTHS.get(s.w[i]!)!, year: y.year, a: 1, b: 0 } } : undefined
}

const season: Rule = (s, i) => (/^(since|by|come|until|till|til|before)$/.test(s.all[i - 1] ?? '') ? { to: i + 1, said: { as: 'season', month: SEASONS.get(s.w[i]!)! } } : undefined)

/** "on" and "the" go with the day behind them; "the friday load" does not. */
const on: Rule = (s, i) => {
  const f = s.day(i + 1)
  return f && f.said.as !== 'season' ? f : undefined
}
const the: Rule = (s, i) => {
  const f = s.day(i + 1)
  return f && f.said.as !== 'weekday' && !(f.said.as === 'day' && f.said.n >= -1 && f.said.n <= 1) ? f : undefined
}

const number = (s: Words, i: number): Found | undefined => dayMonth(s, i) ?? counted(s, i) ?? ordinalDay(s, i) ?? piece(s, i)

/** The rules by the word they begin with. */
export const EN_RULES: ReadonlyMap<string, Rule> = new Map<string, Rule>([
  ...[...SMALL.keys(), 'half'].map(w => [w, (s: Words, i: number) => counted(s, i) ?? dayMonth(s, i)] as const),
  ...[...ORDINALS.keys(), 'twenty', 'thirty'].map(w => [w, number] as const),
  ...[...WEEKDAYS.keys()].map(w => [w, weekday] as const),
  ...[...MONTHS.keys()].map(w => [w, month] as const),
  ...[...SEASONS.keys()].map(w => [w, season] as const),
  ...[...WHICH.keys()].map(w => [w, modified] as const),
  ...['early', 'mid', 'middle', 'late', 'end', 'beginning', 'start'].map(w => [w, piece] as const),
  ['in', within],
  ['within', within],
  ['on', on],
  ['the', the],
])
export const EN_NUMBER: Rule = number
