// Run as a process of its own by the Telegram tests, to be killed at any moment.
import { openStore } from '../../src/edges/store.ts'
import { makeLogger } from '../../src/edges/telegram/logger.ts'
import { runTelegram } from '../../src/edges/telegram/telegram.ts'
import { tinyCore } from './telegramCore.ts'

const [folder, apiRoot, token] = process.argv.slice(2) as [string, string, string]
const log = openStore(folder, { durable: ['telegram'] })
const run = runTelegram({
  ...tinyCore(log),
  log,
  apiRoot,
  token,
  folder,
  ownerCode: 'GATEPOST',
  zone: 'America/Chicago',
  logger: makeLogger(token, undefined, 'fatal'),
})
await run.done
