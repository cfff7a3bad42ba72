import { parseArgs } from 'node:util'
import {
  FARM,
  farmPlace,
  faultOf,
  freeOwnersPlace,
  hasOwner,
  inPassing,
  leave,
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

const startTelegram = async (config: Config, { token, apiRoot }: NonNullable<Config['telegram']>): Promise<void> => {
  const { runTelegram } = await import('./edges/telegram/telegram.ts')
  const { makeLogger } = await import('./edges/telegram/logger.ts')
  const { makeCode } = await import('./edges/telegram/codes.ts')
  const { PERSON } = await import('./edges/console.ts')
  let weather: Awaited<ReturnType<typeof weatherFor>>
  const house = openHouse(config, { firstOwns: false, alerts: () => weather?.alerts() ?? [] })
  const { core, say, store } = house
  let timer: NodeJS.Timeout | undefined
  try {
    freeOwnersPlace(house, PERSON)
    const code = config.ownerCode ?? ownerCode(house, makeCode)
    if (!hasOwner(house))
      process.stdout.write(`Owner code: ${code}\nSend it to the bot in a private chat; whoever sends it first owns the book.\n`)
    const second = await secondFor(config, core)
    const channel = runTelegram({
      ...(second && { second }),
      handle: core.handle,
      book: () => core.book(FARM),
      say,
      log: store,
      token,
      apiRoot,
      ownerCode: code,
      zone: config.zone,
      logger: makeLogger(token),
    })
    let broken: unknown
    // Read again at least every minute: a machine that slept has missed its timer.
    const beat = (): void => {
      try {
        if (core.tick(FARM, 'telegram', now()).length) channel.wake()
        timer = setTimeout(beat, Math.min(LOOK_MS, Math.max(1000, Date.parse(core.next(FARM, now())) - Date.now())))
      } catch (error) {
        broken = error
        void channel.stop()
      }
    }
    beat()
    weather = await weatherFor(config, house, () => {
      if (core.tick(FARM, 'telegram', now()).length) channel.wake()
    })
    for (const signal of ['SIGINT', 'SIGTERM'] as const) process.once(signal, () => void channel.stop())
    await channel.done
    if (broken !== undefined) throw broken
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
    const { core, store } = openHouse({ ...config, data: folder }, { firstOwns: true, passing })
    try {
      await runLines(
        core,
        process.stdin,
        line => process.stdout.write(`${line}\n`),
        run,
        await secondFor({ ...config, data: folder }, core),
      )
    } finally {
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
  start: config => (config.telegram ? startTelegram(config, config.telegram) : startConsole(config)),
  lines,
  explain,
  demo,
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
