import { has, hasCat, type Item, valueOf } from '../item.ts'
import { isThin, type Pool } from '../pool.ts'
import { type Found, isAway, takeColour, takePile, takeVague } from './slots.ts'
import { takeWhere } from './where.ts'

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
  // "a hole in my jeans": the teller's own
  if (p.cat('pile') < 0 && p.find((i, k) => /^(?:my|mi|mis|his|her)$/i.test(i.text) && p.items[k + 1]?.senses.length === 0) >= 0)
    return undefined
  // "dirt on creek edges": an edge alone is where
  const plain = what >= 0 && /^edges?$/i.test(p.items[what]!.text) && animal < 0 && broke < 0 && lift < 0
  if (plain && p.find(i => hasCat(i, 'cause') || hasCat(i, 'sky') || has(i, 'find:trouble')) < 0 && !p.items.some(i => i.ghost))
    return undefined
  // "quarter size hail 20 min ago, don't see any holes": the weather by itself, and no harm behind the pause
  const denied = what > 0 ? p.items.findLastIndex((i, k) => k < what && has(i, 'm:no')) : -1
  if (denied > 0 && p.items.slice(0, denied).some(i => has(i, 'comma')) && p.items.slice(0, denied).some(i => hasCat(i, 'sky')))
    out.bias! -= 4
  // "barn roof is leaking on the heifers": a thing with the pile's name before it
  const named = p.cat('pile')
  const thing = named >= 0 && named <= 1 ? p.items[named + 1] : undefined
  if (
    thing &&
    !thing.senses.length &&
    /^[a-z]{3,}$/i.test(thing.text) &&
    p.items[named + 2] &&
    p.cat('mat') < 0 &&
    p.relation(named) === undefined &&
    has(p.items[named + 2], 'filler')
  )
    return undefined
  // "put the mesh back on"
  if (p.sense('v:put') >= 0 && p.sense('mat:mesh', 'mat:tires') >= 0 && broke < 0 && lift < 0 && animal < 0) return undefined
  // "el aire levanto la orilla de la calf side": an edge that was lifted is loose
  const edge = lift >= 0 && p.find(i => /^(?:orilla|borde|edge|esquina|corner|punta|tapa|lona)$/.test(i.tokens[0]?.norm ?? '')) >= 0
  const harm =
    edge ||
    (what >= 0 && !(has(p.items[what], 'v:take') && animal < 0 && sheet < 0)) ||
    ((animal >= 0 || sheet >= 0) &&
      ((broke >= 0 && !(animal < 0 && /^(?:found|fnd)$/.test(p.items[broke]!.text.toLowerCase()))) || lift >= 0))
  // "coons got in again": no cover is named, but nothing else is meant either
  const inAgain =
    animal >= 0 &&
    broke >= 0 &&
    /^(got in|got into|was in|were in|been in|been at|in again|at it|se metio|se metieron|been on|snuck in)$/.test(
      p.items[broke]!.tokens.map(t => t.norm).join(' '),
    ) &&
    p.items.every(i => i.senses.length > 0)
  if (!harm && !inAgain) return undefined
  // "lifted the net off lane": people did that; the wind would be named
  const byHand =
    lift >= 0 &&
    sheet > lift &&
    p.find((i, k) => k > sheet && isAway(i)) > sheet &&
    p.items.slice(0, lift).every(isThin) &&
    /^lift/.test(p.items[lift]!.tokens[0]!.norm)
  if (byHand) return undefined
  if (isTwoKinds(p)) return undefined
  // "pulled the mesh off barn and saw 3 holes": two deeds
  if (laysBefore(p, Math.min(...[what, animal].filter(k => k >= 0)))) return undefined
  // "wind 40 mph" is weather; wind at a sheet is damage
  const hole = p.find(i => has(i, 'what:hole'))
  const tear = p.find(i => has(i, 'what:tear'))
  const loose = p.find(i => has(i, 'what:loose edge'))
  const wet = p.find(i => has(i, 'what:water') && (!hasCat(i, 'dm') || !p.items.some(x => x.num !== undefined)))
  if (edge && hole < 0 && tear < 0) out.slots.what = 'loose edge'
  let kind = hole >= 0 ? hole : tear >= 0 ? tear : loose >= 0 ? loose : wet
  if (kind >= 0) {
    out.slots.what = hole >= 0 ? 'hole' : tear >= 0 ? 'tear' : loose >= 0 ? 'loose edge' : 'water'
    // the number stands right before the kind of harm: "2 tears", "a dozen little holes"
    const noun = p.items.findIndex((i, k) => p.free(k) && whatOf(i) === out.slots.what && i.num !== undefined)
    if (noun >= 0) kind = noun
  }
  // "tore shop": what came of it is said by the verb alone
  if (kind >= 0 && kind === tear && p.items[tear]!.num === undefined && has(p.items[tear], 'v:break')) out.implied = true
  // sky and cause before number, so that "hail poked 12 holes" keeps its count
  if (animal >= 0) {
    out.slots.cause = 'animal'
    const a = valueOf(p.items[animal], 'animal')!
    if (a !== 'animal') out.slots.animal = a
    p.take(animal)
    // "two cats made a hole": how many they were is not kept
    const many = p.items[animal - 1]
    if (many && p.free(animal - 1) && many.num !== undefined && many.unit === undefined && broke > animal && what > broke)
      p.take(animal - 1)
  }
  // "wind last nite, edge come loose": the weather is told by itself first
  const pause = p.items.findIndex((i, k) => k > 0 && has(i, 'comma') && p.items.slice(0, k).some(x => x.date !== undefined))
  if (
    pause > 0 &&
    (what > pause || lift > pause) &&
    p.items.slice(0, pause).every(i => hasCat(i, 'sky') || i.date !== undefined || isThin(i))
  )
    out.bias! -= 3
  // "no hail, but the wind lifted the edge": what is denied did no harm
  const but = p.items.findIndex((i, k) => has(i, 'but') && p.items.slice(0, k).some(x => has(x, 'm:no')))
  const cause = p.find(i => hasCat(i, 'cause') || has(i, 'sky:hail') || has(i, 'sky:wind') || has(i, 'sky:freeze'), Math.max(0, but))
  if (cause >= 0) {
    const i = p.take(cause)!
    const c = valueOf(i, 'cause') ?? (has(i, 'sky:hail') ? 'hail' : has(i, 'sky:wind') ? 'wind' : 'ice')
    if (out.slots.cause === undefined || (c === 'machine' && animal < 0)) out.slots.cause = c
  }
  const stone = p.find(i => hasCat(i, 'stone') && valueOf(i, 'stone') !== 'size')
  if (stone >= 0 && out.slots.cause === 'hail') {
    out.slots.inches = Number(valueOf(p.take(stone), 'stone'))
    p.takeAll('stone:size')
  }
  // "granizo de 2 pulgadas y le abrio 6 hoyos"
  const inch = out.slots.cause === 'hail' && out.slots.inches === undefined ? p.num(['in'], (_, k) => Math.abs(k - cause) <= 3) : -1
  if (inch >= 0) out.slots.inches = p.take(inch)!.num
  out.slots.cause ??= 'unknown'
  if (!out.slots.what) {
    out.implied = true
    if (lift >= 0) out.slots.what = 'loose edge'
    else if (
      brokeBy(
        p,
        /^(tore|ripped|shredded|sliced|cut|corto (?:el|la)|cortaron el|tore up|tore open|ripped open|ripped up|rasg\w*|rompi\w*|se rompio|se rajo|raj\w*|destroz\w*|despedaz\w*)$/,
      )
    )
      out.slots.what = 'tear'
    else if (
      brokeBy(p, /^(put holes in|poked|punched|poked thru|poked through|punctured|pecked|poncho|poncharon|pic\w+|agujer\w*|perfor\w*)$/)
    )
      out.slots.what = 'hole'
  }
  // "holes in the bottom edge": the edge is where
  const isWhere = loose >= 0 && out.slots.what !== 'loose edge' && has(p.items[loose], 'where:place')
  for (const k of [hole, tear, isWhere ? -1 : loose, wet]) p.take(k)
  const counted = p.find(
    (i, k) =>
      i.num !== undefined &&
      (i.unit === undefined || i.unit === 'head') &&
      !has(i, 'dm') &&
      (valueOf(i, 'what') !== undefined ||
        PLACES.test(p.items[k + 1]?.text ?? '') ||
        (loose === k + 1 && hole < 0 && tear < 0) ||
        nearWhat(p, k, [hole, tear])),
  )
  const numbered = kind >= 0 && p.items[kind]!.num !== undefined ? p.items[kind]! : undefined
  if (numbered) {
    out.slots.count = numbered.num
    p.take(kind)
  } else if (counted >= 0) {
    // "ripped the plastic in two places"
    if (PLACES.test(p.items[counted + 1]?.text ?? '')) p.take(counted + 1)
    out.slots.count = p.take(counted)!.num
  }
  if (numbered && has(numbered, 'range')) out.vague = true
  // how long a tear is: told, but not kept
  if (out.slots.what === 'tear' || out.slots.what === 'hole') p.take(p.num(['ft', 'in']))
  takePile(p, out)
  p.takeAll('mat:plastic', 'mat:mesh', 'mat:tarp', 'mat:second plastic')
  // the edge that came loose is what it is, not where
  const not = out.slots.what === 'loose edge' ? /^(edge|orilla|borde|plastic|plastico)$/ : undefined
  // "was up on top, made 3 holes by the wall": where the holes are
  const where = (kind >= 0 ? takeWhere(p, true, not, kind) : undefined) ?? takeWhere(p, true, not)
  if (where) out.slots.where = where
  p.takeAll(
    'v:break',
    'v:lift',
    'v:take',
    'v:put',
    'v:have',
    'v:check',
    'back',
    'v:push',
    'v:pack',
    'what:tear',
    'what:loose edge',
    'find:trouble',
    'thing:covers',
    'v:cover',
    'cause:machine',
    'sky:wind',
    'cause:wind',
    'v:open',
    'v:roll',
    'v:uncover',
    'unit:bucket',
    'unit:load',
    'animal:animal',
    'v:pitch',
    'v:feed',
    'where:place',
    'animal:bird',
    'animal:raccoon',
    'unit:tractor',
    'unit:head',
  )
  if (takeVague(p)) {
    // "some holes" is damage without a count: that is no doubt about the record
  }
  takeColour(p)
  out.noVerb = broke < 0 && lift < 0 && !p.items.some(i => !i.ghost && hasCat(i, 'v') && !hasCat(i, 'what'))
  // "the holes in barn": those that were told, and no others
  const those =
    out.noVerb &&
    out.slots.cause === 'unknown' &&
    out.slots.count === undefined &&
    hole >= 0 &&
    KNOWN_ONES.test(p.items[hole - 1]?.text ?? '')
  out.full = (out.slots.what !== undefined || animal >= 0) && !those
  if (sheet >= 0 || what >= 0) out.bias! += 0.5
  if (what < 0 && sheet < 0 && !inAgain && out.slots.pile === undefined && out.strange === undefined) return undefined
  return out
}

const PLACES = /^(?:places|spots|lugares|partes|lados)$/i
const KNOWN_ONES = /^(?:the|those|them|los|esos)$/i
const KINDS_OF_HARM = ['what:hole', 'what:tear', 'what:water']
/** "2 tears and a loose edge": harm of two kinds, the second behind its "and". */
const isTwoKinds = (p: Pool): boolean => {
  const first = p.find(i => KINDS_OF_HARM.some(s => has(i, s)) && !hasCat(i, 'v'))
  if (first < 0) return false
  const kind = whatOf(p.items[first]!)
  return (
    p.find((i, k) => {
      if (
        k < first + 2 ||
        !hasCat(i, 'what') ||
        hasCat(i, 'v') ||
        whatOf(i) === kind ||
        (has(i, 'where:place') && !/\s/.test(i.text.trim()))
      )
        return false
      const lead = p.items[k - 1]
      const own = i.num !== undefined || /^(?:an?|una?)$/i.test(lead?.text ?? '')
      const at = /^(?:an?|una?)$/i.test(lead?.text ?? '') ? k - 2 : k - 1
      return own && (has(p.items[at], 'and') || has(p.items[at], 'comma'))
    }) >= 0
  )
}

/** A verb of laying or taking, what it took, and an "and", all before what was found. */
const laysBefore = (p: Pool, what: number): boolean => {
  const verb = p.find(i => has(i, 'v:take') || has(i, 'v:put') || has(i, 'v:cover') || has(i, 'v:roll'))
  if (verb < 0 || what < verb || !Number.isFinite(what)) return false
  const mat = p.find((i, k) => k > verb && hasCat(i, 'mat'))
  return mat > verb && what > mat && p.items.slice(mat, what).some(i => has(i, 'and'))
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
