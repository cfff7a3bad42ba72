import { has, hasCat, valueOf } from '../item.ts'
import type { Pool } from '../pool.ts'
import { laidWithout } from './laid.ts'
import { counted, countOf, isTwin, isUnder, movedOver, SHEETS, sidesBy } from './sheets.ts'
import { type Found, inFt, isAway, takeColour, takePile, takeVague } from './slots.ts'
import { takeWhere } from './where.ts'

const THROWN = /^(?:threw|throwed|through|tossed|chucked|kicked|pitched|flung|slung|tire|tiramos|aventamos|avente)$/i
const ARTICLE = /^(?:the|an?|this|that|my|our|el|la|un|una)$/i
const SIDES = /^(?:north|south|east|west|norte|sur|este|oeste)$/i

/** "todavia no le ponemos llantas": a denial behind the pause, close before what is not laid yet. */
const deniedBefore = (p: Pool, at: number): boolean => {
  const pause = p.items.findLastIndex((i, k) => k < at && has(i, 'comma'))
  return pause > 0 && at - pause <= 6 && p.items.slice(pause, at).some(i => has(i, 'm:no'))
}

/** Sheets, mesh and weights laid on, taken off or rolled back. One slot set for each material. */
export const cover = (p: Pool): Found | undefined => {
  const out: Found = { slots: {}, full: false, bias: 0, several: [] }
  if (p.cat('mat') < 0 && p.sense('v:cover', 'v:uncover', 'v:roll') < 0 && p.find(i => i.sides !== undefined) < 0) return undefined
  const moved = movedOver(p)
  if (moved) return moved
  const roll = p.sense('v:roll')
  const bare = p.sense('v:uncover')
  const verb = p.sense('v:cover')
  // "lifted the net off lane": a sheet or net that people lift is taken off
  const take = p.find(i => has(i, 'v:take') || (has(i, 'v:lift') && p.find(isAway) >= 0))
  const put = p.find(
    i =>
      has(i, 'v:put') ||
      // "used 40 bags around the bottom": laid there; "arrimamos tierra"
      (has(i, 'v:use') && p.find(x => has(x, 'prepWhere') && /^(?:around|along|alrededor)$/.test(x.text.toLowerCase())) >= 0) ||
      (has(i, 'v:push') && p.sense('mat:dirt', 'mat:gravel') >= 0),
  )
  const base = p.sense('b:cover', 'b:uncover', 'b:roll', 'b:take')
  // "got the 50x150 pulled over": only a sheet has sides and is pulled over
  const pulled = p.items.findIndex(
    (i, k) => has(i, 'v:take') && /^(?:over|across|encima)$/i.test(p.items[k + 1]?.text ?? '') && p.items.slice(0, k).some(x => x.sides),
  )
  const back = p.sense('back')
  // "la orilla del plastico" says where
  const mats = p.items
    .map((i, k) => ({ i, k }))
    .filter(
      ({ i, k }) =>
        hasCat(i, 'mat') &&
        !isTwin(p, k) &&
        !(k > 2 && isUnder(p, k)) &&
        !(k > 1 && has(p.items[k - 1], 'off') && /^(?:orillas?|bordes?|edges?|lados?)$/.test(p.items[k - 2]!.text.toLowerCase())),
    )
  const first = mats[0]
  const trailing = first ? p.items.slice(first.k + 1, first.k + 3) : []
  // "mesh off lane", "sheet is on", "30 gravel bags on lane edge": no verb, but no doubt either
  const { isOn, gotOn, verbless } = laidWithout(p, mats, trailing, take < 0 && put < 0 && roll < 0)
  if (roll < 0 && bare < 0 && verb < 0 && pulled < 0 && !verbless && (mats.length === 0 || (take < 0 && put < 0 && base < 0)))
    return undefined
  // "pulled the mesh off and laid 45 bags": two deeds
  const then = Math.max(put, roll)
  const rolledOn =
    roll > take && first !== undefined && first.k < roll && p.items.slice(take, roll).some(i => has(i, 'and') || has(i, 'comma'))
  if (take >= 0 && then > take && first !== undefined && first.k < then && (rolledOn || mats.some(x => x.k > then))) return undefined
  // "rolled the plastic back 4 ft and pulled 14 tires"
  const after = Math.max(take, put)
  if (
    roll >= 0 &&
    after > roll &&
    first !== undefined &&
    first.k < after &&
    mats.some(x => x.k > after) &&
    p.items.slice(roll, after).some(i => has(i, 'and') || has(i, 'comma'))
  )
    return undefined
  // "mesh off barn, rolled plastic bk 4'"
  if (roll >= 0 && first !== undefined && first.k < roll && mats.some(x => x.k > roll) && has(p.items[first.k + 1], 'off')) return undefined
  // "got the plastic on, no tires on it yet": the second is denied, the first is not
  if (
    mats.some(
      x =>
        x.k > (first?.k ?? 0) &&
        (has(p.items[x.k - 1], 'm:no') || deniedBefore(p, x.k)) &&
        p.items.slice(first!.k, x.k).some(i => has(i, 'comma') || has(i, 'but')),
    )
  )
    return undefined
  // "plastic rolled back 10 ft, 26 tires off": two deeds
  if (
    roll >= 0 &&
    mats.some(x => x.k > roll && counted(valueOf(x.i, 'mat')!) && isAway(p.items[x.k + 1] ?? x.i)) &&
    mats.some(x => SHEETS.has(valueOf(x.i, 'mat')!))
  )
    return undefined
  // "storm took the tires off": nobody did
  if (
    take >= 0 &&
    p.items.slice(0, take).some(i => hasCat(i, 'animal') || hasCat(i, 'sky') || /^(?:storm|tormenta|temporal)$/i.test(i.text))
  )
    return undefined
  if (
    take >= 0 &&
    has(p.items[take], 'v:lift') &&
    !has(p.items[take], 'v:take') &&
    !/^(?:lift|levant|alz|peel|pick)/i.test(p.items[take]!.text)
  )
    return undefined
  // "took my truck to the shop, 4 new tires": brought there, nothing is taken off
  const going = p.cat('pile')
  if (
    take >= 0 &&
    going > take &&
    /^to$/i.test(p.items[has(p.items[going - 1], 'filler') && !has(p.items[going - 1], 'on') ? going - 2 : going - 1]?.text ?? '') &&
    p.find(isAway) < 0
  )
    return undefined
  // "got the plastic pulled": over it, not off
  if (
    take > (first?.k ?? take) &&
    p.items.slice(0, first!.k).some(i => /^(?:got|get)$/i.test(i.text)) &&
    p.find(isAway) < 0 &&
    pulled < 0 &&
    p.find(i => /^over$/i.test(i.text)) < 0
  )
    return undefined
  // "plastic stuck down by the ice" tells how it is
  if (put >= 0 && /^stuck$/.test(p.items[put]!.tokens[0]?.norm ?? '') && first !== undefined && first.k < put) return undefined
  if (verb < 0 && roll < 0 && bare < 0 && p.sense('cause:ice') >= 0) return undefined
  // "pulled 20 tires out of the shed", "brought some bags home from town": the stock, not a pile
  if (
    p.cat('pile') < 0 &&
    (p.sense('thing:home') >= 0 ||
      (take >= 0 && p.find((i, k) => /^(?:shed|barn|bodega|galera|galeron)$/.test(i.text.toLowerCase()) && p.relation(k) === 'off') >= 0))
  )
    return undefined
  // "rolled it back 8 ft on shop", "rolled back another 8 ft": nothing but a sheet is rolled back so far
  // "peeled 2 1/2 ft off shop": the face
  if (mats.length === 0 && roll >= 0 && /^peeled$/i.test(p.items[roll]!.text) && p.find(isAway) > roll) return undefined
  const rolledFar = roll >= 0 && p.num(['ft']) >= 0 && (/back|atras/.test(p.items[roll]!.text) || back > roll)
  if (mats.length === 0 && roll >= 0 && verb < 0 && bare < 0 && !rolledFar) return undefined
  // "tires rolled off": they did that by themselves
  if (roll >= 0 && verb < 0 && first !== undefined && first.k < roll && mats.every(x => counted(valueOf(x.i, 'mat')!))) return undefined
  const noWord = verbless && roll < 0 && bare < 0 && verb < 0 && take < 0 && put < 0
  if (p.find(i => hasCat(i, 'what') && !has(i, 'what:loose edge') && !hasCat(i, 'v') && !hasCat(i, 'mat')) >= 0) return undefined
  if (p.find(i => hasCat(i, 'crop') && !hasCat(i, 'mat')) >= 0 && verb < 0 && mats.length === 0) return undefined
  const ft = p.num(['ft', 'in'])
  const rolled = noWord
    ? trailing.some(i => has(i, 'back')) && !isOn && !gotOn
    : (put >= 0 && ft >= 0 && back >= 0 && /atras|tras$/.test(p.items[back]!.text.toLowerCase())) ||
      (roll >= 0 &&
        (ft >= 0 ||
          has(p.items[roll + 1], 'back') ||
          /back|atras|enroll|roll/.test(p.items[roll]!.text) ||
          (has(p.items[roll], 'v:roll') && !has(p.items[roll], 'v:take'))) &&
        verb < 0)
  // "pulled the mesh back off" is off, "put the mesh back on" is on, "rolled 6 ft back" is back
  // "pulled a sheet over north"
  const over =
    pulled >= 0 || p.find((i, k) => /^(over|encima|sobre)$/.test(i.tokens[0]?.norm ?? '') && first !== undefined && k > first.k) >= 0
  const off =
    !over &&
    (bare >= 0 ||
      (take >= 0 && !rolled && verb < 0) ||
      // "baje 16 llantas": weights are taken down
      (put >= 0 && /^(?:le )?baj/.test(p.items[put]!.text.toLowerCase()) && mats.every(x => counted(valueOf(x.i, 'mat')!))) ||
      // "threw sixteen tires off to the side"
      (put >= 0 && THROWN.test(p.items[put]!.text) && trailing.some(isAway)) ||
      (verb < 0 &&
        put < 0 &&
        !rolled &&
        (noWord ? trailing.some(i => /^(?:off|menos|less|fewer)/.test(i.tokens[0]!.norm)) : p.sense('off') >= 0)))
  // a net is rolled up to be put away, a sheet to feed on
  const putAway =
    first !== undefined && valueOf(first.i, 'mat') === 'mesh' && ft < 0 && back < 0 && roll >= 0 && !/back|atras/.test(p.items[roll]!.text)
  // "2 dozen tires back on barn": weights are laid back, no sheet is rolled
  const laidBack = noWord && mats.every(x => counted(valueOf(x.i, 'mat')!)) && trailing.some(i => has(i, 'back')) && p.sense('on') >= 0
  // "destape 6 pies": uncovered so far is rolled back
  const change =
    bare >= 0 && ft >= 0 && verb < 0
      ? 'back'
      : putAway && put < 0
        ? 'off'
        : laidBack
          ? 'on'
          : rolled && !(take >= 0 && off && ft < 0 && back < 0)
            ? put >= 0 && back >= 0 && ft < 0
              ? 'on'
              : 'back'
            : off
              ? 'off'
              : 'on'
  p.takeAll('v:cover', 'v:uncover', 'v:roll', 'v:put', 'v:take', 'b:cover', 'b:uncover', 'b:roll', 'v:use', 'v:lift', 'v:push')
  out.order = verb < 0 && bare < 0 && roll < 0 && take < 0 && put < 0 && !noWord
  takePile(p, out)
  // "covered south with the 50x150": no pile we know, and no side of one
  const named = verb >= 0 && out.slots.pile === undefined && out.strange === undefined ? p.items[verb + 1] : undefined
  if (
    named &&
    has(named, 'where:place') &&
    p.free(verb + 1) &&
    SIDES.test(named.text) &&
    (!has(p.items[verb + 2], 'where:place') || has(p.items[verb + 2], 'with'))
  ) {
    p.take(verb + 1)
    out.strange = named.text.toLowerCase()
  }
  // "covered ridge with a 40x100": a pile that nobody knows
  const stranger = verb >= 0 && out.slots.pile === undefined && out.strange === undefined ? p.items[verb + 1] : undefined
  if (
    stranger &&
    stranger.senses.length === 0 &&
    stranger.num === undefined &&
    stranger.tokens[0]!.kind === 'word' &&
    has(p.items[verb + 2], 'with')
  ) {
    p.take(verb + 1)
    out.strange = stranger.text.toLowerCase()
  }
  for (let k = 1; k < p.items.length; k++) if (isTwin(p, k)) p.take(k)
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
    // "gravel bags we put thirty two of them on"
    const them =
      mats.length === 1 && counted(material)
        ? p.num(
            [undefined],
            (_, j) =>
              j > k &&
              /^(?:of|de)$/i.test(p.items[j + 1]?.text ?? '') &&
              /^(?:them|em|those|ellos|ellas|esos|esas)$/i.test(p.items[j + 2]?.text ?? ''),
          )
        : -1
    const n = countOf(p, k) ?? p.take(them)?.num
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
  if (
    s >= 0 &&
    (verb >= 0 || noWord || pulled >= 0 || (put >= 0 && change === 'on')) &&
    !out.several!.some(o => SHEETS.has(o.material as string) && o.widthFt !== undefined)
  ) {
    const d = p.take(s)!.sides!
    const sheet = out.several!.find(o => SHEETS.has(o.material as string))
    const size = { widthFt: Math.min(d[0]!, d[1]!), lengthFt: Math.max(d[0]!, d[1]!) }
    // "barrier film on creek then 50x150": a sheet of its own
    const own = sheet?.material === 'barrier film' && p.items.slice(first?.k ?? 0, s).some(i => has(i, 'and'))
    if (sheet && !own) Object.assign(sheet, size)
    else out.several!.splice(own ? out.several!.indexOf(sheet) + 1 : 0, 0, { material: 'plastic', change: 'on', ...size })
  }
  // "gonna cover creek": the verb, though a sheet is called so too
  const toCover =
    base >= 0 && has(p.items[base], 'b:cover') && hasCat(p.items[base + 1], 'pile') && !ARTICLE.test(p.items[base - 1]?.text ?? '')
  // "covered north", "covered north with 240 tires": a sheet went on
  const onTop = verb >= 0 && /^(?:encima|arriba)$/.test(p.items[verb]!.text.toLowerCase()) && out.several!.length > 0
  if ((verb >= 0 || toCover) && !onTop && !out.several!.some(o => SHEETS.has(o.material as string) || o.material === 'mesh'))
    out.several!.unshift({ material: 'plastic', change: 'on' })
  if (rolledFar && verb < 0 && bare < 0 && !out.several!.length) {
    const d = p.take(p.num(['ft']))!
    out.implied = true
    out.several!.push({ material: 'plastic', change: 'back', ft: inFt(d) })
  }
  if (bare >= 0 && !out.several!.length) {
    const far = change === 'back' && ft >= 0 ? inFt(p.take(ft)!) : undefined
    out.implied = far === undefined
    out.several!.push(far === undefined ? { material: 'plastic', change: 'off' } : { material: 'plastic', change: 'back', ft: far })
  }
  if (takeVague(p)) vague = true
  if (vague) out.vague = true
  if (p.sense('total') >= 0) out.total = true
  p.takeAll('back', 'total', 'what:loose edge', 'thing:face', 'm:tell', ...(noWord ? ['thing:gone'] : []))
  takeWhere(p, false)
  takeColour(p)
  if (!out.several!.length) return undefined
  out.full = true
  if (verb >= 0 || roll >= 0 || bare >= 0) out.bias! += 1
  return out
}
