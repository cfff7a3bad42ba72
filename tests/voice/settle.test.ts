import { describe, expect, it } from 'vitest'
import { farm } from '../bench/voiceFarm.ts'

type Wordings = [text: string, weight: number][]
/** A note heard on the farm of the bench: quarry is filled with two feeds, ridge is fed from, willow is covered. */
const hear = (wordings: Wordings, on = farm()) => {
  const list = wordings.map(([text, weight]) => ({ text, weight }))
  return { ...on, r: on.tell(list[0]?.text ?? '', { heard: { wordings: list } }) }
}
const pick = ({ tell, r }: ReturnType<typeof hear>, choice: number) => {
  const [reply] = r.replies
  return tell(reply!.choices![choice]!, { pick: { question: reply!.question!, choice } })
}

describe('a voice note that all agree on', () => {
  it('is recorded, and the reply repeats the words', () => {
    const { r } = hear([['put seven loads corn on quarry', 1]])
    expect(r).toMatchObject({ outcome: 'recorded', recorded: [{ type: 'load', count: 7, pile: 'quarry', crop: 'corn silage' }] })
    expect(r.replies[0]!.text).toContain('"put seven loads corn on quarry"')
    expect(r.replies[0]!.text).toContain('7 loads corn silage on quarry')
    expect(r.replies[0]!.plain).toBeUndefined()
  })

  it('in other words with the same meaning too', () => {
    const { r } = hear([
      ['put seven loads corn on quarry', 0.5],
      ['we put seven loads of corn on the quarry pile', 0.5],
    ])
    expect(r.recorded).toHaveLength(1)
  })

  it('answers a question', () => {
    expect(hear([['how is ridge', 1]]).r).toMatchObject({ outcome: 'answered', asks: [{ about: 'status', pile: 'ridge' }] })
  })
})

describe('a note in doubt records nothing', () => {
  const doubtful = (): ReturnType<typeof hear> =>
    hear([
      ['put forty loads corn on quarry', 0.6],
      ['put fourteen loads corn on quarry', 0.4],
    ])

  it('and asks with the candidates, likeliest first', () => {
    const { r } = doubtful()
    expect(r).toMatchObject({ outcome: 'asked', recorded: [] })
    expect(r.replies[0]!.text).toMatch(/40 loads or 14 loads\?$/)
    expect(r.replies[0]!.choices!.slice(0, 2)).toEqual(['40 loads', '14 loads'])
  })

  it.each([0, 1])('the choice tapped is recorded: %s', k => {
    expect(pick(doubtful(), k).recorded).toMatchObject([{ type: 'load', count: [40, 14][k], pile: 'quarry', crop: 'corn silage' }])
  })

  it('a number typed is recorded, "never mind" is not', () => {
    const typed = doubtful()
    expect(typed.tell('14').recorded).toMatchObject([{ count: 14, pile: 'quarry' }])
    const dropped = doubtful()
    expect(dropped.tell('never mind')).toMatchObject({ outcome: 'answered', recorded: [] })
    const yes = doubtful()
    expect(yes.tell('yes').recorded).toMatchObject([{ count: 40 }])
  })

  it.each<[string, Wordings, RegExp]>([
    [
      'piles',
      [
        ['fed 9 thousand off ridge', 0.5],
        ['fed 9 thousand off willow', 0.5],
      ],
      /ridge or willow\?/i,
    ], // prettier-ignore
    [
      'feeds',
      [
        ['put 7 loads corn on quarry', 0.5],
        ['put 7 loads haylage on quarry', 0.5],
      ],
      /corn.* or haylage\?/i,
    ], // prettier-ignore
    [
      'two slots',
      [
        ['put 7 loads corn on quarry', 0.5],
        ['put 11 loads haylage on quarry', 0.5],
      ],
      /which/i,
    ], // prettier-ignore
    [
      'types',
      [
        ['fed 7 loads off ridge', 0.5],
        ['pitched 7 loads off ridge', 0.5],
      ],
      /which/i,
    ], // prettier-ignore
  ])('%s in doubt are asked about', (_, wordings, like) => {
    const got = hear(wordings)
    expect(got.r).toMatchObject({ outcome: 'asked', recorded: [] })
    expect(got.r.replies[0]!.text).toMatch(like)
    expect(pick(got, 1).recorded).toHaveLength(1)
  })

  it('a wording without rival that has too little weight is asked about', () => {
    const got = hear([['put seven loads corn on quarry', 0.4]])
    expect(got.r).toMatchObject({ outcome: 'asked', recorded: [] })
    expect(pick(got, 0).recorded).toMatchObject([{ count: 7 }])
    expect(pick(hear([['put seven loads corn on quarry', 0.4]]), 1)).toMatchObject({ outcome: 'answered', recorded: [] })
  })

  it('words left over are asked about, though all agree', () => {
    expect(hear([['a deer walked on willow and looks do pulled eight feet', 1]]).r.recorded).toEqual([])
  })

  it('what the farm does not see is asked about, however clearly it was heard', () => {
    expect(hear([['put seven hundred loads corn on quarry', 1]]).r).toMatchObject({ outcome: 'asked', recorded: [] })
  })

  it('a doubtful correction is asked about, and replaces what it corrects when it is settled', () => {
    const f = farm()
    f.tell('put 7 loads corn on quarry')
    const got = hear(
      [
        ['make that sixteen', 0.5],
        ['make that sixty', 0.5],
      ],
      f,
    )
    expect(got.r).toMatchObject({ outcome: 'asked', recorded: [], withdrawn: [] })
    expect(pick(got, 0)).toMatchObject({ recorded: [{ count: 16 }], withdrawn: [{ count: 7 }] })
  })

  it('a doubtful setting or undo is better said again', () => {
    const f = farm()
    f.tell('put 7 loads corn on quarry')
    const { r } = hear([['undo', 0.5]], f)
    expect(r).toMatchObject({ recorded: [], withdrawn: [] })
    expect(r.replies[0]!.text).toMatch(/say it again/i)
  })
})

describe('a note is always answered', () => {
  it.each<[string, Wordings]>([
    ['babble', [['go where under something', 1]]],
    ['no words', []],
  ])('%s', (_, wordings) => {
    const { r } = hear(wordings)
    expect(r.recorded).toEqual([])
    expect(r.replies[0]!.text).not.toBe('')
  })

  it('with the reason where it could not be heard', () => {
    const r = farm().tell('', { heard: { wordings: [], trouble: { code: 'voice-too-long', data: { most: 90 } } } })
    expect(r).toMatchObject({ outcome: 'refused', recorded: [] })
    expect(r.replies[0]!.text).toMatch(/90 seconds/)
  })
})
