/** Ways past a question that a hurried person finds without meaning to: each is shut. Limits are judgement, said where they stand. */
import { describe, expect, test } from 'vitest'
import { beforeCut, holds } from '../../src/features/removal/before-cut.ts'
import { clearanceProblems, sameName, secondProblems } from '../../src/features/removal/decide.ts'
import { atStart } from '../../src/features/removal/heat.ts'
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
    expect(clearanceProblems(c, ['Ines'], 'Ottoline Fairweather', DAY)).toMatchObject([{ field: 'who' }])
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
