/** The outbox between a phone and the yard, over a network that fails in every way the field knows. */
import { beforeEach, describe, expect, it } from 'vitest'
import type { Entry } from '../../src/journal/entry.ts'
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

const TAGS = Array.from({ length: 12 }, (_, i) => `W-${String(i + 1).padStart(2, '0')}`)

const intake = (tag: string, n: number): Record<string, unknown> => ({
  id: nextId(),
  colony: tag,
  kind: 'intake',
  on: '2026-05-30',
  by: 'Bram',
  removal: { type: 'wall', site: '4 Acacia Lane' },
  yard: 'North field',
  stand: String(n + 1),
  queen: 'unseen',
  brood: { eggs: 0.5, open: 1, capped: 1 },
})

let yard: TestYard
let phone: Phone

/** A yard of twelve boxes, and a helper's phone that has seen Today once. */
beforeEach(async () => {
  yard = testYard({ day: '2026-06-01' })
  const sent = await yard.send('beekeeper', TAGS.map(intake))
  expect(sent.status).toBe(200)
  phone = phoneIn(yard)
  expect(await phone.syncService.send()).toBe('done')
  phone.asked.length = 0
})

const journal = (): Entry[] => [...yard.services.store.journal()].map((r) => r.entry)
/** What came after the intakes, by tag and time, in the order in which the server came to know it. */
const recorded = (): string[] =>
  journal()
    .filter((e) => e.kind !== 'intake')
    .map(
      (e) =>
        `${yard.services.store.colony(e.colony)?.summary.tag} ${e.on} ${e.kind}${e.at === undefined ? '' : ` ${e.at}`}`,
    )
const waiting = async (): Promise<number> => (await phone.syncService.state()).waiting

/** Taps a visit from outside into the phone. */
async function visits(...tags: string[]): Promise<void> {
  for (const tag of tags) {
    const answer = await phone.post(`/colony/${tag}/visit`, outside('2026-06-01'))
    expect(answer.status, answer.html).toBe(303)
  }
}
const expected = (...tags: string[]): string[] => tags.map((tag) => `${tag} 2026-06-01 inspection`)
const isEntry = (path: string): boolean => path === '/entries'
/** The yard takes it, and its answer never arrives. */
const lost: Network = async (path, reach) => {
  await reach()
  return down(path, reach)
}
/** The nth request (from 1) that carries an entry goes the other way. */
function onEntry(n: number, other: Network): Network {
  let seen = 0
  return sometimes((path) => isEntry(path) && ++seen === n, other)
}

describe('a round without signal', () => {
  it('arrives whole, in the order in which it was tapped, exactly once, over a change of date', async () => {
    phone.network(down)
    await visits(...TAGS.slice(0, 6))
    phone.at('2026-06-02T07:00:00Z')
    for (const tag of TAGS.slice(6))
      expect((await phone.post(`/colony/${tag}/visit`, outside('2026-06-02'))).status).toBe(303)
    expect(await waiting()).toBe(12)
    expect(await phone.syncService.send()).toBe('no-answer')
    expect(recorded()).toEqual([])

    yard.at('2026-06-02T18:00:00Z')
    phone.network(good)
    expect(await phone.syncService.send()).toBe('done')
    expect(await waiting()).toBe(0)
    expect(recorded()).toEqual([
      ...expected(...TAGS.slice(0, 6)),
      ...TAGS.slice(6).map((tag) => `${tag} 2026-06-02 inspection`),
    ])
    await phone.syncService.send()
    expect(recorded()).toHaveLength(12)
    expect(journal().every((e) => e.kind === 'intake' || e.by === 'Teuila')).toBe(true)
  })

  it('makes the plan anew every day, and counts at once what waits', async () => {
    phone.network(down)
    const first = wordsOf(await phone.open('/colony/W-01'))
    phone.at('2026-06-05T12:00:00Z')
    const later = wordsOf(await phone.open('/colony/W-01'))
    expect(first).toContain('Day 2')
    expect(later).toContain('Day 6')
    const seen = { opened: 'yes', eggs: 'single', open: 'some', onFreshComb: 'yes' }
    const saved = await phone.post('/colony/W-01/visit', outside('2026-06-05', seen))
    const page = wordsOf(await phone.open(saved.to))
    expect(page).toContain('1 waiting to be sent')
    expect(page).toContain('Eggs of its own')
  })

  it('takes a new colony, visits to it, and a move', async () => {
    phone = phoneIn(yard, 'beekeeper')
    await phone.syncService.send()
    phone.network(down)
    const id = nextId()
    const form = {
      id,
      colony: 'N-1',
      yard: 'South field',
      newYard: 'yes',
      on: '2026-06-01',
      'removal.type': 'swarm',
      queen: 'loose',
    }
    const made = await phone.post('/intake', form)
    expect(made.to).toBe(`/colony/N-1?saved=${id}`)
    await phone.post('/colony/N-1/visit', outside('2026-06-01'))
    await phone.post('/colony/N-1/move', { id: nextId(), on: '2026-06-01', yard: 'North field', stand: '40' })
    expect(wordsOf(await phone.open('/colony/N-1'))).toContain('North field, stand 40')
    expect(wordsOf(await phone.open('/intake'))).not.toContain('N-1')

    phone.network(good)
    expect(await phone.syncService.send()).toBe('done')
    expect(yard.services.store.colony('N-1')?.summary).toMatchObject({ id, yard: 'North field', stand: '40' })
  })

  it('is judged as the server would: what contradicts the history comes back filled in', async () => {
    phone.network(down)
    const early = await phone.post('/colony/W-01/visit', outside('2026-05-20', { note: 'a long look' }))
    expect(early.status).toBe(422)
    expect(early.html).toContain('a long look')
    expect(wordsOf(early.html)).toContain('before the intake')
    expect(await waiting()).toBe(0)
  })

  it('keeps the same form once, however often it is pressed', async () => {
    phone.network(down)
    const form = outside('2026-06-01')
    await Promise.all([1, 2, 3].map(() => phone.post('/colony/W-01/visit', form)))
    expect(await waiting()).toBe(1)
  })

  it('keeps several things done on one visit together, in order', async () => {
    phone.network(down)
    const more = { 'id.given1.': nextId(), 'given1.what': 'syrup', 'given1.litres': '1' }
    await phone.post('/colony/W-01/visit', outside('2026-06-01', more))
    expect(await waiting()).toBe(2)
    phone.network(good)
    await phone.syncService.send()
    expect(recorded()).toEqual(['W-01 2026-06-01 inspection', 'W-01 2026-06-01 given'])
  })
})

describe('an entry leaves the outbox only when the server has named its id', () => {
  const unnamed: [string, Network][] = [
    [
      'a page of another network with status 200',
      answering(200, '<html>Welcome to the guest network</html>'),
    ],
    [
      'an answer that names another id',
      answering(200, JSON.stringify({ accepted: ['another'], already: [] })),
    ],
    ['an empty answer', answering(200)],
    ['a 404', answering(404, '<html>')],
    ['a 403 that is not ours', answering(403, '<html>')],
    ['a 429', answering(429)],
    ['a 500', answering(500, '<html>')],
    ['a 503 of the disk', answering(503, JSON.stringify({ error: 'busy' }))],
    ['no answer', down],
  ]
  it.each(unnamed)('not on %s', async (_, other) => {
    phone.network(down)
    await visits('W-01', 'W-02', 'W-03')
    phone.network(onEntry(2, other))
    expect(await phone.syncService.send()).toBe('no-answer')
    expect(await waiting()).toBe(2)
    expect(recorded()).toEqual(expected('W-01'))
    phone.network(good)
    await phone.syncService.send()
    expect(recorded()).toEqual(expected('W-01', 'W-02', 'W-03'))
  })

  it('not when the answer was lost after it was written; and it is written once', async () => {
    phone.network(down)
    await visits('W-01', 'W-02', 'W-03')
    phone.network(onEntry(2, lost))
    expect(await phone.syncService.send()).toBe('no-answer')
    expect(recorded()).toEqual(expected('W-01', 'W-02'))
    expect(await waiting()).toBe(2)
    phone.network(good)
    await phone.syncService.send()
    expect(recorded()).toEqual(expected('W-01', 'W-02', 'W-03'))
    expect(await waiting()).toBe(0)
  })

  it('gives way to the others when the server fails at one of them every time', async () => {
    phone.network(down)
    await visits('W-01', 'W-02', 'W-03', 'W-02')
    const broken: Network = async (path, reach) => {
      const second = (await phone.database().then((db) => db.getAll('outbox'))).find((w) => w.tag === 'W-02')
      return isEntry(path) && second?.tries !== 0 && recorded().length === 1 && (second?.tries ?? 0) <= 5
        ? new Response('{}', { status: 500 })
        : reach()
    }
    phone.network(broken)
    for (let i = 0; i < 4; i++) expect(await phone.syncService.send()).toBe('no-answer')
    expect(recorded()).toEqual(expected('W-01'))
    await phone.syncService.send()
    await phone.syncService.send()
    expect([...recorded()].sort()).toEqual(expected('W-01', 'W-02', 'W-02', 'W-03'))
  })

  it('is never sent by two at once', async () => {
    phone.network(down)
    await visits(...TAGS)
    phone.network(good)
    await Promise.all([phone.syncService.send(), phone.syncService.send(), phone.syncService.send()])
    expect(recorded()).toEqual(expected(...TAGS))
    expect(phone.asked.filter((a) => a === 'POST /entries')).toHaveLength(12)
  })
})

describe('the session', () => {
  it('ended: everything is kept, somebody is asked to sign in, then it goes', async () => {
    phone.network(down)
    await visits('W-01', 'W-02')
    phone.network(good)
    phone.heldBy(null)
    expect(await phone.syncService.send()).toBe('sign-in')
    expect(await phone.syncService.state()).toMatchObject({ waiting: 2, signIn: true })
    expect(wordsOf(await phone.open('/outbox'))).toContain('Sign in, and they go')
    await visits('W-03')
    expect(await waiting()).toBe(3)
    phone.heldBy('helper')
    expect(await phone.syncService.send()).toBe('done')
    expect(recorded()).toEqual(expected('W-01', 'W-02', 'W-03'))
    expect(await phone.syncService.state()).toMatchObject({ waiting: 0, signIn: false })
  })

  it('of somebody else sends nothing that is not theirs; it goes when its owner is back', async () => {
    phone.network(down)
    await visits('W-01')
    phone.network(good)
    phone.heldBy('beekeeper')
    expect(await phone.syncService.send()).toBe('done')
    expect(recorded()).toEqual([])
    expect(wordsOf(await phone.open('/outbox'))).toContain('Goes when Teuila signs in on this phone')
    await visits('W-02')
    await phone.syncService.send()
    expect(recorded()).toEqual(expected('W-02'))
    phone.heldBy('helper')
    await phone.syncService.send()
    expect(recorded()).toEqual(expected('W-02', 'W-01'))
    expect(
      journal()
        .slice(-2)
        .map((e) => e.by),
    ).toEqual(['Bram', 'Teuila'])
  })

  it('signed out: the round is forgotten, the outbox is not', async () => {
    phone.network(down)
    await visits('W-01')
    await phone.syncService.signedOut()
    const db = await phone.database()
    expect(await db.getAll('colonies')).toEqual([])
    expect(await db.get('kept', 'round')).toBeUndefined()
    expect(await waiting()).toBe(1)
    await expect(phone.open('/')).rejects.toThrow('no page')
    phone.network(good)
    await phone.syncService.send()
    expect(recorded()).toEqual(expected('W-01'))
  })
})

describe('what the server will not have', () => {
  /** While the phone was away, W-02 was taken out of the yard. */
  async function refusedInTheMiddle(): Promise<void> {
    phone.network(down)
    await visits('W-01', 'W-02', 'W-03')
    const left = {
      id: nextId(),
      colony: 'W-02',
      kind: 'outcome',
      what: 'moved-out',
      on: '2026-05-31',
      by: 'Bram',
    }
    expect((await yard.send('beekeeper', left)).status).toBe(200)
    phone.network(good)
    await phone.syncService.send()
  }

  it('stays with the server’s sentence, and does not hold up the rest', async () => {
    await refusedInTheMiddle()
    expect(recorded()).toEqual(['W-02 2026-05-31 outcome', ...expected('W-01', 'W-03')])
    expect(await phone.syncService.state()).toMatchObject({ waiting: 0, refused: 1 })
    const page = wordsOf(await phone.open('/outbox'))
    expect(page).toContain('1 not accepted')
    expect(page).toContain('after the colony left the yard')
    await phone.syncService.send()
    expect(recorded()).toHaveLength(3)
    expect(await phone.syncService.state()).toMatchObject({ refused: 1 })
  })

  it('can be sent again as it is, once the reason is gone', async () => {
    await refusedInTheMiddle()
    const outcome = journal().find((e) => e.kind === 'outcome')
    const back = {
      id: nextId(),
      colony: 'W-02',
      kind: 'withdrawal',
      replaces: outcome?.id,
      on: '2026-06-01',
      by: 'Bram',
      reason: 'wrong box',
    }
    expect((await yard.send('beekeeper', back)).status).toBe(200)
    const [stuck] = await (await phone.database()).getAll('outbox')
    await phone.syncService.send()
    await phone.post(`/outbox/${stuck?.n}/again`, {})
    await phone.syncService.send()
    expect(await phone.syncService.state()).toMatchObject({ waiting: 0, refused: 0 })
    expect(recorded()).toContain('W-02 2026-06-01 inspection')
  })

  it('can be taken out', async () => {
    await refusedInTheMiddle()
    const [stuck] = await (await phone.database()).getAll('outbox')
    expect(wordsOf(await phone.open(`/outbox/${stuck?.n}/take-out`))).toContain('cannot be got back')
    await phone.post(`/outbox/${stuck?.n}/take-out`, {})
    expect(await phone.syncService.state()).toMatchObject({ waiting: 0, refused: 0 })
  })

  it('too large (413): kept with a sentence', async () => {
    phone.network(down)
    await visits('W-01', 'W-02')
    phone.network(onEntry(1, answering(413, '<html>')))
    await phone.syncService.send()
    expect(recorded()).toEqual(expected('W-02'))
    expect(wordsOf(await phone.open('/outbox'))).toContain('larger than the server takes')
  })

  it('an intake whose tag was taken meanwhile: its visits wait for it, and go once it is mended', async () => {
    phone = phoneIn(yard, 'beekeeper')
    await phone.syncService.send()
    phone.network(down)
    const id = nextId()
    const form = {
      id,
      colony: 'N-1',
      yard: 'South field',
      newYard: 'yes',
      on: '2026-06-01',
      'removal.type': 'swarm',
      queen: 'loose',
    }
    await phone.post('/intake', form)
    await phone.post('/colony/N-1/visit', outside('2026-06-01'))
    await visits('W-01')
    await yard.send('beekeeper', { ...intake('N-1', 50), id: nextId() })
    phone.network(good)
    await phone.syncService.send()
    expect(recorded()).toEqual(expected('W-01'))
    expect(await phone.syncService.state()).toMatchObject({ waiting: 1, refused: 1 })
    const list = wordsOf(await phone.open('/outbox'))
    expect(list).toContain('give this one another tag')
    expect(list).toContain('Goes after the one it rests on has been mended')

    const [stuck] = await (await phone.database()).getAll('outbox')
    const again = await phone.post(`/outbox/${stuck?.n}`, { ...form, colony: 'N-2' })
    expect(again.status, wordsOf(again.html)).toBe(303)
    await phone.syncService.send()
    expect(await phone.syncService.state()).toMatchObject({ waiting: 0, refused: 0 })
    expect(yard.services.store.colony('N-2')?.summary.id).toBe(id)
    expect(yard.services.store.colony('N-2')?.journal).toHaveLength(2)
  })
})

describe('changing what waits', () => {
  const number = async (): Promise<number> => (await (await phone.database()).getAll('outbox'))[0]?.n ?? 0

  it('in place while nobody else can have it', async () => {
    phone.network(down)
    await phone.post('/colony/W-01/visit', outside('2026-06-01', { note: 'two dead bees' }))
    expect(await phone.syncService.send()).toBe('no-answer')
    const n = await number()
    expect(await phone.open(`/outbox/${n}`)).toContain('two dead bees')
    const changed = await phone.post(`/outbox/${n}`, {
      on: '2026-06-01',
      opened: 'no',
      note: 'twenty dead bees',
    })
    expect(changed.to).toBe('/outbox')
    phone.network(good)
    await phone.syncService.send()
    expect(journal().at(-1)).toMatchObject({ kind: 'inspection', note: 'twenty dead bees' })
    expect(recorded()).toHaveLength(1)
  })

  it('comes back filled in when it is wrong, and stays as it was', async () => {
    phone.network(down)
    await visits('W-01')
    const n = await number()
    const wrong = await phone.post(`/outbox/${n}`, { on: '2026-05-01', opened: 'no', note: 'kept words' })
    expect(wrong.status).toBe(422)
    expect(wrong.html).toContain('kept words')
    expect((await (await phone.database()).getAll('outbox'))[0]?.entry.on).toBe('2026-06-01')
  })

  it('by a correction, when the server may have it: both are in the journal, the later one stands', async () => {
    phone.network(down)
    const form = outside('2026-06-01', { note: 'two dead bees' })
    await phone.post('/colony/W-01/visit', form)
    phone.network(sometimes(isEntry, lost))
    await phone.syncService.send()
    phone.network(down)
    const way = await phone.syncService.page(new Request(`http://yard.test/outbox/${await number()}`))
    expect(way?.headers.get('Location')).toBe(`/entry/${form['id.']}/correct`)
    const changed = { id: nextId(), on: '2026-06-01', opened: 'no', note: 'twenty dead bees' }
    expect((await phone.post(`/entry/${form['id.']}/correct`, changed)).status).toBe(303)
    expect(await waiting()).toBe(2)
    phone.network(good)
    await phone.syncService.send()
    expect(recorded()).toHaveLength(2)
    expect(yard.services.store.colony('W-01')?.history.entries.at(-1)).toMatchObject({
      note: 'twenty dead bees',
    })
  })
})

describe('a photo that waits with its visit', () => {
  it('is seen in the outbox, and before the visit is taken out', async () => {
    const id = 'b'.repeat(64)
    const bytes = new Uint8Array([1])
    await (await phone.database()).put('photos', { id, bytes, keptAt: '2026-06-01T12:00:00Z', sent: false })
    phone.network(down)
    const visit = outside('2026-06-01', { photos: id })
    expect((await phone.post('/colony/W-01/visit', visit)).status).toBe(303)
    for (const path of ['/outbox', '/outbox/1/take-out'])
      expect(await phone.open(path), path).toContain(`<img src="/photos/${id}"`)
  })
})

describe('two phones at one box on one day', () => {
  it('both visits land, in the plan and on the page, which says that there were two', async () => {
    const other = phoneIn(yard, 'beekeeper')
    await other.syncService.send()
    phone.network(down)
    other.network(down)
    await phone.post('/colony/W-01/visit', outside('2026-06-01', { stores: 'low' }))
    await other.post(
      '/colony/W-01/visit',
      outside('2026-06-01', { opened: 'yes', eggs: 'single', onFreshComb: 'yes' }),
    )
    phone.network(good)
    other.network(good)
    await phone.syncService.send()
    await other.syncService.send()
    const entries = yard.services.store.colony('W-01')?.history.entries.filter((e) => e.kind === 'inspection')
    expect(entries?.map((e) => e.by).sort()).toEqual(['Bram', 'Teuila'])
    expect(yard.services.store.colony('W-01')?.summary.phase).toBe('laying')
    const page = wordsOf(await (await yard.ask('operator', '/colony/W-01')).text())
    expect(page).toMatch(/Two people looked at it on Mon 1 Jun: (Bram and Teuila|Teuila and Bram)/)
    expect(await phone.syncService.send()).toBe('done')
    expect(wordsOf(await phone.open('/colony/W-01'))).toContain('Two people looked at it')
  })
})
