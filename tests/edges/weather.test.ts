import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { createServer, type Server, type ServerResponse } from 'node:http'
import type { AddressInfo } from 'node:net'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { concerns, type FeedAlert, inRing, kindsOf, kmBetween } from '../../src/edges/weather/alert.ts'
import { afterReading, type Kept, near } from '../../src/edges/weather/kept.ts'
import { isList, parseFeed, startWeather, type Weather, type WeatherOptions, waitAfter } from '../../src/edges/weather.ts'

/** A farm of our own at 43.10 north, 89.50 west, and a square around it. */
const PLACE = { lat: 43.1, lon: -89.5 }
const AROUND = [
  [-90, 43],
  [-89, 43],
  [-89, 43.5],
  [-90, 43.5],
  [-90, 43],
]
const FAR = AROUND.map(([x, y]) => [x! + 3, y!])
const hours = (n: number): string => new Date(Date.now() + n * 3_600_000).toISOString()

/** A feature as RFC 7946 and the fields of CAP have it; the texts are made up. */
const feature = (id: string, event: string, more: Record<string, unknown> = {}, coordinates = [AROUND]) => ({
  type: 'Feature',
  id,
  geometry: { type: 'Polygon', coordinates },
  properties: {
    id,
    status: 'Actual',
    messageType: 'Alert',
    references: [],
    event,
    headline: `${event} issued`,
    description: 'HAZARD...60 mph wind gusts and quarter size hail.',
    onset: hours(-3),
    ends: hours(-1),
    expires: hours(-1),
    areaDesc: 'Dry Creek; Upper Fork',
    geocode: { SAME: ['055025'], UGC: ['WIC025'] },
    ...more,
  },
})
const collection = (...features: unknown[]): string => JSON.stringify({ type: 'FeatureCollection', features })

/** As in the examples of CAP 1.2, appendix A, shortened; our own figures. */
const cap = (
  id: string,
  more: { type?: string; refs?: string; event?: string; certainty?: string; area?: string; response?: string; expires?: string } = {},
): string => `<?xml version="1.0" encoding="UTF-8"?>
<alert xmlns="urn:oasis:names:tc:emergency:cap:1.2">
  <identifier>${id}</identifier><sender>storms@example.org</sender><sent>${hours(-4)}</sent>
  <status>Actual</status><msgType>${more.type ?? 'Alert'}</msgType><scope>Public</scope>
  ${more.refs ? `<references>storms@example.org,${more.refs},${hours(-5)}</references>` : ''}
  <info><category>Met</category><event>${more.event ?? 'SEVERE THUNDERSTORM'}</event>${more.response ?? ''}<urgency>Immediate</urgency><severity>Severe</severity>
  <certainty>${more.certainty ?? 'Observed'}</certainty><onset>${hours(-3)}</onset>${more.expires ?? `<expires>${hours(-1)}</expires>`}
  <headline>SEVERE THUNDERSTORM WARNING</headline><description>HAIL UP TO ONE INCH</description>
  <area><areaDesc>Dry Creek</areaDesc>${more.area ?? '<polygon>43,-90 43,-89 43.5,-89 43.5,-90 43,-90</polygon>'}</area></info>
</alert>`
const bare = (xml: string): string => xml.replace(/<\?xml.*?\?>/, '')
const kinds = (body: string): string[] => near(parseFeed(body) ?? [], PLACE).map(a => a.kind)

describe('the formats', () => {
  it('GeoJSON (RFC 7946) and CAP 1.2 say the same', () => {
    expect(kinds(collection(feature('a', 'Severe Thunderstorm Warning')))).toEqual(['hail', 'wind'])
    expect(kinds(cap('a'))).toEqual(['hail', 'wind'])
    // several CAP alerts within an Atom feed
    const inner = (id: string): string => cap(id).replace(/<\?xml.*?\?>/, '')
    const atom = `<feed xmlns="http://www.w3.org/2005/Atom"><entry><content>${inner('a')}</content></entry><entry><content>${inner('b')}</content></entry></feed>`
    expect(near(parseFeed(atom) ?? [], PLACE).map(a => a.id)).toEqual(['a', 'a', 'b', 'b'])
  })
  it('updates and cancellations take the place of what they refer to; the same alert twice is one', () => {
    const first = feature('a', 'High Wind Warning')
    expect(kinds(collection(first, first))).toEqual(['wind'])
    expect(
      kinds(collection(first, feature('b', 'High Wind Warning', { messageType: 'Cancel', references: [{ identifier: 'a' }] }))),
    ).toEqual([])
    expect(
      near(parseFeed(collection(first, feature('c', 'High Wind Warning', { messageType: 'Update', references: ['a'] })))!, PLACE).map(
        a => a.id,
      ),
    ).toEqual(['c'])
    expect(
      kinds(`<alerts>${[cap('a'), cap('b', { type: 'Cancel', refs: 'a' })].map(x => x.replace(/<\?xml.*?\?>/, '')).join('')}</alerts>`),
    ).toEqual([])
  })
  it('only real alerts for this place count', () => {
    expect(kinds(collection(feature('a', 'Hail Warning', { status: 'Test' })))).toEqual([])
    expect(kinds(collection(feature('a', 'Hail Warning', {}, [FAR])))).toEqual([])
    expect(kinds(collection(feature('a', 'Hail Warning', { ends: hours(900) })))).toEqual([])
    const nowhere = { ...feature('a', 'Freeze Warning'), geometry: null }
    expect(near(parseFeed(collection(nowhere))!, PLACE)).toEqual([])
    expect(near(parseFeed(collection(nowhere))!, { ...PLACE, area: 'WIC025' }).map(a => a.kind)).toEqual(['freeze'])
    expect(near(parseFeed(collection(nowhere))!, { ...PLACE, area: 'dry creek' }).map(a => a.kind)).toEqual(['freeze'])
  })
  it('a test, a draft or an answer to another message is no alert, and a test takes nothing back', () => {
    // CAP 1.2, 3.2.1: status and msgType
    const first = feature('a', 'High Wind Warning')
    for (const status of ['Exercise', 'System', 'Test', 'Draft'])
      expect(kinds(collection({ ...first, properties: { ...first.properties, status } }))).toEqual([])
    for (const messageType of ['Ack', 'Error']) expect(kinds(collection(feature('b', 'Hail Warning', { messageType })))).toEqual([])
    const cancel = { messageType: 'Cancel', references: [{ identifier: 'a' }] }
    expect(kinds(collection(first, feature('b', 'High Wind Warning', { ...cancel, status: 'Test' })))).toEqual(['wind'])
    expect(kinds(collection(first, feature('b', 'High Wind Warning', { messageType: 'Error', references: ['a'] })))).toEqual([])
  })
  it('a watch, and what is no threat, are nothing to ask about', () => {
    // CAP 1.2, 3.2.2: certainty "Possible" is p <= 50 %; severity "Minor" is "minimal to no known threat"
    for (const [certainty, some] of [
      ['Observed', 2],
      ['Likely', 2],
      ['Possible', 0],
      ['Unlikely', 0],
      ['Unknown', 0],
    ] as const) {
      expect(kinds(collection(feature('a', 'Severe Thunderstorm Watch', { certainty }))), certainty).toHaveLength(some)
      expect(kinds(cap('a', { certainty })), certainty).toHaveLength(some)
    }
    expect(kinds(collection(feature('a', 'Wind Advisory', { severity: 'Minor' })))).toEqual([])
  })
  it('CAP: a circle, no end, several infos, all clear, and a cancellation without info', () => {
    // a radius in km after the point; about 14.4 km lie between the point and the farm
    expect(kinds(cap('a', { area: '<circle>43.2,-89.6 15</circle>' }))).toEqual(['hail', 'wind'])
    expect(kinds(cap('a', { area: '<circle>43.2,-89.6 13</circle>' }))).toEqual([])
    expect(near(parseFeed(cap('a', { expires: '' }))!, PLACE)).toMatchObject([{ kind: 'hail' }, { kind: 'wind' }])
    expect(kinds(cap('a', { response: '<responseType>AllClear</responseType>' }))).toEqual([])
    const info = /<info>[\s\S]*<\/info>/.exec(cap('a'))![0]
    expect(kinds(cap('a').replace(info, `${info}${info}`))).toEqual(['hail', 'wind'])
    const cancel = cap('b', { type: 'Cancel', refs: 'a' }).replace(info, '')
    expect(kinds(`<alerts>${bare(cap('a'))}${bare(cancel)}</alerts>`)).toEqual([])
    const prefixed = bare(cap('a'))
      .replaceAll(/<(\/?)(\w)/g, '<$1cap:$2')
      .replace('xmlns=', 'xmlns:cap=')
    expect(kinds(prefixed)).toEqual(['hail', 'wind'])
  })
  it('GeoJSON: a hole in an outline is outside, and a multipolygon is any of its parts (RFC 7946, 3.1.6 and 3.1.7)', () => {
    const hole = [
      [-89.6, 43.05],
      [-89.4, 43.05],
      [-89.4, 43.15],
      [-89.6, 43.15],
      [-89.6, 43.05],
    ]
    expect(kinds(collection(feature('a', 'Hail Warning', {}, [AROUND, hole])))).toEqual([])
    const multi = { ...feature('a', 'Hail Warning'), geometry: { type: 'MultiPolygon', coordinates: [[FAR], [AROUND]] } }
    expect(kinds(collection(multi))).toEqual(['hail', 'wind'])
  })
  it('entities that unfold into a flood stay folded', () => {
    const bomb = `<!DOCTYPE x [<!ENTITY a "${'lol '.repeat(1000)}">${'bcdefgh'
      .split('')
      .map((c, i) => `<!ENTITY ${c} "${`&${'abcdefg'[i]};`.repeat(10)}">`)
      .join('')}]>`
    const body = cap('a').replace('?>', `?>${bomb}`).replace('HAIL UP TO ONE INCH', 'HAIL &h;')
    expect(JSON.stringify(parseFeed(body) ?? []).length).toBeLessThan(5000)
  })
  it('rubbish is no feed, and what does not fit is passed over', () => {
    for (const body of [
      '',
      'hello',
      '<html><body>502</body></html>',
      '{"a":1}',
      '[]',
      '<alert><identifier>',
      '{"type":"FeatureCollection"}',
    ])
      expect(parseFeed(body), body).toBeUndefined()
    expect(near(parseFeed(collection(null, 7, { type: 'Feature' }, { ...feature('a', 'Hail'), properties: {} }))!, PLACE)).toEqual([])
  })
  it('names what an alert means for a cover', () => {
    const of = (event: string, text = ''): string[] => kindsOf({ event, text } as FeedAlert)
    expect(of('Freeze Warning')).toEqual(['freeze'])
    expect(of('Flash Flood Warning')).toEqual(['rain'])
    expect(of('Wind Chill Advisory')).toEqual([])
    expect(of('Severe Thunderstorm Warning', 'gusts to 60 mph')).toEqual(['wind'])
    expect(of('Air Quality Alert')).toEqual([])
    expect(of('Severe Thunderstorm Warning', '{"maxHailSize":["0.00"],"maxWindGust":["60 MPH"]}')).toEqual(['wind'])
    expect(of('Severe Thunderstorm Warning', 'maxHailSize 0.75')).toEqual(['hail', 'wind'])
    expect(of('Aviso de Tormentas Severas', 'granizo')).toEqual(['hail', 'wind'])
  })
  it('a point lies in a ring or not (a square with a notch)', () => {
    const ring: [number, number][] = [
      [0, 0],
      [4, 0],
      [4, 4],
      [2, 1],
      [0, 4],
    ]
    expect(inRing(1, 1, ring)).toBe(true)
    expect(inRing(2, 2, ring)).toBe(false)
    expect(inRing(5, 1, ring)).toBe(false)
    const unshaped = { polygons: [], circles: [], areas: ['Dry Creek; Upper Fork'] } as unknown as FeedAlert
    expect(concerns(unshaped, { lat: 0, lon: 0, area: 'upper fork' })).toBe(true)
    // a quarter of the way round, and a degree of latitude (60 nautical miles of 1.852 km, within its 0.1 %)
    expect(kmBetween([0, 0], [90, 0])).toBeCloseTo((6371.0088 * Math.PI) / 2, 6)
    expect(Math.abs(kmBetween([-89, 43], [-89, 44]) - 111.12)).toBeLessThan(0.15)
  })
})

describe('what is kept from one reading to the next', () => {
  const none: Kept = { alerts: [], gone: {} }
  const now = Date.now()
  const next = (was: Kept, body: string): Kept => afterReading(was, parseFeed(body)!, PLACE, isList(body), now)
  const running = { ends: hours(1), expires: hours(1) }

  it('stays when it is over and has left the feed', () => {
    const was = next(none, collection(feature('a', 'High Wind Warning')))
    expect(next(was, collection()).alerts.map(a => a.id)).toEqual(['a'])
  })
  it('goes where a list no longer has it before its end, but not for another document of one alert', () => {
    const was = next(none, collection(feature('a', 'High Wind Warning', running)))
    expect(next(was, collection()).alerts).toEqual([])
    expect(isList(cap('b'))).toBe(false)
    expect(next(was, cap('b')).alerts.map(a => a.id)).toEqual(['a', 'b', 'b'])
  })
  it('goes with its cancellation, however late, and does not come back with an old copy of the feed', () => {
    const first = collection(feature('a', 'High Wind Warning'))
    const cancel = collection(feature('b', 'High Wind Warning', { messageType: 'Cancel', references: [{ identifier: 'a' }] }))
    const was = next(next(none, first), cancel)
    expect(was.alerts).toEqual([])
    expect(next(was, first).alerts).toEqual([])
    // the cancellation may come first
    expect(next(next(none, cancel), first).alerts).toEqual([])
  })
  it('takes the place of what it updates, also where the update is no longer for this place', () => {
    const was = next(none, collection(feature('a', 'High Wind Warning')))
    const update = { messageType: 'Update', references: [{ identifier: 'a' }] }
    expect(next(was, collection(feature('b', 'High Wind Warning', update))).alerts.map(a => a.id)).toEqual(['b'])
    expect(next(was, collection(feature('b', 'High Wind Warning', update, [FAR]))).alerts).toEqual([])
  })
})

it('waits longer after each failure, up to two hours, and as long as the service asks for', () => {
  const every = 600_000
  expect([0, 1, 2, 3, 4, 50].map(n => waitAfter(n, every) / 60_000)).toEqual([10, 20, 40, 80, 120, 120])
  expect(waitAfter(1, every, 3600)).toBe(3_600_000)
  expect(waitAfter(1, every, 9_999_999)).toBe(86_400_000)
  expect(waitAfter(1, every, 5)).toBe(1_200_000)
  // who reads it rarely is not made to read it oftener
  expect(waitAfter(1, 10_800_000)).toBe(10_800_000)
})

describe('the reading', () => {
  let server: Server
  let url: string
  let answer: (res: ServerResponse, headers: NodeJS.Dict<string | string[]>) => void
  let asked = 0
  const feeds: Weather[] = []
  beforeEach(async () => {
    asked = 0
    server = createServer((req, res) => {
      asked++
      answer(res, req.headers)
    })
    await new Promise<void>(done => server.listen(0, '127.0.0.1', done))
    url = `http://127.0.0.1:${(server.address() as AddressInfo).port}/alerts`
  })
  afterEach(async () => {
    for (const f of feeds.splice(0)) f.stop()
    server.closeAllConnections()
    await new Promise(done => server.close(done))
  })
  const open = (more: Partial<WeatherOptions> = {}): { feed: Weather; troubles: string[]; news: () => number } => {
    const troubles: string[] = []
    let news = 0
    const feed = startWeather({
      url,
      place: PLACE,
      everyMs: 3_600_000,
      timeoutMs: 300,
      trouble: why => troubles.push(why),
      onNews: () => {
        news++
      },
      ...more,
    })
    feeds.push(feed)
    return { feed, troubles, news: () => news }
  }

  it('does not ask for what has not changed, and tells of news once', async () => {
    answer = (res, headers) => {
      if (headers['if-none-match'] === '"1"') return res.writeHead(304).end()
      return res.writeHead(200, { etag: '"1"', 'content-type': 'application/geo+json' }).end(collection(feature('a', 'Hail Warning')))
    }
    const { feed, news, troubles } = open()
    await feed.read()
    await feed.read()
    await feed.read()
    expect(feed.alerts().map(a => a.kind)).toEqual(['hail', 'wind'])
    expect(news()).toBe(1)
    expect(troubles).toEqual([])
  })
  it.each<[string, (res: ServerResponse) => void]>([
    ['an error', res => res.writeHead(500).end('oops')],
    ['a page', res => res.writeHead(200).end('<html></html>')],
    ['half an answer', res => res.writeHead(200, { 'content-length': '100' }).end('{"type"')],
    ['nothing at all', () => undefined],
    [
      'a feed without an end',
      res => {
        res.writeHead(200)
        const more = (): void => {
          while (!res.destroyed && res.write('x'.repeat(1 << 20))) if (res.destroyed) return
          res.once('drain', more)
        }
        more()
      },
    ],
  ])('keeps what it knew through %s', async (_, bad) => {
    answer = res => res.end(collection(feature('a', 'High Wind Warning')))
    const { feed, troubles } = open()
    await feed.read()
    answer = bad
    await feed.read()
    expect(troubles.length).toBeGreaterThan(0)
    expect(feed.alerts().map(a => a.kind)).toEqual(['wind'])
    expect(asked).toBeGreaterThan(1)
  })

  it('outlives the process: nothing is asked for again, and nothing forgotten', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'pilehand-weather-'))
    const file = join(folder, 'weather.json')
    let full = 0
    answer = (res, headers) => {
      if (headers['if-none-match'] === '"1"') return res.writeHead(304).end()
      full++
      return res
        .writeHead(200, { etag: '"1"', 'last-modified': 'Mon, 14 Sep 2026 10:00:00 GMT' })
        .end(collection(feature('a', 'High Wind Warning')))
    }
    await open({ file }).feed.read()
    feeds.pop()!.stop()
    const again = open({ file })
    expect(again.feed.alerts().map(a => a.kind)).toEqual(['wind'])
    await again.feed.read()
    expect(again.feed.alerts().map(a => a.kind)).toEqual(['wind'])
    expect(again.news()).toBe(0)
    expect(full).toBe(1)
    // another place has another memory, and a file that cannot be read is none
    expect(open({ file, place: { ...PLACE, lat: 44 } }).feed.alerts()).toEqual([])
    writeFileSync(file, readFileSync(file, 'utf8').slice(0, 40))
    expect(open({ file }).feed.alerts()).toEqual([])
    rmSync(folder, { recursive: true, force: true })
  })
})
