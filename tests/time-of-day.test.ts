import { describe, expect, it } from 'vitest'
import { isTime, minutesFrom, minutesTo, plusMinutes, timeIn } from '../src/time-of-day.ts'

describe('times of day', () => {
  it('are those of the yard’s zone, in summer time too', () => {
    const noon = new Date('2026-06-10T12:00:00Z')
    expect(timeIn('UTC', noon)).toBe('12:00')
    expect(timeIn('Europe/Berlin', noon)).toBe('14:00')
    expect(timeIn('America/Phoenix', noon)).toBe('05:00')
  })
  it('run past midnight', () => expect(plusMinutes('23:50', 20)).toBe('00:10'))
  it.each([
    ['10:40', '10:00', 40],
    ['10:00', '10:40', -40],
    ['00:10', '23:50', 20],
    ['23:50', '00:10', -20],
  ])('until %s from %s are %i minutes', (time, now, n) => expect(minutesTo(time, now)).toBe(n))
  it('of one day are as far apart as they are', () => {
    expect(minutesFrom('06:00', '19:30')).toBe(810)
    expect(minutesFrom('19:30', '06:00')).toBe(-810)
  })
  it.each(['24:00', '9:00', '12:60', '', 'soon'])('%j is none', (text) => expect(isTime(text)).toBe(false))
})
