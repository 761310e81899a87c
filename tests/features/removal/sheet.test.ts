import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { isOver, nextPart, stageOf } from '../../../src/features/removal/stage.ts'
import { hoursBetween, intakeFrom } from '../../../src/features/removal/to-intake.ts'
import { intake } from '../../../src/journal/entry.ts'
import {
  blocksOf,
  DEFAULT_TERMS,
  filledTerms,
  priceWords,
  TERMS_LIMIT,
  termsOf,
  unknownBlanks,
} from '../../../src/records/agreement.ts'
import { DRAWN, drawingOf, FIELD, svgOf } from '../../../src/records/drawing.ts'
import { EMPTY_SHEET, type Sheet, sheet } from '../../../src/records/removal-sheet.ts'

describe('a name drawn on the screen', () => {
  const line = [
    [10, 10],
    [100, 60],
    [200, 20],
  ]
  const path = (text: string): string => {
    const d = drawingOf(text)
    return d.ok ? d.path : `refused: ${d.problems[0]}`
  }

  test('is made again from its points', () => {
    expect(path(JSON.stringify([line]))).toBe('M10 10L100 60L200 20')
    expect(path('[[[10.4, 10.6], [100, 60]], [[300, 100]]]')).toBe('M10 11L100 60M300 100L300 100')
  })
  test('stays on its field', () => {
    expect(path('[[[-50, 900], [9000, -3]]]')).toBe(`M0 ${FIELD.height}L${FIELD.width} 0`)
  })
  test.each([
    ['', 'cannot be read'],
    ['[]', 'is missing'],
    ['[[[5, 5], [6, 6]]]', 'is missing'],
    ['{"d": "M0 0"}', 'cannot be read'],
    ['[[["<script>", 1]]]', 'cannot be read'],
    ['[[[1, 2, 3]]]', 'cannot be read'],
    ['[[[1, null]]]', 'cannot be read'],
    [JSON.stringify([[[1, 1e9]]]), 'cannot be read'],
    [
      JSON.stringify(Array.from({ length: 2 }, () => Array.from({ length: 2000 }, (_, i) => [i % 600, 5]))),
      'is too long',
    ],
  ])('refuses %.40s', (text, why) => {
    expect(path(text)).toContain(`refused: ${why}`)
  })
  test('whatever is sent, nothing but numbers gets into the drawing', () => {
    const anything = fc.oneof(
      fc.json(),
      fc.string(),
      fc.array(fc.array(fc.tuple(fc.integer(), fc.double()))).map((x) => JSON.stringify(x)),
    )
    fc.assert(
      fc.property(anything, fc.string(), (text, title) => {
        const d = drawingOf(text)
        if (!d.ok) return
        expect(d.path).toMatch(DRAWN)
        const svg = svgOf(d.path, title)
        expect(svg.match(/</g)?.length).toBe(5)
      }),
      { numRuns: 500 },
    )
  })
  test('a path that was not made here is never drawn', () => {
    expect(() => svgOf('M0 0"/><script>alert(1)</script>', 'x')).toThrow(RangeError)
    const signed = { how: 'drawn', name: 'O', on: '2026-06-01', terms: 't', path: 'M0 0"><script>' }
    expect(sheet.safeParse({ ...EMPTY_SHEET, agreement: { signature: signed } }).success).toBe(false)
  })
  test('the title cannot break out', () => {
    expect(svgOf('M1 1L2 2', '</title><script>')).not.toContain('<script>')
  })
})

describe('the agreement', () => {
  const around = { yard: 'Quarry yard', currency: '$', heat: '85 °F', dayWords: (d: string) => d }
  const s: Sheet = {
    ...EMPTY_SHEET,
    job: { name: 'Ottoline Fairweather', address: '4 Invented Row', plannedOn: '2026-06-12' },
    site: { where: 'left of the porch' },
    agreement: { pricing: 'hourly', hourly: 95, hours: 4, extra: 'The ladder is yours.' },
  }

  test('the default text says what is and what is not included, closing up and repair among the latter', () => {
    expect(DEFAULT_TERMS.length).toBeLessThan(TERMS_LIMIT)
    expect(unknownBlanks(DEFAULT_TERMS)).toEqual([])
    const not = DEFAULT_TERMS.slice(DEFAULT_TERMS.indexOf('# What is not included'))
    expect(not).toMatch(/Closing up for good and repair.*yours to arrange/)
    expect(DEFAULT_TERMS).not.toMatch(/\bsafe/i)
  })
  test('is filled in, once: what a customer is called is not a blank again', () => {
    const text = termsOf(DEFAULT_TERMS, { ...s, job: { ...s.job, name: '{price}' } }, around)
    expect(text).toContain('Between Quarry yard and {price}.')
    expect(text).toContain('$95 an hour for the hours worked. We expect about 4 hours, that is about $380.')
    expect(text).toContain('The ladder is yours.')
  })
  test('what is not known is a line to write on', () => {
    expect(termsOf(DEFAULT_TERMS, EMPTY_SHEET, { ...around, yard: '' })).toContain(
      'Between ____________________ and ____________________',
    )
  })
  test('prices', () => {
    expect(priceWords({ pricing: 'fixed', fixed: 450.5 }, '€')).toBe(
      'A fixed price of €450.50, however long it takes.',
    )
    expect(priceWords({ pricing: 'hourly', hourly: 80 }, '')).toBe('80 an hour for the hours worked.')
    expect(priceWords({ pricing: 'fixed', hourly: 80 }, '$')).toBeUndefined()
  })
  test('a slip in braces is named', () => {
    expect(unknownBlanks('Dear {customer}, {adress} {adress} {}')).toEqual(['adress'])
    expect(filledTerms('{adress} {constructor}', {})).toBe('{adress} {constructor}')
  })
  test('is laid out in headings, paragraphs and lists', () => {
    expect(blocksOf('# A\n\none\ntwo\n\n- x\n- y\nthree')).toEqual([
      { is: 'heading', text: 'A' },
      { is: 'text', text: 'one two' },
      { is: 'list', items: ['x', 'y'] },
      { is: 'text', text: 'three' },
    ])
  })
})

describe('from sheet to intake', () => {
  const done: Sheet = {
    ...EMPTY_SHEET,
    job: {
      name: 'Ottoline Fairweather',
      phone: '555 0100',
      address: '4 Invented Row',
      wayIn: 'Gate code 1234',
    },
    site: { type: 'wall', where: 'porch', sprayed: 'no' },
    work: {
      on: '2026-06-12',
      arrivedAt: '08:00',
      openedAt: '08:40',
      boxedAt: '12:10',
      leftAt: '13:00',
      outdoorC: 27,
      method: 'vacuum',
      queen: 'caged',
      queenFoundAt: '11:30',
      brood: { eggs: 0.5, open: 1 },
      broodCare: 'closed-chest',
      queenCells: 'none',
      bees: { frames: 5 },
      deadBeesKg: 0.1,
      tiedComb: true,
      temper: 2,
      sealed: 'yes',
      cleaned: 'all',
      note: 'Calm at dusk.',
    },
  }

  test('carries everything an intake has a field for, and the rest as its note', () => {
    const { on: _on, ...filled } = intakeFrom(done)
    const whole = {
      ...filled,
      id: '019707a0-0000-7000-8000-000000000001',
      kind: 'intake',
      colony: 'W-1',
      on: '2026-06-12',
      by: 'O',
      yard: 'Q',
    }
    expect(intake.parse(whole)).toMatchObject({
      removal: {
        type: 'wall',
        removedOn: '2026-06-12',
        outdoorC: 27,
        hoursOpenToBoxed: 3.5,
        method: 'vacuum',
        sprayed: 'no',
        site: 'Ottoline Fairweather, 4 Invented Row',
      },
      queen: 'caged',
      brood: { eggs: 0.5, open: 1 },
      broodCare: 'closed-chest',
      queenCells: 'none',
      bees: { frames: 5 },
      deadBeesKg: 0.1,
      tiedComb: true,
      temper: 2,
      note: 'On site 08:00 to 13:00. Queen found at 11:30. Entrance sealed. All comb taken out. Calm at dusk.',
    })
  })
  test('nothing of the customer is in it but the site, which is kept apart', () => {
    const { removal, ...rest } = intakeFrom(done)
    const { site: _site, ...open } = removal
    expect(JSON.stringify({ rest, open })).not.toMatch(/Ottoline|Invented|555 01|code 1234/)
  })
  test('an empty sheet carries nothing', () => {
    expect(intakeFrom(EMPTY_SHEET)).toEqual({ removal: {} })
  })
  test('hours go over midnight', () => {
    expect(hoursBetween('09:00', '13:30')).toBe(4.5)
    expect(hoursBetween('23:00', '00:20')).toBe(1.33)
  })
})

test('a job walks through its stages', () => {
  const s: Sheet = { ...EMPTY_SHEET, job: { name: 'O' } }
  const stages = [
    stageOf(s, 0),
    stageOf({ ...s, site: { where: 'porch' } }, 0),
    stageOf({ ...s, agreement: { signature: { how: 'paper', name: 'O', on: '2026-06-01', terms: 't' } } }, 0),
    stageOf({ ...s, decision: { is: 'wait', by: 'B', on: '2026-06-02', unmet: [] } }, 0),
    stageOf({ ...s, decision: { is: 'go', by: 'B', on: '2026-06-02', unmet: [] } }, 0),
    stageOf({ ...s, work: { queen: 'caged' } }, 0),
    stageOf({ ...s, work: { queen: 'caged' } }, 1),
  ]
  expect(stages).toEqual(['called', 'looked-at', 'agreed', 'wait', 'go', 'worked', 'boxed'])
  expect(stages.map((stage) => nextPart(stage, s))).toEqual([
    'site',
    'agreement',
    'check',
    'check',
    'work',
    'intake',
    null,
  ])
  const swarm: Sheet = { ...s, site: { type: 'swarm' } }
  expect(stageOf(swarm, 0)).toBe('looked-at')
  expect(nextPart('looked-at', swarm)).toBe('check')
  expect(stageOf(swarm, 1)).toBe('finished')
  const refused = stageOf({ ...s, decision: { is: 'refuse', by: 'B', on: '2026-06-02', unmet: [] } }, 0)
  expect(isOver(refused)).toBe(true)
})
