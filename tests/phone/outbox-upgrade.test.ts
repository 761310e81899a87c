/** An outbox kept by the first version is read, shown and sent by this one. */
import 'fake-indexeddb/auto'
import { IDBFactory } from 'fake-indexeddb'
import { openDB } from 'idb'
import { beforeEach, expect, it } from 'vitest'
import { NAME, openDatabase, VERSION } from '../../src/phone/database.ts'
import { acknowledge, all, keepPhoto, photo } from '../../src/phone/outbox.ts'
import { birth } from '../../src/phone/round-store.ts'

beforeEach(() => {
  globalThis.indexedDB = new IDBFactory()
})

const entry = (id: string) => ({
  id,
  colony: 'c1',
  kind: 'note',
  on: '2026-06-01',
  by: 'Teuila',
  text: `words of ${id}`,
})
const ID = (n: number): string => `019e8000-0000-7000-8000-00000000000${n}`

/** Makes the database as version 1 made it: no photos, and one sentence for a refusal. */
async function firstVersion(): Promise<void> {
  const db = await openDB(NAME, 1, {
    upgrade(db) {
      db.createObjectStore('outbox', { keyPath: 'n', autoIncrement: true }).createIndex('id', 'id', {
        unique: true,
      })
      db.createObjectStore('colonies', { keyPath: 'id' })
      db.createObjectStore('kept', { keyPath: 'key' }).put({ key: 'birth', id: 'born-then' })
    },
  })
  const common = {
    colony: 'c1',
    tag: 'W-1',
    owner: { id: 'p1', name: 'Teuila' },
    keptAt: '2026-06-01T12:00:00.000Z',
  }
  await db.add('outbox', { ...common, id: ID(1), entry: entry(ID(1)), tries: 0, refused: null })
  await db.add('outbox', {
    ...common,
    id: ID(2),
    entry: entry(ID(2)),
    tries: 2,
    refused: 'W-1 left the yard',
  })
  await db.add('outbox', { ...common, id: ID(3), entry: entry(ID(3)), tries: 1, refused: null })
  db.close()
}

it('keeps every entry, in order, with what is known of it', async () => {
  await firstVersion()
  const db = await openDatabase()
  expect(db.version).toBe(VERSION)
  expect(VERSION).toBeGreaterThan(1)
  expect((await all(db)).map(({ n, id, tries, refused }) => ({ n, id, tries, refused }))).toEqual([
    { n: 1, id: ID(1), tries: 0, refused: null },
    { n: 2, id: ID(2), tries: 2, refused: [{ field: '', message: 'W-1 left the yard' }] },
    { n: 3, id: ID(3), tries: 1, refused: null },
  ])
  expect(await birth(db)).toBe('born-then')
  db.close()
})

it('goes on from there: new entries come after the old, and old ones can leave', async () => {
  await firstVersion()
  const db = await openDatabase()
  await keepPhoto(db, { id: 'a'.repeat(64), bytes: Uint8Array.of(1, 2) }, '2026-06-02T12:00:00.000Z')
  expect((await photo(db, 'a'.repeat(64)))?.sent).toBe(false)
  const [first] = await all(db)
  if (first === undefined) throw new Error('nothing was kept')
  await acknowledge(db, first, '2026-06-02T12:00:00.000Z')
  expect((await all(db)).map((w) => w.n)).toEqual([2, 3])
  db.close()
})

it('makes way for a newer version instead of standing in its way', async () => {
  let gone = 0
  await openDatabase(() => {
    gone++
  })
  const newer = await openDB(NAME, VERSION + 1)
  expect(gone).toBe(1)
  newer.close()
})
