/**
 * What somebody may not see cannot be found out by trying either: an answer that tells right from wrong tells everything
 * that can be counted. And the limits on guessing shut out the guesser, not the crew at the same address.
 */
import { beforeEach, describe, expect, test } from 'vitest'
import { API } from '../../src/features/api/operations.ts'
import { limitsOf } from '../../src/people/limits.ts'
import { given, intake, newId } from '../store/helpers.ts'
import { NAMES, ORIGIN, type TestYard, testYard, unlimited } from '../support/yard-app.ts'

const DAY = '2026-06-01'
const HIDDEN = 47.31
let yard: TestYard

const costOf = (id: string): unknown => {
  const entry = yard.services.store.entry(id)?.entry
  return entry?.kind === 'given' ? entry.cost : undefined
}

const tokenOf = async (role: 'operator' | 'helper'): Promise<string> => {
  await yard.session(role)
  const person = yard.services.people.accounts.byName(NAMES[role])
  if (person === null) throw new Error('nobody')
  const made = yard.services.tokens.make({ person, name: 'x', scopes: ['read', 'write'], days: 30 })
  if (!made.ok) throw new Error(made.problems[0]?.message)
  return made.value.token
}

const byProgram = (token: string, entries: unknown): Promise<Response> =>
  Promise.resolve(
    yard.app.request(`${ORIGIN}${API}/entries`, {
      method: 'POST',
      headers: { Authorization: `Bearer ${token}`, 'Content-Type': 'application/json' },
      body: JSON.stringify(entries),
    }),
  )

const answer = async (response: Response | Promise<Response>): Promise<string> => {
  const { status } = await response
  return `${status} ${await (await response).text()}`
}

describe('a helper who sends an entry again with one price after the other', () => {
  const bought = given('A-1', '2026-05-12', { what: 'mated-queen', cost: HIDDEN })
  const own = given('A-1', '2026-05-13', { what: 'syrup', litres: 1 })
  /** Of the helper's own entry, by somebody who knows the price. */
  const priced = { ...own, id: newId(), replaces: own.id, cost: HIDDEN }

  beforeEach(() => {
    yard = testYard({ day: DAY })
    for (const [entries, recordedBy] of [
      [[intake('A-1'), bought], NAMES.operator],
      [[own], NAMES.helper],
      [[priced], NAMES.operator],
    ] as const) {
      const written = yard.services.store.append(entries, {
        today: DAY,
        recordedAt: `${DAY}T08:00:00.000Z`,
        recordedBy,
      })
      if (!written.ok) throw new Error(JSON.stringify(written.problems))
    }
  })

  const GUESSES = [undefined, 12, HIDDEN - 0.01, HIDDEN, HIDDEN + 0.01, 900]

  test.each([
    ['an entry', bought],
    ['a correction', priced],
  ])('is told the same whatever the price: %s from a phone', async (_what, entry) => {
    const answers = new Set<string>()
    for (const cost of GUESSES) answers.add(await answer(yard.send('helper', { ...entry, cost })))
    expect(answers.size).toBe(1)
    expect(costOf(entry.id)).toBe(HIDDEN)
  })

  test.each([
    ['an entry', bought],
    ['a correction', priced],
  ])('is told the same whatever the price: %s from a program', async (_what, entry) => {
    const token = await tokenOf('helper')
    const answers = new Set<string>()
    for (const cost of GUESSES) answers.add(await answer(byProgram(token, { ...entry, cost })))
    expect(answers.size).toBe(1)
    expect(costOf(entry.id)).toBe(HIDDEN)
  })

  test('and the same for where a colony came from', async () => {
    const sites = ['12 Invented Way', '13 Invented Way', undefined]
    const first = yard.services.store.colony('A-1')?.history.intake
    const answers = new Set<string>()
    for (const site of sites)
      answers.add(
        await answer(
          yard.send('helper', { ...intake('A-1'), id: first?.id, removal: { type: 'wall', site } }),
        ),
      )
    expect(answers.size).toBe(1)
  })

  test('while whoever may see the price is told when another entry has the id', async () => {
    await yard.session('operator')
    expect((await yard.send('operator', { ...bought, cost: 12 })).status).toBe(422)
    expect((await yard.send('operator', bought)).status).toBe(200)
    expect((await yard.send('helper', { ...bought, what: 'syrup' })).status).toBe(422)
  })
})

describe('guesses at secret addresses', () => {
  const strict = { points: 3, window: 900 }
  const none = { points: 1e9, window: 900 }

  beforeEach(async () => {
    yard = testYard({ day: DAY, limits: limitsOf(none, strict, none) })
    await yard.session('operator')
  })

  const invitation = (): string => {
    const made = yard.services.people.invite({ name: `Wren ${newId()}`, role: 'helper', by: null })
    if (!made.ok) throw new Error('not made')
    return made.value.link.token
  }
  const open = (token: string): Promise<Response> => yard.ask(null, `/invite/${token}`)

  test('with wrong tokens of programs shut no invitation, and the other way round', async () => {
    for (let i = 0; i < 35; i++) await byProgram(`rst_${'x'.repeat(40)}${i}`, [])
    expect((await byProgram(`rst_${'x'.repeat(43)}`, [])).status).toBe(429)
    for (let i = 0; i < 3; i++) expect((await open(`wrong-${i}`)).status).not.toBe(429)
    expect((await open(invitation())).status).toBe(200)
  })

  test('say that there were too many, and how long to wait', async () => {
    for (let i = 0; i < 3; i++) await open(`wrong-${i}`)
    const refused = await open('wrong-again')
    expect(refused.status).toBe(429)
    expect(Number(refused.headers.get('retry-after'))).toBeGreaterThan(800)
    expect(await refused.text()).toContain('Too many tries: wait 15 minutes')
    for (let i = 0; i < 3; i++) await yard.ask(null, `/letter/wrong-${i}`)
    const letter = await yard.ask(null, '/letter/wrong-again')
    expect(letter.status).toBe(429)
    expect(await letter.text()).toContain('Too many tries: wait 15 minutes')
  })

  test('are what counts: links that work cost nothing and open even then', async () => {
    const [first, second] = [invitation(), invitation()]
    for (let i = 0; i < 20; i++) expect((await open(first)).status).toBe(200)
    for (let i = 0; i < 10; i++) await open(`wrong-${i}`)
    expect((await open('wrong-again')).status).toBe(429)
    expect((await open(second)).status).toBe(200)
    const chosen = await yard.post(null, `/invite/${second}`, {
      passphrase: 'velvet otter on tundra',
      again: 'velvet otter on tundra',
    })
    expect(chosen.status).toBe(303)
  })
})

test('the yard’s own name makes no passphrase', async () => {
  yard = testYard({ day: DAY, limits: unlimited() })
  yard.services.store.append([intake('A-1', { yard: 'Tumbledown orchard' })], {
    today: DAY,
    recordedAt: `${DAY}T08:00:00.000Z`,
  })
  const { people } = yard.services
  const made = await people.make({ name: 'Wren', role: 'helper', passphrase: 'tumbledown-orchard-1' })
  expect(made.ok).toBe(false)
  expect((await people.make({ name: 'Wren', role: 'helper', passphrase: 'velvet otter on tundra' })).ok).toBe(
    true,
  )
})
