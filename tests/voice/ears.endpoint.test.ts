import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http'
import type { AddressInfo } from 'node:net'
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest'
import { type EndpointOptions, endpointEar, promptOf, transcriptionsOf } from '../../src/edges/voice/ears/endpoint.ts'
import type { Ear, FarmWords, Heard } from '../../src/ports.ts'

// A stand-in for an OpenAI-compatible server, over real HTTP on the loopback. Its answers have the form of "create
// transcription" in the OpenAI API reference (from memory): text, verbose_json with words and segments, json with logprobs.

interface Sent {
  method: string
  path: string
  key: string | undefined
  form: FormData
}
type Answering = (req: IncomingMessage, res: ServerResponse, sent: Sent) => void
let server: Server
let base: string
let answering: Answering
let sent: Sent[]
let ears: Ear[]

const json =
  (body: unknown, status = 200): Answering =>
  (_, res) => {
    res.writeHead(status, { 'content-type': 'application/json' })
    res.end(JSON.stringify(body))
  }
const refusal = (message: string) => ({ error: { message, type: 'invalid_request_error' } })

beforeAll(async () => {
  server = createServer((req, res) => {
    const parts: Buffer[] = []
    req.on('data', part => parts.push(part))
    req.on('end', () => {
      const headers = { 'content-type': req.headers['content-type'] ?? '' }
      void new Response(Buffer.concat(parts), { headers }).formData().then(form => {
        const one = { method: req.method!, path: req.url!, key: req.headers.authorization, form }
        sent.push(one)
        answering(req, res, one)
      })
    })
  })
  await new Promise<void>(done => {
    server.listen(0, '127.0.0.1', done)
  })
  base = `http://127.0.0.1:${(server.address() as AddressInfo).port}/v1`
})
afterAll(() => {
  server.closeAllConnections()
  server.close()
})
beforeEach(() => {
  sent = []
  ears = []
})
afterEach(() => {
  for (const e of ears) e.close()
})

const FARM: FarmWords = { piles: ['Quarry', 'mill lane'], boxes: ['tin box'], people: ['Edda'], words: [] }
/** Two seconds. */
const SOUND = Float32Array.from({ length: 32_000 }, (_, k) => Math.sin(k / 9) * (k % 3 === 0 ? 1.2 : 0.5))
const ear = (o: Partial<EndpointOptions> = {}): Ear => {
  const e = endpointEar({ url: base, timeoutMs: 5000, ...o })
  ears.push(e)
  return e
}
const hear = (o: Partial<EndpointOptions> = {}, signal?: AbortSignal): Promise<Heard> => ear(o).hear(SOUND, FARM, 'en', signal)
const words = (h: Heard): string[] => h.wordings[0]?.words.map(w => w.word) ?? []

describe('what is sent', () => {
  it('is one form with the sound, the model, the language and the names of the farm', async () => {
    answering = json({ text: 'Ja.' })
    await ear({ key: 'sesame', model: 'small' }).hear(SOUND, FARM, 'es')
    expect(sent).toHaveLength(1)
    const { method, path, key, form } = sent[0]!
    expect([method, path, key]).toEqual(['POST', '/v1/audio/transcriptions', 'Bearer sesame'])
    expect(form.get('model')).toBe('small')
    expect(form.get('language')).toBe('es')
    expect(form.get('response_format')).toBe('verbose_json')
    expect(form.getAll('timestamp_granularities[]')).toEqual(['word', 'segment'])
    expect(form.get('prompt')).toBe('Quarry, mill lane, tin box, Edda.')
  })

  it('carries no key where there is none, and no prompt of a farm without names', async () => {
    answering = json({ text: 'yes' })
    await ear().hear(SOUND, { piles: [], boxes: [], people: [], words: [] }, 'en')
    expect(sent[0]!.key).toBeUndefined()
    expect(sent[0]!.form.has('prompt')).toBe(false)
  })

  it('is a WAV file of 16 kHz, one channel, 16 bits', async () => {
    // "Multimedia Programming Interface and Data Specifications 1.0" (IBM, Microsoft, 1991), the WAVE form: 'fmt ' with format 1 (PCM)
    answering = json({ text: 'yes' })
    await hear()
    const file = sent[0]!.form.get('file') as File
    expect(file.name).toMatch(/\.wav$/)
    const b = Buffer.from(await file.arrayBuffer())
    expect(b.length).toBe(44 + 2 * SOUND.length)
    expect(b.toString('latin1', 0, 4) + b.toString('latin1', 8, 16)).toBe('RIFFWAVEfmt ')
    expect(b.readUInt32LE(4)).toBe(b.length - 8)
    expect([b.readUInt16LE(20), b.readUInt16LE(22), b.readUInt32LE(24), b.readUInt32LE(28), b.readUInt16LE(34)]).toEqual([
      1, 1, 16_000, 32_000, 16,
    ])
    expect(b.toString('latin1', 36, 40)).toBe('data')
    for (const k of [0, 1, 7, 3000, 31_999]) {
      const x = Math.max(-1, Math.min(1, SOUND[k]!))
      expect(Math.abs(b.readInt16LE(44 + 2 * k) / 32_767 - x)).toBeLessThan(1e-4)
    }
  })

  it('goes to the place of transcriptions, however the address ends', () => {
    for (const url of ['http://h:1/v1', 'http://h:1/v1/', 'http://h:1/v1/audio/transcriptions'])
      expect(transcriptionsOf(url)).toBe('http://h:1/v1/audio/transcriptions')
    expect(transcriptionsOf('https://h/api?tag=1')).toBe('https://h/api/audio/transcriptions?tag=1')
  })

  it('has whole names only, each once, up to a length', () => {
    const many = promptOf({ ...FARM, words: [...Array.from({ length: 200 }, (_, k) => `paddock ${k}`), 'Quarry'] })
    expect(many.length).toBeLessThanOrEqual(500)
    expect(many.length).toBeGreaterThan(450)
    expect(many.match(/Quarry/g)).toHaveLength(1)
    expect(many).toMatch(/paddock \d+\.$/)
  })
})

describe('an answer', () => {
  it('of bare text becomes words that share the note, moderately sure', async () => {
    answering = json({ text: ' Put 7 loads on Quarry, 3 on mill lane. ' })
    const h = await hear()
    expect(h.lang).toBe('en')
    expect(h.wordings).toHaveLength(1)
    expect(words(h)).toEqual(['Put', '7', 'loads', 'on', 'Quarry,', '3', 'on', 'mill', 'lane.'])
    const [first, last] = [h.wordings[0]!.words[0]!, h.wordings[0]!.words.at(-1)!]
    expect(first.from).toBe(0)
    expect(last.to).toBeCloseTo(2, 9)
    expect(h.wordings[0]!.words.every(w => w.sure > 0.5 && w.sure < 0.9)).toBe(true)
    expect(h.wordings[0]!.weight).toBeCloseTo(first.sure, 9)
  })

  it('with words and segments has the times of the words and the confidence of their segment', async () => {
    answering = json({
      task: 'transcribe',
      language: 'english',
      duration: 2,
      text: 'Put fifteen loads. No, fifty.',
      words: [
        { word: 'Put', start: 0.1, end: 0.3 },
        { word: 'fifteen', start: 0.3, end: 0.7 },
        { word: 'loads', start: 0.7, end: 1 },
        { word: 'No', start: 1.2, end: 1.4 },
        { word: 'fifty', start: 1.4, end: 1.9 },
      ],
      segments: [
        { id: 0, start: 0, end: 1.1, text: ' Put fifteen loads.', avg_logprob: -0.1, no_speech_prob: 0.01, compression_ratio: 0.8 },
        { id: 1, start: 1.1, end: 2, text: ' No, fifty.', avg_logprob: -0.7, no_speech_prob: 0.02, compression_ratio: 0.8 },
      ],
    })
    const w = (await hear()).wordings[0]!
    expect(w.words.map(x => x.word)).toEqual(['Put', 'fifteen', 'loads.', 'No,', 'fifty.'])
    expect(w.words.map(x => [x.from, x.to])).toEqual([
      [0.1, 0.3],
      [0.3, 0.7],
      [0.7, 1],
      [1.2, 1.4],
      [1.4, 1.9],
    ])
    // a mean log probability is the logarithm (natural) of the tokens' geometric mean
    expect(w.words[1]!.sure).toBeCloseTo(Math.exp(-0.1), 9)
    expect(w.words[4]!.sure).toBeCloseTo(Math.exp(-0.7), 9)
    expect(w.weight).toBeCloseTo(Math.exp((3 * -0.1 + 2 * -0.7) / 5), 9)
  })

  it('with the words inside of the segments, each with its probability, keeps that', async () => {
    const inner = [
      { word: ' Nueve', start: 0.2, end: 0.6, probability: 0.42 },
      { word: ' cargas.', start: 0.6, end: 1.1, probability: 0.97 },
    ]
    answering = json({ text: 'Nueve cargas.', segments: [{ start: 0, end: 2, text: ' Nueve cargas.', avg_logprob: -0.2, words: inner }] })
    const w = (await hear()).wordings[0]!
    expect(w.words).toEqual([
      { word: 'Nueve', from: 0.2, to: 0.6, sure: 0.42 },
      { word: 'cargas.', from: 0.6, to: 1.1, sure: 0.97 },
    ])
  })

  it('with the log probabilities of tokens makes each word as sure as its least sure token', async () => {
    answering = (req, res, s) => {
      if (s.form.get('response_format') === 'verbose_json') return json(refusal('response_format is not compatible'), 400)(req, res, s)
      const logprobs = [
        { token: 'Open', logprob: -0.01, bytes: [] },
        { token: 'ed', logprob: -0.3, bytes: [] },
        { token: ' mill', logprob: -0.02, bytes: [] },
        { token: ' lane', logprob: -1.2, bytes: [] },
        { token: '.', logprob: 0, bytes: [] },
      ]
      json({ text: 'Opened mill lane.', logprobs })(req, res, s)
    }
    const e = ear()
    const w = (await e.hear(SOUND, FARM, 'en')).wordings[0]!
    expect(w.words.map(x => x.word)).toEqual(['Opened', 'mill', 'lane.'])
    for (const [k, p] of [-0.3, -0.02, -1.2].entries()) expect(w.words[k]!.sure).toBeCloseTo(Math.exp(p), 9)
    expect(sent.map(s => s.form.get('response_format'))).toEqual(['verbose_json', 'json'])
    expect(sent[1]!.form.getAll('include[]')).toEqual(['logprobs'])
    // what the server takes is remembered
    await e.hear(SOUND, FARM, 'en')
    expect(sent).toHaveLength(3)
    expect(sent[2]!.form.get('response_format')).toBe('json')
  })

  it('of a server that knows no options is asked for plainly in the end', async () => {
    answering = (req, res, s) =>
      s.form.has('include[]') || s.form.get('response_format') !== 'json'
        ? json(refusal('unknown field'), 422)(req, res, s)
        : json({ text: 'all good' })(req, res, s)
    expect(words(await hear())).toEqual(['all', 'good'])
    expect(sent).toHaveLength(3)
  })

  it('keeps a number with its point, and leaves a lone dash out', async () => {
    const text = 'Density 34.5% – walked 1,200 ft'
    answering = json({
      text,
      words: ['Density', '34.5%', 'walked', '1,200', 'ft'].map((word, k) => ({ word, start: k / 4, end: (k + 1) / 4 })),
    })
    const w = (await hear()).wordings[0]!.words
    expect(w.map(x => x.word)).toEqual(['Density', '34.5%', 'walked', '1,200', 'ft'])
    expect(w.map(x => x.from)).toEqual([0, 0.25, 0.5, 0.75, 1])
  })

  it('puts a word that was not timed between its neighbours', async () => {
    answering = json({
      text: 'put twenty-five loads on',
      words: [
        { word: 'put', start: 0, end: 0.2 },
        { word: 'twenty-', start: 0.2, end: 0.5 },
        { word: 'five', start: 0.5, end: 0.8 },
        { word: 'on', start: 1.4, end: 1.5 },
      ],
    })
    expect((await hear()).wordings[0]!.words.map(x => [x.word, x.from, x.to])).toEqual([
      ['put', 0, 0.2],
      ['twenty-five', 0.2, 0.8],
      ['loads', 0.8, 1.4],
      ['on', 1.4, 1.5],
    ])
  })

  it('of silence has no wordings', async () => {
    for (const body of [
      { text: '' },
      { text: ' … ' },
      { text: 'Thank you.', segments: [{ start: 0, end: 2, text: ' Thank you.', avg_logprob: -1.4, no_speech_prob: 0.9 }] },
      { text: 'on on on on', segments: [{ start: 0, end: 2, text: ' on on on on', avg_logprob: -0.1, compression_ratio: 3.1 }] },
    ]) {
      answering = json(body)
      expect((await hear()).wordings).toEqual([])
    }
  })

  it('keeps the speech beside a segment that is none', async () => {
    answering = json({
      text: 'Hail last night. Thank you.',
      segments: [
        { start: 0, end: 1, text: ' Hail last night.', avg_logprob: -0.2, no_speech_prob: 0.02 },
        { start: 1, end: 2, text: ' Thank you.', avg_logprob: -1.4, no_speech_prob: 0.9 },
      ],
    })
    expect(words(await hear())).toEqual(['Hail', 'last', 'night.'])
  })

  it('with odd fields beside the text is read for its text', async () => {
    answering = json({ text: 'six loads', words: [{ word: 6 }], segments: 'none', logprobs: [1], duration: 'long' })
    expect(words(await hear())).toEqual(['six', 'loads'])
  })
})

describe('what goes wrong is a fault with its code', () => {
  const fails = async (code: string, data: Record<string, unknown> = {}, o: Partial<EndpointOptions> = {}): Promise<void> => {
    await expect(hear(o)).rejects.toMatchObject({ name: 'EarFault', code, data })
  }

  it('a wrong key', async () => {
    for (const status of [401, 403]) {
      answering = json(refusal('no'), status)
      await fails('ear-key', { why: `HTTP ${status}` })
    }
    expect(sent).toHaveLength(2)
  })
  it('too many', async () => {
    answering = json(refusal('slow down'), 429)
    await fails('ear-busy', { why: 'HTTP 429' })
    expect(sent).toHaveLength(1)
  })
  it('an error of the server', async () => {
    for (const status of [404, 500, 503]) {
      answering = json(refusal('oops'), status)
      await fails('ear-refused', { why: `HTTP ${status}` })
    }
  })
  it('a form refused in every way', async () => {
    answering = json(refusal('no such model'), 400)
    await fails('ear-refused', { why: 'HTTP 400' })
    expect(sent).toHaveLength(3)
  })
  it('a note too large for the server', async () => {
    answering = json(refusal('too large'), 413)
    await fails('voice-too-large')
  })
  it('rubbish', async () => {
    for (const text of ['<html>welcome</html>', '', '{"text": "put 7']) {
      answering = (_, res) => void res.end(text)
      await fails('ear-answer', { why: 'JSON' })
    }
    for (const body of [{}, [], null, { text: 7 }, 'put 7 loads', { text: null }]) {
      answering = json(body)
      await fails('ear-answer', { why: 'text' })
    }
  })
  it('a body without end', async () => {
    let closed = false
    answering = (_, res) => {
      res.writeHead(200, { 'content-type': 'application/json' })
      res.on('close', () => {
        closed = true
      })
      const more = (): void => {
        while (!res.destroyed && res.write(' '.repeat(65_536)));
        if (!res.destroyed) res.once('drain', more)
      }
      more()
    }
    await fails('ear-answer', { why: expect.stringMatching(/\d/) })
    await expect.poll(() => closed).toBe(true)
  })
  it('no answer in time', async () => {
    answering = () => undefined
    await fails('ear-slow', { seconds: 1 }, { timeoutMs: 600 })
  })
  it('a body that stops half way', async () => {
    answering = (_, res) => {
      res.writeHead(200, { 'content-length': '1000' })
      res.write('{"text": "put')
    }
    await fails('ear-slow', { seconds: 1 }, { timeoutMs: 600 })
  })
  it('a dropped connection, before the answer or within it', async () => {
    answering = req => req.socket.destroy()
    await fails('ear-unreachable', { why: 'UND_ERR_SOCKET' })
    answering = (req, res) => {
      res.writeHead(200, { 'content-length': '1000' })
      res.write('{"text": "put', () => req.socket.destroy())
    }
    await fails('ear-unreachable', { why: 'UND_ERR_SOCKET' })
  })
  it('nobody there, without the address or the key in the error', async () => {
    const free = createServer()
    await new Promise<void>(done => {
      free.listen(0, '127.0.0.1', done)
    })
    const { port } = free.address() as AddressInfo
    await new Promise(done => free.close(done))
    const error = await hear({ url: `http://127.0.0.1:${port}/secretpath`, key: 'sesame' }).catch(e => e)
    expect(error).toMatchObject({ code: 'ear-unreachable', data: { why: 'ECONNREFUSED' } })
    expect(String(error)).not.toMatch(/secretpath|sesame/)
  })
  it('another address that it sends on to', async () => {
    answering = (_, res) => {
      res.writeHead(307, { location: `${base}/elsewhere` })
      res.end()
    }
    await fails('ear-unreachable', { why: expect.any(String) })
    expect(sent).toHaveLength(1)
  })
})

describe('ends', () => {
  it('with the reason of the signal, and lets the connection go', async () => {
    let gone = false
    const control = new AbortController()
    answering = (_, res) => {
      res.on('close', () => {
        gone = true
      })
      control.abort()
    }
    await expect(hear({}, control.signal)).rejects.toMatchObject({ name: 'AbortError' })
    await expect.poll(() => gone).toBe(true)
  })
  it('before anything is sent where the signal came first', async () => {
    await expect(hear({}, AbortSignal.abort())).rejects.toMatchObject({ name: 'AbortError' })
    expect(sent).toEqual([])
  })
  it('when it is closed', async () => {
    const e = ear()
    answering = () => e.close()
    await expect(e.hear(SOUND, FARM, 'en')).rejects.toMatchObject({ name: 'AbortError' })
  })
})

it('hears both languages, or those that the owner names', () => {
  expect(ear().langs).toEqual(['en', 'es'])
  expect(ear({ langs: ['en'] }).langs).toEqual(['en'])
})
