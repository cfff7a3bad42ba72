import type { Message, PhotoSize } from 'grammy/types'
import type { Voice } from '../../ports.ts'

/** A picture as Telegram holds it. */
export interface Shot {
  fileId: string
  /** The same for the same picture, whoever sends it (Bot API, "file_unique_id"). */
  name: string
}

/** What a message carries beside words. */
export interface Cargo {
  shots: Shot[]
  voice?: Voice
  place?: { lat: number; lon: number }
  contact?: string
  /**
   * `talk` (a sticker, a moving picture, dice, a poll) asks for no answer, whoever sends it; `other` (a film, music, papers) may
   * have been meant as a record, so its sender hears that it was none.
   */
  kind?: 'shot' | 'voice' | 'place' | 'contact' | 'talk' | 'other'
}

/** A picture is kept up to this size, bytes: a phone's own pictures arrive at a tenth of it. */
export const SHOT_MOST = 5_000_000

const shotOf = (sizes: PhotoSize[]): Shot[] => {
  const fit = sizes.filter(s => (s.file_size ?? 0) <= SHOT_MOST).sort((a, b) => a.width * a.height - b.width * b.height)
  const best = fit.at(-1)
  return best ? [{ fileId: best.file_id, name: best.file_unique_id }] : []
}

const TALK = ['sticker', 'animation', 'dice', 'poll', 'game', 'story'] as const
const OTHER = ['video', 'video_note', 'audio', 'document', 'venue'] as const

export const cargoOf = (msg: Message): Cargo => {
  if (msg.photo) return { shots: shotOf(msg.photo), kind: 'shot' }
  // An animation comes as a document too.
  if (TALK.some(k => k in msg)) return { shots: [], kind: 'talk' }
  const paper = msg.document
  if (paper && /^image\/(?:jpeg|png|webp)$/.test(paper.mime_type ?? '')) {
    const fits = (paper.file_size ?? 0) <= SHOT_MOST
    return { shots: fits ? [{ fileId: paper.file_id, name: paper.file_unique_id }] : [], kind: 'shot' }
  }
  if (msg.voice) {
    const { file_id, duration, file_size } = msg.voice
    return { shots: [], voice: { ref: file_id, seconds: duration, ...(file_size !== undefined && { bytes: file_size }) }, kind: 'voice' }
  }
  if (msg.location && !msg.venue) return { shots: [], place: { lat: msg.location.latitude, lon: msg.location.longitude }, kind: 'place' }
  if (msg.contact) return { shots: [], contact: msg.contact.first_name, kind: 'contact' }
  return { shots: [], ...(OTHER.some(k => k in msg) && { kind: 'other' as const }) }
}
