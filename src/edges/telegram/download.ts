import { type Api, GrammyError } from 'grammy'
import { apiSignal } from './reach.ts'

/** Why a file is not brought, where trying again can't change it. */
export class NoFile extends Error {}

export type Fetch = (fileId: string, most: number, signal: AbortSignal) => Promise<Uint8Array>

/** So long one file may take, ms. */
const LIMIT_MS = 120_000

/**
 * Brings a file from the Bot API server into memory. It is counted as it comes: the size that was told may be wrong. (grammY's own
 * plugin for files writes to a path, by https only, and without a bound.)
 */
export const makeFetch =
  (api: Api, apiRoot: string, token: string): Fetch =>
  async (fileId, most, signal) => {
    const limited = AbortSignal.any([signal, AbortSignal.timeout(LIMIT_MS)])
    const file = await api.getFile(fileId, apiSignal(limited)).catch(error => {
      if (error instanceof GrammyError && error.error_code === 400) throw new NoFile(error.description)
      throw error
    })
    if ((file.file_size ?? 0) > most) throw new NoFile('it is too large')
    if (file.file_path === undefined) throw new NoFile('it has no path')
    const path = file.file_path.split('/').map(encodeURIComponent).join('/')
    const response = await fetch(`${apiRoot}/file/bot${token}/${path}`, { signal: limited }).catch(() => {
      // the error of the network carries the address, and with it the token
      throw new Error('no connection')
    })
    if (response.status === 404) throw new NoFile('it is gone')
    if (!response.ok || !response.body) throw new Error(`status ${response.status}`)
    const chunks: Uint8Array[] = []
    let size = 0
    for await (const chunk of response.body as unknown as AsyncIterable<Uint8Array>) {
      size += chunk.length
      if (size > most) throw new NoFile('it is too large')
      chunks.push(chunk)
    }
    return Buffer.concat(chunks)
  }
