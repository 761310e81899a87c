/** A command beside the server: two connections to one file, as two processes have. */
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, expect, test } from 'vitest'
import type { Store } from '../../src/store/index.ts'
import { openStore } from '../../src/store/node.ts'
import { add, CONTEXT, inspection, intake, refusal } from './helpers.ts'

let folder = ''
let server: Store
let command: Store

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'resettle-'))
  server = openStore(join(folder, 'resettle.db'))
  command = openStore(join(folder, 'resettle.db'))
})
afterEach(() => {
  server.close()
  command.close()
  rmSync(folder, { recursive: true, force: true })
})

test('each sees what the other wrote, and the same entry sent to both is one entry', () => {
  const entries = [intake('A-1'), inspection('A-1', '2026-05-15')]
  add(server, ...entries)
  expect(command.append(entries, CONTEXT)).toMatchObject({
    ok: true,
    accepted: [],
    already: entries.map((e) => e.id),
  })
  expect(refusal(command, intake('A-1'))).toContain('is already in the yard')
  add(command, inspection('A-1', '2026-05-16'))
  expect(server.colony('A-1')?.journal).toHaveLength(3)
  expect(server.verify().problems).toEqual([])
})

test('a protocol changed by the one is used by the other', () => {
  add(server, intake('A-1'))
  command.settings.set('protocol', { holdDays: 40 })
  expect(server.protocol().holdDays).toBe(40)
  add(server, inspection('A-1', '2026-05-15'))
  expect(command.verify().problems).toEqual([])
})
