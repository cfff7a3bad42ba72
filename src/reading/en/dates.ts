import type { Part, Said, Unit } from '../when.ts'
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
  ['today, tday, tdy, todays, earlier today, later today', own(0)],
  ['tonight, tonite, tnite, tonights, 2 nite, this nite', own(0), 'night'],
  ['this morning, this mrn, ths mrn, ths morn, ths am, ths mornin, this mornin, this morn, this am', own(0), 'morning'],
  ['this afternoon, this aft, this aftnoon, this afternon, this pm', own(0), 'afternoon'],
  ['this evening, this evenin, this eve', own(0), 'evening'],
  ['this noon', own(0), 'noon'],
  [
    'yesterday, yst, ystrdy, yestdy, ystrd, yestrdy, ysterday, ystdry, yest, yday, ystrday, ystdy, yesterdy, yestrday, yesturday, yestday, yesterdays, yestarday, yesterd',
    day(-1),
  ],
  [
    'last nt, last ngt, lst nt, lastnite, last night, last nite, last nites, last nght, last nigth, last nights, lst night, lst nite, lastnight, overnight, over night',
    day(-1),
    'night',
  ],
  ['during the night, in the night, through the night, in the middle of the night', day(-1), 'night'],
  ['last evening, last eve', day(-1), 'evening'],
  ['day before yesterday, day before yest, day before yday, day b 4 yesterday', day(-2)],
  ['night before last, nite before last, night b4 last, nite b4 last', day(-2), 'night'],
  ['other day', { as: 'shift', n: -3, unit: 'day', loose: true }],
  ['other night', { as: 'shift', n: -3, unit: 'day', loose: true }, 'night'],
  ['tomorrow, tmrw, tmw, tmrrw, tomorow, tommorow, tommorrow, tomorro, tomarrow, tmr, tmro, tomorrows, 2 morrow, 2 moro, 2 morow', own(1)],
  ['day after tomorrow, day after tmrw', own(2)],
  ['end of the month, end of month, month end, months end, eom, end of this month', { as: 'date', day: 0 }],
  ['end of next month', { as: 'date', day: 0, months: 1 }],
  ['end of last month', { as: 'date', day: 0, months: -1 }],
  ['first of the month, beginning of the month, start of the month', { as: 'date', day: 1 }],
  ['first of next month, beginning of next month, start of next month', { as: 'date', day: 1, months: 1 }],
  ['end of the week, end of this week, end of week', { as: 'weekday', wd: 5, which: 'this' }],
  ['end of next week', { as: 'weekday', wd: 5, week: 1 }],
  ['end of the year, end of year, years end', date(12, 31)],
  ['this week, this wk, ths wk', { as: 'period', unit: 'week', n: 0 }],
  ['last week, last wk, lst week, previous week, last weeks', { as: 'period', unit: 'week', n: -1 }],
  ['week before last', { as: 'period', unit: 'week', n: -2 }],
  ['next week, next wk, nxt week, coming week', { as: 'period', unit: 'week', n: 1 }],
  ['week after next', { as: 'period', unit: 'week', n: 2 }],
  ['past week', { as: 'run', n: 7, unit: 'day' }],
  ['past month', { as: 'run', n: 1, unit: 'month' }],
  ['week ago, wk ago', { as: 'shift', n: -1, unit: 'week' }],
  ['month ago', { as: 'shift', n: -1, unit: 'month' }],
  ['this month', { as: 'period', unit: 'month', n: 0 }],
  ['last month, previous month', { as: 'period', unit: 'month', n: -1 }],
  ['next month, coming month', { as: 'period', unit: 'month', n: 1 }],
  ['this year', { as: 'period', unit: 'year', n: 0 }],
  ['last year, previous year', { as: 'period', unit: 'year', n: -1 }],
  ['next year', { as: 'period', unit: 'year', n: 1 }],
  [
    'this weekend, this wknd, this wkend, over the weekend, over the wknd, on the weekend, during the weekend',
    { as: 'period', unit: 'weekend', n: 0 },
  ],
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
  [
    'in the morning, in the mornin, in the am, all morning, all mornin, all am, first thing in the morning, by morning, at dawn, at daybreak, at sunup, at first light',
    'morning',
  ],
  ['in the afternoon, in the aft, in the pm, all afternoon', 'afternoon'],
  ['in the evening, in the evenin, all evening, at dusk, at sundown', 'evening'],
  ['at night, at nite, by night, after dark', 'night'],
]
/** Parts that need a day before them: "friday morning", "sat nite". */
export const EN_PARTS: ReadonlyMap<string, Part> = new Map<string, Part>([
  ...['morning', 'mornin', 'morn', 'am', 'mornings'].map(w => [w, 'morning'] as const),
  ...['noon', 'midday', 'noontime'].map(w => [w, 'noon'] as const),
  ...['afternoon', 'aft', 'pm', 'afternon'].map(w => [w, 'afternoon'] as const),
  ...['evening', 'evenin', 'eve'].map(w => [w, 'evening'] as const),
  ...['night', 'nite', 'nght', 'nigth', 'ngt'].map(w => [w, 'night'] as const),
])
/** Where a bare hour ("at 6") looks ahead instead of back. */
export const EN_AHEAD = set('remind rmind rmd reminder remember alarm')
/** Where a bare hour is a time at all; "face at 12" and "we are at 8" are not. */
export const EN_CLOCKED = set(
  'hail hailed hale rain rained raining storm stormed wind winds snow snowed froze frost freeze broke done finished finish home here meet meeting',
)
/** Where a number behind "at" is a place on the pile. */
export const EN_PLACED = set('face fase fce facing ft feet foot left cara frente pies')
/** Joins that may stand between a day and its time. */
export const EN_JOINS = set('at @ on the , around about by')
/** Between two days: "mon to wed". */
export const EN_UNTIL = set('to thru through til till until -')
export const EN_BETWEEN = set('from between')
export const EN_SINCE = set('since')

export const EN_WEEKDAYS = table({
  'sunday sun sund sundy': 0,
  'monday mon mond mondy munday': 1,
  'tuesday tue tues tuesd tusday teusday': 2,
  'wednesday wed weds wedn wensday wednsday wendsday wednesdy': 3,
  'thursday thu thur thurs thrs thursdy thirsday thrusday': 4,
  'friday fri frid fridy frday firday': 5,
  'saturday sat satur satday saterday satrday saturdy': 6,
})
export const EN_MONTHS = table({
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
export const EN_SEASONS = table({ spring: 3, summer: 6, 'fall autumn': 9, winter: 12 })
export const EN_SPANS = new Map<string, Unit>([
  ...['day', 'days', 'dys'].map(w => [w, 'day'] as const),
  ...['week', 'weeks', 'wk', 'wks'].map(w => [w, 'week'] as const),
  ...['month', 'months', 'mo', 'mos'].map(w => [w, 'month'] as const),
  ...['year', 'years', 'yr', 'yrs'].map(w => [w, 'year'] as const),
  ...['hour', 'hours', 'hr', 'hrs'].map(w => [w, 'hour'] as const),
  ...['minute', 'minutes', 'min', 'mins'].map(w => [w, 'minute'] as const),
  ...['night', 'nights', 'nite', 'nites'].map(w => [w, 'night'] as const),
])
export const EN_ORDINALS = table({
  first: 1,
  second: 2,
  third: 3,
  fourth: 4,
  fifth: 5,
  sixth: 6,
  seventh: 7,
  eighth: 8,
  ninth: 9,
  tenth: 10,
  eleventh: 11,
  twelfth: 12,
  thirteenth: 13,
  fourteenth: 14,
  fifteenth: 15,
  sixteenth: 16,
  seventeenth: 17,
  eighteenth: 18,
  nineteenth: 19,
  twentieth: 20,
  thirtieth: 30,
})
export const EN_SMALL: ReadonlyMap<string, number> = new Map(
  Object.entries({ ...EN_UNITS, ...EN_TENS, a: 1, an: 1, another: 1, couple: 2, few: 3 }),
)
export const EN_WHICH = new Map<string, 'last' | 'this' | 'next' | 'coming'>([
  ...['last', 'lst', 'past', 'previous'].map(w => [w, 'last'] as const),
  ...['this', 'ths'].map(w => [w, 'this'] as const),
  ...['next', 'nxt'].map(w => [w, 'next'] as const),
  ['coming', 'coming'],
])

export const EN_BEFORE_DAY = set(
  'on last lst past this next nxt coming since by til till until before after from thru through every for between',
)
export const EN_BEFORE_SAT_VERB = set(
  'it just we he she they i that which who has had have been was were truck loader tractor wagon always',
)
export const EN_AFTER_SAT_VERB = set(
  'the on in there here down out up open for at around by idle empty still all too a an with behind over uncovered under outside loose next',
)
export const EN_BEFORE_SAT_DAY = set(
  'fed covered cvrd checked chkd walked walkd patched packed hauled dumped put hail hailed hale rain rained wind windy snow snowed loads lds',
)
export const EN_BEFORE_SUN = set('the in hot no some full direct more bright much any big with of out afternoon good from')
export const EN_AFTER_SUN = set(
  'came comes coming is was isnt up down out shining shine shines set rise beat beating hit hits cooked dried burned burnt bleached bakes baked melts melted rotted damage and or will dont doesnt has had got gets side block screen light spot finally really just dog flower',
)
export const EN_MONTH_BY = set('since by before until till til after come through thru')
export const EN_PILES = set('pile piles stack stacks bunker pit bag side end slab pad pen field')
/** Words whose own number stands behind them: "load 12". */
export const EN_NUMBERED = set('load wagon box truck trailer number no pile field tractor pen group batch lot bucket silo')
/** A date may go before these; a counted thing may not. */
export const EN_FOLLOW = set(
  "to we i he she they it you at around by with and & put fed for hail had got then of or if before after because when this next - we've were im ill well",
)
export const EN_PICKING = set('undo scratch delete cancel remove not no make pick change')
export const EN_CLOUDY = set('may march mar')
