import { has, hasCat, type Item, valueOf } from '../item.ts'
import { isThin, type Pool } from '../pool.ts'
import { type Found, inFt, takeColour, takePile, takeVague, takeWhere } from './slots.ts'

const SHEETS = new Set(['plastic', 'second plastic', 'barrier film', 'tarp'])

/** The number that counts a material: right before it, or right after. */
const countOf = (p: Pool, at: number): number | undefined => {
  for (let k = at - 1; k >= 0 && k >= at - 3; k--) {
    const i = p.items[k]!
    if (p.free(k) && i.num !== undefined && i.unit === undefined) return p.take(k)!.num
    if (!isThin(i) && !has(i, 'more') && !i.sides && i.senses.length > 0 && !has(i, 'with')) return undefined
  }
  return undefined
}

const sidesBy = (p: Pool, at: number): number[] | undefined => {
  for (const dir of [-1, 1]) {
    for (let k = at + dir, n = 0; k >= 0 && k < p.items.length && n < 3; k += dir, n++) {
      const i = p.items[k]!
      if (i.sides && p.free(k)) return p.take(k)!.sides
      if (!isThin(i) && !(dir < 0 && i.num !== undefined)) break
    }
  }
  return undefined
}

const counted = (material: string): boolean => material === 'tires' || material === 'gravel bags'

/** Sheets, mesh and weights laid on, taken off or rolled back. One slot set for each material. */
export const cover = (p: Pool): Found | undefined => {
  const out: Found = { slots: {}, full: false, bias: 0, several: [] }
  const roll = p.sense('v:roll')
  const bare = p.sense('v:uncover')
  const verb = p.sense('v:cover')
  const take = p.find(i => has(i, 'v:take'))
  const put = p.find(i => has(i, 'v:put'))
  const base = p.sense('b:cover', 'b:uncover', 'b:roll', 'b:take')
  const back = p.sense('back')
  const mats = p.items.map((i, k) => ({ i, k })).filter(x => hasCat(x.i, 'mat'))
  const sides = p.items.some(i => i.sides)
  const first = mats[0]
  const pileAt = p.cat('pile')
  const trailing = first ? p.items.slice(first.k + 1, first.k + 3) : []
  // "mesh off lane", "plastic back 5 ft", "30 gravel bags on lane edge": no verb, but no doubt either
  const verbless = first !== undefined && p.find(i => hasCat(i, 'v') || has(i, 'm:plan')) < 0 && (pileAt >= 0 || p.num(['ft']) >= 0) && (trailing.some(i => has(i, 'off') && !has(i, 'on') && /^off/.test(i.tokens[0]!.norm)) || (trailing.some(i => has(i, 'back')) && p.num(['ft']) >= 0) || (counted(valueOf(first.i, 'mat')!) && p.items[first.k - 1]?.num !== undefined && trailing.some(i => has(i, 'on'))))
  if (roll < 0 && bare < 0 && verb < 0 && !verbless && (mats.length === 0 || (take < 0 && put < 0 && base < 0))) return undefined
  if (mats.length === 0 && roll >= 0 && verb < 0 && bare < 0) return undefined
  const noWord = verbless && roll < 0 && bare < 0 && verb < 0 && take < 0 && put < 0
  if (p.find(i => hasCat(i, 'what') && !has(i, 'what:loose edge') && !hasCat(i, 'v') && !hasCat(i, 'mat')) >= 0) return undefined
  if (p.find(i => hasCat(i, 'crop') && !hasCat(i, 'mat')) >= 0 && verb < 0 && mats.length === 0) return undefined
  const ft = p.num(['ft', 'in'])
  const rolled = noWord ? trailing.some(i => has(i, 'back')) : roll >= 0 && (ft >= 0 || has(p.items[roll + 1], 'back') || /back|atras|enroll|roll/.test(p.items[roll]!.text) || has(p.items[roll], 'v:roll') && !has(p.items[roll], 'v:take')) && verb < 0
  // "pulled the mesh back off" is off, "put the mesh back on" is on, "rolled 6 ft back" is back
  const off = bare >= 0 || (take >= 0 && !rolled && verb < 0) || (verb < 0 && put < 0 && !rolled && (noWord ? trailing.some(i => /^off/.test(i.tokens[0]!.norm)) : p.sense('off') >= 0))
  const change = rolled && !(take >= 0 && off && ft < 0 && back < 0) ? (put >= 0 && back >= 0 && ft < 0 ? 'on' : 'back') : off ? 'off' : 'on'
  p.takeAll('v:cover', 'v:uncover', 'v:roll', 'v:put', 'v:take', 'b:cover', 'b:uncover', 'b:roll', 'v:use')
  out.order = verb < 0 && bare < 0 && roll < 0 && take < 0 && put < 0 && !noWord
  takePile(p, out)
  let vague = false
  for (const { i, k } of mats) {
    if (!p.free(k)) continue
    const material = valueOf(i, 'mat')!
    // "costales de grava": what is in the bags is not laid on by itself
    if ((material === 'gravel' || material === 'dirt') && out.several!.at(-1)?.material === 'gravel bags' && has(p.items[k - 1], 'off')) {
      p.take(k)
      continue
    }
    const one: Record<string, unknown> = { material, change }
    const s = SHEETS.has(material) || material === 'mesh' ? sidesBy(p, k) : undefined
    if (s) {
      one.widthFt = Math.min(s[0]!, s[1]!)
      one.lengthFt = Math.max(s[0]!, s[1]!)
    }
    const n = countOf(p, k)
    if (n !== undefined && (counted(material) || (SHEETS.has(material) && n > 1))) one.count = n
    if (counted(material) && n === undefined && p.find((x, j) => has(x, 'vague') && j < k) >= 0) vague = true
    p.take(k)
    if (change === 'back' && ft >= 0) {
      const d = inFt(p.items[ft]!)
      if (d !== undefined) one.ft = d
      p.take(ft)
    }
    out.several!.push(one)
  }
  const s = p.find(i => i.sides !== undefined)
  if (s >= 0 && verb >= 0 && !out.several!.some(o => SHEETS.has(o.material as string) && o.widthFt !== undefined)) {
    const d = p.take(s)!.sides!
    const sheet = out.several!.find(o => SHEETS.has(o.material as string))
    const size = { widthFt: Math.min(d[0]!, d[1]!), lengthFt: Math.max(d[0]!, d[1]!) }
    if (sheet) Object.assign(sheet, size)
    else out.several!.unshift({ material: 'plastic', change: 'on', ...size })
  }
  // "covered north", "covered north with 240 tires": a sheet went on
  if (verb >= 0 && !out.several!.some(o => SHEETS.has(o.material as string) || o.material === 'mesh')) out.several!.unshift({ material: 'plastic', change: 'on' })
  if (bare >= 0 && !out.several!.length) out.several!.push({ material: 'plastic', change: 'off' })
  if (takeVague(p)) vague = true
  if (vague) out.vague = true
  p.takeAll('back', 'total', 'what:loose edge', 'thing:face', 'm:tell')
  takeWhere(p, false)
  takeColour(p)
  if (!out.several!.length) return undefined
  void sides
  out.full = true
  if (verb >= 0 || roll >= 0 || bare >= 0) out.bias! += 1
  return out
}

const whatOf = (i: Item): string | undefined => valueOf(i, 'what')

/** Harm to a cover. */
export const damage = (p: Pool): Found | undefined => {
  const out: Found = { slots: {}, full: false, bias: 0 }
  const what = p.find(i => hasCat(i, 'what'))
  const animal = p.find(i => hasCat(i, 'animal') && i.unit === undefined)
  const broke = p.find(i => has(i, 'v:break'))
  const lift = p.find(i => has(i, 'v:lift'))
  const sheet = p.find(i => hasCat(i, 'mat'))
  if (p.sense('v:patch') >= 0 && broke < 0) return undefined
  if (p.sense('v:remind', 'v:note') >= 0) return undefined
  const harm = (what >= 0 && !(has(p.items[what], 'v:take') && animal < 0 && sheet < 0)) || ((animal >= 0 || sheet >= 0) && (broke >= 0 || lift >= 0))
  if (!harm) return undefined
  // "wind 40 mph" is weather; wind at a sheet is damage
  const hole = p.find(i => has(i, 'what:hole'))
  const tear = p.find(i => has(i, 'what:tear'))
  const loose = p.find(i => has(i, 'what:loose edge'))
  const wet = p.find(i => has(i, 'what:water') && (!hasCat(i, 'dm') || !p.items.some(x => x.num !== undefined)))
  let kind = hole >= 0 ? hole : tear >= 0 ? tear : loose >= 0 ? loose : wet
  if (kind >= 0) {
    out.slots.what = hole >= 0 ? 'hole' : tear >= 0 ? 'tear' : loose >= 0 ? 'loose edge' : 'water'
    // the number stands right before the kind of harm: "2 tears", "a dozen little holes"
    const noun = p.items.findIndex((i, k) => p.free(k) && whatOf(i) === out.slots.what && i.num !== undefined)
    if (noun >= 0) kind = noun
  }
  // sky and cause before number, so that "hail poked 12 holes" keeps its count
  if (animal >= 0) {
    out.slots.cause = 'animal'
    const a = valueOf(p.items[animal], 'animal')!
    if (a !== 'animal') out.slots.animal = a
    p.take(animal)
  }
  const cause = p.find(i => hasCat(i, 'cause') || has(i, 'sky:hail') || has(i, 'sky:wind') || has(i, 'sky:freeze'))
  if (cause >= 0) {
    const i = p.take(cause)!
    const c = valueOf(i, 'cause') ?? (has(i, 'sky:hail') ? 'hail' : has(i, 'sky:wind') ? 'wind' : 'ice')
    if (out.slots.cause === undefined || c === 'machine' && animal < 0) out.slots.cause = c
  }
  const stone = p.find(i => hasCat(i, 'stone') && valueOf(i, 'stone') !== 'size')
  if (stone >= 0 && out.slots.cause === 'hail') {
    out.slots.inches = Number(valueOf(p.take(stone), 'stone'))
    p.takeAll('stone:size')
  }
  out.slots.cause ??= 'unknown'
  if (!out.slots.what) {
    if (lift >= 0) out.slots.what = 'loose edge'
    else if (brokeBy(p, /^(tore|ripped|shredded|sliced|cut|tore up|tore open|ripped open|ripped up|rasg\w*|rompi\w*|se rompio|se rajo|raj\w*|destroz\w*|despedaz\w*)$/)) out.slots.what = 'tear'
    else if (brokeBy(p, /^(poked|punched|poked thru|poked through|punctured|pecked|poncho|poncharon|pic\w+|agujer\w*|perfor\w*)$/)) out.slots.what = 'hole'
  }
  for (const k of [hole, tear, loose, wet]) p.take(k)
  const counted = p.find((i, k) => i.num !== undefined && (i.unit === undefined || i.unit === 'head') && !has(i, 'dm') && (valueOf(i, 'what') !== undefined || nearWhat(p, k, [hole, tear])))
  const numbered = kind >= 0 && p.items[kind]!.num !== undefined ? p.items[kind]! : undefined
  if (numbered) {
    out.slots.count = numbered.num
    p.take(kind)
  } else if (counted >= 0) out.slots.count = p.take(counted)!.num
  if (numbered && has(numbered, 'range')) out.vague = true
  takePile(p, out)
  p.takeAll('mat:plastic', 'mat:mesh', 'mat:tarp', 'mat:second plastic')
  // the edge that came loose is what it is, not where
  const where = takeWhere(p, true, out.slots.what === 'loose edge' ? /^(edge|orilla|borde|plastic|plastico)$/ : undefined)
  if (where) out.slots.where = where
  p.takeAll('v:break', 'v:lift', 'v:take', 'v:put', 'v:have', 'v:check', 'back', 'v:push', 'v:pack', 'what:tear', 'what:loose edge', 'find:trouble', 'thing:covers', 'v:cover', 'cause:machine', 'sky:wind', 'cause:wind', 'v:open', 'v:roll', 'v:uncover', 'unit:bucket', 'unit:load', 'animal:animal', 'v:pitch', 'v:feed', 'where:place', 'animal:bird', 'animal:raccoon', 'unit:tractor', 'unit:head')
  if (takeVague(p)) {
    // "some holes" is damage without a count: that is no doubt about the record
  }
  takeColour(p)
  out.full = out.slots.what !== undefined || animal >= 0
  if (sheet >= 0 || what >= 0) out.bias! += 0.5
  if (what < 0 && sheet < 0 && out.slots.pile === undefined && out.strange === undefined) return undefined
  return out
}

/** True where one of the clause's verbs of breaking is of this kind. */
const brokeBy = (p: Pool, verbs: RegExp): boolean => p.items.some(i => has(i, 'v:break') && verbs.test(i.tokens.map(t => t.norm).join(' ')))

const nearWhat = (p: Pool, k: number, whats: number[]): boolean => {
  for (const w of whats) {
    if (w < 0) continue
    if (w > k && w - k <= 4 && p.items.slice(k + 1, w).every(i => i.num === undefined)) return true
    if (w < k && k - w <= 2) return true
  }
  return false
}

/** Holes closed. */
export const patch = (p: Pool): Found | undefined => {
  const out: Found = { slots: {}, full: false, bias: 0 }
  const verb = p.sense('v:patch')
  const base = verb < 0 ? p.sense('b:patch') : -1
  if (verb < 0 && base < 0) return undefined
  // Spanish "tapar" is to cover and to patch: only holes or tape make it a patch
  const covers = verb >= 0 && has(p.items[verb], 'v:cover')
  const what = p.find(i => has(i, 'what:hole') || has(i, 'what:tear') || has(i, 'what:loose edge'))
  const tape = p.find(i => has(i, 'item:patch tape'))
  if (covers && what < 0 && tape < 0) return undefined
  if (p.find(i => i.sides !== undefined || has(i, 'mat:tires')) >= 0) return undefined
  p.take(verb >= 0 ? verb : base)
  out.order = base >= 0
  const n = p.find(i => i.num !== undefined && (hasCat(i, 'what') || i.unit === undefined))
  if (n >= 0) {
    const i = p.take(n)!
    out.slots.count = i.num
    if (has(i, 'range')) out.vague = true
  }
  if (takeVague(p)) out.vague = out.slots.count === undefined ? undefined : out.vague
  takePile(p, out)
  const where = takeWhere(p)
  if (where) out.slots.where = where
  p.takeAll('what:hole', 'what:tear', 'what:loose edge', 'item:patch tape', 'mat:plastic', 'mat:mesh', 'v:put', 'with', 'v:cover', 'sky:hail', 'each', 'thing:covers', 'v:patch', 'cause:hail', 'cause:wind', 'sky:wind', 'v:break', 'find:good')
  p.takeCat('animal')
  takeColour(p)
  out.full = true
  out.bias! += 0.5
  return out
}

/** Covers walked. */
export const check = (p: Pool): Found | undefined => {
  const out: Found = { slots: {}, full: false, bias: 0 }
  const verb = p.sense('v:check')
  const base = verb < 0 ? p.sense('b:check') : -1
  const good = p.sense('find:good')
  const bad = p.sense('find:trouble')
  const all = p.sense('thing:covers')
  const pile = p.cat('pile')
  if (verb < 0 && base < 0 && !(good >= 0 || bad >= 0)) return undefined
  if (verb < 0 && all < 0 && pile < 0) return undefined
  if (p.find(i => i.num !== undefined || i.sides !== undefined) >= 0) return undefined
  if (verb < 0 && p.find(i => hasCat(i, 'crop') || hasCat(i, 'v') || hasCat(i, 'mat') && !has(i, 'thing:covers')) >= 0) {
    const v = p.find(i => hasCat(i, 'v') && !hasCat(i, 'find') && !has(i, 'v:hold') && !has(i, 'v:have'))
    if (v >= 0) return undefined
  }
  if (verb >= 0) p.take(verb)
  else if (base >= 0) {
    p.take(base)
    out.order = true
  }
  if (bad >= 0) out.slots.finding = 'trouble'
  else if (good >= 0) out.slots.finding = 'good'
  p.takeAll('find:good', 'find:trouble', 'v:check')
  takePile(p, out)
  const rest = p.takeAll('thing:covers', 'mat:plastic', 'mat:mesh', 'mat:tarp', 'mat:tires')
  if (!out.slots.pile && !out.strange) {
    const words = p.items.filter((_, k) => p.used[k]).map(i => i.tokens.map(t => t.norm).join(' ')).join(' ')
    if ((all >= 0 || rest > 0 || p.items.some(i => has(i, 'mat:plastic'))) && !/\b(cover|plastic|sheet|plastico|lona|hule|pila|monton|silo)\b/.test(words)) out.slots.pile = 'all'
    else if (all >= 0 && /\b(covers|piles|plastics|all|plasticos|pilas|lonas|todo|todas|todos|everything|rounds?)\b/.test(words)) out.slots.pile = 'all'
  }
  takeWhere(p, false)
  p.takeAll('v:lift', 'v:hold', 'why:feed', 'thing:face', 'sky:wind', 'what:loose edge', 'm:no')
  takeColour(p)
  out.full = out.slots.finding !== undefined
  return out
}

const SIZES = /^stone:/

/** Weather that came. */
export const weather = (p: Pool): Found | undefined => {
  const out: Found = { slots: {}, full: true, bias: 0 }
  const sky = p.find(i => hasCat(i, 'sky'))
  const warm = sky < 0 ? p.num(['degF']) : -1
  // "got up to 97 degrees", "down to 18": heat and frost by the number
  if (warm >= 0 && (p.items[warm]!.num! >= 85 || p.items[warm]!.num! <= 32) && p.cat('pile') < 0 && p.cat('crop') < 0) {
    const degF = p.take(warm)!.num!
    p.takeAll('v:put', 'v:measure', 'v:have')
    return { slots: { kind: degF >= 85 ? 'heat' : 'freeze', degF }, full: true, bias: 1 }
  }
  if (sky < 0) return undefined
  if (p.find(i => hasCat(i, 'pile') && !has(i, 'where:place')) >= 0 || p.find(i => hasCat(i, 'mat') || hasCat(i, 'crop') || (hasCat(i, 'what') && !hasCat(i, 'sky')) || hasCat(i, 'animal')) >= 0) out.bias! -= 2
  const kind = valueOf(p.items[sky], 'sky')!
  // "blowing": a verb alone is not yet weather without a speed or a time
  out.slots.kind = kind
  p.takeAll(`sky:${kind}`)
  const stone = p.find(i => i.senses.some(s => SIZES.test(s) && s !== 'stone:size'))
  if (stone >= 0) {
    const inches = Number(valueOf(p.take(stone), 'stone'))
    if (kind === 'hail') out.slots.inches = inches
    p.takeAll('stone:size')
  }
  const inch = p.num(['in'])
  if (inch >= 0) out.slots.inches = p.take(inch)!.num
  const ft = p.num(['ft'])
  if (ft >= 0) out.slots.inches = p.take(ft)!.num! * 12
  const mph = p.num(['mph'])
  if (mph >= 0) out.slots.mph = p.take(mph)!.num
  const deg = p.num(['degF'])
  if (deg >= 0) out.slots.degF = p.take(deg)!.num
  const bare = p.num([undefined])
  if (bare >= 0) {
    const clock = p.items[bare]!.num! <= 12 && has(p.items[bare - 1], 'approx') && (kind === 'hail' || p.items[bare + 1] === undefined || !hasCat(p.items[bare + 1], 'unit'))
    if (clock) p.take(bare)
    else if (kind === 'wind') out.slots.mph = p.take(bare)!.num
    else if (kind === 'freeze' || kind === 'heat') out.slots.degF = p.take(bare)!.num
    else if (kind === 'rain' || kind === 'snow') {
      // "rained 2": inches are how rain is told here
      out.slots.inches = p.take(bare)!.num
    }
  }
  if (out.slots.inches !== undefined && p.items[inch]?.num !== undefined && has(p.items[inch], 'range')) out.vague = true
  p.takeAll('v:have', 'v:break', 'v:put', 'vague', 'where:place', 'sky:wind', 'sky:rain', 'v:lift', 'thing:first', 'find:trouble', 'unit:in', 'v:take', 'sky:snow', 'cause:wind', 'cause:hail', 'v:measure', 'v:pitch', 'why:feed', 'ground')
  takeColour(p)
  return out
}

const ITEMS = ['plastic', 'second plastic', 'barrier film', 'mesh', 'tarp', 'tires', 'gravel bags', 'gravel', 'dirt']

/** What was bought, used up, or counted in the shed. */
export const supply = (p: Pool): Found | undefined => {
  const out: Found = { slots: {}, full: false, bias: 0 }
  const buy = p.find(i => has(i, 'v:buy') && !has(i, 'v:put'))
  const buyish = buy >= 0 ? buy : p.find(i => has(i, 'v:buy'))
  const have = p.sense('v:have')
  const use = p.sense('v:use')
  if (buyish < 0 && have < 0 && use < 0) return undefined
  const thing = p.find(i => hasCat(i, 'mat') || hasCat(i, 'item'))
  const sides = p.find(i => i.sides !== undefined)
  if (thing < 0 && sides < 0) return undefined
  if (p.cat('pile') >= 0 || p.sense('v:cover') >= 0) out.bias! -= 2
  const i = thing >= 0 ? p.take(thing)! : undefined
  const item = i ? (valueOf(i, 'mat') ?? valueOf(i, 'item')!) : 'plastic'
  out.slots.item = item
  out.slots.change = use >= 0 && buy < 0 && have < 0 ? 'use' : buy >= 0 || (buyish >= 0 && have < 0) ? 'add' : have >= 0 && buy < 0 ? 'have' : 'add'
  const n = p.num([undefined])
  if (n >= 0) {
    const c = p.take(n)!
    out.slots.count = c.num
    if (has(c, 'range')) out.vague = true
  }
  if (sides >= 0) {
    const s = p.take(sides)!.sides!
    out.slots.widthFt = Math.min(s[0]!, s[1]!)
    out.slots.lengthFt = Math.max(s[0]!, s[1]!)
    if (n < 0) out.slots.count = 1
  }
  p.takeAll('v:buy', 'v:have', 'v:use', 'item:patch tape', 'mat:plastic', 'unit:load')
  if (ITEMS.includes(item) || item === 'patch tape') out.bias! += 0.5
  if (takeVague(p) && out.slots.count === undefined) out.vague = true
  takeWhere(p, false)
  if (p.takeAll('total') > 0) out.total = false
  takeColour(p)
  out.full = out.slots.count !== undefined
  if (!out.full && !out.vague && buyish < 0) return undefined
  return out
}
