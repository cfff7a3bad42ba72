import { readFile } from 'node:fs/promises'
import { join } from 'node:path'
import { parseArgs } from 'node:util'
import {
  FARM,
  farmPlace,
  faultOf,
  freeOwnersPlace,
  inPassing,
  leave,
  listenerFor,
  openForReading,
  openHouse,
  ownerCode,
  settings,
} from './compose.ts'
import type { Config } from './config.ts'
import { hello } from './saying/ask.ts'

/** The commands. Each puts the house on a book and hands it to a channel; nothing is decided here. */

const { positionals, values } = parseArgs({
  allowPositionals: true,
  strict: false,
  options: { zone: { type: 'string' }, data: { type: 'string' }, pictures: { type: 'boolean' } },
})
const option = (name: 'zone' | 'data'): string | undefined => (typeof values[name] === 'string' ? values[name] : undefined)

const now = (): string => new Date().toISOString()
/** Apart from every other run of any process. */
const run = `${Date.now().toString(36)}${process.pid}`

const startConsole = async (config: Config): Promise<void> => {
  const { runConsole } = await import('./edges/console.ts')
  const house = openHouse(config, { firstOwns: true })
  try {
    const spanish = /^es/i.test(process.env.LC_ALL || process.env.LC_MESSAGES || process.env.LANG || '')
    const greeting = house.say(hello(), spanish ? 'es' : 'en')
    for (const r of house.recovered.flatMap(x => x.replies)) process.stdout.write(`${r.text}\n`)
    await runConsole({ core: house.core, farm: FARM, hello: greeting, input: process.stdin, output: process.stdout, run })
  } finally {
    house.store.close()
  }
}

const LOOK_MS = 60_000

/** A door that the crew comes in by; the house behind it is the same. */
interface Channel {
  /** Resolves after `stop`; rejects where the channel can not go on. */
  done: Promise<void>
  /** Replies wait in the outbox that no message of its own brought. */
  wake(): void
  stop(): Promise<void>
}

const channelsOf = async (config: Config, house: ReturnType<typeof openHouse>, code: string): Promise<Channel[]> => {
  const { core, say, store } = house
  const second = await secondFor(config, core)
  const common = {
    ...(second && { second }),
    handle: core.handle,
    book: () => core.book(FARM),
    say,
    ownerCode: code,
    zone: config.zone,
    folder: config.data,
  }
  const channels: Channel[] = []
  if (config.telegram) {
    const { runTelegram } = await import('./edges/telegram/telegram.ts')
    const { makeLogger } = await import('./edges/telegram/logger.ts')
    const { token, apiRoot, webhook } = config.telegram
    const listener = await listenerFor(config, house)
    channels.push(
      runTelegram({ ...common, listener, log: store, pictures: house.pictures, token, apiRoot, webhook, logger: makeLogger(token) }),
    )
  }
  if (config.sms) {
    const { runSms } = await import('./edges/sms.ts')
    const { pino } = await import('pino')
    const logger = pino({ base: null }, process.stderr)
    channels.push(runSms({ ...common, log: store, ...config.sms, logger }))
  }
  return channels
}

const startChannels = async (config: Config): Promise<void> => {
  const { hasOwner } = await import('./edges/joining/admit.ts')
  const { makeCode } = await import('./edges/joining/codes.ts')
  const { PERSON } = await import('./edges/console.ts')
  let weather: Awaited<ReturnType<typeof weatherFor>>
  const house = openHouse(config, { firstOwns: false, alerts: () => weather?.alerts() ?? [] })
  const { core, store } = house
  let timer: NodeJS.Timeout | undefined
  try {
    freeOwnersPlace(house, PERSON)
    const code = config.ownerCode ?? ownerCode(house, makeCode)
    if (!hasOwner(core.book(FARM)))
      process.stdout.write(
        `Owner code: ${code}\nSend it to the bot in a private chat, or by text message; whoever sends it first owns the book.\n`,
      )
    const channels = await channelsOf(config, house, code)
    const stop = (): void => {
      for (const c of channels) void c.stop()
    }
    // One that can not go on takes the others with it: a farm must not be half heard.
    const over = Promise.allSettled(channels.map(c => c.done.finally(stop)))
    /** What goes to a telephone finds its own channel. */
    const tick = (): void => {
      if (core.tick(FARM, 'telegram', now()).length) for (const c of channels) c.wake()
    }
    let broken: unknown
    // Read again at least every minute: a machine that slept has missed its timer.
    const beat = (): void => {
      try {
        tick()
        timer = setTimeout(beat, Math.min(LOOK_MS, Math.max(1000, Date.parse(core.next(FARM, now())) - Date.now())))
      } catch (error) {
        broken = error
        stop()
      }
    }
    beat()
    weather = await weatherFor(config, house, tick)
    for (const signal of ['SIGINT', 'SIGTERM'] as const) process.once(signal, stop)
    const ends = await over
    if (broken !== undefined) throw broken
    for (const end of ends) if (end.status === 'rejected') throw end.reason
  } finally {
    clearTimeout(timer)
    weather?.stop()
    store.close()
  }
}

/** The weather feed, where the owner set one up and the farm's place is known. */
const weatherFor = async (config: Config, { core }: ReturnType<typeof openHouse>, onNews: () => void) => {
  if (!config.weather) return undefined
  const { url, area } = config.weather
  const place = config.weather.place ?? farmPlace(core.book(FARM))
  if (!place) return leave({ code: 'config-wrong', data: { name: 'WEATHER_PLACE', why: 'is needed with WEATHER_URL, like 43.07,-89.40' } })
  const { startWeather } = await import('./edges/weather.ts')
  return startWeather({
    url,
    place: { ...place, ...(area && { area }) },
    file: join(config.data, 'weather.json'),
    onNews,
    trouble: why => process.stderr.write(`Weather feed: ${why}\n`),
  })
}

/** The second reader, where the owner set one up; nothing leaves the machine otherwise. */
const secondFor = async (config: Config, core: ReturnType<typeof openHouse>['core']) => {
  if (!config.model) return undefined
  const { makeSecondReader } = await import('./edges/secondReader.ts')
  const { withSecond } = await import('./edges/second.ts')
  return withSecond(
    core,
    makeSecondReader({ ...config.model, trouble: why => process.stderr.write(`Second reader: ${why}\n`) }),
    config.zone,
  )
}

const lines = async (config: Config): Promise<void> => {
  const { runLines } = await import('./edges/lines.ts')
  const on = async (folder: string, passing: boolean): Promise<void> => {
    const house = openHouse({ ...config, data: folder }, { firstOwns: true, passing })
    const { core, store } = house
    const listener = await listenerFor({ ...config, data: folder }, house)
    try {
      const second = await secondFor({ ...config, data: folder }, core)
      await listener.resume('lines', async m => readFile(m.voice?.ref ?? ''))
      await runLines(core, process.stdin, line => process.stdout.write(`${line}\n`), run, { listener, ...(second && { second }) })
    } finally {
      await listener.close()
      store.close()
    }
  }
  await (option('data') === undefined ? inPassing(folder => on(folder, true)) : on(config.data, false))
}

const explain = async (config: Config): Promise<void> => {
  const { explained } = await import('./edges/console.ts')
  const { core, note, close } = openForReading(config)
  if (note) process.stdout.write(`${note}\n`)
  process.stdout.write(explained(core.explain(FARM, positionals.slice(1).join(' '), now())))
  close()
}

/** The season is the farm's own: its zone is told with it. */
const demo = (config: Config): Promise<void> =>
  inPassing(async folder => {
    const { DEMO_ZONE, playDemo, seasonLines } = await import('./edges/demo.ts')
    const { lineReader } = await import('./edges/lines.ts')
    const { core, store } = openHouse({ ...config, data: folder, zone: DEMO_ZONE }, { firstOwns: true, passing: true })
    try {
      playDemo(seasonLines(), lineReader(core, run).take, text => process.stdout.write(`${text}\n`))
    } finally {
      store.close()
    }
  })

const commands: Record<string, (config: Config) => Promise<void>> = {
  start: config => (config.telegram || config.sms ? startChannels(config) : startConsole(config)),
  lines,
  explain,
  demo,
  hear: async config => (await import('./hear.ts')).hearFile(config, positionals.slice(1)),
  reference: async () => (await import('./edges/reference.ts')).writeReference(),
}

// Whoever reads has seen enough (a pager, `head`): no fault of ours, and what was stored is stored.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code === 'EPIPE') process.exit(0)
  throw error
})

const name = positionals[0] ?? 'start'
const command =
  commands[name] ?? leave({ code: 'config-wrong', data: { name, why: `the commands are ${Object.keys(commands).join(', ')}` } })
try {
  await command(settings(process.env, option('zone'), option('data')))
} catch (error) {
  const fault = faultOf(error)
  if (!fault) throw error
  leave(fault)
}
