// The whole house on Telegram, in a process of its own, to be killed at any moment.
import { openHouse } from '../../src/compose.ts'
import { makeLogger } from '../../src/edges/telegram/logger.ts'
import { runTelegram } from '../../src/edges/telegram/telegram.ts'

const [folder, apiRoot, token, ownerCode] = process.argv.slice(2) as [string, string, string, string]
const { core, say, store, pictures } = openHouse({ data: folder, zone: 'America/Chicago' }, { firstOwns: false })
const run = runTelegram({
  handle: core.handle,
  book: () => core.book('home'),
  say,
  log: store,
  pictures,
  token,
  apiRoot,
  ownerCode,
  zone: 'America/Chicago',
  folder,
  logger: makeLogger(token, process.stderr, 'error'),
  pollSeconds: 2,
  retryMs: 20,
})
await run.done
