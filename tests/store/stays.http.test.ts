/** What is kept of colonies that have left says what their journals say; where it is missing, the journals are read. */
import { beforeEach, describe, expect, test } from 'vitest'
import { addDays } from '../../src/days.ts'
import { storeFor } from '../../src/people/repository-for.ts'
import { DEFAULT_PROTOCOL } from '../../src/recovery/protocol.ts'
import { factsOf, historyUntil, type Stay, stayOf } from '../../src/stays/index.ts'
import type { Store } from '../../src/store/index.ts'
import { openConnection, storeOn } from '../../src/store/node.ts'
import { add, given, inspection, intake, newId, outcome, TODAY } from './helpers.ts'
import { byDay, Dice, randomFrom, story } from './yard.ts'

let connection = openConnection(':memory:')
let store = storeOn(connection)

beforeEach(() => {
  connection = openConnection(':memory:')
  store = storeOn(connection)
})

const only = (from: Store, tag: string) => {
  const found = [...from.stays.all()].find((s) => s.facts.tag === tag)
  if (found === undefined) throw new Error(`no ${tag}`)
  return found
}

/** As the review would count it out of the whole journal. */
function fromJournals(asOf: string): Map<string, Stay> {
  return new Map(
    [...store.histories()].map(({ id, history }) => [
      id,
      stayOf(historyUntil(history, asOf), asOf, DEFAULT_PROTOCOL),
    ]),
  )
}

describe('a random season', () => {
  beforeEach(() => {
    const dice = new Dice(randomFrom(77))
    const entered = Array.from({ length: 60 }, (_, n) =>
      story(dice, {
        tag: `R-${n}`,
        intakeOn: addDays('2026-03-01', dice.int(0, 80)),
        until: TODAY,
        stay: dice.int(3, 60),
      }),
    ).flat()
    const lines = byDay(entered).flatMap(({ day, entries }) =>
      entries.map((raw) => ({ raw, recordedAt: `${day}T18:00:00.000Z`, recordedBy: raw.by })),
    )
    expect(store.load(lines, TODAY)).toMatchObject({ ok: true })
  })

  test.each([TODAY, '2026-05-01', '2026-03-20'])('is counted as of %s as its journals are', (asOf) => {
    const all = [...store.stays.all()]
    expect(all).toHaveLength(60)
    expect(new Map(all.map((s) => [s.id as string, s.stayOn(asOf)]))).toEqual(fromJournals(asOf))
    expect(new Map(all.map((s) => [s.id as string, s.facts]))).toEqual(
      new Map([...store.histories()].map(({ id, history }) => [id as string, factsOf(history)])),
    )
  })

  test('is counted the same without what is kept, as after an update that has yet to make it', () => {
    const kept = new Map(
      [...store.stays.all()].map((s) => [s.id, [s.facts, s.leftOn, s.recordedAt, s.stayOn(TODAY)]]),
    )
    connection.raw.exec('DELETE FROM stay')
    expect(
      new Map([...store.stays.all()].map((s) => [s.id, [s.facts, s.leftOn, s.recordedAt, s.stayOn(TODAY)]])),
    ).toEqual(kept)
  })
})

test('a correction and a withdrawn outcome change what is kept', () => {
  const sent = intake('A-1', { queen: 'lost', removal: { type: 'tree', outdoorC: 31.5 } })
  const queen = given('A-1', '2026-05-12', { what: 'mated-queen', cost: 38 })
  const left = outcome('A-1', '2026-05-25', { what: 'died' })
  add(store, sent, queen, inspection('A-1', '2026-05-20', { eggs: 'none' }), left)
  expect(only(store, 'A-1')).toMatchObject({
    facts: { removalType: 'tree', outdoorC: 31.5, outcome: { what: 'died', on: '2026-05-25' } },
    leftOn: '2026-05-25',
  })
  // By hand: one queen at 38, looked at on two days.
  expect(only(store, 'A-1').stayOn(TODAY).spending).toMatchObject({
    queens: 38,
    visits: 2,
    unpricedQueens: 0,
  })

  const before = store.stays.stamp()
  add(store, { ...given('A-1', '2026-05-12', { what: 'mated-queen' }), replaces: queen.id })
  expect(store.stays.stamp()).not.toBe(before)
  expect(only(store, 'A-1').stayOn(TODAY).spending).toMatchObject({ queens: 0, unpricedQueens: 1 })

  add(store, {
    id: newId(),
    colony: 'A-1',
    kind: 'withdrawal',
    on: '2026-05-26',
    by: 'Odalys',
    replaces: left.id,
    reason: 'Another box.',
  })
  expect(connection.raw.prepare('SELECT count(*) FROM stay').pluck().get()).toBe(0)
  expect(only(store, 'A-1')).toMatchObject({ leftOn: null, facts: { outcome: null } })
})

test('whoever may not see costs is told of none', () => {
  add(
    store,
    intake('A-1'),
    given('A-1', '2026-05-12', { what: 'mated-queen', cost: 38 }),
    outcome('A-1', '2026-05-25'),
  )
  add(store, intake('B-1'), given('B-1', '2026-05-12', { what: 'syrup', cost: 4 }))
  for (const tag of ['A-1', 'B-1'])
    expect(only(storeFor('helper', store), tag).stayOn(TODAY).spending).toMatchObject({
      queens: 0,
      feed: 0,
      other: 0,
    })
  expect(only(storeFor('operator', store), 'A-1').stayOn(TODAY).spending.queens).toBe(38)
})
