import type { Segment } from './clauses.ts'
import { has, hasCat, type Item } from './item.ts'
import type { Mood } from './reading.ts'

const LOOKS_LIKE = /^(?:looks?|lookin|looking|feels?) (?:like|to be)\b|^parece\b/
const CAME = /\b(?:hail|rain|snow|thaw|ic)ed\b|\b(?:blew|froze|came|got|had|was|were|cayo|llovio|nevo|helo|hubo)\b/

/** Words that begin with what the sky looks like, with nothing in them that came already. */
const looksAhead = (items: Item[]): boolean => {
  const run = items.flatMap(i => i.tokens.map(t => t.norm)).join(' ')
  return (
    LOOKS_LIKE.test(run) &&
    !CAME.test(run) &&
    items.every(i => !i.date || i.date.ahead === true || /^(?:tonight|tonite|tnite|hoy|esta)/.test(i.tokens[0]!.norm))
  )
}

const TELLING =
  /^(?:log|logged|loggd|write|wrote|written|record|recorded|enter|entered|text|texted|report|reported|apunt\w*|anot\w*|registr\w*|avis\w*)$/

/** "never logged it", "no lo apunté": not the deed is denied but that it was told. */
const deniesTelling = (items: Item[], at: number): boolean => items.slice(at + 1, at + 4).some(i => TELLING.test(i.tokens[0]!.norm))

/** How a clause was meant, by the words of mood in it and before it. `told`: something was told before it in the same message. */
export const moodOf = (items: Item[], from: number, seg: Segment, carried: Mood | undefined, told = false): Mood => {
  let mood: Mood = carried ?? 'fact'
  for (let k = from; k < seg.to; k++) {
    const i = items[k]!
    // "nothing wrong" finds; "nothing fed yet" denies
    if (has(i, 'find:good') && !(has(i, 'm:no') && seg.act !== undefined && seg.act.frame !== 'check' && seg.act.frame !== 'damage'))
      continue
    const inside = k >= seg.from
    if (has(i, 'but')) mood = 'fact'
    if (has(i, 'so') && inside && seg.act?.frame !== 'open') return 'plan'
    if (has(i, 'm:hope')) return 'hope'
    // "si, di 11 mil": yes, not if
    const yes = i.tokens[0]?.norm === 'si' && k === 0 && (has(items[1], 'comma') || /í/.test(i.text))
    if (has(i, 'm:if') && inside && !yes && seg.act?.frame !== 'open') return 'if'
    // "there's nothing left of it" is what empty means; "I never logged it" denies the telling
    const noDenial =
      (seg.act?.frame === 'harvest' && /^faltan?$/.test(i.text.toLowerCase())) ||
      (seg.act?.frame === 'empty' && /^(?:nothing|nada)$/.test(i.text.toLowerCase())) ||
      deniesTelling(items, k)
    if (has(i, 'm:no') && !noDenial) mood = 'denial'
    // "from the neighbor" says where, "neighbor says" who
    // "bo says they took 1,200 lb": of the crew; "7 loads, i guess": only a little unsure
    const ofCrew = hasCat(items[k - 1], 'person') && seg.act?.frame !== 'weather'
    const guess = /^(?:i )?(?:guess|think|reckon)$/.test(i.text.toLowerCase()) && items.slice(seg.from, k).some(x => x.num !== undefined)
    if (
      has(i, 'm:tell') &&
      mood === 'fact' &&
      seg.act?.frame !== 'test' &&
      !ofCrew &&
      !guess &&
      !items.slice(Math.max(0, k - 2), k).some(x => has(x, 'off'))
    )
      mood = 'hearsay'
    // "5 loads, luego otros 3": then, not later
    const then =
      told && has(i, 'and') && (from > 0 || has(items[k + 1], 'more')) && items.slice(from, k).every(x => has(x, 'and') || has(x, 'comma'))
    // "we should be feeding 80 a head"
    if (mood === 'fact' && /^should/.test(i.tokens[0]?.norm ?? '') && (hasCat(items[k + 1], 'v') || hasCat(items[k + 1], 'b')))
      mood = 'plan'
    // "looks like rain", "looks like hail tonight" look ahead; "looks like it hailed last night" looks back
    if (mood === 'fact' && inside && seg.act?.frame === 'weather' && looksAhead(items.slice(k, seg.to))) mood = 'plan'
    // "opened lane, going to feed out of it": opened already
    const purpose = seg.act?.frame === 'open' && seg.act.slots.why !== undefined && items.slice(seg.from, k).some(x => has(x, 'v:open'))
    if (purpose) continue
    if (has(i, 'm:plan') && mood === 'fact' && !has(i, 'approx') && !then) mood = 'plan'
    if (i.date?.ahead && mood === 'fact') mood = 'plan'
  }
  // "putting the net on after lunch": on the way, not done
  const going = (i: Item): boolean => hasCat(i, 'v') && /ing?$/.test(i.tokens[0]!.norm)
  if (mood === 'fact' && items.some((i, k) => k >= seg.from && k < seg.to && going(i))) {
    const run = items
      .slice(seg.from, seg.to)
      .flatMap(i => i.tokens.map(t => t.norm))
      .join(' ')
    if (/\b\w+in[g]?\b.*\b(after (lunch|dinner|supper|chores|milking)|later|this afternoon|in a bit|in a minute)\b/.test(run)) return 'plan'
  }
  return mood
}
