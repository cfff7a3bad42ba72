import { readFile } from 'node:fs/promises'
import { basename } from 'node:path'
import { type Api, GrammyError, InputFile } from 'grammy'
import type { Message } from 'grammy/types'
import type { Logger } from 'pino'
import { busyIn } from './busy.ts'
import { keyboardFor } from './keyboard.ts'
import type { Letter } from './options.ts'
import { parts } from './parts.ts'
import { apiSignal } from './reach.ts'

/** Bot API, "sendPhoto": a caption has up to 1024 characters. */
const CAPTION_MAX = 1024
/** "Written down" and its plainer stand-in; a group's administrators may allow only some (Bot API, "setMessageReaction"). */
const SIGNS = ['✍', '👍'] as const

export const said = (error: unknown): string =>
  error instanceof GrammyError ? error.description : error instanceof Error ? error.message : String(error)

/** Only in groups: in a private chat the quote above every answer is noise. */
const under = (letter: Letter, chat: string) => {
  const id = Number(letter.reply.under)
  if (!chat.startsWith('-') || !Number.isInteger(id)) return {}
  return { reply_parameters: { message_id: id, allow_sending_without_reply: true } }
}

const is400 = (error: unknown): boolean => error instanceof GrammyError && error.error_code === 400

/** The edit was done before: the process died between the edit and its note in the book. */
const isDone = (error: unknown): boolean => error instanceof GrammyError && error.description.includes('message is not modified')

/** Sends one letter, whatever it is made of. Gives the mark of what then stands in the chat: a message's number, or `sign-…`. */
export const makeSender = (api: Api, logger: Logger, stopping: AbortSignal) => {
  const signal = apiSignal(stopping)

  /** Its bytes, not a path: a stream of a file that is gone never ends the request, and can't be sent a second time. */
  const attachment = async (path: string): Promise<InputFile | undefined> => {
    try {
      return new InputFile(await readFile(path), basename(path))
    } catch (error) {
      logger.warn({ path, why: said(error) }, 'a file is gone; its words are sent alone')
      return undefined
    }
  }

  const sendAnew = async (letter: Letter, chat: string): Promise<number> => {
    const { reply } = letter
    const keyboard = keyboardFor(reply)
    const path = reply.picture ?? reply.file
    const file = path === undefined ? undefined : await attachment(path)
    const pieces = parts(reply.text)
    const caption = file && pieces.length === 1 && pieces[0]!.length <= CAPTION_MAX ? pieces.pop() : undefined
    let id = 0
    for (const [i, piece] of pieces.entries()) {
      const last = i === pieces.length - 1 && !file
      const more = { ...(i === 0 && under(letter, chat)), ...(last && keyboard && { reply_markup: keyboard }) }
      const sent = await api.sendMessage(chat, piece, { link_preview_options: { is_disabled: true }, ...more }, signal)
      id = sent.message_id
    }
    if (file) {
      const more = { ...under(letter, chat), ...(caption && { caption }), ...(keyboard && { reply_markup: keyboard }) }
      const sending: Promise<Message> = reply.picture ? api.sendPhoto(chat, file, more, signal) : api.sendDocument(chat, file, more, signal)
      id = (await busyIn(api, chat, reply.picture ? 'upload_photo' : 'upload_document', sending, stopping)).message_id
    }
    const spoken = reply.voice === undefined ? undefined : await attachment(reply.voice)
    if (spoken) await api.sendVoice(chat, spoken, under(letter, chat), signal)
    return id
  }

  /** A sign on the crew's own message instead of words; undefined where none is allowed, or the message is gone. */
  const sign = async (letter: Letter, chat: string): Promise<string | undefined> => {
    const { under: target, plain, voice, choices, picture, file } = letter.reply
    const id = Number(target)
    if (!plain || voice || choices || picture || file || !chat.startsWith('-') || !Number.isInteger(id)) return undefined
    for (const emoji of SIGNS) {
      try {
        await api.setMessageReaction(chat, id, [{ type: 'emoji', emoji }], {}, signal)
        return `sign-${id}`
      } catch (error) {
        if (!is400(error)) throw error
      }
    }
    return undefined
  }

  return async (letter: Letter, chat: string): Promise<string> => {
    const { reply, instead } = letter
    const signed = await sign(letter, chat)
    if (signed !== undefined) return signed
    if (instead === undefined || reply.picture || reply.file || parts(reply.text).length > 1) return String(await sendAnew(letter, chat))
    try {
      const keyboard = keyboardFor(reply)
      await api.editMessageText(chat, Number(instead), reply.text, keyboard && { reply_markup: keyboard }, signal)
      return instead
    } catch (error) {
      if (isDone(error)) return instead
      // The question was deleted, or is too old to be changed: the answer still has to be said.
      if (is400(error)) return String(await sendAnew(letter, chat))
      throw error
    }
  }
}
