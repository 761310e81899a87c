/** `resettle import colonies.csv` and `resettle export colonies.csv`: the same doors as the pages. */
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, expect, it, vi } from 'vitest'
import { importState } from '../../../src/features/import/undo.ts'
import { run as exportCommand } from '../../../src/node/commands/export.ts'
import { run as importCommand } from '../../../src/node/commands/import.ts'
import type { Store } from '../../../src/store/index.ts'
import { dataFile, openStore } from '../../../src/store/node.ts'

let folder: string
let said: { out: string; err: string }
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'resettle-colonies-'))
  vi.stubEnv('RESETTLE_DATA', folder)
  said = { out: '', err: '' }
  vi.spyOn(process.stdout, 'write').mockImplementation((text) => {
    said.out += String(text)
    return true
  })
  vi.spyOn(process.stderr, 'write').mockImplementation((text) => {
    said.err += String(text)
    return true
  })
})
afterEach(() => {
  vi.restoreAllMocks()
  vi.unstubAllEnvs()
  rmSync(folder, { recursive: true })
})

const HEADER =
  'tag,removal_type,removed_on,intake_on,yard,queen_at_intake,egg_frames,open_frames,capped_frames,outdoor_c,hours_open_to_boxed,method,outcome,outcome_on,into,note'
const ROWS = [
  'A,wall,,2025-05-01,Orchard,caged,0.5,1,,27.5,3,vacuum,united,2025-05-20,B,',
  'B,bell tower,,2025-05-10,Orchard,loose,,,,,,,moved-out,2025-06-20,,"big, calm"',
]

function file(name: string, ...lines: string[]): string {
  const path = join(folder, name)
  writeFileSync(path, `${lines.join('\r\n')}\r\n`)
  return path
}

function inBook<T>(look: (store: Store) => T): T {
  const store = openStore(dataFile(), { migrate: false })
  try {
    return look(store)
  } finally {
    store.close()
  }
}

it('what goes in comes out the same', async () => {
  expect(await importCommand([file('old.csv', HEADER, ...ROWS), '--by', 'Odalys'])).toBe(0)
  expect(said).toEqual({ out: 'taken in: 2 colonies, 4 entries\n', err: '' })
  const out = join(folder, 'out.csv')
  expect(await exportCommand([out])).toBe(0)
  expect(readFileSync(out, 'utf8').trim().split('\r\n').sort()).toEqual([...ROWS, HEADER].sort())
})

it('is noted as an import, which can be taken back from its page', async () => {
  await importCommand([file('old.csv', HEADER, ...ROWS), '--by', 'Odalys'])
  inBook((store) => {
    const [note] = store.imports.list()
    expect(note).toMatchObject({ source: 'old.csv', takenBy: 'Odalys', colonies: 2 })
    expect(importState(store, note?.id ?? '')?.standing).toHaveLength(4)
  })
})

it('all or nothing; --skip-bad leaves out bad lines and those the book refuses, each told', async () => {
  await importCommand([file('first.csv', HEADER, 'C,wall,,2025-05-01,Orchard,caged,,,,,,,,,,')])
  const bad = file(
    'second.csv',
    HEADER,
    'D,wall,,2025-05-01,Orchard,nowhere,,,,,,,,,,',
    'C,wall,,2025-06-01,Orchard,caged,,,,,,,,,,',
    'E,wall,,2025-06-01,Orchard,caged,,,,,,,,,,',
  )
  expect(await importCommand([bad])).toBe(2)
  expect(said.err).toMatch(/^line 2: queen_at_intake: must be one of/)
  expect(said.err).toContain('Nothing was written.')
  expect(inBook((store) => store.colonies().map((c) => c.tag))).toEqual(['C'])
  said.err = ''
  expect(await importCommand([bad, '--skip-bad'])).toBe(0)
  expect(said.err).toContain('line 3: tag: "C" is already in the yard')
  expect(inBook((store) => store.colonies().map((c) => c.tag))).toEqual(['C', 'E'])
})

it('a file of which nothing can be taken in says so', async () => {
  const path = file('bad.csv', HEADER, 'D,wall,,2025-05-01,Orchard,nowhere,,,,,,,,,,')
  expect(await importCommand([path, '--skip-bad'])).toBe(2)
  expect(said.err).toContain('No line can be taken in. Nothing was written.')
})
