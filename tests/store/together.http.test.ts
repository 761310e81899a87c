/** Entries written together: each colony's plan is made once, and is the one that a rebuild makes. */
import { beforeEach, describe, expect, it } from 'vitest'
import { openConnection, storeOn } from '../../src/store/node.ts'
import {
  add,
  CONTEXT,
  given,
  inspection,
  intake,
  outcome,
  projectionBytes,
  TODAY,
  withdrawal,
} from './helpers.ts'

const opened = () => {
  const connection = openConnection(':memory:')
  const store = storeOn(connection)
  // Every write of a colony's row, counted by the database itself.
  connection.raw.exec(
    `CREATE TABLE written (id TEXT);
     CREATE TRIGGER a AFTER INSERT ON colony BEGIN INSERT INTO written VALUES (new.id); END;
     CREATE TRIGGER b AFTER UPDATE ON colony BEGIN INSERT INTO written VALUES (new.id); END`,
  )
  const written = (): number => {
    const n = connection.raw.prepare('SELECT count(*) FROM written').pluck().get() as number
    connection.raw.exec('DELETE FROM written')
    return n
  }
  return { connection, store, written }
}

describe('entries written together', () => {
  let { connection, store, written } = opened()
  beforeEach(() => {
    ;({ connection, store, written } = opened())
    for (const tag of ['A-1', 'A-2', 'A-3']) add(store, intake(tag, { yard: 'Quarry yard' }))
    written()
  })
  const asRebuilt = (): void => {
    const now = projectionBytes(connection)
    store.rebuild(TODAY)
    expect(now).toBe(projectionBytes(connection))
  }

  it('plan each colony once', () => {
    store.together(() => {
      for (let n = 0; n < 30; n++) {
        const told = inspection(`A-${1 + (n % 3)}`, '2026-05-20', { opened: false, at: `10:${10 + n}` })
        expect(store.append([told], CONTEXT).ok).toBe(true)
      }
    })
    expect(written()).toBe(3)
    expect(store.colony('A-2')?.journal).toHaveLength(11)
    asRebuilt()
  })

  it('find a colony that was logged, left or was taken back among them', () => {
    store.together(() => {
      add(store, inspection('A-1', '2026-05-20'))
      add(store, intake('B-1'))
      add(store, inspection('B-1', '2026-05-21'))
      const left = add(store, outcome('A-2', '2026-05-22'))
      add(store, intake('A-2', { on: '2026-05-23' }))
      expect(store.append([withdrawal('A-2', left)], CONTEXT).ok).toBe(false)
      expect(store.append([inspection('B-2', '2026-05-21')], CONTEXT).ok).toBe(false)
    })
    expect(store.colony('B-1')?.journal).toHaveLength(2)
    asRebuilt()
  })

  it('hold the colonies that a suspicion among them binds, and write no others', () => {
    add(store, given('A-1', '2026-05-14', { donor: 'A-2' }))
    written()
    store.together(() => {
      add(store, inspection('A-3', '2026-05-20'))
      add(store, inspection('A-1', '2026-05-20', { signs: ['brood-disease-suspected'] }))
    })
    expect(written()).toBe(3)
    expect(store.colony('A-2')?.summary.plan.exposed?.from).toBe('A-1')
    asRebuilt()
    written()
    // Another entry changes no bond, so it writes its own colony alone.
    add(store, inspection('A-3', '2026-05-25', { signs: [] }))
    expect(written()).toBe(1)
    expect(store.colony('A-2')?.summary.plan.exposed?.from).toBe('A-1')
    expect(store.verify()).toMatchObject({ ok: true })
  })

  it('leave no plan behind when they are undone', () => {
    const before = projectionBytes(connection)
    expect(() =>
      store.together(() => {
        add(store, inspection('A-1', '2026-05-20', { signs: ['brood-disease-suspected'] }))
        throw new Error('no')
      }),
    ).toThrow('no')
    expect(projectionBytes(connection)).toBe(before)
    add(store, inspection('A-2', '2026-05-20', { signs: [] }))
    expect(store.colony('A-1')?.journal).toHaveLength(1)
    asRebuilt()
  })
})
