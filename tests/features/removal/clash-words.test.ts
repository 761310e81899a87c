/** A clash is read by somebody who has to choose: each field by its label, and both values in words. Invented. */
import { describe, expect, test } from 'vitest'
import { clashWords, pathWords } from '../../../src/features/removal/clash-words.ts'
import { EMPTY_SHEET, type Sheet, sheet } from '../../../src/records/removal-sheet.ts'
import { DAY, READY } from './ready.ts'

const PARTS = ['job', 'site', 'agreement', 'check', 'work'] as const
const shape = sheet.def.shape
const PATHS = [
  ...PARTS.flatMap((part) => Object.keys(shape[part].def.shape).map((key) => `${part}.${key}`)),
  ...Object.keys(shape).filter((key) => !PARTS.some((part) => part === key)),
]

test.each(PATHS)('%s has a label that is no name of a field', (path) => {
  const label = pathWords(path)
  expect(label).not.toContain('.')
  expect(label, 'words').toMatch(/^[“A-Z]/)
  expect(label).not.toMatch(/[a-z][A-Z]/)
})

const UNITS = { temperature: 'C', weight: 'kg' } as const
const site = (more: Partial<Sheet['site']>): Sheet => ({ ...READY, site: { ...READY.site, ...more } })
const job = (more: Partial<Sheet['job']>): Sheet => ({ ...READY, job: { ...READY.job, ...more } })
const work = (more: Partial<Sheet['work']>): Sheet => ({ ...READY, work: more })

describe('both values are in words', () => {
  test.each<[string, Sheet, Sheet, string]>([
    [
      'job.bees',
      job({ bees: 'nest' }),
      job({ bees: 'swarm' }),
      'theirs “Bees in something”, yours “A swarm”',
    ],
    ['job.since', job({ since: 'months' }), job({}), 'theirs “Months”, yours nothing'],
    ['site.type', site({ type: 'floor' }), site({ type: 'swarm' }), 'theirs “Floor'],
    [
      'site.behindHow',
      site({ behindHow: 'owner' }),
      site({ behindHow: 'detector' }),
      'theirs “the owner says”, yours “by a detector”',
    ],
    ['site.oldHow', site({ oldHow: 'untouched' }), site({ oldHow: 'tested' }), 'yours “old, but tested”'],
    ['site.old', site({ old: 'yes' }), site({ old: 'no' }), 'theirs “Yes”, yours “No”'],
    [
      'work.underGo',
      work({ underGo: { by: 'Odalys', on: DAY, at: '09:00' } }),
      work({}),
      'theirs written down by Odalys',
    ],
    ['work.bees', work({ bees: { frames: 4 } }), work({ bees: { kg: 2 } }), 'theirs 4 frames, yours 2 kg'],
    ['work.brood', work({ brood: { eggs: 1 } }), work({}), 'yours nothing'],
    ['check.hours', READY, EMPTY_SHEET, 'theirs 06:00 '],
    ['ended', { ...READY, ended: { on: DAY, why: 'They left' } }, READY, 'theirs “They left”'],
  ])('%s', (path, theirs, mine, words) => {
    const said = clashWords(['Odalys'], [theirs, mine, theirs], [path], [], UNITS)
    expect(said[1]).toMatchObject({ field: path, message: expect.stringContaining(words) })
  })
})
