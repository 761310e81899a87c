/** Letters, move-out records and the yard book over HTTP: who may, what an address opens, and that it can be taken back. */
import { beforeAll, describe, expect, test } from 'vitest'
import { limitsOf } from '../../../src/people/limits.ts'
import { digestOf } from '../../../src/people/tokens.ts'
import { given, inspection, intake, outcome } from '../../store/helpers.ts'
import { NAMES, type TestYard, testYard } from '../../support/yard-app.ts'

const SECRETS = ['Ms Invented', '12 Nowhere Lane', '47.31', 'Odalys', 'Bram', 'Teuila', 'Quarry', 'A-1']

let yard: TestYard
beforeAll(() => {
  yard = testYard({ day: '2026-06-12' })
  const result = yard.services.store.append(
    [
      intake('A-1', { removal: { type: 'wall', site: 'Ms Invented, 12 Nowhere Lane' } }),
      inspection('A-1', '2026-05-15', { eggs: 'single', onFreshComb: true, note: 'Ms Invented called' }),
      given('A-1', '2026-05-20', { what: 'treatment', product: 'Strips', cost: 47.31 }),
      intake('A-2'),
      outcome('A-2', '2026-06-01', { destination: 'Invented Orchard' }),
    ],
    { today: '2026-06-12', recordedAt: '2026-06-12T08:00:00.000Z', recordedBy: NAMES.beekeeper },
  )
  if (!result.ok) throw new Error(JSON.stringify(result.problems))
})

/** Makes a letter and gives its address. */
async function addressOf(fields: Record<string, string> = {}): Promise<string> {
  const page = await yard.post('beekeeper', '/colony/A-1/letter', {
    asOf: '2026-06-09',
    words: 'Thank you for calling us.',
    do: 'make',
    ...fields,
  })
  expect(page.status).toBe(200)
  const path = /\/letter\/[\w-]{43}/.exec(await page.text())?.[0]
  if (path === undefined) throw new Error('no address on the page')
  return path
}

const stranger = (path: string): Promise<Response> => yard.ask(null, path)

describe('a letter', () => {
  test('is looked at first: day 30 by itself, with nothing private', async () => {
    const page = await (await yard.ask('beekeeper', '/colony/A-1/letter')).text()
    expect(page).toContain('value="2026-06-09"')
    expect(page).toContain('Your bees, day 30')
    expect(yard.services.store.after.letters.list()).toEqual([])
  })

  test('is opened by its address without an account, and reveals nothing else', async () => {
    const path = await addressOf()
    const answer = await stranger(path)
    expect(answer.status).toBe(200)
    const text = await answer.text()
    expect(text).toContain('Your bees, day 30')
    expect(text).toContain('Thank you for calling us.')
    for (const secret of SECRETS) expect(text, secret).not.toContain(secret)
    expect(
      [...text.matchAll(/href="([^"]+)"/g)].map((m) => m[1]).filter((h) => !/^\/(assets|icon)/.test(h ?? '')),
    ).toEqual([])
    expect(answer.headers.get('x-robots-tag')).toContain('noindex')
    expect(text).toContain('<meta name="robots" content="noindex')
    expect(answer.headers.get('cache-control')).toBe('no-store')
    expect(answer.headers.get('set-cookie')).toBeNull()
  })

  test('keeps only the digest of its address', async () => {
    const path = await addressOf()
    const token = path.split('/').at(-1) ?? ''
    const rows = yard.services.connection.raw.prepare('SELECT * FROM customer_letter').all()
    expect(JSON.stringify(rows)).not.toContain(token)
    expect(JSON.stringify(rows)).toContain(digestOf(token))
  })

  test('cannot be opened any more once taken back, nor after a year', async () => {
    const path = await addressOf()
    const last = yard.services.store.after.letters.list()[0]
    await yard.post('beekeeper', `/letters/${last?.id}/revoke`, {})
    const answer = await stranger(path)
    expect(answer.status).toBe(404)
    expect(await answer.text()).toContain('There is no letter at this address')
    const other = await addressOf()
    yard.at('2027-06-13T12:00:00Z')
    expect((await stranger(other)).status).toBe(404)
    yard.at('2026-06-12T12:00:00Z')
    expect((await stranger(other)).status).toBe(200)
  })

  test('tells of the journal as it is corrected, but nothing of later days', async () => {
    const path = await addressOf({ asOf: '2026-05-16' })
    expect(await (await stranger(path)).text()).not.toContain('treated')
    const look = yard.services.store.colony('A-1')?.journal.find((r) => r.entry.kind === 'inspection')
    await yard.send('beekeeper', inspection('A-1', '2026-05-15', { eggs: 'none', replaces: look?.entry.id }))
    expect(await (await stranger(path)).text()).toContain('saw no eggs')
  })

  test('for a day that cannot be is refused in words, and nothing is made', async () => {
    const before = yard.services.store.after.letters.list().length
    for (const asOf of ['2026-05-09', '2026-06-13', 'soon']) {
      const answer = await yard.post('beekeeper', '/colony/A-1/letter', { asOf, do: 'make' })
      expect(answer.status).toBe(422)
      expect(await answer.text()).toContain('Not made yet')
    }
    expect(yard.services.store.after.letters.list()).toHaveLength(before)
  })

  test('addresses cannot be tried out for ever', async () => {
    const strict = testYard({ limits: limitsOf({ points: 3, window: 900 }, { points: 3, window: 900 }) })
    const statuses = []
    for (let i = 0; i < 5; i++)
      statuses.push((await strict.ask(null, `/letter/${'x'.repeat(42)}${i}`)).status)
    expect(statuses).toEqual([404, 404, 404, 429, 429])
  })

  test('is not for helpers, who cannot take one back either', async () => {
    const id = yard.services.store.after.letters.list().find((l) => l.revokedAt === null)?.id ?? ''
    expect((await yard.ask('helper', '/colony/A-1/letter')).status).toBe(403)
    expect((await yard.ask('helper', '/letters')).status).toBe(403)
    expect((await yard.post('helper', `/letters/${id}/revoke`, {})).status).toBe(403)
    expect(yard.services.store.after.letters.list().find((l) => l.id === id)?.revokedAt).toBeNull()
    expect(await (await yard.ask('helper', '/colony/A-1')).text()).not.toContain('/letter')
    expect(await (await yard.ask('beekeeper', '/letters')).text()).toContain(`/letters/${id}/revoke`)
  })
})

describe('a move-out record', () => {
  const fields = {
    base: '0',
    'buyer.name': 'Ms Invented',
    yard: 'Alder farm, Tay county',
    'permits.1.what': 'Transport permit',
    'permits.1.number': '47-B',
    price: '120',
  }

  test('is kept in versions, with who and when', async () => {
    expect((await yard.post('beekeeper', '/colony/A-2/move-record', fields)).status).toBe(303)
    await yard.post('operator', '/colony/A-2/move-record', { ...fields, base: '1', price: '130' })
    const id = yard.services.store.colony('A-2')?.summary.id ?? ''
    const versions = yard.services.store.after.records.of(id)
    expect(versions.map((v) => [v.version, v.savedBy, v.record.price])).toEqual([
      [2, NAMES.operator, 130],
      [1, NAMES.beekeeper, 120],
    ])
    expect(versions[0]?.record.permits).toEqual([{ what: 'Transport permit', number: '47-B' }])
    const old = await (await yard.ask('beekeeper', '/colony/A-2/move-record?version=1')).text()
    expect(old).toContain('value="120"')
    expect(old).toContain('This is an old version')
    expect(yard.services.store.verify()).toMatchObject({ ok: true })
  })

  test('that somebody else saved meanwhile is not overwritten unseen', async () => {
    const answer = await yard.post('beekeeper', '/colony/A-2/move-record', {
      ...fields,
      base: '1',
      price: '99',
    })
    expect(answer.status).toBe(422)
    const text = await answer.text()
    expect(text).toContain(`${NAMES.operator} saved this record meanwhile, as version 2`)
    expect(text).toContain('value="99"')
    expect(
      (await yard.post('beekeeper', '/colony/A-2/move-record', { ...fields, base: '2', price: '99' })).status,
    ).toBe(303)
  })

  test('with a paper that has no name is refused beside its row', async () => {
    const answer = await yard.post('beekeeper', '/colony/A-1/move-record', {
      base: '0',
      'permits.2.number': '5',
    })
    expect(answer.status).toBe(422)
    expect(await answer.text()).toContain('href="#f-permits_2_what"')
  })

  test('is not for helpers, and only operators erase it', async () => {
    expect((await yard.ask('helper', '/colony/A-2/move-record')).status).toBe(403)
    expect((await yard.post('helper', '/colony/A-2/move-record', fields)).status).toBe(403)
    expect((await yard.post('beekeeper', '/colony/A-2/move-record/erase', {})).status).toBe(403)
    const id = yard.services.store.colony('A-2')?.summary.id ?? ''
    expect(yard.services.store.after.records.of(id)).toHaveLength(3)
    expect((await yard.post('operator', '/colony/A-2/move-record/erase', {})).status).toBe(303)
    expect(yard.services.store.after.records.of(id)).toEqual([])
    await yard.post('operator', '/colony/A-2/move-record', { ...fields, base: '0' })
  })
})

describe('the yard book', () => {
  test('says where a colony went and by which permit, and names no customer and no buyer', async () => {
    const text = await (await yard.ask('beekeeper', '/yard-book?from=2026-05-01&to=2026-06-12')).text()
    expect(text).toContain('Alder farm, Tay county')
    expect(text).toContain('Transport permit 47-B')
    for (const secret of ['Ms Invented', '12 Nowhere Lane', '47.31', '120'])
      expect(text).not.toContain(secret)
  })

  test('comes as CSV too; a period that cannot be is refused', async () => {
    const csv = await yard.ask('beekeeper', '/yard-book/csv?table=movements&from=2026-05-01&to=2026-06-12')
    expect(csv.headers.get('content-type')).toContain('text/csv')
    expect(await csv.text()).toContain(
      '2026-06-01,A-2,moved-out,Quarry yard,"Alder farm, Tay county",Transport permit 47-B',
    )
    for (const query of ['from=soon', 'from=2026-06-02&to=2026-06-01', 'to=2026-02-30'])
      expect((await yard.ask('beekeeper', `/yard-book?${query}`)).status).toBe(422)
    expect((await yard.ask('beekeeper', '/yard-book/csv?table=customers')).status).toBe(422)
  })

  test('is not for helpers', async () => {
    expect((await yard.ask('helper', '/yard-book')).status).toBe(403)
    expect((await yard.ask('helper', '/yard-book/csv?table=colonies')).status).toBe(403)
  })
})

test('nothing of this was a bug of ours', () => {
  expect(yard.errors).toEqual([])
})
