/** What is so today is asked today: ticks, looks and what was written without signal are of their day. Limits are judgement, said where they stand. */
import { describe, expect, test } from 'vitest'
import { placeOf, stamped } from '../../../src/features/removal/place.ts'
import { mergeSheets } from '../../../src/records/merge-sheets.ts'
import type { Sheet } from '../../../src/records/removal-sheet.ts'
import { but, DAY, here, READY } from './ready.ts'
import { holding } from './reckoned.ts'

describe('yesterday’s sheet tapped through again', () => {
  test('what was ticked yesterday is asked anew, and the forecast of yesterday is none', () => {
    expect(holding(READY)).toEqual([])
    const next = holding(READY, '2026-06-13')
    for (const id of ['heat', 'not-alone', 'ladder-person', 'sting-plan', 'exclusion'])
      expect(next).toContain(id)
  })
  test('ticks that came without a day count for nothing', () => {
    const { doneOn: _, ...check } = READY.check
    expect(holding(but({ check }))).toContain('sting-plan')
  })
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
  test('ticks of one wall do not get the place of another, nor do looks', () => {
    const moved = here({ ...READY, site: { ...READY.site, where: 'the north wall' } })
    const mine: Sheet = { ...READY, check: { ...READY.check, done: ['kit', 'exclusion'] } }
    const { sheet } = mergeSheets(READY, mine, moved)
    expect(sheet.site.where).toBe('the north wall')
    expect(holding(sheet)).toContain('exclusion')
    // One added a look, the other who is about: both are kept, each of its place.
    const { lookedAt: _, ...site } = READY.site
    const none: Sheet = { ...READY, site }
    const looked = (lookedAt: NonNullable<Sheet['site']['lookedAt']>): Sheet => ({
      ...none,
      site: { ...site, lookedAt },
    })
    const at = placeOf(READY)
    const both = mergeSheets(none, looked({ behind: at }), looked({ bystanders: at }))
    expect(both.sheet.site.lookedAt).toEqual({ behind: at, bystanders: at })
    const apart = mergeSheets(
      none,
      looked({ behind: at }),
      looked({ behind: { ...at, where: 'the north wall' } }),
    )
    expect(apart.sheet.site.lookedAt).toEqual({})
  })
  test('of the same day both are heard: what differs is a clash', () => {
    const other: Sheet = but({ check: { ...READY.check, done: ['kit', 'exclusion'] } })
    expect(mergeSheets(none, READY, other).clashes).toEqual(['check.done'])
  })
})

test('who is about is asked again after days, a wall after months', () => {
  const on = (day: string): Sheet => {
    const at = { ...placeOf(READY), on: day }
    const lookedAt = { behind: at, hazards: at, old: at, bystanders: at }
    return { ...READY, site: { ...READY.site, lookedAt } }
  }
  expect(holding(on(DAY))).toEqual([])
  expect(holding(on('2026-06-10'))).toEqual([])
  expect(holding(on('2026-06-09'))).toEqual(['bystanders'])
  expect(holding(on('2026-03-13'))).toEqual(['services', 'old-building', 'bystanders'])
  // Saved again as it stood, it is as old as it was.
  const later = stamped(on('2026-06-11'), on('2026-06-11'), ['bystanders'], DAY)
  expect(later.site.lookedAt?.bystanders?.on).toBe('2026-06-11')
})
