import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import type { Message } from 'grammy/types'
import { beforeEach, describe, expect, it } from 'vitest'
import { eventsOf } from '../../src/book/book.ts'
import { alone, INES, TOMAS, YARD } from './telegramBench.ts'
import { api, book, folder, ines, quiet, settleIn, start, stop, tell, texts, useHouse, yard } from './telegramHouse.ts'

useHouse()

/** A picture with a mark of its own; the first bytes are those of JPEG (ISO/IEC 10918-1, markers SOI and APP0). */
const jpeg = (mark: number, size = 64): Buffer => Buffer.concat([Buffer.from([0xff, 0xd8, 0xff, 0xe0]), Buffer.alloc(size, mark)])
const sizesOf = (bytes: Buffer, told?: { size?: number }) => {
  const small = { ...api.file(jpeg(0, 8)), width: 90, height: 67 }
  return { photo: [small, { ...api.file(bytes, { path: `photos/${bytes[9]}.jpg`, ...told }), width: 1280, height: 960 }] }
}
const sent = (text: string, bytes: Buffer, more: object = {}): Partial<Message> =>
  ({ ...sizesOf(bytes), ...(text && { caption: text }), ...more }) as Partial<Message>
const kept = (): number[] => {
  const at = join(folder, 'pictures')
  if (!existsSync(at)) return []
  return readdirSync(at).map(f => readFileSync(join(at, f))[9]!)
}
const waiting = (): string[] => {
  const at = join(folder, 'telegram', 'errands')
  return existsSync(at) ? readdirSync(at) : []
}
const fetched = (count: number): Promise<void> => api.until(`${count} are kept`, () => kept().length === count && waiting().length === 0)
const shownFiles = (chat: number): number[] => api.shown(chat).flatMap(m => (m.file ? [m.file[9]!] : []))

describe('pictures', () => {
  beforeEach(settleIn)

  it('come with what their words record, and are shown again when asked for', async () => {
    await yard(TOMAS, '', sent('two holes on creek, coons', jpeg(7)))
    await fetched(1)
    expect(api.actions).toContain(`${YARD.id} typing`)
    expect(eventsOf(book(), 'damage').map(l => l.event)).toMatchObject([{ pile: 'creek', count: 2, animal: 'raccoon' }])
    const { said } = await ines('show me the hole')
    expect(said).toHaveLength(1)
    expect(said[0]).toMatch(/2 holes on creek \(raccoon\)/)
    expect(shownFiles(501)).toEqual([7])
    expect(api.actions).toContain('501 upload_photo')
    await tell(alone(TOMAS), TOMAS, 'enséñame el hoyo')
    expect(shownFiles(502)).toEqual([7])
  })

  it('of what is open come first; where there is none it is said how to send one', async () => {
    expect((await ines('show me the hole')).said[0]).toContain('No picture')
    await ines('', sent('hole on creek', jpeg(1)))
    await ines('patched creek')
    await ines('', sent('tear on creek by the wall', jpeg(2)))
    await fetched(2)
    await ines('show me the damage pictures of creek')
    expect(shownFiles(501)).toEqual([2])
    // Nobody who is not of the farm, and nobody without a farm's question, gets them.
    expect(shownFiles(YARD.id)).toEqual([])
  })

  it('go with the record that a question made of their words', async () => {
    await ines('new pile called ridge, 20 by 40')
    await ines('', sent('found a hole', jpeg(3)))
    const question = api.shown(501).at(-1)!
    expect(question.reply_markup).toBeDefined()
    api.press(alone(INES), INES, question.message_id, 'ridge')
    await quiet()
    await fetched(1)
    await ines('show me the hole on ridge')
    expect(shownFiles(501)).toEqual([3])
  })

  it('of an album go with its words, wherever they stand in it', async () => {
    api.say(YARD, TOMAS, '', sent('', jpeg(1), { media_group_id: 'a' }))
    api.say(YARD, TOMAS, '', sent('hole on creek', jpeg(2), { media_group_id: 'a' }))
    api.say(YARD, TOMAS, '', sent('', jpeg(3), { media_group_id: 'a' }))
    await quiet()
    await fetched(3)
    expect(eventsOf(book(), 'damage')).toHaveLength(1)
    await ines('show me the hole')
    expect(shownFiles(501).sort()).toEqual([1, 2, 3])
    expect(texts(YARD)).not.toContain('What does')
  })

  it('without words go with the record they answer, or the one just told', async () => {
    const { id } = await yard(TOMAS, 'hole on creek')
    const reply = { reply_to_message: { message_id: id, from: TOMAS, date: 1, chat: YARD } }
    const answer = await yard(INES, '', sent('', jpeg(4), reply))
    expect(api.reactions(YARD.id, answer.id)).toEqual(['✍'])
    const next = await yard(TOMAS, '', sent('', jpeg(5)))
    expect(api.reactions(YARD.id, next.id)).toEqual(['✍'])
    await fetched(2)
    await ines('show me the hole')
    expect(shownFiles(501).sort()).toEqual([4, 5])
    // One that goes with nothing is talk in the group, and asked about in private.
    expect((await yard(INES, '', sent('', jpeg(6)))).said).toEqual([])
    expect((await tell(alone(TOMAS), TOMAS, '', sent('', jpeg(6)))).said[0]).toContain('What does the picture show?')
    expect(kept()).toHaveLength(2)
  })

  it('that are none, or too large whatever they claim, are not kept; talk is not either', async () => {
    await ines('', sent('hole on creek', Buffer.from('<svg onload=alert(1)>')))
    await ines('', sent('tear on creek', jpeg(8, 6_000_000), { caption: 'tear on creek' }))
    await ines('', { ...sizesOf(jpeg(9, 6_000_000), { size: 1000 }), caption: 'another tear on creek' } as Partial<Message>)
    await yard(INES, '', sent('lunch', jpeg(1)))
    await api.until('all were tried', () => waiting().length === 0)
    // Of the one told as too large its small copy is taken.
    expect(kept()).toEqual([0])
  })

  it('are fetched again after a break, and after a restart', async () => {
    api.fault('download', { drop: 'before' }, { code: 502, description: 'bad gateway' })
    await ines('', sent('hole on creek', jpeg(2)))
    await fetched(1)
    await stop()
    mkdirSync(join(folder, 'telegram', 'errands'), { recursive: true })
    const errand = { chat: '501', message: '99', fileId: api.file(jpeg(3), { path: 'x/3.jpg' }).file_id, name: 'late' }
    writeFileSync(join(folder, 'telegram', 'errands', 'left.json'), JSON.stringify(errand))
    start()
    await fetched(2)
    expect(kept().sort()).toEqual([2, 3])
  })
})
