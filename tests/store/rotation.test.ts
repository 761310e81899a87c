import fc from 'fast-check'
import { expect, test } from 'vitest'
import { addDays } from '../../src/days.ts'
import { KEEP, surplus } from '../../src/store/rotation.ts'

const backup = (at: string) => ({ name: `resettle-${at}`, at })
const daily = (from: string, days: number, time = '04:00:00.000Z') =>
  Array.from({ length: days }, (_, i) => backup(`${addDays(from, i)}T${time}`))
const kept = (backups: { name: string; at: string }[]): string[] => {
  const gone = new Set(surplus(backups).map((b) => b.name))
  return backups.filter((b) => !gone.has(b.name)).map((b) => b.at.slice(0, 10))
}

test('of two years of days: the last 7 days, 5 weeks and 12 months, counted by hand', () => {
  // 2026-06-14 is a Sunday, so the last five weeks (Monday to Sunday) end on 14 Jun, 7 Jun, 31 May, 24 May, 17 May.
  const left = kept(daily('2024-06-15', 730))
  expect(left.slice(-7)).toEqual(['08', '09', '10', '11', '12', '13', '14'].map((d) => `2026-06-${d}`))
  expect(left).toEqual(expect.arrayContaining(['2026-06-07', '2026-05-31', '2026-05-24', '2026-05-17']))
  const months = ['2025-07-31', '2025-08-31', '2025-09-30', '2025-10-31', '2025-11-30', '2025-12-31']
  expect(left.slice(0, 6)).toEqual(months)
  expect(left.slice(6, 10)).toEqual(['2026-01-31', '2026-02-28', '2026-03-31', '2026-04-30'])
  // Today's is day, week and month at once; the 7th and the last of May are shared too.
  expect(left).toHaveLength(11 + 7 + 3)
})

test('of several on the last day all are kept, and the last one once the day is over', () => {
  const day = ['2026-06-01T04:00:00.000Z', '2026-06-01T09:30:00.000Z', '2026-06-01T17:00:00.000Z'].map(backup)
  expect(surplus(day)).toEqual([])
  expect(surplus([...day, backup('2026-06-02T04:00:00.000Z')]).map((b) => b.at)).toEqual([
    '2026-06-01T09:30:00.000Z',
    '2026-06-01T04:00:00.000Z',
  ])
})

test('a machine that was off for a year loses nothing by that', () => {
  const before = kept(daily('2024-01-01', 365))
  expect(kept([...daily('2024-01-01', 365), backup('2026-03-01T04:00:00.000Z')])).toEqual(
    expect.arrayContaining(before.slice(-6)),
  )
})

test('one taken while the clock ran a century ahead takes one place, not all', () => {
  const left = kept([...daily('2026-05-01', 40), backup('2126-01-01T04:00:00.000Z')])
  expect(left.filter((d) => d.startsWith('2026-06'))).toHaveLength(6)
})

test('never keeps too many, never throws away the newest, and thinning twice is thinning once', () => {
  const when = fc.integer({ min: 0, max: 3000 }).map((n) => addDays('2020-01-01', n))
  fc.assert(
    fc.property(fc.uniqueArray(when, { maxLength: 400 }), (days) => {
      const backups = days.map((d) => backup(`${d}T04:00:00.000Z`))
      const gone = new Set(surplus(backups).map((b) => b.name))
      const left = backups.filter((b) => !gone.has(b.name))
      const newest = [...days].sort().at(-1)
      return (
        left.length <= KEEP.daily + KEEP.weekly + KEEP.monthly &&
        (newest === undefined || left.some((b) => b.at.startsWith(newest))) &&
        surplus(left).length === 0
      )
    }),
  )
})
