/** What happened on some days, in brief: on the server and in the phone alike. */
import { expect, test } from 'vitest'
import { ROUND_SETTINGS, type RoundSettings } from '../../src/features/offline/round-bundle.ts'
import { bookOf } from '../../src/phone/repository.ts'
import { add, given, inspection, intake, memoryStore, TODAY } from './helpers.ts'

test('happenings of some days come by day, in brief, with the yard where the colony is now', () => {
  const store = memoryStore()
  const id = add(store, intake('A-1', { at: '08:00' }))
  add(store, inspection('A-1', '2026-05-14', { at: '09:10', eggs: 'none' }))
  add(store, given('A-1', '2026-05-12', { cost: 40.79, donor: 'Z-9' }))
  add(store, { ...inspection('A-1', '2026-05-20', { opened: false }) })
  const { opened: _, ...moved } = inspection('A-1', '2026-05-21')
  add(store, { ...moved, kind: 'move', yard: 'Ford', stand: '1' } as never)
  expect(store.happenings('2026-05-11', '2026-05-20')).toEqual([
    {
      colony: id,
      yard: 'Ford',
      kind: 'given',
      on: '2026-05-12',
      at: null,
      by: 'Odalys',
      opened: null,
      what: 'egg-frame',
      into: null,
    },
    {
      colony: id,
      yard: 'Ford',
      kind: 'inspection',
      on: '2026-05-14',
      at: '09:10',
      by: 'Odalys',
      opened: true,
      what: null,
      into: null,
    },
    {
      colony: id,
      yard: 'Ford',
      kind: 'inspection',
      on: '2026-05-20',
      at: null,
      by: 'Odalys',
      opened: false,
      what: null,
      into: null,
    },
  ])
  expect(JSON.stringify(store.happenings('2026-01-01', TODAY))).not.toContain('40.79')
})

test('the phone says the same of what it keeps', () => {
  const store = memoryStore()
  add(store, intake('A-1'))
  add(store, inspection('A-1', '2026-05-14', { at: '09:10' }), given('A-1', '2026-05-12'))
  const colonies = store.colonies().map((s) => ({ id: s.id, rows: store.colony(s.id)?.journal ?? [] }))
  const settings = Object.fromEntries(
    ROUND_SETTINGS.map((key) => [key, store.settings.get(key)]),
  ) as RoundSettings
  const book = bookOf({
    head: { settings, yards: store.yards() },
    colonies,
    waiting: [],
    today: TODAY,
  })
  const byDay = (a: { on: string }, b: { on: string }) => (a.on < b.on ? -1 : 1)
  expect(book.happenings('2026-05-01', TODAY).sort(byDay)).toEqual(store.happenings('2026-05-01', TODAY))
})

test('the index by day is used', async () => {
  const { openConnection } = await import('../../src/store/node.ts')
  const { raw } = openConnection(':memory:')
  const plan = raw
    .prepare("EXPLAIN QUERY PLAN SELECT * FROM entry WHERE on_day >= '2026-05-01' AND on_day <= '2026-05-02'")
    .all()
  expect(JSON.stringify(plan)).toContain('entry_by_day')
})
