import { beforeEach, describe, expect, it } from 'vitest'
import { alone, api, core, INES, joinCrew, joinOwner, last, NOBODY, quiet, start, tell, texts, useBench, YARD } from './telegramBench.ts'

useBench()

describe('choices', () => {
  let question: { message_id: number }
  beforeEach(async () => {
    start()
    await joinOwner()
    await joinCrew()
    await tell(alone(INES), INES, 'ask creek road mine no the-long-one-behind-the-barn')
    question = api.shown(501).at(-1)!
  })

  it('are buttons, two to a row at most', () => {
    const rows = api.shown(501).at(-1)!.reply_markup!.inline_keyboard
    expect(rows.map(r => r.map(b => b.text))).toEqual([['creek', 'road'], ['mine', 'no'], ['the-long-one-behind-the-barn']])
  })

  it('a tap is the label said, and the answer takes the place of the question', async () => {
    api.press(alone(INES), INES, question.message_id, 'road')
    await api.until('the question is answered', () => last(alone(INES)) === 'Settled on road.')
    await quiet()
    expect(core.heard.at(-1)).toMatchObject({
      text: 'road',
      pick: { question: expect.stringMatching(/^q\d+$/), choice: 1 },
      replyTo: String(question.message_id),
    })
    const shown = api.shown(501).at(-1)!
    expect(shown.message_id).toBe(question.message_id)
    expect(shown.reply_markup).toBeUndefined()
    expect(core.notes()).toEqual(['road'])
  })

  it('a second tap changes nothing', async () => {
    const before = structuredClone(api.shown(501).at(-1)!)
    api.press(alone(INES), INES, question.message_id, 'road')
    const data = before.reply_markup!.inline_keyboard[0]![0] as { callback_data: string }
    api.push({ callback_query: { id: 'late', from: INES, message: before, chat_instance: '1', data: data.callback_data } } as never)
    await api.until('the second tap is answered', () => api.toasts.length === 1)
    await quiet()
    expect(api.toasts).toEqual(['That is settled already.'])
    expect(core.notes()).toEqual(['road'])
    expect(last(alone(INES))).toBe('Settled on road.')
  })

  it('where the house has nothing to add, the label stands below the question', async () => {
    api.press(alone(INES), INES, question.message_id, 'no')
    await api.until('the question is closed', () => last(alone(INES)) === 'Which one?\nno')
    expect(api.shown(501).at(-1)!.reply_markup).toBeUndefined()
  })

  it('a tap that was refused leaves the question standing', async () => {
    api.press(alone(INES), INES, question.message_id, 'mine')
    await api.until('it is refused', () => last(alone(INES)) === 'That is not for you.')
    expect(api.shown(501).find(m => m.message_id === question.message_id)).toMatchObject({ text: 'Which one?', reply_markup: {} })
  })

  it('a question that can not be changed any more is answered anew', async () => {
    api.fault('editMessageText', { code: 400, description: "Bad Request: message can't be edited" })
    api.press(alone(INES), INES, question.message_id, 'creek')
    await api.until('it is answered', () => last(alone(INES)) === 'Settled on creek.')
    expect(api.shown(501).at(-1)!.message_id).not.toBe(question.message_id)
  })

  it('a tap by a stranger, and one where the group is not ours, does nothing', async () => {
    const shown = api.shown(501).at(-1)!
    const data = (shown.reply_markup!.inline_keyboard[0]![0] as { callback_data: string }).callback_data
    api.push({ callback_query: { id: 'x1', from: NOBODY, message: shown, chat_instance: '1', data } } as never)
    api.push({ callback_query: { id: 'x2', from: INES, message: { ...shown, chat: YARD }, chat_instance: '1', data } } as never)
    await quiet()
    expect(core.notes()).toEqual([])
    expect(texts(YARD)).toEqual([])
  })
})
