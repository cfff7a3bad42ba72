import type { DateItem, Item, Unit } from './item.ts'
import { LEXICON, type Phrase } from './lexicon.ts'
import { type NameHit, type NameIndex, nameAt, slipAt } from './names.ts'
import { type NumberItem, numberAt, unitTail } from './numbers.ts'
import { mendWord } from './slips.ts'
import { respell } from './sounds.ts'
import type { Token } from './token.ts'

export type Lang = 'en' | 'es'

const phraseAt = (tokens: Token[], i: number, word = tokens[i]!.norm): Phrase | undefined => {
  for (const p of LEXICON.byFirst.get(word) ?? []) {
    if (p.words.every((w, k) => k === 0 || tokens[i + k]?.norm === w)) return p
  }
  return undefined
}

/** The language of a message by the words only one table knows; `fallback` where neither wins. */
export const languageOf = (tokens: Token[], fallback: Lang, isName: (word: string) => boolean = () => false): Lang => {
  let en = 0
  let es = 0
  for (let i = 0; i < tokens.length; i++) {
    const t = tokens[i]!
    if (t.kind !== 'word' || isName(t.norm)) continue
    const p = phraseAt(tokens, i)
    if (p) {
      if (p.en.length && !p.es.length) en += p.words.length
      if (p.es.length && !p.en.length) es += p.words.length
      i += p.words.length - 1
    }
    if (/[ñ¿¡áéíóú]/i.test(t.text)) es++
  }
  return en === es ? fallback : en > es ? 'en' : 'es'
}

const sensesOf = (p: Phrase, lang: Lang): string[] => {
  const own = lang === 'en' ? p.en : p.es
  return own.length ? own : lang === 'en' ? p.es : p.en
}

const isUnit = (tokens: Token[], i: number): Phrase | undefined => {
  if (!tokens[i]) return undefined
  // "seven in the morning", "put 5 in the barn": a place or a time, no inches
  if (tokens[i]!.norm === 'in' && /^(the|my|our|his|her|there|here)$/.test(tokens[i + 1]?.norm ?? '')) return undefined
  let p = phraseAt(tokens, i)
  if (!p && tokens[i]!.kind === 'word') {
    const mended = mendWord(LEXICON, tokens[i]!.norm)
    if (mended) p = phraseAt(tokens, i, mended)
  }
  return p && [...p.en, ...p.es].some(s => s.startsWith('unit:') || s === 'what:hole' || s === 'what:tear' || s === 'item:patch tape')
    ? p
    : undefined
}

const isMore = (tokens: Token[], i: number): boolean => {
  const p = phraseAt(tokens, i)
  return p !== undefined && p.words.length === 1 && p.en.includes('more')
}

const make = (tokens: Token[], from: number, to: number, senses: string[], more: Partial<Item> = {}): Item => ({
  from,
  to,
  senses,
  text: tokens
    .slice(from, to)
    .map(t => t.text)
    .join(' '),
  tokens: tokens.slice(from, to),
  ...more,
})

const BY = new Set(['x', 'by', 'por', '*', 'buy', 'bye'])

/** "40 by 120", "50x150", "50 ft by 150 ft", "40 por 120 por 10". */
const sidesAt = (tokens: Token[], i: number): { to: number; sides: number[] } | undefined => {
  const sides: number[] = []
  let k = i
  for (;;) {
    const n = numberAt(tokens, k)
    if (!n || n.ordinal || (n.weak && !n.value)) break
    if (n.weak && sides.length === 0 && n.to === k + 1) break
    if (n.range) break
    sides.push(n.value)
    k = n.to
    let j = k
    const unit = tokens[j]?.norm
    if (unit === 'ft' || unit === 'feet' || unit === 'foot' || unit === 'pies' || unit === 'pie') j++
    if (tokens[j] && BY.has(tokens[j]!.norm) && tokens[j + 1] && numberAt(tokens, j + 1)) {
      k = j + 1
      continue
    }
    if (sides.length > 1) k = j
    break
  }
  return sides.length >= 2 && sides.length <= 3 ? { to: k, sides } : undefined
}

const UNIT_OF_MARK: Record<string, Unit> = { '#': 'lb', '%': 'pct' }

/** A number with what stands behind it: 7 loads, 12 ft 6, 34 %, 9800#. */
const quantityAt = (tokens: Token[], n: NumberItem, lang: Lang): Item => {
  const item = bareQuantityAt(tokens, n, lang)
  return n.range && !item.senses.includes('range') ? { ...item, senses: [...item.senses, 'range'] } : item
}

const bareQuantityAt = (tokens: Token[], n: NumberItem, lang: Lang): Item => {
  if (n.feet) {
    return make(tokens, n.from, n.to, ['num'], { num: n.value, unit: 'ft' })
  }
  if (n.inches) return make(tokens, n.from, n.to, ['num'], { num: n.value, unit: 'in' })
  const mark = tokens[n.to]
  if (mark?.kind === 'mark' && UNIT_OF_MARK[mark.norm]) {
    // "34 % moisture": the share goes with the word behind it
    return make(tokens, n.from, n.to + 1, ['num'], { num: n.value, unit: UNIT_OF_MARK[mark.norm] })
  }
  let at = n.to
  // "two of loads", "7 more loads", "12 mil libras", "5 big loads", "3 full buckets"
  const skip = new Set([
    'of',
    'more',
    'mas',
    'de',
    'd',
    'big',
    'full',
    'good',
    'nice',
    'heavy',
    'small',
    'little',
    'other',
    'buenos',
    'more',
    'extra',
    'additional',
    'heaping',
    'short',
    'square',
    'solid',
  ])
  while (
    tokens[at] &&
    (skip.has(tokens[at]!.norm) || (/^an?$/.test(tokens[at]!.norm) && tokens[at - 1]!.norm === 'of') || isMore(tokens, at)) &&
    at - n.to < 2 &&
    !isUnit(tokens, at)
  )
    at++
  const p = isUnit(tokens, at)
  if (p) {
    const senses = sensesOf(p, lang)
    const all = [...senses, ...p.en, ...p.es]
    const unit = all.find(s => s.startsWith('unit:'))?.slice(5) as Unit | undefined
    if (unit === 'ft') {
      // "12 ft 6", "12 foot 6 in"
      const to = at + p.words.length
      let j = to
      if (tokens[j]?.norm === 'and' || tokens[j]?.norm === 'y' || tokens[j]?.norm === 'con') j++
      const inch = tokens[j] ? numberAt(tokens, j) : undefined
      if (inch && !inch.weak && inch.value < 12 && !inch.range) {
        const next = isUnit(tokens, inch.to)
        const isInch = next && [...next.en, ...next.es].includes('unit:in')
        const ends = j === to && (!tokens[inch.to] || tokens[inch.to]!.kind === 'mark')
        const dim = tokens[inch.to] && phraseAt(tokens, inch.to)
        const hasDim = j === to && dim && [...dim.en, ...dim.es].some(s => s.startsWith('dim:')) && !dim.en.includes('unit:in')
        if (isInch || ends || hasDim)
          return make(tokens, n.from, isInch ? inch.to + next!.words.length : inch.to, ['num'], {
            num: n.value + inch.value / 12,
            unit: 'ft',
          })
      }
      const h = unitTail(tokens, to)
      if (h) return make(tokens, n.from, to + h.length, ['num'], { num: n.value + h.adds, unit })
      return make(tokens, n.from, to, ['num'], { num: n.value, unit })
    }
    if (unit) {
      const to = at + p.words.length
      // a word that is more than its unit keeps its other senses: "2 tractors", "5 boxes"
      const h = unitTail(tokens, to)
      if (h) return make(tokens, n.from, to + h.length, ['num'], { num: n.value + h.adds, unit })
      return make(tokens, n.from, to, ['num', ...all.filter(s => !s.startsWith('unit:') && s !== 'filler')], { num: n.value, unit })
    }
  }
  return make(tokens, n.from, n.to, ['num'], { num: n.value })
}

/** What was found in a message before frames are laid over it. */
export interface Scan {
  tokens: Token[]
  items: Item[]
  lang: Lang
}

const DIRECTION =
  /^(north|south|east|west|n|s|e|w|ne|nw|se|sw|top|bottom|back|front|left|right|far|near|upper|lower|middle|norte|sur|este|oeste)$/
const PLACE_TAIL = new Set(['end', 'side', 'corner', 'wall', 'edge', 'part', 'slope', 'face'])

const LEADS = /^(on|onto|in|into|to|at|off|from|of|the|pile|pad|el|al|del|en|de|la|called|patched|checked|chkd|walked|opened|covered|and|y|how|hows|is|by|over)$/

/** A pile named by a number is meant where a name belongs, and nothing counted follows: "17 loads on 17". */
const numberNames = (tokens: Token[], hit: NameHit, names: NameIndex): boolean => {
  const before = tokens[hit.from - 1]
  const after = tokens[hit.to]
  const counted = after && (isUnit(tokens, hit.to) || BY.has(after.norm) || numberAt(tokens, hit.to) !== undefined || /^(more|percent|%|dm|de|of|wide|long|high|hundred|thousand|mil)$/.test(after.norm) || names.byFirst.has(after.norm))
  return !counted && (before === undefined || before.kind === 'mark' || LEADS.test(before.norm) || after === undefined)
}

/** Cuts the tokens into items: names first, then numbers with units, dates, words of the trade, words mended, words unknown. */
export const scan = (
  typed: Token[],
  names: NameIndex,
  dates: (tokens: Token[], taken: (i: number) => boolean) => DateItem[],
  fallback: Lang,
): Scan => {
  const spanish = typed.some(
    (t, i) =>
      t.kind === 'word' &&
      (LEXICON.byFirst.get(t.norm)?.some(p => p.words.length === 1 && p.es.length > 0 && p.en.length === 0) ?? false) &&
      i >= 0,
  )
  const tokens = respell(LEXICON, typed, w => names.byFirst.has(w) || COMMON.has(w), spanish || fallback === 'es')
  const lang = languageOf(tokens, fallback, w => names.byFirst.has(w))
  const n = tokens.length
  const hits: (NameHit | undefined)[] = new Array(n)
  const nums: (Item | undefined)[] = new Array(n)
  const taken = new Uint8Array(n)
  const toWord = new Set<number>()
  const claim = (from: number, to: number) => taken.fill(1, from, to)
  for (let i = 0; i < n; ) {
    const hit = nameAt(names, tokens, i)
    const p = hit ? phraseAt(tokens, i) : undefined
    const place = hit?.kind === 'pile' && hit.to === i + 1 && p && DIRECTION.test(p.words[0]!) && PLACE_TAIL.has(tokens[hit.to]?.norm ?? '')
    const digits = hit?.kind === 'pile' && numberAt(tokens, i) !== undefined && !numberNames(tokens, hit, names)
    if (hit && !place && !digits && !(p && p.words.length > hit.to - hit.from && !p.en.includes('filler'))) {
      hits[i] = hit
      claim(hit.from, hit.to)
      i = hit.to
      continue
    }
    i++
  }
  const found = dates(tokens, i => taken[i] === 1)
  const dateAt: (DateItem | undefined)[] = new Array(n)
  for (const d of found) {
    dateAt[d.from] = d
    claim(d.from, d.to)
  }
  for (let i = 0; i < n; i++) {
    if (taken[i]) continue
    // "golf ball", "todo al cien": phrases whose words only look like numbers
    const longer = tokens[i]!.kind === 'word' ? phraseAt(tokens, i) : undefined
    if (
      longer &&
      longer.words.length > 1 &&
      [...longer.en, ...longer.es].some(s => s.startsWith('stone:') || s.startsWith('pick:') || s.startsWith('find:') || s === 'vague')
    ) {
      i += longer.words.length - 1
      continue
    }
    const sides = sidesAt(tokens, i)
    if (sides) {
      nums[i] = make(tokens, i, sides.to, ['sides'], { sides: sides.sides })
      claim(i, sides.to)
      i = sides.to - 1
      continue
    }
    const q = numberAt(tokens, i)
    if (!q || q.ordinal) continue
    // "rdy 2 open", "opnd 2 feed": a word in a digit's clothes
    if (
      (tokens[i]!.text === '2' || tokens[i]!.text === '4') &&
      /^(feed|open|add|put|top|patch|cover|check|use|dar|echar)$/.test(tokens[i + 1]?.norm ?? '')
    ) {
      toWord.add(i)
      continue
    }
    const item = quantityAt(tokens, q, lang)
    const bare = item.unit === undefined && item.to === q.to
    // an article or a homophone is a number only beside a unit
    if (q.weak) {
      const w = tokens[i]!.norm
      const article = w === 'a' || w === 'an' || w === 'un' || w === 'una' || w === 'one' || w === 'uno' || w === 'once'
      const p = tokens[q.to] ? phraseAt(tokens, q.to) : undefined
      const whats =
        p &&
        [...p.en, ...p.es].some(
          s =>
            s === 'what:hole' ||
            s === 'what:tear' ||
            s === 'item:patch tape' ||
            (s.startsWith('mat:') && /^(bought|have|got|counted|used|compre|compramos)$/.test(tokens[i - 1]?.norm ?? '')),
        )
      if (w === 'one' || w === 'uno' || w === 'once') {
        if (bare && !whats && w !== 'once' && n > 1) continue
        if (w === 'once' && bare && lang === 'en') continue
      } else {
        const fits = article
          ? (bare && whats === true && (w === 'un' || w === 'una')) ||
            (!bare && ['load', 'bucket', 'batch', 'ft', 'in', 'ton'].includes(item.unit ?? ''))
          : whats === true || (!bare && ['load', 'bucket', 'batch', 'lb', 'ton', 'tractor'].includes(item.unit ?? ''))
        if (!fits) continue
      }
      // "to load corn", "for loads of work": a homophone wants a plural or an amount behind it
      if (!article && !whats && w !== 'won' && !/s$/.test(tokens[item.to - 1]!.norm) && !/feet$/.test(tokens[item.to - 1]!.norm)) continue
    }
    nums[i] = item
    claim(item.from, item.to)
    i = item.to - 1
  }
  const items: Item[] = []
  for (let i = 0; i < n; ) {
    const t = tokens[i]!
    const hit = hits[i]
    if (hit) {
      const own = phraseAt(tokens, i)
      const place = own && [...own.en, ...own.es].includes('where:place') ? ['where:place'] : []
      items.push(
        make(tokens, hit.from, hit.to, hit.kind === 'box' ? [`box:${hit.name}`, 'unit:load'] : [`${hit.kind}:${hit.name}`, ...place]),
      )
      i = hit.to
      continue
    }
    const num = nums[i]
    if (num) {
      items.push(num)
      i = num.to
      continue
    }
    const d = dateAt[i]
    if (d) {
      items.push(make(tokens, d.from, d.to, ['date'], { date: d }))
      i = d.to
      continue
    }
    const slash = t.norm === '/' ? phraseAt(tokens, i) : undefined
    if (slash) {
      items.push(make(tokens, i, i + slash.words.length, sensesOf(slash, lang)))
      i += slash.words.length
      continue
    }
    if (t.kind === 'mark') {
      const stop = t.norm === '.' || t.norm === ';' || t.norm === '!' || t.norm === '?' || t.norm === '\n'
      const senses = stop
        ? [t.norm === '?' ? 'ask?' : 'stop']
        : t.norm === ',' || t.norm === ':' || t.norm === '(' || t.norm === ')'
          ? ['comma']
          : t.norm === '&' || t.norm === '+'
            ? ['and']
            : t.norm === '<link>' || t.norm === '<phone>'
              ? [t.norm]
              : t.norm === '#'
                ? ['unit:lb']
                : t.norm === '%'
                  ? ['unit:pct']
                  : ['mark']
      items.push(make(tokens, i, i + 1, senses))
      i++
      continue
    }
    if (toWord.has(i)) {
      const why = phraseAt([{ ...t, norm: t.text === '2' ? 'to' : 'for', kind: 'word' }, ...tokens.slice(i + 1)], 0)
      const words = why ? why.words.length : 1
      items.push(make(tokens, i, i + words, why ? sensesOf(why, lang) : ['filler']))
      i += words
      continue
    }
    if (t.kind === 'number') {
      const ord = /^(\d{1,2})\D/.exec(t.norm)
      if (ord && /^\d{1,2}[a-zº°ª]/.test(t.norm))
        items.push(make(tokens, i, i + 1, [`say:ordinal:${ord[1]}`], { num: Number(ord[1]), ordinal: true }))
      else items.push(make(tokens, i, i + 1, ['num?']))
      i++
      continue
    }
    const near = slipAt(names, tokens, i, true)
    if (near) {
      items.push(make(tokens, near.from, near.to, [`pile:${near.name}`], { slip: true }))
      i = near.to
      continue
    }
    let p = phraseAt(tokens, i)
    // a phrase may not run into what was claimed
    if (p && p.words.length > 1) {
      let free = true
      for (let k = i; k < i + p.words.length; k++) if (taken[k] || hits[k]) free = false
      if (!free) p = shorterAt(tokens, i, taken)
    }
    if (p) {
      // a trade word may be the thumb's slip for a pile, but only in a pile's place
      items.push(make(tokens, i, i + p.words.length, sensesOf(p, lang)))
      i += p.words.length
      continue
    }
    const slip = slipAt(names, tokens, i)
    const prev = items.at(-1)
    const inPlace = prev && ['on', 'off', 'v:patch', 'v:check', 'pileword'].some(s => prev.senses.includes(s))
    if (slip && (inPlace || slip.name.length >= 5 || !COMMON.has(t.norm))) {
      items.push(make(tokens, slip.from, slip.to, [`pile:${slip.name}`], { slip: true }))
      i = slip.to
      continue
    }
    const mended = COMMON.has(t.norm) ? undefined : mendWord(LEXICON, t.norm)
    const related =
      prev !== undefined &&
      (prev.senses.includes('on') ||
        prev.senses.includes('off') ||
        (prev.senses.length === 1 && prev.senses[0] === 'filler' && items.at(-2)?.senses.includes('on')))
    const r = mended ? phraseAt(tokens, i, mended) : undefined
    // "on hollow" is a pile nobody knows, not a slip for a hole
    const q = r && related && ![...r.en, ...r.es].some(s => /^(mat|crop|unit|where|thing|item|pileword|sky)/.test(s)) ? undefined : r
    if (q) {
      items.push(make(tokens, i, i + q.words.length, sensesOf(q, lang), { slip: true }))
      i += q.words.length
      continue
    }
    items.push(make(tokens, i, i + 1, []))
    i++
  }
  return { tokens, items, lang }
}

const shorterAt = (tokens: Token[], i: number, taken: Uint8Array): Phrase | undefined => {
  for (const p of LEXICON.byFirst.get(tokens[i]!.norm) ?? []) {
    if (p.words.every((w, k) => tokens[i + k]?.norm === w && (k === 0 || !taken[i + k]))) return p
  }
  return undefined
}

/** Everyday words that stand one letter from a trade word or a short name and mean themselves. */
export const COMMON = new Set(
  'line,land,late,lake,lame,land,bill,will,fill,kill,bark,burn,torn,worth,forth,both,hold,told,cold,gold,sold,home,come,some,same,name,game,time,dime,like,bike,life,wife,fire,wire,tire,hire,here,were,where,there,then,them,they,than,that,this,thin,thing,think,thank,back,pack,lack,sack,book,look,took,cook,food,good,wood,mood,road,read,bread,head,lead,dead,need,seed,week,weak,seek,meet,meat,heat,seat,beat,boat,coat,goat,door,poor,pour,four,hour,your,year,hear,near,fear,dear,bear,wear,tear,team,seam,beam,cream,dream,lunch,bunch,punch,house,mouse,horse,nurse,money,honey,monkey,truck,trick,track,black,block,clock,stock,stick,stuck,paper,later,water,after,other,mother,brother,father,rather,sister,school,phone,photo,watch,match,catch,party,store,story,price,piece,place,plate,plant,plane,plain,train,brain,drain,table,cable,able,chair,class,glass,grass,world,would,could,should,shirt,short,sport,coffee,dinner,supper,breakfast,pizza,beer,game,ball,call,fall,hall,mall,tall,wall,well,tell,sell,bell,fell,hell,help,kelp,birthday,sunday,church,doctor,dentist,vet,mail,male,sale,tale,pale,shop,ship,shot,shut,show,snow,slow,blow,flow,glow,grow,crow,brow,throw,know,knew,new,few,dew,crew,drew,grew,blue,glue,true,clue,shoes,socks,jacket,gloves,keys,wallet,gas,fuel,diesel,oil,grease,filter,belt,chain,engine,motor,battery,charger,knife,fork,spoon,cup,mug,plumber,electric,power,light,night,right,fight,sight,tight,might,eight,weight,height,freight,fence,post,gate,lock,window,roof,floor,stairs,bed,bath,kitchen,garage,office,town,city,street,bridge,hill,valley,river,creek,pond,woods,field,farm,milk,cheese,butter,eggs,bacon,steak,burger,sandwich,soup,salad,cake,pie,candy,ice,juice,soda,crop,crops,corn,dogs,sweet,feet,fleet,sheet,sleep,steep,sheep,cheap,people,person,woman,women,child,children,family,friend,neighbor,nice,mice,rice,dice,slice,twice,price'.split(
    ',',
  ),
)
