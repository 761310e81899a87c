/** What pages read: lists in walking order, Today, changes, settings. */
import { expect, test } from 'vitest'
import { addDays } from '../../src/days.ts'
import { planOf } from '../../src/decision/index.ts'
import { openConnection, storeOn } from '../../src/store/node.ts'
import {
  add,
  CONTEXT,
  inspection,
  intake,
  memoryStore,
  newId,
  outcome,
  projectionBytes,
  TODAY,
} from './helpers.ts'

const move = (colony: string, on: string, yard: string, stand?: string) => ({
  id: newId(),
  colony,
  kind: 'move' as const,
  on,
  by: 'Bram',
  yard,
  ...(stand === undefined ? {} : { stand }),
})

test('those that have left come by the page, the last first, and only theirs of one yard', () => {
  const store = memoryStore()
  expect(store.yards()).toEqual([])
  expect(store.removalTypes()).toEqual([])
  const days = ['2026-05-20', '2026-05-24', '2026-05-22', '2026-05-20']
  for (const [n, on] of days.entries())
    add(store, intake(`A-${n}`, { yard: n === 2 ? 'Orchard lane' : 'Quarry yard' }), outcome(`A-${n}`, on))
  add(store, intake('B-1', { yard: 'Barn', removal: { type: 'tree' } }))
  const page = (skip: number, limit: number, yard?: string) => {
    const { total, found } = store.left({ skip, limit, yard })
    return [total, ...found.map((c) => c.tag)]
  }
  expect(page(0, 3)).toEqual([4, 'A-1', 'A-2', 'A-0'])
  expect(page(3, 3)).toEqual([4, 'A-3'])
  expect(page(0, 9, 'Orchard lane')).toEqual([1, 'A-2'])
  expect(page(0, 9, 'Barn')).toEqual([0])
  expect(store.yards()).toEqual([
    { yard: 'Barn', open: 1 },
    { yard: 'Orchard lane', open: 0 },
    { yard: 'Quarry yard', open: 0 },
  ])
  expect(store.removalTypes()).toEqual(['tree', 'wall'])
})

test('colonies come in walking order: yard, stand, tag, numbers as numbers', () => {
  const store = memoryStore()
  add(
    store,
    intake('A-10', { stand: '10' }),
    intake('A-2', { stand: '2' }),
    intake('A-3', { stand: undefined }),
    intake('A-11', { stand: '2' }),
    intake('Z-1', { yard: 'Orchard lane' }),
  )
  expect(store.colonies().map((c) => c.tag)).toEqual(['Z-1', 'A-2', 'A-11', 'A-10', 'A-3'])
})

test('filters: in the yard or gone, by yard, by part of a word', () => {
  const store = memoryStore()
  add(store, intake('A-1'), intake('B-1', { yard: 'Orchard lane' }), outcome('A-1', '2026-05-20'))
  const tags = (filter: Parameters<typeof store.colonies>[0]) => store.colonies(filter).map((c) => c.tag)
  expect(tags({ open: true })).toEqual(['B-1'])
  expect(tags({ open: false })).toEqual(['A-1'])
  expect(tags({ yard: 'Quarry yard' })).toEqual(['A-1'])
  expect(tags({ text: ' ORCH ' })).toEqual(['B-1'])
  expect(tags({ text: '%' })).toEqual([])
  expect(tags({ text: 'wall' })).toHaveLength(2)
})

test('a move changes yard and stand; a move without a stand leaves it unknown', () => {
  const store = memoryStore()
  add(store, intake('A-1'), move('A-1', '2026-05-12', 'Orchard lane', '7'))
  expect(store.colony('A-1')?.summary).toMatchObject({ yard: 'Orchard lane', stand: '7' })
  add(store, move('A-1', '2026-05-14', 'Quarry yard'))
  expect(store.colony('A-1')?.summary).toMatchObject({ yard: 'Quarry yard', stand: null })
  expect(store.yards()).toEqual([{ yard: 'Quarry yard', open: 1 }])
  add(store, outcome('A-1', '2026-05-20'))
  expect(store.yards()).toEqual([{ yard: 'Quarry yard', open: 0 }])
})

test('the plan in the projection is the plan of the history on that day', () => {
  const store = memoryStore()
  add(store, intake('A-1'), inspection('A-1', '2026-05-15', { eggs: 'none', cells: 'capped' }))
  const there = store.colony('A-1')
  if (there === null) throw new Error('no colony')
  const { summary, history } = there
  expect(summary.plan).toEqual(planOf(history, TODAY))
  expect(summary).toMatchObject({ phase: summary.plan.phase, action: summary.plan.advice.action })
  const next = summary.plan.checks.find((c) => c.rule === summary.nextRule && c.opens === summary.nextOpens)
  expect(['waiting', 'open', 'due', 'overdue']).toContain(next?.status)
})

test('Today makes plans of its day: what was waiting yesterday is to do', () => {
  const store = memoryStore()
  const day = '2026-05-10'
  store.append([intake('A-1')], { ...CONTEXT, today: day })
  expect(store.colony('A-1')?.summary).toMatchObject({ asOf: day, toDo: false })
  expect(store.today(day)).toEqual([])
  const later = addDays(day, 5)
  expect(store.today(later).map((c) => [c.tag, c.asOf, c.day])).toEqual([['A-1', later, 5]])
  expect(store.refresh(later)).toBe(0)
  expect(store.refresh(addDays(later, 1))).toBe(1)
})

test('where nothing can be written, Today still makes the plans of its day', () => {
  const connection = openConnection(':memory:')
  const store = storeOn(connection)
  store.append([intake('A-1'), outcome('A-1', '2026-05-10'), intake('A-2')], {
    ...CONTEXT,
    today: '2026-05-10',
  })
  connection.raw.pragma('query_only = ON')
  expect(store.today('2026-05-15').map((c) => [c.tag, c.asOf])).toEqual([['A-2', '2026-05-15']])
  expect(store.colony('A-2')?.summary.asOf).toBe('2026-05-10')
})

test('a colony that left keeps the plan of the day it left', () => {
  const store = memoryStore()
  add(store, intake('A-1'), outcome('A-1', '2026-05-20', { what: 'died' }))
  const note = {
    id: newId(),
    colony: 'A-1',
    kind: 'note',
    on: '2026-05-25',
    by: 'Bram',
    text: 'Cleaned the box.',
  }
  add(store, note)
  const expected = {
    asOf: '2026-05-20',
    day: 10,
    phase: 'closed',
    outcome: 'died',
    toDo: false,
    nextRule: null,
  }
  expect(store.colony('A-1')?.summary).toMatchObject(expected)
  expect(store.colony('A-1')?.history.entries).toHaveLength(3)
  store.refresh('2026-07-01')
  expect(store.colony('A-1')?.summary).toMatchObject(expected)
  expect(store.today('2026-07-01')).toEqual([])
  expect(store.checksBetween('2000-01-01', '2100-01-01')).toEqual([])
})

test('checks by day: those whose window touches the days asked for', () => {
  const store = memoryStore()
  store.append([intake('A-1', { tiedComb: true })], { ...CONTEXT, today: '2026-05-10' })
  const pending = store.colony('A-1')?.summary.plan.checks.filter((c) => c.status === 'waiting') ?? []
  expect(store.checksBetween('2000-01-01', '2100-01-01')).toHaveLength(pending.length)
  for (const { rule, opens, closes } of pending) {
    const rules = (from: string, to: string) => store.checksBetween(from, to).map((c) => c.rule)
    expect(rules(opens, opens)).toContain(rule)
    expect(rules(closes, closes)).toContain(rule)
    expect(rules('2000-01-01', addDays(opens, -1))).not.toContain(rule)
    expect(rules(addDays(closes, 1), '2100-01-01')).not.toContain(rule)
  }
})

test('changes come newest first, in pages', () => {
  const store = memoryStore()
  const first = add(store, intake('A-1'))
  for (let n = 11; n < 16; n++) add(store, inspection('A-1', `2026-05-${n}`))
  add(store, intake('B-1'))
  const page = store.changes({ limit: 3 })
  expect(page.map((r) => [r.tag, r.entry.on])).toEqual([
    ['B-1', '2026-05-10'],
    ['A-1', '2026-05-15'],
    ['A-1', '2026-05-14'],
  ])
  expect(store.changes({ before: page.at(-1)?.seq, limit: 500 })).toHaveLength(4)
  expect(store.changes({ colony: first })).toHaveLength(6)
  expect([...store.journal()].map((r) => r.seq)).toEqual([1, 2, 3, 4, 5, 6, 7])
})

test('settings: defaults, values, and a sentence for what cannot be', () => {
  const store = memoryStore()
  expect(store.settings.get('timeZone')).toBeNull()
  expect(store.settings.set('timeZone', 'America/Phoenix')).toEqual([])
  expect(store.settings.get('timeZone')).toBe('America/Phoenix')
  expect(store.settings.set('timeZone', 'Atlantis/Centre')).toEqual([
    { field: 'timeZone', message: expect.stringContaining('must be a time zone') },
  ])
  expect(store.settings.get('timeZone')).toBe('America/Phoenix')
  expect(store.settings.set('protocol', { holdDays: 3 })[0]?.field).toBe('protocol.holdDays')
})

test('another protocol makes every plan again, each as of the day it had', () => {
  const connection = openConnection(':memory:')
  const store = storeOn(connection)
  add(store, intake('A-1'), intake('A-2'), outcome('A-2', '2026-05-20'))
  const before = projectionBytes(connection)
  const wash = () => store.colony('A-1')?.summary.plan.checks.find((c) => c.rule === 'mite-wash')?.closes
  expect(wash()).toBe(addDays('2026-05-10', 30))
  expect(store.settings.set('protocol', { holdDays: 45 })).toEqual([])
  expect(store.protocol().holdDays).toBe(45)
  expect(wash()).toBe(addDays('2026-05-10', 45))
  expect(store.verify().problems).toEqual([])
  store.settings.set('protocol', {})
  expect(projectionBytes(connection)).toBe(before)
})

test('projections made by other rules are made again when the store is opened', () => {
  const connection = openConnection(':memory:')
  const store = storeOn(connection)
  add(store, intake('A-1'), intake('A-2'), outcome('A-2', '2026-05-20'))
  const before = projectionBytes(connection)
  connection.raw.exec("UPDATE colony SET action_why = 'by older rules'; PRAGMA user_version = 1")
  expect(store.verify()).toMatchObject({ ok: true, compared: false })
  storeOn(connection)
  expect(store.verify()).toMatchObject({ ok: true, compared: true })
  expect(projectionBytes(connection)).toBe(before)
})
