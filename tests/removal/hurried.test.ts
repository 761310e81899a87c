/** Ways past a question that a hurried person finds without meaning to: each is shut. Limits are judgement, said where they stand. */
import { describe, expect, test } from 'vitest'
import { beforeCut, holds } from '../../src/features/removal/before-cut.ts'
import { clearanceProblems, secondProblems } from '../../src/features/removal/decide.ts'
import { atStart } from '../../src/features/removal/heat.ts'
import { sameName } from '../../src/features/removal/same-name.ts'
import { mergeSheets } from '../../src/records/merge-sheets.ts'
import type { Sheet } from '../../src/records/removal-sheet.ts'
import { DEFAULT_PROTOCOL } from '../../src/recovery/protocol.ts'
import { but, DAY, READY, SHOWS } from './ready.ts'

const holding = (s: Sheet, day = DAY): string[] =>
  beforeCut(s, DEFAULT_PROTOCOL, SHOWS, day)
    .unmet.filter(holds)
    .map((i) => i.id)

describe('yesterday’s sheet tapped through again', () => {
  test('what was ticked yesterday is asked anew, and the forecast of yesterday is none', () => {
    expect(holding(READY)).toEqual([])
    const next = holding(READY, '2026-06-13')
    for (const id of ['heat', 'not-alone', 'ladder-person', 'sting-plan', 'exclusion', 'kit'])
      expect(next).toContain(id)
  })
  test('ticks that came without a day count for nothing', () => {
    const { doneOn: _, ...check } = READY.check
    expect(holding(but({ check }))).toContain('sting-plan')
  })
})

describe('the unit that was not looked at', () => {
  // 38 °C typed where °F is asked is 38 °F: 3.3 °C.
  const typed = (38 - 32) / 1.8
  test('38 typed for °F is not a cool day', () => {
    const { hours: _, ...check } = READY.check
    expect(holding(but({ check: { ...check, hottestC: typed } }))).toEqual(['heat'])
    expect(holding(but({ check: { ...check, hottestC: 18 } }))).toEqual([])
  })
  test('nor when work starts', () => {
    const at = (outdoorC: number) =>
      atStart(but({ work: { outdoorC, water: true } }), DEFAULT_PROTOCOL.heatLimitC, SHOWS, DAY).state
    expect(at(typed)).toBe('unmet')
    expect(at(18)).toBe('met')
  })
})

describe('the same person under another name', () => {
  test.each([
    ['Ines', 'ines albrecht'],
    ['Ines A.', 'Ines'],
    ['Inès', 'INES'],
    ['Albrecht, Ines', 'Ines Albrecht'],
    ['I. Albrecht', 'Ines Albrecht'],
  ])('%s is %s', (a, b) => {
    expect(sameName(a, b)).toBe(true)
    expect(secondProblems({ by: a, reason: 'Seen by me, fine.' }, [b])).toMatchObject([{ field: 'by' }])
  })
  test('others are others', () => {
    expect(sameName('Ines Albrecht', 'Ines Brandt')).toBe(false)
    expect(sameName('Ann', 'Anna')).toBe(false)
    expect(sameName('...', 'Ines')).toBe(false)
  })
  test('the customer clears no gas pipe', () => {
    const c = { hazard: 'gas' as const, who: 'Mrs Ottoline Fairweather', licence: 'Owner', on: DAY }
    expect(clearanceProblems(c, ['Ines'], 'Ottoline Fairweather', DAY)).toMatchObject([
      { field: 'who' },
      { field: 'licence' },
    ])
  })
})

describe('an old paper', () => {
  const cleared = (hazard: 'gas' | 'asbestos', on: string): Sheet =>
    but({
      site: {
        ...READY.site,
        behind: hazard === 'gas' ? ['gas'] : [],
        hazards: hazard === 'asbestos' ? ['asbestos'] : [],
      },
      check: {
        ...READY.check,
        clearances: [{ hazard, who: 'Edda Brandt', licence: 'Brandt & Co', on, knew: [hazard] }],
      },
    })
  test('gas that was shut off two years ago may be on again; asbestos that was tested stays tested', () => {
    expect(holding(cleared('gas', '2024-06-12'))).toEqual(['trade-gas'])
    expect(holding(cleared('gas', '2026-05-13'))).toEqual([])
    expect(holding(cleared('gas', '2026-05-12'))).toEqual(['trade-gas'])
    expect(holding(cleared('asbestos', '2024-06-12'))).toEqual([])
  })
})

test('five metres up is not the ground, whatever was tapped', () => {
  const s = but({
    site: { ...READY.site, access: 'ground', heightM: 5 },
    check: { ...READY.check, done: READY.check.done?.filter((t) => t !== 'ladder-person') },
  })
  expect(holding(s)).toEqual(['ladder-person'])
  expect(holding({ ...s, site: { ...s.site, heightM: 2 } })).toEqual([])
})

describe('a word to get past the field', () => {
  const clear = (who: string, licence: string): string[] =>
    clearanceProblems({ hazard: 'gas', who, licence, on: DAY }, ['Ines'], 'Ottoline Fairweather', DAY).map(
      (p) => p.field,
    )
  test.each(['ok', 'n/a', 'The owner', 'yes, done', '--', 'me myself'])(
    '%s is neither name nor licence',
    (word) => {
      expect(clear(word, 'Brandt & Co')).toContain('who')
      expect(clear('Edda Brandt', word)).toContain('licence')
      const second = secondProblems({ by: word, reason: 'It is a very small job.' }, ['Ines'])
      expect(second.map((p) => p.field)).toContain('by')
    },
  )
  test('a name and a company are', () => {
    expect(clear('Edda Brandt', 'Brandt & Co')).toEqual([])
    expect(clear('The gas company, Mr Li', '4711')).toEqual([])
  })
  test('the customer is no second person', () => {
    const second = { by: 'Mrs Fairweather', reason: 'She says it is fine with her.' }
    expect(secondProblems(second, ['Ines'], 'Fairweather')).toMatchObject([{ field: 'by' }])
    expect(secondProblems(second, ['Ines'], 'Ottoline Pellow')).toEqual([])
  })
})

describe('a sheet used again for another wall', () => {
  const gas: Sheet = but({
    site: { ...READY.site, behind: ['gas'] },
    check: {
      ...READY.check,
      clearances: [
        {
          hazard: 'gas',
          who: 'Edda Brandt',
          licence: 'Brandt & Co',
          on: DAY,
          knew: ['gas'],
          address: '4 Invented Row',
          where: 'left of the porch',
        },
      ],
    },
  })
  const at = (address: string, where: string): string[] =>
    holding({ ...gas, job: { ...gas.job, address }, site: { ...gas.site, where } })
  test('what was cleared here is not cleared there', () => {
    expect(at('4 Invented Row', 'left of the porch')).toEqual([])
    expect(at('4 Invented Row, Quarryville', 'Left of the porch, low')).toEqual([])
    expect(at('14 Invented Row', 'left of the porch')).toEqual(['trade-gas'])
    expect(at('4 Invented Row', 'right of the porch')).toEqual(['trade-gas'])
    const { unmet } = beforeCut(
      { ...gas, job: { ...gas.job, address: '9 Other Lane' } },
      DEFAULT_PROTOCOL,
      SHOWS,
      DAY,
    )
    expect(unmet[0]?.why).toContain('cleared for another place (4 Invented Row: left of the porch)')
  })
})

test('a roof is not worked from the ground until somebody says how low it is', () => {
  const site = { ...READY.site, type: 'roof', access: 'ground' as const }
  const { heightM: _, ...unsaid } = site
  const check = { ...READY.check, done: READY.check.done?.filter((t) => t !== 'ladder-person') }
  expect(holding(but({ site: unsaid, check }))).toEqual(['ladder-person'])
  expect(holding(but({ site: { ...unsaid, heightM: 2.2 }, check }))).toEqual([])
  expect(holding(but({ site: { ...unsaid, type: 'wall' }, check }))).toEqual([])
})

test('a cool forecast for tomorrow is none for today; a hot one is said at once', () => {
  const day = '2026-06-13'
  const s = (c: number): Sheet =>
    but({
      job: { ...READY.job, plannedOn: day },
      check: { ...READY.check, on: day, hours: [{ at: '09:00', c }] },
    })
  expect(holding(s(20))).toEqual(['heat'])
  const says = (c: number) =>
    beforeCut(s(c), DEFAULT_PROTOCOL, SHOWS, DAY).items.find((i) => i.id === 'heat')?.state
  expect([says(20), says(38)]).toEqual(['unsaid', 'unmet'])
})

test('how hot it was yesterday does not open it today', () => {
  const work = { outdoorC: 20, water: true, on: DAY }
  const at = (day: string) => atStart(but({ work }), DEFAULT_PROTOCOL.heatLimitC, SHOWS, day).state
  expect([at(DAY), at('2026-06-13')]).toEqual(['met', 'unsaid'])
})

describe('written without signal yesterday, sent today', () => {
  const next = '2026-06-13'
  const none: Sheet = but({ check: { ...READY.check, done: [] } })
  const today: Sheet = but({ check: { ...READY.check, done: ['kit'], doneOn: next, on: next, hottestC: 38 } })
  const yesterday: Sheet = but({ check: { ...READY.check, hottestC: 20 } })
  test('yesterday’s ticks and forecast do not get today’s date, whoever is sent last', () => {
    for (const merged of [mergeSheets(none, yesterday, today), mergeSheets(none, today, yesterday)]) {
      expect(merged.sheet.check).toMatchObject({ done: ['kit'], doneOn: next, on: next, hottestC: 38 })
      expect(merged.clashes).toEqual([])
    }
  })
  test('nor does how hot it was when the surface was to be opened', () => {
    const s = (on: string, outdoorC: number): Sheet => but({ work: { on, outdoorC, water: true } })
    const { sheet } = mergeSheets(READY, s(DAY, 20), s(next, 36))
    expect(sheet.work).toEqual({ on: next, outdoorC: 36, water: true })
  })
  test('of the same day both are heard: what differs is a clash', () => {
    const other: Sheet = but({ check: { ...READY.check, done: ['kit', 'fire'] } })
    expect(mergeSheets(none, READY, other).clashes).toEqual(['check.done'])
  })
})
