/** Long pages made in a thread of their own: the same pages, and nobody waits for ever. */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath, pathToFileURL } from 'node:url'
import { HTTPException } from 'hono/http-exception'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { isLong } from '../../../src/node/reader/long-pages.ts'
import { type Question, type Reader, readerOf } from '../../../src/node/reader/reader.ts'
import { byDay, Dice, randomFrom, story } from '../../store/yard.ts'
import { built } from '../../support/build.ts'
import { ORIGIN, type TestYard, testYard } from '../../support/yard-app.ts'

const TODAY = '2026-07-01'
const OUTPUT = fileURLToPath(new URL('../../output/reader', import.meta.url))

const question = (path: string, more: Partial<Question> = {}): Question => ({
  method: 'GET',
  url: ORIGIN + path,
  headers: new Headers({ host: new URL(ORIGIN).host, accept: 'text/html' }),
  viewer: {
    id: 'o',
    name: 'Odalys',
    role: 'operator',
    state: 'active',
    language: null,
    createdAt: '',
    createdBy: null,
    session: 's',
  },
  now: new Date(`${TODAY}T12:00:00Z`),
  signal: new AbortController().signal,
  ...more,
})

describe('long pages from the thread', () => {
  const folder = mkdtempSync(join(tmpdir(), 'resettle-reader-'))
  let yard: TestYard
  let reader: Reader
  const bugs: unknown[] = []

  beforeAll(async () => {
    const file = join(folder, 'resettle.db')
    yard = testYard({ day: TODAY, file })
    const dice = new Dice(randomFrom(3))
    const told = Array.from({ length: 12 }, (_, n) =>
      story(dice, { tag: `T-${n}`, intakeOn: `2026-06-${10 + n}`, until: TODAY, stay: 40, leaves: n % 2 }),
    ).flat()
    for (const { day, entries } of byDay(told))
      yard.services.store.append(entries, { today: day, recordedAt: `${day}T18:00:00.000Z` })
    yard.services.store.refresh(TODAY)
    const program = pathToFileURL(await built('src/node/reader/thread.ts', OUTPUT))
    reader = readerOf({ program, file, zone: 'UTC', report: (error) => bugs.push(error) })
  })
  afterAll(async () => {
    await reader.close()
    yard.services.close()
    rmSync(folder, { recursive: true, force: true })
  })

  it.each([
    '/',
    '/yard',
    '/round',
    '/paper',
    '/labels',
    '/sheet-entry',
    '/health',
    '/supplies',
    '/supplies/stands',
    '/review',
    '/changes/csv',
    '/data/export',
    '/yard-book',
  ])('%s is what the server itself would answer', async (path) => {
    const [here, there] = [await yard.ask('operator', path), await reader.answer(question(path))]
    expect(there.status).toBe(200)
    expect(there.headers.get('content-type')).toBe(here.headers.get('content-type'))
    expect(withoutIds(await there.text())).toBe(withoutIds(await here.text()))
    expect(bugs).toEqual([])
  })

  it('shows what was written since', async () => {
    const note = {
      id: crypto.randomUUID(),
      colony: 'T-2',
      kind: 'note',
      on: TODAY,
      by: 'Bram',
      text: 'Loud at noon.',
    }
    expect((await yard.send('operator', [note])).status).toBe(200)
    expect(await (await reader.answer(question('/data/export'))).text()).toContain('Loud at noon.')
  })

  it('shows a helper no more than the server does', async () => {
    const viewer = { ...question('/').viewer, role: 'helper' as const }
    expect((await reader.answer(question('/review', { viewer }))).status).toBe(403)
    expect((await reader.answer(question('/phone/round', { viewer }))).status).toBe(200)
  })

  it('proves a backup, and says what is wrong with what is none', async () => {
    const copy = join(folder, 'copy.db')
    await yard.services.connection.raw.backup(copy)
    expect(await reader.prove(copy)).toBeNull()
    writeFileSync(copy, 'no database at all, but long enough to be looked at by whoever opens it')
    expect(await reader.prove(copy)).toContain('not a database')
  })

  it('cannot write', async () => {
    const { store } = yard.services
    const before = store.changes({ limit: 1 })[0]?.seq
    const posted = await reader.answer(question('/colony/T-2/outside-look', { method: 'POST' }))
    expect(posted.status).toBeGreaterThanOrEqual(300)
    expect(store.changes({ limit: 1 })[0]?.seq).toBe(before)
    bugs.length = 0
  })
})

/** Forms carry fresh ids. */
const withoutIds = (text: string): string => text.replace(/[0-9a-f]{8}-[0-9a-f]{4}-7[0-9a-f-]{21}/g, 'ID')

/** A thread that says what it is asked, in its own words; `/for-ever` holds it for ever. */
const STAND_IN = new URL(
  `data:text/javascript,${encodeURIComponent(`
    import { parentPort } from 'node:worker_threads'
    parentPort.on('message', (m) => {
      if (m.kind === 'ask') {
        parentPort.postMessage({ kind: 'begun', id: m.id })
        if (m.url.endsWith('/for-ever')) for (;;);
        if (m.url.endsWith('/dies')) process.exit(1)
        parentPort.postMessage({ kind: 'head', id: m.id, status: 200, headers: [['x-says', m.url]] })
      }
      if (m.kind === 'more') parentPort.postMessage({ kind: 'part', id: m.id, bytes: null })
    })`)}`,
)

describe('a page that is not to be had', () => {
  const times = { patience: 2000, grace: 20, idle: 10_000 }
  const standIn = (): Reader =>
    readerOf({ program: STAND_IN, file: '', zone: 'UTC', report: () => {}, times })

  it('is given up after a while, and does not keep the next one waiting', async () => {
    const reader = standIn()
    const late = await reader.answer(question('/for-ever')).catch((error: unknown) => error)
    expect(late).toBeInstanceOf(HTTPException)
    expect(late).toMatchObject({ status: 503 })
    await new Promise((done) => setTimeout(done, 100))
    expect((await reader.answer(question('/next'))).headers.get('x-says')).toBe(`${ORIGIN}/next`)
    await reader.close()
  })

  it.each([
    ['while it is made', 200],
    ['before the thread had started', 0],
  ])('is not made for somebody who went %s, and others get theirs', async (_when, after) => {
    const reader = readerOf({
      program: STAND_IN,
      file: '',
      zone: 'UTC',
      report: () => {},
      times: { ...times, patience: 20_000 },
    })
    const gone = new AbortController()
    const first = reader
      .answer(question('/for-ever', { signal: gone.signal }))
      .catch((error: unknown) => error)
    const second = reader.answer(question('/second'))
    if (after === 0) gone.abort()
    else setTimeout(() => gone.abort(), after)
    expect((await second).headers.get('x-says')).toBe(`${ORIGIN}/second`)
    expect(await first).toBeInstanceOf(HTTPException)
    await reader.close()
  })

  it('is an error where the thread ends by itself, and the next one starts another', async () => {
    const reader = standIn()
    await expect(reader.answer(question('/dies'))).rejects.toThrow('the reading thread ended')
    expect((await reader.answer(question('/next'))).status).toBe(200)
    await reader.close()
  })
})

it('only pages that grow with a large yard or a long past are long', () => {
  const large = () => ({ inYard: 1000, ever: 11_000 })
  const small = () => ({ inYard: 40, ever: 200 })
  for (const path of ['/', '/round', '/review', '/data/export']) {
    expect(isLong('GET', path, large)).toBe(true)
    expect(isLong('GET', path, small)).toBe(false)
    expect(isLong('POST', path, large)).toBe(false)
  }
  for (const path of ['/colony/A-1', '/colony/A-1/visit', '/intake', '/entries'])
    expect(isLong('GET', path, large)).toBe(false)
})

it('the yard by a word or in another order is made beside the requests where many have left', () => {
  const past = () => ({ inYard: 3, ever: 5000 })
  for (const search of [
    '?show=all&find=wall',
    '?sort=tag&show=left',
    '?yard=&find=a&sort=walk&show=left&phase=&page=1',
  ])
    expect(isLong('GET', '/yard', past, search)).toBe(true)
  // One page of those that left last is soon made.
  for (const search of [
    '',
    '?show=all',
    '?yard=&find=&sort=walk&show=left&phase=&page=7',
    '?show=in&sort=tag',
  ])
    expect(isLong('GET', '/yard', past, search)).toBe(false)
})
