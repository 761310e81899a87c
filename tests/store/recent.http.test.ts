/** Colonies that were looked at before: what is remembered of them is never older than the file. */
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, expect, test } from 'vitest'
import { openConnection, openStore, storeOn } from '../../src/store/node.ts'
import { recentOf } from '../../src/store/recent.ts'
import { add, CONTEXT, inspection, intake } from './helpers.ts'

let folder = ''
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'resettle-recent-'))
})
afterEach(() => rmSync(folder, { recursive: true, force: true }))

test('an entry of this process and one of another are seen at once', () => {
  const file = join(folder, 'resettle.db')
  const [here, there] = [openStore(file), openStore(file)]
  add(here, intake('A-1'))
  expect(here.colony('A-1')?.journal).toHaveLength(1)
  add(here, inspection('A-1', '2026-05-15'))
  expect(here.colony('A-1')?.journal).toHaveLength(2)
  add(there, inspection('A-1', '2026-05-16'))
  expect(here.colony('A-1')?.journal).toHaveLength(3)
  expect(here.colony('A-1')?.history.entries).toHaveLength(3)
  here.close()
  there.close()
})

test('what was undone is not remembered, even when another entry takes its place', () => {
  const connection = openConnection(':memory:')
  const store = storeOn(connection)
  add(store, intake('A-1'))
  const undone = inspection('A-1', '2026-05-15')
  expect(() =>
    store.together(() => {
      store.append([undone], CONTEXT)
      expect(store.colony('A-1')?.journal.at(-1)?.entry.id).toBe(undone.id)
      throw new Error('no')
    }),
  ).toThrow('no')
  expect(store.colony('A-1')?.journal).toHaveLength(1)
  const kept = add(store, inspection('A-1', '2026-05-16'))
  expect(
    store
      .colony('A-1')
      ?.journal.map((r) => r.entry.id)
      .slice(1),
  ).toEqual([kept])
})

test('whoever sorts or empties the list they were given spoils nobody else’s', () => {
  const store = storeOn(openConnection(':memory:'))
  add(store, intake('A-1'), inspection('A-1', '2026-05-15'))
  store.colony('A-1')?.journal.splice(0)
  expect(store.colony('A-1')?.journal).toHaveLength(2)
})

test('asking by tags, which are no ids, pushes out nobody', () => {
  const connection = openConnection(':memory:')
  const store = storeOn(connection)
  add(store, intake('A-1'))
  const id = store.colonies({ open: true })[0]?.id ?? ''
  const read: string[] = []
  const recent = recentOf(connection, (colony) => {
    read.push(colony)
    return store.colony(colony)?.journal ?? []
  })
  expect(recent.of(id).rows).toHaveLength(1)
  // More than are kept beside those in the yard.
  for (let n = 0; n < 200; n++) expect(recent.of(`Z-${n}`).rows).toEqual([])
  expect(recent.of(id).rows).toHaveLength(1)
  expect(read).toEqual([id])
})
