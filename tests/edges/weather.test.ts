import { createServer, type Server, type ServerResponse } from 'node:http'
import type { AddressInfo } from 'node:net'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { concerns, type FeedAlert, inRing, kindsOf } from '../../src/edges/weather/alert.ts'
import { near, parseFeed, startWeather, type Weather } from '../../src/edges/weather.ts'

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
const cap = (id: string, more: { type?: string; refs?: string; event?: string } = {}): string => `<?xml version="1.0" encoding="UTF-8"?>
<alert xmlns="urn:oasis:names:tc:emergency:cap:1.2">
  <identifier>${id}</identifier><sender>storms@example.org</sender><sent>${hours(-4)}</sent>
  <status>Actual</status><msgType>${more.type ?? 'Alert'}</msgType><scope>Public</scope>
  ${more.refs ? `<references>storms@example.org,${more.refs},${hours(-5)}</references>` : ''}
  <info><category>Met</category><event>${more.event ?? 'SEVERE THUNDERSTORM'}</event><urgency>Immediate</urgency><severity>Severe</severity>
  <certainty>Observed</certainty><onset>${hours(-3)}</onset><expires>${hours(-1)}</expires>
  <headline>SEVERE THUNDERSTORM WARNING</headline><description>HAIL UP TO ONE INCH</description>
  <area><areaDesc>Dry Creek</areaDesc><polygon>43,-90 43,-89 43.5,-89 43.5,-90 43,-90</polygon></area></info>
</alert>`
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
    expect(parseFeed(collection(null, 7, { type: 'Feature' }, { ...feature('a', 'Hail'), properties: {} }))).toEqual([])
  })
  it('names what an alert means for a cover', () => {
    const of = (event: string, text = ''): string[] => kindsOf({ event, text } as FeedAlert)
    expect(of('Freeze Warning')).toEqual(['freeze'])
    expect(of('Flash Flood Warning')).toEqual(['rain'])
    expect(of('Wind Chill Advisory')).toEqual([])
    expect(of('Severe Thunderstorm Warning', 'gusts to 60 mph')).toEqual(['wind'])
    expect(of('Air Quality Alert')).toEqual([])
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
    expect(concerns({ rings: [], areas: ['Dry Creek; Upper Fork'] } as unknown as FeedAlert, { lat: 0, lon: 0, area: 'upper fork' })).toBe(
      true,
    )
  })
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
  const open = (more: object = {}): { feed: Weather; troubles: string[]; news: () => number } => {
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
})
