/** A long random season through the front door: the projections are what a rebuild makes of the journal. */
import { expect, test } from 'vitest'
import { addDays } from '../../src/days.ts'
import { openConnection, storeOn } from '../../src/store/node.ts'
import { LONG_ENOUGH, often } from '../support/long.ts'
import { projectionBytes } from './helpers.ts'
import { byDay, Dice, type Entered, randomFrom, story } from './yard.ts'

const START = '2026-02-01'
const ENTRIES = often(10_000, 600)
/** Another yard each long run, where RANDOM_YARD_SEED=n repeats one. In a short one not every yard has somebody held. */
const seed = Number(process.env.RANDOM_YARD_SEED ?? often(Date.now() % 2 ** 31, 3))
/** Robbing in a yard binds its colonies to one that is suspected. */
const BOUND = /and brood disease is suspected in .* may not be moved/

function season(seed: number): Entered[] {
  const dice = new Dice(randomFrom(seed))
  const until = addDays(START, 200)
  const entered: Entered[] = []
  for (let n = 1; entered.length < ENTRIES; n++)
    entered.push(
      ...story(dice, {
        tag: `R-${n}`,
        intakeOn: addDays(START, dice.int(0, 190)),
        until,
        stay: dice.int(3, 60),
      }),
    )
  return entered.slice(0, ENTRIES)
}

test(`${ENTRIES} random valid entries: the projections equal a rebuild, byte for byte (seed ${seed})`, {
  timeout: LONG_ENOUGH,
}, () => {
  console.log(`random yard: seed ${seed}`)
  const connection = openConnection(':memory:')
  const store = storeOn(connection)
  const entered = season(seed)
  let last = START
  const held = new Set<string>()
  for (const { day, entries } of byDay(entered)) {
    for (let left = entries; left.length > 0; ) {
      const sent = left.filter((e) => e.replaces === undefined || !held.has(e.replaces))
      for (const e of left) if (!sent.includes(e)) held.add(e.id)
      const result = store.append(sent, { today: day, recordedAt: `${day}T18:00:00.000Z` })
      if (result.ok) break
      // Each colony's story is told without the others: what is refused is only what a bound colony may not do.
      expect(result.problems.filter((p) => !BOUND.test(p.message))).toEqual([])
      const refused = new Set(result.problems.map((p) => sent[(p.entry ?? 0) - 1]))
      for (const e of refused) if (e !== undefined) held.add(e.id)
      left = sent.filter((e) => !refused.has(e))
    }
    last = day
  }
  expect(held.size).toBeGreaterThan(0)
  expect(held.size).toBeLessThan(ENTRIES / 10)
  const written = ENTRIES - held.size
  expect(connection.raw.prepare('SELECT count(*) FROM entry').pluck().get()).toBe(written)
  // Each colony's plan is as of the day it was last touched: verify rebuilds every one as of its own day.
  expect(store.verify()).toMatchObject({ ok: true, problems: [], entries: written })

  expect(store.refresh(last)).toBeGreaterThan(0)
  expect(store.refresh(last)).toBe(0)
  const grown = projectionBytes(connection)
  const made = store.rebuild(last)
  expect(projectionBytes(connection)).toBe(grown)
  expect(made.entries).toBe(written)
  expect(made.colonies).toBeGreaterThan(ENTRIES / 33)

  // The yard covers what it should: colonies there and gone, and corrections.
  expect(store.colonies({ open: true }).length).toBeGreaterThan(ENTRIES / 500)
  expect(new Set(store.colonies({ open: false }).map((c) => c.outcome)).size).toBe(5)

  // Carried to another database line by line, it is the same yard.
  const copy = openConnection(':memory:')
  const copied = storeOn(copy)
  const lines = [...store.journal()].map(({ entry, written, recordedAt, recordedBy }) => ({
    raw: { ...entry, colony: written },
    recordedAt,
    recordedBy,
  }))
  expect(copied.load(lines, last)).toMatchObject({ ok: true })
  expect(projectionBytes(copy)).toBe(grown)
  copied.close()
  store.close()
})
