import type { Update } from 'grammy/types'

/** The server's side of a webhook: one update after another, each again and again until it is taken. */
export interface Hook {
  url: string
  secret?: string
  /** Something may be waiting. */
  wake(): void
  stop(): void
  /** Answers that came back. */
  answers: number[]
}

/** Between two tries of one update, ms; the real server waits longer each time. */
const AGAIN_MS = 30

export const startHook = (url: string, secret: string | undefined, updates: Update[]): Hook => {
  const answers: number[] = []
  let stopped = false
  let running = false
  const run = async (): Promise<void> => {
    if (running) return
    running = true
    while (updates.length && !stopped) {
      const update = updates[0]!
      const status = await fetch(url, {
        method: 'POST',
        headers: { 'content-type': 'application/json', ...(secret && { 'x-telegram-bot-api-secret-token': secret }) },
        body: JSON.stringify(update),
      }).then(
        r => r.status,
        () => 0,
      )
      answers.push(status)
      if (status === 200) {
        if (updates[0] === update) updates.shift()
      } else await new Promise(r => setTimeout(r, AGAIN_MS))
    }
    running = false
  }
  const wake = (): void => void run()
  const stop = (): void => {
    stopped = true
  }
  wake()
  return { url, secret, wake, answers, stop }
}
