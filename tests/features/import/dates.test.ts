/** Dates as people write them. The serial numbers are those of the 1900 date system as spreadsheet programs document it. */
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { dayOf } from '../../../src/days.ts'
import { dateTyped, orderIn } from '../../../src/features/import/dates.ts'

describe('a date', () => {
  it.each([
    ['2024-05-03', '2024-05-03'],
    ['2024/5/3', '2024-05-03'],
    ['2024-05-03T14:30:00Z', '2024-05-03'],
    ['2024-05-03 00:00:00', '2024-05-03'],
    ['3 May 2024', '2024-05-03'],
    ['3rd of', null],
    ['3-May-24', '2024-05-03'],
    ['May 3, 2024', '2024-05-03'],
    ['Sept 9 2023', '2023-09-09'],
    ['Fri 3 May 2024', '2024-05-03'],
    ['Friday, May 3rd, 2024', '2024-05-03'],
    // ISO 8601 day 2024-05-03 is serial 45415; serial 1 would be 1900-01-01 but for the leap day 1900 never had.
    ['45415', '2024-05-03'],
    ['12 May', null],
    ['2024-02-30', null],
    ['sometime', null],
    ['', null],
  ])('%s', (text, day) => {
    expect(dateTyped(text, 'day-first')).toBe(day)
    expect(dateTyped(text, 'month-first')).toBe(day)
  })

  it.each([
    ['5/3/2024', '2024-03-05', '2024-05-03'],
    ['05.03.24', '2024-03-05', '2024-05-03'],
    ['5-3-87', '1987-03-05', '1987-05-03'],
    ['25/3/2024', '2024-03-25', null],
    ['3/25/2024 2:30 PM', null, '2024-03-25'],
  ])('%s depends on what comes first', (text, dayFirst, monthFirst) => {
    expect(dateTyped(text, 'day-first')).toBe(dayFirst)
    expect(dateTyped(text, 'month-first')).toBe(monthFirst)
  })

  it('any day written day first or month first comes back', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 30_000 }), fc.constantFrom('/', '.', '-'), (n, sign) => {
        const day = dayOf(n)
        const [y, m, d] = day.split('-').map(Number)
        return (
          dateTyped([d, m, y].join(sign), 'day-first') === day &&
          dateTyped([m, d, y].join(sign), 'month-first') === day
        )
      }),
    )
  })
})

describe('which comes first', () => {
  const order = (...texts: string[]) => orderIn(texts.map((text, i) => ({ line: i + 2, text })))

  it('is proven by a number over twelve', () => {
    expect(order('3/4/2024', '25/4/2024')).toMatchObject({
      order: 'day-first',
      proof: { line: 3, text: '25/4/2024' },
    })
    expect(order('3/4/2024', '4/25/2024')).toMatchObject({ order: 'month-first', mixed: false })
  })

  it('is asked where nothing proves it, and not where both readings are one day', () => {
    expect(order('3/4/2024', '5/6/2024')).toMatchObject({ order: null, ambiguous: { line: 2 }, twoWays: 2 })
    expect(order('4/4/2024', '2024-05-06', '3 May 2024')).toMatchObject({ order: null, ambiguous: null })
  })

  it('both in one sheet is told', () => {
    expect(order('25/4/2024', '4/25/2024')).toMatchObject({ order: null, mixed: true })
  })
})
