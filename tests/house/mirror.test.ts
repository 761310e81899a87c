/** Tests lie as what they test lies: tests/recovery tests src/recovery, tests/features/round tests src/features/round. */
import { existsSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { expect, test } from 'vitest'
import { filesIn, ROOT } from './files.ts'

/** What mirrors no room: published values, Chromium, the floor plan, ill will, times, what tests share; demo mirrors demo/. */
const BESIDE = ['reference', 'journeys', 'house', 'abuse', 'bench', 'support', 'demo']

/** Whether tests in a folder below tests/ have something in src to test. */
const mirrors = (folder: string): boolean =>
  BESIDE.includes(folder.split('/')[0] ?? '') || existsSync(join(ROOT, 'src', folder))

test('every folder of tests mirrors a folder of src, or is named above', () => {
  const folders = new Set(
    filesIn('tests')
      .map((file) => dirname(file).slice('tests/'.length))
      .filter((folder) => !/^output\b/.test(folder)),
  )
  expect(folders.size).toBeGreaterThan(BESIDE.length)
  expect([...folders].filter((folder) => !mirrors(folder))).toEqual([])
  expect(BESIDE.filter((folder) => !folders.has(folder))).toEqual([])
})

test('the rule itself can fail', () => {
  expect(mirrors('features/round')).toBe(true)
  expect(mirrors('bench/advice')).toBe(true)
  expect(mirrors('round')).toBe(false)
  expect(mirrors('features/advice')).toBe(false)
})
