import type { Chat } from 'grammy/types'
import { beforeEach, describe, expect, it } from 'vitest'
import { eventsOf } from '../../src/book/book.ts'
import { alone, INES, NOBODY, TOMAS, YARD } from './telegramBench.ts'
import { api, book, house, ines, quiet, settleIn, tell, texts, useHouse, yard } from './telegramHouse.ts'

useHouse()
const me = { id: 700123456, is_bot: true, first_name: 'Pilehand', username: 'creekhand_bot' }
const membership = (chat: Chat, from: typeof INES, was: string, now: string): void =>
  api.push({
    my_chat_member: {
      chat,
      from,
      date: 1,
      old_chat_member: { user: me, status: was },
      new_chat_member: { user: me, status: now },
    },
  } as never)

describe('quiet in the group', () => {
  beforeEach(settleIn)

  it('a plain log gets a sign on the message, and no words', async () => {
    const { said, id } = await yard(TOMAS, 'put 7 loads corn on creek')
    expect(said).toEqual([])
    expect(api.reactions(YARD.id, id)).toEqual(['✍'])
    expect(eventsOf(book(), 'load').map(l => l.event.count)).toEqual([7])
  })

  it('where signs are not allowed, or the message is gone, it is said', async () => {
    api.noReactions.add(YARD.id)
    expect((await yard(TOMAS, 'put 7 loads corn on creek')).said).toEqual(['7 loads corn silage on creek.'])
  })

  it('the total is said every so many loads, as the owner set it', async () => {
    expect((await yard(TOMAS, 'put 7 loads corn on creek')).said).toEqual([])
    expect((await yard(TOMAS, 'put 4 loads corn on creek')).said).toEqual(['4 loads corn silage on creek. 11 so far.'])
    expect((await yard(TOMAS, 'put 5 loads corn on creek')).said).toEqual([])
    expect((await yard(TOMAS, 'how many loads today')).said[0]).toContain('16 loads')
    expect((await ines('total every 5 loads')).said[0]).toContain('every 5 loads')
    expect((await yard(TOMAS, 'put 3 loads corn on creek')).said).toEqual([])
    expect((await yard(TOMAS, 'put 2 loads corn on creek')).said).toEqual(['2 loads corn silage on creek. 21 so far.'])
    expect((await ines('no totals')).said[0]).toContain('No running totals')
    expect((await yard(TOMAS, 'put 6 loads corn on creek')).said).toEqual([])
    expect((await tell(alone(TOMAS), TOMAS, 'total cada viaje')).said[0]).toMatch(/owner|dueño/)
  })

  it('what was filled in, worked out, dated or spelled otherwise is said', async () => {
    for (const text of [
      'put 7 loads corn',
      'put 7 loads corn on creak',
      'put a dozen loads corn on creek',
      'put 3 loads corn on creek yesterday',
    ])
      expect((await yard(INES, text)).said, text).toHaveLength(1)
    expect((await yard(INES, 'new pile called ridge, 20 by 40')).said).toHaveLength(1)
  })

  it('talk gets nothing; a question and its answer stand under the message they belong to', async () => {
    const talk = await yard(TOMAS, 'who took my coffee')
    expect([talk.said, api.reactions(YARD.id, talk.id)]).toEqual([[], []])
    const { said, id } = await yard(TOMAS, 'put some loads of corn on creek')
    expect(said).toHaveLength(1)
    const under = () => api.calls.findLast(c => c.method === 'sendMessage')!.payload.reply_parameters
    expect(under()).toMatchObject({ message_id: id })
    const typed = await yard(TOMAS, '6')
    expect(typed.said).toEqual(['6 loads corn silage on creek.'])
    expect(under()).toMatchObject({ message_id: typed.id })
  })

  it('an edit corrects the record and says so, under the message', async () => {
    const { id } = await yard(TOMAS, 'put 7 loads corn on creek')
    api.edit(YARD, TOMAS, id, 'put 6 loads corn on creek')
    await quiet()
    expect(texts(YARD).at(-1)).toBe('Now 6 loads corn silage on creek (was 7).')
    expect(eventsOf(book(), 'load').map(l => l.event.count)).toEqual([6])
    // An edit of the spelling changes nothing, and is not worth a word.
    api.edit(YARD, TOMAS, id, 'Put 6 loads of corn on creek.')
    await quiet()
    expect(texts(YARD).at(-1)).toContain('Now 6')
  })

  it('an edit reaches what its question was answered with, and what was corrected since', async () => {
    const { id } = await yard(TOMAS, 'put some loads of corn on creek')
    await yard(TOMAS, '6')
    api.edit(YARD, TOMAS, id, 'put some loads of corn on creek.')
    await quiet()
    expect(eventsOf(book(), 'load').map(l => l.event.count)).toEqual([6])
    await yard(TOMAS, 'make that 5')
    api.edit(YARD, TOMAS, id, 'put 8 loads of corn on creek')
    await quiet()
    expect(eventsOf(book(), 'load').map(l => l.event.count)).toEqual([8])
    await yard(TOMAS, 'put some loads of corn on creek')
    const answer = await yard(TOMAS, '3')
    api.edit(YARD, TOMAS, answer.id, '4')
    await quiet()
    expect(eventsOf(book(), 'load').map(l => l.event.count)).toEqual([8, 4])
  })
})

describe('a group', () => {
  const BARN: Chat = { id: -2002, type: 'supergroup', title: 'barn' }
  beforeEach(settleIn)

  it('is told at set-up what is heard there, with privacy on and as an administrator', async () => {
    expect(texts(YARD)[0]).toContain('shown only commands')
    api.admin.add(BARN.id)
    expect((await tell(BARN, INES, '/here')).said[0]).toContain('shown all that is said')
  })

  it('says how to begin to one of the farm who puts us in, and nothing to anybody else', async () => {
    membership(BARN, NOBODY, 'left', 'member')
    await quiet()
    expect(texts(BARN)).toEqual([])
    membership(BARN, TOMAS, 'left', 'member')
    await quiet()
    membership(BARN, INES, 'left', 'member')
    await quiet()
    expect(texts(BARN)).toHaveLength(2)
    expect(texts(BARN)[1]).toContain('/here')
  })

  it('that puts us out, or is let go by the owner, hears nothing more', async () => {
    membership(YARD, TOMAS, 'member', 'kicked')
    await quiet()
    const before = texts(YARD).length
    house.store.append('home', 'telegram', [], [{ to: String(YARD.id), text: 'Walk the covers today.' }])
    await yard(INES, 'put 7 loads corn on creek')
    expect(texts(YARD)).toHaveLength(before)
    expect(eventsOf(book(), 'load')).toEqual([])

    await tell(BARN, INES, '/here')
    expect(book().settings.get('crewChat')).toBe(String(BARN.id))
    expect((await tell(BARN, TOMAS, '/away')).said[0]).toContain('dueño')
    expect((await tell(BARN, INES, '/fuera')).said[0]).toContain("not the farm's any more")
    expect((await tell(BARN, INES, 'put 7 loads corn on creek')).said).toEqual([])
    expect((await ines('how many loads today')).said[0]).not.toContain('7')
  })
})
