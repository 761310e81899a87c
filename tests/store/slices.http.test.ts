/**
 * Long work on the store is cut: counted in colonies between two yields, not in milliseconds, so that a busy machine
 * changes nothing.
 */
import { beforeEach, describe, expect, it } from 'vitest'
import { addDays } from '../../src/days.ts'
import { factsInStore, readingFacts } from '../../src/features/review/index.ts'
import { openConnection, rulesStamp, storeOn } from '../../src/store/node.ts'
import { add, intake, outcome, projectionBytes, TODAY } from './helpers.ts'

/** Colonies whose plans may be made without letting others in. */
const MOST_AT_ONCE = 10
const IN_YARD = 35
const LEFT = 25

describe('plans', () => {
  let connection = openConnection(':memory:')
  let store = storeOn(connection)
  /** Rows of colonies written so far, counted by the database itself. */
  const written = (): number => connection.raw.prepare('SELECT count(*) FROM written').pluck().get() as number

  beforeEach(() => {
    connection = openConnection(':memory:')
    store = storeOn(connection)
    for (let n = 0; n < IN_YARD; n++) add(store, intake(`A-${n}`))
    for (let n = 0; n < LEFT; n++) add(store, intake(`B-${n}`), outcome(`B-${n}`, '2026-05-20'))
    connection.raw.exec(
      `CREATE TABLE written (id TEXT);
       CREATE TRIGGER a AFTER UPDATE ON colony BEGIN INSERT INTO written VALUES (new.id); END`,
    )
  })

  it('of a new day are made a few at a time, and are those of one piece', () => {
    const tomorrow = addDays(TODAY, 1)
    let [before, steps] = [0, 0]
    for (const _ of store.refreshing(tomorrow)) {
      expect(written() - before).toBeLessThanOrEqual(MOST_AT_ONCE)
      expect(connection.raw.inTransaction).toBe(false)
      before = written()
      steps++
    }
    expect(written()).toBe(IN_YARD)
    expect(steps).toBeGreaterThanOrEqual(IN_YARD / MOST_AT_ONCE)
    expect(store.refresh(tomorrow)).toBe(0)
    const made = projectionBytes(connection)
    store.rebuild(tomorrow)
    expect(made).toBe(projectionBytes(connection))
  })

  it('of colonies that left do not hold up a start after an update', () => {
    const before = projectionBytes(connection)
    connection.raw.pragma('user_version = 7')
    const started = storeOn(connection, { pastLater: true })
    expect(written()).toBe(IN_YARD)
    expect(started.protocols.recomputing()).not.toBeNull()
    // Until it is made again, what an older version wrote is not read.
    connection.raw.exec(`UPDATE colony SET plan = '{"of":"an older version"}' WHERE closed_on IS NOT NULL`)
    expect(started.colony('B-3')?.summary.plan.phase).toBe('closed')
    while (started.protocols.remakeSome(MOST_AT_ONCE) !== null);
    expect(projectionBytes(connection)).toBe(before)
    expect(connection.raw.pragma('user_version', { simple: true })).toBe(rulesStamp())
    expect(started.verify()).toMatchObject({ ok: true, compared: true })
  })

  it('are read a few colonies at a step for the review of the HTTP API, which begins again when somebody writes', () => {
    const read = (of: Pick<typeof store, 'stays'>) => {
      let reads = 0
      const counted = {
        stays: {
          ...of.stays,
          *all() {
            for (const one of of.stays.all()) {
              reads++
              yield one
            }
          },
        },
      }
      const steps = readingFacts(counted, 'UTC')
      let most = 0
      let result = steps.next()
      for (; result.done !== true; result = steps.next()) {
        most = Math.max(most, reads)
        reads = 0
        if (first) add(store, intake('NEW'))
        first = false
      }
      return { facts: result.value, most }
    }
    let first = false
    const quiet = read(store)
    expect(quiet.most).toBeLessThanOrEqual(2 * MOST_AT_ONCE)
    expect(quiet.facts).toEqual(factsInStore(store, 'UTC'))
    expect(quiet.facts).toHaveLength(IN_YARD + LEFT)
    first = true
    const disturbed = read(store).facts
    expect(disturbed).toEqual(factsInStore(store, 'UTC'))
    expect(disturbed.filter((f) => f.tag === 'NEW')).toHaveLength(1)
  })

  it('of a large yard and a long past are counted without reading them', () => {
    expect(store.size()).toEqual({ inYard: IN_YARD, ever: IN_YARD + LEFT })
    expect(store.removalTypes()).toEqual(['wall'])
  })
})
