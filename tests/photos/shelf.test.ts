/** The folder of photos gives out photos, whatever it is asked for. */
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { type PhotoFiles, shelfIn } from '../../src/photos/shelf.ts'

let folder = ''
let shelf: PhotoFiles
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'resettle-shelf-'))
  mkdirSync(join(folder, 'photos'))
  for (const name of ['secret.jpg', 'photos/note.jpg', `photos/${'a'.repeat(64)}.jpg`])
    writeFileSync(join(folder, name), 'bytes')
  shelf = shelfIn(join(folder, 'photos'))
})
afterAll(() => rmSync(folder, { recursive: true, force: true }))

test('a photo is found by its id', async () => {
  const id = 'a'.repeat(64)
  expect(shelf.readNow(id)).toEqual(new Uint8Array(Buffer.from('bytes')))
  expect(await shelf.find(id)).toEqual(new Uint8Array(Buffer.from('bytes')))
  expect(await shelf.find('b'.repeat(64))).toBeNull()
})

test.each(['../secret', 'note', './note', `../photos/${'a'.repeat(64)}`, 'A'.repeat(64), '', '..', '\0'])(
  'what is no id is not looked for, though there is such a file: %j',
  async (id) => {
    expect(shelf.readNow(id)).toBeNull()
    expect(await shelf.find(id)).toBeNull()
  },
)
