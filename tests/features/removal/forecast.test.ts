/** A forecast is of this day, of the hours of the work and in the unit that is asked; how hot it is, of the moment. */
import { describe, expect, test } from 'vitest'
import { beforeCut } from '../../../src/features/removal/before-cut.ts'
import { atStart } from '../../../src/features/removal/heat.ts'
import type { Sheet } from '../../../src/records/removal-sheet.ts'
import { DEFAULT_PROTOCOL } from '../../../src/recovery/protocol.ts'
import { but, DAY, READY, SHOWS } from './ready.ts'
import { holding } from './reckoned.ts'

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

test('one cool hour is no forecast, unless the hottest one or the end of the work is said too', () => {
  const { from: _f, until: _u, hours: _h, ...check } = READY.check
  const dawn = { ...check, hours: [{ at: '06:00', c: 18 }] }
  expect(holding(but({ check: dawn }))).toEqual(['heat'])
  expect(holding(but({ check: { ...dawn, hottestC: 26 } }))).toEqual([])
  expect(holding(but({ check: { ...dawn, from: '06:00', until: '08:00' } }))).toEqual([])
})

test('dawn and dusk are no forecast of noon', () => {
  const { hottestC: _, ...check } = READY.check
  const hours = [
    { at: '06:00', c: 17 },
    { at: '20:00', c: 21 },
  ]
  expect(holding(but({ check: { ...check, hours, from: '06:00', until: '20:00' } }))).toEqual(['heat'])
  expect(holding(but({ check: { ...check, hours, hottestC: 27, from: '06:00', until: '20:00' } }))).toEqual(
    [],
  )
})

test('a forecast of one hour is none of a job of four; nor are two hours at dawn', () => {
  const { hottestC: _, ...check } = READY.check
  const long = { ...READY.agreement, hours: 5 }
  const noon = [
    { at: '08:00', c: 18 },
    { at: '12:00', c: 38 },
  ]
  const at = (more: object): string[] => holding(but({ agreement: long, check: { ...check, ...more } }))
  expect(at({ hours: noon, from: '08:00', until: '09:00' })).toEqual(['heat'])
  const dawn = [
    { at: '06:00', c: 15 },
    { at: '07:00', c: 17 },
  ]
  const { from: _f, until: _u, ...open } = check
  expect(holding(but({ check: { ...open, hours: dawn } }))).toEqual(['heat'])
})

test('how hot it was yesterday does not open it today', () => {
  const work = { outdoorC: 20, water: true, on: DAY }
  const at = (day: string) => atStart(but({ work }), DEFAULT_PROTOCOL.heatLimitC, SHOWS, day).state
  expect([at(DAY), at('2026-06-13')]).toEqual(['met', 'unsaid'])
})
