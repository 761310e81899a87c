/** Handing a colony on, over HTTP: the list of what can go, the new keeper's sheet and its address, letters on day 30. */
import { beforeEach, describe, expect, test } from 'vitest'
import { inspection, intake, newId } from '../../store/helpers.ts'
import { NAMES, type TestYard, testYard } from '../../support/yard-app.ts'

let yard: TestYard
beforeEach(() => {
  yard = testYard({ day: '2026-06-10' })
  yard.services.store.settings.set('yardName', 'Quarry yard')
  const seen = { eggs: 'single', open: 'plenty', capped: 'worker', onFreshComb: true }
  const well = {
    ...seen,
    framesOfBees: 8,
    stores: 'enough',
    signs: [],
    temper: 2,
    queen: 'seen',
    cells: 'none',
  }
  const wash = {
    id: newId(),
    colony: 'A-1',
    kind: 'mite-wash',
    on: '2026-06-08',
    by: 'Odalys',
    bees: 300,
    mites: 1,
  }
  const result = yard.services.store.append(
    [
      intake('A-1', { queen: 'loose', removal: { type: 'wall', site: 'Ms Invented, 12 Nowhere Lane' } }),
      inspection('A-1', '2026-05-20', { ...seen, signs: [] }),
      inspection('A-1', '2026-06-08', well),
      wash,
      intake('A-2', { on: '2026-06-01', removal: { type: 'swarm' } }),
    ],
    { today: '2026-06-10', recordedAt: '2026-06-10T08:00:00.000Z', recordedBy: NAMES.beekeeper },
  )
  if (!result.ok) throw new Error(JSON.stringify(result.problems))
})
const text = async (path: string, role: Parameters<TestYard['ask']>[0] = 'beekeeper'): Promise<string> =>
  (await (await yard.ask(role, path)).text()).replaceAll(/\s+/g, ' ')
const paper = (until: string) =>
  yard.post('beekeeper', '/colony/A-1/move-record', {
    base: '0',
    'permits.1.what': 'Certificate of health',
    'permits.1.number': '12',
    'permits.1.until': until,
    wentAlong: 'Ten frames',
  })

describe('ready to go', () => {
  test('lists what is ready, and says what keeps it', async () => {
    const page = await text('/handing-on')
    expect(page).toContain('Ready to go: 1')
    expect(page).toContain('/colony/A-1/keeper-sheet')
    expect(page).not.toContain('/colony/A-2/keeper-sheet')
    expect(page).toContain('No paper is noted')
  })

  test.each([
    '/handing-on',
    '/colony/A-1/keeper-sheet',
    '/colony/A-1/move-record',
    '/colony/A-1/outcome?what=moved-out',
  ])('an ended certificate is said before it leaves: %s', async (path) => {
    await paper('2026-06-09')
    expect(await text(path)).toContain('Ended Tue 9 Jun: Certificate of health 12.')
    yard.at('2026-06-09T12:00:00Z')
    expect(await text(path)).not.toContain('Ended Tue')
  })
})

describe('the sheet for the new keeper', () => {
  const address = async (): Promise<string> => {
    const page = await (await yard.post('beekeeper', '/colony/A-1/keeper-sheet', {})).text()
    const path = /\/keeper\/[\w-]{43}/.exec(page)?.[0]
    if (path === undefined) throw new Error('no address on the page')
    return path
  }

  test('is opened by its address without an account, names no customer, and leads nowhere', async () => {
    await paper('2026-07-01')
    const path = await address()
    const answer = await yard.ask(null, path)
    expect(answer.status).toBe(200)
    const page = await answer.text()
    expect(page).toContain('The queen they came with')
    expect(page).toContain('Ten frames')
    expect(page).toContain('one in five')
    expect(page).not.toMatch(/Invented|Nowhere|Odalys|Bram|stand 3/)
    const links = [...page.matchAll(/href="([^"]+)"/g)].map((m) => m[1] ?? '')
    expect(links.filter((href) => !/^\/(assets|icon)/.test(href))).toEqual([])
    expect(page).toContain('<meta name="robots" content="noindex')
  })

  test('is taken back, and is no letter: neither opens at the other’s address', async () => {
    const path = await address()
    const token = path.split('/').at(-1)
    expect((await yard.ask(null, `/letter/${token}`)).status).toBe(404)
    const id = yard.services.store.after.letters.list()[0]?.id
    await yard.post('beekeeper', `/letters/${id}/revoke`, { back: '/colony/A-1/keeper-sheet' })
    expect((await yard.ask(null, path)).status).toBe(404)
  })

  test('tells the day it was made of, when the colony has left since', async () => {
    const path = await address()
    yard.at('2026-06-20T12:00:00Z')
    const left = {
      id: newId(),
      colony: 'A-1',
      kind: 'outcome',
      on: '2026-06-12',
      by: 'Odalys',
      what: 'moved-out',
    }
    expect((await yard.send('beekeeper', [left])).status).toBe(200)
    expect(await (await yard.ask(null, path)).text()).toContain('The queen they came with')
    expect(await text('/colony/A-1/keeper-sheet')).toContain('The queen they came with')
  })

  test('is not for helpers', async () => {
    for (const path of ['/handing-on', '/colony/A-1/keeper-sheet'])
      expect((await yard.ask('helper', path)).status).toBe(403)
    expect((await yard.post('helper', '/colony/A-1/keeper-sheet', {})).status).toBe(403)
    expect(yard.services.store.after.letters.list()).toEqual([])
  })
})

describe('a season later', () => {
  beforeEach(() => {
    const left = {
      id: newId(),
      colony: 'B-1',
      kind: 'outcome',
      on: '2026-03-05',
      by: 'Odalys',
      what: 'moved-out',
    }
    const result = yard.services.store.append([intake('B-1', { on: '2026-01-20', queen: 'loose' }), left], {
      today: '2026-03-05',
      recordedAt: '2026-03-05T18:00:00.000Z',
      recordedBy: NAMES.beekeeper,
    })
    if (!result.ok) throw new Error(JSON.stringify(result.problems))
  })
  const address = async (tag: string): Promise<string> => {
    const page = await (await yard.post('beekeeper', `/colony/${tag}/keeper-sheet`, {})).text()
    return /\/keeper\/[\w-]{43}/.exec(page)?.[0] ?? ''
  }
  const told = () => {
    const id = yard.services.store.colony('B-1')?.summary.id
    return id === undefined ? [] : (yard.services.store.after.records.of(id)[0]?.record.followUps ?? [])
  }

  test('the new keeper tells at the sheet’s address how it is, once it has moved out', async () => {
    const here = await address('A-1')
    expect(await (await yard.ask(null, here)).text()).not.toContain('How is it now?')
    expect((await yard.post(null, here, { found: 'alive' })).status).toBe(404)
    const path = await address('B-1')
    expect(await (await yard.ask(null, path)).text()).toContain('How is it now?')
    expect((await yard.post(null, path, {})).status).toBe(422)
    expect((await yard.post(null, path, { found: 'alive', queenright: 'yes' })).status).toBe(303)
    expect(told()).toEqual([{ on: '2026-06-10', found: 'alive', queenright: true, by: 'the new keeper' }])
    expect((await yard.post(null, `${path.slice(0, -2)}__`, { found: 'alive' })).status).toBe(404)
  })

  test('is asked for once: not before, not after an answer, not again', async () => {
    const asked = async (): Promise<boolean> => /follow-up">B-1</.test(await text('/handing-on'))
    yard.at('2026-06-02T12:00:00Z')
    expect(await asked()).toBe(false)
    yard.at('2026-06-03T12:00:00Z')
    expect(await asked()).toBe(true)
    expect((await yard.post('beekeeper', '/colony/B-1/follow-up/asked', {})).status).toBe(303)
    expect(await asked()).toBe(false)
  })

  test('is written down by a beekeeper, kept when the record is saved, and not for helpers', async () => {
    const answer = { found: 'dead', on: '2026-06-10', deadSince: '2026-06-01' }
    const post = async (more: Record<string, string>, role: 'beekeeper' | 'helper' = 'beekeeper') =>
      (await yard.post(role, '/colony/B-1/follow-up', { ...answer, ...more })).status
    expect(await post({ on: '2026-03-01' })).toBe(422)
    expect(await post({ on: '2026-06-11' })).toBe(422)
    expect(await post({})).toBe(303)
    expect(await text('/colony/B-1/follow-up')).toContain('dead or gone')
    await yard.post('beekeeper', '/colony/B-1/move-record', { base: '1', wentAlong: 'Five frames' })
    expect(told()).toMatchObject([{ on: '2026-06-10', found: 'dead', deadSince: '2026-06-01' }])
    expect((await yard.ask('helper', '/colony/B-1/follow-up')).status).toBe(403)
    expect(await post({}, 'helper')).toBe(403)
  })
})

describe('the customer’s letter', () => {
  const offered = async (): Promise<boolean> => (await text('/letters')).includes('href="/colony/A-1/letter"')
  test('is offered from day 30 on, until it is written or a month has gone by', async () => {
    yard.at('2026-06-08T12:00:00Z')
    expect(await offered()).toBe(false)
    yard.at('2026-06-09T12:00:00Z')
    expect(await offered()).toBe(true)
    expect(await text('/handing-on')).toContain('/colony/A-1/letter')
    // A line on Today, for those who may see customers.
    expect(await text('/')).toContain('1 letter about day 30')
    expect(await (await yard.ask('helper', '/')).text()).not.toContain('about day 30')
    yard.at('2026-07-10T12:00:00Z')
    expect(await offered()).toBe(false)
    yard.at('2026-06-10T12:00:00Z')
    await yard.post('beekeeper', '/colony/A-1/letter', { asOf: '2026-06-09', do: 'make' })
    expect(await offered()).toBe(false)
    expect(await text('/')).not.toContain('about day 30')
  })
  test('is not offered where nobody’s address is known', async () => {
    yard.at('2026-07-02T12:00:00Z')
    expect(await text('/letters')).not.toContain('href="/colony/A-2/letter"')
  })
})
