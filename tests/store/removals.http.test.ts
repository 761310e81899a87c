import { expect, test } from 'vitest'
import { ROLES, storeFor } from '../../src/people/index.ts'
import { EMPTY_SHEET, type Sheet } from '../../src/records/removal-sheet.ts'
import { openConnection, storeOn } from '../../src/store/node.ts'
import { add, CONTEXT, intake, memoryStore, newId } from './helpers.ts'

const STAMP = { savedAt: '2026-06-01T09:00:00.000Z', savedBy: 'Odalys' }
const sheet = (name: string): Sheet => ({ ...EMPTY_SHEET, job: { name } })

test('every save is a version with who and when; the last one stands', () => {
  const { removals } = memoryStore()
  const id = newId()
  expect(removals.save(id, 0, sheet('Ottoline'), STAMP)).toEqual({ ok: true, version: 1 })
  const later = { savedAt: '2026-06-01T10:00:00.000Z', savedBy: 'Bram' }
  expect(removals.save(id, 1, sheet('Ottoline F.'), later)).toEqual({ ok: true, version: 2 })
  expect(removals.get(id)).toMatchObject({
    last: { version: 2, savedBy: 'Bram', sheet: { job: { name: 'Ottoline F.' } } },
    versions: [
      { version: 2, savedBy: 'Bram', savedAt: later.savedAt },
      { version: 1, savedBy: 'Odalys' },
    ],
    colonies: [],
  })
  expect(removals.version(id, 1)?.sheet.job.name).toBe('Ottoline')
  expect(removals.list().map((s) => s.sheet.job.name)).toEqual(['Ottoline F.'])
})

test('the same content saved again is no new version, however often it is sent', () => {
  const { removals } = memoryStore()
  const id = newId()
  removals.save(id, 0, sheet('A'), STAMP)
  expect(removals.save(id, 0, sheet('A'), STAMP)).toEqual({ ok: true, version: 1 })
  expect(removals.save(id, 1, sheet('A'), STAMP)).toEqual({ ok: true, version: 1 })
})

test('two people at one sheet: the second is told, nothing is lost', () => {
  const { removals } = memoryStore()
  const id = newId()
  removals.save(id, 0, sheet('A'), STAMP)
  removals.save(id, 1, sheet('B'), { ...STAMP, savedBy: 'Bram' })
  expect(removals.save(id, 1, sheet('C'), STAMP)).toMatchObject({
    ok: false,
    newer: { version: 2, savedBy: 'Bram' },
  })
  expect(removals.get(id)?.last.sheet.job.name).toBe('B')
})

test('content that does not fit the schema is refused in words', () => {
  const { removals } = memoryStore()
  const bad = { ...EMPTY_SHEET, work: { bees: { frames: 0.3 } } }
  expect(removals.save(newId(), 0, bad, STAMP)).toMatchObject({
    ok: false,
    problems: [{ field: 'work.bees.frames', message: expect.stringContaining('quarter frames') }],
  })
})

test('a colony logged under the sheet’s id is its own; another is linked', () => {
  const store = memoryStore()
  const id = newId()
  store.removals.save(id, 0, sheet('A'), STAMP)
  expect(store.removals.ofColony(id)).toBe(id)
  expect(store.removals.get(id)?.colonies).toEqual([])
  add(store, { ...intake('W-1'), id })
  const second = add(store, intake('W-2'))
  store.removals.link(id, second, STAMP)
  store.removals.link(id, second, STAMP)
  expect(store.removals.get(id)?.colonies).toEqual([id, second])
  expect(store.removals.list()[0]?.colonies).toEqual([id, second])
  expect(store.removals.ofColony(second)).toBe(id)
  expect(store.removals.ofColony(newId())).toBeNull()
})

test('erased, no version of it is left', () => {
  const connection = openConnection(':memory:')
  const { removals } = storeOn(connection)
  const id = newId()
  removals.save(id, 0, sheet('Ottoline'), STAMP)
  removals.save(id, 1, sheet('Ottoline F.'), STAMP)
  expect(removals.erase(id)).toBe(2)
  expect(removals.get(id)).toBeNull()
  expect(connection.raw.prepare('SELECT count(*) FROM removal_sheet').pluck().get()).toBe(0)
})

test('a damaged version is reported by verify, and the others are shown', () => {
  const connection = openConnection(':memory:')
  const store = storeOn(connection)
  const id = newId()
  store.removals.save(id, 0, sheet('A'), STAMP)
  store.removals.save(id, 1, sheet('B'), STAMP)
  connection.raw.prepare(`UPDATE removal_sheet SET payload = '{"job": 3}' WHERE version = 2`).run()
  expect(store.removals.get(id)?.last.version).toBe(1)
  expect(store.verify().problems).toEqual([
    expect.stringContaining(`version 2 of removal sheet ${id} does not fit`),
  ])
})

test('only beekeepers and operators see sheets; a helper has none, and nothing of them is in the journal', () => {
  const store = memoryStore()
  const id = newId()
  store.removals.save(id, 0, sheet('Ottoline'), STAMP)
  add(store, { ...intake('W-1'), id })
  for (const role of ROLES) {
    const { removals } = storeFor(role, store)
    const sees = role !== 'helper'
    expect(removals.list().length).toBe(sees ? 1 : 0)
    expect(removals.get(id) !== null).toBe(sees)
    expect(removals.version(id, 1) !== null).toBe(sees)
    expect(removals.ofColony(id)).toBe(sees ? id : null)
    if (!sees) expect(removals.save(id, 1, sheet('X'), STAMP)).toMatchObject({ ok: false })
    if (!sees) expect(removals.erase(id)).toBe(0)
  }
  expect(JSON.stringify([...store.journal()])).not.toContain('Ottoline')
  expect(JSON.stringify(store.colonies())).not.toContain('Ottoline')
})

test('a change of the protocol is noted with who, when, why and what, and plans follow in slices', () => {
  const connection = openConnection(':memory:')
  const store = storeOn(connection)
  for (let n = 1; n <= 7; n++) add(store, intake(`W-${n}`))
  const wash = () => store.colonies().map((c) => c.plan.checks.find((k) => k.rule === 'mite-wash')?.closes)
  expect(new Set(wash())).toEqual(new Set(['2026-06-09']))
  const stamp = { changedAt: '2026-06-01T09:00:00.000Z', changedBy: 'Odalys', reason: 'Cold spring.' }
  expect(store.protocols.change({ holdDays: 40 }, stamp)).toEqual([])
  expect(store.protocols.recomputing()).toEqual({ total: 7, done: 0 })
  expect(store.protocols.remakeSome(3)).toEqual({ total: 7, done: 3 })
  expect(new Set(wash())).toEqual(new Set(['2026-06-09', '2026-06-19']))
  // Half-way the database is whole, and what is entered meanwhile goes by the new rules.
  expect(store.verify()).toMatchObject({ ok: true })
  const fresh = add(store, intake('W-8'))
  expect(store.colony(fresh)?.summary.plan.checks.find((k) => k.rule === 'mite-wash')?.closes).toBe(
    '2026-06-19',
  )
  expect(store.protocols.remakeSome(3)).toEqual({ total: 7, done: 6 })
  expect(store.protocols.remakeSome(3)).toBeNull()
  expect(store.protocols.recomputing()).toBeNull()
  expect(new Set(wash())).toEqual(new Set(['2026-06-19']))
  expect(store.verify()).toMatchObject({ ok: true, problems: [] })
  expect(store.protocols.changes()).toEqual([{ ...stamp, before: {}, after: { holdDays: 40 } }])
})

test('a server that dies half-way makes all plans again at its next start', () => {
  const connection = openConnection(':memory:')
  const store = storeOn(connection)
  for (let n = 1; n <= 5; n++) add(store, intake(`W-${n}`))
  store.protocols.change({ holdDays: 40 }, { changedAt: CONTEXT.recordedAt, changedBy: 'Odalys' })
  store.protocols.remakeSome(2)
  const next = storeOn(connection)
  expect(next.protocols.recomputing()).toBeNull()
  for (const c of next.colonies())
    expect(c.plan.checks.find((k) => k.rule === 'mite-wash')?.closes).toBe('2026-06-19')
  expect(next.verify()).toMatchObject({ ok: true })
})

test('a protocol that does not fit changes nothing and is not noted', () => {
  const store = memoryStore()
  const stamp = { changedAt: CONTEXT.recordedAt, changedBy: 'Odalys' }
  expect(store.protocols.change({ holdDays: 3 }, stamp)).toMatchObject([{ field: 'protocol.holdDays' }])
  expect(store.protocols.changes()).toEqual([])
  expect(store.protocols.recomputing()).toBeNull()
  expect(storeFor('beekeeper', store).protocols.change({ holdDays: 40 }, stamp)).toHaveLength(1)
  expect(store.protocol().holdDays).toBe(30)
})

test('a second change while plans are being made again begins anew', () => {
  const store = memoryStore()
  for (let n = 1; n <= 4; n++) add(store, intake(`W-${n}`))
  const stamp = { changedAt: CONTEXT.recordedAt, changedBy: 'Odalys' }
  store.protocols.change({ holdDays: 40 }, stamp)
  store.protocols.remakeSome(2)
  store.protocols.change({ holdDays: 50 }, stamp)
  expect(store.protocols.recomputing()).toEqual({ total: 4, done: 0 })
  while (store.protocols.remakeSome(3) !== null);
  expect(store.verify()).toMatchObject({ ok: true })
  expect(store.protocols.changes().map((c) => [c.before.holdDays, c.after.holdDays])).toEqual([
    [40, 50],
    [undefined, 40],
  ])
})
