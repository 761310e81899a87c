/** The outbox where the round cannot be had or read: it is no reason to keep back, or to hide, what waits. */
import { IDBFactory } from 'fake-indexeddb'
import { beforeEach, describe, expect, it } from 'vitest'
import { FORMAT } from '../../src/features/offline/round-bundle.ts'
import {
  answering,
  down,
  good,
  type Network,
  nextId,
  outside,
  type Phone,
  phoneIn,
  sometimes,
  wordsOf,
} from '../support/phone.ts'
import { type TestYard, testYard } from '../support/yard-app.ts'

const TAGS = ['W-01', 'W-02', 'W-03']
const SITE = '4 Acacia Lane'

const intake = (tag: string): Record<string, unknown> => ({
  id: nextId(),
  colony: tag,
  kind: 'intake',
  on: '2026-05-30',
  by: 'Bram',
  removal: { type: 'wall', site: SITE },
  yard: 'North field',
  queen: 'unseen',
})

let yard: TestYard
let factory: IDBFactory
let phone: Phone

/** A helper's phone that has seen Today once, and a visit to two boxes that waits on it. */
beforeEach(async () => {
  yard = testYard({ day: '2026-06-01' })
  expect((await yard.send('beekeeper', TAGS.map(intake))).status).toBe(200)
  factory = new IDBFactory()
  phone = phoneIn(yard, 'helper', factory)
  expect(await phone.syncService.send()).toBe('done')
  phone.network(down)
  for (const tag of TAGS.slice(0, 2))
    expect((await phone.post(`/colony/${tag}/visit`, outside('2026-06-01', { note: tag }))).status).toBe(303)
})

const arrived = (): string[] =>
  [...yard.services.store.journal()].flatMap(({ entry }) =>
    entry.kind === 'inspection' ? [entry.note ?? ''] : [],
  )
const isRound = (path: string): boolean => path.startsWith('/phone/round')
const waiting = async (): Promise<number> => (await phone.syncService.state()).waiting

/** The yard's own round, in a format that is not ours. */
const otherFormat: Network = async (_path, reach) => {
  const { format: _, colonies, ...rest } = await (await reach()).json()
  return Response.json({ ...rest, format: FORMAT + 1, boxes: colonies })
}
const tooSlow: Network = () => Promise.reject(new DOMException('signal timed out', 'TimeoutError'))
/** Headers come, and the rest does not. */
const breaksOff: Network = async () =>
  new Response(new ReadableStream({ start: (to) => to.error(new TypeError('network error')) }))

describe('a round that does not come', () => {
  it.each<[string, Network]>([
    ['the server fails at it', answering(500, '<html>')],
    ['it is refused', answering(429)],
    ['it is of another format', otherFormat],
    ['it takes too long', tooSlow],
    ['it breaks off on the way', breaksOff],
  ])('keeps nothing back: %s', async (_, network) => {
    phone.network(sometimes(isRound, network))
    expect(await phone.syncService.send()).toBe('done')
    expect(arrived()).toEqual(['W-01', 'W-02'])
    expect(await phone.syncService.state()).toMatchObject({ waiting: 0, reached: true, signIn: false })
    // The round of before goes on being shown.
    phone.network(down)
    expect(wordsOf(await phone.open('/colony/W-01'))).toContain('W-01')
  })

  it('is told from no signal, in which nothing is handed over', async () => {
    for (const network of [down, tooSlow, answering(200, '<html>Welcome to the guest network</html>')]) {
      phone.network(network)
      expect(await phone.syncService.send()).toBe('no-answer')
      expect((await (await phone.database()).getAll('outbox')).map((w) => w.tries)).toEqual([0, 0])
    }
  })

  it('does not hide that the session has ended', async () => {
    phone.network(sometimes(isRound, answering(500)))
    phone.heldBy(null)
    expect(await phone.syncService.send()).toBe('sign-in')
    expect(await waiting()).toBe(2)
  })

  it('does not let one person’s entries go, or the round be seen, by the session of another', async () => {
    phone.network(sometimes(isRound, answering(500)))
    phone.heldBy('beekeeper')
    expect(await phone.syncService.send()).toBe('done')
    expect(arrived()).toEqual([])
    expect(await waiting()).toBe(2)
    await expect(phone.open('/')).rejects.toThrow('no page')
    phone.heldBy('helper')
    await phone.syncService.send()
    expect(arrived()).toEqual(['W-01', 'W-02'])
  })
})

describe('a kept round of another format', () => {
  /** The phone starts a version that reads another format than the one that kept the round. */
  beforeEach(async () => {
    const db = await phone.database()
    const kept = await db.get('kept', 'round')
    if (kept?.key !== 'round') throw new Error('no round was kept')
    const { viewer, zone } = kept.head
    await db.put('kept', {
      key: 'round',
      head: { format: FORMAT + 1, viewer, zone, told: 'otherwise' },
    } as never)
    await db.clear('colonies')
    await db.put('colonies', { id: 'a box', lines: [] } as never)
    db.close()
    phone = phoneIn(yard, 'helper', factory)
    phone.network(down)
  })

  it('leaves the outbox: what waits is listed, copied, changed, taken out', async () => {
    const list = wordsOf(await phone.open('/outbox'))
    expect(list).toContain('2 waiting to be sent')
    expect(list).toContain('W-01')
    expect(await phone.open('/outbox/entries.json')).toContain('"note": "W-02"')
    expect(await phone.open('/outbox/1')).toContain('W-01')
    const changed = await phone.post('/outbox/1', { on: '2026-06-01', opened: 'no', note: 'said otherwise' })
    expect(changed.to).toBe('/outbox')
    expect((await phone.post('/outbox/2/take-out', {})).to).toBe('/outbox')
    phone.network(good)
    await phone.syncService.send()
    expect(arrived()).toEqual(['said otherwise'])
  })

  it('is no page of the round, and takes no form of one', async () => {
    for (const path of ['/', '/round', '/colony/W-01', '/intake'])
      await expect(phone.open(path)).rejects.toThrow('no page')
    await expect(phone.post('/colony/W-01/visit', outside('2026-06-01'))).rejects.toThrow('takes no form')
    expect((await phone.syncService.state()).fetchedAt).toBeNull()
  })

  it('keeps nothing back, and gives way to the next round that can be read', async () => {
    phone.network(sometimes(isRound, answering(500)))
    expect(await phone.syncService.send()).toBe('done')
    expect(arrived()).toEqual(['W-01', 'W-02'])
    expect(await waiting()).toBe(0)
    phone.network(good)
    expect(await phone.syncService.send()).toBe('done')
    phone.network(down)
    expect(wordsOf(await phone.open('/'))).toContain('W-03')
    expect(wordsOf(await phone.open('/colony/W-01'))).toContain('W-01')
    expect(phone.errors).toEqual([])
  })
})

it('says who is signed in and no more, to nobody but them', async () => {
  const answer = await yard.ask('helper', '/phone/person', { headers: { Accept: 'application/json' } })
  expect(answer.headers.get('Cache-Control')).toBe('no-store')
  expect(Object.keys(await answer.json())).toEqual(['id', 'name', 'role', 'language'])
  expect((await yard.ask(null, '/phone/person', { headers: { Accept: 'application/json' } })).status).toBe(
    401,
  )
})
