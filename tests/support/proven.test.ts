/** What a kept result rests on is found whole, or a change could go unnoticed. */
import { join, relative } from 'node:path'
import { expect, test } from 'vitest'
import { restsOn } from './proven.ts'

const ROOT = join(import.meta.dirname, '../..')
const rests = (file: string): string[] => restsOn(join(ROOT, file)).map((f) => relative(ROOT, f))

test('a study rests on what it imports, and what that imports, and on the packages', () => {
  const files = rests('tests/forecast/calibration.test.ts')
  for (const file of [
    'tests/forecast/calibration.ts',
    'tests/forecast/simulator.ts',
    'src/forecast/story/walk.ts',
    'src/forecast/rates.ts',
    'src/journal/history.ts',
    'src/days.ts',
    'package-lock.json',
  ])
    expect(files).toContain(file)
  expect(files.some((f) => f.startsWith('src/features/'))).toBe(false)
})

test('modules that only hand on, and files of figures, are followed too', () => {
  expect(rests('src/forecast/index.ts')).toContain('src/forecast/story/walk.ts')
  expect(rests('src/forecast/calibration-data.ts').some((f) => f.endsWith('.json'))).toBe(true)
})
