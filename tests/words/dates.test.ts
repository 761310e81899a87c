import { describe, expect, it } from 'vitest'
import { dayAndDistance, dayWords, fromTo, spanWords, windowWords } from '../../src/words/dates.ts'

const TODAY = '2026-05-08'

describe('days as people say them', () => {
  it('names the year only where it is another', () => {
    expect(dayWords('2026-05-10', TODAY)).toBe('Sun 10 May')
    expect(dayWords('2025-05-10', TODAY)).toBe('Sat 10 May 2025')
  })
  it('says how far', () => {
    expect(dayAndDistance('2026-05-10', TODAY)).toBe('Sun 10 May, in 2 days')
    expect(dayAndDistance('2026-05-08', TODAY)).toBe('today, Fri 8 May')
    expect(dayAndDistance('2026-05-07', TODAY)).toBe('yesterday, Thu 7 May')
  })
  it('says a stretch, the month once', () => {
    expect(fromTo('2026-05-10', '2026-05-12', TODAY)).toBe('Sun 10 to Tue 12 May')
    expect(fromTo('2026-05-30', '2026-06-02', TODAY)).toBe('Sat 30 May to Tue 2 Jun')
    expect(fromTo('2026-05-10', '2026-05-10', TODAY)).toBe('Sun 10 May')
    expect(fromTo('2026-12-30', '2027-01-02', TODAY)).toBe('Wed 30 Dec to Sat 2 Jan 2027')
  })
  it('says a span', () => {
    expect(spanWords({ earliest: '2026-05-11', likely: '2026-05-13', latest: '2026-05-17' }, TODAY)).toBe(
      'likely Wed 13 May (Mon 11 to Sun 17 May)',
    )
  })
})

describe('a window in words', () => {
  const window = { opens: '2026-05-05', due: '2026-05-06', closes: '2026-05-08' }
  it('counts down to the last day', () => {
    expect(windowWords({ ...window, status: 'due' }, '2026-05-07')).toBe('by Fri 8 May, tomorrow')
    expect(windowWords({ ...window, status: 'due' }, '2026-05-08')).toBe('today is the last day')
  })
  it('counts the days it is late', () => {
    expect(windowWords({ ...window, status: 'overdue' }, '2026-05-09')).toBe('1 day, since Fri 8 May')
    expect(windowWords({ ...window, status: 'overdue' }, '2026-05-12')).toBe('4 days, since Fri 8 May')
  })
  it('says when it opens, and when it was answered', () => {
    expect(windowWords({ ...window, status: 'waiting' }, '2026-05-02')).toBe(
      'Tue 5 to Fri 8 May, opens in 3 days',
    )
    expect(windowWords({ ...window, status: 'answered', answeredOn: '2026-05-06' }, '2026-05-07')).toBe(
      'answered Wed 6 May',
    )
  })
})
