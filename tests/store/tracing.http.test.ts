/** What traces brood disease is read in steps after a start, and says what it would say had it been read at once. */
import { beforeEach, describe, expect, it } from 'vitest'
import { openConnection, storeOn } from '../../src/store/node.ts'
import { add, given, inspection, intake } from './helpers.ts'

const SUSPECTED = { signs: ['brood-disease-suspected'] }

describe('tracing read in steps', () => {
  let connection = openConnection(':memory:')
  /** The same file as a server has it that has just started. */
  const started = () => storeOn(connection)
  const bound = (store = started()): string[] =>
    [...store.exposed()].map(([id, e]) => `${id} ${e.from}`).sort()

  beforeEach(() => {
    connection = openConnection(':memory:')
    const store = started()
    for (const tag of ['A-1', 'A-2', 'A-3', 'A-4']) add(store, intake(tag, { yard: 'Quarry yard' }))
    add(store, given('A-1', '2026-05-14', { donor: 'A-2' }))
    add(store, given('A-3', '2026-05-14', { donor: 'A-4' }))
    add(store, inspection('A-1', '2026-05-20', SUSPECTED))
  })

  it('reads each colony in a step of its own, and then what it would read at once', () => {
    const store = started()
    const steps = [...store.tracing()].length
    expect(steps).toBeGreaterThanOrEqual(4)
    expect(bound(store)).toEqual(bound())
    expect(bound(store)).toHaveLength(1)
  })

  it('knows what is written at any moment between its steps', () => {
    for (let at = 0; at < 8; at++) {
      const store = started()
      const steps = store.tracing()
      for (let n = 0; n < at; n++) steps.next()
      const signs = at % 2 === 0 ? SUSPECTED : { signs: [] }
      // By another hand on the same file, which this store is not told of.
      add(started(), inspection('A-3', '2026-05-21', { ...signs, at: `10:1${at}` }))
      for (const _ of steps);
      expect(bound(store), `after ${at} steps`).toEqual(bound())
    }
    expect(bound().length).toBeGreaterThan(1)
  })

  it('gives way to whoever asks before it is done, and ends quietly when the file is closed', () => {
    const store = started()
    const steps = store.tracing()
    steps.next()
    expect(bound(store)).toEqual(bound())
    expect(steps.next().done).toBe(true)
    const left = started().tracing()
    left.next()
    connection.raw.close()
    expect(left.next().done).toBe(true)
  })

  it('reads no colony where brood disease was never suspected', () => {
    const empty = storeOn(openConnection(':memory:'))
    add(empty, intake('B-1'))
    expect([...empty.tracing()]).toHaveLength(1)
    expect(empty.exposed().size).toBe(0)
  })
})
